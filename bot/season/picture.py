"""The season as an image: the air above, then a strip for each way of choosing, one bar a day."""

from math import ceil, floor

import numpy as np

from bot.board.canvas import DAY, Canvas, readable
from bot.season.report import Season, WayReport
from bot.units import Measures

WIDTH, MARGIN, LEFT, RIGHT = 1280, 28, 210, 300
AIR, STRIP, GAP, HEAD, FOOT = 130, 110, 18, 84, 44


def draw(season: Season) -> bytes:
    """The PNG of a season; days from left to right, the same scale of hours a day for every way."""
    height = HEAD + AIR + len(season.ways) * (STRIP + GAP) + FOOT
    canvas = Canvas(WIDTH, height, DAY)
    span = f"{season.first:%d %b %Y} to {season.last:%d %b %Y}"
    canvas.text((MARGIN, 44), canvas.fit(readable(season.barn), WIDTH - 2 * MARGIN, 24, bold=True), 24, bold=True)
    key = f"{span}. Hours too warm above the line, too cold below it, all horses together."
    canvas.text((MARGIN, 68), key, 15, ink=DAY.soft)
    _air(canvas, season)
    most = max(float(np.max(way.cold_h + way.hot_h, initial=1.0)) for way in season.ways)
    for k, way in enumerate(season.ways):
        _strip(canvas, way, HEAD + AIR + GAP + k * (STRIP + GAP), most)
    _months(canvas, season, height - 20)
    return canvas.png()


def _x(day: float, days: int) -> float:
    return LEFT + (WIDTH - LEFT - RIGHT) * day / max(days, 1)


def _air(canvas: Canvas, season: Season) -> None:
    """The coldest to the warmest of each day, with lines at round temperatures."""
    known = np.concatenate([season.coldest, season.warmest])
    known = known[~np.isnan(known)]
    if not len(known):
        return
    low, high = 10 * floor(float(known.min()) / 10), 10 * ceil((float(known.max()) + 0.1) / 10)
    says = Measures(season.units)

    def y(celsius: float) -> float:
        return HEAD + AIR * (1 - (celsius - low) / (high - low))

    for line in range(low, high + 1, 10):
        canvas.line([(LEFT, y(line)), (WIDTH - RIGHT, y(line))], DAY.line)
        canvas.text((LEFT - 10, y(line)), says.degrees(line), 13, ink=DAY.soft, anchor="rm")
    canvas.text((MARGIN, HEAD + 16), "air", 16, bold=True)
    for day, (cold, warm) in enumerate(zip(season.coldest, season.warmest)):
        if not np.isnan(cold):
            _bar(canvas, day, len(season.coldest), y(warm), y(cold), DAY.line)


def _strip(canvas: Canvas, way: WayReport, top: int, most: float) -> None:
    """One way of choosing: its bars, its name and its numbers."""
    middle = top + STRIP / 2
    for hours, sign, ink in ((way.hot_h, -1, DAY.warm), (way.cold_h, 1, DAY.cold)):
        for day in np.flatnonzero(hours > 0).tolist():
            end = middle + sign * max(1.0, float(hours[day]) / most * STRIP / 2)
            _bar(canvas, day, len(hours), min(middle, end), max(middle, end), ink)
    canvas.line([(LEFT, middle), (WIDTH - RIGHT, middle)], DAY.line)
    canvas.text((MARGIN, middle), way.name, 16, bold=True, anchor="lm")
    total, x = way.total, WIDTH - RIGHT + 20
    canvas.text((x, middle - 30), f"{total.hot_h:,.0f} h too warm", 16, ink=DAY.warm, anchor="lm")
    canvas.text((x, middle - 8), f"{total.cold_h:,.0f} h too cold", 16, ink=DAY.cold, anchor="lm")
    rest = f"{total.wet_h:,.0f} h wet skin, {total.changes_a_week:.1f} changes a week"
    canvas.text((x, middle + 14), rest, 14, ink=DAY.soft, anchor="lm")
    canvas.text((x, middle + 34), f"{len(total.garments)} garments in use", 14, ink=DAY.soft, anchor="lm")


def _bar(canvas: Canvas, day: int, days: int, top: float, bottom: float, ink: str) -> None:
    left, right = _x(day, days), _x(day + 1, days)
    canvas.box(left, top, max(left, right - 1), max(top, bottom), ink)


def _months(canvas: Canvas, season: Season, y: int) -> None:
    """The first day of each month under the strips."""
    days = len(season.coldest)
    for day in range(days):
        date = season.first.fromordinal(season.first.toordinal() + day)
        if date.day == 1 or day == 0:
            canvas.text((_x(day, days), y), f"{date:%d %b}", 13, ink=DAY.soft)
