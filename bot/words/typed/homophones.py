"""English words typed as others that sound alike, or short: "an" for and, "its" for it is, "2" for to."""

from collections.abc import Sequence

from bot.words.lookup.items import of_rugs, says_how
from bot.words.lookup.lexicon import Lexicon
from bot.words.lookup.names import Roster
from bot.words.lookup.tokens import Token

SLIPS = frozenset(("an", "its", "to", "1", "2", "rest", "of", "ill"))
SAID_TO_BE = frozenset(("is", "'s", "are", "looks", "seems", "very"))
HIS = frozenset(("his", "her", "the", "its", "my"))
VOWELS = "aeiou"
THINGS = frozenset(("strap", "body", "colour", "any adjective", "one", "animal"))  # "its wet neck"
PASSING = frozenset(("very", "a little", "not", "all", "time", "link", "only"))
WEATHER = frozenset(("sky", "weather", "bare weather", "mass"))  # "its pouring", "its like 50 out"
NO_ARTICLE_BEFORE = frozenset(("it", "subject", "she", "her", "is", "article"))  # no "an" is one before these


def as_meant(tokens: list[Token], lexicon: Lexicon, roster: Roster) -> list[Token]:
    """The tokens with these written as they were meant."""
    texts = tuple([token.text for token in tokens])
    if lexicon.language != "en" or SLIPS.isdisjoint(texts):
        return tokens
    found: list[Token] = []
    end = 0
    for at in [at for at, text in enumerate(texts) if text in SLIPS]:
        token = tokens[at]
        found.extend(tokens[end:at])
        end = at + 1
        if token.text == "an" and _joins(texts[at + 1 : at + 2], lexicon, roster):
            found.append(token._replace(text="and"))
        elif token.text == "its" and (
            _says_how_it_is(tokens, texts, at + 1, lexicon) or _names_it(tokens, texts, at + 1, roster)
        ):
            found.extend((token._replace(text="it"), token._replace(text="is")))
        elif token.text == "1" and _one_of_them(texts[:at][-1:], lexicon):
            found.append(token._replace(text="one", kind="word"))
        elif (
            token.text == "2" and at and texts[at - 1] in roster.spelled and not HIS.isdisjoint(texts[at + 1 : at + 2])
        ):
            found.append(token._replace(text="to", kind="word"))  # "swapped Pip 2 his heavy"
        elif token.text == "to" and _same_of_it(tokens, texts, at, roster):
            found.append(token._replace(text="too"))
        elif token.text == "of" and _taken_off(tokens, texts, at, lexicon):
            found.append(token._replace(text="off"))
        elif token.text == "ill" and not SAID_TO_BE.isdisjoint(texts[:at][-1:]):
            found.append(token._replace(text="unwell"))  # "Otto is ill text the vet": no "I'll"
        elif token.text == "rest" and _of_the_others(texts, at, lexicon):
            found.extend((token._replace(text="the"), token))
        else:
            found.append(token)
    return [*found, *tokens[end:]]


def _of_the_others(texts: tuple[str, ...], at: int, lexicon: Lexicon) -> bool:
    """As in "Otto cold, rest fine", "rest are done"; not "box rest", "rest him"."""
    opens = at == 0 or not texts[at - 1][0].isalpha() or texts[at - 1] in ("and", "but", "so")
    behind = lexicon.phrases.longest(texts, at + 1)[0]
    return opens and (says_how(behind) or not behind.isdisjoint(("is", "was", "done", "bare", "place field")))


def _joins(behind: Sequence[str], lexicon: Lexicon, roster: Roster) -> bool:
    """As in "Pip's dry an warm", "an Otto's the same": no article stands so."""
    if not behind or not behind[0].isalpha():
        return False
    word = behind[0]
    if word[0] not in VOWELS + "h" or word in roster.spelled or word.removesuffix("s") in roster.spelled:
        return True
    means = lexicon.phrases.longest((word,), 0)[0]
    return not means.isdisjoint(NO_ARTICLE_BEFORE) or (word[0] == "h" and says_how(means))


def _one_of_them(before: Sequence[str], lexicon: Lexicon) -> bool:
    """As in "the blue 1", "the other 1"."""
    means = lexicon.phrases.longest(tuple(before), 0)[0] if before else frozenset[str]()
    return not means.isdisjoint(("colour", "any adjective"))


def _same_of_it(tokens: Sequence[Token], texts: tuple[str, ...], at: int, roster: Roster) -> bool:
    """As in "Maple done, Pip to"; not "turned out to Pip"."""
    ends = at + 1 == len(tokens) or tokens[at + 1].kind == "mark"
    return ends and at > 0 and texts[at - 1] in roster.spelled


def _taken_off(tokens: Sequence[Token], texts: tuple[str, ...], at: int, lexicon: Lexicon) -> bool:
    """As in "taken her liner of": no thought ends in "of" a rug."""
    ends = at + 1 == len(tokens) or tokens[at + 1].kind == "mark" or texts[at + 1] == "and"
    means = lexicon.phrases.longest((texts[at - 1],), 0)[0] if at else frozenset[str]()
    return ends and of_rugs(means)


def _names_it(tokens: Sequence[Token], texts: tuple[str, ...], at: int, roster: Roster) -> bool:
    """As in "no sorry its Bramble": a name and no more; not "its Bramble rug"."""
    ends = at + 1 >= len(tokens) or tokens[at + 1].kind == "mark"
    return ends and texts[at : at + 1] != () and texts[at] in roster.spelled


def _says_how_it_is(tokens: Sequence[Token], texts: tuple[str, ...], at: int, lexicon: Lexicon) -> bool:
    """As in "took her sheet off its wet"; not "its wet liner", "its chest strap"."""
    while at < len(texts):
        means, said = lexicon.phrases.longest(texts, at)
        if tokens[at].kind == "number" or not means.isdisjoint(WEATHER):
            return True
        if says_how(means):
            return _ends_there(tokens, texts, at + said, lexicon)
        if means.isdisjoint(PASSING) and texts[at] != "like":
            return False
        at += max(said, 1)
    return False


def _ends_there(tokens: Sequence[Token], texts: tuple[str, ...], at: int, lexicon: Lexicon) -> bool:
    """Whether no thing follows that the word before would describe."""
    if at >= len(texts) or tokens[at].kind != "word":
        return True
    behind = lexicon.phrases.longest(texts, at)[0]
    thing = not behind.isdisjoint(THINGS) or of_rugs(behind)
    return bool(behind) and not thing
