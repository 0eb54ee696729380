"""What a manager may write to change the barn's list, in each language.

Rows as in the tables of what the bot hears. In a phrase `#` is a number, `@` a name; `key=value` sets a key of the
barn file, `key` alone takes the number or the name. Kinds of clothing are called as everywhere else.
"""

from typing import NamedTuple

Rows = dict[str, str]


class Table(NamedTuple):
    """One language. new: how a row begins, by section and what that says already. set: how a change begins.

    sold, left, struck: how a row ends, said after a horse or piece, after a person, around any. torn: what is said of
    a piece, so that its description is looked up. yes, no: the answer to "shall I write this?".
    """

    new: Rows
    horses: Rows
    people: Rows
    garments: Rows
    set: str
    sold: str
    left: str
    struck: str
    torn: str
    yes: str
    no: str


TABLES: dict[str, Table] = {
    "en": Table(
        new={
            "horses": "new horse, new mare, new gelding",
            "horses species=pony": "new pony",
            "horses species=donkey": "new donkey",
            "people role=groom": "new groom",
            "people role=owner": "new owner",
            "people role=manager": "new manager",
        },
        horses={
            "size_in": "# in, # inch, # inches, size # in, size # inches, size #",
            "size_cm": "# cm, size # cm",
            "weight_kg": "# kg, weight # kg",
            "girth_cm": "girth # cm, girth #",
            "length_cm": "length # cm, length #",
            "born": "born #, born in #",
            "condition": "condition #",
            "owner": "owner @, owned by @, owner is @",
            "coat=fine": "fine coat, thin coat, coat fine",
            "coat=average": "average coat, normal coat, coat average",
            "coat=heavy": "heavy coat, thick coat, coat heavy",
            "species=pony": "pony",
            "species=donkey": "donkey",
            "also": "called @, also @, nickname @",
        },
        people={
            "role=groom": "groom",
            "role=owner": "owner",
            "role=manager": "manager",
            "language=en": "english, speaks english",
            "language=es": "spanish, speaks spanish",
            "language=fr": "french, speaks french",
            "units=us": "us units, inches",
            "units=metric": "metric, metric units",
            "telegram": "telegram #, telegram id #",
            "also": "called @, also @, nickname @",
        },
        garments={
            "new": "new",
            "spare": "spare",
            "horse": "for @, @'s, @",
            "fill_g": "# g, # gr, # gram, # grams, # gsm",
            "size_in": "# in, # inch, # inches, size # in, size #",
            "size_cm": "# cm, size # cm",
            "denier": "# denier, # d",
            "waterproof=true": "waterproof",
            "waterproof=false": "not waterproof",
            "neck=half": "half neck",
            "neck=full": "full neck, high neck",
            "rear=leg straps": "leg straps, with leg straps",
            "rear=tail strap": "tail strap, with tail strap",
            "rear=fillet string": "fillet string, with fillet string",
            "also": "called @, also @, nickname @",
        },
        set="set @",
        sold="""sold, is sold, was sold, has been sold, no longer lives here, thrown away, is thrown away, thrown out,
            binned""",
        left="no longer works here, no longer rides here, has left the barn",
        struck="take @ off the list, strike @ off the list, strike @ from the list, remove @ from the list",
        torn="torn",
        yes="yes, yep, yeah, ok, okay, correct, right, do it, write it, yes please, 1",
        no="no, nope, cancel, do not, stop, leave it, no thanks, 2",
    ),
    "es": Table(
        new={
            "horses": "nuevo caballo, caballo nuevo, nueva yegua, yegua nueva",
            "horses species=pony": "nuevo poni, poni nuevo",
            "horses species=donkey": "nuevo burro, burro nuevo, nueva burra",
            "people role=groom": "nuevo mozo, nueva moza, nuevo cuidador, nueva cuidadora",
            "people role=owner": "nuevo dueño, nueva dueña, nuevo propietario, nueva propietaria",
            "people role=manager": "nuevo encargado, nueva encargada, nuevo gerente",
        },
        horses={
            "size_in": "# pulgadas, # in, talla #",
            "size_cm": "# cm, talla # cm",
            "weight_kg": "# kg, peso # kg",
            "girth_cm": "cincha # cm, cincha #",
            "length_cm": "largo # cm, largo #",
            "born": "nacido en #, nacida en #, nacido #, nacida #",
            "condition": "condición #",
            "owner": "dueño @, dueña @, propietario @, propietaria @",
            "coat=fine": "pelo fino",
            "coat=average": "pelo normal, pelo medio",
            "coat=heavy": "pelo espeso, pelo grueso",
            "species=pony": "poni",
            "species=donkey": "burro, burra",
            "also": "apodo @, también @",
        },
        people={
            "role=groom": "mozo, moza, cuidador, cuidadora",
            "role=owner": "dueño, dueña, propietario, propietaria",
            "role=manager": "encargado, encargada, gerente",
            "language=en": "inglés, habla inglés",
            "language=es": "español, habla español",
            "language=fr": "francés, habla francés",
            "units=us": "pulgadas",
            "units=metric": "métrico",
            "telegram": "telegram #",
            "also": "apodo @, también @",
        },
        garments={
            "new": "nuevo, nueva",
            "spare": "de repuesto, repuesto, de sobra",
            "horse": "para @, de @",
            "fill_g": "# g, # gr, # gramos, de # g, de # gramos",
            "size_in": "# pulgadas, # in, talla #",
            "size_cm": "# cm, talla # cm",
            "denier": "# denier, # d",
            "waterproof=true": "impermeable",
            "waterproof=false": "no impermeable",
            "neck=half": "medio cuello",
            "neck=full": "cuello entero, cuello completo",
            "rear=leg straps": "correas de patas, con correas de patas",
            "rear=tail strap": "correa de cola, con correa de cola",
            "rear=fillet string": "cordón trasero, con cordón trasero",
            "also": "apodo @, también @",
        },
        set="apunta @",
        sold="vendido, vendida, está vendido, está vendida, se vendió, se ha vendido, ya no vive aquí",
        left="ya no trabaja aquí, dejó la cuadra",
        struck="quita @ de la lista, quita a @ de la lista, borra @ de la lista, borra a @ de la lista",
        torn="rota",
        yes="sí, vale, correcto, de acuerdo, hazlo, sí gracias, 1",
        no="no, cancela, cancelar, déjalo, no gracias, 2",
    ),
    "fr": Table(
        new={
            "horses": "nouveau cheval, nouvelle jument",
            "horses species=pony": "nouveau poney",
            "horses species=donkey": "nouvel âne, nouvelle ânesse",
            "people role=groom": """nouveau palefrenier, nouvelle palefrenière, nouveau groom, nouveau soigneur,
                nouvelle soigneuse""",
            "people role=owner": "nouveau propriétaire, nouvelle propriétaire",
            "people role=manager": "nouveau responsable, nouvelle responsable, nouveau gérant, nouvelle gérante",
        },
        horses={
            "size_in": "# pouces, # in",
            "size_cm": "# cm, taille # cm, taille #",
            "weight_kg": "# kg, poids # kg",
            "girth_cm": "périmètre # cm, périmètre #",
            "length_cm": "longueur # cm, longueur #",
            "born": "né en #, née en #, né #, née #",
            "condition": "état #",
            "owner": "propriétaire @, à @",
            "coat=fine": "poil fin",
            "coat=average": "poil moyen, poil normal",
            "coat=heavy": "poil épais",
            "species=pony": "poney",
            "species=donkey": "âne, ânesse",
            "also": "surnom @, aussi @",
        },
        people={
            "role=groom": "palefrenier, palefrenière, groom, soigneur, soigneuse",
            "role=owner": "propriétaire",
            "role=manager": "responsable, gérant, gérante",
            "language=en": "anglais, parle anglais",
            "language=es": "espagnol, parle espagnol",
            "language=fr": "français, parle français",
            "units=us": "pouces",
            "units=metric": "métrique",
            "telegram": "telegram #",
            "also": "surnom @, aussi @",
        },
        garments={
            "new": "nouveau, nouvelle, nouvel, neuf, neuve",
            "spare": "de réserve, de rechange, réserve",
            "horse": "pour @, de @, d' @",
            "fill_g": "# g, # gr, # grammes, de # g",
            "size_in": "# pouces, # in",
            "size_cm": "# cm, taille # cm, taille #",
            "denier": "# deniers, # d",
            "waterproof=true": "imperméable",
            "waterproof=false": "pas imperméable",
            "neck=half": "demi encolure",
            "neck=full": "encolure complète, encolure entière",
            "rear=leg straps": "sangles de cuisses, avec sangles de cuisses",
            "rear=tail strap": "croupière, avec croupière",
            "rear=fillet string": "cordon de queue, avec cordon de queue",
            "also": "surnom @, aussi @",
        },
        set="note @",
        sold="vendu, vendue, est vendu, est vendue, a été vendu, a été vendue, n'habite plus ici",
        left="ne travaille plus ici, a quitté l'écurie",
        struck="retire @ de la liste, enlève @ de la liste, raye @ de la liste",
        torn="déchirée",
        yes="oui, ouais, d'accord, correct, vas y, ok, oui merci, 1",
        no="non, annule, annuler, laisse, non merci, 2",
    ),
}
