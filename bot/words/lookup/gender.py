"""Masculine and feminine, as French and Spanish nouns have it and what is said of them shows it."""

from collections.abc import Sequence

from bot.words.heard.genders import GENDERS
from bot.words.lookup.items import Item

NAME_ENDS = {"a": "feminine", "o": "masculine"}  # of Spanish names and of what agrees
SPANISH_IS = ("está", "esta", "estaba", "sigue", "ya", "muy", "bien")


def gender_of(said: str, before: Item | None) -> str:
    """A piece's gender: its noun's, else that of the word before it; "" where neither tells ("son 200")."""
    nouns = (GENDERS[word] for word in said.casefold().split() if word in GENDERS)
    return next(nouns, GENDERS.get(before.text, "") if before is not None else "")


def of_another_sex(noun: str, said: str) -> bool:
    """As in "la manta … mojado", "tinto manta": of Spanish words, one ends as feminine ones do, the other does not."""
    return {noun.rstrip("s")[-1:].casefold(), said.rstrip("s")[-1:]} == NAME_ENDS.keys()


def gender_of_name(name: str) -> str:
    """As a Spanish name ends; "" where that tells nothing."""
    return NAME_ENDS.get(name[-1:].casefold(), "")


def only_one_ending(gender: str, names: Sequence[str]) -> str:
    """The only one of these names that ends so, where all end as Spanish ones do; "" where that tells none apart."""
    ends = [gender_of_name(name) for name in names]
    return names[ends.index(gender)] if "" not in ends and ends.count(gender) == 1 else ""


def shown_gender(item: Item) -> str:
    """The gender that how it is shows: "(enlevé la couverte à Biscuit), était détrempée", "(el forro) está seco"."""
    shown = [word for word in item.raw.casefold().split() if word not in SPANISH_IS and not word.endswith("ndo")]
    if any(word.endswith(("ée", "ées")) for word in shown):
        return "feminine"
    if any(word.endswith(("é", "és")) for word in shown):
        return "masculine"
    return NAME_ENDS.get(shown[0].rstrip("s")[-1:], "") if len(shown) == 1 else ""
