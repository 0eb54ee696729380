"""Shivering that no grammar caught: danger that is missed harms more than a sentence taken too plainly.

Only where a message names one horse for certain and then says shivering, with nothing before that which denies, asks,
supposes, plans or dates it: "Had to bring Gus in, shivering".
"""

from collections.abc import Sequence

from bot.events import Seen, Sign
from bot.words.clauses import soft
from bot.words.items import Item
from bot.words.meaning import Ask

SHORT = 6  # words that say no more than that somebody shivers
LONGEST = 25  # words; in a longer tale it may be anybody who shivers
BLOCKS = (
    "not", "no", "stopped", "not any more", "if", "when", "was", "plan", "habit", "yesterday", "long ago", "weekday",
    "guess", "what", "idiom", "i", "visitor", "but", "neither", "mass",
)  # fmt: skip


def who_shivers(items: Sequence[Item], horses: Sequence[str]) -> Ask | None:
    """As in "she's shivering", "the bay mare is shivering", of nobody named: asked, for one may be in danger.

    Who sweats is asked as well, where no more than that is said.
    """
    return _who(items, horses, "shivering") or _who(items, horses, "sweating")


def _who(items: Sequence[Item], horses: Sequence[str], sign: Sign) -> Ask | None:
    words, at = _up_to_it(items, sign)
    if (
        at < 0
        or any(i.horses for i in words)
        or _blocked(words[:at])
        or words[at].has("was")
        or words[0].has("question")
    ):
        return None
    told = words[: at + 1]
    some = sign == "shivering" and any(i.has("a horse") for i in told)
    small = len(words) <= SHORT and all(i.has(f"sign {sign}") or soft(i) for i in words)
    if not (some or (small and any(i.has("she", "is") for i in told))) or _asked(items, sign):
        return None
    return Ask("horse", words[at].raw, tuple(horses), (Seen("", sign),))


def shivering(items: Sequence[Item]) -> Seen | None:
    """The sign, where it can be nobody else's and nothing else: one horse named, then that it shivers."""
    words, at = _up_to_it(items)
    named = [k for k, item in enumerate(words) if item.horses]
    if at < 0 or len(named) != 1 or len(words) > LONGEST:
        return None
    horse = words[named[0]]
    told = [i for k, i in enumerate(words[: at + 1]) if not (i.has("she") and k and words[k - 1].horses)]
    if not (horse.horse and horse.exact) or named[0] > at or _blocked(told) or words[0].has("question"):
        return None
    return None if _asked(items) else Seen(horse.horses[0], "shivering")


def _up_to_it(items: Sequence[Item], sign: Sign = "shivering") -> tuple[list[Item], int]:
    """The words, and the place of the one that says this sign; −1 where none does."""
    words = [item for item in items if not item.mark]
    return words, next((k for k, item in enumerate(words) if item.has(f"sign {sign}")), -1)


def _blocked(words: Sequence[Item]) -> bool:
    return any(item.person or (item.has(*BLOCKS) and not (item.has("said") or item.horses)) for item in words)


def _asked(items: Sequence[Item], sign: Sign = "shivering") -> bool:
    """Whether the message asks: a question mark right behind the word that says this sign."""
    at = next((k for k, item in enumerate(items) if item.has(f"sign {sign}")), -1)
    return any(item.mark and item.raw in "?¿" for item in items[max(0, at - 1) : at + 2]) or items[0].raw == "¿"
