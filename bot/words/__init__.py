"""What people mean: a message → facts, a question, an ask, or silence. Pure; writes nothing.

tokens     a message cut into words, case and accents set aside
heard/     the tables: what is heard in each language
spelling, homophones, spoken_french, spoken_spanish   words as a dictionary has them, from words as thumbs type them
lexicon, phrases   those tables made quick to look up
wordlist   many words in little room
names      who and what this barn has names for; slips of the finger
items      what a word may stand for
misspelt   words of the trade with a slip in them
slipped    names that what follows tells: a slip in one word, an apostrophe lost
alone      words that are the same whatever stands beside them
scan, begins_anew    the longest name or phrase at each place, its last word left to what begins there
years      a year that is over
borne      what is said to be worn and only tells how it is
et_est     French "et" and "est" written for each other
settle     which words that look like names are names
doubtful   and of which of them nobody is sure: "Otto or Fig"
weatherlike, told_apart, articled, name_lists, behind_name   what speaks for a name, and against
others_called_so   family, beasts, things and horses of other places that only bear a name of the barn
their_horse a horse told by its owner
elsewhere  horses of other people and other places, told by their kind
namesakes  people who are called as a horse is
clipped_so, wished_around    how it was clipped, told behind its name; a wish told around it
jackets    what is clothing only where a horse wears it
no_garment what only sounds like a garment of the barn's
no_piece   words of clothes that are none where they stand
clothes, as_described   a piece of clothing as somebody described it
relatives  whom "who is shivering" tells of
my_things  what is the speaker's, and no garment, told by its colour
owned      whose it is
hers       what is a horse's, and not the horse: "Maple's halter", "Maple's new saddle fitter"
in_passing who is named only to tell of somebody else: "the mare next to Maple"
worn_by    whose it is that another wears
cleft      which one it is, and not the other: "it's not Pip who's cold, it's Ned"
mending, mended, meant_instead, said_otherwise   what is mended while speaking: which piece, which horse, how it is
second_thoughts   what is taken back of what was told before
own_plans  what the speaker is about to do, in a verb that lacks its accent
he_or_the_sky French "il gèle" of a horse
si_for_yes Spanish "sí" written as "si"
sentences  where each ends, and whether it is marked as a question
that_of    or told only by whose it is
which      the garment that comes to
asides     what only tells which horse is meant
but_these  all but these, said as what they are not yet
clauses, cutting, whole   one thought each
parting    the words in a sentence that begin another
begins     what a pause or an "and" begins
him_too    a pronoun in a list of names
listed     names in a list, and where it ends
subjects   of whom the next sign is told
telling, summed    what a message has said so far, and what that comes to
things     buckets, boots, places: what is told of them is told of no horse
whose      whom a sign without a name is about
agreement, pronouns, one_to_another   which of several horses "he" is
removed    why a piece came off
stripped   everything off, or all but one piece
asking, asked_beside, undoing   what is a question, what takes back
signs, states, wear, placed, routine, questions, topics, choices    one sort of saying each
done       the round as done, and who is left out of it
it         what was done to "it"
shares     what each of several horses gets
change     what a clause does to an outfit
dressed_alike how one is dressed, left out because the one before said so
wearers    who wears it
put_right  what is worn so no longer
outfits    what a horse wears then
elided     what a clause leaves out because the one before said so
thread, remembered   whom a clause leaves for those behind it
doubts     two things said of which one can be so
below      what a hand finds under a piece
holes      a hole, how big, and in what
around, onoff, named_at_last    what the words beside a sign or a piece say of it
no_report, supposed   a plan, a condition, a habit, what is still to come, what is long over
reasons    why something is wanted, told behind it
overlooked danger that no grammar caught
reading    all of it, in order
languages  in which language it may be
meaning    what comes of it
risky      names that will be misheard
"""

from bot.words.meaning import Ask, Heard, Reference, Refused
from bot.words.reading import read
from bot.words.risky import warnings

__all__ = ["Ask", "Heard", "Reference", "Refused", "read", "warnings"]
