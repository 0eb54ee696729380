"""The round's post for readers with other units than usual in their language; see tests/bot/test_post.py."""

import pytest

from bot.barn import Barn
from bot.post import round_post
from bot.sheet import Sheet
from bot.state import State
from tests.bot.test_post import WHOLE

# of the last two only the head: all that units change there; the rest is as in the usual units
ENGLISH_METRIC = """\
Windrow Farm · morning · Thu 26 Nov 07:00
1 °C, up to 3 °C at 12:00, rain from 11:00
(5.7 mm), gusts 62 km/h at 12:00.

CHANGE
Maple, Otis: 100 g liner + rain sheet
Juniper: spare 200 g turnout
Pip: bare (off: 200 g turnout)

STAY
Clover, Moss, Fern bare; Biscuit, Ned sheet;
Sorrel 360 g; Quill 300 g stable; Tansy 220 g

Drying: Juniper's 150 g liner (dry by 13:00)
Mend: Biscuit's rain sheet (biscuit-old)
  (torn)
Wanted: Sorrel (evening) dry 380–450 g
  turnout, 75 in
Hand check 13:00: Sorrel, may be cold

Weather data by Open-Meteo.com, 12 min old.
Guide only: the horse in front of you
overrules."""

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
    assert round_post(sheet, farm, state, "en", "metric") == ENGLISH_METRIC


@pytest.mark.parametrize(("language", "head"), [("es", SPANISH_US), ("fr", FRENCH_US)])
def test_the_whole_post_in_us_units(sheet: Sheet, farm: Barn, state: State, language: str, head: str) -> None:
    """Degrees Fahrenheit, inches and miles in the weather; everything below it as in metric."""
    _, _, rest = WHOLE[language, "metric"].partition("\n\n")
    assert round_post(sheet, farm, state, language, "us") == f"{head}\n{rest}"
