"""Voice: what one reader is told of one barn, in their language and units: pieces, outfits, times, reasons.

Everything people read is made of these few; post, answers and board only choose what to say.
"""

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import cached_property
from zoneinfo import ZoneInfo

from bot.barn import Barn, Garment, Person
from bot.sheet import DressSheet, MissingSheet, SkyHour, Source
from bot.units import Measures, known
from bot.words.said import Phrasebook, fill, phrasebook
from rules.reason import Reason, Unit

WORTH_SAYING_C = 0.25  # K; a smaller offset is told as none
WEEKS_MATTER_C = 0.5  # K; what milder or colder weeks did, if less, changes no clothes


@dataclass(frozen=True)
class Voice:
    """One barn in one language and one set of units."""

    barn: Barn
    book: Phrasebook
    measures: Measures

    def say(self, line: str, **values: object) -> str:
        """A sentence of the phrasebook with its values in place."""
        return self.book.say(line, **values)

    @cached_property
    def examples(self) -> dict[str, str]:
        """Two of the barn's own horses, for sentences that show how to say something."""
        names = [plain(h.name) for h in self.barn.horses[:2]]
        return {"one": names[0] if names else "Maple", "two": names[-1] if names else "Juniper"}

    # ── clothes ──────────────────────────────────────────────────────────────────────────────────────────────────

    def outfit(self, wear: Sequence[str], horse: str | None = None) -> str:
        """Garments from the skin outward in the words of the trade: "100 g liner + rain sheet"; "bare"."""
        return " + ".join(self.piece(g, horse) for g in wear) if wear else self.say("bare")

    def brief(self, wear: Sequence[str]) -> str:
        """An outfit in as few words as tell it: "sheet", "360 g"; for what stays on and need not be found."""
        worn = (self._pieces.get(g) for g in wear)
        return " + ".join(self._short(g) if g else "?" for g in worn) if wear else self.say("bare")

    def advised(self, dress: DressSheet, horse: str) -> str:
        """The outfit to wear; "as found" where nobody said what the horse wears and nothing could be judged."""
        return self.say("as found") if dress.as_found else self.outfit(dress.wear, horse)

    def advised_briefly(self, dress: DressSheet) -> str:
        """The same in as few words as tell it."""
        return self.say("as found") if dress.as_found else self.brief(dress.wear)

    def _short(self, garment: Garment) -> str:
        grams = self.measures.fill(garment.fill_g) if garment.fill_g else None
        return fill(self.book.short_kinds[garment.kind], fill=grams) or self.kind(garment.kind, None)

    def piece(self, garment_id: str, horse: str | None = None) -> str:
        """One piece as said of `horse`: by what tells it apart; whose it is only where it is not that horse's own."""
        garment = self._pieces.get(garment_id)
        if garment is not None and garment.horse is not None and garment.horse == horse:
            return self._apart(garment)
        return self.whose(garment_id)

    def whose(self, garment_id: str) -> str:
        """One piece with its horse: "Juniper's 100 g liner", "spare 200 g turnout"."""
        garment = self._pieces.get(garment_id)
        if garment is None:
            return plain(garment_id)
        if garment.horse is None:
            return self.say("spare piece", piece=self._apart(garment))
        return self.say("piece of", piece=self._apart(garment), of=self.of(garment.horse))

    def owner(self, garment_id: str | None) -> str | None:
        """The name of the horse a piece belongs to; None for a spare or a piece nobody knows."""
        garment = self._pieces.get(garment_id or "")
        return garment.horse if garment else None

    def fill_of(self, wear: Sequence[str]) -> float:
        """The fill of an outfit, g/m²: its layers' together, neck covers left out."""
        worn = (self._pieces[g] for g in wear if g in self._pieces)
        return sum(g.fill_g for g in worn if g.kind != "neck")

    def kind(self, kind: str, fill_g: float | None) -> str:
        """A kind of clothing with its fill: "100 g liner", "rain sheet"."""
        grams = known(fill_g)
        return self.kind_of(kind, self.measures.fill(grams) if grams else None)

    def kind_of(self, kind: str, grams: str | None) -> str:
        """A kind of clothing with a fill already in words."""
        return fill(self.book.kinds.get(kind, kind), fill=grams)

    def lack(self, missing: MissingSheet) -> str:
        """The garment that would do: "dry 200–300 g turnout, 69 in"."""
        low, high, size = known(missing.fill_low_g), known(missing.fill_high_g), known(missing.size_in)
        grams = self.measures.fills(low or 0.0, high) if high else None
        return self.say(
            "dry garment", kind=self.kind_of(missing.kind, grams), size=self.measures.size(size) if size else None
        )

    def state(self, state: str) -> str:
        """The state of a garment."""
        return self.book.states.get(state, plain(state))

    def _apart(self, garment: Garment) -> str:
        """The kind and fill where no other of the closet is called so; else its nickname, else its id as well."""
        name = self.kind(garment.kind, garment.fill_g)
        closet = self._closets[garment.horse]
        if closet[name] < 2:
            return name
        nicknames = [plain(n) for n in garment.also if closet[n] < 2]
        return nicknames[0] if nicknames else f"{name} ({plain(garment.id)})"

    @cached_property
    def _pieces(self) -> dict[str, Garment]:
        return {g.id: g for g in self.barn.garments}

    @cached_property
    def _closets(self) -> dict[str | None, Counter[str]]:
        """How many pieces of each closet (a horse's, or the spares) bear each name."""
        found: dict[str | None, Counter[str]] = defaultdict(Counter)
        for g in self.barn.garments:
            found[g.horse].update((self.kind(g.kind, g.fill_g), *g.also))
        return found

    # ── times ────────────────────────────────────────────────────────────────────────────────────────────────────

    @cached_property
    def zone(self) -> ZoneInfo:
        """The barn's own time."""
        return ZoneInfo(self.barn.timezone)

    def clock(self, at: datetime) -> str:
        """A time of day in the barn: 7 am, 4:30 pm; 07:00, 16:30."""
        local = at.astimezone(self.zone)
        if not (self.measures.us and self.book.twelve_hours):
            return f"{local:%H:%M}"
        if (local.hour, local.minute) in {(0, 0), (12, 0)}:
            return self.say("noon" if local.hour else "midnight")
        half = "am" if local.hour < 12 else "pm"
        minutes = f":{local.minute:02}" if local.minute else ""
        return f"{local.hour % 12 or 12}{minutes}\u00a0{half}"

    def day(self, day: date) -> str:
        """A date: Thu 26 Nov."""
        return f"{self.book.days[day.weekday()]} {day.day} {self.book.months[day.month - 1]}"

    def about(self, at: datetime, now: datetime) -> str:
        """A time that is only an estimate: the next half hour."""
        over = timedelta(minutes=at.minute % 30, seconds=at.second, microseconds=at.microsecond)
        return self.when(at - over + timedelta(minutes=30) if over else at, now)

    def sign(self, sign: str) -> str:
        """What was seen on a horse."""
        return self.book.signs.get(sign, plain(sign))

    def age(self, minutes: int) -> str:
        """How old: 12 min, 14 h."""
        return f"{minutes}\u00a0min" if minutes < 90 else self.measures.hours(minutes / 60)

    def when(self, at: datetime, now: datetime) -> str:
        """A time as heard at `now`: the clock alone today and tonight, with the day where it is further off."""
        local, today = at.astimezone(self.zone), now.astimezone(self.zone)
        far = abs((local - today).total_seconds()) > 20 * 3600
        return f"{self.day(local.date())} {self.clock(at)}" if far else self.clock(at)

    def round(self, name: str) -> str:
        """A round's name, translated where it is a usual one."""
        return self.book.rounds.get(name.casefold(), plain(name))

    def at_round(self, name: str, start: datetime) -> str:
        """At which round: "at the evening round (4:30 pm)"."""
        return self.say("at round", round=self.round(name), at=self.clock(start))

    # ── sentences ────────────────────────────────────────────────────────────────────────────────────────────────

    def row(self, names: Iterable[str]) -> str:
        """Names in a row without an "and": for lists that are looked at more than heard."""
        return ", ".join(plain(n) for n in names)

    def source(self, source: Source, age_min: int | None) -> str:
        """Whose forecast it is and how old."""
        if source.source is None:
            return self.say("source none")
        age = None if age_min is None else self.age(age_min)
        if source.source.startswith("file"):
            return self.say("source file", age=age)
        return self.say(
            "source stale" if source.stale else "source", source=source.attribution or source.source, age=age
        )

    def names(self, names: Iterable[str]) -> str:
        """Names in a row: "Maple, Otis and Pip"."""
        row = [plain(n) for n in names]
        if len(row) < 2:
            return "".join(row)
        line = "and i" if row[-1].casefold().startswith(("i", "í", "hi")) else "and"
        return self.say(line, first=", ".join(row[:-1]), last=row[-1])

    def of(self, name: str) -> str:
        """Whose: "Juniper's", "de Juniper", "d’Otis"."""
        shown = plain(name)
        return self.say("of vowel" if shown[:1].casefold() in "aeiouyéèêhœ" else "of", name=shown)

    def reason(self, reason: Reason, sky: Sequence[SkyHour], horse: str | None = None) -> str:
        """A reason as a short sentence; what it does not know it leaves out."""
        garment = None if reason.garment is None else self.piece(reason.garment, horse)
        return self._reason(reason, sky, garment)

    def bare_reason(self, reason: Reason, sky: Sequence[SkyHour]) -> str:
        """A reason where the piece it is about has just been named."""
        return self._reason(reason, sky, None)

    def _reason(self, reason: Reason, sky: Sequence[SkyHour], garment: str | None) -> str:
        hour = reason.hour
        at = sky[hour].at if hour is not None and 0 <= hour < len(sky) else None
        return fill(
            self.book.reasons.get(reason.code, reason.code.value),
            value=self.value(reason),
            at=None if at is None else self.clock(at),
            garment=garment,
        )

    def learned(self, offset_c: float | None, sd_c: float | None) -> str:
        """What has been learned of a horse in words, with how sure it is."""
        offset, sd = known(offset_c) or 0.0, known(sd_c)
        band = None if sd is None else self.measures.difference(sd, 1)
        if abs(offset) < WORTH_SAYING_C:
            return self.say("offset none", sd=band)
        side = "offset colder" if offset > 0 else "offset warmer"
        return self.say(side, value=self.measures.difference(abs(offset), 1), sd=band)

    def used_to(self, shift_c: float) -> Iterable[str]:
        """What the weeks behind did to the horses, where it is worth a line."""
        if abs(shift_c) >= WEEKS_MATTER_C:
            side = "used to mild" if shift_c > 0 else "used to cold"
            yield self.say(side, value=self.measures.difference(abs(shift_c), 1))

    def value(self, reason: Reason) -> str | None:
        """A reason's number in the reader's units; differences without their sign, for the code says the side."""
        number = known(reason.value)
        if number is None:
            return None
        measures = self.measures
        match reason.unit:
            case Unit.CELSIUS:
                return measures.temperature(number)
            case Unit.KELVIN:
                return measures.difference(abs(number))
            case Unit.WIND:
                return measures.wind(number)
            case Unit.WATER:
                return measures.water(number)
            case Unit.FILL:
                return measures.fill(number)
            case Unit.HOURS:
                return measures.hours(number)
            case Unit.PERCENT:
                return measures.percent(number)
            case _:
                return measures.number(number)


KEPT_VOICES = 400
_voices: dict[tuple[int, str, str], Voice] = {}  # by the barn's identity: to compare whole barns would cost more


def voice(barn: Barn, language: str, units: str) -> Voice:
    """The barn in a language (English where there is no such phrasebook) and units ("us" or "metric").

    The same one as before for the same barn, for it remembers what each piece is called.
    """
    found = _voices.get((id(barn), language, units))
    if found is None or found.barn is not barn:
        book = phrasebook(language)
        found = Voice(barn, book, Measures("us" if units == "us" else "metric", book.decimal, book.percent))
        if len(_voices) >= KEPT_VOICES:
            _voices.clear()
        _voices[id(barn), language, units] = found
    return found


def for_person(barn: Barn, person: Person | None) -> Voice:
    """The barn as one person wants to hear it; the barn's own units where the person names none."""
    if person is None:
        return voice(barn, "en", barn.units)
    return voice(barn, person.language, person.units or barn.units)


def plain(name: str) -> str:
    """A name as written, on one line."""
    return " ".join(name.split()) or "?"
