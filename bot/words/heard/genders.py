"""What a pronoun agrees with where things have one: French says "elle" of a couverture, "il" of an imper.

English says "it" of them, and Spanish leaves the pronoun out: its articles tell.
"""

_WORDS = {
    "feminine": """
        elle elles celle-ci la las une una sa ma cette
        couverture couvertures couv couvs couverte couvrante chemise polaire
        séchante doudoune doublure couette cape pelisse cagoule souscouv sous-couverture
    """,
    "masculine": """
        il ils celui-ci le un mon ce el los
        imper limper impers imperm imperméable ciré plaid manteau duvet liner bonnet camail
        couvre-cou couvre-col couvre-encolure peignoir
    """,
}
GENDERS = {word: gender for gender, said in _WORDS.items() for word in said.split()}
