"""Shivering and illness that no grammar caught: danger that is missed harms more than a sentence taken too plainly.

Only where a message names one horse for certain and then says shivering, with nothing before that which denies, asks,
supposes, plans or dates it: "Had to bring Gus in, shivering".
"""

from collections.abc import Sequence
from dataclasses import replace

from bot.events import Seen, Sign
from bot.words.lookup.items import DANGER, Item, meanings_of, predicate, some_mean
from bot.words.lookup.names import Roster
from bot.words.meaning import Ask
from bot.words.thoughts.around import OF_HORSE
from bot.words.thoughts.clauses import soft
from bot.words.thoughts.hers import PEOPLE, beside, described
from bot.words.thoughts.no_report import once_long_ago

NAMED = 4  # letters of a name with a slip in it
ALONE = 2  # words that are enough by themselves: "trembling!!"
STRANGE: dict[Sign, int] = {"shivering": 6, "sweating": 1}  # unknown words behind the sign that leave it a horse's
REACH = 4  # words before it that could make it no report
NEAR = 8  # words up to what is said
LONGEST = 25  # words; in a longer tale it may be anybody who shivers
BLOCKS = (
    "not", "no", "stopped", "not any more", "if", "when", "was", "plan", "habit", "yesterday", "long ago", "weekday",
    "guess", "quoted", "what", "idiom", "i", "visitor", "but", "neither", "mass", "animal",
)  # fmt: skip


def who_shivers(items: Sequence[Item], roster: Roster) -> Ask | None:
    """As in "she's shivering", "the bay mare is shivering", of nobody named: asked, for one may be in danger.

    Who sweats is asked as well, where little more than that is said.
    """
    if meanings_of(items).isdisjoint(("sign shivering", "sign sweating")):
        return None
    pair = next((i for i in items if len(i.horses) == 2 and not i.sure), None)
    said = next((i for i in items if i.has("sign shivering")), None)
    if pair is not None and said is not None and not _asked(items):  # "I don't know whether it is Ned or Pip"
        return Ask("horse", pair.raw, pair.horses, (Seen("", "shivering"),))
    if said is not None and (nearly := _nearly_named(items, roster)):
        return nearly
    asked = _who(items, roster.everyone, "shivering") or _who(items, roster.everyone, "sweating")
    return _as_nearly_named(items, asked, roster) if asked is not None else None


def _who(items: Sequence[Item], horses: Sequence[str], sign: Sign) -> Ask | None:
    words, at = _up_to_it(items, sign)
    if at < 0 or any(i.horses for i in words) or words[0].has("question") or _asked(items, sign):
        return None
    if words[at].has("was") or some_mean(words, "weekday", "yesterday", "long ago", "elsewhere"):
        return None
    part, place = _part_around(items, words[at])
    before, after = part[:place], part[place + 1 :]
    if _blocked(before) or _blocked(words[:at]):
        return None
    some = sign == "shivering" and some_mean(words[:at], "a horse")
    if sign == "sweating" and some_mean(words[:at], "a horse") and some_mean(words, "work"):
        return None  # "the mare at the show was sweating"
    name = next((i for i in before if sign == "shivering" and _no_word(i)), None)  # "pipp shivering"
    if some_mean(after[:2], "i"):
        return None  # "el que tirita soy yo"
    small = all(i is name or predicate(i) or soft(i) or i.has("a horse", "said") for i in before)
    told = some_mean(before, "she", "is", "a horse") or (sign == "shivering" and len(words) <= ALONE)
    told = told and not any(i.has("it") and not i.has("she", "article", "polite", "one") for i in before)
    strange = sum(1 + (sign == "sweating" and _of_a_thing(after, k)) for k, i in enumerate(after) if _unheard(i))
    if not (some or (small and told and strange <= STRANGE[sign])):
        return None
    return Ask("horse", words[at].raw, tuple(horses), (Seen("", sign),))


def _nearly_named(items: Sequence[Item], roster: Roster) -> Ask | None:
    """As in "(I can't get there) fnette is shivering": the word right before it, one slip from a name, in any talk."""
    at = next(k for k, i in enumerate(items) if i.has("sign shivering"))
    before = [i for i in items[max(0, at - REACH) : at] if not i.has("is", "relative", "very", "link")]
    word = before[-1] if before and not _asked(items) else None
    if word is None or word.horses or word.person or word.mark or len(word.text) < NAMED or word.has(*BLOCKS, "colour"):
        return None
    horses, apart = roster.near(word.text)
    return Ask("horse", word.raw, horses, (Seen("", "shivering"),)) if horses and apart == 1 else None


def _as_nearly_named(items: Sequence[Item], asked: Ask, roster: Roster) -> Ask:
    """As in "stable is shivering", of a Sable: asked about the horses one slip from the word in a name's place."""
    opens = next((i for i in items if not i.has("article")), items[0])
    horses, apart = roster.near(opens.text)
    return replace(asked, word=opens.raw, options=horses) if horses and apart == 1 else asked


def _no_word(item: Item) -> bool:
    """Neither a word of the tables nor of any language: a name with a slip, for all anybody knows."""
    return not (item.means or item.known or item.mark or item.person) and item.number is None


def _unheard(item: Item) -> bool:
    return not (soft(item) or item.has("link", "place stall", "place field", "her", "all"))


def _of_a_thing(items: Sequence[Item], at: int) -> bool:
    """As in "sweating over his exam": people sweat over things of theirs."""
    return at > 0 and items[at - 1].has("her", "article")


def _part_around(items: Sequence[Item], said: Item) -> tuple[list[Item], int]:
    """The words between the two marks around this one, and its place among them."""
    at = next(k for k, item in enumerate(items) if item is said)
    first = next((k + 1 for k in range(at - 1, -1, -1) if items[k].mark), 0)
    last = next((k for k in range(at + 1, len(items)) if items[k].mark), len(items))
    return list(items[first:last]), at - first


def danger(items: Sequence[Item]) -> Seen | None:
    """Shivering, or colic, where it can be nobody else's and nothing else: one horse named, then that."""
    if meanings_of(items).isdisjoint(DANGER) or once_long_ago(items):
        return None
    return _shivering(items) or _ill(items)


def _ill(items: Sequence[Item]) -> Seen | None:
    """As in "Relámpago tiene cólico voy llamando al veterinario"."""
    words, at = _up_to_it(items, "unwell")
    named = [k for k, item in enumerate(words) if item.horses]
    if at < 0 or len(named) != 1 or named[0] > at or _asked(items, "unwell") or words[0].has("question"):
        return None
    if _denied_behind(words[at + 1 :]):
        return None
    horse = words[named[0]]
    others = _somebody_of_hers(words, named[0]) or _noun_of_hers(words, named[0])
    sure = horse.horse and horse.exact and not others
    told = [i for k, i in enumerate(words[: at + 1]) if k != named[0] + 1 or not i.has("she")]
    return Seen(horse.horses[0], "unwell") if sure and at <= NEAR and not _blocked(told) else None


def _shivering(items: Sequence[Item]) -> Seen | None:
    words, at = _up_to_it(items)
    named = [k for k, item in enumerate(words) if item.horses]
    if at < 0 or len(named) != 1 or named[0] > at or _asked(items) or _denied_behind(words[at + 1 :]):
        return None
    horse = words[named[0]]
    if not (horse.horse and horse.exact) or _somebody_of_hers(words, named[0]) or _only_shown(words[at + 1 :]):
        return None
    if some_mean(words[at + 1 : at + NEAR], "long ago", "yesterday"):
        return None  # "Odin shivered all last winter", "… one night last week"
    told = [i for k, i in enumerate(words[: at + 1]) if not (i.has("she") and k and words[k - 1].horses)]
    said = words[at]
    part, place = _part_around(items, said)
    told = [i for i in told if i in part or not (i.has("i") or i.person)]  # "c'est le stagiaire, Lune grelotte"
    plainly = len(words) <= LONGEST and not _blocked(told) and not words[0].has("question")
    by_itself = part[:place] == [horse] and not _blocked(_all_but_the_plan(told))  # "faudrait …, Perle grelotte"
    if plainly or by_itself or _close_by(part[:place], horse, said) or _needs_for_it(part, place, told, said):
        return Seen(horse.horses[0], "shivering")
    return None


def _denied_behind(behind: Sequence[Item]) -> bool:
    """As in "Lune tousse plus", "Lune tousse pas du tout"; not "tousse plus que Max", "plus d'appétit"."""
    denied = some_mean(behind[:1], "not behind")
    return denied and not some_mean(behind[1:2], "what", "of")


def _only_shown(behind: Sequence[Item]) -> bool:
    """As in "Otto's shivering pics", "… shivering every winter": a picture or a habit right behind it."""
    return any(i.has("habit") and not i.has("question", "had") for i in behind[:1])


def _needs_for_it(part: Sequence[Item], at: int, told: Sequence[Item], said: Item) -> bool:
    """As in "Maple needs a rug, she's shivering": why something is to be done for it, behind a pause or "she"."""
    small = all(i.has("is", "she", "very", "link") and not i.has("was", "plan", "if") for i in part[:at])
    why = len(part) < len(told) and small and not any(_unheard(i) for i in part[at + 1 :])
    runs_on = len(told) > 3 and told[-3].has("she") and told[-2].has("is")  # "needs a blanket she is shivering"
    planned = some_mean(told, "plan")
    return planned and (why or runs_on) and not said.has("was") and not _blocked(_all_but_the_plan(told))


def _all_but_the_plan(told: Sequence[Item]) -> Sequence[Item]:
    return [i for i in told if not i.has("plan") or i.has("if", "when", "guess", "question", "not")]


def _somebody_of_hers(words: Sequence[Item], at: int) -> bool:
    """As in "Otto's rider is shivering", "el dueño de Lucero está tiritando"."""
    behind = words[at + 1 : at + 3]
    owned = len(behind) == 2 and behind[0].text == "'s"
    told_where = beside(words, at) and some_mean(words, "one", "a horse", "animal", "i")  # else it is of her
    rider = told_where or (owned and (not (soft(behind[1]) or predicate(behind[1])) or described(words[at + 2 :])))
    return rider or (at > 1 and words[at - 1].text in OF_HORSE and _no_part_of_her(words, at - 2))


def _no_part_of_her(words: Sequence[Item], at: int) -> bool:
    """As in "la potra de Lucero", "l'ancienne écurie de Perle": before "of" and the horse, what is no part of it."""
    return words[at].has(*PEOPLE, "elsewhere")


def _noun_of_hers(words: Sequence[Item], at: int) -> bool:
    """As in "la demi-pensionnaire de Perle": a noun no table knows, which may be ill; what shivers may be hers."""
    if at < 2 or words[at - 1].text not in OF_HORSE:
        return False
    noun, before = words[at - 2], words[max(0, at - 4) : at - 2]
    return not (noun.means or noun.horses) and some_mean(before, "article", "any adjective")


def _close_by(ahead: Sequence[Item], horse: Item, said: Item) -> bool:
    """As in "can someone come, Dilly is trembling", "but he shivers": the horse, or "he", right before it."""
    before = [i for i in ahead if not i.has("is", "link", "very", "a little") or i.has("she", *BLOCKS)]
    if said.has("was") or not before:
        return False
    named = before[-1] is horse and ahead[-1].has("is")  # nobody "saw Otter shivering"
    if not (named or (before[-1].has("she") and not horse.known)):
        return False
    if any(i.has("plan") and not i.has("polite", "please") for i in before[-2:-1]):
        return False  # "a lo mejor Lucero está tiritando"
    return not _blocked([i for i in before[-REACH:] if not i.horses and not i.has("but", "plan", "i")])


def _up_to_it(items: Sequence[Item], sign: Sign = "shivering") -> tuple[list[Item], int]:
    """The words, and the place of the one that says this sign; −1 where none does."""
    words = [item for item in items if not item.mark]
    return words, next((k for k, item in enumerate(words) if item.has(f"sign {sign}")), -1)


def _blocked(words: Sequence[Item]) -> bool:
    return any(item.person or (item.has(*BLOCKS) and not (item.has("said") or item.horses)) for item in words)


def _asked(items: Sequence[Item], sign: Sign = "shivering") -> bool:
    """Whether the message asks: a question mark right behind the word that says this sign, or behind "tremble-tu"."""
    at = next((k for k, item in enumerate(items) if item.has(f"sign {sign}")), -1)
    end = at + 3 if any(not (item.means or item.mark) for item in items[at + 1 : at + 2]) else at + 2
    return any(item.mark and item.text in "?¿" for item in items[max(0, at - 1) : end]) or items[0].raw == "¿"
