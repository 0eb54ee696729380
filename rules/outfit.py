"""Outfit: which pieces go together on this horse now, and the reason where they do not.

Every rule here is common practice (no source). A rule answers with the Reason why not, or None.
"""

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import combinations

from rules.garment import Kind
from rules.question import Piece, PlaceName, Wearer
from rules.reason import Code, Reason, Unit

SIZE_STEP_IN = 3.0  # one label size either way still fits; beyond it rubs or slips
STRAP_GUST_MS = 14.0  # near gale (50 km/h): the wind gets under a rug that nothing holds at the rear
LAYERS = 3  # more than this slips and twists
OUTDOOR: frozenset[Kind] = frozenset({"sheet", "turnout"})
RANK: dict[Kind, int] = {"cooler": 0, "liner": 0, "stable": 1, "turnout": 2, "sheet": 2, "neck": 3}
NONE: frozenset[str] = frozenset()


@dataclass(frozen=True)
class Outfit:
    """Pieces worn together, from the skin outward, neck cover last; none is bare.

    ids: of the garments, skin outward. body: the layers over the back, all but a neck cover. fill_g: over the back, all
    layers together [g/m²]. spares: ids of the pieces that belong to no horse.
    """

    pieces: tuple[Piece, ...] = ()
    ids: tuple[str, ...] = field(init=False, compare=False, repr=False)
    body: tuple[Piece, ...] = field(init=False, compare=False, repr=False)
    fill_g: float = field(init=False, compare=False, repr=False)
    spares: frozenset[str] = field(init=False, compare=False, repr=False)

    def __post_init__(self) -> None:
        """Work out once what is asked of every outfit many times."""
        garments = [piece.garment for piece in self.pieces]
        body = tuple(piece for piece in self.pieces if piece.garment.kind != "neck")
        spares = [g.id for g in garments if g.horse is None]
        object.__setattr__(self, "ids", tuple([g.id for g in garments]))
        object.__setattr__(self, "body", body)
        object.__setattr__(self, "fill_g", sum([piece.garment.fill_g for piece in body]))
        object.__setattr__(self, "spares", frozenset(spares) if spares else NONE)

    @property
    def sheds_rain(self) -> bool:
        """Whether the outermost layer keeps rain out: what is under it stays dry."""
        return bool(self.body) and weatherproof(self.body[-1])

    @property
    def outdoor(self) -> bool:
        """Whether a sheet or turnout is outermost."""
        return bool(self.body) and self.body[-1].garment.kind in OUTDOOR


BARE = Outfit()


@dataclass(frozen=True)
class Setting:
    """What stands around one horse in one window.

    start_h: hours from hour 0 to the window's beginning. gust_ms: its strongest gust at 10 m, 0 where not known.
    ready_h: garment id → hours from hour 0 until it is dry; ids left out are dry; None: not within the forecast.
    """

    place: PlaceName
    start_h: float = 0.0
    gust_ms: float = 0.0
    ready_h: Mapping[str, float | None] = field(default_factory=dict)


def weatherproof(piece: Piece) -> bool:
    """Whether rain stays outside: waterproof, an outdoor layer or neck cover, and it does not leak."""
    return piece.garment.waterproof and not piece.leaks and piece.garment.kind in OUTDOOR | {"neck"}


# --- one piece on one horse


def _cooler(wearer: Wearer, piece: Piece, setting: Setting) -> Reason | None:
    """A cooler dries a horse while somebody stands by; a plan for hours never uses it."""
    if piece.garment.kind == "cooler":
        return Reason(Code.COOLER_UNDER_SUPERVISION, garment=piece.garment.id)
    return None


def _anothers(wearer: Wearer, piece: Piece, setting: Setting) -> Reason | None:
    if piece.garment.horse not in (None, wearer.horse.name):
        return Reason(Code.BELONGS_TO_ANOTHER, garment=piece.garment.id)
    return None


def _infection(wearer: Wearer, piece: Piece, setting: Setting) -> Reason | None:
    """An infected horse keeps what is its own or already on it; nothing else touches its skin."""
    mine = piece.garment.horse is not None or piece.garment.id in (wearer.wears or ())
    if wearer.horse.infected and not mine:
        return Reason(Code.SHARES_NOTHING, garment=piece.garment.id)
    return None


def _service(wearer: Wearer, piece: Piece, setting: Setting) -> Reason | None:
    return None if piece.in_service else Reason(Code.OUT_OF_SERVICE, garment=piece.garment.id)


def _size(wearer: Wearer, piece: Piece, setting: Setting) -> Reason | None:
    size = piece.garment.size_in
    if abs(size - wearer.horse.size_in) > SIZE_STEP_IN:
        return Reason(Code.WRONG_SIZE, value=size, garment=piece.garment.id)
    return None


def _rubs(wearer: Wearer, piece: Piece, setting: Setting) -> Reason | None:
    return Reason(Code.RUBS, garment=piece.garment.id) if wearer.horse.name in piece.rubs else None


def _dry(wearer: Wearer, piece: Piece, setting: Setting) -> Reason | None:
    """Dry at the skin. Rain on the outside of a weatherproof layer dries on the horse; soaked is wet within."""
    if piece.water == "dry" or (weatherproof(piece) and piece.water != "soaked"):
        return None
    ready = setting.ready_h.get(piece.garment.id)
    if ready is not None and ready <= setting.start_h:
        return None
    return Reason(Code.NOT_DRY, value=ready, unit=Unit.HOURS, garment=piece.garment.id)


PIECE_RULES: tuple[Callable[[Wearer, Piece, Setting], Reason | None], ...] = (
    _anothers, _infection, _cooler, _service, _size, _rubs, _dry,
)  # fmt: skip


def piece_refused(wearer: Wearer, piece: Piece, setting: Setting) -> Reason | None:
    """Why this piece may not be on this horse in this setting; None: it may."""
    return next((r for rule in PIECE_RULES if (r := rule(wearer, piece, setting))), None)


# --- pieces together


def _layers(outfit: Outfit, setting: Setting) -> Reason | None:
    necks = len(outfit.pieces) - len(outfit.body)
    if len(outfit.body) > LAYERS or necks > 1 or sum(p.garment.kind in OUTDOOR for p in outfit.body) > 1:
        return Reason(Code.TOO_MANY_LAYERS, value=float(len(outfit.pieces)), unit=Unit.COUNT)
    return None


def _order(outfit: Outfit, setting: Setting) -> Reason | None:
    ranks = [RANK[p.garment.kind] for p in outfit.pieces]
    wrong = next((p for p, a, b in zip(outfit.pieces, ranks, ranks[1:]) if a > b), None)
    return Reason(Code.ORDER, garment=wrong.garment.id) if wrong else None


def _neck(outfit: Outfit, setting: Setting) -> Reason | None:
    """A neck cover hangs on a sheet, turnout or stable rug that has none of its own."""
    cover = next((p for p in outfit.pieces if p.garment.kind == "neck"), None)
    if cover is None:
        return None
    outer = outfit.body[-1].garment if outfit.body else None
    if outer is None or outer.kind == "liner" or outer.neck != "none":
        return Reason(Code.NECK_ALONE, garment=cover.garment.id)
    return None


def _outside(outfit: Outfit, setting: Setting) -> Reason | None:
    """Out in the weather an outdoor layer is outermost, and a stable rug stays in the stall."""
    if setting.place == "stall" or not outfit.body:
        return None
    stable = next((p for p in outfit.body if p.garment.kind == "stable"), None)
    if stable:
        return Reason(Code.NOT_FOR_WEATHER, garment=stable.garment.id)
    return None if outfit.outdoor else Reason(Code.LINER_ALONE, garment=outfit.ids[0])


def _rear(outfit: Outfit, setting: Setting) -> Reason | None:
    if setting.place == "stall" or not outfit.outdoor or setting.gust_ms < STRAP_GUST_MS:
        return None
    outer = outfit.body[-1].garment
    if outer.rear == "none":
        return Reason(Code.NO_REAR_STRAP, value=setting.gust_ms, unit=Unit.WIND, garment=outer.id)
    return None


OUTFIT_RULES: tuple[Callable[[Outfit, Setting], Reason | None], ...] = (_layers, _order, _neck, _outside, _rear)


def refused(wearer: Wearer, outfit: Outfit, setting: Setting) -> Reason | None:
    """Why this outfit may not be on this horse in this setting; None: it may."""
    alone = (r for p in outfit.pieces if (r := piece_refused(wearer, p, setting)))
    return next(alone, None) or _together(outfit, setting)


def _together(outfit: Outfit, setting: Setting) -> Reason | None:
    return next((r for rule in OUTFIT_RULES if (r := rule(outfit, setting))), None)


# --- all of them


def allowed(wearer: Wearer, pieces: Iterable[Piece], setting: Setting) -> tuple[list[Outfit], list[Reason]]:
    """Every outfit that may be worn, bare first, and for each piece that has no place in any the reason why.

    Of weatherproof pieces that nothing tells apart one stands for all (what the horse wears, then its own, then the
    best fit): the others could never be the better choice. Pieces of other horses are not named.
    """
    usable, reasons = [], []
    for piece in pieces:
        if _anothers(wearer, piece, setting):
            continue
        reason = piece_refused(wearer, piece, setting)
        if reason:
            reasons.append(reason)
        else:
            usable.append(piece)
    outfits = [BARE]
    distinct = _distinct(wearer, usable)
    liners = [p for p in distinct if p.garment.kind == "liner"]
    for rugs in _rugs(distinct, liners):
        if _together(Outfit(rugs), setting) is None:
            outfits += _under(rugs, liners, usable, setting)
    has_a_place = {garment for outfit in outfits for garment in outfit.ids}
    idle = (Outfit((piece,)) for piece in usable if piece.garment.id not in has_a_place)
    return outfits, reasons + [reason for outfit in idle if (reason := _together(outfit, setting))]


def _rugs(distinct: Sequence[Piece], liners: Sequence[Piece]) -> list[tuple[Piece, ...]]:
    """What may be outermost: each liner, each stable rug and outdoor layer, and the one under the other."""
    stables = [p for p in distinct if p.garment.kind == "stable"]
    outers = [p for p in distinct if p.garment.kind in OUTDOOR]
    single = [(p,) for p in (*liners, *stables, *outers)]
    return [*single, *((s, o) for s in stables for o in outers)]


def _under(
    rugs: tuple[Piece, ...], liners: Sequence[Piece], usable: Sequence[Piece], setting: Setting
) -> Iterable[Outfit]:
    """These rugs alone and over liners, each without and with a neck cover. What is allowed alone is so over liners."""
    if rugs[0] in liners:  # outermost itself: the liners before it go under it
        liners = liners[: liners.index(rugs[0])]
    for count in range(LAYERS - len(rugs) + 1):
        for under in combinations(liners, count):
            outfit = Outfit(under + rugs)
            yield outfit
            yield from _with_neck(outfit, usable, setting)


def _with_neck(outfit: Outfit, usable: Sequence[Piece], setting: Setting) -> list[Outfit]:
    covers = (p for p in usable if p.garment.kind == "neck")
    dressed = (Outfit((*outfit.pieces, cover)) for cover in covers)
    return [o for o in dressed if _neck(o, setting) is None]


def _distinct(wearer: Wearer, usable: Sequence[Piece]) -> list[Piece]:
    """The pieces without those that a like one makes needless.

    Only weatherproof layers are alike for good: any other may be wet after this window while its twin is dry.
    Two like spares stay two, since another horse may take one of them.
    """

    def first_choice(piece: Piece) -> tuple[bool, bool, float, str]:
        g = piece.garment
        worn = g.id in (wearer.wears or ())
        return (not worn, g.horse is None, abs(g.size_in - wearer.horse.size_in), g.id)

    kept: list[Piece] = []
    owned: set[tuple[object, ...]] = set()
    for piece in sorted(usable, key=first_choice):
        g = piece.garment
        make = (g.kind, g.fill_g, g.neck, g.rear, piece.water)
        if not weatherproof(piece):
            kept.append(piece)
        elif make not in owned:
            kept.append(piece)
            owned |= {make} if g.horse is not None else set()
    return kept
