"""What every outfit costs in every window, and how honest the two shortcuts are that make it cheap."""

import numpy as np
import pytest

from rules.dressed import Dressed
from rules.edges import DRY, WET
from rules.lived import live
from rules.outfit import Outfit
from rules.plan import price
from rules.question import Question
from rules.stand import Stand
from rules.weather import Hours
from tests.stable import FIELD, STALL, VERMONT, ask, joined, liner, sheet, turnout, wearer, weather

WARDROBE = [sheet(), turnout(200), liner()]
WET_DAY = weather(3.0, 5.0, rain=1.0, hours=12)


def cold(question: Question, window: int, came: int, wear: tuple[str, ...]) -> np.ndarray:
    """Cold margins by hour of one outfit of Maple, central scenario."""
    priced = price(question)["Maple"]
    outfit = [o.ids for o in priced.outfits[window]].index(wear)
    return priced.stands[window].cold[priced.cases[window][came, outfit]]


def really(first: Outfit, second: Outfit, sky: Hours, stay=FIELD) -> np.ndarray:
    """The same by carrying the water of the first window over into the second, nothing left out."""
    horse, half = wearer().horse, len(sky) // 2
    day = ask(sky, [wearer()], []).day_of_year
    names = [n for n in Hours.__dataclass_fields__ if n not in ("start_s", "spread_c", "spread_wind")]
    halves = [
        Hours(sky.start_s, **{n: getattr(sky, n)[part] for n in names}) for part in (slice(half), slice(half, None))
    ]
    before = live([Dressed(horse, first.pieces)], [FIELD], halves[0], VERMONT, day)
    after = live([Dressed(horse, second.pieces)], [stay], halves[1], VERMONT, day, before.carried, [first == second])
    return after.cold[0]


@pytest.mark.parametrize(
    ("first", "second", "came"),
    [
        (Outfit(), Outfit(), WET),
        (Outfit(), Outfit((turnout(200),)), WET),
        (Outfit((turnout(200),)), Outfit((turnout(200),)), DRY),
        (Outfit((sheet(),)), Outfit((liner(), sheet())), DRY),
    ],
    ids=["stays bare", "dressed after a wet day", "keeps its turnout", "a liner under the sheet"],
)
def test_a_window_priced_by_itself_is_near_the_whole_story(first, second, came):
    """Two ways of coming in stand for every history: within three quarters of a degree after twelve wet hours."""
    sky = joined(WET_DAY, weather(-3.0, 3.0, hours=12))
    priced = cold(ask(sky, [wearer()], WARDROBE), 1, came, second.ids)
    assert np.abs(priced - really(first, second, sky)).max() < 0.75


def test_a_horse_that_was_rained_on_is_colder_in_the_next_window():
    sky = joined(WET_DAY, weather(-3.0, 3.0, hours=12))
    question = ask(sky, [wearer()], WARDROBE)
    assert (cold(question, 1, WET, ()) < cold(question, 1, DRY, ()) - 1.0).any()


def test_after_a_dry_window_it_does_not_matter_what_was_worn():
    question = ask(weather(-3.0, 3.0), [wearer()], WARDROBE)
    np.testing.assert_array_equal(cold(question, 1, WET, ()), cold(question, 1, DRY, ()))


def test_pricing_one_horse_gives_what_pricing_the_barn_gives():
    """So a reply may price the horse it touches and keep the others."""
    horses = [wearer("Maple", clip="trace"), wearer("Pip", FIELD, STALL, clip="full", offset_c=2.0)]
    question = ask(joined(WET_DAY, weather(-6.0, 6.0, hours=12)), horses, [*WARDROBE, turnout(300, None)])
    barn, alone = price(question), price(question, frozenset({"Pip"}))
    assert alone.keys() == {"Pip"}
    for window in (0, 1):
        index, own = barn["Pip"].cases[window], alone["Pip"].cases[window]
        for name in ("cold", "heat", "discomfort"):
            of_barn, by_itself = (getattr(p["Pip"].stands[window], name) for p in (barn, alone))
            np.testing.assert_allclose(of_barn[index], by_itself[own], rtol=1e-12)
    for edge, other in zip(barn["Pip"].steps.edges, alone["Pip"].steps.edges):
        np.testing.assert_allclose(edge, other)


def test_more_horses_than_one_batch_are_priced_alike():
    names = [f"horse {i}" for i in range(70)]
    question = ask(weather(-3.0, 4.0), [wearer(name) for name in names], [turnout(200, None)])
    costs = [price_of.steps.edges[0] for price_of in price(question).values()]
    assert len(costs) == 70
    assert all(np.allclose(cost, costs[0]) for cost in costs)


def test_outfits_are_listed_with_less_clothing_first():
    """So that of equal ones the lighter is chosen."""
    (outfits, _) = price(ask(weather(), [wearer()], WARDROBE))["Maple"].outfits
    assert outfits[0] == Outfit()
    assert [len(o.pieces) for o in outfits] == sorted(len(o.pieces) for o in outfits)


def test_worst_margins_of_scenarios_bracket_the_central_one():
    stand: Stand = price(ask(weather(-3.0, 4.0, rain=0.5, chance=50.0), [wearer()], WARDROBE))["Maple"].stands[0]
    assert stand.worst_cold.shape[1] == len(stand.weight) == 6
    assert stand.weight.sum() == pytest.approx(1.0)
    eased = (stand.cold + stand.tolerance).min(axis=1)
    np.testing.assert_allclose(stand.worst_cold[:, 0], eased)
    assert (stand.worst_cold.min(axis=1) <= eased).all()
    assert (stand.worst_cold.max(axis=1) >= eased).all()
