"""From words to items: the longest name or phrase at each place, and which misspelt words are names."""

from dataclasses import replace
from functools import lru_cache
from typing import Any

from bot.words.items import Item, says_how
from bot.words.lexicon import VERBS, Lexicon, everyday, first_names, of_a_language
from bot.words.lexicon import lexicon as lexicon_of
from bot.words.names import Roster, Words, budget, distance
from bot.words.spelling import spelled
from bot.words.tokens import Token, tokenise

NAMEABLE = frozenset(("colour", "weather", "sky", "bare weather", "any adjective", "mass"))
NOBODY: tuple[list[Any], int] = ([], 0)
PASSING = frozenset(("very", "a little", "all", "both", "stopped", "not", "time"))


def tokens_of(text: str, roster: Roster) -> list[Token]:
    """The words of a message; names with marks in them ("<b>Bo</b>") stay whole."""
    pieces: list[Token] = []
    folded, at = text.casefold(), 0
    odd = [name for name in roster.odd if name in folded] if len(folded) == len(text) else []
    while odd and at < len(text):
        place, name = min(((folded.find(name, at), name) for name in odd if name in folded[at:]), default=(-1, ""))
        if place < 0:
            break
        pieces.extend(tokenise(text[at:place]))
        pieces.append(Token(name, text[place : place + len(name)], place, place + len(name), "name"))
        at = place + len(name)
        if text[at : at + 2] in ("'s", "’s"):
            pieces.append(Token("'s", text[at : at + 2], at, at + 2, "word"))
            at += 2
    return pieces + tokenise(text[at:])


def scan(tokens: list[Token], lexicon: Lexicon, roster: Roster) -> list[Item]:
    """Every item of a message in order."""
    items: list[Item] = []
    tokens = spelled(tokens, lexicon, roster)
    texts = tuple(token.text for token in tokens)
    shouted = sum(t.raw.isupper() for t in tokens if len(t.raw) > 1) * 2 > len(tokens)
    at = 0
    while at < len(tokens):
        item, taken = _longest(tokens, texts, at, lexicon, roster)
        if item.capital and (shouted or at == 0 or tokens[at - 1].text in ".!?\n"):
            item = replace(item, capital=False)
        elif item.capital and item.horses and lexicon.language != "en":
            item = replace(item, means=item.means - {"weekday"})  # Spanish and French write their days small
        items.append(item)
        at += taken
    return items


def _longest(tokens: list[Token], texts: Words, at: int, lexicon: Lexicon, roster: Roster) -> tuple[Item, int]:
    token = tokens[at]
    plainly = _plainly(tokens, texts, at, lexicon, roster)
    if plainly is not None:
        return plainly
    means, said = lexicon.phrases.longest(texts, at)
    if said > 1:
        means, said = _without_what_begins_anew(means, said, texts, at, lexicon, roster)
    if said > 1 and token.raw in ("à", "À") and not means.isdisjoint(("has", "wears")):
        means, said = lexicon.phrases.longest((token.text,), 0)  # "à la Pitoune" has nothing on
    means = _accent_heeded(means, tokens, at, said, lexicon)
    begins = token.text in roster.begun
    horses, named = _name(texts, at, roster.horses) if begins else NOBODY
    pieces, nick = _name(texts, at, roster.pieces) if begins else NOBODY
    people, person = _name(texts, at, roster.people) if begins else NOBODY
    taken = max(said, named, nick, person)
    slipped = _slipped(token, texts, at, taken, lexicon, roster) if taken <= 1 else None
    if slipped is not None and (
        not horses or slipped[0].pieces or slipped[0].horses[0] in horses
    ):  # "Lady gery", also called Lady
        return slipped
    if taken == 0:
        return _unknown(token, lexicon, roster), 1
    called = horses or people or pieces or token.text in roster.parts
    if taken == said == 1 and not called:
        if means and means <= NAMEABLE:
            return _perhaps(token, means, roster), 1
        number = float(token.text) if token.kind == "number" else None
        known = token.text in lexicon.everyday
        return Item(token.text, token.raw, means, number=number, known=known, capital=token.capital), 1
    part = roster.parts.get(token.text, ()) if taken == 1 and not (horses or people or pieces) else ()
    return Item(
        text=" ".join(texts[at : at + taken]),
        raw=" ".join(dict.fromkeys(t.raw for t in tokens[at : at + taken])),
        means=means if said == taken else frozenset(),
        horses=tuple(dict.fromkeys(horses)) if named == taken else part,
        sure=not part,
        pieces=pieces[0] if nick == taken else (),
        person=person == taken and bool(people),
        number=float(token.text) if token.kind == "number" else None,
        known=all(t in lexicon.everyday for t in texts[at : at + taken]),
        capital=token.capital,
    ), taken


def _without_what_begins_anew(
    means: frozenset[str], said: int, texts: Words, at: int, lexicon: Lexicon, roster: Roster
) -> tuple[frozenset[str], int]:
    """A phrase of several words, its last word left to what begins there: "est en" before "en sueur"."""
    behind = at + said  # "están todos" is no round that is done before "bien"
    how_behind = "all done" in means and says_how(lexicon.phrases.longest(texts, behind)[0])
    if how_behind or (not says_how(means) and _how_begins(texts, behind - 1, lexicon)):
        means, said = lexicon.phrases.longest(texts[at : behind - 1], 0)
    if said > 1 and any(_name(texts, at + said - 1, table)[1] > 1 for table in (roster.pieces, roster.horses)):
        said -= 1  # "de la tigrée" of a rug called la tigrée, "le vieux" of a horse called Vieux Tambour
    return means, said


def _perhaps(token: Token, means: frozenset[str], roster: Roster) -> Item:
    """A colour or weather, one slip from a name: asked about where only a horse can stand ("orange is sweating")."""
    item = Item(token.text, token.raw, means, capital=token.capital)
    horses, apart = roster.near(token.text)
    horses = horses if apart == 1 else roster.like(token.text)
    return replace(item, horses=horses, sure=False, exact=False) if horses else item


def _plainly(tokens: list[Token], texts: Words, at: int, lexicon: Lexicon, roster: Roster) -> tuple[Item, int] | None:
    """A mark, an hour, a name with marks in it, or a garment's id as the file writes it; None for any other word."""
    token = tokens[at]
    if token.kind == "name":
        return Item(token.text, token.raw, horses=(roster.odd[token.text],)), 1
    if token.kind in ("mark", "clock"):
        means = lexicon.phrases.longest(texts, at)[0]
        mark = token.kind == "mark" and not means
        return Item(token.text, token.raw, means, mark=mark, clock=token.kind == "clock"), 1
    tied = at + 1 < len(tokens) and tokens[at + 1].tied
    for length in (6, 5, 4, 3, 2) if tied else (1,):
        ident = _hyphened(tokens, at, length) if tied or token.tied else token.text
        if ident in roster.ids:
            return Item(ident, ident, pieces=(roster.ids[ident],)), length
    return None


def _slipped(
    token: Token, texts: Words, at: int, taken: int, lexicon: Lexicon, roster: Roster
) -> tuple[Item, int] | None:
    """A longer name with a slip in one word, or a name that lost its apostrophe: "Tuckers sheet"."""
    longer = _long_name(texts, at, roster)
    if longer is not None:
        horse, length = longer
        said = " ".join(texts[at : at + length])
        return Item(said, token.raw, horses=(horse,), exact=False, known=False, capital=token.capital), length
    if not token.text.endswith("s"):
        return None
    nick = roster.nicknamed(token.text[:-1]) if not roster.nicknamed(token.text) else ()
    behind = lexicon.phrases.longest(texts, at + 1)[0]
    if nick and says_how(behind):
        return Item(token.text[:-1], token.raw, pieces=nick), 1  # "the tartans wet"
    owner = roster.spelled.get(token.text[:-1])
    if owner is None:
        return None
    apart = everyday(token.text[:-1]) and not _told_behind(texts, at + 1, lexicon)
    thing = taken or everyday(token.text) or apart or behind == {"link"}
    thing = thing and not _of_animals(texts, at + 1, lexicon)  # "storms cold behind the elbow"
    thing = thing and not behind & {"outwards", "brought"}  # "badgers back out"; "thistles everywhere"
    if thing and not _clothing(texts, at + 1, lexicon):
        return None
    return Item(token.text, token.raw, horses=(owner,), exact=False, known=False, capital=token.capital), 1


def _of_animals(texts: Words, at: int, lexicon: Lexicon) -> bool:
    """Whether what follows is said of no weather: that something shivers, sweats, is cold behind the elbow."""
    means, said = lexicon.phrases.longest(texts, at)
    return bool(means & {"sign shivering", "sign sweating"}) or (said > 1 and "sign cold" in means)


def _told_behind(texts: Words, at: int, lexicon: Lexicon) -> bool:
    """Whether what follows says how a horse is, past small words: "montys stopped shivering"."""
    while at < len(texts):
        means, said = lexicon.phrases.longest(texts, at)
        if says_how(means):
            return True
        if "in" in means:
            return "her" in lexicon.phrases.longest(texts, at + said)[0]  # "thunders in his stall"
        if not means & PASSING or "of" in means:
            return False
        at += said
    return False


def _clothing(texts: Words, at: int, lexicon: Lexicon) -> bool:
    """Whether a piece of clothing follows: "biscuits medium", "merlins grey liner" are Biscuit's and Merlin's."""
    means, said = lexicon.phrases.longest(texts, at)
    if means & {"colour", "any adjective"}:
        means = means | lexicon.phrases.longest(texts, at + said)[0]
    return any(m in ("rug", "body") or m.startswith(("kind ", "weight ")) for m in means)


def _accent_heeded(means: frozenset[str], tokens: list[Token], at: int, said: int, lexicon: Lexicon) -> frozenset[str]:
    """French "enlève" is no report, "enlevé" is; without its accent only after "ai", "a", "on a"."""
    if said and tokens[at].raw in ("à", "À"):
        return means - {"has", "wears", "helper", "is"}
    if said != 1 or tokens[at].text not in lexicon.accented or not tokens[at].raw.endswith("e"):
        return means
    helped = at > 0 and any("helper" in row for _, row in lexicon.phrases.get(tokens[at - 1].text, ()))
    return means if helped else means - set(VERBS)


def _how_begins(texts: Words, at: int, lexicon: Lexicon) -> bool:
    """Whether a phrase of several words that says how a horse or a piece is begins here."""
    means, said = lexicon.phrases.longest(texts, at)
    return said > 1 and says_how(means)


def _name(texts: Words, at: int, table: dict[str, list[tuple[Words, Any]]]) -> tuple[list[Any], int]:
    longest = 0
    found = []
    for phrase, named in table.get(texts[at], ()):
        if len(phrase) < longest:
            break
        if texts[at : at + len(phrase)] == phrase:
            longest = len(phrase)
            found.append(named)
    return found, longest


def _long_name(texts: Words, at: int, roster: Roster) -> tuple[str, int] | None:
    """A name of several words with a slip in one of them: "lady gray"."""
    if roster.longer_words.isdisjoint(texts[at : at + 2]):
        return None
    for phrase, horse in roster.longer:
        said = texts[at : at + len(phrase)]
        if len(said) == len(phrase) and (*said[:-1], said[-1].removesuffix("s")) == phrase:
            return horse, len(phrase)  # "big reds sheet"
        alike = [a for a, b in zip(said, phrase) if a == b]
        if len(said) < len(phrase) or len(alike) < len(phrase) - 1 or sum(map(len, alike)) < 4:
            continue
        if all(a == b or distance(a, b, budget(b)) <= budget(b) for a, b in zip(said, phrase)):
            return horse, len(phrase)
    return None


def _hyphened(tokens: list[Token], at: int, length: int) -> str:
    run = tokens[at : at + length]
    joined = len(run) == length and all(token.tied for token in run[1:]) and not run[0].tied
    return "-".join(t.text for t in run) if joined else ""


def _unknown(token: Token, lexicon: Lexicon, roster: Roster) -> Item:
    """A word in no table: a name with a slip, a trade word with a slip, an everyday word, or nothing known."""
    word = token.text
    if word in roster.parts:
        known, horses = everyday(word), roster.parts[word]
        sure = not known and len(horses) == 1  # "Sorrel" for Old Sorrel; "Lady" for Lady Grey is asked about
        return Item(word, token.raw, horses=horses, sure=sure, known=known, capital=token.capital)
    if token.kind == "number":
        return Item(word, token.raw, number=float(word))
    if word in roster.words:  # of a piece's own name: "la de los patos"
        return Item(word, token.raw, known=everyday(word), capital=token.capital)
    ordinary = everyday(word)
    begun = () if ordinary or len(word) < 4 else roster.begins(word)
    if begun:  # "capt" of Captain; asked about where two begin so
        sure = len(begun) == 1
        return Item(word, token.raw, horses=begun, sure=sure, exact=False, known=False, capital=token.capital)
    plural = word.endswith("s") and word[:-1] in roster.spelled  # "thistles everywhere"; "pips cold" was seen to before
    horses, apart = ((), 0) if plural else roster.near(word)
    item = Item(word, token.raw, known=ordinary, capital=token.capital)
    if ordinary or len(word) < 4:
        # an ordinary word one slip from a name: only ever asked about, one of another language wherever it may be meant
        spoken = len(word) < 4 or word in lexicon.everyday or word in first_names()
        horses = horses if apart == 1 else roster.like(word)
        return replace(item, horses=horses, sure=False, exact=False, known=spoken) if horses else item
    bent = _trade_word(word, lexicon.language, apart if horses else 2)
    if bent in roster.spelled:  # "sundya", of a horse called Sunday: as if the word had been written
        means = lexicon.phrases.longest((bent,), 0)[0]
        meant = replace(item, text=bent, means=means, horses=horses, sure=len(horses) == 1)
        return replace(meant, known=of_a_language(bent)) if meant.sure else replace(meant, exact=False)
    if bent:
        return replace(item, text=bent, means=lexicon.phrases.longest((bent,), 0)[0])
    if not horses:
        return item
    names = [name for name, horse in roster.spelled.items() if horse in horses]
    sure = len(horses) == 1 and any(name[0] == word[0] or sorted(name[:2]) == sorted(word[:2]) for name in names)
    return replace(item, horses=horses, sure=sure, exact=False)


def _inflected(word: str, other: str) -> bool:
    """Whether a word is another form of the other, not a slip: "repairer", "sweats"; but "sweatin", "sweatyy"."""
    if len(word) < len(other):
        return False
    return word[: len(other) - 1] == other[:-1] and word != other + other[-1]


@lru_cache(maxsize=20_000)
def _trade_word(word: str, language: str, limit: int) -> str | None:
    """The word of the tables that this is a slip of; None where it is of none."""
    if len(word) < 4:
        return None
    allowed = min(limit, 1 if len(word) < 10 else 2)
    near = [
        (apart, other)
        for length in range(len(word) - allowed, len(word) + allowed + 1)
        for other in lexicon_of(language).trade.get((word[0], length), "").split()
        if not _inflected(word, other) and (apart := distance(word, other, allowed)) <= allowed
    ]
    return min(near)[1] if near and allowed else None
