"""The barn file as it should be: every key, its units, who is who."""

from datetime import date, time
from pathlib import Path
from typing import Any, get_args

import pytest

from bot.barn import PROVIDERS, Barn, check, demo_path, load, plain
from bot.forecast import PROVIDERS as ASKED

SMALL = """
barn: Small Barn
timezone: Europe/Paris
place: {latitude: 48.1, longitude: 2.2}
rounds: [{name: morning, at: 07:00}]
horses: [{name: Ned}]
"""


@pytest.fixture
def demo() -> Barn:
    """The demo barn."""
    return load(demo_path())


def written(tmp_path: Path, text: str) -> Path:
    """A barn file with this text."""
    path = tmp_path / "barn.yaml"
    path.write_text(text, encoding="utf-8")
    return path


def test_the_demo_barn_is_a_whole_barn(demo: Barn) -> None:
    """Twelve horses of different kind, about forty garments, four spares, seven people, two rounds, no fault."""
    assert (len(demo.horses), len(demo.garments), len(demo.people), len(demo.rounds)) == (12, 40, 7, 2)
    assert sum(garment.horse is None for garment in demo.garments) == 4
    assert {horse.species for horse in demo.horses} == {"horse", "pony", "donkey"}
    assert check(demo_path())[1] == []


def test_the_demo_barn_uses_every_key() -> None:
    """Who copies the demo barn has seen every key there is."""
    text = demo_path().read_text(encoding="utf-8")
    models: list[Any] = [Barn]
    for model in models:
        for name, field in model.model_fields.items():
            assert f"{name}:" in text, f"{model.__name__}.{name} is not in the demo barn"
            models += [m for m in _parts(field.annotation) if m not in models]
    assert len(models) == 11


def _parts(annotation: Any) -> list[Any]:
    found = [annotation] if hasattr(annotation, "model_fields") else []
    return found + [part for inner in get_args(annotation) for part in _parts(inner)]


def test_what_may_be_left_out_has_the_usual_value(tmp_path: Path) -> None:
    """A barn of five lines is a barn."""
    barn = load(written(tmp_path, SMALL))
    ned = barn.horse("Ned")
    assert (barn.units, barn.forecast, barn.posting.lead_min) == ("metric", ("open-meteo",), 45)
    assert (ned.species, ned.coat, ned.hay, ned.condition, ned.wearing, ned.weight_kg) == (
        "horse", "average", "outside", 5, None, None,
    )  # fmt: skip


@pytest.mark.parametrize("at", ["07:00", '"07:00"', "'7:00'", "7:00"])
def test_a_round_is_at_the_hour_it_says_however_it_is_quoted(tmp_path: Path, at: str) -> None:
    """Older YAML reads 16:30 as a number of seconds; here a clock is a clock."""
    assert load(written(tmp_path, SMALL.replace("07:00", at))).rounds[0].at == time(7)


def test_plain_words_stay_words(tmp_path: Path) -> None:
    """YAML 1.2: no, off and on are words; so is whatever a horse is called, also 1812, null-ish or true."""
    text = SMALL.replace("{name: Ned}", "{name: No}, {name: 1812, also: [on, 0x1F]}, {name: true}, {name: 1e3}")
    barn = load(written(tmp_path, text))
    assert [horse.name for horse in barn.horses] == ["No", "1812", "true", "1e3"]
    assert barn.horse("1812").also == ("on", "0x1F")


@pytest.mark.parametrize(
    "name", ["<b>Bo</b>", "a<b", "🐴", "Zoë", "O'Malley's \"Best\"", "夜", "- x", "#1", "%", "{a}"]
)
def test_names_may_hold_any_characters(tmp_path: Path, name: str) -> None:
    """A name is kept as it is written."""
    quoted = "'" + name.replace("'", "''") + "'"
    assert load(written(tmp_path, SMALL.replace("Ned", quoted))).horses[0].name == name


def test_the_same_thing_may_be_written_once_and_used_twice(tmp_path: Path) -> None:
    """Anchors, aliases and merged groups save typing in a big barn."""
    horses = "\n  - &ned {name: Ned, coat: heavy, born: 2011}\n  - {<<: *ned, name: Ted, born: 2012}"
    barn = load(written(tmp_path, SMALL.replace("[{name: Ned}]", horses)))
    assert (barn.horse("Ted").coat, barn.horse("Ted").born, barn.horse("Ned").born) == ("heavy", 2012, 2011)


def test_people_are_known_by_any_spelling_of_their_names(demo: Barn) -> None:
    """Phones drop accents and capitals."""
    assert demo.person("ines") is demo.person("INÉS ") is demo.person_by_telegram(1002)
    assert demo.person("mae") is demo.person("Maëlle")
    assert demo.person("nobody") is demo.person_by_telegram(4) is demo.person_by_telegram(None) is None


def test_horses_and_garments_are_found_by_exactly_their_names(demo: Barn) -> None:
    """What is recorded by name is found by name."""
    assert demo.horse("Maple").names == ("Maple", "Mapes")
    assert demo.garment("maple-liner").fill_g == 100
    for find, name in ((demo.horse, "maple"), (demo.garment, "blue liner")):
        with pytest.raises(KeyError):
            find(name)


def test_sizes_come_in_inches_or_centimetres(demo: Barn) -> None:
    """75 in are 190.5 cm, by the definition of the inch."""
    assert demo.horse("Maple").size == 75
    assert demo.horse("Clementine").size == pytest.approx(145 / 2.54)
    assert demo.horse("Clementine").size_in is None


def test_dates_are_dates_and_years_are_years(demo: Barn) -> None:
    """A birth may be either; a clip has its day."""
    assert demo.horse("Sparrow").born == date(2025, 4, 30)
    assert demo.horse("Maple").born == 2009
    assert demo.horse("Maple").clip.on == date(2026, 10, 28)


def test_a_forecast_file_lies_beside_the_barn_file(tmp_path: Path) -> None:
    """file:PATH does not depend on where the command is given."""
    barn = load(written(tmp_path, SMALL + "forecast: ['file: mine.csv', nws]\n"))
    assert barn.forecast == (f"file:{tmp_path / 'mine.csv'}", "nws")


def test_the_file_knows_the_providers_there_are() -> None:
    """A name that check allows is one that can be asked."""
    assert set(PROVIDERS) == set(ASKED)


def test_the_zone_is_the_barns(demo: Barn) -> None:
    """Rounds are on the barn's clocks."""
    assert demo.zone.key == "America/New_York"


@pytest.mark.parametrize(
    ("name", "other"), [("Łódź", "lodz"), ("SØREN", "soren"), ("Œillet", "oeillet"), ("é", "e\u0301")]
)
def test_capitals_and_accents_make_no_other_name(name: str, other: str) -> None:
    """Letters that Unicode does not take apart are taken apart too."""
    assert plain(name) == plain(other)
    assert plain("́") == "́"  # a lone accent is not nobody
