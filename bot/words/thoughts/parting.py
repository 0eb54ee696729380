"""Words in the middle of a sentence that begin a new clause, and how: "and", "but", "if", "when", a deed, somebody."""

from collections.abc import Callable, Sequence
from functools import cache

from bot.words.heard.numbers import OF_ONE, OF_SEVERAL
from bot.words.lookup.items import NOTHING, Item, predicate
from bot.words.thoughts.begins import (
    LIST,
    begins_to_ask,
    both_worked,
    does_something,
    everyone_done,
    named_again,
    only_how,
    owned_piece_told,
    seen_there,
    stays_or_goes_on,
    tells_of_a_piece,
    the_rest_as_well,
    told_of_a_horse,
    told_of_one,
    would_be_else,
)
from bot.words.thoughts.came_for import dressed_instead, one_of_them, only_the_next, then_seen
from bot.words.thoughts.clauses import Thought, is_subject, soft
from bot.words.thoughts.hers import PLACES
from bot.words.thoughts.listed import goes_on
from bot.words.thoughts.now_otherwise import now_otherwise
from bot.words.thoughts.one_each import another_gets_one
from bot.words.thoughts.she_begins import she_begins
from bot.words.thoughts.whole import (
    complete,
    did_a_deed,
    dressed_before,
    dresses,
    ends_with_a_sign,
    of_another,
    placed_or_dressed,
    surely_done,
    wished_of_one,
    worn_with_it,
)

MOVES = ("brought in", "turned out", "took off", "put on", "stripped")
HOLDING = ("in", "under", "over", "of", "has", "said")  # "Pip in that is cold"
DONE_BY_SPEAKER = ("took off", "put on", "brought in", "turned out")
SPEAKER = ("i", "we", "j'", "je", "on", "le", "les", "lui", "leur")  # who does it, or to whom
THEM = ("la", "lo", "las", "los")
UNDONE = ("plan", "if", "guess", "not", "yesterday", "habit")  # with one of these, nothing was done
STAYS = "stays"  # the word begins nothing, whatever else it may mean


def parts(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """How a new clause begins at this word; None where none does."""
    for rule in rules_for(sentence[at].means):
        found = rule(sentence, at, current)
        if found is not None:
            return None if found == STAYS else found
    return None


def _here(sentence: Sequence[Item], at: int) -> tuple[Item, Item]:
    """The word here and the one behind it."""
    return sentence[at], sentence[at + 1] if at + 1 < len(sentence) else NOTHING


def _by_a_deed(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """What was done next: a piece put on or off, a strap broken, something afterwards."""
    item, following = _here(sentence, at)
    if item.has("bare") and complete(current) and following.horses:
        return ""  # "left Dolly in the purple blanket nothing on Duke"
    speaks = item.has(*DONE_BY_SPEAKER) and item.text.partition(" ")[0] in SPEAKER
    if speaks and complete(current) and not current.has("clipped"):  # "Pip's clipped, I gave him a trace"
        return ""  # "Molly has only her sheet now i took off the heavy", "tout est fait j'ai rentré Filou"
    if item.has("hung") and item.text.partition(" ")[0] in SPEAKER and complete(current):
        return ""  # "elle est trempée je l'ai accrochée dans son box"
    if dressed_instead(current, sentence[at:]):
        return "and"
    if item.has("leaves only") and dresses(current):
        return ""  # "enlevé la polaire de Lune reste que l'imper"
    if item.has("strap") and not current.pieces and complete(current) and tells_of_a_piece(sentence[at:]):
        return ""  # "Pip and Ned done leg strap snapped off the blue turnout"
    if item.has("afterwards") and (
        (ends_with_a_sign(current.items) and current.of_something) or current.has("all done")
    ):
        return "and"  # "Maple shivering will ring Ruth", "her liner is damp leave it"
    return None


def _by_somebody(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """A question put to people, or somebody who does something: "he", "I", "it"."""
    item, following = _here(sentence, at)
    if item.has("question") and complete(current) and begins_to_ask(sentence[at:]):
        return ","  # "Storm is dripping with sweat can someone check on him"
    if item.has("subject") and complete(current) and she_begins(sentence, at):
        return STAYS if seen_there(current.items, sentence[at:]) else ""  # "put the sheet on Pip shes fine"
    is_so = item.has("it") and (item.has("is") or following.has("is"))
    if is_so and complete(current) and (placed_or_dressed(current) or current.has("drying")):
        holds = current.items[-1].has(*HOLDING) or current.items[0].has("under")  # "sous la 250 de Lune c'est sec"
        return STAYS if holds else ""  # "took the sheet off Pip it's soaked", "Pip reste dedans c'est gelé"
    if item.has("not behind") and current.items and current.items[-1].kinds("sign"):
        return STAYS  # "Lou tremble plus"
    return None


def _by_a_link(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """As in "…, but", "except", "if", "as", "when"."""
    item, following = _here(sentence, at)
    if item.has("very") and at and sentence[at - 1].has("is") and (predicate(following) or not following.means):
        return STAYS  # "Pip's so wet you could wring him out", "would look so cute with a clip"
    if item.has("when") and item.has("but") and following.has("and"):
        return STAYS  # "Molly's good though and her sheet is dry"
    if item.has("except") and current.has("everyone", "all", "all horses", "all done"):
        return "but" if _told_of_the_excepted(sentence[at + 1 :], current) else STAYS
    if item.has("in case") and current.items and surely_done(current):
        return "if"  # "he's in his heavy just in case"
    if item.has("if") and current.items:  # "est sèche si vous voulez la reprendre"
        return "if" if complete(current) and (current.told or _paused(sentence, at)) else STAYS
    behind_pause = not current.items and at > 0  # ", as he was cold"
    because = (_somebody(following) and not item.has("hour")) or tells_of_a_piece(sentence[at + 1 :])
    if item.has("else") and would_be_else(sentence[at + 1 : at + 4]) and (dresses(current) or current.has(*MOVES)):
        return "if"  # "mis la polaire à Lune sinon elle a froid"
    if item.has("reason") and (behind_pause or complete(current)) and because:
        return "but"  # "put her sheet on as it was spitting", "… as her own one is wet"
    if item.has("when") and (complete(current) or dresses(current)):
        return "when"
    if (
        item.has("but")
        and item.has("link")
        and current.items
        and (current.items[-1].has("guess") or current.has("tells"))
    ):
        return STAYS  # "creía que Tormenta estaba sudada", "me contó Paco que Canela sudó"
    if item.has("but") and item.has("link") and current.items and _unheard_thing(current.items[-1]):
        return STAYS  # "cerrar el grifo que se congela"
    if (
        item.has("but")
        and not item.has("and")
        and _only_horse(current)
        and (following.has("is", "has") or following.kinds("sign"))
    ):
        return STAYS  # "Prince par contre est trempé", "Trueno en cambio suda"
    if item.has("but") and not item.has("and"):
        adds = item.has("too") and at + 1 < len(sentence) and predicate(sentence[at + 1])  # "his heavy also dry"
        return "but" if current.items and not adds else STAYS
    return None


def _by_what_was_seen(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """As in "sacando a Luna he visto que Brisa tirita": of another than the one named before it."""
    opens = all(i.horses or i.has("and", "article") for i in current.items)  # "Pip checked Ned checked"
    return "and" if not opens and then_seen(current, sentence[at + 1 :]) else None


def _by_and(sentence: Sequence[Item], at: int, current: Thought) -> str | None:
    """As in "… and" with another thought behind it."""
    item, following = _here(sentence, at)
    if item.has("too") and (item.has("and") or item.text.startswith("and ")) and complete(current):
        return STAYS if worn_with_it(sentence[at + 1 :], current) else "and"  # "her sheet is wet and so is the liner"
    if not item.has("and") or (item.has("beside", "over") and following.has("article")):
        return None  # "junto a la valla"
    if _one_in_passing(sentence, at, current):
        return "and"  # "fui a por Luna y Brisa está sudando"
    if named_again(sentence[at + 1 :], current):
        return "and"  # "Otto kicked Pip and now Pip won't eat"
    if current.spoken and current.items[0].has("it") and following.has("subject"):
        return "and"  # "it's on the rack and he's in the tartan"
    if current.has("hung") and following.has("subject") and following.has("she"):
        return "and"  # "I hung it up to dry and he's in his medium now"
    begins = following.has("put on", "took off", "took") or following.horses
    if begins and not item.has("has", "wears") and (_something_done(current) or _took_next(following, current)):
        return "and"  # "he pasado antes de ir al trabajo y le he puesto …", "i got there late and Dolly felt cold"
    if following.has("put on", "took off") and complete(current) and of_another(current, sentence[at + 2 :]):
        return "and"  # "Maple is sweating and put the heavy on June"
    if current.pieces and following.has("it") and following.has("put on", "took off"):
        return "and"  # "traje la manta roja y se la puse a Nube"
    if (current.horses or dresses(current)) and not current.told and _moves_her(following):
        return "and"  # "he cogido a Lola y la he metido", "le puse la capa y lo metí"
    if current.told and not current.of_something and following.has(*MOVES):
        return "and"  # "(saqué a Moro,) tenía tembleque y lo volví a meter"
    pure = not item.has("has", "wears")
    if pure and wished_of_one(current, sentence[at + 1 :]):
        return "and"
    if current.told and everyone_done(sentence[at + 1 :]):
        return "and"  # "(Lola) ha entrado en calor y todos los caballos hechos ya"
    if pure and current.of_something and did_a_deed(current) and _of_one(sentence[at + 1 :]):
        return "and"  # "llego a montar a Luna y Canela está muy caliente"
    if following.has("the rest") and the_rest_as_well(current, sentence[at + 1 :]):
        return STAYS
    if _goes_with_it(sentence, at, current) or worn_with_it(sentence[at + 1 :], current):
        return STAYS
    of_nothing_yet = current.items and not (current.of_something or item.has("has", "wears"))
    if of_nothing_yet and (told_of_a_horse(sentence[at + 1 :]) or owned_piece_told(sentence[at + 1 :])):
        return "and"  # "he pasado antes de trabajar y Pelayo está bien", "… y la gorda de Pelayo está rota"
    if current.told and not current.of_something and does_something(sentence[at + 1 :]):
        return "and"  # "(la morada) está mojada y Perla ha dado la clase"
    if dresses(current) and (owned_piece_told(sentence[at + 1 :]) or stays_or_goes_on(sentence[at + 1 :])):
        return "and"  # "le quité la manta y el forro de Lucero sigue húmedo"
    if dressed_before(sentence, at, current) or (
        dresses(current) and another_gets_one(sentence[at + 1 :], current.items)
    ):
        return "and"  # "a Lola le puse la capa verde y a Canela la negra"
    if not item.has("has", "wears"):
        return "and" if complete(current) and not goes_on(sentence, at) else STAYS
    return None


Rule = Callable[[Sequence[Item], int, Thought], str | None]
RULES: tuple[tuple[frozenset[str], Rule], ...] = (
    (frozenset(("bare", "leaves only", "strap", "afterwards", "hung", *DONE_BY_SPEAKER)), _by_a_deed),
    (frozenset(("question", "subject", "it", "not behind")), _by_somebody),
    (frozenset(("except", "if", "in case", "reason", "when", "but")), _by_a_link),
    (frozenset(("and", "too")), _by_and),
    (frozenset(("said", "state found")), _by_what_was_seen),
    (frozenset(("as of now",)), now_otherwise),
)


@cache
def rules_for(means: frozenset[str]) -> tuple[Rule, ...]:
    """The rules for a word of these meanings; none for most words."""
    return tuple(rule for words, rule in RULES if not words.isdisjoint(means))


def _of_one(rest: Sequence[Item]) -> bool:
    """As in "(montar a Luna) y Canela está muy caliente": told of one, not of two in a list."""
    verb = next((i for i in rest if not (i.horses or i.has("article", "time"))), NOTHING)
    return told_of_one(rest) and verb.text in OF_ONE


def _moves_her(item: Item) -> bool:
    """As in "la he metido", "lo saqué": the horse that was spoken of, by a pronoun."""
    return item.has("brought in", "turned out") and item.text.partition(" ")[0] in THEM


def _one_in_passing(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """Whether what follows is told of one horse, and not of those named before it."""
    if not (current.horses or current.pieces):
        return False
    _, following = _here(sentence, at)
    behind = sentence[at + 1 :]
    seen = following.has("said") and then_seen(current, behind[1:])
    return seen or dressed_instead(current, behind) or only_the_next(current, behind) or one_of_them(current, following)


def _goes_with_it(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """As in "Pip bare and fine", "au pré Mirabelle et Toundra ont froid"."""
    behind = sentence[at + 1 :]
    if current.items and not current.told and (both_worked(current, behind) or _more_of_the_body(current, behind)):
        return True
    return _both_there(sentence, at, current) or (current.has("bare") and only_how(behind))


def _more_of_the_body(current: Thought, behind: Sequence[Item]) -> bool:
    """As in "trouvé Lune avec le dos et les épaules froids"."""
    return current.items[-1].has("body") and next((i for i in behind if not i.has("article")), NOTHING).has("body")


def _both_there(sentence: Sequence[Item], at: int, current: Thought) -> bool:
    """Whether the place that opens is of two horses, as the verb is: not in "au pré Lune et Toundra a froid"."""
    if current.told or not (current.horses and current.has(*PLACES)):
        return False
    opening = (i for i in current.items if not i.has("but", "polite", "in", "article") or i.has(*PLACES))
    first = next(opening, NOTHING)
    if not (first.has(*PLACES) and current.items[-1].horses and at + 2 < len(sentence)):
        return False
    verb = next((i for i in sentence[at + 2 : at + LIST] if not (i.horses or i.has("and"))), NOTHING)
    return bool(sentence[at + 1].horses) and verb.text.partition(" ")[0] in OF_SEVERAL


def _unheard_thing(item: Item) -> bool:
    return not (item.means or item.mark or item.person or is_subject(item))


def _only_horse(current: Thought) -> bool:
    return bool(current.horses) and all(i.horses or i.has("article", "polite") for i in current.items)


def _something_done(current: Thought) -> bool:
    """What somebody did, of no horse and no piece."""
    return not current.of_something and current.has("brought", "i", "felt", "had")


def _took_next(following: Item, current: Thought) -> bool:
    """As in "fed the cats and took Maple's sheet off": a deed that is over, behind words of nothing that is ours."""
    took = following.has("took") and not following.has("took off", "put on")
    return took and not current.of_something and current.means.isdisjoint(UNDONE)


def _somebody(item: Item) -> bool:
    return item.has("she", "it", "subject", "i") or bool(item.horses)


def _told_of_the_excepted(rest: Sequence[Item], current: Thought) -> bool:
    """As in "everyone fine but Otto is cold": the others were told of before, what follows is told of this one."""
    after = next((k for k, i in enumerate(rest) if not (i.horses or i.has("and", "article") or i.text == ",")), 0)
    while 0 < after < len(rest) and (rest[after].has("is", "she", "relative") or soft(rest[after])):
        if predicate(rest[after]):
            break
        after += 1
    told = 0 < after < len(rest) and predicate(rest[after])
    return told and current.told


def _paused(sentence: Sequence[Item], at: int) -> bool:
    return (at > 0 and sentence[at - 1].mark) or sentence[at].has("but")
