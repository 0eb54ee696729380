"""Names as people mean them: capitals and accents make no difference."""

import unicodedata

WHOLE_LETTERS = str.maketrans({"ł": "l", "ø": "o", "đ": "d", "ı": "i", "æ": "ae", "œ": "oe"})  # NFKD keeps these whole


def plain(name: str) -> str:
    """A name without capitals, accents and doubled spaces: "Inés " and "ines" are one."""
    parts = unicodedata.normalize("NFKD", name.casefold())
    bare = "".join(c for c in parts if not unicodedata.combining(c)).translate(WHOLE_LETTERS)
    return " ".join(bare.split()) or name
