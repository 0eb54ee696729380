"""Thoughts strung together without a mark: "did the barrow and the water and I've just brought Dutch in".

What was told of no horse is set apart from what is told of one behind it; else the whole of it says too much.
"""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.heard.wits import MESSAGE
from bot.words.lookup.items import Item, names_nothing, of_a_horse, of_clothes, places, since_mark, some_mean
from bot.words.mending.another import DONE, told_at_once, whole_before
from bot.words.thoughts.sentences import REACH

WHOLE = 4  # items of a thought
FEWEST = 3  # words of one
NEAR = 6  # words from a deed to whom it is done
LATELY = 2  # words right before a deed that may lead to it
STOP = Item(".", ".", mark=True)
GOES_ON = frozenset(("subject", "i", "time", "plan", "article", "question", "brings weather", "and"))
UNDO = frozenset(("undo",))
ASKS = frozenset(("ask left", "ask drying", "ask forecast", "ask today"))
NOTHING_MORE = frozenset(("stopped", "place field", "link", "weather", "sky"))
HELPS = ("has", "time", "polite", "link", "only", "is")  # between "I" and what I did: "have just"
# in a deed that is one row: "le he puesto"
BY_ME = frozenset(("i", "we", "he", "hemos", "ai", "j'", "avons", "puse", "quite"))
# what may say that it is no news: right before it, or anywhere before it
LEADS_TO = (
    "said", "tells", "plan", "guess", "what", "question", "not", "like", "compares", "relative", "habit", "afterwards",
    "when", "keep", "stopped",
)  # fmt: skip
GOVERNS = (
    "told by", "if", "some day", "quoted", "story", "yesterday", "long ago", "weekday", "ask why",
)  # fmt: skip
DENIES = ("not", "no", "said", "tells", "everyone")  # of a deed by nobody named: "none of the grooms brought Fig in"
UNSURE = ("not", "no", "only", "guess", "by mistake")  # "Otto is cold I'm not sure"
CONNECTS = (
    "in", "on", "of", "toward", "with", "after", "under", "over", "beside", "between", "but", "for another",
    "at somebody's",
)  # fmt: skip
LEADS = (*CONNECTS, "her", "article", "is")


def strung_apart(items: Sequence[Item]) -> Sequence[Item]:
    """The items with a stop before each deed or finding that follows some other talk without a mark."""
    begins = {_subject(items, at) for at in places(items, DONE) if _done_to_one(items, at)}
    begins |= {at for at, item in enumerate(items) if (item.horses or item.piece is not None) and _found(items, at)}
    begins |= {at for at in places(items, ASKS) if _asks_the_bot(items, at)}
    ends = {at for at in places(items, GOES_ON) if _talk_goes_on(items, at)}
    ends |= {at + 1 for at in places(items, UNDO) if _takes_back_a_message(items, at)}
    found: list[Item] = []
    end = 0
    for at in sorted(begins | ends):
        if at > end and (at in ends or _follows_talk(items, at)):
            found.extend((*items[end:at], STOP))
            end = at
    return [*found, *items[end:]] if end else items


def _asks_the_bot(items: Sequence[Item], at: int) -> bool:
    """As in "(a blister on my heel) so who is left to do bot because …"."""
    return " " in items[at].text and some_mean(
        (*items[max(0, at - 2) : at], *items[at + 1 : at + LATELY + 1]), "to the bot"
    )


def _takes_back_a_message(items: Sequence[Item], at: int) -> bool:
    """As in "annule mon dernier message | je me suis trompé": the message by name, then why."""
    named = not MESSAGE.isdisjoint(items[at].text.split())
    return named and some_mean(items[at + 1 : at + 2], "i", "subject", "undo")


def _subject(items: Sequence[Item], at: int) -> int:
    """Where "I've just (brought)" begins; the place of the deed itself where its own words say who."""
    first = at
    while first and items[first - 1].has(*HELPS) and not items[first - 1].has("subject"):
        first -= 1
    return first - 1 if first and items[first - 1].has("i") and items[first - 1].has("subject") else at


def _done_to_one(items: Sequence[Item], at: int) -> bool:
    """As in "I've just brought Dutch in", "le he puesto a Olmo la de 300": by the speaker, and to one of ours."""
    behind = takewhile(lambda i: not i.mark, items[at + 1 : at + 1 + NEAR])
    to_one = any(i.horse or (i.piece is not None and i.piece.owners) for i in behind)
    by_me = not BY_ME.isdisjoint(items[at].text.split()) or _subject(items, at) < at
    return to_one and (by_me or _by_nobody_named(items, at))


def _by_nobody_named(items: Sequence[Item], at: int) -> bool:
    """As in "(the tap froze again) brought Fig in"; not in "could somebody bring Fig in", "Ruth brought Fig in"."""
    before = since_mark(items, at, REACH)
    asked = some_mean(before, "plan", "question", "afterwards", "please")
    return bool(before) and not (asked or before[-1].person or before[-1].has("i", "she", "kin", "is", "has", "helper"))


def _found(items: Sequence[Item], at: int) -> bool:
    """As in "Otto is cold", "Otto and Fig are done", "Otto's sheet is wet", "the cooler is soaked"."""
    piece = items[at].piece
    if items[at].horse or (piece is not None and piece.owners):
        last = at
        while piece is None and last + 2 < len(items) and items[last + 1].has("and") and items[last + 2].horse:
            last += 2
        return told_at_once(items, last)
    said = items[at + 1 : at + 3]
    return piece is not None and len(said) > 1 and said[0].has("is") and of_clothes(said[1])


def _talk_goes_on(items: Sequence[Item], at: int) -> bool:
    """As in "Trasgo y Olmo listos | ahora paro un poco", "Otto is cold | I'm off to the shop": of no horse any more."""
    if not at or items[at - 1].mark or items[at - 1].has(*LEADS, *LEADS_TO, *GOVERNS, "and"):
        return False
    if items[at].has("when", "if") or (items[at].has("she", "it", "of", "toward") and not items[at].has("question")):
        return False
    behind = list(takewhile(lambda i: not i.mark, items[at + 1 : at + 1 + REACH]))
    if not behind or not _begins_talk(items[at], behind) or some_mean(behind, *GOVERNS, "last night"):
        return False  # "pendant le transport l'an dernier"
    if some_mean(behind[:2], *UNSURE) or (len(behind) == 1 and not behind[0].means):
        return False  # "Otto is cold I'm kidding"
    if items[at - 1].has(*ASKS) and _asks_the_bot(items, at - 1):
        return next((i.text for i in items[at : at + REACH] if i.mark), "") != "?"  # "il reste qui | j'ai perdu le fil"
    near = items[max(0, at - NEAR) : at]
    done = some_mean(near, "all done") or (some_mean(near, "done") and any(i.horses for i in near))
    return bool(done or whole_before(items[:at])) and not any(
        i.horses or i.piece is not None or i.has("she", "it") or of_a_horse(i) for i in behind
    )


def _begins_talk(item: Item, behind: Sequence[Item]) -> bool:
    """As in "I'm off", "(the) gate needs", "who wants coffee", "and tomorrow I"."""
    if sum(len(i.text.split()) for i in (item, *behind)) < FEWEST:
        return False
    if item.has("and"):
        return behind[0].has("ahead") and some_mean(behind[1:3], "i")
    asks = item.has("question") and behind[0].has("plan", "afterwards") and not some_mean(behind, "her")
    return asks or item.has("subject", "i", "brings weather") or _unheard(behind[0])


def _enough(said: Sequence[Item]) -> bool:
    """As in "no queda pan", "il n'y a plus de pain": enough for a thought, of something that is no word of ours."""
    return sum(len(i.text.split()) for i in said) >= FEWEST and any(map(_unheard, said))


def _unheard(item: Item) -> bool:
    """A noun or a verb that no table knows: "(the) gate", "(who) wants", "(ahora) paro"."""
    return item.known and names_nothing(item) and item.means <= NOTHING_MORE


def _follows_talk(items: Sequence[Item], at: int) -> bool:
    """Whether what stands before it, up to a mark, is a thought of its own, of no horse, and does not lead to it."""
    before = since_mark(items, at, REACH)
    if items[at].has(*ASKS):
        return len(before) >= WHOLE
    few = len(before) < WHOLE and not (items[at].has(*DONE) and _enough(before))
    if few or any(i.horses or i.piece is not None or i.person for i in before):
        return False
    by_me = items[at].has("i") or not BY_ME.isdisjoint(items[at].text.split())  # "… are getting | I put the liner on"
    denied = () if by_me or not items[at].has(*DONE) else DENIES
    leads = before[-1].has(*(CONNECTS if by_me else LEADS))
    return not (leads or some_mean(before[-LATELY:], *LEADS_TO) or some_mean(before, *GOVERNS, *denied))
