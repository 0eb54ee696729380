"""One check against a published value: what, where from, what the model gives; and all of them as a table."""

import runpy
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path
from typing import Literal, NamedTuple

import pytest
from _pytest.mark.structures import ParameterSet

Kind = Literal["independent", "calibration", "exact", "ordering"]
KINDS: dict[Kind, str] = {
    "independent": "no number of the model was chosen with this value in view",
    "calibration": "a number of the model was chosen with this value in view; a regression test, no proof",
    "exact": "arithmetic or a standard; may only be met",
    "ordering": "only the order of several outcomes was published",
}


class Band(NamedTuple):
    """What a published value allows, ends included, and how it is written."""

    low: float
    high: float
    written: str


def near(value: float, tolerance: float) -> Band:
    """A published value and how far off is still agreement."""
    return Band(value - tolerance, value + tolerance, f"{value:g} ± {tolerance:g}")


def between(low: float, high: float, tolerance: float = 0.0) -> Band:
    """A published range, and how far beyond is still agreement."""
    return Band(low - tolerance, high + tolerance, f"{low:g} to {high:g}" + (f" ± {tolerance:g}" if tolerance else ""))


HOLDS = Band(1, 1, "holds")


@dataclass(frozen=True)
class Check:
    """A published value and the model's answer; an ordering answers 1 where the order holds.

    miss: why the model is known not to meet it. Then its test is an expected failure, and turns red on the day
    the model does meet it.
    """

    what: str
    kind: Kind
    published: Band
    found: Callable[[], float]
    source: str
    unit: str = ""
    miss: str = ""

    def holds(self) -> bool:
        """Whether the model's answer lies in the band."""
        return self.published.low <= self.found() <= self.published.high


def each(checks: Iterable[Check]) -> list[ParameterSet]:
    """Checks as test parameters; known misses as strict expected failures with their reason."""
    return [
        pytest.param(
            check, id=check.what, marks=pytest.mark.xfail(reason=check.miss, strict=True) if check.miss else ()
        )
        for check in checks
    ]


def every() -> list[Check]:
    """All checks of all subjects, in the order of their files."""
    files = sorted(Path(__file__).parent.glob("test_*.py"))
    return [check for file in files for check in runpy.run_path(str(file))["CHECKS"]]


def table() -> str:
    """All checks as a Markdown table, the misses marked, and the count by kind."""
    checks = every()
    lines = ["| what | published | model | kind | source |", "|---|---|---|---|---|", *map(_row, checks), ""]
    met = sum(not check.miss for check in checks)
    lines.append(f"{met} of {len(checks)} met, the misses stay in the table:")
    for kind, meaning in KINDS.items():
        of_kind = [check for check in checks if check.kind == kind]
        lines.append(f"- {kind}, {sum(not check.miss for check in of_kind)} of {len(of_kind)}: {meaning}.")
    return "\n".join(lines)


def _row(check: Check) -> str:
    found = ("yes" if check.found() else "no") if check.kind == "ordering" else f"{check.found():.4g} {check.unit}"
    if check.miss:
        found = f"**{found.strip()}, missed:** {check.miss}"
    return f"| {check.what} | {check.published.written} | {found.strip()} | {check.kind} | {check.source} |"


if __name__ == "__main__":
    print(table())
