"""Shivering that no grammar caught: danger that is missed harms more than a sentence taken too plainly.

Only where a message names one horse for certain and says shivering, with nothing in it that denies, asks, supposes,
plans or dates it: "Had to bring Gus in, shivering".
"""

from collections.abc import Sequence

from bot.events import Seen
from bot.words.items import Item

LONGEST = 25  # words; in a longer tale it may be anybody who shivers
BLOCKS = (
    "not", "no", "stopped", "not any more", "if", "when", "was", "plan", "habit", "yesterday", "long ago", "weekday",
    "guess", "said", "what", "question", "idiom", "i", "visitor", "but", "neither", "mass",
)  # fmt: skip


def shivering(items: Sequence[Item]) -> Seen | None:
    """The sign, where it can be nobody else's and nothing else."""
    words = [item for item in items if not item.mark]
    horses = {name for item in words for name in item.horses}
    sure = [item for item in words if item.horse and item.exact]
    if len(words) > LONGEST or len(horses) != 1 or len(sure) != 1:
        return None
    if not any(item.has("sign shivering") for item in words) or any(item.has(*BLOCKS) or item.person for item in words):
        return None
    if any(item.mark and item.raw in "?¿" for item in items):
        return None
    return Seen(sure[0].horses[0], "shivering")
