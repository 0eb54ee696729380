"""The head of the board: hours, temperature, what falls, gusts."""

from collections.abc import Sequence

from bot.board.canvas import SMALL, Canvas
from bot.sheet import SkyHour
from bot.skyline import DRY_MM, GUSTY_MS
from bot.units import known
from bot.voice import Voice

EVERY = 3  # hours between numbers
HEIGHT = 138
HEAD_BASE = HEIGHT - 12


def head(canvas: Canvas, sky: Sequence[SkyHour], tongue: Voice, left: float, top: float, hour: float) -> None:
    """Hours and temperatures as numbers, rain and snow as what hangs from a line, gusts as pennants."""
    middle = [left + (k + 0.5) * hour for k in range(len(sky))]
    for x, h in list(zip(middle, sky))[::EVERY]:
        canvas.text((x, top), tongue.clock(h.at), SMALL, ink=canvas.inks.soft, anchor="ms")
        celsius = known(h.temperature_c)
        shown = "?" if celsius is None else tongue.measures.degrees(celsius)
        canvas.text((x, top + 31), shown, 25, bold=True, anchor="ms")
    falling(canvas, sky, tongue, middle, top + 46, hour)
    aside = left - 14
    for y, words in (
        (top + 31, tongue.measures.scale),
        (top + 66, tongue.say("board falls")),
        (top + HEAD_BASE, tongue.say("board gusts")),
    ):
        canvas.text((aside, y), words, SMALL, ink=canvas.inks.soft, anchor="rs")
    gusts(canvas, sky, tongue, middle, top + HEAD_BASE)


def falling(
    canvas: Canvas, sky: Sequence[SkyHour], tongue: Voice, middle: Sequence[float], top: float, hour: float
) -> None:
    """Rain hangs as strokes, snow as spots, the longer the more; the total stands beside the first."""
    amounts = [(known(h.rain_mm) or 0.0, known(h.snow_mm) or 0.0) for h in sky]
    canvas.line([(middle[0] - hour / 2, top), (middle[-1] + hour / 2, top)], canvas.inks.line, 1)
    for x, (rain, snow) in zip(middle, amounts):
        length = 8 + 7 * min(rain + snow, 4.0)
        if rain >= DRY_MM / 2:
            for k in (-0.28, 0.0, 0.28):
                start = x + k * hour
                canvas.line([(start, top + 2), (start - 3, top + length)], canvas.inks.cold, 2)
        for k in range(int(length / 8) if snow >= DRY_MM / 2 else 0):
            canvas.dot((x + (k % 2 - 0.5) * 7, top + 6 + 8 * k), 2.4, canvas.inks.cold)
    total = sum(r + s for r, s in amounts)
    wet = [x for x, (r, s) in zip(middle, amounts) if r + s >= DRY_MM / 2]
    if total >= DRY_MM and wet:
        word = tongue.say("board snow" if sum(s for _, s in amounts) > total / 2 else "board rain")
        words = f"{word} {tongue.measures.water(total)}"
        after = wet[-1] + hour / 2 + 8 + canvas.length(words, SMALL) < middle[-1]
        place = (wet[-1] + hour / 2 + 8, top + 22) if after else (wet[0] - hour / 2 - 8, top + 22)
        canvas.text(place, words, SMALL, ink=canvas.inks.cold, anchor="ls" if after else "rs")


def gusts(canvas: Canvas, sky: Sequence[SkyHour], tongue: Voice, middle: Sequence[float], base: float) -> None:
    """A pennant for each hour that blows, the longer the harder; the worst with its number."""
    speeds = [known(h.gust_ms) or 0.0 for h in sky]
    worst = max(range(len(speeds)), key=speeds.__getitem__)
    for x, speed in zip(middle, speeds):
        if speed >= GUSTY_MS * 0.6:
            length = min(speed, 30.0) * 1.05
            canvas.line([(x - 6, base), (x - 6, base - 15)], canvas.inks.ink, 1.5)
            canvas.area([(x - 6, base - 15), (x - 6 + length, base - 11), (x - 6, base - 7)], canvas.inks.ink)
    if speeds[worst] >= GUSTY_MS * 0.6:
        words = tongue.say("board gust", value=tongue.measures.wind(speeds[worst]))
        end = worst < len(sky) * 0.7
        place = (middle[worst] - 10, base - 20)
        canvas.text(place, words, SMALL, ink=canvas.inks.ink, anchor="ls" if end else "rs")
