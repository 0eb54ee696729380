"""What changed after the post, naming only the horses it touches; and the buttons under a post."""

from collections.abc import Iterable, Mapping, Sequence
from typing import TYPE_CHECKING, Literal

from bot.barn import Barn
from bot.layout import lay_out, wrap
from bot.message import Button
from bot.post.day import INDENT, first_window
from bot.sheet import Sheet
from bot.skyline import skyline
from bot.voice import Voice, plain, voice

if TYPE_CHECKING:
    from bot.moves import Move  # brings the arrays along, which a post needs not

Cause = Literal["forecast", "report"]

ASKED_AFTER = 4  # wet pieces that get a button of their own


def update(
    before: Sheet,
    after: Sheet,
    moves: "Sequence[Move]",
    barn: Barn,
    language: str,
    units: str,
    cause: Cause = "forecast",
) -> str:
    """One message that names only the horses a new forecast or a report moves, to what, and why."""
    tongue = voice(barn, language, units)
    sky = wrap(skyline(after, after.windows[0], tongue)) if cause == "forecast" and after.windows else None
    head = wrap(tongue.say(f"update {cause}"))
    return lay_out(
        head,
        sky,
        *(wrap(line, INDENT) for line in moved(moves, after, tongue)),
        wrap(tongue.source(after.forecast, after.forecast.age_min)),
    )


def moved(moves: "Sequence[Move]", after: Sheet, tongue: Voice) -> Iterable[str]:
    """Horses that move alike in one line, each with the weightiest reason."""
    groups: dict[tuple[str, str, str | None], list[str]] = {}
    for m in moves:
        when = tongue.say("now") if m.start <= after.made_at else tongue.at_round(m.round, m.start)
        why = tongue.reason(m.after.why[0], after.sky, m.horse) if m.after.why else None
        groups.setdefault((tongue.outfit(m.after.wear, m.horse), when, why), []).append(m.horse)
    for (wear, when, why), names in groups.items():
        yield tongue.say("moved", names=tongue.names(names), when=when, wear=wear, why=why)


def buttons(sheet: Sheet, barn: Barn, language: str) -> tuple[tuple[Button, ...], ...]:
    """What stands under the post: a button for each horse that changes, each wet piece, all done, and questions."""
    tongue = voice(barn, language, barn.units)
    book = tongue.book
    changing = {h.horse for h, d in first_window(sheet) if d.change}
    horses = [Button(short(h.name), f"done:{i}") for i, h in enumerate(barn.horses) if h.name in changing]
    rows = [tuple(horses[i : i + 3]) for i in range(0, len(horses), 3)]
    for i, garment in enumerate(drying(sheet)):
        rows.append((Button(book.say("button wet", piece=tongue.whose(garment)), f"wet:{i}"),))
    rows.append((Button(book.say("button all"), "done:*"), Button(book.say("button left"), "left")))
    rows.append((Button(book.say("button why"), "why"), Button(book.say("button drying"), "drying")))
    return tuple(rows)


def drying(sheet: Sheet) -> list[str]:
    """The pieces that the post's buttons ask after: the first few that are not dry."""
    return [one.garment for one in sheet.drying][:ASKED_AFTER]


def ticked(rows: tuple[tuple[Button, ...], ...], said: Mapping[str, str]) -> tuple[tuple[Button, ...], ...]:
    """The same buttons with a tick on those that were pressed or said. said: a button's data → who said so."""

    def one(button: Button) -> Button:
        who = said.get(button.data)
        return Button(f"✓ {button.text} · {short(who)}", button.data) if who else button

    return tuple(tuple(map(one, row)) for row in rows)


def short(name: str) -> str:
    """A name that fits a third of a phone's width."""
    shown = plain(name)
    return shown if len(shown) <= 14 else shown[:13] + "…"
