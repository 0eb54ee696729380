"""Two messages sent as one: people on a phone put two thoughts in one bubble, with a full stop or a line between."""

import random

import pytest

from bot.events import Event, Wearing
from bot.words.lookup.tokens import plain
from tests.words.others import SETS, barn, messages
from tests.words.saying import said_in

PAIRS = 200  # of a set


def told(name: str, text: str) -> tuple[Event, ...]:
    """The facts that the barn's manager tells with this."""
    return said_in(barn(name), text).events


def subjects(event: Event) -> set[str]:
    """The horses or the garment that a fact is of."""
    listed = getattr(event, "horses", None) or ()
    alone = {getattr(event, "horse", None), getattr(event, "garment", None)} - {None}
    return {str(one) for one in alone} | {horse for horse in listed if listed != "all"}


def spoken_of(name: str, events: tuple[Event, ...]) -> set[str]:
    """The horses and garments that facts are of, with the clothes of those horses: "the liner" may be theirs."""
    horses = {str(getattr(event, "horse", None)) for event in events}
    horses |= {horse for event in events for horse in (getattr(event, "horses", None) or ()) if horse != "all"}
    worn = {garment for event in events if isinstance(event, Wearing) for garment in event.wear}
    own = {garment.id for garment in barn(name).garments if garment.horse in horses}
    owners = {
        str(g.horse) for g in barn(name).garments if g.id in {getattr(event, "garment", None) for event in events}
    }
    owned = {garment.id for garment in barn(name).garments if garment.horse in owners}
    return horses | worn | own | owned | {str(getattr(event, "garment", None)) for event in events}


def clothes_of_those_named(name: str, text: str) -> set[str]:
    """What may be meant by "the 300" behind a horse of which nothing was told: its clothes."""
    said = plain(text)
    named = {horse.name for horse in barn(name).horses if any(plain(called) in said for called in horse.names)}
    return {garment.id for garment in barn(name).garments if garment.horse in named}


@pytest.mark.parametrize("between", [". ", "\n", ", "], ids=["a full stop", "a line", "a comma"])
@pytest.mark.parametrize("name", SETS)
def test_no_fact_of_one_goes_to_a_horse_that_neither_speaks_of(name: str, between: str) -> None:
    """Each pair of a set's messages, as one, tells nothing of a horse or garment that neither tells anything of."""
    draw, all_of_them = random.Random(f"{name}{between}"), [message.text for message in messages(name)]
    for _ in range(PAIRS):
        one, other = draw.sample(all_of_them, 2)
        known = spoken_of(name, told(name, one)) | spoken_of(name, told(name, other))
        known |= clothes_of_those_named(name, one)
        for event in told(name, f"{one}{between}{other}"):
            assert subjects(event) <= known, (one, other, event)
