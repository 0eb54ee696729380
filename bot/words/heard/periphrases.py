"""Spanish verbs that tell with another one that it was done: "acabo de", "volví a", "conseguí"."""

# what says so, and the form of "haber" that is meant; without one where a form of it stands before: "he vuelto a"
DONE = {
    "acabo de": "he", "acabas de": "has", "acaba de": "ha", "acabamos de": "hemos", "acaban de": "han",
    "volvi a": "he", "volviste a": "has", "volvio a": "ha", "volvimos a": "hemos", "volvieron a": "han",
    "acabé de": "he", "acabaron de": "han", "terminé de": "he", "terminamos de": "hemos", "terminaron de": "han",
    "pude": "he", "pudimos": "hemos", "consegui": "he", "conseguimos": "hemos", "logré": "he", "logramos": "hemos",
    "alcancé a": "he",
    "vuelto a": "", "terminado de": "", "acabado de": "", "podido": "", "conseguido": "", "logrado": "",
}  # fmt: skip
HAVE = frozenset(("he", "has", "ha", "hemos", "han"))

# participles that do not end as the others
IRREGULAR = {
    "poner": "puesto", "reponer": "repuesto", "volver": "vuelto", "devolver": "devuelto", "envolver": "envuelto",
    "hacer": "hecho", "deshacer": "deshecho", "rehacer": "rehecho", "ver": "visto", "cubrir": "cubierto",
    "descubrir": "descubierto", "abrir": "abierto", "romper": "roto", "decir": "dicho", "escribir": "escrito",
}  # fmt: skip
REGULAR = {"ar": "ado", "er": "ido", "ir": "ido"}

# pronouns at the end of an infinitive, the longest first
ENDINGS = {
    "selas": ("se", "las"), "selos": ("se", "los"), "sela": ("se", "la"), "selo": ("se", "lo"), "mela": ("me", "la"),
    "melo": ("me", "lo"), "les": ("les",), "los": ("los",), "las": ("las",), "nos": ("nos",), "le": ("le",),
    "lo": ("lo",), "la": ("la",), "se": ("se",), "me": ("me",), "te": ("te",), "": (),
}  # fmt: skip
