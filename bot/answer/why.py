"""Why a horse wears what it wears, and why not another piece: from the reasons of the plan as posted."""

from collections.abc import Iterable

from bot.answer.scene import Scene
from bot.sheet import DressSheet, HorseSheet, Sheet
from bot.skyline import capital, sentence, skyline
from bot.tips import tip_lines
from bot.units import known
from bot.voice import Voice, plain

AT_MOST = 16  # horses told of at once


def why(scene: Scene) -> Iterable[str]:
    """Why a horse wears what it wears; why not another piece; without a horse: what moved the barn."""
    horse = scene.horse()
    if horse is None and scene.asked.horse is not None:
        yield scene.tongue.say("not on plan", name=plain(scene.asked.horse))
    elif horse is None and scene.asked.garment is not None:
        yield _spare(scene, scene.asked.garment)
    elif horse is None:
        yield from _why_all(scene)
    elif scene.asked.garment and scene.asked.garment not in horse.windows[scene.current].wear:
        yield _why_not(scene, horse, scene.asked.garment)
    else:
        yield from _why_horse(scene, horse)


def _why_all(scene: Scene) -> Iterable[str]:
    """The weather; each reason once, with the horses that change for it, alike ones in one line."""
    sheet, tongue = scene.sheet, scene.tongue
    yield skyline(sheet, sheet.windows[scene.current], tongue)
    groups: dict[str | None, dict[str, list[str]]] = {}
    for horse in [h for h in sheet.horses if h.windows[scene.current].change][:AT_MOST]:
        dress = horse.windows[scene.current]
        because = groups.setdefault(reasons(dress, sheet, horse.horse, tongue, most=2), {})
        because.setdefault(tongue.outfit(dress.wear, horse.horse), []).append(horse.horse)
    for why, outfits in groups.items():
        if why:
            yield tongue.say("why these", why=capital(why))
        yield from (tongue.say("change", names=tongue.row(names), wear=wear) for wear, names in outfits.items())
    if not groups:
        yield tongue.say("nobody changes")
    yield tongue.say("ask why", **tongue.examples)


def _why_horse(scene: Scene, horse: HorseSheet) -> Iterable[str]:
    sheet, tongue = scene.sheet, scene.tongue
    window, dress = sheet.windows[scene.current], horse.windows[scene.current]
    yield tongue.say(
        "why head",
        horse=plain(horse.horse),
        wear=tongue.advised(dress, horse.horse),
        until=tongue.clock(window.end),
        why=reasons(dress, sheet, horse.horse, tongue),
    )
    yield from margins(dress, tongue)
    yield from _tips(scene, horse.horse, dress)
    yield from tongue.used_to(horse.used_to_c)
    yield from (sentence(tongue.reason(c, sheet.sky, horse.horse)) for c in dress.cautions[:3])


def _tips(scene: Scene, horse: str, dress: DressSheet) -> Iterable[str]:
    """What would change it, where anything could be judged and it is still what the plan would say."""
    tips = scene.tips(horse) if known(dress.cold_margin_c) is not None else None
    if tips is not None and set(tips.wear) == set(dress.wear):
        yield from tip_lines(tips, scene.tongue, horse)


def reasons(dress: DressSheet, sheet: Sheet, horse: str, tongue: Voice, most: int = 4) -> str | None:
    """The reasons in a row, weightiest first; None where there are none."""
    return (
        tongue.say("between").join(dict.fromkeys(tongue.reason(r, sheet.sky, horse) for r in dress.why[:most])) or None
    )


def margins(dress: DressSheet, tongue: Voice) -> Iterable[str]:
    """The worst hours, the fill that would do, and what the cold costs, in words."""
    cold, heat = known(dress.cold_margin_c), known(dress.heat_margin_c)
    if cold is None or heat is None:
        yield tongue.say("margins unknown")
        return
    yield tongue.say(
        "cold spare" if cold >= 0 else "cold short",
        value=tongue.measures.difference(abs(cold)),
        at=None if dress.cold_at is None else tongue.clock(dress.cold_at),
    )
    yield tongue.say(
        "heat spare" if heat >= 0 else "heat short",
        value=tongue.measures.difference(abs(heat)),
        at=None if dress.heat_at is None else tongue.clock(dress.heat_at),
    )
    if dress.fill_band_g:
        low, high = (known(g) or 0.0 for g in dress.fill_band_g)
        yield tongue.say("band", fills=tongue.measures.fills(low, high))
    hay = known(dress.extra_hay_kg)
    if hay and hay >= 0.5:
        yield tongue.say("hay", weight=tongue.measures.weight(hay))


def _why_not(scene: Scene, horse: HorseSheet, garment: str) -> str:
    """Why one piece is not in the outfit: refused, not fit to wear, on another horse, or simply not needed."""
    tongue, name = scene.tongue, plain(horse.horse)
    piece = tongue.piece(garment, horse.horse)
    against = [tongue.bare_reason(r, scene.sheet.sky) for r in horse.refused if r.garment == garment]
    now = scene.state.garments.get(garment)
    if not against and now is not None and now.state not in {"dry", "in service"}:
        against = [tongue.state(now.state)]
    if against:
        told = tongue.say("between").join(list(dict.fromkeys(against))[:2])
        return tongue.say("why not", piece=piece, horse=name, why=told)
    wearer = _wearer(scene, garment)
    if wearer is not None:
        return tongue.say("why not taken", piece=piece, horse=name, other=plain(wearer))
    dress = horse.windows[scene.current]
    return tongue.say("why not needed", piece=piece, horse=name, wear=tongue.outfit(dress.wear, horse.horse))


def _spare(scene: Scene, garment: str) -> str:
    """Whom a spare goes to; that nobody needs it where it goes to nobody."""
    tongue, wearer = scene.tongue, _wearer(scene, garment)
    if wearer is None:
        return tongue.say("spare unused", piece=capital(tongue.whose(garment)))
    return tongue.say("spare used", piece=capital(tongue.whose(garment)), other=plain(wearer))


def _wearer(scene: Scene, garment: str) -> str | None:
    """The horse that a piece goes to in this window."""
    return next((h.horse for h in scene.sheet.horses if garment in h.windows[scene.current].wear), None)
