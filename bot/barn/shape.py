"""Values against the keys' types: what does not fit, said with what was found, what is allowed and the nearest word."""

from collections.abc import Iterator
from typing import Any, get_args, get_origin
from zoneinfo import available_timezones

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from bot.barn.document import Document, Way
from bot.barn.keys import Barn
from bot.problems import did_you_mean

SECTIONS = {
    "rounds": "round",
    "people": "person",
    "drying": "drying place",
    "horses": "horse",
    "garments": "garment",
}
SHOWN = 40  # characters of a wrong value that a fault repeats


def fit(document: Document) -> Barn | None:
    """The barn, or None with a fault in the document for everything that does not fit."""
    if not isinstance(document.root, dict):
        document.fault((), f"found {shown(document.root)}; allowed: keys, as in 'barn: Windrow Farm'")
        return None
    try:
        return Barn.model_validate(document.root)
    except ValidationError as error:
        for detail in error.errors(include_url=False):
            if detail["type"] == "too_short" and detail["input"]:  # its entries have faults of their own
                continue
            way = _way(document, detail)
            document.fault(way, label(document.root, way) + _said(detail, way))
        return None


def label(root: Any, way: Way) -> str:
    """Whose value it is: "horse Maple, clip.style: "."""
    owner = ""
    if len(way) > 1 and way[0] in SECTIONS and isinstance(way[1], int):
        item = root[way[0]][way[1]] if isinstance(root.get(way[0]), tuple) else None
        name = item.get("name", item.get("id")) if isinstance(item, dict) else None
        owner = f"{SECTIONS[str(way[0])]} {name if isinstance(name, str) else way[1] + 1}"
        way = way[2:]
    keys = ".".join(step for step in way if isinstance(step, str))
    parts = [part for part in (owner, keys) if part]
    return ", ".join(parts) + ": " if parts else ""


def shown(value: Any) -> str:
    """A found value as people may read it: one line, not long."""
    match value:
        case None:
            return "nothing"
        case bool():
            return str(value).lower()
        case dict():
            return "a group of keys"
        case tuple():
            return "a list" if value else "an empty list"
        case str():
            text = " ".join(value.split())
            return f"'{text if len(text) <= SHOWN else text[: SHOWN - 1] + '…'}'"
        case _:
            return str(value)[:SHOWN]


def _way(document: Document, detail: ErrorDetails) -> Way:
    """The way to the faulty value; the checker's own steps (which branch of a union) are left out."""
    way: Way = ()
    for step in detail["loc"]:
        if detail["type"] not in ("missing", "extra_forbidden") and (*way, step) not in document.lines:
            break
        way = (*way, step)
    return way


def _said(detail: ErrorDetails, way: Way) -> str:
    kind, found, context = detail["type"], detail["input"], detail.get("ctx", {})
    if kind == "missing":
        return "this key is missing"
    if kind == "extra_forbidden":
        keys = tuple(_model(way[:-1]).model_fields)
        return f"unknown key{did_you_mean(str(way[-1]), keys)}; allowed: {', '.join(keys)}"
    allowed, words = _allowed(kind, context, detail["msg"], way)
    return f"found {shown(found)}; allowed: {allowed}{did_you_mean(found, words)}"


def _allowed(kind: str, context: dict[str, Any], message: str, way: Way) -> tuple[str, tuple[str, ...]]:
    """What would have been right, and the words to be near to."""
    match kind:
        case "literal_error":
            words = _words(context["expected"])
            return ", ".join(words), words
        case "value_error":
            return str(context["error"]), tuple(available_timezones()) if way == ("timezone",) else ()
        case "finite_number" | "greater_than_equal" | "greater_than" | "less_than_equal" | "less_than":
            return _range(way), ()
        case "tuple_type":
            return "a list, an entry a line behind '- '" if way[-1] in SECTIONS else "a list, as in [one, two]", ()
        case "int_from_float" | "int_type" | "int_parsing" | "int_parsing_size":
            return "a whole number", ()
        case "model_type" | "model_attributes_type" | "dict_type":
            return "a group of keys", ()
        case "string_type":
            return "a word", ()
        case "too_short":
            return "at least one", ()
        case _:
            return message[:1].lower() + message[1:], ()


def _words(expected: str) -> tuple[str, ...]:
    """'a', 'b' or 'c' → the words."""
    return tuple(expected.split("'")[1::2])


def _model(way: Way) -> type[BaseModel]:
    """The type whose keys stand at `way`."""
    model: type[BaseModel] = Barn
    for step in way:
        if isinstance(step, str):
            model = next(_models(model.model_fields[step].annotation))
    return model


def _range(way: Way) -> str:
    """The numbers that a key allows, as in "1 to 9"."""
    name = next(step for step in reversed(way) if isinstance(step, str))
    found = dict(_bounds(_model(way[: way.index(name)]).model_fields[name]))
    low, high = found.get("ge", found.get("gt")), found.get("le", found.get("lt"))
    return f"{low:,} to {high:,}"


def _bounds(item: Any) -> Iterator[tuple[str, float]]:
    """Each bound of a field, however deep its type hides it."""
    for kept in (*getattr(item, "metadata", ()), *getattr(item, "__metadata__", ())):
        yield from ((name, getattr(kept, name)) for name in ("ge", "gt", "le", "lt") if hasattr(kept, name))
        yield from _bounds(kept)
    for part in get_args(getattr(item, "annotation", item)):
        yield from _bounds(part)


def _models(annotation: Any) -> Iterator[type[BaseModel]]:
    if get_origin(annotation) is None:
        if isinstance(annotation, type) and issubclass(annotation, BaseModel):
            yield annotation
        return
    for inner in get_args(annotation):
        yield from _models(inner)
