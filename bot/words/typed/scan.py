"""From words to items: the longest name or phrase at each place, and which misspelt words are names."""

from dataclasses import replace
from functools import lru_cache
from typing import Any

from bot.words.lookup.items import Alone, Item
from bot.words.lookup.lexicon import VERBS, Lexicon, everyday
from bot.words.lookup.lexicon import lexicon as lexicon_of
from bot.words.lookup.names import Roster, Words, distance, id_at, name_at
from bot.words.lookup.tokens import Token, tokenise
from bot.words.typed.alone import by_itself, going_on_name
from bot.words.typed.begins_anew import without_what_begins_anew
from bot.words.typed.dictated import marks_written
from bot.words.typed.homophones import as_meant
from bot.words.typed.misspelt import in_phrases
from bot.words.typed.opening_word import perhaps_names
from bot.words.typed.slipped import slip_of_name
from bot.words.typed.spelling import spelled
from bot.words.typed.unknown import LONG_PART, unknown_word

NAMEABLE = frozenset(("colour", "weather", "sky", "bare weather", "any adjective", "mass", "habit"))
TIMES = frozenset(("habit", "long ago"))
NOBODY: tuple[list[Any], int] = ([], 0)
SAID = 2_000  # words kept as they are by themselves, of a barn in a language; phrases kept


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
    tokens = marks_written(tokens, lexicon.language)
    tokens = in_phrases(as_meant(spelled(tokens, lexicon, roster), lexicon, roster), lexicon, roster)
    texts = tuple([token.text for token in tokens])
    loud = [token for token in tokens if token.raw.isupper()]
    shouted = sum(len(token.raw) > 1 for token in loud) * 2 > len(tokens)
    tied = {place for at, token in enumerate(tokens) if token.tied for place in (at - 1, at)}  # "rug-12"
    if len(roster.by_itself[lexicon.language]) > SAID:  # only what is said often is worth its room
        roster.by_itself[lexicon.language].clear()
    end = 0  # the place behind what is told so far
    for at, (token, behind) in enumerate(zip(tokens, (*texts[1:], ""))):
        if at < end:
            continue
        opens = shouted or at == 0 or texts[at - 1] in ".!?\n"
        beside = at in tied or behind in roster.longer_words  # "lady gery"
        beside = beside or (token.text in roster.pieces and _called_nearly(roster.pieces[token.text], behind))
        alone = None if beside else _alone(token, behind, texts, at, lexicon, roster)
        if alone is not None:
            items.append(alone.opening if opens else alone.item)
            continue
        item, taken = _longest(tokens, texts, at, lexicon, roster)
        items.append(_opening(item) if opens else _within(item, lexicon))
        end = at + taken
    return perhaps_names(items, roster)


def _called_nearly(rows: list[tuple[Words, Any]], behind: str) -> bool:
    """As in "old gery", where a piece is called old grey. rows: the nicknames that begin with the word before."""
    return any(len(phrase) > 1 and distance(behind, phrase[1], 1) == 1 for phrase, _ in rows)


def _opening(item: Item) -> Item:
    """The item where any word has a capital."""
    return replace(item, capital=False) if item.capital else item


def _within(item: Item, lexicon: Lexicon) -> Item:
    """The item where a capital tells of a name: Spanish and French write their days small."""
    named = item.capital and item.horses and lexicon.language != "en"
    return replace(item, means=item.means - {"weekday"}) if named else item


def _alone(token: Token, behind: str, texts: Words, at: int, lexicon: Lexicon, roster: Roster) -> Alone | None:
    """What the word at this place is by itself; None where a word beside it may make it another thing."""
    kept = roster.by_itself[lexicon.language]
    try:
        alone = kept[token.text, token.raw]
    except KeyError:
        if lexicon.phrases.longest(texts, at)[1] > 1:
            return None
        alone = kept[token.text, token.raw] = _by_itself(token, lexicon, roster)
    if alone is None or behind in alone.named:
        return None
    return None if behind in alone.longer and lexicon.phrases.longest(texts, at)[1] > 1 else alone


def _by_itself(token: Token, lexicon: Lexicon, roster: Roster) -> Alone | None:
    if not by_itself(token, lexicon, roster):
        return None
    item, _ = _longest([token], (token.text,), 0, lexicon, roster)
    going_on = lexicon.phrases.going_on(token.text)
    return Alone(_within(item, lexicon), _opening(item), going_on, going_on_name(token.text, roster))


def _longest(tokens: list[Token], texts: Words, at: int, lexicon: Lexicon, roster: Roster) -> tuple[Item, int]:
    token = tokens[at]
    plainly = _plainly(tokens, texts, at, lexicon, roster)
    if plainly is not None:
        return plainly
    means, said = lexicon.phrases.longest(texts, at)
    ends_so = said > 1 and texts[at + said - 1] in roster.spelled and not means <= TIMES  # "in June", of a horse June
    if ends_so and (_named_within(tokens, at, said) or texts[at + said : at + said + 1] == texts[at : at + 1]):
        means, said = lexicon.phrases.longest(texts[at : at + said - 1], 0)  # "la capa de Lluvia", "ni chispa ni luna"
    if said > 1:
        means, said = without_what_begins_anew(means, said, texts, at, lexicon, roster)
    if said and not token.raw.isascii():
        means, said = _accent_heeded(means, said, token, lexicon)
    if said == 1 and token.text in lexicon.accented and token.raw.endswith("e") and not _helped(tokens, at, lexicon):
        means -= set(VERBS)  # French "enlève" is no report, "enlevé" is; without its accent only after "ai", "a"
    begins = token.text in roster.begun
    horses, named = name_at(texts, at, roster.horses) if begins else NOBODY
    pieces, nick = name_at(texts, at, roster.pieces) if begins else NOBODY
    if nick > 1 and name_at(texts, at + 1, roster.pieces)[1] >= nick:
        pieces, nick = NOBODY  # "el | polar de repuesto", where one is called "el polar"
    people, person = name_at(texts, at, roster.people) if begins else NOBODY
    taken = max(said, named, nick, person)
    slipped = slip_of_name(token, texts, at, taken, lexicon, roster) if taken <= 1 else None
    if slipped is not None and (
        not horses or slipped[0].pieces or slipped[0].horses[0] in horses
    ):  # "Lady gery", also called Lady
        return slipped
    if taken == 0:
        return unknown_word(token, texts, at, lexicon, roster), 1
    if not (horses or people or pieces or token.text in roster.parts):
        return _of_tables(tokens, texts, at, said, means, lexicon, roster), said
    called_so = taken == 1 and not (horses or people or pieces) and (len(token.text) >= LONG_PART or means <= NAMEABLE)
    part = roster.parts.get(token.text, ()) if called_so else ()  # "his" is no part of His Lordship
    other = taken == 1 and bool(horses) and _another_letter(token, roster)
    return Item(
        text=" ".join(texts[at : at + taken]),
        raw=" ".join(dict.fromkeys([t.raw for t in tokens[at : at + taken]])),
        means=means if said == taken else frozenset(),
        horses=tuple(dict.fromkeys(horses)) if named == taken else part,
        sure=not (part or other),
        exact=not other,
        pieces=pieces[0] if nick == taken else (),
        person=person == taken and bool(people),
        number=float(token.text) if token.kind == "number" else None,
        known=all(map(lexicon.everyday.__contains__, texts[at : at + taken])),
        capital=token.capital,
    ), taken


def _another_letter(token: Token, roster: Roster) -> bool:
    """As in "niña" where only a Nina stands: a word of the language, and an ñ is a letter of its own."""
    return "ñ" in token.raw.casefold() and token.text not in roster.tilded and everyday(token.text)


def _of_tables(
    tokens: list[Token], texts: Words, at: int, said: int, means: frozenset[str], lexicon: Lexicon, roster: Roster
) -> Item:
    """A word or a phrase of the tables that is nobody's name."""
    token = tokens[at]
    long = len(token.text) >= LONG_PART  # "mac is shivering" is no Max
    if said == 1 and means and all(m in NAMEABLE or (long and _perhaps_one(m)) for m in means):
        return _perhaps(token, means, roster)
    raws = tuple([t.raw for t in tokens[at : at + said]])
    item = _phrase(texts[at : at + said], raws, means, lexicon.language)
    return replace(item, number=float(token.text)) if token.kind == "number" else item


@lru_cache(maxsize=SAID)
def _phrase(texts: Words, raws: Words, means: frozenset[str], language: str) -> Item:
    known = all(map(lexicon_of(language).everyday.__contains__, texts))
    return Item(" ".join(texts), " ".join(dict.fromkeys(raws)), means, known=known, capital=raws[0][:1].isupper())


def _named_within(tokens: list[Token], at: int, said: int) -> bool:
    """Whether only the last word of a phrase has a capital of its own: "la capa de Lluvia", "A la Lluvia"."""
    opens = at == 0 or tokens[at - 1].text in ".!?\n…"
    small = tokens[at + (1 if opens and said > 1 + 1 else 0) : at + said - 1]
    return tokens[at + said - 1].capital and not any(t.capital for t in small)


def _perhaps_one(meaning: str) -> bool:
    """A poncho, a kid, a rabbit: "poncho tiene frío" may be of Pancho, "lapin grelotte" of Lupin."""
    return meaning in ("i", "kin", "thing", "animal", "story") or meaning.startswith("kind ")


def _perhaps(token: Token, means: frozenset[str], roster: Roster) -> Item:
    """A colour, weather or praise, one slip from a name: asked about where only a horse can stand ("orange sweats")."""
    item = Item(token.text, token.raw, means, capital=token.capital)
    horses, apart = roster.near(token.text)
    horses = (horses if apart == 1 else ()) or roster.a_letter_from(token.text)
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
    ident, length = id_at(tokens, at, roster.ids) if tied else (token.text, 1)
    if ident not in roster.ids or token.tied:
        return None
    return Item(ident, ident, pieces=(roster.ids[ident],)), length


def _accent_heeded(means: frozenset[str], said: int, token: Token, lexicon: Lexicon) -> tuple[frozenset[str], int]:
    """What an accent tells: "à la Pitoune" has nothing on, "laissé" and "porté" are over, "sí" is no "si"."""
    raw = token.raw
    asks_nobody = raw.endswith("é") and "keep" in means  # "laissé la doublure", to leave it on
    if said > 1 and (asks_nobody or (raw in ("à", "À") and not means.isdisjoint(("has", "wears")))):
        means, said = lexicon.phrases.longest((token.text,), 0)
    if said == 1 and raw.endswith("é"):
        means -= {"keep", "afterwards", "wears"}  # "laissé Perle nue" asks for nothing, "porté chez …" is not worn
    if raw in ("à", "À"):
        means -= {"has", "wears", "helper", "is"}
    return means - {"if"} if raw in ("sí", "Sí", "SÍ") else means, said


def _helped(tokens: list[Token], at: int, lexicon: Lexicon) -> bool:
    """Whether a word stands before that helps a participle: "ai", "a", "on a"."""
    return at > 0 and _may_help(tokens[at - 1].text, lexicon.language)


@lru_cache(maxsize=SAID)
def _may_help(word: str, language: str) -> bool:
    return any("helper" in row for _, row in lexicon_of(language).phrases.get(word, ()))
