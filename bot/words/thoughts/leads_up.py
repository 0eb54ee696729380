"""What only leads up to a report: "le chat manque de me faire tomber, et là je vois Perle qui grelotte".

A whole morning may be told in one breath. The report begins where the speaker comes upon a horse or a piece, or where
the tale comes to what it was about ("total que …"), if nothing of the barn's was spoken of before.
"""

from collections.abc import Sequence
from itertools import takewhile

from bot.words.lookup.items import Item, meanings_of, places, some_mean
from bot.words.thoughts.clauses import is_subject

UPON = frozenset(("comes upon",))
NOT_OF_NOW = frozenset(("habit", "long ago", "yesterday", "at an age", "some day"))
NOT_SO = frozenset(("plan", "not", "question", "for later", "undo", "guess"))  # "mañana veo a Canela"
SUPPOSED = frozenset(("if", "when"))  # "cuando veo a …", and "if the bus is late and I see …"
DEEDS = ("worked", "put on", "took off", "took", "swapped", "turned out", "brought in", "clipped", "done")
SMALL = ("article", "toward", "of", "relative", "what", "her", "link", "time", "for another", "subject", "i", *DEEDS)
LEAST = 4  # words of a tale
NEAR = 4  # words between the verb and whom it finds


def without_lead(sentence: Sequence[Item]) -> Sequence[Item]:
    """The sentence from what a tale comes upon; all of it where it is no tale, or is told of ours from the start."""
    for at in places(sentence, UPON):
        lead = sentence[:at]
        if any(i.horses or (i.piece is not None and i.piece.owners) for i in lead):
            return sentence
        if at >= LEAST and _of_now(lead, sentence[at]) and _named_at_once(sentence[at + 1 :]):
            return without_lead(sentence[at + 1 :])
    return sentence


def _of_now(lead: Sequence[Item], hinge: Item) -> bool:
    """Whether the tale is of no other day, and nothing in its last thought makes what follows a plan."""
    if not meanings_of(lead).isdisjoint(NOT_OF_NOW):
        return False
    if not hinge.has("said"):
        return True  # "anyway", "total que": what is told behind it is a thought of its own
    thought = list(takewhile(lambda i: not (i.mark or i.has("and", "but")), reversed(lead)))
    pauses = [at for at, i in enumerate(lead) if i.mark and not some_mean(lead[at + 1 : at + 2], "and")]
    since = lead[pauses[-1] :] if pauses else lead
    return meanings_of(thought).isdisjoint(NOT_SO) and meanings_of(since).isdisjoint(SUPPOSED)


def _named_at_once(behind: Sequence[Item]) -> bool:
    """As in "(je vois) que la couverture de Perle": a horse or a piece, behind nothing but small words."""
    subject = next((k for k, i in enumerate(behind[: NEAR + 1]) if is_subject(i)), NEAR + 1)
    return subject <= NEAR and all(i.has(*SMALL) for i in behind[:subject])
