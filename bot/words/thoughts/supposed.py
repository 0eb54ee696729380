"""Clauses that are no news: a condition, what is still to come, what was said before, what is long over."""

from bot.words.lookup.items import all_mean, names_nothing, predicate, some_mean
from bot.words.thoughts.clauses import Clause
from bot.words.thoughts.no_report import MAY_BLOCK, no_report, of_its_youth

BEFORE = ("before", "antes de", "avant de", "avant d'")  # and what is still to come
ALWAYS = frozenset(("always", "siempre", "toujours"))
HEADING = 4  # words
HOLDS = (  # what holds for the next thought as well, or may be of a horse
    "if", "when", "some day", "long ago", "yesterday", "weekday", "guess", "told by", "tells", "said", "everyone",
    "all horses", "she", "her", "for later", "heading", "story",
)  # fmt: skip
# without one of these in it, or "when" behind it, a clause is news
NO_NEWS = MAY_BLOCK | {"undo", "when", "if", "for later"}


def no_news(clause: Clause, following: Clause | None) -> bool:
    """Whether nothing that stands in this clause is so now."""
    if no_report(clause):
        return True
    if following is not None and (_dated_behind(following) or _at_every_time(following) or _always(clause, following)):
        return True
    if clause.has("for later") and _only_heads(clause):
        return True  # "for tonight: Otto in his heavy"
    return clause.has("undo", "when") and (_of_what_was_said(clause) or _only_until(clause))


def supposes(clause: Clause) -> bool:
    """As in "if he shivers", "when I turn him out"; not "when I felt under her rug at seven", which is over."""
    if not clause.items or not clause.items[0].has("when", "if"):
        return False
    if clause.has("was"):
        return clause.items[0].has("habit")  # "whenever it was cold"
    return clause.items[0].has("if") or not (clause.has("felt") and some_mean(clause.items[1:2], "i"))


def _only_until(clause: Clause) -> bool:
    """As in "don't rug Otto until he's dry": what he is said to be is still to come."""
    if not clause.has("when"):
        return False
    until = next((k for k, i in enumerate(clause.items) if i.has("when") and not i.has("link", "was")), 0)
    how = [k for k, i in enumerate(clause.items) if predicate(i)]
    return 0 < until < min(how, default=0) and not clause.has("was")


def _of_what_was_said(clause: Clause) -> bool:
    """As in "forget what I said about Otto being wet": which words are meant, and no news of him."""
    if not clause.has("undo"):
        return False
    undone = next((k for k, i in enumerate(clause.items) if i.has("undo")), len(clause.items))
    behind = clause.items[undone + 1 : undone + 3]
    return len(behind) > 1 and behind[0].has("of", "hour") and bool(behind[1].horses)


def _dated_behind(following: Clause) -> bool:
    """As in "Otto was always cold (when he was a foal)", "… shivered one night(, last week)"."""
    then = following.joined == "," and all_mean(following.items, "long ago", "yesterday", "article")
    return then or (following.joined == "when" and of_its_youth(following))


def _only_heads(clause: Clause) -> bool:
    """As in "for tonight:", "consignes pour ce soir :": when it is to be, and nothing of a horse or a piece."""
    words = [i for i in clause.items if not i.mark]
    nouns = all(not (i.means or i.horses or i.piece) or i.has("article", "of") for i in words[:-1])
    return nouns and len(words) <= HEADING and words[-1].has("for later")


def _at_every_time(following: Clause) -> bool:
    """As in "Otto sweats (every time he sees the vet)", "suda (siempre que ve al veterinario)": a habit."""
    return following.joined in ("when", "if") and following.items[0].has("habit")


def _always(clause: Clause, following: Clause) -> bool:
    """As in "Lune est toujours trempée (quand il pleut)"; alone, she still is."""
    return following.joined == "when" and any(not ALWAYS.isdisjoint(i.text.split(" ")) for i in clause.items)


def hangs(clause: Clause) -> bool:
    """Whether a clause that reports nothing holds for what follows; "fini les box, Max rentré" does not."""
    if (clause.items[0].has("heading") and len(clause.items) == 1) or _done_before(clause):
        return False
    if clause.has("quoted"):
        return not clause.horses
    if _of_something_else(clause):
        return False
    idle = clause.has("idiom") and not clause.has("if", "plan", "habit", "guess")
    return not (clause.horses or idle) or clause.has("if", "plan", "weekday", "yesterday", "long ago")


def _of_something_else(clause: Clause) -> bool:
    """As in "my car won't start again", "les enfants n'ont pas école demain": a thought of its own, of none of ours."""
    if clause.horses or clause.pieces or clause.has(*HOLDS):
        return False
    opens = clause.items[0]
    theirs = clause.has("kin", "thing", "visitor", "shop", "animal", "broken")
    if theirs or (opens.has("i") and not opens.has("subject", "my")):
        return True
    return not clause.has("afterwards") and any(i.known and not i.means and names_nothing(i) for i in clause.items)


def _done_before(clause: Clause) -> bool:
    """As in "he pasado antes de llevar a los niños", "popped in before taking the kids to school": that is over."""
    if not clause.has("when"):
        return False
    until = next((k for k, i in enumerate(clause.items) if k and i.text in BEFORE), 0)
    return until > 0 and not any(i.has(*MAY_BLOCK) for i in clause.items[:until])
