"""Which words are the same whatever stands beside them: the item of such a word is made once for a barn."""

from bot.words.lookup.lexicon import Lexicon, everyday
from bot.words.lookup.names import Roster
from bot.words.lookup.tokens import Token

SHORTENED = 3  # letters of a name cut short that is asked about


def by_itself(token: Token, lexicon: Lexicon, roster: Roster) -> bool:
    """Whether no word beside this one makes it another thing, but for the phrases and names that it begins."""
    word = token.text
    if token.kind == "mark":
        return True
    if len(word) == SHORTENED and word not in lexicon.everyday and roster.begins(word):
        return False  # "rom grelotte": what follows tells
    if token.kind != "word" or word in roster.ids or word in roster.longer_words or _may_own(word, roster):
        return False
    participle = word in lexicon.accented and token.raw.endswith("e")  # "enlève": what stands before it tells
    known = word in lexicon.phrases or word in roster.begun or everyday(word)
    return not participle and (known or _nothing_known(word, roster))


def _nothing_known(word: str, roster: Roster) -> bool:
    """Whether it is no slip of a name either, nor one cut short: what follows tells nothing of it."""
    return not (word.endswith("s") or roster.near(word)[0] or roster.begins(word))


def going_on_name(word: str, roster: Roster) -> frozenset[str]:
    """The words behind this one with which it begins a name, its apostrophe lost or not: "gold liners soaked"."""
    tables = (roster.horses, roster.people, roster.pieces)
    behind = [phrase[1] for table in tables for phrase, _ in table.get(word, ()) if len(phrase) > 1]
    return frozenset((*behind, *(f"{second}s" for second in behind)))


def _may_own(word: str, roster: Roster) -> bool:
    """A name with an "s" that may have lost its apostrophe: what follows tells."""
    return word.endswith("s") and (roster.owner(word) is not None or bool(roster.nicknamed(word[:-1])))
