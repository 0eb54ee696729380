"""Lines that fit a phone."""

from hypothesis import given
from hypothesis import strategies as st

from bot.layout import COLUMNS, columns, lay_out, wrap
from bot.units import NBSP

words = st.text(
    st.characters(exclude_characters=" \n\r", exclude_categories=["Cc", "Cs", "Zs", "Zl", "Zp"]), min_size=1
)


@given(st.lists(words, min_size=1))
def test_wrapping_loses_no_word_and_no_order(text: list[str]) -> None:
    """Only spaces become line ends."""
    assert wrap(" ".join(text), "  ").split() == " ".join(text).split()


@given(st.lists(words.filter(lambda w: columns(w) <= COLUMNS - 2), min_size=1))
def test_no_line_is_too_wide_where_its_words_allow(text: list[str]) -> None:
    """Counted as a screen shows them: an emoji takes two columns, an accent none."""
    assert all(columns(line) <= COLUMNS for line in wrap(" ".join(text), "  ").split("\n"))


def test_wide_characters_count_twice_and_accents_not_at_all() -> None:
    """A name in Chinese is as wide as it looks."""
    assert columns("小红") == 4
    assert columns("e\u0301") == 1


def test_a_quantity_never_breaks() -> None:
    """The number goes to the next line with its unit, and is plain text in the end."""
    told = lay_out(wrap("a" * (COLUMNS - 3) + f" 62{NBSP}km/h"))
    assert told.split("\n")[1] == "62 km/h"


def test_parts_that_are_not_there_leave_no_line() -> None:
    """None is nothing; an empty part is an empty line."""
    assert lay_out("a", None, "", "b", None) == "a\n\nb"
