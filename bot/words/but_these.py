"""All but these, said as what they are not yet: "tous finis, seulement Filou pas encore", "all done, only Ty not"."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import takewhile

from bot.words.items import Item

NOT_YET = ("not", "nearly", "stays")  # "pas encore", "reste"
SMALL = ("link", "time", "is", "polite")


def as_excepted(sentence: Sequence[Item]) -> Sequence[Item]:
    """The sentence with these left out in one word, as in "all done except Ty"; any other as it is."""
    at = next((k for k, i in enumerate(sentence[:-1]) if i.has("only", "except") and sentence[k + 1].horses), 0)
    if not any(i.has("everyone", "all horses", "all done") for i in sentence[:at]):
        return sentence
    end = at + 1
    while end < len(sentence) and (sentence[end].horses or sentence[end].has("and") or sentence[end].text == ","):
        end += 1
    behind = list(takewhile(lambda i: not i.mark, sentence[end:]))
    if not any(i.has(*NOT_YET) for i in behind) or not all(i.has(*NOT_YET, *SMALL) for i in behind):
        return sentence
    left_out = replace(sentence[at], means=frozenset({"except"}))
    return [*sentence[:at], left_out, *sentence[at + 1 : end], *sentence[end + len(behind) :]]
