"""The log: one line an event; no token, no traceback, no line that a name could forge."""

import logging

from bot.logs import OneLine

TOKEN = "123456789:AAlocalTokenForTestsOnly_0123456789ab"


def line(message: str, *args: object, error: BaseException | None = None, secret: str = "") -> str:
    """What is written of a record."""
    caught = (type(error), error, None) if error else None
    return OneLine(secret).format(logging.LogRecord("bot", logging.ERROR, "x.py", 1, message, args, caught))


def test_a_name_cannot_forge_a_line() -> None:
    """Line ends and control characters in a name stay in their line."""
    said = line("%s left", "Bo\n2026-11-26 06:00:00 ERROR forged\r\x1b[31m\u2028")
    assert len(said.splitlines()) == 1
    assert "\x1b" not in said


def test_an_exception_is_its_kind_and_its_words() -> None:
    """A traceback helps nobody at six in the morning."""
    said = line("failed", error=ValueError("no such thing\nsecond line"))
    assert said.endswith("failed (ValueError: no such thing second line)")
    assert "Traceback" not in said


def test_tokens_are_blacked_out() -> None:
    """The one we know, and whatever looks like one, in any address."""
    for text in (TOKEN, f"https://example.org/bot{TOKEN}/getMe", "http://localhost/botodd-secret/getMe"):
        said = line("%s", text, secret="odd-secret")
        assert TOKEN not in said
        assert "odd-secret" not in said
        assert "[token]" in said
