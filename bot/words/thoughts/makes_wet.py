"""Who makes another wet: "Rayo ha empapado a Moro" is told of Moro, "Titan a mouillé le foin" of no horse."""

from collections.abc import Sequence

from bot.words.lookup.items import Item


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
