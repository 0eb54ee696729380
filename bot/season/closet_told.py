"""The closet in words, in the reader's tongue: what to do first, what was missed, seen, and never worn."""

from collections.abc import Iterable, Mapping, Sequence

from bot.layout import lay_out
from bot.season.closet import BARE, NEEDED_DAYS, Closet
from bot.season.past import ELSEWHERE
from bot.season.wardrobe import Advice
from bot.voice import Voice, plain

MOST = 5  # lines of one list: a phone's screen
MOST_NAMED = 12  # pieces in a row
SAID_H = 1.0  # fewer hours are not worth a word
DO = {
    "second": "closet second",
    "mend": "closet mend",
    "find": "closet find",
    "reproof": "closet reproof",
}
FELT = {"cold": "closet cold", "warm": "closet warm", "rubbed": "closet rubbed"}


def told(closet: Closet, tongue: Voice, horse: str | None = None) -> str:
    """The whole answer; of one horse's clothes alone where one is named."""
    advice = closet.advice
    if advice is None:
        return lay_out(tongue.say("closet too short", days=closet.days, needed=NEEDED_DAYS))
    first = [_advice(k, a, tongue) for k, a in enumerate(_of(horse, advice.advice), 1)]
    missed = [_missed(a, tongue) for a in _of(horse, advice.missed)]
    own = {g.id for g in tongue.barn.garments if horse is None or g.horse == horse}
    seen = [_seen(g, by, tongue) for g, by in _most_seen(closet.reports) if g in own or (g == BARE and horse is None)]
    never, leaking = ([g for g in pieces if g in own] for pieces in (closet.never_worn, closet.leaking))
    return lay_out(
        _head(closet, tongue),
        *(_list("closet first", first, tongue) if first else [tongue.say("closet nothing")]),
        *_list("closet missed head", missed, tongue),
        *_list("closet seen head", seen, tongue),
        tongue.say("closet leaking", pieces=_row(closet, leaking, tongue)) if leaking else None,
        tongue.say("closet never", pieces=_row(closet, never, tongue)) if never else tongue.say("closet all worn"),
        tongue.say("closet honest"),
        tongue.say("guide"),
    )


def _of(horse: str | None, advice: Sequence[Advice]) -> list[Advice]:
    return [a for a in advice if horse in (None, a.horse)]


def _head(closet: Closet, tongue: Voice) -> str:
    return tongue.say(
        "closet head",
        start=tongue.day(closet.first),
        end=tongue.day(closet.last),
        days=closet.days,
        rounds=closet.rounds,
        coldest=tongue.measures.temperature(closet.coldest_c),
        warmest=tongue.measures.temperature(closet.warmest_c),
    )


def _list(head: str, lines: Sequence[str], tongue: Voice) -> Iterable[str]:
    """A headed list; nothing where it is empty."""
    if lines:
        yield tongue.say(head)
        yield from lines[:MOST]
        if len(lines) > MOST:
            yield tongue.say("closet more", count=len(lines) - MOST)


def _advice(rank: int, advice: Advice, tongue: Voice) -> str:
    """As in "1. Pip: a 200 g liner, 57 in, would take away 238 h too cold"."""
    if advice.do == "buy":
        kind, size = tongue.kind(advice.kind, advice.fill_g), tongue.measures.size(advice.size_in)
        what = tongue.say("closet buy", piece=kind, size=size)
    else:
        what = tongue.say(DO[advice.do], piece=tongue.piece(advice.garment, advice.horse))
    hours = _hours(advice.cold_h, advice.hot_h, tongue)
    more = _hours(-advice.cold_h, -advice.hot_h, tongue)
    told = tongue.say("closet price", hours=hours, more=more) if more else hours
    return tongue.say("closet advice", rank=rank, horse=plain(advice.horse), what=what, hours=told)


def _hours(cold_h: float, hot_h: float, tongue: Voice) -> str:
    told = [
        tongue.say(line, hours=tongue.measures.hours(hours))
        for line, hours in (("closet cold hours", cold_h), ("closet warm hours", hot_h))
        if hours >= SAID_H
    ]
    return tongue.names(told) if told else ""


def _missed(advice: Advice, tongue: Voice) -> str:
    """As in "Juniper's 150 g liner: 9× (wet 7×, washing 2×)"."""
    why = sorted(advice.rounds.items(), key=lambda item: -item[1])
    told = (_times(_why(word, tongue), count, tongue) for word, count in why)
    return tongue.say("closet missed", piece=tongue.whose(advice.garment), count=advice.missed, why=", ".join(told))


def _why(word: str, tongue: Voice) -> str:
    if word == ELSEWHERE:
        return tongue.say("closet elsewhere")
    return tongue.say(FELT[word]) if word in FELT else tongue.state(word)


def _times(what: str, count: int, tongue: Voice) -> str:
    return tongue.say("closet times", what=what, count=count)


def _most_seen(reports: Mapping[str, Mapping[str, int]]) -> list[tuple[str, Mapping[str, int]]]:
    return sorted(reports.items(), key=lambda item: -sum(item[1].values()))


def _seen(garment: str, by: Mapping[str, int], tongue: Voice) -> str:
    words = (_times(tongue.say(FELT[what]), count, tongue) for what, count in by.items())
    piece = tongue.whose(garment) if garment != BARE else tongue.say("bare")
    return tongue.say("closet seen", piece=piece, seen=", ".join(words))


def _row(closet: Closet, garments: Sequence[str], tongue: Voice) -> str:
    """Pieces in a row, each with its state where it cannot be worn now."""
    named = []
    for g in garments[:MOST_NAMED]:
        out = closet.out.get(g)
        named.append(f"{tongue.whose(g)} ({tongue.state(out)})" if out else tongue.whose(g))
    more = len(garments) - MOST_NAMED
    return ", ".join([*named, *([tongue.say("closet more", count=more)] if more > 0 else [])])
