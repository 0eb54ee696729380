"""The barn's board: rows of horses, hours across both windows; as PNG for the chat and on pages for the wall."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from io import BytesIO
from typing import TYPE_CHECKING

from bot.barn import Barn
from bot.board import weather
from bot.board.canvas import DAY, NAME, NIGHT, SMALL, TITLE, WORDS, Canvas, Inks, beside, png, readable, readable_names
from bot.board.fence import Fence, Thread, height, post, rails, thread
from bot.sheet import DressSheet, HorseSheet, Sheet, Window
from bot.units import known
from bot.voice import Voice, plain, voice

if TYPE_CHECKING:
    from PIL import Image

WIDTH = 1000
MARGIN = 20
NAMES = 162  # room for the names
HEAD = 102  # above the weather
ROW, CLOSE_ROW = 94, 70  # a row's height, and where the barn is large
MANY = 16  # horses from which rows are close
FOOT = 148
LEGEND, FINE = 17, 15
WORTH_A_NUMBER_K = 0.5
PAGE = 1414  # height of a page as wide as the board, in the proportions of A4
PAGE_HORSES = 14
COLUMN = 22  # horses in a column of a large barn's board
GAP = 10  # between the names and the hours


def draw(
    sheet: Sheet,
    barn: Barn,
    units: str,
    language: str,
    dark: bool = False,  # noqa: FBT001, FBT002
) -> bytes:
    """The board as PNG, 1,000 px wide; a large barn's stands in columns, for a chat shrinks what is tall.

    The post says the same in words.
    """
    tongue, inks = voice(barn, language, units), NIGHT if dark else DAY
    columns = [board(sheet, part, tongue, inks).finished() for part in parted(sheet.horses, COLUMN)]
    return png(columns[0] if len(columns) == 1 else beside(columns, inks.paper), inks)


def parted(horses: Sequence[HorseSheet], most: int) -> list[Sequence[HorseSheet]]:
    """The horses in parts of about equal size, at most so many in each; one part where there are none."""
    count = max(1, -(-len(horses) // most))
    size = max(1, -(-len(horses) // count))
    return [horses[i * size : (i + 1) * size] for i in range(count)]


def pdf(sheet: Sheet, barn: Barn, units: str, language: str) -> bytes:
    """The board on A4 pages, fourteen horses to a page, dark on white for a printer."""
    tongue = voice(barn, language, units)
    paper = Inks("#ffffff", "#000000", "#444444", "#888888", "#e4e4e4", "#f4f4f4", "#000000", "#000000")
    pages = [_page(board(sheet, part, tongue, paper).finished()) for part in parted(sheet.horses, PAGE_HORSES)]
    out = BytesIO()
    pages[0].save(out, "PDF", save_all=True, append_images=pages[1:], resolution=WIDTH / 8.27)
    return out.getvalue()


def _page(picture: "Image.Image") -> "Image.Image":
    """A picture at the top of an A4 page; a taller one is made to fit."""
    from PIL import Image

    page = Image.new("RGB", (WIDTH, PAGE), "#ffffff")
    if picture.height > PAGE:
        picture = picture.resize((round(WIDTH * PAGE / picture.height), PAGE))
    page.paste(picture, (0, 0))
    return page


def board(sheet: Sheet, horses: Sequence[HorseSheet], tongue: Voice, inks: Inks) -> Canvas:
    """The whole picture of these horses."""
    row = CLOSE_ROW if len(horses) > MANY else ROW
    top = HEAD + weather.HEIGHT
    canvas = Canvas(WIDTH, top + row * len(horses) + FOOT, inks)
    title(canvas, sheet, tongue)
    count = max(1, len(sheet.sky))
    hour = (WIDTH - 2 * MARGIN - NAMES - GAP) / count
    left = MARGIN + NAMES + GAP
    if sheet.sky:
        weather.head(canvas, sheet.sky, tongue, left, HEAD, hour)
    names = readable_names([plain(h.horse) for h in sheet.horses])
    rows = [Fence(left, top + k * row, top + (k + 1) * row, hour) for k in range(len(horses))]
    for ground in rows[::2]:
        canvas.box(0, ground.top, WIDTH, ground.bottom - 1, inks.field)
    for horse, place_of in zip(horses, rows):
        line(canvas, sheet, horse, names, tongue, place_of)
    foot(canvas, sheet, tongue, top + row * len(horses) + 16)
    return canvas


def title(canvas: Canvas, sheet: Sheet, tongue: Voice) -> None:
    """Farm and rounds at the left, when it was made at the right."""
    made = tongue.say("board made", at=tongue.clock(sheet.made_at))
    room = WIDTH - 2 * MARGIN - canvas.length(made, SMALL) - 20
    barn = readable(plain(sheet.barn))
    canvas.text((MARGIN, 44), canvas.fit(barn, room, TITLE, bold=True), TITLE, bold=True)
    canvas.text((WIDTH - MARGIN, 44), made, SMALL, ink=canvas.inks.soft, anchor="rs")
    if sheet.windows:
        day = tongue.day(sheet.windows[0].start.astimezone(tongue.zone).date())
        rounds = ", ".join(f"{readable(tongue.round(w.round))} {tongue.clock(w.start)}" for w in sheet.windows)
        canvas.text((MARGIN, 70), canvas.fit(f"{day} · {rounds}", room, SMALL), SMALL, ink=canvas.inks.soft)


def line(canvas: Canvas, sheet: Sheet, horse: HorseSheet, names: Mapping[str, str], tongue: Voice, row: Fence) -> None:
    """One horse: name, what it wears from each round on, and its thread between the rails."""
    words = 30
    fence = Fence(row.left, row.top + words, row.bottom - 7, row.hour)
    called(canvas, names[plain(horse.horse)], row)
    rails(canvas, fence, 0, len(sheet.sky))
    for number, (window, dress) in enumerate(zip(sheet.windows, horse.windows)):
        start, end = (min(max(0.0, hours_in(sheet, at)), len(sheet.sky)) for at in (window.start, window.end))
        drawn = Thread(dress.cold_by_hour, dress.heat_by_hour, horse.offset_sd_c, start, end)
        thread(canvas, fence, drawn)
        for check in sheet.checks:
            if check.horse == horse.horse and window.start <= check.at < window.end:
                ring(canvas, fence, drawn, hours_in(sheet, check.at))
        if number:
            post(canvas, fence, start, round_here=True)
        outfit(canvas, dress, horse.horse, tongue, row, start, end)
    place(canvas, horse, sheet.windows, tongue, row)


def called(canvas: Canvas, name: str, row: Fence) -> None:
    """The name, in smaller type before any of it is cut."""
    size = next((s for s in (NAME, WORDS, SMALL) if canvas.length(name, s, bold=True) <= NAMES), SMALL)
    canvas.text((MARGIN, row.top + 32), canvas.fit(name, NAMES, size, bold=True), size, bold=True)


def ring(canvas: Canvas, fence: Fence, drawn: Thread, hour: float) -> None:
    """Where a hand under the rug is wanted."""
    y = height(fence, drawn, hour)
    if y is not None:
        at = (fence.x(hour + 0.5), y)
        canvas.dot(at, 7, canvas.inks.ink)
        canvas.dot(at, 4, canvas.inks.paper)


def hours_in(sheet: Sheet, at: datetime) -> float:
    """How far into the hours of the sheet an instant is."""
    return (at - sheet.sky[0].at).total_seconds() / 3600 if sheet.sky else 0.0


def outfit(canvas: Canvas, dress: DressSheet, horse: str, tongue: Voice, row: Fence, start: float, end: float) -> None:
    """What is worn from this round on: bold behind a pointer where it is a change."""
    x, y = row.x(start) + 8, row.top + 24
    if dress.change:
        canvas.area([(x, y - 16), (x + 12, y - 8), (x, y)], canvas.inks.ink)
        x += 18
    worst = beyond(dress, tongue)
    canvas.text((row.x(end) - 8, y), worst, SMALL, ink=canvas.inks.soft, anchor="rs")
    room = row.x(end) - x - 16 - canvas.length(worst, SMALL)
    words, size = fitting(canvas, dress, horse, tongue, room)
    canvas.text((x, y), canvas.fit(words, room, size, bold=dress.change), size, bold=dress.change)


def fitting(canvas: Canvas, dress: DressSheet, horse: str, tongue: Voice, room: float) -> tuple[str, int]:
    """The outfit in the largest and fullest words that have room; whose a piece is is dropped last."""
    full, short = readable(tongue.advised(dress, horse)), readable(tongue.advised_briefly(dress))
    for words, size in ((full, WORDS), (full, SMALL), (full, FINE), (short, WORDS), (short, SMALL)):
        if canvas.length(words, size, bold=dress.change) <= room:
            return words, size
    return short, FINE


def beyond(dress: DressSheet, tongue: Voice) -> str:
    """How far beyond a rail the worst hour lies, for the strip ends before the worst does; nothing where within."""
    cold, heat = known(dress.cold_margin_c) or 0.0, known(dress.heat_margin_c) or 0.0
    worst = cold if cold <= heat else -heat
    if min(cold, heat) > -WORTH_A_NUMBER_K:
        return ""
    return ("+" if worst > 0 else "") + tongue.measures.difference(worst)


def place(canvas: Canvas, horse: HorseSheet, windows: Sequence[Window], tongue: Voice, row: Fence) -> None:
    """Under the name: where the horse is, in order of the windows."""
    if row.bottom - row.top < ROW:
        return
    places = list(dict.fromkeys(d.where for d, _ in zip(horse.windows, windows)))
    words = ", ".join(tongue.say(f"board {p}") if p in {"field", "stall"} else plain(p) for p in places)
    canvas.text((MARGIN, row.top + 60), canvas.fit(readable(words), NAMES, SMALL), SMALL, ink=canvas.inks.soft)


def foot(canvas: Canvas, sheet: Sheet, tongue: Voice, top: float) -> None:
    """How to read it, by an example; whose forecast; that it is a guide only."""
    fence = Fence(MARGIN, top, top + 78, 20)
    rails(canvas, fence, 0, 8)
    cold = (-4.0, -1.0, 2.0, 5.0, 7.0, 9.0, 11.0, 13.0)
    thread(canvas, fence, Thread(cold, tuple(10.0 - c for c in cold), 1.0))
    left = fence.x(8) + 16
    for number, words in enumerate(("board warm", "board ease", "board cold")):
        canvas.text((left, top + 18 + 28 * number), tongue.say(words), LEGEND)
    right = WIDTH - MARGIN
    canvas.text((right, top + 18), tongue.say("board change"), LEGEND, anchor="rs")
    canvas.text((right, top + 74), tongue.say("board number"), LEGEND, anchor="rs")
    canvas.text((right, top + 46), tongue.say("board ring"), LEGEND, anchor="rs")
    guide, source = tongue.say("guide"), readable(tongue.source(sheet.forecast, sheet.forecast.age_min))
    canvas.text((MARGIN, top + 116), guide, LEGEND, bold=True)
    room = right - MARGIN - canvas.length(guide, LEGEND, bold=True) - 20
    canvas.text((right, top + 116), canvas.fit(source, room, 15), 15, ink=canvas.inks.soft, anchor="rs")
