"""What a thought tells: one sort of saying each, of whom, and what a message comes to.

second_thoughts    what is taken back of what was told before
subjects           of whom the next sign is told
telling, summed    what a message has said so far, and what that comes to
last_words         what stands of it where more than one thing was said of the same
things             buckets, boots, places: what is told of them is told of no horse
whose              whom a sign without a name is about
agreement, pronouns, one_to_another   which of several horses "he" is
removed            why a piece came off
stripped           everything off, or all but one piece
asked_beside       a question beside something else
asked_of, asked_to_wear   of what something is asked; what is worn, or to be worn
undoing            what takes back
signs, states, wear, placed, routine, questions, choices   one sort of saying each
put_away           what is brought somewhere and is no horse
done               the round as done, and who is left out of it
it                 what was done to "it"
dressed_alike      how one is dressed, left out because the one before said so
wearers            who wears it
put_right          what is worn so no longer
outfits            what a horse wears then
elided             what a clause leaves out because the one before said so
thread, remembered whom a clause leaves for those behind it
then_and_now       yesterday otherwise than today
swaps              one piece for another
likened            one likened to another
doubts             two things said of which one can be so
worn_and_wet       what a horse has on, and how wet that is
below              what a hand finds under a piece
onoff              what happens to one piece: on, off, or all that is worn
reasons            why something is wanted, told behind it
overlooked         danger that no grammar caught
"""
