"""The picture: it repeats the post, takes any name, and tells by position, not by colour."""

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from io import BytesIO

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PIL import Image

from bot import board
from bot.barn import Barn
from bot.board.canvas import DAY, STAND_IN, Canvas, readable, readable_names
from bot.board.days import dressed
from bot.board.fence import Fence, Thread, outside, path
from bot.board.wall import COLUMN, WIDTH
from bot.board.wall import board as whole
from bot.events import Entry, Seen
from bot.sheet import DressSheet, Sheet
from bot.voice import voice
from bot.words.said import LANGUAGES

margin = st.floats(-60, 60) | st.none()


def opened(png: bytes) -> Image.Image:
    """The picture as people see it."""
    return Image.open(BytesIO(png)).convert("RGB")


# ── the thread between the rails ─────────────────────────────────────────────────────────────────────────────────


@pytest.fixture
def fence() -> Fence:
    """A strip a hundred pixels high, ten to the hour."""
    return Fence(left=0, top=0, bottom=100, hour=10)


def test_a_margin_of_nought_lies_on_its_rail(fence: Fence) -> None:
    """Neither above nor below: the rail is where too cold, and where too warm, begins."""
    assert fence.y(0.0, 12.0) == fence.lower
    assert fence.y(12.0, 0.0) == fence.upper


@given(cold=st.floats(-40, 40), heat=st.floats(-40, 40))
def test_too_cold_is_below_too_warm_above_and_all_else_between(cold: float, heat: float) -> None:
    """Position alone tells."""
    fence = Fence(0, 0, 100, 10)
    y = fence.y(cold, heat)
    assert fence.top <= y <= fence.bottom
    if cold < 0 and cold <= heat:
        assert y > fence.lower
    elif heat < 0:
        assert y < fence.upper
    else:
        assert fence.upper <= y <= fence.lower


@given(cold=st.floats(0, 20), heat=st.floats(0, 20), more=st.floats(0, 5))
def test_the_warmer_the_higher(cold: float, heat: float, more: float) -> None:
    """A degree warmer never draws a horse lower."""
    fence = Fence(0, 0, 100, 10)
    assert fence.y(cold + more, heat - more) <= fence.y(cold, heat) + 1e-9


def test_a_window_that_ends_within_an_hour_is_drawn_to_its_end(fence: Fence) -> None:
    """Half past four is half an hour, for both windows that share it."""
    drawn = Thread((1.0, 1.0, 1.0), (5.0, 5.0, 5.0), start=0.0, end=2.5)
    (run,) = drawn.runs()
    assert path(fence, drawn, run)[-1][0] == 25.0


def test_an_hour_without_forecast_is_a_gap(fence: Fence) -> None:
    """Nothing is invented across it."""
    drawn = Thread((1.0, None, 1.0, float("nan"), 2.0), (5.0,) * 5)
    assert [[hour for hour, _, _ in run] for run in drawn.runs()] == [[0], [2], [4]]


@given(st.lists(st.tuples(st.floats(0, 100), st.floats(-10, 10)), min_size=2, max_size=12))
def test_what_lies_beyond_a_rail_is_all_of_it_and_nothing_else(points: list[tuple[float, float]]) -> None:
    """The hatched shapes hold every hour that is too cold, and end on the rail."""
    parts = list(outside(points))
    assert all(d >= 0 for part in parts for _, d in part)
    assert {p for p in points if p[1] > 0} <= {p for part in parts for p in part}


# ── the whole picture ────────────────────────────────────────────────────────────────────────────────────────────


@pytest.mark.parametrize("dark", [False, True])
@pytest.mark.parametrize("language", LANGUAGES)
def test_the_board_is_a_thousand_wide_in_every_language_and_variant(
    sheet: Sheet,
    farm: Barn,
    language: str,
    dark: bool,
) -> None:
    """A phone's width, day and night."""
    picture = opened(board.draw(sheet, farm, "metric", language, dark))
    assert picture.width == WIDTH
    paper = picture.convert("L").getpixel((2, 2))
    assert isinstance(paper, int)
    assert paper < 60 if dark else paper > 220


def test_a_cold_horse_is_told_without_colour(sheet: Sheet, farm: Barn, dress: Callable[..., DressSheet]) -> None:
    """In grey, the strip of a cold horse differs from that of one at ease and of one too warm."""
    strips = []
    for cold, heat in ((-4.0, 12.0), (5.0, 5.0), (12.0, -4.0)):
        one = dress(cold_by_hour=(cold,) * 24, heat_by_hour=(heat,) * 24)
        only = replace(sheet, horses=(replace(sheet.horses[7], windows=(one,)),), windows=sheet.windows[:1], checks=())
        picture = opened(board.draw(only, farm, "us", "en")).convert("L")
        strips.append(picture.crop((210, 236, 480, 296)).tobytes())
    assert len(set(strips)) == 3


def test_a_large_barn_stands_in_columns(sheet: Sheet, farm: Barn) -> None:
    """Forty horses: two columns side by side, for a chat shrinks what is tall."""
    many = tuple(replace(sheet.horses[k % 12], horse=f"Horse {k}") for k in range(40))
    picture = opened(board.draw(replace(sheet, horses=many), farm, "us", "en"))
    assert picture.width == 2 * WIDTH
    assert picture.height < picture.width
    assert len(many) > COLUMN


def test_the_pages_to_print_are_a_pdf_with_every_horse(sheet: Sheet, farm: Barn) -> None:
    """Three pages for forty horses."""
    many = tuple(replace(sheet.horses[k % 12], horse=f"Horse {k}") for k in range(40))
    pages = board.pdf(replace(sheet, horses=many), farm, "us", "en")
    assert pages.startswith(b"%PDF")
    assert pages.count(b"/Type /Page\n") == 3 or pages.count(b"/Page ") + pages.count(b"/Page\n") >= 3


def test_a_horses_days_show_a_strip_a_day(sheet: Sheet, farm: Barn) -> None:
    """A week of sheets, with what people saw on their days; a horse nobody posted has an empty picture."""
    week = [
        replace(
            sheet,
            made_at=sheet.made_at + timedelta(days=d),
            sky=tuple(replace(h, at=h.at + timedelta(days=d)) for h in sheet.sky),
            windows=tuple(
                replace(w, start=w.start + timedelta(days=d), end=w.end + timedelta(days=d)) for w in sheet.windows
            ),
        )
        for d in range(7)
    ]
    seen = Entry(1, sheet.made_at + timedelta(hours=5), "Inés", "k", Seen("Maple", "sweating"))
    one = opened(board.horse("Maple", week, [seen], farm, "us", "en"))
    quiet = opened(board.horse("Maple", week, [], farm, "us", "en"))
    short = opened(board.horse("Maple", week[:1], [], farm, "us", "en"))
    assert one.size == quiet.size
    assert one.tobytes() != quiet.tobytes()
    assert short.height < quiet.height
    assert opened(board.horse("Nobody", week, [seen], farm, "us", "en")).width == WIDTH


def test_a_plan_made_anew_that_leaves_the_outfit_on_is_not_written_again(sheet: Sheet) -> None:
    """Three plans of one morning, one label; another outfit is one more."""
    first = sheet.windows[0].start
    later = [replace(sheet, made_at=first + timedelta(hours=h)) for h in (1, 2)]
    horse = sheet.horses[0]
    bare = replace(horse, windows=(replace(horse.windows[0], wear=()), *horse.windows[1:]))
    moved = replace(sheet, made_at=first + timedelta(hours=3), horses=(bare, *sheet.horses[1:]))

    assert dressed(horse.horse, [sheet, *later]) == dressed(horse.horse, [sheet])
    assert dressed(horse.horse, [sheet, *later, moved])[moved.made_at] == ()


# ── names of any kind ────────────────────────────────────────────────────────────────────────────────────────────


def test_what_the_fonts_cannot_write_becomes_a_stand_in_never_a_box() -> None:
    """Emoji, Chinese, joiners and direction marks; accents and Cyrillic stay."""
    assert readable("🐴 Bo") == f"{STAND_IN} Bo"
    assert readable("Ñandú Ærø Жук") == "Ñandú Ærø Жук"
    assert readable("👨‍👩‍👧") == STAND_IN
    assert readable("a\u202eb\u200dc") == "abc"


def test_names_that_cannot_be_written_are_told_apart_by_their_number() -> None:
    """No two horses look alike on the wall."""
    assert readable_names(["小红", "小明", "Bo"]) == {"小红": f"{STAND_IN} 1", "小明": f"{STAND_IN} 2", "Bo": "Bo"}


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=15, deadline=None)
@given(
    names=st.lists(st.text(max_size=80), min_size=1, max_size=4, unique=True),
    cold=st.lists(margin, min_size=24, max_size=24),
    heat=st.lists(margin, min_size=24, max_size=24),
    sd=st.floats(allow_nan=True, allow_infinity=True),
)
def test_no_name_and_no_number_breaks_the_picture(
    sheet: Sheet, farm: Barn, names: list[str], cold: list[float | None], heat: list[float | None], sd: float
) -> None:
    """Any name, any margins, gaps anywhere."""
    one = replace(sheet.horses[0].windows[0], cold_by_hour=tuple(cold), heat_by_hour=tuple(heat))
    horses = tuple(replace(sheet.horses[0], horse=n, windows=(one, one), offset_sd_c=sd) for n in names)
    assert isinstance(whole(replace(sheet, horses=horses), horses, voice(farm, "es", "us"), DAY), Canvas)


def test_a_barn_without_horses_or_forecast_still_has_a_board(sheet: Sheet, farm: Barn) -> None:
    """The picture of nothing is a picture."""
    empty = replace(sheet, horses=(), sky=(), windows=())
    assert opened(board.draw(empty, farm, "us", "en")).width == WIDTH
    assert board.pdf(empty, farm, "us", "en").startswith(b"%PDF")
