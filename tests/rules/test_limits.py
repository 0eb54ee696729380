"""The edges of every public function of the physics: calm, zero, one hour, whole numbers, nothing known."""

import inspect
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from rules import acclimatised, coat, dressed, exchange, garment, heat, horse, paths, settled, sun, weather, wetness
from rules.garment import Garment
from rules.horse import Horse
from tests.laboratory import FIELD, HORSE, SHEET, air, case, hours, pieces, site, turnout

ONE = np.zeros(1)
LINER = Garment("liner", "liner", 100)
OUTDOORS = air(hours(count=1))
DONE = heat.balance(case(), OUTDOORS)
AROUND = paths.surroundings(case(), OUTDOORS)
COLD = paths.between(case(), 0.0)
DRY = np.ones((4, 1, 1, 1))

# Each function in calm, at nought, over one hour, given whole numbers: a finite answer of the shape asked for.
PLAIN: dict[Callable[..., object], Callable[[], object]] = {
    exchange.stream: lambda: exchange.stream(0),
    exchange.convection: lambda: exchange.convection(0),
    exchange.radiation: lambda: exchange.radiation(0),
    exchange.saturation_pa: lambda: exchange.saturation_pa(0),
    exchange.evaporation: lambda: exchange.evaporation(0, 0, 0),
    sun.elevation: lambda: sun.elevation(0, 0, ONE),
    sun.likely_solar: lambda: sun.likely_solar(ONE, ONE),
    weather.scenarios: lambda: weather.scenarios(hours(count=1), site()).weight,
    weather.at_horse: lambda: (
        weather.at_horse(weather.scenarios(hours(count=1), site()), hours(count=1), site(), [FIELD]).wind
    ),
    weather.along: lambda: weather.along(OUTDOORS, np.array([[0]])).wind,
    weather.sky_loss: lambda: weather.sky_loss(ONE, ONE),
    horse.weight_kg: lambda: horse.weight_kg(190, 165),
    horse.surface_m2: lambda: horse.surface_m2(500),
    horse.body: lambda: horse.body(HORSE).heat,
    horse.tissue: lambda: horse.tissue(500, 5),
    horse.hardy: lambda: horse.hardy(HORSE),
    horse.tolerance: lambda: horse.tolerance(HORSE),
    coat.coat: lambda: coat.coat(HORSE, site(0.0), 1).depth_mm,
    coat.depth_mm: lambda: coat.depth_mm(HORSE, 0, 1),
    coat.winter: lambda: coat.winter(0, 1),
    coat.winter_share: lambda: coat.winter_share(1),
    coat.regrowth_mm: lambda: coat.regrowth_mm(1, 0),
    acclimatised.day_means: lambda: list(acclimatised.day_means((3600 * k, 0) for k in range(24)).values()),
    garment.layers: lambda: garment.layers([SHEET]).base,
    garment.leak: lambda: garment.leak(SHEET),
    garment.holds_kg: lambda: garment.holds_kg(SHEET),
    garment.fill_resistance: lambda: garment.fill_resistance(0),
    wetness.catch: lambda: wetness.catch(ONE, ONE),
    wetness.per_hour: lambda: wetness.per_hour(0),
    wetness.follow: lambda: wetness.follow(case().soaking, OUTDOORS, 0 * DONE.cold).hair,
    wetness.amount: lambda: wetness.amount(LINER, "dry"),
    wetness.dry_after_h: lambda: wetness.dry_after_h(LINER, "dry", ONE, ONE, ONE),
    dressed.cases: lambda: case().share,
    dressed.as_felt: lambda: dressed.as_felt(case(), ONE).bodies.core,
    paths.wide: lambda: paths.wide(ONE),
    paths.surroundings: lambda: AROUND.effective,
    paths.between: lambda: COLD.tissue,
    paths.hair_left: lambda: paths.hair_left(case(), DONE.water),
    paths.cloth: lambda: paths.cloth(case(), AROUND, 0 * DONE.cold).resistance,
    paths.paths: lambda: paths.paths(case(), AROUND, DRY, COLD).trunk,
    paths.open_skin: lambda: paths.open_skin(case().share, paths.paths(case(), AROUND, DRY, COLD)),
    paths.trunk_skin: lambda: paths.trunk_skin(case().share, paths.paths(case(), AROUND, DRY, COLD)),
    paths.through: lambda: paths.through(case(), paths.paths(case(), AROUND, DRY, COLD), 0 * DONE.cold),
    heat.balance: lambda: heat.balance(case(), OUTDOORS).cold,
    heat.judged: lambda: heat.judged(case(), AROUND, DONE.water).cold,
    heat.surplus: lambda: heat.surplus(case(), AROUND),
    heat.cloth_share: lambda: heat.cloth_share(case(), DONE.water),
    heat.drying_heat: lambda: heat.drying_heat(case(), DONE.water),
    heat.extra_hay_kg: lambda: heat.extra_hay_kg(case(), DONE.extra),
    settled.account: lambda: settled.account(case(), OUTDOORS).made,
}
MODULES = (exchange, sun, weather, horse, coat, acclimatised, garment, wetness, dressed, paths, heat, settled)


def test_every_public_function_stands_in_this_table() -> None:
    """A new function of the physics brings its edges along."""
    public = {
        function
        for module in MODULES
        for name, function in inspect.getmembers(module, inspect.isfunction)
        if function.__module__ == module.__name__ and not name.startswith("_")
    }
    assert public == set(PLAIN)


@pytest.mark.parametrize("function", PLAIN, ids=lambda f: f"{f.__module__}.{f.__name__}")
def test_nought_and_whole_numbers_give_finite_answers(function: Callable[..., object]) -> None:
    """Calm, dry, freezing, one hour: no warning, no infinity, no surprise."""
    assert np.isfinite(np.asarray(PLAIN[function](), dtype=np.float64)).all()


@pytest.mark.parametrize(
    "answer",
    [
        lambda nan: exchange.convection(nan),
        lambda nan: exchange.convection(1.0, nan),
        lambda nan: exchange.radiation(nan),
        lambda nan: exchange.saturation_pa(nan),
        lambda nan: exchange.evaporation(nan, 50, 1),
        lambda nan: exchange.evaporation(5, nan, 1),
        lambda nan: exchange.evaporation(5, 50, nan),
        lambda nan: sun.elevation(44.0, 0.0, nan),
        lambda nan: sun.likely_solar(30 + nan, nan),
        lambda nan: weather.sky_loss(nan, 0 * nan),
        lambda nan: wetness.catch(nan, 1 + 0 * nan),
        lambda nan: wetness.per_hour(nan),
    ],
)
def test_nan_comes_out_where_nan_went_in(answer: Callable[[np.ndarray], np.ndarray]) -> None:
    """Element by element, without a warning."""
    found = np.asarray(answer(np.array([0.5, np.nan, 0.5])))
    assert np.isnan(found).tolist() == [False, True, False]


@pytest.mark.parametrize(
    "weather_now",
    [
        {"temperature": -60.0, "wind": 40.0},
        {"temperature": 50.0, "sun": 1200.0, "cloud": 0.0, "humidity": 5.0},
        {"temperature": 2.0, "wind": 40.0, "rain": 100.0, "humidity": 100.0},
        {"temperature": 38.0},
    ],
    ids=["blizzard", "desert", "hurricane", "as warm as the horse"],
)
@pytest.mark.parametrize("rug", [(), (SHEET,), (LINER, turnout(400, "full"))], ids=["bare", "sheet", "heavy"])
def test_extremes_are_judged(weather_now: dict[str, float], rug: tuple[Garment, ...]) -> None:
    """Weather that no barn will see still has margins, and a band that is a number or an infinity, never NaN."""
    found = heat.balance(case(HORSE, *rug), air(hours(**weather_now)))  # type: ignore[arg-type]
    assert np.isfinite(found.cold).all()
    assert np.isfinite(found.heat).all()
    assert not np.isnan(found.fill_low).any()
    assert not np.isnan(found.fill_high).any()
    assert (found.fill_low >= 0).all()


def test_a_miniature_and_a_shire_are_judged() -> None:
    """From 60 to 1100 kg; the smaller feels it first."""
    small, large = (heat.balance(case(replace(HORSE, weight_kg=kg)), OUTDOORS).cold[0, 0, 0] for kg in (60.0, 1100.0))
    assert small < large


def test_an_empty_barn_is_judged_empty() -> None:
    """No horses, no margins, no error."""
    assert heat.balance(dressed.cases([], site(), 15), OUTDOORS).cold.shape[0] == 0


def test_margins_have_the_axes_that_were_promised() -> None:
    """(case, scenario, hour), for every field but the water."""
    barn = dressed.cases([dressed.Dressed(Horse(n), pieces(SHEET)) for n in "ABC"], site(), 15)
    found = heat.balance(barn, air(hours(rain=1.0, count=5)))
    for name, value in vars(found).items():
        if name != "water":
            assert np.broadcast_shapes(value.shape, (3, 3, 5)) == (3, 3, 5), name
            assert value.shape == (3, 3, 5), name
