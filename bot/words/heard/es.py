"""Not yet."""

PHRASES: dict[str, str] = {}
