"""The hours behind a decision, for whoever wants to argue with it: a table or CSV of one horse's margins per outfit."""

import csv
import io
from collections.abc import Sequence
from dataclasses import asdict, fields
from datetime import UTC, datetime
from itertools import groupby
from typing import Any

from bot.barn import Barn, plain
from bot.problems import WrongInput
from rules.explain import Row

HEAD = "hour   air  wind  rain  felt  hair%   cold   heat"


def hours_csv(rows: Sequence[Row], barn: Barn, start_s: int) -> str:
    """Every hour of every outfit as CSV, SI units, in the barn's own time."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    names = [f.name for f in fields(Row)]
    writer.writerow(["at", *names])
    for row in rows:
        cells = asdict(row) | {"wear": " + ".join(row.wear) or "bare"}
        writer.writerow([_at(row, barn, start_s).isoformat(), *(_cell(cells[name]) for name in names)])
    return out.getvalue()


def hours_text(rows: Sequence[Row], barn: Barn, start_s: int, rounds: Sequence[str]) -> str:
    """The same as tables 50 columns wide, the chosen outfit of each window first. rounds: the windows' names."""
    lines = []
    for (window, wear), group in groupby(rows, key=lambda row: (row.window, row.wear)):
        found = list(group)
        mark = "chosen" if found[0].chosen else "instead"
        lines += ["", f"{rounds[window]} · {mark}: {' + '.join(wear) or 'bare'}", HEAD]
        lines += [_line(row, barn, start_s) for row in found]
    note = "air, felt °C; wind m/s at the horse; rain mm on it; cold, heat: margins in °C. Calibrated, not validated."
    return "\n".join([*lines[1:], "", note, ""])


def known_horse(barn: Barn, name: str) -> str:
    """The horse meant. WrongInput for a name the barn does not have."""
    found = [h.name for h in barn.horses if plain(name) in map(plain, h.names)]
    if not found:
        raise WrongInput(
            f"plan: no horse “{name}” in {barn.barn}; its horses: {', '.join(h.name for h in barn.horses)}"
        )
    return found[0]


def _at(row: Row, barn: Barn, start_s: int) -> datetime:
    return datetime.fromtimestamp(start_s + 3600 * row.hour, UTC).astimezone(barn.zone)


def _cell(value: Any) -> Any:
    return round(value, 4) if isinstance(value, float) else value


def _line(row: Row, barn: Barn, start_s: int) -> str:
    return (
        f"{_at(row, barn, start_s):%a%H} {row.temperature_c:5.1f} {row.wind_ms:5.1f} {row.rain_mm:5.1f} "
        f"{row.effective_c:5.1f} {row.hair_water_pct:6.1f} {row.cold_margin_c:6.1f} {row.heat_margin_c:6.1f}"
    )
