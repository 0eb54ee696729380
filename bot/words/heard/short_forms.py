"""Words as thumbs type them, and how words end in speech: each language's, written out before anything is looked up.

A word that is part of a horse's, a person's or a garment's name stays as it is typed.
"""

SHORT_FORMS: dict[str, dict[str, str]] = {
    "en": {
        "u": "you", "ur": "your", "r": "are", "n": "and", "thru": "through", "w": "with", "wi": "with",
        "abt": "about", "cuz": "because", "cos": "because", "coz": "because", "tmrw": "tomorrow",
        "tmr": "tomorrow", "isnt": "is not", "int": "is not", "wasnt": "was not", "hasnt": "has not",
        "havent": "have not", "hadnt": "had not", "dont": "do not", "doesnt": "does not", "didnt": "did not",
        "arent": "are not", "werent": "were not", "cant": "can not", "cannot": "can not", "wont": "will not",
        "couldnt": "could not", "shouldnt": "should not", "wouldnt": "would not", "aint": "is not",
        "thats": "that 's", "whats": "what 's", "wheres": "where 's", "hows": "how 's", "whos": "who 's",
        "theres": "there 's", "heres": "here 's", "ive": "i have", "weve": "we have", "youve": "you have",
        "theyve": "they have", "im": "i am", "youre": "you are", "theyre": "they are", "bn": "been",
        "rn": "right now", "2nite": "tonight", "tonite": "tonight", "nite": "night", "2day": "today",
        "b4": "before", "plz": "please", "pls": "please", "ppl": "people", "bc": "because", "ont": "on the",
        "outta": "out of", "yday": "yesterday",
    },
    "es": {
        "q": "que", "k": "que", "d": "de", "xq": "porque", "pq": "porque", "xk": "porque", "x": "por",
        "tb": "también", "tmb": "también", "tbn": "también", "ta": "está", "toy": "estoy", "tas": "estás",
        "tamos": "estamos", "pa": "para", "na": "nada", "bn": "bien", "dnd": "donde", "cdo": "cuando",
        "cnd": "cuando", "stoy": "estoy", "sta": "está", "stan": "están", "mñn": "mañana", "kien": "quien",
        "qn": "quien", "aki": "aquí", "aora": "ahora", "aorita": "ahorita", "pos": "pues", "dl": "del",
        "tng": "tengo", "hy": "hay", "sq": "es que", "nop": "no", "nah": "no",
    },
    "fr": {
        "jai": "j'ai", "jlai": "je l'ai", "jlui": "je lui", "jl": "je l'", "jviens": "je viens",
        "jvais": "je vais", "jvois": "je vois", "jsuis": "je suis", "chui": "je suis", "jpense": "je pense",
        "jcrois": "je crois", "cest": "c'est", "c": "c'est", "g": "j'ai", "ya": "il y a", "yen": "il y en",
        "pr": "pour", "ds": "dans", "tt": "tout", "ttes": "toutes", "tte": "toute", "ts": "tous", "jms": "jamais",
        "tjs": "toujours", "tjrs": "toujours", "pk": "pourquoi", "pq": "pourquoi", "prq": "pourquoi",
        "qd": "quand", "bcp": "beaucoup", "ki": "qui", "ke": "que", "k": "que", "q": "que", "mtn": "maintenant",
        "auj": "aujourd'hui", "ajd": "aujourd'hui", "pcq": "parce que", "kel": "quel", "kelle": "quelle",
        "koi": "quoi", "d": "de", "ss": "sous", "av": "avec", "avc": "avec", "ap": "après", "tlm": "tout le monde",
        "slmt": "seulement", "qqn": "quelqu'un", "qqun": "quelqu'un", "nn": "non", "nan": "non", "ouais": "oui",
        "vs": "vous", "ns": "nous", "cc": "coucou", "tkt": "t'inquiète", "pdt": "pendant", "dl": "de la",
        "pa": "pas", "pu": "plus", "ete": "été", "etait": "était", "qq": "quelque", "msg": "message",
        "stp": "s'il te plaît", "svp": "s'il vous plaît",
    },
}  # fmt: skip

ENDINGS: dict[str, tuple[tuple[str, str], ...]] = {
    "en": (("in", "ing"),),
    "es": (
    ("ao", "ado"),
    ("aos", "ados"),
    ("ico", "o"),
    ("quito", "co"),
    ("quita", "ca"),
    ("quitos", "cos"),
    ("quitas", "cas"),
    ("ito", "o"),
    ("ita", "a"),
    ("itos", "os"),
    ("itas", "as"),
    ("tica", "ta"),
    ("tico", "to"),
    ("aito", "ado"),
    ("aita", "ada"),
),
    "fr": (),
}  # fmt: skip
