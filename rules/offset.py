"""One horse's offset from all its signs: bounded, fading, explained.

The offset says how much more (positive) or less (negative) a horse feels the cold than the model says. A sign is
ordered evidence about it: with margins c (cold) and h (heat) at the hour seen, the horse is felt to be

    sweating below −h, hot below ½ − h, comfortable between, cold above c, shivering above c + 3

where "felt" is offset + the speaker's bias + noise. So a sign teaches much where the model did not expect it and next
to nothing where it did, and no cold word ever lowers the offset ("cold" does not say "not shivering"). The posterior
is exact on a grid. What one person says shares that person's bias, integrated out, so however often one person
repeats a sign, it never weighs as much as two people who agree. All evidence is weighed every time: order does not
matter, and undoing a report is leaving it out.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby
from math import isfinite

import numpy as np

from rules.weather import Floats

# Standing of every number here: assumed, no published trial of owners' reports on rugged horses was found.
BOUND_C = 6.0  # an individual's lower critical temperature is quoted ± 5 K; no horse is let further out
PRIOR_SD_C = 2.0  # K; two horses in three within ± 2 K of the model
NOISE_C = 2.0  # K, logistic scale of what people see, and of the balance itself, at one hour
HOT_C = 0.5  # K of heat margin left when a hand under the rug says hot; sweating begins at none
SHIVERING_C = 3.0  # K below the lower critical temperature at which shivering is seen; cold is said at none
WRONG = 0.02  # share of reports that have nothing to do with the horse's warmth (another horse, a joke, a gallop)
BIAS_SD_C = 0.8  # K, how far one person's idea of warm differs from the barn's
ASTRAY = 0.1  # share of people whose word on one horse is out of line altogether,
ASTRAY_SD_C = 5.0  # K, by about so much
REPEAT_S = 12 * 3600  # reports of one person closer than this share one report's weight, in proportion
HALF_LIFE_S = 90 * 86400  # after so long a report counts half
KEPT_AFTER_CHANGE = 0.3  # what a report from before a clip or an illness still counts

_STEP = 0.5
_OFFSET: Floats = np.arange(-BOUND_C, BOUND_C + _STEP / 2, _STEP)  # (offset,)
_FELT: Floats = np.arange(-BOUND_C - 4, BOUND_C + 4 + _STEP / 2, _STEP)  # (felt,): offset + bias
_LOG_PRIOR: Floats = -0.5 * (_OFFSET / PRIOR_SD_C) ** 2


def _bias() -> Floats:
    """Chance of each felt offset for each true one through the speaker's own bias; axes (felt, offset)."""
    apart = _FELT[:, None] - _OFFSET
    close, astray = (np.exp(-0.5 * (apart / sd) ** 2) for sd in (BIAS_SD_C, ASTRAY_SD_C))
    spread: Floats = (1 - ASTRAY) * close / close.sum(axis=0) + ASTRAY * astray / astray.sum(axis=0)
    return spread


_BIAS = _bias()

_RANK = {"sweating": 0, "hot": 1, "comfortable": 2, "cold": 3, "shivering": 4}


@dataclass(frozen=True)
class Evidence:
    """One sign, weighed against the margins [K] the horse had by the model alone (offset left out) at that hour.

    at_s: POSIX seconds. sign: one of the barn's sign words; wet, rubbed and unwell teach nothing about warmth.
    explained: something else explains it (after work, soaked garment, ill). who: whose word it is.
    weight: 1 for a sign somebody reported, less for weaker word (a round ticked done without a remark).
    bears_c: what a hardy horse may lack and still be called fine [K]; the plan lets it, so the learning must too, or a
    horse found cold within it would never be dressed warmer.
    """

    at_s: int
    sign: str
    cold_margin_c: float
    heat_margin_c: float
    explained: bool = False
    who: str = ""
    weight: float = 1.0
    bears_c: float = 0.0

    @property
    def teaches(self) -> bool:
        """Whether this can move the offset at all."""
        known = isfinite(self.cold_margin_c) and isfinite(self.heat_margin_c)
        return self.sign in _RANK and known and not self.explained and self.weight > 0


@dataclass(frozen=True)
class Learned:
    """What is known of a horse: mean and standard deviation of its offset [K].

    shifts: what each piece of evidence moved the mean by [K], in the order given, taken in order of time.
    """

    mean_c: float = 0.0
    sd_c: float = PRIOR_SD_C
    shifts: tuple[float, ...] = ()


def learn(evidence: Sequence[Evidence], now_s: int, widen_at_s: Sequence[int] = ()) -> Learned:
    """The offset after all evidence up to now.

    now_s, widen_at_s: POSIX seconds; the latter the instants after which older evidence counts less (a clip, an
    illness, a new season). Evidence from after now_s is left out. Mean within ± BOUND_C.
    """
    order = [k for k in sorted(range(len(evidence)), key=lambda k: _place(evidence[k])) if evidence[k].at_s <= now_s]
    used = [evidence[k] for k in order if evidence[k].teaches]
    steps = _log_posteriors(used, now_s, widen_at_s)
    density = np.exp(steps - steps.max(axis=1, keepdims=True))
    density /= density.sum(axis=1, keepdims=True)
    means = density @ _OFFSET
    moved = iter(np.diff(means).tolist())
    shifts = [0.0] * len(evidence)
    for k in order:
        if evidence[k].teaches:
            shifts[k] = next(moved)
    spread = float(density[-1] @ (_OFFSET - means[-1]) ** 2)
    return Learned(float(means[-1]), spread**0.5, tuple(shifts))


def _place(one: Evidence) -> tuple[int, str, str, float, float, float]:
    return one.at_s, one.who, one.sign, one.cold_margin_c + one.bears_c, one.heat_margin_c, one.weight


def _log_posteriors(used: Sequence[Evidence], now_s: int, widen_at_s: Sequence[int]) -> Floats:
    """Log posterior before any and after each piece of evidence, unnormalised; axes (evidence + 1, offset)."""
    if not used:
        return _LOG_PRIOR[None]
    said = _weights(used, now_s, widen_at_s)[:, None] * np.log(_chance(used))
    by_person = sorted(range(len(used)), key=lambda k: used[k].who)  # stable: each person's in order of time
    total = np.cumsum(said[by_person], axis=0)
    told = np.empty((len(used) + 1, len(_OFFSET)))
    told[0] = _LOG_PRIOR
    start = 0
    for _, own in groupby(by_person, key=lambda k: used[k].who):
        rows = [k + 1 for k in own]
        heard = total[start : start + len(rows)] - (total[start - 1] if start else 0.0)
        top = heard.max(axis=1, keepdims=True)
        meant = np.log(np.exp(heard - top) @ _BIAS) + top
        meant[1:] -= meant[:-1].copy()
        told[rows] = meant
        start += len(rows)
    return told.cumsum(axis=0)


def _chance(used: Sequence[Evidence]) -> Floats:
    """Chance of hearing each sign for each felt offset; axes (evidence, felt)."""
    cold = np.array([one.cold_margin_c + one.bears_c for one in used])
    heat = np.array([one.heat_margin_c for one in used])
    rank = np.array([_RANK[one.sign] for one in used])
    crossed = np.maximum(HOT_C - heat - cold, 0.0) / 2  # where too hot and too cold meet, comfort is one point
    hot, chilly = HOT_C - heat - crossed, cold + crossed
    far = np.full_like(cold, 60.0)
    low = np.stack([-far, -far, hot, chilly, chilly + SHIVERING_C])
    high = np.stack([hot - HOT_C, hot, chilly, far, far])
    row = np.arange(len(used))
    over, under = (0.5 * np.tanh((_FELT - edge[rank, row][:, None]) / (2 * NOISE_C)) for edge in (low, high))
    chance: Floats = (1 - WRONG) * (over - under) + WRONG / len(_RANK)
    return chance


def _weights(used: Sequence[Evidence], now_s: int, widen_at_s: Sequence[int]) -> Floats:
    """What each piece counts, 0 to 1: faded by age and by changes since, shared among one person's repeats."""
    at = np.array([one.at_s for one in used], dtype=float)
    own = np.array([one.weight for one in used])
    names = {one.who: k for k, one in enumerate(used)}
    who = np.array([names[one.who] for one in used])
    near = np.maximum(0.0, 1 - np.abs(at[:, None] - at) / REPEAT_S) * (who[:, None] == who)
    changes = np.array([[change for change in widen_at_s if change <= now_s]], dtype=float)
    since = (at[:, None] < changes).sum(axis=1)
    faded = 0.5 ** ((now_s - at) / HALF_LIFE_S) * KEPT_AFTER_CHANGE**since
    counts: Floats = own / np.maximum(near @ own, 1.0) * faded
    return counts
