"""What the bot says in French. Horses are spoken of by verbs, for nobody told their gender; rugs are feminine."""

from collections.abc import Mapping
from typing import TypeVar

from bot.words.said import Phrasebook
from bot.words.said.fr.closet import CLOSET
from bot.words.said.fr.lines import LINES
from bot.words.said.fr.reasons import REASONS

Key = TypeVar("Key")


def _spaced(told: Mapping[Key, str]) -> dict[Key, str]:
    """French double marks with the space that never breaks, which the sentences are written without."""
    marks = ((" :", "\u00a0:"), (" ;", "\u00a0;"), (" ?", "\u00a0?"), ("« ", "«\u00a0"), (" »", "\u00a0»"))
    spaced = dict(told)
    for plain, kept in marks:
        spaced = {key: text.replace(plain, kept) for key, text in spaced.items()}
    return spaced


BOOK = Phrasebook(
    language="fr",
    reasons=_spaced(REASONS),
    lines=_spaced(LINES | CLOSET),
    signs={
        "sweating": "transpire",
        "hot": "a trop chaud",
        "shivering": "tremble",
        "cold": "a froid",
        "comfortable": "est à l'aise",
        "wet": "a le poil mouillé",
        "rubbed": "a un frottement",
        "unwell": "ne va pas bien",
    },
    states={
        "dry": "sèche",
        "damp": "humide",
        "wet": "mouillée",
        "soaked": "trempée",
        "washing": "au lavage",
        "torn": "déchirée",
        "strap broken": "sangle cassée",
        "missing": "introuvable",
        "in service": "remise en service",
    },
    kinds={
        "sheet": "chemise imperméable",
        "turnout": "couverture[ {fill}]",
        "liner": "sous-couverture[ {fill}]",
        "stable": "couverture d'écurie[ {fill}]",
        "cooler": "chemise séchante",
        "neck": "encolure amovible[ {fill}]",
    },
    short_kinds={
        "sheet": "imper",
        "turnout": "[{fill}]",
        "liner": "sous-couv.[ {fill}]",
        "stable": "écurie[ {fill}]",
        "cooler": "séchante",
        "neck": "encolure",
    },
    styles={
        "none": "pas de tonte",
        "bib": "avec tonte bavette",
        "trace": "avec tonte d'attelage",
        "blanket": "avec tonte couverture",
        "hunter": "avec tonte hunter",
        "full": "avec tonte complète",
    },
    places={"field": "dehors", "stall": "au box"},
    rounds={
        "morning": "matin",
        "noon": "midi",
        "midday": "midi",
        "lunch": "midi",
        "afternoon": "après-midi",
        "evening": "soir",
        "night": "nuit",
        "late": "nuit",
    },
    safety=_spaced(
        {
            "mise en place": (
                "Mettre : attaché ou tenu, vous à l'épaule. Couverture pliée haut sur l'encolure, la glisser vers "
                "l'arrière dans le sens du poil. Le poitrail d'abord, puis le ventre, puis cuisses ou queue, "
                "l'encolure en dernier.\n"
                "Ôter : encolure, cuisses ou queue, ventre, le poitrail en dernier. Replier et soulever."
            ),
            "sangles": (
                "Celles du ventre croisées, une main de jeu. Celles des cuisses passées l'une dans l'autre, une main "
                "entre sangle et cuisse. Accrochez ce qui pend. Jamais à genoux, jamais derrière."
            ),
            "frottements": (
                "Chaque jour garrot, épaules, poitrail, hanches et le bord de l'encolure. Poil parti ou peau chaude : "
                "une autre couverture, ou aucune si le temps le permet."
            ),
            "contrôle du jour": (
                "Une fois par jour tout ôter, deux si le temps varie. Main sous la couverture, derrière le coude : "
                "sec, ni chaud ni froid, c'est bien. Sentez les côtes, regardez la peau et les membres."
            ),
            "épaisseurs": (
                "La sous-couverture sous un imperméable, jamais seule dehors. Trois épaisseurs au plus ; "
                "elles glissent, regardez."
            ),
            "cheval mouillé": "Pas de couverture sur un poil mouillé ou en sueur, sauf la séchante surveillée. Séchez.",
        }
    ),
    days=("lun.", "mar.", "mer.", "jeu.", "ven.", "sam.", "dim."),
    months=("janv.", "févr.", "mars", "avr.", "mai", "juin", "juil.", "août", "sept.", "oct.", "nov.", "déc."),
    decimal=",",
    percent="\u00a0%",
)
