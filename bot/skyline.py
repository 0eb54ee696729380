"""The weather of a window in one line that explains the day."""

from collections.abc import Sequence

from bot.sheet import Sheet, SkyHour, Window
from bot.units import known
from bot.voice import Voice

GUSTY_MS = 9.0  # a gust worth a word: straps are looked at
BREEZE_MS = 5.0  # a mean wind worth a word where no gust is
DRY_MM = 0.25  # less over a window is not called rain
MAY_RAIN_PCT = 30.0  # a chance worth a word where no rain is forecast


def skyline(sheet: Sheet, window: Window, voice: Voice) -> str:
    """Temperature's way, rain or snow with its hours, the worst gust; says so where nothing is known."""
    hours = [h for h in sheet.sky if window.start <= h.at < window.end]
    said = [s for s in (temperature(hours, voice), wet(hours, voice), windy(hours, voice)) if s]
    if not said:
        return sentence(voice.say("no weather"))
    return sentence(", ".join(said))


def temperature(hours: Sequence[SkyHour], voice: Voice) -> str | None:
    """From now to the hour that matters most: the coldest, or the warmest where it only warms."""
    there = [(t, h) for h in hours if (t := known(h.temperature_c)) is not None]
    if not there:
        return None
    show = voice.measures.temperature
    first, (low, coldest), (high, warmest) = there[0][0], min(there, key=_first), max(there, key=_first)
    if show(low) == show(high):
        return voice.say("sky steady", value=show(low))
    if show(low) == show(first):
        return voice.say("sky warming", value=show(first), high=show(high), at=voice.clock(warmest.at))
    if show(high) == show(first):
        return voice.say("sky cooling", value=show(first), low=show(low), at=voice.clock(coldest.at))
    return voice.say("sky both", value=show(first), high=show(high), low=show(low), at=voice.clock(coldest.at))


def _first(pair: tuple[float, SkyHour]) -> float:
    return pair[0]


def wet(hours: Sequence[SkyHour], voice: Voice) -> str | None:
    """Rain, snow or both with amount and hours; a chance where none is forecast; "dry" where that is known."""
    rain = {h: known(h.rain_mm) or 0.0 for h in hours}
    snow = {h: known(h.snow_mm) or 0.0 for h in hours}
    total = sum(rain.values()) + sum(snow.values())
    if total < DRY_MM:
        return _chance(hours, voice)
    what = "sky snow" if sum(rain.values()) < DRY_MM else "sky rain" if sum(snow.values()) < DRY_MM else "sky sleet"
    falling = [h for h in hours if rain[h] + snow[h] > 0.05] or [max(hours, key=lambda h: rain[h] + snow[h])]
    start = voice.clock(falling[0].at)
    spell = voice.say("all along") if len(falling) > 0.8 * len(hours) else voice.say("from time", at=start)
    return voice.say(what, amount=voice.measures.water(total), spell=spell)


def _chance(hours: Sequence[SkyHour], voice: Voice) -> str | None:
    chances = [(c, h) for h in hours if (c := known(h.rain_probability_pct)) is not None]
    if not any(known(h.rain_mm) is not None for h in hours):
        return None
    if chances and max(c for c, _ in chances) >= MAY_RAIN_PCT:
        chance, hour = max(chances, key=lambda pair: pair[0])
        return voice.say("sky chance", chance=voice.measures.percent(chance), at=voice.clock(hour.at))
    return voice.say("sky dry")


def windy(hours: Sequence[SkyHour], voice: Voice) -> str | None:
    """The worst gust with its hour where it matters; the wind, or calm, where not."""
    gusts = [(g, h) for h in hours if (g := known(h.gust_ms)) is not None]
    winds = [(w, h) for h in hours if (w := known(h.wind_ms)) is not None]
    if gusts and max(g for g, _ in gusts) >= GUSTY_MS:
        gust, hour = max(gusts, key=lambda pair: pair[0])
        return voice.say("sky gusts", value=voice.measures.wind(gust), at=voice.clock(hour.at))
    if winds and max(w for w, _ in winds) >= BREEZE_MS:
        wind, hour = max(winds, key=lambda pair: pair[0])
        return voice.say("sky wind", value=voice.measures.wind(wind), at=voice.clock(hour.at))
    return voice.say("sky calm") if winds else None


def sentence(text: str) -> str:
    """The text as a sentence: first letter large, a full stop at the end."""
    return capital(text) + ("" if text.endswith((".", "!", "?", "…")) else ".")


def capital(text: str) -> str:
    """The text with its first letter large: for what begins a line and is nobody's name."""
    return text[:1].upper() + text[1:]
