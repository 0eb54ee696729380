"""What stands over a list of horses and only says on which round, or where, somebody went: no plan, no shopping."""

ROUNDS: dict[str, str] = {
    "en": """
        round rounds check checks checked walk walkround lap patrol update status report notes turnout morning noon
        afternoon evening late early first last am pm yard barn field fields paddock paddocks stable stables
        row block aisle wing side top bottom back front upper lower left right number no as
        horse horses pony ponies name state left so here wearing who has what in on
    """,
    "es": """
        ronda rondas vuelta vueltas repaso parte revisión visita informe novedades mañana mediodía tarde primera
        segunda tercera última cuadra cuadras boxes prado prados pista patio pasillo fila nave arriba abajo fondo
        izquierda derecha así han quedado quedan queda están
        caballo caballos nombre manta estado van quién lleva qué
    """,
    "fr": """
        tour tours ronde rondes passage point bilan visite contrôle relevé compte rendu matin midi après soir
        premier première dernier dernière écurie écuries box boxes barn pré prés paddock paddocks allée rangée cour
        haut bas fond gauche droite voilà
        cheval chevaux nom couverture ainsi comme ça état qui a quoi porte
    """,
}
