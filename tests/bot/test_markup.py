"""Texts as Telegram's HTML: what people see is what was written, whatever it holds."""

from hypothesis import given
from hypothesis import strategies as st

from bot.chat.markup import html
from bot.chat.pieces import Address, Piece, pieces
from bot.message import Outgoing
from tests.whole.telegram_html import shown

GROUP = Address(-5)
letters = st.text(
    st.sampled_from("<>&\"'/ab Bo;🐴\n") | st.characters(exclude_categories=["Cs", "Co", "Cc"]), max_size=40
)


@given(letters, st.lists(letters, max_size=4), st.lists(letters, max_size=2))
def test_what_is_shown_is_what_was_written(text: str, strong: list[str], called: list[str]) -> None:
    """Names in it, in bold or called, may be any text at all, and may overlap."""
    piece = Piece(GROUP, text, strong=tuple(strong), mentions=tuple((name, 7) for name in called))
    assert shown(html(piece), "HTML") == text


def test_names_are_never_markup() -> None:
    """A horse named <b>Bo</b> is shown so, and in bold as a whole."""
    piece = Piece(GROUP, "<b>Bo</b>: 200 g & dry", strong=("<b>Bo</b>",))
    assert html(piece) == "<b>&lt;b&gt;Bo&lt;/b&gt;</b>: 200 g &amp; dry"


def test_a_name_within_another_is_left_alone() -> None:
    """Pip is not in Pippa; each name stands out once."""
    assert html(Piece(GROUP, "Pippa, Pip, Pip", strong=("Pip",))) == "Pippa, <b>Pip</b>, Pip"


def test_a_name_that_is_called_rings_its_owners_phone() -> None:
    """A name that the text does not hold rings nobody."""
    text = "🐴🐴 Inés: nobody has answered about Pip."
    (piece,) = pieces(Outgoing("alert", text, mentions=(("Inés", 1002), ("Theo", 1001))), GROUP)
    assert html(piece) == '🐴🐴 <a href="tg://user?id=1002">Inés</a>: nobody has answered about Pip.'


def test_a_long_text_is_cut_by_what_is_read_and_no_tag_or_entity_is_cut() -> None:
    """The limit counts what people see: a piece full of "&" is five times as long on its way."""
    lines = [f"<b>Bo {number}</b>: " + "&" * 60 for number in range(200)]
    cut = pieces(Outgoing("post", "\n".join(lines), strong=tuple(f"<b>Bo {n}</b>:" for n in range(200))), GROUP)
    read = [shown(html(piece), "HTML") for piece in cut]
    assert len(cut) > 3
    assert all(len(text) <= 4096 for text in read)
    assert "\n".join(read).split("\n") == lines
    assert sum(html(piece).count("<b>") for piece in cut) == 200
