"""Names with an article before them, as people say them: "la canela está sudada", "monté al trueno".

A word of the language with its article is a thing until something is said of it that is said of horses only.
"""

from collections.abc import Sequence

from bot.words.lookup.items import WETNESS, Item, all_mean, of_a_horse, predicate, some_mean
from bot.words.named.weatherlike import SKY, clothing, told_of_its_body

HANDLED = (
    "put on", "took off", "took", "brought", "brought in", "turned out", "worked", "clipped", "swapped", "stripped",
    "ask wearing", "ask why", "felt",
)  # fmt: skip
MOVED = ("worked", "inwards", "outwards", "brought in", "turned out", "stays", "place stall", "place field")
PASSING = ("is", "was", "very", "a little", "time", "not", "both", "she", "reason", "style full")  # "anda como sudada"
OPENERS = ("polite", "and", "but", "time", "link", "said", "place stall", "place field")  # "en la cuadra la mora …"
STRICT = ("the", "that", "this")  # nobody calls a horse so in English, as in Spanish or French
NEAR = 8  # words
OF_WHOM = ("le ", "les ", "se le ", "se les ")  # "se le ve la carne viva a la pampa": whose it is comes last
GOES = ("anda", "andaba", "andan")  # is, of whoever has legs


def called_with_article(items: Sequence[Item], at: int) -> bool:
    """Whether the word at this place, behind an article, is the horse of that name."""
    before, opener = (items[at - 1], items[at - 2] if at > 1 else None) if at else (None, None)
    if before is None or not before.has("article", "my") or before.has("some", "her") or before.has("all"):
        return False
    if opener is not None and (opener.has("ask state") or (opener.has("ask today") and " " in opener.text)):
        return True  # "cómo amaneció mi canela", "con qué va la mora"
    if opener is not None and opener.has("brings weather"):
        return False  # "y a du caramel mou à la sellerie"
    if opener is not None and (opener.kinds("sign") or (opener.kinds("everyday") and not items[at].has(*SKY))):
        return True  # "ya no tiembla la mora", "un poquito fría la Chispa"
    if opener is not None and opener.has("clipped", "worked", "except"):
        return True  # "esquilado el cid", "todos menos el cid"
    if _handled(items, at, before, opener):
        return True
    if before.has("of") or (opener is not None and opener.has("of")):
        owned = at - 2 if before.has("of") else at - 3  # "la gruesa del trueno", "la manta de la canela"
        return owned >= 0 and (
            clothing(items[owned]) or items[owned].has("colour", "that rug of") or items[owned].number is not None
        )
    opens = opener is None or opener.mark or opener.number is not None
    starts = opens or (opener is not None and opener.has(*OPENERS))
    if before.text == "the" and any(i.has("bare") and not i.kinds("sign") for i in items[at + 1 : at + 4]):
        return False  # "the maple is bare already"
    return starts and _said_of_horses(items, at)


def _handled(items: Sequence[Item], at: int, before: Item, opener: Item | None) -> bool:
    """As in "a la sol le puse la naranja", "saqué al trueno"; but a rug hung "al sol" is in the sun."""
    toward = before.has("toward") or (opener is not None and (opener.has("toward") or opener.text.endswith(" a")))
    around = items[max(0, at - NEAR) : at + NEAR]
    told = (
        any(i.kinds("sign") or i.has("wet", "soaked") for i in items[at + 1 : at + NEAR]) and at < 3
    )  # "a la sombra le roza"
    told = told or (_ends(items, at) and any(i.kinds("sign") and i.text.startswith(OF_WHOM) for i in around))
    if not toward or not (told or some_mean(around, *HANDLED)):
        return False
    in_the_sun = items[at].has(*SKY) and before.has("toward") and any(clothing(i) for i in around)
    return not in_the_sun


def _ends(items: Sequence[Item], at: int) -> bool:
    return at + 1 >= len(items) or items[at + 1].mark


def _said_of_horses(items: Sequence[Item], at: int) -> bool:
    rest = items[at + 1 : at + NEAR]
    goes = bool(rest) and rest[0].text in GOES
    if len(rest) > 1 and rest[0].has("but") and rest[1].has("is"):
        rest = rest[1:]  # "el pepe en cambio está …"
    while rest and rest[0].has(*PASSING) and not predicate(rest[0]):
        rest = rest[1:]
    if not rest:
        return False
    if len(rest) > 1 and rest[0].has("what") and rest[1].has("ask wearing") and all_mean(rest[2:], "time"):
        return True  # "la tortita que lleva hoy"
    if rest[0].has("ask why"):
        return True  # "y la canela por qué anda sin nada"
    if rest[0].has("subject") and rest[0].has("i") and some_mean(rest[:4], "put on", "took off"):
        return True  # "la belle je lui ai retiré son imper"
    if rest[0].has("took off") and any(clothing(i) for i in rest[1:]):
        return True  # "la paloma se quitó la manta"
    if items[at - 1].text in STRICT and not items[at].raw[:1].isupper() and rest[0].has(*WETNESS, "of things too"):
        return False  # "the bill is damp", "that patch is frozen solid"
    if rest[0].kinds("sign") or rest[0].has("worked") or told_of_its_body(rest):
        return True
    on_its_body = rest[0].has("body") and not clothing(rest[0])
    if on_its_body and any(of_a_horse(i) for i in rest[1:3]):
        return True  # "la nube tiene el lomo mojado"
    if goes and not items[at].has("sky") and rest[0].kinds("everyday"):
        return True  # "la nube anda bien helada": no cloud does
    if rest[0].has("in", "toward") and some_mean(rest[1:3], "place stall", "place field"):
        rest = [i for i in rest if i.has("place stall", "place field")]  # "la sombra en el box"
    if rest[0].has("bare", "done", *MOVED) and not items[at].has(*SKY, "colour"):
        return True  # "la pulga adentro"
    skin = some_mean(rest, "body")  # "la negra está mojada" may be a rug; "… hasta el cuero" is no rug
    doubtful = (items[at].has(*SKY) and not rest[0].has("everyday comfortable")) or (
        items[at].has("colour") and rest[0].has(*WETNESS) and not skin
    )
    return not doubtful and of_a_horse(rest[0])
