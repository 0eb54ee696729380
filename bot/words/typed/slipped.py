"""Names with a slip in them, by what follows: "lady gray", and those that lost their apostrophe, "Tuckers sheet"."""

from bot.words.lookup.items import WETNESS, Item, has_state, of_rugs, says_how
from bot.words.lookup.lexicon import Lexicon, everyday
from bot.words.lookup.names import SHORT, Roster, Words, budget, distance, name_at
from bot.words.lookup.tokens import Token

BOTH = 2
BETWEEN = (",", "and", "&", "/", ";", "\n")
STOPS = (".", "!", "?")
TURN = 8  # words of a name and how its horse is, at most
PASSING = frozenset(("very", "a little", "all", "both", "stopped", "not", "time"))


def slip_of_name(
    token: Token, texts: Words, at: int, taken: int, lexicon: Lexicon, roster: Roster
) -> tuple[Item, int] | None:
    """A longer name with a slip in one word, or a name that lost its apostrophe: "Tuckers sheet"."""
    longer = _long_name(texts, at, roster)
    if longer is not None:
        horse, length = longer
        said = " ".join(texts[at : at + length])
        return Item(said, token.raw, horses=(horse,), exact=False, known=False, capital=token.capital), length
    called = _long_nickname(texts, at, lexicon, roster) if token.text in roster.pieces else None
    if called is not None:
        ids, length = called
        return Item(" ".join(texts[at : at + length]), token.raw, pieces=ids), length
    if lexicon.language != "en" or not token.text.endswith("s"):
        return None  # "les gamins ont froid": many, of a language without that apostrophe
    if told_in_turn(texts, at, lexicon, roster):  # "storms fine, biscuits fine"
        told_of = (roster.spelled[token.text[:-1]],)
        return Item(token.text, token.raw, horses=told_of, exact=False, known=False, capital=token.capital), 1
    nick = roster.nicknamed(token.text[:-1]) if not roster.nicknamed(token.text) else ()
    behind = lexicon.phrases.longest(texts, at + 1)[0]
    if nick and says_how(behind):
        return Item(token.text[:-1], token.raw, pieces=nick), 1  # "the tartans wet"
    exactly = roster.owner(token.text)
    owner = exactly or (None if taken else _nearly(token.text, roster))
    if owner is None or texts[at + 1 : at + 2] in (("are",), ("were",)):
        return None  # "nettles are out": of many
    if exactly is None and not _clothing(texts, at + 1, lexicon):
        return None
    apart = token.text[:-1] in lexicon.everyday and not _of_one(texts, at + 1, lexicon)  # "thistles everywhere"
    thing = taken or everyday(token.text) or apart or behind == {"link"}
    thing = thing and not _of_animals(texts, at + 1, lexicon)  # "storms cold behind the elbow"
    thing = thing and not behind & {"outwards", "brought"}  # "badgers back out"
    if thing and not (_clothing(texts, at + 1, lexicon) or _nicknamed(texts, at + 1, roster)):
        return None
    return Item(token.text, token.raw, horses=(owner,), exact=False, known=False, capital=token.capital), 1


def _nearly(word: str, roster: Roster) -> str | None:
    """As in "dolllys sheet", "mstys medium": the one whose name has a slip in it and lost its apostrophe."""
    horses, apart = ((), 0) if everyday(word) or everyday(word[:-1]) else roster.near(word[:-1])
    return horses[0] if apart == 1 and len(horses) == 1 else None


def _long_nickname(texts: Words, at: int, lexicon: Lexicon, roster: Roster) -> tuple[tuple[str, ...], int] | None:
    """A piece that lost its apostrophe: "gold liners soaked" of one called gold liner."""
    for phrase, ids in roster.pieces[texts[at]]:
        said = texts[at : at + len(phrase)]
        if len(phrase) < BOTH or len(said) < len(phrase):
            continue
        if said[-1] != phrase[-1] and _one_s_more(said, phrase):
            return (ids, len(phrase)) if says_how(lexicon.phrases.longest(texts, at + len(phrase))[0]) else None
        if _one_slip(said, phrase) and not everyday(said[-1]):
            return ids, len(phrase)  # "old gery" of one called old grey
    return None


def _one_slip(said: Words, phrase: Words) -> bool:
    """Whether the last word is off by a letter, or two swapped."""
    return said[:-1] == phrase[:-1] and len(phrase[-1]) > SHORT and distance(said[-1], phrase[-1], 1) == 1


def _one_s_more(said: Words, phrase: Words) -> bool:
    return (*said[:-1], said[-1].removesuffix("s")) == phrase


def told_in_turn(texts: Words, at: int, lexicon: Lexicon, roster: Roster) -> bool:
    """Whether names are told of one by one here, each without its apostrophe: "storms fine, sundays chilly"."""
    end = _turn(texts, at, lexicon, roster) if texts[at].endswith("s") and texts[at][:-1] in roster.spelled else 0
    if not end:
        return False
    after = end + 1 if end < len(texts) and texts[end] in BETWEEN else end
    if after < len(texts) and _turn(texts, after, lexicon, roster):
        return True
    starts = range(max(0, at - TURN), at)
    return any(at - 1 <= _turn(texts, k, lexicon, roster) <= at for k in starts) and texts[at - 1] not in STOPS


def _turn(texts: Words, at: int, lexicon: Lexicon, roster: Roster) -> int:
    """Behind a name and how its horse is, small words passed over; 0 where there is no such thing."""
    whole = texts[at] in roster.spelled
    if not whole and texts[at].removesuffix("s") not in roster.spelled:
        return 0
    passing = PASSING | {"is"} if whole else PASSING
    at += 1
    while at < len(texts):
        means, said = lexicon.phrases.longest(texts, at)
        if says_how(means):
            return at + said
        if means.isdisjoint(passing) or "of" in means:
            return 0
        at += said
    return 0


def _of_animals(texts: Words, at: int, lexicon: Lexicon) -> bool:
    """Whether what follows is said of no weather: that something shivers, sweats, is cold behind the elbow."""
    means, said = lexicon.phrases.longest(texts, at)
    if "in" in means and "her" in lexicon.phrases.longest(texts, at + said)[0]:
        return "place stall" in lexicon.phrases.longest(texts, at + said + 1)[0]  # "rangers in his stall"
    if "very" in means and not says_how(means):
        means, said = lexicon.phrases.longest(texts, at + said)  # "captains all sweaty"
    if said > 1 and says_how(means):
        return any(m.startswith("sign ") for m in means)  # "storms rubbed raw", "thistles off his feed"
    return bool(means & {"sign shivering", "sign sweating", "sign rubbed", "bare"})


def _of_one(texts: Words, at: int, lexicon: Lexicon) -> bool:
    """Whether what follows is said of a horse: how it is, or that it is in, bare or done and no more ("tangos in")."""
    means, said = lexicon.phrases.longest(texts, at)
    ends = texts[at + said : at + said + 1] in ((), *((stop,) for stop in (*BETWEEN, *STOPS)))
    return told_behind(texts, at, lexicon) or (ends and not means.isdisjoint(("in", "bare", "done")))


def told_behind(texts: Words, at: int, lexicon: Lexicon) -> bool:
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
    if means & {"in", "wears"}:
        return _rug_behind(texts, at + said, lexicon)  # "biscuits in the red sheet"
    if "had" in means:  # "rosies had her stable rug swapped"
        hers = "her" in lexicon.phrases.longest(texts, at + said)[0]
        return hers and _rug_behind(texts, at + said, lexicon)
    if means & {"colour", "any adjective"}:
        behind, more = lexicon.phrases.longest(texts, at + said)
        if "colour" in means and "is" in behind:  # "hazels pink is soaked"
            return _of_a_rug(lexicon.phrases.longest(texts, at + said + more)[0])
        means = means | behind
    clip = "clip" in " ".join(texts[at : at + said]) and any(m.startswith("style ") for m in means)
    return clip or of_rugs(means) or not means.isdisjoint(("body", "strap"))


def _of_a_rug(means: frozenset[str]) -> bool:
    """How wet a rug is, or that it is torn, in the wash: "mistys pink is ripped"."""
    return has_state(means) or not means.isdisjoint(WETNESS)


def _rug_behind(texts: Words, at: int, lexicon: Lexicon) -> bool:
    """Whether a rug follows, past its article and colours."""
    means, said = lexicon.phrases.longest(texts, at)
    while said and not means.isdisjoint(("article", "her", "colour", "any adjective")):
        at += said
        means, said = lexicon.phrases.longest(texts, at)
    return any(m == "rug" or m.startswith("kind ") for m in means)


def _nicknamed(texts: Words, at: int, roster: Roster) -> bool:
    """A piece's own name: "mooses cow print", "dukes tank" of one called the tank."""
    return at < len(texts) and (name_at(texts, at, roster.pieces)[1] > 0 or texts[at] in roster.alone)


def _long_name(texts: Words, at: int, roster: Roster) -> tuple[str, int] | None:
    """A name of several words with a slip in one of them: "lady gray"."""
    if roster.longer_words.isdisjoint(texts[at : at + 2]):
        return None
    for phrase, horse in roster.longer:
        said = texts[at : at + len(phrase)]
        if said[:-1] == phrase[:-1] and _one_s_more(said, phrase):
            return horse, len(phrase)  # "big reds sheet"
        alike = [a for a, b in zip(said, phrase) if a == b]
        if len(said) < len(phrase) or len(alike) < len(phrase) - 1 or sum(map(len, alike)) < 4:
            continue
        if all(a == b or distance(a, b, budget(b)) <= budget(b) for a, b in zip(said, phrase)):
            return horse, len(phrase)
    return None
