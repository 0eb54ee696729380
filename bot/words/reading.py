"""Reading: a message, sentence by sentence, in the language it seems to be written in."""

from collections.abc import Sequence
from functools import partial

from bot.barn import Barn, Person
from bot.state import State
from bot.words.as_meant import as_meant, as_named
from bot.words.lookup.items import DANGER, Item, meanings_of, predicate
from bot.words.lookup.lexicon import lexicon
from bot.words.lookup.names import roster
from bot.words.lookup.tokens import Token
from bot.words.meaning import Heard, Reference
from bot.words.thoughts.around import SEEN_THERE, of_where, seen_where
from bot.words.thoughts.asides import BESIDE, without_asides, without_neighbours, without_opening
from bot.words.thoughts.asking import asked_to_keep, asks, seen_when
from bot.words.thoughts.but_these import EVERY, as_excepted
from bot.words.thoughts.clauses import CLIPS, Clause, gathered
from bot.words.thoughts.cutting import cut
from bot.words.thoughts.leads_up import without_lead
from bot.words.thoughts.no_report import in_the_past, of_its_youth, only_yesterday
from bot.words.thoughts.sentences import sentences
from bot.words.thoughts.supposed import NO_NEWS, hangs, no_news, supposes
from bot.words.thoughts.topics import beyond
from bot.words.told.asked_beside import asked_about, question_first, question_last, told_behind_a_request, two_questions
from bot.words.told.choices import answered, corrected_reply
from bot.words.told.done import ROUND, read_done, without_excuse
from bot.words.told.doubts import asked_which, sweat_or_rain
from bot.words.told.elided import same
from bot.words.told.last_words import last_words
from bot.words.told.overlooked import danger, who_shivers
from bot.words.told.placed import moved_in_its_clothes, read_place
from bot.words.told.put_right import puts_right
from bot.words.told.questions import read_question
from bot.words.told.reasons import WANTED, reason_behind, wanted_of
from bot.words.told.routine import WISHES, read_clip, read_wish, read_work
from bot.words.told.second_thoughts import read_anew, thoughts
from bot.words.told.signs import read_signs
from bot.words.told.states import puts_on_a_strap, strap_told
from bot.words.told.telling import Telling, named
from bot.words.told.then_and_now import of_another_day
from bot.words.told.things import thing_since
from bot.words.told.thread import (
    any_of,
    but_one,
    in_the_stalls,
    leads_elsewhere,
    of_another_animal,
    of_kin,
    of_people,
    only_heads,
    spoken_of,
    supposed_of,
    told_all_the_same,
    where_they_stand,
    with_owner,
)
from bot.words.told.undoing import UNDOING, take_back, undoes
from bot.words.told.wear import read_wear
from bot.words.typed.languages import languages
from bot.words.typed.scan import tokens_of

BESIDE_OTHERS = BESIDE | EVERY  # beside whom one stands, and who is left out of all
TURNING = UNDOING | WANTED  # what was said is taken back, or has its reason behind it
# what may make a clause no news, and what may be told of the round, and of where a clause is: most have none of them
MAY_BE_UNTOLD = NO_NEWS | WISHES | {"some day", "yesterday"}
THEN = frozenset(("long ago", "yesterday"))
ROUTINE = ROUND | CLIPS | {"swapped", "put right"}
WHEREABOUTS = frozenset(("place stall", "place field", "work", "worked"))
ASKED = Item("?", "?", mark=True)
LONGEST = 8000  # characters; more is no report from a barn


def read(text: str, person: Person | None, barn: Barn, state: State, reply: Reference | None = None) -> Heard:
    """What `text` means when `person` says it in this barn as it is now. None: somebody not listed.

    No permission is looked at. reply: what the message answers. It never guesses a horse: where it is not sure it asks.
    """
    names = roster(barn)
    tokens = tokens_of(text[:LONGEST], names)
    for language in languages(tokens, names, person):
        telling = Telling(person, barn, state, names, reply or Reference(), text)
        heard = _read(text, tokens, language, telling)
        if not heard.chatter:
            return heard
    return Heard(text, chatter=True)


def _read(text: str, tokens: list[Token], language: str, telling: Telling) -> Heard:
    reply = telling.reply
    words = lexicon(language)
    settled = as_named(tokens, words, telling)
    if (topic := beyond(settled)) is not None:
        return Heard(text, events=(topic,))
    items = as_meant(settled, words, telling)
    if reply.ask is not None:
        heard = answered(text, reply.ask, items, telling)
        if heard is not None:
            return heard
    heard = corrected_reply(text, items, telling)
    if heard is not None:
        return heard
    telling.who = named(reply.horses) if len(reply.horses) <= 1 else any_of(reply.horses)
    telling.piece = reply.garments if len(reply.garments) == 1 else ()
    telling.last = "piece" if telling.piece else "horse"
    command = text.lstrip().startswith("/")
    placed, graves = not items.means.isdisjoint(SEEN_THERE), not items.means.isdisjoint(DANGER)
    told: list[Item] = []  # without what was asked or is of something else: "anyone in the barn? Pip is sweating"
    untold: list[tuple[Sequence[Item], bool]] = []  # sentences with a word of danger that told nothing
    for sentence, marked in sentences(items):
        before = len(telling.events)
        tells = _read_thoughts(sentence, telling, marked=marked, asking=marked or command)
        if placed and not marked and (tells or of_where(sentence)):
            told.extend(sentence)
            telling.about_one(before, seen_where(sentence))
        if graves and not tells:
            untold.append((sentence, marked))
    if placed and telling.events:
        telling.about_one(0, seen_where(told))
    if telling.events or telling.ask is not None:
        _tell_danger(untold, telling)
    events = last_words(telling) if telling.events else ()
    ask = telling.settled_ask()
    if not events and ask is None:
        asked = any(marked and asks(sentence, marked=False) for sentence, marked in untold)
        grave = None if asked else danger(items)
        if grave:
            return Heard(text, events=(grave,))
        ask = who_shivers(items, telling.roster)
    return Heard(text, events=events, ask=ask, chatter=not events and ask is None)


def _read_thoughts(sentence: Sequence[Item], telling: Telling, *, marked: bool, asking: bool) -> bool:
    """Whether a sentence tells anything, read thought by thought."""
    before = (len(telling.events), telling.ask)
    for thought, anew in thoughts(sentence):
        read = partial(_in_full, telling=telling, marked=asking)
        if anew:
            read_anew(thought, telling, read)
        else:
            read(thought)
    if sweat_or_rain(sentence) and not asks(sentence, marked=marked):
        asked_which(sentence, telling)
    return (len(telling.events), telling.ask) != before


def _tell_danger(untold: Sequence[tuple[Sequence[Item], bool]], telling: Telling) -> None:
    """Shivering or illness that no grammar caught, beside what other sentences tell."""
    if telling.text.lstrip().startswith("¿"):
        return
    for sentence, marked in untold:
        said = [*sentence, ASKED] if marked else sentence
        seen = None if undoes(said) else danger(said)
        if seen is not None:
            telling.say(seen)


def _in_full(sentence: Sequence[Item], telling: Telling, *, marked: bool) -> None:
    """One sentence, without what only leads up to it."""
    told = without_asides(without_opening(sentence if marked else without_lead(sentence)))
    if not meanings_of(told).isdisjoint(BESIDE_OTHERS):
        told = as_excepted(without_neighbours(told))
    read_sentence(told, telling, marked=marked)


def read_sentence(sentence: Sequence[Item], telling: Telling, *, marked: bool) -> None:
    """One sentence: a question, a correction, or its clauses one by one."""
    turns = not meanings_of(sentence).isdisjoint(TURNING)
    if turns and undoes(sentence):
        take_back(telling)
        return
    if only_heads(sentence):
        return
    if not marked and (told := told_behind_a_request(sentence)):
        asked_about(sentence[:told], telling)
        telling.asked = False  # "the medium" is of the horse that somebody is to see to
        read_sentence(sentence[told:], telling, marked=False)
        return
    if turns and not marked and (why := reason_behind(sentence)):
        wanted_of(sentence[: why - 1], sentence[why:], telling)
        read_sentence(sentence[why:], telling, marked=False)
        return
    if asks(sentence, marked=marked):
        telling.thing = thing_since(telling.thing, sentence)
        if asked_to_keep(sentence) and read_wish(gathered(sentence).clause(""), telling):
            return
        if read_question(sentence, telling):
            asked_about(sentence, telling)
        elif behind := question_first(sentence, telling):
            asked_about(sentence[:behind], telling)
            telling.asked = False
            read_sentence(sentence[behind:], telling, marked=marked)
        elif before := question_last(sentence, telling):
            read_sentence(sentence[:before], telling, marked=False)
        else:
            clauses = cut(sentence)
            if not marked and sentence[0].has("ask state", "ask ready"):
                _clauses(clauses, telling)  # "update on Brambs, no longer sweating"
                return
            _before_the_question(clauses, telling)
            asked_about(sentence, telling)
            two_questions(clauses, telling)
        return
    _clauses(cut(sentence), telling)


def _before_the_question(clauses: Sequence[Clause], telling: Telling) -> None:
    """As in "Maple is shivering, can someone come?": what was said before the question is a report.

    Not in "Kévin, est-ce qu'Orage transpirait quand tu l'as vu ?": the last thought is no question of its own.
    """
    if (
        len(clauses) < 2
        or clauses[-1].items[0].has("or")
        or any(asks(clause.items, marked=False) for clause in clauses[:-1])
        or seen_when(clauses[-1])
    ):
        return
    last = [i for i in clauses[-1].items if not i.mark]
    of_itself = (len(last) > 2 or last[0].has("afterwards")) and not any(
        i.horses or (predicate(i) and not i.has("everyday comfortable")) for i in last
    )
    if of_itself or asks(last, marked=False):
        _clauses(clauses[:-1], telling)


def _clauses(clauses: Sequence[Clause], telling: Telling) -> None:
    hanging = longed_for = dated = False  # a condition, plan or longing said first holds for what follows
    tale = False  # and so does "last winter"
    among_stalls = telling.among_stalls
    from_work: tuple[str, ...] = ()  # "back from the lesson with Maple, she sweated"
    for clause, following in zip(map(without_excuse, clauses), (*clauses[1:], None), strict=False):
        telling.but_one = following is not None and but_one(following)
        plainly = clause.means.isdisjoint(MAY_BE_UNTOLD) and (following is None or _leaves_it_so(following))
        if clause.joined in ("when", "if") or (not plainly and supposes(clause)):
            hanging = clause.joined != "when" or not telling.events  # "cooler on Pip while he dries, heavy off"
            telling.supposing = supposed_of(clause)
            continue
        longed_for = longed_for or (not plainly and clause.has("some day"))
        if not (plainly or longed_for) and read_wish(clause, telling):
            continue
        if not plainly and only_yesterday(clause) and read_clip(clause, telling):
            continue
        if not plainly and no_news(clause, following):
            telling.thing = thing_since(telling.thing, clause.items)
            spoken_of(clause, telling)
            telling.crowded = telling.crowded or of_people(clause)
            tale = tale or clause.has("long ago") or of_its_youth(clause)
            hanging, dated = hanging or hangs(clause), dated or of_another_day(clause)
            telling.supposing = "quoted" if clause.has("quoted") else telling.supposing
            continue
        if tale and in_the_past(clause.items):
            continue
        tale = tale or clause.has("at an age")
        if hanging and clause.joined in ("and", "", ",") and not told_all_the_same(clause, telling, dated=dated):
            if not (dated and read_clip(clause, telling)):  # "the clipper came yesterday, Pip has a hunter clip"
                spoken_of(clause, telling)
            continue
        told = len(telling.events)
        _facts(clause, telling)
        if telling.who and len(telling.events) == told and (of_another_animal(clause) or of_kin(clause)):
            telling.of_nobody()  # "le chat a dormi dehors, il est tout mouillé"
        telling.crowded = telling.crowded or (len(telling.events) == told and of_people(clause))
        telling.elsewhere = len(telling.events) == told and leads_elsewhere(clause, telling)
        if clause.joined and from_work and all(i.horses == from_work for i in clause.horses):
            telling.seen_from(told, "after work")
        elif telling.among_stalls and not clause.has("place field", "outwards", "work", "worked"):
            telling.seen_from(told, "stall")
        somewhere = not clause.means.isdisjoint(WHEREABOUTS)
        telling.among_stalls = in_the_stalls(clause, following, telling) if somewhere else telling.among_stalls
        rode = somewhere and clause.has("work", "worked") and len(clause.horses) == 1
        from_work = clause.horses[0].horses if rode else ()
        telling.heard = clause
        telling.thing = thing_since(telling.thing, clause.items)
        if somewhere:
            where_they_stand(clause, telling)
        if clause.pieces:
            telling.spoken = None if clause.pieces[-1].some else with_owner(clause.pieces[-1], telling)
    if len(clauses) > 1:  # a place that heads a sentence heads no other
        telling.among_stalls = among_stalls and telling.among_stalls


def _leaves_it_so(following: Clause) -> bool:
    """Whether a clause does not tell when the one before it was so: "(Otto shivered one night,) last week"."""
    return following.joined not in ("when", "if") and following.means.isdisjoint(THEN)


def _facts(clause: Clause, telling: Telling) -> None:
    routine = not clause.means.isdisjoint(ROUTINE)
    if routine and (puts_right(clause, telling) or read_done(clause, telling) or read_clip(clause, telling)):
        return
    strapped = clause.has("strap") and (strap_told(clause) or puts_on_a_strap(clause.items))
    dressed = not strapped and read_wear(clause, telling)
    signs = read_signs(clause, telling)
    if not dressed and not signs:
        work = clause.has("worked", "work", "had", "took", "turned out", "was", "took part", "mounted")
        if not (work and read_work(clause, telling)) and not read_place(clause, telling):
            same(clause, telling)
    elif clause.has("worked"):
        read_work(clause, telling)
    elif dressed:
        moved_in_its_clothes(clause, telling)
