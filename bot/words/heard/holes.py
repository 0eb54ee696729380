"""What a hole is called: how big it is and where comes behind it, and last of all in what."""

_WORDS = """
    hole holes rip rips tear tears slit gash
    agujero agujeros agujerazo agujerito roto rotos hoyo hoyos hoyote siete rotura raja rajada tajo desgarro desgarron
    boquete
    trou trous accroc accrocs dechirure dechirures fente fentes entaille entailles craque balafre
"""
HOLES = frozenset(_WORDS.split())
