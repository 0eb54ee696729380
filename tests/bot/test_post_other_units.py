"""The round's post for readers with other units than usual in their language; see tests/bot/test_post.py."""

import pytest

from bot.barn import Barn
from bot.post import round_post
from bot.sheet import Sheet
from bot.state import State
from tests.bot.test_post import WHOLE

# the head of each post; what stands below it has no units of its own but the clock's

ENGLISH_METRIC = """\
Windrow Farm · morning · Thu 26 Nov 07:00
1 °C, up to 3 °C at 12:00, rain from 11:00
(5.7 mm), gusts 62 km/h at 12:00.
"""

SPANISH_US = """\
Windrow Farm · mañana · jue 26 nov 07:00
34°F, sube a 38°F a las 12:00, lluvia desde
las 11:00 (0.22 in), rachas de 39 mph a las
12:00.
"""

FRENCH_US = """\
Windrow Farm · matin · jeu. 26 nov. 07:00
34°F, jusqu'à 38°F à 12:00, pluie dès 11:00
(0,22 in), rafales à 39 mph vers 12:00.
"""


def test_the_whole_post_in_english_and_metric(sheet: Sheet, farm: Barn, state: State) -> None:
    """Clock, temperatures, water and wind change; what the labels of clothes say does not."""
    _, _, rest = WHOLE["en", "us"].partition("\n\n")
    assert rest.count("1 pm") == 2
    assert round_post(sheet, farm, state, "en", "metric") == f"{ENGLISH_METRIC}\n{rest.replace('1 pm', '13:00')}"


@pytest.mark.parametrize(("language", "head"), [("es", SPANISH_US), ("fr", FRENCH_US)])
def test_the_whole_post_in_us_units(sheet: Sheet, farm: Barn, state: State, language: str, head: str) -> None:
    """Degrees Fahrenheit, inches and miles in the weather; everything below it as in metric."""
    _, _, rest = WHOLE[language, "metric"].partition("\n\n")
    assert round_post(sheet, farm, state, language, "us") == f"{head}\n{rest}"
