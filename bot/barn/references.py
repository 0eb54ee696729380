"""What one key cannot know of another: names used and meant, names used twice, things that cannot both be.

Works on the values as read, so that these faults are found beside those of shape.
"""

from collections.abc import Callable, Iterable, Iterator
from datetime import date
from typing import Any, TypeGuard

from bot.barn.document import Document, Way
from bot.barn.keys import PROVIDERS, forecast_file
from bot.barn.names import plain
from bot.barn.shape import label, shown
from bot.barn.values import as_birth, as_clock
from bot.problems import did_you_mean
from rules.horse import weight_kg

Used = Iterable[tuple[Way, str]]  # the way within a row → the text there
LIGHTEST_KG, HEAVIEST_KG = 30, 1500  # as keys.py has them for a weight that is given
LISTED = 20  # names that a fault lists
OLDEST = 62  # years; the oldest horse on record, Old Billy, is said to have reached 62 (common knowledge, no source)


def refer(document: Document, today: date) -> None:
    """Note every fault between keys."""
    if not isinstance(document.root, dict):
        return
    for rule in (_twice, _unknown, _forecast, _times, _births, _measures, _clothes, _worn):
        rule(document, today)


def items(root: Any, section: str) -> Iterator[tuple[Way, dict[str, Any]]]:
    """Each entry of a section with its way, as far as the file has the shape."""
    rows = root.get(section) if isinstance(root, dict) else None
    for k, row in enumerate(rows if isinstance(rows, tuple) else ()):
        if isinstance(row, dict):
            yield (section, k), row


def words(row: dict[str, Any], *keys: str) -> Iterator[tuple[Way, str]]:
    """The texts under these keys, with their way within the row; a list gives each of its texts."""
    for key in keys:
        value = row.get(key)
        if isinstance(value, str):
            yield (key,), value
        elif isinstance(value, tuple):
            yield from (((key, k), text) for k, text in enumerate(value) if isinstance(text, str))


def _names(root: Any, section: str, *keys: str) -> dict[str, None]:
    """The names of a section in the file's order, each once: a dict is an ordered set."""
    return dict.fromkeys(text for _, row in items(root, section) for _, text in words(row, *keys))


def _note(document: Document, way: Way, text: str) -> None:
    document.fault(way, label(document.root, way) + text)


def _twice(document: Document, _today: date) -> None:
    """Names and numbers that must be one row's alone."""
    _unique(document, "horses", ("name", "also"), plain)
    _unique(document, "people", ("name", "also"), plain)
    _unique(document, "garments", ("id",), str)
    _unique(document, "rounds", ("name",), plain)
    _unique(document, "drying", ("name",), plain)
    first: dict[int, Way] = {}
    for way, row in items(document.root, "people"):
        number = row.get("telegram")
        if type(number) is int and first.setdefault(number, way) != way:
            line = document.line(first[number])
            _note(document, (*way, "telegram"), f"{number} is already somebody else's, in line {line}")


def _unique(document: Document, section: str, keys: tuple[str, ...], form: Callable[[str], str]) -> None:
    first: dict[str, Way] = {}
    for row_way, row in items(document.root, section):
        for inner, text in words(row, *keys):
            owner = first.setdefault(form(text), row_way)
            if owner != row_way:
                where = f"in line {document.line((*owner, keys[0]))}"
                _note(
                    document, (*row_way, *inner), f"{shown(text)} is already another's, {where}; names must be unique"
                )


def _unknown(document: Document, _today: date) -> None:
    """Names that the file does not have."""
    root = document.root
    people, horses = _names(root, "people", "name"), _names(root, "horses", "name")
    garments = _names(root, "garments", "id")
    rounds, drying = _names(root, "rounds", "name"), _names(root, "drying", "name")
    for way, row in items(root, "horses"):
        _known(document, way, words(row, "owner"), people, "people")
        _known(document, way, words(row, "wearing"), garments, "garments")
        where = row.get("where")
        from_rounds = [(("where", key), key) for key in where] if isinstance(where, dict) else []
        _known(document, way, from_rounds, rounds, "rounds")
    for way, row in items(root, "garments"):
        _known(document, way, words(row, "horse"), horses, "horses")
        _known(document, way, words(row, "dries"), drying, "drying")


def _known(document: Document, way: Way, used: Used, names: dict[str, None], section: str) -> None:
    for inner, text in used:
        if text not in names:
            listed = ", ".join(list(names)[:LISTED]) + (" …" if len(names) > LISTED else "") or "none yet"
            fault = f"found {shown(text)}, not among {section}{did_you_mean(text, names)}; allowed: {listed}"
            _note(document, (*way, *inner), fault)


def _forecast(document: Document, _today: date) -> None:
    """Sources by name, or files."""
    for inner, text in words(document.root, "forecast"):
        if text not in PROVIDERS and not forecast_file(text):
            allowed = f"{', '.join(PROVIDERS)}, file:PATH"
            _note(document, inner, f"found {shown(text)}; allowed: {allowed}{did_you_mean(text, PROVIDERS)}")


def _times(document: Document, _today: date) -> None:
    """Rounds at different times."""
    first: dict[Any, Way] = {}
    for way, row in items(document.root, "rounds"):
        try:
            at = as_clock(row.get("at"))
        except ValueError:
            continue
        if first.setdefault(at, way) != way:
            line = document.line((*first[at], "at"))
            _note(document, (*way, "at"), f"found {at:%H:%M}, as in line {line}; rounds have different times")


def _births(document: Document, today: date) -> None:
    """Nobody is born tomorrow, or lives for ever."""
    for way, row in items(document.root, "horses"):
        try:
            born = as_birth(row.get("born"))
        except ValueError:
            continue
        year = born.year if isinstance(born, date) else born
        late = born > today if isinstance(born, date) else born > today.year
        if late or year < today.year - OLDEST:
            fault = f"found {born}; allowed: {today.year - OLDEST} to {today.year}, not in the future"
            _note(document, (*way, "born"), fault)


def _measures(document: Document, _today: date) -> None:
    """Measures that only work together, or that say one thing twice."""
    for section in ("horses", "garments"):
        for way, row in items(document.root, section):
            if row.get("size_in") is not None and row.get("size_cm") is not None:
                _note(document, (*way, "size_cm"), "size_in is given as well; one of the two is enough")
    for way, row in items(document.root, "horses"):
        girth, length = row.get("girth_cm"), row.get("length_cm")
        if (girth is None) != (length is None) and row.get("weight_kg") is None:
            missing, there = ("girth_cm", "length_cm") if girth is None else ("length_cm", "girth_cm")
            _note(document, (*way, there), f"{missing} is wanted with {there}; or give weight_kg")
        taped = weight_kg(girth, length) if _number(girth) and _number(length) else None
        if taped is not None and not LIGHTEST_KG <= taped <= HEAVIEST_KG and row.get("weight_kg") is None:
            fault = f"with length_cm this makes {taped:.0f} kg; allowed: {LIGHTEST_KG} to {HEAVIEST_KG}, measure again"
            _note(document, (*way, "girth_cm"), fault)
    for way, row in items(document.root, "drying"):
        if row.get("follows") is not None and (
            row.get("temperature_c") is not None or row.get("humidity_pct") is not None
        ):
            fault = "a place that follows outdoors has no temperature or humidity of its own"
            _note(document, (*way, "follows"), fault)


def _number(value: object) -> TypeGuard[float]:
    return isinstance(value, int | float) and not isinstance(value, bool) and 0 < value < 1000


def _clothes(document: Document, _today: date) -> None:
    """Fill where the kind has none, and none where the kind is fill."""
    for way, row in items(document.root, "garments"):
        fill = row.get("fill_g", 0)
        if isinstance(fill, bool) or not isinstance(fill, int | float):
            continue
        if row.get("kind") == "sheet" and fill > 0:
            _note(
                document,
                (*way, "fill_g"),
                f"found {shown(fill)} on a sheet; a sheet has no fill, with fill it is a turnout",
            )
        if row.get("kind") == "liner" and fill == 0:
            _note(document, (*way, "fill_g"), "a liner is its fill; allowed: more than 0")


def _worn(document: Document, _today: date) -> None:
    """One garment is on one horse, once."""
    first: dict[str, Way] = {}
    for way, row in items(document.root, "horses"):
        for inner, garment in words(row, "wearing"):
            here = (*way, *inner)
            owner = first.setdefault(garment, here)
            if owner != here:
                _note(document, here, f"{shown(garment)} is already worn, in line {document.line(owner)}")
