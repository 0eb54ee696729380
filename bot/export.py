"""The barn file as the barn is now: what was said in the chat written into it, comments and all else as they stand."""

from datetime import date
from io import StringIO
from pathlib import Path

from ruamel.yaml import YAML
from ruamel.yaml.comments import CommentedMap, CommentedSeq
from ruamel.yaml.error import YAMLError

from bot.barn import Barn, Garment, Horse, load
from bot.problems import Failed
from bot.state import HorseNow, State

WIDTH = 2**16  # no line is broken that the person did not break


def export(path: Path, barn: Barn, state: State) -> str:
    """The text of the barn file at `path` with the facts that chat may change as `state` has them.

    barn: what `load(path)` gave. Only what differs from the file is touched. Failed where the file has changed since.
    """
    if load(path) != barn:
        raise Failed(f"{path}: was changed since it was loaded; nothing is written")
    try:
        text = path.read_text(encoding="utf-8-sig")
        yaml = _yaml(text)
        root = yaml.load(text)
        for entry, horse in zip(root["horses"], barn.horses, strict=True):
            _horse(entry, horse, state.horses[horse.name])
        for entry, garment in zip(root.get("garments") or (), barn.garments, strict=True):
            _garment(entry, garment, state)
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


def _horse(entry: CommentedMap, horse: Horse, now: HorseNow) -> None:
    if (now.clip, now.clip_on) != (horse.clip.style, horse.clip.on):
        entry["clip"] = _flow_map(style=now.clip, on=now.clip_on)
    if now.keep_bare != horse.keep_bare:
        entry["keep_bare"] = now.keep_bare
    if now.wear is not None and now.wear != horse.wearing:
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
