"""Names that will be misheard: what `haybell check` warns of."""

from collections.abc import Iterator
from itertools import combinations

from bot.barn import Barn
from bot.words.heard import LANGUAGES
from bot.words.lookup.lexicon import common, lexicon
from bot.words.lookup.names import distance
from bot.words.lookup.tokens import words


def warnings(barn: Barn) -> list[str]:
    """One line for each name that people will be misunderstood with, and what to do about it."""
    return [*_one_by_one(barn), *_side_by_side(barn), *_clothes(barn)]


def _one_by_one(barn: Barn) -> Iterator[str]:
    people = {words(p.name) for p in barn.people}
    known = frozenset().union(*(common(language) for language in LANGUAGES))
    for horse in barn.horses:
        for name in horse.names:
            said = words(name)
            if words(name) in people:
                yield f"{name} is also the name of a person: write which is meant"
            if len(said) == 1 and len(said[0]) <= 3:
                yield f"{name} is short: it is understood only when spelled exactly"
            if len(said) == 1 and (said[0] in known or any(lexicon(x).phrases.longest(said, 0)[1] for x in LANGUAGES)):
                yield f"{name} is also an everyday word: it counts as the horse only where a name would stand"


def _side_by_side(barn: Barn) -> Iterator[str]:
    named = [(name, horse.name) for horse in barn.horses for name in horse.names]
    for (one, first), (other, second) in combinations(named, 2):
        if first == second:
            continue
        a, b = words(one), words(other)
        if distance("".join(a), "".join(b), 1) <= 1:
            yield f"{one} and {other} are one letter apart: a slip in either is asked about"
        elif set(a) < set(b) or set(b) < set(a):
            inner, outer = (one, other) if set(a) < set(b) else (other, one)
            yield f"{inner} is part of {outer}: {outer} is understood only when written whole"


def _clothes(barn: Barn) -> Iterator[str]:
    owners: dict[tuple[str, ...], list[str]] = {}
    for garment in barn.garments:
        for nickname in garment.also:
            owners.setdefault(words(nickname), []).append(garment.id)
    for said, ids in owners.items():
        if len(ids) > 1:
            yield f'"{" ".join(said)}" is {" and ".join(ids)}: it is asked about unless the horse is named'
