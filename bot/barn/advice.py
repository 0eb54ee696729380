"""What may be meant so but often is not. A warning stops nothing."""

from collections import defaultdict
from datetime import date
from itertools import combinations
from pathlib import Path

from bot.barn.document import Document
from bot.barn.keys import Barn, forecast_file
from bot.barn.names import plain
from bot.barn.shape import shown

CONTACT_WANTED = ("met-norway", "nws")
NEAR = 1  # letters between two names that a cold thumb may mix up


def advise(document: Document, barn: Barn, today: date) -> None:
    """Note every warning about a barn that can be used."""
    _shared_nicknames(document, barn)
    _near_names(document, barn)
    _nobody_to_call(document, barn)
    _forecast(document, barn)
    for k, horse in enumerate(barn.horses):
        if horse.clip.on and horse.clip.on > today:
            text = f"horse {horse.name}, clip.on: {horse.clip.on} is still to come"
            document.fault(("horses", k, "clip", "on"), text, "warning")


def _shared_nicknames(document: Document, barn: Barn) -> None:
    users: dict[str, list[int]] = defaultdict(list)
    for k, garment in enumerate(barn.garments):
        for name in {plain(name) for name in garment.names}:
            users[name].append(k)
    for name, rows in users.items():
        if len(rows) > 1:
            ids = ", ".join(barn.garments[k].id for k in rows)
            text = f"{shown(name)} is what people call {ids}; haybell will ask which is meant"
            document.fault(("garments", rows[1], "also"), text, "warning")


def _near_names(document: Document, barn: Barn) -> None:
    from rapidfuzz.distance import OSA  # here: only `check` needs it

    named = [(plain(name), name, k) for k, horse in enumerate(barn.horses) for name in horse.names]
    for (one, a, i), (other, b, k) in combinations(named, 2):
        if i != k and len(one) > 3 and OSA.distance(one, other, score_cutoff=NEAR) <= NEAR:
            text = f"{shown(b)} is one letter from {shown(a)}; a mistyped name will be asked about"
            document.fault(("horses", k, "name"), text, "warning")


def _nobody_to_call(document: Document, barn: Barn) -> None:
    if not any(person.role == "manager" for person in barn.people):
        text = "nobody is a manager; a shivering horse that nobody answers for has no one to be told"
        document.fault(("people",), text, "warning")


def _forecast(document: Document, barn: Barn) -> None:
    for k, source in enumerate(barn.forecast):
        if source in CONTACT_WANTED and not barn.contact:
            text = f"{source} asks for a contact; without the key 'contact' it will be passed over"
            document.fault(("forecast", k), text, "warning")
        path = forecast_file(source)
        if path and not Path(path).exists():
            document.fault(("forecast", k), f"there is no file {path} yet", "warning")
