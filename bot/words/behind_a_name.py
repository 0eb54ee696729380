"""What stands behind a word and is said of no thing: "neige elle frissonne", "titan boude, il a froid"."""

from collections.abc import Sequence

from bot.words.items import Item, predicate
from bot.words.weatherlike import clothing


def told_of_it(rest: Sequence[Item]) -> bool:
    """As in "whisky sa bleue est mouillée", "neige elle frissonne", "sol con la capa puesta"."""
    if len(rest) < 2:
        return False
    while len(rest) > 2 and rest[0].has("only", "time") and rest[1].has("her"):
        rest = rest[1:]  # "caramel juste son imper"
    a_piece = clothing(rest[1]) or rest[1].number is not None
    without = rest[0].has("without") and not rest[0].has("off") and a_piece  # "neige a plus sa sous couv"
    if without:
        return True
    hers = rest[0].has("her", "wears") and not rest[0].horses and any(clothing(i) or i.has("colour") for i in rest[1:])
    if rest[0].has("she") and rest[1].has("subject") and len(rest) > 2:
        rest = rest[1:]  # "filou lui il va bien"
    if not (rest[0].has("she") and rest[0].has("subject")):
        return hers
    if predicate(rest[1]):
        return True
    said = any(predicate(i) or i.has("wears") for i in rest[2:4])
    stands = rest[1].has("is", "was") and said  # "orage elle est trempée", "tempête elle est avec sa verte"
    asked = rest[1].has("ask wearing", "ask state")  # "lune elle met quoi"
    return bool(rest[1].kinds("sign")) or rest[1].has("stays", "wears", "bare") or stands or asked


def past_where(rest: Sequence[Item]) -> Sequence[Item]:
    """As in "lune elle au pré elle grelotte": from the second pronoun on, behind where the horse stands."""
    place = next((k for k, i in enumerate(rest[:4]) if i.has("place stall", "place field")), 0)
    pronouns = [rest[0], *rest[place + 1 : place + 2]] if place else []
    again = len(pronouns) > 1 and all(i.has("she") and i.has("subject") for i in pronouns)
    return rest[place + 1 :] if again and all(i.has("in", "her", "article") for i in rest[1:place]) else rest


def strained(behind: Sequence[Item]) -> bool:
    """As in "il a froid", "elle est en sueur": a pronoun, and what only animals do."""
    she = bool(behind) and behind[0].has("she") and behind[0].has("subject")
    return she and any(i.kinds("sign") for i in behind[1:3])
