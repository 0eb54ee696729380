"""Shared: where most horses of a barn differ from the model in the same way, so that it is the model that errs here.

Five numbers for the whole barn: how hard the wind blows, what fill gives, how much cold a horse is let bear, how warm
the stalls are, how fast clipped coats grow back. All signs of all horses are explained together, each horse with an
offset of its own, each person with a measure and a share of wrong reports: only what several people saw on several
horses is left for these five. Found is the mode of the posterior, by Newton's steps with the products of the scores
for its curvature (Berndt and others 1974, from memory). No person weighs more than all others together, and what makes
horses colder (less wind, more from fill, warmer stalls, coats grown back) counts only as far as it stands without any
one of them, beside the least that horses are let bear by any such count.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cached_property, lru_cache
from typing import NamedTuple

import numpy as np

from rules import parameters as p
from rules.offset import DAY_S, WINDS, Common, Evidence, rank
from rules.weather import Floats

Places = np.ndarray[tuple[int], np.dtype[np.int_]]

STEPS = 24
LENGTHS = (1.0, 0.5, 0.25, 0.1)  # of a step, the first that gains
# places of the numbers: the barn's five, what all horses share, then each horse's, then each person's
WIND, FILL, BORNE, STALL, SLOWER, ALL, FIRST_HORSE = range(7)
COLD, HEAT = 0, 1
_LOG_WINDS: Floats = np.log(WINDS)


@dataclass(frozen=True)
class _Said:
    """All signs as columns. winds: margins in each of WINDS, (sign, wind, side); shorn: (sign, side); rank, horse, who:
    indices.
    """

    winds: Floats
    bears: Floats
    fill: Floats
    stall: Floats
    shorn: Floats
    rank: Places
    horse: Places
    who: Places
    weight: Floats
    horses: int
    people: int

    @cached_property
    def slopes(self) -> Floats:
        """What each number does to both rooms, (sign, side, number); the wind's, which its place decides, left 0."""
        row = np.arange(len(self.rank))
        slopes = np.zeros((len(row), 2, FIRST_HORSE + self.horses + self.people))
        slopes[:, COLD, FILL], slopes[:, HEAT, FILL] = self.fill, -self.fill
        slopes[:, COLD, BORNE] = -1.0
        slopes[:, COLD, STALL], slopes[:, HEAT, STALL] = self.stall, -self.stall
        slopes[:, :, SLOWER] = self.shorn
        for number in (np.full_like(row, ALL), FIRST_HORSE + self.horse, FIRST_HORSE + self.horses + self.who):
            slopes[row, COLD, number], slopes[row, HEAT, number] = -1.0, 1.0
        return slopes


class _Look(NamedTuple):
    """The posterior at one place: its logarithm, slope and curvature, and how likely each sign is a wrong report."""

    value: float
    slope: Floats
    bend: Floats
    astray: Floats


@lru_cache(maxsize=16)  # asked again at every report of a day
def common(herd: tuple[tuple[Evidence, ...], ...], now_s: int) -> Common:
    """What all horses' signs up to now say of the barn: as computed where too few people spoke of too few horses."""
    told = [[one for one in own if one.teaches and one.winds and one.at_s <= now_s] for own in herd]
    found, people = _fit(told, now_s), {one.who for own in told for one in own}
    if found == Common():
        return found
    without = [_fit([[one for one in own if one.who != who] for own in told], now_s) for who in sorted(people)]
    calmest = max(found.wind, min(1.0, max(one.wind for one in without)))
    most = min(found.fill_gives_c, max(0.0, min(one.fill_gives_c for one in without)))
    least = max(found.bears_less_c, *(one.bears_less_c for one in without))
    stall = min(found.stall_warmer_c, max(0.0, min(one.stall_warmer_c for one in without)))
    regrowth = min(found.regrowth, max(1.0, min(one.regrowth for one in without)))
    return replace(found, wind=calmest, fill_gives_c=most, bears_less_c=least, stall_warmer_c=stall, regrowth=regrowth)


def _fit(herd: Sequence[Sequence[Evidence]], now_s: int) -> Common:
    told = [own for own in herd if own]
    people = sorted({one.who for own in told for one in own})
    if len(told) < p.COMMON_HORSES or len(people) < 2:
        return Common()
    said = _columns(told, people, now_s)
    if said.weight.sum() < p.COMMON_FROM:
        return Common()
    found, unsure = _mode(said)
    bears_less = found[BORNE] + p.UNTIL_SURE * unsure[BORNE]
    return Common(
        wind=float(np.exp(np.clip(found[WIND], _LOG_WINDS[0], _LOG_WINDS[-1]))),
        fill_gives_c=float(np.clip(found[FILL], -p.FILL_GIVES_MOST, p.FILL_GIVES_MOST)),
        bears_less_c=float(np.clip(bears_less, 0.0, p.BEARS_LESS_MOST)),
        stall_warmer_c=float(np.clip(found[STALL], -p.STALL_MOST, p.STALL_MOST)),
        regrowth=float(np.clip(1 - found[SLOWER], 0.0, p.REGROWTH_MOST)),
        wind_sd=float(unsure[WIND]),
        fill_sd_c=float(unsure[FILL]),
        bears_sd_c=float(unsure[BORNE]),
        stall_sd_c=float(unsure[STALL]),
        regrowth_sd=float(unsure[SLOWER]),
    )


def _columns(told: Sequence[Sequence[Evidence]], people: Sequence[str], now_s: int) -> _Said:
    every = [(j, one) for j, own in enumerate(told) for one in own]
    who = np.array([people.index(one.who) for _, one in every])
    age = np.array([now_s - one.at_s for _, one in every]) / (p.REPORT_HALF_LIFE * DAY_S)
    weight = np.array([one.weight for _, one in every]) * 0.5**age
    own = np.bincount(who, weight)
    return _Said(
        winds=np.array([one.winds for _, one in every]),
        bears=np.array([one.bears_c for _, one in every]),
        fill=np.array([one.fill_g / 100 for _, one in every]),
        stall=np.array([float(one.stall) for _, one in every]),
        shorn=np.array([one.shorn for _, one in every]),
        rank=np.array([rank(one) for _, one in every]),
        horse=np.array([j for j, _ in every]),
        who=who,
        weight=weight * np.minimum(1.0, (own.sum() - own) / own)[who],
        horses=len(told),
        people=len(people),
    )


def _mode(said: _Said) -> tuple[Floats, Floats]:
    """The most likely numbers, and the standard deviation of each."""
    spread = [p.FACTOR_PRIOR, p.FILL_GIVES_PRIOR, p.BEARS_LESS_PRIOR, p.STALL_PRIOR, p.REGROWTH_PRIOR, p.UNSURE]
    spread += [p.UNSURE] * said.horses + [p.OWN_MEASURE] * said.people
    precise = 1 / np.array([float(one) for one in spread]) ** 2
    at, wrong = np.zeros(len(precise)), np.full(said.people, float(p.WRONG_AMONG_SIGNS))
    here = _look(said, at, wrong, precise)
    for _ in range(STEPS):
        step = np.linalg.solve(here.bend, here.slope)
        steps = (at + length * step for length in LENGTHS)
        better = next((to for to in steps if _value(said, to, wrong, precise) > here.value), None)
        if better is None:
            break
        at, wrong = better, _wrong(said, here.astray)
        here = _look(said, at, wrong, precise)
    return at, np.sqrt(np.diag(np.linalg.inv(here.bend)))


def _wrong(said: _Said, astray: Floats) -> Floats:
    """Each person's share of wrong reports, by how many of theirs look so; a few imagined ones hold it near usual."""
    of, all_ = (np.bincount(said.who, said.weight * each, said.people) for each in (astray, np.ones_like(astray)))
    return np.asarray((p.WRONG_AMONG_SIGNS * p.WRONG_HELD_BY + of) / (p.WRONG_HELD_BY + all_))


def _value(said: _Said, at: Floats, wrong: Floats, precise: Floats) -> float:
    """The logarithm of the posterior alone: whether a step gains."""
    chance, _ = _chance(said.rank, _rooms(said, at)[0])
    return _log(said, _mixed(chance, wrong[said.who]), at, precise)


def _mixed(chance: Floats, share: Floats) -> Floats:
    """Chance of each sign from somebody of whose reports this share is wrong."""
    return (1 - share) * chance + share / 5


def _log(said: _Said, mixed: Floats, at: Floats, precise: Floats) -> float:
    return float(said.weight @ np.log(mixed) - 0.5 * precise @ at**2)


def _look(said: _Said, at: Floats, wrong: Floats, precise: Floats) -> _Look:
    rooms, slopes = _rooms(said, at)
    chance, by_room = _chance(said.rank, rooms)
    share = wrong[said.who]
    mixed = _mixed(chance, share)
    scores = np.einsum("ks,ksn->kn", ((1 - share) / mixed)[:, None] * by_room, slopes)
    return _Look(
        value=_log(said, mixed, at, precise),
        slope=said.weight @ scores - precise * at,
        bend=(scores * said.weight[:, None]).T @ scores + np.diag(precise),
        astray=share / 5 / mixed,
    )


def _rooms(said: _Said, at: Floats) -> tuple[Floats, Floats]:
    """Room before cold and before heat [K], (sign, side), and what each number does to it, (sign, side, number)."""
    wind = np.clip(at[WIND], _LOG_WINDS[0], _LOG_WINDS[-1])
    k = int(np.clip(np.searchsorted(_LOG_WINDS, wind) - 1, 0, len(WINDS) - 2))
    rise = (said.winds[:, k + 1] - said.winds[:, k]) / (_LOG_WINDS[k + 1] - _LOG_WINDS[k])
    slopes = said.slopes.copy()
    slopes[:, :, WIND] = rise * (wind == at[WIND])
    rooms = said.winds[:, k] + rise * (wind - _LOG_WINDS[k]) + slopes[:, :, FILL:] @ at[FILL:]
    rooms[:, COLD] += said.bears
    return rooms, slopes


def _chance(said: Places, rooms: Floats) -> tuple[Floats, Floats]:
    """Chance of each sign where the horse has these rooms, and its slope by each; as in `rules.offset`."""
    far = np.full(len(said), 60.0)
    crossed = np.maximum(p.HOT_ROOM - rooms[:, HEAT] - rooms[:, COLD], 0.0) / 2
    hot, cold = p.HOT_ROOM - rooms[:, HEAT] - crossed, rooms[:, COLD] + crossed
    edges = np.stack([-far, hot - p.HOT_ROOM, hot, cold, cold + p.SHIVERING_LACK, far])
    row = np.arange(len(said))
    low, high = (0.5 * np.tanh(edges[said + n, row] / (2 * p.SIGN_NOISE)) for n in (0, 1))
    by_low, by_high = (-(0.25 - low**2) / p.SIGN_NOISE, (0.25 - high**2) / p.SIGN_NOISE)
    by_hot = by_high * (said <= 1) + by_low * ((said == 1) | (said == 2))
    by_cold = by_high * ((said == 2) | (said == 3)) + by_low * (said >= 3)
    return high - low + 1e-9, np.stack([by_cold, -by_hot], axis=1)
