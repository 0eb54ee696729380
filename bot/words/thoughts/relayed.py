"""What others tell of how it was: "Tom reckons Molly was sweaty" is no report, "Sam checked Molly, she was cold" is."""

from bot.words.lookup.items import DANGER, places, some_mean
from bot.words.thoughts.clauses import Clause

SAYS = frozenset(("tells", "told by"))
OUTSIDERS = ("kin", "shop", "visitor")  # "someone at the feed shop reckons Pip was shivering"
LOOKED = (  # how what somebody found out for himself begins
    "checked", "just checked", "has checked", "reviso", "ha revisado", "miro", "ha mirado", "a verifie", "a controle",
    "a palpe", "a checke",
)  # fmt: skip
SAW = ("saw", "seen", "vio", "ha visto", "a vu")
LOOKED_SO = ("looked", "seemed", "felt")
TO_ME = ("me", "nos", "m'", "nous")  # "me contó Paco que …"


def told_of_then(clause: Clause) -> bool:
    """As in "Tom reckons Molly was sweaty", "selon Tom elle avait froid": what others tell of what was; but danger."""
    if not clause.has(*SAYS) or (clause.has(*DANGER) and not clause.has(*OUTSIDERS)):
        return False
    says = places(clause.items, SAYS)[0]
    word = clause.items[says]
    if any(word.text.startswith(looked) for looked in LOOKED):
        return False  # "Sam checked Pip and he was cold"
    before = clause.items[says - 1] if says else word
    somebody = says > 0 and not (before.has("i") and before.has("subject"))
    by_another = somebody or word.has("told by") or word.text.partition(" ")[0] in TO_ME
    then = clause.items[says + 1 :]
    seen = clause.has(*OUTSIDERS) and any(i.text in SAW for i in then)  # "la vecina dice que vio a Trueno sudando"
    return by_another and (seen or some_mean(then, "was") or any(i.text in LOOKED_SO for i in then))
