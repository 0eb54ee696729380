"""Marks said aloud by who dictates, in each language; and the words behind which they are words like others."""

SPOKEN_MARKS: dict[str, dict[str, str]] = {
    "en": {
        "comma": ",", "period": ".", "full stop": ".", "question mark": "?", "exclamation mark": "!",
        "exclamation point": "!", "new line": "\n", "new paragraph": "\n", "semicolon": ";",
    },
    "es": {
        "coma": ",", "punto": ".", "punto y coma": ";", "punto y aparte": "\n", "punto y seguido": ".",
        "punto final": ".", "dos puntos": ":", "signo de interrogacion": "?", "nueva linea": "\n",
    },
    "fr": {
        "virgule": ",", "point": ".", "point virgule": ";", "point d' interrogation": "?", "point d' exclamation": "!",
        "a la ligne": "\n", "deux points": ":", "point final": ".",
    },
}  # fmt: skip
NO_MARK_BEHIND = frozenset((
    "a", "the", "this", "that", "one", "another", "each", "every", "my", "in", "of", "good", "which", "to", "cold",
    "el", "un", "este", "ese", "cada", "al", "su", "mi", "que", "en", "de", "no", "se", "me", "te", "buen", "algun",
    "le", "ce", "au", "du", "mon", "ton", "son", "aucun", "bon", "sur", "chaque", "quel", "ne", "n'", "y",
))  # fmt: skip
