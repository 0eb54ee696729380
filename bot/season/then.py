"""The barn as it is, moved to the years of a record: horses keep their age, and were clipped in that autumn."""

from datetime import date

from bot.barn import Barn, Horse


def moved(barn: Barn, today: date, first: date, last: date) -> Barn:
    """Today's barn as it would have stood from `first` to `last`; clips on the last such day of the year by `last`."""
    years = today.year - first.year
    return barn.model_copy(update={"horses": tuple(_horse(h, years, last) for h in barn.horses)})


def _horse(horse: Horse, years: int, last: date) -> Horse:
    born = horse.born
    if isinstance(born, date):
        born = _in_year(born, born.year - years)
    elif born is not None:
        born -= years
    clip = horse.clip
    if clip.on is not None:
        year = last.year if _in_year(clip.on, last.year) <= last else last.year - 1
        clip = clip.model_copy(update={"on": _in_year(clip.on, year)})
    return horse.model_copy(update={"born": born, "clip": clip})


def _in_year(day: date, year: int) -> date:
    """The same day of another year; 29 February is the 28th where there is none."""
    try:
        return day.replace(year=year)
    except ValueError:
        return day.replace(year=year, day=28)
