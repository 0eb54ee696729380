"""Whether a sentence is a question: marked as one, or opening like one."""

from collections.abc import Sequence
from itertools import dropwhile, takewhile

from bot.events import About
from bot.words.lookup.items import NOTHING, Item, all_mean, meanings_of, predicate, some_mean
from bot.words.thoughts.clauses import Clause
from bot.words.thoughts.no_report import did_a_chore

WHOLE: tuple[tuple[str, About], ...] = (
    ("ask left", "left"),
    ("ask drying", "drying"),
    ("ask forecast", "forecast"),
    ("ask forecast marked", "forecast"),
    ("ask today", "today"),
    ("ask help", "help"),
)
LAST = 3  # words among which "anywhere" ends a sentence
ENDING = 2  # words that may make a question of what they end
ASKS_POLITELY = frozenset(("question", "ask left"))
ASKED_BEHIND = frozenset(("what", "ask state", "ask today"))
OPENERS = 5  # words that tell a question
YOU = ("you", "tu", "vous", "u")
SO_MUCH = ("tan", "mas")
OPENING = frozenset({meaning for meaning, _ in WHOLE} | {"ask why", "ask state"}) - {"ask forecast marked"}


def asks(sentence: Sequence[Item], *, marked: bool) -> bool:
    """Whether a sentence is a question: marked as one, or opening like one with its subject behind the verb."""
    said = [i for i in sentence if not (i.mark or ("polite" in i.means and ASKS_POLITELY.isdisjoint(i.means)))]
    words = _without_whom(said[:OPENERS])
    if marked or not words:
        return marked and not _looked_for(sentence, words)
    if "asked" in sentence[-1].means or "asked" in sentence[-ENDING:][0].means:
        return True  # "l'imper de Noisette il est sec ou pas"
    first = words[0]
    if not OPENING.isdisjoint(first.means) and not first.has("all done", "in", "wears", "put on", "time", "plan"):
        return True
    if first.has("ask ready") and " " in first.text and not first.has("is", "done") and any(i.piece for i in sentence):
        return True  # "when will big red be dry"
    second, third = (*words[1:3], NOTHING, NOTHING)[:2]
    behind = meanings_of(words[1:])
    if "ask state" in behind and _how_one_is(words):
        return True
    if first.horses and "she" in behind and second.has("she") and second.has("subject"):  # "Lulu il met quoi ce soir"
        second, third = (*words[2:4], NOTHING, NOTHING)[:2]
    if first.horses and not behind.isdisjoint(ASKED_BEHIND) and _asked_behind(second, third):
        return True
    if not behind.isdisjoint(("what", "ask today")) and of_her_what(words, sentence):
        return True
    if not first.has("question"):
        return False
    if first.has("reason") and first.raw.casefold() == first.text:
        return False  # "como hace sol …", without its accent
    if _only_links(first) and not (second.has("ask wearing") or _which_are(second, third)):
        return False  # "que Canela se quede …" asks nothing
    if not first.has("is", "was", "has", "habit", "plan"):
        return True
    if first.has("had") and (some_mean(sentence[1:], "done") or _did_something(sentence)):
        return False  # "did Pip and Ned like it said"
    return len(words) > 1 and bool(
        words[1].horses
        or words[1].has("she", "it", "i", "article", "her", "everyone")
        or words[1].piece
        or words[1].person
    )


def _did_something(sentence: Sequence[Item]) -> bool:
    """Whether "did", which opens it, tells what was done: no question."""
    did = next(k for k, i in enumerate(sentence) if i.has("had"))
    behind = sentence[did + 1 :]
    return _did_a_clip(behind) or _did_these(behind) or _did_a_chore(behind)


def _did_these(behind: Sequence[Item]) -> bool:
    """As in "did Pip, Ned and Otto", a round's list and no other verb; not "did Pip and Ned get their hay"."""
    said = list(takewhile(lambda i: i.horses or i.has("and") or i.text == ",", behind))
    while said and said[-1].text == ",":
        said.pop()
    rest = takewhile(lambda i: not i.mark, behind[len(said) :])
    return sum(bool(i.horses) for i in said) > 1 and all_mean(rest, "time", "polite", "too")


def _did_a_chore(behind: Sequence[Item]) -> bool:
    """As in "did the hay and took Maple's sheet off": a thing, and then what else was done."""
    chore = list(takewhile(lambda i: not (i.mark or i.has("and")), behind))
    then = behind[len(chore) + 1 : len(chore) + 2]
    return did_a_chore(chore) and some_mean(then, "took", "took off", "put on", "brought in", "turned out", "i")


def _asked_behind(verb: Item, then: Item) -> bool:
    """As in "(Soleil) porte quoi", "(Dudu) a quoi sur le dos": what is asked of the horse that opens."""
    what = then.has("what") or verb.has("what")
    return verb.has("ask state", "ask today") or (what and verb.has("ask wearing", "wears"))


def _did_a_clip(behind: Sequence[Item]) -> bool:
    """As in "did Pip last night, hunter clip", "did a trace clip on Pip": what was done, and no other verb behind whom.

    Not "did Pip get a hunter clip", "did the clip come out well".
    """
    names = [k for k, i in enumerate(behind) if i.horses]
    if not names or not any(i.kinds("style") for i in behind):
        return False
    between = behind[: names[0]]
    then = next((i for i in behind[names[-1] + 1 :] if not (i.has("article") or i.text == "'s")), NOTHING)
    if all(i.horses or i.has("and", "article") for i in between):
        return then.mark or then.has("time", "clipped") or bool(then.kinds("style"))
    return all(i.kinds("style") or i.has("clipped", "article", "on", "of") for i in between)


def _looked_for(sentence: Sequence[Item], words: Sequence[Item]) -> bool:
    """As in "cant find Sunnys liner anywhere??": whoever looked everywhere tells that it is gone, however marked."""
    told = next((i for i in words if not (i.has("i") and i.has("subject"))), NOTHING)
    return told.has("state missing") and some_mean(sentence[-LAST:], "not anywhere")


def _how_one_is(words: Sequence[Item]) -> bool:
    """As in "pis mon Biscuit, y va comment"."""
    named = list(dropwhile(lambda i: i.has("and", "but", "my", "article") and not i.horses, words))[:2]
    return len(named) > 1 and bool(named[0].horses) and named[1].has("ask state") and " " in named[1].text


def _without_whom(words: list[Item]) -> list[Item]:
    """As in "Kévin est-ce que Lune a froid", "Kevin was Pip sweaty": whom it is put to left out, before what asks.

    So is "and" in "and is Pip in her quilt".
    """
    if len(words) > 2 and words[0].has("and", "too") and words[1].has("question") and words[1].has("is", "was"):
        return words[1:] if words[2].horses else words
    if len(words) < 3 or not words[0].person:
        return words
    verb, then = words[1:3]
    only_asks_so = verb.has("question") and " " in verb.text and not verb.has("was", "has", "plan", "habit", "link")
    turned = verb.has("question") and verb.has("is", "was") and not verb.has("has", "link") and bool(then.horses)
    turned = turned or (verb.has("question") and then.text in YOU)  # "Ann are you coming"
    return words[1:] if only_asks_so or turned else words


def seen_when(clause: Clause) -> bool:
    """As in "(Orage transpirait) quand tu l'as vu ?": when it was seen, told behind what is asked."""
    words = [i for i in clause.items if not i.mark]
    of_somebody = bool(words) and (words[0].has("she", "i", "subject") or words[0].person)
    return clause.joined == "when" and of_somebody


def of_her_what(words: Sequence[Item], sentence: Sequence[Item]) -> bool:
    """As in "y canela q lleva hoy", "a la mora qué manta le pongo": a horse, what, the verb, and nothing told."""
    opens = [i for i in words if i.horses or not i.has("and", "article", "toward")]
    if len(opens) < 3 or not (opens[0].horses and opens[2].has("ask wearing", "ask today")):
        return False
    if not (opens[1].has("what") or (opens[1].has("ask today") and " " in opens[1].text)):
        return False
    return not any(i.piece or predicate(i) for i in sentence)


def _only_links(first: Item) -> bool:
    """Whether a word that may ask opens no question here: "que Canela se quede …"; but "qui a enlevé la grosse"."""
    return first.has("but") or (first.has("link") and first.has("what"))


def _which_are(item: Item, then: Item) -> bool:
    """As in "que cobijas siguen secándose": rugs without an article, behind "que" that lost its accent."""
    rugs = item.piece is not None and item.piece.several and item.piece.rug and " " not in item.text
    return rugs and then.has("is", "stays")


def exclaims(words: Sequence[Item]) -> bool:
    """As in "qué manta tan mojada", "qué cobija más bonita la de Moro": no question, though it opens like one."""
    noun = 1 if words and " " in words[0].text else 2
    of_a_piece = any(i.has("ask today") or i.piece for i in words[:noun])
    return of_a_piece and any(i.text.split()[0] in SO_MUCH for i in words[noun : noun + 1])


def only_asks(item: Item) -> bool:
    """What, which, who: a word that only asks."""
    return item.has("what") and not item.has("is", "was", "has", "plan", "habit", "link")


def asking(first: Item) -> bool:
    """The first word asks: "que" at the head of a question, though it links elsewhere."""
    return first.has("what") and not first.has("is", "was", "has", "plan", "habit")


def asked_to_keep(sentence: Sequence[Item]) -> bool:
    """As in "could you leave Pip bare from now on?": a wish, put as a question to those who may."""
    words = [i for i in sentence if not i.mark and (not i.has("polite") or i.has("please"))]
    opens = bool(words) and words[0].has("plan") and any(i.has("i") and not i.has("subject") for i in words[1:2])
    return opens and some_mean(words[2:4], "keep", "do not rug") and some_mean(words, "please")
