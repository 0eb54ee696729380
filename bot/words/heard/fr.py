"""French, as stables speak it."""

PHRASES = {
    "sign sweating": """
        transpire, transpirent, transpirait, transpiré, transpirant|e|s, transpiration, en sueur, en sueurs,
        sueur, sue, suent, suant|e, en nage, trempé||e|s|es de sueur, mouillé||e|s|es de sueur, humide de sueur,
        couvert||e|s|es de sueur, dégouline de sueur, en eau, transpirer, suer, plein||e de sueur,
        dégoulinant|e de sueur, traces de sueur, sweaty, sweating, a transpiré, a sué, suait,
        ruisselle de sueur, ruisselant de sueur, en transpiration, moite sous la couverture,
        moite sous sa couverture, traces de transpiration, toute en sueur, tout en sueur,
        trempé de transpiration, sueur sous, a des sueurs, transpirante, transpirai|t|ent, a bien transpiré,
        a beaucoup transpiré, suée, pris une suée, une bonne suée, en pleine suée, sue comme un boeuf,
        sue comme un porc, transpi, en transpi, trempé||e|s|es de transpiration,
        mouillé||e|s|es de transpiration, couvert||e|s de transpiration, dégouline de transpiration,
        dégouline|nt de sueur, dégoulinait de sueur, ruissel|le|lent|ait de sueur, ruisselle de transpiration,
        ruisselant||e|s de sueur, blanc d'écume, blanche d'écume, plein||e d'écume, couvert||e d'écume,
        écume au poitrail, écume à l'encolure, marques de sueur, auréoles de sueur, gouttes de sueur,
        à grosses gouttes, poil collé de sueur, poils collés de sueur, poil collé par la sueur, tout||e en eau,
        moite|s sous, collant||e sous la couverture, collant||e sous sa couverture, moiteur sous,
        sueur au poitrail, sueurs, humide de transpiration, noyé||e de sueur, inondé||e de sueur,
        gorgé||e de sueur, baigné||e de sueur, sueur derrière les oreilles, sueur derrière le coude,
        sueur derrière les coudes, des plaques de sueur, plaques de sueur, plaques humides sous, sent la sueur,
        luisant||e de sueur, perlé||e de sueur, un bain de sueur, bain de sueur, nage dans sa sueur,
        baigne dans sa sueur, baigne dans son jus, nage dans son jus, en nages, suaient,
        n'arrête pas de transpirer, arrête pas de transpirer, n'arrête pas de suer, arrête pas de suer,
        transpire encore plus, transpirent encore plus, transpire plus que, transpire plus qu',
        transpire plus quand, transpire plus sous, transpire plus dans, transpire plus avec,
        transpirent plus que, transpirent plus qu', transpirent plus quand, transpirent plus sous,
        transpirent plus dans, transpirent plus avec, sue plus que, sue plus qu', sue plus quand, sue plus sous,
        sue plus dans, sue plus avec, suent plus que, suent plus qu', suent plus quand, suent plus sous,
        suent plus dans, suent plus avec
    """,
    "sign hot": """
        a trop chaud, ont trop chaud, a chaud, ont chaud, trop chaud, a très chaud, ont très chaud, avait chaud,
        a bien chaud, a un peu chaud, crève de chaud, surchauffe, brûlant||e, a un peu trop chaud, a eu chaud,
        a drôlement chaud, meurt de chaud, avait trop chaud, avoir chaud, avoir trop chaud, a super chaud,
        étouffe, crevait de chaud, meurt de chaleur, en surchauffe, chaud sous sa couverture,
        chaud sous la couverture, cuit sous sa couverture, bout sous sa couverture, trop couvert||e,
        étouffe de chaleur, a trop chaud sous, a tro chaud, a trp chaud, a tp chaud, a beaucoup trop chaud,
        a bcp trop chaud, a vraiment trop chaud, a carrément trop chaud, a vachement chaud, a hyper chaud,
        a grave chaud, a méga chaud, a tellement chaud, a tellement trop chaud, a vraiment chaud,
        avait super chaud, avaient chaud, avaient trop chaud, ont super chaud, a encore trop chaud,
        crève|nt de chaleur, crèvent de chaud, crevait de chaleur, mourait de chaud, mourai|t de chaleur,
        meurent de chaud, étouffai|t, étouffent, étouffe là dessous, suffoque sous, suffoque de chaleur,
        suffoque de chaud, suffoquait sous, cuit là dessous, cuit dessous, cuit dans son jus,
        cuit dans sa couverture, cuit sous, cuisait, cuisait dessous, cuisait là dessous, cuisait sous,
        bout sous, bout dessous, bout là dessous, bouillait, bouillait dessous, bouillait là dessous,
        bouillait sous, mijote sous, mijote dans, mijotait sous, mijote dessous, mijotait dessous, rôtit sous,
        rôtit là dessous, en train de cuire, en train de bouillir, en train de rôtir, surchauffait,
        surchauffé||e|s, surchauffent, sauna sous, étuve sous, four sous, trop habillé||e|s,
        trop d'épaisseurs sur le dos, beaucoup trop couvert||e, bien trop couvert||e, un peu trop couvert||e,
        chauffe sous sa couverture, chauffe trop, trop chaud là dessous, a trop chaud là dessous,
        a chaud dessous, a chaud sous, bouillant||e|s sous, bouillant||e|s dessous, oreilles brûlantes,
        les oreilles brûlantes, trop chaude||s, a eu trop chaud, ont eu trop chaud, ont eu chaud,
        a l'air d'avoir chaud, l'air d'avoir chaud, l'air d'avoir trop chaud, doit avoir trop chaud,
        a beaucoup chaud, a bcp chaud, a ben chaud, a ben trop chaud
    """,
    "sign shivering": """
        frissonne, frissonnent, frissonnait, frissonnant|e, frissons, tremble, tremblent, tremblait,
        tremblant|e, grelotte, grelottent, grelottait, grelottant|e, tremblements, tremble de froid,
        tremblent de froid, grelotter, trembler, frissonner, des frissons, claque des dents, tremblote,
        tremble comme une feuille, grelote, shivering, frémit de froid, secoué||e de frissons,
        plein||e de frissons, a des frissons, a des tremblements, shake, shakent, shakait,
        tremblot|ent|ait|ant|e|es, a la tremblote, la tremblote, claquent des dents, claquait des dents,
        claque les dents, secoué||e de tremblements, secoué||e par des frissons, secoué||e par des tremblements,
        tremble de partout, tremblent de partout, tremble de tout son corps, tremble de tous ses membres,
        pris||e de tremblements, pris||e de frissons, frissonne de partout, grelottement|s, frisson,
        parcouru||e de frissons, vibre de froid, tremble comme un marteau piqueur, shake comme une feuille,
        tremblait comme une feuille, grelotte comme une feuille, grelottait de froid, grelotte de froid,
        frissonne de froid, n'arrête pas de trembler, arrête pas de trembler, n'arrête pas de grelotter,
        arrête pas de grelotter, n'arrête pas de frissonner, arrête pas de frissonner, arrête pas de shaker,
        shaker, tremblements de froid, transi||e et tremblant||e, frisonne, frisonnait, frisonnent,
        tremble fort, tremble beaucoup, tremble encore plus, trembles, tremblée, tremble plus que,
        tremble plus qu', tremble plus quand, tremble plus fort, tremblent plus que, tremblent plus qu',
        tremblent plus quand, tremblent plus fort, grelotte plus que, grelotte plus qu', grelotte plus quand,
        grelotte plus fort, frissonne plus que, frissonne plus qu', frissonne plus quand, frissonne plus fort
    """,
    "sign cold": """
        a froid, ont froid, a très froid, ont très froid, avait froid, a un peu froid, ont un peu froid,
        a trop froid, frigorifié||e|s|es, transi||e|s|es, gelé||e|s|es, congelé||e, les oreilles froides,
        oreilles froides, oreilles gelées, a encore froid, avoir froid, avoir trop froid, a bien froid,
        a vraiment froid, a super froid, meurt de froid, a eu froid, pris froid, a pris froid, a assez froid,
        glacé||e|s|es jusqu'aux os, oreilles glacées, les oreilles glacées, frais derrière le coude,
        froid derrière le coude, pas assez couvert||e, mort||e de froid, crève de froid, se caille,
        pèle de froid, a les oreilles froides, a les oreilles glacées, a les oreilles gelées,
        froid aux oreilles, gelait, caillait, a frette, avait frette, ont frette, a frète, a ben frette,
        a ben froid, a bin froid, a tellement froid, a tellement frette, a super frette, a encore frette,
        a trop frette, a trp froid, a tro froid, a hyper froid, a grave froid, a vachement froid,
        a beaucoup froid, a bcp froid, a carrément froid, avaient froid, avait très froid, avait trop froid,
        avait vraiment froid, avait super froid, ont super froid, ont vraiment froid, ont trop froid,
        ont encore froid, l'air d'avoir froid, a l'air d'avoir froid, ont l'air d'avoir froid,
        semble avoir froid, semblent avoir froid, se pèle, se pèlent, se pelait, se les pèle, se les gèle,
        se les caille, se gèle, se gelait, se gèlent, se caillait, se caillent, gèle sur place, gèle dehors,
        gèle au pré, gèle au champ, gèle sur pied, mort||e|s|es de froid, mourait de froid, meurent de froid,
        crèvent de froid, crevait de froid, oreilles toutes froides, oreilles glaciales, oreilles congelées,
        oreilles frettes, oreilles comme des glaçons, oreilles en glaçons, les oreilles gelées,
        les oreilles congelées, les oreilles glaciales, les oreilles toutes froides,
        les oreilles comme des glaçons, oreilles bien froides, les oreilles bien froides, oreilles très froides,
        oreilles super froides, oreilles un peu froides, oreilles hyper froides, oreilles vraiment froides,
        oreilles ultra froides, oreilles complètement froides, oreilles carrément froides,
        oreilles complètement gelées, oreilles froide, oreille froide, oreilles fraîches, les oreilles fraîches,
        bout des oreilles froid, bout des oreilles gelé, bout des oreilles glacé, un glaçon, un vrai glaçon,
        glaçon sur pattes, transi||e|s|es de froid, tout recroquevillé, toute recroquevillée,
        recroquevillé||e|s de froid, ramassé||e sur lui même, ramassée sur elle même, tout ramassé,
        toute ramassée, poil hérissé, poil tout hérissé, poils hérissés, poil dressé, poil tout dressé,
        poils dressés, poil piqué, poil tout piqué, poils piqués, poils au garde à vous, le dos rond de froid,
        voûté||e de froid, n'a p|as|us chaud, a pas chaud, a pas bien chaud, n'avait pas chaud, avait pas chaud,
        ont pas chaud, n'ont pas chaud, n'a pas bien chaud, a pas l'air d'avoir chaud,
        n'a pas l'air d'avoir chaud, pas très chaud||e, pas bien chaud||e, pas assez habillé||e|s,
        pas assez couvert||e|s, trop peu couvert||e|s, sous couvert||e, attrapé froid, a attrapé froid,
        pogné froid, pogné frette, congelé||e|s|es, frigorifié||e de froid, gelé||e jusqu'aux os,
        glacé||e|s|es de la tête aux pieds, gelé||e de partout, gelé||e comme une crotte, gelé||e ben dur,
        refroidi||e sous sa couverture, froid au garrot, froid sous la main, froid derrière les oreilles,
        froid derrière les coudes, froid sous sa couverture, froid sous la couverture,
        froide sous sa couverture, froide sous la couverture, a les oreilles toutes froides,
        a froid aux oreilles, bleu||e de froid, raide de froid, caille dehors, caille au pré,
        se caille les miches, se caille les fesses
    """,
    "sign comfortable": """
        à l'aise, bien au chaud, confortable|s, au chaud, au sec, bien au sec, température parfaite,
        bonne température, au top, au chaud et au sec, pile comme il faut, à bonne température, tout confort,
        chaud||e|s et sec, chaude et sèche, bien sec et chaud, sec et au chaud, sec et chaud,
        chaud juste comme il faut, ni chaud ni froid, ni trop chaud ni trop froid, n'a ni chaud ni froid,
        s'est réchauffé||e, réchauffé||e, température nickel, température ok, bien réchauffé||e,
        s'est rafraîchi||e, a séché, tout chaud nickel, chaud et sec, chauds et secs, chaude et au sec,
        tiède et sec, tout va bien pour, rien à signaler pour, ras pour, aucun souci pour, pas de souci pour,
        pas de sueur sur, pas une goutte de sueur, aucune sueur, au chaud et bien, plus de frissons,
        plus de tremblements, fini de grelotter, fini de trembler, bien chaud||e, sec et chaud, sèche et chaude,
        bien sèche et bien chaude, plus à l'aise, transpire p|as|lus|u|us, ne transpire p|as|lus|u|us,
        transpire p|as|lus|u|us du tout, ne transpire p|as|lus|u|us du tout, transpirent p|as|lus|u|us,
        ne transpirent p|as|lus|u|us, transpirent p|as|lus|u|us du tout, ne transpirent p|as|lus|u|us du tout,
        transpirait p|as|lus|u|us, ne transpirait p|as|lus|u|us, transpirait p|as|lus|u|us du tout,
        ne transpirait p|as|lus|u|us du tout, sue p|as|lus|u|us, ne sue p|as|lus|u|us,
        sue p|as|lus|u|us du tout, ne sue p|as|lus|u|us du tout, suent p|as|lus|u|us, ne suent p|as|lus|u|us,
        suent p|as|lus|u|us du tout, ne suent p|as|lus|u|us du tout, tremble p|as|lus|u|us,
        ne tremble p|as|lus|u|us, tremble p|as|lus|u|us du tout, ne tremble p|as|lus|u|us du tout,
        tremblent p|as|lus|u|us, ne tremblent p|as|lus|u|us, tremblent p|as|lus|u|us du tout,
        ne tremblent p|as|lus|u|us du tout, tremblait p|as|lus|u|us, ne tremblait p|as|lus|u|us,
        tremblait p|as|lus|u|us du tout, ne tremblait p|as|lus|u|us du tout, grelotte p|as|lus|u|us,
        ne grelotte p|as|lus|u|us, grelotte p|as|lus|u|us du tout, ne grelotte p|as|lus|u|us du tout,
        grelottent p|as|lus|u|us, ne grelottent p|as|lus|u|us, grelottent p|as|lus|u|us du tout,
        ne grelottent p|as|lus|u|us du tout, grelottait p|as|lus|u|us, ne grelottait p|as|lus|u|us,
        grelottait p|as|lus|u|us du tout, ne grelottait p|as|lus|u|us du tout, frissonne p|as|lus|u|us,
        ne frissonne p|as|lus|u|us, frissonne p|as|lus|u|us du tout, ne frissonne p|as|lus|u|us du tout,
        frissonnent p|as|lus|u|us, ne frissonnent p|as|lus|u|us, frissonnent p|as|lus|u|us du tout,
        ne frissonnent p|as|lus|u|us du tout, tremblote p|as|lus|u|us, ne tremblote p|as|lus|u|us,
        tremblote p|as|lus|u|us du tout, ne tremblote p|as|lus|u|us du tout, shake p|as|lus|u|us,
        ne shake p|as|lus|u|us, shake p|as|lus|u|us du tout, ne shake p|as|lus|u|us du tout,
        claque p|as|lus|u|us des dents, ne claque p|as|lus|u|us des dents, n'a p|as|lus|u|us froid,
        a p|lus|u|us froid, n'a plus trop chaud, n'ont p|as|lus|u|us froid, ont p|lus|u|us froid,
        température idéale, temp nickel, temp ok, température au top, bonne temp, température correcte,
        température normale, température comme il faut, juste à la bonne température, chaud comme il faut,
        chaude comme il faut, chaud sans transpirer, chaude sans transpirer, chaud sans suer,
        chaud mais pas trop, chaude mais pas trop, juste chaud comme il faut, pas de transpiration,
        aucune transpiration, pas de transpi, zéro sueur, sans sueur, aucun signe de froid,
        aucun signe de sueur, pas de sueur, plus de sueur, plus de transpiration, plus une goutte de sueur,
        pas un frisson, pas de frissons, pas de frisson, aucun frisson, plus un frisson, zéro frisson,
        pas de tremblements, pas de tremblement, plus de tremblement, aucun tremblement, ni sueur ni frisson,
        ni sueur ni frissons, ni froid ni chaud, pas froid pas chaud, ni trop froid ni trop chaud,
        oreilles chaudes, les oreilles chaudes, oreilles bien chaudes, les oreilles bien chaudes,
        oreilles tièdes, les oreilles tièdes, oreilles toutes chaudes, oreilles bonnes,
        oreilles à bonne température, garrot tiède, comme un coq en pâte, comme un pacha,
        chaud||e|s et content||e|s, au chaud et content||e, bien au chaud dans, bien au chaud sous,
        tout au chaud, tt au chaud, au chaud au sec, au sec et au chaud, sèche et au chaud, secs et au chaud,
        sèches et au chaud, sec et tiède, sèche et tiède, tiède et sèche, tiédasse et sec,
        s'est bien réchauffé||e, s'est séché||e, a fini de sécher, bien réchauffé||e|s,
        s'est calmé||e et ne tremble plus, rien à signaler chez, rien à signaler du côté de, ras chez, ras côté,
        aucun problème pour, pas de problème pour, pas de soucis pour, aucun soucis pour, tout bon pour,
        tout roule pour, tout va bien chez, tout va bien du côté de, chaud et confortable, confort,
        en tout confort, à température, à la bonne température, au chaud sous sa couverture,
        bien dans sa couverture, bien dans sa couv, tout doux et sec, sec et content, sec et bien,
        sèche et bien, sec et confortable, sèche et confortable, bien sec et au chaud, bien sèche et au chaud,
        bien sec et bien chaud, sec dessous, sèche dessous, secs dessous, sèches dessous, bien sec dessous,
        bien sèche dessous, tout sec dessous, toute sèche dessous, sec sous sa couverture, sec sous sa couv,
        sèche sous sa couverture, sèche sous sa couv, sec et bien chaud, sèche et bien chaude
    """,
    "sign rubbed": """
        frottement, frottements, un frottement, des frottements, frotté||e|s|es, frotte, frottent,
        blessure de couverture, pelé||e|s|es par la couverture, irrité||e|s|es, écorché||e|s|es,
        pelé||e à l'épaule, éraflé||e, usé||e à l'épaule, poil usé, épaules râpées, râpé||e|s,
        frotté aux épaules, perte de poils, perd ses poils, a perdu des poils, a perdu du poil, poils usés,
        poils arrachés, plaie de couverture, plaies de couverture, blessé||e par la couverture,
        blessure au garrot, à vif au garrot, garrot à vif, épaule à vif, épaules à vif, irritation, irritations,
        marque de frottement, marques de frottement, plaque sans poils, pelade, poils cassés,
        échauffement de couverture, se frotte l'épaule, frotte au garrot, frotte au poitrail,
        frotté||e|s|es à vif, lui frotte, pelé||e au garrot, pelé||e aux épaules, pelé||e au poitrail,
        pelé||e|s|es, commence à peler, commence à être pelé||e, plaque pelée, plaques pelées, zone pelée,
        plus de poil à l'épaule, plus de poils à l'épaule, plus de poil aux épaules, plus de poils aux épaules,
        plus de poil au garrot, plus de poils au garrot, plus de poil au poitrail, plus de poils au poitrail,
        n'a plus de poil à l'épaule, n'a plus de poils aux épaules, perd du poil, perd des poils, perte de poil,
        pertes de poils, marqué||e au garrot, marqué||e par la couverture, marqué||e à l'épaule,
        marqué||e aux épaules, marqué||e au poitrail, marques au garrot, marques aux épaules,
        marques au poitrail, marques de couverture, marque de couverture, marques de la couverture,
        marque de la couverture, zone frottée, zones frottées, zone de frottement, poil abîmé, poils abîmés,
        poil cassé, poil mangé, poil élimé, poil tout usé, poil râpé, poil limé, poil frotté, poil parti,
        poils partis, poil arraché, brûlure de frottement, brûlure|s de couverture, brûlé||e par la couverture,
        brûlé||e par le frottement, échauffé||e|s au garrot, échauffé||e|s à l'épaule,
        échauffé||e|s au poitrail, échauffé||e|s par la couverture, échauffement au garrot,
        échauffement à l'épaule, échauffements, peau à vif, chair à vif, poitrail à vif,
        pointe de l'épaule à vif, rougeur au garrot, rougeurs au garrot, rougeur à l'épaule,
        rougeurs aux épaules, rougeur au poitrail, rouge au garrot, rouge à l'épaule, croûte au garrot,
        croûtes au garrot, croûte à l'épaule, croûtes aux épaules, croûtes de frottement, écorchure|s,
        excorié||e, excoriation|s, blessure|s de frottement, plaie|s de frottement, plaie au garrot,
        plaies au garrot, bobo au garrot, bobo de couverture, blessé||e au garrot, blessé||e par sa couverture,
        gratté||e par la couverture, sans poil à l'épaule, trou dans le poil, abrasion|s, cisaillé||e par,
        entamé||e au garrot, rub, rubs, râpé||es, usé||e aux épaules, usé||e au garrot, usé||e au poitrail,
        poil usé aux épaules, épaules usées, épaules pelées, épaule pelée, garrot pelé, poitrail pelé,
        épaules frottées, épaule frottée, garrot frotté, poitrail frotté, épaules abîmées, garrot abîmé,
        épaules irritées, garrot irrité, épaule irritée, poitrail irrité, épaule rouge, épaules rouges,
        garrot rouge, scie le garrot, scie les épaules, coupe le garrot, coupe au garrot, cisaille le garrot,
        appuie sur le garrot, appuie au garrot, pelade au garrot, tonsure au garrot, chauve à l'épaule,
        chauve aux épaules, chauve au garrot, à sang
    """,
    "sign unwell": """
        colique, coliques, une colique, malade|s, ne mange pas, ne mange plus, ne mangent pas, n'a pas mangé,
        n'a rien mangé, ne veut pas manger, refuse de manger, tousse, toussent, toussait, toux, fièvre,
        a de la fièvre, de la fièvre, abattu||e|s|es, amorphe|s, apathique|s, pas bien, pas dans son assiette,
        n'est pas bien, ne va pas bien, va mal, pas en forme, diarrhée, mal en point, pas comme d'habitude,
        mou||s|, pas l'air bien, a mal au ventre, mal au ventre, boude sa ration, boude son foin,
        a laissé sa ration, n'a pas fini sa ration, tout mou, toute molle, n'a pas l'air bien,
        n'a plus d'appétit, n'a pas d'appétit, sans appétit, éteint||e, se roule de douleur, pas très bien,
        ne va pas très bien, pas trop bien, ne se sent pas bien, patraque, en colique, fait une colique,
        fait des coliques, a le nez qui coule, nez qui coule, jetage, couché||e et ne se lève pas,
        ne se relève pas, gratte le sol, se regarde les flancs, respire mal, respire fort, respiration rapide,
        ne touche pas à son foin, n'a pas touché à son foin, n'a pas touché à sa ration, n'a pas fini son foin,
        pas dans son état normal, pas lui même, pas elle même, pas normal||e, a de la température,
        de la température, fiévreux, fiévreuse, fourbure, en fourbure, très abattu||e, faible, titube,
        apathique, triste, ne va pas bien du tout, pas bien du tout, n'a pas terminé sa ration,
        n'a pas terminé son foin, n'a pas fini son grain, boude sa nourriture, laisse sa ration,
        laisse son foin, colique de gaz, petite colique, grosse colique, début de colique, début de coliques,
        suspicion de colique, signes de colique, signes de coliques, coliqu|eux|euse, en coliques,
        gratte et se couche, se couche et se relève, se couche se relève, se couche sans arrêt,
        se couche et gratte, n'arrête pas de se coucher, arrête pas de se coucher, n'arrête pas de se rouler,
        arrête pas de se rouler, se regarde le ventre, se regarde le flanc, se regarde les flanc,
        regarde ses flancs, regarde son ventre, regarde son flanc, se tape le ventre, se mord les flancs,
        ballonné||e, ventre gonflé, ventre dur, ventre tendu, pas de crottin, pas de crottins, aucun crottin,
        pas fait de crottin, pas fait de crottins, n'a pas crotté, crottins mous, crottins liquides,
        crottins secs, bouse liquide, en diarrhée, a la courante, a la diarrhée, a la chiasse, respire vite,
        respire bizarrement, respire bizarre, respire très vite, respire super vite, respire difficilement,
        respiration bizarre, respiration saccadée, du mal à respirer, souffle fort, souffle comme une forge,
        halète, haletant||e|s, haletait, toussote, toussotait, a toussé, ont toussé, tousse gras,
        quinte de toux, quintes de toux, une vilaine toux, naseaux qui coulent, nez coule, nez sale,
        jetage jaune, morve, morveux, morveuse, sans énergie, sans entrain, prostré||e|s, bizarre et abattu||e,
        pas dans son état, pas dans son état habituel, raplapla, tout raplapla, toute raplapla, vaseux, vaseuse,
        barbouillé||e, à plat, tout à plat, toute à plat, mal fichu||e, mal foutu||e, pas dans son assiète,
        pas dans son asiette, file un mauvais coton, mauvaise mine, a mauvaise mine, sale tête, petite mine,
        une petite mine, n'a pas la forme, a pas la forme, pas la forme, pas la grande forme,
        pas en grande forme, pas très en forme, pas trop en forme, pas bien en forme, pas au top,
        pas au top de sa forme, pas au mieux, pas super bien, pas très bien du tout, pas vraiment bien,
        pas bien bien, pas ben bien, pas ben, file pas, feel pas, magané||e, pogné||e de coliques,
        n'a pas touché à son grain, n'a pas touché à ses granulés, n'a pas touché à sa gamelle,
        n'a pas touché à son seau, n'a pas touché à son mash, n'a pas touché à son repas, n'a touché à rien,
        n'a pas touché sa ration, n'a pas touché son foin, a pas touché à son foin, a pas touché à sa ration,
        a pas touché à son grain, a pas touché à ses granulés, a pas touché à sa gamelle,
        a pas touché à son seau, a pas touché à son mash, a pas touché à sa bouffe, a pas touché son foin,
        a pas touché sa ration, a touché à rien, ne touche pas à sa ration, ne touche pas à ses granulés,
        ne touche plus à son foin, touche pas à son foin, touche pas à sa ration, touche plus à son foin,
        boude sa gamelle, boude ses granulés, boude son grain, boude son repas, boude son mash, boude son seau,
        boude sa bouffe, boude le foin, boude tout, a boudé sa ration, a boudé son foin, a boudé ses granulés,
        a boudé son grain, a boudé son repas, a laissé son foin, a laissé son grain, a laissé ses granulés,
        a laissé son repas, a laissé sa gamelle, a laissé son seau, a laissé son mash,
        a laissé la moitié de sa ration, a laissé tout son foin, a laissé toute sa ration, a pas mangé,
        a pas mangé son foin, a rien mangé, a rien bouffé, a pas bouffé, n'a rien avalé, a rien avalé,
        mange p|as|lus|u|us, mange rien, mange plus rien, mange presque rien, mange presque plus, ne mange rien,
        ne mange plus rien, ne mange presque rien, ne mange presque plus, mange plus du tout, mange pas du tout,
        bouffe p|as|lus|u|us, bouffe rien, bouffe plus rien, ne bouffe p|as|lus, refuse son grain,
        refuse son foin, refuse sa ration, refuse ses granulés, refuse la nourriture, refuse de bouffer,
        refuse de boire, refuse tout, a refusé sa ration, a refusé son foin, a refusé ses granulés,
        a refusé son grain, a refusé de manger, a refusé son repas, veut pas manger, veut rien manger,
        veut plus manger, ne veut plus manger, ne veut rien manger, veut plus rien manger, n'a pas faim,
        n'a plus faim, a pas faim, a plus faim, snobe son foin, snobe sa ration, snobe ses granulés,
        pas d'appétit, plus d'appétit, perdu l'appétit, aucun appétit, pas bu, n'a pas bu, a pas bu,
        ne boit p|as|lus, boit p|as|lus, déshydraté||e, fait de la fièvre, grosse fièvre, un peu de fièvre,
        38 5 de fièvre, 39 de fièvre, 39 de température, 40 de fièvre, a de la temp, de la temp, fourbu||e|s,
        coup de sang, fait une myo, en myo, myosite, fait une piro, une piro, piroplasmose, veut pas se lever,
        ne veut pas se lever, ne veut plus se lever, ne se lève plus, se lève plus, se relève pas,
        se relève plus, arrive pas à se lever, n'arrive pas à se lever, arrive pas à se relever,
        refuse de se lever, tombé||e malade, est malade, est souffrant||e, souffrant||e, souffre, a mal,
        a l'air d'avoir mal, ventre qui fait mal, vraiment pas bien, franchement pas bien, va pas bien,
        va pas ben, va pas fort, va pas trop, va pas super, va pas du tout, va pas bien du tout,
        va vraiment pas bien, ne va pas fort, ne va vraiment pas bien, ne va pas super, est pas bien,
        n'est vraiment pas bien, pas comme d'hab, se sent pas bien, a l'air malade, l'air malade, a l'air mal,
        l'air mal, a l'air patraque, a l'air abattu||e, a l'air triste, a l'air éteint||e, l'oeil éteint,
        oeil éteint, les yeux éteints, tête basse, la tête basse, tête en bas, léthargique|s, apathie,
        mollasson||ne, flagada
    """,
    "everyday hot": """
        chaud||e|s|es, bouillant||e, brûlant||e|s, 🥵, hot, chaud bouillant, chaud chaud, brûlantes
    """,
    "everyday cold": """
        froid||e|s|es, frais, fraîche, glacé||e|s|es, frisquet, 🥶, cold, frisquet||te, frigo, glacial||e,
        refroidi||e, frett|e|es, frète, glaçon, fraîches, frigorifié
    """,
    "everyday good": "",
    "everyday comfortable": """
        bien, va bien, vont bien, ça va, ok, parfait||e|s|es, nickel, content||e|s|es, impeccable, tranquille|s,
        va très bien, vont très bien, très bien, tout va bien, impec, va mieux, se porte bien, mieux,
        va beaucoup mieux, beaucoup mieux, au poil, tip top, ras, rien à signaler, super bien, niquel, parfait,
        nikel, nickel chrome, good, all good, top, super, okay, oki, okey, c'est ok, tout ok, tout roule,
        au poil partout, nice, correct||e|s|es, ben correct||e, convenable, peinard||e|s|es, pénard||e, zen,
        heureux, heureuse|s, va bin, va ben, ça va bien, va nickel, va impec, va au poil, va super bien,
        vont super bien, se porte comme un charme, se porte à merveille, à merveille, en pleine forme,
        comme un charme, top forme, en top forme, tout va nickel, tout bon, tout est ok, sans souci,
        sans problème, rien à redire, rien à dire, rien de spécial, rien de particulier, rien d'anormal,
        parfaitement bien, pas de souci, pas de soucis, aucun souci, pas de problème, aucun problème, pas de pb,
        rien de neuf, bien bien, au calme, très content||e|s, impecc, impek, impecable, nickels,
        super content||e, bien content||e, bienheureux, r a s, tt va bien, tout va très bien, va trè bien,
        vont nickel, bin correct, ben content||e
    """,
    "everyday warm": """
        tiède|s, tiédasse, tiédass, tiédasses, juste tiède, bien tiède, à peine tiède, tout tiède, toute tiède
    """,
    "dry": """
        sec, sèche, secs, sèches, séché||e|s|es, bien sec, bien sèche, à sec, de nouveau sec, de nouveau sèche,
        sèche à nouveau, dry, enfin sec, enfin sèche, complètement sec, complètement sèche, bien séché||e,
        sec maintenant, a séché, ont séché, a bien séché, est séché||e, archi sec, archi sèche, sec de chez sec,
        sèche de chez sèche, totalement sec, totalement sèche, tout sec, toute sèche, tous secs, toutes sèches,
        super sec, super sèche, parfaitement sec, parfaitement sèche, sec partout, sèche partout,
        fini de sécher, a fini de sécher, ont fini de sécher, enfin séché||e|s, enfin secs, bien secs,
        bien sèches, sec à coeur, sèche à coeur, ultra sec, ultra sèche, nickel sec, nickel sèche,
        sec comme un coucou, sec de nouveau, sèche de nouveau, re sec, re sèche, redevenu sec, redevenue sèche,
        a eu le temps de sécher
    """,
    "damp": """
        humide|s, moite|s, encore un peu mouillé||e, pas sec, pas sèche, pas encore sec, pas encore sèche,
        pas tout à fait sec, pas tout à fait sèche, pas complètement sec, pas complètement sèche, presque sec,
        presque sèche, p|as bien sec, pas bien sèche, pas totalement sec, pas totalement sèche, pas assez sec,
        pas assez sèche, pas secs, pas sèches, pas encore secs, pas encore sèches, pas fini de sécher,
        n'a pas fini de sécher, a pas fini de sécher, pas encore séché||e, pas tt à fait sec,
        pas tt à fait sèche, pas vraiment sec, pas vraiment sèche, pas super sec, pas super sèche, pas très sec,
        pas très sèche, toujours pas sec, toujours pas sèche, tjs pas sec, tjs pas sèche, tjrs pas sec,
        tjrs pas sèche, moitié sec, moitié sèche, mi sec, mi sèche, limite sec, limite sèche,
        un poil mouillé||e, encore un poil mouillé||e, légèrement mouillé||e, a pris l'humidité,
        pris l'humidité, a pris l'humide, pris l'humide, de l'humidité, un peu d'humidité, humidité dessous,
        humid, mouillé||e par endroits, finit de sécher, presque secs, presque sèches, quasi sec, quasi sèche,
        à moitié sec, à moitié sèche, encore fraîche au toucher, humidasse, séche pas, a mal séché,
        mal séché||e, ne sèche pas, pas complètement secs, sec à moitié, sèche à moitié, pas encore bien sec,
        pas encore bien sèche, pas encore tout à fait sec, pas encore tout à fait sèche,
        pas encore complètement sec, pas encore complètement sèche
    """,
    "wet": """
        mouillé||e|s|es, a pris la pluie, a pris l'eau, wet, pris la flotte, a pris la flotte, pris l'eau,
        pris la pluie, pris la sauce, a pris la sauce, pris une rincée, a pris une rincée, pris une saucée,
        a pris une saucée, s'est pris la pluie, s'est pris l'averse, s'est pris une averse, s'est fait saucer,
        s'est fait rincer, se sont fait saucer, pris une averse, pris l'averse, a pris l'averse,
        a pris une averse, mouillé||e|s|es par la pluie, mouillé||e|s|es de pluie, a pris la neige,
        pris la neige, ont pris la pluie, ont pris l'eau, ont pris la flotte, tout mouillé, toute mouillée,
        tt mouillé, tte mouillée, mouilé||e, moullié||e
    """,
    "soaked": """
        trempé||e|s|es, détrempé||e|s|es, dégoulinant||e|s|es, imbibé||e|s|es, ruisselant||e|s|es,
        trempé||e|s|es jusqu'aux os, gorgé||e|s d'eau, essorable, à tordre, dégouline, traversé||e|s|es, soaked,
        trempé de part en part, trempé à l'intérieur, n'est plus étanche, plus étanche, complètement trempé||e,
        traversé||e par la pluie, dégoulinent, dégoulinait, à essorer, bon||ne à essorer, bon||ne à tordre,
        inondé||e|s|es, noyé||e|s|es, une éponge, une vraie éponge, en éponge, une serpillière,
        une vraie serpillière, une serpillère, une vraie piscine, pisse l'eau, ruisselle|nt, ruisselait,
        saucé||e|s|es, plein||e|s d'eau, plein||e|s de flotte, gorgé||e|s|es d'eau, gorgé||e|s de flotte,
        imbibé||e|s|es d'eau, imbibé||e|s de flotte, l'eau a traversé, l'eau est passée, la pluie a traversé,
        a pris l'eau au travers, transpercé||e|s|es, a traversé, ont traversé, fuit de partout,
        n'est plus imperméable, plus imperméable, mouillé||e|s|es jusqu'aux os, mouillé||e|s|es jusqu'à l'os,
        mouillé||e|s|es à l'intérieur, trempé||e|s à coeur, trempé||e|s jusqu'à l'os,
        trempé||e|s jusqu'à la moelle, trempé||e|s comme une soupe, trempé||e|s de la tête aux pieds,
        trempé||e|s lavette, trempe à lavette, trempé||e à lavette, mouillé||e à tordre, trempé||e|s d'eau,
        trempé||e|s de pluie, trempé||e dedans, trempé||e|s dessous, trempé||e des deux côtés, à l'essorage,
        rincé||e|s|es par la pluie, rincé||e|s jusqu'aux os, complètement rincé||e, tout trempé, toute trempée,
        tt trempé, tte trempée, trampé||e|s
    """,
    "state washing": """
        au lavage, à la machine, en machine, au pressing, à la laverie, en train d'être lavé||e,
        partie au lavage, parti au lavage, lavage, dans la machine, à laver, à la lessive, en lavage,
        chez le nettoyeur, au nettoyage, au sale, parti laver, partie laver, au lavomatic, chez le laveur,
        à laver chez, à nettoyer, mis à laver, mise à laver, à la buanderie, en lessive,
        dans la machine à laver, mis au lavage, mise au lavage, au pressing pour chevaux
    """,
    "state torn": """
        déchiré||e|s|es, troué||e|s|es, a déchiré, un trou, trou, craqué||e|s|es, arraché||e|s|es,
        fendu||e|s|es, en lambeaux, éventré||e, lacéré||e, une déchirure, déchirure, accroc, un accroc,
        décousu||e|s, a troué, a craqué, en morceaux, a bousillé, bousillé||e, abîmé||e, un gros trou,
        gros trou, une grosse déchirure, un accroc énorme, déchiqueté||e, en charpie, percé||e|s|es,
        arrachée de partout, foutu||e, fichu||e, a été déchiré||e, s'est déchiré||e, décousue de partout,
        une couture a lâché, couture lâchée
    """,
    "state missing": """
        perdu||e|s|es, introuvable|s, impossible de trouver, ne trouve pas, ne trouve plus, trouve pas,
        trouve plus, disparu||e|s|es, manque, a disparu, on a perdu, j'ai perdu, manquant||e, égaré||e,
        ne retrouve pas, ne retrouve plus, retrouve pas, retrouve plus, trouvons plus, trouvons pas,
        impossible de retrouver, il manque, aucune trace de, envolé||e, volé||e, plus là, n'est plus là,
        pas à sa place, on ne trouve plus, je ne trouve plus, je trouve plus, on trouve plus, où est passé||e,
        pas trouvé||e
    """,
    "state found": """
        retrouvé||e|s|es, a été retrouvé||e, réapparu||e, est réapparu||e, a réapparu, j'ai retrouvé,
        on a retrouvé, est retrouvé||e
    """,
    "state in service": """
        réparé||e|s|es, recousu||e|s|es, revenu||e|s|es du lavage, de retour, revenu||e|s|es,
        de retour du lavage, comme neuf, comme neuve, réutilisable, en service, rapiécé||e,
        revenu de réparation, revenue de réparation, raccommodé||e, à nouveau utilisable, de nouveau en service,
        rafistolé||e, remis||e en service, rentre du lavage, revient du lavage, revient de réparation,
        retour de réparation, de retour de réparation, de retour du pressing, recousue, sangle réparée,
        sangle remplacée, réparation faite, prêt à servir, prête à servir, prête à l'emploi,
        à nouveau en service
    """,
    "strap": """
        sangle, sangles, boucle, boucles, attache, attaches, surfaix, croisillon, croisillons, sous cuissard,
        sous cuissards, courroie, mousqueton, lanière, sangle croisée, queue de sangle, bavette, fermeture,
        fermetures, sangles croisées, cuissard, attache de patte, sangle de patte, sangles de pattes,
        boucle de poitrail, boucles de poitrail, surfaix croisés, clip, crochet, scratch, velcro
    """,
    "broken": """
        cassé||e|s|es, a cassé, pété||e|s, a pété, arraché||e|s|es, a lâché, lâché||e|s, décroché||e|s,
        déchiré||e|s|es, a craqué, craqué||e, s'est cassé||e, fichu||e, foutu||e, rompu||e, a sauté, sauté||e,
        a cédé, a arraché, a été arraché||e, pété||e|s|es, cassé net, n'existe plus, parti||e, manque, qui pend,
        pend, hors service, hs, à changer, a claqué
    """,
    "kind sheet": """
        imperméable|s, imper, impers, chemise imperméable, chemise de pluie, couverture de pluie, chemise,
        chemises, rain sheet, sans doublure, couverture imperméable, 0 g, sheet
    """,
    "kind turnout": """
        outdoor|s, couverture d'extérieur, couverture outdoor, turnout, couverture de pré,
        couvertures d'extérieur, couverture de paddock, couverture extérieure
    """,
    "kind liner": """
        sous couverture|s, liner|s, sous couv, doublure, sous couvs, souscouverture, couverture de dessous
    """,
    "kind stable": """
        couverture de box, couverture d'écurie, couvertures de box, couverture d'intérieur, de box, d'écurie,
        couverture box, stable rug
    """,
    "kind cooler": """
        polaire|s, séchante, chemise séchante, couverture séchante, couverture polaire, chemise polaire, cooler,
        émouchine séchante, fleece
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
        jaune|s, orange, violet, violette, rose|s, bordeaux, beige, marine, à carreaux, écossais||e, à rayures,
        rayé||e|s, turquoise, bleu marine, kaki, doré||e, argent, mauve
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
        enlevé||e|s|es, retiré||e|s|es, ôté||e|s|es, j'ai enlevé, ai enlevé, a enlevé, on a enlevé, j'ai retiré,
        déshabillé||e|s, découvert||e|s, viré||e, lui ai enlevé, lui ai retiré, leur ai enlevé, on a retiré,
        avons enlevé, avons retiré, on lui a enlevé, on lui a retiré, j'ai viré, dévêtu||e, enlève à l'instant,
        ôtée, a ôté, j'ai ôté, défait||e|s, enlevée, retirée, déshabillée, j'ai déshabillé, on a déshabillé,
        tombé la couverture de, je l'ai enlevé||e, je l'ai retiré||e, je l'ai ôté||e, je l'ai viré||e,
        on l'a enlevé||e, on l'a retiré||e, on l'a ôté||e, l'ai enlevé||e, l'ai retiré||e
    """,
    "stripped": "déshabillé||e|s, dévêtu||e, tout enlevé, découvert||e",
    "took": "",
    "wears": """
        porte, portent, a sur le dos, en, habillé||e avec, couvert||e avec, est avec, sous, vêtu||e de,
        porte maintenant, avec, est couvert||e avec, portait, équipé||e de, est passé en, est passée en, a son,
        a sa, a ses, a la, juste en, seulement en, est passé à la, est passée à la, est passé au, est passée au,
        passé à la, passée à la, passé au, passée au, passe à la, passe en, habillé||e de, habillé||e en,
        remis en, remise en, est habillé||e avec, mis en, mise en, avec juste, avec seulement
    """,
    "in": "en",
    "on": "sur le dos, sur, dessus",
    "off": "sans",
    "has": "a, ont, avec",
    "swapped": """
        changé||e|s, remplacé||e, échangé||e, j'ai changé, j'ai remplacé, on a changé, on a remplacé,
        j'ai échangé, troqué||e, passé||e de
    """,
    "instead of": """
        à la place de, au lieu de, à la place du, à la place des, en lieu et place de, en remplacement de
    """,
    "for another": "par, pour, contre, à, en",
    "over": "par dessus, dessus, en dessous, dessous, sous, sur, en plus, aussi, par dessous",
    "bare": """
        nu||e|s|es, sans couverture, sans couvertures, sans rien, à poil, tout nu, toute nue, rien sur le dos,
        sans couv, découvert||e|s, ne porte rien, pas de couverture, n'a rien sur le dos, n'a pas de couverture,
        sans rien sur le dos, n'a plus de couverture, plus de couverture, tous nus, toutes nues, bare, naked,
        à nu, sans rien du tout, rien du tout sur le dos, n'a rien, déshabillé||e|s, laissé||e nu||e,
        laissé||e sans couverture, nue comme un ver, nu comme un ver, n'a plus rien sur le dos, n'a plus rien,
        plus rien sur le dos
    """,
    "nothing": "rien, tout",
    "without": "sans",
    "clipped": """
        tondu||e|s|es, tonte, j'ai tondu, on a tondu, a tondu, rasé||e, tontes, avons tondu, a été tondu||e,
        ont été tondus, tonte bavette, tonte poitrail, tonte trace, tonte de trait, tonte attelage,
        tonte irlandaise, tonte partielle, tonte couverture, tonte en couverture, tonte chasse, tonte de chasse,
        tonte hunter, tonte complète, tonte intégrale, tonte totale, tondu||e|s|es en couverture,
        tondu||e|s|es couverture, tondu en chasse, fait la tonte de, fait une tonte à, fait une tonte,
        passé||e à la tondeuse, passé||e sous la tondeuse
    """,
    "style none": "pas tondu||e, le poil a repoussé, poil repoussé, tonte repoussée, poil est revenu",
    "style bib": "bavette, poitrail, tonte bavette, tonte poitrail, tonte en bavette, en bib, bib clip",
    "style trace": """
        trace, tonte trace, tonte de trait, attelage, tonte attelage, irlandaise, tonte irlandaise,
        tonte partielle
    """,
    "style blanket": """
        tonte couverture, couverture de tonte, tonte en couverture, tonte dos couvert,
        tondu||e|s|es en couverture, tondu||e|s|es couverture, tonte couverture complète
    """,
    "style hunter": "chasse, tonte chasse, hunter, tonte de chasse, de chasse, tonte hunter",
    "style full": """
        complet, complète, intégrale, entier, entière, entièrement, complètement, totale, tonte complète,
        tonte intégrale, tonte totale, en entier, intégralement
    """,
    "place stall": """
        box, écurie, boxes, stalle, dedans, à l'intérieur, à l'abri, à l'écurie, au box, boxs,
        rentré||e|s|es au box, écuries, intérieur, stabulation
    """,
    "place field": """
        pré, prés, pâture, paddock, champ, dehors, à l'extérieur, au pré, en pâture, herbage, parc, paddocks,
        prairie, extérieur
    """,
    "inwards": "dedans, rentré||e|s|es",
    "outwards": "dehors, sorti||e|s|es",
    "brought": """
        ramené||e|s, amené||e|s, emmené||e|s, mis||e|es, conduit||e, déplacé||e, laissé||e|s|es, gardé||e|s|es,
        passé||e, remis||e|es
    """,
    "stays": """
        reste, restent, dort, dorment, passe la nuit, passent la nuit, restera, est resté||e, est restée,
        va rester
    """,
    "brought in": """
        rentré||e|s|es, j'ai rentré, on a rentré, ai rentré, a rentré, avons rentré, ont rentré, est rentré||e,
        sont rentré||s|es, enfermé||e|s, rentré||e|s|es à l'écurie, rentré||e|s|es au box,
        ramené||e|s|es à l'écurie, ramené||e|s|es au box, remis||e au box, est à l'intérieur, mis||e au box,
        mis||e à l'abri, mis||e à l'écurie
    """,
    "turned out": """
        sorti||e|s|es, j'ai sorti, on a sorti, ai sorti, a sorti, lâché||e|s|es, avons sorti, ont sorti,
        mis au pré, est sorti||e, sont sorti||s|es, mise au pré, j'ai lâché, on a lâché, remis au pré,
        remise au pré, ressorti||e|s|es, mis dehors, mise dehors, au pré depuis ce matin, parti au pré,
        partie au pré, j'ai mis au pré
    """,
    "keep": """
        laissez, laisser, laisse, gardez, garder, je veux, je préfère, doit rester, qu'il reste, qu'elle reste,
        merci de laisser, laissons, je souhaite, je voudrais, faut laisser, doit être, que, s'il vous plaît
    """,
    "please": "s'il vous plaît, s'il te plaît, svp, stp, merci, à partir de maintenant, désormais",
    "do not rug": """
        ne couvrez pas, ne pas couvrir, pas de couverture pour, ne mettez pas de couverture, ne mettez rien,
        pas couvrir, on ne couvre pas, ne couvrez plus, ne couvre pas, ne lui mettez pas de couverture,
        ne mets pas de couverture, plus de couverture pour, ne mettez pas de couverture à, ne lui mettez rien,
        ne plus couvrir, pas de couvertures pour, aucune couverture pour
    """,
    "rug again": """
        peut être couvert, peut être couverte, peut être couvert à nouveau, peut être couverte à nouveau,
        peut être recouvert, peut être recouverte, on peut couvrir, on peut recouvrir, vous pouvez couvrir,
        vous pouvez recouvrir, peut reporter une couverture, peut porter une couverture,
        peut porter une couverture à nouveau, peut remettre une couverture, on peut lui remettre une couverture,
        on peut remettre une couverture, vous pouvez lui remettre une couverture, peut à nouveau être couvert,
        peut à nouveau être couverte, peut de nouveau être couvert, peut de nouveau être couverte,
        peut à nouveau porter une couverture, peut de nouveau porter une couverture,
        vous pouvez remettre une couverture, plus besoin de laisser, peut être couvert de nouveau,
        peut être couverte de nouveau, n'a plus besoin d'être nu||e, on peut à nouveau couvrir,
        on peut de nouveau couvrir, vous pouvez à nouveau couvrir, peut remettre sa couverture,
        peut remettre des couvertures
    """,
    "worked": """
        monté||e|s|es, j'ai monté, on a monté, a monté, travaillé||e|s|es, j'ai travaillé, a travaillé,
        longé||e|s|es, j'ai longé, a été longé||e, a été monté||e, a eu cours, a eu un cours, a eu son cours,
        a eu une leçon, sorti en balade, balade avec, fait une balade avec, parti en balade, a fait cours,
        a fait un cours, a fait une séance, travail fait, a sauté, a eu sa leçon, a fait son cours,
        ont travaillé, ont été montés, ont été montées, ont eu cours, ont eu un cours, est parti en balade,
        est partie en balade, a fait une balade, rentre de balade, revient de balade, rentre du cours,
        sort du cours, sort de cours, revient du cours, sortie en balade, fait une séance avec,
        vient d'être monté||e, viens de monter, vient de travailler, trotting fait, j'ai fait travailler,
        a été travaillé||e, est monté||e, longe faite, séance faite, cours fait, balade faite, a eu cours avec,
        rentré de balade, rentrée de balade, sauté ce matin, sorti||e en carrière, détendu||e en carrière
    """,
    "had": "a eu, ont eu, a fait, ont fait, a fini, vient de finir, a terminé",
    "after": """
        après, à cause de, à la suite de, suite à, de, du, depuis, d', à cause du, suite au, au retour de,
        au retour du, en rentrant de, en rentrant du, revient de, revient du, sort de, sort du, rentre de,
        rentre du
    """,
    "work": """
        cours, leçon, travail, balade, longe, séance, entraînement, saut, monte, monter, l'avoir monté,
        avoir été monté||e, avoir monté, galop, obstacle, dressage, trotting, exercice, être monté||e,
        être longé||e, avoir travaillé, promenade, rando, carrière, manège, le manège, saut d'obstacles,
        l'obstacle, concours, séance de travail, balade en forêt, la balade, cso, le cours
    """,
    "done": """
        fait||e|s|es, fini||e|s|es, terminé||e|s|es, prêt||e|s|es, c'est fait, c'est bon, ✓, ✔, ✅, ☑,
        changé||e|s|es, est fait||e, sont fait||s|es, bouclé||e, réglé||e, c'est bon pour, fini avec, j'ai fini,
        j'ai fini avec, terminé avec, done, c'est fait pour, c'est ok pour, couvert||e|s|es, a été fait||e,
        habillé||e|s|es, j'ai fait, on a fait, ok pour, traité||e, vu||e et fait||e, check
    """,
    "everyone": "tous, toutes, tout, tout le monde, l'ensemble",
    "the rest": "le reste, les autres, tous les autres, toutes les autres",
    "all horses": "tous les chevaux, les chevaux, tous les poneys, toutes les juments, chevaux",
    "both": "les deux, tous les deux, toutes les deux, les trois",
    "all": "tous les, toutes les, les deux",
    "except": "sauf, à part, hormis, excepté, moins, à l'exception de",
    "all done": """
        tous faits, toutes faites, tout est fait, tout fait, tout le monde est fait, ils sont tous faits,
        tous les chevaux sont faits, tous finis, tout est fini, tout est bon, tournée finie, tournée faite,
        tournée terminée, tous terminés, ronde faite, tous ✓, tous ✅, tout le monde est prêt, tous prêts,
        tous sont faits, elles sont toutes faites, tous sont prêts, tous les chevaux faits, fini pour tous,
        c'est fait pour tous, c'est fini pour tous, c'est bon pour tous, c'est bon pour tout le monde,
        j'ai fini avec tous, tout le monde est ok, tout le monde c'est fait, tous changés, tout est terminé,
        c'est fait pour tout le monde, tous couverts, tout le monde est couvert, tous les chevaux c'est fait,
        tout le monde est habillé, tous habillés, ronde finie, ronde terminée, tour fini, tour terminé,
        tournée du soir finie, tournée du matin finie, tournée du soir faite, tournée du matin faite,
        ronde du soir finie, ronde du matin finie, ronde du soir faite, ronde du matin faite, tour du soir fait,
        tour du matin fait, j'ai tout fini, j'ai fait tout le monde, tout le monde fait, tout le monde est bon,
        tous ok et faits, tout le monde couvert, les chevaux sont tous faits, tous les chevaux sont couverts,
        tous les chevaux couverts, tous les chevaux ok c'est fait, fini pour tout le monde,
        c'est fini pour tout le monde, tous bouclés, la liste est faite, liste faite, liste terminée,
        la liste est finie, tous sont couverts, ils sont tous couverts, tous les chevaux sont habillés
    """,
    "undo": """
        annule, annuler, annule ça, annulez, efface, efface ça, effacer, je me suis trompé, je me suis trompée,
        c'est une erreur, c'était une erreur, mauvais cheval, oublie ça, ignore ça, ignore mon message, ignorez,
        retire ça, erreur de ma part, mon erreur, annule le dernier, pas le bon cheval, annule tout ça, erreur,
        je me suis trompé de cheval, je me suis trompée de cheval, annule mon message,
        annule le dernier message, efface le dernier, ne tiens pas compte, oubliez ça, supprime, supprime ça,
        ignore mon dernier message, c'était pas le bon cheval, je me suis gouré, défaire, annule ça stp,
        annuler ça, annule stp, annule le dernier message stp, annule mon dernier, efface mon dernier message,
        supprime le dernier, retire mon dernier message, oups annule, retour en arrière, je retire,
        mauvais cheval annule, non annule, corrige ça
    """,
    "no": "non, pardon, oups, désolé||e, euh non, erreur, euh, pas",
    "i mean": "je voulais dire, c'est, c'était, plutôt, je veux dire, en fait, je parlais de",
    "yes": "oui, ouais, exact, exactement, c'est ça, voilà",
    "neither": """
        aucun||e, ni l'un ni l'autre, rien, annule, laisse tomber, ni l'une ni l'autre, aucun des deux
    """,
    "first": "premi|er|ère, le premier, la première, un||e",
    "second": "deuxième, le deuxième, la deuxième, second||e, deux, la seconde, le second",
    "third": "troisième, le troisième, la troisième, trois",
    "not": """
        ne, n', pas, plus, jamais, aucun, aucune, ni, non, pas de, n est pas, n est plus, n a pas, n a plus,
        n ont pas, n ont plus
    """,
    "stopped": """
        arrêté de, a arrêté de, ne plus, cessé de, a cessé de, a fini de, s'est arrêté de, ont arrêté de,
        s'est arrêtée de, ont cessé de
    """,
    "not any more": "plus, du tout",
    "nearly": "presque, pas tout à fait, pas encore, à moitié, quasi, quasiment, bientôt",
    "a little": "un peu, légèrement, un petit peu, un poil, peu, un tantinet, un chouia, un brin",
    "very": """
        très, vraiment, beaucoup, super, tout, toute, complètement, bien, trop, assez, tellement, totalement,
        carrément, hyper, drôlement, sacrément, entièrement, mega, méga, grave, vachement, bcp, énormément,
        archi, bien
    """,
    "if": "si, s', au cas où, sauf si, à moins, à condition, tant que, dès que, pourvu que, en cas de",
    "when": "quand, lorsque, lorsqu', pendant que, jusqu'à, jusque, jusqu', avant de, avant que, bien que, où",
    "was": """
        était, étaient, avait, avaient, transpirait, tremblait, grelottait, frissonnait, fut, a été, ont été
    """,
    "plan": """
        va, vais, allons, vont, vas, allez, demain, plus tard, tout à l'heure, faudra, faut, il faut, faudrait,
        devrait, devrais, devrions, devra, doit, dois, devons, peut, peux, pouvez, pourrait, pourrais, pourriez,
        voulez, veux, veut, vouloir, besoin, s'il te plaît, s'il vous plaît, stp, svp, merci de, pensez à,
        pense à, n'oubliez pas, n'oublie pas, j'espère, espérons, peut être, sans doute, sûrement, probablement,
        prochain||e, prochaine fois, la semaine prochaine, ce week end, week end, rendez vous, rdv, prévu||e,
        à vendre, vends, acheter, achète, commander, commandé||e, on devrait, ce serait, serait, aimerait,
        aimerais, voudrait, voudrais, risque, attention à, gare, méfiez, sera, seront, aura, auront, mettra,
        mettrai, mettrons, après demain, pourvu, essayer, essaie, imagine, quelqu'un, quelqu'une, personne,
        faire, tondra, tondrons, rentrera, rentrerai, sortira, sortirai, j'aimerais, mettrez, vendu||e,
        on mettra, bientôt, on va, que ce soit, rentrez, sortez, mettez, mets, mets lui, mettez lui, enlevez,
        retirez, surveille, surveillez, vérifie, vérifiez, regarde si, regardez si, dis moi, dites moi,
        rentre le, sors le, à tondre, prévue, je rentrerai, je mettrai, on rentrera, on sortira, couvrez,
        pensez, prévenez, prévenez moi, appelez, rangez, attendez, je vais, au cas où, s'il faut,
        habituellement, vaut mieux, vaudrait mieux, on devra, je dois
    """,
    "habit": """
        toujours comme, d'habitude, souvent, parfois, toujours trop, chaque fois, déteste, détestent, adore,
        adorent, aime, aiment, préfère, en général, généralement, normalement, chaque jour, tous les jours,
        chaque hiver, rarement, comme un, comme une, plus que, mdr, lol, ptdr, haha, 😂, 🤣, connu pour,
        a tendance, ont tendance, rêvé, film, chanson, photo, photos, vidéo, trop belle, trop beau, est beau,
        est belle, trop mignon, trop mignonne, toujours dans, toujours quand, toujours après, toujours pendant,
        toujours sous, toujours avec, frileux, frileuse, jamais, ne transpire jamais, est frileuse, est frileux,
        sur facebook, sur insta, sur la photo, en photo, à la télé, comme d'hab
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
        ne pense pas, pense pas, sais pas, ne sais pas, pas sûr, pas sûre, aucune idée, doute, je doute,
        crois pas, ne crois pas, pas certain, pas certaine, possible que, je suppose, suis pas sûr,
        suis pas sûre, sais plus, se demande, me demande
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
        sang froid, eau froide, eau chaude, en chaleur, bien joué, bon travail, d'accord, en retard, en route,
        en forme, il fait froid, il fait chaud, fait un froid, froid de canard, coup de froid, quel froid,
        quelle chaleur, beau temps, fait froid, fait chaud, mains froides, mains gelées, café chaud,
        chocolat chaud, vin chaud, au fait, à peu près, tout à fait, en fait, c'est bien, c'est super,
        c'est parfait, fait beau, fait mauvais, bien fait pour, boisson chaude, à sécher, s'est échappé||e,
        échappé||e, s'est sauvé||e, soleil couchant, lever du soleil, coucher de soleil, il neige,
        bonhomme de neige, boule de neige, boules de neige, père noël, joyeux noël, sapin de noël, belle étoile,
        étoile filante, à la belle étoile, froid de loup, pied mouillé, pieds mouillés, un froid de,
        sac poubelle, drap de lit, bâche, imper de la voiture, mon imper, mon manteau, couverture du livre,
        couverture du magazine, plaid du canapé
    """,
    "i": """
        je, j', nous, tu, vous, moi, toi, mon, ma, mes, ton, ta, tes, notre, nos, votre, vos, suis, sommes, ai,
        me, te, gens, fille|s, garçon|s, enfant|s, vétérinaire, véto, maréchal, cavalière, cavalier,
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
        mon cheval, ma jument, mon poney, ma ponette, mon hongre, mon âne, mon loulou, le mien, la mienne,
        ma pouliche
    """,
    "it": """
        ça, cela, ce, c', ceci, je l'ai enlevé||e, je l'ai retiré||e, je l'ai ôté||e, je l'ai viré||e,
        on l'a enlevé||e, on l'a retiré||e, on l'a ôté||e, l'ai enlevé||e, l'ai retiré||e, je lui ai enlevé||e,
        je lui ai retiré||e
    """,
    "article": "le, la, les, l', un, une, des, du, au, aux, ce, cette, ces, cet, autre",
    "of": "de, du, d', des, pour, à, au, aux",
    "and": "et, &, +, plus, avec, puis",
    "but": """
        mais, donc, car, parce que, parce qu', du coup, alors, par contre, en revanche, et puis, alors que,
        alors qu', puisque, or, cependant, et du coup
    """,
    "too": """
        aussi, pareil, de même, idem, non plus, pareil pour, idem pour, également, même chose pour, même chose
    """,
    "helper": "a, ai, as, ont, avons, avez, est, sont, été, suis, vient d'être, bien",
    "is": """
        est, sont, a, ont, semble, semblent, paraît, paraissent, a l'air, ont l'air, reste, est rentré||e,
        est arrivé||e, arrive, revient, revenu||e, est revenu||e, être, avoir, eu, été, a été, ont été,
        est toujours, s'est mis à, trouvé||e, j'ai trouvé, retrouvé||e, s'est, se, est encore, a encore,
        ont encore, est en train de, l'air, rentre, retrouve, se met à, s'est mise à, c'est, c'
    """,
    "link": """
        déjà, encore, toujours, aussi, très, vraiment, bien, tout, toute, tous, toutes, maintenant, ici, là,
        là bas, de, à, en, dans, sur, avec, au, du, les deux, tous les deux, toutes les deux, juste, quand même,
        enfin, un, une, le, la, les, ce, ça, y, dessous, dessus, à nouveau, de nouveau, complètement,
        visiblement, totalement, oui, ouais, si, ben, bah, heureusement, malheureusement, apparemment,
        clairement, pauvre, vite, toujours pas, plein, plein de, même, surtout, franchement, chacun, chacune,
        ensemble, bref, peu, qu', que, qui, est, en train de, soudain, partout, on, ont, signes de, se, s', n',
        t, même pas, l', c', ci, sous, quelques, pas mieux, n'est pas mieux, beaucoup, bcp, un peu trop,
        elle aussi, lui aussi, drôlement, là dessous, du coup, quoi, la pauvre, le pauvre, pauvre bête, hélas,
        de partout, comme tout, comme d'hab, ma foi, en tout cas, prend l'eau, fuit, essoufflé||e, seulement,
        uniquement, simplement
    """,
    "time": """
        maintenant, aujourd'hui, ce soir, ce matin, cet après midi, cette nuit, en ce moment, là, tout de suite,
        à midi, toute la nuit, toute la journée, depuis hier soir, depuis ce matin, tôt, à l'instant,
        il y a une heure, il y a un moment, il y a cinq minutes, pour la nuit, matin, soir, midi, depuis hier,
        hier soir, depuis cette nuit, h, heure, heures, minutes, la nuit, au petit matin, à l'arrivée,
        en arrivant, ce midi, pour le moment, pour l'instant, à la ronde, il y a peu, avec ce froid,
        avec cette pluie, avec ce vent, avec la pluie, sous la pluie, à cause de la pluie, à cause du vent,
        avec le vent, avec le froid, au soleil, avec ce soleil, avec la chaleur, avec cette chaleur,
        depuis midi, tout à l'heure, il y a une demi heure, ce week end, tour du soir, tour du matin,
        ronde du soir, ronde du matin, au tour du soir, au tour du matin, à mon arrivée,
        quand je suis arrivé||e, pendant la ronde, à la ronde du soir, à la ronde du matin, à la distribution
    """,
    "hour": "à, vers, depuis, de, avant, après, dès, jusqu'à",
    "polite": """
        merci, merci beaucoup, bonjour, bonsoir, salut, coucou, bonne nuit, bonne journée, bonne soirée, oui,
        ok, ouais, bon, bah, ben, euh, désolé||e, pardon, haybell, bot, oh, ah, info, attention, petite info,
        au fait, les gars, les filles, tout le monde, à tous, l'équipe, bisous, pauvre, pauvrette,
        pauvre petit||e, le pauvre, la pauvre, petit||e, mon dieu, zut, mince, note, alors, hello,
        salut tout le monde, bonjour à tous, bonjour tout le monde, re, coucou tout le monde, du nouveau,
        les amis, brrr, bises, pour info, tour fait, hey, bonjour les gens, salut à tous, bonsoir à tous,
        petit point, point du matin, point du soir, petit message, bref, heu, donc, voilà, stp, svp, pour infos,
        tour du soir, tour du matin, ronde du soir, ronde du matin
    """,
    "body": """
        oreilles, oreille, dos, encolure, épaule, épaules, poitrail, ventre, flanc, flancs, corps, garrot, robe,
        poil, peau, croupe, coudes, coude, reins, derrière les coudes, derrière le coude, derrière les oreilles,
        cou, passage de sangle, cuisses, côtes, fesses, derrière, arrière main, cuisse, ars, jambes, membres,
        sous la sangle, bas du dos, base de la queue, queue
    """,
    "under": "sous, dessous, dans, avec, en dessous de",
    "ask why": """
        pourquoi, pour quelle raison, comment ça se fait, explique, explique moi, pourquoi pas,
        comment se fait il, pk, pq
    """,
    "ask today": """
        c'est quoi le plan, quel est le plan, le plan, plan, plan du jour, plan de ce soir, qu'est ce qu'on met,
        qu'est ce qu'on leur met, on met quoi, quelles couvertures, quelle couverture, couvertures du jour,
        que portent ils, qu'est ce qu'ils portent, aujourd'hui, quoi mettre, qu'est ce que je mets,
        je mets quoi, montre le plan, on leur met quoi, qui porte quoi, que mettre, programme du jour,
        le programme, plan pour ce soir, c'est quoi le programme, quel plan, quel est le programme,
        quelles couvertures ce soir, que met on, le plan du jour, redonne le plan, on met quoi ce soir, liste,
        la liste, liste du jour, la liste du jour, liste de ce soir, la liste de ce soir, liste stp,
        la liste stp, donne la liste, montre la liste, redonne la liste, liste des couvertures, qui met quoi,
        c'est quoi la liste, envoie la liste, que doivent ils porter, tenues du jour, tenues de ce soir
    """,
    "ask left": """
        qui reste, qui reste t il, il reste qui, reste qui, qui n'est pas fait, qui n'est pas encore fait,
        qui reste à faire, que reste t il, qu'est ce qu'il reste, qu'est ce qui reste, il en reste combien,
        combien il en reste, il reste quoi, tous faits, tout le monde est fait, tout est fait, qui manque,
        il manque qui, reste qui à faire, il reste qui à faire, quels chevaux restent, quels chevaux reste t il,
        il reste quelqu'un, qui est ce qui reste, qui est ce qu'il reste, qui doit encore être fait,
        il reste combien de chevaux, combien en reste t il, qu'est ce qu'il reste à faire,
        il reste quoi à faire, ils sont tous faits, qui n'a pas été fait, il reste des chevaux,
        il reste des chevaux à faire, reste t il des chevaux à faire, il en reste, il en reste à faire,
        il reste combien à faire, combien à faire encore, qui est pas fait, qui n'est pas fait encore,
        qui reste encore, qui reste encore à faire, lesquels restent, lesquels ne sont pas faits,
        on a fait tout le monde, j'ai oublié qui, qui ai je oublié, qui n'est pas couvert, reste t il quelqu'un,
        il y a encore qui à faire, encore qui à faire
    """,
    "ask drying": """
        qu'est ce qui sèche, quoi de mouillé, qu'est ce qui est mouillé, qu'est ce qui est en train de sécher,
        quelles couvertures sèchent, quelles couvertures sont mouillées, qu'est ce qui est trempé, quoi sèche,
        quelque chose de mouillé, qu'est ce qui est encore mouillé, il y a quoi qui sèche,
        qu'est ce qui est sec, y a quoi qui sèche, quelles couvertures sont sèches,
        quelles couvertures sont encore mouillées, il y a quoi à sécher, il reste quoi à sécher,
        qu'est ce qui n'est pas sec, séchage, y a quoi de mouillé, qu'est ce qu'on a qui sèche, quoi au lavage,
        qu'est ce qui est au lavage, quelles couvertures sont au lavage, quelles couvertures sont humides,
        qu'est ce qui est humide, qu'est ce qui n'est pas encore sec, il y a des couvertures mouillées,
        des couvertures mouillées, quelque chose qui sèche, quels impers sont mouillés,
        quelles sous couvertures sont mouillées, quoi de sec, qu'est ce qui pend, quoi dans la sellerie
    """,
    "ask state": """
        comment va, comment vont, comment est, comment se porte, état de, état, où en est, des nouvelles de,
        comment ça va pour, nouvelles de, comment elle va, comment il va, ça va comment, comment se sent,
        quoi de neuf pour, infos sur, parle moi de, quelles nouvelles de, statut, comment a été, va comment,
        il va comment, elle va comment, vont comment, quoi de neuf avec, ça va comment pour, et comment va,
        où en est on avec, état du, état des
    """,
    "ask forecast": """
        quelle météo, météo, la météo, quel temps, quel temps fait il, quel temps va t il faire,
        va t il pleuvoir, il va faire quel temps, prévisions, les prévisions, quelle température, va t il geler,
        combien de degrés, qu'annonce la météo, ils annoncent quoi, qu'est ce qui arrive ce soir,
        la météo dit quoi, quelle est la météo, il va pleuvoir ce soir, quel temps ce soir, il va geler ce soir,
        il va geler cette nuit, va t il geler cette nuit, il va faire combien, il va faire combien cette nuit,
        il fera combien, il fera combien cette nuit, quelles prévisions, quel temps il va faire,
        quel temps il fera, qu'est ce qu'ils annoncent, va t il neiger, il va neiger,
        va t il pleuvoir cette nuit, quelle température cette nuit, c'est quoi la météo,
        c'est quoi les prévisions, il va faire froid cette nuit, il va faire froid ce soir, que dit la météo,
        quel vent, il y aura du vent, combien il va faire, ça donne quoi la météo, la météo ça donne quoi,
        météo ce soir, météo cette nuit, météo demain, la météo de cette nuit, la météo de demain,
        quel temps cette nuit, quel temps demain, quelle température ce soir, combien cette nuit,
        il fait combien cette nuit, ça descend à combien, ça descend à combien cette nuit, va t il faire froid,
        fera t il froid, gèlera t il, pleuvra t il, qu'est ce qui arrive cette nuit, ça souffle fort cette nuit,
        du vent cette nuit, combien de vent, prévisions pour cette nuit, prévisions pour demain, prévision,
        ça va donner quoi cette nuit
    """,
    "ask forecast marked": """
        il va pleuvoir, il va geler, il va faire froid, il va neiger, il va pleuvoir cette nuit,
        il va geler cette nuit, il va y avoir du vent, ça va geler, ça va geler cette nuit, il pleut cette nuit,
        il gèle cette nuit, il pleuvra, il gèlera
    """,
    "ask help": """
        aide, que sais tu faire, que peux tu faire, comment ça marche, comment tu marches,
        qu'est ce que tu comprends, commandes, instructions, qu'est ce que tu sais faire,
        qu'est ce que tu peux faire, comment on t'utilise, mode d'emploi, que puis je te demander,
        qu'est ce que je peux te demander, tu sais faire quoi, tu comprends quoi, à l'aide, comment on fait,
        comment t'utiliser, que puis je écrire, qu'est ce que je peux écrire, qu'est ce que je peux te dire,
        que puis je dire, comment tu fonctionnes, comment signaler
    """,
    "ask wearing": """
        porte, portent, met, mettre, met on, on met, je mets, est en quoi, mets, lui mettre, on lui met,
        je lui mets, doit porter, a sur le dos, en quoi est, pour, portera, faut mettre, lui met on,
        doit on mettre, va porter, dois je mettre, en quoi, tenue, tenues, habits, équipement, porter,
        sur le dos, couches, épaisseurs
    """,
    "ask tonight": """
        ce soir, aujourd'hui, cette nuit, ce matin, met, mettre, on met, je mets, doit porter, demain, portera,
        mets, on lui met, je lui mets, faut mettre, lui mettre, pour, va porter, met on, cet après midi,
        dois je mettre, doit on mettre, pour la nuit, lui met on
    """,
    "ask ready": """
        quand sera, sera, bientôt, prêt, prête, quand est ce que, quand, sera t il, sera t elle,
        combien de temps, déjà
    """,
    "sky": """
        temps, météo, prévisions, température, températures, pluie, pleuvoir, pleut, pleuvra, neige, neiger,
        neigera, gel, geler, gèle, gèlera, givre, glace, vent, rafales, tempête, orage, froid, chaud, degrés,
        minimale, zéro, grêle, verglas
    """,
    "ahead": """
        ce soir, cette nuit, demain, plus tard, tout à l'heure, cet après midi, ce week end, le week end,
        la semaine prochaine, cette semaine, demain matin, demain soir, la nuit, dans la nuit, aujourd'hui,
        les prochains jours
    """,
    "a horse": """
        cheval, jument, hongre, poney, âne, ânesse, poulain, pouliche, alezan, alezane, un des chevaux
    """,
    "subject": "il, elle, ils, elles, je, j', on, jai, jlai, jlui, jle, g",
    "own": "la sienne, le sien, les siennes, les siens, la leur",
    "only": "juste, seulement, uniquement, rien que, seul|e",
    "toward": "à, au, pour, pr",
    "part of day": "matin, matinée, midi, soir, soirée, nuit, après-midi",
    "not behind": "pas, plus, pu, pantoute, pas du tout, plus du tout, pas non plus",
    "ears": "oreilles, oreille",
}

SHORT_FORMS = {
    "jai": "j'ai", "jlai": "je l'ai", "jlui": "je lui", "jl": "je l'", "jviens": "je viens",
    "jvais": "je vais", "jvois": "je vois", "jsuis": "je suis", "chui": "je suis", "jpense": "je pense",
    "jcrois": "je crois", "cest": "c'est", "c": "c'est", "g": "j'ai", "ya": "il y a", "yen": "il y en",
    "pr": "pour", "ds": "dans", "tt": "tout", "ttes": "toutes", "tte": "toute", "ts": "tous", "jms": "jamais",
    "tjs": "toujours", "tjrs": "toujours", "pk": "pourquoi", "pq": "pourquoi", "prq": "pourquoi",
    "qd": "quand", "bcp": "beaucoup", "ki": "qui", "ke": "que", "k": "que", "q": "que", "mtn": "maintenant",
    "auj": "aujourd'hui", "ajd": "aujourd'hui", "pcq": "parce que", "kel": "quel", "kelle": "quelle",
    "koi": "quoi", "d": "de", "ss": "sous", "av": "avec", "avc": "avec", "ap": "après", "tlm": "tout le monde",
    "slmt": "seulement", "qqn": "quelqu'un", "qqun": "quelqu'un", "nn": "non", "nan": "non", "ouais": "oui",
    "vs": "vous", "ns": "nous", "cc": "coucou", "tkt": "t'inquiète", "pdt": "pendant", "dl": "de la",
    "pa": "pas", "pu": "plus", "ete": "été", "etait": "était", "qq": "quelque", "msg": "message",
    "stp": "s'il te plaît", "svp": "s'il vous plaît",
}  # fmt: skip

ENDINGS: tuple[tuple[str, str], ...] = ()
