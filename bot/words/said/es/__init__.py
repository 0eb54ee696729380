"""What the bot says in Spanish. Horses are spoken of by verbs, for nobody told their gender; rugs are feminine."""

from bot.words.said import Phrasebook
from bot.words.said.es.closet import CLOSET
from bot.words.said.es.lines import LINES
from bot.words.said.es.reasons import REASONS

BOOK = Phrasebook(
    language="es",
    reasons=REASONS,
    lines=LINES | CLOSET,
    signs={
        "sweating": "suda",
        "hot": "tiene calor",
        "shivering": "tiembla",
        "cold": "tiene frío",
        "comfortable": "está a gusto",
        "wet": "tiene el pelo mojado",
        "rubbed": "tiene una rozadura",
        "unwell": "se encuentra mal",
    },
    states={
        "dry": "seca",
        "damp": "húmeda",
        "wet": "mojada",
        "soaked": "empapada",
        "washing": "lavándose",
        "torn": "rota",
        "strap broken": "correa rota",
        "missing": "no aparece",
        "in service": "otra vez en uso",
    },
    kinds={
        "sheet": "manta de lluvia",
        "turnout": "manta[ {fill}]",
        "liner": "manta interior[ {fill}]",
        "stable": "manta de cuadra[ {fill}]",
        "cooler": "manta secadora",
        "neck": "manta de cuello[ {fill}]",
    },
    short_kinds={
        "sheet": "impermeable",
        "turnout": "[{fill}]",
        "liner": "interior[ {fill}]",
        "stable": "cuadra[ {fill}]",
        "cooler": "secadora",
        "neck": "cuello",
    },
    styles={
        "none": "sin esquilar",
        "bib": "con esquila de pechera",
        "trace": "con esquila de tiro",
        "blanket": "con esquila de manta",
        "hunter": "con esquila de caza",
        "full": "con esquila completa",
    },
    places={"field": "afuera", "stall": "adentro"},
    rounds={
        "morning": "mañana",
        "noon": "mediodía",
        "midday": "mediodía",
        "lunch": "mediodía",
        "afternoon": "tarde",
        "evening": "tarde",
        "night": "noche",
        "late": "noche",
    },
    safety={
        "correas y orden": (
            "Poner: atado o sujeto, usted junto al hombro. La manta doblada, alta sobre el cuello, y deslizarla hacia "
            "atrás a favor del pelo. Primero el pecho, luego la panza, luego las patas o la cola, el cuello al final.\n"
            "Quitar: cuello, patas o cola, panza y el pecho al último. Se dobla hacia atrás y se levanta."
        ),
        "correas": (
            "Las de la panza cruzadas, con una mano de holgura. Las de las patas pasadas una por la otra, una mano "
            "entre correa y muslo. Enganche las puntas sueltas. Nunca de rodillas, nunca detrás."
        ),
        "rozaduras": (
            "Mire cada día cruz, hombros, pecho, caderas y donde acaba la manta de cuello. Sin pelo o piel caliente: "
            "otra manta, o ninguna si el tiempo deja."
        ),
        "revisión diaria": (
            "Una vez al día fuera todo, dos si el tiempo cambia mucho. Mano bajo la manta, detrás del codo: seco y ni "
            "caliente ni frío está bien. Toque las costillas, mire la piel y las patas."
        ),
        "capas": "La interior bajo una impermeable, nunca sola afuera. Tres capas como mucho; se corren, así que mire.",
        "caballo mojado": "Sin manta sobre pelo mojado o sudado, salvo la secadora con alguien mirando. Primero secar.",
    },
    days=("lun", "mar", "mié", "jue", "vie", "sáb", "dom"),
    months=("ene", "feb", "mar", "abr", "may", "jun", "jul", "ago", "sep", "oct", "nov", "dic"),
    percent="\u00a0%",
)
