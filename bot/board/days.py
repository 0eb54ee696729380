"""One horse's days: a strip a day with its thread, what it wore, what people saw; what has been learned of it."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from bot.barn import Barn
from bot.board.canvas import DAY, NIGHT, SMALL, TITLE, Canvas, Inks, readable
from bot.board.fence import Fence, Thread, rails, thread
from bot.events import Entry, Seen
from bot.sheet import DressSheet, HorseSheet, Sheet
from bot.voice import Voice, plain, voice

WIDTH = 1000
MARGIN = 20
DATES = 128
HEAD = 124
STRIP = 100
FOOT = 44
MOST_DAYS = 14
HOUR = timedelta(hours=1)


@dataclass(frozen=True)
class Lived:
    """One hour as it was planned: margins [K], None where not judged."""

    cold: float | None
    heat: float | None


def horse(
    name: str,
    sheets: Sequence[Sheet],
    signs: Sequence[Entry],
    barn: Barn,
    units: str,
    language: str,
    *,
    dark: bool = False,
) -> bytes:
    """The days of the sheets (as posted, oldest first), the latest sheet standing for each hour; as PNG.

    signs: the horse's ledger entries; those of other days and other horses are left out.
    """
    tongue = voice(barn, language, units)
    return strips(name, sheets, signs, tongue, NIGHT if dark else DAY).png()


def strips(name: str, sheets: Sequence[Sheet], signs: Sequence[Entry], tongue: Voice, inks: Inks) -> Canvas:
    """The whole picture."""
    hours, worn = lived(name, sheets), dressed(name, sheets)
    days = sorted({at.astimezone(tongue.zone).date() for at in hours})[-MOST_DAYS:]
    canvas = Canvas(WIDTH, HEAD + STRIP * max(1, len(days)) + FOOT, inks)
    latest = _latest(name, sheets)
    title(canvas, name, latest, tongue)
    scale = (WIDTH - 2 * MARGIN - DATES) / 24
    if not days:
        canvas.text((MARGIN, HEAD + 40), tongue.say("board no days"), SMALL)
    for index, day in enumerate(days):
        top = HEAD + index * STRIP
        fence = Fence(MARGIN + DATES, top + 30, top + STRIP - 4, scale)
        sd = latest.offset_sd_c if latest else 0.0
        strip(canvas, day, hours, fence, tongue, sd)
        for at, words in worn.items():
            outfit(canvas, at, words, day, fence, tongue)
        for entry in signs:
            sign(canvas, entry, name, day, fence, tongue)
    canvas.text((MARGIN, canvas.height - 16), tongue.say("guide"), SMALL, bold=True)
    return canvas


def lived(name: str, sheets: Sequence[Sheet]) -> dict[datetime, Lived]:
    """Each hour of the sheets' windows with its margins; a later sheet overrides an earlier one from its making on."""
    found: dict[datetime, Lived] = {}
    for sheet in sheets:
        for dress in _dresses(name, sheet):
            for hour, cold, heat in zip(sheet.sky, dress.cold_by_hour, dress.heat_by_hour):
                if cold is not None or heat is not None:
                    found[hour.at] = Lived(cold, heat)
    return found


def dressed(name: str, sheets: Sequence[Sheet]) -> dict[datetime, tuple[str, ...]]:
    """When each outfit was to go on; a plan made anew that leaves it on says nothing."""
    found: dict[datetime, tuple[str, ...]] = {}
    for sheet in sheets:
        for window, dress in zip(sheet.windows, _dresses(name, sheet)):
            if dress.as_found:
                continue
            before = [at for at in found if at <= sheet.made_at]
            if window.start <= sheet.made_at and before and found[max(before)] == dress.wear:
                continue
            found[max(window.start, sheet.made_at)] = dress.wear
    return found


def _dresses(name: str, sheet: Sheet) -> tuple[DressSheet, ...]:
    return next((h.windows for h in sheet.horses if h.horse == name), ())


def _latest(name: str, sheets: Sequence[Sheet]) -> HorseSheet | None:
    return next((h for sheet in reversed(sheets) for h in sheet.horses if h.horse == name), None)


def title(canvas: Canvas, name: str, latest: HorseSheet | None, tongue: Voice) -> None:
    """The name, and what has been learned with its band."""
    shown = readable(plain(name))
    canvas.text((MARGIN, 44), canvas.fit(shown, WIDTH - 2 * MARGIN, TITLE, bold=True), TITLE, bold=True)
    if latest is not None:
        learned = tongue.learned(latest.offset_c, latest.offset_sd_c)
        canvas.text((MARGIN, 76), canvas.fit(learned, WIDTH - 2 * MARGIN, SMALL), SMALL, ink=canvas.inks.soft)
    scale = (WIDTH - 2 * MARGIN - DATES) / 24
    for hour in range(0, 24, 3):
        at = datetime(2001, 1, 1, hour, tzinfo=tongue.zone)
        place = (MARGIN + DATES + hour * scale, HEAD - 8)
        canvas.text(place, tongue.clock(at), SMALL, ink=canvas.inks.soft, anchor="ls")


def strip(canvas: Canvas, day: date, hours: dict[datetime, Lived], fence: Fence, tongue: Voice, sd: float) -> None:
    """One day's rails and thread; a clock change leaves a gap or lays two hours on one."""
    canvas.text((MARGIN, fence.top + 24), tongue.day(day), SMALL, bold=True)
    rails(canvas, fence, 0, 24)
    slots: list[Lived | None] = [None] * 24
    for at, margins in hours.items():
        local = at.astimezone(tongue.zone)
        if local.date() == day:
            slots[local.hour] = margins
    cold = [s.cold if s else None for s in slots]
    heat = [s.heat if s else None for s in slots]
    thread(canvas, fence, Thread(cold, heat, sd))


def outfit(canvas: Canvas, at: datetime, wear: tuple[str, ...], day: date, fence: Fence, tongue: Voice) -> None:
    """What went on, above the hour it went on."""
    local = at.astimezone(tongue.zone)
    if local.date() == day:
        x = fence.x(local.hour + local.minute / 60)
        words = canvas.fit(readable(tongue.brief(wear)), max(40, min(300, WIDTH - MARGIN - x)), SMALL)
        canvas.line([(x, fence.top - 24), (x, fence.bottom)], canvas.inks.line, 1)
        canvas.text((x + 4, fence.top - 6), words, SMALL)


def sign(canvas: Canvas, entry: Entry, name: str, day: date, fence: Fence, tongue: Voice) -> None:
    """What somebody saw, as a flag at its hour."""
    local = entry.at.astimezone(tongue.zone)
    event = entry.event
    if not isinstance(event, Seen) or event.horse != name or local.date() != day or entry.undone_by is not None:
        return
    x, words = fence.x(local.hour + local.minute / 60), tongue.sign(event.sign)
    width = canvas.length(words, SMALL, bold=True) + 10
    x = min(x, WIDTH - MARGIN - width)
    middle = (fence.upper + fence.lower) / 2
    canvas.box(x, middle - 13, x + width, middle + 10, canvas.inks.ink)
    canvas.text((x + 5, middle + 5), words, SMALL, bold=True, ink=canvas.inks.paper)
