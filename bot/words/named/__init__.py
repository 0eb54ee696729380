"""Which words that look like a name are one, and which only bear it.

borne              what is said to be worn and only tells how it is
et_est             French "et" and "est" written for each other
settle             which words that look like names are names
doubtful           and of which of them nobody is sure: "Otto or Fig"
weatherlike, told_apart, articled, name_lists, behind_name, food, fuel   what speaks for a name, and against
others_called_so, called   family, beasts, things and horses of other places that only bear a name of the barn
their_horse        a horse told by its owner, or beside "the horse"
quotations         songs, captions, homework between quotation marks
namesakes          people who are called as a horse is
clipped_so, wished_around   how it was clipped, told behind its name; a wish told around it
relatives          whom "who is shivering" tells of
my_things          what is the speaker's, and no garment, told by its colour
my_own             whether "mine" is a horse
in_passing         who is named only to tell of somebody else: "the mare next to Maple"
he_or_the_sky      French "il gèle" of a horse
"""
