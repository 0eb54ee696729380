"""One message to one change of the barn's list: every word of it must be understood, or it is none."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Any

from bot.barn import Barn, Person, plain
from bot.barn.amend import KEY, said_of
from bot.enrol.phrases import Facts, Words, ends, literal, means, openings, phrases, pieces, spoken
from bot.enrol.tables import TABLES, Rows
from bot.events import Enrolled, GarmentIs, Section, Struck
from bot.state import State
from bot.words import read
from bot.words.lookup.tokens import Token, tokenise, words
from rules.garment import OUTDOOR

LONGEST = 40  # words; a change that needs more is written into the file
NAME_WORDS = 4
FILLED = frozenset({"turnout", "liner"})  # kinds that are nothing without their fill


@dataclass
class Text:
    """A message being read: its tokens, where the reading stands, what was understood so far."""

    text: str
    tokens: Sequence[Token]
    at: int = 0
    facts: Facts = field(default_factory=dict)

    @property
    def done(self) -> bool:
        """Nothing is left but what closes a sentence."""
        return all(t.text in (".", ",") for t in self.tokens[self.at :])

    def written(self, start: int, end: int) -> str:
        """These tokens as they were written."""
        return self.text[self.tokens[start].start : self.tokens[end - 1].end] if end > start else ""


def proposed(text: str, person: Person, barn: Barn, state: State) -> Enrolled | Struck | None:
    """The change of the barn's list that a manager's message asks for; None for anything else.

    Nobody strikes themselves or gives up their own role: so there is always a manager.
    """
    tokens = tokenise(text)
    if person.role != "manager" or not 1 < len(tokens) <= LONGEST or any(t.text in "?!\n" for t in tokens):
        return None
    for language in dict.fromkeys((person.language, *TABLES)):
        readings = (reader(Text(text, tokens), language, barn) for reader in (_new, _piece, _set, _struck))
        found = next((one for one in readings if one is not None), None)
        found = found or _described(Text(text, tokens), language, barn, person, state)
        if found is not None:
            return None if _of_oneself(found, person) else found
    return None


def _of_oneself(told: Enrolled | Struck, person: Person) -> bool:
    own = (told.section, told.name) == ("people", person.name)
    return own and (isinstance(told, Struck) or "role" in told.facts)


def agreed(text: str, language: str) -> bool | None:
    """Yes or no to "shall I write this?"; None for anything else."""
    said = tuple(t.text for t in tokenise(text) if t.kind != "mark")
    for table in (TABLES[name] for name in dict.fromkeys((language, *TABLES))):
        if said in spoken(table.yes):
            return True
        if said in spoken(table.no):
            return False
    return None


def _new(text: Text, language: str, barn: Barn) -> Enrolled | None:
    """As in "new horse Biscuit, 75 in, born 2015": opening, name, facts."""
    table = TABLES[language]
    for phrase, (head, value) in openings(language):
        if tuple(t.text for t in text.tokens[: len(phrase)]) != phrase:
            continue
        section: Section = head  # type: ignore[assignment]
        rows = getattr(table, section)
        for name, rest in _names(text, len(phrase), language):
            facts = _facts(Text(text.text, text.tokens, rest), rows, barn)
            if facts is not None:
                return _enrolled(barn, section, name, value | facts)
        return None
    return None


def _piece(text: Text, language: str, barn: Barn) -> Enrolled | None:
    """As in "new spare turnout 200 g 75 in": nothing but facts, "new" among them, in any order."""
    facts = _facts(text, pieces(language), barn)
    if facts is None or not {"new", "kind"} <= set(facts) or ("spare" in facts) == ("horse" in facts):
        return None
    size, fill = facts.keys() & {"size_in", "size_cm"}, facts.get("fill_g")
    if not (size or fill) or (facts["kind"] in FILLED and not fill):
        return None
    row = {key: value for key, value in facts.items() if key not in ("new", "spare")}
    if row["kind"] in OUTDOOR:
        row.setdefault("waterproof", True)
    if row["kind"] == "neck":
        row.setdefault("neck", "full")
    return Enrolled("garments", _id(barn, row), row, None)


def _set(text: Text, language: str, barn: Barn) -> Enrolled | None:
    """As in "set Maple: size 78 in, condition 4"."""
    table = TABLES[language]
    (verb, *_), *_ = sorted(spoken(table.set))
    colon = next((k for k, t in enumerate(text.tokens) if t.text == ":"), 0)
    if text.tokens[0].text != verb or colon < 2:
        return None
    found = _listed(barn, text.written(1, colon))
    if found is None:
        return None
    section, name = found
    rows = pieces(language) if section == "garments" else getattr(table, section)
    facts = _facts(Text(text.text, text.tokens, colon + 1), rows, barn)
    return _enrolled(barn, section, name, facts) if facts and not facts.keys() & {"new", "spare"} else None


def _struck(text: Text, language: str, barn: Barn) -> Struck | None:
    """As in "Tansy sold", "Marta no longer works here", "take Tansy off the list"."""
    for said, sections in ends(language):
        start, end = _between(text, said)
        found = _listed(barn, text.written(start, end), sections) if start < end else None
        if found is not None:
            return Struck(*found, said_of(barn, *found))
    return None


def _described(text: Text, language: str, barn: Barn, person: Person, state: State) -> Struck | None:
    """As in "Maple's liner sold": the one piece that would be meant were it said to be torn."""
    for phrase in spoken(TABLES[language].sold):
        start, end = _between(text, ((), phrase))
        if start >= end:
            continue
        heard = read(f"{text.written(start, end)} {TABLES[language].torn}", person, barn, state)
        if len(heard.events) == 1 and isinstance(heard.events[0], GarmentIs):
            garment = heard.events[0].garment
            return Struck("garments", garment, said_of(barn, "garments", garment))
    return None


def _between(text: Text, around: tuple[Words, Words]) -> tuple[int, int]:
    """Where the message stands between these words before and behind it; an empty stretch where it does not."""
    before, after = around
    said = tuple(t.text for t in text.tokens if t.text != ".")
    start, end = len(before), len(said) - len(after)
    return (start, end) if end > start and said[:start] == before and said[end:] == after else (0, 0)


def _enrolled(barn: Barn, section: Section, name: str, facts: Facts) -> Enrolled | None:
    """The change, with what is listed now of these keys; None where it would say nothing new of a row."""
    known = _listed(barn, name)
    name = known[1] if known and known[0] == section else name
    said = said_of(barn, section, name, tuple(facts))
    return None if said == facts else Enrolled(section, name, facts, said)


def _names(text: Text, at: int, language: str) -> Iterator[tuple[str, int]]:
    """The names that may stand here, shortest first, each with where it ends.

    Behind a colon anything up to a comma; else words with capitals where the words before have none, the last of which
    means nothing in the language it is written in: "new horse Friday" is no name, "Old Pete" is.
    """
    tokens, free = text.tokens, False
    if at < len(tokens) and tokens[at].text == ":":
        at, free = at + 1, True
    stop = next((k for k in range(at, len(tokens)) if tokens[k].text in ",."), len(tokens))
    if free:
        yield from [(text.written(at, stop), stop)] if stop > at else []
        return
    for end in range(at + 1, min(stop, at + NAME_WORDS) + 1):
        run = tokens[at:end]
        capitals = all(t.kind == "word" and t.capital for t in run) and not tokens[at - 1].capital
        if capitals and not means(run[-1].text, language):
            yield text.written(at, end), end


def _facts(text: Text, rows: Rows, barn: Barn) -> Facts | None:
    """All that is left of the message as facts; None where a word of it is none."""
    while not text.done:
        if text.tokens[text.at].text in (",", ":", "."):
            text.at += 1
        elif not any(_fact(text, key, phrase, barn) for phrase, key in phrases(tuple(rows.items()))):
            return None
    return text.facts


def _fact(text: Text, key: str, phrase: Words, barn: Barn) -> bool:
    """Whether this phrase stands here and says something not said yet; then it is noted."""
    name, _, value = key.partition("=")
    if name in text.facts or name in {"size_in", "size_cm"} & text.facts.keys():
        return False
    at, found = text.at, literal(value)
    for word in phrase:
        if at >= len(text.tokens):
            return False
        if word == "@":
            taken = _name(text, at, name, barn)
            if taken is None:
                return False
            found, at = taken
        elif word == "#":
            if text.tokens[at].kind != "number":
                return False
            number = float(text.tokens[at].text)
            found, at = int(number) if number.is_integer() else number, at + 1
        elif text.tokens[at].text == word:
            at += 1
        else:
            return False
    text.facts[name], text.at = found, at
    return True


def _name(text: Text, at: int, key: str, barn: Barn) -> tuple[Any, int] | None:
    """The person, horse or new nickname that stands here, the longest, and where it ends."""
    stop = next((k for k in range(at, len(text.tokens)) if text.tokens[k].text in ",."), len(text.tokens))
    if key == "also":
        return ([text.written(at, stop)], stop) if stop > at else None
    section: Section = "people" if key == "owner" else "horses"
    for end in range(min(stop, at + NAME_WORDS), at, -1):
        found = _listed(barn, text.written(at, end), (section,))
        if found is not None:
            return found[1], end
    return None


def _listed(
    barn: Barn, name: str, sections: tuple[Section, ...] = ("horses", "people", "garments")
) -> tuple[Section, str] | None:
    """The one row of the barn's list that goes by this name; None where there is none or more than one."""
    found = [
        (section, getattr(row, KEY[section]))
        for section in sections
        for row in getattr(barn, section)
        if plain(name.strip()) in map(plain, row.names)
    ]
    return found[0] if len(found) == 1 else None


def _id(barn: Barn, row: Facts) -> str:
    """A new piece's id: whose, what, how much; numbered where that is taken."""
    whose = "-".join(words(plain(row.get("horse", "spare")))) or "horse"
    stem = "-".join(str(part) for part in (whose, row["kind"], row.get("fill_g")) if part)
    taken = {g.id for g in barn.garments}
    return next(i for i in (stem, *(f"{stem}-{n}" for n in range(2, len(taken) + 3))) if i not in taken)
