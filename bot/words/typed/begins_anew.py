"""Phrases of several words, some of which belong to what begins there: "est en" before "en sueur", "her cooler now"."""

from bot.words.lookup.items import says_how
from bot.words.lookup.lexicon import Lexicon
from bot.words.lookup.names import Roster, Words, name_at

WHERE = ("place stall", "place field", "inwards", "outwards", "in")
DETERMINING = ("article", "her", "my", "in")


def without_what_begins_anew(
    means: frozenset[str], said: int, texts: Words, at: int, lexicon: Lexicon, roster: Roster
) -> tuple[frozenset[str], int]:
    """A phrase of several words, its last word left to what begins there: "est en" before "en sueur"."""
    behind = at + said
    if "idiom" in means and _her_piece(texts, at, behind, lexicon):
        return lexicon.phrases.longest((texts[at],), 0)
    named = behind < len(texts) and name_at(texts, behind, roster.horses)[1] > 1  # "cómo está | Mala Uva"
    if not named and (_how_much(means, texts, behind, lexicon) or _how_begins(means, texts, behind - 1, lexicon)):
        means, said = lexicon.phrases.longest(texts[at : behind - 1], 0)
    last = at + said - 1
    begins = said > 1 and texts[last] in roster.begun
    if begins and any(name_at(texts, last, table)[1] > 1 for table in (roster.pieces, roster.horses)):
        # "de la tigrée" of a rug called la tigrée, "le vieux" of a horse called Vieux Tambour, "the donkey mac"
        wears = means & {"wears"}  # "Perle a | la tigrée"
        means, said = lexicon.phrases.longest(texts[at:last], 0)
        means |= wears
    return means, said


def _her_piece(texts: Words, at: int, behind: int, lexicon: Lexicon) -> bool:
    """As in "she's in her cooler | now", "the cooler | out": what is worn; not "it's cooler now"."""
    piece = any(m.startswith("kind ") for m in lexicon.phrases.longest((texts[at],), 0)[0])
    if not piece or lexicon.phrases.longest(texts[max(0, at - 1) : at], 0)[0].isdisjoint(DETERMINING):
        return False
    then, said = lexicon.phrases.longest(texts[:behind], at + 1)
    return at + 1 + said == behind and not then.isdisjoint(("time", "outwards"))


def _how_much(means: frozenset[str], texts: Words, behind: int, lexicon: Lexicon) -> bool:
    """As in "anda bien helada": what ends the phrase says how much of what follows; "están todos" who are "dentro"."""
    if "all done" in means:
        follows = lexicon.phrases.longest(texts, behind)[0]
        moved = lexicon.language == "es" and not follows.isdisjoint(("brought in", "turned out"))
        return moved or says_how(follows) or not follows.isdisjoint(WHERE)
    if "everyday comfortable" not in means or "very" not in lexicon.phrases.longest((texts[behind - 1],), 0)[0]:
        return False
    praise, taken = lexicon.phrases.longest(texts, behind - 1)
    follows = lexicon.phrases.longest(texts, behind)[0]
    how = says_how(follows) and follows.isdisjoint(("everyday comfortable", "everyday good"))
    return how or (taken > 1 and "any adjective" in praise)  # "está | bien bonita"


def _how_begins(means: frozenset[str], texts: Words, at: int, lexicon: Lexicon) -> bool:
    """Whether a phrase of several words that says how a horse or a piece is begins here, and says it more surely.

    As in "está | en sudor", "van | bien de temperatura", "un pelín | caliente de más".
    """
    begun, said = lexicon.phrases.longest(texts, at)
    return said > 1 and says_how(begun) and (not says_how(means) or (_surely(begun) and not _surely(means)))


def _surely(means: frozenset[str]) -> bool:
    return any(m.startswith("sign ") for m in means)
