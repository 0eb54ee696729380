"""What would change the advice for one horse, and what its whole barn has taught, in words and a reader's units."""

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from math import exp

from bot.voice import WORTH_SAYING_C, Voice
from rules.offset import Common
from rules.tipping import AIR_STEP_K, MOST_AIR_STEPS, MOST_REPORTS, By, Turn, nearest

AT_MOST = 2  # lines in an answer
WORTH_SAYING_TIMES = 0.1  # the forecast's wind, a coat's growth; less is told as none
ONE_REPORT = {By.COLD_SAID: "turn cold once", By.SWEATING_SAID: "turn sweating once"}
SAYS = {
    By.COLD_SAID: "turn cold again",
    By.SWEATING_SAID: "turn sweating again",
    By.FEELS_MORE: "turn feels more",
    By.FEELS_LESS: "turn feels less",
    By.COLDER: "turn colder",
    By.WARMER: "turn warmer",
    By.RAIN: "turn rain",
    By.DRY: "turn dry",
    By.WIND: "turn wind",
}
DECIDES = {
    By.WIND_AS_TOLD: "wind decides",
    By.FILL_AS_COMPUTED: "fill decides",
    By.BORNE_AS_COMPUTED: "borne decides",
    By.STALL_AS_COMPUTED: "stall decides",
    By.REGROWTH_AS_COMPUTED: "regrowth decides",
}


@dataclass(frozen=True)
class Tips:
    """What would change what one horse is to wear. clock: the instant of each hour that a turn may speak of.

    people: how many would report in turn.
    """

    wear: tuple[str, ...]
    turns: tuple[Turn, ...]
    clock: tuple[datetime, ...]
    people: int = 1


def tip_lines(tips: Tips, tongue: Voice, horse: str, most: int | None = AT_MOST) -> Iterable[str]:
    """One line for each other outfit within reach: what would put the horse in it; the nearest first."""
    decides = [turn for turn in tips.turns if turn.by in DECIDES]
    others = nearest([turn for turn in tips.turns if turn.by not in DECIDES])
    for turn in decides[: most and 1]:
        yield tongue.say(DECIDES[turn.by], value=_amount(turn, tongue), wear=tongue.outfit(turn.wear, horse))
    for wear, turns in list(others.items())[:most]:
        ways = [_way(turn, tips, tongue) for turn in turns]
        listed = tongue.say("or").join([", ".join(ways[:-1]), ways[-1]] if len(ways) > 1 else ways)
        yield tongue.say("turn", ways=listed, wear=tongue.outfit(wear, horse))
    if not others:
        degrees = tongue.measures.difference(MOST_AIR_STEPS * AIR_STEP_K)
        yield tongue.say("turn nothing", count=MOST_REPORTS, value=degrees)


def _way(turn: Turn, tips: Tips, tongue: Voice) -> str:
    at = None if turn.hour is None else tongue.clock(tips.clock[turn.hour])
    line = ONE_REPORT[turn.by] if turn.by in ONE_REPORT and turn.amount == 1 else SAYS[turn.by]
    people = tongue.measures.number(tips.people) if tips.people > 1 else None
    return tongue.say(line, value=_amount(turn, tongue), at=at, people=people)


def _amount(turn: Turn, tongue: Voice) -> str:
    measures = tongue.measures
    match turn.by:
        case By.COLD_SAID | By.SWEATING_SAID:
            return measures.number(turn.amount)
        case By.WIND:
            return measures.wind(turn.amount)
        case By.WIND_AS_TOLD | By.REGROWTH_AS_COMPUTED:
            return measures.number(turn.amount, 1)
        case By.RAIN | By.DRY:
            return measures.water(turn.amount)
        case By.FILL_AS_COMPUTED | By.STALL_AS_COMPUTED:
            return ("+" if turn.amount > 0 else "") + measures.difference(turn.amount, 1)
        case _:
            return measures.difference(turn.amount, 1 if turn.amount % 1 and not measures.us else 0)


def barn_lines(common: Common, tongue: Voice) -> Iterable[str]:
    """The numbers that all the barn's horses teach together, each with how sure it is; what is as computed not.

    One line says so where all are.
    """
    measures = tongue.measures
    said = []
    if abs(common.wind - 1) >= WORTH_SAYING_TIMES:
        low, high = (measures.number(common.wind * exp(side * common.wind_sd), 1) for side in (-1, 1))
        said.append(tongue.say("barn wind", value=measures.number(common.wind, 1), low=low, high=high))
    for line, by, unsure in (
        ("barn fill more" if common.fill_gives_c > 0 else "barn fill less", common.fill_gives_c, common.fill_sd_c),
        ("barn borne", common.bears_less_c, common.bears_sd_c),
        (
            "barn stall warmer" if common.stall_warmer_c > 0 else "barn stall colder",
            common.stall_warmer_c,
            common.stall_sd_c,
        ),
    ):
        if abs(by) >= WORTH_SAYING_C:
            value, sd = measures.difference(abs(by), 1), measures.difference(unsure, 1)
            said.append(tongue.say(line, fill=measures.fill(100), value=value, sd=sd))
    if abs(common.regrowth - 1) >= WORTH_SAYING_TIMES:
        value, sd = measures.number(common.regrowth, 1), measures.number(common.regrowth_sd, 1)
        said.append(tongue.say("barn regrowth", value=value, sd=sd))
    return said or [tongue.say("barn as computed")]
