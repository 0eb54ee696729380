"""Pages: a horse's month as a calendar, notes for the veterinarian on one page, the mirror as a small picture."""

from calendar import Calendar, month_name
from collections.abc import Callable, Sequence
from datetime import date
from io import BytesIO

from bot.barn import Barn, Horse
from bot.board.canvas import DAY, Canvas, Inks, readable
from bot.season.history import Day, Moment, Wear
from bot.season.mirror import EXPECTED, SEEN, Mirror
from bot.units import Measures, known

PRINT = Inks("#ffffff", "#000000", "#444444", "#888888", "#e4e4e4", "#f4f4f4", "#000000", "#000000")
PAGE_WIDTH, PAGE_HEIGHT, MARGIN = 1000, 1414, 56  # A4
CELL_WIDTH, CELL_HEIGHT, HEAD = 152, 112, 92
ROW, MOST_ROWS = 26, 38
Measure = Callable[[float], str]


def calendar(horse: str, found: Sequence[Day], month: date) -> bytes:
    """A horse's month as a PNG: what it wore each day, what people saw, how often it was changed."""
    weeks = Calendar().monthdatescalendar(month.year, month.month)
    canvas = Canvas(7 * CELL_WIDTH + 2 * 24, HEAD + CELL_HEIGHT * len(weeks) + 24, DAY)
    days = {day.date: day for day in found}
    total = sum(day.changes for day in found if day.date.month == month.month)
    canvas.text((24, 40), readable(horse), 26, bold=True)
    canvas.text((24, 66), f"{month_name[month.month]} {month.year}, {total} changes of clothes", 16, ink=DAY.soft)
    for row, week in enumerate(weeks):
        for column, day in enumerate(week):
            if day.month == month.month:
                at = 24 + column * CELL_WIDTH, HEAD + row * CELL_HEIGHT
                _cell(canvas, at, day, days.get(day))
    return canvas.png()


def _cell(canvas: Canvas, at: tuple[float, float], on: date, day: Day | None) -> None:
    """One day: its number, what was worn last, every sign."""
    x, y = at
    canvas.line([(x, y), (x + CELL_WIDTH - 8, y)], DAY.line)
    canvas.text((x, y + 20), f"{on:%a} {on.day}", 14, ink=DAY.soft)
    if day is None:
        return
    if day.changes:
        canvas.text((x + CELL_WIDTH - 10, y + 20), f"×{day.changes}", 14, ink=DAY.soft, anchor="rs")
    for line, piece in enumerate(_pieces(day.wore[-1])[:3]):
        canvas.text((x, y + 42 + 18 * line), canvas.fit(readable(piece), CELL_WIDTH - 10, 14), 14)
    signs = canvas.fit(", ".join(day.signs), CELL_WIDTH - 10, 14, bold=True)
    canvas.text((x, y + 100), signs, 14, bold=True)


def _pieces(wear: Wear | None) -> list[str]:
    return ["?"] if wear is None else list(wear) or ["bare"]


def for_vet(barn: Barn, horse: Horse, found: Sequence[Moment]) -> bytes:
    """One A4 page as PDF: date, sign, what it wore, the weather, who saw it; the latest MOST_ROWS signs."""
    canvas = Canvas(PAGE_WIDTH, PAGE_HEIGHT, PRINT)
    says = Measures(barn.units)
    signs = [m for m in found if m.what == "sign"]
    canvas.text(
        (MARGIN, 80),
        canvas.fit(readable(f"{horse.name}: notes for the veterinarian"), 888, 28, bold=True),
        28,
        bold=True,
    )
    canvas.text((MARGIN, 110), canvas.fit(readable(_facts(barn, horse)), 888, 16), 16, ink=PRINT.soft)
    columns = (("when", 0), ("seen", 180), ("wore", 300), ("air", 590), ("wind", 660), ("rain", 740), ("by", 820))
    for title, x in columns:
        canvas.text((MARGIN + x, 160), title, 15, bold=True)
    for row, moment in enumerate(signs[-MOST_ROWS:]):
        y = 190 + ROW * row
        for text, (_, x), (_, right) in zip(_row(moment, says), columns, (*columns[1:], ("", 888))):
            canvas.text((MARGIN + x, y), canvas.fit(readable(text), right - x - 8, 15), 15)
    if not signs:
        canvas.text((MARGIN, 190), "No signs were reported in this time.", 15)
    left_out = f"{len(signs) - MOST_ROWS} earlier signs are not shown. " if len(signs) > MOST_ROWS else ""
    end = f"{left_out}As reported by the people of the barn; the weather is the forecast's for that hour."
    canvas.text((MARGIN, PAGE_HEIGHT - 60), end, 14, ink=PRINT.soft)
    out = BytesIO()
    canvas.finished().save(out, "PDF", resolution=PAGE_WIDTH / 8.27)
    return out.getvalue()


def _facts(barn: Barn, horse: Horse) -> str:
    born = [f"born {horse.born}"] if horse.born else []
    weight = [f"{Measures(barn.units).weight(horse.weight_kg)}"] if horse.weight_kg else []
    clip = [f"{horse.clip.style} clip"] if horse.clip.style != "none" else []
    return ", ".join([barn.barn, horse.species, *born, *weight, f"condition {horse.condition:g} of 9", *clip])


def _row(moment: Moment, says: Measures) -> tuple[str, ...]:
    def of(value: float | None, measure: Measure) -> str:
        there = known(value)
        return "" if there is None else measure(there)

    wore = " + ".join(_pieces(moment.wear))
    weather = of(moment.temperature_c, says.temperature), of(moment.wind_ms, says.wind), of(moment.rain_mm, says.water)
    return f"{moment.at:%d %b %Y %H:%M}", moment.sign, wore, *weather, moment.who


def mirrored(mirror: Mirror) -> bytes:
    """The mirror as a PNG: a row for each expectation, and how often horses so expected were seen cold, fine, warm."""
    canvas = Canvas(720, 96 + 52 * len(EXPECTED), DAY)
    canvas.text((24, 40), "What was expected, and what was seen", 20, bold=True)
    inks = dict(zip(SEEN, (DAY.cold, DAY.line, DAY.warm)))
    for row, expected in enumerate(EXPECTED):
        counts, y = mirror.row(expected), 84 + 52 * row
        canvas.text((24, y + 14), expected, 16)
        if not sum(counts):
            canvas.text((150, y + 14), "nothing reported", 14, ink=DAY.soft)
        x = 150.0
        for seen, count in zip(SEEN, counts):
            width = 540 * count / max(sum(counts), 1)
            if count:
                canvas.box(x, y - 4, x + width, y + 14, inks[seen])
                canvas.text((x, y + 32), f"{count} {seen}", 13, ink=DAY.soft)
            x += width
    return canvas.png()
