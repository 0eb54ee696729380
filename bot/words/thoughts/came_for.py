"""A horse named only in passing: "fui a por Luna y Brisa está sudando", "en sortant Lune j'ai vu que Max tremble"."""

from collections.abc import Sequence
from itertools import dropwhile, takewhile

from bot.words.heard.numbers import OF_ONE
from bot.words.lookup.items import NOTHING, Item, predicate
from bot.words.thoughts.begins import LIST, owned_piece_told, told_of_a_horse
from bot.words.thoughts.clauses import Thought, soft

GOVERNS = ("is", "was", "has", "i", "in", "on", "of", "toward", "for another", "wears", "under")  # before whom it names
OPENING = ("se", "s'", "ya")  # before the verb: "se ha puesto"
DEEDS = ("put on", "took off", "swapped")
REACH = 4  # words up to the horse that was seen


def of_one_horse(item: Item) -> bool:
    """A verb that tells of one: "está", "s'est mise à", "tirita"; not "están", nor "sweaty"."""
    if not (item.has("is") or predicate(item)):
        return False
    words = item.text.split()
    return words[0] in OF_ONE or (words[0] in OPENING and len(words) > 1 and words[1] in OF_ONE)


def only_the_next(current: Thought, behind: Sequence[Item]) -> bool:
    """As in "(came for Pip and) Maple is sweating": what was done to the one, and how one is, behind it.

    Not "(Pip and) Maple is sweating", where nothing comes before the two: as some say of both.
    """
    if not _governed(current) or not (current.items[-1].horses or told_of_a_horse(behind)):
        return False
    words = list(dropwhile(lambda i: i.has("article", "toward") and not i.horses, behind[:REACH]))
    one = len(words) > 1 and bool(words[0].horses)
    told = one and (of_one_horse(words[1]) or words[1].has(*DEEDS) or not current.items[-1].horses)
    return told or (then_seen(current, behind) and owned_piece_told(behind))


def dressed_instead(current: Thought, rest: Sequence[Item]) -> bool:
    """As in "(yendo a por Luna) le he quitado la manta a Brisa", "(went to get Pip and) put Maple in her medium"."""
    if not (rest and rest[0].has(*DEEDS) and _governed(current)):
        return False
    if all(map(soft, takewhile(_no_horse, current.items))):
        return False  # "a Luna le he quitado …"
    said = list(takewhile(lambda i: not (i.mark or i.has("and", "but")), rest[1 : LIST + 1]))
    others = [i.piece.owners for i in said if i.piece is not None and i.piece.given]
    others += [i.horses for i in said if i.horses]
    return bool(others) and all(i.horses not in others for i in current.horses)


def _governed(current: Thought) -> bool:
    """Whether nothing is told yet of the horses named, and they do not open the clause: "came for Pip"."""
    if current.told or current.pieces or not current.horses or current.has("had"):
        return False  # "did Pip and Ned …"
    if current.items[0].has("article") and not current.items[1].horses and current.items[1].text not in OPENING:
        return False  # "le box de Perle et Filou est inondé"
    return any(i.has(*GOVERNS) or not soft(i) or _seen(i) for i in takewhile(_no_horse, current.items))


def _no_horse(item: Item) -> bool:
    return not item.horses


def _seen(item: Item) -> bool:
    """As in "checked (Pip)", "estoy con (Luna)"; not "dice Iván que (Luna y Brisa)"."""
    return item.has("said") and not item.text.endswith((" que", " qu'", " that", " like"))


def one_of_them(current: Thought, then: Item) -> bool:
    """As in "(went to see Pip and Maple and) she's sweating", "(vi a Rayo y a Duque y) está sudando": asked."""
    return len(current.horses) > 1 and not (current.told or current.pieces) and (of_one_horse(then) or _for_one(then))


def _for_one(item: Item) -> bool:
    return item.has("she") and item.has("subject") and item.text in ("he", "she", "ella", "il", "elle")


def then_seen(current: Thought, behind: Sequence[Item]) -> bool:
    """As in "(yendo a por Luna) he visto que Brisa tirita": another horse, or what is hers, was seen on the way."""
    if current.told or not current.of_something:
        return False
    seen = next(dropwhile(lambda i: i.has("article", "toward") and not i.horses, behind[:REACH]), NOTHING)
    owners = seen.piece.owners if seen.piece is not None else seen.horses
    spoken_of = [*[i.horses for i in current.horses], *[piece.owners for piece in current.pieces]]
    return bool(owners) and owners not in spoken_of
