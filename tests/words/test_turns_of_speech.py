"""Turns of speech that strangers use and no table lists: a class a row, each in a barn that speaks the language."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # one observation is one sign
        ("oak", "Tucker hot and dripping with sweat", [("Tucker", "sweating")]),
        ("oak", "Tucker freezing cold and shivering", [("Tucker", "shivering")]),
        # a ride is praised when it is over; by what lessons there were
        ("oak", "lovely long ride on Tucker past the mill earlier", [("Tucker",)]),
        ("oak", "looking forward to a nice ride on Tucker", []),
        ("oak", "tucker did the 9 and 10 lessons", [("Tucker",)]),
        ("encina", "buen paseo con Moro esta mañana", [("Moro",)]),
        ("oak", "no the pump isn't fixed, Tucker got ridden at 10", [("Tucker",)]),
        ("oak", "Tucker isn't cold, I put my hand right under his rug", [("Tucker", "comfortable")]),
        ("oak", "the spare sheet that is on Tucker is wet", [("spare-sheet", "wet")]),
        # where it was seen, said anywhere
        ("oak", "Tucker: sweaty. In his stable.", [("Tucker", "sweating", "stall")]),
        ("oak", "Tucker came back from the hack. He is sweaty", [("Tucker", "sweating", "after work")]),
        # of another not
        ("oak", "Tucker sweaty, Otto not", [("Tucker", "sweating"), ("Otto", "comfortable")]),
        ("oak", "Tucker dry and happy, Otto same, Fig cold", [
            ("Tucker", "comfortable"), ("Otto", "comfortable"), ("Fig", "cold"),
        ]),
        ("oak", "Otto is good, nice and snug under all that hair", [("Otto", "comfortable")]),
        ("oak", "both of Otto's are wet", []),
        ("oak", "neither Otto nor Fig is cold", [("Otto", "comfortable"), ("Fig", "comfortable")]),
        # in other words
        ("chenaie", "Marques de frottement épaule gauche, Perle.", [("Perle", "rubbed")]),
        ("chenaie", "Pourquoi Perle est-elle aussi chaudement vêtue ce soir ?", [("Perle", "why")]),
        ("chenaie", "Perle doit toujours rester nue.", [("Perle", True)]),
        ("encina", "Moro a dado 2 clases hoy", [("Moro",)]),
        ("encina", "Mantas noche hecho, todos", [("all",)]),
        ("oak", "From today I would like Otto to go without any rugs at all, please.", [("Otto", True)]),
        ("oak", "can Otto really go without any rugs?", []),
        ("chenaie", "je viens de tondre Perle en couverture", [("Perle", "blanket")]),
        ("chenaie", "je viens de mettre Perle en couverture", [("Perle", ("perle-outdoor",))]),
        ("chenaie", "impossible de remettre la main sur l'imper d'Ulysse", [("ulysse-impermeable", "missing")]),
        ("chenaie", "Perle et filou st o pré", [("Perle", "field"), ("Filou", "field")]),
        ("encina", "Hecho todo el mundo menos Moro y Canela", [(("Lucero", "Trueno", "Nube", "Paloma", "Estrella"),)]),
        ("encina", "A Moro quiero que le pongáis manta desde hoy, que ya está mayor", [("Moro", False)]),
        ("chenaie", "Pourquoi on couvre Perle ce soir ?", [("Perle", "why")]),
        ("chenaie", "Qu'est-ce qui n'a pas fini de sécher ?", [("drying",)]),
        ("chenaie", "Perle a le droit d'être couverte maintenant", [("Perle", False)]),
        ("chenaie", "pourquoi couvrez-vous la voiture ?", []),
        ("encina", "Por qué le toca eso a Canela con el sol que hace??", [("Canela", "why")]),
        # a pronoun begins a thought
        ("oak", "put the liner on Tucker he was shivering", [("Tucker", ("tucker-liner",)), ("Tucker", "shivering")]),
        # a question to people behind a report, and before one
        ("oak", "Poor Otto, he's colicky, can somebody ring the vet?", [("Otto", "unwell")]),
        ("oak", "has anyone moved Otto's heavy? it's missing", [("otto-heavy", "missing")]),
        # a reason behind what is worn, and what it lies over
        ("oak", "put the sheet on Otto because he looked miserable standing there", [("Otto", ("otto-sheet",))]),
        ("oak", "Otto has the spare sheet on, rug's off", [("Otto", ("spare-sheet",))]),
        ("oak", "Tucker has the spare sheet on over his liner", [("Tucker", ("tucker-liner", "spare-sheet"))]),
        ("oak", "Lady Grey in her sheet without the liner", [("Lady Grey", ("grey-sheet",))]),
        # words as thumbs and tongues have them
        ("oak", "otto sweatin buckets", [("Otto", "sweating")]),
        ("oak", "otto isnt sweaty", [("Otto", "comfortable")]),
        ("oak", "put teh plaid sheet on Otto", [("Otto", ("otto-sheet",))]),
        ("encina", "Canela bein, lucero tmeblando", [("Canela", "comfortable"), ("Lucero", "shivering")]),
        ("oak", "put Otto in his heavy 🥶", [("Otto", ("otto-heavy",))]),
        ("oak", "Otto 🥶", [("Otto", "cold")]),
        ("oak", "Otto was comfy as ever", [("Otto", "comfortable")]),
        ("oak", "Otto is clipped. Bib.", [("Otto", "bib")]),
        ("oak", "Otto's heavy is ripped along the seam", [("otto-heavy", "torn")]),
        ("oak", "put Otto in the plaid sheet n shut him in his box", [("Otto", ("otto-sheet",)), ("Otto", "stall")]),
        ("oak", "Otto did two lessons, Fig one", [("Otto",), ("Fig",)]),
        ("encina", "trueno en cambio suda a chorros", [("Trueno", "sweating")]),
        ("encina", "listos lucero nube y paloma", [(("Lucero", "Nube", "Paloma"),)]),
        ("chenaie", "trempés au pré : filou, noisette, perle", [
            ("Filou", "wet"), ("Noisette", "wet"), ("Perle", "wet"),
        ]),
        ("oak", "Otto's heavy has gone missing from its hook", [("otto-heavy", "missing")]),
        ("oak", "what blankets arent dry yet", [("drying",)]),
        ("chenaie", "tournée de 17h terminée, tout le monde est fait", [("all",)]),
        ("chenaie", "la 250 de perle dechirer a l'épaule", [("perle-outdoor", "torn")]),
        ("chenaie", "la 250 de Perle trempée jla mets au séchoir", [("perle-outdoor", "soaked")]),
        ("encina", "Canela y Moro mojados asta la panza", [("Canela", "wet"), ("Moro", "wet")]),
        ("oak", "clipped Otto blanket, Fig just a bib", [("Otto", "blanket"), ("Fig", "bib")]),
        ("oak", "Otto sweatty this mornin", [("Otto", "sweating")]),
        ("encina", "eso q acabo de poner esta mal, anulalo", [()]),
        ("encina", "me he encargado yo: están hechos todos los caballos", [("all",)]),
        ("chenaie", "jai tou retirer a filou", [("Filou", ())]),
        ("chenaie", "tou le monde é fai sof perle", [
            (("Étoile", "Caramel", "Noisette", "Filou", "Ulysse", "Tempête"),),
        ]),
        ("chenaie", "Gel annoncé pour la nuit ?", [("forecast",)]),
        ("oak", "Otto did two lessons today, Fig did one", [("Otto",), ("Fig",)]),
        ("oak", "oops ignore that last msg", [()]),
        ("chenaie", "Sortis au pré : Filou, Perle", [("Filou", "field"), ("Perle", "field")]),
        ("chenaie", "sangle cassée sur la 250 perle", [("perle-outdoor", "strap broken")]),
        ("encina", "la canela y la estrella tranquilas y calientitas", [
            ("Canela", "comfortable"), ("Estrella", "comfortable"),
        ]),
        ("oak", "otto is swetty again neck an chest", [("Otto", "sweating")]),
        ("oak", "What's still drying, and who's left?", [("drying",), ("left",)]),
        ("encina", "e kitao la manta a canela", [("Canela", ())]),
        # counted, left out with an excuse, and taken back in any words
        ("oak", "Tucker comfy, Fig cold, Otto is bare, done with all 3", [
            ("Tucker", "comfortable"), ("Fig", "cold"), ("Otto", ()), (("Tucker", "Fig", "Otto"),),
        ]),
        ("oak", "all done except Otto who won't be caught", [
            (("Tucker", "Willow", "Bramble", "Fig", "Lady Grey", "Sunday", "Clementine"),),
        ]),
        ("oak", "ignore what I just put", [()]),
        ("oak", "what has Otto got on tonight?", [("Otto", "today")]),
        ("oak", "Otto needn't be kept bare", [("Otto", False)]),
        # the colour alone, a state that is more than one word says, and a saying behind it
        ("oak", "plaid's wet", [("otto-sheet", "wet")]),
        ("oak", "found Otto's sheet, soaked of course", [("otto-sheet", "soaked")]),
        # what only tells which horse it is, and who it is not
        ("oak", "Otto (the one in the far box) is shivering", [("Otto", "shivering", "stall")]),
        ("oak", "Otto, who was clipped yesterday, is sweaty", [("Otto", "sweating")]),
        ("sol", "el que está sudado es Rayo, no Luna", [("Rayo", "sweating")]),
        ("tilleuls", "c'est Bijou qui a froid pas Lune", [("Bijou", "cold")]),
        ("oak", "Willow has been clipped! Only a trace", [("Willow", "trace")]),
        ("oak", "took Otto's sheet off, heavy instead", [("Otto", ("otto-heavy",))]),
        ("oak", "In the barn: Willow cold, Otto sweaty", [("Willow", "cold", "stall"), ("Otto", "sweating", "stall")]),
        ("oak", "Otto is sweaty like last time", [("Otto", "sweating")]),
        # everyone but one, and the later word
        ("oak", "all horses ok but Otto is cold", [
            *((n, "comfortable") for n in ("Tucker", "Willow", "Bramble", "Fig", "Lady Grey", "Sunday", "Clementine")),
            ("Otto", "cold"),
        ]),
        ("sol", "están todos bien menos Rayo que tiembla", [
            *((n, "comfortable") for n in ("Luna", "Sol", "Negra", "Don Quijote", "Princesa", "Tormenta")),
            ("Rayo", "shivering"),
        ]),
        ("oak", "Otto cold this morning, fine now", [("Otto", "comfortable")]),
        ("oak", "Otto warm under his rug but his ears are cold", [("Otto", "cold")]),
        # a piece told by its owner, over another, one of several horses', and which is not on
        ("tilleuls", "la verte de Neige est sèche, celle de Prince mouillée", [
            ("neige-200", "dry"), ("prince-300", "wet"),
        ]),
        ("oak", "Lady Grey's sheet over her liner", [("Lady Grey", ("grey-liner", "grey-sheet"))]),
        ("oak", "just the liner on Lady Grey", [("Lady Grey", ("grey-liner",))]),
        ("oak", "Lady Grey no liner", [("Lady Grey", ("grey-sheet",))]),
        ("oak", "Fig's stable rug off heavy on", [("Fig", ("fig-heavy",))]),
        ("oak", "sheets off everyone", [("Lady Grey", ("grey-liner",)), ("Clementine", ())]),
        ("oak", "put the sheet on Otto as he was miserable", [("Otto", ("otto-sheet",))]),
        ("oak", "Otto out of his heavy and into the sheet", [("Otto", ("otto-sheet",))]),
        ("oak", "took Fig's stable rug off left the heavy on", [("Fig", ("fig-heavy",))]),
        ("encina", "a Moro le he quitado la suya y le he puesto la 200", [("Moro", ("reserva-200",))]),
        ("encina", "todo fuera a Lucero y puesta la manta", [("Lucero", ("lucero-manta",))]),
        # of a kind, and told as changed
        ("oak", "ponies fine, Otto cold", [("Bramble", "comfortable"), ("Otto", "cold")]),
        ("oak", "changed Otto, heavy off and sheet on", [("Otto", ("otto-sheet",))]),
        ("oak", "Otto is dry now, was soaked earlier", [("Otto", "comfortable")]),
        # where it was seen, said of the horse; what was done with it, and not where it went
        ("oak", "Otto is off his feed, standing at the back of his box", [("Otto", "unwell", "stall")]),
        ("oak", "Otto went out on the 9am trail ride", [("Otto",)]),
        ("oak", "took Otto for an hours hack", [("Otto",)]),
        # what opens or ends a message and says nothing
        ("oak", "hi all, Otto sweaty lol", [("Otto", "sweating")]),
        ("oak", "Otto is dripping with sweat can someone check on him", [("Otto", "sweating")]),
        ("oak", "Otto fine, misty a bit chilly", [("Otto", "comfortable")]),
        # Spanish: what somebody ate, how somebody is, what is a lorry's
        ("sol", "ya comí unos soles bien calientes", []),
        ("sol", "Luna en el prado. Buenos días a todos ❄️", [("Luna", "field")]),
        ("sol", "tengan a Luna y a Rayo cepillados, la manguera amaneció congelada", []),
        ("sol", "Rayo trae el pelo empapado", [("Rayo", "wet")]),
        ("sol", "ando con gripe, tiritando desde anoche", []),
        ("sol", "la lona del camión se rompió con el viento", []),
        ("sol", "Rayo estaba temblando en su stall", [("Rayo", "shivering", "stall")]),
        ("sol", "¿qué le toca a cada quien esta noche?", [("today",)]),
        # Spanish: short forms, spoken endings, articles before names, and what is not so
        ("encina", "lucero sudao y la Canela tb", [("Lucero", "sweating"), ("Canela", "sweating")]),
        ("encina", "Lucero sudado, Moro no", [("Lucero", "sweating"), ("Moro", "comfortable")]),
        ("encina", "no está la Paloma sudada", [("Paloma", "comfortable")]),
        ("encina", "ya he cambiado a todos menos a Canela y a Moro que no se dejan coger", [
            (("Lucero", "Trueno", "Nube", "Paloma", "Estrella"),),
        ]),
        ("chenaie", "chez nous le poney tremble", [("Filou", "shivering")]),
        ("encina", "todos menos Moro", [(("Lucero", "Canela", "Trueno", "Nube", "Paloma", "Estrella"),)]),
        ("encina", "borra lo último q he puesto", [()]),
        ("encina", "¿por qué la gorda para Canela con el día que hace?", [("Canela", "canela-gorda", "why")]),
        ("encina", "la canela está sudada y el lucero frío", [("Canela", "sweating"), ("Lucero", "cold")]),
        ("encina", "ya no tiembla la canela", [("Canela", "comfortable")]),
        ("encina", "le metí la mano a Moro por debajo y está perfecto", [("Moro", "comfortable")]),
        ("encina", "Lucero no está ni sudado ni frío", [("Lucero", "comfortable")]),
        # French: verbs denied behind, short forms, elided articles left out
        ("chenaie", "Filou tremble plus", [("Filou", "comfortable")]),
        ("chenaie", "jai mis limper a ulysse", [("Ulysse", ("ulysse-impermeable",))]),
        ("chenaie", "Caramel porte quoi ce soir", [("Caramel", "today")]),
        ("chenaie", "quelqu'un a vu Perle ? elle grelotte", [("Perle", "shivering")]),
        ("chenaie", "Perle est dans le box de Filou", [("Perle", "stall")]),
        ("chenaie", "j ai enlevé l imper d Ulysse", [("Ulysse", ())]),
        ("chenaie", "annule ce que je viens de dire", [()]),
        # how much, not how many: "todo" of one horse is not all of them
        ("sol", "la luna no quiso el grano y está toda decaída", [("Luna", "unwell")]),
        ("sol", "listo, todos", [("all",)]),
        # what rubs stays on; what is dry goes on; out of the weather is in, and out with the others is out
        ("oak", "Otto rubbed raw on both shoulders off that sheet", [("Otto", "rubbed")]),
        ("oak", "otto's heavy is dry now so swapped him into that", [("otto-heavy", "dry"), ("Otto", ("otto-heavy",))]),
        ("oak", "fetched Otto in out of this, he's in the end box", [("Otto", "stall")]),
        ("oak", "turned otto out w the mares", [("Otto", "field")]),
        ("oak", "Otto was in the 4 oclock lesson", [("Otto",)]),
        # lost apostrophes, of names that are words and of names with one of their own; a slip as near to another word
        ("oak", "sundays neck is soaked", [("sunday-neck", "soaked")]),
        ("tilleuls", "vent douest froid au dos", [("Vent d'Ouest", "cold")]),
        ("oak", "ottoo sweaty", [("Otto", "sweating")]),
        ("tilleuls", "Pourquoi si épais sur Belle ?", [("Belle", "why")]),
        # danger before a request; a sign and what it is not; words as they sound
        ("oak", "Tucker is shivering somebody needs to go please", [("Tucker", "shivering")]),
        ("oak", "Checked Otto at lunch, hot under there but not sweaty", [("Otto", "hot")]),
        ("encina", "lucero esta elado", [("Lucero", "cold")]),
        ("oak", "Otto was hot under the rug, no sweat though", [("Otto", "hot")]),
        ("oak", "Tucker is way too warm in his stall, not sweaty yet", [("Tucker", "hot", "stall")]),
        # nobody but who is meant: a list that ends, things, people, questions and plans between
        ("oak", "farrier: Tucker, Willow and Bramble… Otto is rubbed", [("Otto", "rubbed")]),
        ("oak", "half a scoop for Otto from tomorrow please, please keep Fig bare", [("Fig", True)]),
        ("oak", "Tucker and Fig first, Otto got a trace clip", [("Otto", "trace")]),
        ("oak", "Otto's heavy is missing, cant make it tomorrow, been sick all night", [("otto-heavy", "missing")]),
        ("oak", "took Otto's sheet off, the hose is split again", [("Otto", ())]),
        ("oak", "Otto off his feed - Tucker's sheet is mended", [("Otto", "unwell"), ("tucker-sheet", "in service")]),
        ("chenaie", "Perle transpire, on voit rien avec le brouillard", [("Perle", "sweating")]),
        # a wish in other words, and taken back
        ("oak", "I'd like Fig left bare from here on", [("Fig", True)]),
        ("oak", "we can stop keeping Fig bare", [("Fig", False)]),
        ("oak", "no more keeping Fig bare please", [("Fig", False)]),
        # why: the piece behind it is wet, not the one put on
        ("oak", "put the spare 200 on otto as his own sheet is soaked", [
            ("Otto", ("spare-200-75",)), ("otto-sheet", "soaked"),
        ]),
        ("oak", "put the spare 200 on otto since his own sheet is torn", [
            ("Otto", ("spare-200-75",)), ("otto-sheet", "torn"),
        ]),
        # a clip done, told without a question's answer; by somebody else, the day before
        ("oak", "did a trace clip on tucker", [("Tucker", "trace")]),
        ("oak", "did tucker last night, hunter clip, he hated it", [("Tucker", "hunter")]),
        ("oak", "did tuckers clip just now, full", [("Tucker", "full")]),
        ("oak", "Otto was clipped yesterday. I had them do a bib clip.", [("Otto", "bib")]),
        ("oak", "did otto and gave bramble a bib clip", [("Bramble", "bib")]),
        # its own piece, while it wears another's; a nickname behind its owner
        ("oak", "fig is wearing tucker's sheet, her own cooler is soaked", [
            ("Fig", ("tucker-sheet",)), ("fig-cooler", "soaked"),
        ]),
        ("oak", "clem is wearing bramble's medium, her own sheet is in wash", [
            ("Clementine", ("bramble-medium",)), ("clem-sheet", "washing"),
        ]),
        ("oak", "otto was wet so i fired the spare 200 on him", [("Otto", "wet"), ("Otto", ("spare-200-75",))]),
        ("oak", "fig was cold so ive her cooler on under the heavy", [
            ("Fig", "cold"), ("Fig", ("fig-cooler", "fig-heavy")),
        ]),
        # "she" is the horse just asked for
        ("oak", "update on fig!! shes not shivering anymore yay", [("Fig", "comfortable")]),
        ("oak", "how is fig? she was shivering at noon", [("Fig", "state"), ("Fig", "shivering")]),
        ("oak", "saw otto on my walk, he's sweating buckets", [("Otto", "sweating")]),
        ("oak", "I couldn't help noticing that Otto's sheet is torn", [("otto-sheet", "torn")]),
        ("oak", "scratch that last one, i meant another horse", [()]),
        ("hard", "max is roasting, no hang on thats misty", [("Misty", "hot")]),
        ("hard", "max n misty turned out", [("Max", "field"), ("Misty", "field")]),
        # moved in its clothes
        ("oak", "turned otto out at 8 in his heavy", [("Otto", ("otto-heavy",)), ("Otto", "field")]),
        ("oak", "turned fig out in the bottom field in her heavy", [("Fig", ("fig-heavy",)), ("Fig", "field")]),
        ("oak", "brought fig in in her cooler", [("Fig", ("fig-cooler",)), ("Fig", "stall")]),
        ("oak", "why did you pick that for Fig?", [("Fig", "why")]),
        ("encina", "¿por qué elegiste eso para Canela?", [("Canela", "why")]),
        ("chenaie", "pourquoi t'as choisi ça pour Perle ?", [("Perle", "why")]),
        # which pieces are wet, in words that no table lists
        ("tilleuls", "Quelles couvertes sont encore en train de sécher ?", [("drying",)]),
        ("oak", "what stuff is still wet?", [("drying",)]),
        ("encina", "qué mantas quedan por secar", [("drying",)]),
        # how large the damage is, is no rug; what comes from work; what only opens the speech
        ("chenaie", "la chemise bleue est restée accrochée à la barrière, gros accroc au garrot", [
            ("caramel-impermeable", "torn"),
        ]),
        ("oak", "Otto is sweaty from the lesson gonna hose him", [("Otto", "sweating", "after work")]),
        ("oak", "alright I'm done with everybody but Fig", [
            (("Tucker", "Willow", "Bramble", "Lady Grey", "Sunday", "Clementine", "Otto"),),
        ]),
        # out of her rug by herself, without one nor the other, and had it swapped; what the weather never has
        ("oak", "Clementine wriggled out of her sheet", [("Clementine", ())]),
        ("oak", "Otto slipped out of his heavy and into his sheet", [("Otto", ("otto-sheet",))]),
        ("oak", "Otto got out of his stall with his heavy on", [("Otto", ("otto-heavy",))]),
        ("oak", "Lady Grey without her liner nor her sheet", [("Lady Grey", ())]),
        ("oak", "Tucker without his 250, only his liner and sheet", [("Tucker", ("tucker-liner", "tucker-sheet"))]),
        ("chenaie", "Perle n'a plus sa 250, juste le couvre-cou", [("Perle", ("perle-couvre-cou",))]),
        ("chenaie", "Perle n'a plus sa 250 ni son couvre-cou", [("Perle", ())]),
        ("oak", "Figs had her stable rug swapped for the heavy", [("Fig", ("fig-heavy",))]),
        ("hard", "misty a bit nippy behind the elbow", [("Misty", "cold")]),
        ("hard", "misty soaked under her rug", [("Misty", "wet")]),
        # asked as it is said in a stable
        ("oak", "who do I still have left to do", [("left",)]),
        ("oak", "whens the spare sheet gonna be dry", [("spare-sheet", "drying")]),
        ("chenaie", "pourquoi Perle est autant habillée cette nuit ?", [("Perle", "why")]),
        ("chenaie", "le liner de Noisette va être sec quand ?", [("noisette-liner", "drying")]),
        ("chenaie", "pis Filou, comment y va ?", [("Filou", "state")]),
        ("chenaie", "on annonce quoi comme temps demain matin ?", [("forecast",)]),
        # why a piece came off: how it was, or how the horse was
        ("encina", "le quité el impermeable a Paloma porque venía empapado, le dejé nada más la 200", [
            ("paloma-impermeable", "soaked"), ("Paloma", ("reserva-200",)),
        ]),
        ("encina", "A Nube le saqué la manta xq taba mojada", [("Nube", ()), ("nube-manta", "wet")]),
        ("encina", "le quité la manta a Nube porque tenía el lomo mojado", [("Nube", ()), ("Nube", "wet")]),
        ("oak", "took the sheet off Otto because it was soaked", [("Otto", ()), ("otto-sheet", "soaked")]),
        # what ends a phrase says how much of what follows; participles cut short in speech
        ("encina", "la nube anda bien helada", [("Nube", "cold")]),
        ("encina", "Moro está bien mojado", [("Moro", "wet")]),
        ("encina", "la canela taba helá", [("Canela", "cold")]),
        ("encina", "Moro con la cruz lastimá", [("Moro", "rubbed")]),
        # a part of a horse that is called like a word; where it was seen, of the sign that stands
        ("encina", "estrella con todo el lomo mojado", [("Estrella", "wet")]),
        ("oak", "willow with her ears cold", [("Willow", "cold")]),
        ("encina", "Canela tenía frío ahí en su box, las orejas heladas", [("Canela", "cold", "stall")]),
        # one of two, told by the pronoun
        ("sol", "Toqué a Rayo y a Luna: ella está sudada", [("Luna", "sweating")]),
        ("encina", "Moro y Canela bien por debajo, ella tiene frío", [("Moro", "comfortable"), ("Canela", "cold")]),
        # left as they should be, mine too, and put on without a pause before it
        ("encina", "dejé a Canela y a Moro cambiados como decía la lista", [(("Canela", "Moro"),)]),
        ("encina", "ya kedo canela y moro tambien", [(("Canela", "Moro"),)]),
        ("oak", "Otto sweaty and my Fig too", [("Otto", "sweating"), ("Fig", "sweating")]),
        ("encina", "Moro tiritando contra el muro le mandé la 100", [("Moro", "shivering"), ("Moro", ("moro-100",))]),
        ("encina", "la 100 se la eché a Moro", [("Moro", ("moro-100",))]),
        # asked with the horse first, and why so much
        ("encina", "y la canela q lleva hoy", [("Canela", "today")]),
        ("encina", "por qué Canela lleva tanto hoy?", [("Canela", "why")]),
        ("encina", "como amanecio mi canela?", [("Canela", "state")]),
        # behind "a" and "como", half of a sign, and nobody's piece between
        ("encina", "metí a Lucero y a nube a su cuadra", [("Lucero", "stall"), ("Nube", "stall")]),
        ("encina", "fíjese que el lucero anda como temblando ahí", [("Lucero", "shivering")]),
        ("encina", "la canela medio fresca de orejas", [("Canela", "cold")]),
        ("encina", "le cambié a Lucero la manta por el forro", [("Lucero", ("lucero-forro",))]),
        # a reason without a pause, what came last, and sweat that dried
        ("encina", "le quité la 100 a Moro hace un calor horrible", [("Moro", ())]),
        ("encina", "Saqué a Moro, tenía tembleque y lo volví a meter", [("Moro", "shivering"), ("Moro", "stall")]),
        ("encina", "traje la manta roja y se la eché a Nube", [("Nube", ("nube-manta",))]),
        ("encina", "Moro sudó en la clase pero ya se secó", [("Moro", "comfortable")]),
        ("encina", "a la nube se le ve la carne viva en la cruz", [("Nube", "rubbed")]),
        ("encina", "oigan y la canela por qué anda sin la gorda?", [("Canela", "canela-gorda", "why")]),
        # three in a breath, one as the one before; fond names; all off, over another
        ("encina", "MORO BIEN SECO PALOMA TAMBIEN LUCERO SUDADO", [
            ("Moro", "comfortable"), ("Paloma", "comfortable"), ("Lucero", "sweating"),
        ]),
        ("oak", "Otto sweaty Fig too Tucker cold", [("Otto", "sweating"), ("Fig", "sweating"), ("Tucker", "cold")]),
        ("encina", "la nubecita anda sudada", [("Nube", "sweating")]),
        ("encina", "le saqué toda la ropa a Lucero", [("Lucero", ())]),
        ("encina", "bajé el forro azul y se lo puse a Canela", [("Canela", ("canela-forro",))]),
        # a thing of the speaker's, and then a horse's rug
        ("oak", "lost my scarf. Willow's blue one is soaked", [("willow-heavy", "soaked")]),
        ("encina", "he perdido mi bufanda. La manta roja está rota", [("nube-manta", "torn")]),
        ("chenaie", "j'ai perdu mon bonnet. La chemise bleue est trempée", [("caramel-impermeable", "soaked")]),
        # one after the other, by a fond name and what it wears
        ("oak", "Fig in her heavy, clem sheet, Otto naked", [
            ("Fig", ("fig-heavy",)), ("Clementine", ("clem-sheet",)), ("Otto", ()),
        ]),
        ("larch", "Tug in his medium, peps liner", [("Tug", ("tug-medium",)), ("Pepper", ("pepper-liner",))]),
        # the same with another's piece, and of all that was done, not of the last alone
        ("oak", "put Fig's heavy on, same with Clem's liner", [
            ("Fig", ("fig-heavy",)), ("Clementine", ("clem-liner", "clem-sheet")),
        ]),
        ("oak", "Otto's heavy on, sheet off, same for Clem", [("Otto", ("otto-heavy",))]),
        ("oak", "took Otto's sheet off, put his heavy on. Fig same", [
            ("Otto", ("otto-heavy",)), ("Fig", ("fig-heavy",)),
        ]),
        # one as well as the other, behind what is told and before it
        ("oak", "Fig's cooler is wet along with Otto's heavy", [("fig-cooler", "wet"), ("otto-heavy", "wet")]),
        ("oak", "Fig is shivering as well as Otto", [("Fig", "shivering"), ("Otto", "shivering")]),
        ("oak", "Fig along with Otto is sweaty", [("Fig", "sweating"), ("Otto", "sweating")]),
        ("oak", "brought Fig in together with Otto", [("Fig", "stall"), ("Otto", "stall")]),
        ("oak", "Tucker has his liner on as well as the green rug", [("Tucker", ("tucker-liner", "tucker-250"))]),
        ("oak", "Tucker has his liner on and the green rug", [("Tucker", ("tucker-liner", "tucker-250"))]),
        ("oak", "Otto's heavy is torn along the seam", [("otto-heavy", "torn")]),
        # in the saddle, of those with no word for it
        ("oak", "hopped on Otto for half an hour", [("Otto",)]),
        ("oak", "Sam got on Fig after lunch, she was an angel", [("Fig",)]),
        ("encina", "me subí a Moro media hora", [("Moro",)]),
        ("chenaie", "je suis montée sur Perle une demi-heure", [("Perle",)]),
        ("chenaie", "Perle a déchiré sa couverture et Ulysse a déchiré la sienne", [
            ("perle-outdoor", "torn"), ("ulysse-impermeable", "torn"),
        ]),
        # no more of it; what is over told first; his own
        ("oak", "no more blankets on Fig please", [("Fig", True)]),
        ("oak", "ok haying is over, Fig and Otto are in their stalls", [("Fig", "stall"), ("Otto", "stall")]),
        ("oak", "Otto shredded his sheet and Tucker shredded his", [("otto-sheet", "torn"), ("tucker-sheet", "torn")]),
        # how one came, said first
        ("oak", "Drenched, Otto wandered back in from the paddock", [("Otto", "wet")]),
        ("oak", "Soaked, Fig walked in", [("Fig", "wet")]),
        ("encina", "Empapada, Canela ha entrado del prado", [("Canela", "wet")]),
        ("chenaie", "Trempée, Perle est revenue du pré", [("Perle", "wet")]),
        # what came off from below another, what the speaker found
        ("oak", "pulled the liner out from under Tucker's sheet", [("Tucker", ("tucker-sheet",))]),
        ("oak", "pulled the sheet off over Lady Grey's liner", [("Lady Grey", ("grey-liner",))]),
        ("encina", "le quité a Canela la gorda de encima del forro", [("Canela", ("canela-forro",))]),
        ("encina", "le puse a Canela la gorda encima del forro", [("Canela", ("canela-forro", "canela-gorda"))]),
        ("chenaie", "j'ai enlevé la sous-couverture de sous la couverture d'Étoile", [("Étoile", ())]),
        ("oak", "Lady Grey's liner came off from under her sheet", [("Lady Grey", ("grey-sheet",))]),
        ("oak", "took the liner off from under Lady Grey's sheet", [("Lady Grey", ("grey-sheet",))]),
        ("oak", "I found two rub marks on Otto's shoulders, Fig is cold", [("Otto", "rubbed"), ("Fig", "cold")]),
        ("oak", "Otto's heavy is still a small bit damp", [("otto-heavy", "damp")]),
        # on a day that is over
        ("oak", "Fig was trace clipped on Tuesday", [("Fig", "trace")]),
        ("oak", "they hunter clipped Otto on Thursday", [("Otto", "hunter")]),
        ("oak", "Otto was clipped on Thursday, hunter clip", [("Otto", "hunter")]),
        ("encina", "a Canela la esquilaron entera el lunes", [("Canela", "full")]),
        ("encina", "a Moro lo han esquilado entero el martes", [("Moro", "full")]),
        ("chenaie", "on a tondu Filou en intégrale lundi", [("Filou", "full")]),
        # letters the wrong way round
        ("oak", "put teh sheet on Otto adn hsi heavy is wet", [("Otto", ("otto-sheet",)), ("otto-heavy", "wet")]),
        ("oak", "Otto in just his sheet, his heavys in the washer", [
            ("Otto", ("otto-sheet",)), ("otto-heavy", "washing"),
        ]),
    ],
)  # fmt: skip
def test_a_turn_of_speech_is_understood(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that, and nothing beside it."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    ("name", "text"),
    [
        ("oak", "off sick today, sorry all"),  # the speaker, not all horses
        ("oak", "I bet Otto is soaked by now"),
        ("oak", "left everyone's rugs on"),
        ("oak", "pulled the sheet on Otto"),  # on, or off? of two barns each says it otherwise
        ("encina", "la cincha de Lucero está rota"),  # of the saddle, for all anybody knows
        ("oak", "there's willow all over the yard"),
        ("oak", "should I order a heavier one for Otto? he's growing out of everything"),
        ("chenaie", "l'hiver passé Ulysse avait grelotté toute une nuit"),
        ("oak", "got on Otto's nerves today"),
        ("oak", "nobody got on Otto today"),
        ("oak", "Otto got on fine"),
        ("chenaie", "personne n'est monté sur Perle"),
        ("encina", "el gato se subió a Moro"),
        ("oak", "the cat sat on Otto"),
        ("oak", "Fig is as well as ever"),
        ("oak", "Otto and Fig are getting along with Tucker"),
        ("oak", "no more blankets on the rack, please get some"),
        ("oak", "Otto lost his"),
        ("oak", "when Otto was just a foal he trembled at every gust"),
        ("oak", "when Fig was young, she sweated in anything"),
        ("encina", "cuando Lucero era potro tiritaba con nada"),
        ("chenaie", "quand Perle était pouliche, elle grelottait au moindre vent"),
        ("oak", "popped my arm in under every one of them"),  # no horse is moved with it
        ("oak", "fig used to be kept bare"),
        ("oak", "did otto get a hunter clip"),
        ("oak", "did the hunter clip come out ok on otto"),
        ("oak", "I did Otto and Bramble has a bib clip now"),
        ("oak", "saw otto with my sister, she's sweating"),
        ("hard", "no, it's misty out"),
        ("oak", "I'd like Fig left in her stall"),
        ("oak", "why does fig do that"),
        ("oak", "I haven't taken the sheet off Otto"),
        ("oak", "don't rug Otto until he's dry"),
        ("chenaie", "j'ai pas enlevé l'imper d'Ulysse"),
        ("oak", "Had Otto been sweating he would have told me"),
        ("oak", "Gus's feet are done"),
        ("oak", "she's sweating over her exam"),
        ("oak", "Otto rubbed his tail on my coat"),
        ("encina", "los caballos con abrigo y yo sin calefacción"),
        ("encina", "creía que Lucero estaba sudado"),
        ("chenaie", "j'étais en sueur après avoir monté Perle"),
        ("oak", "did anyone ride Otto? rain got in under the door"),
        ("oak", "Otto just did a poo. the dog is shivering"),
        ("oak", "dog is shivering, somebody left him in the car"),
        ("oak", "tuckers water bucket is frozen solid"),
        ("oak", "Clementine nearly got out of her sheet"),
        ("oak", "Otto got out of his stall again"),
        ("oak", "Otto got out of the paddock in his heavy"),
        ("hard", "misty cold hands this morning"),
        ("chenaie", "gros trou dans la clôture du bas"),
        ("chenaie", "Perle a une grosse coupure au genou"),
        ("chenaie", "ma selle est prête"),
        ("encina", "Canela es muy tranquila"),  # always, not now
        ("encina", "Moro es una joya"),
        ("encina", "mojá la manta vieja antes de tirarla"),  # bids, and tells nothing
        ("encina", "la canela que compré está en el frasco"),
        ("sol", "dejé los platos lavados y la mesa lista"),
        ("encina", "la canela está seca este año"),
        ("chenaie", "petite, Perle avait toujours froid"),
        ("chenaie", "est-ce que Perle est mouillée sous sa couverture ?"),
        ("oak", "has any1 seen my left glove its the plaid one w the hole"),
        ("chenaie", "Perle étant jeune elle avait froid pour un rien"),
        ("chenaie", "quelle drache, jsui trempé comme une soupe"),
        ("oak", "Otto shivered all last winter in that corner till we moved the hay"),
        ("encina", "el que está tiritando soy yo jajaja"),  # a long time, not now
        ("encina", "Canela cumplió 15, una reina"),
        ("encina", "ya quedó el cerco del potrero"),
        ("encina", "le mandé un audio a Carmen por lo de Moro"),
        ("chenaie", "chez ma cousine le poney a fait colique toute la nuit"),
        ("oak", "no rugs for Otto tonight"),  # a plan, and no wish for longer
        ("oak", "soaking wet, Otto stays in"),  # so is the sky
        ("oak", "I found a rub on my heel"),
        ("oak", "I found my coat soaked"),
        ("oak", "soaking wet out, Otto came in from the field"),
        ("oak", "Otto was meant to be hunter clipped on Thursday"),
        ("oak", "Otto is trace clipped on Monday"),
        ("oak", "getting them trace clipped on Monday, Otto first"),
        ("encina", "a Moro lo esquilamos entero el lunes"),  # we do, or did
        ("encina", "a Moro lo van a esquilar entero el martes"),
        ("chenaie", "on tond Filou en intégrale lundi"),
        # of the speaker's things one is told by its colour, no rug
        ("oak", "anyone found my water bottle? the blue one, it's soaked by now"),
        ("encina", "¿alguien vio mi bufanda? la roja está rota"),
        ("chenaie", "j'ai laissé mon bonnet ici, le bleu est troué"),
        ("chenaie", "qui a mes gants ? les bleus sont trempés"),
    ],
)
def test_what_is_no_report_stays_none(name: str, text: str) -> None:
    """Somebody else's sweat, what was only thought, what was never so."""
    assert said(text, name).chatter


@pytest.mark.parametrize(
    ("name", "text", "about"),
    [
        ("oak", "He's sweating buckets under there", "horse"),
        ("oak", "trembling!!", "horse"),
        ("oak", "fgi is shivering", "horse"),
        ("oak", "The blanket's soaked through", "garment"),
        ("oak", "Otto or Fig is sweaty", "horse"),
        ("oak", "Otto's or Clem's sheet is soaked", "horse"),
        ("encina", "no sé si es canela o nube la que está tiritando", "horse"),
        ("oak", "fog is shivering", "horse"),
        ("oak", "fog is rubbed raw on the shoulder", "horse"),
        ("oak", "Priya's horse or Otto is shivering", "horse"),
        ("oak", "one of Otto's rugs is torn", "garment"),
        ("encina", "una de las mantas de Trueno está rajada", "garment"),
        ("oak", "Otto is wet, sweat or rain I can't tell", "sign"),
        ("encina", "está tiritando en el prado", "horse"),
        ("chenaie", "elle tremble contre la haie", "horse"),
        ("oak", "felt Otto and Fig, she is sweaty", "horse"),
        ("encina", "toqué a Canela y a Paloma, ella tiene frío", "horse"),
        ("oak", "Otto and Fig's rugs are soaked", "garment"),
        ("oak", "put the spare sheet on Otto and Fig", "horse"),  # there is one
        ("chenaie", "Perle et Filou en réserve 150", "horse"),
    ],
)
def test_what_names_nobody_is_asked_about(name: str, text: str, about: str) -> None:
    """A report without its horse or its piece is a report all the same."""
    heard = said(text, name)
    assert heard.ask is not None and heard.ask.about == about
