"""French, as stables speak it."""

PHRASES = {
    "sign sweating": """
        transpire, transpirent, transpirait, transpiré, transpirant|e|s, transpiration, en sueur, en
        sueurs, sueur, sue, suent, suant|e, en nage, trempé||e|s|es de sueur, mouillé||e|s|es de
        sueur, humide de sueur, couvert||e|s|es de sueur, dégouline de sueur, en eau, transpirer,
        suer, plein||e de sueur, dégoulinant|e de sueur, traces de sueur, sweaty, sweating, a
        transpiré, a sué, suait, ruisselle de sueur, ruisselant de sueur, en transpiration, moite sous
        la couverture, moite sous sa couverture, traces de transpiration, toute en sueur, tout en
        sueur, trempé de transpiration, sueur sous, a des sueurs, transpirante
    """,
    "sign hot": """
        a trop chaud, ont trop chaud, a chaud, ont chaud, trop chaud, a très chaud, ont très chaud,
        avait chaud, a bien chaud, a un peu chaud, crève de chaud, surchauffe, brûlant||e, a un peu
        trop chaud, a eu chaud, a drôlement chaud, meurt de chaud, avait trop chaud, avoir chaud,
        avoir trop chaud, a super chaud, étouffe, crevait de chaud, meurt de chaleur, en surchauffe,
        chaud sous sa couverture, chaud sous la couverture, cuit sous sa couverture, bout sous sa
        couverture, trop couvert||e, étouffe de chaleur, a trop chaud sous
    """,
    "sign shivering": """
        frissonne, frissonnent, frissonnait, frissonnant|e, frissons, tremble, tremblent, tremblait,
        tremblant|e, grelotte, grelottent, grelottait, grelottant|e, tremblements, tremble de froid,
        tremblent de froid, grelotter, trembler, frissonner, des frissons, claque des dents,
        tremblote, tremble comme une feuille, grelote, shivering, frémit de froid, secoué||e de
        frissons, plein||e de frissons, a des frissons, a des tremblements
    """,
    "sign cold": """
        a froid, ont froid, a très froid, ont très froid, avait froid, a un peu froid, ont un peu
        froid, a trop froid, frigorifié||e|s|es, transi||e|s|es, gelé||e|s|es, congelé||e, les
        oreilles froides, oreilles froides, oreilles gelées, a encore froid, caille, avoir froid,
        avoir trop froid, a bien froid, a vraiment froid, a super froid, meurt de froid, a eu froid,
        pris froid, a pris froid, a assez froid, glacé||e|s|es jusqu'aux os, oreilles glacées, les
        oreilles glacées, frais derrière le coude, froid derrière le coude, pas assez couvert||e,
        mort||e de froid, crève de froid, se caille, pèle de froid, a les oreilles froides, a les
        oreilles glacées, a les oreilles gelées, froid aux oreilles, gelait, caillait
    """,
    "sign comfortable": """
        à l'aise, bien au chaud, confortable|s, au chaud, au sec, bien au sec, température parfaite,
        bonne température, au top, au chaud et au sec, pile comme il faut, à bonne température, tout
        confort, chaud||e|s et sec, chaude et sèche, bien sec et chaud, sec et au chaud, sec et chaud,
        chaud juste comme il faut, ni chaud ni froid, ni trop chaud ni trop froid, n'a ni chaud ni
        froid, s'est réchauffé||e, réchauffé||e, température nickel, température ok, bien
        réchauffé||e, s'est rafraîchi||e, a séché, tout chaud nickel, chaud et sec, chauds et secs,
        chaude et au sec, tiède et sec, tout va bien pour, rien à signaler pour, ras pour, aucun souci
        pour, pas de souci pour, pas de sueur sur, pas une goutte de sueur, aucune sueur, au chaud et
        bien, plus de frissons, plus de tremblements, fini de grelotter, fini de trembler,
        bien chaud||e, sec et chaud, sèche et chaude, bien sèche et bien chaude, plus à l'aise
    """,
    "sign rubbed": """
        frottement, frottements, un frottement, des frottements, frotté||e|s|es, frotte, frottent,
        blessure de couverture, pelé||e|s|es par la couverture, irrité||e|s|es, écorché||e|s|es,
        pelé||e à l'épaule, éraflé||e, usé||e à l'épaule, poil usé, épaules râpées, râpé||e|s, frotté
        aux épaules, perte de poils, perd ses poils, a perdu des poils, a perdu du poil, poils usés,
        poils arrachés, plaie de couverture, plaies de couverture, blessé||e par la couverture,
        blessure au garrot, à vif au garrot, garrot à vif, épaule à vif, épaules à vif, irritation,
        irritations, marque de frottement, marques de frottement, plaque sans poils, pelade, poils
        cassés, échauffement de couverture, se frotte l'épaule
    """,
    "sign unwell": """
        colique, coliques, une colique, malade|s, ne mange pas, ne mange plus, ne mangent pas, n'a pas
        mangé, n'a rien mangé, ne veut pas manger, refuse de manger, tousse, toussent, toussait, toux,
        fièvre, a de la fièvre, de la fièvre, abattu||e|s|es, amorphe|s, apathique|s, pas bien, pas
        dans son assiette, n'est pas bien, ne va pas bien, va mal, pas en forme, diarrhée, mal en
        point, pas comme d'habitude, mou||s|, pas l'air bien, a mal au ventre, mal au ventre, boude sa
        ration, boude son foin, a laissé sa ration, n'a pas fini sa ration, tout mou, toute molle, n'a
        pas l'air bien, n'a plus d'appétit, n'a pas d'appétit, sans appétit, éteint||e, se roule de
        douleur, pas très bien, ne va pas très bien, pas trop bien, ne se sent pas bien, patraque, en
        colique, fait une colique, fait des coliques, a le nez qui coule, nez qui coule, jetage,
        couché||e et ne se lève pas, ne se relève pas, gratte le sol, se regarde les flancs, respire
        mal, respire fort, respiration rapide, ne touche pas à son foin, n'a pas touché à son foin,
        n'a pas touché à sa ration, n'a pas fini son foin, pas dans son état normal, pas lui même, pas
        elle même, pas normal||e, a de la température, de la température, fiévreux, fiévreuse,
        fourbure, en fourbure, très abattu||e, faible, titube, apathique, triste, ne va pas bien du
        tout, pas bien du tout, n'a pas terminé sa ration, n'a pas terminé son foin, n'a pas fini son
        grain, boude sa nourriture, laisse sa ration, laisse son foin
    """,
    "everyday hot": "chaud||e|s|es, bouillant||e, brûlant||e|s, 🥵, hot, chaud bouillant",
    "everyday cold": """
        froid||e|s|es, frais, fraîche, glacé||e|s|es, frisquet, 🥶, cold, frisquet||te, frigo,
        glacial||e, refroidi||e
    """,
    "everyday good": "",
    "everyday comfortable": """
        bien, va bien, vont bien, ça va, ok, parfait||e|s|es, nickel, content||e|s|es, impeccable,
        tranquille|s, va très bien, vont très bien, très bien, tout va bien, impec, va mieux, se porte
        bien, mieux, va beaucoup mieux, beaucoup mieux, au poil, tip top, ras, rien à signaler, super
        bien, niquel, parfait
    """,
    "everyday warm": "tiède|s, tiédasse",
    "dry": """
        sec, sèche, secs, sèches, séché||e|s|es, bien sec, bien sèche, à sec, de nouveau sec, de
        nouveau sèche, sèche à nouveau, dry, enfin sec, enfin sèche, complètement sec, complètement
        sèche, bien séché||e, sec maintenant, a séché, ont séché, a bien séché, est séché||e
    """,
    "damp": """
        humide|s, moite|s, encore un peu mouillé||e, pas sec, pas sèche, pas encore sec, pas encore
        sèche, pas tout à fait sec, pas tout à fait sèche, pas complètement sec, pas complètement
        sèche, presque sec, presque sèche
    """,
    "wet": "mouillé||e|s|es, a pris la pluie, a pris l'eau, wet",
    "soaked": """
        trempé||e|s|es, détrempé||e|s|es, dégoulinant||e|s|es, imbibé||e|s|es, ruisselant||e|s|es,
        trempé||e|s|es jusqu'aux os, gorgé||e|s d'eau, essorable, à tordre, dégouline,
        traversé||e|s|es, soaked, trempé de part en part, trempé à l'intérieur, n'est plus étanche,
        plus étanche, complètement trempé||e, traversé||e par la pluie
    """,
    "state washing": """
        au lavage, à la machine, en machine, au pressing, à la laverie, en train d'être lavé||e,
        partie au lavage, parti au lavage, lavage, dans la machine, à laver, à la lessive, en lavage,
        chez le nettoyeur, au nettoyage, au sale, parti laver, partie laver, au lavomatic, chez le
        laveur, à laver chez, à nettoyer, mis à laver, mise à laver, à la buanderie, en lessive, dans
        la machine à laver, mis au lavage, mise au lavage, au pressing pour chevaux
    """,
    "state torn": """
        déchiré||e|s|es, troué||e|s|es, a déchiré, un trou, trou, craqué||e|s|es, arraché||e|s|es,
        fendu||e|s|es, en lambeaux, éventré||e, lacéré||e, une déchirure, déchirure, accroc, un
        accroc, décousu||e|s, a troué, a craqué, en morceaux, a bousillé, bousillé||e, abîmé||e, un
        gros trou, gros trou, une grosse déchirure, un accroc énorme, déchiqueté||e, en charpie,
        percé||e|s|es, arrachée de partout, foutu||e, fichu||e, a été déchiré||e, s'est déchiré||e,
        décousue de partout, une couture a lâché, couture lâchée
    """,
    "state missing": """
        perdu||e|s|es, introuvable|s, impossible de trouver, ne trouve pas, ne trouve plus, trouve
        pas, trouve plus, disparu||e|s|es, manque, a disparu, on a perdu, j'ai perdu, manquant||e,
        égaré||e, ne retrouve pas, ne retrouve plus, retrouve pas, retrouve plus, trouvons plus,
        trouvons pas, impossible de retrouver, il manque, aucune trace de, envolé||e, volé||e, plus
        là, n'est plus là, pas à sa place, on ne trouve plus, je ne trouve plus, je trouve plus, on
        trouve plus, où est passé||e, pas trouvé||e
    """,
    "state found": """
        retrouvé||e|s|es, a été retrouvé||e, réapparu||e, est réapparu||e, a réapparu, j'ai retrouvé,
        on a retrouvé, est retrouvé||e
    """,
    "state in service": """
        réparé||e|s|es, recousu||e|s|es, revenu||e|s|es du lavage, de retour, revenu||e|s|es, de
        retour du lavage, comme neuf, comme neuve, réutilisable, en service, rapiécé||e, revenu de
        réparation, revenue de réparation, raccommodé||e, à nouveau utilisable, de nouveau en service,
        rafistolé||e, remis||e en service, rentre du lavage, revient du lavage, revient de réparation,
        retour de réparation, de retour de réparation, de retour du pressing, recousue, sangle
        réparée, sangle remplacée, réparation faite, prêt à servir, prête à servir, prête à l'emploi,
        à nouveau en service
    """,
    "strap": """
        sangle, sangles, boucle, boucles, attache, attaches, surfaix, croisillon, croisillons, sous
        cuissard, sous cuissards, courroie, mousqueton, lanière, sangle croisée, queue de sangle,
        bavette, fermeture, fermetures, sangles croisées, cuissard, attache de patte, sangle de patte,
        sangles de pattes, boucle de poitrail, boucles de poitrail, surfaix croisés, clip, crochet,
        scratch, velcro
    """,
    "broken": """
        cassé||e|s|es, a cassé, pété||e|s, a pété, arraché||e|s|es, a lâché, lâché||e|s,
        décroché||e|s, déchiré||e|s|es, a craqué, craqué||e, s'est cassé||e, fichu||e, foutu||e,
        rompu||e, a sauté, sauté||e, a cédé, a arraché, a été arraché||e, pété||e|s|es, cassé net,
        n'existe plus, parti||e, manque, qui pend, pend, hors service, hs, à changer, a claqué
    """,
    "kind sheet": """
        imperméable|s, imper, impers, chemise imperméable, chemise de pluie, couverture de pluie, chemise,
        chemises, rain sheet, sans doublure, couverture imperméable, 0 g, sheet
    """,
    "kind turnout": """
        outdoor|s, couverture d'extérieur, couverture outdoor, turnout, couverture de pré, couvertures
        d'extérieur, couverture de paddock, couverture extérieure
    """,
    "kind liner": """
        sous couverture|s, liner|s, sous couv, doublure, sous couvs, souscouverture, couverture de dessous
    """,
    "kind stable": """
        couverture de box, couverture d'écurie, couvertures de box, couverture d'intérieur, de box, d'écurie,
        couverture box, stable rug
    """,
    "kind cooler": """
        polaire|s, séchante, chemise séchante, couverture séchante, couverture polaire, chemise polaire,
        cooler, émouchine séchante, fleece
    """,
    "kind neck": "couvre cou, couvre cous, couvre encolure, bonnet, cagoule, camail",
    "rug": "couverture|s, couv, couvs, couette, manteau, couvrante, plaid, couvertes, couverte de nuit",
    "weight heavy": """
        gros||se|ses, épais||se|ses, lourd||e|es, grosse couverture, d'hiver, hiver, chaude couverture, heavy
    """,
    "weight medium": "moyen||ne|s|nes, intermédiaire|s, mi saison, demi saison, de demi saison, medium",
    "weight light": "lég|er|ère|ers|ères, fin||e|es, mince|s",
    "gram": "g, gr, gramme|s, grammes",
    "spare": "réserve, de réserve, de rechange, de secours, de dépannage, de prêt, de remplacement, en trop",
    "one": "un||e, celle, celui",
    "colour": """
        bleu||e|s|es, rouge|s, vert||e|s|es, noir||e|s|es, blanc, blanche, blanches, gris||e|es, marron,
        jaune|s, orange, violet, violette, rose|s, bordeaux, beige, marine, à carreaux, écossais||e, à
        rayures, rayé||e|s, turquoise, bleu marine, kaki, doré||e, argent, mauve
    """,
    "any adjective": """
        nouveau, nouvelle, nouvel, vieux, vieille, vieil, grand||e, petit||e, belle, sale, propre, ancien||ne,
        fichue, autre
    """,
    "put on": """
        mis||e|es, ai mis, a mis, on a mis, avons mis, ajouté||e, enfilé||e, remis||e|es, j'ai mis, posé||e,
        avons remis, ai remis, a remis, rajouté||e, ont mis, lui ai mis, leur ai mis, lui a mis, j'ai remis,
        j'ai rajouté, j'ai ajouté, lui ai remis, leur a mis
    """,
    "took off": """
        enlevé||e|s|es, retiré||e|s|es, ôté||e|s|es, j'ai enlevé, ai enlevé, a enlevé, on a enlevé,
        j'ai retiré, déshabillé||e|s, découvert||e|s, viré||e, lui ai enlevé, lui ai retiré, leur ai
        enlevé, on a retiré, avons enlevé, avons retiré, on lui a enlevé, on lui a retiré, j'ai viré,
        dévêtu||e, enlève à l'instant, ôtée, a ôté, j'ai ôté, défait||e|s, enlevée, retirée,
        déshabillée, j'ai déshabillé, on a déshabillé, tombé la couverture de, je l'ai enlevé||e, je
        l'ai retiré||e, je l'ai ôté||e, je l'ai viré||e, on l'a enlevé||e, on l'a retiré||e, on l'a
        ôté||e, l'ai enlevé||e, l'ai retiré||e
    """,
    "stripped": "déshabillé||e|s, dévêtu||e, tout enlevé, découvert||e",
    "took": "",
    "wears": """
        porte, portent, a sur le dos, en, habillé||e avec, couvert||e avec, est avec, sous, vêtu||e
        de, porte maintenant, avec, est couvert||e avec, portait, équipé||e de, est passé en, est
        passée en, a son, a sa, a ses, a la, juste en, seulement en, est passé à la, est passée à la,
        est passé au, est passée au, passé à la, passée à la, passé au, passée au, passe à la, passe
        en, habillé||e de, habillé||e en, remis en, remise en, est habillé||e avec, mis en, mise en,
        avec juste, avec seulement
    """,
    "in": "en",
    "on": "sur le dos, sur, dessus",
    "off": "sans",
    "has": "a, ont, avec",
    "swapped": """
        changé||e|s, remplacé||e, échangé||e, j'ai changé, j'ai remplacé, on a changé, on a remplacé, j'ai
        échangé, troqué||e, passé||e de
    """,
    "instead of": "à la place de, au lieu de, à la place du, à la place des, en lieu et place de, en remplacement de",
    "for another": "par, pour, contre, à, en",
    "over": "par dessus, dessus, en dessous, dessous, sous, sur, en plus, aussi, par dessous",
    "bare": """
        nu||e|s|es, sans couverture, sans couvertures, sans rien, à poil, tout nu, toute nue, rien sur
        le dos, sans couv, découvert||e|s, ne porte rien, pas de couverture, n'a rien sur le dos, n'a
        pas de couverture, sans rien sur le dos, n'a plus de couverture, plus de couverture, tous nus,
        toutes nues, bare, naked, à nu, sans rien du tout, rien du tout sur le dos, n'a rien,
        déshabillé||e|s, laissé||e nu||e, laissé||e sans couverture, nue comme un ver,
        nu comme un ver, n'a plus rien sur le dos, n'a plus rien, plus rien sur le dos
    """,
    "nothing": "rien, tout",
    "without": "sans",
    "clipped": """
        tondu||e|s|es, tonte, j'ai tondu, on a tondu, a tondu, rasé||e, tontes, avons tondu, a été
        tondu||e, ont été tondus, tonte bavette, tonte poitrail, tonte trace, tonte de trait, tonte
        attelage, tonte irlandaise, tonte partielle, tonte couverture, tonte en couverture, tonte
        chasse, tonte de chasse, tonte hunter, tonte complète, tonte intégrale, tonte totale,
        tondu||e|s|es en couverture, tondu||e|s|es couverture, tondu en chasse, fait la tonte de, fait
        une tonte à, fait une tonte, passé||e à la tondeuse, passé||e sous la tondeuse
    """,
    "style none": "pas tondu||e, le poil a repoussé, poil repoussé, tonte repoussée, poil est revenu",
    "style bib": """
        bavette, poitrail, tonte bavette, tonte poitrail, tonte en bavette, en bib, bib clip
    """,
    "style trace": """
        trace, tonte trace, tonte de trait, attelage, tonte attelage, irlandaise, tonte irlandaise, tonte
        partielle
    """,
    "style blanket": """
        tonte couverture, couverture de tonte, tonte en couverture, tonte dos couvert, tondu||e|s|es
        en couverture, tondu||e|s|es couverture, tonte couverture complète
    """,
    "style hunter": "chasse, tonte chasse, hunter, tonte de chasse, de chasse, tonte hunter",
    "style full": """
        complet, complète, intégrale, entier, entière, entièrement, complètement, totale, tonte complète,
        tonte intégrale, tonte totale, en entier, intégralement
    """,
    "place stall": """
        box, écurie, boxes, stalle, dedans, à l'intérieur, à l'abri, à l'écurie, au box, boxs, rentré||e|s|es
        au box, écuries, intérieur, stabulation
    """,
    "place field": """
        pré, prés, pâture, paddock, champ, dehors, à l'extérieur, au pré, en pâture, herbage, parc, paddocks,
        prairie, extérieur
    """,
    "inwards": "dedans, rentré||e|s|es",
    "outwards": "dehors, sorti||e|s|es",
    "brought": """
        ramené||e|s, amené||e|s, emmené||e|s, mis||e|es, conduit||e, déplacé||e, laissé||e|s|es,
        gardé||e|s|es, passé||e, remis||e|es
    """,
    "stays": """
        reste, restent, dort, dorment, passe la nuit, passent la nuit, restera, est resté||e, est restée, va
        rester
    """,
    "brought in": """
        rentré||e|s|es, j'ai rentré, on a rentré, ai rentré, a rentré, avons rentré, ont rentré, est
        rentré||e, sont rentré||s|es, enfermé||e|s, rentré||e|s|es à l'écurie, rentré||e|s|es au box,
        ramené||e|s|es à l'écurie, ramené||e|s|es au box, remis||e au box, est à l'intérieur, mis||e
        au box, mis||e à l'abri, mis||e à l'écurie
    """,
    "turned out": """
        sorti||e|s|es, j'ai sorti, on a sorti, ai sorti, a sorti, lâché||e|s|es, avons sorti, ont
        sorti, mis au pré, est sorti||e, sont sorti||s|es, mise au pré, j'ai lâché, on a lâché, remis
        au pré, remise au pré, ressorti||e|s|es, mis dehors, mise dehors, au pré depuis ce matin,
        parti au pré, partie au pré, j'ai mis au pré
    """,
    "keep": """
        laissez, laisser, laisse, gardez, garder, je veux, je préfère, doit rester, qu'il reste, qu'elle
        reste, merci de laisser, laissons, je souhaite, je voudrais, faut laisser, doit être, que, s'il vous
        plaît
    """,
    "please": "s'il vous plaît, s'il te plaît, svp, stp, merci, à partir de maintenant, désormais",
    "do not rug": """
        ne couvrez pas, ne pas couvrir, pas de couverture pour, ne mettez pas de couverture, ne mettez rien,
        pas couvrir, on ne couvre pas, ne couvrez plus, ne couvre pas, ne lui mettez pas de couverture, ne
        mets pas de couverture, plus de couverture pour, ne mettez pas de couverture à, ne lui mettez rien, ne
        plus couvrir, pas de couvertures pour, aucune couverture pour
    """,
    "rug again": """
        peut être couvert, peut être couverte, peut être couvert à nouveau, peut être couverte à nouveau, peut
        être recouvert, peut être recouverte, on peut couvrir, on peut recouvrir, vous pouvez couvrir, vous
        pouvez recouvrir, peut reporter une couverture, peut porter une couverture, peut porter une couverture
        à nouveau, peut remettre une couverture, on peut lui remettre une couverture, on peut remettre une
        couverture, vous pouvez lui remettre une couverture, peut à nouveau être couvert, peut à nouveau être
        couverte, peut de nouveau être couvert, peut de nouveau être couverte, peut à nouveau porter une
        couverture, peut de nouveau porter une couverture, vous pouvez remettre une couverture, plus besoin de
        laisser, peut être couvert de nouveau, peut être couverte de nouveau, n'a plus besoin d'être nu||e, on
        peut à nouveau couvrir, on peut de nouveau couvrir, vous pouvez à nouveau couvrir, peut remettre sa
        couverture, peut remettre des couvertures
    """,
    "worked": """
        monté||e|s|es, j'ai monté, on a monté, a monté, travaillé||e|s|es, j'ai travaillé, a
        travaillé, longé||e|s|es, j'ai longé, a été longé||e, a été monté||e, a eu cours, a eu un
        cours, a eu son cours, a eu une leçon, sorti en balade, balade avec, fait une balade avec,
        parti en balade, a fait cours, a fait un cours, a fait une séance, travail fait, a sauté, a eu
        sa leçon, a fait son cours, ont travaillé, ont été montés, ont été montées, ont eu cours, ont
        eu un cours, est parti en balade, est partie en balade, a fait une balade, rentre de balade,
        revient de balade, rentre du cours, sort du cours, sort de cours, revient du cours, sortie en
        balade, fait une séance avec, vient d'être monté||e, viens de monter, vient de travailler,
        trotting fait, j'ai fait travailler, a été travaillé||e, est monté||e, longe faite, séance
        faite, cours fait, balade faite, a eu cours avec, rentré de balade, rentrée de balade, sauté
        ce matin, sorti||e en carrière, détendu||e en carrière
    """,
    "had": "a eu, ont eu, a fait, ont fait, a fini, vient de finir, a terminé",
    "after": """
        après, à cause de, à la suite de, suite à, de, du, depuis, d', à cause du, suite au, au retour
        de, au retour du, en rentrant de, en rentrant du, revient de, revient du, sort de, sort du,
        rentre de, rentre du
    """,
    "work": """
        cours, leçon, travail, balade, longe, séance, entraînement, saut, monte, monter, l'avoir
        monté, avoir été monté||e, avoir monté, galop, obstacle, dressage, trotting, exercice, être
        monté||e, être longé||e, avoir travaillé, promenade, rando, carrière, manège, le manège, saut
        d'obstacles, l'obstacle, concours, séance de travail, balade en forêt, la balade, cso, le
        cours
    """,
    "done": """
        fait||e|s|es, fini||e|s|es, terminé||e|s|es, prêt||e|s|es, c'est fait, c'est bon, ✓, ✔, ✅, ☑,
        changé||e|s|es, est fait||e, sont fait||s|es, bouclé||e, réglé||e, c'est bon pour, fini avec,
        j'ai fini, j'ai fini avec, terminé avec, done, c'est fait pour, c'est ok pour,
        couvert||e|s|es, a été fait||e, habillé||e|s|es, j'ai fait, on a fait, ok pour, traité||e,
        vu||e et fait||e, check
    """,
    "everyone": "tous, toutes, tout, tout le monde, l'ensemble",
    "the rest": "le reste, les autres, tous les autres, toutes les autres",
    "all horses": "tous les chevaux, les chevaux, tous les poneys, toutes les juments, chevaux",
    "both": "les deux, tous les deux, toutes les deux, les trois",
    "all": "tous les, toutes les, les deux",
    "except": "sauf, à part, hormis, excepté, moins, à l'exception de",
    "all done": """
        tous faits, toutes faites, tout est fait, tout fait, tout le monde est fait, ils sont tous
        faits, tous les chevaux sont faits, tous finis, tout est fini, tout est bon, tournée finie,
        tournée faite, tournée terminée, tous terminés, ronde faite, tous ✓, tous ✅, tout le monde est
        prêt, tous prêts, tous sont faits, elles sont toutes faites, tous sont prêts, tous les chevaux
        faits, fini pour tous, c'est fait pour tous, c'est fini pour tous, c'est bon pour tous, c'est
        bon pour tout le monde, j'ai fini avec tous, tout le monde est ok, tout le monde c'est fait,
        tous changés, tout est terminé, c'est fait pour tout le monde, tous couverts, tout le monde
        est couvert, tous les chevaux c'est fait, tout le monde est habillé, tous habillés, ronde
        finie, ronde terminée, tour fini, tour terminé, tournée du soir finie, tournée du matin finie,
        tournée du soir faite, tournée du matin faite, ronde du soir finie, ronde du matin finie,
        ronde du soir faite, ronde du matin faite, tour du soir fait, tour du matin fait, j'ai tout
        fini, j'ai fait tout le monde, tout le monde fait, tout le monde est bon, tous ok et faits,
        tout le monde couvert, les chevaux sont tous faits, tous les chevaux sont couverts, tous les
        chevaux couverts, tous les chevaux ok c'est fait, fini pour tout le monde, c'est fini pour
        tout le monde, tous bouclés, la liste est faite, liste faite, liste terminée, la liste est
        finie, tous sont couverts, ils sont tous couverts, tous les chevaux sont habillés
    """,
    "undo": """
        annule, annuler, annule ça, annulez, efface, efface ça, effacer, je me suis trompé, je me suis
        trompée, c'est une erreur, c'était une erreur, mauvais cheval, oublie ça, ignore ça, ignore
        mon message, ignorez, retire ça, erreur de ma part, mon erreur, annule le dernier, pas le bon
        cheval, annule tout ça, erreur, je me suis trompé de cheval, je me suis trompée de cheval,
        annule mon message, annule le dernier message, efface le dernier, ne tiens pas compte, oubliez
        ça, supprime, supprime ça, ignore mon dernier message, c'était pas le bon cheval, je me suis
        gouré, défaire, annule ça stp, annuler ça, annule stp, annule le dernier message stp, annule
        mon dernier, efface mon dernier message, supprime le dernier, retire mon dernier message, oups
        annule, retour en arrière, je retire, mauvais cheval annule, non annule, corrige ça
    """,
    "no": "non, pardon, oups, désolé||e, euh non, erreur, euh, pas",
    "i mean": "je voulais dire, c'est, c'était, plutôt, je veux dire, en fait, je parlais de",
    "yes": "oui, ouais, exact, exactement, c'est ça, voilà",
    "neither": "aucun||e, ni l'un ni l'autre, rien, annule, laisse tomber, ni l'une ni l'autre, aucun des deux",
    "first": "premi|er|ère, le premier, la première, un||e",
    "second": "deuxième, le deuxième, la deuxième, second||e, deux, la seconde, le second",
    "third": "troisième, le troisième, la troisième, trois",
    "not": """
        ne, n', pas, plus, jamais, aucun, aucune, ni, non, pas de, n est pas, n est plus, n a pas, n a
        plus, n ont pas, n ont plus
    """,
    "stopped": """
        arrêté de, a arrêté de, ne plus, cessé de, a cessé de, a fini de, s'est arrêté de, ont arrêté de,
        s'est arrêtée de, ont cessé de
    """,
    "not any more": "plus, du tout",
    "nearly": "presque, pas tout à fait, pas encore, à moitié, quasi, quasiment, bientôt",
    "a little": "un peu, légèrement, un petit peu, un poil, peu, un tantinet, un chouia, un brin",
    "very": """
        très, vraiment, beaucoup, super, tout, toute, complètement, bien, trop, assez, tellement,
        totalement, carrément, hyper, drôlement, sacrément, entièrement, mega, méga, grave, vachement,
        bcp, énormément, archi, bien
    """,
    "if": "si, s', au cas où, sauf si, à moins, à condition, tant que, dès que, pourvu que, en cas de",
    "when": "quand, lorsque, lorsqu', pendant que, jusqu'à, jusque, jusqu', avant de, avant que, bien que, où",
    "was": "était, étaient, avait, avaient, transpirait, tremblait, grelottait, frissonnait, fut, a été, ont été",
    "plan": """
        va, vais, allons, vont, vas, allez, demain, plus tard, tout à l'heure, faudra, faut, il faut,
        faudrait, devrait, devrais, devrions, devra, doit, dois, devons, peut, peux, pouvez, pourrait,
        pourrais, pourriez, voulez, veux, veut, vouloir, besoin, s'il te plaît, s'il vous plaît, stp,
        svp, merci de, pensez à, pense à, n'oubliez pas, n'oublie pas, j'espère, espérons, peut être,
        sans doute, sûrement, probablement, prochain||e, prochaine fois, la semaine prochaine, ce week
        end, week end, rendez vous, rdv, prévu||e, à vendre, vends, acheter, achète, commander,
        commandé||e, on devrait, ce serait, serait, aimerait, aimerais, voudrait, voudrais, risque,
        attention à, gare, méfiez, sera, seront, aura, auront, mettra, mettrai, mettrons, après
        demain, pourvu, essayer, essaie, imagine, quelqu'un, quelqu'une, personne, faire, tondra,
        tondrons, rentrera, rentrerai, sortira, sortirai, j'aimerais, mettrez, vendu||e, on mettra,
        bientôt, on va, que ce soit, rentrez, sortez, mettez, mets, mets lui, mettez lui, enlevez,
        retirez, surveille, surveillez, vérifie, vérifiez, regarde si, regardez si, dis moi, dites
        moi, rentre le, sors le, à tondre, prévue, je rentrerai, je mettrai, on rentrera, on sortira,
        couvrez, pensez, prévenez, prévenez moi, appelez, rangez, attendez, je vais, au cas où, s'il
        faut, habituellement, vaut mieux, vaudrait mieux, on devra, je dois
    """,
    "habit": """
        toujours comme, d'habitude, souvent, parfois, toujours trop, chaque fois, déteste, détestent,
        adore, adorent, aime, aiment, préfère, en général, généralement, normalement, chaque jour,
        tous les jours, chaque hiver, rarement, comme un, comme une, plus que, mdr, lol, ptdr, haha,
        😂, 🤣, connu pour, a tendance, ont tendance, rêvé, film, chanson, photo, photos, vidéo, trop
        belle, trop beau, est beau, est belle, trop mignon, trop mignonne, toujours dans, toujours
        quand, toujours après, toujours pendant, toujours sous, toujours avec, frileux, frileuse,
        jamais, ne transpire jamais, est frileuse, est frileux, sur facebook, sur insta, sur la photo,
        en photo, à la télé, comme d'hab
    """,
    "bare weather": "",
    "brings weather": "il y a, y a, tombe, arrive, de la, du, de l'",
    "mass": "",
    "yesterday": "hier, hier matin, hier après midi",
    "long ago": """
        avant hier, la semaine dernière, le mois dernier, l'an dernier, l'année dernière, l'hiver dernier,
        l'autre jour, il y a des jours, il y a des semaines, il y a un mois, il y a une semaine, autrefois,
        dans le temps, poulain, il y a longtemps, il y a deux jours, il y a trois jours
    """,
    "weather": """
        pluie, pleut, orage, tempête, tempêtes, soleil, brouillard, vent, neige, gel, givre, glace, éclair,
        grêle, hiver, été, automne, printemps, nuage, nuages, temps, ciel, brise, étoile, étoiles, verglas,
        tonnerre, météo, il neige, lune, bruine
    """,
    "weekday": "lundi, mardi, mercredi, jeudi, vendredi, samedi, dimanche, dimanches, week end, weekend",
    "guess": """
        ne pense pas, pense pas, sais pas, ne sais pas, pas sûr, pas sûre, aucune idée, doute, je doute, crois
        pas, ne crois pas, pas certain, pas certaine, possible que, je suppose, suis pas sûr, suis pas sûre,
        sais plus, se demande, me demande
    """,
    "said": """
        dit, dit que, dit qu', disent que, a dit, pense que, pense, trouve que, je trouve que, je crois que,
        crois, a vu, j'ai vu, vu, m'a dit, m'a dit que, on dirait que, il paraît que, signale, selon, d'après,
        trouve, je trouve, je pense que, je pense, voit, paraît, on dirait, semble que, annonce, attention,
        urgent, au secours, info
    """,
    "what": "quoi, que, qu', quel, quelle, quels, quelles, laquelle, qu'est ce que, qu'est ce qu', est ce que",
    "question": """
        qui, que, qu', quoi, quel, quelle, quels, quelles, comment, quand, où, pourquoi, combien, est ce que,
        est ce qu', quelqu'un, qu'est ce que, qu'est ce qui, lequel, laquelle, y a t il, lesquels, lesquelles
    """,
    "idiom": """
        sang froid, eau froide, eau chaude, en chaleur, bien joué, bon travail, d'accord, en retard,
        en route, en forme, il fait froid, il fait chaud, fait un froid, froid de canard, coup de
        froid, quel froid, quelle chaleur, beau temps, fait froid, fait chaud, mains froides, mains
        gelées, café chaud, chocolat chaud, vin chaud, au fait, à peu près, tout à fait, en fait,
        c'est bien, c'est super, c'est parfait, fait beau, fait mauvais, bien fait pour, boisson
        chaude, à sécher, s'est échappé||e, échappé||e, s'est sauvé||e, soleil couchant, lever du
        soleil, coucher de soleil, il neige, bonhomme de neige, boule de neige, boules de neige, père
        noël, joyeux noël, sapin de noël, belle étoile, étoile filante, à la belle étoile, froid de
        loup, pied mouillé, pieds mouillés, un froid de, sac poubelle, drap de lit, bâche, imper de la
        voiture, mon imper, mon manteau, couverture du livre, couverture du magazine, plaid du canapé
    """,
    "i": """
        je, j', nous, tu, vous, moi, toi, mon, ma, mes, ton, ta, tes, notre, nos, votre, vos, suis, sommes,
        ai, me, te, gens, fille|s, garçon|s, enfant|s, vétérinaire, véto, maréchal, cavalière, cavalier,
        propriétaire, fils, mari, femme, chien, chienne, chat, gars, père, mère
    """,
    "visitor": """
        vétérinaire, véto, maréchal, maréchal ferrant, dentiste, ostéo, ostéopathe, sellier, parage, pareur,
        pareuse
    """,
    "my": "mon, ma, mes, notre, nos",
    "some": "un, une, autre, quelque",
    "she": "il, elle, ils, elles, lui, leur, celui ci, celle ci, l'",
    "her": "sa, son, ses, leur, leurs",
    "my horse": """
        mon cheval, ma jument, mon poney, ma ponette, mon hongre, mon âne, mon loulou, le mien, la mienne, ma
        pouliche
    """,
    "it": """
        ça, cela, ce, c', ceci, je l'ai enlevé||e, je l'ai retiré||e, je l'ai ôté||e, je l'ai viré||e,
        on l'a enlevé||e, on l'a retiré||e, on l'a ôté||e, l'ai enlevé||e, l'ai retiré||e, je lui ai
        enlevé||e, je lui ai retiré||e
    """,
    "article": "le, la, les, l', un, une, des, du, au, aux, ce, cette, ces, cet, autre",
    "of": "de, du, d', des, pour, à, au, aux",
    "and": "et, &, +, plus, avec, puis",
    "but": """
        mais, donc, car, parce que, parce qu', du coup, alors, par contre, en revanche, et puis, alors que,
        alors qu', puisque, or, cependant, et du coup
    """,
    "too": "aussi, pareil, de même, idem, non plus, pareil pour, idem pour, également, même chose pour, même chose",
    "helper": "a, ai, as, ont, avons, avez, est, sont, été, suis, vient d'être, bien",
    "is": """
        est, sont, a, ont, semble, semblent, paraît, paraissent, a l'air, ont l'air, reste, est rentré||e, est
        arrivé||e, arrive, revient, revenu||e, est revenu||e, être, avoir, eu, été, a été, ont été, est
        toujours, s'est mis à, trouvé||e, j'ai trouvé, retrouvé||e, s'est, se, est encore, a encore, ont
        encore, est en train de, l'air, rentre, retrouve, se met à, s'est mise à, c'est, c'
    """,
    "link": """
        déjà, encore, toujours, aussi, très, vraiment, bien, tout, toute, tous, toutes, maintenant,
        ici, là, là bas, de, à, en, dans, sur, avec, au, du, les deux, tous les deux, toutes les deux,
        juste, quand même, enfin, un, une, le, la, les, ce, ça, y, dessous, dessus, à nouveau, de
        nouveau, complètement, visiblement, totalement, oui, ouais, si, ben, bah, heureusement,
        malheureusement, apparemment, clairement, pauvre, vite, toujours pas, plein, plein de, même,
        surtout, franchement, chacun, chacune, ensemble, bref, peu, qu', que, qui, est, en train de,
        soudain, partout, on, ont, signes de, se, s', n', t, même pas, l', c', ci, sous, quelques, pas
        mieux, n'est pas mieux, beaucoup, bcp, un peu trop, elle aussi, lui aussi, drôlement, là
        dessous, du coup, quoi, la pauvre, le pauvre, pauvre bête, hélas, de partout, comme tout,
        comme d'hab, ma foi, en tout cas, prend l'eau, fuit, essoufflé||e, seulement, uniquement, simplement
    """,
    "time": """
        maintenant, aujourd'hui, ce soir, ce matin, cet après midi, cette nuit, en ce moment, là, tout
        de suite, à midi, toute la nuit, toute la journée, depuis hier soir, depuis ce matin, tôt, à
        l'instant, il y a une heure, il y a un moment, il y a cinq minutes, pour la nuit, matin, soir,
        midi, depuis hier, hier soir, depuis cette nuit, h, heure, heures, minutes, la nuit, au petit
        matin, à l'arrivée, en arrivant, ce midi, pour le moment, pour l'instant, à la ronde, il y a
        peu, avec ce froid, avec cette pluie, avec ce vent, avec la pluie, sous la pluie, à cause de
        la pluie, à cause du vent, avec le vent, avec le froid, au soleil, avec ce soleil, avec la
        chaleur, avec cette chaleur, depuis midi, tout à l'heure, il y a une demi heure, ce week end,
        tour du soir, tour du matin, ronde du soir, ronde du matin, au tour du soir, au tour du matin,
        à mon arrivée, quand je suis arrivé||e, pendant la ronde, à la ronde du soir, à la ronde du
        matin, à la distribution
    """,
    "hour": "à, vers, depuis, de, avant, après, dès, jusqu'à",
    "polite": """
        merci, merci beaucoup, bonjour, bonsoir, salut, coucou, bonne nuit, bonne journée, bonne
        soirée, oui, ok, ouais, bon, bah, ben, euh, désolé||e, pardon, haybell, bot, oh, ah, info,
        attention, petite info, au fait, les gars, les filles, tout le monde, à tous, l'équipe,
        bisous, pauvre, pauvrette, pauvre petit||e, le pauvre, la pauvre, petit||e, mon dieu, zut,
        mince, note, alors, hello, salut tout le monde, bonjour à tous, bonjour tout le monde, re,
        coucou tout le monde, du nouveau, les amis, brrr, bises, pour info, tour fait, hey, bonjour
        les gens, salut à tous, bonsoir à tous, petit point, point du matin, point du soir, petit
        message, bref, heu, donc, voilà, stp, svp, pour infos, tour du soir, tour du matin, ronde du
        soir, ronde du matin
    """,
    "body": """
        oreilles, oreille, dos, encolure, épaule, épaules, poitrail, ventre, flanc, flancs, corps,
        garrot, robe, poil, peau, croupe, coudes, coude, reins, derrière les coudes, derrière le
        coude, derrière les oreilles, cou, passage de sangle, cuisses, côtes, fesses, derrière,
        arrière main, cuisse, ars, jambes, membres, sous la sangle, bas du dos, base de la queue,
        queue
    """,
    "under": "sous, dessous, dans, avec, en dessous de",
    "ask why": """
        pourquoi, pour quelle raison, comment ça se fait, explique, explique moi, pourquoi pas, comment se
        fait il, pk, pq
    """,
    "ask today": """
        c'est quoi le plan, quel est le plan, le plan, plan, plan du jour, plan de ce soir, qu'est ce
        qu'on met, qu'est ce qu'on leur met, on met quoi, quelles couvertures, quelle couverture,
        couvertures du jour, que portent ils, qu'est ce qu'ils portent, aujourd'hui, quoi mettre,
        qu'est ce que je mets, je mets quoi, montre le plan, on leur met quoi, qui porte quoi, que
        mettre, programme du jour, le programme, plan pour ce soir, c'est quoi le programme, quel
        plan, quel est le programme, quelles couvertures ce soir, que met on, le plan du jour, redonne
        le plan, on met quoi ce soir, liste, la liste, liste du jour, la liste du jour, liste de ce
        soir, la liste de ce soir, liste stp, la liste stp, donne la liste, montre la liste, redonne
        la liste, liste des couvertures, qui met quoi, c'est quoi la liste, envoie la liste, que
        doivent ils porter, tenues du jour, tenues de ce soir
    """,
    "ask left": """
        qui reste, qui reste t il, il reste qui, reste qui, qui n'est pas fait, qui n'est pas encore
        fait, qui reste à faire, que reste t il, qu'est ce qu'il reste, qu'est ce qui reste, il en
        reste combien, combien il en reste, il reste quoi, tous faits, tout le monde est fait, tout
        est fait, qui manque, il manque qui, reste qui à faire, il reste qui à faire, quels chevaux
        restent, quels chevaux reste t il, il reste quelqu'un, qui est ce qui reste, qui est ce qu'il
        reste, qui doit encore être fait, il reste combien de chevaux, combien en reste t il, qu'est
        ce qu'il reste à faire, il reste quoi à faire, ils sont tous faits, qui n'a pas été fait, il
        reste des chevaux, il reste des chevaux à faire, reste t il des chevaux à faire, il en reste,
        il en reste à faire, il reste combien à faire, combien à faire encore, qui est pas fait, qui
        n'est pas fait encore, qui reste encore, qui reste encore à faire, lesquels restent, lesquels
        ne sont pas faits, on a fait tout le monde, j'ai oublié qui, qui ai je oublié, qui n'est pas
        couvert, reste t il quelqu'un, il y a encore qui à faire, encore qui à faire
    """,
    "ask drying": """
        qu'est ce qui sèche, quoi de mouillé, qu'est ce qui est mouillé, qu'est ce qui est en train de
        sécher, quelles couvertures sèchent, quelles couvertures sont mouillées, qu'est ce qui est
        trempé, quoi sèche, quelque chose de mouillé, qu'est ce qui est encore mouillé, il y a quoi
        qui sèche, qu'est ce qui est sec, y a quoi qui sèche, quelles couvertures sont sèches, quelles
        couvertures sont encore mouillées, il y a quoi à sécher, il reste quoi à sécher, qu'est ce qui
        n'est pas sec, séchage, y a quoi de mouillé, qu'est ce qu'on a qui sèche, quoi au lavage,
        qu'est ce qui est au lavage, quelles couvertures sont au lavage, quelles couvertures sont
        humides, qu'est ce qui est humide, qu'est ce qui n'est pas encore sec, il y a des couvertures
        mouillées, des couvertures mouillées, quelque chose qui sèche, quels impers sont mouillés,
        quelles sous couvertures sont mouillées, quoi de sec, qu'est ce qui pend, quoi dans la
        sellerie
    """,
    "ask state": """
        comment va, comment vont, comment est, comment se porte, état de, état, où en est, des
        nouvelles de, comment ça va pour, nouvelles de, comment elle va, comment il va, ça va comment,
        comment se sent, quoi de neuf pour, infos sur, parle moi de, quelles nouvelles de, statut,
        comment a été, va comment, il va comment, elle va comment, vont comment, quoi de neuf avec, ça
        va comment pour, et comment va, où en est on avec, état du, état des
    """,
    "ask forecast": """
        quelle météo, météo, la météo, quel temps, quel temps fait il, quel temps va t il faire, va t
        il pleuvoir, il va faire quel temps, prévisions, les prévisions, quelle température, va t il
        geler, combien de degrés, qu'annonce la météo, ils annoncent quoi, qu'est ce qui arrive ce
        soir, la météo dit quoi, quelle est la météo, il va pleuvoir ce soir, quel temps ce soir, il
        va geler ce soir, il va geler cette nuit, va t il geler cette nuit, il va faire combien, il va
        faire combien cette nuit, il fera combien, il fera combien cette nuit, quelles prévisions,
        quel temps il va faire, quel temps il fera, qu'est ce qu'ils annoncent, va t il neiger, il va
        neiger, va t il pleuvoir cette nuit, quelle température cette nuit, c'est quoi la météo, c'est
        quoi les prévisions, il va faire froid cette nuit, il va faire froid ce soir, que dit la
        météo, quel vent, il y aura du vent, combien il va faire, ça donne quoi la météo, la météo ça
        donne quoi, météo ce soir, météo cette nuit, météo demain, la météo de cette nuit, la météo de
        demain, quel temps cette nuit, quel temps demain, quelle température ce soir, combien cette
        nuit, il fait combien cette nuit, ça descend à combien, ça descend à combien cette nuit, va t
        il faire froid, fera t il froid, gèlera t il, pleuvra t il, qu'est ce qui arrive cette nuit,
        ça souffle fort cette nuit, du vent cette nuit, combien de vent, prévisions pour cette nuit,
        prévisions pour demain, prévision, ça va donner quoi cette nuit
    """,
    "ask forecast marked": """
        il va pleuvoir, il va geler, il va faire froid, il va neiger, il va pleuvoir cette nuit, il va
        geler cette nuit, il va y avoir du vent, ça va geler, ça va geler cette nuit, il pleut cette
        nuit, il gèle cette nuit, il pleuvra, il gèlera
    """,
    "ask help": """
        aide, que sais tu faire, que peux tu faire, comment ça marche, comment tu marches, qu'est ce
        que tu comprends, commandes, instructions, qu'est ce que tu sais faire, qu'est ce que tu peux
        faire, comment on t'utilise, mode d'emploi, que puis je te demander, qu'est ce que je peux te
        demander, tu sais faire quoi, tu comprends quoi, à l'aide, comment on fait, comment
        t'utiliser, que puis je écrire, qu'est ce que je peux écrire, qu'est ce que je peux te dire,
        que puis je dire, comment tu fonctionnes, comment signaler
    """,
    "ask wearing": """
        porte, portent, met, mettre, met on, on met, je mets, est en quoi, mets, lui mettre, on lui
        met, je lui mets, doit porter, a sur le dos, en quoi est, pour, portera, faut mettre, lui met
        on, doit on mettre, va porter, dois je mettre, en quoi, tenue, tenues, habits, équipement,
        porter, sur le dos, couches, épaisseurs
    """,
    "ask tonight": """
        ce soir, aujourd'hui, cette nuit, ce matin, met, mettre, on met, je mets, doit porter, demain,
        portera, mets, on lui met, je lui mets, faut mettre, lui mettre, pour, va porter, met on, cet après
        midi, dois je mettre, doit on mettre, pour la nuit, lui met on
    """,
    "ask ready": """
        quand sera, sera, bientôt, prêt, prête, quand est ce que, quand, sera t il, sera t elle, combien de
        temps, déjà
    """,
    "sky": """
        temps, météo, prévisions, température, températures, pluie, pleuvoir, pleut, pleuvra, neige, neiger,
        neigera, gel, geler, gèle, gèlera, givre, glace, vent, rafales, tempête, orage, froid, chaud, degrés, minimale,
        zéro, grêle, verglas
    """,
    "ahead": """
        ce soir, cette nuit, demain, plus tard, tout à l'heure, cet après midi, ce week end, le week end, la semaine
        prochaine, cette semaine, demain matin, demain soir, la nuit, dans la nuit, aujourd'hui, les prochains jours
    """,
    "a horse": "cheval, jument, hongre, poney, âne, ânesse, poulain, pouliche, alezan, alezane, un des chevaux",
    "subject": "il, elle, ils, elles, je, j', on, jai, jlai, jlui, jle, g",
    "own": "la sienne, le sien, les siennes, les siens, la leur",
    "only": "juste, seulement, uniquement, rien que, seul|e",
    "toward": "à, au, pour, pr",
    "part of day": "matin, matinée, midi, soir, soirée, nuit, après-midi",
    "not behind": "pas, plus, pu, pantoute, pas du tout, plus du tout, pas non plus",
    "ears": "oreilles, oreille",
}
