"""Where wood burns, and no horse stands: "wet birch in the stove". As `tokens` writes them, without accents."""

_HEARTHS = """
    stove stoves woodstove woodburner burner fireplace fire hearth oven range bonfire firepit grate furnace kiln
    chimenea estufa fogon horno hoguera lumbre brasero fuego salamandra
    poele cheminee foyer insert four feu atre brasier
"""
HEARTHS = frozenset(_HEARTHS.split())
