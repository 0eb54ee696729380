"""What a horse went through in what it wore: the same as one long look, however the rounds cut it."""

from dataclasses import replace

import numpy as np
import pytest

from rules.dressed import Dressed
from rules.garment import Garment
from rules.horse import Horse
from rules.lived import Carried, Lived, live
from rules.question import Piece, Stay
from rules.weather import Hours, Site

SITE = Site(44.5, -72.3, 300, "open")
OUT = Stay("field")
HORSE = Horse("Otis")
RUG = Piece(Garment("rug", "turnout", 200, waterproof=True))
LINER = Piece(Garment("liner", "liner", 100))
COTTON = Piece(Garment("cotton", "sheet"))
DAY = 330.0


def sky(hours: int = 24, rain: float = 0.0, celsius: float = 3.0) -> Hours:
    """The same hour again and again."""
    like = np.zeros(hours)
    return Hours(
        start_s=1_764_000_000, temperature_c=like + celsius, humidity_pct=like + 85, wind_ms=like + 5, gust_ms=like + 9,
        rain_mm=like + rain, snow_mm=like, cloud_pct=like + 90, solar_wm2=like, rain_probability_pct=like + np.nan,
    )  # fmt: skip


def cut(hours: Hours, first: int, last: int) -> Hours:
    """Hours first to last."""
    columns = {name: value[first:last] for name, value in vars(hours).items() if isinstance(value, np.ndarray)}
    return replace(hours, start_s=hours.start_s + 3600 * first, **columns)


def lived(hours: Hours, *pieces: Piece, before: Carried | None = None, same: bool = True) -> Lived:
    """One horse in these pieces."""
    return live([Dressed(HORSE, pieces)], [OUT], hours, SITE, DAY, before, [same])


@pytest.mark.parametrize(
    "pieces", [(), (RUG,), (LINER, RUG), (COTTON,)], ids=lambda p: "+".join(x.garment.id for x in p)
)
def test_a_round_that_changes_nothing_changes_nothing(pieces: tuple[Piece, ...]):
    """Twelve hours and twelve more are a day: water is carried through the round."""
    whole = lived(sky(rain=0.8), *pieces)
    first = lived(cut(sky(rain=0.8), 0, 12), *pieces)
    second = lived(cut(sky(rain=0.8), 12, 24), *pieces, before=first.carried)
    for name in ("cold", "heat", "wet"):
        parts = np.concatenate([getattr(first, name), getattr(second, name)], axis=1)
        assert parts == pytest.approx(getattr(whole, name), abs=1e-9)


def test_a_horse_rugged_wet_stays_wet_under_it():
    """A dry rug on a soaked back: hours later a hand under it still finds wet hair."""
    soaked = lived(sky(8, rain=4.0)).carried
    under, dry = (lived(sky(3), RUG, before=b, same=False) for b in (soaked, lived(sky(8)).carried))
    assert under.wet[0, 0] == 1
    assert not dry.wet.any()
    assert under.cold[0, 0] < dry.cold[0, 0]


def test_a_horse_unrugged_after_rain_is_drier_than_one_that_stood_bare():
    """What the rug kept dry is dry when it comes off."""
    kept, stood = (lived(sky(8, rain=4.0), *worn).carried for worn in ((RUG,), ()))
    after = [lived(sky(3), before=b, same=False).cold[0, 0] for b in (kept, stood)]
    assert after[0] > after[1]


def test_rain_wets_a_sound_shell_outside_only_and_cotton_through():
    """A hand finds the rug wet and the liner under it dry; a cotton sheet is wet within."""
    shell, cotton = lived(sky(10, rain=3.0), LINER, RUG), lived(sky(10, rain=3.0), COTTON)
    assert shell.clothes == (("dry", "wet"),)
    assert cotton.clothes[0][0] in ("wet", "soaked")
    assert lived(sky(10)).clothes == ((),)


def test_a_shell_that_leaks_wets_what_is_under_it():
    """It lost its proofing: the liner does not come off dry."""
    found = lived(sky(16, rain=4.0), LINER, replace(RUG, leaks=True))
    assert "dry" not in found.clothes[0]


def test_hours_that_nobody_knows_are_not_judged():
    """And the hours after them are."""
    hours = sky(6)
    gap = replace(hours, temperature_c=np.where(np.arange(6) == 2, np.nan, hours.temperature_c))
    found = lived(gap, RUG)
    assert np.isnan(found.cold[0]).tolist() == [False, False, True, False, False, False]
    assert np.isnan(found.wet[0]).tolist() == [False, False, True, False, False, False]
