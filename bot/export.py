"""The barn file as the barn is now: what was said in the chat written into it, comments and all else as they stand."""

from collections.abc import Container
from datetime import date
from io import StringIO
from pathlib import Path

from ruamel.yaml import YAML
from ruamel.yaml.comments import CommentedMap, CommentedSeq
from ruamel.yaml.error import YAMLError

from bot.barn import Barn, Garment, Horse, load
from bot.barn.amend import SECTIONS, Row, rows
from bot.events import Section
from bot.problems import Failed
from bot.state import HorseNow, State

WIDTH = 2**16  # no line is broken that the person did not break


def export(path: Path, barn: Barn, state: State, listed: Barn | None = None) -> str:
    """The text of the barn file at `path` with the facts that chat may change as `state` has them.

    barn: what `load(path)` gave. listed: the barn's list as it is now, None where the chat has not changed it; `state`
    is of that list. Only what differs from the file is touched. Failed where the file has changed since.
    """
    if load(path) != barn:
        raise Failed(f"{path}: was changed since it was loaded; nothing is written")
    try:
        text = path.read_text(encoding="utf-8-sig")
        yaml = _yaml(text)
        root = yaml.load(text)
        now = listed or barn
        lists = {section: _list(root, section, barn, now) for section in SECTIONS}
        for horse in now.horses:
            _horse(lists["horses"][horse.name], horse, state.horses[horse.name], lists["garments"])
        for garment in now.garments:
            _garment(lists["garments"][garment.id], garment, state)
        written = StringIO()
        yaml.dump(root, written)
    except (OSError, ValueError, KeyError, YAMLError) as error:
        reason = " ".join(str(error).split())[:120]
        raise Failed(f"{path}: cannot be written anew: {reason}") from None
    return written.getvalue()


def _yaml(text: str) -> YAML:
    """A reader and writer that keeps the file's own manner."""
    yaml = YAML(typ="rt")
    yaml.preserve_quotes = True
    yaml.width = WIDTH
    dash = next((line for line in text.splitlines() if line.lstrip().startswith("- ")), "")
    offset = len(dash) - len(dash.lstrip())
    yaml.indent(mapping=2, sequence=offset + 2, offset=offset)
    return yaml


def _list(root: CommentedMap, section: Section, filed: Barn, now: Barn) -> dict[str, CommentedMap]:
    """One section with the rows that are on the list now; each row by its name or id."""
    old, new = rows(filed, section), rows(now, section)
    if old == new:
        return dict(zip(old, root.get(section) or (), strict=True))
    if not old:
        root[section] = CommentedSeq()
    there = dict(zip(old, root[section], strict=True))
    for at in [at for at, name in enumerate(old) if name not in new][::-1]:
        del root[section][at]
    for name, row in new.items():
        if name not in there:
            there[name] = _flow_map()
            root[section].append(there[name])
        _facts(there[name], old.get(name, {}), row)
    return {name: there[name] for name in new}


def _facts(entry: CommentedMap, was: Row, now: Row) -> None:
    for key in was.keys() - now.keys():
        entry.pop(key, None)
    for key, value in now.items():
        if was.get(key) != value:
            entry[key] = _flow_list(tuple(value)) if isinstance(value, list) else value


def _horse(entry: CommentedMap, horse: Horse, now: HorseNow, garments: Container[str]) -> None:
    if (now.clip, now.clip_on) != (horse.clip.style, horse.clip.on):
        entry["clip"] = _flow_map(style=now.clip, on=now.clip_on)
    if now.keep_bare != horse.keep_bare:
        entry["keep_bare"] = now.keep_bare
    if now.wear is not None and not all(piece in garments for piece in now.wear):
        entry.pop("wearing", None)  # it wears what is on the list no more
    elif now.wear is not None and now.wear != horse.wearing:
        entry["wearing"] = _flow_list(now.wear)


def _garment(entry: CommentedMap, garment: Garment, state: State) -> None:
    now = state.garments[garment.id].state
    if now != garment.state:
        entry["state"] = now


def _flow_map(**values: str | date | None) -> CommentedMap:
    """{key: value} in one line, without what is not known."""
    made = CommentedMap({key: value for key, value in values.items() if value is not None})
    made.fa.set_flow_style()
    return made


def _flow_list(values: tuple[str, ...]) -> CommentedSeq:
    """[one, two] in one line."""
    made = CommentedSeq(values)
    made.fa.set_flow_style()
    return made
