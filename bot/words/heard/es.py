"""Spanish, as barns in Spain and the Americas speak it."""

PHRASES = {
    "sign sweating": """
        sudar, sudad|o|a|os|as, sudando, suda, sudan, sudor, sudoros|o|a|os|as, con sudor,
        bañad|o|a|os|as en sudor, chorreando de sudor, chorreando sudor, empapad|o|a|os|as de sudor,
        empapad|o|a|os|as en sudor, mojad|o|a|os|as de sudor, sudadit|o|a, sudó, transpirad|o|a|os|as,
        transpirando, transpira, transpiran, sweaty, sweating, sudadísim|o|a, sudaba, ha sudado, sudada entera,
        con marcas de sudor, marcas de sudor, rastros de sudor, empapado en su sudor, hecho un mar de sudor,
        bañada de sudor, sudor bajo la manta, sudor debajo de la manta, sudadita entera, chorrea sudor,
        transpiró, sudaron, sudaban, han sudado, había sudado, habían sudado, estaba sudando, sudadit|o|a|os|as,
        sudadísim|o|a|os|as, sudadot|e|a, resudad|o|a|os|as, resudando, trasudando, suda a chorros,
        suda a mares, sudando a chorros, sudando a mares, suda la gota gorda, sudando la gota gorda,
        sudando tinta, sudando como un pollo, suda como un pollo, está como un pollo, hech|o|a un pollo,
        sudando como un cochino, sudando como un cerdo, hech|o|a una sopa de sudor, en un mar de sudor,
        chorrea de sudor, chorreand|o|a de sudor, goteando sudor, gotea sudor, gotas de sudor,
        cubiert|o|a|os|as de sudor, llen|o|a|os|as de sudor, perlad|o|a de sudor, empapad|o|a por el sudor,
        mojad|o|a|os|as por el sudor, mojadit|o|a de sudor, húmed|o|a|os|as de sudor, humedit|o|a de sudor,
        pegajos|o|a de sudor, calad|o|a|os|as de sudor, caladit|o|a de sudor, chopad|o|a de sudor,
        ensopad|o|a|os|as de sudor, ensopad|o|a en sudor, bañad|o|a|os|as de sudor, bañadit|o|a en sudor,
        brillante de sudor, blanc|o|a de sudor, blanc|o|a de espuma, espuma de sudor, llen|o|a de espuma,
        cubiert|o|a de espuma, espumeando, espumaraj|o|os, espuma en el pecho, espuma en el cuello,
        espuma entre las patas, cerco de sudor, cercos de sudor, con cercos de sudor, mancha de sudor,
        manchas de sudor, con manchas de sudor, marca de sudor, restos de sudor, sal del sudor, sudor seco,
        sudor reciente, sudor frío, con sudores, sudores, transpirad|o|a de más, transpirad|o|a entera,
        transpiraba, transpiraban, transpiraron, ha transpirado, han transpirado, traspira, traspiran,
        traspirando, traspirad|o|a|os|as, transpiradit|o|a, transpiración, suda por todos lados,
        suda por todas partes, rompió a sudar, ha roto a sudar, se ha puesto a sudar, se puso a sudar,
        empezó a sudar, empieza a sudar, ha empezado a sudar, está empezando a sudar, no para de sudar,
        no deja de sudar, sigue sudando, siguen sudando, sudand|o|a la pobre, sudadit|o|a perdid|o|a,
        sudad|o|a perdid|o|a, sudad|o|a hasta las orejas, pelo pegado de sudor, pelo pegado por el sudor,
        con el pelo pegado del sudor, se ha hartado de sudar, se hartó de sudar, sudorosit|o|a, acaba de sudar,
        sopa de sudor, está hecha agua de sudor, suando, sudandin|o|a
    """,
    "sign hot": """
        tiene calor, tienen calor, tiene mucho calor, tienen mucho calor, tiene demasiado calor, con calor,
        con mucho calor, pasando calor, pasa calor, acalorad|o|a|os|as, sofocad|o|a|os|as, demasiado caliente,
        muy caliente, tenía calor, tiene bastante calor, está pasando calor, tiene un poco de calor,
        tienen demasiado calor, asad|o|a|os|as de calor, asad|o|a|os|as, asándose, cociéndose, cocid|o|a,
        achicharrad|o|a, muert|o|a|os|as de calor, se muere de calor, se asa, ardiendo, sobrecalentad|o|a,
        demasiado abrigad|o|a, pasa mucho calor, pasó calor, un calor tremendo, tenían calor, tuvo calor,
        ha tenido calor, han tenido calor, ha pasado calor, ha pasado mucho calor, pasaba calor, pasan calor,
        está pasando mucho calor, muchísimo calor, tiene muchísimo calor, tiene un calor horrible,
        tiene un calor que se muere, con un calor que se muere, tiene calorcito, tiene algo de calor,
        tiene calor de más, con calor de más, con bastante calor, con muchísimo calor, con un poco de calor,
        muertit|o|a de calor, muriéndose de calor, se muere del calor, se está muriendo de calor,
        se están muriendo de calor, ahogad|o|a de calor, se ahoga de calor, ahogándose de calor,
        asfixiad|o|a de calor, se asfixia de calor, asfixiad|o|a|os|as, asfixiándose, agobiad|o|a de calor,
        agobiad|o|a por el calor, agobiad|o|a del calor, sofocándose, se sofoca, se está asando,
        se están asando, se están cociendo, se está cociendo, se cuece, se cuecen, se asan, asad|o|a viv|o|a,
        asadit|o|a, cocid|o|a|os|as, cocidit|o|a, cocid|o|a viv|o|a, cocinándose, se está cocinando, se cocina,
        achicharrad|o|a|os|as, achicharrándose, se achicharra, se está achicharrando, sancochad|o|a|os|as,
        sancochándose, se está sancochando, hirviend|o|a por debajo, torrad|o|a, torrándose, abochornad|o|a,
        acaloradit|o|a, acaloradísim|o|a, acalorándose, se acalora, recalentad|o|a|os|as, se recalienta,
        recalentándose, sobrecalentad|o|a|os|as, calentón, con un calentón, está que arde, están que arden,
        ardiend|o|a, que quema, está que quema, quema por debajo, caliente de más, demasiado calientit|o|a,
        demasiado calentit|o|a, excesivamente caliente, demasiado calientes, muy calientes,
        calentísim|o|a|os|as, calientísim|o|a|os|as, recaliente|s, caliente en exceso, bien caliente de más,
        caliente como un horno, hech|o|a un horno, está como un horno, hech|o|a una estufa,
        está como una estufa, como una sauna, en una sauna, hech|o|a una sauna, como en una sauna,
        debajo de la manta es un horno, pasad|o|a de calor, pasadit|o|a de calor, demasiado tapad|o|a,
        demasiado abrigad|o|a|os|as, muy abrigad|o|a de más, con demasiada manta, le sobra manta,
        le sobra la manta, le sobra ropa, le sobra abrigo, le sobra el forro, demasiada manta,
        lleva demasiada manta, lleva demasiado abrigo, mucho calor bajo la manta, mucho calor debajo,
        mucho calor debajo de la manta, caliente detrás de la oreja, con las orejas ardiendo, orejas ardiendo,
        resoplando de calor, jadeando de calor, jadea de calor, calor excesivo, exceso de calor,
        tiene un sofocón, con un sofocón, acalorao
    """,
    "sign shivering": """
        temblar, tiritar, tiembla, tiemblan, temblando, temblor, temblores, tirita, tiritan, tiritando,
        tiembla de frío, temblando de frío, tiritando de frío, tiritona, temblaba, tiritaba,
        tembloros|o|a|os|as, con escalofríos, escalofríos, tembló, shivering, tembleque, con tembleque,
        con tiritona, con temblores, tiritaba de frío, temblaba de frío, le tiembla todo, tiembla entera,
        tiembla entero, temblando como una hoja, tiene temblores, tiene escalofríos, está con temblores,
        titirita, titiritan, titiritando, titiritaba, temblaron, temblaban, tiritaron, tiritaban, tiritó,
        ha temblado, está temblando, están temblando, estaba temblando, estaba tiritando, temblandito,
        temblandico, temblequeando, temblequea, tembleques, con tembleques, le ha dado la tiritona,
        le ha dado una tiritona, le dio una tiritona, le dio la tembladera, tembladera, con tembladera,
        temblor de frío, temblores de frío, tiembla de arriba abajo, temblando de arriba abajo,
        tiembla todit|o|a, temblando todit|o|a, temblando enter|o|a, tiembla como una hoja,
        tiembla como un flan, temblando como un flan, tiembla que da pena, temblando que da pena, tiembla mucho,
        tiembla un poco, temblorcit|o|os, tiriteras, tiritera, con tiritera, tiritones, da tiritones,
        le tiemblan las patas, le tiemblan los flancos, le tiembla la piel, le tiembla el cuerpo,
        le tiembla el lomo, le tiemblan los músculos, le castañetean los dientes, castañeteando, castañetea,
        dando diente con diente, da diente con diente, dentellando, no para de temblar, no deja de temblar,
        no para de tiritar, no deja de tiritar, sigue temblando, siguen temblando, sigue tiritando,
        siguen tiritando, empieza a temblar, empezó a temblar, ha empezado a temblar, empieza a tiritar,
        ha empezado a tiritar, empezó a tiritar, se puso a temblar, se ha puesto a temblar, se puso a tiritar,
        está temblona, temblón, temblona, temblorosit|o|a, estremeciéndose, se estremece, con estremecimientos,
        tembland, temblnado, tenblando, tiembl, tritando, dando temblores, da temblores, le dan temblores,
        le dan escalofríos, tiene tembleque, tiene tiritona, con la tiritona, con el tembleque, temblique,
        temblando del frío, tiritando del frío, tiembla del frío, tiritando la pobre, escalofriad|o|a,
        le está temblando todo, temblequeante, chuchos de frío
    """,
    "sign cold": """
        tiene frío, tienen frío, tiene mucho frío, tienen mucho frío, tiene bastante frío, con frío,
        con mucho frío, pasando frío, pasa frío, tenía frío, tiene algo de frío, tiene un poco de frío,
        un poco de frío, aterid|o|a|os|as, muert|o|a|os|as de frío, congelad|o|a|os|as, tiene las orejas frías,
        orejas frías, orejas heladas, helad|o|a|os|as de frío, frí|o|a detrás del codo, frí|o|a al tacto,
        poco abrigad|o|a, pelad|o|a de frío, se muere de frío, con las orejas heladas, con las orejas frías,
        las orejas heladas, las orejas frías, pasó frío, tiene las orejas heladas, destemplad|o|a,
        fresc|o|a detrás del codo, ties|o|a de frío, ties|os|as de frío, entumecid|o|a de frío, tuvo frío,
        tenían frío, ha tenido frío, han tenido frío, ha pasado frío, han pasado frío, pasaba frío, pasan frío,
        pasaron frío, pasó mucho frío, ha pasado mucho frío, está pasando frío, están pasando frío,
        está pasando mucho frío, muchísimo frío, tiene muchísimo frío, con muchísimo frío, con bastante frío,
        con algo de frío, con un poco de frío, con un frío que se muere, tiene un frío que se muere,
        tiene un frío tremendo, tiene demasiado frío, tiene friíto, tiene fresquito, tiene frillo,
        tiene friecito, muertit|o|a|os|as de frío, muriéndose de frío, se está muriendo de frío,
        se están muriendo de frío, se mueren de frío, muert|o|a|os|as del frío, se muere del frío,
        heladit|o|a|os|as de frío, helad|o|a hasta los huesos, heladit|o|a, helándose, se está helando,
        se están helando, se hiela, se hielan, se ha quedado helad|o|a, se quedó helad|o|a,
        se ha quedado frí|o|a, se quedó frí|o|a, se me ha quedado frí|o|a, se está quedando frí|o|a,
        quedándose frí|o|a, congeladit|o|a, congelándose, se está congelando, se congela, se congelan,
        se están congelando, se ha congelado, arrecid|o|a|os|as, arrecidit|o|a, pasmad|o|a de frío,
        encogid|o|a de frío, encogid|o|a por el frío, encogidit|o|a de frío, acurrucad|o|a de frío,
        aterecid|o|a, aterid|o|a|os|as de frío, ateridit|o|a, entelerid|o|a|os|as, enfriad|o|a|os|as,
        se ha enfriado, se está enfriando, se enfrió, destempladit|o|a, destemplad|o|a|os|as, con destemple,
        ties|o|a del frío, amoratad|o|a de frío, engarrotad|o|a de frío, engarrotad|o|a, agarrotad|o|a de frío,
        entumid|o|a, entumecid|o|a|os|as, garrotillo de frío, orejas como témpanos, orejas como el hielo,
        orejas como hielo, como un témpano, hech|o|a un témpano, como un témpano de hielo, está como un témpano,
        como el hielo, como un cubito, hech|o|a un cubito, como un carámbano, hech|o|a un carámbano,
        como un polo, hech|o|a un polo, como una paleta, hech|o|a una paleta, orejas congeladas,
        orejas muy frías, orejas bien frías, orejas fresquitas, las orejas como témpanos,
        las orejas como el hielo, las orejas muy frías, las orejas congeladas, orejitas frías, orejitas heladas,
        las orejitas heladas, las orejitas frías, con las orejitas heladas, con las orejitas frías,
        con las orejas como témpanos, tiene las orejitas heladas, tiene las orejitas frías, orejas gélidas,
        base de las orejas fría, la base de las orejas fría, base de la oreja fría, frí|o|a detrás de los codos,
        frí|o|a en la cruz, frí|o|a por debajo, frí|o|a bajo la manta, frí|o|a debajo de la manta,
        helad|o|a bajo la manta, helad|o|a debajo de la manta, helad|o|a por debajo, helad|o|a al tacto,
        frí|o|a como un témpano, frí|o|a como el hielo, frí|o|a como un muerto, frí|o|a de verdad, el lomo frío,
        lomo helado, el lomo helado, los riñones fríos, riñones fríos, riñones helados, pecho helado,
        el pecho helado, el pecho frío, los flancos fríos, los ijares fríos, la grupa fría, la grupa helada,
        las costillas frías, el cuello frío, la piel fría, la piel helada, piel fría, poca manta,
        con poca manta, lleva poca manta, le falta manta, le falta abrigo, le falta ropa, le falta una capa,
        poco tapad|o|a, demasiado poco abrigad|o|a, falt|o|a de abrigo, desabrigad|o|a|os|as de más,
        se me enfrió, pela de frío, se pela de frío, peladit|o|a de frío, friolenta perdida,
        con el pelo erizado, pelo erizado de frío, con el pelo de punta, pelo de punta de frío,
        con carne de gallina, con la cola metida del frío, cola metida de frío, apretad|o|a de frío,
        emparamad|o|a de frío, friíto de más, le ha cogido el frío, ha cogido frío, cogió frío, ha pillado frío,
        pilló frío, agarró frío, se agarró un frío, entrad|o|a en frío, le ha entrado frío, le entró frío,
        fresc|o|a de más, frí|o|a de más, demasiado frí|o|a, demasiado fresc|o|a
    """,
    "sign comfortable": """
        cómod|o|a|os|as, a gusto, calentit|o|a|os|as, calentit|o|a|os|as y sec|o|a|os|as,
        sec|o|a|os|as y calentit|o|a|os|as, confortable|s, en su punto, temperatura perfecta, tan a gusto,
        está a gusto, bien de temperatura, calient|e|es y sec|o|a|os|as, calentit|o|a y a gusto,
        tan ric|o|a|os|as, ni frío ni calor, ni calor ni frío, sin frío ni calor, entró en calor,
        ha entrado en calor, ya entró en calor, ya ha entrado en calor, entrad|o|a en calor, en calor,
        sec|o|a|os|as y calient|e|es, sequit|o|a y calentit|o|a, buena temperatura, temperatura correcta,
        bien abrigad|o|a, sin sudor, sin temblores, sin sudar, ni gota de sudor, sin tiritar, sin temblar,
        sin novedad con, sin novedad en, sin problemas con, se le pasó el frío, ya no pasa frío, ya se calentó,
        se ha calentado, se calentó, de temperatura bien, calentit|o|a y bien, comodísim|o|a|os|as,
        comodit|o|a|os|as, comodit|o|a y sequit|o|a, cómod|o|a y sec|o|a, más a gusto, muy a gusto, a gustito,
        a gustísimo, a gustico, de lo más a gusto, encantad|o|a de la vida, tan calentit|o|a|os|as,
        calentit|o|a|os|as y cómod|o|a|os|as, bien calentit|o|a|os|as, calentiñ|o|a, calentic|o|a,
        calientit|o|a|os|as, bien calientit|o|a|os|as, calientit|o|a|os|as y sec|o|a|os|as,
        sec|o|a|os|as y calientit|o|a|os|as, calientit|o|a y sequit|o|a, sequit|o|a y calientit|o|a,
        calentit|o|a y sequit|o|a, sequit|o|a|os|as y a gusto, sec|o|a|os|as y a gusto,
        sec|o|a|os|as y tan a gusto, sec|o|a|os|as y bien, sec|o|a|os|as y cómod|o|a|os|as, sequit|o|a y bien,
        sec|o|a|os|as y tranquil|o|a|os|as, sec|o|a|os|as y templad|o|a|os|as,
        templad|o|a|os|as y sec|o|a|os|as, sequit|o|a y templadit|o|a, templadit|o|a y sequit|o|a,
        templadit|o|a y a gusto, a gusto y sec|o|a|os|as, calentit|o|a por debajo, calentit|o|a debajo,
        caliente y sequit|o|a, calient|e|es y a gusto, calor justo, con el calor justo, ni sudad|o|a ni frí|o|a,
        ni frí|o|a ni sudad|o|a, ni frí|o|a ni caliente, ni caliente ni frí|o|a, ni suda ni tiembla,
        ni tiembla ni suda, ni suda ni tirita, ni suda ni nada, ni tiembla ni nada, ni pasa frío ni calor,
        ni tiene frío ni calor, no tiene ni frío ni calor, ni frío ni sudor, ni sudor ni frío,
        ni sudores ni temblores, ni sudor ni temblores, ni helad|o|a ni sudad|o|a, ni mojad|o|a ni frí|o|a,
        ni frí|o|a ni mojad|o|a, ni sudad|o|a ni helad|o|a, ni sudad|o|a ni nada, ni frí|o|a ni nada,
        ni una gota de sudor, sin una gota de sudor, sin gota de sudor, sin sudor ninguno, sin sudor alguno,
        sin rastro de sudor, ni rastro de sudor, sin temblores ni nada, sin pasar frío, sin pasar calor,
        sin frío, sin calor, ya no tiembla nada, ya no suda nada, temperatura ideal, temperatura buena,
        temperatura bien, temperatura normal, de temperatura perfect|o|a, de temperatura genial,
        de temperatura estupend|o|a, perfect|o|a de temperatura, genial de temperatura, ideal de temperatura,
        correct|o|a de temperatura, a la temperatura perfecta, a buena temperatura, a temperatura perfecta,
        con buena temperatura, bien de calor, bien de calorcito, va bien de manta, van bien de manta,
        va bien de mantas, bien de manta, bien de ropa, bien de abrigo, va bien de abrigo, con calorcito,
        calorcito rico, tiene calorcito rico, orejas calentitas, orejas calientes, las orejas calientes,
        las orejas calentitas, las orejas calientitas, orejas templadas, orejas tibias, las orejas templadas,
        las orejas tibias, con las orejas calentitas, con las orejas templadas, con las orejas calientes,
        tiene las orejas calentitas, tiene las orejas calientes, tiene las orejas templadas, orejitas calientes,
        orejitas calentitas, las orejitas calentitas, se le ha pasado el frío, se le quitó el frío,
        se le ha quitado el frío, se le pasó la tiritona, se le ha pasado la tiritona, se le pasó el tembleque,
        se le ha pasado el tembleque, se le pasaron los temblores, se le han pasado los temblores,
        se le quitaron los temblores, se le quitó el temblor, se le pasó el temblor, se le fue el frío,
        se le fueron los temblores, se le pasó el calor, se le ha pasado el calor, se le pasó el sofoco,
        ya entraron en calor, han entrado en calor, va entrando en calor, ya va entrando en calor,
        está entrando en calor, entrando en calor, ha recuperado el calor, ha recuperado la temperatura,
        recuperó la temperatura, ya ha cogido calor, ha cogido calor, cogió calor, ya cogió calor, agarró calor,
        ya agarró calorcito, se calentaron, se han calentado, ya se ha calentado, se me ha calentado,
        ya se ha secado y está a gusto, en la gloria, está en la gloria, en la gloria bendita,
        como en la gloria, más feliz que una perdiz, feliz como una perdiz, abrigadit|o|a|os|as,
        bien abrigadit|o|a|os|as, bien abrigad|o|a|os|as, abrigadit|o|a y sec|o|a, bien tapadit|o|a|os|as,
        bien tapad|o|a|os|as, tapadit|o|a y calentit|o|a, está estupend|o|a de temperatura, en su salsa,
        ric|o|a y calentit|o|a, tan pancho, tan panch|o|a|os|as, tan tranquil|o|a|os|as, tan campante|s,
        tan feliz, tan felices, tan content|o|a|os|as, perfecto por debajo, bien por debajo, bien debajo,
        bien bajo la manta, bien debajo de la manta, muy bien por debajo, perfect|o|a debajo de la manta,
        perfect|o|a bajo la manta, sec|o|a debajo de la manta, sec|o|a bajo la manta, sec|o|a por debajo,
        sequit|o|a por debajo, sequit|o|a debajo, sec|o|a|os|as por debajo de la manta
    """,
    "sign rubbed": """
        rozad|o|a|os|as, rozadura, rozaduras, una rozadura, roce, roces, rozando, roza,
        pelad|o|a|os|as por la manta, le roza, le rozan, rozón, despellejad|o|a, escoriad|o|a, escoriación,
        matadura, mataduras, roces en, con rozaduras, tiene una rozadura, tiene rozaduras,
        rozad|o|a por la manta, herida de la manta, herida por la manta, pelo caído, ha perdido pelo,
        perdió pelo, pierde pelo, calva en, una calva, calvas, en carne viva, marcas de la manta,
        le ha hecho una rozadura, le ha hecho rozadura, rozaduras de la manta, llaga, llagas, raspón, raspones,
        raspad|o|a|os|as, rozadit|o|a, rozadurilla, rozadurita, rocecit|o|os, rozamiento, rozamientos,
        tiene un roce, tiene roces, con un roce, con roces, le ha salido una rozadura, le salió una rozadura,
        le están saliendo rozaduras, le han salido rozaduras, le ha salido un roce, le está haciendo rozadura,
        le está haciendo rozaduras, le hace rozadura, le hace rozaduras, le hizo una rozadura, le hizo rozadura,
        le hicieron una rozadura, le ha hecho un roce, le ha hecho una herida, le está haciendo herida,
        le hace herida, le hizo herida, le ha rozado, le rozó, le está rozando, le están rozando, le rozaba,
        rozan, rozaron, ha rozado, han rozado, le lastima, le está lastimando, le ha lastimado, le lastimó,
        lastimad|o|a por la manta, lastimad|o|a de la manta, lastimad|o|a de la cobija, le raspa,
        le está raspando, raspadit|o|a, raspadura, raspaduras, tiene una raspadura, raspándole,
        le aprieta la manta, despellejad|o|a|os|as, le ha despellejado, despellejándole, se ha despellejado,
        peladit|o|a|os|as de la manta, pelad|o|a|os|as de la manta, pelad|o|a del roce, pelad|o|a del pecho,
        pelad|o|a en el pecho, pelad|o|a de los hombros, pelad|o|a en los hombros, pelad|o|a el hombro,
        hombros pelados, los hombros pelados, hombro pelado, el hombro pelado, pecho pelado, el pecho pelado,
        cruz pelada, la cruz pelada, la cruz en carne viva, hombros en carne viva, en carnes vivas,
        a carne viva, está en carne viva, sin pelo en los hombros, sin pelo en el pecho, sin pelo en la cruz,
        sin pelo en el hombro, calvita, calvas en, calva en el hombro, calvas en los hombros, calva en el pecho,
        le ha quitado el pelo, le está quitando el pelo, le come el pelo, le está comiendo el pelo,
        se le ha caído el pelo, se le está cayendo el pelo, se le cae el pelo de los hombros,
        se está quedando sin pelo, pelo rozado, pelo roto, pelo comido, pelo gastado, pelo desgastado,
        herida en la cruz, heridas en la cruz, herida en el hombro, heridas en los hombros, herida en el pecho,
        herida de roce, heridas de roce, herida de rozadura, heridas de la manta, heriditas, marca de la manta,
        marcas de roce, marca de roce, marcas de rozadura, marcas de la cobija, roces de la manta,
        roce de la manta, roces de manta, roce en el hombro, roce en la cruz, rozad|o|a|os|as de la manta,
        rozad|o|a de la cobija, rozaduras de manta, rozadura de la manta, rozadura de manta, escocid|o|a|os|as,
        escocedura, escoceduras, irritad|o|a por la manta, irritad|o|a del roce, irritad|o|a de la correa,
        irritación de la manta, piel irritada, excoriación, excoriaciones, escoriaciones, costra en el hombro,
        costra en la cruz, costras de la manta, levantada la piel, se le ha levantado la piel, mata en la cruz,
        cruz rozada, la cruz rozada, hombros rozados, los hombros rozados, hombro rozado, el hombro rozado,
        pecho rozado, el pecho rozado, llagad|o|a|os|as, llaguita, ulcerad|o|a, peladura, peladuras, mondad|o|a,
        rozandole, rosadura, rosaduras, refregad|o|a, refregón, quemadura de la correa, quemazón de la correa
    """,
    "sign unwell": """
        cólico, tiene cólico, cólicos, enferm|o|a|os|as, mal|o|a|os|as, malit|o|a|os|as, no come, no comen,
        no quiere comer, no ha comido, no comió, tose, tosen, tosiendo, tos, con tos, decaíd|o|a|os|as,
        apátic|o|a|os|as, tiene fiebre, fiebre, con fiebre, diarrea, tiene diarrea, no está bien,
        no se encuentra bien, se encuentra mal, está mal, pachuch|o|a|os|as, sin apetito, desganad|o|a|os|as,
        letárgic|o|a, indispuest|o|a, se siente mal, no anda bien, no está fin|o|a, triste y apagad|o|a,
        ha dejado la comida, se revuelca de dolor, con dolor, dolorid|o|a, no prueba bocado, no tiene apetito,
        inapetente|s, muy apagad|o|a, apagad|o|a, no quiso comer, no quiere su comida, le duele la panza,
        le duele la tripa, le duele la barriga, no come nada, no se acaba la comida, con cólico,
        está con cólico, tiene mocos, con mocos, mocos, moquea, echad|o|a y no se levanta, no se levanta,
        escarba, se mira los flancos, se mira la tripa, respira mal, respira fuerte, respira con dificultad,
        no toca el heno, no ha tocado el heno, no ha tocado la comida, no ha tocado el pienso, rar|o|a,
        no es ell|a, no es él mismo, con fiebre alta, febril, tiene infosura, infosura, débil, se tambalea,
        muy decaíd|o|a, muy triste, no quiere comer nada, no ha querido comer, ha dejado el pienso,
        dejó el pienso, no se encuentra nada bien, está fatal, fatal, no está nada bien, no se acabó,
        no se ha acabado, no se terminó, no se ha terminado, dejó la comida, no terminó su comida,
        no terminó el pienso, no acabó el pienso, cólico de arena, cólico de gases, con un cólico,
        principio de cólico, síntomas de cólico, pinta de cólico, tiene pinta de cólico, parece cólico,
        parece un cólico, amago de cólico, colicad|o|a, acolicad|o|a, está de cólico, le ha dado un cólico,
        le dio un cólico, le dio cólico, malic|o|a, malucho|s, maluch|o|a|os|as, pachuchill|o|a, pachuchit|o|a,
        enfermit|o|a|os|as, regulín, regulín regulán, está regular, está regulín, no anda fin|o|a,
        no está católic|o|a, no anda muy católic|o|a, no la veo bien, no lo veo bien, no los veo bien,
        no le veo bien, no la veo fina, no lo veo fino, la veo mal, lo veo mal, la veo mala, lo veo malo,
        la veo rara, lo veo raro, la veo triste, lo veo triste, la veo apagada, lo veo apagado, la veo decaída,
        lo veo decaído, la noto rara, lo noto raro, la noto mal, lo noto mal, la noto triste, lo noto triste,
        la noto apagada, lo noto apagado, no está como siempre, no es el de siempre, no es la de siempre,
        no parece ella, no parece él, no es él, no andan bien, no se ve bien, no se ve nada bien,
        no la veo nada bien, no lo veo nada bien, no está normal, no tiene buena cara, no tiene buena pinta,
        tiene mala pinta, tiene mala cara, tiene mal aspecto, mal aspecto, algo le pasa, le pasa algo,
        algo le duele, le duele algo, le duele el vientre, le duele la pata, le duele el estómago,
        le duele la mano, dolor de barriga, dolor de panza, dolor de tripa, con dolor de barriga, dolores,
        con dolores, dolor abdominal, timpanizad|o|a, hinchad|o|a de barriga, hinchad|o|a de la barriga,
        barriga hinchada, la barriga hinchada, tripa hinchada, panza hinchada, la panza hinchada,
        se revuelca mucho, se revuelca sin parar, no para de revolcarse, revolcándose de dolor,
        se tira al suelo, se está tirando al suelo, se echa y se levanta, se tumba y se levanta,
        se acuesta y se levanta, tumbad|o|a y no se levanta, tirad|o|a en el suelo, tirad|o|a y no se levanta,
        echad|o|a y no quiere levantarse, no quiere levantarse, no se quiere levantar, no se puede levantar,
        no puede levantarse, no se tiene en pie, no se tiene de pie, no se mantiene en pie, se cae,
        se mira la barriga, se mira la panza, se mira el vientre, se mira los ijares, mirándose el flanco,
        mirándose los flancos, mirándose la tripa, mirándose la barriga, se mira el costado,
        se mira los costados, se da patadas en la barriga, se da patadas en la tripa, se patea la barriga,
        se patea la panza, escarba mucho, escarbando mucho, rasca el suelo sin parar, no caga, no ha cagado,
        no ha hecho caca, no hace caca, sin hacer caca, no defeca, no ha defecado, no hay cagajones,
        sin cagajones, no bosteó, no mea, no ha meado, no orina, no ha orinado, no bebe, no bebe agua,
        no ha bebido, no ha bebido nada, no bebió, no quiere beber, no quiere agua, no quiere el heno,
        no quiere heno, no quiere el pienso, no quiere pienso, no quiere la comida, no quiere su pienso,
        no quiere ni el heno, no quiere comerse el heno, no quiere la alfalfa, no quiere el concentrado,
        no quiere nada, no quiere ni la zanahoria, no quiso el pienso, no quiso el heno, no quiso la comida,
        no quiso beber, no ha querido el pienso, no ha querido el heno, no ha querido la cena,
        no ha querido el desayuno, no ha querido beber, no ha comido nada, no ha comido su pienso,
        no ha comido el pienso, no ha comido el heno, no comió nada, no comió el pienso, no comió el heno,
        no ha probado bocado, no ha probado el pienso, no ha probado el heno, no ha probado la comida,
        no prueba el heno, no prueba el pienso, no probó bocado, no toca el pienso, no toca la comida,
        no tocó el heno, no tocó el pienso, no tocó la comida, no ha tocado la cena, no ha tocado el desayuno,
        no ha tocado la alfalfa, no ha tocado nada, ni ha tocado el heno, ni ha tocado el pienso,
        ni tocó el heno, ni toca el heno, ni come ni bebe, apenas come, apenas ha comido, apenas come nada,
        come poco y mal, come fatal, ha comido fatal, ha comido poquísimo, se ha dejado el pienso,
        se dejó el pienso, se ha dejado la comida, se dejó la comida, se ha dejado la cena,
        se ha dejado todo el pienso, se dejó medio pienso, ha dejado medio pienso, ha dejado todo el pienso,
        dejó todo el pienso, ha dejado todo el heno, ha dejado el heno, dejó el heno, dejó la cena,
        ha dejado la cena, ha dejado el desayuno, dejó el desayuno, pienso intacto, el pienso intacto,
        heno intacto, el heno intacto, comida intacta, la comida intacta, tiene el pienso sin tocar,
        con el pienso sin tocar, pienso sin tocar, heno sin tocar, el heno sin tocar, comida sin tocar,
        inapetencia, sin ganas de comer, sin hambre, no tiene hambre, no tiene ganas de comer,
        perdió el apetito, ha perdido el apetito, con poco apetito, poco apetito, tosió, ha tosido, tosía,
        tose mucho, tose sin parar, no para de toser, con mucha tos, tos seca, tos fea, con una tos fea,
        tiene tos, tose al comer, tosecilla, resfriad|o|a|os|as, acatarrad|o|a|os|as, constipad|o|a|os|as,
        con catarro, tiene catarro, con gripe, tiene gripe, con resfriado, moquead|o|a, moqueando, moco,
        le sale moco, le salen mocos, moco amarillo, moco verde, mocos verdes, mocos amarillos, con moco,
        secreción nasal, ollares con moco, le moquea la nariz, ojo llorosos, destemple y fiebre,
        tiene calentura, calentura, con calentura, febrícula, con febrícula, tiene febrícula, afiebrad|o|a,
        39 de fiebre, 40 de fiebre, fiebrón, está ardiendo de fiebre, respira agitado, respira agitada,
        respiración agitada, respira muy rápido, respira rápido, respirando rápido, respirando mal,
        respirando fuerte, le cuesta respirar, no respira bien, respira raro, pulso alto, pulsaciones altas,
        ollares dilatados, encías pálidas, encías moradas, encías blancas, diarrea líquida, con diarrea,
        con descomposición, descompuest|o|a, suelt|o|a de tripa, caca líquida, cagalera, con cagalera,
        tiene cagalera, con churretes, churrete, vomitando, aletargad|o|a|os|as, letargo,
        adormilad|o|a y sin comer, cabizbaj|o|a|os|as, alicaíd|o|a|os|as, mustí|o|a, musti|o|a|os|as,
        decaidit|o|a|os|as, decaíd|o|a|os|as y sin comer, decaimiento, abatid|o|a|os|as, desganadit|o|a,
        desganada del todo, apátic|o|a|os|as y sin comer, triste y sin comer, tristón y sin comer,
        sin ganas de nada, flojit|o|a|os|as, sin fuerzas, se tambalea mucho, tambaleándose, se va de atrás,
        descoordinad|o|a, atáxic|o|a, mareado, maread|o|a|os|as, temblon y decaído, con infosura,
        infosad|o|a|os|as, laminitis, con laminitis, tiene laminitis, infosura en las manos, aguad|o|a, cojo|s,
        coj|o|a|os|as, cojea, cojean, cojeando, coje|a|aba, ha cojeado, está cojeando, cojera, con cojera,
        cojit|o|a|os|as, coj|o|a de la mano, coj|o|a de delante, coj|o|a de atrás, coj|o|a de una mano,
        cojísim|o|a, renquea, renqueando, renco, rengue|a|ando, rengo, renga, no apoya la pata,
        no apoya la mano, no apoya el pie, no pisa, no pisa bien, no apoya, va a tres patas, a tres patas,
        pata hinchada, la pata hinchada, mano hinchada, corvejón hinchado, rodilla hinchada, menudillo hinchado,
        menudillos hinchados, edema, linfangitis, hinchazón en la pata, ojo hinchado, el ojo hinchado,
        ojo cerrado, un ojo cerrado, con el ojo cerrado, le llora un ojo, ojo lloroso, uveítis, absceso,
        con un absceso, sangrando, sangra, está sangrando, le sale sangre, con sangre, con una herida,
        tiene una herida, herid|o|a, se ha hecho una herida, se hizo una herida, se ha cortado, se cortó,
        un corte en la pata, con un corte, se ha clavado, urticaria, con urticaria, ronchas, con ronchas,
        llen|o|a de ronchas, hinchad|o|a|os|as, envenenad|o|a, intoxicad|o|a, ataque de tos, crisis de asma,
        con huélfago, deshidratad|o|a|os|as, en shock, azoturia, mioglobinuria, mioglobinúrico,
        tieso como un palo y no quiere andar, no quiere andar, no quiere moverse, no se quiere mover,
        no se mueve, quiet|o|a en un rincón, quieto en una esquina, quieta en una esquina,
        separad|o|a del grupo y triste, apartad|o|a del grupo, está chung|o|a, chungo|s, chunguill|o|a,
        hech|o|a polvo del todo, fatalito, malísim|o|a|os|as, muy mal|o|a|os|as, muy malit|o|a|os|as, muy mal,
        está muy mal, está bastante mal, está fastidiad|o|a, fastidiad|o|a, jodid|o|a, está jodid|o|a,
        está mal de la tripa, malit|o|a de la tripa, mala de la barriga, mal del estómago, mal de la barriga,
        se puso mal, se puso mala, se puso malo, se ha puesto mala, se ha puesto malo, se ha puesto malita,
        se ha puesto malito, cayó enfermo, cayó enferma, ha enfermado, empeora, ha empeorado, empeoró,
        está peor, peor que ayer, va a peor, va peor, ha ido a peor, cada vez peor
    """,
    "everyday hot": """
        caliente|s, calor, 🥵, hot, calentit|o|a de más, calurosit|o|a, caluros|o|a|os|as, calentón, calentona,
        hirviendo, ardiendo, 🔥, 🫠, con la temperatura alta, caldead|o|a, acalor, calorcito, calufa, calorazo,
        calores, bochorno, quemando, caliente caliente, calentorr|o|a
    """,
    "everyday cold": """
        frí|o|a|os|as, fresc|o|a|os|as, helad|o|a|os|as, gelid|o|a, friolent|o|a, fresquit|o|a, 🥶, cold,
        frescuch|o|a, tempranito frío, helad|o|a, frío frío, friít|o|a, friíll|o|a, fresqu|ito|ita|itos|itas,
        fresquísim|o|a, gélid|o|a|os|as, heladit|o|a|os|as, heladísim|o|a, congelad|o|a, frigidísim|o|a,
        friísim|o|a, frisísim|o|a, frío como el hielo, frías como el hielo, destemplado, 🧊, ❄️, friecito,
        friyito, rasca, biruji
    """,
    "everyday good": "",
    "everyday comfortable": """
        bien, perfect|o|a|os|as, ok, okey, content|o|a|os|as, tranquil|o|a|os|as, muy bien, de maravilla,
        todo bien, fenomenal, mejor, mucho mejor, está mejor, ya está mejor, sin novedad, sin problemas,
        estupend|o|a|os|as, genial, perfectamente, en orden, todo en orden, bien bien, divinamente,
        buen|o|a de temperatura, de lujo, de cine, de fábula, de perlas, de diez, de 10, de vicio, de lo mejor,
        chachi, guay, guai, fetén, chévere, bacano, bacan, joya, joyita, impecable|s, impeque, bárbar|o|a,
        espectacular, maravillos|o|a, fantástic|o|a|os|as, bien también, bien los dos, bien las dos, bien todos,
        bien todas, estupendamente, fenomenalmente, maravillosamente, requetebién, requete bien, súper bien,
        superbién, re bien, rebién, muy muy bien, muy requetebién, mejorcit|o|a, muchísimo mejor,
        bastante mejor, bastante bien, bien ahora, bien ya, ya bien, está bien, están bien, va bien, van bien,
        anda bien, andan bien, sigue bien, siguen bien, estable|s, normal, normales, correct|o|a|os|as,
        recuperad|o|a|os|as, ya recuperad|o|a, tranquilit|o|a|os|as, relajad|o|a|os|as, relajadit|o|a,
        seren|o|a, calm|o|a, felic|es, feliz, feliz como una perdiz, contentísim|o|a|os|as, contentit|o|a|os|as,
        encantad|o|a|os|as, encantadit|o|a, divin|o|a|os|as, pich|í|i, a tope, nikel, níquel, oka, okis,
        okey makey, okk, okok, okay, todo ok, todo perfecto, todo correcto, todo normal, todo en su sitio,
        todo fenomenal, todo genial, todo estupendo, todo tranquilo, sin problema, sin ningún problema,
        sin incidencias, sin incidencia, sin quejas, sin más, sin pega, sin pegas, nada que reportar, nada raro,
        nada nuevo, como siempre de bien, tan bien, muy a gusto, 👍, 👌, 👍🏻, 👍🏼, 👍🏽, cojonud|o|a, de puta madre,
        de pm, dpm, de rechupete, como nuev|o|a, como una rosa, fresc|o|a como una lechuga, viv|o|a y coleando
    """,
    "everyday warm": """
        templad|o|a|os|as, tibi|o|a|os|as, templadit|o|a|os|as, tibiecit|o|a|os|as, medio caliente,
        medio calientes, tirando a caliente, calentillo, calentilla, calorcillo, un pelín caliente,
        un poco caliente, algo caliente, ligeramente caliente, más caliente, caldosit|o|a, algo templado,
        templaducho
    """,
    "dry": """
        sec|o|a|os|as, sequit|o|a|os|as, secado, se secó, se ha secado, se han secado, bien sec|o|a,
        ya sec|o|a, dry, por fin sec|o|a, completamente sec|o|a, totalmente sec|o|a, ya secos, ya
        secas, se secaron, se ha secado ya
    """,
    "damp": """
        húmed|o|a|os|as, humedecid|o|a, no está sec|o|a, sin secar, aún mojad|o|a, casi sec|o|a, no
        del todo sec|o|a, todavía no está sec|o|a, aún no está sec|o|a
    """,
    "wet": "mojad|o|a|os|as, mojadit|o|a, se mojó, se ha mojado, se mojaron, wet, mojadísim|o|a",
    "soaked": """
        empapad|o|a|os|as, calad|o|a|os|as, chorreando, ensopad|o|a|os|as, chorread|o|a, hech|o|a una
        sopa, calad|o|a hasta los huesos, emparamad|o|a, escurriendo, soaked, empapadísim|o|a,
        empapad|o|a por dentro, cala, le entra agua, le ha entrado agua, pingando, chorreando agua
    """,
    "state washing": """
        en la lavadora, lavándose, se está lavando, se están lavando, en lavado, en la lavandería, a
        lavar, en la colada, está a lavar, la están lavando, en la tintorería, llevé a lavar, está
        lavándose, lavando, a la lavadora, en la lavadora ahora, en el lavadero, llevada a lavar,
        llevado a lavar, metí en la lavadora, puse a lavar, la llevé a lavar, lo llevé a lavar, la
        mandé a lavar, a la lavandería, a la tintorería, para lavar
    """,
    "state torn": """
        rot|o|a|os|as, rasgad|o|a|os|as, rajad|o|a|os|as, desgarrad|o|a|os|as, se ha roto, se rompió,
        rompió, ha roto, rasgó, tiene un agujero, agujero, agujeread|o|a, un roto, un siete, ha
        rasgado, ha rajado, rajó, destrozad|o|a|os|as, hech|o|a jirones, descosid|o|a|os|as, un
        desgarrón, desgarrón, se rasgó, se rajó, tiene un roto, con un agujero, con un siete, con un
        roto, un agujero, un agujerazo, hecho trizas, hecha trizas, hecha polvo, hecho polvo, hecha
        pedazos, hecho pedazos, se ha rasgado, se ha rajado, se ha desgarrado, se descosió, se ha
        descosido, ha destrozado, destrozó, pinchad|o|a
    """,
    "state missing": """
        falta, faltan, perdid|o|a|os|as, no encuentro, no encontramos, no aparece, ha desaparecido,
        desaparecid|o|a, no está por ningún lado, se ha perdido, perdimos, perdí, no lo encuentro, no
        la encuentro, hemos perdido, he perdido, se perdió, no hay manera de encontrar, no se
        encuentra, ni rastro de, no encuentra, no está en su sitio, desapareció, extraviad|o|a, se ha
        extraviado, robad|o|a, nadie encuentra, no sé dónde está, ha volado
    """,
    "state found": """
        encontré, encontrad|o|a|os|as, apareció, ha aparecido, ya apareció, aparecid|o|a, encontramos,
        ya la encontré, ya lo encontré, la encontré, lo encontré, hemos encontrado, he encontrado, ya
        está encontrad|o|a, ha sido encontrad|o|a
    """,
    "state in service": """
        arreglad|o|a|os|as, reparad|o|a|os|as, cosid|o|a|os|as, remendad|o|a|os|as, ya arreglad|o|a,
        como nuev|o|a, de vuelta, volvió de la lavandería, de vuelta de la lavandería, en uso, otra
        vez en uso, disponible, zurcid|o|a, volvió del arreglo, ya se puede usar, en servicio, ha
        vuelto de la lavandería, ha vuelto de arreglar, volvió de arreglar, de vuelta de arreglar, ha
        vuelto del arreglo, arreglada ya, correa arreglada, correa nueva, ya está arreglad|o|a, ya
        está reparad|o|a, ya está cosid|o|a, ha vuelto de la tintorería, lista para usar, listo para
        usar, otra vez en servicio, parchead|o|a
    """,
    "strap": """
        correa, correas, cincha, cinchas, hebilla, hebillas, cierre, cierres, tirante, tirantes,
        cinta, broche, mosquetón, cincha cruzada, correa de pata, correas de las patas, correa de la
        pata, entrepierna, tapa cola, correa del pecho, correa de la tripa, correas cruzadas, correa
        del vientre, hebilla del pecho, enganche, enganches, velcro, mosquetones, gancho
    """,
    "broken": """
        rot|o|a|os|as, se rompió, se ha roto, rompió, ha roto, partid|o|a, se partió, se soltó,
        suelt|o|a, arrancad|o|a, arrancó, se ha soltado, se ha partido, descosid|o|a, reventad|o|a, se
        le rompió, se le ha roto, suelt|o|a|os|as, se le soltó, se le ha soltado, colgando, reventó,
        rot|o|a del todo, cascad|o|a, arrancad|o|a de cuajo, perdid|o|a
    """,
    "kind sheet": """
        impermeable, impermeables, chubasquero, manta de lluvia, manta impermeable, sábana, sábana de lluvia,
        manta sin relleno, capa de agua, lona, sheet, capa, capas, capita, capitas
    """,
    "kind turnout": """
        turnout, manta de campo, manta de prado, manta de paddock, manta de exterior, manta de fuera, manta
        exterior, mantas de campo, manta de potrero, outdoor
    """,
    "kind liner": "forro, forros, liner, liners, manta interior, bajomanta, entremanta, forro interior",
    "kind stable": """
        manta de cuadra, manta de box, manta de establo, mantas de cuadra, de cuadra, manta de caballeriza,
        manta de dentro, la de box, de establo, stable rug
    """,
    "kind cooler": """
        polar, polares, manta polar, manta de sudor, manta secante, secante, cooler, sudadera, manta sudadera,
        forro polar, enfriadora, fleece
    """,
    "kind neck": "cubrecuello, cuello, cubrecuellos, cubre cuello, capucha, cuellera, manta de cuello",
    "rug": "manta, mantas, cobija, cobijas, mantita, cobertor, ropa, abrigo, frazada, frazadas",
    "weight heavy": "gord|o|a|os|as, pesad|o|a|os|as, grues|o|a|os|as, gordit|o|a, gruesit|o|a, de invierno, heavy",
    "weight medium": "median|o|a|os|as, medi|o|a, intermedi|o|a|os|as, entretiempo, de entretiempo, medium",
    "weight light": "liger|o|a|os|as, finit|o|a|os|as, livian|o|a|os|as, fin|o|a|os|as",
    "gram": "g, gr, gramo, gramos, grs",
    "spare": "reserva, de reserva, de repuesto, repuesto, de sobra, suplente, de recambio",
    "one": "un|o|a",
    "colour": """
        azul, azules, roj|o|a|os|as, verde, verdes, negr|o|a|os|as, blanc|o|a|os|as, gris, grises, marrón,
        marrones, amarill|o|a|os|as, naranja, morad|o|a|os|as, rosa, granate, burdeos, beige, celeste, a
        cuadros, de cuadros, a rayas, de rayas, lila, violeta, dorad|o|a, plata, turquesa, azul marino, café
    """,
    "any adjective": """
        nuev|o|a|os|as, viej|o|a|os|as, grande, pequeñ|o|a, dichos|a|o, propi|o|a, buen|o|a, maldit|o|a,
        otr|a|o
    """,
    "put on": """
        puse, pusimos, ponerle, poniendo, he puesto, hemos puesto, ha puesto, han puesto, puesto,
        puesta, puestos, puestas, puso, pusieron, le puse, le he puesto, le hemos puesto, les puse,
        eché, le eché, añadí, le añadí, he añadido, tapé con, le pusimos, les he puesto, les hemos
        puesto, coloqué, poniéndole, le puso, le han puesto, le ha puesto, abrigué con, le estoy
        poniendo, le metí, les eché, le eché encima, le coloqué, le encasqueté, le volví a poner, he
        vuelto a poner, vuelto a poner, le he añadido, puesta ya, puesto ya, le planté
    """,
    "took off": """
        quité, quitamos, he quitado, hemos quitado, ha quitado, han quitado, le quité, le he quitado,
        le hemos quitado, quitad|o|a|os|as, saqué la, saqué el, le saqué la, le saqué el, quitando,
        quitándole, les quité, les he quitado, le quitamos, quitó, le quitó, desabrigué, destapé, he
        destapado, retiré, le retiré, retirad|o|a, les hemos quitado, le han quitado, le ha quitado,
        quitaron, les quitamos, se la quité, se lo quité, se la he quitado, se lo he quitado, se la
        quitamos, se lo quitamos, le he retirado, quitada ya, quitado ya, fuera
    """,
    "stripped": "desnudé, destapé, he destapado, desabrigué, le quité todo",
    "took": "",
    "wears": """
        lleva, llevan, lleva puest|o|a|os|as, llevan puest|o|a|os|as, lleva puesto, trae, trae
        puest|o|a|os|as, traen, viste, va con, van con, está con, están con, tiene puest|o|a|os|as,
        tienen puest|o|a|os|as, ahora lleva, se queda con, con, abrigad|o|a con, tapad|o|a con, lleva
        ahora, cubiert|o|a con, vestid|o|a con, llevando, anda con, solo con, sólo con, solo lleva,
        sólo lleva, ya con, ahora con, ahora está con, ha pasado a, pasó a la, pasó al, cambiad|o|a a,
        vuelve a llevar, sigue con, va solo con, llevando solo
    """,
    "in": "en",
    "on": "puest|o|a|os|as, encima",
    "off": "fuera la, fuera el, sin",
    "has": "",
    "swapped": """
        cambié, cambiamos, he cambiado, hemos cambiado, cambiad|o|a, cambió, le cambié, sustituí, he
        sustituido, le he cambiado, le cambiamos, reemplacé, ha cambiado
    """,
    "instead of": "en vez de, en lugar de, en lugar del, en vez del, en vez de la, en lugar de la, en sustitución de",
    "for another": "por, a, con, al",
    "over": "encima, encima de, debajo, debajo de, sobre, bajo, además, también, por encima, por debajo",
    "bare": """
        sin manta, sin mantas, desnud|o|a|os|as, sin nada, sin nada puesto, a pelo, en pelotas,
        destapad|o|a|os|as, sin ropa, sin cobija, no lleva nada, no lleva manta, no lleva nada puesto,
        sin abrigo, en cueros, sin tapar, no tiene manta, no tiene nada puesto, sin cobijas,
        pelad|o|a, bare, naked, sin nada encima, en bolas, desvestid|o|a, no lleva nada encima, nada
        encima, sin ninguna manta, sin mantas puestas, desnudit|o|a
    """,
    "nothing": "nada, todo",
    "without": "sin",
    "clipped": """
        esquilad|o|a|os|as, esquilé, esquilamos, esquilado, he esquilado, hemos esquilado, esquileo, esquila,
        han esquilado, esquilaron, ha esquilado, rapad|o|a, pelé, esquiló, se esquiló, esquilada, esquilado de
        manta, esquilado de caza, esquilado completo, esquilado inglés, esquila completa, trace clip, rapé,
        rapamos, he rapado, hemos rapado
    """,
    "style none": "sin esquilar, ya le creció el pelo, le ha crecido el pelo, pelo crecido",
    "style bib": "babero, de babero, solo el pecho, pecho, pechera",
    "style trace": "trace, esquilado inglés, de tiro, trazas, de traza, traza, trace clip",
    "style blanket": "de manta, esquilado de manta, tipo manta, blanket",
    "style hunter": "de caza, caza, hunter, esquilado de caza, tipo caza, cazador",
    "style full": """
        complet|o|a, enter|o|a, total, del todo, por completo, todo el cuerpo, esquilado completo, al
        completo, esquila completa, full
    """,
    "place stall": """
        cuadra, box, boxes, establo, caballeriza, dentro, adentro, interior, a cubierto, bajo techo, cuadras,
        a la cuadra, al box, pesebrera, en casa, corraliza
    """,
    "place field": """
        prado, campo, paddock, pradera, potrero, fuera, afuera, exterior, pasto, cercado, a la calle, corral,
        prados, al prado, finca, dehesa, tornadero
    """,
    "inwards": "dentro, adentro, para dentro, pa dentro",
    "outwards": "fuera, afuera, para fuera, pa fuera",
    "brought": """
        metid|o|a|os|as, sacad|o|a|os|as, llevé, llevamos, traje, trajimos, pasé, pasamos, moví, he
        llevado, hemos llevado, he pasado, entré, guardé, guardamos, puse, he traído, he dejado, dejé,
        dejamos, solté, he metido, cambié, hemos traído, he sacado, subí, bajé, hemos bajado, hemos
        subido
    """,
    "stays": """
        se queda, se quedan, se quedó, duerme, duermen, pasa la noche, sigue, siguen, queda, se va a quedar,
        se quedará, se quedan a dormir, pasan la noche
    """,
    "brought in": """
        metí, metimos, he metido, hemos metido, ha metido, encerré, encerrad|o|a, ya ha entrado, ha
        entrado, han metido, metió, estabulad|o|a, recogí, he recogido, hemos recogido, ha entrado ya,
        han entrado, recogid|o|a, entró, ha entrado al box, metid|o|a|os|as dentro, metid|o|a|os|as en
        el box, metid|o|a|os|as en la cuadra, traje a la cuadra, ya dentro, guardad|o|a|os|as, lo
        metí, la metí, los metí, las metí, lo he metido, la he metido, metido dentro, metida dentro, metid|o|a
    """,
    "turned out": """
        saqué, sacamos, he sacado, hemos sacado, ha sacado, solté, soltamos, he soltado, hemos
        soltado, eché al prado, ha salido, han sacado, sacó, han salido, soltad|o|a|os|as, han
        soltado, salió, ha salido al prado, sacad|o|a|os|as, sacad|o|a|os|as al prado, lo saqué, la
        saqué, los saqué, las saqué, lo he sacado, la he sacado, llevé al prado, solté en el prado, en
        el prado ya
    """,
    "keep": """
        dejad, dejar, deja, dejen, dejadl|o|a, mantened, mantener, quiero, que vaya, que esté, que siga, que
        se quede, prefiero, por favor, déjenl|o|a, tiene que ir, que lleven, dejemos, mantengan, que vayan, se
        quede, se queden, vaya, esté, siga, vayan
    """,
    "please": "por favor, porfa, a partir de ahora, de ahora en adelante",
    "do not rug": """
        no le pongáis manta, no le pongan manta, no le pongas manta, no poner manta, no pongáis manta, que no
        lleve manta, nada de mantas para, no tapar, no tapéis, nada de manta para, no le pongáis la manta, no
        le pongan la manta, no le pongas la manta, no hay que taparl|o|a, no abrigar, no abriguéis, no tapen,
        no le ponga manta, no le pongáis mantas, sin mantas para, no pongan manta, no ponerle manta, no le
        pongáis cobija, no le pongan cobija, no le pongas cobija, no poner cobija, no pongáis cobija, que no
        lleve cobija, nada de cobijas para, nada de cobija para, no le pongáis la cobija, no le pongan la
        cobija, no le pongas la cobija, no le ponga cobija, no le pongáis cobijas, sin cobijas para, no pongan
        cobija, no ponerle cobija
    """,
    "rug again": """
        puede llevar manta, puede llevar manta otra vez, puede llevar manta de nuevo, puede volver a llevar
        manta, ya puede llevar manta, podéis ponerle manta, podéis volver a ponerle manta, se le puede poner
        manta, ya se le puede poner manta, se puede tapar, ya se puede tapar, vuelve a llevar manta, ya no
        hace falta que vaya sin manta, pueden ponerle manta, pueden volver a ponerle manta, ya se puede
        abrigar, se puede volver a tapar, puede usar manta otra vez, puede usar manta, ya le podéis poner
        manta, ya podéis ponerle manta, le podéis poner manta, se le puede volver a poner manta, se puede
        abrigar otra vez, puede llevar mantas otra vez, puede llevar mantas, se le puede poner manta otra vez,
        puede ponerse manta, ya puede volver a llevar manta, puede llevar cobija, puede llevar cobija otra
        vez, puede llevar cobija de nuevo, puede volver a llevar cobija, ya puede llevar cobija, podéis
        ponerle cobija, podéis volver a ponerle cobija, se le puede poner cobija, ya se le puede poner cobija,
        vuelve a llevar cobija, ya no hace falta que vaya sin cobija, pueden ponerle cobija, pueden volver a
        ponerle cobija, puede usar cobija otra vez, puede usar cobija, ya le podéis poner cobija, ya podéis
        ponerle cobija, le podéis poner cobija, se le puede volver a poner cobija, puede llevar cobijas otra
        vez, puede llevar cobijas, se le puede poner cobija otra vez, puede ponerse cobija, ya puede volver a
        llevar cobija
    """,
    "worked": """
        monté, montamos, he montado, hemos montado, montad|o|a|os|as, montó, tuvo clase, ha tenido
        clase, tuvieron clase, trabajad|o|a|os|as, trabajé, trabajamos, he trabajado, di cuerda, le di
        cuerda, he dado cuerda, ha trabajado, trabajó, dio clase, ha dado clase, dimos cuerda, hizo
        clase, salió de paseo, salimos de paseo, salí de paseo con, han montado, dado cuerda, dio
        cuerda, ha dado cuerda, han dado cuerda, ha hecho clase, hemos dado cuerda, hizo cuerda, ha
        hecho cuerda, salí a pasear con, saqué a montar, acabo de montar, acabamos de montar, ha
        salido de paseo, le he dado cuerda, le hemos dado cuerda, han trabajado, galopé,
        ejercitad|o|a, han tenido clase, terminó la clase, terminó su clase, viene de clase, vuelve de
        paseo, monté a, monté en, salí con, ha sido montad|o|a, ha sido trabajad|o|a, trabajado en
        pista, ha hecho pista, hizo pista, hice cuerda con, hemos trabajado a, saltó, ha saltado,
        entrenad|o|a, entrenamos, entrené
    """,
    "had": "tuvo, ha tenido, tuvieron, hizo, ha hecho, han tenido, terminó, ha terminado",
    "after": """
        después de, tras, de, del, desde, por, después del, luego de, a causa de, de haber, después de
        la, viene de, vino de, vuelve de, volvió de, recién llegado de, al volver de, al volver del,
        justo después de, por culpa de
    """,
    "work": """
        clase, clases, montar, trabajo, trabajar, paseo, cuerda, entrenamiento, entreno, ruta, salto,
        saltar, doma, galope, ejercicio, montarl|o|a, montada, entrenar, correr, galopar, la clase,
        sesión, pista, la pista, concurso, galopes, paseo por el monte, hacer cuerda, dar cuerda, la
        monta, monta, el paseo, el entrenamiento, el trabajo
    """,
    "done": """
        list|o|a|os|as, hech|o|a|os|as, terminad|o|a|os|as, acabad|o|a|os|as, ya está, ya están,
        cambiad|o|a|os|as, ✓, ✔, ✅, ☑, ya estan, hecho ya, arreglad|o|a|os|as, preparad|o|a|os|as,
        terminé, terminé con, acabé, acabé con, terminamos, he terminado, he terminado con, hemos
        terminado, he acabado con, he acabado, done, hech|o|a|os|as ya, ya hech|o|a|os|as, he hecho,
        hemos hecho, hice, hicimos, tapad|o|a|os|as, abrigad|o|a|os|as, list|o|a|os|as ya,
        despachad|o|a|os|as, solucionad|o|a|os|as, apañad|o|a|os|as, vestid|o|a|os|as
    """,
    "everyone": """
        todos, todas, todo, todo el mundo, toditos, todo el mundo
    """,
    "the rest": "el resto, los demás, las demás, los otros, las otras, todos los demás, todas las demás",
    "all horses": "todos los caballos, los caballos, todas las yeguas, todos los ponis, caballos, toda la cuadra",
    "both": "los dos, las dos, ambos, ambas, los tres, las tres",
    "all": "todos los, todas las, los dos, las dos, ambos, ambas",
    "except": "menos, excepto, salvo, quitando, a excepción de",
    "all done": """
        todos listos, todas listas, todo listo, todos hechos, todas hechas, todo hecho, ya están
        todos, ya están todas, ya está todo, todos terminados, todo terminado, todos cambiados, están
        todos, están todos listos, ya están todos listos, todos los caballos listos, todos los
        caballos están listos, terminado todo, ronda hecha, ronda terminada, ya he terminado con
        todos, he terminado con todos, todos están listos, todos ✓, todos ✅, ya están todos hechos,
        hechos todos, listos todos, ya terminé con todos, terminé con todos, acabé con todos, todas
        están listas, todos tapados, todos los caballos hechos, todos los caballos están hechos, todos
        abrigados, todas tapadas, ya están todos tapados, todos están tapados, todos vestidos, todos
        apañados, ronda acabada, ronda de la tarde hecha, ronda de la mañana hecha, ronda de noche
        hecha, ya acabé con todos, hice todos, he hecho todos, los hice todos, los he hecho todos,
        todos y cada uno hechos, toda la cuadra hecha, toda la cuadra lista, acabada la ronda,
        terminada la ronda, terminé la ronda, acabé la ronda, todos despachados, todos ok y listos,
        todos están hechos, todas están hechas, todas están tapadas, todos están abrigados, todos
        están vestidos, lista hecha, la lista está hecha, lista terminada
    """,
    "undo": """
        deshacer, deshaz, deshaz eso, deshacer eso, deshazlo, borra eso, borra, bórralo, anula, anula
        eso, anúlalo, anular, me equivoqué, me he equivocado, fue un error, es un error, caballo
        equivocado, ignora eso, olvida eso, olvídalo, quita eso, cancela, cancela eso, ignora lo
        anterior, borra lo último, borrar, era otro caballo, error mío, borra lo anterior, anula lo
        último, no hagas caso a lo anterior, me confundí, me he confundido de caballo, me equivoqué de
        caballo, me he equivocado de caballo, me he confundido, deshaz lo último, ese no era, me
        confundí de caballo, borra mi último mensaje, borra el último, borra el último mensaje, anula
        el último, anula mi último mensaje, cancela lo último, cancela el último, quita lo último,
        deshaz el último, perdón borra, me equivoqué borra eso, no deshaz, retira eso, retira lo
        último, elimina eso, elimina lo último, olvida lo último, ignora lo último, ignora mi último
        mensaje, error deshaz, deshaz, deshazlo, deshaz eso, error deshaz, anula lo último
    """,
    "no": "no, perdón, mejor dicho, uy, ups, digo, me equivoqué",
    "i mean": "quería decir, quise decir, digo, es, era, mejor dicho, me refería a, en realidad",
    "yes": "sí, eso es, correcto, exacto, claro, ese, esa",
    "neither": "ningun|o|a, ninguno de los dos, nada, cancela, olvídalo, ninguna de las dos, déjalo",
    "first": "primer|o|a, el primero, la primera, un|o|a",
    "second": "segund|o|a, el segundo, la segunda, dos",
    "third": "tercer|o|a, el tercero, la tercera, tres",
    "not": "no, ya no, ni, tampoco, nunca, ningún, ninguna, jamás",
    "stopped": """
        ha dejado de, dejó de, dejaron de, han dejado de, paró de, ha parado de, ya no, se le ha pasado, se le
        pasó, paró, han parado de
    """,
    "not any more": "ya, más",
    "nearly": "casi, a medias, medio, todavía no, aún no, medi|o|a, no del todo, mitad, por poco",
    "a little": "un poco, un poquito, algo, ligeramente, poco, un pelín, un poco de, algo de, poquito, un tanto",
    "very": """
        muy, mucho, bastante, tan, super, súper, demasiado, totalmente, completamente, todo, toda,
        realmente, mazo, bien, mucha, tod|o|a, re, muchísimo, hiper, requete, tremendamente, un
        montón, la mar de, bien
    """,
    "if": """
        si, a no ser que, por si, en caso de, siempre que, a menos que, con tal de, como no, en cuanto, por si
        acaso
    """,
    "when": "cuando, mientras, hasta que, hasta, antes de, aunque, donde",
    "was": "estaba, estaban, estuvo, era, tenía, tenían, fue, iba, temblaba, tiritaba, sudaba, ha estado, han estado",
    "plan": """
        va a, voy a, vamos a, van a, vas a, mañana, luego, más tarde, después hay que, debería,
        deberíamos, habría que, hay que, tiene que, tengo que, tenemos que, tenéis que, podría,
        podrías, puede, puedes, podéis, pueden, quiero, quiere, queremos, querría, necesito, necesita,
        necesitamos, por favor, porfa, porfi, pls, acordaos, acuérdate, recordad, recuerda, no
        olvidéis, no olvides, ojalá, espero, esperemos, quizá, quizás, a lo mejor, tal vez, igual,
        seguramente, probablemente, la próxima, próximo, próxima, la semana que viene, este finde, fin
        de semana, previst|o|a, pendiente, toca, cita, pensando en, seguro que, cuidado, ojo, parece
        que va, se vende, vendo, compro, comprar, comprad|o|a, pedir, pedid|o|a, hará, hace falta,
        falta que, sería, estará, pongo, ponemos, debe, deben, puedo, podemos, apetece, mejor que,
        traed, poned, meted, sacad, imagínate, en venta, pasado mañana, vendrá, avisad, avísame,
        avisadme, intentar, pienso en, alguien puede, alguien, nadie, haría, pondría, pondrán,
        pondremos, pondré, sacaré, meteré, sacaremos, meteremos, pon, ponle, ponles, ponedle,
        pónganle, quita, quítale, quítenle, quitadle, mete, métele, saca, tapa, tápale, vigila,
        vigilad, mira si, mirad si, dime, decidme, revisa, revisad, habría que tapar, por si acaso, va
        a sudar, acordaos de, avísenme, recoged, recojan, tapad, tapen, mételo, métela, sácalo,
        sácala, esperad, voy, mejor si, más vale, quien puede, a ver si, hay que lavar, para el
        sábado, el lunes, el martes, el miércoles, el jueves, el viernes, el sábado, pedí, pedimos,
        he pedido, hemos pedido
    """,
    "habit": """
        siempre, normalmente, suele, suelen, a menudo, a veces, cada vez, odia, odian, le encanta, les
        encanta, le gusta, prefiere, de costumbre, cada día, todos los días, cada invierno, raramente,
        como un, como una, más que, jaja, jajaja, jajajaja, jeje, jejeje, parece un, parece una,
        acostumbra, qué guap|o|a, soñé, película, canción, foto, vídeo, video, fotos, 😂, 🤣, en
        facebook, en instagram, en la foto, en la tele, friolero, friolera, es friolera, es friolero,
        nunca, nunca suda, suele sudar, se pone nerviosa, como siempre jaja, por costumbre
    """,
    "bare weather": "",
    "brings weather": "hay, viene, cae, llega, vino, habrá, hubo, más",
    "mass": "",
    "yesterday": "ayer, ayer por la tarde, ayer por la mañana",
    "long ago": """
        anteayer, la semana pasada, el mes pasado, el año pasado, el invierno pasado, el otro día, hace días,
        hace semanas, hace años, hace un mes, hace una semana, aquella vez, antes de ayer, de potro, de potra,
        hace meses
    """,
    "weather": """
        lluvia, llueve, lloviendo, tormenta, trueno, truenos, nube, nubes, sol, niebla, viento, nieve, nieva,
        nevando, escarcha, helada, hielo, relámpago, rayo, granizo, invierno, verano, otoño, primavera,
        tiempo, cielo, brisa, luna, aire
    """,
    "weekday": "lunes, martes, miércoles, jueves, viernes, sábado, domingo, sábados, domingos, finde",
    "guess": """
        no creo, no sé, no estoy segur|o|a, ni idea, dudo, puede ser, no me parece, puede que, no sabemos, no
        sé si, supongo que
    """,
    "said": """
        dice, dijo, dicen, dice que, dijo que, dicen que, creo que, me parece que, creo, avisa que, cuenta
        que, me ha dicho, me dijo, veo que, veo, he visto, vi, parece que, parece, según, he visto que, me
        dicen que, acabo de ver, pienso que, me dice, me ha dicho que, noto, lo noto, la noto, ojo, urgente,
        socorro, atención
    """,
    "what": "qué, cuál, cuáles, con qué",
    "question": """
        qué, quién, quiénes, cuál, cuáles, cómo, cuándo, dónde, por qué, cuánto, cuánta, cuántos, alguien
        sabe, alguien ha, acaso, hay alguien, alguien puede
    """,
    "idiom": """
        sangre fría, agua fría, agua caliente, en celo, bien hecho, buen trabajo, de acuerdo, está
        bueno, qué bueno, en camino, en forma, mala pata, café caliente, frío fuera, seco de carnes,
        hace frío, hace calor, hace mucho frío, hace mucho calor, hace un frío, qué frío, qué calor,
        manos frías, muy listo, muy lista, es list|o|a, hace bueno, hace malo, de mal humor, de buen
        humor, mala cara, a secar, se ha escapado, se escapó, se escapan, puesta a secar, luna llena,
        luna nueva, media luna, puesta de sol, tomar el sol, tomando el sol, rayo de sol, sol y
        sombra, rosa mosqueta, canela y, canela en rama, lucero del alba, bajo la lluvia, lluvia de
        estrellas, pies mojados, pies fríos, muert|o|a de risa, frío polar, un calor de, baño
        caliente, ropa mojada, sal y canela, funda del sofá, mi abrigo, mi impermeable, mi
        chubasquero, cuello de la camisa, ropa de cama, manta del perro, manta del sofá, capa de
        pintura
    """,
    "i": """
        yo, nosotr|o|a|os|as, tú, vosotr|o|a|os|as, usted, ustedes, mi, mis, tu, tus, nuestr|o|a|os|as, estoy,
        estamos, tengo, tenemos, voy, vamos, me, nos, te, os, soy, somos, gente, chic|o|a|os|as,
        niñ|o|a|os|as, veterinari|o|a, herrador, hij|o|a, jinete, dueñ|o|a, marido, mujer, padre, madre,
        perr|o|a, gat|o|a, vuestr|o|a|os|as
    """,
    "visitor": """
        veterinario, veterinaria, herrador, dentista, fisio, guarnicionero, osteópata, vet, el entrenador,
        podólogo
    """,
    "my": "mi, mis, nuestr|o|a|os|as",
    "some": "un, una, unos, unas, otro, otra, algún, alguna",
    "she": "él, ella, ellos, ellas, lo, le, les, l",
    "her": "su, sus",
    "my horse": "mi caballo, mi yegua, mi poni, mi potro, mi potra, mi burro, mi niño, mi niña, el mío, la mía",
    "it": """
        eso, esto, ello, lo, se la quité, se lo quité, se la he quitado, se lo he quitado, se la
        quitamos, se lo quitamos
    """,
    "article": """
        el, la, los, las, un, una, unos, unas, al, lo, este, esta, ese, esa, estos, estas, esos, esas, aquel,
        aquella, del, otro, otra
    """,
    "of": "de, del, para, a, al",
    "and": "y, e, &, +, con, más, además",
    "but": """
        pero, así que, porque, aunque, sin embargo, en cambio, pues, y luego, por eso, o sea, ya que, por lo
        que, conque, entonces, y entonces, que
    """,
    "too": "también, igual, tampoco, lo mismo, ídem, idem, igual que, lo mismo con, lo mismo para",
    "helper": "",
    "is": """
        está, están, es, son, anda, andan, parece, parecen, sigue, siguen, se ve, se ven, lo veo, la veo, lo
        noto, la noto, llegó, llegan, llega, ha llegado, estando, ha venido, vino, viene, vuelve, volvió, ha
        vuelto, ha estado, han estado, quedó, se puso, se ha puesto, tiene, tienen, ha, han, va, van, estar,
        se encuentra, se queda, quedado, queda, acabó, ha acabado, se ha quedado, amaneció, ha amanecido, he
        encontrado a, encontré a, encontramos a, lleva, ya está, ya están
    """,
    "link": """
        ya, muy, también, todavía, aún, aun, otra vez, de nuevo, solo, sólo, ahora, aquí, allí, ahí,
        algo, a, de, en, con, por, para, que, se, le, les, lo, la, además, claro, sí, si que, así,
        bien, todo, toda, todos, todas, los dos, las dos, ambos, ambas, casi, hasta, vuelta, entero,
        completamente, visiblemente, realmente, totalmente, tal, mismo, misma, menos mal, por fin, por
        suerte, desgraciadamente, bastante, ay, uf, uy, esta vez, cada, el pobre, la pobre, pobre,
        pobrecito, pobrecita, del todo, nada, jo, venga, hoy, todavia, estado, igual que antes,
        muchísimo, un montón, un pelín, pobrecilla, pobrecillo, la verdad, en fin, por cierto, como
        siempre, entera, enteros, enteras, de arriba abajo, por todas partes, encima, esta noche, en
        general, desde luego, la pobrecita, el pobrecito, filtra, pasa el agua, jadea, jadeando
    """,
    "time": """
        ahora, hoy, esta noche, esta mañana, esta tarde, ahora mismo, en este momento, de momento, al
        mediodía, a mediodía, toda la noche, todo el día, desde anoche, desde esta mañana, anoche,
        hace un rato, hace una hora, hace poco, hace horas, por la noche, por la mañana, por la tarde,
        temprano, ya, mediodía, h, desde ayer, a primera hora, de madrugada, en el desayuno, a la hora
        de comer, al llegar, nada más llegar, antes, hace media hora, minutos, horas, hora, hace nada,
        hasta nueva orden, con esta lluvia, con este frío, con este viento, con la lluvia, por la
        lluvia, de la lluvia, bajo la lluvia, con el viento, con el frío, con la que cae, con este
        sol, con el sol, con este calor, al sol, con esta humedad, recién, hace un momento, de lluvia,
        para la noche, hasta mañana, hasta la mañana, en la mañana, en la tarde, en la noche, hoy en
        la mañana, ronda tarde, ronda mañana, ronda de tarde, ronda de mañana, ronda de la tarde,
        ronda de la mañana, ronda de noche, en la ronda, al llegar a la cuadra, cuando llegué, cuando
        he llegado, esta madrugada, por ahora, ahorita, recién ahora, hoy por la mañana, hoy por la
        tarde
    """,
    "hour": "a las, sobre las, desde las, a la, hacia las, desde, sobre, a eso de las, hasta las",
    "polite": """
        gracias, muchas gracias, hola, buenas, buenos días, buenas tardes, buenas noches, perdón,
        perdona, oye, oíd, chicos, chicas, equipo, sí, si, vale, ok, bueno, bot, haybell, ay, uf, uy,
        madre mía, aviso, atención, nota, ojo, por cierto, un saludo, saludos, saluditos, feliz,
        besos, pobre, pobrecit|o|a, el pobre, la pobre, amigos, pues, mirad, a ver, hey, ey, al final,
        informe, novedades, por favor, cariño, hola a todos, buenas a todos, hola chicos, porfa,
        compañeros, eso, bueno pues, oye pues, buenas a todas, ronda hecha, parte de la mañana, parte
        de la tarde, aviso a todos, os cuento, novedades de la ronda, mmm, ehh, eh, em, informo, ronda
        tarde, ronda mañana, ronda de tarde, ronda de mañana, ronda de la tarde, ronda de la mañana,
        ronda de noche, a todos, para todos
    """,
    "body": """
        orejas, oreja, lomo, cuello, hombro, hombros, pecho, barriga, tripa, ijar, ijares, flanco, flancos,
        cuerpo, cruz, piel, grupa, codos, codo, detrás de los codos, espalda, pelo, riñones, costillas,
        detrás del codo, vientre, costados, cinchera
    """,
    "under": "bajo, debajo, debajo de, con, dentro de, por debajo",
    "ask why": """
        por qué, porqué, por que, y por qué, a qué se debe, explica, explícame, cómo es que, por qué no, xq,
        pq
    """,
    "ask today": """
        cuál es el plan, qué plan hay, plan, el plan, plan de hoy, plan para hoy, plan para esta
        noche, qué toca, qué hay que poner, qué se ponen, qué llevan, qué llevan hoy, qué llevan
        todos, qué mantas, qué mantas tocan, mantas hoy, mantas de hoy, qué ponemos, qué les ponemos,
        qué les pongo, qué se pone cada uno, qué mantas pongo, qué mantas ponemos, qué manta, hoy,
        dime el plan, qué hay para hoy, repite el plan, qué lleva cada uno, qué les toca, qué se pone,
        qué mantas hoy, qué toca hoy, qué toca esta noche, qué manta le, cuál manta, enseña el plan,
        lista de hoy, la lista, la lista de hoy, lista para hoy, lista para esta noche, la lista de
        esta noche, dame la lista, pásame la lista, muestra la lista, enséñame la lista, lista por
        favor, repite la lista, cuál es la lista, lista de mantas, quién lleva qué, qué lleva cada
        caballo, qué se pone cada uno hoy
    """,
    "ask left": """
        quién falta, quién queda, quiénes faltan, quiénes quedan, quién falta por hacer, quién queda
        por hacer, qué queda, qué falta, quiénes quedan por hacer, cuántos quedan, cuántos faltan,
        queda alguno, falta alguno, falta alguien, queda alguien, están todos, están todos listos,
        están todos hechos, quién no está hecho, quién no está listo, qué caballos quedan, qué
        caballos faltan, queda alguien por hacer, a quién le falta, cuáles faltan, cuáles quedan, ya
        están todos, quién está sin hacer, queda alguno por hacer, falta alguno por hacer, queda algún
        caballo, queda algún caballo por hacer, falta algún caballo, quedan caballos, quedan caballos
        por hacer, qué caballos faltan por hacer, quién no está tapado, quién falta todavía, quién
        queda todavía, quién falta aún, quiénes no están hechos, a quién no he hecho, me falta
        alguien, me falta alguno, he hecho todos, los hemos hecho todos, cuántos faltan por hacer,
        cuántos quedan por hacer, cuáles no están hechos, cuántos me faltan, quién me falta, quiénes
        me faltan
    """,
    "ask drying": """
        qué se está secando, qué está secándose, qué hay secándose, qué está mojado, qué sigue mojado,
        qué hay mojado, qué mantas están mojadas, qué se seca, qué hay en el secadero, qué está seco,
        hay algo secándose, qué mantas se están secando, qué hay tendido, hay algo mojado, qué queda
        mojado, qué mantas están secas, qué mantas siguen mojadas, qué falta por secar, qué está
        tendido, qué tenemos secando, qué hay secando, qué hay en la lavadora, qué está en la
        lavadora, qué mantas hay en la lavadora, qué mantas se están lavando, qué está húmedo, qué
        mantas están húmedas, qué forros están mojados, qué impermeables están mojados, qué mantas hay
        mojadas, hay mantas mojadas, alguna manta mojada, qué no está seco, qué sigue sin secar, qué
        mantas no están secas, qué se está lavando, cuáles están mojadas
    """,
    "ask state": """
        cómo está, cómo están, cómo sigue, cómo va, qué tal, qué tal está, qué tal va, estado de,
        estado, cómo anda, qué tal anda, cómo se encuentra, qué sabemos de, cómo lo lleva, cómo lleva,
        qué tal sigue, info de, háblame de, qué tal están, y qué tal, cómo amaneció, cómo ha
        amanecido, cómo pasó la noche, cómo está hoy, cómo ha pasado la noche, qué hay de, novedades
        de, qué se sabe de, cómo le va a, qué pasa con, cómo se ve, noticias de, hay noticias de, cómo
        lo ves a
    """,
    "ask forecast": """
        qué tiempo hace, qué tiempo va a hacer, qué tiempo hará, previsión, la previsión, pronóstico,
        el tiempo, qué dice la previsión, cuánto frío va a hacer, qué temperatura va a hacer, qué
        temperatura hará, cuánto frío hará, cuál es la previsión, qué viene esta noche, cuál es el
        pronóstico, cuánto frío hará esta noche, qué previsión hay, qué mínima, cuánto viento, qué
        tiempo tenemos, qué tiempo nos espera, cómo viene la noche, qué mínima hay, cuánto baja la
        temperatura, cómo va a estar el tiempo, qué se espera esta noche, qué tan frío va a estar, qué
        tan frío, qué tan frío estará, va a estar frío, qué tiempo va a hacer mañana, qué tiempo hace
        esta noche, qué tiempo hará mañana, qué tiempo hará esta noche, qué tiempo va a hacer esta
        noche, tiempo para esta noche, tiempo esta noche, tiempo mañana, previsión para esta noche,
        previsión para mañana, pronóstico para esta noche, pronóstico para mañana, pronóstico de hoy,
        qué temperatura hará esta noche, qué temperatura va a hacer esta noche, a cuánto baja, a
        cuánto baja esta noche, a cuánto va a bajar, cuánto va a bajar, qué mínima hay esta noche,
        cuánto viento va a hacer, cómo viene el tiempo, cómo pinta la noche, qué frío va a hacer, cómo
        está el tiempo, el tiempo de mañana, el tiempo para mañana
    """,
    "ask forecast marked": """
        va a llover, va a llover esta noche, va a helar, va a helar esta noche, va a nevar, lloverá,
        lloverá esta noche, helará, helará esta noche, nevará, hará mucho frío, hará frío, hará frío
        esta noche, va a hacer frío, va a hacer frío esta noche, hará viento, va a hacer viento,
        llueve esta noche, hiela esta noche, va a nevar esta noche, va a estar frío
    """,
    "ask help": """
        ayuda, qué puedes hacer, qué sabes hacer, cómo funcionas, cómo funciona, cómo funciona esto,
        qué entiendes, comandos, instrucciones, qué te puedo decir, qué te puedo preguntar, qué puedo
        decirte, cómo se usa, qué puedo preguntar, qué puedo escribir, qué puedo escribirte, cómo se
        hace, cómo te uso, cómo uso esto, para qué sirves, qué haces tú, cómo aviso, qué cosas
        entiendes, ayúdame, cómo funciona el bot
    """,
    "ask wearing": """
        lleva, llevan, lleva puesto, pongo, ponemos, le pongo, le ponemos, se pone, le toca, toca, va
        a llevar, tiene puesto, llevará, hay que ponerle, ponerle, debería llevar, tiene que llevar,
        le pongo a, viste, hay que poner, le corresponde, conjunto, ropa, se le pone, llevar, lleva
        encima, atuendo, equipo, capas
    """,
    "ask tonight": """
        esta noche, hoy, esta tarde, esta mañana, pongo, ponemos, toca, le toca, mañana, le pongo, le ponemos,
        hay que ponerle, debería llevar, va a llevar, llevará, se pone, para, tiene que llevar, para esta
        noche, para hoy, le pongo a, pongo a
    """,
    "ask ready": """
        cuándo estará, cuándo está, ya está, cuándo, estará, cuánto falta, cuánto le falta, cuánto tarda, ya
    """,
    "sky": """
        tiempo, pronóstico, previsión, temperatura, temperaturas, lluvia, lloverá, llover, nieve, nevará, nevar,
        helada, helará, helar, hielo, viento, ráfagas, tormenta, frío, calor, grados, mínima, bajo cero, granizo
    """,
    "ahead": """
        esta noche, mañana, luego, más tarde, esta tarde, este fin de semana, el fin de semana,
        la semana que viene,
        esta semana, mañana por la mañana, mañana por la noche, por la noche, hoy, de noche,
        la madrugada, los próximos días
    """,
    "a horse": "caballo, yegua, poni, burro, burra, potro, potra, alazán, uno de los caballos, una de las yeguas",
    "subject": "yo, ella",
    "own": "la suya, el suyo, las suyas, los suyos, la propia, el propio",
    "only": "solo, solamente, únicamente, nada más, nomás, no más que",
    "toward": "a, al, para, pa",
    "part of day": "mañana, mañanas, tarde, tardes, noche",
    "not behind": "",
    "ears": "orejas, oreja, orejitas",
    "undo verb": """
        borra, bórralo, bórrame, borrar, borrad, anula, anular, anulad, ignora, ignorad, olvida,
        olvidad, olvídate de, quita, quitad, descarta, cancela, deshaz, elimina, retira,
        no hagáis caso a, no hagas caso a, no hagáis caso de, no contéis con
    """,
    "what was said": """
        lo que dije, lo que he dicho, lo que acabo de decir, lo que puse, lo que he puesto,
        lo que acabo de poner, lo que escribí, lo que he escrito, lo que mandé, lo que he mandado,
        lo último, lo último que dije, lo último que he dicho, lo último que puse,
        lo último que he puesto, lo de antes, lo de ahora, lo anterior, mi último mensaje,
        el último mensaje, mi mensaje, mi mensaje anterior, el mensaje anterior, el mío de antes,
        el último
    """,
    "afterwards": """
        hay que, hace falta, poned, pon, ponedle, ponle, ponedla, voy a, vamos a, dejad, deja, dejadla,
        déjala, no la pongáis, no lo pongáis, no usar, no usarla, habrá que, habría que, necesita,
        por favor, avisad, venid, bajad, llamad
    """,
}
