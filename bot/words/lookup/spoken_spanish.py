"""Spanish told with two verbs, as with one: "acabo de ponerle" is "le he puesto", "la volví a meter" "la he metido"."""

from collections.abc import Container, Sequence

from bot.words.heard.periphrases import DONE, ENDINGS, HAVE, IRREGULAR, REGULAR
from bot.words.lookup.tokens import plain

NOTHING: Container[str] = frozenset()
BEGINS = frozenset(said.split()[0] for said in DONE)  # what such words begin with
PERIPHRASES = frozenset(map(plain, BEGINS))


def as_done(words: Sequence[str], raws: Sequence[str], names: Container[str] = NOTHING) -> list[tuple[str, int]]:
    """The words with each such pair written as one, each with the place of the word it stands for.

    raws: as written, for an accent tells "terminé de" from an order. names: never taken for a verb.
    """
    said: list[tuple[str, int]] = []
    end = 0
    for at in [k for k, (word, raw) in enumerate(zip(words, raws)) if word in BEGINS or raw.casefold() in BEGINS]:
        have, taken = _begins(words, raws, at)
        behind = at + taken
        pronouns, done = _infinitive(words[behind]) if taken and behind < len(words) else ((), "")
        if at < end or not done or words[behind] in names:
            continue
        said.extend(zip(words[end:at], range(end, at)))
        helped = not have and bool(said) and said[-1][0] in HAVE
        helper = [said.pop()] if helped else [(have, at)] if have else []
        said.extend([*((pronoun, behind) for pronoun in pronouns), *helper, (done, behind)])
        end = behind + 1
    return [*said, *zip(words[end:], range(end, len(words)))]


def in_one_verb(phrase: str) -> str:
    """A phrase of the tables, written as a message is."""
    words = phrase.split(" ")
    return phrase if PERIPHRASES.isdisjoint(words) else " ".join(word for word, _ in as_done(words, words))


def _begins(words: Sequence[str], raws: Sequence[str], at: int) -> tuple[str, int]:
    """The form of "haber" that is meant where such words begin, and how many they are; 0 where none do."""
    for taken in (2, 1):
        for first in (words[at], raws[at].casefold()):
            said = " ".join((first, *words[at + 1 : at + taken]))
            if said in DONE:
                return DONE[said], taken
    return "", 0


def _infinitive(word: str) -> tuple[tuple[str, ...], str]:
    """The pronouns at its end, and the participle: "ponersela" → se, la, puesto; "" where it is no infinitive."""
    for ending, pronouns in ENDINGS.items():
        verb = word.removesuffix(ending) if ending else word
        if word.endswith(ending) and verb[-2:] in REGULAR and len(verb) > 2:
            return pronouns, IRREGULAR.get(verb, verb[:-2] + REGULAR[verb[-2:]])
    return (), ""
