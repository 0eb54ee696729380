"""What the model leans on: how far each number's own range moves the answer. `python -m tests.published.leaning`.

The answer is the cold margin of a bare winter horse and of a clipped one in a turnout, at −5 °C in a light wind.
"""

from collections.abc import Iterator
from contextlib import contextmanager

from rules import coat, dressed, parameters
from rules.horse import Horse
from rules.parameters import ALL, Parameter
from tests.laboratory import HORSE, cold, turnout

CLIPPED = Horse("Clip", clip="full", clip_age_days=10)
COLD_MORNING = {"temperature": -5.0, "wind": 2.0, "count": 1}


@contextmanager
def instead(name: str, value: float) -> Iterator[None]:
    """The rules with one number at another value."""
    known, depths = ALL[name], dict(coat.WINTER_DEPTH)
    other = Parameter(value, known.low, known.high, known.unit, known.source, known.standing)
    caches = (dressed._body, dressed._coat, dressed._cover)
    try:
        setattr(parameters, name, other)
        coat.WINTER_DEPTH.update({kind: other for kind, depth in depths.items() if depth is known})
        for cache in caches:
            cache.cache_clear()
        yield
    finally:
        setattr(parameters, name, known)
        coat.WINTER_DEPTH.update(depths)
        for cache in caches:
            cache.cache_clear()


def answers() -> tuple[float, float]:
    """Cold margin [K] of the bare horse and of the clipped one in 200 g."""
    return cold(HORSE, **COLD_MORNING), cold(CLIPPED, turnout(200), **COLD_MORNING)


def swing(name: str) -> tuple[float, float]:
    """By how much [K] each answer moves over the number's range."""
    known, found = ALL[name], []
    for value in (known.low, known.high):
        with instead(name, value):
            found.append(answers())
    (bare_low, dressed_low), (bare_high, dressed_high) = found
    return abs(bare_high - bare_low), abs(dressed_high - dressed_low)


def table(rows: int = 12) -> str:
    """The numbers that matter most, as a Markdown table."""
    swings = sorted(((swing(name), name) for name in ALL), key=lambda s: -max(s[0]))
    lines = ["| number | value | range | standing | bare, K | clipped in 200 g, K |", "|---|---|---|---|---|---|"]
    for (bare, rugged), name in swings[:rows]:
        it = ALL[name]
        lines.append(
            f"| {name} | {it:g} {it.unit} | {it.low:g} to {it.high:g} | {it.standing} | {bare:.1f} | {rugged:.1f} |"
        )
    return "\n".join(lines)


if __name__ == "__main__":
    print(table())
