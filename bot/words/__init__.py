"""What people mean: a message → facts, a question, an ask, or silence. Pure; writes nothing.

A folder uses only those above it; each has a page of its own.

heard/             the tables: what is heard in each language
said/              the sentences of the answers in each language
lookup/            what is known before a message comes: the tables made quick to look up, the names of this barn,
                   what a word may stand for
typed/             from words as thumbs type them to words as a dictionary has them, and the longest name or phrase at
                   each place
thoughts/          sentences cut into thoughts, one each, and which thoughts are no report
mending/           what is put right while speaking: another horse or piece was meant, a word lacks its accent
named/             which words that look like a name are one, and which only bear it
clothing/          which piece of clothing is meant, whose it is, and what a change does to an outfit
told/              what a thought tells: one sort of saying each, of whom, and what a message comes to
as_meant           the words of a message with all of that settled and put right
reading            the whole message, sentence by sentence
meaning            what comes of it
risky              names that will be misheard
"""

from bot.words.meaning import Ask, Heard, Reference, Refused
from bot.words.reading import read
from bot.words.risky import warnings

__all__ = ["Ask", "Heard", "Reference", "Refused", "read", "warnings"]
