"""Who and what this barn has names for, and which of them a misspelt word means. It never guesses."""

import weakref
from collections import defaultdict
from collections.abc import Callable, Container, Iterator, Sequence
from dataclasses import dataclass, field
from functools import cache
from typing import Any

from bot.barn import Barn, Garment
from bot.words.lookup.items import Alone
from bot.words.lookup.piece import Piece, colour
from bot.words.lookup.remembered import Remembered
from bot.words.lookup.tokens import APOSTROPHE, Token, plain, words

SHORTEST_PART = 3  # letters of one word of a longer name that may stand for the whole: "Ben", but not "du"
LONGEST_ID = 6  # words of a garment's id
SHORT = 3  # letters of a name that no slip is bent into
Words = tuple[str, ...]
ARTICLES = frozenset(("the", "la", "le", "les", "l'", "el", "los", "las"))


@dataclass
class Roster:
    """A barn's names by their first word, longest first, and what a slip of the finger may have meant.

    slips, nicknames: how a word read before was resolved. written: how one is written out in a language.
    fitted: the garments that a description read before is true of.
    by_itself: by language, what a word as spelled and as written is by itself; None where what stands beside it tells.
    """

    everyone: tuple[str, ...] = ()  # every horse, in the file's order
    horses: dict[str, list[tuple[Words, str]]] = field(default_factory=dict)
    people: dict[str, list[tuple[Words, str]]] = field(default_factory=dict)
    pieces: dict[str, list[tuple[Words, tuple[str, ...]]]] = field(default_factory=dict)
    alone: dict[str, tuple[str, ...]] = field(default_factory=dict)  # of "the tartan": tartan
    ids: dict[str, str] = field(default_factory=dict)
    odd: dict[str, str] = field(default_factory=dict)
    spelled: dict[str, str] = field(default_factory=dict)
    lengths: dict[int, list[tuple[str, str]]] = field(default_factory=dict)  # of a slip → names, as `spelled`
    parts: dict[str, tuple[str, ...]] = field(default_factory=dict)  # a word of a longer name → whose it may be
    longer: list[tuple[Words, str]] = field(default_factory=list)
    begun: frozenset[str] = frozenset()  # the first word of every name
    longer_words: frozenset[str] = frozenset()  # the first two of each
    fond: dict[str, str] = field(default_factory=dict)  # "frijolito" → Frijol
    tilded: frozenset[str] = frozenset()  # those that the file writes with an ñ
    garments: dict[str, Garment] = field(default_factory=dict)
    bags: dict[str, frozenset[str]] = field(default_factory=dict)
    fills: frozenset[float] = frozenset()  # of its pieces [g/m²]
    words: frozenset[str] = frozenset()
    colours: frozenset[str] = frozenset()  # of its pieces, and every other word of their names
    nouns: frozenset[str] = frozenset()  # all that some piece is called beside its owner: "capa" of "lucero-capa"
    named: frozenset[str] = frozenset()  # every word of a name: says nothing of the language spoken
    owned: dict[str, tuple[str, ...]] = field(default_factory=dict)
    keepers: dict[str, tuple[str, ...]] = field(default_factory=dict)  # whose horses are whose
    slips: Remembered[str, tuple[tuple[str, ...], int]] = field(default_factory=Remembered)
    nicknames: Remembered[str, tuple[str, ...]] = field(default_factory=Remembered)
    written: Remembered[tuple[str, str, bool], tuple[str, ...]] = field(default_factory=Remembered)
    fitted: Remembered[Piece, tuple[str, ...]] = field(default_factory=Remembered)
    by_itself: defaultdict[str, dict[Words, Alone | None]] = field(default_factory=lambda: defaultdict(dict))

    def near(self, word: str) -> tuple[tuple[str, ...], int]:
        """The horses whose name is nearest to a misspelt word, within the budget of its length, and the distance.

        None allowed up to three letters, but one written twice; one up to five, two above. ((), 0) where there is none.
        """
        if word not in self.slips:
            written = self.of_these_letters(word)
            nearest = _nearest(word, self.lengths.get(len(word), []), self.spelled)
            self.slips[word] = (written, 1) if len(written) == 1 else nearest
        return self.slips[word]

    def of_these_letters(self, word: str) -> tuple[str, ...]:
        """The horses whose name this is with one letter twice, or two swapped: it is hardly another word."""
        written = (self.spelled[name] for name in _with_its_letters(word) if name in self.spelled)
        return tuple(dict.fromkeys(written))

    def nearly_nicknamed(self, word: str) -> tuple[str, ...]:
        """The garments whose nickname of one word this is with a slip in it; none where it may be two."""
        if word not in self.nicknames:
            names = [name for name in (*self.pieces, *self.alone) if len(name) > SHORT + 1 and self.nicknamed(name)]
            near = {self.nicknamed(name) for name in names if distance(word, name, 1) == 1}
            self.nicknames[word] = near.pop() if len(near) == 1 else ()
        return self.nicknames[word]

    def nicknamed(self, word: str) -> tuple[str, ...]:
        """The garments whose nickname is this one word, with its article or without."""
        rows = self.pieces.get(word, ())
        return self.alone.get(word) or next((ids for phrase, ids in rows if len(phrase) == 1), ())

    def owner(self, word: str) -> str | None:
        """The horse whose name this may be with an "s" that lost its apostrophe: "maples", "birches"."""
        hissing = word.endswith(("ches", "shes", "xes", "zes", "ses"))
        return self.spelled.get(word[:-1]) or (self.spelled.get(word[:-2]) if hissing else None)

    def fitting(self, piece: Piece) -> tuple[str, ...]:
        """The garments that a description is true of, in the file's order."""
        fitting = self.fitted.get(piece)
        if fitting is None:
            fitting = tuple(g for g, garment in self.garments.items() if piece.fits(garment, self.bags[g]))
            self.fitted[piece] = fitting
        return fitting

    def a_letter_from(self, word: str) -> tuple[str, ...]:
        """The horses whose name is one slip from this word: never acted on, but somebody may mean one."""
        if len(word) < SHORT:
            return ()
        near = (h for name, h in self.spelled.items() if len(name) >= SHORT and distance(word, name, 1) == 1)
        return tuple(dict.fromkeys(near))

    def begins(self, word: str) -> tuple[str, ...]:
        """The horses whose one-word name begins like this and goes on."""
        return tuple(dict.fromkeys(h for name, h in self.spelled.items() if name.startswith(word) and name != word))


def budget(name: str) -> int:
    """How many slips a name of this length may have."""
    return 0 if len(name) <= 3 else 1 if len(name) <= 5 else 2


def distance(one: str, other: str, limit: int) -> int:
    """Edits and swaps of neighbours between two words; more than `limit` is limit + 1."""
    return _edits()(one, other, score_cutoff=limit)


@cache
def _edits() -> Callable[..., int]:
    from rapidfuzz.distance import OSA  # 30 ms that a message without a slip does not pay

    return OSA.distance


def sounded(word: str) -> str:
    """As it is heard: Rustie, Rustey and Rusty end alike; "kico" is Quico, "kanelo" Canelo."""
    word = word.replace("qu", "k")
    word = "k" + word[1:] if word[:2] in ("ca", "co", "cu") else word
    return word[:-2] + "y" if word.endswith(("ie", "ey")) else word


def _with_its_letters(word: str) -> Iterator[str]:
    """What was meant where one letter is written twice, or two are swapped: "beaa" is Bea, and "lnua" no Lana."""
    if len(word) <= SHORT:
        return
    for k in range(len(word) - 1):
        if word[k] == word[k + 1]:
            yield word[:k] + word[k + 1 :]
        else:
            yield word[:k] + word[k + 1] + word[k] + word[k + 2 :]


def _nearest(word: str, candidates: list[tuple[str, str]], spelled: dict[str, str]) -> tuple[tuple[str, ...], int]:
    heard = sounded(word)
    best: int = 3
    found: list[str] = []
    names: list[str] = []
    for name, horse in candidates:
        allowed = min(budget(name), best)
        if allowed == 0 or abs(len(name) - len(word)) > allowed:
            continue
        apart = distance(word, name, allowed)
        if apart > 1 and heard == sounded(name):
            apart = 1
        if apart <= allowed and (apart < best or horse not in found):
            found = [horse] if apart < best else [*found, horse]
            names = [name] if apart < best else [*names, name]
            best = apart
    twins = [spelled[other] for name in names for other in _twins(name, spelled) if distance(word, other, best) <= best]
    return (tuple(dict.fromkeys([*found, *twins])), best) if found else ((), 0)


def _twins(name: str, spelled: dict[str, str]) -> list[str]:
    """Names one letter from this one: a slip in either may be meant as the other."""
    return [other for other in spelled if abs(len(other) - len(name)) <= 1 and distance(name, other, 1) == 1]


KEPT = 16  # rosters; of more barns in one process the ones that have been silent longest are made again
_rosters: dict[int, tuple[weakref.ref[Barn], Roster]] = {}  # the barn spoken in last stands last


def roster(barn: Barn) -> Roster:
    """The roster of a barn, made once for each barn as loaded."""
    kept = _rosters.pop(id(barn), None)
    if kept is None or kept[0]() is not barn:
        kept = (weakref.ref(barn), _made(barn))
    _rosters[id(barn)] = kept
    while len(_rosters) > KEPT:
        del _rosters[next(iter(_rosters))]
    return kept[1]


def _made(barn: Barn) -> Roster:
    made = Roster(tuple(horse.name for horse in barn.horses))
    for horse in barn.horses:
        for name in horse.names:
            _horse(made, name, horse.name)
    for person in barn.people:
        for name in (person.name, *person.also):
            _add(made.people, words(name), person.name)
            made.keepers[" ".join(words(name))] = tuple(h.name for h in barn.horses if h.owner == person.name)
    for garment in barn.garments:
        made.garments[garment.id] = garment
        made.ids[plain(garment.id)] = garment.id
        spoken = {word for name in (garment.id, *garment.also) for word in words(name)}
        owner = {word for h in barn.horses if h.name == garment.horse for name in h.names for word in words(name)}
        made.bags[garment.id] = frozenset(spoken - owner)
    _nicknames(made, barn)
    for table in (made.horses, made.people, made.pieces):
        for rows in table.values():
            rows.sort(key=lambda row: -len(row[0]))
    made.lengths = _by_length(made.spelled)
    made.fond = {fond: horse for name, horse in made.spelled.items() for fond in _diminutives(name)}
    made.begun = frozenset((*made.horses, *made.people, *made.pieces))
    made.tilded = frozenset(w for h in barn.horses for n in h.names if "ñ" in n.casefold() for w in words(n))
    made.fills = frozenset(garment.fill_g for garment in barn.garments)
    made.longer_words = frozenset(word for phrase, _ in made.longer for word in phrase[:2])
    made.words = frozenset().union(*made.bags.values())
    made.colours = frozenset(map(colour, made.words))
    made.nouns = frozenset(word for bag in made.bags.values() if len(bag) == 1 for word in bag if word.isalpha())
    phrases = [p for rows in (*made.horses.values(), *made.people.values()) for p, _ in rows]
    made.named = frozenset(word for phrase in phrases for word in phrase) | made.words
    made.owned = {h.name: tuple(g.id for g in barn.garments if g.horse == h.name) for h in barn.horses}
    return made


def _diminutives(name: str) -> list[str]:
    """What Spanish makes of a name: Pampa, pampita; Frijol, frijolito; Nube, nubecita."""
    if len(name) <= SHORT:
        return []
    if name[-1] in "ao":
        return [name[:-1] + "it" + name[-1]]
    return [name + end for end in (("cita", "cito") if name[-1] in "en" else ("ito", "ita"))]


def _by_length(spelled: dict[str, str]) -> dict[int, list[tuple[str, str]]]:
    """The names that a word of each length may be a slip of."""
    lengths: defaultdict[int, list[tuple[str, str]]] = defaultdict(list)
    for name, horse in spelled.items():
        slips = budget(name)
        for length in range(len(name) - slips, len(name) + slips + 1) if slips else ():
            lengths[length].append((name, horse))
    return dict(lengths)


def _nicknames(made: Roster, barn: Barn) -> None:
    """What pieces are called, with its article and without; an id that starts with no horse's name is one more."""
    named = {word for horse in barn.horses for name in horse.names for word in words(name)}
    called: dict[Words, list[str]] = {}
    for garment in barn.garments:
        phrases = [words(name) for name in garment.also]
        phrases += [words(garment.id)] if named.isdisjoint(words(garment.id)[:1]) else []  # "rug 12"
        for phrase in phrases:
            called.setdefault(phrase, []).append(garment.id)
            if len(phrase) > 1 and phrase[0] in ARTICLES:
                called.setdefault(phrase[1:], []).append(garment.id)
    for phrase, ids in called.items():
        short = len(phrase) == 1 and any((article, *phrase) in called for article in ARTICLES)
        if short:
            made.alone[phrase[0]] = tuple(ids)
        else:
            _add(made.pieces, phrase, tuple(ids))


def _horse(made: Roster, name: str, horse: str) -> None:
    phrase = words(name)
    if "'" in name or "’" in name:
        _add(made.horses, words(APOSTROPHE.sub("", name)), horse)  # "vent douest"
    if any(not (c.isalnum() or c in " '’-") for c in name) or not phrase:
        made.odd[name.casefold()] = horse
    _add(made.horses, phrase, horse)
    spoken = tuple(word for word in phrase if word.isalnum())
    if spoken != phrase:  # nobody types the unicorn
        _add(made.horses, spoken, horse)
    if len(phrase) == 2 and phrase[0] in ARTICLES:
        _add(made.horses, phrase[1:], horse)  # "al abuelo" of El Abuelo
    if len(phrase) > 1:
        made.longer.append((phrase, horse))
        for word in phrase:
            if len(word) >= SHORTEST_PART and word not in ARTICLES:
                made.parts[word] = tuple(dict.fromkeys((*made.parts.get(word, ()), horse)))
        _add(made.horses, ("".join(phrase),), horse)
    if len(phrase) == 1:
        made.spelled[phrase[0]] = horse
    elif phrase:
        made.spelled["".join(phrase)] = horse


def _add(table: dict[str, list[tuple[Words, Any]]], phrase: Words, named: Any) -> None:
    if phrase:
        table.setdefault(phrase[0], []).append((phrase, named))


def name_at(texts: Words, at: int, table: dict[str, list[tuple[Words, Any]]]) -> tuple[list[Any], int]:
    """Whose name stands at this place, by a table of first words; and how many words it has."""
    longest = 0
    found = []
    for phrase, named in table.get(texts[at], ()):
        if len(phrase) < longest:
            break
        if texts[at : at + len(phrase)] == phrase:
            longest = len(phrase)
            found.append(named)
    return found, longest


def id_at(tokens: Sequence[Token], at: int, ids: Container[str]) -> tuple[str, int]:
    """The longest garment's id that begins here, and how many words it has; "" and 0 where none does."""
    end = at + 1
    while end < min(len(tokens), at + LONGEST_ID) and tokens[end].tied:
        end += 1
    said = ["-".join([t.text for t in tokens[at:last]]) for last in range(end, at + 1, -1)]
    return next(((ident, 1 + ident.count("-")) for ident in said if ident in ids), ("", 0))
