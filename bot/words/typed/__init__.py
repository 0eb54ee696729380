"""From words as thumbs type them to words as a dictionary has them, and the longest name or phrase at each place.

languages          in which language it may be
spelling, homophones   words as a dictionary has them, from words as thumbs type them
dictated           marks said aloud
misspelt           words of the trade with a slip in them
unknown            words in no table: a name with a slip or cut short, or nothing known
slipped            names that what follows tells: a slip in one word, an apostrophe lost
alone              words that are the same whatever stands beside them
opening_word       a word of the tables, one letter from a name, that opens what only a horse does
scan, begins_anew  the longest name or phrase at each place, its last word left to what begins there
"""
