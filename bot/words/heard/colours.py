"""Colours that are one in several languages: the barn file calls a rug green, and a groom "la verde".

As `tokens` writes them, without accents.
"""

ALIKE = (
    "blue azul azules azulita azulito bleu bleue bleus bleues",
    "red rojo roja rojos rojas rojita rojito rouge rouges",
    "green verde verdes verdecita vert verte verts vertes",
    "black negro negra negros negras negrita noir noire noirs noires",
    "white blanco blanca blancos blancas blanquita blanc blanche blancs blanches",
    "grey gray gris grises grisa grisita grise grises",
    "brown marron marrones cafe marron marrons brun brune brunes",
    "yellow amarillo amarilla amarillos amarillas jaune jaunes",
    "orange naranja naranjas anaranjada anaranjado",
    "purple morado morada morados moradas violet violette violets violettes violeta",
    "pink rosa rosita rosada rosado rose roses",
    "burgundy maroon burdeos bordo granate bordeaux bordeau grenat",
    "navy marino marine",
    "turquoise turquesa turquoises",
    "gold dorado dorada dore doree",
    "silver plateado plateada argent argente argentee",
    "tartan plaid escoces escocesa tartan ecossais ecossaise",
    "checked checkered chequered cuadros carreaux",
    "striped stripy stripes rayas rayures raye rayee",
)

COLOURS: dict[str, str] = {word: row.split()[0] for row in ALIKE for word in row.split()}
