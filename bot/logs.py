"""The log: one line an event, readable by a person; no token, no traceback, no line that a name could forge."""

import logging
import re
import sys

SECRET = re.compile(r"\b\d{5,}:[A-Za-z0-9_-]{20,}|(?<=/bot)[^/\s]+(?=/)")


class OneLine(logging.Formatter):
    """Time, level, part, message; an exception as its kind and words only; what could be a token blacked out."""

    def __init__(self, secret: str = "") -> None:
        super().__init__("%(asctime)s %(levelname)-7s %(name)s: %(message)s", "%Y-%m-%d %H:%M:%S")
        self.secret = secret

    def format(self, record: logging.LogRecord) -> str:
        """See logging.Formatter."""
        plain = logging.makeLogRecord(record.__dict__ | {"exc_info": None, "exc_text": None, "stack_info": None})
        told = super().format(plain)
        if record.exc_info and record.exc_info[1]:
            told += f" ({type(record.exc_info[1]).__name__}: {record.exc_info[1]})"
        told = "".join(c if c.isprintable() else " " for c in told)
        if self.secret:
            told = told.replace(self.secret, "[token]")
        return SECRET.sub("[token]", told)


def begin(secret: str = "") -> None:
    """Log to standard error. Libraries only from warnings on: one of them writes addresses that hold the token."""
    handler = logging.StreamHandler(sys.stderr)
    handler.setFormatter(OneLine(secret))
    logging.basicConfig(level=logging.WARNING, handlers=[handler], force=True)
    logging.getLogger("bot").setLevel(logging.INFO)
    logging.captureWarnings(capture=True)
