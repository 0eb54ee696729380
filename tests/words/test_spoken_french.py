"""French as thumbs and voices send it: pronouns of things, "é" for et, Québec's "y", the name told last."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        # a pronoun takes up the piece that was named first
        ("Perle a froid. La chemise bleue, elle, est trempée", [
            ("Perle", "cold"), ("caramel-impermeable", "soaked"),
        ]),
        ("l'imper d'Ulysse, il est sec", [("ulysse-impermeable", "dry")]),
        # what came off was wet, as its pronoun or its participle agrees
        ("viré l'imper d'Ulysse il dégoulinait", [("Ulysse", ()), ("ulysse-impermeable", "soaked")]),
        ("j'ai enlevé la 250 de Perle, elle était trempée", [("Perle", ()), ("perle-outdoor", "soaked")]),
        ("ôté la 250 à Perle, était mouillée", [("Perle", ()), ("perle-outdoor", "wet")]),
        ("j'ai enlevé la 250 de Perle, elle est trempée dessous", [("Perle", ()), ("Perle", "wet")]),
        ("j'ai enlevé l'imper d'Ulysse, elle est trempée", [("Ulysse", ()), ("Ulysse", "wet")]),
        ("j'ai pendu la 250 de Perle, elle est mouillée", [("perle-outdoor", "wet")]),
        ("j'ai touché sous la 250 de Perle, elle est mouillée", [("Perle", "wet")]),
        ("Étoile ne transpire pas mais perle si", [("Étoile", "comfortable"), ("Perle", "sweating")]),
        ("Perle a froid, tour du soir fini pour tout le monde jrentre", [("Perle", "cold"), ("all",)]),
        ("Perle grelottait au pré donc je l'ai rentrée", [("Perle", "shivering"), ("Perle", "stall")]),
        ("Perle a froid. ma voiture pue la couverture mouillée", [("Perle", "cold")]),
        ("La 250 de Perle, je l'ai mise à sécher, elle est à tordre.", [("perle-outdoor", "soaked")]),
        ("ôté la 250 à Perle, est toute détrempée la couverte", [("Perle", ()), ("perle-outdoor", "soaked")]),
        ("la chemise bleue a un accroc pis sa sangle est pétée", [
            ("caramel-impermeable", "torn"), ("caramel-impermeable", "strap broken"),
        ]),
        ("enlevé à Perle sa 250, complètement trempée", [("Perle", ()), ("perle-outdoor", "soaked")]),
        ("ôté à Perle sa 250, gorgée d'eau", [("Perle", ()), ("perle-outdoor", "soaked")]),
        ("retiré à Ulysse son imper, trempé", [("Ulysse", ()), ("ulysse-impermeable", "soaked")]),
        ("enlevé à Ulysse son imper, trempée", [("Ulysse", ()), ("Ulysse", "wet")]),
        # how long and where the work was is of both; what the second does else is its own
        ("longé Ulysse et Perle 20 min chacun", [("Ulysse",), ("Perle",)]),
        ("monté Ulysse et Perle dans la carrière", [("Ulysse",), ("Perle",)]),
        ("j'ai travaillé Ulysse et Perle à la longe ce matin", [("Ulysse",), ("Perle",)]),
        ("monté Ulysse et Perle a froid", [("Ulysse",), ("Perle", "cold")]),
        ("monté Ulysse et Perle est au box", [("Ulysse",), ("Perle", "stall")]),
        ("monté Ulysse et Perle se repose", [("Ulysse",)]),
        # parts of the body in a row are one horse's
        ("j'ai trouvé Perle avec le dos et les épaules bien froids", [("Perle", "cold")]),
        ("Perle a le garrot et les flancs trempés de sueur", [("Perle", "sweating")]),
        # who it is is said again behind where it was seen
        ("Ulysse lui dans son box il a trop chaud", [("Ulysse", "hot", "stall")]),
        ("perle elle au pré elle grelotte", [("Perle", "shivering")]),
        ("tempête elle dehors elle tremble", [("Tempête", "shivering")]),
        # to whom the verb says it goes on
        ("Ulysse dégouline de sueur, je lui ai mis la polaire de Filou", [
            ("Ulysse", "sweating"), ("Ulysse", ("filou-polaire",)),
        ]),
        ("la réserve 150 est sèche, je l'ai mise à Perle", [("reserve-150", "dry"), ("Perle", ("reserve-150",))]),
        # whose it is, or who, comes last
        ("J'y ai enlevé sa 250, à la Perle, elle est toute nue à présent", [("Perle", ())]),
        ("sa polaire est trempée, à Filou", [("filou-polaire", "soaked")]),
        ("elle tremble, la Perle", [("Perle", "shivering")]),
        ("il est trempé, le Filou", [("Filou", "wet")]),
        # "et" and "est" sound alike
        ("perle é ulysse mouillés jusko os", [("Perle", "wet"), ("Ulysse", "wet")]),
        ("Perle est Ulysse sont trempés", [("Perle", "wet"), ("Ulysse", "wet")]),
        ("ulysse et en sueur", [("Ulysse", "sweating")]),
        # Québec says "il", "aussi" and "est-ce que" otherwise
        ("Filou y met quoi à soir", [("Filou", "today")]),
        ("ulysse y tremble", [("Ulysse", "shivering")]),
        ("Perle a chaud pis Ulysse avec", [("Perle", "hot"), ("Ulysse", "hot")]),
        ("la chemise bleue est-tu sèche", [("caramel-impermeable", "drying")]),
        ("y annonce-tu ben frette c'te nuit", [("forecast",)]),
        ("Perle file pas pantoute", [("Perle", "unwell")]),
        ("Perle a plus d'poil à l'épaule", [("Perle", "rubbed")]),
        ("j'viens d'lâcher Ulysse pis Caramel dans l'clos", [("Ulysse", "field"), ("Caramel", "field")]),
        ("Ulysse y'est ben", [("Ulysse", "comfortable")]),
        ("mis la réserve 150 su Ulysse", [("Ulysse", ("reserve-150",))]),
        ("l'imper d'Ulysse il est sec ou pas", [("ulysse-impermeable", "drying")]),
        ("caramel juste son imper, noisette son liner é l'outdoor", [
            ("Caramel", ("caramel-impermeable",)), ("Noisette", ("noisette-liner", "noisette-outdoor")),
        ]),
        # a piece left on stays beside what was put on or taken off
        ("couvre-cou ajouté à Perle, elle garde sa 250", [("Perle", ("perle-outdoor", "perle-couvre-cou"))]),
        ("Étoile : enlevé l'imper, laissé la grosse", [("Étoile", ("etoile-grosse",))]),
        ("enlevé la polaire de Filou reste que la couverture de box", [("Filou", ("filou-box",))]),
        ("Étoile : grosse enlevée, imper à la place", [("Étoile", ("etoile-impermeable",))]),
        ("tous faits, reste que Filou", [(("Étoile", "Caramel", "Noisette", "Ulysse", "Perle", "Tempête"),)]),
        # where a horse was seen is no news of having been put there
        ("Ulysse dehors il a froid", [("Ulysse", "cold")]),
        ("Ulysse, au pré, il a froid", [("Ulysse", "cold")]),
        ("Ulysse est au pré, il a froid", [("Ulysse", "field"), ("Ulysse", "cold")]),
        ("je suis aux box, Perle transpire et Ulysse il crève de chaud", [
            ("Perle", "sweating", "stall"), ("Ulysse", "hot", "stall"),
        ]),
        ("Perle sort du cours des ados ruisselante de sueur", [("Perle", "sweating", "after work")]),
        # what somebody does next is a thought of its own
        ("tout le monde est fait je remonte boire un truc chaud", [("all",)]),
        ("j'ai rentré Filou j'ai sorti Ulysse", [("Filou", "stall"), ("Ulysse", "field")]),
        ("je suis aux box avec Perle, Ulysse au pré a froid", [("Ulysse", "cold")]),
        ("Ulysse il a froid, ses oreilles glacés, et Caramel pareil", [("Ulysse", "cold"), ("Caramel", "cold")]),
        ("étoile : la grosse, perle : la 250, ulysse : tout nu", [
            ("Étoile", ("etoile-grosse",)), ("Perle", ("perle-outdoor",)), ("Ulysse", ()),
        ]),
        ("checke ben, perle pis ulysse ont frette", [("Perle", "cold"), ("Ulysse", "cold")]),
        ("fini avec Filou et Tempête selon la liste", [(("Filou", "Tempête"),)]),
        ("Contrôlé tous les chevaux du pré : tous bien, sauf Filou un peu frais derrière les oreilles", [
            ("Filou", "cold"),
        ]),
        ("Perle frissonnait tantôt, là ça s'est calmé", [("Perle", "comfortable")]),
        ("filou lui y va super bien, ulysse lui il est brûlant sous sa couv", [
            ("Filou", "comfortable"), ("Ulysse", "hot"),
        ]),
        ("caramel y reste dehors à soir", [("Caramel", "field")]),
        ("tempête doit rester nue jusqu'à nouvel ordre", [("Tempête", True)]),
        ("non c'était pas Perle, annule", [()]),
        ("pourquoi vous avez laissé Étoile avec juste l'imper cette nuit ?", [("Étoile", "etoile-impermeable", "why")]),
        ("quelles couvertures sèchent dans la chambre", [("drying",)]),
        # more that is told beside what is worn
        ("j'ai sorti Perle au pré avec sa 250 et son couvre-cou", [
            ("Perle", ("perle-outdoor", "perle-couvre-cou")), ("Perle", "field"),
        ]),
        ("Perle transpire, je lui ai mis la polaire de Filou pour sécher", [
            ("Perle", "sweating"), ("Perle", ("filou-polaire",)),
        ]),
        ("Caramel : sa 200 mise, l'autre est mouillée", [("Caramel", ("caramel-200",))]),
        ("l'imper d'Ulysse est mouillé encore, pas sec", [("ulysse-impermeable", "wet")]),
        ("Perle porte rien que son couvre-cou", [("Perle", ("perle-couvre-cou",))]),
        ("la chemise bleue et celle d'Ulysse sont trempées", [
            ("caramel-impermeable", "soaked"), ("ulysse-impermeable", "soaked"),
        ]),
        ("perle é ulysse son rentré", [("Perle", "stall"), ("Ulysse", "stall")]),
        ("comment va Perle depuis sa colique ?", [("Perle", "state")]),
        ("Ulysse est tout en sueur pis y tremble un peu, quelqu'un peut venir ?", [
            ("Ulysse", "sweating"), ("Ulysse", "shivering"),
        ]),
        ("caramel yé correct mais perle a frette", [("Caramel", "comfortable"), ("Perle", "cold")]),
        ("c'est beau pour Perle pis Ulysse", [(("Perle", "Ulysse"),)]),
        ("perle est r'tournée au clos", [("Perle", "field")]),
        ("récupéré la 250 de Perle chez le réparateur", [("perle-outdoor", "in service")]),
        ("porté la 250 de Perle chez le réparateur", [("perle-outdoor", "torn")]),
        ("Caramel a les oreilles froides mais le corps il est chaud", [("Caramel", "cold")]),
        ("Ulysse a quoi sur le dos", [("Ulysse", "state")]),
        # how the piece was that stands last before "qui"
        ("J'ai retiré à Perle sa 250, qui dégoulinait", [("Perle", ()), ("perle-outdoor", "soaked")]),
        ("j'ai enlevé à Ulysse son imper, qui était mouillé, et il a froid", [
            ("Ulysse", ()), ("ulysse-impermeable", "wet"), ("Ulysse", "cold"),
        ]),
        # what a hand found under a piece
        ("j'ai passé la main sous la 250 de Perle : bien chaud, bien sec", [("Perle", "comfortable")]),
        ("touché sous l'imper d'Ulysse: sec, tiède", [("Ulysse", "comfortable")]),
        ("sous la 250 de Perle c'est sec", [("Perle", "comfortable")]),
        # what somebody took it upon himself to do
        ("je me suis permis de retirer sa 250 à Perle", [("Perle", ())]),
        ("j'ai cru bon d'ajouter son couvre-cou à Perle, elle garde sa 250", [
            ("Perle", ("perle-outdoor", "perle-couvre-cou")),
        ]),
        # all but these, and two horses seen where the sentence begins
        ("tous changés, seulement Filou et Perle pas encore", [
            (("Étoile", "Caramel", "Noisette", "Ulysse", "Tempête"),),
        ]),
        ("tout le monde est fait sauf Perle pas encore", [
            (("Étoile", "Caramel", "Noisette", "Filou", "Ulysse", "Tempête"),),
        ]),
        ("tous faits, Perle reste à faire", [
            (("Étoile", "Caramel", "Noisette", "Filou", "Ulysse", "Tempête"),),
        ]),
        ("tous faits, Perle a froid", [("all",), ("Perle", "cold")]),
        ("j'ai remis à Perle sa 250, qui était sèche", [("Perle", ("perle-outdoor",)), ("perle-outdoor", "dry")]),
        ("pas mis la 250 à Perle, elle a déjà chaud", [("Perle", "hot")]),
        ("qui reste à faire", [("left",)]),
        ("au pré Perle et Ulysse ont froid", [("Perle", "cold"), ("Ulysse", "cold")]),
        ("au pré Perle et Ulysse elles vont bien", [("Perle", "comfortable"), ("Ulysse", "comfortable")]),
        ("Perle pas bien du tout, elle se couche et se roule dans son box, venez vite", [("Perle", "unwell", "stall")]),
        ("j'ai glissé le couvre-cou à Perle", [("Perle", ("perle-couvre-cou",))]),
        # a place that heads what is told, until another does
        ("aux box : Perle transpire, Ulysse tremble", [
            ("Perle", "sweating", "stall"), ("Ulysse", "shivering", "stall"),
        ]),
        ("Dans l'écurie Perle a froid. Au pré Filou tremble", [("Perle", "cold", "stall"), ("Filou", "shivering")]),
        ("Aux box :\nPerle a froid\nUlysse transpire\nAu pré :\nFilou tremble", [
            ("Perle", "cold", "stall"), ("Ulysse", "sweating", "stall"), ("Filou", "shivering"),
        ]),
        ("aux box, Perle transpire. Filou a froid", [("Perle", "sweating", "stall"), ("Filou", "cold")]),
        ("Ulysse tondu en trace Perle tremble", [("Ulysse", "trace"), ("Perle", "shivering")]),
        # as it was then, told of now; why, without a pause
        ("Ulysse tondu en trace comme l'an dernier", [("Ulysse", "trace")]),
        ("Filou transpire comme la dernière fois", [("Filou", "sweating")]),
        ("Filou reste dedans aujourd'hui c'est verglacé partout", [("Filou", "stall")]),
        ("mis l'imper à Ulysse c'est trempé dehors", [("Ulysse", ("ulysse-impermeable",))]),
        # the style behind the names
        ("tondu perle en couverture", [("Perle", "blanket")]),
        ("j'ai tondu Perle et Ulysse en chasse", [("Perle", "hunter"), ("Ulysse", "hunter")]),
        # whose horse it is, said beside its name
        ("la Noisette de Margaux tremble", [("Noisette", "shivering")]),
        ("j'ai rentré noisette à Margaux", [("Noisette", "stall")]),
        # the list carried out, in other words
        ("j'ai appliqué le planning pour Filou et Perle", [(("Filou", "Perle"),)]),
        ("je me suis occupée de Filou comme marqué sur la liste", [(("Filou",),)]),
        ("à quoi sert ce robot", [("help",)]),
        ("Perle a eu sa tonte chasse par le tondeur", [("Perle", "hunter")]),
        ("ça y est, on a tondu Filou ! Juste une trace", [("Filou", "trace")]),
        ("Perle et Ulysse ont sué, mais Filou pas du tout", [
            ("Perle", "sweating"), ("Ulysse", "sweating"), ("Filou", "comfortable"),
        ]),
        ("Tempête blessée par le frottement au garrot", [("Tempête", "rubbed")]),
        ("la 250 de Perle est revenue réparée de chez le réparateur", [("perle-outdoor", "in service")]),
        ("Caramel 200 g mise", [("Caramel", ("caramel-200",))]),
        ("Noisette, changement : on arrête de la laisser nue", [("Noisette", False)]),
        ("tt terminé ce soir", [("all",)]),
        # a piece that only others have is not of the horse spoken of before
        ("Filou est au pré. La 250 est trempée", [("Filou", "field"), ("perle-outdoor", "soaked")]),
        # as it sounds
        ("jai rtiré la 250 de Perle", [("Perle", ())]),
        ("kess kon leur met a tous ce soir", [("today",)]),
        ("on mé koi ce soir", [("today",)]),
        ("ulysse i se les caille", [("Ulysse", "cold")]),
        ("longé filou pui perle ce mat", [("Filou",), ("Perle",)]),
        ("perle pi ulysse ont tourné 2h au manège", [("Perle",), ("Ulysse",)]),
        ("Étoile elle met quoi cette nuit", [("Étoile", "today")]),
        ("tempête elle met quoi cette nuit?", [("Tempête", "today")]),
        ("il reste qui à changer encore", [("left",)]),
        ("c'est quoi qui est encore en train de sécher ?", [("drying",)]),
        ("la chemise bleue a-t-elle fini de sécher ?", [("caramel-impermeable", "drying")]),
        ("robot, tu c faire quoi", [("help",)]),
        ("on met quoi sur qui se soir", [("today",)]),
        # a wish taken back
        ("Perle, j'aimerais mieux qu'a reste pas toute nue", [("Perle", False)]),
        ("vous pouvez recommencer à couvrir Perle, je tiens plus à ce qu'elle reste nue", [("Perle", False)]),
        ("je ne veux plus que Perle reste nue", [("Perle", False)]),
        ("Perle ne reste plus nue cette saison, elle est trop vieille", [("Perle", False)]),
        ("Perle ne doit plus rester à poil", [("Perle", False)]),
        ("Perle restera nue cette année", [("Perle", True)]),
        ("Ne plus mettre de couverture à Filou, merci", [("Filou", True)]),
        ("il faut pas mettre de couverture à Filou si elle est mouillée", []),
        # the round, said behind it; an e that nobody hears; an apostrophe lost
        ("Filou et Perle c'est fait pour la tournée du soir", [(("Filou", "Perle"),)]),
        ("à ma ronde de ce matin Perle transpirait", [("Perle", "sweating")]),
        ("ulysse trmpé de sueur apré la repriz", [("Ulysse", "sweating", "after work")]),
        ("je trouv plu la polair de filou", [("filou-polaire", "missing")]),
        ("caramel trembl", [("Caramel", "shivering")]),
        ("limper dulysse è sec", [("ulysse-impermeable", "dry")]),
        ("mi limper a ulysse", [("Ulysse", ("ulysse-impermeable",))]),
        ("jai rentré perle a lécurie", [("Perle", "stall")]),
        ("la doublure detoile est trempée", [("etoile-sous-couverture", "soaked")]),
        # what a horse has on, called with its article, and how that is
        ("Caramel a la chemise bleue", [("Caramel", ("caramel-impermeable",))]),
        ("Perle a la 250 trempée", [("perle-outdoor", "soaked")]),
        ("Filou avec sa polaire toute mouillée", [("filou-polaire", "wet")]),
        ("Ulysse a son imper trempé", [("ulysse-impermeable", "soaked")]),
        # another's piece is on whom was told before
        ("Perle transpire, polaire de Filou dessus", [("Perle", "sweating"), ("Perle", ("filou-polaire",))]),
        ("Perle transpire, Filou polaire dessus", [("Perle", "sweating"), ("Filou", ("filou-polaire",))]),
        ("Étoile a froid, grosse par dessus", [("Étoile", "cold"), ("Étoile", ("etoile-grosse",))]),
        # what dries is not dry
        ("remis l'imper à Étoile, la grosse d'Étoile sèche au radiateur", [("Étoile", ("etoile-impermeable",))]),
        ("la 250 de Perle est sèche au radiateur", [("perle-outdoor", "dry")]),
        ("la 250 de Perle sèche, rangée au box", [("perle-outdoor", "dry")]),
        # one piece for another, as an arrow or another piece that stays says
        ("Étoile : sous-couverture → grosse", [("Étoile", ("etoile-grosse",))]),
        ("Caramel imper -> 200", [("Caramel", ("caramel-200",))]),
        ("mis grosse et sous-couverture à Étoile. Étoile : imper à la place de la grosse, la sous-couverture reste", [
            ("Étoile", ("etoile-sous-couverture", "etoile-impermeable")),
        ]),
        ("Caramel passé sur la 200", [("Caramel", ("caramel-200",))]),
        # of each of several the one rug; what is chaud below cold ears
        ("les couvertures de Perle et de Filou sont trempées", [("perle-outdoor", "soaked"), ("filou-box", "soaked")]),
        ("Perle a les oreilles froides mais elle est chaude sous la 250", [("Perle", "cold")]),
        ("Perle a les oreilles froides mais trop chaud sous la 250", [("Perle", "cold"), ("Perle", "hot")]),
        ("Filou il caille au pré", [("Filou", "cold")]),
        ("fini les changements sauf Perle que j'ai pas pu attraper", [
            (("Étoile", "Caramel", "Noisette", "Filou", "Ulysse", "Tempête"),),
        ]),
        # who is left is not done; what she wears in her stall is no stall; taken up is not ridden
        ("Étoile faite, reste les poneys", [(("Étoile",),)]),
        ("Filou : polaire enlevée, box remise", [("Filou", ("filou-box",))]),
        ("la box de Filou est trempée", [("filou-box", "soaked")]),
        ("monté Perle et Ulysse à l'écurie", [("Perle", "stall"), ("Ulysse", "stall")]),
        ("monté Perle en carrière", [("Perle",)]),
        ("Caramel plus de 200, elle est en chemise bleue", [("Caramel", ("caramel-impermeable",))]),
        ("Étoile et Ulysse ont leurs impers", [
            ("Étoile", ("etoile-impermeable",)), ("Ulysse", ("ulysse-impermeable",)),
        ]),
        ("la 250 de Perle est au lavage, elle a la réserve 150", [
            ("perle-outdoor", "washing"), ("Perle", ("reserve-150",)),
        ]),
        ("la réserve 150 est sèche, remise à Perle", [("reserve-150", "dry"), ("Perle", ("reserve-150",))]),
        ("la grosse d'Étoile est à sécher, elle a son imper", [("Étoile", ("etoile-impermeable",))]),
        # who went where is listed behind a colon
        ("sortis : Filou Perle. rentrés : Ulysse", [("Filou", "field"), ("Perle", "field"), ("Ulysse", "stall")]),
        ("sortis : Filou, Perle / rentrés : Ulysse", [("Filou", "field"), ("Perle", "field"), ("Ulysse", "stall")]),
        ("Filou est au pré. Rentrés :\nPerle", [("Filou", "field")]),
        # what was left so, what had been put on before, what is only explained
        ("j'ai laissé Perle et Filou nus", [("Perle", ()), ("Filou", ())]),
        ("laissé Perle nue", [("Perle", ())]),
        ("laissez Perle nue", [("Perle", True)]),
        ("j'avais mis la 250 à Perle mais elle transpire", [("Perle", "sweating")]),
        ("j'ai mis l'imper à Étoile mais c'est celui d'Ulysse", [("Étoile", ("etoile-impermeable",))]),
        ("mis la 250 à Étoile au lieu de Perle, je rectifie : 250 à Perle, grosse à Étoile", [
            ("Perle", ("perle-outdoor",)), ("Étoile", ("etoile-grosse",)),
        ]),
        ("Caramel a froid, chemise bleue à la place de la 200", [
            ("Caramel", "cold"), ("Caramel", ("caramel-impermeable",)),
        ]),
        ("Perle trempée mais chaude", [("Perle", "wet")]),
        ("Perle a chaud comme il faut", [("Perle", "comfortable")]),
        # two lists without a pause; a comparison; what was left on, and put back
        ("Étoile Perle rentrées Filou Ulysse dehors", [
            ("Étoile", "stall"), ("Perle", "stall"), ("Filou", "field"), ("Ulysse", "field"),
        ]),
        ("Perle a froid, Filou a plus chaud que Caramel", [("Perle", "cold")]),
        ("on a laissé la 250 à Perle, elle transpirait pas", [("Perle", ("perle-outdoor",)), ("Perle", "comfortable")]),
        ("Perle a viré sa 250, je lui ai remise", [("Perle", ("perle-outdoor",))]),
        ("la sous-couverture d'Étoile est sèche, je l'ai remise sous la grosse", [
            ("etoile-sous-couverture", "dry"), ("Étoile", ("etoile-sous-couverture", "etoile-grosse")),
        ]),
        ("Filou box retirée polaire mise il sort de cours trempé", [
            ("Filou", ("filou-polaire",)), ("Filou", "wet", "after work"),
        ]),
        ("Étoile sous-couverture dessous grosse dessus elle grelotte", [
            ("Étoile", ("etoile-sous-couverture", "etoile-grosse")), ("Étoile", "shivering"),
        ]),
        ("jé mi la 250 a perle", [("Perle", ("perle-outdoor",))]),
        ("perle a pa froi mé filou oui", [("Perle", "comfortable"), ("Filou", "cold")]),
        ("Perle en 250, Étoile sous-couverture + grosse, rien sur Filou", [
            ("Perle", ("perle-outdoor",)), ("Étoile", ("etoile-sous-couverture", "etoile-grosse")), ("Filou", ()),
        ]),
        ("Caramel était en chemise bleue, passée en 200", [("Caramel", ("caramel-200",))]),
        ("Perle a été tondue en couverture cet aprem Je veux que Perle reste nue cet hiver", [("Perle", True)]),
        # of several told before; the one spare that cannot be on two
        ("Perle et Filou transpiraient, je les ai déshabillés", [
            ("Perle", "sweating"), ("Filou", "sweating"), ("Perle", ()), ("Filou", ()),
        ]),
        ("Perle en nage, pas de couv pour l'instant", [("Perle", "sweating"), ("Perle", ())]),
        ("fini les box, Ulysse rentré", [("Ulysse", "stall")]),
        # one piece over another; what hangs to dry is not worn; how she is in spite of what she wears
        ("Étoile : imper sur la sous-couverture", [("Étoile", ("etoile-sous-couverture", "etoile-impermeable"))]),
        ("Étoile en imper, la grosse au séchoir", [("Étoile", ("etoile-impermeable",))]),
        ("Perle trempée malgré la 250", [("Perle", "wet")]),
        # it freezes: the sky, or the horse named right before; at its ease
        ("Filou il gèle sérieux", [("Filou", "cold")]),
        ("rentré Perle, il gèle", [("Perle", "stall")]),
        ("Ulysse est trempé et il gèle dehors", [("Ulysse", "wet")]),
        ("Caramel est ben confo", [("Caramel", "comfortable")]),
        ("Noisette est bien à son aise sous sa 100", [("Noisette", "comfortable")]),
        # from one piece to another, and on to one
        ("j'ai passé Étoile de la grosse à l'imper", [("Étoile", ("etoile-impermeable",))]),
        ("on a passé Caramel à la 200", [("Caramel", ("caramel-200",))]),
        ("j'ai passé Caramel au pré", [("Caramel", "field")]),
        # taken home to be washed
        ("j'ai pris la 250 de Perle chez moi pour la laver", [("perle-outdoor", "washing")]),
        ("la réserve 150 est chez ma sœur pour être lavée", [("reserve-150", "washing")]),
        # a hole, how big, and in what
        ("y a un trou gros comme le poing dans la grosse d'Étoile", [("etoile-grosse", "torn")]),
        ("accroc de 10 cm à l'épaule de la 250", [("perle-outdoor", "torn")]),
        ("une déchirure grosse comme la main sur la chemise bleue", [("caramel-impermeable", "torn")]),
        # two pieces, and behind a pause how both are; wet inside is no more than wet
        ("la 250 et la chemise bleue pendent au fil, humides les deux", [
            ("perle-outdoor", "damp"), ("caramel-impermeable", "damp"),
        ]),
        ("la 250 est mouillée à l'intérieur", [("perle-outdoor", "wet")]),
        # a strap just gone, one piece and no more, ridden over fences, and who asks
        ("la sangle de la 250 vient de lâcher", [("perle-outdoor", "strap broken")]),
        ("sauté avec Ulysse une bonne heure", [("Ulysse",)]),
        ("qu'est-ce qu'il y a encore qui sèche", [("drying",)]),
        ("y en a combien de pas faits", [("left",)]),
        ("pourquoi Perle est-elle couverte à ce point ?", [("Perle", "why")]),
        ("Perle n'est plus à laisser nue", [("Perle", False)]),
        # several as the one before
        ("Perle sèche, Filou pis Ulysse aussi, Étoile un peu frette", [
            ("Perle", "comfortable"), ("Filou", "comfortable"), ("Ulysse", "comfortable"), ("Étoile", "cold"),
        ]),
        # a pronoun behind a pause: of the horse before it
        ("Ulysse boude, il est trempé", [("Ulysse", "wet")]),
        ("Perle boude, elle a froid", [("Perle", "cold")]),
        ("Étoile est revenue de balade, elle est au box", [("Étoile", "stall")]),
        ("Filou gambade dehors", [("Filou", "field")]),
        ("je viens de mettre Filou au box", [("Filou", "stall")]),
        ("Perle est en dedans pour la nuit", [("Perle", "stall")]),
        ("Filou est sec comme un os", [("Filou", "comfortable")]),
        ("Caramel est trempée de chaud", [("Caramel", "sweating")]),
        # dressed, and then in what; a table of who wears what, and how another piece is
        ("habillé Filou, polaire", [("Filou", ("filou-polaire",))]),
        ("Étoile habillée : sous-couverture et grosse", [("Étoile", ("etoile-sous-couverture", "etoile-grosse"))]),
        ("Étoile : imper, la grosse est trempée", [("Étoile", ("etoile-impermeable",)), ("etoile-grosse", "soaked")]),
        ("Caramel a repris sa 200", [("Caramel", ("caramel-200",))]),
        ("j'ai désabrié Perle", [("Perle", ())]),
        # where a piece is wet, said behind "mais"; what is gone, behind a question put to people
        ("l'imper d'Ulysse est sec au dos mais trempé au poitrail", [("ulysse-impermeable", "soaked")]),
        ("quelqu'un a pris la chemise bleue, je la trouve pas", [("caramel-impermeable", "missing")]),
        ("la 250 est à la lessiveuse", [("perle-outdoor", "washing")]),
        ("étendu la 250 dans la sellerie, elle goutte encore", [("perle-outdoor", "soaked")]),
        ("l'attache de la grosse d'Étoile est brisée", [("etoile-grosse", "strap broken")]),
        # whom it is not, in the middle; who only went along; what is only not yet so; gone and found again
        ("Perle et Ulysse, pas Caramel, ont froid", [("Perle", "cold"), ("Ulysse", "cold")]),
        ("Ulysse a été lâché avec Étoile sans couverture", [("Ulysse", ()), ("Ulysse", "field")]),
        ("Perle est en 250, elle l'a pas encore déchirée", [("Perle", ("perle-outdoor",))]),
        ("Perle a perdu sa 250 au pré, je l'ai retrouvée", [("perle-outdoor", "in service")]),
        ("la chemise bleue a disparu de son crochet", [("caramel-impermeable", "missing")]),
        ("j'ai pas réussi à attraper Ulysse, il est toujours en imper", [("Ulysse", ("ulysse-impermeable",))]),
        ("Étoile transpire, je lui laisse que l'imper", [("Étoile", "sweating"), ("Étoile", ("etoile-impermeable",))]),
        ("Noisette a la marque de la couv à l'épaule", [("Noisette", "rubbed")]),
        # clipped by somebody; a wish until spring; what is asked
        ("Perle s'est fait tondre en couverture", [("Perle", "blanket")]),
        ("Filou nu jusqu'au printemps", [("Filou", True)]),
        ("pas de couverte à Filou svp", [("Filou", True)]),
        ("Noisette on la couvre à nouveau", [("Noisette", False)]),
        ("quelles couvertures sont encore au séchoir ?", [("drying",)]),
        ("Perle dort en quoi", [("Perle", "state")]),
        ("Perle a besoin de quoi pour demain ?", [("Perle", "today")]),
        # the round told as done; what came of a cold, and of the heat
        ("j'ai fini mon tour, reste Perle", [(("Étoile", "Caramel", "Noisette", "Filou", "Ulysse", "Tempête"),)]),
        ("Perle a froid jsp quoi faire", [("Perle", "cold")]),
        ("Filou es trempé", [("Filou", "wet")]),
        ("Ulysse a pris un coup de chaud", [("Ulysse", "hot")]),
        ("Perle a un rhume", [("Perle", "unwell")]),
        ("les oreilles à Perle sont froides", [("Perle", "cold")]),
        # what a piece was put on for; how she would be else; what alone is on her
        ("mis la polaire à Filou pour la nuit", [("Filou", ("filou-polaire",))]),
        ("mis la polaire à Filou pour le sécher", [("Filou", ("filou-polaire",))]),
        ("j'ai mis la polaire à Filou après la douche", [("Filou", ("filou-polaire",))]),
        ("j'ai mis la 250 à Perle sinon elle a froid", [("Perle", ("perle-outdoor",))]),
        ("Perle est rentrée, sinon elle va bien", [("Perle", "stall"), ("Perle", "comfortable")]),
        ("y a juste l'imper sur Étoile", [("Étoile", ("etoile-impermeable",))]),
        ("Caramel est passée de la 200 à l'imper", [("Caramel", ("caramel-impermeable",))]),
        ("Ulysse est mouillé à ras la peau", [("Ulysse", "wet")]),
        ("Filou a l'air de crever de froid", [("Filou", "cold")]),
        # the weather behind what was done; what is the speaker's, and a pronoun of it
        ("Perle a sa 250, il fait vraiment trop froid", [("Perle", ("perle-outdoor",))]),
        ("Filou est au pré, il fait bien sec", [("Filou", "field")]),
        ("Perle est sèche. j'ai laissé ma selle dehors, elle est trempée", [("Perle", "comfortable")]),
        ("Ulysse est sec. j'ai oublié mon imper au club, il est trempé", [("Ulysse", "comfortable")]),
        # whoever is found hot is none of those before; who is bare was told of before; who is left out stands behind
        ("enlevé les bandes à Perle, je trouve Ulysse un peu chaud", [("Ulysse", "hot")]),
        ("Ulysse est trempé, il est tout nu, Perle arrive demain", [("Ulysse", "wet"), ("Ulysse", ())]),
        ("j'ai fini ma tournée, reste Perle, la grosse d'Étoile est sèche", [
            (("Étoile", "Caramel", "Noisette", "Filou", "Ulysse", "Tempête"),), ("etoile-grosse", "dry"),
        ]),
        ("j'ai oublié l'imper d'Étoile, la sangle de la 250 est cassée", [("perle-outdoor", "strap broken")]),
    ],
)  # fmt: skip
def test_spoken_french_is_understood(text: str, expected: list[tuple[object, ...]]) -> None:
    """Exactly that, and nothing beside it."""
    assert told(said(text, "chenaie")) == expected


@pytest.mark.parametrize(
    "text",
    [
        "la polaire, j'y tiens",
        "la Perle de Margaux tremble",  # hers is Noisette
        "caramel 200 g pour le gâteau",
        "Noisette, chocolat et gâteau pour ce soir",
        "tout terminé pour la compta",
        "il transpirait tjrs Filou quand il était foal",
        "Perle avait froid à l'époque où elle était jeune",
        "je suis sur la liste du concours avec Perle",
        "je me suis occupée de Filou",
        "comme la dernière fois Perle a eu froid, on verra",
        "les box sont pleins, on a froid",
        "on utilise comment la tondeuse",
        "vous pouvez y mettre les seaux",
        "y a du froid qui arrive",
        "Perle a-tu froid là",
        "Perle transpire ou pas",
        "tous finis, juste Perle",
        "Ulysse a glissé dans le pré mais rien de grave",
        "la smaine passée Perle grelottait",
        "Yann est-ce que Perle avait froid quand tu l'as rentrée",
        "Yann, Perle transpirait quand tu l'as vue ?",
        "Yann, est-ce qu'Ulysse grelottait ce matin quand vous êtes passés ?",
        "je me suis permis d'emprunter le tracteur",
        "j'ai su la nouvelle par Yann",
        "c'est ben correct de même",
        "on y va avec Perle",
        "Neige et froid annoncés pour demain",
        "Perle est Ulysse ?",
        "elle est trempée, Yann l'a vue",
        "elle est tombée, la Perle que j'avais",
        "je suis au box avec le véto",
        "laisse la grosse sur le fil",
        "le caramel c'est pour la toux ?",
        "Perle porte tu encore son couvre-cou",
        "j'ai mis les couvertures à tout le monde sauf Perle",  # which, nobody says
        "James a froid aux mains",
        "Anne a mis sa chemise bleue",
        "tu te rappelles quand Caramel avait déchiré ses deux couvertures",
        "merci à Yann d'avoir séché la polaire",
        "j'ai porté l'imper d'Ulysse chez ma mère",
        "la tempête elle est passée",
        "tous les chevaux du voisin toussent",
        "la tempête elle est au pré elle a couché l'arbre",
        "la tempête dehors elle a tout arraché",
        "monter Ulysse et Perle demain 20 min chacun",
        "j'ai mal au dos et aux épaules après Ulysse",
        "Perle est restée nue tout l'hiver",
        "Ulysse a pris du ventre cette année",
        "la tournée du facteur est faite",
        "j'ai fait la tournée des clôtures",
        "la ronde du soir c'est qui",
        "lautre jour il a plu dans lécurie",
        "Étoile filante, letoile du berger est froide",
        "la 250 de Perle sèche encore sur l'étendoir",
        "ça caille, rentrez Perle",
        "fini les couvertures, c'est le printemps",
        "Perle est passée sur le pont",
        "Perle 480 → 500 kg",
        "les 3 grands sont faits, reste les poneys",
        "le box de Filou est trempé",
        "pas de couv pour Perle ce soir svp",
        "ne couvrez pas Perle cette nuit",
        "Perle a moins froid que Filou",
        "j'ai viré le tas de fumier, remis au propre",
        "vu la météo je pense laisser Perle nue",
        "essayez la 250 sur Perle pour voir",
        "posé l'imper d'Étoile sur la grosse dans la sellerie",
        "y a un trou gros comme le poing dans la clôture derrière la 250",
        "un trou de 10 cm dans le toit de la sellerie",
        "Yann il gèle dehors, prends ton bonnet",
        "j'ai emmené Filou à la clinique",
        "les chevaux du haut sont faits",
        "tous les chevaux de devant sont faits",
        "quelqu'un a vu mon licol, je le trouve pas",
        "Yann boude, il est trempé",
        "le robinet goutte encore",
        "pour Perle on fait quoi ce soir",
        "on fait quoi demain les filles",
        "Perle tremble-tu ?",
        "la 250 n'est pas encore recousue",
        "le tapis de selle à Perle est mouillé",
        "le box à Filou est trempé",
        "En 2019 Ulysse a eu une colique",
        "Yann t'es trempé",
        "j'ai pris un coup de chaud",
    ],
)
def test_small_talk_in_the_same_words_stays_small_talk(text: str) -> None:
    """The words that report elsewhere report nothing here."""
    assert said(text, "chenaie").chatter


@pytest.mark.parametrize("text", ["moi je reste sous ma couverture", "je garde mon liner moi", "je dors en outdoor"])
def test_what_an_owner_wears_is_no_horses(text: str) -> None:
    """Her own blanket, although a horse of hers has one."""
    assert said(text, "chenaie", "Margaux").chatter
