"""What a barn's own past says of its clothes, in Spanish."""

CLOSET = {
    "closet head": "Del {start} al {end}: {days} días con datos, {rounds} rondas, aire de {coldest} a {warmest}.",
    "closet too short": (
        "Hay muy pocos datos para aconsejar sobre mantas: {days} días de rondas y tiempo; hacen falta {needed}. "
        "Pregunte otra vez cuando los haya."
    ),
    "closet first": "Lo primero:",
    "closet advice": "{rank}. {horse}: {what} quitaría {hours}.",
    "closet buy": "una {piece}, {size},",
    "closet second": "una segunda {piece}",
    "closet mend": "reparar la {piece}",
    "closet find": "encontrar o reponer la {piece}",
    "closet reproof": "reimpermeabilizar la {piece}",
    "closet cold hours": "{hours} de frío",
    "closet warm hours": "{hours} de calor",
    "closet price": "{hours} (a cambio de {more} más)",
    "closet nothing": "Ninguna pieza sola habría ayudado mucho.",
    "closet missed head": "Hacía falta en una ronda y no estaba:",
    "closet missed": "{piece}: {count}× ({why})",
    "closet times": "{what} {count}×",
    "closet elsewhere": "en otro caballo",
    "closet seen head": "Lo que se vio con ellas:",
    "closet seen": "{piece}: {seen}",
    "closet cold": "frío",
    "closet warm": "calor",
    "closet rubbed": "rozadura",
    "closet leaking": "Caladas la última vez, hay que impermeabilizar: {pieces}.",
    "closet never": "Nunca usadas en estas semanas: {pieces}.",
    "closet all worn": "Todo se usó.",
    "closet more": "y {count} más",
    "closet honest": "Las horas son estimadas, con el tiempo que se pronosticó entonces.",
    "closet failed": "No pude calcularlo; la causa está en el registro del servidor.",
}
