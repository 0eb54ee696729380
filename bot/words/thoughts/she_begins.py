"""A pronoun in the middle of a sentence that begins a thought of its own: "it is wet he is shaking"."""

from collections.abc import Sequence

from bot.words.lookup.items import Item, predicate, some_mean


def she_begins(sentence: Sequence[Item], at: int) -> bool:
    """Whether a pronoun begins a thought of its own here: "it is wet he is shaking", not "says he is"."""
    before, after = sentence[at - 1], sentence[at + 1] if at + 1 < len(sentence) else None
    if before.has("inwards", "outwards") and some_mean(sentence[:at], "brought", "took"):
        return sentence[at].has("she")  # "brought Willow in shes soaked"
    if before.has("when", "if", "what", "question", "and", "but", "said", "not", "of", "in", "on", "after", "over"):
        return False
    if before.has("is", "was") and not before.mark:
        return False  # "how is she"
    verbs = ("is", "was", "has", "helper", "put on", "took", "took off", "plan", "worked", "brought", "swapped")
    if after is not None and after.has("guess") and some_mean(sentence[at + 2 : at + 3], "what"):
        return True  # "Quartz a froid je sais pas quoi faire"
    runs_on = len(sentence[at].text) > 2 and " " not in sentence[at].text and sentence[at].raw.endswith("s")
    if runs_on or (after is not None and (after.has(*verbs, "turned out", "brought in") or predicate(after))):
        return True
    if after is not None and after.has("after") and " " in after.text:
        return True  # "polaire mise il sort de cours trempé"
    if before.has("all done") and sentence[at].has("i"):
        return True  # "tout le monde est fait je remonte"
    before = next((i for i in reversed(sentence[:at]) if not i.has("time")), before)
    told = before.horses or before.piece is not None or predicate(before) or before.has("place stall", "place field")
    return bool(told) and sentence[at].has("she") and not sentence[at].has("her")  # "… au box elle boitait pas"
