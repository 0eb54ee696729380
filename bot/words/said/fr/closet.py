"""What a barn's own past says of its clothes, in French."""

CLOSET = {
    "closet head": "Du {start} au {end} : {days} jours connus, {rounds} tournées, air de {coldest} à {warmest}.",
    "closet too short": (
        "Trop peu de jours pour conseiller sur les couvertures : {days} jours de tournées et de temps ; "
        "il en faut {needed}. Redemandez quand ils y seront."
    ),
    "closet first": "À faire d'abord :",
    "closet advice": "{rank}. {horse} : {what} enlèverait {hours}.",
    "closet buy": "une {piece}, {size},",
    "closet second": "une deuxième {piece}",
    "closet mend": "réparer la {piece}",
    "closet find": "retrouver ou remplacer la {piece}",
    "closet reproof": "réimperméabiliser la {piece}",
    "closet cold hours": "{hours} de froid",
    "closet warm hours": "{hours} de chaud",
    "closet price": "{hours} (au prix de {more} de plus)",
    "closet nothing": "Aucune pièce seule n'aurait beaucoup aidé.",
    "closet missed head": "Voulue à une tournée, mais pas là :",
    "closet missed": "{piece} : {count}× ({why})",
    "closet times": "{what} {count}×",
    "closet elsewhere": "sur un autre cheval",
    "closet seen head": "Vu sous elles :",
    "closet seen": "{piece} : {seen}",
    "closet cold": "froid",
    "closet warm": "chaud",
    "closet rubbed": "frottement",
    "closet leaking": "Trempées la dernière fois, à réimperméabiliser : {pieces}.",
    "closet never": "Jamais mises pendant ces semaines : {pieces}.",
    "closet all worn": "Tout a servi.",
    "closet more": "et {count} de plus",
    "closet honest": "Les heures sont estimées, avec le temps prévu alors.",
    "closet failed": "Je n'ai pas pu le calculer ; la raison est dans le journal du serveur.",
}
