"""What is known before a message comes: the tables made quick to look up, the names of this barn, what a word may stand
for.

tokens             a message cut into words, case and accents set aside
spoken_french, spoken_spanish   what is said, written as the tables have it
lexicon, phrases   the tables made quick to look up
wordlist           many words in little room
remembered         what was worked out before, and forgotten when it is too much
names              who and what this barn has names for; slips of the finger
items              what a word may stand for
piece              a piece of clothing as somebody described it, before anybody knows which of the barn's garments it
                   is
gender             masculine and feminine, as French and Spanish nouns have it and what is said of them shows it
"""
