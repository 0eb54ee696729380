"""A provider's JSON as somebody saved it: whose it is shows in its shape."""

import json

from bot.forecast import met_norway, nws, open_meteo
from bot.forecast.answers import json_object
from bot.forecast.readings import Parsed, Unreadable

SHAPES = (open_meteo, met_norway, nws)


def parse(body: bytes) -> tuple[str, Parsed]:
    """(the provider's name, what it says). Unreadable where no provider writes so."""
    found = json_object(body)
    if isinstance(found.get("data"), dict) and "status_code" in found:  # an answer saved with its headers
        found = found["data"]
    for provider in SHAPES:
        if provider.recognises(found):
            return provider.NAME, provider.parse(json.dumps(found).encode())
    raise Unreadable("it is JSON, but of no provider known here: " + ", ".join(p.NAME for p in SHAPES))
