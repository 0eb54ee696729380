"""What is put right while speaking: another horse or piece was meant, a word lacks its accent.

another            whether another thought begins: also, meanwhile, run_on, between two without a mark
bracketed          how one is, between brackets
cleft              which one it is, and not the other: "it's not Pip who's cold, it's Ned"
mending, mended, meant_instead, said_otherwise   what is mended while speaking: which piece, which horse, how it is
earlier            "tout à l'heure" and "luego" beside what was done
lists_of_pieces    several pieces told of at once
named_last         who is named when all is said: "cold but not shivering Otto", "cold Otto, fine Fig"
none_but           all denied but one: "nobody is sweating except Maple"
set_off            what only joins, between two pauses: "Otto's sheet, on the other hand, is soaked"
simple_present     English "Otto sweats" of now
strung             thoughts strung together without a mark, of no horse and then of one
warm_but_dry       "warm, but not sweating": hot
own_plans          what the speaker is about to do, in a verb that lacks its accent
si_for_yes         Spanish "sí" written as "si"
"""
