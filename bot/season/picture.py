"""The season as an image: the air above, then one strip a way of choosing; a bar a day, warm above, cold below."""

from io import BytesIO
from math import ceil, floor
from pathlib import Path

import numpy as np
from PIL import Image, ImageDraw, ImageFont

from bot.season.report import Season, WayReport
from bot.units import Measures
from rules.weather import Floats

WIDTH, MARGIN, LEFT, RIGHT = 1280, 28, 210, 300
AIR, STRIP, GAP, HEAD, FOOT = 130, 110, 18, 84, 56
INK, FAINT, PAPER, RULE = "#22262b", "#767c84", "#fbfaf7", "#d9d6cf"
COLD, WARM, SKY = "#2f6db3", "#d9822b", "#8aa7c7"
FONTS = Path(__file__).parents[1] / "fonts"


def draw(report: Season) -> bytes:
    """The PNG of a season; days from left to right, the same scale of hours a day for every way."""
    height = HEAD + AIR + len(report.ways) * (STRIP + GAP) + FOOT
    image = Image.new("RGB", (WIDTH, height), PAPER)
    pen = ImageDraw.Draw(image)
    span = f"{report.first:%d %b %Y} to {report.last:%d %b %Y}"
    pen.text((MARGIN, 20), report.barn, INK, _font(24, bold=True))
    pen.text((MARGIN, 52), f"{span}. Hours too warm above the line, too cold below it.", FAINT, _font(15))
    _air(pen, report)
    most = max(float(np.max(way.cold_h + way.hot_h, initial=1.0)) for way in report.ways)
    for k, way in enumerate(report.ways):
        _strip(pen, way, HEAD + AIR + GAP + k * (STRIP + GAP), most)
    _months(pen, report, height - FOOT + 8)
    out = BytesIO()
    image.save(out, "PNG", optimize=True)
    return out.getvalue()


def _font(size: int, *, bold: bool = False) -> ImageFont.FreeTypeFont:
    return ImageFont.truetype(str(FONTS / ("DejaVuSans-Bold.ttf" if bold else "DejaVuSans.ttf")), size)


def _x(day: float, days: int) -> float:
    return LEFT + (WIDTH - LEFT - RIGHT) * day / max(days, 1)


def _air(pen: ImageDraw.ImageDraw, report: Season) -> None:
    """The coldest to the warmest of each day, with lines at round temperatures."""
    known = np.concatenate([report.coldest, report.warmest])
    known = known[~np.isnan(known)]
    if not len(known):
        return
    low, high = 10 * floor(float(known.min()) / 10), 10 * ceil((float(known.max()) + 0.1) / 10)
    says = Measures(report.units)

    def y(celsius: float) -> float:
        return HEAD + AIR * (1 - (celsius - low) / (high - low))

    for line in range(low, high + 1, 10):
        pen.line([(LEFT, y(line)), (WIDTH - RIGHT, y(line))], RULE)
        pen.text((LEFT - 10, y(line)), says.degrees(line), FAINT, _font(13), anchor="rm")
    pen.text((MARGIN, HEAD + 4), "air", INK, _font(16, bold=True))
    for day, (cold, warm) in enumerate(zip(report.coldest, report.warmest)):
        if not np.isnan(cold):
            _bar(pen, day, len(report.coldest), y(warm), y(cold), SKY)


def _strip(pen: ImageDraw.ImageDraw, way: WayReport, top: int, most: float) -> None:
    """One way of choosing: its bars, its name and its numbers."""
    middle = top + STRIP / 2
    pen.line([(LEFT, middle), (WIDTH - RIGHT, middle)], RULE)
    for hours, sign, colour in ((way.hot_h, -1, WARM), (way.cold_h, 1, COLD)):
        for day in np.flatnonzero(hours > 0).tolist():
            reach = max(1.0, float(hours[day]) / most * STRIP / 2)
            _bar(pen, day, len(hours), min(middle, middle + sign * reach), max(middle, middle + sign * reach), colour)
    pen.text((MARGIN, middle), way.name, INK, _font(16, bold=True), anchor="lm")
    total, x = way.total, WIDTH - RIGHT + 20
    pen.text((x, middle - 30), f"{total.hot_h:,.0f} h too warm", WARM, _font(16), anchor="lm")
    pen.text((x, middle - 8), f"{total.cold_h:,.0f} h too cold", COLD, _font(16), anchor="lm")
    rest = f"{total.wet_h:,.0f} h wet skin, {total.changes_a_week:.1f} changes a week"
    pen.text((x, middle + 14), rest, FAINT, _font(14), anchor="lm")
    pen.text((x, middle + 34), f"{len(total.garments)} garments in use", FAINT, _font(14), anchor="lm")


def _bar(pen: ImageDraw.ImageDraw, day: int, days: int, top: float, bottom: float, colour: str) -> None:
    left, right = _x(day, days), _x(day + 1, days)
    pen.rectangle([left, top, max(left, right - 1), max(top, bottom)], fill=colour)


def _months(pen: ImageDraw.ImageDraw, report: Season, y: int) -> None:
    """The first day of each month under the strips."""
    days: Floats = np.arange(len(report.coldest), dtype=np.float64)
    for day in days.astype(int).tolist():
        date = report.first.fromordinal(report.first.toordinal() + day)
        if date.day == 1 or day == 0:
            pen.text((_x(day, len(days)), y), f"{date:%d %b}", FAINT, _font(13))
