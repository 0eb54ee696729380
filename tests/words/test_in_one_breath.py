"""Several thoughts in one breath: each goes to its own horse and piece, and what leads up to them is no report."""

import pytest

from tests.words.saying import said, told

ALL_BUT_OTTO_AND_FIG = ("Tucker", "Willow", "Bramble", "Lady Grey", "Sunday", "Clementine")


@pytest.mark.parametrize(
    ("name", "text", "expected"),
    [
        # where a horse stands is where its sign was seen, no news of having been moved
        ("oak", "Otto is in his stall and he is shivering", [("Otto", "shivering", "stall")]),
        ("oak", "looked in on Otto in the box, he felt cold behind the elbow", [("Otto", "cold", "stall")]),
        ("oak", "Otto is in and he is shivering", [("Otto", "stall"), ("Otto", "shivering")]),
        ("oak", "Otto is in his stall in his heavy", [("Otto", ("otto-heavy",)), ("Otto", "stall")]),
        ("oak", "Otto is in his box in his heavy, hot", [("Otto", ("otto-heavy",)), ("Otto", "hot", "stall")]),
        ("encina", "Canela ya en el box con la gorda puesta", [("Canela", ("canela-gorda",)), ("Canela", "stall")]),
        ("encina", "Moro está en el prado con la 100", [("Moro", ("moro-100",)), ("Moro", "field")]),
        ("encina", "Trueno en el box de Moro con la de cuadra", [("Trueno", ("trueno-cuadra",)), ("Trueno", "stall")]),
        ("chenaie", "Filou au box avec sa couverture de box", [("Filou", ("filou-box",)), ("Filou", "stall")]),
        # a verb without a subject goes on with who wears it; what came off may be what is in the stall
        ("encina", "Canela lleva la gorda y ya está en su box", [("Canela", ("canela-gorda",)), ("Canela", "stall")]),
        ("encina", "le puse la 100 a Moro, está fuera", [("Moro", ("moro-100",)), ("Moro", "field")]),
        ("encina", "le quité la 100 a Moro y está en el box", [("Moro", ())]),
        # whom it is, where another is denied; the denial ends with whom it denies
        ("encina", "no es Moro el que suda, es Canela", [("Canela", "sweating")]),
        ("encina", "no es nube la que tirita sino Canela", [("Canela", "shivering")]),
        ("encina", "Moro no, era Canela la que sudaba", [("Canela", "sweating")]),
        ("encina", "Moro no, el que tiembla es Trueno", [("Trueno", "shivering")]),
        ("encina", "era Canela y no Moro la que sudaba", [("Canela", "sweating")]),
        ("encina", "no es Moro el que suda", [("Moro", "comfortable")]),
        ("encina", "no solo Moro suda", [("Moro", "sweating")]),
        ("encina", "Moro no está sudado sino mojado", [("Moro", "wet")]),
        ("oak", "it isn't Otto that's sweating, it's Fig", [("Fig", "sweating")]),
        ("oak", "the one that's shivering isn't Otto, it's Fig", [("Fig", "shivering")]),
        ("oak", "it isn't Otto that's sweating", [("Otto", "comfortable")]),
        ("oak", "Otto and not Fig is sweating", [("Otto", "sweating")]),
        ("chenaie", "c'est pas Perle qui tremble, c'est Filou", [("Filou", "shivering")]),
        # who only tells where, or was left out
        ("oak", "rode Otto instead of Fig, he's sweaty", [("Otto", "sweating", "after work")]),
        ("oak", "clipped Otto rather than Tucker, full clip", [("Otto", "full")]),
        ("oak", "Otto, between Fig and Tucker, is shivering", [("Otto", "shivering")]),
        ("oak", "Otto is colder than Tucker", []),
        ("oak", "Otto's heavy is on the fence by Tucker, soaked", [("otto-heavy", "soaked")]),
        ("oak", "Otto is by Tucker's wet sheet", [("tucker-sheet", "wet")]),
        ("oak", "swapped Otto's heavy for Tucker's sheet", []),
        # denied of all but one
        ("oak", "nobody is sweating except Otto", [("Otto", "sweating")]),
        ("oak", "none of them are cold but Otto and Fig", [("Otto", "cold"), ("Fig", "cold")]),
        ("oak", "nobody was shivering but Otto was cold", [("Otto", "cold")]),
        ("oak", "nobody is in except Otto", []),
        ("oak", "nobody is sick except Otto's vet", []),
        ("encina", "nadie suda excepto Moro", [("Moro", "sweating")]),
        ("chenaie", "aucun cheval ne grelotte, sauf Filou", [("Filou", "shivering")]),
        # some named are done, and who is still to come is none left out of all
        ("encina", "Canela y Moro cambiadas, Trueno en un rato", [(("Canela", "Moro"),)]),
        ("oak", "Otto and Fig done, Tucker still to do", [(("Otto", "Fig"),)]),
        # the rest of a horse is no other horse
        ("encina", "Moro sudado del cuello, lo demás seco", [("Moro", "sweating")]),
        # what came off who was named before, with another told of behind it
        ("encina", "Moro y Canela sudados, les he quitado las mantas, Paloma bien", [
            ("Moro", "sweating"), ("Canela", "sweating"), ("Moro", ()), ("Canela", ()), ("Paloma", "comfortable"),
        ]),
        ("encina", "Moro sudado, le quité la 100 y a Canela la gorda", [
            ("Moro", "sweating"), ("Moro", ()), ("Canela", ()),
        ]),
        ("oak", "Clem is sweaty, took her sheet off, Fig is fine", [
            ("Clementine", "sweating"), ("Clementine", ()), ("Fig", "comfortable"),
        ]),
        ("chenaie", "Perle et Caramel en sueur, je leur ai enlevé leurs couvertures", [
            ("Perle", "sweating"), ("Caramel", "sweating"), ("Perle", ()), ("Caramel", ()),
        ]),
        ("encina", "canela sudada manta quitada moro bien", [
            ("Canela", ()), ("Canela", "sweating"), ("Moro", "comfortable"),
        ]),
        ("chenaie", "perle en sueur couv enlevée ulysse sec", [
            ("Perle", ()), ("Perle", "sweating"), ("Ulysse", "comfortable"),
        ]),
        # one goes on instead of the other, its own for each, two put on at once
        ("encina", "Canela no lleva la gorda sino la impermeable", [("Canela", ("canela-impermeable",))]),
        ("encina", "Trueno: fuera la de cuadra, dentro la impermeable", [("Trueno", ("trueno-impermeable",))]),
        ("encina", "le puse la gorda a Canela y a Moro la suya", [
            ("Canela", ("canela-gorda",)), ("Moro", ("moro-100",)),
        ]),
        ("encina", "le puse la gorda a Canela y a Moro la 100", [
            ("Canela", ("canela-gorda",)), ("Moro", ("moro-100",)),
        ]),
        ("encina", "Lucero: fuera la manta, el forro se queda", [("Lucero", ())]),
        ("oak", "took Lady Grey's sheet off, the liner stays", [("Lady Grey", ("grey-liner",))]),
        ("oak", "put the stable rug and the heavy on Fig", [("Fig", ("fig-stable", "fig-heavy"))]),
        ("oak", "put the heavy on Fig", [("Fig", ("fig-heavy",))]),
        # to whom is said, whoever was spoken of before
        ("encina", "Moro está frío. Le he puesto a Canela la gorda", [("Moro", "cold"), ("Canela", ("canela-gorda",))]),
        ("encina", "Moro está mojado. Le puse a Canela el forro, ay no, la gorda", [
            ("Moro", "wet"), ("Canela", ("canela-gorda",)),
        ]),
        ("encina", "Trueno está frío. Le he puesto la gorda de Canela", [
            ("Trueno", "cold"), ("Trueno", ("canela-gorda",)),
        ]),
        # what is supposed behind something else, and whoever sweats as he says so
        ("encina", "hago café y si Moro suda le quitáis la 100", []),
        ("encina", "si, Moro está temblando", [("Moro", "shivering")]),
        ("encina", "Moro está fuera. Hoy he sudado la gota gorda", [("Moro", "field")]),
        ("encina", "Moro en pelo y vaya nube más negra viene", [("Moro", ())]),
        # who else was moved or ridden, and no more said of it
        ("encina", "saqué a Trueno al prado y luego a Moro", [("Trueno", "field"), ("Moro", "field")]),
        ("encina", "monté a Trueno una hora, y a Moro", [("Trueno",), ("Moro",)]),
        ("encina", "metí a Trueno en el box y después a Moro y a Nube", [
            ("Trueno", "stall"), ("Moro", "stall"), ("Nube", "stall"),
        ]),
        ("chenaie", "j'ai rentré Perle au box, et Ulysse", [("Perle", "stall"), ("Ulysse", "stall")]),
        ("oak", "rode Otto for an hour and Fig", [("Otto",), ("Fig",)]),
        ("encina", "saqué a Trueno al prado y a Moro no", [("Trueno", "field")]),
        ("oak", "turned out Otto and Fig together", [("Otto", "field"), ("Fig", "field")]),
        ("chenaie", "j'ai sorti Perle et Ulysse ensemble", [("Perle", "field"), ("Ulysse", "field")]),
        ("encina", "saqué a Trueno al prado y mañana a Moro", [("Trueno", "field")]),
        ("encina", "Trueno está en el prado y Moro", [("Trueno", "field")]),
        ("oak", "brought Otto in but Fig", [("Otto", "stall")]),
        # what is told before "and" another horse is not of that one
        ("oak", "soaked and Otto had a lesson", [("Otto",)]),
        ("oak", "no sweat on her and Fig is bare", [("Fig", ())]),
        ("encina", "está empapada, y Moro ha dado la clase", [("Moro",)]),
        ("encina", "está mojada y a Moro le he puesto la 100", [("Moro", ("moro-100",))]),
        ("encina", "está sudada y fría Paloma", [("Paloma", "sweating"), ("Paloma", "cold")]),
        ("chenaie", "elle est en sueur et Ulysse est au box", [("Ulysse", "stall")]),
        # where a piece was put is no horse's place, and nobody wears it there
        ("oak", "put Clem's liner in the stall", []),
        ("encina", "puse la gorda de Canela en el box", []),
        ("encina", "le puse la gorda a Canela en el box", [("Canela", ("canela-gorda",))]),
        # wet hair tells nothing of the cold; sweat is hot and wet by itself
        ("oak", "Otto's wet through but not cold", [("Otto", "wet"), ("Otto", "comfortable")]),
        ("encina", "Trueno mojado, frío no tiene, la verdad", [("Trueno", "wet"), ("Trueno", "comfortable")]),
        ("chenaie", "Perle n'a pas froid mais elle est trempée", [("Perle", "comfortable"), ("Perle", "wet")]),
        ("oak", "Otto is sweaty but not cold", [("Otto", "sweating")]),
        # he and another
        ("oak", "lunged Otto then turned him and Fig out", [("Otto",), ("Otto", "field"), ("Fig", "field")]),
        ("encina", "monté a Trueno y luego lo saqué a él y a Canela al prado", [
            ("Trueno",), ("Trueno", "field"), ("Canela", "field"),
        ]),
        # the same of another
        ("oak", "Otto was sweating this morning, and so was Fig", [("Otto", "sweating"), ("Fig", "sweating")]),
        ("oak", "otto is cold & so is willow", [("Otto", "cold"), ("Willow", "cold")]),
        # names in turn that lost their apostrophes
        ("oak", "willows fine, sundays a bit chilly", [("Willow", "comfortable"), ("Sunday", "cold")]),
        ("oak", "willows fine and otto is sweaty", [("Willow", "comfortable"), ("Otto", "sweating")]),
        ("oak", "plaid sheets soaked", [("otto-sheet", "soaked")]),
        # a strap behind who is done
        ("oak", "Fig and Otto done, plaid sheet's ok", [(("Fig", "Otto"),)]),
        ("oak", "fig and otto done leg strap snapped off the plaid sheet", [
            (("Fig", "Otto"),), ("otto-sheet", "strap broken"),
        ]),
        ("oak", "did Fig and Otto like it said", [(("Fig", "Otto"),)]),
        # a piece first, then what was done with it
        ("oak", "the plaid sheet I put in the wash", [("otto-sheet", "washing")]),
        # what is over tells what was found
        ("oak", "When I slipped a hand under Otto's layers I found him damp with sweat", [("Otto", "sweating")]),
        ("oak", "Otto is cold out there", [("Otto", "cold")]),
        ("oak", "I put the sheet on Otto, as he was cold", [("Otto", ("otto-sheet",)), ("Otto", "cold")]),
        ("oak", "sunday is freezing, her ears are ice cubes", [("Sunday", "cold")]),
        # a piece taken off, and how it is; a piece for each of two
        ("oak", "I take off the sheet to Clem, is very wet", [("Clementine", ()), ("clem-sheet", "wet")]),
        ("oak", "I put to Otto his heavy and to Fig her heavy", [("Otto", ("otto-heavy",)), ("Fig", ("fig-heavy",))]),
        ("oak", "tuckers liner stinks its in the wash, hes just in his sheet", [
            ("tucker-liner", "washing"), ("Tucker", ("tucker-sheet",)),
        ]),
        ("oak", "Clem was cold so I gave her her liner", [
            ("Clementine", "cold"), ("Clementine", ("clem-liner", "clem-sheet")),
        ]),
        ("oak", "found Sunday's neck", [("sunday-neck", "in service")]),
        # who was done, who was clipped how, and whose name comes last
        ("oak", "I did Fig, Otto and also Tucker", [(("Fig", "Otto", "Tucker"),)]),
        ("oak", "Otto bib clipped, Fig hunter, both fine", [("Otto", "bib"), ("Fig", "hunter")]),
        ("oak", "all done, Otto still to do", [
            (("Tucker", "Willow", "Bramble", "Fig", "Lady Grey", "Sunday", "Clementine"),),
        ]),
        ("oak", "everyone's done but not Otto and Fig", [
            (("Tucker", "Willow", "Bramble", "Lady Grey", "Sunday", "Clementine"),),
        ]),
        ("oak", "all done except Otto, he's shivering", [
            (("Tucker", "Willow", "Bramble", "Fig", "Lady Grey", "Sunday", "Clementine"),), ("Otto", "shivering"),
        ]),
        ("oak", "he's trembling, poor Otto", [("Otto", "shivering")]),
        ("oak", "Otto's sheet came back from the menders and it's on him now", [
            ("otto-sheet", "in service"), ("Otto", ("otto-sheet",)),
        ]),
        ("oak", "Clem's sheet was sopping so it's on the rack and she's in her liner", [
            ("clem-sheet", "soaked"), ("Clementine", ("clem-liner",)),
        ]),
        # with whom one goes out is no news of the other
        ("oak", "Otto was lunged, then turned out with Fig", [("Otto",), ("Otto", "field")]),
        ("oak", "oops sent that to the wrong chat, undo", [()]),
        ("oak", "Otto sweating cobs in his heavy, stripped him off", [("Otto", "sweating"), ("Otto", ())]),
        ("oak", "Otto bare in his box and fine", [("Otto", ()), ("Otto", "comfortable", "stall")]),
        ("oak", "took Otto for a hack round the block he came back boiling", [("Otto", "hot", "after work")]),
        ("oak", "all of em done \N{THUMBS UP SIGN} knackered", [("all",)]),
        ("oak", "Clem's sheet is dry so it's back on her", [("clem-sheet", "dry"), ("Clementine", ("clem-sheet",))]),
        ("oak", "I put off the sheet of Clem", [("Clementine", ())]),
        ("oak", "Otto dont need no rug no more keep him bare", [("Otto", True)]),
        ("oak", "Otto no longer has to be kept bare", [("Otto", False)]),
        # work behind, and a wish in many words
        ("oak", "just got done riding Otto hes sweaty", [("Otto", "sweating", "after work")]),
        ("oak", "could y'all leave Otto naked from now on", [("Otto", True)]),
        ("oak", "I should be grateful if Otto could be kept without any rugs", [("Otto", True)]),
        # manners before a question
        ("oak", "Might I ask why Otto is in so many layers?", [("Otto", "why")]),
        ("oak", "y is otto in his heavy its like 50 out", [("Otto", "otto-heavy", "why")]),
        ("oak", "what blankets is still drying, please?", [("drying",)]),
        ("oak", "could you tell me whether the plaid sheet is dry yet?", [("otto-sheet", "drying")]),
        ("oak", "do you know if big blue is dry?", [("willow-heavy", "drying")]),
        ("oak", "what they all wearing tonight then", [("today",)]),
        ("oak", "wats evry1 wearin 2nite", [("today",)]),
        ("oak", "hi bot, new here, what can you actually do?", [("help",)]),
        ("oak", "what's it to drop to tonight", [("forecast",)]),
        # which piece lies over or under which is no news of the other one
        ("oak", "Lady Grey's liner under the sheet is damp", [("grey-liner", "damp")]),
        ("oak", "the liner under Lady Grey's sheet is wet", [("grey-liner", "wet")]),
        ("oak", "Lady Grey's liner is damp and the sheet over it is wet", [
            ("grey-liner", "damp"), ("grey-sheet", "wet"),
        ]),
        ("encina", "el forro de Canela debajo de la impermeable está húmedo", [("canela-forro", "damp")]),
        # a piece with another, and one of another horse called by its own name
        ("oak", "Lady Grey has her liner on with the spare sheet over it", [
            ("Lady Grey", ("grey-liner", "spare-sheet")),
        ]),
        ("oak", "Fig's in the plaid sheet instead", [("Fig", ("otto-sheet",))]),
        # two of the same, said once of both
        ("oak", "changed Otto and Clem both in their sheets now", [
            ("Otto", ("otto-sheet",)), ("Clementine", ("clem-sheet",)),
        ]),
        ("oak", "Otto's sweaty and so is Fig, both out by the trough", [("Otto", "sweating"), ("Fig", "sweating")]),
        # who is left out behind a pause
        *(
            ("oak", text, [(("Tucker", "Willow", "Bramble", "Lady Grey", "Sunday", "Clementine"),)])
            for text in ("all done, Fig and Otto not yet", "Everyone done, Otto and Fig still to do")
        ),
        # what is over is comfortable
        ("oak", "that shiverin has gone off Otto now", [("Otto", "comfortable")]),
        ("oak", "Otto's shivering has stopped", [("Otto", "comfortable")]),
        # taken back behind a pause
        ("oak", "sorry my mistake, please take back what I wrote", [()]),
        ("oak", "I put Otto in stable", [("Otto", "stall")]),
        # as the one before: in a piece of its own
        ("oak", "Otto in his heavy, Fig too", [("Otto", ("otto-heavy",)), ("Fig", ("fig-heavy",))]),
        ("oak", "Otto's in his heavy and so is Fig", [("Otto", ("otto-heavy",)), ("Fig", ("fig-heavy",))]),
        ("oak", "put Clem's sheet on, same for Otto", [("Clementine", ("clem-sheet",)), ("Otto", ("otto-sheet",))]),
        ("oak", "Otto in his heavy, Clem too", [("Otto", ("otto-heavy",))]),
        ("oak", "Otto in the plaid sheet, Fig too", [("Otto", ("otto-sheet",))]),
        ("oak", "put Otto's sheet on, no sorry, Clem", [("Clementine", ("clem-sheet",))]),
        ("encina", "Canela lleva la impermeable, Trueno también", [
            ("Canela", ("canela-impermeable",)), ("Trueno", ("trueno-impermeable",)),
        ]),
        # all but one, said in one phrase: the one is left out
        *(
            (name, text, [(horse, what) for horse in ("Lucero", "Canela", "Trueno", "Paloma", "Estrella", "Moro")])
            for name, text, what in (
                ("encina", "turned out everyone except Nube", "field"),
                ("encina", "everyone except Nube is sweaty", "sweating"),
                ("encina", "all bar Nube are cold", "cold"),
                ("encina", "todos menos Nube sudados", "sweating"),
            )
        ),
        ("oak", "Otto's been stripped, he was roasting", [("Otto", ()), ("Otto", "hot")]),
        # a word that only opens the speech is no news of how one is
        ("oak", "ok Otto's in his heavy now", [("Otto", ("otto-heavy",))]),
        ("oak", "ok Otto and Fig both in their heavies", [("Otto", ("otto-heavy",)), ("Fig", ("fig-heavy",))]),
        ("oak", "ok under his rug, Otto", [("Otto", "comfortable")]),
        # a day in a table of horses is the horse called so
        ("oak", "Otto cold, Fig fine, Sunday hot", [("Otto", "cold"), ("Fig", "comfortable"), ("Sunday", "hot")]),
        # what is in the wash is worn no more
        ("oak", "Lady Grey's sheet is in the wash, put the spare sheet on her", [
            ("grey-sheet", "washing"), ("Lady Grey", ("grey-liner", "spare-sheet")),
        ]),
        # "in it" of a piece is no stall
        ("oak", "Otto's heavy is dry so he's in it now", [("otto-heavy", "dry"), ("Otto", ("otto-heavy",))]),
        ("oak", "Otto's heavy is dry, put him in that", [("otto-heavy", "dry"), ("Otto", ("otto-heavy",))]),
        # a piece told by its owner alone
        ("oak", "took Lady Grey's sheet off and Clem's", [("Lady Grey", ("grey-liner",)), ("Clementine", ())]),
        ("oak", "had Lady Grey's sheet off her and Clem's off her", [
            ("Lady Grey", ("grey-liner",)), ("Clementine", ()),
        ]),
        ("oak", "Otto's sheet is soaked, Clem's too", [("otto-sheet", "soaked"), ("clem-sheet", "soaked")]),
        ("oak", "Otto's sheet is wet and Clem's off her hay", [("otto-sheet", "wet"), ("Clementine", "unwell")]),
        # a name that lost its apostrophe: where it is, how its piece is torn, what was clipped
        ("oak", "tuckers in", [("Tucker", "stall")]),
        ("oak", "tuckers green rug has a hole in it like a football", [("tucker-250", "torn")]),
        ("oak", "clems hunter clip is done, looks smart", [("Clementine", "hunter")]),
        # how it was in what came off is no putting on
        ("oak", "took clems sheet off, she was soaking in it", [("Clementine", ()), ("Clementine", "wet")]),
        # as the one before, and something more done
        ("oak", "otto is cold and so are fig and tucker, gave them hay", [
            ("Otto", "cold"), ("Fig", "cold"), ("Tucker", "cold"),
        ]),
        ("oak", "ottos sheet is wet and so is clems liner, hung both up", [
            ("otto-sheet", "wet"), ("clem-liner", "wet"),
        ]),
        ("oak", "otto isn't hot, tucker is tho", [("Otto", "comfortable"), ("Tucker", "hot")]),
        ("oak", "otto isnt cold but fig def is, turned out willow and clem", [
            ("Otto", "comfortable"), ("Fig", "cold"), ("Willow", "field"), ("Clementine", "field"),
        ]),
        ("oak", "fig's fine tho and her cooler is dry", [("Fig", "comfortable"), ("fig-cooler", "dry")]),
        # both: the two told of, one after the other; of three nobody knows which
        ("oak", "otto is wet and so is fig, both in now", [
            ("Otto", "wet"), ("Fig", "wet"), ("Otto", "stall"), ("Fig", "stall"),
        ]),
        ("oak", "otto was dripping. fig was damp, stripped them both", [
            ("Otto", "wet"), ("Fig", "wet"), ("Otto", ()), ("Fig", ()),
        ]),
        ("oak", "otto is cold. fig is a bit off, both ears icy", [
            ("Otto", "cold"), ("Fig", "unwell"), ("Fig", "cold"),
        ]),
        ("oak", "otto is cold, fig is fine, tucker is wet. both in", [
            ("Otto", "cold"), ("Fig", "comfortable"), ("Tucker", "wet"),
        ]),
        ("oak", "otto is cold, fig is fine, both gates are shut", [("Otto", "cold"), ("Fig", "comfortable")]),
        # a lesson gone to
        ("oak", "otto and fig both went in the 4:30 lesson", [("Otto",), ("Fig",)]),
        ("oak", "fig got used in the beginner class", [("Fig",)]),
        ("sol", "Luna participó en la clase de las cinco", [("Luna",)]),
        ("tilleuls", "Neige est passée dans la reprise de 18h", [("Neige",)]),
        ("oak", "fig and otto are both done for the evening", [(("Fig", "Otto"),)]),
        # how its piece is, behind what the horse did; what came off, and into what
        ("oak", "fig had a good roll, her cooler is filthy but dry", [("fig-cooler", "dry")]),
        ("oak", "otto's heavy leaked, he's damp across the shoulders", [("Otto", "wet")]),
        ("oak", "clem was hot and bothered so her sheet came off", [("Clementine", "hot"), ("Clementine", ())]),
        ("oak", "stripped fig and into the spare sheet", [("Fig", ("spare-sheet",))]),
        ("oak", "heavy's on otto, sheet's on clem", [("Otto", ("otto-heavy",)), ("Clementine", ("clem-sheet",))]),
        # who is left out keeps its own on, and what is left on stays
        ("oak", "stripped lady grey, all but her liner", [("Lady Grey", ("grey-liner",))]),
        ("oak", "rugs off lady grey except her liner", [("Lady Grey", ("grey-liner",))]),
        ("oak", "all rugs off except bramble who has none", [
            ("Tucker", ()), ("Willow", ()), ("Fig", ()), ("Lady Grey", ()), ("Sunday", ()), ("Clementine", ()),
            ("Otto", ()),
        ]),
        ("oak", "fig is still out, rest are in", [
            ("Fig", "field"), ("Tucker", "stall"), ("Willow", "stall"), ("Bramble", "stall"), ("Lady Grey", "stall"),
            ("Sunday", "stall"), ("Clementine", "stall"), ("Otto", "stall"),
        ]),
        ("oak", "moved otto into the spare box", [("Otto", "stall")]),
        ("oak", "clem is wearing fig's stable", [("Clementine", ("fig-stable",))]),
        ("oak", "someone borrowed the green rug, it's gone from the hook", [("tucker-250", "missing")]),
        ("oak", "sorry the one shivering is fig not otto", [("Fig", "shivering")]),
        ("oak", "anyone in the barn? otto is sweating", [("Otto", "sweating")]),
        ("oak", "nobody rug fig, she's to stay naked all season", [("Fig", True)]),
        ("oak", "otto's dripping, just finished a gallop", [("Otto", "wet", "after work")]),
        ("oak", "anyone know why fig is in a heavy today", [("Fig", "why")]),
        # how the piece is that a horse has on; out of one and into the other; when, behind a list
        ("oak", "the sheet on otto is soaked", [("otto-sheet", "soaked")]),
        ("oak", "the sheet on otto isn't wet", [("otto-sheet", "dry")]),
        ("oak", "swapped otto into the heavy from the sheet", [("Otto", ("otto-heavy",))]),
        ("oak", "turned out otto, fig & willow at 7", [("Otto", "field"), ("Fig", "field"), ("Willow", "field")]),
        ("oak", "otto: heavy. willow: nothing. fig: cooler", [
            ("Otto", ("otto-heavy",)), ("Willow", ()), ("Fig", ("fig-cooler",)),
        ]),
        ("oak", "all toasty except fig who was cold", [
            ("Tucker", "comfortable"), ("Willow", "comfortable"), ("Bramble", "comfortable"),
            ("Lady Grey", "comfortable"), ("Sunday", "comfortable"), ("Clementine", "comfortable"),
            ("Otto", "comfortable"), ("Fig", "cold"),
        ]),
        ("oak", "fig's temp is 103", [("Fig", "unwell")]),
        # one after the other in its own; whose was torn; given, and from one into the other
        ("oak", "otto in his heavy, fig her cooler, tucker sheet, willow bare", [
            ("Otto", ("otto-heavy",)), ("Fig", ("fig-cooler",)), ("Tucker", ("tucker-sheet",)), ("Willow", ()),
        ]),
        ("oak", "otto ripped fig's cooler", [("fig-cooler", "torn")]),
        ("oak", "gave otto the spare sheet", [("Otto", ("spare-sheet",))]),
        ("oak", "moved otto from the heavy to the sheet", [("Otto", ("otto-sheet",))]),
        ("oak", "wet ones: otto's sheet, fig's cooler", [("otto-sheet", "wet"), ("fig-cooler", "wet")]),
        # of the same horse behind what it had or did; what was rubbed down is not rubbed
        ("oak", "fig had a bath and is soaking wet", [("Fig", "wet")]),
        ("oak", "brought otto in, he was shivering, rubbed him down", [("Otto", "stall"), ("Otto", "shivering")]),
        ("oak", "fig's shoulders are raw where the heavy sits", [("Fig", "rubbed")]),
        # a strap of its only piece, mended
        ("oak", "clems surcingle is sewn back on", [("clem-sheet", "in service")]),
        # a hand goes in, no horse; a horse brought in is
        ("oak", "otto's heavy is dry now, stuck my hand inside and everything", [("otto-heavy", "dry")]),
        ("oak", "otto, fig and clem are toasty, i put my hand in on every one of them", [
            ("Otto", "comfortable"), ("Fig", "comfortable"), ("Clementine", "comfortable"),
        ]),
        ("oak", "when otto was brought in he was trembling", [("Otto", "shivering")]),
        # the wrong horse was named: another, or not that one
        ("oak", "tuckers soaked. no sorry ottos the wet one", [("Otto", "wet")]),
        ("oak", "tucker is roasting, no hang on thats otto, tucker is grand", [
            ("Otto", "hot"), ("Tucker", "comfortable"),
        ]),
        ("oak", "tucker is cold. sorry, it's otto that's cold", [("Otto", "cold")]),
        ("oak", "tucker is cold. not tucker, otto", [("Otto", "cold")]),
        ("oak", "tucker is cold, not otto", [("Tucker", "cold")]),
        ("oak", "tucker is cold. oh, not tucker", []),
        ("chenaie", "Perle a froid, pas Ulysse", [("Perle", "cold")]),
        ("encina", "Lucero tiene frío, no Canela", [("Lucero", "cold")]),
        ("oak", "tucker and otto done. oh wait, not otto", [(("Tucker",),)]),
        ("oak", "tucker is wet. no that's otto's rug you mean", [("Tucker", "wet")]),
        # who is bare is no other; the rest are those not told of
        ("oak", "tucker in his liner, the neighbour is bare", [("Tucker", ("tucker-liner",))]),
        ("oak", "tucker in his liner, george bare", [("Tucker", ("tucker-liner",))]),
        ("oak", "fig in her cooler, everyone else is bare", [
            ("Fig", ("fig-cooler",)), ("Tucker", ()), ("Willow", ()), ("Bramble", ()), ("Lady Grey", ()),
            ("Sunday", ()), ("Clementine", ()), ("Otto", ()),
        ]),
        ("oak", "why's Otto in nothing? everybody else is done", [("Otto", "why")]),
        ("oak", "anythin still drying or is it all dry??", [("drying",)]),
        ("oak", "whats the forecast for tonight then, gonna be a cold one?", [("forecast",)]),
        # a horse named again begins its own thought, and "and is" goes on about the first
        ("oak", "Otto kicked Tucker and now Tucker won't eat", [("Tucker", "unwell")]),
        ("oak", "Otto bit Willow, and Willow is shivering", [("Willow", "shivering")]),
        ("oak", "Otto rolled and got soaked", [("Otto", "wet")]),
        # a piece laid over or under another is worn by whose the other is
        ("oak", "put Tucker's liner under Lady Grey's sheet", [
            ("Lady Grey", ("grey-liner", "tucker-liner", "grey-sheet")),
        ]),
        ("oak", "put the spare sheet over Otto's heavy", [("Otto", ("otto-heavy", "spare-sheet"))]),
        # all the others, and none of them either
        ("oak", "Otto not done yet, rest done", [
            (("Tucker", "Willow", "Bramble", "Fig", "Lady Grey", "Sunday", "Clementine"),),
        ]),
        ("oak", "Otto isn't cold, nor is Tucker", [("Otto", "comfortable"), ("Tucker", "comfortable")]),
        ("oak", "Fig's stable rug has a rip near the tail flap", [("fig-stable", "torn")]),
        # where a piece dries is a thought of its own, and "it" behind it is the piece
        ("oak", "Otto in his heavy and the sheet is hanging up by the heater it's soaking wet", [
            ("Otto", ("otto-heavy",)), ("otto-sheet", "soaked"),
        ]),
        ("oak", "Fig is bare. Heavy is on the rack, damp.", [("Fig", ()), ("fig-heavy", "damp")]),
        # a wish that only opens, and a report behind it
        ("oak", "please Otto is shivering", [("Otto", "shivering")]),
        ("encina", "ay q Canela esta tiritando en el prado", [("Canela", "shivering")]),
        ("oak", "I did Tucker myself, so he is done.", [(("Tucker",),)]),
        ("oak", "Sorry, please undo that, I was thinking of yesterday.", [()]),
        # names that are words as well, in lists
        ("oak", "shivering: sunday, fig", [("Sunday", "shivering"), ("Fig", "shivering")]),
        ("oak", "Otto is hot, same with sunday", [("Otto", "hot"), ("Sunday", "hot")]),
        ("oak", "Otto not cold, neither is willow", [("Otto", "comfortable"), ("Willow", "comfortable")]),
        ("encina", "ni nube ni estrella tienen frio", [("Nube", "comfortable"), ("Estrella", "comfortable")]),
        # what is denied of one is so of the other
        ("oak", "Tucker's not sweating, that's Fig", [("Tucker", "comfortable"), ("Fig", "sweating")]),
        ("oak", "Tucker isn't cold. That's Otto", [("Tucker", "comfortable"), ("Otto", "cold")]),
        ("encina", "Lucero no tirita, es la Canela", [("Lucero", "comfortable"), ("Canela", "shivering")]),
        ("chenaie", "Perle transpire pas, c'est Ulysse", [("Perle", "comfortable"), ("Ulysse", "sweating")]),
        ("oak", "Tucker isn't cold, it's cold out", [("Tucker", "comfortable")]),
        ("oak", "Tucker isn't cold, that's Otto's rug", [("Tucker", "comfortable")]),
        ("oak", "forget what I said about Otto, it was Tucker that was cold", [("Tucker", "cold")]),
        # who is still to be done is not, the others are
        ("oak", "Otto n Fig still need doing, rest done", [(ALL_BUT_OTTO_AND_FIG,)]),
        ("oak", "Otto and Fig yet to be done, everyone else is done", [(ALL_BUT_OTTO_AND_FIG,)]),
        # one piece over another, and how a third is
        ("oak", "Tucker has the 250 over his liner, sheet's hanging up wet", [
            ("Tucker", ("tucker-liner", "tucker-250")), ("tucker-sheet", "wet"),
        ]),
        ("oak", "Fig's in her cooler with the stable over", [("Fig", ("fig-cooler", "fig-stable"))]),
        ("oak", "Otto's sheet is wet, everyone else's is dry", [("otto-sheet", "wet")]),
        # off by mistake, and on again; torn by accident is torn; each in its own
        ("oak", "took Otto's heavy off by mistake, put it back on now", [("Otto", ("otto-heavy",))]),
        ("oak", "Otto's heavy got ripped by accident", [("otto-heavy", "torn")]),
        ("oak", "Otto and Fig were hot so I took their heavies off", [
            ("Otto", "hot"), ("Fig", "hot"), ("Otto", ()), ("Fig", ("fig-stable",)),
        ]),
        # what people are asked to do, and why
        ("oak", "can someone put Otto in his heavy, the sheet is damp", [("otto-sheet", "damp")]),
        ("oak", "could somebody fetch Otto in, Fig is shivering", [("Fig", "shivering")]),
        ("oak", "would you believe it, Otto's sheet is dry", [("otto-sheet", "dry")]),
        # where a thing of hers is, is told of no horse
        ("oak", "took Otto's heavy off, it is soaked, Willow oil is in the tack room, cold", [
            ("Otto", ()), ("otto-heavy", "soaked"),
        ]),
        # back on; only this now; not got to
        ("oak", "Otto had his heavy off all afternoon, it's back on now", [("Otto", ("otto-heavy",))]),
        ("oak", "Otto's sheet is dry, it's on the rack", [("otto-sheet", "dry")]),
        ("oak", "took Tucker's liner off, now only the sheet", [("Tucker", ("tucker-sheet",))]),
        ("oak", "didn't get to Otto or Fig, all others done", [(ALL_BUT_OTTO_AND_FIG,)]),
        # not this one; nothing but that one
        ("oak", "not Otto's heavy, his sheet has the rip", [("otto-sheet", "torn")]),
        ("oak", "not Tucker's sheet, Otto's is soaked", [("otto-sheet", "soaked")]),
        ("oak", "Otto is in nothing but his sheet", [("Otto", ("otto-sheet",))]),
        ("oak", "Fig has nothing on but her cooler", [("Fig", ("fig-cooler",))]),
        ("oak", "Otto in nothing but his birthday suit", [("Otto", ())]),
        ("oak", "put Otto and Tucker's sheets on", [("Otto", ("otto-sheet",)), ("Tucker", ("tucker-sheet",))]),
    ],
)  # fmt: skip
def test_each_thought_goes_to_its_own(name: str, text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that, and nothing beside it."""
    assert told(said(text, name)) == expected


@pytest.mark.parametrize(
    "text",
    [
        "my mum washed her good sheets with my breeches",
        "please take back what I wrote about the hay",
        "Otto's stable is a mess, I'm in it now",
        "what they all eating tonight",
        "what can you actually do about the mud",
        "Otto's sheet over the door is wet",
        "gave him and Otto a carrot",
        "willows fine trees",
        "willows in the lane",
        "gave otto's sheet a scrub",
        "fig's shivering pics from last winter are still on my phone",
        "i went to the lesson to watch otto",
        "everyone's sheets are dry except Otto's plaid",
        "and is Otto in his heavy",
        "did Nora eat? and is Fig sweating",
        "can someone feed Otto, Fig and Tucker",
        "can someone check Otto, if he's cold put the heavy on",
        "not Otto's heavy",
        "Otto has the wrong sheet on",
        "Nora put the wrong heavy on Otto, it's Fig's",
        "didn't get to the feed store",
        "nothing but rain all week",
        "all the sheets are wet except Otto's",
        "forget what I said about Otto being wet",
        "put Fig's heavy on Otto by mistake, sorted now",
        "Otto needs doing",
        "hay still needs doing",
        "the stable over the road is full",
        "Nora and Sam took their coats off",
        "otto is done for",
        "sundays are cold, winters are wet",
        "when I felt under her rug last year she was always cold",
        "it's freezing out there",
        "can you tell me why you left Otto with Nora",
        "did Fig like it, Nora said so",
        "gave Otto's heavy a brush",
        "those plaid sheets at the store are torn already",
        "tuckers are out in the shops",
        "wet willow is slippery",
        "Otto's mum's sheet music is missing",
        "stripped his bed, soaked",
        "forgot the hay again, my mistake",
        "Otto's sheet fell and it's on the fence now",
        "I did Otto's feet",
        "Otto is a sweetheart, the kid in the 4 oclock threw up, shes fine, mom came",
        "Otto isn't in the photo, Fig looks so cute",
        "please Otto needs a rug",
        "did Fig sweat",
        "should we keep Otto bare this winter?",
        "Otto was kept bare last year and lived out bare all winter",
        "if you could put the plaid sheet on Otto",
        "Otto had his sheet off over his head, found it in the mud, soaked",
    ],
)
def test_what_only_runs_alike_is_left_alone(text: str) -> None:
    """People's linen, trees, days, the weather, questions to people."""
    assert said(text, "oak").chatter


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("did Otto, Tucker and Fig. Sam has the rest after lunch", [(("Otto", "Tucker", "Fig"),)]),
        ("did Otto and Fig, Sam does the rest", [(("Otto", "Fig"),)]),
        ("Did Otto and Fig. Fig is cold", [("Fig", "cold"), (("Otto", "Fig"),)]),
        ("Willow's done and I did Fig while I was at it", [(("Willow", "Fig"),)]),
        ("Otto done, did Fig as well", [(("Otto", "Fig"),)]),
        ("Otto is done, I did Fig's hay", [(("Otto",),)]),
        ("Otto is done and I did Fig a favour", [(("Otto",),)]),
        ("did Otto and Fig get their hay", []),
        ("did Otto, Tucker and Fig's stalls", []),
        ("did Otto and Fig?", []),
        ("did Fig on my way", []),
        ("Otto has rub marks on his chest, and Fig does too", [("Otto", "rubbed"), ("Fig", "rubbed")]),
        ("Otto looked fine, Fig did as well", [("Otto", "comfortable"), ("Fig", "comfortable")]),
        ("Otto likes mints, Fig does too", []),
        ("Good morning from soggy Leeds, how is my Otto today?", [("Otto", "state")]),
        ("hello from the barn, Otto is shivering", [("Otto", "shivering")]),
        ("Moved Fig into the end stable.", [("Fig", "stall")]),
    ],
)
def test_a_list_is_done_and_what_does_so_too(text: str, expected: list[tuple[object, ...]]) -> None:
    """What "did" tells of a round, and of no other deed."""
    heard = said(text, "oak")
    assert (sorted(told(heard), key=str), heard.ask) == (sorted(expected, key=str), None)
