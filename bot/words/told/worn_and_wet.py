"""A piece on the horse and how wet it is, in one breath: "has the sheet soaked", "in a sheet which is soaked"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, of_clothes


def has_it_wet(items: Sequence[Item], at: int) -> bool:
    """Whether how it is follows the piece at this place, which the horse has on."""
    return _soaked(items, at) or _which_is_soaked(items, at)


def _soaked(items: Sequence[Item], at: int) -> bool:
    """As in "Otto has the sheet soaked", "Perle a la bleue toute trempée"."""
    has = items[at - 1].has("has", "wears") and not items[at - 1].has("in", "and", "under")
    then = next((i for i in items[at + 1 :] if not i.has("very", "a little", "wholly")), None)
    return has and then is not None and of_clothes(then)


def _which_is_soaked(items: Sequence[Item], at: int) -> bool:
    """As in "Otto is in his sheet which is soaked"; not "…, who is soaked"."""
    behind = items[at + 1 : at + 4]
    told = len(behind) > 2 and behind[0].has("relative") and behind[0].text != "who" and behind[1].has("is")
    return told and of_clothes(behind[2])
