"""A sheet of paper to draw on: inks, type that can write any name, lines, hatching. Drawn twice as large, then shrunk.

Positions and sizes are in pixels of the finished picture. Pillow is imported when a picture is asked for, not before.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from io import BytesIO
from pathlib import Path
from typing import TYPE_CHECKING
from unicodedata import category

if TYPE_CHECKING:
    from PIL import Image, ImageFont

Point = tuple[float, float]

FONTS = Path(__file__).parents[1] / "fonts"
SCALE = 2
SMALL, WORDS, NAME, TITLE = 18, 22, 26, 34  # sizes of type: a phone shows a third of a board's pixels
STAND_IN = "◆"  # for what the fonts have no glyph of: an emoji, a script they do not know
INVISIBLE = {"Mn", "Me", "Cf", "Cc", "Cs", "Co", "Cn"}


@dataclass(frozen=True)
class Inks:
    """The colours of one variant. Nothing is told by colour alone."""

    paper: str
    ink: str
    soft: str  # words that matter less
    line: str  # rails, posts, the grid
    band: str  # how unsure the estimate is
    field: str  # every other row
    cold: str
    warm: str


DAY = Inks("#f7f2e6", "#26221c", "#6f675a", "#a89d89", "#d9c9a0", "#efe8d6", "#1f4e6b", "#9c3d1e")
NIGHT = Inks("#1c1e1d", "#efe8da", "#a9a294", "#6b6659", "#4a4733", "#242726", "#8fc1de", "#f0a17c")


class Canvas:
    """One picture in the making."""

    def __init__(self, width: int, height: int, inks: Inks) -> None:
        from PIL import Image, ImageDraw

        self.width, self.height, self.inks = width, height, inks
        self.image = Image.new("RGB", (width * SCALE, height * SCALE), inks.paper)
        self._draw = ImageDraw.Draw(self.image)

    def text(
        self, at: Point, text: str, size: int = 20, *, bold: bool = False, ink: str | None = None, anchor: str = "ls"
    ) -> None:
        """Words at a point; anchor as Pillow's ("ls": left end of the base line)."""
        place = (at[0] * SCALE, at[1] * SCALE)
        self._draw.text(place, text, fill=ink or self.inks.ink, font=font(size, bold), anchor=anchor)

    def length(self, text: str, size: int = 20, *, bold: bool = False) -> float:
        """How wide words are."""
        return float(self._draw.textlength(text, font=font(size, bold))) / SCALE

    def fit(self, text: str, room: float, size: int = 20, *, bold: bool = False) -> str:
        """The words, cut with an ellipsis where they need more than the room."""
        if self.length(text, size, bold=bold) <= room:
            return text
        while text and self.length(text + "…", size, bold=bold) > room:
            text = text[:-1].rstrip()
        return text + "…"

    def line(self, points: Sequence[Point], ink: str | None = None, width: float = 1) -> None:
        """A line through points; nothing where there are fewer than two."""
        if len(points) > 1:
            path = [(x * SCALE, y * SCALE) for x, y in points]
            self._draw.line(path, fill=ink or self.inks.ink, width=max(1, round(width * SCALE)), joint="curve")

    def area(self, points: Sequence[Point], ink: str) -> None:
        """A filled shape."""
        if len(points) > 2:
            self._draw.polygon([(x * SCALE, y * SCALE) for x, y in points], fill=ink)

    def box(self, left: float, top: float, right: float, bottom: float, ink: str) -> None:
        """A filled rectangle."""
        self._draw.rectangle((left * SCALE, top * SCALE, right * SCALE, bottom * SCALE), fill=ink)

    def dot(self, at: Point, radius: float, ink: str) -> None:
        """A round spot."""
        x, y = at
        self._draw.ellipse([(v) * SCALE for v in (x - radius, y - radius, x + radius, y + radius)], fill=ink)

    def hatch(self, points: Sequence[Point], ink: str, step: int = 5) -> None:
        """A shape filled with slanting strokes, and its outline."""
        from PIL import Image, ImageChops, ImageDraw

        if len(points) < 3:
            return
        left, top = int(min(x for x, _ in points)) - 1, int(min(y for _, y in points)) - 1
        size = (
            (int(max(x for x, _ in points)) + 2 - left) * SCALE,
            (int(max(y for _, y in points)) + 2 - top) * SCALE,
        )
        shape, strokes = Image.new("L", size), Image.new("L", size)
        ImageDraw.Draw(shape).polygon([((x - left) * SCALE, (y - top) * SCALE) for x, y in points], fill=255)
        pen = ImageDraw.Draw(strokes)
        for x in range(-size[1], size[0], step * SCALE):
            pen.line((x, size[1], x + size[1], 0), fill=255, width=SCALE + 1)
        self.image.paste(ink, (left * SCALE, top * SCALE), ImageChops.multiply(shape, strokes))
        self.line([*points, points[0]], ink, 1)

    def finished(self) -> "Image.Image":
        """The picture in its own size."""
        return self.image.reduce(SCALE)

    def png(self) -> bytes:
        """The finished picture as PNG."""
        return png(self.finished(), self.inks)


def png(picture: "Image.Image", inks: Inks) -> bytes:
    """A picture as PNG in its inks and the shades between them: a quarter of the size and time of a full one."""
    from PIL import Image

    palette = Image.new("P", (1, 1))
    palette.putpalette([part for shade in shades(inks) for part in shade])
    out = BytesIO()
    picture.quantize(palette=palette, dither=Image.Dither.NONE).save(out, "PNG")
    return out.getvalue()


@cache
def shades(inks: Inks) -> list[tuple[int, int, int]]:
    """Every ink on every ground, and the shades that edges have between them; at most 256."""
    grounds = [_rgb(g) for g in (inks.paper, inks.field, inks.band, inks.ink)]
    tops = [_rgb(t) for t in (inks.ink, inks.soft, inks.line, inks.cold, inks.warm, inks.band, inks.paper)]
    mixed = {_between(g, t, k / 6) for g in grounds for t in tops for k in range(7)}
    return sorted(mixed)


def _rgb(ink: str) -> tuple[int, int, int]:
    return int(ink[1:3], 16), int(ink[3:5], 16), int(ink[5:7], 16)


def _between(one: tuple[int, int, int], other: tuple[int, int, int], share: float) -> tuple[int, int, int]:
    r, g, b = (round(a + (c - a) * share) for a, c in zip(one, other))
    return r, g, b


def beside(pictures: Sequence["Image.Image"], paper: str) -> "Image.Image":
    """Pictures side by side on one sheet."""
    from PIL import Image

    whole = Image.new("RGB", (sum(p.width for p in pictures), max(p.height for p in pictures)), paper)
    left = 0
    for picture in pictures:
        whole.paste(picture, (left, 0))
        left += picture.width
    return whole


@cache
def font(size: int, bold: bool = False) -> "ImageFont.FreeTypeFont":  # noqa: FBT001, FBT002
    """The type shipped with the package, at a size of the finished picture; read from its file, not held in memory."""
    from PIL import ImageFont

    name = "DejaVuSans-Bold.ttf" if bold else "DejaVuSans.ttf"
    return ImageFont.truetype(FONTS / name, size * SCALE)


@cache
def _drawn(char: str) -> bool:
    """Whether the fonts have this character: what they have not all looks the same."""
    return bytes(font(20).getmask(char)) != bytes(font(20).getmask("\U0010fffe"))


def readable(text: str) -> str:
    """The text with a stand-in for each run of characters that could not be drawn; never an empty box."""
    shown: list[str] = []
    for char in text:
        if char == " " or (category(char) not in INVISIBLE and _drawn(char)):
            shown.append(char)
        elif category(char) not in INVISIBLE and shown[-1:] != [STAND_IN]:
            shown.append(STAND_IN)
    return " ".join("".join(shown).split())


def readable_names(names: Sequence[str]) -> dict[str, str]:
    """Each name as it can be drawn; where nothing of it can, its number in the row, so that no two look alike."""
    shown: dict[str, str] = {}
    taken: set[str] = set()
    for number, name in enumerate(names, start=1):
        drawn = readable(name)
        bare = not any(c.isalnum() for c in drawn)
        shown[name] = f"{drawn or STAND_IN} {number}" if bare or drawn in taken else drawn
        taken.add(shown[name])
    return shown
