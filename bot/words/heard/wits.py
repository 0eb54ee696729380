"""What somebody who wrote wrong says of himself: "cancel that, I can't read". As `tokens` writes them, unaccented.

FAILING only where it is denied: "I can't type", "no glasses on". WITLESS as it stands: "half asleep".
"""

_FAILING = """
    read type spell count write text typing spelling reading counting thumbs fingers brain glasses specs awake
    leer escribir contar dedos cerebro gafas lentes despierto despierta
    lire ecrire taper compter doigts cerveau lunettes reveille reveillee
"""
_WITLESS = """
    autocorrect predictive asleep drunk hungover dyslexic senile muppet idiot numpty dozy plonker eejit
    autocorrector corrector dedazo dormido dormida idiota burro burra
    correcteur dors idiot idiote neuneu
"""
FAILING, WITLESS = frozenset(_FAILING.split()), frozenset(_WITLESS.split())
# what is taken back by its name: "borra mi último mensaje", "scrap that last one"
MESSAGE = frozenset(("last", "message", "msg", "text", "ultimo", "mensaje", "anterior", "dernier"))
