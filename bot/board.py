"""A plan as a picture."""

from bot.barn import Barn
from bot.sheet import Sheet


def draw(sheet: Sheet, barn: Barn, units: str, language: str, dark: bool = False) -> bytes:  # noqa: FBT001, FBT002
    """The board as PNG."""
    from io import BytesIO

    from PIL import Image

    out = BytesIO()
    Image.new("RGB", (1000, 600), "white").save(out, "PNG")
    return out.getvalue()
