"""Shivering that no grammar caught: danger that is missed harms more than a sentence taken too plainly.

Only where a message names one horse for certain and says shivering, with nothing in it that denies, asks, supposes,
plans or dates it: "Had to bring Gus in, shivering".
"""

from collections.abc import Sequence

from bot.events import Seen
from bot.words.clauses import soft
from bot.words.items import Item
from bot.words.meaning import Ask

SHORT = 6  # words that say no more than that somebody shivers
LONGEST = 25  # words; in a longer tale it may be anybody who shivers
BLOCKS = (
    "not", "no", "stopped", "not any more", "if", "when", "was", "plan", "habit", "yesterday", "long ago", "weekday",
    "guess", "said", "what", "idiom", "i", "visitor", "but", "neither", "mass",
)  # fmt: skip


def who_shivers(items: Sequence[Item], horses: Sequence[str]) -> Ask | None:
    """As in "she's shivering", of nobody named before: asked at once, for one of them may be in danger."""
    words = [item for item in items if not item.mark]
    small = len(words) <= SHORT and all(i.has("sign shivering") or soft(i) for i in words)
    if not small or not any(i.has("sign shivering") for i in words) or any(i.has(*BLOCKS) for i in words):
        return None
    if not any(i.has("she", "is") for i in words) or any(i.mark and i.raw in "?¿" for i in items):
        return None
    said = next(i.raw for i in words if i.has("sign shivering"))
    return Ask("horse", said, tuple(horses), (Seen("", "shivering"),))


def shivering(items: Sequence[Item]) -> Seen | None:
    """The sign, where it can be nobody else's and nothing else."""
    words = [item for item in items if not item.mark]
    horses = {name for item in words for name in item.horses}
    sure = [item for item in words if item.horse and item.exact]
    if len(words) > LONGEST or len(horses) != 1 or len(sure) != 1:
        return None
    told = [item for k, item in enumerate(words) if not (item.has("she") and k and words[k - 1].horses)]  # "Pip who is"
    if not any(item.has("sign shivering") for item in words) or any(item.has(*BLOCKS) or item.person for item in told):
        return None
    if any(item.mark and item.raw in "?¿" for item in items) or words[0].has("question"):
        return None
    return Seen(sure[0].horses[0], "shivering")
