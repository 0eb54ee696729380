"""Which piece of clothing is meant, whose it is, and what a change does to an outfit.

jackets            what is clothing only where a horse wears it
neck_covers        a neck that is worn
no_piece           words of clothes that are none where they stand
no_garment         what only sounds like a garment of the barn's
clothes, as_described   a piece of clothing as somebody described it
owned              whose it is
hung_there         where it was before, said only to tell which one
worn_by            whose it is that another wears
that_of            a piece told only by whose it is
which              the barn's garment that a description comes to
shares             what each of several horses gets
change             what a clause does to an outfit
"""
