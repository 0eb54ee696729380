"""One horse's offset from all its signs: bounded, fading, explained.

The offset says how much more (positive) or less (negative) a horse feels the cold than the model says. A sign is
ordered evidence about it: with margins c (cold) and h (heat) at the hour seen, the horse is felt to be

    sweating below −h, hot below ½ − h, comfortable between, cold above c, shivering above c + 3

where "felt" is offset + the speaker's bias + noise. So a sign teaches much where the model did not expect it and next
to nothing where it did, and no cold word ever lowers the offset ("cold" does not say "not shivering"). The posterior
is exact on a grid. What one person says shares that person's bias, integrated out, so however often one person
repeats a sign, it never weighs as much as two people who agree; no one voice moves a horse by more than 1.8 K against
all others (ONE_VOICE_MOST), and what rests on one person's word alone lets no horse bear more cold than the model would
(`Learned.doubt_c`), nor makes the plan surer. All evidence is weighed every time: order does not matter, and undoing a
report is leaving it out.
"""

from bisect import bisect
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from itertools import groupby
from math import isfinite, log

import numpy as np

from rules import parameters as p
from rules.horse import Horse, body
from rules.question import Wearer
from rules.weather import Floats, Site

HOUR_S, DAY_S = 3600, 86_400
WINDS = (0.5, 0.7, 1.0, 1.6, 3.0)  # times the forecast's wind, in which a sign's margins are kept
_STEP = 0.5
_OFFSET: Floats = np.arange(-p.OFFSET_MOST, p.OFFSET_MOST + _STEP / 2, _STEP)  # (offset,)
_FELT: Floats = np.arange(-p.OFFSET_MOST - 4, p.OFFSET_MOST + 4 + _STEP / 2, _STEP)  # (felt,): offset + bias
_LOG_PRIOR: Floats = -0.5 * (_OFFSET / p.UNSURE) ** 2


def _bias() -> Floats:
    """Chance of each felt offset for each true one through the speaker's own bias; axes (felt, offset)."""
    apart = _FELT[:, None] - _OFFSET
    close, astray = (np.exp(-0.5 * (apart / sd) ** 2) for sd in (p.OWN_MEASURE, p.ASTRAY_BY))
    spread: Floats = (1 - p.ASTRAY) * close / close.sum(axis=0) + p.ASTRAY * astray / astray.sum(axis=0)
    return spread


_BIAS = _bias()

_RANK = {"sweating": 0, "hot": 1, "comfortable": 2, "cold": 3, "shivering": 4}


@dataclass(frozen=True)
class Common:
    """How the model errs on most horses of one barn; as it stands, not at all.

    wind: times as hard as by the forecast and the file's exposure; fill_gives_c: what each 100 g/m² gives more than
    computed [K]; bears_less_c: what horses are let lack less than computed [K]; stall_warmer_c: how much warmer a stall
    is than computed [K]; regrowth: times as fast as computed clipped coats grow back. Each with its standard deviation,
    the wind's that of its logarithm.
    """

    wind: float = 1.0
    fill_gives_c: float = 0.0
    bears_less_c: float = 0.0
    stall_warmer_c: float = 0.0
    regrowth: float = 1.0
    wind_sd: float = float(p.FACTOR_PRIOR)
    fill_sd_c: float = float(p.FILL_GIVES_PRIOR)
    bears_sd_c: float = float(p.BEARS_LESS_PRIOR)
    stall_sd_c: float = float(p.STALL_PRIOR)
    regrowth_sd: float = float(p.REGROWTH_PRIOR)

    def at(self, site: Site) -> Site:
        """The place as its horses tell of it."""
        return replace(site, wind_factor=self.wind, stall_warmer_c=self.stall_warmer_c, regrowth=self.regrowth)


@dataclass(frozen=True)
class Evidence:
    """One sign, weighed against the margins [K] the horse had by the model alone (offset left out) at that hour.

    at_s: POSIX seconds. sign: one of the barn's sign words; wet, rubbed and unwell teach nothing about warmth.
    explained: something else explains it (after work, soaked garment, ill). who: whose word it is.
    weight: 1 for a sign somebody reported, less for weaker word (a round ticked done without a remark).
    bears_c: what a hardy horse may lack and still be called fine [K]; the plan lets it, so the learning must too, or a
    horse found cold within it would never be dressed warmer.
    bare: it wore nothing; a warm sign then says more of its winter coat than of its clothes, and counts less.
    winds: cold and heat margin in each of WINDS, where they are known; fill_g: fill that it wore [g/m²]. stall: it
    stood in a stall. shorn: what both margins would be more had nothing grown back of a clipped coat [K].
    """

    at_s: int
    sign: str
    cold_margin_c: float
    heat_margin_c: float
    explained: bool = False
    who: str = ""
    weight: float = 1.0
    bears_c: float = 0.0
    bare: bool = False
    winds: tuple[tuple[float, float], ...] = ()
    fill_g: float = 0.0
    stall: bool = False
    shorn: tuple[float, float] = (0.0, 0.0)

    def under(self, common: Common) -> "Evidence":
        """The same sign weighed against the margins that it had by what is common to this barn."""
        cold, heat = self.cold_margin_c, self.heat_margin_c
        if self.winds and common.wind != 1:
            cold, heat = _between(self.winds, common.wind)
        more = common.fill_gives_c * self.fill_g / 100 + common.stall_warmer_c * self.stall
        colder, cooler = ((1 - common.regrowth) * shorn for shorn in self.shorn)
        bears = self.bears_c - common.bears_less_c
        return replace(self, cold_margin_c=cold + more + colder, heat_margin_c=heat - more + cooler, bears_c=bears)

    @property
    def teaches(self) -> bool:
        """Whether this can move the offset at all."""
        known = isfinite(self.cold_margin_c) and isfinite(self.heat_margin_c)
        return self.sign in _RANK and known and not self.explained and self.weight > 0


@dataclass(frozen=True)
class Learned:
    """What is known of a horse: mean and standard deviation of its offset [K].

    shifts: what each piece of evidence moved the mean by [K], in the order given, taken in order of time.
    doubt_c: how far below 0 and below what all others' words give one person alone has brought the mean [K]: the
    plan lets the horse bear so much less, lest one mistaken voice chill it. stale_c: the same, once that word is a
    day and a half old and nobody else has said it: then the plan goes by it no more.
    common: what most horses of the barn have in common; no part of the offset.
    """

    mean_c: float = 0.0
    sd_c: float = float(p.UNSURE)
    shifts: tuple[float, ...] = ()
    doubt_c: float = 0.0
    stale_c: float = 0.0
    common: Common = Common()


def in_common(herd: Iterable[Learned]) -> Common:
    """What these horses of one barn have in common."""
    return next((one.common for one in herd), Common())


def learn(
    evidence: Sequence[Evidence],
    now_s: int,
    widen_at_s: Sequence[int] = (),
    prior_sd_c: float = float(p.UNSURE),
    common: Common = Common(),
) -> Learned:
    """The offset after all evidence up to now.

    prior_sd_c: how unsure the model is of such a horse before anybody said anything [K]; see `prior_sd`.
    now_s, widen_at_s: POSIX seconds; the latter the instants after which older evidence counts less (a clip, an
    illness, a new season). Evidence from after now_s is left out. Mean within ± OFFSET_MOST.
    """
    order = [k for k in sorted(range(len(evidence)), key=lambda k: _place(evidence[k])) if evidence[k].at_s <= now_s]
    used = [evidence[k].under(common) for k in order if evidence[k].teaches]
    steps = _log_posteriors(used, now_s, widen_at_s) + _OFFSET**2 * (p.UNSURE**-2 - prior_sd_c**-2) / 2
    told = _without_each(used, steps)
    means = _heard_from_all(told @ _OFFSET)
    mean, doubt = float(means[-1]), _doubt(means[-1], told[:, -1] @ _OFFSET)
    moved = iter(np.diff(means).tolist())
    shifts = [0.0] * len(evidence)
    for k in order:
        if evidence[k].teaches:
            shifts[k] = next(moved)
    stale = 0.0 if any(rank(one) < 2 and now_s - one.at_s < p.ONE_WORD_LASTS * HOUR_S for one in used) else doubt
    return Learned(mean, _spread(told[:, -1], doubt), tuple(shifts), doubt, stale, common)


@dataclass(frozen=True)
class Schooling:
    """All that one horse's offset is learned from; see `learn`.

    voices: whose word a further report would be, in turn.
    """

    evidence: tuple[Evidence, ...]
    now_s: int
    widen_at_s: tuple[int, ...] = ()
    prior_sd_c: float = float(p.UNSURE)
    common: Common = field(default_factory=Common)
    voices: tuple[str, ...] = ("",)

    def learned(self) -> Learned:
        """What is known of the horse now."""
        return learn(self.evidence, self.now_s, self.widen_at_s, self.prior_sd_c, self.common)

    def after(self, report: Evidence, times: int) -> Learned:
        """And when the same is seen so many times more, just so far apart that each report counts in full."""
        apart = int(p.REPEATED_WITHIN * HOUR_S)
        more = tuple(
            replace(report, at_s=self.now_s + k * apart, who=self.voices[k % len(self.voices)]) for k in range(times)
        )
        last = self.now_s + (times - 1) * apart
        return replace(self, evidence=self.evidence + more, now_s=last).learned()


def schooled(wearer: Wearer, learned: Learned) -> Wearer:
    """The horse as the plan takes it by what has been learned of it."""
    return replace(
        wearer,
        offset_c=learned.mean_c + learned.stale_c,
        offset_sd_c=learned.sd_c,
        bears_less_c=learned.common.bears_less_c + learned.doubt_c - learned.stale_c,
        fill_gives_c=learned.common.fill_gives_c,
    )


def _density(log: Floats) -> Floats:
    """Probabilities from rows of logarithms."""
    density = np.exp(log - log.max(axis=-1, keepdims=True))
    return np.asarray(density / density.sum(axis=-1, keepdims=True))


def _without_each(used: Sequence[Evidence], steps: Floats) -> Floats:
    """Probabilities without the word of nobody, then of each person; axes (person + 1, evidence + 1, offset)."""
    gained = np.diff(steps, axis=0, prepend=steps[:1])
    own = np.array([[False, *(one.who == who for one in used)] for who in (None, *{one.who for one in used})])
    return _density(steps - (own[:, :, None] * gained).cumsum(axis=1))


def _heard_from_all(means: Floats) -> Floats:
    """The means, (evidence + 1,), no farther than ONE_VOICE_MOST from what each would be without any one person."""
    low, high = means.max(axis=0) - p.ONE_VOICE_MOST, means.min(axis=0) + p.ONE_VOICE_MOST
    return np.asarray(np.where(low < high, np.clip(means[0], low, high), (low + high) / 2))


def _doubt(mean: float, without: Floats) -> float:
    """How much of a mean below 0 would be gone without the one person who brought it down most."""
    return float(max(min(without.max(), 0.0) - mean, 0.0)) if mean < 0 else 0.0


def _spread(told: Floats, doubt: float) -> float:
    """How unsure the offset is [K]: no surer by a word that is doubted than without it."""
    means = told @ _OFFSET
    spreads = np.sqrt((told * (_OFFSET - means[:, None]) ** 2).sum(axis=1))
    return float(max(spreads[0], spreads[means.argmax()]) if doubt else spreads[0])


def _between(winds: Sequence[tuple[float, float]], wind: float) -> tuple[float, float]:
    """Margins in a wind between those of WINDS, straight in its logarithm."""
    k = min(max(bisect(WINDS, wind) - 1, 0), len(WINDS) - 2)
    share = log(wind / WINDS[k]) / log(WINDS[k + 1] / WINDS[k])
    (cold, heat), (cold_next, heat_next) = winds[k], winds[k + 1]
    return cold + share * (cold_next - cold), heat + share * (heat_next - heat)


def silence_says(age_s: float) -> float:
    """Weight of a round ticked done without a remark, so long ago: little, and nothing after some weeks."""
    return float(p.SILENCE_SAYS) if 0 <= age_s <= p.SILENCE_LASTS * DAY_S else 0.0


def rank(one: Evidence) -> int:
    """Place of its sign from too warm to too cold: 0 to 4."""
    return _RANK[one.sign]


def prior_sd(horse: Horse) -> float:
    """How unsure the model is of this horse [K]: more of ponies, donkeys, old, young and sick ones than of a horse."""
    return body(horse).unsure_k


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
    crossed = np.maximum(p.HOT_ROOM - heat - cold, 0.0) / 2  # where too hot and too cold meet, comfort is one point
    hot, chilly = p.HOT_ROOM - heat - crossed, cold + crossed
    far = np.full_like(cold, 60.0)
    low = np.stack([-far, -far, hot, chilly, chilly + p.SHIVERING_LACK])
    high = np.stack([hot - p.HOT_ROOM, hot, chilly, far, far])
    row = np.arange(len(used))
    over, under = (0.5 * np.tanh((_FELT - edge[rank, row][:, None]) / (2 * p.SIGN_NOISE)) for edge in (low, high))
    chance: Floats = (1 - p.WRONG_REPORTS) * (over - under) + p.WRONG_REPORTS / len(_RANK)
    return chance


def _weights(used: Sequence[Evidence], now_s: int, widen_at_s: Sequence[int]) -> Floats:
    """What each piece counts, 0 to 1: faded by age and by changes since, shared among one person's repeats."""
    at = np.array([one.at_s for one in used], dtype=float)
    own = np.array([one.weight * (p.WARM_THOUGH_BARE if one.bare and _RANK[one.sign] < 2 else 1.0) for one in used])
    names = {one.who: k for k, one in enumerate(used)}
    who = np.array([names[one.who] for one in used])
    near = np.maximum(0.0, 1 - np.abs(at[:, None] - at) / (p.REPEATED_WITHIN * HOUR_S)) * (who[:, None] == who)
    changes = np.array([[change for change in widen_at_s if change <= now_s]], dtype=float)
    since = (at[:, None] < changes).sum(axis=1)
    faded = 0.5 ** ((now_s - at) / (p.REPORT_HALF_LIFE * DAY_S)) * p.KEPT_AFTER_CHANGE**since
    counts: Floats = own / np.maximum(near @ own, 1.0) * faded
    return counts
