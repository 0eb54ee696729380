"""A forecast from a file: CSV, a provider's JSON as it was saved, or EPW."""

from pathlib import Path

from bot.forecast import csv_table, epw
from bot.forecast.readings import Parsed, Unreadable
from bot.forecast.saved import parse as parse_saved

NAME = "file"
MAX_BYTES = 64 * 2**20


def read(path: Path) -> bytes:
    """The bytes of a file. Unreadable where there is none to be read."""
    try:
        with path.open("rb") as opened:
            body = opened.read(MAX_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        raise Unreadable(f"the file cannot be read: {reason.lower()}") from None
    if len(body) > MAX_BYTES:
        raise Unreadable(f"the file is larger than {MAX_BYTES // 2**20} MB")
    return body


def parse(body: bytes) -> tuple[str, Parsed]:
    """(the source it is from, what it says), recognised by its shape. Unreadable where it is none of them."""
    start = body.lstrip(b"\xef\xbb\xbf \t\r\n")[:1]
    if not start:
        raise Unreadable("it is empty")
    if start in (b"{", b"["):
        return parse_saved(body)
    if body.lstrip(b"\xef\xbb\xbf")[:9].upper() == b"LOCATION,":
        return NAME, epw.parse(body)
    return NAME, csv_table.parse(body)
