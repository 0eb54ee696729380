"""Who makes another wet: "Rayo ha empapado a Moro" is of Moro, "Titan a mouillé le foin" and "wet snow" of none."""

from collections.abc import Sequence

from bot.words.lookup.items import NOTHING, WETNESS, Item, predicate


def makes_wet(items: Sequence[Item], at: int, behind: Item | None) -> bool:
    """Whether the word at this place is what its subject does to what stands behind; "se ha mojado" is not.

    behind: the next word, which may be of another thought yet.
    """
    if behind is None or not at or not items[at - 1].has("does to") or not items[at].has("damp", "wet", "soaked"):
        return False
    if behind.has("time"):
        return False  # "a mouillé la nuit"
    another = bool(behind.horses) or behind.piece is not None or behind.has("toward")
    return another or behind.has("article", "her", "i", "kin")


def wet_weather(items: Sequence[Item], at: int) -> bool:
    """As in "wet snow then ice": what falls is said right behind it; "empapado por la lluvia" says of what."""
    then = items[at + 1] if at + 1 < len(items) else NOTHING
    return items[at].has(*WETNESS) and then.has("weather", "sky") and " " not in then.text and not predicate(then)
