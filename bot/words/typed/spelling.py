"""Words as a dictionary has them, from words as thumbs type them: "q" → que, "jai" → j'ai, "sweatin", "soooo"."""

import re
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from itertools import chain

from bot.words.heard.periphrases import HAVE
from bot.words.lookup.items import says_how
from bot.words.lookup.lexicon import Lexicon, everyday, first_names
from bot.words.lookup.lexicon import lexicon as lexicon_of
from bot.words.lookup.names import Roster
from bot.words.lookup.spoken_french import VOWELS, as_written
from bot.words.lookup.spoken_spanish import PERIPHRASES, as_done
from bot.words.lookup.tokens import Token
from bot.words.typed.misspelt import trade_word

THRICE: re.Pattern[str] = re.compile(r"([^\W\d_])\1{2,}")  # one letter three times or more
UNIT = 2  # letters of a unit behind a number
AND = ("e", "n")  # "sa 150 é limper"
TIED = {
    "en": ("the", "just", "both", "and", "his", "her", "in", "on", "to", "is"),
    "es": ("dela", "del", "de", "en", "con", "sin", "muy", "la", "el", "al", "su", "y", "a"),
}  # small words, the longest first
ELIDED = frozenset("dl")
HEARD = ("er", "io")  # endings that are written so of participles: "j'ai passer", "le he metío"; and of words
LEAST = 5  # letters of a word whose ending is mended
DID = frozenset(("permis", "permise", "liberte", "temps", "bon", "idee", "oblige", "obligee", "obliges", "moi"))
BOTH = 6  # words of "tanto Rey Moro como"
JUST, WHOM = "recien", ("a", "al")
SAID_OF = frozenset(("is", "was", "very", "a little", "body", "rug", "nearly"))  # what stands before "helá"


def spelled(tokens: Sequence[Token], lexicon: Lexicon, roster: Roster) -> list[Token]:
    """The tokens with every word written out; a short form of several words is several tokens."""
    found: list[Token] = []
    french, spanish = lexicon.language == "fr", lexicon.language == "es"
    tokens = _with_digits(tokens, lexicon, roster)
    tokens = as_written(tokens, roster.named) if french else tokens
    words = {token.text for token in tokens if token.kind == "word"}
    plain = lexicon.everyday.among(words) | lexicon.rarer.among(words)
    strange = words - roster.named - (plain - lexicon.short_forms.keys())
    strange |= {word for word in words if (spanish or french) and word.endswith(HEARD)}
    strange |= {token.text for token in tokens if token.raw.endswith("á")} if spanish else set()
    end = 0
    for at in [k for k, token in enumerate(tokens) if token.text in strange]:
        token = tokens[at]
        found.extend(tokens[end:at])
        end = at + 1
        if french and token.text.endswith("er") and found and _participle(token, found, lexicon, roster):
            token = token._replace(text=token.text[:-1])
        if spanish and token.raw.endswith("á") and found and _said_short(token, found[-3:], lexicon, roster):
            token = token._replace(text=token.text + "da")
        if spanish and token.text.endswith("io") and _said_without_d(token, found, lexicon):
            token = token._replace(text=token.text[:-1] + "do")
        if token.kind != "word" or token.text in roster.named or _as_spelled(token.text, lexicon):
            found.append(token)
        elif french and token.text in ELIDED and _before_a_vowel(tokens, at):
            found.append(token._replace(text=token.text + "'"))  # "la 200 d orage"
        elif at > 0 and tokens[at - 1].kind == "number" and len(token.text) <= UNIT and token.text not in AND:
            found.append(token)  # "200 g"; not "la 250 mtn"
        elif token.text in lexicon.short_forms and _perhaps_a_name(tokens, at, lexicon, roster):
            found.append(token)
        else:
            said = _written_out(token, lexicon, roster)
            shared = found and found[-1].text == said[0].text == "qu'"  # "kess kon leur met"
            found.extend(said[1:] if shared else said)
    found.extend(tokens[end:])
    return _told_as_done(found, roster) if spanish else found


def _told_as_done(tokens: list[Token], roster: Roster) -> list[Token]:
    """As in "acabo de ponerle la manta", "la volví a meter", "saqué recién a Luna": in one verb, as tables have it."""
    behind = [*tokens[1:], None]
    tokens = [t for t, then in zip(tokens, behind) if not (t.text == JUST and then is not None and then.text in WHOM)]
    tokens = _as_well_as(tokens)
    texts = [token.text for token in tokens]
    if PERIPHRASES.isdisjoint(texts):
        return tokens
    said = as_done(texts, [token.raw for token in tokens], roster.named)
    return [tokens[at] if tokens[at].text == word else tokens[at]._replace(text=word, raw=word) for word, at in said]


def _as_well_as(tokens: list[Token]) -> list[Token]:
    """The tokens with "y" for "tanto Luna como Moro"."""
    joined: dict[int, int] = {}  # the place of each "tanto" → that of its "como"
    for first in [k for k, token in enumerate(tokens) if token.text == "tanto"]:
        other = next((k for k in range(first + 2, min(first + BOTH, len(tokens))) if tokens[k].text == "como"), 0)
        joined |= {first: other} if other else {}
    ands = set(joined.values())
    return [t._replace(text="y") if k in ands else t for k, t in enumerate(tokens) if k not in joined]


def _before_a_vowel(tokens: Sequence[Token], at: int) -> bool:
    return at + 1 < len(tokens) and tokens[at + 1].text[:1] in VOWELS


def _with_digits(tokens: Sequence[Token], lexicon: Lexicon, roster: Roster) -> Sequence[Token]:
    """The tokens with a word and the digits in it as one, where that is a short form: "every1", "b4", "in2"."""
    found: list[Token] = []
    end = 0
    for at in [at for at, token in enumerate(tokens) if token.kind == "number"]:
        found.extend(tokens[end:at])
        before, behind = found[-1:], tokens[at + 1 : at + 2]
        end = at + 1
        if before and (drawn := _drawn_together(before[0], tokens[at], lexicon, roster)):
            found[-1] = drawn
        elif behind and (drawn := _drawn_together(tokens[at], behind[0], lexicon, roster)):
            found.append(drawn)
            end = at + 2
        else:
            found.append(tokens[at])
    return [*found, *tokens[end:]]


def _drawn_together(one: Token, other: Token, lexicon: Lexicon, roster: Roster) -> Token | None:
    """A word and a number as the short form that they are; None where they are none."""
    text = one.text + other.text
    if one.end != other.start or text not in lexicon.short_forms or one.text in roster.named:
        return None
    if {one.kind, other.kind} != {"word", "number"}:
        return None
    return one._replace(text=text, raw=one.raw + other.raw, end=other.end, kind="word")


def _participle(token: Token, before: Sequence[Token], lexicon: Lexicon, roster: Roster) -> bool:
    """As in "j'ai passer la main", which sounds like "passé", "je me suis permis d'ajouter"; not "elle va passer"."""
    verb = token.kind == "word" and len(token.text) >= LEAST
    if not verb or token.text[:-1] not in lexicon.everyday:
        return False
    helper = before[-2] if len(before) > 1 and before[-1].text in ("tout", "bien", "pas", "deja") else before[-1]
    helped = helper.text in ("ai", "est", "avons", "avez", "ont")
    if before[-1].text in roster.spelled and says_how(lexicon.phrases.longest((token.text[:-1],), 0)[0]):
        return True  # "kaki d'ulysse dechirer"
    done = before[-1].text in ("de", "d'") and len(before) > 1 and before[-2].text in DID
    return (
        helped
        or done
        or (
            before[-1].text == "a"
            and len(before) > 1
            and before[-2].text in ("on", "il", "elle", "qui", "pluie", "eau")
        )
    )


def _said_short(token: Token, before: Sequence[Token], lexicon: Lexicon, roster: Roster) -> bool:
    """As in "ta helá", "Canela sudá", "la cruz lastimá" of the south; "mojá la manta" bids, and so would open."""
    whole = token.text + "da"
    last = before[-1].text
    if says_how(lexicon.phrases.longest((last, whole), 0)[0]):
        return True
    told = any(lexicon.phrases.longest((t.text,), 0)[0] & SAID_OF for t in before)
    return says_how(lexicon.phrases.longest((whole,), 0)[0]) and (told or last in roster.spelled)


def _said_without_d(token: Token, before: Sequence[Token], lexicon: Lexicon) -> bool:
    """As in "le he metío el forro", "se ha salio", "está dormío" of the south; not "metió", nor "frío", "el mío"."""
    helped = (bool(before) and before[-1].text in HAVE) or token.raw.endswith("ío")
    return helped and len(token.text) >= LEAST - 1 and token.text[:-1] + "do" in lexicon.everyday


def _as_spelled(word: str, lexicon: Lexicon) -> bool:
    return word in lexicon.everyday and word not in lexicon.short_forms


def _perhaps_a_name(tokens: Sequence[Token], at: int, lexicon: Lexicon, roster: Roster) -> bool:
    """As in "dune tremble" where a Lune stands: said first, a letter from her name, and then how she is."""
    opens = at == 0 or tokens[at - 1].kind == "mark"
    told = opens and at + 1 < len(tokens) and says_how(lexicon.phrases.longest((tokens[at + 1].text,), 0)[0])
    return told and roster.near(tokens[at].text)[1] == 1


def _written_out(token: Token, lexicon: Lexicon, roster: Roster) -> list[Token]:
    if token.raw.endswith("ó") and lexicon.language == "es":
        return [token]  # "cumplió 27" is no "cumplido"
    word = lexicon.language, token.text, token.capital
    if word not in roster.written:
        roster.written[word] = _as_in_a_dictionary(token, lexicon, roster)
    said = roster.written[word]
    return [token if word == token.text else token._replace(text=word) for word in said]


def _as_in_a_dictionary(token: Token, lexicon: Lexicon, roster: Roster) -> tuple[str, ...]:
    word = token.text
    said = lexicon.short_forms.get(word) or _without_apostrophe(word, lexicon, roster)
    if said:
        return said
    mended = _mended(word, lexicon, roster)
    somebody = token.capital or word in first_names()  # "Tobias put …", "ismail took …"
    return (_run_together(word, lexicon, roster) if mended == word and not somebody else ()) or (mended,)


def _without_apostrophe(word: str, lexicon: Lexicon, roster: Roster) -> tuple[str, ...]:
    """As in "dhidalgo", "lécurie" of French; none for any other word."""
    elided, rest = word[:1], word[1:]
    if lexicon.language != "fr" or elided not in ELIDED or rest[:1] not in VOWELS or len(rest) < LEAST - 1:
        return ()
    return (elided + "'", rest) if rest in roster.spelled or rest in lexicon.everyday else ()


def _run_together(word: str, lexicon: Lexicon, roster: Roster) -> tuple[str, ...]:
    """As in "decuadros", "justbrought", "soakedto": a small word and the one beside it; none for any other word."""
    if len(word) < LEAST or roster.near(word)[0]:
        return ()
    for tie in TIED.get(lexicon.language, ()):
        rest = word.removeprefix(tie)
        known = rest in roster.spelled or rest in roster.words or lexicon.phrases.longest((rest,), 0)[1]
        if rest != word and len(rest) > UNIT and known and not trade_word(word, lexicon.language, 1):
            return tie, rest
        rest = word.removesuffix(tie)
        if rest != word and len(rest) >= LEAST and (rest in roster.spelled or lexicon.phrases.longest((rest,), 0)[1]):
            return rest, tie
    return ()


def _mended(word: str, lexicon: Lexicon, roster: Roster) -> str:
    """A word that somebody drew out or cut short, as it is spelled; any other as it is."""
    if THRICE.search(word):
        drawn_in = (THRICE.sub(kept, word) for kept in (r"\1\1", r"\1"))
        return next((short for short in drawn_in if short in lexicon.everyday or short in roster.spelled), word)
    turned = _letters_turned(word, lexicon.language) if len(word) >= LEAST - 2 else ""
    likely = chain(_whole_or_heard(word, lexicon), _once(word, lexicon), (turned,), _slipped_and_cut(word, lexicon))
    meant = next((other for other in likely if other and other in lexicon.everyday), word)
    if meant != word and not lexicon.phrases.longest((meant,), 0)[1] and trade_word(word, lexicon.language, 1):
        return word  # "lvage" is no levage
    if meant == turned != "" and (turned in roster.spelled or turned in roster.parts or turned in roster.people):
        return word  # "fgi" is asked about, of a horse called Fig
    if meant != word and meant in roster.named and everyday(word):
        return word  # and so is "samba", a word of another language, of one called Zamba
    return word if meant != word and meant not in roster.named and roster.near(word)[0] else meant


def _whole_or_heard(word: str, lexicon: Lexicon) -> Iterator[str]:
    """The word with an ending of the dictionary, "kitao" as quitado; and as others write its sounds, "trenble"."""
    sounded = _sounding_alike(word, lexicon) if _is_sounded(word, lexicon) else ()
    for other in chain(_whole(word, lexicon), sounded):
        yield from lexicon.short_forms.get(other, (other,))


def _slipped_and_cut(word: str, lexicon: Lexicon) -> Iterator[str]:
    """As in "eskilao", esquilado; "cmabiaos", cambiados: cut short, and something else besides."""
    for other in _whole(word, lexicon):
        if _is_sounded(word, lexicon):
            yield from _sounding_alike(other, lexicon)
        yield _letters_turned(other, lexicon.language)


def _whole(word: str, lexicon: Lexicon) -> list[str]:
    if len(word) < LEAST:
        return []
    return [word[: -len(end)] + full for end, full in lexicon.endings if word.endswith(end)]


def _is_sounded(word: str, lexicon: Lexicon) -> bool:
    return bool(lexicon.sounds) and len(word) >= LEAST - 1 and word not in first_names()


def _once(word: str, lexicon: Lexicon) -> Iterable[str]:
    """The word with a letter once that stands twice in it: "plaace" is place, no palace; "seeating" may be sweating."""
    near = trade_word(word, lexicon.language, 1)
    if near and says_how(lexicon.phrases.longest((near,), 0)[0]):
        return ()
    first = 2 if len(word) == LEAST - 1 else 1  # "aain" is again, and no "ain"
    twice = (k for k in range(first, len(word)) if word[k] == word[k - 1]) if len(word) >= LEAST - 2 else ()
    return (word[:k] + word[k + 1 :] for k in twice)


@lru_cache(maxsize=20_000)
def _letters_turned(word: str, language: str) -> str:
    """The word that two neighbouring letters were turned in, "teh" for the, "bein" for bien; "" where two may be.

    The first of a longer word is hardly ever one of them: "saado" is sacado, not asado.
    """
    turns = [word[:k] + word[k + 1] + word[k] + word[k + 2 :] for k in range(len(word) - 1)]
    known = (
        [] if word in first_names() else [k for k, turn in enumerate(turns) if turn in lexicon_of(language).everyday]
    )
    known = [k for k in known if k] or (known if len(word) < LEAST else [])
    return turns[known[0]] if len(known) == 1 else ""


def _sounding_alike(word: str, lexicon: Lexicon) -> Iterator[str]:
    """The word with one sound written otherwise: "elada" as helada, "smaine" as semaine, "polair" as polaire."""
    if lexicon.language == "fr":
        yield from _with_mute_e(word)
    for written, meant in lexicon.sounds:
        if not written:
            yield meant + word
            continue
        at = word.find(written)
        while at >= 0:
            yield word[:at] + meant + word[at + len(written) :]
            at = word.find(written, at + 1)


def _with_mute_e(word: str) -> Iterator[str]:
    """As in "smaine", "polair", "repriz" of French: the e that nobody hears."""
    if set(word[:2]).isdisjoint(VOWELS):
        yield f"{word[0]}e{word[1:]}"
    if word[-1] not in VOWELS:
        yield f"{word}e"
        yield f"{word[:-1]}se" if word[-1] == "z" else f"{word}es"
