"""The barn file written anew with what the chat has changed: nothing else is touched."""

from dataclasses import replace
from datetime import date
from difflib import ndiff
from pathlib import Path
from typing import Any

import pytest

from bot.barn import Barn, demo_path, load
from bot.export import export
from bot.problems import HaybellError
from bot.state import GarmentNow, State, as_filed

ODD = """\
barn: 'Odd & Sons'   # quoted
timezone: Europe/Paris
place: {latitude: 48.1, longitude: 2.2}
rounds:
- {name: "1", at: 7:00}
horses:
- &big
  name: 1812
  coat: heavy
  # a comment of its own
- <<: *big
  name: No
garments:
- {id: "007", kind: sheet, also: [on]}
- {id: <b>, kind: sheet}
"""

JUNIPER_LINER = (
    "  - {id: juniper-liner, horse: Juniper, kind: liner, fill_g: 150, size_in: 74, denier: 210, "
    "rear: leg straps, also: [grey liner]"
)


def changed(state: State, horse: str, **facts: Any) -> State:
    """The state with other facts of one horse."""
    return replace(state, horses={**state.horses, horse: replace(state.horses[horse], **facts)})


def reloaded(tmp_path: Path, text: str) -> Barn:
    """The barn of this text."""
    path = tmp_path / "again.yaml"
    path.write_text(text, encoding="utf-8")
    return load(path)


def test_a_barn_in_which_nothing_was_said_is_written_as_it_stands() -> None:
    """Comments, quotes, blank lines, columns: letter for letter."""
    barn = load(demo_path())
    assert export(demo_path(), barn, as_filed(barn)) == demo_path().read_text(encoding="utf-8")


def test_what_was_said_stands_in_the_new_file(tmp_path: Path) -> None:
    """Clip, wish, clothes and states, read back by the same loader; every other line is the same."""
    barn = load(demo_path())
    state = changed(as_filed(barn), "Maple", clip="full", clip_on=date(2026, 11, 26), keep_bare=True)
    state = changed(state, "Pip", wear=(), clip="bib", clip_on=date(2026, 11, 25))
    state = changed(state, "Juniper", wear=("juniper-medium",))
    state = replace(state, garments={**state.garments, "juniper-liner": GarmentNow("wet")})
    text = export(demo_path(), barn, state)
    again = reloaded(tmp_path, text)
    assert (again.horse("Maple").clip.style, again.horse("Maple").clip.on) == ("full", date(2026, 11, 26))
    assert again.horse("Maple").keep_bare
    assert (again.horse("Pip").wearing, again.horse("Pip").clip.style) == ((), "bib")
    assert again.horse("Juniper").wearing == ("juniper-medium",)
    assert again.garment("juniper-liner").state == "wet"
    before = demo_path().read_text(encoding="utf-8").splitlines()
    changes = [line for line in ndiff(before, text.splitlines()) if line[0] in "+-"]
    assert [line.partition("#")[0].rstrip() for line in changes] == [
        "-     clip: {style: trace, on: 2026-10-28}",
        "+     clip: {style: full, on: 2026-11-26}",
        "-     keep_bare: false",
        "+     keep_bare: true",
        "-     wearing: [juniper-liner, juniper-medium]",
        "+     wearing: [juniper-medium]",
        "+     clip: {style: bib, on: 2026-11-25}",
        "+     wearing: []",
        f"- {JUNIPER_LINER}}}",
        f"+ {JUNIPER_LINER}, state: wet}}",
    ]


def test_a_horse_that_nobody_spoke_of_stays_unspoken_of(tmp_path: Path) -> None:
    """Nobody said what it wears: the file does not say it either."""
    barn = load(demo_path())
    text = export(demo_path(), barn, as_filed(barn))
    assert reloaded(tmp_path, text).horse("Fennel").wearing is None


def test_odd_names_and_another_manner_of_writing_are_kept(tmp_path: Path) -> None:
    """Words that look like numbers stay words; dashes stay where the person puts them."""
    path = tmp_path / "odd.yaml"
    path.write_text(ODD, encoding="utf-8")
    barn = load(path)
    assert export(path, barn, as_filed(barn)) == ODD
    state = changed(as_filed(barn), "No", wear=("007", "<b>"), keep_bare=True)
    again = reloaded(tmp_path, export(path, barn, state))
    assert again.horse("No").wearing == ("007", "<b>")
    assert (again.horse("No").keep_bare, again.horse("1812").keep_bare) == (True, False)
    assert again.horse("No").coat == "heavy"


@pytest.mark.parametrize("text", ["", "[", "barn: x\n", ODD.replace("- <<: *big\n  name: No\n", "")])
def test_a_file_that_was_changed_meanwhile_is_not_overwritten_blindly(tmp_path: Path, text: str) -> None:
    """One line says so, and nothing is written."""
    path = tmp_path / "odd.yaml"
    path.write_text(ODD, encoding="utf-8")
    barn = load(path)
    path.write_text(text, encoding="utf-8")
    with pytest.raises(HaybellError):
        export(path, barn, as_filed(barn))
