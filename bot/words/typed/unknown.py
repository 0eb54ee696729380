"""A word in no table: a name with a slip or cut short, a trade word with a slip, an everyday word, or nothing known."""

from dataclasses import replace

from bot.words.lookup.items import Item
from bot.words.lookup.lexicon import Lexicon, everyday, first_names, of_a_language
from bot.words.lookup.names import Roster, Words, sounded
from bot.words.lookup.tokens import Token
from bot.words.typed.alone import SHORTENED
from bot.words.typed.misspelt import trade_word
from bot.words.typed.slipped import told_behind

ALIVE = frozenset(("sign shivering", "sign sweating"))  # what no food does, nor any thing
OPENS = ".!?¡¿\n"  # behind which any word has a capital
LONG_PART = 4  # letters from which a word of the tables may stand for a longer name


def unknown_word(token: Token, texts: Words, at: int, lexicon: Lexicon, roster: Roster) -> Item:
    """What this word may be; never a horse for certain that another word may name as well."""
    word = token.text
    if word in roster.parts:
        known, horses = everyday(word), roster.parts[word]
        sure = not known and len(horses) == 1  # "Sorrel" for Old Sorrel; "Lady" for Lady Grey is asked about
        return Item(word, token.raw, horses=horses, sure=sure, known=known, capital=token.capital)
    if token.kind == "number":
        return Item(word, token.raw, number=float(word))
    if word in roster.words:  # of a piece's own name: "la de los patos"
        return Item(word, token.raw, known=everyday(word), capital=token.capital)
    several = lexicon.language == "en" and word.endswith("s") and word not in roster.begun  # "the funnels are wet"
    ordinary = everyday(word) or (several and everyday(word[:-1]))
    ordinary = ordinary and not _of_no_word_here(word, lexicon, roster)
    if ordinary and len(word) >= LONG_PART and word not in lexicon.everyday and told_behind(texts, at + 1, lexicon):
        begun = roster.begins(word) if word not in roster.people else ()
        if len(begun) > 1:  # "roma a froid", of a Romarin and a Romane
            return Item(word, token.raw, horses=begun, sure=False, exact=False, known=False, capital=token.capital)
    short = _cut_short(token, texts, at, lexicon, roster, ordinary=ordinary)
    if short is not None:
        return short
    horses, apart, told = _nearest(word, texts, at, lexicon, roster, ordinary=ordinary)
    item = Item(word, token.raw, known=ordinary, capital=token.capital)
    if ordinary or (len(word) < LONG_PART and not _a_letter_short(word, horses, roster)):
        return _perhaps_meant(item, horses if apart == 1 else (), lexicon, roster)
    named = told or _capital_within(token, texts, at)
    limit = apart - named if horses else 2  # "montey sweaty": no money; "A Sután le he cambiado …": no "sudan"
    bent = trade_word(word, lexicon.language, 0 if horses and roster.of_these_letters(word) else limit)
    if bent in roster.spelled:  # "sundya", of a horse called Sunday: as if the word had been written
        means = lexicon.phrases.longest((bent,), 0)[0]
        meant = replace(item, text=bent, means=means, horses=horses, sure=len(horses) == 1)
        return replace(meant, known=of_a_language(bent)) if meant.sure else replace(meant, exact=False)
    nicknamed = roster.nearly_nicknamed(word) if not horses else ()  # "in ladybrid"
    if nicknamed:
        return replace(item, pieces=nicknamed)
    if bent:
        return replace(item, text=bent, means=lexicon.phrases.longest((bent,), 0)[0])
    return _with_a_slip(item, horses, roster) if horses else item


def _a_letter_short(word: str, horses: tuple[str, ...], roster: Roster) -> bool:
    """As in "jno" of Juno, "oto" of Otto: no word of any language, and one letter of one name was not hit."""
    names = [name for name, horse in roster.spelled.items() if (horse,) == horses and len(name) == len(word) + 1]
    short = (name[:k] + name[k + 1 :] for name in names for k in range(1, len(name)))
    return len(word) == LONG_PART - 1 and word in short


def _of_no_word_here(word: str, lexicon: Lexicon, roster: Roster) -> bool:
    """As in "flaco" of a Falco, in French: a word of another language, and all the letters of one name."""
    here = word in lexicon.everyday or word in lexicon.rarer or word in first_names()
    return not here and len(roster.of_these_letters(word)) == 1


def _capital_within(token: Token, texts: Words, at: int) -> bool:
    """Whether the word has a capital that no sentence begins with."""
    return token.capital and at > 0 and texts[at - 1] not in OPENS and token.raw[1:].islower()


def _cut_short(token: Token, texts: Words, at: int, lexicon: Lexicon, roster: Roster, *, ordinary: bool) -> Item | None:
    """As in "lunita" of Luna, "capt" of Captain, "rom grelotte"; None for any other word."""
    word = token.text
    item = Item(word, token.raw, exact=False, known=False, capital=token.capital)
    if lexicon.language == "es" and word in roster.fond and not ordinary and word not in roster.spelled:
        return replace(item, horses=(roster.fond[word],))
    begun = () if ordinary or len(word) < LONG_PART else roster.begins(word)
    if begun:  # asked about where two begin so
        rivals = roster.begins(word[:-1]) if len(word) == LONG_PART else ()  # "dako", of a Dakota and a Dakar
        begun = tuple(dict.fromkeys((*begun, *rivals)))
        return replace(item, horses=begun, sure=len(begun) == 1)
    shortened = len(word) == SHORTENED and word not in lexicon.everyday and told_behind(texts, at + 1, lexicon)
    horses = roster.begins(word) if shortened else ()
    return replace(item, horses=horses, sure=False, capital=False) if horses else None


def _nearest(
    word: str, texts: Words, at: int, lexicon: Lexicon, roster: Roster, *, ordinary: bool
) -> tuple[tuple[str, ...], int, bool]:
    """The horses with the nearest name, how far it is, and whether how one is stands behind the word."""
    plural = word.endswith("s") and word[:-1] in roster.spelled  # "thistles everywhere"; "pips cold" was seen to before
    horses, apart = ((), 0) if plural else roster.near(word)
    if plural and ordinary and not ALIVE.isdisjoint(lexicon.phrases.longest(texts, at + 1)[0]):
        horses, apart = (roster.spelled[word[:-1]],), 1  # "caramels tremble" is asked about; not "caramels mous"
    told = bool(word.endswith("s") or horses) and told_behind(texts, at + 1, lexicon)
    opens = at == 0 or not texts[at - 1].isalpha()
    is_so = bool(horses) and opens and "is" in lexicon.phrases.longest(texts, at + 1)[0] and not ordinary
    told = told or (is_so and told_behind(texts, at + 2, lexicon))  # "tlly is sweating": no telly
    if told and not (horses or plural or ordinary):
        horses, apart = roster.near(word[:-1])  # "rowens stopped sweating"
    return horses, apart, told


def _perhaps_meant(item: Item, horses: tuple[str, ...], lexicon: Lexicon, roster: Roster) -> Item:
    """An ordinary word one slip from a name: only ever asked about, a foreign one wherever it may be meant."""
    word = item.text
    spoken = len(word) < LONG_PART or word in lexicon.everyday or word in lexicon.rarer or word in first_names()
    plural = word.endswith("s") and word[:-1] in roster.spelled
    beside = () if plural and len(word) > LONG_PART else roster.a_letter_from(word)
    horses = beside if len(beside) > 1 or not horses else horses
    if horses and len(word) >= LONG_PART:  # "filo" may be Filou or Filoche
        horses = tuple(dict.fromkeys((*horses, *roster.begins(word))))
    return replace(item, horses=horses, sure=False, exact=False, known=spoken) if horses else item


def _with_a_slip(item: Item, horses: tuple[str, ...], roster: Roster) -> Item:
    word = item.text
    names = [name for name, horse in roster.spelled.items() if horse in horses]
    begun_alike = roster.of_these_letters(word) or any(_begun_alike(word, name) for name in names)
    sure = len(horses) == 1 and bool(begun_alike) and not _of_another_sex(word, names)
    return replace(item, horses=horses, sure=sure, exact=False)


def _begun_alike(word: str, name: str) -> bool:
    """As written, as heard, or the first two swapped: "cptain" of Captain, "kico" of Quico, "obi" of Bo."""
    return word[0] == name[0] or sounded(word)[0] == sounded(name)[0] or sorted(word[:2]) == sorted(name[:2])


def _of_another_sex(word: str, names: list[str]) -> bool:
    """As in "canelo" where only a Canela stands, "sultane" of a Sultan: no slip, perhaps a horse that is not here."""
    female = word[:-1] if word[-1] in "ae" and word[-2] not in "aeiouy" else word
    return any(female == name or (word[:-1] == name[:-1] and {word[-1], name[-1]} == {"a", "o"}) for name in names)
