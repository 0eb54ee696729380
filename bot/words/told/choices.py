"""Short answers to what the bot asked ("the blue one", "1", "Juniper"), and corrections ("no, Juniper")."""

from collections.abc import Sequence
from dataclasses import fields, replace

from bot.events import Event, Undo, Wearing
from bot.words.lookup.items import Item, some_mean
from bot.words.lookup.tokens import words
from bot.words.meaning import WITHOUT, Ask, Heard
from bot.words.thoughts.clauses import soft
from bot.words.told.telling import Telling


def answered(text: str, ask: Ask, items: Sequence[Item], telling: Telling) -> Heard | None:
    """The first message completed by this answer; None where it is no answer."""
    chosen = _chosen(text, ask, items, telling)
    if chosen is None:
        return None
    events = tuple(_filled(event, choice) for choice in chosen for event in ask.pending)
    return Heard(text, events=events, chatter=not events)


def _chosen(text: str, ask: Ask, items: Sequence[Item], telling: Telling) -> tuple[str, ...] | None:
    said = [i for i in items if not i.mark and (not i.has("polite") or i.has("yes"))]
    if text.strip() in ask.options:
        return (text.strip(),)
    if not said or any(not _choosing(i, ask, telling) for i in said):
        return None
    if some_mean(said, "neither"):
        return ()
    if some_mean(said, "both") and not any(i.horses or i.piece for i in said):
        return ask.options
    named = [name for i in said for name in _named(i, ask, telling)]
    if named:
        return tuple(dict.fromkeys(named))
    if len(ask.options) == 1 and some_mean(said, "yes"):
        return ask.options
    number = _number(said)
    return (ask.options[number - 1],) if number and number <= len(ask.options) else None


def _choosing(item: Item, ask: Ask, telling: Telling) -> bool:
    """A word that an answer may hold."""
    if ask.about == "garment" and any(item.text in words(g) for g in ask.options):
        return True
    sign = ask.about == "sign" and (item.kinds("sign") or item.kinds("everyday") or item.has("wet"))
    return bool(
        soft(item)
        or item.horses
        or item.piece
        or item.pieces
        or sign
        or item.has("first", "second", "third", "neither", "both", "colour", "one", "yes", "my")
    )


def _named(item: Item, ask: Ask, telling: Telling) -> list[str]:
    if ask.about == "horse":
        return [name for name in item.horses if name in ask.options] if item.horses and item.sure else []
    if ask.about == "sign":
        return [sign for sign in (*item.kinds("sign"), *item.kinds("everyday")) if sign in ask.options]
    garments, bags = telling.roster.garments, telling.roster.bags
    if item.piece is not None:
        whose = item.piece.owners
        fits = [
            g
            for g in ask.options
            if item.piece.fits(garments[g], bags[g]) and (not whose or garments[g].horse in whose)
        ]
    elif item.horses:
        fits = [g for g in ask.options if garments[g].horse in item.horses]
    else:
        fits = [g for g in ask.options if item.text in {*bags[g], *words(g)}]
    return fits if len(fits) == 1 else []


def _number(said: Sequence[Item]) -> int | None:
    numbers = [int(i.number) for i in said if i.number is not None and i.number == int(i.number)]
    if numbers:
        return numbers[0]
    places = [k for i in said for k, m in enumerate(("first", "second", "third"), 1) if i.has(m)]
    return places[0] if places else None


def _filled(event: Event, choice: str) -> Event:
    """The event with the choice in its empty place."""
    changes: dict[str, object] = {}
    for f in fields(event):
        value = getattr(event, f.name)
        if value == "":
            changes[f.name] = choice
        elif isinstance(value, tuple) and WITHOUT in value:
            changes[f.name] = tuple(v for v in value if v not in (WITHOUT, choice))
        elif isinstance(value, tuple) and "" in value:
            changes[f.name] = tuple(choice if v == "" else v for v in value)
    return replace(event, **changes)


def corrected_reply(text: str, items: Sequence[Item], telling: Telling) -> Heard | None:
    """As in "No, Juniper": the last facts taken back and told of the other horse; None where it is no correction."""
    last = telling.reply.last
    if not last:
        return None
    words = [i for i in items if not i.mark]
    names = [i for i in words if i.horses]
    if len(words) < 2 or not names or not some_mean(words, "no", "i mean"):
        return None
    if not all(i.horses or soft(i) or i.has("no", "i mean", "polite") for i in words):
        return None
    old = {getattr(event, "horse", None) for event in last}
    new = [i for i in names if i.sure and i.horses[0] not in old]
    if len(new) != 1 or len(old - {None}) > 1:
        return None
    of_horses = [event for event in last if hasattr(event, "horse")]
    again = [
        replace(event, horse=new[0].horses[0])  # type: ignore[call-arg]
        for event in of_horses
        if not (isinstance(event, Wearing) and event.wear)  # what the other wears are no pieces of hers
    ]
    return Heard(text, events=(Undo(), *again)) if of_horses else None
