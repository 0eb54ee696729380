"""What others tell of how it was: "Tom reckons Molly was sweaty" is no report, "Sam checked Molly, she was cold" is."""

from bot.words.lookup.items import DANGER, places, some_mean
from bot.words.thoughts.clauses import Clause

SAYS = frozenset(("tells", "told by"))
OUTSIDERS = ("kin", "shop", "visitor")  # "someone at the feed shop reckons Pip was shivering"
LOOKED = (  # how what somebody found out for himself begins
    "checked", "just checked", "has checked", "reviso", "ha revisado", "miro", "ha mirado", "a verifie", "a controle",
    "a palpe", "a checke",
)  # fmt: skip
THINKS = ("thinks", "reckons", "cree", "piensa", "pense", "croit", "trouve")
SAW = ("saw", "seen", "vio", "ha visto", "a vu")
LOOKED_SO = ("looked", "seemed", "felt")
HEARD = ("heard", "just heard")
TO_ME = ("me", "nos", "m'", "nous")  # "me contó Paco que …"


def heard_of(clause: Clause) -> bool:
    """As in "heard Pip was cold": by hearsay; "heard Pip coughing" is heard with one's own ears."""
    words = [i for i in clause.items if not i.has("i", "polite", "time")]
    return len(words) > 2 and words[0].text in HEARD and bool(words[1].horses) and words[2].has("is", "was")


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
    outside = clause.has(*OUTSIDERS)  # "la vecina dice que vio a Trueno sudando", "my friend thinks Pip is cold"
    seen = outside and (word.text.startswith(THINKS) or any(i.text in SAW for i in then))
    return by_another and (seen or some_mean(then, "was") or any(i.text in LOOKED_SO for i in then))
