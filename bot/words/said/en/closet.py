"""What a barn's own past says of its clothes, in English."""

CLOSET = {
    "closet head": "{start} to {end}: {days} days on record, {rounds} rounds, air from {coldest} to {warmest}.",
    "closet too short": (
        "Too little is on record to advise on clothes: {days} days of rounds and weather; I need {needed}. "
        "Ask again when they are there."
    ),
    "closet first": "What to do first:",
    "closet advice": "{rank}. {horse}: {what} would take away {hours}.",
    "closet buy": "a {piece}, {size},",
    "closet second": "a second {piece}",
    "closet mend": "mending the {piece}",
    "closet find": "finding or replacing the {piece}",
    "closet reproof": "reproofing the {piece}",
    "closet cold hours": "{hours} too cold",
    "closet warm hours": "{hours} too warm",
    "closet price": "{hours} (for {more} more)",
    "closet nothing": "No single piece would have helped much.",
    "closet missed head": "Wanted at a round, but away:",
    "closet missed": "{piece}: {count}× ({why})",
    "closet times": "{what} {count}×",
    "closet elsewhere": "on another horse",
    "closet seen head": "Seen in them:",
    "closet seen": "{piece}: {seen}",
    "closet cold": "cold",
    "closet warm": "too warm",
    "closet rubbed": "rub",
    "closet leaking": "Soaked through when last wet, reproof: {pieces}.",
    "closet never": "Never worn in these weeks: {pieces}.",
    "closet all worn": "Everything was worn.",
    "closet more": "and {count} more",
    "closet honest": "Hours are estimates, with the weather as forecast then.",
    "closet failed": "I could not work that out; the operator finds the reason in the log.",
}
