"""French as it is spoken, written as a dictionary has it: "d'poil", "su'a corde", "Mika y met quoi", "est-tu sèche"."""

from collections.abc import Collection, Sequence

from bot.words.lookup.tokens import Token

FULL = {"d'": "de", "j'": "je", "qu'": "que", "n'": "ne", "s'": "se", "m'": "me", "t'": "te", "c'": "ce", "l'": "le"}
VOWELS = "aeiouyh"
STOPS = ".!?;\n"
# what may be written otherwise: short words, "jé", "mé", "tu" that asks, and where its question ends
SPOKEN = frozenset((
    *FULL, "y", "a", "avec", "su", "sou", "i", "c", "se", "mi", "ben", "je", "me", "son", "tu", *STOPS,
))  # fmt: skip
SHORT = 2  # letters of "le", which is no "l'" and a word
END = Token("", "", 0, 0, "mark")
# beside these "y" is a place, or "to her": "j'y ai mis", "on y va", "il y a"
THERE_BEHIND = frozenset((
    "j'", "je", "on", "il", "elle", "ils", "elles", "nous", "vous", "tu", "ca", "n'", "ne", "s'", "m'", "t'", "l'",
    "d'", "pouvez", "peux", "peut", "peuvent", "va", "vas", "vais", "vont", "allez", "allons", "faut", "pour",
    "a", "de", "sans", "tout", "qui", "moi", "toi",
))  # fmt: skip
THERE_BEFORE = frozenset(("a", "en", "compris", "avait", "aura", "aurait", "ait", "ai", "as"))
KNOWN_BEHIND = frozenset(("ai", "as", "a", "avais", "avait", "aurait", "avons", "avez", "ont", "eu", "pas", "jamais"))
COUNTING = frozenset(("un", "le", "les", "des", "chaque", "pas", "de", "mon", "son"))
OURS = frozenset(("la", "le", "l'", "les", "sa", "son", "ses", "une", "un"))
WHAT = frozenset(("quoi", "koi", "kwa", "laquelle", "combien"))
PARTS_OF_DAY = frozenset(("soir", "matin", "midi", "week", "weekend"))
WELL_BEHIND = frozenset(("est", "sont", "va", "vont", "yest", "ye", "ysont"))
WELL_BEFORE = frozenset(("et", "pis", "puis", "mais", "dans", "sous", "au", "avec"))
SEVERAL = frozenset(("ils", "elles", "tous", "toutes", "oreilles", "chevaux", "deux"))
JOINING = frozenset(("et", "e", "pis", "puis", "n"))
HOW = frozenset(("en", "tout", "tous", "toutes", "bien", "tres", "trop", "dehors", "dedans", "au", "secs"))
ASKING = frozenset((
    "est", "sont", "a", "ont", "va", "vont", "annonce", "annoncent", "reste", "porte", "met", "mange", "dort", "seche",
))  # fmt: skip
SHE_DOES = frozenset(("reste", "soit", "aille", "mange", "porte", "ait", "tremble", "dorme", "sorte"))


def in_full(word: str, behind: str) -> str:
    """A word that lost its vowel before a consonant, as in "d'poil", "j'viens", with its vowel; any other as it is."""
    return FULL[word] if word in FULL and behind[:1] not in VOWELS else word


def as_written(tokens: Sequence[Token], named: Collection[str]) -> list[Token]:
    """The tokens as they would be written. named: the words of the barn's names, which stay as they are."""
    found: list[Token] = []
    end = 0
    asked = False
    for at in [at for at, token in enumerate(tokens) if token.text in SPOKEN]:
        token = tokens[at]
        found.extend(tokens[end:at])
        end = at + 1
        if token.text == "tu" and _asks(token, tokens[at - 1] if at else END):
            asked = True  # "la mauve est-tu sèche": a question mark, said
            continue
        if asked and token.text in STOPS:
            found.append(_question_mark(token))
            asked = False
        found.extend(_written(tokens, at, named))
    said_last = [_question_mark(tokens[-1])] if asked else []
    return [*found, *tokens[end:], *said_last]


def _written(tokens: Sequence[Token], at: int, named: Collection[str]) -> Sequence[Token]:
    """The word or two that are written for the one at this place."""
    token = tokens[at]
    before, behind = (tokens[at - 1] if at else END), (tokens[at + 1] if at + 1 < len(tokens) else END)
    if token.raw.casefold() == "jé":  # "jé mi la bleue"
        return (token._replace(text="j'"), token._replace(text="ai"))
    if token.text in named and token.text not in FULL:
        return (token,)
    tied = token.tied and token.text == "y"  # "remettez-y sa couverte"
    said = token.text if tied else _said(token.text, before.text, behind, named)
    if token.raw == "mé":  # "on mé koi", "Max a froid mé Lune non"
        said = "met" if behind.text in WHAT else "mais"
    if said == "son" and _are(tokens, at, named):
        said = "sont"
    return (token if said == token.text else token._replace(text=said),)


def _question_mark(near: Token) -> Token:
    return Token("?", "?", near.start, near.start, "mark")


def _asks(token: Token, before: Token) -> bool:
    """Whether "tu" only asks, behind a verb that is not of "tu": "a-tu", "annonce-tu"; not "as-tu", "peux-tu"."""
    third = before.kind == "word" and not before.text.endswith(("s", "x", "-"))
    return (token.tied and third) or before.text in ASKING


def _said(word: str, before: str, behind: Token, named: Collection[str]) -> str:
    follows = behind.text if behind.kind == "word" else ""
    if word in FULL:
        return in_full(word, follows) if follows else word
    if word == "y":
        return "il" if _he(before, follows) else word
    if word == "a":  # "j'aimerais qu'a reste nue"; not "qu'a fait Perle"
        return "elle" if before == "qu'" and follows in SHE_DOES else word
    if word == "avec":  # "Perle a chaud pis Ulysse avec"
        return "aussi" if before in named and behind.kind == "mark" else word
    if word == "su":  # "mis la bleue su Ti-Loup"
        return "sur" if follows and before not in KNOWN_BEHIND else word
    if word == "sou":  # "sou sa couv"; "pas un sou"
        return "sous" if follows and before not in COUNTING else word
    if word == "i":  # "i se les caille"
        return "il" if follows else word
    if word == "c":  # "tu c faire quoi", "je c pas"
        return "sais" if before in ("tu", "je") else word
    if word == "se":  # "on met quoi se soir"
        return "ce" if follows in PARTS_OF_DAY else word
    if word == "mi":  # "mi la rouge a Filou", "mi limper a Filou"
        run_together = follows[:1] == "l" and follows[1:2] in VOWELS and len(follows) > SHORT
        return "mis" if follows in OURS or run_together else word
    if word == "ben":  # "Joe y'est ben"; not "est ben frette"
        return "bien" if before in WELL_BEHIND and (not follows or follows in WELL_BEFORE) else word
    return word


def _are(tokens: Sequence[Token], at: int, named: Collection[str]) -> bool:
    """As in "ils son trempés", "Perle et Ulysse son rentré": "sont", behind several and before a participle."""
    before, joined = tokens[max(0, at - 2) : at], tokens[max(0, at - 2) : at - 1]
    listed = bool(joined) and joined[0].text in JOINING and before[-1].text in named
    behind = tokens[at + 1] if at + 1 < len(tokens) else END
    how = behind.raw.endswith(("é", "és", "ée", "ées")) or behind.text in HOW
    return how and bool(before) and (before[-1].text in SEVERAL or listed)


def _he(before: str, follows: str) -> bool:
    """As in "Mika y met quoi", "y se roule"; not "vous pouvez y mettre"."""
    there = not follows or before in THERE_BEHIND or follows in THERE_BEFORE
    return not there and not follows.endswith(("er", "ir", "mettre"))
