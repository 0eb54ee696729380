"""Thoughts that are no report: a plan, a condition, a habit, an old story; and where such a word changes nothing."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache, cached_property
from itertools import dropwhile, pairwise

from bot.words.lookup.items import DANGER, Item, places, predicate, some_mean
from bot.words.thoughts.clauses import CLIPS, Clause, is_subject, only_small, said_by, soft
from bot.words.thoughts.relayed import SAYS, heard_of, told_of_then

BLOCKS = ("plan", "habit", "yesterday", "long ago", "guess", "if", "idiom")
BLOCKING = frozenset((*BLOCKS, "weekday", "hearsay", "quoted"))
MAY_BLOCK = BLOCKING | SAYS | {"had", "young", "at an age", "last night"}
CLIPPED_THEN = frozenset(("clipped then",))
STILL = ("still", "encore", "toujours", "todavia", "aun")
WAS = frozenset(("was",))
YOUNG = frozenset(("young",))
CHORE = 4  # words of "the top field hay"
NOUN = 5  # words of "was a sickly little foal"
GRAVE = ("sign shivering", "sign sweating", "sign unwell")
ANYBODY = ("you", "ye", "ya", "on", "se", "uno", "y")  # "on pourrait y passer la tête"
WITH = ("with", "avec", "con")
EVER = frozenset(("ever", "always", "usual", "usually", "siempre", "costumbre", "toujours", "habitude"))
LIKENS = ("como", "comme", "like", "as")


def no_report(clause: Clause) -> bool:
    """Whether a thought is a plan, a condition, a habit or an old story."""
    if clause.means.isdisjoint(MAY_BLOCK):
        return False
    if _supposed(clause.items) or of_its_youth(clause) or once_long_ago(clause.items):
        return True
    if told_of_then(clause) or heard_of(clause):
        return True
    worn = clause.has("in", "wears") and len(clause.pieces) == 1
    then = clause.has("last night") and clause.has("was") and not clause.has("as of now", "put on")
    if then and (clause.told or worn) and not any(i.text in STILL or i.text.endswith(" still") for i in clause.items):
        return True  # "Pip was soaked last night", "last night Pip was in his heavy"
    around = Around(clause)
    return any(
        not any(harmless(clause.items[at], at, around) for harmless in _harmless(clause.items[at].means))
        for at in places(clause.items, BLOCKING)
    )


def of_its_youth(clause: Clause) -> bool:
    """As in "quand elle était pouliche", "petite, (Perle avait …)": long ago, whatever is told beside it."""
    if not clause.has("young"):
        return False
    if _was_one(clause.items):
        return True
    said = [i for i in clause.items if not i.has("very", "article", "time") or i.has("was", "young")]
    was_young = any(one.has("was") and then.has("young") for one, then in pairwise(said))
    if all(i.has("young") or soft(i) for i in clause.items):
        return was_young or not clause.has("was")  # "was out with the foal" is of no youth of hers
    return was_young and (clause.joined == "when" or clause.has("when"))


def _was_one(items: Sequence[Item]) -> bool:
    """As in "he was a sickly foal", "Perle était une pouliche fragile": how it was then."""
    for at in places(items, YOUNG):
        was = next((k for k in range(at - 1, max(-1, at - NOUN), -1) if items[k].has("was")), at)
        if any(i.has("some") or (i.has("young") and " " in i.text) for i in items[was + 1 : at + 1][:1]):
            return True
    return False


def once_long_ago(items: Sequence[Item]) -> bool:
    """As in "con tres años Brisa tiritaba", "… when he was a foal"; not "con tres años Brisa está tiritando"."""
    if some_mean(items, "at an age") and in_the_past(items):
        return True
    young = next((k for k, i in enumerate(items) if i.has("young")), 0)
    when = some_mean(items[max(0, young - NOUN) : young], "when") and items[young - 1].has("was", "is")
    return when or (young > 0 and items[young - 1].has("long ago"))


def in_the_past(items: Sequence[Item]) -> bool:
    """As in "(con tres años) Brisa tiritaba", "(aged three) Maple shivered at everything"; not "is shivering"."""
    return any(i.has("was") or (i.has(*GRAVE) and i.text.partition(" ")[0].endswith("ed")) for i in items)


def only_yesterday(clause: Clause) -> bool:
    """No report for nothing but having been yesterday, or on a day: "a été tondu samedi", not "était tondu"."""
    past = clause.has("weekday", "that day") and _is_over(clause.items)
    days = ("yesterday", "weekday", "that day") if past else ("yesterday",)
    if not clause.has(*days):
        return False
    return not any(not clause.items[k].has(*days) for k in places(clause.items, BLOCKING))


def _is_over(items: Sequence[Item]) -> bool:
    """As in "a été tondu", "lo esquilaron entero", "they full clipped her": done, whenever it was."""
    for at in places(items, WAS):
        behind = dropwhile(lambda i: i.horses or i.has("article", "very", "time"), items[at + 1 :])
        if _has_been(items[at]) and next(behind, items[at]).has("clipped", *CLIPS):
            return True  # "was full clipped"; not "was to be", "was due to be"
    for at in places(items, CLIPPED_THEN):
        styled = not items[at].means.isdisjoint(CLIPS)  # "full clipped" is over behind who did it
        if not styled or some_mean(items[max(0, at - 1) : at], "subject"):
            return True
    had = next((k for k, i in enumerate(items) if i.has("had then")), len(items))
    return some_mean(items[had + 1 :], *CLIPS)  # "got a full clip on Monday"


def _has_been(item: Item) -> bool:
    """As in "a été", which is over."""
    return item.has("was") and item.has("is")


@dataclass(frozen=True)
class Around:
    """What stands around a word that may make its thought no report."""

    clause: Clause

    @cached_property
    def items(self) -> tuple[Item, ...]:
        """The words of the thought."""
        return self.clause.items

    @cached_property
    def told(self) -> int:
        """The place behind which a saying changes nothing: "her sheet is dry, hung by the boiler"."""
        said = next((k for k, i in enumerate(self.items) if predicate(i)), len(self.items))
        moved = _moved_before(self.items) if self.clause.horses and self.clause.pieces else len(self.items)
        if moved < said:
            return moved + 1
        return said + 1 if any(is_subject(i) for i in self.items[:said]) else len(self.items)

    @cached_property
    def danger(self) -> int:
        """The place where a horse named before is said to shiver or to be ill; behind the last where none is."""
        if not self.clause.has(*DANGER):
            return len(self.items)
        named = next((k for k, i in enumerate(self.items) if i.horses), len(self.items))
        grave = (k for k in range(named, len(self.items)) if self.items[k].has(*DANGER))
        return next(grave, len(self.items))


def _moved_before(items: Sequence[Item]) -> int:
    """Where a piece was put on or taken off: "le quité la fina (a Moro) hace un calor"; past the end where none was."""
    verb = next((k for k, i in enumerate(items) if i.has("put on", "took off", "swapped")), len(items))
    return next((k for k in range(verb + 1, len(items)) if items[k].piece is not None), len(items))


def _supposed(items: Sequence[Item]) -> bool:
    """As in "Had Juno been sweating, she would have said so"."""
    if len(items) < 3:
        return False
    return items[0].has("had") and bool(items[1].horses or items[1].has("she")) and items[2].text == "been"


def _is_a_name(word: Item, _at: int, _around: Around) -> bool:
    """As in "Sunday is wet" of a horse."""
    return bool(word.horses)


def _saying_at_the_end(word: Item, at: int, around: Around) -> bool:
    """As in "her sheet is dry, touch wood"."""
    return at > around.told and word.has("idiom") and not word.has(*BLOCKS[:-1])


def _likens(word: Item, at: int, around: Around) -> bool:
    """As in "sudada como un pollo"."""
    return word.has("idiom") and at >= around.told > 1 and word.text.split()[0] in LIKENS


def _saying_that_tells(word: Item, at: int, around: Around) -> bool:
    """As in "Pip is cold out there", "pips freezing": nothing but "is" between the horse, or "he", and the saying."""
    if not (word.has("idiom") and predicate(word)):
        return False
    items = around.items
    before = [i for i in items[:at] if not i.has("is", "very", "a little") or i.has("she")]
    said = len(before) < at or (at > 0 and not items[at - 1].exact and items[at - 1].text.endswith("s"))
    return bool(before) and said and bool(is_subject(before[-1]) or before[-1].has("she"))


def _did_something(word: Item, at: int, around: Around) -> bool:
    """As in "did two lessons", "did Pip like it said", "did Pip and Ned", "did a trace clip"; not "did Pip sweat"."""
    if not (word.has("habit") and word.has("had")):
        return False
    behind = around.items[at + 1 :]
    horses = any(i.horses for i in behind) and all(i.horses or i.has("i") or only_small(i) for i in behind)
    verb = any(i.has("is", "has", "was") and i.text != "'s" for i in behind)
    clip = any(not i.means.isdisjoint(CLIPS) for i in behind) and not verb
    counted = any(i.number is not None or i.has("one") for i in behind) and all(map(only_small, behind))  # "did one"
    return horses or clip or counted or did_a_chore(behind) or some_mean(behind, "work", "done")


def did_a_chore(behind: Sequence[Item]) -> bool:
    """As in "(did) the hay", "(did) the mucking out": a thing and no verb of the barn's horses or clothes."""
    if not 1 < len(behind) <= CHORE or not behind[0].has("article", "her", "my"):
        return False
    return not any(is_subject(i) or i.person or predicate(i) or i.has("subject", "is", "has", "i") for i in behind)


def _as_ever(word: Item, at: int, around: Around) -> bool:
    """As in "Moose was comfy as ever"; not "… in that film", "… rarely"."""
    return word.has("habit") and not EVER.isdisjoint(word.text.split()) and around.told <= at == len(around.items) - 1


def _the_same(word: Item, at: int, around: Around) -> bool:
    """As in "(Canela sudada) y Lola igual": "perhaps" or "the same", behind nothing but horses."""
    if not word.has("too"):
        return False
    before = [i for i in around.items[:at] if not (i.mark or i.has("and", "article", "time", "but"))]
    horses_only = bool(before) and all(i.horses for i in before)
    return horses_only and all(i.mark or i.has("polite") for i in around.items[at + 1 :])


def _behind_danger(word: Item, at: int, around: Around) -> bool:
    """As in "Storm is shivering somebody go"."""
    return at > around.danger and word.has("plan", "guess") and not word.has("if")


def _danger_heard_of(_word: Item, _at: int, around: Around) -> bool:
    """As in "apparently Storm is shivering": better looked at for nothing."""
    return around.clause.has(*DANGER)


def _how_much(word: Item, at: int, around: Around) -> bool:
    """As in "has a tear you could put your head through", "so wet you could wring him out", behind what is told."""
    somebody = at > 0 and around.items[at - 1].text in ANYBODY
    return somebody and at > around.told and word.has("plan") and not word.has("if")


def _tells_who_says_so(word: Item, at: int, around: Around) -> bool:
    """As in "the girl from Wednesday says Noisette is wet"."""
    return at < said_by(around.items) and not word.has("if", "guess", "plan")


def _compares(word: Item, at: int, around: Around) -> bool:
    """As in "tonte chasse comme la dernière fois", told at the end: it dates nothing."""
    if not word.has("yesterday", "long ago"):
        return False
    items = around.items
    ends = all(i.mark or i.has("polite") for i in items[at + 1 : at + 2])
    return ends and at > 1 and items[at - 1].has("compares") and any(not soft(i) for i in items[: at - 1])


def _a_while_ago(word: Item, _at: int, around: Around) -> bool:
    """As in "tout à l'heure", of what was."""
    return word.has("time") and word.has("plan") and around.clause.has("was")


def _please(word: Item, at: int, around: Around) -> bool:
    """As in "please, Pip is shivering": a horse at once, then how it is; but "si Moro suda" supposes it."""
    behind = around.items[at + 1 : at + 6]
    if not word.has("polite") or (word.has("if") and not (behind and behind[0].mark)):
        return False
    words = [i for i in behind if i.horses or not (i.mark or i.has("article", "link", "polite")) or predicate(i)]
    is_so = len(words) > 1 and bool(words[0].horses) and (words[1].has("is") or bool(words[1].kinds("sign")))
    return is_so and any(predicate(i) for i in words[1:3])


def _passed_on(word: Item, at: int, around: Around) -> bool:
    """As in "somebody tell Sam that Pip's strap is broken": whom it is to be told, and what is so."""
    behind = around.items[at + 1 : at + 6]
    told = next((k for k, i in enumerate(behind[:2]) if i.has("pass on")), len(behind))
    return word.has("plan") and not word.has("if") and some_mean(behind[told + 1 :], "relative", "what")


def _of_people(word: Item, at: int, around: Around) -> bool:
    """As in "did two lessons with the Thursday riders", "con los chicos del jueves": who they are, and no day."""
    items = around.items
    if not word.has("weekday") or at < 2:
        return False
    if items[at - 1].has("of"):
        return any(i.text in WITH for i in items[max(0, at - 4) : at - 2])
    behind = items[at + 1 : at + 2]
    return items[at - 1].text == "the" and items[at - 2].text in WITH and bool(behind) and not behind[0].mark


def _from_yesterday(word: Item, at: int, around: Around) -> bool:
    """As in "wet from the rain of yesterday"."""
    return word.has("yesterday") and at > around.told and around.items[at - 1].has("of")


Harmless = Callable[[Item, int, Around], bool]
HARMLESS: tuple[tuple[frozenset[str], Harmless], ...] = (
    (BLOCKING, _is_a_name),
    (frozenset(("plan",)), _how_much),
    (frozenset(("idiom",)), _saying_at_the_end),
    (frozenset(("idiom",)), _likens),
    (frozenset(("idiom",)), _saying_that_tells),
    (frozenset(("habit",)), _did_something),
    (frozenset(("habit",)), _as_ever),
    (frozenset(("too",)), _the_same),
    (frozenset(("plan", "guess")), _behind_danger),
    (frozenset(("plan",)), _passed_on),
    (frozenset(("hearsay",)), _danger_heard_of),
    (BLOCKING - {"if", "guess", "plan", "quoted"}, _tells_who_says_so),
    (frozenset(("yesterday", "long ago")), _compares),
    (frozenset(("time",)), _a_while_ago),
    (frozenset(("polite",)), _please),
    (frozenset(("weekday",)), _of_people),
    (frozenset(("yesterday",)), _from_yesterday),
)


@cache
def _harmless(means: frozenset[str]) -> tuple[Harmless, ...]:
    """The rules by which a word of these meanings may change nothing."""
    return tuple(rule for words, rule in HARMLESS if not words.isdisjoint(means))
