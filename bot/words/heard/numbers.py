"""Verbs that tell of one horse, and words that tell of several: "Luna y Brisa está" is of Brisa, "están" of both.

Only the first word of a phrase counts, as `tokens` writes it.
"""

_OF_ONE = """
    is was has looks feels seems isnt wasnt shivers sweats coughs
    esta estaba tiene tenia sigue seguia anda va viene venia lleva parece ha suda sudaba tirita tiritaba tiembla
    temblaba tose tosia cojea cojeaba transpira transpiraba
    's est etait a avait semble reste tremble tremblait grelotte grelottait transpire transpirait tousse toussait
    boite boitait frissonne sue suait
"""
OF_ONE = frozenset(_OF_ONE.split())
OF_SEVERAL = frozenset(
    ("are", "they", "both", "estan", "tienen", "tiemblan", "sudan", "elles", "ils", "ont", "sont", "vont")
)
