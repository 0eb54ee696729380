"""Two sheets compared: which horses are to wear something else than people were told, and in which window."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta

from bot.barn import Barn
from bot.events import Entry, Event
from bot.sheet import DressSheet, HorseSheet, Sheet
from bot.state import Standing
from rules.moved import matters
from rules.reason import Reason

HOUR = timedelta(hours=1)


@dataclass(frozen=True)
class Move:
    """One horse moved in one window: what it was told before, what now."""

    horse: str
    round: str
    start: datetime
    before: DressSheet
    after: DressSheet


def moved(before: Sheet, after: Sheet) -> list[Move]:
    """The horses whose clothes change in a window that both sheets have, first such window each."""
    return list(_moves(before, after))


def _moves(before: Sheet, after: Sheet) -> Iterable[Move]:
    old = {w.start: index for index, w in enumerate(before.windows)}
    told = {h.horse: h for h in before.horses}
    for horse in after.horses:
        for index, window in enumerate(after.windows):
            if window.start not in old or horse.horse not in told:
                continue
            was, now = told[horse.horse].windows[old[window.start]], horse.windows[index]
            if matters(was, now):
                yield Move(horse.horse, window.round, window.start, was, now)
                break


def put_on(sheet: Sheet, horses: Sequence[str], standing: Standing) -> dict[str, tuple[str, ...]]:
    """What these horses now wear in the standing round's window, where that is not what it was.

    A horse that only a later window moves stays as it is, and done where it was done.
    """
    for index, window in enumerate(sheet.windows):
        if window.round == standing.round and window.start == standing.start:
            dresses = {h.horse: h.windows[index] for h in sheet.horses if h.horse in horses}
            wear = {name: dress.wear for name, dress in dresses.items() if not dress.as_found}
            return {n: worn for n, worn in wear.items() if n not in standing.wear or set(worn) != set(standing.wear[n])}
    return {}


def carried(horse: str, before: Sheet, after: Sheet) -> HorseSheet:
    """What one horse was told before, on the hours and windows of a later sheet of the same round."""
    gone = round((after.sky[0].at - before.sky[0].at) / HOUR)
    was = before.horse(horse)
    told = {window.start: dress for window, dress in zip(before.windows, was.windows, strict=True)}
    return replace(was, windows=tuple(_later(told[window.start], gone, len(after.sky)) for window in after.windows))


def _later(dress: DressSheet, gone: int, hours: int) -> DressSheet:
    def shifted(reasons: Sequence[Reason]) -> tuple[Reason, ...]:
        hour = [None if r.hour is None or r.hour < gone else r.hour - gone for r in reasons]
        return tuple(replace(r, hour=h) for r, h in zip(reasons, hour, strict=True))

    return replace(
        dress,
        why=shifted(dress.why),
        cautions=shifted(dress.cautions),
        cold_by_hour=dress.cold_by_hour[gone : gone + hours],
        heat_by_hour=dress.heat_by_hour[gone : gone + hours],
    )


def shared(moves: Sequence[Move], reports: Sequence[Sequence[Entry]], barn: Barn) -> list[list[Move]]:
    """For each report the moves it is answered with: of the horses it is about, else with the first report."""
    about = [{name for entry in entries for name in _concerned(entry.event, barn)} for entries in reports]
    mine: list[list[Move]] = [[] for _ in reports]
    for move in moves:
        first = next((i for i, horses in enumerate(about) if move.horse in horses), 0)
        mine[first].append(move)
    return mine


def _concerned(event: Event, barn: Barn) -> list[str]:
    """The horse that a fact is about, itself or by a piece of its own."""
    piece = next((g for g in barn.garments if g.id == getattr(event, "garment", None)), None)
    return [name for name in (getattr(event, "horse", None), piece and piece.horse) if name]
