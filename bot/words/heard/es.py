"""Spanish, as barns in Spain and the Americas speak it."""

PHRASES = {
    "sign sweating": """
        sudar, sudad|o|a|os|as, sudando, suda, sudan, sudor, sudoros|o|a|os|as, con sudor,
        bañad|o|a|os|as en sudor, chorreando de sudor, chorreando sudor, empapad|o|a|os|as de sudor,
        empapad|o|a|os|as en sudor, mojad|o|a|os|as de sudor, sudadit|o|a, sudó, transpirad|o|a|os|as,
        transpirando, transpira, transpiran, sweaty, sweating, sudadísim|o|a, sudaba, ha sudado, sudada entera,
        con marcas de sudor, marcas de sudor, rastros de sudor, empapado en su sudor, hecho un mar de sudor,
        bañada de sudor, sudor bajo la manta, sudor debajo de la manta, sudadita entera, chorrea sudor,
        transpiró, sudaron, sudaban, han sudado, sudadit|o|a|os|as, sudadísim|o|a|os|as, sudadot|e|a,
        resudad|o|a|os|as, resudando, trasudando, suda a chorros, suda a mares, sudando a chorros,
        sudando a mares, suda la gota gorda, sudando la gota gorda, sudando tinta, sudando como un pollo,
        suda como un pollo, está como un pollo, hech|o|a un pollo, sudando como un cochino,
        sudando como un cerdo, hech|o|a una sopa de sudor, en un mar de sudor, chorrea de sudor,
        chorreand|o|a de sudor, goteando sudor, gotea sudor, gotas de sudor, cubiert|o|a|os|as de sudor,
        llen|o|a|os|as de sudor, perlad|o|a de sudor, empapad|o|a por el sudor, mojad|o|a|os|as por el sudor,
        mojadit|o|a de sudor, húmed|o|a|os|as de sudor, humedit|o|a de sudor, pegajos|o|a de sudor,
        calad|o|a|os|as de sudor, caladit|o|a de sudor, chopad|o|a de sudor, ensopad|o|a|os|as de sudor,
        ensopad|o|a en sudor, bañad|o|a|os|as de sudor, bañadit|o|a en sudor, brillante de sudor,
        blanc|o|a de sudor, blanc|o|a de espuma, espuma de sudor, llen|o|a de espuma, cubiert|o|a de espuma,
        espumeando, espumaraj|o|os, espuma en el pecho, espuma en el cuello, espuma entre las patas,
        cerco de sudor, cercos de sudor, con cercos de sudor, mancha de sudor, manchas de sudor,
        con manchas de sudor, marca de sudor, restos de sudor, sal del sudor, sudor seco, sudor reciente,
        sudor frío, con sudores, sudores, transpirad|o|a de más, transpirad|o|a entera, transpiraba,
        transpiraban, transpiraron, ha transpirado, han transpirado, traspira, traspiran, traspirando,
        traspirad|o|a|os|as, transpiradit|o|a, transpiración, suda por todos lados, suda por todas partes,
        rompió a sudar, ha roto a sudar, se ha puesto a sudar, se puso a sudar, empezó a sudar, empieza a sudar,
        ha empezado a sudar, está empezando a sudar, no para de sudar, no deja de sudar, sigue sudando,
        siguen sudando, sudand|o|a la pobre, sudadit|o|a perdid|o|a, sudad|o|a perdid|o|a,
        sudad|o|a hasta las orejas, pelo pegado de sudor, pelo pegado por el sudor,
        con el pelo pegado del sudor, se ha hartado de sudar, se hartó de sudar, sudorosit|o|a, acaba de sudar,
        sopa de sudor, está hecha agua de sudor, suando, sudandin|o|a, sudaíta, sudaíto, sudandito,
        hech|o|a sopa de sudor, en sudor, todo en sudor, chorreadit|o|a de sudor, bañadit|o|a de sudor,
        emparamad|o|a de sudor, sudad|o|a de arriba abajo, sudad|o|a de los pies a la cabeza, le corre el sudor,
        le chorrea el sudor, le cae el sudor, le gotea el sudor, con el cuello sudado, con el pecho sudado,
        cuello y pecho sudados, marca blanca de sudor, costra de sudor, con costra de sudor, salitre del sudor,
        trae sudor, traía sudor, trae mucho sudor, sudado hasta las patas, sudado hasta las verijas, sudada
        hasta las patas, sudada hasta las verijas, viene sudando, venía sudando, andaba sudando, andaba
        sudad|o|a, hech|o|a una sopa del sudor, hecho agua de sudor, chorreando la gota, sudando la gota,
        sudando como |caballo|puerco|chancho|loco|loca, sudando como un |caballo|puerco|chancho|loco, re
        transpirad|o|a, retranspirad|o|a, transpiradísim|o|a, transpirando a mares, pasad|o|a de sudor,
        pasadit|o|a de sudor, entrapad|o|a de sudor, mojad|o|a del sudor, mojadit|o|a del sudor, empapad|o|a del
        sudor,
        |sude|sudando|suda y |sude|sudando|suda, sude que sude, suda que suda, sudando que sudando, sudadero
    """,
    "sign hot": """
        muy abrigad|o|a|os|as, demasiado abrigad|o|a|os|as, va muy abrigad|o|a, va demasiado abrigad|o|a, tiene
        calor, tienen calor, tiene mucho calor, tienen mucho calor, con calor, con mucho calor, pasando calor,
        pasa calor, acalorad|o|a|os|as, sofocad|o|a|os|as, demasiado caliente, muy caliente, tenía calor, tiene
        bastante calor, está pasando calor, tiene un poco de calor, asad|o|a|os|as de calor, asad|o|a|os|as,
        asándose, cociéndose, cocid|o|a, achicharrad|o|a, muert|o|a|os|as de calor, se muere de calor, se asa,
        ardiendo, sobrecalentad|o|a, demasiado abrigad|o|a, pasa mucho calor, un calor tremendo, tenían calor,
        tuvo calor, ha tenido calor, han tenido calor, ha pasado calor, ha pasado mucho calor, pasaba calor,
        pasan calor, está pasando mucho calor, muchísimo calor, tiene muchísimo calor, tiene un calor que se
        muere, con un calor que se muere, tiene calorcito, tiene algo de calor, tiene calor de más, con calor de
        más, con bastante calor, con muchísimo calor, con un poco de calor, muertit|o|a de calor, muriéndose de
        calor, se muere del calor, se está muriendo de calor, se están muriendo de calor, ahogad|o|a de calor,
        se ahoga de calor, ahogándose de calor, asfixiad|o|a de calor, se asfixia de calor, asfixiad|o|a|os|as,
        asfixiándose, agobiad|o|a de calor, agobiad|o|a por el calor, agobiad|o|a del calor, sofocándose, se
        sofoca, se está asando, se están asando, se están cociendo, se está cociendo, se cuece, se cuecen, se
        asan, asad|o|a viv|o|a, asadit|o|a, cocid|o|a|os|as, cocidit|o|a, cocid|o|a viv|o|a, cocinándose, se
        está cocinando, se cocina, achicharrad|o|a|os|as, achicharrándose, se achicharra, se está achicharrando,
        sancochad|o|a|os|as, sancochándose, hirviend|o|a por debajo, torrad|o|a, torrándose, abochornad|o|a,
        acaloradit|o|a, acaloradísim|o|a, acalorándose, se acalora, recalentad|o|a|os|as, se recalienta,
        recalentándose, sobrecalentad|o|a|os|as, calentón, con un calentón, está que arde, están que arden,
        ardiend|o|a, que quema, está que quema, quema por debajo, caliente de más, demasiado calientit|o|a,
        demasiado calentit|o|a, excesivamente caliente, demasiado calientes, muy calientes,
        calentísim|o|a|os|as, calientísim|o|a|os|as, recaliente|s, caliente en exceso, bien caliente de más,
        caliente como un horno, hech|o|a un horno, está como un horno, hech|o|a una estufa, está como una
        estufa, como una sauna, en una sauna, hech|o|a una sauna, como en una sauna, debajo de la manta es un
        horno, pasad|o|a de calor, pasadit|o|a de calor, demasiado tapad|o|a, demasiado abrigad|o|a|os|as, muy
        abrigad|o|a de más, con demasiada manta, le sobra manta, le sobra la manta, le sobra ropa, le sobra
        abrigo, le sobra el forro, demasiada manta, lleva demasiada manta, lleva demasiado abrigo, mucho calor
        bajo la manta, mucho calor debajo, mucho calor debajo de la manta, caliente detrás de la oreja, con las
        orejas ardiendo, orejas ardiendo, resoplando de calor, jadeando de calor, jadea de calor, calor
        excesivo, exceso de calor, tiene un sofocón, con un sofocón, acalorao, tien calor, le sobra el pelo, le
        sobra to el pelo, le sobra todo, acalorao perdío, acalorad|o|a perdid|o|a, sofocad|o|a perdid|o|a,
        sofoco, con sofoco, acalorad|o|a de más, tiene bochorno, abombad|o|a de calor, sancochadit|o|a, que se
        cocina, se está sancochando viv|o|a, está hirviendo, está hirviendo por debajo, está ardiendo, ardiendo
        por debajo, está que hierve,
        |tiene|tenía|tienen|tenían|con|pasa|pasando |harto|alto|tremendo|bruto|demasiado calor,
        |tiene|tenía|tienen|tenían|con|pasa|pasando |caleta|banda|cualquier|pila|montón|bocha|cantidad de calor,
        |tiene|tenía|tienen|tenían|con|pasa|pasando un |gran|tremendo|bruto|alto|señor|buen calor,
        |tiene|tenía|tienen|tenían|con|pasa|pasando un calor
        |bárbaro|tremendo|terrible|infernal|horrible|espantoso|bestial|enorme|loco,
        |tiene|tenía|tienen|tenían|con|pasa|pasando |cualquier|terrible|re calor, |tiene|tenía|con un
        |calorón|calorazo|sofoco|bochorno, |tiene|tenía|con un montón de calor, se está
        |sofocando|ahogando|asfixiando de calor, se está |sancochando|rostizando|horneando|derritiendo,
        |resoplando|jadeando|bufando|acezando |al|bajo|en el sol, resoplando del calor, jadeando del calor,
        acezando, acezando de calor, derritiéndose, derretid|o|a, derretid|o|a de calor, hecho un horno abajo,
        hirviendo abajo, quemando por debajo, ardiendo abajo, está que se
        |cuece|asa|derrite|quema|ahoga|sancocha, anda con calor, anda con mucho calor, anda acalorad|o|a, anda
        sofocad|o|a
    """,
    "sign shivering": """
        temblar, tiritar, tiembla, tiemblan, temblando, temblor, temblores, tirita, tiritan, tiritando, tiembla
        de frío, temblando de frío, tiritando de frío, tiritona, temblaba, tiritaba, tembloros|o|a|os|as, con
        escalofríos, escalofríos, tembló, shivering, tembleque, con tembleque, con tiritona, con temblores,
        tiritaba de frío, temblaba de frío, le tiembla todo, tiembla entera, tiembla entero, temblando como una
        hoja, tiene temblores, tiene escalofríos, está con temblores, titirita, titiritan, titiritando,
        titiritaba, temblaron, temblaban, tiritaron, tiritaban, tiritó, ha temblado, está temblando, están
        temblando, temblandito, temblandico, temblequeando, temblequea, tembleques, con tembleques, le ha dado
        la tiritona, le ha dado una tiritona, le dio una tiritona, le dio la tembladera, tembladera, con
        tembladera, temblor de frío, temblores de frío, tiembla de arriba abajo, temblando de arriba abajo,
        tiembla todit|o|a, temblando todit|o|a, temblando enter|o|a, tiembla como una hoja, tiembla como un
        flan, temblando como un flan, tiembla que da pena, temblando que da pena, tiembla mucho, tiembla un
        poco, temblorcit|o|os, tiriteras, tiritera, con tiritera, tiritones, da tiritones, le tiemblan las
        patas, le tiemblan los flancos, le tiembla la piel, le tiembla el cuerpo, le tiembla el lomo, le
        tiemblan los músculos, le castañetean los dientes, castañeteando, castañetea, dando diente con diente,
        da diente con diente, dentellando, no para de temblar, no deja de temblar, no para de tiritar, no deja
        de tiritar, sigue temblando, siguen temblando, sigue tiritando, siguen tiritando, empieza a temblar,
        empezó a temblar, ha empezado a temblar, empieza a tiritar, ha empezado a tiritar, empezó a tiritar, se
        puso a temblar, se ha puesto a temblar, se puso a tiritar, está temblona, temblón, temblona,
        temblorosit|o|a, estremeciéndose, se estremece, con estremecimientos, tembland, temblnado, tenblando,
        tiembl, tritando, dando temblores, da temblores, le dan temblores, le dan escalofríos, tiene tembleque,
        tiene tiritona, con la tiritona, con el tembleque, temblique, temblando del frío, tiritando del frío,
        tiembla del frío, tiritando la pobre, escalofriad|o|a, le está temblando todo, temblequeante, chuchos de
        frío, tiembla como gelatina, como gelatina, tembleando, temblandillo, dando tiritones, le agarró la
        tembladera, le agarró la tiritona, le dio tembladera, anda con tembladera, le entró la tiritona, le ha
        entrado la tiritona, le ha entrado el tembleque, le entró el tembleque, le entraron temblores, le han
        entrado temblores, temblor en los flancos, temblores en los flancos, temblores musculares,
        |temblando|tiritando como |hoja|gelatina|perro|perrito|flan|loco|loca|pollito|pollo,
        |temblando|tiritando como un |perro|perrito|pollito|pollo|papel, dando diente contra diente, le
        castañean los dientes, castañeando, le da tembladera, anda temblando, anda tiritando, andaba tiritando,
        andaba temblando, trae tembladera, trae temblorina, temblorina, con temblorina, le dio la temblorina, le
        agarró la temblorina, se la pasa temblando, zangoloteándose de frío, con tiritones, le dieron tiritones,
        con chuchos, tiene chuchos, le dieron chuchos, con chucho, tiene chucho, chucho de frío, le dio chucho,
        tiritandito, retemblando,
        |tiemble|tiembla|tirite|tirita|temblando y |tiemble|tiembla|tirite|tirita|temblando, tiembla que tiembla,
        tiemble que tiemble, tirita que tirita
    """,
    "sign cold": """
        cagá de frío, cagao de frío, cagado de frío, cagada de frío, muert|o|a de frío, pelad|o|a de frío, tiene
        frío, tienen frío, tiene mucho frío, tienen mucho frío, tiene bastante frío, con frío, con mucho frío,
        pasando frío, pasa frío, tenía frío, tiene algo de frío, tiene un poco de frío, un poco de frío,
        aterid|o|a|os|as, muert|o|a|os|as de frío, congelad|o|a|os|as, tiene las orejas frías, orejas frías,
        orejas heladas, helad|o|a|os|as de frío, frí|o|a detrás del codo, frí|o|a al tacto, poco abrigad|o|a,
        pelad|o|a de frío, se muere de frío, con las orejas heladas, con las orejas frías, las orejas heladas,
        las orejas frías, tiene las orejas heladas, destemplad|o|a, fresc|o|a detrás del codo, ties|o|a de frío,
        ties|os|as de frío, entumecid|o|a de frío, tuvo frío, tenían frío, ha tenido frío, han tenido frío, ha
        pasado frío, han pasado frío, pasaba frío, pasan frío, pasaron frío, ha pasado mucho frío, está pasando
        frío, están pasando frío, está pasando mucho frío, muchísimo frío, tiene muchísimo frío, con muchísimo
        frío, con bastante frío, con algo de frío, con un poco de frío, con un frío que se muere, tiene un frío
        que se muere, tiene un frío tremendo, tiene friíto, tiene fresquito, tiene frillo, tiene friecito,
        muertit|o|a|os|as de frío, muriéndose de frío, se está muriendo de frío, se están muriendo de frío, se
        mueren de frío, muert|o|a|os|as del frío, se muere del frío, heladit|o|a|os|as de frío, helad|o|a hasta
        los huesos, heladit|o|a, helándose, se están helando, se hielan, se ha
        quedado helad|o|a, se quedó helad|o|a, se me ha quedado
        frí|o|a, se está quedando frí|o|a, quedándose frí|o|a, congeladit|o|a, congelándose, se está congelando,
        se congelan, se están congelando, se ha congelado, arrecid|o|a|os|as, arrecidit|o|a,
        pasmad|o|a de frío, encogid|o|a de frío, encogid|o|a por el frío, encogidit|o|a de frío, acurrucad|o|a
        de frío, aterecid|o|a, aterid|o|a|os|as de frío, ateridit|o|a, entelerid|o|a|os|as,
        destempladit|o|a, destemplad|o|a|os|as, con destemple, ties|o|a del frío,
        amoratad|o|a de frío, engarrotad|o|a de frío, engarrotad|o|a, agarrotad|o|a de frío, entumid|o|a,
        entumecid|o|a|os|as, garrotillo de frío, orejas como témpanos, orejas como el hielo, orejas como hielo,
        como un témpano, hech|o|a un témpano, como un témpano de hielo, está como un témpano, como el hielo,
        como un cubito, hech|o|a un cubito, como un carámbano, hech|o|a un carámbano, como un polo, hech|o|a un
        polo, como una paleta, hech|o|a una paleta, orejas congeladas, orejas muy frías, orejas bien frías,
        orejas fresquitas, las orejas como témpanos, las orejas como el hielo, las orejas muy frías, las orejas
        congeladas, orejitas frías, orejitas heladas, las orejitas heladas, las orejitas frías, con las orejitas
        heladas, con las orejitas frías, con las orejas como témpanos, tiene las orejitas heladas, tiene las
        orejitas frías, orejas gélidas, base de las orejas fría, la base de las orejas fría, base de la oreja
        fría, frí|o|a detrás de los codos, frí|o|a en la cruz, frí|o|a por debajo, frí|o|a bajo la manta,
        frí|o|a debajo de la manta, helad|o|a bajo la manta, helad|o|a debajo de la manta, helad|o|a por debajo,
        helad|o|a al tacto, frí|o|a como un témpano, frí|o|a como el hielo, frí|o|a como un muerto, frí|o|a de
        verdad, el lomo frío, lomo helado, el lomo helado, los riñones fríos, riñones fríos, riñones helados,
        pecho helado, el pecho helado, el pecho frío, los flancos fríos, los ijares fríos, la grupa fría, la
        grupa helada, las costillas frías, el cuello frío, la piel fría, la piel helada, piel fría, poca manta,
        con poca manta, lleva poca manta, le falta manta, le falta abrigo, le falta ropa, le falta una capa,
        poco tapad|o|a, demasiado poco abrigad|o|a, falt|o|a de abrigo, desabrigad|o|a|os|as de más, pela de
        frío, se pela de frío, peladit|o|a de frío, friolenta perdida, con el pelo erizado, pelo
        erizado de frío, con el pelo de punta, pelo de punta de frío, con carne de gallina, con la cola metida
        del frío, cola metida de frío, apretad|o|a de frío, emparamad|o|a de frío, friíto de más, le ha cogido
        el frío, ha cogido frío, cogió frío, ha pillado frío, pilló frío, agarró frío, se agarró un frío,
        entrad|o|a en frío, le ha entrado frío, le entró frío, fresc|o|a de más, frí|o|a de más, demasiado
        frí|o|a, demasiado fresc|o|a, heláu, tien fríu, con fríu, oreyes fríes, oreyes como carámbanos, arrecíu,
        arrecíos, helaín, amorriñad|o|a de frío, orejas friísimas, orejas fresquísimas, las orejas friísimas,
        orejas como polos, las orejas como polos, orejas como cubitos, tiene las orejas como el hielo, tiene las
        orejas como témpanos, tiene las orejas congeladas, tiene las orejas muy frías, tiene las orejas
        fresquitas, tiene las orejas friísimas, tiene orejas frías, tiene frías las orejas, frías las orejas,
        heladas las orejas, orejas y patas frías, orejas y patas heladas,
        |tiene|tenía|tienen|tenían|con|pasa|pasando |harto|tremendo|bruto|demasiado frío,
        |tiene|tenía|tienen|tenían|con|pasa|pasando |caleta|banda|cualquier|pila|montón|cantidad de frío,
        |tiene|tenía|tienen|tenían|con|pasa|pasando un |gran|tremendo|bruto|buen frío, |tiene|tenía|con un
        montón de frío, |tiene|tenía|tienen|tenían|con|pasa|pasando un frío
        |bárbaro|terrible|horrible|espantoso|bestial|enorme|loco, |tiene|tenía|tienen|tenían|con|pasa|pasando
        |cualquier|terrible|re frío, anda con frío, anda con mucho frío, anda helad|o|a, andaba con frío, está
        que se |congela|hiela|entume, hech|o|a |hielo|paleta, hech|o|a un |hielo|hielito, enchinad|o|a de frío,
        enchinada la piel, engarruñad|o|a, engarruñad|o|a de frío, hech|o|a bolita de frío, tullid|o|a de frío,
        encogid|o|a del frío, chupad|o|a de frío, se está |entumiendo|engarruñando|enfriando, las orejas bien
        |frías|heladas, orejas bien heladas, |trae|tiene|con las orejas bien |frías|heladas, trae las orejas
        |frías|heladas|congeladas, trae frío, trae mucho frío, traía frío, trae harto frío
    """,
    "sign comfortable": """
        está bien de temperatura, bien de temperatura, buena temperatura, está a buena temperatura,
        de lujo, está de lujo, están de lujo, va de lujo,
        se le quitó la tembladera, se le quitó el tembleque, se le pasó la tembladera, se le pasó el temblor,
        se le quitó el temblor, se le quitó la tiritona, se le pasó la tiritona, ya se le quitó la tembladera,
        se le quitó el frío, se le pasó el frío, se le fue la tembladera, se le fue el temblor, ya se le quitó el frío,
        cómod|o|a|os|as, a gusto, calentit|o|a|os|as, calentit|o|a|os|as y sec|o|a|os|as,
        sec|o|a|os|as y calentit|o|a|os|as, confortable|s, en su punto, temperatura perfecta, tan a gusto,
        está a gusto, bien de temperatura, calient|e|es y sec|o|a|os|as, calentit|o|a y a gusto,
        tan ric|o|a|os|as, ni frío ni calor, ni calor ni frío, sin frío ni calor, entró en calor,
        ha entrado en calor, ya entró en calor, ya ha entrado en calor, entrad|o|a en calor, en calor,
        sec|o|a|os|as y calient|e|es, sequit|o|a y calentit|o|a, buena temperatura, temperatura correcta,
        bien abrigad|o|a, sin sudor, sin temblores, sin sudar, ni gota de sudor, sin tiritar, sin temblar,
        sin novedad con, sin novedad en, sin problemas con, se le pasó el frío, ya no pasa frío,
        ya de temperatura bien, calentit|o|a y bien,
        comodísim|o|a|os|as, comodit|o|a|os|as, comodit|o|a y sequit|o|a, cómod|o|a y sec|o|a, más a gusto,
        muy a gusto, a gustito, a gustísimo, a gustico, de lo más a gusto, encantad|o|a de la vida,
        tan calentit|o|a|os|as, calentit|o|a|os|as y cómod|o|a|os|as, bien calentit|o|a|os|as,
        calentiñ|o|a, calentic|o|a, calientit|o|a|os|as, bien calientit|o|a|os|as,
        calientit|o|a|os|as y sec|o|a|os|as, sec|o|a|os|as y calientit|o|a|os|as,
        calientit|o|a y sequit|o|a, sequit|o|a y calientit|o|a, calentit|o|a y sequit|o|a,
        sequit|o|a|os|as y a gusto, sec|o|a|os|as y a gusto, sec|o|a|os|as y tan a gusto,
        sec|o|a|os|as y bien, sec|o|a|os|as y cómod|o|a|os|as, sequit|o|a y bien,
        sec|o|a|os|as y tranquil|o|a|os|as, sec|o|a|os|as y templad|o|a|os|as,
        templad|o|a|os|as y sec|o|a|os|as, sequit|o|a y templadit|o|a, templadit|o|a y sequit|o|a,
        templadit|o|a y a gusto, a gusto y sec|o|a|os|as, calentit|o|a por debajo, calentit|o|a debajo,
        caliente y sequit|o|a, calient|e|es y a gusto, calor justo, con el calor justo,
        ni sudad|o|a ni frí|o|a, ni frí|o|a ni sudad|o|a, ni frí|o|a ni caliente, ni caliente ni frí|o|a,
        ni suda ni tiembla, ni tiembla ni suda, ni suda ni tirita, ni suda ni nada, ni tiembla ni nada,
        ni pasa frío ni calor, ni tiene frío ni calor, no tiene ni frío ni calor, ni frío ni sudor,
        ni sudor ni frío, ni sudores ni temblores, ni sudor ni temblores, ni helad|o|a ni sudad|o|a,
        ni mojad|o|a ni frí|o|a, ni frí|o|a ni mojad|o|a, ni sudad|o|a ni helad|o|a, ni sudad|o|a ni nada,
        ni frí|o|a ni nada, ni una gota de sudor, sin una gota de sudor, sin gota de sudor,
        sin sudor ninguno, sin sudor alguno, sin rastro de sudor, ni rastro de sudor,
        sin temblores ni nada, sin pasar frío, sin pasar calor, sin frío, sin calor, ya no tiembla nada,
        ya no suda nada, temperatura ideal, temperatura buena, temperatura bien, temperatura normal,
        de temperatura perfect|o|a, de temperatura genial, de temperatura estupend|o|a,
        perfect|o|a de temperatura, genial de temperatura, ideal de temperatura,
        correct|o|a de temperatura, a la temperatura perfecta, a buena temperatura, a temperatura perfecta,
        con buena temperatura, bien de calor, bien de calorcito, va bien de manta, van bien de manta,
        va bien de mantas, bien de manta, bien de ropa, bien de abrigo, va bien de abrigo, con calorcito,
        calorcito rico, tiene calorcito rico, orejas calentitas, orejas calientes, las orejas calientes,
        las orejas calentitas, las orejas calientitas, orejas templadas, orejas tibias,
        las orejas templadas, las orejas tibias, con las orejas calentitas, con las orejas templadas,
        con las orejas calientes, tiene las orejas calentitas, tiene las orejas calientes,
        tiene las orejas templadas, orejitas calientes, orejitas calentitas, las orejitas calentitas,
        se le ha pasado el frío, se le quitó el frío, se le ha quitado el frío, se le pasó la tiritona,
        se le ha pasado la tiritona, se le pasó el tembleque, se le ha pasado el tembleque,
        se le pasaron los temblores, se le han pasado los temblores, se le quitaron los temblores,
        se le quitó el temblor, se le pasó el temblor, se le fue el frío, se le fueron los temblores,
        se le pasó el calor, se le ha pasado el calor, se le pasó el sofoco, ya entraron en calor,
        han entrado en calor, va entrando en calor, ya va entrando en calor, está entrando en calor,
        entrando en calor, ha recuperado el calor, ha recuperado la temperatura, recuperó la temperatura,
        ya ha cogido calor, ha cogido calor, cogió calor, ya cogió calor, agarró calor,
        ya agarró calorcito, se calentaron, se han calentado, ya se me ha calentado,
        ya se ha secado y está a gusto, en la gloria, está en la gloria, en la gloria bendita,
        como en la gloria, más feliz que una perdiz, feliz como una perdiz, abrigadit|o|a|os|as,
        bien abrigadit|o|a|os|as, bien abrigad|o|a|os|as, abrigadit|o|a y sec|o|a, bien tapadit|o|a|os|as,
        bien tapad|o|a|os|as, tapadit|o|a y calentit|o|a, está estupend|o|a de temperatura, en su salsa,
        ric|o|a y calentit|o|a, tan pancho, tan panch|o|a|os|as, tan tranquil|o|a|os|as, tan campante|s,
        tan feliz, tan felices, tan content|o|a|os|as, perfecto por debajo, bien por debajo, bien debajo,
        bien bajo la manta, bien debajo de la manta, muy bien por debajo, perfect|o|a debajo de la manta,
        perfect|o|a bajo la manta, sec|o|a debajo de la manta, sec|o|a bajo la manta, sec|o|a por debajo,
        sequit|o|a por debajo, sequit|o|a debajo, sec|o|a|os|as por debajo de la manta,
        nada |frío|fría|fríos|frías|sudado|sudada|sudados,
        nada |sudadas|caliente|mojado|mojada|helado|helada|acalorado|acalorada,
        nada de |frío|calor|sudor|temblores, nada de nada de |frío|calor|sudor,
        nada |temblando|tiritando|rozada|rozado,
        agusto, bien agusto, agustit|o, bien a gusto, bien agustito, agusto y sec|o|a, calientit|o|a y a gusto,
        calientit|o|a y agusto, tan agusto, muy agusto, está agusto, tibi|o|a y sec|o|a|os|as, sec|o|a|os|as y
        tibi|o|a|os|as, sequito y calientitos, sequito y calientitas, sequita y calientitos, sequita y
        calientitas, sequitos y calientito, sequitos y calientita, sequitos y calientitos, sequitos y
        calientitas, sequitas y calientito, sequitas y calientita, sequitas y calientitos, sequitas y
        calientitas, calientito y sequitos, calientito y sequitas, calientita y sequitos, calientita y sequitas,
        calientitos y sequito, calientitos y sequita, calientitos y sequitos, calientitos y sequitas,
        calientitas y sequito, calientitas y sequita, calientitas y sequitos, calientitas y sequitas,
        tibiecit|o|a y sec|o|a, tibiecit|o|a por debajo, tibi|o|a por debajo, tibi|o|a abajo, calentit|o|a
        abajo, calientit|o|a abajo, sec|o|a abajo, sequit|o|a abajo, calentit|o|a y sec|o|a abajo, calientit|o|a
        por debajo, calientit|o|a debajo, bien abajo de la manta, calent|ita|ito abajo de la manta, orejas
        tibiecitas, las orejas tibiecitas, con las orejas tibias, tiene las orejas tibias, las orejas bien
        calentitas, dej|ó|aron de |temblar|tiritar|sudar|transpirar ya, ni transpirad|o|a, nada
        transpirad|o|a|os|as, no transpira nada
    """,
    "sign rubbed": """
        rozad|o|a|os|as, rozadura, rozaduras, una rozadura, roce, roces, rozando, roza, pelad|o|a|os|as por la
        manta, le roza, le rozan, rozón, despellejad|o|a, escoriad|o|a, escoriación, matadura, mataduras, roces
        en, con rozaduras, tiene una rozadura, tiene rozaduras, rozad|o|a por la manta, herida de la manta,
        herida por la manta, pelo caído, ha perdido pelo, perdió pelo, pierde pelo, calva en, una calva, calvas,
        en carne viva, marcas de la manta, le ha hecho una rozadura, le ha hecho rozadura, rozaduras de la
        manta, llaga, llagas, raspón, raspones, raspad|o|a|os|as, rozadit|o|a, rozadurilla, rozadurita,
        rocecit|o|os, rozamiento, rozamientos, tiene un roce, tiene roces, con un roce, con roces, le ha salido
        una rozadura, le salió una rozadura, le están saliendo rozaduras, le han salido rozaduras, le ha salido
        un roce, le está haciendo rozadura, le está haciendo rozaduras, le hace rozadura, le hace rozaduras, le
        hizo una rozadura, le hizo rozadura, le hicieron una rozadura, le ha hecho un roce, le ha hecho una
        herida, le está haciendo herida, le hace herida, le hizo herida, le ha rozado, le rozó, le está rozando,
        le están rozando, le rozaba, rozan, rozaron, ha rozado, han rozado, le lastima, le está lastimando, le
        ha lastimado, le lastimó, lastimad|o|a por la manta, lastimad|o|a de la manta, lastimad|o|a de la
        cobija, le raspa, le está raspando, raspadit|o|a, raspadura, raspaduras, tiene una raspadura,
        raspándole, le aprieta la manta, despellejad|o|a|os|as, le ha despellejado, despellejándole, se ha
        despellejado, peladit|o|a|os|as de la manta, pelad|o|a|os|as de la manta, pelad|o|a del roce, pelad|o|a
        del pecho, pelad|o|a en el pecho, pelad|o|a de los hombros, pelad|o|a en los hombros, pelad|o|a el
        hombro, hombros pelados, los hombros pelados, hombro pelado, el hombro pelado, pecho pelado, el pecho
        pelado, cruz pelada, la cruz pelada, la cruz en carne viva, hombros en carne viva, en carnes vivas, a
        carne viva, está en carne viva, sin pelo en los hombros, sin pelo en el pecho, sin pelo en la cruz, sin
        pelo en el hombro, calvita, calvas en, calva en el hombro, calvas en los hombros, calva en el pecho, le
        ha quitado el pelo, le está quitando el pelo, le está comiendo el pelo, se le ha caído el pelo, se le
        está cayendo el pelo, se le cae el pelo de los hombros, se está quedando sin pelo, pelo rozado, pelo
        roto, pelo comido, pelo gastado, pelo desgastado, herida en la cruz, heridas en la cruz, herida en el
        hombro, heridas en los hombros, herida en el pecho, herida de roce, heridas de roce, herida de rozadura,
        heridas de la manta, heriditas, marca de la manta, marcas de roce, marca de roce, marcas de rozadura,
        marcas de la cobija, roces de la manta, roce de la manta, roces de manta, roce en el hombro, roce en la
        cruz, rozad|o|a|os|as de la manta, rozad|o|a de la cobija, rozaduras de manta, rozadura de la manta,
        rozadura de manta, escocid|o|a|os|as, escocedura, escoceduras, irritad|o|a por la manta, irritad|o|a del
        roce, irritad|o|a de la correa, irritación de la manta, piel irritada, excoriación, excoriaciones,
        escoriaciones, costra en el hombro, costra en la cruz, costras de la manta, levantada la piel, se le ha
        levantado la piel, mata en la cruz, cruz rozada, la cruz rozada, hombros rozados, los hombros rozados,
        hombro rozado, el hombro rozado, pecho rozado, el pecho rozado, llagad|o|a|os|as, llaguita, ulcerad|o|a,
        peladura, peladuras, mondad|o|a, rozandole, rosadura, rosaduras, refregad|o|a, refregón, quemadura de la
        correa, quemazón de la correa, pelo del |hombro|pecho|cuello|lomo comido, pelo del
        |hombro|pecho|cuello|lomo gastado, pelo del |hombro|pecho|cuello rozado, pelo comido por la manta,
        comido por la manta, pelo comido de la manta, buena rozadura, una buena rozadura, tiene una buena
        rozadura, rozadura fea, rozadura buena, rozadura curiosa, rozadura gorda, fea rozadura, una fea
        rozadura, tiene una fea rozadura, una rozadura fea, tiene una rozadura fea, tiene un buen roce, tiene un
        roce feo, un buen roce, un roce feo, roce feo, buenos roces, roces feos, tiene roces feos, lleva un
        roce, lleva roces, lleva una rozadura, lleva rozaduras, trae un roce, trae roces, trae una rozadura,
        trae rozaduras, trae una herida de la manta, lleva una herida de la manta, le ha salido una calva, le
        salió una calva, le están saliendo calvas, haciendo rozadura, haciendo rozaduras, haciendo una rozadura,
        está haciendo una rozadura, le está haciendo una rozadura, haciendo roce, haciendo herida, haciéndole
        rozadura, haciéndole rozaduras, haciéndole una rozadura, haciéndole herida, haciéndole roce, haciéndole
        daño en, le hace daño en, le está haciendo daño en, le hizo daño en, lastimad|o|a por la correa, se
        lastimó con la manta, se lastimó con la cobija, quemad|o|a por la manta, peladit|o|a de los hombros,
        peladit|o|a del pecho, chafad|o|a por la manta, |cruz|paleta|crin|grupa |lastimada|raspada|despellejada,
        |hombros|encuentros|costados están |pelados|lastimados|rozados|raspados, |hombros|encuentros|costados
        |lastimados|raspados|despellejados, |trae|tiene la carne viva, en la carne viva, rub, rubs, un rub, una
        pelada, un pelón, un raspón, se está |pelando|rozando|lastimando|despellejando|llagando, se le está
        |pelando|rozando|lastimando|despellejando|llagando, le está |sacando|haciendo|dejando una
        |llaga|herida|matadura|peladura|marca|lastimadura, le está sacando el pelo, le |sacó|dejó|hizo una
        |llaga|matadura|peladura|lastimadura|raspadura|marca, le |saca|sacó|come|comió|voló|quita|quitó el pelo,
        lastimadura, lastimaduras, una lastimadura, lastimad|o|a de la cruz, lastimad|o|a de tanto roce,
        lastimad|o|a del roce, lastimad|o|a en la |cruz|paleta, lastimad|o|a en el |hombro|pecho, lastimad|o|a
        en los hombros, rozad|o|a en la |cruz|paleta, rozad|o|a en el |hombro|pecho, rozad|o|a en los hombros,
        pelad|o|a en la |cruz|paleta, pelad|o|a en el lomo, pelad|o|a de la |cruz|paleta, pelad|o|a del lomo,
        sin pelo en la |paleta|crin, sin pelo en el lomo, se le ve la carne viva, se le ve carne viva, se le ve
        lo |rojo|pelado|vivo, tiene la piel |roja|irritada|viva de la manta, trae un pelón, tiene un pelón, con
        un pelón, un pelón en, trae pelones, pelones, se talló con la |cobija|manta|capa, se rozó con la
        |cobija|manta|capa, se peló con la |cobija|manta|capa, se raspó con la |cobija|manta|capa, la
        |cobija|manta|capa le |talló|peló|rozó|raspó|lastimó, la |cobija|manta|capa lo está
        |tallando|pelando|rozando|raspando|lastimando, la |cobija|manta|capa la está
        |tallando|pelando|rozando|raspando|lastimando, tallad|o|a de la |cobija|manta|capa, le talla, le está
        tallando, talladura, talladuras, una talladura, trae talladuras, le anda rozando, le viene rozando, le
        anda tallando, |pelo|pecho|hombro|lomo|cuello |está|anda |pelado|lastimado|rozado, |cruz|paleta|crin
        |está|anda |pelada|lastimada|rozada, le |peló|pelaron|pela el |pecho|hombro|lomo|cuello, le
        |peló|pelaron|pela la |cruz|paleta|crin, se le |peló|rozó|lastimó el |pecho|hombro|lomo|cuello, se le
        |peló|rozó|lastimó la |cruz|paleta|crin, |trae|tiene|con el |hombro|pecho|lomo|cuello
        |lastimado|rozado|raspado, |trae|tiene|con la |cruz|paleta|crin |lastimada|rozada|raspada,
        |trae|tiene|con los |hombros|encuentros |lastimados|rozados|raspados, |pecho|hombro|lomo|cuello
        |lastimado|raspado, le |peló|pelaron|pela los hombros,
        |rasque|rasca|rásquese y |rasque|rasca, rasca que rasca, rasque que rasque, se rasca y se rasca,
        no |para|deja|paraba|dejaba de |rascarse|restregarse|frotarse|rozarse
    """,
    "sign unwell": """
        cólico, tiene cólico, cólicos, enferm|o|a|os|as, mal|o|a|os|as, malit|o|a|os|as, no come, no comen, no
        quiere comer, no ha comido, no comió, tose, tosen, tosiendo, con tos, decaíd|o|a|os|as,
        apátic|o|a|os|as, tiene fiebre, fiebre, con fiebre, diarrea, tiene diarrea, no está bien, no se
        encuentra bien, se encuentra mal, está mal, pachuch|o|a|os|as, sin apetito, desganad|o|a|os|as,
        letárgic|o|a, indispuest|o|a, se siente mal, no anda bien, no está fin|o|a, triste y apagad|o|a, ha
        dejado la comida, se revuelca de dolor, con dolor, dolorid|o|a, no prueba bocado, no tiene apetito,
        inapetente|s, muy apagad|o|a, apagad|o|a, no quiso comer, no quiere su comida, le duele la panza, le
        duele la tripa, le duele la barriga, no come nada, no se acaba la comida, con cólico, está con cólico,
        tiene mocos, con mocos, mocos, moquea, echad|o|a y no se levanta, no se levanta, escarba, se mira los
        flancos, se mira la tripa, respira mal, respira fuerte, respira con dificultad, no toca el heno, no ha
        tocado el heno, no ha tocado la comida, no ha tocado el pienso, rar|o|a, no es ell|a, no es él mismo,
        con fiebre alta, febril, tiene infosura, infosura, débil, se tambalea, muy decaíd|o|a, muy triste, no
        quiere comer nada, no ha querido comer, ha dejado el pienso, dejó el pienso, no se encuentra nada bien,
        está fatal, fatal, no está nada bien, no se acabó, no se ha acabado, no se terminó, no se ha terminado,
        dejó la comida, no terminó su comida, no terminó el pienso, no acabó el pienso, cólico de arena, cólico
        de gases, con un cólico, principio de cólico, síntomas de cólico, pinta de cólico, tiene pinta de
        cólico, parece cólico, parece un cólico, amago de cólico, colicad|o|a, acolicad|o|a, está de cólico, le
        ha dado un cólico, le dio un cólico, le dio cólico, malic|o|a, malucho|s, maluch|o|a|os|as,
        pachuchill|o|a, pachuchit|o|a, enfermit|o|a|os|as, regulín, regulín regulán, está regular, está regulín,
        no anda fin|o|a, no está católic|o|a, no anda muy católic|o|a, no la veo bien, no lo veo bien, no los
        veo bien, no le veo bien, no la veo fina, no lo veo fino, la veo mal, lo veo mal, la veo mala, lo veo
        malo, la veo rara, lo veo raro, la veo triste, lo veo triste, la veo apagada, lo veo apagado, la veo
        decaída, lo veo decaído, la noto rara, lo noto raro, la noto mal, lo noto mal, la noto triste, lo noto
        triste, la noto apagada, lo noto apagado, no está como siempre, no es el de siempre, no es la de
        siempre, no andan bien, no se ve bien, no se ve nada bien, no la veo nada bien, no lo veo nada bien, no
        está normal, no tiene buena cara, no tiene buena pinta, tiene mala pinta, tiene mala cara, tiene mal
        aspecto, mal aspecto, algo le pasa, le pasa algo, algo le duele, le duele algo, le duele el vientre, le
        duele el estómago, dolor de barriga, dolor de panza, dolor de tripa, con dolor de barriga, dolor
        abdominal, timpanizad|o|a, hinchad|o|a de barriga, hinchad|o|a de la barriga, barriga hinchada, la
        barriga hinchada, tripa hinchada, panza hinchada, la panza hinchada, se revuelca mucho, se revuelca sin
        parar, no para de revolcarse, revolcándose de dolor, se tira al suelo, se está tirando al suelo, se echa
        y se levanta, se tumba y se levanta, se acuesta y se levanta, tumbad|o|a y no se levanta, tirad|o|a en
        el suelo, tirad|o|a y no se levanta, echad|o|a y no quiere levantarse, no quiere levantarse, no se
        quiere levantar, no se puede levantar, no puede levantarse, no se tiene en pie, no se tiene de pie, no
        se mantiene en pie, se mira la barriga, se mira la panza, se mira el vientre, se mira los ijares,
        mirándose el flanco, mirándose los flancos, mirándose la tripa, mirándose la barriga, se mira el
        costado, se mira los costados, se da patadas en la barriga, se da patadas en la tripa, escarba mucho,
        escarbando mucho, rasca el suelo sin parar, no caga, no ha cagado, no ha hecho caca, no hace caca, sin
        hacer caca, no defeca, no ha defecado, no hay cagajones, sin cagajones, no bosteó, no bebe, no bebe
        agua, no ha bebido, no ha bebido nada, no bebió, no quiere beber, no quiere agua, no quiere el heno, no
        quiere heno, no quiere el pienso, no quiere pienso, no quiere la comida, no quiere su pienso, no quiere
        ni el heno, no quiere comerse el heno, no quiere la alfalfa, no quiere el concentrado, no quiere ni la
        zanahoria, no quiso el pienso, no quiso el heno, no quiso la comida, no quiso beber, no ha querido el
        pienso, no ha querido el heno, no ha querido la cena, no ha querido el desayuno, no ha querido beber, no
        ha comido nada, no ha comido su pienso, no ha comido el pienso, no ha comido el heno, no comió nada, no
        comió el pienso, no comió el heno, no ha probado bocado, no ha probado el pienso, no ha probado el heno,
        no ha probado la comida, no prueba el heno, no prueba el pienso, no probó bocado, no toca el pienso, no
        toca la comida, no tocó el heno, no tocó el pienso, no tocó la comida, no ha tocado la cena, no ha
        tocado el desayuno, no ha tocado la alfalfa, no ha tocado nada, ni ha tocado el heno, ni ha tocado el
        pienso, ni tocó el heno, ni toca el heno, ni come ni bebe, apenas come, apenas ha comido, apenas come
        nada, come poco y mal, come fatal, ha comido fatal, ha comido poquísimo, se ha dejado el pienso, se dejó
        el pienso, se ha dejado la comida, se dejó la comida, se ha dejado la cena, se ha dejado todo el pienso,
        se dejó medio pienso, ha dejado medio pienso, ha dejado todo el pienso, dejó todo el pienso, ha dejado
        todo el heno, ha dejado el heno, dejó el heno, dejó la cena, ha dejado la cena, ha dejado el desayuno,
        dejó el desayuno, pienso intacto, el pienso intacto, heno intacto, el heno intacto, comida intacta, la
        comida intacta, tiene el pienso sin tocar, con el pienso sin tocar, pienso sin tocar, heno sin tocar, el
        heno sin tocar, comida sin tocar, inapetencia, sin ganas de comer, sin hambre, no tiene hambre, no tiene
        ganas de comer, perdió el apetito, ha perdido el apetito, con poco apetito, poco apetito, tosió, ha
        tosido, tosía, tose mucho, tose sin parar, no para de toser, con mucha tos, tos seca, tos fea, con una
        tos fea, tiene tos, tose al comer, tosecilla, resfriad|o|a|os|as, acatarrad|o|a|os|as,
        constipad|o|a|os|as, con catarro, tiene catarro, con gripe, tiene gripe, con resfriado, moquead|o|a,
        moqueando, moco, le sale moco, le salen mocos, moco amarillo, moco verde, mocos verdes, mocos amarillos,
        con moco, secreción nasal, ollares con moco, le moquea la nariz, destemple y fiebre, tiene calentura,
        calentura, con calentura, febrícula, con febrícula, tiene febrícula, afiebrad|o|a, 39 de fiebre, 40 de
        fiebre, fiebrón, está ardiendo de fiebre, respira agitado, respira agitada, respiración agitada, respira
        muy rápido, respira rápido, respirando rápido, respirando mal, respirando fuerte, le cuesta respirar, no
        respira bien, respira raro, pulso alto, pulsaciones altas, ollares dilatados, encías pálidas, encías
        moradas, encías blancas, diarrea líquida, con diarrea, con descomposición, descompuest|o|a, caca
        líquida, cagalera, con cagalera, tiene cagalera, con churretes, churrete, aletargad|o|a|os|as, letargo,
        adormilad|o|a y sin comer, cabizbaj|o|a|os|as, alicaíd|o|a|os|as, mustí|o|a, musti|o|a|os|as,
        decaidit|o|a|os|as, decaíd|o|a|os|as y sin comer, decaimiento, abatid|o|a|os|as, desganadit|o|a,
        desganada del todo, apátic|o|a|os|as y sin comer, triste y sin comer, tristón y sin comer, sin ganas de
        nada, flojit|o|a|os|as, sin fuerzas, se tambalea mucho, tambaleándose, se va de atrás, descoordinad|o|a,
        atáxic|o|a, temblon y decaído, con infosura, infosad|o|a|os|as, laminitis, con laminitis, tiene
        laminitis, infosura en las manos, urticaria, con urticaria, ronchas, con ronchas, llen|o|a de ronchas,
        envenenad|o|a, intoxicad|o|a, ataque de tos, crisis de asma, con huélfago, deshidratad|o|a|os|as, en
        shock, azoturia, mioglobinuria, mioglobinúrico, quiet|o|a en un rincón, quieto en una esquina, quieta en
        una esquina, separad|o|a del grupo y triste, apartad|o|a del grupo, está chung|o|a, chunguill|o|a,
        fatalito, malísim|o|a|os|as, muy mal|o|a|os|as, muy malit|o|a|os|as, está muy mal, está bastante mal,
        está fastidiad|o|a, está jodid|o|a, está mal de la tripa, malit|o|a de la tripa, mala de la barriga, mal
        del estómago, mal de la barriga, se puso mal, se puso mala, se puso malo, se ha puesto mala, se ha
        puesto malo, se ha puesto malita, se ha puesto malito, cayó enfermo, cayó enferma, ha enfermado,
        empeora, ha empeorado, empeoró, está peor, peor que ayer, va a peor, va peor, ha ido a peor, no
        |prueba|probó, no ha probado, apenas ha tocado |el|la|su, no |quiso|quiere |el|la|su
        |concentrado|avena|cena|ración|heno, no |quiso|quiere |el|la|su
        |pienso|comida|alfalfa|grano|desayuno|paja, no ha querido |el|la|su |concentrado|avena|cena|ración|heno,
        no ha querido |el|la|su |pienso|comida|alfalfa|grano|desayuno|paja, se ha dejado |el|la|su
        |cena|ración|heno|pienso|comida|avena|desayuno, no se ha bebido, no se bebió, no se ha comido, no se
        comió, no se acaba |el|la|su, no se acabó |el|la|su, no se ha acabado |el|la|su, no se termina
        |el|la|su, sin probar bocado, ni ha probado, ni prueba, ni probó, no ha comido en toda la noche, lleva
        sin comer, está sin comer, sin beber, no come ni bebe, no come bien, come mal, no mastica, babea,
        babeando, atragantad|o|a, obstrucción, se ha atragantado, suelta el pienso, bola el pienso, tiene
        atasco, impactación, ta malu, ta mala, ta malo, respira muy fuerte, respira como, resuella, resollando,
        jadea mucho, hace ruido al respirar, sin querer comer, sin querer |el|su|la |heno|pienso|comida,
        tumbad|o|a y sin comer, tumbad|o|a y sin querer, tiene muy mala pinta, con muy mala pinta, muy mala
        pinta, con mala pinta, mala pinta, con mala cara, muy mala cara, no tiene muy buena pinta, no me gusta
        nada cómo está, no me gusta cómo está, no me gusta nada la pinta, no está para nada bien, no está muy
        bien, no anda muy bien, no está del todo bien, no se la ve bien, no se le ve bien, no se lo ve bien, no
        se la ve fina, se la ve mal, se le ve mal, se la ve triste, se le ve triste, se le ve decaíd|o|a, se la
        ve decaída, se le ve apagad|o|a, se la ve apagada, triste y sin ganas, tristón|a, tumbad|o|a y
        quejándose, quejándose, se queja, gimiendo, gime, suda frío, sudando frío, sudores fríos y, está
        ausente, está como ida, está como ido, desorientad|o|a, encogid|o|a de dolor, con la barriga encogida,
        recogid|o|a de barriga, tripa recogida, sin ruidos de tripa, sin ruidos intestinales, no se oye la
        tripa, no le suenan las tripas, estreñid|o|a, empachad|o|a, empanzad|o|a, torzón, con torzón, tiene
        torzón, torozón, enterad|o|a de arena, cólica, tose y tose, tos fuerte, mucha tos, tos de perro, ataques
        de tos, golpes de tos, tose seco, no ha bebido en, no ha bebido en toda la noche, no ha bebido agua, no
        bebió agua, no bebe nada, mal de |la|su |tripa|barriga|panza, mal del |estómago|vientre|aparato, anda
        mal, andan mal, anda mal de la tripa, anda mal de la barriga, anda mal de la panza, anda malo, anda
        mala, anda malito, anda malita, anda pachuch|o|a, anda raro, anda rara, anda tosiendo, anda triste, anda
        decaíd|o|a, anda apagad|o|a, no toca |el|la|su |heno|pienso|comida|cena|alfalfa|concentrado|agua, no
        tocó |el|la|su |heno|pienso|comida|cena|alfalfa|concentrado|agua, no |ha|han tocado |el|la|su|ni, sin
        probar |el|la|su |heno|pienso|comida|cena|alfalfa|concentrado|desayuno|agua, sin tocar |el|la|su
        |heno|pienso|comida|cena|alfalfa|concentrado|desayuno|agua, sin probar nada, sin comerse |el|la|su
        |heno|pienso|comida|cena|alfalfa|concentrado|desayuno|agua, sin terminar |el|la|su
        |heno|pienso|comida|cena|concentrado|desayuno,
        se mira la panza a cada rato, se mira a cada rato la panza, se mira a cada rato, no quiso comer nada, no
        quiso |tomar|beber agua, no quiso el fardo, no quiso el balanceado, no quiso el morral, no quiso la
        fardo, no quiso la balanceado, no quiso la morral, no quiso su fardo, no quiso su balanceado, no quiso
        su morral, no quiere |el|la|su |balanceado|fardo|morral, dejó |el|la|toda
        |grano|ración|balanceado|avena|alfalfa, ni quiso comer, no quiso ni comer, ni tocó la comida, no tocó la
        ración, no tocó el grano, sin ánimo, sin ánimos, desganao, está caíd|o|a, anda caíd|o|a, bien caíd|o|a,
        anda echad|o|a, está echad|o|a y no, se echa a cada rato, se echa y se para, se acuesta y se para, se
        tira y se para, se la pasa echad|o|a, se revuelca a cada rato, se patea la |panza|barriga|guata, se
        muerde la |panza|barriga|guata, se mira la guata, se tira al piso, anda cabizbaj|o|a, anda con tos, anda
        con fiebre, anda con cólico, anda agripad|o|a, agripad|o|a, engripad|o|a, está engripad|o|a, anda con
        mocos, anda con diarrea, con chorrillo, tiene chorrillo, con churria, tiene churria, cholenc|o|a,
        cholenquit|o|a, anda cholenc|o|a, está cholenc|o|a, está tristón, anda tristón, anda tristona, está
        tristona, anda apachurrad|o|a, apachurrad|o|a, aplastad|o|a y sin comer, anda desganad|o|a, no anda nada
        bien, no lo noto bien, no la noto bien, no lo veo nada fino, no se siente bien, no se siente nada bien,
        no pinta bien, no me gusta cómo anda, no me gusta cómo respira, respira entrecortado, anda resollando,
        no se |quiere|puede |parar|pararse, no se para, amaneció echad|o|a, echad|o|a y no se quiere
        |parar|levantar, no se quiere mover, no se mueve del |rincón|lugar,
        tosa y tosa, tosa y tose, tosa y tosiendo, tose y tosa, tose y tosiendo, tosiendo y tosa, tosiendo y tose,
        tosiendo y tosiendo, tose que tose, tosa que tosa,
        no |quiso|quería|quiere |cenar|desayunar, no ha querido |cenar|desayunar|beber|agua,
        no quiso ni el heno, no ha cenado,
        no cenó, no cenó nada, no ha desayunado, no desayunó, dejó toda la cena, dejó todo el grano
    """,
    "everyday hot": """
        caliente|s, calor, 🥵, hot, calentit|o|a de más, calurosit|o|a, caluros|o|a|os|as, calentón, calentona,
        hirviendo, ardiendo, 🔥, 🫠, con la temperatura alta, caldead|o|a, acalor, calorcito, calufa, calorazo,
        calores, bochorno, quemando, caliente caliente, calentorr|o|a
    """,
    "everyday cold": """
        nada de calor, ni pizca de calor,
        frí|o|a|os|as, fresc|o|a|os|as, helad|o|a|os|as, gelid|o|a, friolent|o|a, fresquit|o|a, 🥶, cold,
        frescuch|o|a, tempranito frío, helad|o|a, frío frío, friít|o|a, friíll|o|a, fresqu|ito|ita|itos|itas,
        fresquísim|o|a, gélid|o|a|os|as, heladit|o|a|os|as, heladísim|o|a, congelad|o|a, frigidísim|o|a,
        friísim|o|a, frisísim|o|a, frío como el hielo, frías como el hielo, destemplado, 🧊, ❄️, friecito,
        friyito, rasca, biruji,
        se enfrió, se ha enfriado, se está enfriando, se me enfrió, se quedó frí|o|a, se ha quedado frí|o|a, se
        está helando, se hiela, se congela, enfriad|o|a|os|as
    """,
    "everyday good": "",
    "everyday comfortable": """
        abrigadit|o|a|os|as,
        tibi|o|a|os|as, tibiecit|o|a|os|as,
        templadit|o|a|os|as,
        bien, perfect|o|a|os|as, ok, okey, content|o|a|os|as, tranquil|o|a|os|as, muy bien, de maravilla,
        todo bien, fenomenal, mejor, mucho mejor, está mejor, ya está mejor, sin novedad, sin problemas,
        estupend|o|a|os|as, genial, perfectamente, en orden, todo en orden, bien bien, divinamente,
        buen|o|a de temperatura, de lujo, de cine, de fábula, de perlas, de diez, de 10, de vicio,
        de lo mejor, chachi, guay, guai, fetén, chévere, bacano, bacan, joyita, impecable|s, impeque,
        bárbar|o|a, espectacular, maravillos|o|a, fantástic|o|a|os|as, bien también, bien los dos,
        bien las dos, bien todas, estupendamente, fenomenalmente, maravillosamente,
        requetebién, requete bien, súper bien, superbién, re bien, rebién, muy muy bien, muy requetebién,
        mejorcit|o|a, muchísimo mejor, bastante mejor, bastante bien, ya bien,
        está bien, están bien, va bien, van bien, anda bien, andan bien, sigue bien, siguen bien,
        estable|s, normal, normales, correct|o|a|os|as, recuperad|o|a|os|as, ya recuperad|o|a,
        tranquilit|o|a|os|as, relajad|o|a|os|as, relajadit|o|a, seren|o|a, calm|o|a, felic|es, feliz,
        feliz como una perdiz, contentísim|o|a|os|as, contentit|o|a|os|as, encantad|o|a|os|as,
        encantadit|o|a, divin|o|a|os|as, pich|í|i, a tope, nikel, níquel, oka, okis, okey makey, okk, okok,
        okay, todo ok, todo perfecto, todo correcto, todo normal, todo en su sitio, todo fenomenal,
        todo genial, todo estupendo, todo tranquilo, sin problema, sin ningún problema, sin incidencias,
        sin incidencia, sin quejas, sin más, sin pega, sin pegas, nada que reportar, nada raro, nada nuevo,
        como siempre de bien, tan bien, muy a gusto, cojonud|o|a, de puta madre,
        de pm, dpm, de rechupete, como nuev|o|a, como una rosa, fresc|o|a como una lechuga,
        viv|o|a y coleando,
        joya, de diez puntos, diez puntos, diez de diez, flama, al tiro bien, pipón, pipona,
        fenómeno, fenómena, piola, tranqui, tranqui palanqui, de pelos, a todo dar, a toda madre, con madre,
        bien chido, chid|o|a|os|as, suave, al cien, al 100, al cien por ciento, en buena, de buena, nítid|o|a,
        nice, cool, tuanis, pura vida, macanud|o|a, bien tranquil|o|a|os|as, re tranqui, retranqui, sin drama,
        sin dramas, sin bronca, sin broncas, sin rollo, sin lío, sin líos, sin cuento, como lechuga, como reina,
        como rey, como una reina, como un rey, como reyes, bien rica, bien rico, filete, bakán, de maravillas,
        agusto, bien agusto, ta agusto, todo en regla, al pelo bien,
        se calentó, se ha calentado, ya se calentó
    """,
    "everyday warm": """
        templad|o|a|os|as, medio caliente,
        medio calientes, tirando a caliente, calentillo, calentilla, calorcillo, un pelín caliente,
        un poco caliente, algo caliente, ligeramente caliente, más caliente, caldosit|o|a, algo templado,
        templaducho, templado, templada, templados, templadas, tibio, tibia, templadito, templadita
    """,
    "dry": """
        sec|o|a|os|as, sequit|o|a|os|as, secado, se secó, se ha secado, se han secado, bien sec|o|a, ya sec|o|a,
        dry, por fin sec|o|a, completamente sec|o|a, totalmente sec|o|a, ya secos, ya secas, se secaron,
        se ha secado ya, resec|o|a|os|as, sequísim|o|a|os|as, sequit|o|a|os|as del todo, sec|o|a|os|as del todo,
        bien sequit|o|a|os|as, bien sec|o|a|os|as, ya sequit|o|a|os|as, sec|o|a|os|as ya, seca seca, seco seco,
        secas secas, sec|o|a|os|as por completo, sec|o|a|os|as por dentro y por fuera,
        sec|o|a|os|as por fuera y por dentro, ya se secó, ya se secaron, ya se ha secado, ya se han secado,
        por fin se ha secado, por fin se secó, se me ha secado, se me secó, se me secaron, terminó de secarse,
        ha terminado de secarse, terminó de secar, ha terminado de secar, terminaron de secarse,
        acabó de secarse, ha acabado de secarse, acabó de secar, sec|o|a|os|as y dobladita, orea|do|da|dos|das,
        ya oread|o|a, se ha oreado, secad|o|a|os|as, ha secado, han secado, secaron,
        perfectamente sec|o|a|os|as, sec|o|a|os|as como la mojama, como la mojama, sec|o|a|os|as como un hueso,
        sin humedad, sin pizca de humedad, ni gota de humedad, ni pizca de humedad, ni húmed|o|a,
        no le ha calado, no ha calado, no le caló, no caló, no le cala, no cala, no traspasó, no ha traspasado,
        ya no está mojad|o|a|os|as, ya no está húmed|o|a|os|as, ya no están mojad|os|as,
        ya no están húmed|os|as, ya no chorrea, ya no gotea, dispuest|o|a y sec|o|a, se a secado, se an secado,
        ya se a secado
    """,
    "damp": """
        húmed|o|a|os|as, humedecid|o|a, no está sec|o|a, sin secar, aún mojad|o|a, casi sec|o|a,
        no del todo sec|o|a, todavía no está sec|o|a, aún no está sec|o|a, humedit|o|a|os|as, humedad,
        con humedad, tiene humedad, sigue con humedad, algo de humedad, le queda humedad, aún tiene humedad,
        todavía tiene humedad, con algo de humedad, un poco de humedad, medio mojad|o|a|os|as,
        medio húmed|o|a|os|as, medio sec|o|a|os|as, a medio secar, a medias de secar, semihúmed|o|a,
        semisec|o|a, casi sec|o|a|os|as, casi sequit|o|a|os|as, casi seco del todo, cuasi sec|o|a,
        ya casi sec|o|a, le falta un poco para secarse, le falta un poco para secar, le falta secarse,
        le falta secar, le falta un rato para secarse, le falta un hervor para secarse,
        le falta un pelín para secarse, aún le falta secarse, todavía le falta secarse,
        todavía le falta para secarse, aún le falta para secarse, no termina de secarse, no acaba de secarse,
        no termina de secar, no acaba de secar, no se termina de secar, no se acaba de secar,
        no terminó de secarse, no ha terminado de secarse, no ha acabado de secarse, no se seca, no seca,
        no se ha secado, no se ha secado del todo, no se ha secado todavía, no se ha secado aún, no se secó,
        no se secó del todo, no secó, no ha secado, no ha secado del todo, no ha secado bien,
        no se ha secado bien, aún no se ha secado, todavía no se ha secado, todavía no se secó, aún no se seca,
        todavía no se seca, no están secos, no están secas, aún no están sec|os|as, todavía no están sec|os|as,
        no está sec|o|a del todo, no está del todo sec|o|a, no está sec|o|a todavía, no está sec|o|a aún,
        no está bien sec|o|a, no está ni sec|o|a, no del todo sec|os|as, no sec|o|a del todo,
        sin secar del todo, sin secarse, sin secarse del todo, sigue sin secar, sigue sin secarse,
        siguen sin secar, siguen sin secarse, aún sin secar, todavía sin secar, poco sec|o|a,
        mojadill|o|a|os|as, ligeramente mojad|o|a|os|as, ligeramente húmed|o|a|os|as, un poco mojad|o|a|os|as,
        algo mojad|o|a|os|as, algo húmed|o|a|os|as, un pelín mojad|o|a|os|as, un pelín húmed|o|a|os|as,
        un pelo húmed|o|a, un pelo mojad|o|a, un tanto húmed|o|a, un poquito mojad|o|a|os|as,
        un poquito húmed|o|a|os|as, tirando a húmed|o|a, revenid|o|a|os|as, fresc|o|a y húmed|o|a,
        húmed|o|a al tacto, humedecid|o|a|os|as, se ha humedecido, se humedeció, mojadita por los bordes,
        mojada por los bordes, húmeda por los bordes, manea de humedad, amaneció húmed|o|a, llovizn|ada,
        rociada, con rocío encima, sudadita por dentro
    """,
    "wet": """
        se le pasó la lluvia, se le pasó el agua, le pasó la lluvia, le pasó el agua, les pasó la lluvia,
        les pasó el agua, se le metió el agua, se le metió la lluvia, le caló el agua, le caló la lluvia,
        mojad|o|a|os|as, mojadit|o|a, se mojó, se ha mojado, se mojaron, wet, mojadísim|o|a, mojadit|o|a|os|as,
        mojadísim|o|a|os|as, mojadot|e|a, remojad|o|a|os|as, muy mojad|o|a|os|as, bien mojad|o|a|os|as,
        bastante mojad|o|a|os|as, to mojad|o|a, todo mojado, toda mojada, todos mojados, todas mojadas,
        mojad|o|a|os|as por dentro, mojad|o|a|os|as por fuera, mojad|o|a|os|as del todo,
        mojad|o|a|os|as enter|o|a|os|as, mojad|o|a|os|as perdid|o|a|os|as, se han mojado, se le ha mojado,
        se le mojó, se le han mojado, se me ha mojado, se me mojó, se ha mojado entera, se ha mojado entero,
        se mojó toda, se mojó todo, se moja, se está mojando, se están mojando, ha cogido agua, cogió agua,
        agarró agua, ha agarrado agua, le ha caído agua, le cayó agua, le ha caído el chaparrón,
        le cayó el chaparrón, le pilló el chaparrón, le ha pillado el chaparrón, le ha pillado la lluvia,
        le pilló la lluvia, le agarró la lluvia, le ha llovido encima, le llovió encima, le ha llovido,
        sigue mojad|o|a|os|as, siguen mojad|o|a|os|as, aún mojad|o|a|os|as, todavía mojad|o|a|os|as, mojandose,
        mojandito, mojad|o|a y embarrad|o|a, mojad|o|a de lluvia, mojad|o|a por la lluvia,
        mojad|o|a de la lluvia, mojad|o|a del rocío, mojad|o|a del agua, mojad|o|a de nieve, mojaíto, mojaíta,
        moyad|o|a|es|os, moyáu, se a mojado, se le a mojado, se an mojado,
        mojad|o|a hasta los huesos por la lluvia, se me mojó todo, le llovió, le llovió toda la noche, le llovió
        todo, se mojó enterit|o|a
    """,
    "soaked": """
        empapao, empapá, empapaos, empapás, chorreao, chorreá, calao, calá,
        empapad|o|a|os|as, calad|o|a|os|as, chorreando, ensopad|o|a|os|as, chorread|o|a, hech|o|a una sopa,
        calad|o|a hasta los huesos, emparamad|o|a, escurriendo, soaked, empapadísim|o|a, empapad|o|a por dentro,
        cala, le entra agua, le ha entrado agua, pingando, chorreando agua, empapadit|o|a|os|as,
        empapadísim|o|a|os|as, empapad|o|a|os|as enter|o|a|os|as, empapad|o|a|os|as por dentro,
        empapad|o|a|os|as de agua, empapad|o|a|os|as de lluvia, empapad|o|a perdid|o|a,
        empapad|o|a hasta los huesos, caladit|o|a|os|as, caladísim|o|a, calad|o|a|os|as hasta los huesos,
        calad|o|a hasta el hueso, calad|o|a|os|as de agua, calad|o|a|os|as por dentro,
        calad|o|a|os|as enter|o|a|os|as, caladit|o|a hasta los huesos, calad|o|a perdid|o|a,
        hech|o|a|os|as una sopa, hech|os|as unas sopas, como una sopa, está como una sopa, están como sopas,
        hech|o|a un charco, hech|o|a agua, hech|o|a un agua, hech|o|a una esponja, como una esponja,
        chorreandit|o|a, chorrea, chorrean, chorrea agua, chorrean agua, chorreando de agua, goteando, gotea,
        gotean, goteando agua, chopad|o|a|os|as, chupad|o|a de agua, ensopadit|o|a|os|as, ensopadísim|o|a,
        emparamad|o|a|os|as, enchumbad|o|a|os|as, encharcad|o|a|os|as, anegad|o|a, pasad|o|a de agua,
        pasad|o|a por agua, bañad|o|a|os|as de agua, estilando, escurre agua, escurriendo agua, pingand|o|a,
        pinga, chipiad|o|a, chipead|o|a, hech|o|a un pato, hech|o|a un pez, ha calado, ha calado hasta el forro,
        caló, le ha calado, le caló, le caló el agua, le ha calado el agua, se le ha calado, se ha calado,
        se ha calado entera, se ha calado entero, se caló, se caló entera, se le caló, se calan, le cala,
        le cala el agua, traspasada, traspasad|o|a de agua, se ha empapado, se han empapado, se empapó,
        se empaparon, se le ha empapado, se le empapó, se me ha empapado, se ha empapado enter|o|a, entra agua,
        le entra el agua, le está entrando agua, le está entrando el agua, le ha entrado el agua, le entró agua,
        le entró el agua, le pasa el agua, le ha pasado el agua, se la puede retorcer, se puede retorcer,
        para escurrir, para escurrirla, para retorcer, a chorros, como recién sacada del río,
        como recién salida del agua, está que chorrea, está que gotea, están que chorrean, empapá, calaíta,
        empapaíta, empapaíto, empapá perdía, empapao perdío, calá perdía, se a calado, a calado, se le a calado,
        se a empapado, se le a empapado,
        hech|o|a sopa, hech|o|a una sopa de agua, hech|o|a trapo de agua, hech|o|a pato, chorread|o|a de agua,
        empapad|o|a hasta el |forro|hueso, escurriendo de agua, escurre, escurría, chorreaba, goteaba,
        chorreando por todos lados, está que escurre, sigue escurriendo, sigue chorreando, ensopaíto, ensopá
    """,
    "state washing": """
        en la lavadora, lavándose, se está lavando, se están lavando, en lavado, en la lavandería, a lavar,
        en la colada, está a lavar, la están lavando, en la tintorería, llevé a lavar, está lavándose, lavando,
        a la lavadora, en la lavadora ahora, en el lavadero, llevada a lavar, llevado a lavar,
        metí en la lavadora, puse a lavar, la llevé a lavar, lo llevé a lavar, la mandé a lavar,
        a la lavandería, a la tintorería, para lavar, está en la lavadora, están en la lavadora,
        dando vueltas en la lavadora, dentro de la lavadora, en la máquina, en la máquina de lavar,
        en el lavarropas, al lavarropas, en la lavandería ya, está en la lavandería, en el lavadero municipal,
        en la autolavandería, está en lavado, puesta a lavar, puesto a lavar, puestas a lavar, puestos a lavar,
        está lavando, están lavando, están lavándose, lavándose ya, se está lavando ya, echad|o|a|os|as a lavar,
        ech|é|amos a lavar, eché a la lavadora, he echado a lavar, he echado a la lavadora,
        la he echado a lavar, la eché a lavar, lo eché a lavar, las he echado a lavar, las eché a lavar,
        he puesto a lavar, la he puesto a lavar, lo he puesto a lavar, las he puesto a lavar, la puse a lavar,
        lo puse a lavar, la puse en la lavadora, lo puse en la lavadora, puse en la lavadora,
        he puesto en la lavadora, la he puesto en la lavadora, he metido en la lavadora,
        la he metido en la lavadora, lo he metido en la lavadora, las he metido en la lavadora,
        la metí en la lavadora, lo metí en la lavadora, las metí en la lavadora, metid|o|a|os|as en la lavadora,
        metí a lavar, he metido a lavar, la metí a lavar, la he metido a lavar, he llevado a lavar,
        la he llevado a lavar, lo he llevado a lavar, las he llevado a lavar, las llevé a lavar,
        llevé a la lavandería, he llevado a la lavandería, la he llevado a la lavandería,
        la llevé a la lavandería, llevé a la tintorería, la he llevado a la tintorería,
        llevad|o|a|os|as a la lavandería, llevad|o|a|os|as a la tintorería, mandé a lavar, he mandado a lavar,
        la he mandado a lavar, mandad|o|a|os|as a lavar, mandé a la lavandería, mandad|o|a a la lavandería,
        se fue a lavar, se ha ido a lavar, se fueron a lavar, se han ido a lavar, se va a la lavadora,
        se fue a la lavandería, se ha ido a la lavandería, ha ido a lavar, fue a lavar,
        va directa a la lavadora, va directo a la lavadora, directa a la lavadora, directo a la lavadora,
        a lavar ya, a lavar hoy, me la llevo a lavar, me lo llevo a lavar, me las llevo a lavar,
        me la he llevado a lavar, me llevo a lavar, para la lavadora, pa lavar, pa la lavadora, pa la colada,
        para la colada, en remojo, a remojo, enjabonad|o|a, en el barreño, en el cubo a remojo, lavándola,
        lavándolo, la estoy lavando, lo estoy lavando, las estoy lavando, la estamos lavando, en la lavada,
        en el lavao, para lavarl|a|o|as|os, a casa para lavarl|a|o|as|os,
        me |la|lo|las|los llevo a casa para lavar, me |la|lo|las|los llevo a casa para lavarl|a|o|as|os,
        me |la|lo|las|los he llevado a casa para lavar, me |la|lo|las|los he llevado para lavar, a casa a lavar,
        a casa para lavar,
        al lavadero, fue al lavadero, se fue al lavadero, la mandé al lavadero, lo mandé al lavadero, mandé al
        lavadero, en el lavadero ya, llevé al lavadero, la llevé al lavadero, lo llevé al lavadero, al
        lavarropa, en el lavarropa, en la lava ropa, la metí al lavarropas, lo metí al lavarropas, la metí a la
        lavadora, lo metí a la lavadora, metí a la lavadora, metí al lavarropas, puse en el lavarropas, la puse
        en el lavarropas, lo puse en el lavarropas, al lavado, en el lavado, se fue al lavado, fue al lavado,
        fue a la lavandería, fue a la tintorería, fue a la lavadora, anda en la lavandería, anda en la lavadora,
        anda lavándose, la eché a la lavadora, lo eché a la lavadora, la dejé lavando, lo dejé lavando, quedó
        lavando, quedó en la lavadora, quedó en el lavarropas, quedó a lavar, quedó en remojo, la dejé en
        remojo, lo dejé en remojo, la puse a remojar, lo puse a remojar, puse a remojar, se la llevaron a lavar,
        se lo llevaron a lavar, se llevaron a lavar, me la llevé a lavar, me lo llevé a lavar, la traigo en la
        lavadora, está en el lavarropas, está en el lavadero, en la laundry, a la laundry, en el lavaplatos,
        en lavadora, en lavandería, en tintorería, en lavadero
    """,
    "state torn": """
        un tajo, un tajazo, un |buen|tremendo|gran tajo, un pedazo de tajo, rajao, rajá, se ha rajao, se ha
        rajado, se rajó, trae un hoyo, tiene un hoyo, trae un agujero, trae un tajo, tiene un tajo, trae un
        roto, trae una rajada, rot|o|a|os|as, rasgad|o|a|os|as, rajad|o|a|os|as, desgarrad|o|a|os|as, se ha
        roto, se rompió, rompió, ha roto, rasgó, tiene un agujero, agujero, agujeread|o|a, un roto, un siete, ha
        rasgado, ha rajado, rajó, destrozad|o|a|os|as, hech|o|a jirones, descosid|o|a|os|as, un desgarrón,
        desgarrón, se rasgó, se rajó, tiene un roto, con un agujero, con un siete, con un roto, un agujero, un
        agujerazo, hecho trizas, hecha trizas, hecha polvo, hecho polvo, hecha pedazos, hecho pedazos, se ha
        rasgado, se ha rajado, se ha desgarrado, se descosió, se ha descosido, ha destrozado, destrozó,
        pinchad|o|a, rotit|o|a, rotísim|o|a|os|as, medio rot|o|a, rot|o|a|os|as por detrás, rot|o|a|os|as por el
        costado, rot|o|a del todo, rot|o|a por la costura, rajad|o|a|os|as de arriba abajo, rajad|o|a|os|as por
        detrás, rajad|o|a|os|as por la mitad, abiert|o|a|os|as en canal, abiert|o|a por la costura, abiert|o|a
        por las costuras, abierta de arriba abajo, partid|o|a en dos, partid|o|a por la mitad, partida por
        detrás, desgarradit|o|a, se desgarró, se le desgarró, se le ha desgarrado, desgarro, un desgarro, tiene
        un desgarro, con un desgarro, desgarrones, con un desgarrón, tiene un desgarrón, rasgón, un rasgón,
        tiene un rasgón, con un rasgón, rasgadur|a|as, rasguñ|ada, rajadura, tiene una rajadura, raja, una raja,
        tiene una raja, con una raja, una raja enorme, rajita, tiene una rajita, se le ha hecho una raja, se le
        hizo una raja, agujeros, agujerit|o|os, con agujeros, tiene agujeros, tiene un agujero enorme, tiene un
        agujero en, tiene un boquete, un boquete, boquete, con un boquete, boquetes, con boquetes, hueco, un
        hueco, tiene un hueco, con un hueco, tiene huecos, un siete en, tiene un siete, tiene un siete enorme,
        le ha hecho un siete, le hizo un siete, se le ha hecho un siete, se hizo un siete, se ha hecho un siete,
        le ha hecho un agujero, le hizo un agujero, se le ha hecho un agujero, le ha hecho un roto, le hizo un
        roto, le han hecho un roto, le han hecho un agujero, se le ha hecho un roto, se ha hecho un roto en, se
        hizo un roto en, tiene una rotura, rotura, con una rotura, tiene rotos, con rotos, rotos varios,
        mordid|o|a y rot|o|a, le ha mordido la manta, comid|o|a por los ratones, comid|o|a de ratones,
        roíd|o|a|os|as, roíd|o|a por los ratones, mordisquead|o|a|os|as, han roto, le han roto, le ha roto, le
        rompió, le rompieron, rompieron, la ha roto, lo ha roto, la rompió, lo rompió, me ha roto, se la ha
        roto, se lo ha roto, se la rompió, se lo rompió, se ha cargado, se cargó, se la ha cargado, se lo ha
        cargado, se la cargó, le ha destrozado, la ha destrozado, lo ha destrozado, la destrozó, lo destrozó, ha
        hecho trizas, ha hecho jirones, la ha hecho trizas, la ha hecho jirones, lo ha hecho jirones, se le ha
        rajado, se le rajó, se le ha rasgado, se le rasgó, la ha rajado, la rajó, la ha rasgado, la rasgó, la
        desgarró, la ha desgarrado, ha desgarrado, hech|o|a|os|as jirones, hech|o|a un jirón, hech|o|a un trapo,
        hech|o|a un colador, como un colador, hech|o|a un asco de rota, hech|o|a|os|as unos zorros, hech|o|a
        migas, hech|o|a añicos, hecha un guiñapo, en jirones, en tiras, hech|o|a tiras, hech|o|a cisco,
        descosidit|o|a, descosida por el lomo, descosida por detrás, se le ha descosido, se le descosió, se está
        descosiendo, desilachad|o|a, deshilachad|o|a|os|as, deshilachándose, se está rompiendo, se está rajando,
        inservible|s, para tirar, pa tirar, para el arrastre, reventad|o|a|os|as por la costura, reventad|o|a
        por las costuras, reventad|o|a por detrás, costura abierta, la costura abierta, costuras abiertas, con
        la costura abierta, le ha saltado la costura, le saltó la costura, se le ha abierto la costura, se ha
        abierto por la costura, se abrió por la costura, enganchad|o|a y rot|o|a, se enganchó y se rompió, se
        enganchó y se rajó, pinchazo, con el relleno fuera, se le sale el relleno, se le salió el relleno,
        sacándole el relleno, pierde relleno, la tela rota, tela rajada, forro por fuera, se le ha ido |una|la
        costura, se le fue |una|la costura, se le ha abierto una costura, se le abrió una costura, se le ha
        saltado |una|la costura, se le saltó |una|la costura, se ha ido |una|la costura, se le ha descosido
        |una|la costura, costura ida, costura saltada, costura rota, costura descosida, tiene una costura
        abierta, tiene la costura abierta, con una costura abierta, le falta un trozo, le falta un cacho, le
        falta media manga, tiene un rasguño, tiene un corte, con un corte, enganchón, un enganchón, tiene un
        enganchón, con un enganchón, se ha enganchado y rajado, la ha enganchado y rajado, la ha mordido, se la
        ha comido, se ha comido, se comió, mordisco, un mordisco, tiene un mordisco, lleva un siete, lleva un
        roto, lleva un agujero, lleva una raja, lleva un desgarrón, lleva una rotura, trae un siete, trae un
        roto, trae un agujero, trae una raja, trae un desgarrón, trae un hueco, se a roto, se a rajado, se a
        rasgado, se le a roto, se le a rajado, a rajado, a roto, a destrozado, se a descosido, se le a descosido,
        rajadit|o|a, se le |hizo|abrió un |tajo|hoyo|agujero|siete|roto|boquete|hueco, le |abrió|hizo un
        |tajo|hoyo|boquete|hueco, amaneció |rota|roto|rajada|rajado|rasgada|rasgado|desgarrada|desgarrado, un
        |hoyo|hoyazo|hoyote, hoyos, con hoyos, con un hoyo, le |arrancó|sacó|comió un |pedazo|cacho|trozo, se
        desgarró toda, se rompió toda, se rajó toda, se rasgó toda, se rajó todita, hech|o|a garras, hech|o|a
        tiritas, hech|o|a hilachas, hech|o|a bolsa, hech|o|a pelota, se le abrió la costura, se le descosió la
        costura, se le descosió el |cuello|pecho|forro|costado, abiert|o|a por un costado, abiert|o|a de un
        costado, la hizo |garras|tiras|pedazos|jirones, lo hizo |garras|tiras|pedazos|jirones, la rompió toda,
        la rasgó toda, la desgarró toda, se la comió el caballo, trozad|o|a,
        se trozó, se le trozó, se me rajó, se me rasgó
    """,
    "state missing": """
        falta, faltan, perdid|o|a|os|as, no encuentro, no encontramos, no aparece, ha desaparecido,
        desaparecid|o|a, no está por ningún lado, se ha perdido, perdimos, perdí, no lo encuentro,
        no la encuentro, hemos perdido, he perdido, se perdió, no hay manera de encontrar, no se encuentra,
        ni rastro de, no encuentra, no está en su sitio, desapareció, extraviad|o|a, se ha extraviado,
        robad|o|a, nadie encuentra, no sé dónde está, ha volado, nos falta, nos faltan, me falta, me faltan,
        sigue sin aparecer, siguen sin aparecer, aún no aparece, todavía no aparece, aún no ha aparecido,
        todavía no ha aparecido, no ha aparecido, no han aparecido, no apareció, no aparecen, sin aparecer,
        no la encontramos, no lo encontramos, no las encuentro, no los encuentro, no se encuentran,
        no la encuentra nadie, no lo encuentra nadie, no la encuentran, nadie la encuentra, nadie lo encuentra,
        no he encontrado, no hemos encontrado, no la he encontrado, no lo he encontrado,
        no lo veo por ningún lado, no la veo por ningún lado, no la veo por ninguna parte,
        no lo veo por ninguna parte, no veo por ningún lado, no veo por ninguna parte, no doy con, no damos con,
        no hay quien encuentre, no hay forma de encontrar, no hay manera de dar con, imposible encontrar,
        no está por ninguna parte, no está en ningún lado, no está en ningún sitio, no está en ninguna parte,
        no está por ningún sitio, no está por aquí, no está en su percha, no está en su gancho,
        no está en el guadarnés, no está en el secadero, no está donde siempre, no está donde debería,
        no está colgad|o|a, ni rastro, ni rastro del, ni rastro de la, sin rastro de, sin rastro del,
        sin noticias de la manta, en paradero desconocido, paradero desconocido, en busca y captura, se busca,
        se la ha tragado la tierra, se lo ha tragado la tierra, se la tragó la tierra, se lo tragó la tierra,
        se me perdió, se me ha perdido, se nos ha perdido, se nos perdió, se le perdió, se le ha perdido,
        se perdieron, se han perdido, la perdí, lo perdí, la he perdido, lo he perdido, la perdimos,
        lo perdimos, la hemos perdido, la han perdido, han perdido, perdieron, anda perdid|o|a, está perdid|o|a,
        están perdid|os|as, desaparecid|o|a|os|as, desaparecid|o|a en combate, perdid|o|a en combate,
        han desaparecido, desaparecieron, se ha esfumado, se esfumó, esfumad|o|a, extraviad|o|a|os|as,
        se extravió, se me extravió, traspapelad|o|a, robad|o|a|os|as, han robado, nos han robado, robaron,
        se la han llevado, se lo han llevado, se llevaron, se han llevado, alguien se ha llevado,
        alguien se llevó, volad|o|a, no sé dónde está la, no sé dónde está el, no sé dónde está su,
        no sé dónde para, no se sabe dónde está, no sabemos dónde está, vete a saber dónde está,
        a saber dónde está, dónde demonios está, la he buscado por todos lados, lo he buscado por todos lados,
        la busqué por todos lados, lo busqué por todos lados, la llevo buscando, llevo buscando,
        buscándola por todos lados, ni aparece ni, a desaparecido, se a perdido, se me a perdido, no a aparecido,
        no |hallo|allo|hayo|hallamos|hallé|hallan, no |la|lo hallo, no |la|lo allo, no |la|lo hallamos, no
        |la|lo veo por, no |la|lo hallo por ningún lado, nadie halla, nadie la halla, nadie lo halla, no se
        halla, no se ve por ningún lado, no está en ningún |lao|lugar, no está por ningún |lao|lugar, no anda
        por ningún lado, se hizo humo, se hizo agua la, se la llevó el viento, se lo llevó el viento, se voló,
        se la robaron, se lo robaron, desapareció de, no la encuentro por, no lo encuentro por, no lo pude
        encontrar, no la pude encontrar, no pude encontrar, no consigo encontrar, no logro encontrar, no logré
        encontrar, busqué por todos lados, busqué por todas partes, busqué en todos lados, la busqué en todos
        lados, lo busqué en todos lados, ya la busqué en todos lados, ya lo busqué en todos lados, ya la busqué
        por todos lados, ya lo busqué por todos lados, la he buscado en todos lados, la busqué y nada, lo busqué
        y nada
    """,
    "state found": """
        encontré, encontrad|o|a|os|as, apareció, ha aparecido, ya apareció, aparecid|o|a, encontramos,
        ya la encontré, ya lo encontré, la encontré, lo encontré, hemos encontrado, he encontrado,
        ya está encontrad|o|a, ha sido encontrad|o|a, aparecieron, han aparecido, ya ha aparecido,
        ya han aparecido, por fin apareció, por fin ha aparecido, aparecid|o|a|os|as, ya aparecieron,
        ha vuelto a aparecer, encontraron, han encontrado, ha encontrado, encontró, ya la encontramos,
        ya lo encontramos, ya la he encontrado, ya lo he encontrado, la he encontrado, lo he encontrado,
        las he encontrado, las encontré, los encontré, la hemos encontrado, lo hemos encontrado, la encontramos,
        lo encontramos, ya encontré, ya encontramos, ya he encontrado, por fin encontré, por fin he encontrado,
        se ha encontrado, se encontró, ya está localizad|o|a, localizad|o|a|os|as, localicé, he localizado,
        hemos localizado, he dado con, di con, ya di con, ya he dado con, hallad|o|a, hallé, he recuperado,
        recuperé, hemos recuperado, rescaté, he rescatado, ya está en su sitio, está en su sitio,
        vuelve a estar en su sitio, a aparecido, ya a aparecido
    """,
    "state in service": """
        arreglad|o|a|os|as, reparad|o|a|os|as, cosid|o|a|os|as, remendad|o|a|os|as, ya arreglad|o|a,
        como nuev|o|a, de vuelta, volvió de la lavandería, de vuelta de la lavandería, en uso, otra vez en uso,
        disponible, zurcid|o|a, volvió del arreglo, ya se puede usar, en servicio, ha vuelto de la lavandería,
        ha vuelto de arreglar, volvió de arreglar, de vuelta de arreglar, ha vuelto del arreglo, arreglada ya,
        correa arreglada, correa nueva, ya está arreglad|o|a, ya está reparad|o|a, ya está cosid|o|a,
        ha vuelto de la tintorería, lista para usar, listo para usar, otra vez en servicio, parchead|o|a,
        arregladit|o|a|os|as, ya está arregladit|o|a, arreglé, arreglamos, he arreglado, hemos arreglado,
        arreglaron, han arreglado, ha arreglado, arregló, la he arreglado, lo he arreglado, la arreglé,
        lo arreglé, ya la arreglé, ya la he arreglado, ya lo arreglé, ya están arreglad|os|as,
        está arreglad|o|a, están arreglad|os|as, me la han arreglado, nos la han arreglado, reparé, he reparado,
        han reparado, repararon, la he reparado, la repararon, cosí, he cosido, hemos cosido, ha cosido,
        han cosido, cosió, la he cosido, lo he cosido, la cosí, lo cosí, ya la cosí, ya la he cosido,
        recosid|o|a|os|as, cosidit|o|a, remendé, he remendado, la he remendado, la remendé, remendadit|o|a,
        ya está remendad|o|a, zurcí, zurcid|o|a|os|as, he zurcido, la zurcí, parcheé, he parcheado,
        la he parcheado, parchead|o|a|os|as, con parche, con su parche, con un parche, le he puesto un parche,
        le puse un parche, le he echado un remiendo, le he cambiado la hebilla, le cambié la hebilla,
        le cambié la correa, le he cambiado la correa, le he puesto hebilla nueva, le puse correa nueva,
        le he puesto correa nueva, le puse hebilla nueva, hebilla nueva, con hebilla nueva, con correa nueva,
        con correas nuevas, correas nuevas, correa cosida, correa reparada, hebilla arreglada, hebilla cambiada,
        correa cambiada, con la correa arreglada, impermeabilizad|o|a|os|as, reimpermeabilizad|o|a,
        como nuev|o|a|os|as, ha quedado como nuev|o|a, quedó como nuev|o|a, quedó nueva, ha quedado nueva,
        recién arreglad|o|a, recién cosid|o|a, recién lavad|o|a|os|as, lavad|o|a|os|as y sec|o|a|os|as,
        limpi|o|a|os|as y sec|o|a|os|as, sec|o|a|os|as y limpi|o|a|os|as, lavadit|o|a y sequit|o|a,
        lavad|o|a y list|o|a, limpit|o|a y sequit|o|a, limpia y lista, ya lavad|o|a, ya está lavad|o|a,
        ya está limpi|o|a, ha vuelto de lavar, volvió de lavar, vuelta de lavar, de vuelta de lavar,
        han vuelto de lavar, volvieron de lavar, ha vuelto del lavado, ha llegado de la lavandería,
        llegó de la lavandería, ha venido de la lavandería, vino de la lavandería, han vuelto de la lavandería,
        volvieron de la lavandería, recogid|o|a de la lavandería, recogí de la lavandería,
        he recogido de la lavandería, he recogido de la tintorería, traje de la lavandería,
        he traído de la lavandería, recogida de la tintorería, vuelve de la lavandería, vuelve de la tintorería,
        salió de la lavandería, ya está de vuelta, ya de vuelta, está de vuelta, están de vuelta, de vuelta ya,
        de vuelta en la cuadra, de vuelta en el guadarnés, otra vez disponible, vuelve a estar disponible,
        disponible otra vez, disponible de nuevo, ya disponible, operativ|o|a|os|as, otra vez operativ|o|a,
        lista para usarse, list|o|a|os|as para usar, lista para ponerla, lista para poner, listo para ponerlo,
        lista para la guerra, se puede usar, se puede usar ya, ya se pueden usar, se puede volver a usar,
        ya se puede poner, ya se puede volver a usar, vuelve a estar en uso, vuelve al ruedo, vuelve a la vida,
        ya la podéis usar, ya la pueden usar, la podéis usar ya, la podéis usar otra vez, podéis usar otra vez,
        podéis volver a usar, volvió del zapatero, ha vuelto del zapatero, volvió del guarnicionero,
        ha vuelto del guarnicionero, ha vuelto de la costurera, volvió de la costurera, vuelta de la costurera,
        de vuelta del guarnicionero, de vuelta del zapatero, de vuelta de la costurera, ha vuelto de reparar,
        volvió de reparar, de vuelta de reparar, ha vuelto arreglad|o|a, volvió arreglad|o|a, vino arreglad|o|a,
        ha venido arreglad|o|a, regresó de la costurera, ha regresado de la costurera, regresó de la lavandería,
        ha regresado de la lavandería, regresó arreglad|o|a, ya regresó de la costurera, regresó del arreglo,
        regresó de arreglar
    """,
    "strap": """
        correa, correas, hebilla, hebillas, cierre, cierres, tirante, tirantes, cinta, broche,
        mosquetón, cincha cruzada, correa de pata, correas de las patas, correa de la pata, entrepierna,
        tapa cola, correa del pecho, correa de la tripa, correas cruzadas, correa del vientre,
        hebilla del pecho, enganche, enganches, velcro, mosquetones, gancho, correílla, correita, correitas,
        correaje, correajes, sobrecincha, sobrecinchas, cinchuelo, cincho, cinchita, sobrecincho,
        cinta de la cola, cinta de la grupa, cinta de cola, cintas, cordón, cordones, cordel, cuerda de la cola,
        cuerda de atrás, tira, tiras, tirita de la cola, goma, gomas, elástico, elásticos, elástica, hebillita,
        ebilla, ebillas, evilla, hevilla, mosquetón del pecho, mosquetones de las patas, gancho del pecho,
        ganchos, ganchito, cierre del pecho, cierres del pecho, cierre delantero, cierre de delante, broches,
        broche del pecho, broche delantero, fleje, pasador, presilla, presillas, argolla, argollas, anilla,
        anillas, velcros, velcro del pecho, velcro del cuello, enganche del pecho, enganche de la pata, botón,
        remache, remaches, cremallera, correa delantera, correa trasera, correa de delante, correa de atrás,
        correa de la cola, correa de la barriga, correa de la panza, correa de pecho, correas del pecho,
        correas de pata, correas de patas, correas de la tripa, correas de la barriga, correas traseras,
        correas de atrás, correa cruzada, cincha de la tripa, cincha de la barriga, cincha del vientre,
        cinchas cruzadas, correa del cuello, correas del cuello, correa interior, correa izquierda,
        correa derecha, correa del corvejón, entrepiernas, entrepata, entrepatas, sujeción de la cola, sujeción,
        tapacola, baticola, hebilla de delante, hebilla delantera, hebilla de la tripa, hebilla de atrás,
        hebillas del pecho, cincho de la panza, cinchos
    """,
    "broken": """
        sa partio, se ha partio, sa roto, sa rompio, sa rajao, se partió, se le partió,
        se cortó, se le cortó, se cortaron, se le cortaron, se reventó, se le reventó, se reventaron,
        rot|o|a|os|as, se rompió, se ha roto, rompió, ha roto, partid|o|a, se partió, se soltó, suelt|o|a,
        arrancad|o|a, arrancó, se ha soltado, se ha partido, descosid|o|a, reventad|o|a, se le rompió,
        se le ha roto, suelt|o|a|os|as, se le soltó, se le ha soltado, colgando, reventó, rot|o|a del todo,
        cascad|o|a, arrancad|o|a de cuajo, perdid|o|a, rotit|o|a, rot|o|a|os|as por la mitad, medio rot|o|a,
        medio suelt|o|a, medio arrancad|o|a, partid|o|a|os|as, partid|o|a en dos, partid|o|a por la mitad,
        se le partió, se le ha partido, se me partió, se me ha partido, se partieron, ha partido, partió,
        se rompieron, se han roto, se le rompieron, se le han roto, se me rompió, se me ha roto, rompieron,
        han roto, se soltaron, se han soltado, se le han soltado, se le soltaron, se me soltó,
        desprendid|o|a|os|as, se ha desprendido, se desprendió, desenganchad|o|a, desabrochad|o|a sola,
        arrancad|o|a|os|as, arrancad|o|a de raíz, ha arrancado, han arrancado, se ha arrancado, se arrancó,
        se le ha arrancado, la ha arrancado, la arrancó, descosid|o|a|os|as, se ha descosido, se descosió,
        se le descosió, se le ha descosido, se está descosiendo, reventad|o|a|os|as, ha reventado, se reventó,
        se le reventó, se ha reventado, se le ha reventado, colgand|o|era, cuelga, cuelgan, que cuelga,
        le cuelga, saltad|o|a|os|as, ha saltado, saltó, saltaron, han saltado, se le ha saltado, se le saltó,
        ha saltado por los aires, doblad|o|a, torcid|o|a, oxidad|o|a y rot|o|a, no cierra, no cierran,
        no engancha, no abrocha, no abrochan, no se puede cerrar, no se puede abrochar, no se deja cerrar,
        no pega, ya no pega, no agarra, ya no agarra, no sujeta, ya no sujeta, dada de sí, dado de sí,
        dadas de sí, pasad|o|a de vueltas, se ha pasado, mordid|o|a, comid|o|a, deshilachad|o|a|os|as,
        desgastad|o|a del todo, jodid|o|a|os|as, escoñad|o|a, fastidiad|o|a|os|as, petad|o|a, ha petado, petó,
        se ha cargado, se cargó, se ha salido, se salió, se le ha salido, falta, faltan, le falta, sin cierre,
        se ha ido al carajo, se fue al carajo, a hacer puñetas, inservible, destrozad|o|a|os|as, hech|o|a polvo,
        hech|o|a trizas, hecho cisco, tronad|o|a, tronó, zafad|o|a, se zafó, se le zafó, se ha zafado,
        floj|o|a y rot|o|a, soltad|o|a|os|as, se ha soltado una, se ha roto una, se le ha roto una,
        se le ha soltado una, se le a roto, se le a soltado, se le a partido, se le a arrancado,
        se le a descosido, se a roto, se a soltado, se a partido, se le an roto, a roto, a arrancado,
        se quedó sin una, se ha quedado sin una, se queda sin una, se quedó sin un, se ha quedado sin un,
        le falta una, le falta un, le falta el, le falta la, le faltan, le faltan dos, le faltan las,
        ha perdido una, perdió una, ha perdido un, perdió un, viene sin una, viene sin un, está sin una,
        está sin un, se ha quedado sin las, se quedó sin las, tiene rota una, tiene roto un, tiene rota la,
        tiene roto el, tiene suelta una, tiene suelto un, tiene suelta la, tiene suelto el, tiene partida una,
        tiene partida la, tiene partido el, lleva rota una, lleva roto un, lleva rota la, lleva roto el,
        lleva suelta una, lleva suelta la, va con una suelta,
        se |trozó|trozaron, se le |trozó|trozaron, se me |trozó|trozaron, trozó, trozad|o|a|os|as, se ha trozado, se
        le ha trozado, se |tronó|tronaron, se le |tronó|tronaron, se le |truena|troza, se mochó, se le mochó,
        mochad|o|a, se desprendieron, se le desprendió, se chingó, chingad|o|a, se fregó, fregad|o|a, se jodió, se
        le jodió, rajad|o|a|os|as, se rajó, se le rajó
    """,
    "kind sheet": """
        la de lluvia, la de agua, la de la lluvia, las de lluvia, la de llover,
        sheet, sheets,
        impermeable, impermeables, chubasquero, manta de lluvia, manta impermeable, sábana, sábana de lluvia,
        manta sin relleno, capa de agua, lona, sheet, capa, capas, capita, capitas, impermeable de lluvia,
        impermeable fino, impermeable sin relleno, chubasqueros, chubasquerito, chubas, impermeablecito,
        manta de agua, mantas de agua, manta para la lluvia, manta para el agua, mantas impermeables,
        mantas de lluvia, capa de lluvia, capa impermeable, capa para la lluvia, capa para el agua,
        capas de agua, cobija de lluvia, cobija impermeable, cobija de agua, cobija para la lluvia, sábanas,
        sabanita, lonita, lonas, poncho, ponchito, imper, rain sheet, manta cero, manta de 0, manta 0,
        manta sin guata, manta de verano impermeable, frazada impermeable, frazada de lluvia
    """,
    "kind turnout": """
        turnout, turnouts,
        turnout, manta de campo, manta de prado, manta de paddock, manta de exterior, manta de fuera,
        manta exterior, mantas de campo, manta de potrero, outdoor, turnouts, mantas de prado,
        mantas de paddock, mantas de exterior, mantas de fuera, mantas de potrero, manta de calle,
        manta de la calle, manta del prado, manta del campo, manta del potrero, manta para el prado,
        manta para el campo, manta para fuera, manta para afuera, manta de pradera, manta de dehesa,
        manta de corral, manta de intemperie, cobija de campo, cobija de potrero, cobija de afuera,
        cobija de exterior, cobijas de potrero, frazada de campo, frazada de potrero, manta de salir,
        manta de pasto, mantas de pasto, la de salir, la de fuera, la de exterior, la de campo, la de prado,
        la de paddock, la de potrero, la de pasto, la de afuera, la de calle, la del prado, la del campo,
        la del potrero
    """,
    "kind liner": """
        liner, liners,
        forro, forros, interior, interiores, liner, liners, manta interior, bajomanta, entremanta, forro interior,
        forrito, forritos,
        forrillo, mantas interiores, manta de debajo, manta de abajo, la de debajo, la de abajo, la interior,
        forro de debajo, forro térmico, bajomantas, bajo manta, bajo mantas, submanta, sub manta, entre manta,
        subforro, under rug, underrug, underblanket, cobija interior, forros interiores, liner interior,
        edredón interior
    """,
    "kind stable": """
        manta de cuadra, manta de box, manta de establo, mantas de cuadra, de cuadra, manta de caballeriza,
        manta de dentro, la de box, de establo, stable rug, mantas de box, mantas de establo,
        mantas de caballeriza, mantas de dentro, manta de adentro, manta de pesebrera, manta de la cuadra,
        manta del box, manta de interior, manta de noche, manta para el box, manta para la cuadra,
        cobija de cuadra, cobija de establo, cobija de pesebrera, cobija de caballeriza, cobija de box,
        cobija de adentro, cobija de interior, frazada de box, frazada de establo, la de cuadra, la de establo,
        la de caballeriza, la de pesebrera, la de la cuadra, la del box, la del establo, la de dentro,
        la de adentro, la de interior, stable
    """,
    "kind cooler": """
        polar, polares, manta polar, manta de sudor, manta secante, secante, cooler, sudadera, manta sudadera,
        forro polar, enfriadora, fleece, polarcito, polarcillo, mantas polares, mantas de sudor,
        mantas secantes, manta secadora, manta de secado, manta de secar, manta para secar, coolers, sudaderas,
        polar de secado, polar de secar, polar de sudor, forro polar de secar, manta enfriadora,
        mantas sudaderas, cobija de sudor, cobija polar, cobija secante, manta de enfriar,
        manta de enfriamiento, manta transpirable, rejilla, manta de rejilla, de rejilla, fleecy, manta de lana,
        manta absorbente, absorbente, secante de lana, manta para el sudor, cobija de enfriar, frazada polar
    """,
    "kind neck": """
        cubrecuello, cuello, cubrecuellos, cubre cuello, capucha, cuellera, manta de cuello, cubrecuellito,
        cuellos, el cuello de la manta, capuchas, cuelleras, mantas de cuello, manta del cuello, cubre cuellos,
        capuchón, tapacuello, tapacuellos, tapa cuello, protector de cuello, extensión de cuello
    """,
    "rug": """
        blanket, blankets, turnout blanket,
        manta, mantas, cobija, cobijas, mantita, cobertor, ropa, abrigo, frazada, frazadas, mantitas,
        mantas y mantas, mantilla|s de noche, cobijita, cobijitas, cobertores, frazadita, frazadón, mantón,
        mantones, abriguito, abrigos, ropita, mnta, mantra, manat, cobja
    """,
    "weight heavy": """
        gord|o|a|os|as, pesad|o|a|os|as, grues|o|a|os|as, gordit|o|a, gruesit|o|a, de invierno, heavy,
        gordísim|o|a, gordot|e|a, grandot|e|a, pesadit|o|a, pesadísim|o|a, gruesísim|o|a, más gord|o|a|os|as,
        más grues|o|a|os|as, más pesad|o|a|os|as, abrigad|o|a|os|as de invierno, de mucho invierno,
        de invierno gord|o|a, de mucho abrigo, de mucho frío, de pleno invierno, invernal|es, de heladas,
        de las heladas, calentita de invierno, supergord|o|a, súper gord|o|a, bien gord|o|a, bien grues|o|a,
        thick, heavies, polar de invierno, extra gord|o|a, para el frío fuerte
    """,
    "weight medium": """
        median|o|a|os|as, medi|o|a, intermedi|o|a|os|as, entretiempo, de entretiempo, medium, medianit|o|a,
        de media estación, de medio tiempo, de entre tiempo, intermedi|ita, de gramaje medio, de grosor medio,
        normalit|a, ni fina ni gorda, media media, semigruesa, semi gruesa
    """,
    "weight light": """
        liger|o|a|os|as, finit|o|a|os|as, livian|o|a|os|as, fin|o|a|os|as, ligerit|o|a|os|as, ligerísim|o|a,
        finísim|o|a, finill|o|a, delgad|o|a|os|as, delgadit|o|a|os|as, livianit|o|a|os|as, más fin|o|a|os|as,
        más liger|o|a|os|as, más delgad|o|a|os|as, más livian|o|a|os|as, de verano, de poco abrigo,
        de poco gramaje, light, lite
    """,
    "gram": """
        g, gr, gramo, gramos, grs, gramitos, grms, gms, grm, gs, gramaje
    """,
    "spare": """
        reserva, de reserva, de repuesto, repuesto, de sobra, suplente, de recambio, reservas,
        de las de reserva, de la reserva, repuestos, de las de repuesto, sobrante, sobrantes, suplentes,
        comodín, de emergencia, de prestado, prestad|o|a, de la escuela, de la cuadra en común, comunitari|o|a,
        suelta del guadarnés
    """,
    "one": "un|o|a",
    "colour": """
        azul, azules, roj|o|a|os|as, verde, verdes, negr|o|a|os|as, blanc|o|a|os|as, gris, grises, marrón,
        marrones, amarill|o|a|os|as, naranja, morad|o|a|os|as, rosa, granate, burdeos, beige, celeste,
        a cuadros, de cuadros, a rayas, de rayas, lila, violeta, dorad|o|a, plata, turquesa, azul marino, café,
        azulit|o|a, azulón, azulona, azul claro, azul oscuro, azul cielo, azul real, azul eléctrico,
        verde oscuro, verde claro, verde botella, verde militar, verde lima, verde pistacho, verdecita,
        rojit|o|a, roj|o|a oscuro, negrit|o|a, blanquit|o|a, grisácea, gris claro, gris oscuro, grisit|a,
        marroncit|a, marrón claro, marrón oscuro, amarillit|o|a, anaranjad|o|a, rosad|o|a|os|as, rosita,
        rosa fosforito, rosa palo, fucsia, fuxia, magenta, púrpura, color vino, vinotinto, vino tinto, guinda,
        bordó, burdeo, tinto, corinto, cremita, beis, camel, caqui, kaki, mostaza, ocre, platead|o|a, bicolor,
        multicolor, de colores, de colorines, tricolor, escoces|a|es, escocés, de tartán, tartán, a lunares,
        de lunares, de topos, con lunares, con estrellas, de estrellas, de estrellitas, con estrellitas,
        de flores, floreada, con flores, de corazones, con corazones, estampad|o|a, de camuflaje, de camuflage,
        camuflada, militar, de leopardo, de cebra, de vaca, de rombos, rayad|o|a, rallad|o|a, cuadriculad|o|a,
        con cuadros, con rayas, con franjas, de franjas, fosforit|o|a, fosforescente, fluorescente, flúor,
        reflectante, marino, azulmarino, navy, aguamarina, menta, lavanda, salmón, coral, chocolate, antracita,
        petróleo, turqui, celestit|e|a, lisa, a puntitos, de puntitos, de dibujitos, de muñequitos, de patitos
    """,
    "any adjective": """
        nuev|o|a|os|as, viej|o|a|os|as, grande, pequeñ|o|a, dichos|a|o, propi|o|a, buen|o|a, maldit|o|a,
        otr|a|o, nuevecit|o|a, viejit|o|a, viejísim|o|a, viejuna, chiquit|o|a, grandota, grandes, pequeñit|o|a,
        pequeñaj|a, bendit|o|a, puñeter|o|a, jodid|o|a, bonit|o|a, famos|o|a, barat|o|a, antigu|o|a, vetust|o|a,
        buena buena, cochin|o|a, asqueros|o|a, suci|o|a|os|as, limpi|o|a|os|as, sucísim|o|a, embarrad|o|a|os|as,
        lavad|o|a, mierdos|o|a, condenad|o|a, pinche, chula, estrenad|a, impermeabilizada, larg|o|a, cort|o|a,
        ancha, de siempre, del año pasado
    """,
    "put on": """
        puse, pusimos, ponerle, poniendo, he puesto, hemos puesto, ha puesto, han puesto, puesto, puesta,
        puestos, puestas, puso, pusieron, le puse, le he puesto, le hemos puesto, les puse, eché, le eché,
        añadí, le añadí, he añadido, tapé con, le pusimos, les he puesto, les hemos puesto, coloqué,
        poniéndole, le puso, le han puesto, le ha puesto, abrigué con, le estoy poniendo, le metí,
        les eché, le eché encima, le coloqué, le encasqueté, le volví a poner, he vuelto a poner,
        vuelto a poner, le he añadido, puesta ya, puesto ya, le planté, le puse ya, le he vuelto a poner,
        le hemos vuelto a poner, les volví a poner, volví a poner, volvimos a poner, le volvimos a poner,
        puse a, puse encima, he puesto a, hemos puesto a, le puse encima, le he puesto encima,
        le he puesto también, le puse también, le hemos puesto también, acabo de poner, acabo de ponerle,
        acabamos de poner, acabamos de ponerle, le acabo de poner, le acabamos de poner, terminé de poner,
        terminé de ponerle, ya le puse, ya le he puesto, ya le pusimos, ya le hemos puesto, ya puse,
        ya he puesto, se la puse, se lo puse, se la he puesto, se lo he puesto, se las he puesto,
        se los he puesto, se las puse, se la pusimos, se lo pusimos, se la hemos puesto,
        se lo hemos puesto, se la acabo de poner, se lo acabo de poner, se la volví a poner,
        se la he vuelto a poner, le pusieron, les pusieron, les pusimos, les puso, me la han puesto,
        lleva puesta ya, le eché por encima, eché encima, echamos, le echamos, le echamos encima,
        le he echado, le he echado encima, le he echado por encima, le hemos echado, les he echado,
        he echado, hemos echado, echad|o|a|os|as encima, le echó, le echaron, eché por encima, le calcé,
        le he calzado, calcé, le enchufé, le he enchufado, enchufé, le he encasquetado, encasqueté,
        le he plantado, planté, le plantamos, le metí encima, le he metido, le he metido encima, le zampé,
        le zumbé, le endosé, le he endosado, le endilgué, le he colocado, le hemos colocado,
        les he colocado, he colocado, hemos colocado, colocamos, colocad|o|a|os|as, le enfundé,
        le he enfundado, enfundé, enfundad|o|a|os|as, le abroché, le he abrochado, le tiré, le tiré encima,
        le he tirado, le he tirado encima, tiré encima, le clavé, le casqué, le arrimé, le acomodé,
        le he acomodado, acomodé, le amarré, le até, le monté encima, le sumé, le he sumado, sumé,
        le agregué, le he agregado, agregué, agregado, agregad|o|a|os|as, le añadimos, le hemos añadido,
        añadimos, añadid|o|a|os|as, hemos añadido, le subí a la, le reforcé con, reforcé con, le reforcé,
        he reforzado con, tapé a, tapamos con, he tapado con, hemos tapado con, lo tapé con, la tapé con,
        le tapé con, los tapé con, lo he tapado con, la he tapado con, la hemos tapado con,
        lo hemos tapado con, la tapamos con, lo tapamos con, he abrigado con, lo abrigué con,
        la abrigué con, lo he abrigado con, la he abrigado con, arropé con, la arropé con, lo arropé con,
        la he arropado con, lo he arropado con, cubrí con, la cubrí con, lo cubrí con, vestí con,
        la vestí con, lo vestí con, la he vestido con, lo he vestido con, he vestido con, he vestido a,
        emponchad|o|a con, enmantad|o|a con, enmanté con, le estamos poniendo, estoy poniendo,
        estamos poniendo, poniéndole ahora, poniéndoles, estoy poniéndole, puest|o|a|os|as ya,
        ya puest|o|a|os|as, puestecit|o|a, recién puest|o|a|os|as, puest|o|a encima, puse yo, le puse yo,
        le pongo ahora mismo, le estoy echando, echándole, vuelta a poner, vuelve a llevar puesta,
        he cubierto con, forrad|o|a con, le dejé puest|o|a|os|as, le he dejado puest|o|a|os|as,
        dejé puest|o|a, le dejo puest|o|a|os|as, le dejamos puest|o|a, la dejé con, lo dejé con,
        la he dejado con, lo he dejado con, los he dejado con, las he dejado con, la dejamos con,
        lo dejamos con, la hemos dejado con, lo hemos dejado con, le dejé con, le he dejado con,
        la dejo con, lo dejo con, los dejo con, las dejo con, tapé, tapamos, he tapado, hemos tapado, tapó,
        taparon, han tapado, ha tapado, tapé al, tapamos al, he tapado al, hemos tapado al, abrigué,
        abrigamos, he abrigado, hemos abrigado, abrigué al, abrigué a, arropé, arropamos, he arropado,
        arropé a, arropé al, cubrí, cubrimos, he cubierto, cubrí a, cubrí al, vestí, vestimos, he vestido,
        hemos vestido, vestí a, vestí al, enmanté, enmanté a, enmantamos, cobijé, cobijamos, cobijé a,
        cobijé al, emponché, emponché a, la tapé, lo tapé, la he tapado, lo he tapado, los tapé,
        los he tapado, acabo de |poner|ponerle|echar|echarle|meterle|colocar|colocarle,
        acabo de |plantar|plantarle|enchufarle|encasquetarle|añadirle|calzarle|acomodarle,
        acabamos de |poner|ponerle|echar|echarle|meterle|colocar|colocarle,
        acabamos de |plantar|plantarle|enchufarle|encasquetarle|añadirle|calzarle|acomodarle,
        terminé de |poner|ponerle|echar|echarle|meterle|colocar|colocarle,
        terminé de |plantar|plantarle|enchufarle|encasquetarle|añadirle|calzarle|acomodarle, e echado,
        le e echado, le e puesto, le e metido, les e puesto, se la e puesto, se lo e puesto, le a puesto,
        le an puesto,
        se |la|lo|las|los |eché|metí|coloqué|mandé|planté|encajé|chanté|amarré|abroché|acomodé|agregué, se
        |la|lo|las|los dejé puest|a|o|as|os, se |la|lo|las|los
        |echamos|metimos|colocamos|mandamos|pusieron|echaron|abrochamos|acomodamos, se |la|lo|las|los he
        |echado|metido|colocado|plantado|abrochado|acomodado|enchufado, se |la|lo|las|los hemos
        |echado|metido|colocado|plantado|abrochado|enchufado, le mandé, le mandamos, les mandé, le encajé, le
        encajamos, le chanté, le chantamos, le enjareté, le clavamos, le plantaron, le zampamos, le metimos, les
        metí, les metimos, le emparejé, le enganché, le calzamos, le prendí, le dejamos puestos, le dejamos
        puestas, le aseguré, le ajusté, ya le eché, ya le metí, ya le mandé, ya les puse, ya les eché, ya se la
        puse, ya se lo puse, ya se la eché, ya quedó con, ya quedaron con, la vestí de, lo cobijé, la cobijé, la
        cobijamos, lo cobijamos, cobijé con, lo cobijé con, la cobijé con, la emponché, lo emponché,
        |tuve|tuvimos|tuvo|tuvieron|hubo que
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle,
        |tuve|tuvimos|tuvo|tuvieron|hubo que |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con,
        |tuve|tuvimos|tuvo|tuvieron|hubo que |ponérsela|ponérselo|echársela|echárselo, me tocó
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, me tocó
        |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, me tocó
        |ponérsela|ponérselo|echársela|echárselo, nos tocó
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, nos tocó
        |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, nos tocó
        |ponérsela|ponérselo|echársela|echárselo, le tocó
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, le tocó
        |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, le tocó
        |ponérsela|ponérselo|echársela|echárselo, he tenido que
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, he tenido que
        |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, he tenido que
        |ponérsela|ponérselo|echársela|echárselo, hemos tenido que
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, hemos tenido
        que |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, hemos tenido que
        |ponérsela|ponérselo|echársela|echárselo, ha habido que
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, ha habido que
        |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, ha habido que
        |ponérsela|ponérselo|echársela|echárselo, e tenido que
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, e tenido que
        |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, e tenido que
        |ponérsela|ponérselo|echársela|echárselo, terminé por
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, terminé por
        |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, terminé por
        |ponérsela|ponérselo|echársela|echárselo, acabé por
        |poner|ponerle|ponerles|echar|echarle|meterle|colocar|colocarle|plantarle|mandarle|encajarle, acabé por
        |taparla|taparlo|abrigarla|abrigarlo|vestirla|vestirlo con, acabé por
        |ponérsela|ponérselo|echársela|echárselo, |le|les |tuve|tuvimos|tuvieron|hubo que
        |poner|echar|meter|colocar|plantar, |le|les he tenido que |poner|echar|meter|colocar|plantar, |le|les hemos
        tenido que |poner|echar|meter|colocar|plantar
    """,
    "took off": """
        quité, quitamos, he quitado, hemos quitado, ha quitado, han quitado, le quité, le he quitado, le hemos
        quitado, quitad|o|a|os|as, saqué la, saqué el, le saqué la, le saqué el, quitando, quitándole, les
        quité, les he quitado, le quitamos, quitó, le quitó, desabrigué, destapé, he destapado, retiré, le
        retiré, retirad|o|a, les hemos quitado, le han quitado, le ha quitado, quitaron, les quitamos, se la
        quité, se lo quité, se la he quitado, se lo he quitado, se la quitamos, se lo quitamos, le he retirado,
        quitada ya, quitado ya, fuera, quité yo, le quité ya, le quité yo, ya le quité, ya le he quitado, ya
        quité, ya he quitado, le acabo de quitar, acabo de quitar, acabo de quitarle, le acabamos de quitar,
        acabamos de quitar, acabamos de quitarle, terminé de quitar, les quitó, les quitaron, les han quitado,
        les ha quitado, le quitaron, se las quité, se los quité, se las he quitado, se los he quitado, se las
        quitamos, se los quitamos, se la hemos quitado, se lo hemos quitado, se la quitó, se lo quitó, se la
        quitaron, se la han quitado, se lo han quitado, se la acabo de quitar, se lo acabo de quitar, le estoy
        quitando, le estamos quitando, estoy quitando, estoy quitándole, quitándoles, quitad|o|a|os|as ya, ya
        quitad|o|a|os|as, recién quitad|o|a, le saqué, les saqué la, les saqué el, le saqué ya la, le saqué ya
        el, le sacamos la, le sacamos el, le he sacado la, le he sacado el, le hemos sacado la, le hemos sacado
        el, le sacó la, le sacó el, le sacaron la, le sacaron el, le han sacado la, le han sacado el, le he
        sacado, le sacamos, le sacó, le sacaron, le hemos sacado, le han sacado, se la he sacado, se lo he
        sacado, sacamos la, sacamos el, he sacado la, he sacado el, hemos sacado la, hemos sacado el, sacándole
        la, sacándole el, le retiramos, le hemos retirado, he retirado, retiramos, hemos retirado,
        retirad|o|a|os|as, se la he retirado, se ha quitado, se quitó, se la ha quitado él sol|o, se la ha
        quitado sola, se la quitó sola, se la quitó solo, se ha quitado sola, se ha quitado solo, se ha
        arrancado, se arrancó, se ha sacado, se sacó, le descolgué, le desabroché y quité, le arranqué, le he
        arrancado, le bajé la, le eliminé, le desmonté, le desvestí de, levanté la, le levanté la, le levanté
        el, le tiré para atrás, le quitamos ya, me la quité, fuera el, fuera la, fuera los, fuera las, fuera su,
        afuera la, afuera el, abajo la, abajo el, ya fuera, ya no lleva, ya no lleva puest|o|a, ya sin, le dejé
        sin, le he dejado sin, lo dejé sin, la dejé sin, lo he dejado sin, la he dejado sin, lo dejo sin, la
        dejo sin, los dejo sin, le dejo sin, se queda sin, se quedó sin, se ha quedado sin, ahora va sin, ahora
        sin, ahora está sin, va sin, van sin, anda sin, acabo de
        |quitar|quitarle|sacarle|retirar|retirarle|arrancarle, acabamos de
        |quitar|quitarle|sacarle|retirar|retirarle|arrancarle, terminé de
        |quitar|quitarle|sacarle|retirar|retirarle|arrancarle, e quitado, le e quitado, les e quitado, se la e
        quitado, se lo e quitado, le a quitado, le an quitado, se a quitado, se la a quitado,
        se |la|lo|las|los |saqué|arranqué|retiré|desabroché|tumbé|bajé|volé, se |la|lo|las|los
        |sacamos|arrancamos|retiramos|sacaron|arrancaron|sacó, le desabroché, le volé, le tumbé, le zafé, le
        zafamos, les saqué, les sacamos, les he sacado, ya le saqué, ya les quité, ya les saqué, ya se la quité,
        ya se lo quité, ya se la saqué, ya se lo saqué, pelé de, le aflojé y quité,
        se quitó sol|o|a |la|el|las|los, se sacó sol|o|a |la|el|las|los, se arrancó sol|o|a |la|el, se la sacó
        sol|o|a, se lo quitó sol|o|a, se zafó la, se zafó el,
        se le salió |la|el, se le cayó |la|el, se le resbaló |la|el, se le voló |la|el, se le corrió y se le
        salió |la|el,
        |tuve|tuvimos|tuvo|tuvieron|hubo que
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, |tuve|tuvimos|tuvo|tuvieron|hubo
        que |quitársela|quitárselo|sacársela|sacárselo, me tocó
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, me tocó
        |quitársela|quitárselo|sacársela|sacárselo, nos tocó
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, nos tocó
        |quitársela|quitárselo|sacársela|sacárselo, le tocó
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, le tocó
        |quitársela|quitárselo|sacársela|sacárselo, he tenido que
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, he tenido que
        |quitársela|quitárselo|sacársela|sacárselo, hemos tenido que
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, hemos tenido que
        |quitársela|quitárselo|sacársela|sacárselo, ha habido que
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, ha habido que
        |quitársela|quitárselo|sacársela|sacárselo, e tenido que
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, e tenido que
        |quitársela|quitárselo|sacársela|sacárselo, terminé por
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, terminé por
        |quitársela|quitárselo|sacársela|sacárselo, acabé por
        |quitar|quitarle|quitarles|sacarle|sacarles|retirar|retirarle|arrancarle, acabé por
        |quitársela|quitárselo|sacársela|sacárselo, |le|les |tuve|tuvimos|tuvieron|hubo que
        |quitar|retirar|arrancar|sacar |la|el, |le|les he tenido que |quitar|retirar|arrancar|sacar |la|el, |le|les
        hemos tenido que |quitar|retirar|arrancar|sacar |la|el
    """,
    "stripped": """
        desnudé, destapé, he destapado, desabrigué, le quité todo, desnudamos, he desnudado, hemos desnudado,
        desnud|ó, desnudaron, han desnudado, ha desnudado, lo desnudé, la desnudé, los desnudé, lo he desnudado,
        la he desnudado, la desnudamos, lo desnudamos, destapamos, destapó, destaparon, hemos destapado,
        ha destapado, han destapado, lo destapé, la destapé, los destapé, las destapé, lo he destapado,
        la he destapado, los he destapado, la hemos destapado, lo hemos destapado, la destapamos, lo destapamos,
        desabrigamos, he desabrigado, hemos desabrigado, lo desabrigué, la desabrigué, desenmanté,
        desenmantamos, desvestí, desvestimos, he desvestido, lo desvestí, la desvestí, desarropé, desmanté,
        he desmantado, desmantamos, despeloté, he despelotado, le quitamos todo, le he quitado todo,
        le hemos quitado todo, le quité todas las mantas, le he quitado todas las mantas,
        le quité todo lo que llevaba, le he quitado todo lo que llevaba, le saqué todo, le sacamos todo,
        le saqué toda la ropa, le quité toda la ropa, le quité toditico, se lo quité todo,
        se lo he quitado todo, se lo quitamos todo, se lo hemos quitado todo, se lo saqué todo, todo fuera a,
        todo fuera
    """,
    "took": "",
    "wears": """
        lleva, llevan, lleva puest|o|a|os|as, llevan puest|o|a|os|as, lleva puesto, trae, trae puest|o|a|os|as,
        traen, viste, va con, van con, está con, están con, tiene puest|o|a|os|as, tienen puest|o|a|os|as,
        ahora lleva, se queda con, con, abrigad|o|a con, tapad|o|a con, lleva ahora, cubiert|o|a con,
        vestid|o|a con, llevando, anda con, solo con, sólo con, solo lleva, sólo lleva, ya con, ahora con,
        ahora está con, ha pasado a, pasó a la, pasó al, cambiad|o|a a, vuelve a llevar, sigue con, va solo con,
        llevando solo, llev|a|an todavía, lleva hoy, lleva ahora mismo, lleva ahora solo, lleva solo,
        lleva solamente, llevan solo, lleva únicamente, lleva nada más que, ya lleva, ya llevan,
        ya lleva puest|o|a|os|as, ya tiene puest|o|a|os|as, ya tiene, ahora lleva solo, ahora solo lleva,
        ahora tiene, ahora tiene puest|o|a|os|as, ahora tiene solo, ahora va con, ahora van con, ahora llevan,
        ahora viste, ahora anda con, ahora mismo lleva, hoy lleva, hoy va con, llevando puest|o|a|os|as,
        con la ropa de, lleva encima, llevan encima, tiene encima, trae encima, trae solo, vestid|o|a|os|as con,
        vestidit|o|a con, vestid|o|a ya con, tapad|o|a|os|as con, tapadit|o|a con, tapad|o|a ya con,
        abrigad|o|a|os|as con, abrigadit|o|a con, arropad|o|a|os|as con, arropadit|o|a con,
        cubiert|o|a|os|as con, equipad|o|a con, enmantad|o|a con, forrad|o|a con, embutid|o|a en,
        enfundad|o|a en, embutid|o|a con, envuelt|o|a en, metid|o|a en la manta, ya está con, ya están con,
        está ya con, está ahora con, están ahora con, está solo con, están solo con, ya va con, ya van con,
        va ya con, va ahora con, va únicamente con, van solo con, va nada más con, va con solo,
        se queda solo con, se quedan con, se quedó con, se quedaron con, se ha quedado con, se han quedado con,
        quedó con, quedaron con, queda con, quedan con, queda ya con, ha quedado con, han quedado con,
        queda vestid|o|a con, quedó tapad|o|a con, queda tapad|o|a con, sigue llevando, siguen llevando,
        siguen con, sigue solo con, continúa con, cambiad|o|a|os|as a, cambiad|o|a a la, cambiad|o|a al,
        pasad|o|a a, pasad|o|a a la, pasad|o|a al, pasó a llevar, ha pasado a llevar, ha pasado a la,
        ha pasado al, pasa a la, pasa al, pasa a llevar, pasó de la, vuelve a la, vuelve al, vuelven a llevar,
        vuelve a ir con, vuelve con, de nuevo con, otra vez con, otra vez lleva, solo su, ya con su,
        nada más con, nomás con, nomás trae, nomás lleva, nada más trae, solo trae, trae nomás, va de, van de,
        luce, luciendo, usa, usando, está usando, tiene solo, tiene nada más, tiene nomás, solo tiene,
        le he dejado solo, le dejé solo, le dejo solo, le dejamos solo, le hemos dejado solo,
        le he dejado solo con, lo he dejado solo con, la he dejado solo con, lo dejé solo con, la dejé solo con,
        lo dejo solo con, la dejo solo con, le he dejado únicamente, le he dejado nada más, le dejé nomás,
        lo dejé nomás con, la dejé nomás con, le queda solo, solo le queda, solo le he dejado, solo le dejé,
        le dejo nada más, solo lleva ya, únicamente lleva, no lleva más que, no lleva nada más que,
        no lleva otra cosa que, nada más lleva, va nomás con, anda nomás con, está nomás con, le dejo,
        le dejamos, le he dejado, le dejé, le hemos dejado, les dejo, les he dejado,
        con |puro|pura|puros|puras, con el puro, con la pura, con su puro, con su pura,
        |trae|traen|lleva|llevan|tiene|usa |puro|pura, |trae|lleva|tiene el puro, |trae|lleva|tiene la pura,
        |va|anda|está|quedó|queda|quedo|ya con |puro|pura, |anda|quedó|quedo|va|está con el puro,
        |anda|quedó|quedo|va|está con la pura, |le|les dejé |puro|pura, le dejé el puro, le dejé la pura, le dejamos
        |puro|pura, quedo solo con, quedó nomás con
    """,
    "at somebody's": "en casa de, en lo de, en la casa de, en el rancho de, en la cuadra de, en casa e",
    "fetched": "",
    "keeps": "",
    "in": "en",
    "on": "puest|o|a|os|as, encima",
    "off": "fuera la, fuera el, sin",
    "has": "",
    "swapped": """
        cambié, cambiamos, he cambiado, hemos cambiado, cambiad|o|a, cambió, le cambié, sustituí, he sustituido,
        le he cambiado, le cambiamos, reemplacé, ha cambiado, cambiaron, le cambié ya, ya le cambié,
        ya le he cambiado, le hemos cambiado, le cambió, le cambiaron, le han cambiado, le ha cambiado,
        han cambiado, les cambié, les he cambiado, les cambiamos, se la cambié, se lo cambié, se la he cambiado,
        se lo he cambiado, se la cambiamos, acabo de cambiar, acabo de cambiarle, le acabo de cambiar,
        acabamos de cambiar, cambiad|o|a|os|as ya, cambio de, cambio hecho de, cambiazo, le di el cambiazo a,
        sustituimos, sustituid|o|a|os|as, le sustituí, le he sustituido, hemos sustituido, reemplazamos,
        he reemplazado, hemos reemplazado, le reemplacé, reemplazad|o|a, he remplazado, remplacé, troqué,
        he trocado, permuté, intercambié, he intercambiado, le mudé, mudé, he mudado, le permuté,
        le hice el cambio de, le hice cambio de, hice cambio de, hice el cambio de, le cambiamos ya, les
        cambiamos ya, le rolé
    """,
    "instead of": """
        en vez de, en lugar de, en lugar del, en vez del, en vez de la, en lugar de la, en sustitución de,
        envez de, en ves de, enves de, en vez de su, en lugar de su, en vez de llevar, en lugar de llevar,
        en sustitución de la, en sustitución del, sustituyendo a, sustituyendo a la, sustituyendo al,
        en reemplazo de, en reemplazo de la, en reemplazo del, reemplazando a, reemplazando la, reemplazando el,
        a cambio de, a cambio de la, a cambio del, antes llevaba, y fuera, quitándole, en lugar, en vez
    """,
    "for another": """
        por, a, con, al
    """,
    "over": """
        abajo, por abajo,
        y encima, y por encima, y arriba,
        encima, encima de, debajo, debajo de, sobre, bajo, además, también, por encima, por debajo,
        por encima de, por debajo de, a mayores, de extra, arriba de, abajo de, por arriba, por abajo, aparte,
        añadid|o|a, junto a, junto con, debajito, encimita,
        arriba del, arriba de la, encima del, encima de la, por encima del, por encima de la, abajo del, abajo
        de la, debajo del, debajo de la, por debajo del, por debajo de la, por abajo de, por abajo del, por
        arriba del, por arriba de la, sobre el, sobre la
    """,
    "bare": """
        lo he dejado en pelo, la he dejado en pelo, lo dejé en pelo, la dejé en pelo, los he dejado en pelo,
        en pelo, al pelo,
        le quité todo, les quité todo, le he quitado todo, les he quitado todo, le quitamos todo, quité todo a,
        le saqué todo, les saqué todo, le quité todo lo que llevaba,
        sin manta, sin mantas, desnud|o|a|os|as, sin nada, sin nada puesto, a pelo, en pelotas,
        destapad|o|a|os|as, sin ropa, sin cobija, no lleva nada, no lleva manta, no lleva nada puesto,
        sin abrigo, en cueros, sin tapar, no tiene manta, no tiene nada puesto, sin cobijas, pelad|o|a, bare,
        naked, sin nada encima, en bolas, desvestid|o|a, no lleva nada encima, nada encima, sin ninguna manta,
        sin mantas puestas, desnudit|o|a, sin ninguna cobija, sin cobertor, sin frazada, sin frazadas,
        sin cobija ninguna, sin manta ninguna, sin manta alguna, sin mantas ni nada, sin manta ni nada,
        sin la manta, sin su manta, sin sus mantas, sin las mantas, sin manta puesta, sin manta encima,
        sin nada de ropa, sin ropa encima, sin ropa ninguna, sin nada por encima, sin una sola manta,
        sin absolutamente nada, sin nada de nada, sin taparse, sin abrigar, sin cubrir, sin tapar ni nada,
        desnudit|o|a|os|as, desnud|o|a|os|as del todo, completamente desnud|o|a|os|as,
        totalmente desnud|o|a|os|as, en pelota, en pelota picada, en pelotas picadas, en pelotillas,
        en porretas, en porreta, en cueros vivos, en cuero, en cueritos, en pelete, encuerad|o|a|os|as,
        encueradit|o|a, empelot|o|a, empelotad|o|a, en pelambre, calat|o|a, pilucho, pilucha, chirul|o|a,
        piluch|os|as, chir|o|a, viringo, en viringa, biringo, en bolillas, a pelito, a pelo puro, al natural,
        tal cual vino al mundo, como vino al mundo, como dios lo trajo al mundo, como dios la trajo al mundo,
        como su madre lo trajo al mundo, como su madre la trajo al mundo, como su madre lo parió,
        como su madre la parió, en traje de adán, en traje de eva, en plan nudista, nudista,
        destapadit|o|a|os|as, desabrigad|o|a|os|as, desenmantad|o|a, desmantad|o|a, desarropad|o|a,
        desvestid|o|a|os|as, desvestidit|o|a, no lleva ninguna manta, no lleva ya manta, no lleva ya nada,
        ya no lleva manta, ya no lleva nada, ya no tiene manta, ya no tiene nada puesto, no lleva mantas,
        no llevan manta, no llevan nada, no tiene mantas, no tiene ninguna manta, no tiene cobija,
        no lleva cobija, no trae manta, no trae cobija, no trae nada, no trae nada puesto, ya no trae cobija,
        va sin nada, va sin manta, van sin manta, va a pelo, van a pelo, anda a pelo, queda sin manta,
        se queda sin manta, se queda sin nada, se queda a pelo, queda a pelo, se queda desnud|o|a,
        se ha quedado sin manta, se quedó sin manta, se quedó sin cobija, sin nada ya, ya sin nada,
        ya sin manta, ya sin mantas, ahora sin nada, ahora sin manta, ahora va sin manta, ahora va sin nada,
        ahora a pelo, está sin manta, están sin manta, está sin nada, están sin nada, está sin cobija,
        anda sin manta, anda sin nada, anda sin cobija, lo dejé sin nada, la dejé sin nada, lo dejé sin manta,
        la dejé sin manta, lo he dejado sin nada, la he dejado sin nada, lo he dejado sin manta,
        la he dejado sin manta, los he dejado sin manta, las he dejado sin manta, los he dejado sin nada,
        lo dejé a pelo, la dejé a pelo, lo he dejado a pelo, la he dejado a pelo, los he dejado a pelo,
        le he dejado a pelo, lo dejo a pelo, la dejo a pelo, lo dejo sin nada, la dejo sin nada,
        lo dejo sin manta, la dejo sin manta, ha perdido la manta, perdió la manta, se ha quitado la manta,
        se quitó la manta, se ha quitado la manta sola, se ha quitado la manta solo, se la ha quitado sola,
        ni una manta encima, ni manta ni nada, ni cobija ni nada,
        bichi, bichis, |anda|está|quedó|va|la dejé|lo dejé|la dejamos|lo dejamos a raíz, pelonch|o|a, en cuerito, a
        lo pelón, sin nadita, sin nadita encima, sin ropita
    """,
    "nothing": """
        nada, todo, absolutamente nada, nada de nada, ninguna, toda la ropa, todas las mantas, toda su ropa
    """,
    "without": """
        sin
    """,
    "clipped": """
        raparon, rapamos, rapé, han rapado, hemos rapado, rasuraron, rasuré, raparon a, rapé a,
        esquilad|o|a|os|as, esquilé, esquilamos, esquilado, he esquilado, hemos esquilado, esquileo, esquila,
        han esquilado, esquilaron, ha esquilado, rapad|o|a, pelé, esquiló, se esquiló, esquilada,
        esquilado de manta, esquilado de caza, esquilado completo, esquilado inglés, esquila completa,
        trace clip, rapé, rapamos, he rapado, hemos rapado, esquilé a, esquilamos a, esquilando hoy,
        esquiladit|o|a, esquiladit|os|as, esquilar hoy, acabo de esquilar, acabamos de esquilar,
        recién esquilad|o|a|os|as, ya esquilad|o|a|os|as, esquilad|o|a|os|as ya, está esquilad|o|a,
        queda esquilad|o|a, le hice un esquilado, le he hecho un esquilado, le hice el esquilado,
        le he hecho el esquilado, le hicimos el esquilado, le hice una esquila, le he hecho una esquila,
        le hice la esquila, le he hecho la esquila, le hicimos la esquila, esquilado hecho, esquila hecha,
        se ha esquilado, lo esquilé, la esquilé, los esquilé, lo esquilamos, la esquilamos, lo he esquilado,
        la he esquilado, la hemos esquilado, lo hemos esquilado, la han esquilado, lo han esquilado,
        me la han esquilado, me lo han esquilado, me la esquilaron, me lo esquilaron, nos la han esquilado,
        lo esquilaron, la esquilaron, lo esquiló, la esquiló, la ha esquilado, lo ha esquilado,
        le pasé la máquina, le he pasado la máquina, le pasamos la máquina, le hemos pasado la máquina,
        pasé la máquina a, pasada la máquina, le metí la máquina, le he metido la máquina,
        le metimos la máquina, le metí máquina, le he metido máquina, rapad|o|a|os|as, rapadit|o|a, rapé a,
        he rapado a, la rapé, lo rapé, la hemos rapado, lo hemos rapado, pelad|o|a a máquina, pelé a máquina,
        he pelado a, pelamos a, peluqueada, peluqueado, peluqueé, motilé, motilad|o|a, motilamos,
        trasquilad|o|a, trasquilé, tusé, tusad|o|a, tusamos, rasuré, rasurad|o|a, rasuramos, afeité,
        afeitad|o|a, recorté, clip, clipping, clipé, clipeé, clipead|o|a, clipad|o|a, corte de pelo,
        le corté el pelo, le he cortado el pelo, le cortamos el pelo, le hemos cortado el pelo, le hice un,
        le he hecho un, le hicimos un, le hemos hecho un, le hice el, le he hecho el, le hicimos el,
        le hemos hecho el, le he hecho solo, le hice solo, esquilamiento, esquileo hecho,
        |lo|la|los|las |pelamos|pelé|pelaron|tusamos|tusé|tusaron|rapamos|raparon|rasuramos|rasuraron|afeitamos,
        la |peluqueamos|peluqueé|trasquilamos|trasquilé, lo |peluqueamos|peluqueé|trasquilamos|trasquilé,
        pelamos al, pelé al, pelé a, raparon al, rapé al, rasuré a, rasuré al, rasuramos a, tusé a, tusé al,
        tusamos a, peluqueamos a, peluqueé a, le hicimos la máquina, le dimos máquina, le di máquina,
        esquilad|o|a|os|as en manta
    """,
    "style none": """
        sin esquilar, ya le creció el pelo, le ha crecido el pelo, pelo crecido, sin esquilar ya,
        pelo de invierno completo, con todo su pelo, le ha crecido todo el pelo,
        le creció todo el pelo, ya le ha crecido el pelo, ya tiene todo el pelo, ya no está esquilad|o|a,
        ya no se le nota el esquilado, ya no se le nota la esquila, ya le salió todo el pelo,
        ya le ha salido el pelo, ya le ha salido todo el pelo, pelo crecido del todo, pelo natural,
        no está esquilad|o|a, sin esquilado
    """,
    "style bib": """
        babero, de babero, solo el pecho, pecho, pechera, de pecho, esquilado de pecho, babero y cuello,
        el babero, un babero, baberito, en babero, tipo babero, bib, un bib, el bib, bib clip, peto, un peto,
        el peto, de peto, tipo peto, solo pecho, solo el pecho y el cuello, solo cuello y pecho,
        solo por delante, solo la parte de delante, pecheral,
        corte babero, corte bib, corte de babero, corte de pecho,
        estilo |babero|bib|peto
    """,
    "style trace": """
        trace, esquilado inglés, de tiro, trazas, de traza, traza, trace clip, un trace, el trace, trace alto,
        trace bajo, en trace, tipo trace, de trazo, trazo, de trazos, esquilado de tiro, tipo tiro, de enganche,
        de carruaje, esquilado de enganche, irlandés, un irlandés, esquilado irlandés, inglés, a la inglesa,
        tipo inglés, la barriga y el cuello, los bajos, solo los bajos, de bajos, línea de tiro,
        corte trace, corte inglés, tipo trazo,
        estilo |trace|inglés|irlandés|tiro, al estilo inglés
    """,
    "style blanket": """
        de manta, esquilado de manta, tipo manta, blanket, mantita de esquilado, blanket clip,
        esquilado manta, corte de manta, tipo mantita, dejándole la manta, con manta en el lomo,
        con la manta de pelo, manta de pelo,
        corte blanket, corte manta,
        estilo |manta|blanket|mantita, esquilad|o|a|os|as en manta, a lo manta, tipo blanket, modelo manta,
        al estilo manta,         conservando el pelo del lomo, dejándole el pelo del lomo, dejando el pelo del lomo
    """,
    "style hunter": """
        de caza, caza, hunter, esquilado de caza, tipo caza, cazador, hunter clip, un hunter, el hunter,
        en hunter, tipo hunter, tipo cazador, de cazador, esquilado de cazador, esquilado hunter, corte de caza,
        un caza, corte cazador, dejándole patas y silla, dejando las patas, dejando patas y silla,
        menos las patas y la silla, con las patas sin esquilar, dejándole las patas, dejándole la silla,
        todo menos las patas, todo menos patas, entero menos las patas, enter|o|a menos las patas,
        complet|o|a menos las patas,
        corte hunter, corte cazador de, corte de cazador,
        estilo |caza|hunter|cazador, a lo cazador, al estilo |caza|cazador
    """,
    "style full": """
        complet|o|a, enter|o|a, total, del todo, por completo, todo el cuerpo, esquilado completo, al completo,
        esquila completa, full, complet|os|as, enterit|o|a, full clip, full body, un full, el full,
        entera entera, entero entero, de cuerpo entero, de cuerpo completo, el cuerpo entero, cuerpo entero,
        cuerpo completo, el cuerpo completo, tod|o|a enter|o|a, de arriba abajo, de pies a cabeza,
        de la cabeza a los pies, de cabeza a patas, de morro a cola, de punta a punta, al cero, al rape, a cero,
        al ras, a ras, total total, integral, por entero, de todo el cuerpo, todit|o|a, patas y cara incluidas,
        patas incluidas, cara y patas incluidas, con patas y todo, con cara y patas, patas y todo,
        hasta las patas, cabeza y patas incluidas, hasta las orejas,
        todo el pelo, pelad|o|a enter|o|a, pelad|o|a complet|o|a, todita completa, todito completo, corte
        completo, corte entero, corte total
    """,
    "place stall": """
        stall, el stall, su stall, cuadra, box, boxes, establo, caballeriza, dentro, adentro, a cubierto,
        bajo techo, cuadras, a la cuadra, al box, pesebrera, en casa, corraliza, cuadrita, boxe, establos, establito,
        caballerizas,
        pesebreras, pesebre, pesebrito, caseta, casita, a resguardo, resguardad|o|a|os|as, bajo cubierto,
        bajo cubierta, bajo tejado, bajo techado, techad|o|a, a techo, bajo el techo, bajo el cobertizo, galpón,
        en su casa, en casita, en su casita, cuadrón, corral techado, estabulad|o|a|os|as, bocs, en el interior,
        al interior,
        adentrico, dentrito, box de |abajo|arriba|atrás|fuera|enfrente, box del |fondo|medio|rincón,
        box de al lado, box grande, cuadra de |abajo|arriba|atrás, establo de |abajo|arriba|atrás
    """,
    "place field": """
        en el turnout, al turnout, en turnout, del turnout,
        prado, campo, paddock, pradera, potrero, fuera, afuera, exterior, pasto, cercado, a la calle, corral,
        prados, al prado, finca, dehesa, tornadero, prao, praos, praderita, praderas, potreros, potrerito,
        paddocks, padock, padocks, paddok, padoc, paddocs, pastos, pastizal, pastizales, cercados, cercadito,
        cercón, campito, campos, al aire libre, intemperie, a la intemperie, afuerita, fincas, dehesas,
        corrales, corralito, corralón, picadero de arena de fuera, rancho, ladera, loma, vega, ribera, parcela,
        parcelas, prau, praderío, solana, manguera, piquete,
        prado de |abajo|arriba|atrás|delante|enfrente|fuera,
        potrero de |abajo|arriba|atrás|delante|enfrente|afuera,
        paddock de |abajo|arriba|atrás|delante|enfrente|arena, prado del |fondo|río|medio|norte|sur,
        potrero del |fondo|río|medio|norte|sur, paddock del |fondo|medio, prado de al lado, potrero de al lado,
        paddock de al lado, prado grande, prado pequeño, prado chico, potrero grande, potrero chico,
        paddock grande, paddock pequeño, prado nuevo, potrero nuevo
    """,
    "inwards": """
        dentro, adentro, para dentro, pa dentro, dentro ya, ya dentro, adentro ya, ya adentro, hacia dentro,
        hacia adentro, pa adentro, para adentro, a dentro, adentrico, padentro, p'adentro, pal box, pal establo
    """,
    "outwards": """
        fuera, afuera, para fuera, pa fuera, fuera ya, ya fuera, afuera ya, ya afuera, hacia fuera,
        hacia afuera, pa afuera, para afuera, pafuera, p'afuera, palfuera, pal prado, pal prao, pal campo,
        pal potrero
    """,
    "brought": """
        acabo de dejar, acabamos de dejar,
        metid|o|a|os|as, sacad|o|a|os|as, llevé, llevamos, traje, trajimos, pasé, pasamos, moví, he llevado,
        hemos llevado, he pasado, entré, guardé, guardamos, puse, he traído, he dejado, dejé, dejamos, solté,
        he metido, cambié, hemos traído, he sacado, subí, bajé, hemos bajado, hemos subido, metiendo ahora,
        llevad|o|a|os|as, traíd|o|a|os|as, trajeron, han traído, ha traído, trajo, llevaron, han llevado,
        ha llevado, llevó, la llevé, lo llevé, los llevé, las llevé, la he llevado, lo he llevado,
        los he llevado, las he llevado, la hemos llevado, lo hemos llevado, los hemos llevado, la traje,
        lo traje, los traje, las traje, la he traído, lo he traído, los he traído, las he traído,
        la hemos traído, los hemos traído, lo trajimos, la trajimos, los trajimos, pasad|o|a|os|as,
        hemos pasado, han pasado, ha pasado, la pasé, lo pasé, los pasé, la he pasado, lo he pasado,
        los he pasado, movimos, he movido, hemos movido, movid|o|a|os|as, la moví, lo moví, la he movido,
        lo he movido, trasladé, trasladamos, he trasladado, trasladad|o|a|os|as, entramos, he entrado,
        hemos entrado, entrad|o|a|os|as, la entré, lo entré, los entré, guardaron, he guardado, hemos guardado,
        la guardé, lo guardé, los guardé, la he guardado, lo he guardado, dejaron, hemos dejado, han dejado,
        la dejé en, lo dejé en, los dejé en, las dejé en, la he dejado en, lo he dejado en, los he dejado en,
        las he dejado en, la dejamos en, lo dejamos en, los dejamos en, la hemos dejado en, dejad|o|a|os|as en,
        la puse en, lo puse en, los puse en, lo he puesto en, la he puesto en, los he puesto en, subimos,
        bajamos, he subido, he bajado, la subí, lo subí, los subí, la bajé, lo bajé, los bajé, bajad|o|a|os|as,
        subid|o|a|os|as, cambié a, recogidit|o|a, regresé, regresamos, he regresado, devolví, devolvimos,
        he devuelto, devuelt|o|a|os|as, la devolví, lo devolví, volví a meter, he vuelto a meter,
        volvimos a meter, hemos vuelto a meter, volví a sacar, he vuelto a sacar, hemos vuelto a sacar,
        acabo de meter, acabamos de meter, acabo de sacar, acabamos de sacar, acabo de llevar, acabo de traer,
        arreé, arrié, mandé, he mandado, hemos mandado, mandamos, mandad|o|a, conduje, acompañé, largué a,
        eché a, tiré a, tiramos a
    """,
    "stays": """
        se queda, se quedan, se quedó, duerme, duermen, pasa la noche, sigue, siguen, queda, se va a quedar,
        se quedará, se quedan a dormir, pasan la noche, se quedan ya, se quedaron, se ha quedado,
        se han quedado, se quedarán, se queda hoy, se queda a dormir, dormirá, dormirán, se queda ya,
        se queda esta noche, se quedan esta noche, hoy se queda, hoy se quedan, esta noche se queda,
        esta noche se quedan, hoy duerme, hoy duermen, esta noche duerme, esta noche duermen, pasará la noche,
        pasan el día, pasa el día, pasa la tarde, permanece, permanecen, continúa, continúan, lo dejo, la dejo,
        los dejo, las dejo, lo dejamos, la dejamos, los dejamos, las dejamos, lo dejo durmiendo, vive ahora,
        queda ya, quedan, quedan ya, se me queda
    """,
    "brought in": """
        metí, metimos, he metido, hemos metido, ha metido, encerré, encerrad|o|a, ya ha entrado, ha entrado,
        han metido, metió, estabulad|o|a, recogí, he recogido, hemos recogido, ha entrado ya, han entrado,
        recogid|o|a, entró, ha entrado al box, metid|o|a|os|as dentro, metid|o|a|os|as en el box,
        metid|o|a|os|as en la cuadra, traje a la cuadra, ya dentro, guardad|o|a|os|as, lo metí, la metí,
        los metí, las metí, lo he metido, la he metido, metido dentro, metida dentro, metid|o|a, metimos a,
        metí a, he metido a, hemos metido a, metieron, los he metido, las he metido, los hemos metido,
        las hemos metido, lo hemos metido, la hemos metido, lo metimos, la metimos, los metimos, las metimos,
        acabo de meter a, acabamos de meter a, ya he metido, ya metí, ya metimos, ya hemos metido,
        ya está metid|o|a, ya están metid|os|as, metid|o|a|os|as ya, metidit|o|a|os|as, encerramos,
        he encerrado, hemos encerrado, encerradit|o|a|os|as, lo encerré, la encerré, los encerré, las encerré,
        lo he encerrado, la he encerrado, los he encerrado, ya encerré, estabulé, he estabulado,
        hemos estabulado, estabulamos, recogimos, recogieron, han recogido, ya recogid|o|a|os|as,
        recogidit|o|a|os|as, lo recogí, la recogí, los recogí, las recogí, lo he recogido, la he recogido,
        los he recogido, ya entraron, entraron, ya han entrado, ya entró, ha entrado sol|o|a,
        guardadit|o|a|os|as, guardé a, guardamos a, he guardado a, hemos guardado a, los guardé,
        los he guardado, resguardé, resguardamos, he resguardado, entré a, entramos a, he entrado a,
        ya en su box, ya en el box, ya en la cuadra, ya en casa, ya en su casa, ya en los boxes,
        ya en el establo, ya en la pesebrera, en su box ya, en el box ya, en la cuadra ya, ya bajo techo,
        ya a cubierto, ya adentro, adentro ya, dentro ya, en boxes ya, encuadré, metíos, metía ya, e metido,
        e metido a, los e metido, la e metido, lo e metido, e encerrado, e recogido, a entrado, an entrado,
        |lo|la|los|las volví a |meter|entrar|guardar|encerrar, |lo|la|los|las volvimos a
        |meter|entrar|guardar|encerrar, volví a |entrar|guardar|encerrar a, |lo|la|los|las
        |entré|guardé|encerramos|entramos al |box|galpón|establo, |lo|la|los|las |mandé|pasé|traje pa adentro,
        |lo|la|los|las |mandé|pasé|traje para adentro, |lo|la|los|las traje al |box|galpón|establo, ya están
        adentro, ya está adentro, ya andan adentro, ya quedó adentro, ya quedaron adentro, ya quedó en su
        |box|caballeriza|stall, ya quedaron en sus |boxes|caballerizas, guardaditos adentro, entraditos,
        |tuve|tuvimos|tuvo|tuvieron|hubo que |meter|encerrar|guardar|recoger|resguardar|entrar |a|al,
        |tuve|tuvimos|tuvo|tuvieron|hubo que
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, me tocó
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, me tocó
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, nos tocó
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, nos tocó
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, le tocó
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, le tocó
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, he tenido que
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, he tenido que
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, hemos tenido que
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, hemos tenido que
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, ha habido que
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, ha habido que
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, e tenido que
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, e tenido que
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, terminé por
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, terminé por
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla, acabé por
        |meter|encerrar|guardar|recoger|resguardar|entrar |a|al, acabé por
        |meterlo|meterla|meterlos|meterlas|encerrarlo|encerrarla|guardarlo|guardarla,
        |metí|metimos|encerré|encerramos|guardé|guardamos|entré|entramos|recogí|resguardé|estabulé al, |he|hemos|e
        |metido|encerrado|guardado|entrado|recogido al, ya |metí|guardé|entré|encerré |a|al, acabo de meter al,
        acabo de guardar a, acabo de guardar al, acabo de encerrar a, acabo de encerrar al, acabo de entrar a, acabo
        de entrar al
    """,
    "turned out": """
        saqué, sacamos, he sacado, hemos sacado, ha sacado, solté, soltamos, he soltado, hemos soltado, eché al
        prado, ha salido, han sacado, sacó, han salido, soltad|o|a|os|as, han soltado, salió, ha salido al
        prado, sacad|o|a|os|as, sacad|o|a|os|as al prado, lo saqué, la saqué, los saqué, las saqué, lo he
        sacado, la he sacado, llevé al prado, solté en el prado, en el prado ya, saqué a, sacamos a, he sacado
        a, hemos sacado a, sacaron, los he sacado, las he sacado, los hemos sacado, las hemos sacado, lo hemos
        sacado, la hemos sacado, lo sacamos, la sacamos, los sacamos, las sacamos, acabo de sacar a, acabamos de
        sacar a, ya saqué, ya he sacado, ya sacamos, ya hemos sacado, ya está sacad|o|a, sacad|o|a|os|as ya,
        sacadit|o|a, soltaron, solté a, soltamos a, he soltado a, hemos soltado a, ha soltado, soltó, lo solté,
        la solté, los solté, las solté, lo he soltado, la he soltado, los he soltado, las he soltado, los hemos
        soltado, lo hemos soltado, la hemos soltado, ya solté, ya he soltado, ya soltamos, ya sueltos, ya
        suelto, ya suelta, sueltos ya, sueltas ya, suelta ya, suelto ya, soltad|o|a|os|as ya, acabo de soltar,
        acabamos de soltar, salieron, ya salió, ya ha salido, ya salieron, ya han salido, ha salido ya, han
        salido ya, salió ya, salió al prado, salió al campo, salió al potrero, salió al paddock, eché al campo,
        eché al potrero, eché fuera, he echado al prado, he echado al campo, hemos echado al prado, echamos al
        prado, la he echado al prado, lo he echado al prado, los he echado al prado, tiré al prado, llevé al
        campo, llevé al potrero, llevé al paddock, ya en el prado, ya en el campo, ya en el paddock, ya en el
        potrero, en el campo ya, en el paddock ya, en el potrero ya, ya pastando, pastando ya, pastando, ya está
        pastando, están pastando, está pastando, suelt|o|a|os|as en el prado, suelt|o|a|os|as en el campo,
        suelt|o|a|os|as en el paddock, suelt|o|a|os|as en el potrero, largué, largamos, he largado, hemos
        largado, largado al potrero, eché a, eché pal prado, eché al monte, subí al monte a, he echado al monte
        a, suelt|os|as, sueltos en, sueltas en, e sacado, e sacado a, la e sacado, lo e sacado, los e sacado, e
        soltado, e soltado a, la e soltado, lo e soltado, a salido, an salido,
        |lo|la|los|las volví a |sacar|soltar|largar|echar, |lo|la|los|las volvimos a |sacar|soltar|largar,
        |lo|la|los|las |largué|largamos|eché afuera, |lo|la|los|las mandé afuera, |lo|la|los|las |mandé|eché al
        |potrero|corral|prado|campo, ya están afuera, ya está afuera, ya andan afuera, ya anda afuera, ya quedó
        afuera, ya quedaron afuera, ya andan en el |potrero|corral|prado|campo, ya anda en el
        |potrero|corral|prado|campo, ya están en el |potrero|prado, ya está en el |potrero|prado,
        |tuve|tuvimos|tuvo|tuvieron|hubo que |sacar|soltar|largar |a|al, |tuve|tuvimos|tuvo|tuvieron|hubo que
        |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, me tocó |sacar|soltar|largar
        |a|al, me tocó |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, nos tocó
        |sacar|soltar|largar |a|al, nos tocó
        |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, le tocó |sacar|soltar|largar
        |a|al, le tocó |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, he tenido que
        |sacar|soltar|largar |a|al, he tenido que
        |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, hemos tenido que
        |sacar|soltar|largar |a|al, hemos tenido que
        |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, ha habido que |sacar|soltar|largar
        |a|al, ha habido que |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, e tenido que
        |sacar|soltar|largar |a|al, e tenido que
        |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, terminé por |sacar|soltar|largar
        |a|al, terminé por |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas, acabé por
        |sacar|soltar|largar |a|al, acabé por
        |sacarlo|sacarla|soltarlo|soltarla|soltarlos|soltarlas|sacarlos|sacarlas,
        |saqué|sacamos|solté|soltamos|largué|largamos|sacó|sacaron|soltó|soltaron al, |he|hemos|e|ha|han
        |sacado|soltado|largado al, |largué|largamos a, ya |saqué|solté|largué |a|al, acabo de sacar al, acabo de
        soltar a, acabo de soltar al, acabo de largar a, acabo de largar al, acabamos de sacar al, acabamos de
        soltar a, acabamos de soltar al,
        suelt|o|a|os|as en el |prao|prau|praderío|cercado|corral|pasto|picadero,
        suelt|o|a|os|as en la |pradera|finca|dehesa|parcela,
        suelt|o|a|os|as por el |prao|prado|campo|potrero|corral
    """,
    "keep": """
        dejad, dejar, deja, dejen, dejadl|o|a, mantened, mantener, quiero, que vaya, que esté, que siga,
        que se quede, prefiero, por favor, déjenl|o|a, tiene que ir, que lleven, dejemos, mantengan, que vayan,
        se quede, se queden, vaya, esté, siga, vayan, dejad a, dejen a, dejadlas, dejadlos, déjala, déjalo,
        dejarla, dejarlo, dejadme, dejadme a, déjenme, déjenme a, déjame a, dejarme a, me dejáis, me dejan,
        mantenla, mantenlo, manténganla, manténganlo, mantenedla, mantenedlo, quisiera, querría, me gustaría,
        yo quiero, lo quiero, la quiero, los quiero, las quiero, le quiero, lo quiero ver, la quiero ver,
        que esté siempre, que vaya siempre, que ande, que anden, que duerma, que se queden, que sigan,
        que estén, que quede, que la dejéis, que lo dejéis, que los dejéis, que la dejen, que lo dejen,
        que los dejen, que la tengáis, que lo tengáis, que la tengan, que lo tengan, preferimos, prefiero que,
        preferiría, preferiría que, quiero que, quiero a, queremos que, ha de ir, debe ir, tiene que estar,
        tienen que ir, irá, irá a partir de ahora, a partir de ahora va, desde ahora va, desde hoy va,
        a partir de hoy va, de ahora en adelante va, a partir de ahora irá, mejor dejadl|a|o, mejor dejarl|a|o,
        tenedla, tenedlo, téngala, ténganla, téngalo, ténganlo, llevadla, llevadlo, pasa a ir,
        dejádmel|a|o|as|os, déjenmel|a|o|as|os, déjamel|a|o, tenédmel|a|o, ténganmel|a|o, mantenédmel|a|o,
        dejármel|a|o
    """,
    "please": """
        por favor, porfa, a partir de ahora, de ahora en adelante, a partir de hoy, desde hoy, desde ahora,
        de hoy en adelante, de aquí en adelante, a partir de mañana, a partir de ya, en lo sucesivo,
        hasta nuevo aviso, hasta nueva orden, hasta que diga lo contrario, hasta que yo diga, hasta que avise,
        por fa, porfis, porfi, por favorcito, xfa, xfavor, x favor, pf, plis, plisss, pls, si podéis, si pueden,
        os lo pido, se los pido, os pido, lo pido por favor,
        siempre que se pueda, siempre que sea posible, siempre que |puedan|podáis|podamos,
        siempre que el tiempo lo permita, si es posible, si
        fuera posible, si se puede, si se pudiera, a ser posible, en lo posible, en la medida de lo posible, dentro
        de lo posible, de ser posible, mientras se pueda, mientras sea posible, si no es mucha molestia, si no es
        molestia, salvo fuerza mayor
    """,
    "do not rug": """
        déjenla siempre sin manta, déjenlo siempre sin manta, déjenla sin manta, déjenlo sin manta, dejala
        siempre sin manta, dejalo siempre sin manta, déjenla siempre sin capa, déjenlo siempre sin capa,
        déjenlos siempre sin manta, lo quiero sin capa, la quiero sin capa, lo quiero sin manta, la quiero sin
        manta, los quiero sin manta, lo quiero sin nada, la quiero sin nada, lo quiero pelado, la quiero pelada,
        no le pongáis manta, no le pongan manta, no le pongas manta, no poner manta, no pongáis manta, que no
        lleve manta, nada de mantas para, no tapar, no tapéis, nada de manta para, no le pongáis la manta, no le
        pongan la manta, no le pongas la manta, no hay que taparl|o|a, no abrigar, no abriguéis, no tapen, no le
        ponga manta, no le pongáis mantas, sin mantas para, no pongan manta, no ponerle manta, no le pongáis
        cobija, no le pongan cobija, no le pongas cobija, no poner cobija, no pongáis cobija, que no lleve
        cobija, nada de cobijas para, nada de cobija para, no le pongáis la cobija, no le pongan la cobija, no
        le pongas la cobija, no le ponga cobija, no le pongáis cobijas, sin cobijas para, no pongan cobija, no
        ponerle cobija, no la tapéis más, no lo tapéis más, no me la tapéis, no me lo tapéis, no me la tapéis
        más, no me lo tapéis más, no la tapéis, no lo tapéis, no los tapéis, no las tapéis, no la tapen, no lo
        tapen, no los tapen, no la tapen más, no lo tapen más, no me la tapen, no me lo tapen, no la tapes, no
        lo tapes, no la tapes más, no lo tapes más, no tapes, no tapes a, no tapéis a, no tapen a, no tapéis más
        a, no tapar a, no tapar más, no hay que tapar, no hay que tapar a, no hace falta tapar a, no hace falta
        taparl|a|o, no hace falta que la tapéis, no hace falta que lo tapéis, no abriguéis a, no abriguen, no
        abriguen a, no abrigues a, no abrigar a, no la abriguéis, no lo abriguéis, no la abriguen, no lo
        abriguen, no me la abriguéis, no me lo abriguéis, no me la abriguen, no me lo abriguen, no poner manta
        a, no pongáis manta a, no pongan manta a, no pongas manta a, no pongáis mantas a, no pongan mantas a, no
        le pongáis nada, no le pongan nada, no le pongas nada, no ponerle nada, no le pongáis más manta, no le
        pongáis más la manta, no le pongan más la manta, no le pongáis ninguna manta, no le pongan ninguna
        manta, no le pongáis ya manta, no le pongan ya manta, no le pongan mantas, no le pongas mantas, no le
        echéis manta, no le echéis la manta, no le echéis nada encima, no le echen manta, no le echen nada
        encima, no quiero que lleve manta, no quiero que le pongáis manta, no quiero que le pongan manta, no
        quiero que la tapéis, no quiero que lo tapéis, no quiero que la tapen, no quiero que lo tapen, no quiero
        manta para, no quiero mantas para, no quiero manta en, no quiero que use manta, no quiero que use
        cobija, no quiero que lleve cobija, no quiero que lleve nada, no quiero que lleve mantas, no quiero
        verl|a|o con manta, que no la tapéis, que no lo tapéis, que no la tapen, que no lo tapen, que no me la
        tapen, que no me lo tapen, que no me la tapéis, que no le pongáis manta, que no le pongan manta, que no
        le pongáis nada, que no le pongan nada, que no lleve nada, que no lleve mantas, que no lleve ninguna
        manta, que no se le ponga manta, que no use manta, que no use cobija, no se le pone manta, no se le pone
        manta a, no se le ponga manta, no se le ponga manta a, no se le pone nada, no se tapa a, nada de
        taparl|a|o, nada de tapar a, nada de manta a, nada de mantas a, nada de cobija a, nada de cobijas a,
        nada de manta con, nada de manta en, se acabaron las mantas para, se acabó la manta para, se acabaron
        las mantas con, cero mantas para, cero manta para, ni una manta para, ni una manta a, fuera mantas para,
        prohibido tapar a, prohibido tapar, prohibida la manta a, prohibidas las mantas a, prohibido poner manta
        a, no lleva manta este invierno, este invierno no lleva manta, este invierno va sin manta, este invierno
        va a pelo, este invierno a pelo, este invierno sin manta, no va a llevar manta este invierno, no llevará
        manta, no va a llevar más manta, ya no va a llevar manta, ya no llevará manta, no usará manta, no va a
        usar manta, no usa manta este invierno, no me tapéis a, no me tapen a, no me tapéis más a, no me tapen
        más a, no me abriguéis a, no me abriguen a, no me le pongáis manta a, no me le pongan manta, no me le
        pongan manta a, no me le pongáis manta, no me la cubran, no la cubran, no lo cubran, no cubran a, no me
        cubran a, no me la cobijen, no lo cobijen, no la cobijen, no cobijen a, no le pongáis manta a, no le
        pongan manta a, no le pongas manta a, no le ponga manta a, no le pongan cobija a, no le pongáis mantas
        a, no le pongáis nada a, no le pongan nada a, no lleve manta, no lleve mantas, no lleve nada, no lleve
        cobija, no lleve ninguna manta, no use manta, no use cobija, no vaya tapad|o|a, que no vaya tapad|o|a,
        que no lo tapen más, que no la tapen más, que no la tapéis más, que no lo tapéis más, no debe llevar
        manta, no tiene que llevar manta, no necesita manta este invierno, no necesita llevar manta, no hace
        falta que lleve manta, no hace falta ponerle manta, no hace falta manta para,
        no me |la|lo |tapen|cobijen|abriguen más, ya no me |la|lo |tapen|cobijen|abriguen, ya no |la|lo
        |tapen|cobijen|abriguen, ya no le pongan |cobija|manta|capa|nada, ya no quiero que le pongan
        |cobija|manta|capa, no le pongan más |cobija|manta|capa|nada, no le pongan más |cobijas|mantas, no me le
        pongan |nada|cobija|cobijas, que ande sin |cobija|manta|capa, que ande pelad|o|a,
        |déjenla|déjenlo|déjenmela|déjenmelo en pelo, |déjenla|déjenlo|déjenmela|déjenmelo sin
        |cobija|capa|nada, |déjenla|déjenlo|déjenmela|déjenmelo pelad|o|a, |dejala|dejalo|déjala|déjalo sin
        |manta|cobija|capa|nada, |la|lo prefiero sin |manta|cobija|capa|nada, |la|lo quiero sin cobija, |la|lo
        quiero en pelo, |la|lo quiero al natural,
        no más |manta|mantas|cobija|cobijas|capa para, no más |manta|mantas|cobija|cobijas|capa a, nunca más
        |manta|cobija para,
        |yo|mejor |la|lo|los|las prefiero sin |manta|cobija|capa|nada|mantas|cobijas, |yo|mejor |la|lo|los|las
        prefiero siempre sin |manta|cobija|capa|nada|mantas|cobijas, |la|lo|los|las |prefiero|quiero siempre sin
        |manta|cobija|capa|nada|ropa, |la|lo|los|las |preferimos|queremos sin |manta|cobija|capa|nada, |la|lo
        |prefiero|quiero siempre en pelo
    """,
    "rug again": """
        puede llevar manta, puede llevar manta otra vez, puede llevar manta de nuevo, puede volver a llevar
        manta, ya puede llevar manta, podéis ponerle manta, podéis volver a ponerle manta, se le puede poner
        manta, ya se le puede poner manta, se puede tapar, ya se puede tapar, vuelve a llevar manta, ya no hace
        falta que vaya sin manta, pueden ponerle manta, pueden volver a ponerle manta, ya se puede abrigar, se
        puede volver a tapar, puede usar manta otra vez, puede usar manta, ya le podéis poner manta, ya podéis
        ponerle manta, le podéis poner manta, se le puede volver a poner manta, se puede abrigar otra vez, puede
        llevar mantas otra vez, puede llevar mantas, se le puede poner manta otra vez, puede ponerse manta, ya
        puede volver a llevar manta, puede llevar cobija, puede llevar cobija otra vez, puede llevar cobija de
        nuevo, ya puede llevar cobija, podéis ponerle cobija, podéis volver a ponerle cobija, se le puede poner
        cobija, ya se le puede poner cobija, vuelve a llevar cobija, ya no hace falta que vaya sin cobija,
        pueden ponerle cobija, pueden volver a ponerle cobija, puede usar cobija otra vez, puede usar cobija, ya
        le podéis poner cobija, ya podéis ponerle cobija, le podéis poner cobija, se le puede volver a poner
        cobija, puede llevar cobijas otra vez, puede llevar cobijas, se le puede poner cobija otra vez, puede
        ponerse cobija, ya puede volver a llevar cobija, vuelve a poder llevar manta, ya puede volver a ir
        tapad|o|a, ya puede ir tapad|o|a, puede volver a ir tapad|o|a, ya podéis taparl|o|a, ya podéis
        taparl|o|a otra vez, podéis taparl|o|a otra vez, podéis volver a taparl|o|a, podéis volver a tapar a,
        podéis tapar otra vez a, ya podéis tapar a, ya podéis volver a tapar a, ya podéis abrigarl|o|a, ya
        pueden taparl|o|a, ya pueden tapar a, pueden volver a tapar a, pueden volver a taparl|o|a, ya pueden
        ponerle manta, ya pueden ponerle manta a, ya pueden ponerle cobija a, podéis ponerle manta otra vez a,
        podéis volver a ponerle manta a, podéis volver a poner manta a, podéis poner manta otra vez a, ya podéis
        poner manta a, ya podéis volver a poner manta a, ya podéis volver a ponerle manta, ya podéis ponerle
        manta a, ya podéis ponerle manta otra vez, ya podéis ponerle mantas, podéis ponerle mantas otra vez, ya
        podéis ponerle la manta, podéis volver a ponerle la manta, podéis volver a ponerle mantas, ya le podéis
        volver a poner manta, le podéis volver a poner manta, le podéis volver a poner manta a, ya le pueden
        poner manta, ya le pueden poner manta a, ya le pueden volver a poner manta, ya le pueden poner cobija,
        ya se le puede poner manta a, se le puede poner manta a, ya se le puede volver a poner manta, se le
        puede volver a tapar, ya se puede tapar a, se puede volver a tapar a, se puede tapar otra vez a, ya se
        puede abrigar a, ya puede usar manta, ya puede llevar mantas, ya puede llevar manta otra vez, ya puede
        llevar ropa, puede llevar ropa otra vez, que vuelva a llevar manta, que lleve manta otra vez, que use
        manta otra vez, quiero que vuelva a llevar manta, quiero que lleve manta otra vez, quiero que lleve
        mantas otra vez, vuelve a las mantas, volved a taparl|o|a, volved a tapar a, vuelvan a taparl|o|a,
        vuelvan a tapar a, volved a ponerle manta, volved a ponerle manta a, vuelvan a ponerle manta, vuelvan a
        ponerle manta a, volved a poner manta a, vuelvan a poner manta a, ya no hace falta dejarl|o|a sin manta,
        ya no hace falta que vaya a pelo, ya no tiene que ir sin manta, ya no tiene que ir a pelo, ya no hace
        falta que esté sin manta, ya no hay que dejarl|o|a sin manta, ya no quiero que vaya sin manta, ya no
        quiero que vaya a pelo, se acabó lo de ir a pelo, se acabó ir sin manta, se acabó lo de ir sin manta,
        levanto el veto a las mantas, levantada la prohibición de manta, con manta otra vez, manta otra vez
        permitida, a partir de ahora con manta, desde ahora con manta, a partir de hoy con manta, desde hoy con
        manta, tapadla otra vez, tapadlo otra vez, tápenla otra vez, tápenlo otra vez, puede ir con manta, puede
        ir con mantas, puede ir con manta otra vez, ya puede ir con manta, puede volver a ir con manta, ya puede
        volver a ir con manta, podéis usar manta con, podéis usar mantas con, otra vez con manta, otra vez con
        mantas, de nuevo con manta, con manta de nuevo, vuelve a ir con manta, vuelve a ir tapad|o|a, otra vez
        tapad|o|a a partir de hoy, vuelve a usar manta, vuelve a usar cobija, otra vez con cobija,
        |puede|pueden volver a |usar|llevar|ponerse |cobija|capa|abrigo|cobijas|mantas, |puede|pueden volver a
        |usar|ponerse manta, ya |puede|pueden volver a |usar|ponerse |cobija|manta|capa, ya la pueden
        |tapar|cobijar|abrigar, ya lo pueden |tapar|cobijar|abrigar, ya se puede |cobijar|tapar otra vez, ya se
        |la|lo puede |tapar|cobijar|abrigar, ya pueden |cobijar|abrigar a, pueden volver a |cobijar|abrigar a,
        ya le pueden poner |cobija|manta otra vez, ya le pueden poner la |cobija|manta, le pueden volver a poner
        |cobija|manta, le pueden poner |cobija|manta otra vez, se acabó lo de andar sin |manta|cobija
    """,
    "worked": """
        jugó, jugaron, jugó dos chukkers, jugó un chukker, taqueó, taquearon, taqueé,
        dio la clase, ya dio la clase, dio clase, ha dado clase, ha dado la clase, dio su clase,
        dieron clase, dieron la clase,
        monté, montamos, he montado, hemos montado, montad|o|a|os|as, montó, tuvo clase, ha tenido clase,
        tuvieron clase, trabajad|o|a|os|as, trabajé, trabajamos, he trabajado, di cuerda, le di cuerda,
        he dado cuerda, ha trabajado, trabajó, dio clase, ha dado clase, dimos cuerda, hizo clase,
        salió de paseo, salimos de paseo, salí de paseo con, han montado, dado cuerda, dio cuerda,
        ha dado cuerda, han dado cuerda, ha hecho clase, hemos dado cuerda, hizo cuerda, ha hecho cuerda,
        salí a pasear con, saqué a montar, acabo de montar, acabamos de montar, ha salido de paseo,
        le he dado cuerda, le hemos dado cuerda, han trabajado, galopé, ejercitad|o|a, han tenido clase,
        terminó la clase, terminó su clase, viene de clase, vuelve de paseo, monté a, monté en, salí con,
        ha sido montad|o|a, ha sido trabajad|o|a, trabajado en pista, ha hecho pista, hizo pista,
        hice cuerda con, hemos trabajado a, saltó, ha saltado, entrenad|o|a, entrenamos, entrené,
        montamos a, he montado a, hemos montado a, monté un rato a, he montado un rato a, ha montado a,
        ha montado, montó a, montaron, montaron a, han montado a, montadit|o|a, montad|o|a ya,
        ya montad|o|a, recién montad|o|a, acabo de montar a, acabamos de montar a, acabo de bajarme de,
        me acabo de bajar de, la monté, lo monté, la he montado, lo he montado, la hemos montado,
        lo hemos montado, la montó, lo montó, la ha montado, lo ha montado, montada hoy,
        salí montad|o|a en, di una vuelta con, di una vuelta en, he dado una vuelta con,
        he dado una vuelta en, dimos una vuelta con, hemos dado una vuelta con, di un paseo con,
        di un paseo en, di un paseo a, he dado un paseo con, he dado un paseo en, he dado un paseo a,
        dimos un paseo con, dimos un paseo en, hemos dado un paseo con, hemos dado un paseo en,
        me he dado un paseo con, me he dado una vuelta con, me di una vuelta con, me he ido de paseo con,
        me fui de paseo con, nos fuimos de paseo con, nos hemos ido de paseo con, fui de paseo con,
        fuimos de paseo con, he ido de paseo con, hemos ido de paseo con, he salido de paseo con,
        hemos salido de paseo con, he salido a pasear con, salimos a pasear con, he salido con,
        hemos salido con, salimos con, salí al monte con, salimos al monte con, salí al campo con,
        he salido al campo con, hemos salido al campo con, hemos salido al monte con, he hecho ruta con,
        hice ruta con, hemos hecho ruta con, hicimos ruta con, ha hecho ruta, ha hecho una ruta,
        hizo una ruta, hizo ruta, ha ido de ruta, fue de ruta, ha ido de paseo, fue de paseo,
        se fue de paseo, se ha ido de paseo, salieron de paseo, han salido de paseo, ha salido a pasear,
        paseé a, paseamos a, he paseado a, hemos paseado a, pasead|o|a|os|as, ha paseado, trabajé a,
        trabajé con, trabajamos a, trabajamos con, he trabajado a, he trabajado con, hemos trabajado con,
        ha trabajado ya, ya ha trabajado, trabajad|o|a|os|as ya, ya trabajad|o|a, recién trabajad|o|a,
        lo trabajé, la trabajé, lo he trabajado, la he trabajado, trabajaron, la trabajó, lo trabajó,
        di cuerda a, le di cuerda a, le he dado cuerda a, he dado cuerda a, dimos cuerda a,
        le dimos cuerda, le dimos cuerda a, hemos dado cuerda a, le hemos dado cuerda a, dieron cuerda a,
        le dieron cuerda, le han dado cuerda, dado cuerda a, hice cuerda, hice cuerda a, he hecho cuerda,
        he hecho cuerda con, hicimos cuerda con, hemos hecho cuerda con, cuerda hecha, cuerda dada,
        cuerdead|o|a, le di picadero, le he dado picadero, di picadero a, picadero hecho, le di manga,
        caminador hecho, ha hecho caminador, hizo caminador, ha ido al caminador,
        ha estado en el caminador, estuvo en el caminador, puse en el caminador a, di clase con,
        di clase en, he dado clase con, he dado clase en, di la clase con, di la clase en,
        he dado la clase con, he dado la clase en, hemos dado clase con, dimos clase con, dio la clase,
        ha dado la clase, dieron clase, dieron la clase, han dado clase, han dado la clase, tuvo la clase,
        tuvo su clase, ha tenido la clase, ha tenido su clase, tuvo dos clases, ha tenido dos clases,
        ha dado dos clases, dio dos clases, ha hecho dos clases, hizo dos clases, ha hecho la clase,
        ha hecho su clase, hizo la clase, hizo su clase, hicieron clase, hicieron la clase,
        han hecho clase, han hecho la clase, hice clase con, hice la clase con, he hecho clase con,
        he hecho la clase con, hicimos clase con, hice doma con, he hecho doma con, ha hecho doma,
        hizo doma, ha hecho salto, hizo salto, hice salto con, he hecho salto con, hemos hecho salto con,
        salté a, salté con, he saltado a, he saltado con, hemos saltado con, saltamos con, saltaron,
        saltó un rato, ha saltado un rato, galopamos, galopó, ha galopado, galopé a, galopé con,
        he galopado a, he galopado con, galopamos con, trotó, troté a, trotamos con, ha trotado,
        ha hecho galope, ha hecho trote, hizo galopes, ha hecho galopes, ejercité, ejercité a, ejercitamos,
        ejercitamos a, he ejercitado, he ejercitado a, ejercitad|o|a|os|as, entrené a, entrené con,
        entrenamos a, entrenamos con, he entrenado, he entrenado a, he entrenado con, hemos entrenado,
        hemos entrenado con, ha entrenado, entrenaron, entrenad|o|a|os|as, le hice pista, hice pista con,
        he hecho pista con, hemos hecho pista con, ha hecho un rato de pista, trabajado a la cuerda,
        ha trabajado a la cuerda, trabajó a la cuerda, terminé la clase con, terminó de trabajar,
        ha terminado de trabajar, ha terminado la clase, ha terminado su clase, acabó la clase,
        ha acabado la clase, acabó su clase, viene de la clase, vuelve de clase, vuelve de la clase,
        ha vuelto de clase, ha vuelto de paseo, volvió de paseo, volvió de clase, ha vuelto del paseo,
        volvió del paseo, vuelta de paseo, viene de paseo, viene de dar clase, viene de trabajar,
        ha venido de clase, ya ha dado clase, ya dio clase, ya ha hecho clase, ya ha salido de paseo,
        lungueado, la cuerdeé, paseo hecho, clase hecha, clase dada, trabajo hecho, entreno hecho,
        |media|una hora de |caminador|pista|cuerda|paseo|galope|doma|salto|trabajo,
        |media|una hora de |picadero|clase|trote|entreno|entrenamiento|ejercicio|monte|ruta|noria,
        un |rato|ratito de |caminador|pista|cuerda|paseo|galope|doma|salto|trabajo,
        un |rato|ratito de |picadero|clase|trote|entreno|entrenamiento|ejercicio|monte|ruta|noria,
        hora y media de |caminador|pista|cuerda|paseo|galope|doma|salto|trabajo,
        hora y media de |picadero|clase|trote|entreno|entrenamiento|ejercicio|monte|ruta|noria,
        media horita de |caminador|pista|cuerda|paseo|galope|doma|salto|trabajo,
        media horita de |picadero|clase|trote|entreno|entrenamiento|ejercicio|monte|ruta|noria,
        minutos de |caminador|pista|cuerda|paseo|galope|doma|salto|trabajo,
        minutos de |picadero|clase|trote|entreno|entrenamiento|ejercicio|monte|ruta|noria,
        min de |caminador|pista|cuerda|paseo|galope|doma|salto|trabajo,
        min de |picadero|clase|trote|entreno|entrenamiento|ejercicio|monte|ruta|noria,
        sesión de |caminador|pista|cuerda|paseo|galope|doma|salto|trabajo,
        sesión de |picadero|clase|trote|entreno|entrenamiento|ejercicio|monte|ruta|noria,
        dos horas de |caminador|pista|cuerda|paseo|galope|doma|salto|trabajo,
        dos horas de |picadero|clase|trote|entreno|entrenamiento|ejercicio|monte|ruta|noria, a trabajado,
        a dado clase, a tenido clase, a hecho clase, a saltado, a galopado, a salido de paseo, e montado,
        e montado a, e trabajado, le e dado cuerda, e dado cuerda a, e galopado, e saltado, e saltado con,
        e salido con, e dado clase con,
        |salió|salieron|salí|salimos|fue|fueron de |cabalgata|recorrida|rodeo|vareo|trote|galope|trabajo|monta,
        vareó, vareé, varearon, lo varearon, la varearon, vareamos, vareado, vareada, lo vareé, la vareé, le di
        cuerda en el picadero, trabajó en el |picadero|redondel, trabajó en |pista|cuerda, hizo picadero, hizo
        redondel, le di redondel, le dimos redondel, di redondel a, lo trabajé a la cuerda, la trabajé a la
        cuerda, le dieron su clase, le dieron clase, le di una vuelta, le dimos una vuelta, le di trabajo, le
        dimos trabajo, |hizo|hicieron la cabalgata, hizo su trabajo, hizo el paseo, hizo la ruta, fue a la
        cabalgata, fueron a la cabalgata, la usaron en la clase, lo usaron en la clase, la usaron para la clase,
        lo usaron para la clase, la usé en la clase, lo usé en la clase, la usé para la clase, lo usé para la
        clase, se usó en la clase, se usó para la clase,
        salió a |pasear|caminar|trotar|galopar|trabajar|montar, salieron a
        |pasear|caminar|trotar|galopar|trabajar|montar, salió a dar una vuelta, salieron a dar una vuelta, salió
        a la |cabalgata|pista|clase, laburó, laburaron, laburó duro, laburó un rato, laburé, laburamos, trabajó
        duro, trabajó un rato, trabajó un buen rato, trabajó lindo, le dimos duro, la usaron en clase, lo usaron
        en clase, la usaron para clase, lo usaron para clase, la montaron, lo montaron, los montaron, las
        montaron, la trabajaron, lo trabajaron, los trabajaron, la galoparon, lo galoparon, lo galopé, la
        galopé, lo troté, la troté, lo monté un rato, la monté un rato, lo caminé, la caminé, la caminaron, lo
        caminaron
    """,
    "had": """
        tuvo, ha tenido, tuvieron, hizo, ha hecho, han tenido, terminó, ha terminado, tuvo ya, tuvo hoy,
        tuvo una, tuvo un, tuvo su, ha tenido una, ha tenido un, ha tenido su, tuvieron una, hizo una, hizo un,
        ha hecho una, ha hecho un, ha hecho su, hicieron, han hecho, dio, ha dado, dieron, han dado, acabó,
        ha acabado, terminaron, han terminado, hice, he hecho, hicimos, hemos hecho, di, he dado, dimos,
        hemos dado, le di, le he dado, le dimos, le hemos dado, le tocó, le ha tocado, ya ha hecho, ya hizo,
        ya ha tenido, ya tuvo
    """,
    "after": """
        después de, tras, de, del, desde, por, después del, luego de, a causa de, de haber, después de la,
        viene de, vino de, vuelve de, volvió de, recién llegado de, al volver de, al volver del,
        justo después de, por culpa de, después de su, después de una, después de un, tras la, tras el,
        tras una, tras un, tras su, luego del, luego de la, luego de una, después de haber, viene del, vino del,
        viene de la, vuelve del, vuelve de la, volvió del, volvió de la, ha vuelto de, ha vuelto del,
        ha vuelto de la, ha venido de, ha venido del, llega de, llega del, llegó de, llegó del, ha llegado de,
        ha llegado del, recién salid|o|a de, recién venid|o|a de, recién llegad|o|a de, recién llegad|o|a del,
        recién bajad|o|a de, recién vuelt|o|a de, al terminar, al terminar la, al acabar, al acabar la,
        al salir de, al salir de la, al volver de la, al salir del, al bajar de, nada más terminar,
        nada más acabar, al final de, al final de la, de tanto, de tanta, a resultas de, debido a, debido al,
        después, dsps de, desp de, despues d, culpa de, culpa del, normal después de, normal tras, de la, de las
    """,
    "work": """
        taqueo, taquear, chukker, chukkers, partido de polo, práctica de polo,
        clase, clases, montar, trabajo, trabajar, paseo, cuerda, entrenamiento, entreno, ruta, salto, saltar,
        doma, galope, ejercicio, montarl|o|a, montada, entrenar, correr, galopar, la clase, sesión, pista,
        la pista, concurso, galopes, paseo por el monte, hacer cuerda, dar cuerda, la monta, monta, el paseo,
        el entrenamiento, el trabajo, clasecita, las clases, una clase, su clase, dos clases, montar a,
        la montada, cabalgata, cabalgar, cabalgada, la cabalgata, trabajo en pista, trabajo a la cuerda,
        trabajo de pista, trabajos, un trabajo, trabajito, trabajillo, paseíto, paseo largo, paseo corto,
        paseos, un paseo, su paseo, vuelta por el monte, caminata, la caminata, la cuerda, dar la cuerda,
        darle cuerda, entrenos, el entreno, su entrenamiento, un entrenamiento, entrenamientos, rutas, la ruta,
        una ruta, excursión, la excursión, saltos, los saltos, el salto, de saltar, la doma, doma clásica,
        doma vaquera, una tanda de galope, tanda, galopada, la galopada, galopito, el galope, un galope,
        al galope, trote, el trote, trotar, ejercicios, el ejercicio, sesión de doma, sesión de salto,
        la sesión, una sesión, picadero, el picadero, caminador, el caminador, noria, la noria, andador,
        concursos, el concurso, competición, la competición, competir, prueba, la prueba, raid, el raid,
        horseball, volteo, la tanda, tanda de los niños, tanda de peques, la lección, lección, lecciones,
        la faena, faena, acoso, el recorrido, recorrido, cross, cavaletti, terapia, equinoterapia, hipoterapia,
        longe, la longe, trabajo pie a tierra, pie a tierra, tanda, la tanda
    """,
    "done": """
        list|o|a|os|as, hech|o|a|os|as, terminad|o|a|os|as, acabad|o|a|os|as, ya está, ya están,
        cambiad|o|a|os|as, ✓, ✔, ✅, ☑, ya estan, hecho ya, arreglad|o|a|os|as, preparad|o|a|os|as,
        terminé, terminé con, acabé, acabé con, terminamos, he terminado, he terminado con,
        hemos terminado, he acabado con, he acabado, done, hech|o|a|os|as ya, ya hech|o|a|os|as, he hecho,
        hemos hecho, hice, hicimos, tapad|o|a|os|as, abrigad|o|a|os|as, list|o|a|os|as ya,
        despachad|o|a|os|as, solucionad|o|a|os|as, apañad|o|a|os|as, vestid|o|a|os|as, listill|o|a|os|as,
        listit|o|a|os|as, listísim|o|a|os|as, ya list|o|a|os|as, ya está list|o|a, ya están list|os|as,
        está list|o|a, están list|os|as, list|o|a|os|as del todo, hechit|o|a|os|as,
        hech|o|a|os|as del todo, está hech|o|a, están hech|os|as, ya está hech|o|a, ya están hech|os|as,
        queda hech|o|a, quedan hech|os|as, quedó hech|o|a, quedó list|o|a, quedaron list|os|as,
        quedaron hech|os|as, ya quedaron, queda list|o|a, quedan list|os|as, ha quedado list|o|a,
        han quedado list|os|as, ha quedado hech|o|a, terminadit|o|a, terminad|o|a|os|as ya,
        ya terminad|o|a|os|as, acabad|o|a|os|as ya, ya acabad|o|a|os|as, cambiad|o|a|os|as ya,
        ya cambiad|o|a|os|as, cambiadit|o|a|os|as, arregladit|o|a|os|as, preparad|o|a|os|as ya,
        apañadit|o|a|os|as, vestidit|o|a|os|as, ya vestid|o|a|os|as, tapadit|o|a|os|as, ya tapad|o|a|os|as,
        tapad|o|a|os|as ya, ya abrigad|o|a|os|as, abrigad|o|a|os|as ya,
        arropad|o|a|os|as, arropadit|o|a|os|as, enmantad|o|a|os|as, con la ropa puesta,
        ya están tapad|os|as, ya está tapad|o|a, ya está vestid|o|a, ya está abrigad|o|a,
        ya están abrigad|os|as, ya están vestid|os|as, ya está cambiad|o|a, ya están cambiad|os|as,
        ya terminé con, ya terminé, ya acabé con, ya acabé, ya acabamos con, acabamos con, acabamos,
        hemos acabado con, hemos acabado, ya he terminado con, ya he acabado con, ya hemos terminado con,
        ya hemos acabado con, he terminado ya con, terminé ya con, terminamos con, hemos terminado con,
        terminó con, ya hice, ya he hecho, ya hicimos, ya hemos hecho, he hecho ya, lo hice, la hice,
        los hice, las hice, ya lo hice, ya la hice, ya los hice, ya lo he hecho, ya la he hecho,
        ya los he hecho, ya las he hecho, lo de siempre hecho, despaché, he despachado, despachamos,
        ya despaché, despachad|o|a|os|as ya, liquidad|o|a|os|as, finiquitad|o|a|os|as, completad|o|a|os|as,
        cumplid|o|a|os|as, tachad|o|a|os|as, resuelt|o|a|os|as, en orden ya, ok y hecho,
        chequead|o|a|os|as, check, checked, x hecho, oki hecho, atendid|o|a|os|as, hechisim|o|a, ya 'stá,
        yastá, ya stá, ya ta, 🆗, ☑️, ✔️, 💯, done ya, fet, listoo, tapé a, tapé al, tapamos a,
        tapamos al, he tapado a, he tapado al, hemos tapado a, hemos tapado al, abrigué a, abrigué al,
        vestí a, vestí al, he vestido a, he vestido al, hemos vestido a, arropé a, arropé al, cobijé a,
        cobijé al, enmanté a, cambié de manta a, he cambiado de manta a, cambiado de manta,
        cambiada de manta, cambiad|os|as de manta, cambiad|o|a de ropa, mantas cambiadas, e terminado,
        e terminado con, e acabado, e acabado con, e hecho,
        ya quedó, ya me quedó, ya me quedaron, ya dejé list|o|a|os|as, ya dejé cambiad|o|a|os|as, dejé
        list|o|a|os|as, dejé cambiad|o|a|os|as, dejé tapad|o|a|os|as, dejé hech|o|a|os|as, dejamos
        list|o|a|os|as, dejamos cambiad|o|a|os|as, ya le hice el cambio a, ya les hice el cambio a, le hice el
        cambio a, les hice el cambio a, ya estuvo, ya estuvieron, ya tan, cobijad|o|a|os|as, ya
        cobijad|o|a|os|as
    """,
    "everyone": """
        todos menos,
        a todos, a todas,
        todos, todas, todo, todo el mundo, toditos, todo el mundo, todo dios, to dios, to el mundo, todo cristo,
        toda la tropa, toda la peña, toda la familia, toda la banda, toda la pandilla, toda la cuadrilla,
        el equipo al completo, todos ellos, todas ellas, todos ya, todas ya, ya todos, toda la manada,
        toda la tribu, todos y cada uno, todos y todas, toditas, todos menos, todas menos,
        a tos, a toos, tos ellos
    """,
    "the rest": """
        el resto, los demás, las demás, los otros, las otras, todos los demás, todas las demás,
        los que quedaban, los que faltaban, las que quedaban, las que faltaban, los que quedan, lo que quedaba,
        lo demás, los restantes, las restantes, el resto de caballos, el resto de los caballos,
        el resto de la cuadra, el resto de la tropa, todo el resto, los otros caballos, los demás caballos,
        el resto de ellos, todos los otros, todas las otras, los otros todos
    """,
    "all horses": """
        todos los caballos, los caballos, todas las yeguas, caballos, toda la cuadra,
        todos los bichos, todos los animales, todos los jacos, todas las bestias, todas las yeguas y caballos,
        toda la yeguada, toda la caballada, la cuadra entera, la cuadra al completo, la cuadra completa,
        la caballada, los caballos todos, los animales, los bichos, los jacos, cada caballo, todos los equinos,
        todos los peludos, los peludos, la tropa, la tropa entera, toda la tropa equina,
        tos los caballos, toos los caballos, tos los bichos
    """,
    "both": """
        los dos, las dos, ambos, ambas, los tres, las tres, los 2, las 2, l@s dos, los dos juntos, ambos dos,
        los 3, las 3, entrambos, a los dos, a las dos, ellos dos, ellas dos
    """,
    "all": "todos los, todas las, los dos, las dos, ambos, ambas",
    "except": """
        menos, excepto, salvo, quitando, a excepción de, menos a, excepto a, salvo a, quitando a, aparte de,
        a parte de, quitado, exceptuando, exceptuando a, excluyendo a, con excepción de, con la excepción de,
        todos menos, sin contar, sin contar a, sin contar con, que no sean, que no sea, solo falta,
        solo me falta, solo queda, solo me queda, falta solo, me falta solo, queda solo, falta nomás,
        nomás falta, a falta de, a falta del, faltando, solo quedan, solo faltan, nada más falta, menitos,
        eso sí menos
    """,
    "all done": """
        ya quedaron todos, ya quedaron todas, ya quedaron todos listos, quedaron todos listos,
        listo todos, lista todas, listos toos, to listo, tó listo,
        todos listos, todas listas, todo listo, todos hechos, todas hechas, todo hecho, ya están todos,
        ya están todas, ya está todo, todos terminados, todo terminado, todos cambiados, están todos,
        están todos listos, ya están todos listos, todos los caballos listos,
        todos los caballos están listos, terminado todo, ronda hecha, ronda terminada,
        ya he terminado con todos, he terminado con todos, todos están listos, todos ✓, todos ✅,
        ya están todos hechos, hechos todos, listos todos, ya terminé con todos, terminé con todos,
        acabé con todos, todas están listas, todos tapados, todos los caballos hechos,
        todos los caballos están hechos, todos abrigados, todas tapadas, ya están todos tapados,
        todos están tapados, todos vestidos, todos apañados, ronda acabada, ronda de la tarde hecha,
        ronda de la mañana hecha, ronda de noche hecha, ya acabé con todos, hice todos, he hecho todos,
        los hice todos, los he hecho todos, todos y cada uno hechos, toda la cuadra hecha,
        toda la cuadra lista, acabada la ronda, terminada la ronda, terminé la ronda, acabé la ronda,
        todos despachados, todos ok y listos, todos están hechos, todas están hechas, todas están tapadas,
        todos están abrigados, todos están vestidos, lista hecha, la lista está hecha, lista terminada,
        todo dios hecho, todo dios listo, todo el mundo hecho, todo el mundo listo, todo el mundo tapado,
        todo el mundo vestido, todo el mundo abrigado, todo el mundo cambiado, todo el mundo está hecho,
        todo el mundo está listo, está todo el mundo hecho, está todo el mundo listo,
        está todo el mundo tapado, ya está todo el mundo hecho, ya está todo el mundo listo,
        ya está todo el mundo tapado, ya está todo el mundo, ya está todo el mundo vestido,
        están todos hechos, están todas hechas, están todos tapados, están todas tapadas,
        están todos cambiados, están todos vestidos, están todos abrigados, están ya todos,
        están ya todos hechos, están ya todos listos, están ya todos tapados, ya están todos tapaditos,
        ya están todas hechas, ya están todas listas, ya están todas tapadas, ya están todos cambiados,
        ya están todos vestidos, ya están todos abrigados, ya están todos apañados,
        ya están todos los caballos, ya están todos los caballos hechos,
        ya están todos los caballos listos, ya están todos los caballos tapados,
        todos los caballos tapados, todos los caballos cambiados, todos los caballos vestidos,
        todos los caballos abrigados, todos los caballos están tapados, todos ya listos, todos listos ya,
        todos ya hechos, todos hechos ya, todos ya tapados, todos tapados ya, todos ya, ya todos listos,
        ya todos hechos, ya todos tapados, ya todos, todos tapaditos, todos vestiditos, todos abrigaditos,
        todos arropados, todos arropaditos, todas arropadas, todos arreglados, todos apañaditos,
        todos terminados ya, todos acabados, todos preparados, todas preparadas, todas cambiadas,
        todas vestidas, todas abrigadas, todas terminadas, todos están cambiados, todos están terminados,
        todos están preparados, todos están arropados, todo hecho ya, ya todo hecho, ya todo listo,
        todo listo ya, todo hecho por hoy, todo listo por hoy, todo terminado por hoy, todo acabado,
        todo finiquitado, todo está hecho, todo está listo, está todo hecho, está todo listo,
        ya está todo hecho, ya está todo listo, ya está todo terminado, todo en orden y todos hechos,
        todo dios tapado, todo dios vestido, todo cristo tapado, toda la tropa lista, toda la tropa hecha,
        toda la tropa tapada, toda la tropa vestida, la tropa lista, la tropa hecha, toda la cuadra tapada,
        toda la cuadra vestida, toda la cuadra abrigada, toda la cuadra está hecha,
        toda la cuadra está lista, la cuadra hecha, la cuadra lista, la cuadra entera hecha,
        la cuadra entera lista, cuadra hecha, cuadra lista, cuadra terminada, cuadra completa,
        cuadra tapada, ronda lista, ronda completa, ronda completada, ronda finiquitada, ronda finalizada,
        ronda cerrada, ronda cumplida, ronda despachada, ronda ✅, ronda ✓, ronda ok,
        ronda de noche lista, ronda de la noche hecha, ronda de la noche lista, ronda de la tarde lista,
        ronda de la mañana lista, ronda de tarde hecha, ronda de mañana hecha, ronda de tarde lista,
        ronda de mañana lista, la ronda está hecha, la ronda está lista, la ronda ya está hecha,
        la ronda ya está, la ronda hecha, la ronda lista, la ronda terminada, he terminado la ronda,
        hemos terminado la ronda, terminamos la ronda, he acabado la ronda, hemos acabado la ronda,
        acabamos la ronda, he hecho la ronda, he hecho la ronda entera, he hecho toda la ronda,
        hice la ronda, hice toda la ronda, hemos hecho la ronda, hemos hecho toda la ronda,
        hicimos la ronda, hicimos toda la ronda, he completado la ronda, completé la ronda,
        ya hice la ronda, ya he hecho la ronda, ya terminé la ronda, ya acabé la ronda, ronda terminada ya,
        fin de ronda, fin de la ronda, cerrada la ronda, finalizada la ronda, ya acabamos con todos,
        ya terminamos con todos, acabamos con todos, terminamos con todos, hemos acabado con todos,
        hemos terminado con todos, he acabado con todos, ya he acabado con todos,
        ya hemos terminado con todos, ya hemos acabado con todos, terminé todos, acabé todos,
        hicimos todos, hemos hecho todos, ya los hice todos, ya los he hecho todos,
        ya los hemos hecho todos, los hemos hecho todos, los hicimos todos, los tengo todos hechos,
        los tengo todos listos, los tengo a todos tapados, los tengo todos tapados, tengo todos hechos,
        tengo a todos hechos, tengo a todos listos, tengo a todos tapados, los he tapado a todos,
        he tapado a todos, tapé a todos, los tapé a todos, hemos tapado a todos, los he vestido a todos,
        vestí a todos, los he cambiado a todos, he cambiado a todos, los cambié a todos, cambié a todos,
        les he cambiado a todos, todos con su manta, todos con su manta puesta, todos con lo suyo,
        todos con lo que toca, todos con lo que les toca, todos con lo que pone, todos según la lista,
        todos según el plan, todos como dice la lista, todos como dice el plan, todos como dice el bot,
        todos como pone, lista completa, lista completada, la lista está completa, lista cumplida,
        lista entera hecha, toda la lista hecha, la lista entera hecha, la lista hecha, lista acabada,
        lista ✅, plan cumplido, plan hecho, mantas puestas a todos, mantas puestas todas,
        todas las mantas puestas, todas las mantas cambiadas, ya están todas las mantas puestas,
        ya están todas las mantas, mantas hechas, mantas listas, todas las mantas listas, todo tapado,
        toditos listos, toditos hechos, toditas listas, toditos tapados, los doce listos, los once listos,
        los nueve listos, todos ok hechos, todos check, todos hechos y a dormir,
        ronda de la |tarde|mañana|noche |hecha|lista|terminada|acabada|completa,
        ronda de la |tarde|mañana|noche |completada|cerrada|finalizada|ok|cumplida,
        ronda de |tarde|mañana|noche |hecha|lista|terminada|acabada|completa,
        ronda de |tarde|mañana|noche |completada|cerrada|finalizada|ok|cumplida,
        |hecha|lista|terminada|acabada|completa|completada|cerrada|finalizada|cumplida la ronda,
        ronda ya |hecha|lista|terminada|acabada|completa|completada|cerrada|finalizada|ok|cumplida,
        ronda |hecha|lista|terminada|acabada|completa|completada|cerrada|finalizada|ok|cumplida ya,
        todos |ok|bien|calentitos|dentro y |tapados|listos|hechos|vestidos|abrigados|arropados,
        todos |metidos|cenados|recogidos|secos y |tapados|listos|hechos|vestidos|abrigados|arropados,
        todos |tapados|listos|hechos|vestidos|abrigados|arropados y |bien|calentitos|dentro|metidos,
        todos |tapados|listos|hechos y |cenados|recogidos|felices|contentos,
        todos |vestidos|abrigados|arropados y |cenados|recogidos|felices|contentos,
        todos bien |tapados|listos|hechos|vestidos|abrigados|arropados,
        todos ya |tapados|listos|hechos|vestidos|abrigados|arropados,
        todo el mundo |tapados|listos|hechos|vestidos|abrigados|arropados y |cenado|recogido|contento,
        todos |tapados|listos|hechos|vestidos|abrigados|arropados ya, hecho todo lo de la lista,
        hecha toda la lista, todo lo de la lista hecho, todo lo que pone hecho, hecho todo lo que pone,
        todo lo del bot hecho, hecho todo lo del bot, hecho todo, listo todo, todo lo de hoy hecho,
        hecho todo lo de hoy, todo lo que tocaba hecho, hecho todo lo que tocaba,
        hechos todos los caballos, hechos todos los de la lista, todos los de la lista hechos,
        todos los de la lista listos, listos todos los caballos, hecha la lista, hecha la ronda entera,
        hecha la cuadra, hecha la cuadra entera, tapada la cuadra, tapados todos los caballos,
        tapados todos, vestidos todos, abrigados todos, cambiados todos, terminados todos, acabados todos,
        despachados todos, arropados todos, apañados todos,
        ya quedó todo, ya quedó todo listo, ya quedó todo hecho, quedó todo listo, quedó todo hecho, ya quedaron
        toditos, ya quedó la ronda, ya quedó lista la ronda, ya están toditos, ya quedaron toditos listos, ya
        dejé todo listo, dejé todo listo, ya dejé a todos listos, dejé a todos listos, ya dejé a todos
        cambiados, dejé a todos cambiados, ya terminé toda la ronda, ya acabé toda la ronda, ya quedaron todos
        cambiados, quedaron todos cambiados, ya quedaron todos tapados, ya están todos cobijados, todos
        cobijados, ya quedaron todos cobijados, quedaron todos tapados, ya los cambié a todos, ya los tapé a
        todos, ya los cobijé a todos, ya cambié a todos, ya tapé a todos, ya cobijé a todos, ya les puse a
        todos, ya les puse lo suyo a todos,
        quedan todos |hechos|listos|cambiados|tapados|vestidos, quedan todas |hechas|listas|cambiadas|tapadas,
        ya quedan todos, quedaron todos hechos,
        la ronda de la |mañana|tarde|noche está |hecha|lista|terminada|acabada|completa|cerrada|ok, la ronda de la
        |mañana|tarde|noche ya está, la ronda de la |mañana|tarde|noche ya está
        |hecha|lista|terminada|acabada|completa, la ronda está |terminada|acabada|completa|cerrada, la ronda ya está
        |terminada|acabada|completa|cerrada, la ronda |quedó|queda |hecha|lista|terminada, la ronda de la
        |mañana|tarde|noche |quedó|queda |hecha|lista|terminada, ya está |hecha|lista|terminada|acabada la ronda,
        todos los caballos |como|según dice el plan, todos los caballos |como|según |dice|pone|manda la lista, todos
        los caballos según el plan, todos los caballos según la lista, todos los caballos arreglados, todos los
        caballos atendidos, todos los caballos despachados, todos los caballos están
        |cambiados|vestidos|abrigados|arreglados|atendidos, todos como manda el plan, todos como manda el lista,
        todos como manda el bot, todos como manda la plan, todos como manda la lista, todos como manda la bot, todos
        como pone el plan, todos como pone el lista, todos como pone el bot, todos como pone la plan, todos como
        pone la lista, todos como pone la bot, todos como dice el lista, todos como dice la plan, todos como dice la
        bot, tos |listos|hechos|cambiados|tapados|vestidos|abrigados|arreglados|apañados|terminados, tos |los|ya
        |listos|hechos|cambiados|tapados|vestidos, ya están tos, ya están tos |listos|hechos|cambiados|tapados,
        están tos |listos|hechos|cambiados|tapados, tos los caballos |listos|hechos|cambiados|tapados, toas
        |listas|hechas|tapadas|cambiadas
    """,
    "undo": """
        deshacer, deshaz, deshaz eso, deshacer eso, deshazlo, borra eso, borra, bórralo, anula, anula eso,
        anúlalo, anular, me equivoqué, me he equivocado, fue un error, es un error, caballo equivocado,
        ignora eso, olvida eso, olvídalo, quita eso, cancela, cancela eso, ignora lo anterior, borra lo último,
        borrar, era otro caballo, error mío, borra lo anterior, anula lo último, no hagas caso a lo anterior,
        me confundí, me he confundido de caballo, me equivoqué de caballo, me he equivocado de caballo,
        me he confundido, deshaz lo último, ese no era, me confundí de caballo, borra mi último mensaje,
        borra el último, borra el último mensaje, anula el último, anula mi último mensaje, cancela lo último,
        cancela el último, quita lo último, deshaz el último, perdón borra, me equivoqué borra eso, no deshaz,
        retira eso, retira lo último, elimina eso, elimina lo último, olvida lo último, ignora lo último,
        ignora mi último mensaje, error deshaz, deshaz, deshazlo, deshaz eso, error deshaz, anula lo último,
        deshaz esto, deshaz eso último, deshaz el último mensaje, deshaz mi último mensaje, deshaz lo anterior,
        deshaz lo de antes, deshaz lo mío, deshágalo, deshaga, deshaga eso, deshaz por favor, deshaz porfa,
        borra esto, borra eso último, borra lo de antes, borra lo mío, borra lo que he puesto,
        borra lo que puse, borra lo que he dicho, borra lo que dije, borra lo último que he puesto,
        borra lo último que puse, borra lo último que he dicho, borra lo último que dije,
        borra lo último que escribí, borra lo último que he escrito, borra lo que acabo de poner,
        borra lo que acabo de decir, borra lo que acabo de escribir, borra el mensaje, borra mi mensaje,
        borra el anterior, borra el mensaje anterior, borra mi mensaje anterior, bórrame eso, bórrame lo último,
        bórralo por favor, borralo porfa, bórrelo, borre eso, borre lo último, borren eso, borrar eso,
        borrar lo último, borrar lo anterior, borrad eso, borrad lo último, anula esto, anula lo de antes,
        anula lo que he dicho, anula lo que dije, anula lo que puse, anula lo que he puesto, anula lo mío,
        anula el mensaje, anula mi mensaje, anula el mensaje anterior, anula lo anterior, anulad eso,
        anulad lo último, anúlame eso, anúlame lo último, anúlelo, anule eso, cancela lo anterior,
        cancela lo de antes, cancela lo que he dicho, cancela lo que dije, cancela mi último mensaje,
        cancela el mensaje, cancela el último mensaje, cancélalo, cancele eso, cancelen eso,
        quita lo que he puesto, quita lo que puse, quita mi último mensaje, quita el último, quita lo de antes,
        quítame eso, elimina lo que he puesto, elimina lo que puse, elimina el último,
        elimina mi último mensaje, elimina el último mensaje, elimina lo anterior, elimínalo, eliminar eso,
        retira lo dicho, retiro lo dicho, retira mi último mensaje, me retracto, olvida lo que he dicho,
        olvida lo que dije, olvida lo que he puesto, olvida lo que puse, olvida lo anterior, olvida lo de antes,
        olvida mi último mensaje, olvida el último mensaje, olvídate de lo último, olvídate de lo que he dicho,
        olvidad eso, olvidad lo último, olvidad lo anterior, olvidad lo que he dicho, olvidad lo que he puesto,
        olvidad mi último mensaje, olviden eso, olviden lo último, olviden lo anterior, olviden lo que dije,
        ignora lo que he dicho, ignora lo que dije, ignora lo que he puesto, ignora lo que puse,
        ignora el último mensaje, ignora el mensaje anterior, ignora mi mensaje, ignora lo de antes, ignóralo,
        ignorad eso, ignorad lo último, ignorad lo anterior, ignorad mi último mensaje, ignorad lo que he dicho,
        ignoren eso, ignoren lo anterior, ignoren lo último, ignoren mi mensaje, no hagáis caso a lo último,
        no hagáis caso a lo anterior, no hagáis caso de lo anterior, no hagáis caso de lo último,
        no hagas caso a lo último, no hagas caso de lo último, no hagas caso a mi último mensaje,
        no hagas caso de eso, no hagan caso a lo anterior, no hagan caso de eso,
        haz como si no hubiera dicho nada, como si no hubiera dicho nada, lo último no cuenta,
        lo último no vale, lo anterior no vale, lo de antes no vale, no era ese caballo, no era esa yegua,
        ese no era el que era, era otra yegua, no es ese caballo, no es esa yegua, caballo incorrecto,
        caballo equivocado perdón, yegua equivocada, me he equivocado de yegua, me equivoqué de yegua,
        me he equivocado de manta, me equivoqué de manta, me he equivocado de animal, me equivoqué de animal,
        me he equivocado de nombre, me equivoqué de nombre, me confundí de yegua, me confundí de manta,
        me confundí de animal, me he confundido de yegua, me he confundido de manta, me he confundido de nombre,
        me confundí de nombre, me equivoco de caballo, me he colado, equivocación, equivocación mía,
        error de dedo, se me fue el dedo, se me ha ido el dedo, lo he puesto sin querer, mandado sin querer,
        mensaje equivocado, mensaje erróneo, mensaje por error, enviado por error, lo puse por error,
        lo he puesto por error, fue por error, ha sido un error, ha sido error mío, ha sido equivocación,
        no es cierto lo último, no es verdad lo último, es mentira lo anterior, está mal lo último,
        lo último está mal, lo anterior está mal, lo de antes está mal, lo puse mal, lo he puesto mal,
        escribí mal, he escrito mal, lo escribí mal, undo, ctrl z, control z, deshazme eso, deshaced,
        deshaced eso, deshazme lo último, error borra, error borra eso, error anula, perdón deshaz,
        perdón anula, uy borra, uy deshaz, uy anula, ups borra, ups deshaz, equivoquéme, equivoquéme de caballu,
        equivoquéme de caballo, error perdón, perdón error, error mío perdón,
        deshacelo, deshacé eso, deshacé lo último, sacá eso, sacalo, quitalo, olvidate de eso, tacha eso,
        táchalo, revierte eso, reviértelo, revertilo, dale para atrás, dale pa atrás, échale reversa, no era
        ese, no era esa, no era él, no era ella, era el otro, era la otra,
        |eso|esto último |bórralo|anúlalo|quítalo|cancélalo|elimínalo|olvídalo|ignóralo,
        lo último |quítalo|cancélalo|elimínalo|olvídalo|ignóralo|anúlalo
    """,
    "no": """
        no, perdón, mejor dicho, uy, ups, digo, me equivoqué, ay no, uy no, no no, que no, perdón no, no perdón,
        no espera, espera no, no era, qué va, ostras no, ay perdón, uy perdón, ups no, ups perdón, quiero decir,
        quería decir, corrijo, rectifico, me corrijo, corrección, errata, fe de erratas, miento, no miento,
        ay miento, me he equivocado, me he confundido, me confundí, nooo, nop, nanai, ah no, eh no, jo no, noo,
        perdonad no, me lío, error, err, erratum, fallo mío, error mío, uy error, perdón error,
        he metido la pata, metí la pata, la he liado, la lié, la cagué, la he cagado, me he liado, me lié,
        me he colado, me colé, fallo, culpa mía, mi culpa, mi fallo, perdón me he liado, la pifié,
        la he pifiado, me he hecho un lío, lo he puesto mal, lo puse mal, está mal, qué lío, vaya lío,
        perdonad me he liado,
        la regué, ya la regué, la regamos, la embarré, la cagamos, le erré, le pifié, me mandé una macana, me
        mandé un moco, me mandé una cagada, metí las patas, metí las de andar, la amolé, la volé, me patiné, se
        me chispoteó, me trabé, me hice bolas, me hice bola, me hice un enredo, me enredé, me crucé, me bailé,
        chin, híjole, qué bruto, qué bruta, qué bestia, qué burro yo, qué menso, qué mensa, qué tonto, qué tonta,
        nel, nel pastel, nel no, híjole no, chale no, chin no, achis no
    """,
    "i mean": """
        quería decir, quise decir, digo, es, era, mejor dicho, me refería a, en realidad, digo el, digo la,
        me refiero a, me refiero al, me refería al, quiero decir, o sea, más bien, o mejor dicho, perdón era,
        era en realidad, es decir, en realidad es, en realidad era, corrijo, rectifico, va por, hablo de,
        hablaba de, estoy hablando de, quería poner, quise poner, se refiere a, lo correcto es, la correcta es,
        el correcto es, la buena es, el bueno es, el que es, la que es, kería decir, iba por, lo decía por
    """,
    "yes": """
        sí, eso es, correcto, exacto, claro, ese, esa, sí sí, eso mismo, esa misma, ese mismo, justo, justo eso,
        justo ese, justo esa, efectivamente, exactamente, afirmativo, así es, tal cual, cierto, de acuerdo,
        dale, ok, okey, vale, correcto ese, correcta, sip, sep, sí claro, sí ese, sí esa, sí señor, sí señora,
        ese es, esa es, el mismo, la misma, claro que sí, por supuesto, sí porfa, sí eso, ajá, ya, obvio,
        pos claro, sii, siii, simón, sí correcto, 👍, confirmo, confirmado
    """,
    "neither": """
        ningun|o|a, ninguno de los dos, nada, cancela, olvídalo, ninguna de las dos, déjalo,
        ninguno de los tres, ninguna de las tres, ninguno de esos, ninguna de esas, ni uno ni otro,
        ni una ni otra, ni el uno ni el otro, ninguno de ellos, ninguna de ellas, nada de eso, déjalo estar,
        da igual, no importa, es otro, es otra, otro, otra, olvida, pasa, cancelar, ni la una ni la otra,
        nop ninguno
    """,
    "first": """
        primer|o|a, el primero, la primera, un|o|a, la 1, el 1, opción 1, la opción 1, la de arriba,
        el de arriba, la uno, el uno, número uno, 1️⃣
    """,
    "second": """
        segund|o|a, el segundo, la segunda, dos, la 2, el 2, opción 2, la opción 2, la dos, el dos, número dos,
        la de en medio, 2️⃣
    """,
    "third": """
        tercer|o|a, el tercero, la tercera, tres, la 3, el 3, opción 3, la opción 3, la de abajo, el de abajo,
        la última, el último, número tres, la tres, el tres, 3️⃣
    """,
    "not": """
        eh no,
        no, ya no, ni, tampoco, nunca, ningún, ninguna, jamás, nada de, para nada, en absoluto,
        de ninguna manera, de ningún modo, nunca jamás, ni siquiera, ni un poco, ni pizca de, ya ni, nope,
        tampoco no, ningunos, sin estar, nun, ñon, ya tampoco, todavía no, aún no, no tan, no muy, no demasiado,
        no mucho, no nada
    """,
    "stopped": """
        ha dejado de, dejó de, dejaron de, han dejado de, paró de, ha parado de, ya no, se le ha pasado,
        se le pasó, paró, han parado de, ya pasó, ya se le pasó, se le pasó, se acabó, se le quitó lo de,
        se le ha quitado lo de, ha cesado de, cesó de, deja ya de, paran de, pararon de, para ya de, dejó ya de,
        ha dejado ya de, ha parado ya de, han dejado ya de, paró ya de, ya ha dejado de, ya dejó de, ya paró de,
        ya ha parado de, ya han dejado de, ya dejaron de, por fin ha dejado de, por fin dejó de,
        por fin ha parado de, por fin paró de, ya no está, ya no están, ya no se le ve, ya no anda,
        ya no le veo, a dejado de, a parado de, ya a dejado de, ya a parado de, an dejado de, an parado de
    """,
    "not any more": """
        ya, más, ya más, nunca más, más ya, en absoluto, para nada, ni pizca, ni chispa, ni mijita, ni mica,
        más nada
    """,
    "nearly": """
        casi, a medias, medio, todavía no, aún no, medi|o|a, no del todo, mitad, por poco, casi casi,
        prácticamente, por poquito, a punto de, poco menos que, le falta poco para estar,
        le falta nada para estar, le queda poco para estar, a falta de un poco, le falta un poco, le falta poco,
        le falta nada, le falta un pelín, le falta un pelo, a punto de estar, cuasi, a mitad, aún no del todo,
        todavía no del todo, no está del todo
    """,
    "a little": """
        un poco, un poquito, algo, ligeramente, poco, un pelín, un poco de, algo de, poquito, un tanto,
        un poquitín, un poquillo, un poquico, un puntito, un punto, un pelo, un pelito, un pelín de, una pizca,
        una pizca de, una miaja, una mijita, una chispa, un chin, un chinchín, tantit|o|a, un cachín,
        un tanto así, apenas, un algo, levemente, leve, medio, así un poco, como un poco, un si es no es,
        una miqueta, solo un poco, poquitico, poquitín, un poquito de, un toque, un toque de, una nada
    """,
    "very": """
        tanta, tantas, tantos,
        muy, mucho, bastante, tan, super, súper, demasiado, totalmente, completamente, todo, toda, realmente,
        mazo, bien, mucha, tod|o|a, re, muchísimo, hiper, requete, tremendamente, un montón, la mar de, bien,
        muchísima, muchísimos, muchísimas, demasiada, demasiad|os|as, excesivamente, extremadamente, sumamente,
        enormemente, terriblemente, horriblemente, increíblemente, rematadamente, altamente, harto, harta,
        hartos, bien requete, rete, ultra, archi, extra, mega, sobradamente, absolutamente, entero, completo,
        cantidad de, mogollón de, una barbaridad de, la hostia de, la leche de, un huevo de, tope, tope de,
        tan tan, muy muy, super mega, to, toa, tod|os|as, tela, tela de, tela marinera, brutal, bestial,
        a muerte, de cojones, que te mueres, que te cagas, demasiado de, visiblemente, claramente, notablemente,
        francamente, realmente muy, de verdad muy, bastante más, más bien, más, jodidamente, puñeteramente,
        tremendo, tremenda, tremendo de, full, bien bien, toda toda, todo todo, requete bien, la mar,
        un montón de, re re,
        un chorro, un montonal, un chingo, un chingo de, un buen, un bonche, un puño, bastantito, bien mucho,
        hartísimo, un huevo, una burrada, una barbaridad, un pilón
    """,
    "if": """
        si, a no ser que, por si, en caso de, siempre que, a menos que, con tal de, como no, en cuanto,
        por si acaso, si es que, si acaso, si no, si al final, si luego, si mañana, si hoy, si hace falta,
        si veis, si ves, si ven, si está, si están, si la veis, si lo veis, si la ves, si lo ves, si la ven,
        si lo ven, si tiene, si tienen, si sigue, si siguen, si se pone, si te parece, si os parece, si podéis,
        si puedes, si alguien, por si las moscas, por si a caso, porsiacaso, excepto si, salvo si, salvo que,
        excepto que, en el caso de que, en caso de que, caso de que, siempre y cuando, con que,
        a condición de que, a condición de, con tal de que, suponiendo que, supón que, supongamos que,
        imaginando que, de ser así, de haber, como siga, como sigan, mientras no, hasta que no, así que si,
        ni que, aunque fuera, aunque estuviera, aunque esté, depende de si, depende, según esté, según haga,
        según venga, dependiendo de, igual si, que si
    """,
    "when": """
        cuando |llegue|lleguen|venga|vengan|vuelva,
        cuando, mientras, hasta que, hasta, antes de, aunque, donde, en lo que, tan pronto como, una vez que,
        después de que, desde que, a medida que, cada vez que, siempre que, hasta tanto, antes de que,
        justo cuando, al tiempo que, mientras que, a pesar de que, por más que, por mucho que, si bien
    """,
    "was": """
        estaba, estaban, estuvo, era, tenía, tenían, fue, iba, temblaba, tiritaba, sudaba, ha estado,
        han estado, temblaban, tiritaban, sudaban, titiritaba, transpiraba, transpiraban, tenía frío,
        tenía calor, tenían frío, tenían calor, temblaba de frío, tiritaba de frío, pasaba frío, pasaba calor,
        pasaban frío, pasaban calor, tosía, tenía mucho frío, tenía mucho calor, tenía tos, estuvieron, eran,
        fueron, habían, había, iban, llevaba, llevaban, andaba, andaban, seguía, seguían, parecía, parecían,
        se veía, se veían, quedaba,
        venía, venían, traía, traían,
        sudó, tembló, tiritó, transpiró, sudaron, temblaron, tiritaron, transpiraron, tuvo frío, tuvo calor,
        pasó frío, pasó calor, titiritó
    """,
    "plan": """
        llego sobre, llego sobre las, llego a las, llegaré sobre,
        va a, voy a, vamos a, van a, vas a, mañana, luego, más tarde, después hay que, debería, deberíamos,
        habría que, hay que, tiene que, tengo que, tenemos que, tenéis que, podría, podrías, puede, puedes,
        podéis, pueden, quiero, quiere, queremos, querría, necesito, necesita, necesitamos, por favor,
        porfa, porfi, pls, acordaos, acuérdate, recordad, recuerda, no olvidéis, no olvides, ojalá, espero,
        esperemos, quizá, quizás, a lo mejor, tal vez, igual, seguramente, probablemente, la próxima,
        próximo, próxima, la semana que viene, este finde, fin de semana, previst|o|a, pendiente, toca,
        cita, pensando en, seguro que, cuidado, parece que va, se vende, vendo, compro, comprar,
        comprad|o|a, pedir, pedid|o|a, hará, hace falta, falta que, sería, estará, pongo, ponemos, debe,
        deben, puedo, podemos, apetece, mejor que, traed, poned, meted, sacad, imagínate, en venta,
        pasado mañana, vendrá, avisad, avísame, avisadme, intentar, pienso en, alguien puede, alguien,
        nadie, haría, pondría, pondrán, pondremos, pondré, sacaré, meteré, sacaremos, meteremos, pon,
        ponle, ponles, ponedle, pónganle, quita, quítale, quítenle, quitadle, mete, métele, saca, tapa,
        tápale, vigila, vigilad, mira si, mirad si, dime, decidme, revisa, revisad, habría que tapar,
        por si acaso, va a sudar, acordaos de, avísenme, recoged, recojan, tapad, tapen, mételo, métela,
        sácalo, sácala, esperad, voy, mejor si, más vale, quien puede, a ver si, hay que lavar,
        para el sábado, el lunes, el martes, el miércoles, el jueves, el viernes, el sábado, pedí, pedimos,
        he pedido, hemos pedido, iba a, íbamos a, iban a, ibas a, iré a, iremos a, ve a, ir a, id a,
        vete a, ven a, venid a, venga a, vengan a, vas, vayamos a, voy p'allá, voy para allá, voy ahora,
        voy luego, voy mañana, ya voy, ahora voy, luego voy, mañana voy, voy de camino, ahora bajo,
        ahora subo, luego bajo, luego subo, bajo ahora, bajo luego, subo ahora, ahora le pongo,
        ahora le quito, ahora la meto, ahora lo meto, ahora la saco, ahora lo saco, luego le pongo,
        luego le quito, luego la meto, luego lo meto, luego la saco, luego lo saco, luego le cambio,
        luego la cambio, ahora le cambio, ahora la cambio, le pongo luego, le quito luego, le pondré,
        le quitaré, le cambiaré, la meteré, lo meteré, la sacaré, lo sacaré, los meteré, los sacaré,
        las meteré, lavaré, lavaremos, coseré, arreglaré, llevaré, traeré, compraré, montaré, montaremos,
        esquilaré, esquilaremos, esquilarán, esquilan mañana, haré, haremos, harás, harán, tendré, tendrá,
        tendremos, tendrán, estarán, seré, será, serán, habrá, habrán, habrá que, habría, tendría que,
        tendríamos que, tendrías que, tendrían que, tenía que, teníamos que, tenían que, tenías que,
        tuve que, tuvimos que, tienes que, tienen que, ha de, han de, hemos de, he de, había que, hubo que,
        debemos, debéis, deberé, deberías, deberían, deberíais, deberá, deberán, debería de, debe de,
        deben de, podríamos, podríais, podrían, podré, podrá, podremos, podréis, podrán, puedas, pueda,
        puedan, podamos, podáis, poder, podés, querés, querréis, querría que, quería, queríamos, quisiera,
        quisiéramos, quieres, queréis, quieren, me gustaría, nos gustaría, le gustaría, estaría bien,
        estaría bueno, sería bueno, sería mejor, sería ideal, convendría, conviene, lo ideal es,
        lo suyo es, lo suyo sería, lo mejor es, lo mejor sería, mejor sería, mejor será, hace falta que,
        haría falta, harían falta, necesitaría, necesitaríamos, necesitan, necesitáis, necesitaré, precisa,
        preciso, precisamos, urge, hay q, ay que, ojalá que, que no se os olvide, que no se te olvide,
        que no se les olvide, que nadie, que alguien, q alguien, que quien, quien vaya, quien venga,
        quien llegue, quien esté, quien tenga, quien quiera, quien pase, quien baje, quien suba,
        quien saque, quien meta, quien monte, el que pueda, el que vaya, el que llegue, el que venga,
        el que quiera, el que saque, el que meta, el que monte, la que pueda, los que podáis,
        los que puedan, si alguien puede, alguno puede, alguno de vosotros, alguien que, alguien más,
        algún voluntario, voluntarios, voluntario, quién se apunta, quién viene, se necesita, se necesitan,
        se precisa, se busca voluntario, se venden, se compra, se alquila, se regala, se dona, en oferta,
        de oferta, en rebajas, rebajad|o|a, oferta, ofertas, vendemos, vendes, vende, venden, compra,
        compran, compramos, compré, compraría, comprarle, comprarme, comprarnos, comprando, encargar,
        encargué, encargad|o|a, he encargado, encargaré, encargamos, pediré, pediremos, pedirle, pídele,
        pide, piden, pedirán, encargo, presupuesto, cuánto cuesta, cuánto vale, precio, euros, €, pesos,
        lempiras, colones, soles, dólares, talla, tallas, milanuncios, mercadolibre, aliexpress, catálogo,
        previsto para, está previsto, prevista para, previsión de, planeado, planeamos, pensamos,
        pensábamos, pensaba en, pienso ponerle, estoy pensando, estaba pensando, me planteo,
        nos planteamos, intentaré, intentaremos, intento, a intentar, intentad, intenten, intenta,
        tratad de, traten de, procurad, procura, procuren, aseguraos, asegúrate, asegúrense, comprobad,
        comprueba, comprueben, echad un ojo, echa un ojo, échale un ojo, echadle un ojo, échenle un ojo,
        échenle un vistazo, echadle un vistazo, echa un vistazo, dale una vuelta, dadle una vuelta,
        denle una vuelta, mirad a ver, mira a ver, miren a ver, miren si, vean si, ved si, ve si,
        fíjate si, fijaos si, fíjense si, vigilen, vigílala, vigílalo, vigiladla, vigiladlo, vigílenla,
        vigílenlo, observad, controlad, controla, controlen, estad pendientes, estad atentos,
        estén pendientes, estén atentos, cuidado con, cuidadín, cuidadito, atentos a, atención a,
        pendientes de, pendiente de, acuérdense, acordarse, acordarse de, recordarle, recordadle,
        recuérdenme, recuérdame, recordadme, recuerden, recuerdo que mañana, no os olvidéis, no te olvides,
        no se olviden, no olviden, que no se olvide, no dejéis, no dejen, no dejes, no saquéis, no saquen,
        no saques, no metáis, no metan, no metas, no quitéis, no quiten, no quites, no pongáis, no pongan,
        no pongas, no cambiéis, no cambien, no uséis, no usen, no uses, no montéis, no monten, no montes,
        no toquéis, no toquen, no toques, no hagáis, no hagan, no vayáis, ni se os ocurra, ni se te ocurra,
        ni se les ocurra, ponedla, ponedlo, ponedlas, ponedlos, ponedles, ponla, ponlo, ponlas, ponlos,
        pónganla, pónganlo, pónganles, pónganselo, pónsela, pónselo, ponédsela, ponédselo, póngale,
        póngales, póngala, échale, echadle, échenle, échele, meted a, metedla, metedlo, metedlos, metedlas,
        mételos, mételas, métanla, métanlo, métanlos, metan, meta, mete a, métala, sacadla, sacadlo,
        sacadlos, sacadlas, sácalos, sácalas, sáquenla, sáquenlo, sáquenlos, saquen, saque, sacad a,
        sáquela, quitadla, quitadlo, quítala, quítala ya, quítenla, quítenlo, quitádsela, quítasela,
        quítensela, quitad, quiten, quítaselo, cambiad, cambia, cambien, cambiadle, cámbiale, cámbienle,
        cambiádsela, cámbiasela, tapadla, tapadlo, tápala, tápalo, tápenla, tápenlo, tapadle, tapad a,
        tapa a, abrigad, abrigadla, abrigadlo, abriga, abríguenlo, abríguenla, abriguen, destapad,
        destapadla, destapadlo, destapa, destápenla, destápenlo, destapen, destápala, destápalo, traedla,
        traedlo, traedme, tráeme, tráiganme, traigan, trae a, tráela, tráelo, traedle, llevad, llevadla,
        llevadlo, llévala, llévalo, llévenla, llévenlo, lleven, llevadle, llévale, llévate, dadle, denle,
        dale de, dad, tended, tiéndela, tendedla, tiéndanla, colgad, cuélgala, colgadla, cuélguenla,
        cuelguen, lavad, lava, laven, lávala, lavadla, lávenla, secad, sécala, sécalo, secadla, secadlo,
        séquenla, séquenlo, coged, cojan, cógela, cogedla, agarren, dejadle, déjale, déjenle, dejadle la,
        dejadle el, soltad, soltadla, soltadlo, suéltala, suéltalo, suéltenla, suéltenlo, recogedla,
        recogedlo, recógela, recógelo, recoge, recójanla, recójanlo, revisadle, revísale, revísenle,
        revisen, revísenlo, revísenla, revisadla, revisadlo, tocad, tócale, tocadle, tóquenle, id poniendo,
        ve poniendo, vayan poniendo, id sacando, id metiendo, vete poniendo, llamad, llamen, llamar a,
        llamadme, llámame, llámenme, avisen, avisa, avísale, avisadle, avísenle, avísanos, avisadnos,
        decidle, dile, díganle, decirle a, preguntadle, pregúntale, pregunta a, preguntad, traer, llevar a,
        habrá q, hay que ir, hay que llamar, hay que pedir, hay que comprar, hay que coser,
        hay que arreglar, toca ir, toca lavar, tocaría, tocará, le tocará, nos toca, me toca, os toca,
        a ver quién, a ver cuándo, a ver si puede, veremos, ya veremos, a ver mañana, ya veré, veré,
        ya lo veremos, ya se verá, supuestamente, en teoría, se supone, se supone que, se suponía, supongo,
        imagino, imagino que, me imagino, me imagino que, digo yo que, yo diría, yo diría que,
        segurísimo que, seguro se, segurito, puede que, podría ser, pudiera ser, capaz que, acaso, a saber,
        vete a saber, quién sabe, quién sabe si, lo mismo mañana, probable, es probable, es posible,
        posiblemente, posible, será que, sería que, tendrá que, tendrá frío, tendrá calor, estará sudando,
        estará temblando, estará mojad|o|a, a este paso, como siga así, por poco, casi se, estuvo a punto,
        menos mal que no, en un rato, dentro de un rato, dentro de poco, dentro de una hora, en una hora,
        en media hora, en cinco minutos, en 5 minutos, en 10 minutos, en diez minutos, más adelante,
        un día de estos, algún día, cualquier día, próximamente, en breve, la semana próxima,
        la próxima semana, el mes que viene, el próximo mes, el año que viene, el próximo año,
        el invierno que viene, el próximo invierno, la próxima vez, otro día, para la próxima,
        la próxima tormenta, el finde que viene, el próximo finde, este fin de semana, este viernes,
        este sábado, este lunes, este martes, este miércoles, este jueves, mañana temprano,
        mañana por la mañana, mañana por la tarde, mañana por la noche, mañana a primera hora,
        a partir de mañana, para mañana, para el lunes, para el martes, para el miércoles, para el jueves,
        para el viernes, para el domingo, para el finde, a las 10 viene, vendrán, viene mañana, viene el,
        vienen el, vienen mañana, llega mañana, llegará, llegarán, cita con, quedamos en que,
        hemos quedado, quedamos mañana, turno, turnos, sustituye, reservad|o para, sorteo, rifa, competirá,
        competimos, concursa, concursamos, bajad, bajen, subid, suban, venid ya, corred, daos prisa,
        dense prisa, date prisa, apurad, apúrense, apúrate, id a por, ve a por, id por, vayan por,
        que baje alguien, que suba alguien, que vaya alguien, que alguien vaya, que alguien baje,
        que alguien venga, id a verl|o|a, vayan a verl|o|a, ve a verl|o|a, ahora tapo, luego tapo,
        ahora la tapo, ahora lo tapo, luego la tapo, luego lo tapo, ahora le echo, luego le echo,
        mañana le echo, ahora la visto, ahora lo visto, espero que, esperamos que, esperemos que,
        esperando que, confío en que, confiemos en que, deseo que, deseando que, ojalá que no, vigilad que,
        vigila que, vigilen que, procurad que, procura que, procuren que, comprobad que, comprueba que,
        comprueben que, aseguraos de que, asegúrate de que, asegúrense de que, aseguraos que,
        asegúrate que, cuidad que, cuidad de que, revisad que, revisa que, revisen que, necesito que,
        necesitamos que, pido que, ruego que, os pido que, os ruego que, les pido que, dile que,
        decidle que, díganle que, no vaya a ser que, no vaya a ser, no sea que, que no vaya a,
        que no se ponga, que no se pongan, que no le dé, sude, suden, tiemble, tiemblen, tirite, tiriten,
        pase frío, pasen frío, pase calor, pasen calor, tenga frío, tengan frío, tenga calor, tengan calor,
        coja frío, cojan frío, agarre frío, se moje, se mojen, se enfríe, se enfríen, se congele,
        se congelen, se seque, se sequen, se caliente bien, se ponga enferm|o|a, se ponga mal|o|a,
        esté bien mañana, que no estén, mirad si está, mira si está, miren si está, mirad si tiene,
        mira si tiene, a lo mejor está, a lo mejor tiene, igual está, igual tiene, no esté, no estén,
        no esté muy, no esté tan, no |le|les |quité|quitó|quitaron|quitamos|saqué|retiré,
        no |le|les |he|ha|han|hemos|e|a|an |quitado|sacado|retirado,
        no se |la|lo|las|los |quité|quitó|quitaron|quitamos|saqué|retiré,
        no se |la|lo|las|los |he|ha|han|hemos|e|a|an |quitado|sacado|retirado,
        no |he|hemos|ha|han |quitado|sacado|retirado, no |quité|quitamos|quitó|quitaron|saqué|retiré,
        sin quitarle, sin quitar, sin poner, sin ponerle, aún no se |la|lo, todavía no se |la|lo,
        tampoco se |la|lo, nadie le, nadie se |la|lo, nadie ha, intenté, intentamos, he intentado,
        hemos intentado, traté de, tratamos de, he tratado de, quise, quisimos, no me dejó, no se dejó,
        no se deja, no se ha dejado, no hubo manera, no hubo forma, no hay manera, no pude, no pudimos,
        no puedo, no podemos, no he podido, no hemos podido, fui incapaz, se me olvidó, se me ha olvidado,
        se me pasó, se me ha pasado, se nos olvidó, se nos ha olvidado, me olvidé de, me he olvidado de,
        olvidé, he olvidado, no me acordé de, no me he acordado de, no me dio tiempo, no me ha dado tiempo,
        no nos dio tiempo, no dio tiempo, no llegué a, no llegamos a, casi le, a medias de, va a estar,
        van a estar, vas a estar, va a quedarse, no quiero que, no queremos que,
        |casi|apenas |tuve|tuvimos|hubo que, casi |me|nos toca, casi |me|nos tocó, por poco
        |tengo|tuve|tenemos|tuvimos que, casi he tenido que, poco faltó para, no |tuve|tuvimos|hubo que, no hizo
        falta,
        |le|les|me|nos|te |va|van a hacer falta, |va|van a hacer falta, |le|les|me|nos|te |va|van a faltar,
        |va|van a faltar, |le|les|me|nos|te |hará|harán|haría|harían falta, hará falta, harán falta
    """,
    "habit": """
        siempre, normalmente, suele, suelen, a menudo, a veces, cada vez, odia, odian, le encanta,
        les encanta, le gusta, prefiere, de costumbre, cada día, todos los días, cada invierno, raramente,
        como un, como una, más que, parece un, parece una, acostumbra, qué guap|o|a, soñé, película,
        canción, foto, vídeo, video, fotos, en la foto, en la tele, friolero, friolera, es friolera,
        es friolero, nunca, nunca suda, suele sudar, se pone nerviosa, como siempre jaja, por costumbre,
        en enero, en febrero, en marzo, en abril, en mayo, en junio, en julio, en agosto, en septiembre,
        en octubre, en noviembre, en diciembre, en verano, en invierno, en primavera, en otoño,
        habitualmente, por lo general, por lo común, generalmente, en general no, casi siempre,
        siempre que, siempre igual, siempre la misma, siempre lo mismo, siempre está, siempre anda,
        siempre va, siempre tiene, siempre se, siempre le, siempre suda, siempre tiembla, casi nunca,
        de vez en cuando, de cuando en cuando, muchas veces, pocas veces, algunas veces, a ratos, rara vez,
        raras veces, cada dos por tres, cada dos días, cada noche, cada mañana, cada tarde, cada semana,
        cada mes, cada año, cada otoño, cada verano, cada vez que, cada vez que llueve, todas las noches,
        todas las mañanas, todas las tardes, todos los años, todos los inviernos, todas las semanas,
        todos los lunes, todos los martes, todos los jueves, todos los sábados, todo el año,
        todo el invierno, por las noches, por las mañanas, por las tardes, los lunes, los martes,
        los miércoles, los jueves, los viernes, los sábados, los findes, los fines de semana, entre semana,
        entresemana, a diario, diariamente, día sí día no, día sí y día también, un día sí y otro también,
        de siempre, desde siempre, toda la vida, de toda la vida, en la vida, en mi vida, solía, solían,
        solemos, soléis, suelo, sueles, acostumbran, acostumbraba, acostumbrad|o|a a, tiende a, tienden a,
        tiene por costumbre, tiene la manía, tiene manía de, tiene la costumbre de, manía, le da por,
        les da por, le suele, les suele, le suelo, le solemos, me suele, es de sudar, es de los que sudan,
        es de las que sudan, es de los que, es de las que, es de temblar, es muy de, es propens|o|a,
        es muy sudon|a, es sudón, sudón, sudona, es caluros|o|a, es muy friolera, es muy friolero,
        friolento, friolenta, friolentos, es friolenta, es friolento, es un friolero, es una friolera,
        frioleros, frioleras, friolerill|o|a, calurosos, detesta, detestan, no soporta, no aguanta,
        no le gusta, no les gusta, no le gustan, le gustan, les gustan, les encantan, le encantan,
        le chifla, le flipa, le molesta, le molestan, le agobia, le agobian, le da miedo, le dan miedo,
        le tiene miedo a, tiene miedo a, tiene miedo de, prefieren, adora, adoran, ama, aman, le mola,
        le priva, se vuelve loc|o|a por, está enamorad|o|a de, enamorad|o|a, qué mon|o|a, qué bonit|o|a,
        qué lind|o|a, qué preciosidad, qué preciosa, qué precioso, qué belleza, qué bell|o|a, qué grande,
        qué crack, qué artista, qué risa, qué gracia, qué gracioso, qué graciosa, qué arte, qué mal me cae,
        precios|o|a, hermos|o|a, lind|o|a, mon|o|a, guapísim|o|a, guapet|ón|ona, monísim|o|a, más mon|o|a,
        más guap|o|a, más lind|o|a, más bonit|o|a, más feo que, más frío que, más calor que, parecía un,
        parecía una, parecen unos, parecen unas, parezco, pareces, parecemos, igualit|o|a que,
        igual que yo, como yo, como tú, como nosotros, como mi, como mis, hecho un cromo, en persona,
        me recuerda a, recordáis cuando, os acordáis de, os acordáis cuando, te acuerdas de,
        te acuerdas cuando, se acuerdan de, se acuerdan cuando, acordándome de, recuerdo cuando,
        aquel invierno, aquel día, aquella noche, aquellos tiempos, qué tiempos, érase una vez,
        había una vez, cuentan que, cuenta la leyenda, la leyenda, la historia de, novela, libro, peli,
        películas, serie, series, capítulo, twitter, reel, reels, story, stories, historias, meme, memes,
        gif, sticker, stickers, la tele, documental, noticiario, telediario, periódico, revista, dibujo,
        dibujos, cuadro de, poster, peluche, juguete, juguetes, camiseta, taza, llavero, calendario,
        carnaval, disfraz, disfrazad|o|a, halloween, nochebuena, navidad, reyes magos, villancico, chiste,
        chistes, adivina, adivinanza, refrán, dice el refrán, como dice el refrán, que diría, canta,
        cantaba, cantando, soñando, he soñado, soñaba, sueño con, soñado, pesadilla, en sueños, de broma,
        es broma, broma, bromas, era broma, bromeando,
        este año, este mes, esta temporada, últimamente, estos meses, estas semanas, todo el mes, este último
        tiempo
    """,
    "bare weather": "",
    "brings weather": """
        hay, viene, cae, llega, vino, habrá, hubo, más, se viene, se acerca, se avecina, anuncian, dan, daban,
        dan para hoy, está cayendo, ha caído, cayó, caía, caerá, caen, habrá mucha, hay mucha, hay mucho,
        hay algo de, hay un poco de, menuda, menudo, cuánta, cuánto, mucha, mucho, tanta, tanto, poca, poco,
        hace, hacía, hizo, hará, alerta por, aviso de, aviso por, riesgo de, probabilidad de
    """,
    "mass": "mate, mates, café, té, caldo, sopa, atole, arroz, frijol, frijoles, torta, tortas, chocolate",
    "yesterday": """
        ayer, ayer por la tarde, ayer por la mañana, ayer al mediodía, ayer temprano, ayer tarde,
        ayer a la tarde, ayer a la noche, ayer en la tarde, ayer en la mañana, ayer en la noche,
        ayer a última hora, ayer a primera hora, ayer mismo, ayer todo el día, todo el día de ayer,
        durante todo el día de ayer, el día de ayer, desde ayer por la tarde, la noche de ayer, lo de ayer,
        la tarde de ayer, la mañana de ayer, de ayer, ayer noche, ayer por la noche, ayeri
    """,
    "long ago": """
        anteayer, la semana pasada, el mes pasado, el año pasado, el invierno pasado, el otro día, hace días,
        hace semanas, hace años, hace un mes, hace una semana, aquella vez, antes de ayer, de potro, de potra,
        hace meses, antier, antes de anoche, anteanoche, antes de ayer por la noche, antier por la noche,
        hace dos días, hace 2 días, hace tres días, hace 3 días, hace unos días, hace varios días,
        hace cuatro días, hace cinco días, hace un par de días, hace dos semanas, hace 2 semanas,
        hace tres semanas, hace un par de semanas, hace unas semanas, hace varias semanas, hace dos meses,
        hace 2 meses, hace tres meses, hace varios meses, hace unos meses, hace un par de meses, hace un año,
        hace dos años, hace tres años, hace 2 años, hace 3 años, hace unos años, hace muchos años,
        hace muchísimo, hace mucho tiempo, hace mucho, hace siglos, hace un siglo, hace un montón de tiempo,
        tiempo atrás, días atrás, semanas atrás, meses atrás, años atrás, en su día, en su momento,
        en otra época, en tiempos, antiguamente, antaño, antes de la pandemia, cuando la pandemia,
        cuando filomena, con filomena, en filomena, la pasada semana, esta semana pasada, el pasado lunes,
        el pasado martes, el pasado sábado, el lunes pasado, el martes pasado, el miércoles pasado,
        el jueves pasado, el viernes pasado, el sábado pasado, el finde pasado, el fin de semana pasado,
        el pasado finde, el pasado fin de semana, el otro finde, el otro fin de semana, el otro lunes,
        el otro sábado, la otra noche, la otra tarde, la otra mañana, la otra semana, la otra vez,
        el verano pasado, el otoño pasado, la primavera pasada, la temporada pasada, el invierno anterior,
        el otro invierno, el último invierno, otro invierno, el día que, el día de la, aquel año, aquella tarde,
        de joven, de pequeñ|o|a, de chic|o|a, de potrill|o|a, de potranc|o|a, cuando era potr|o|a,
        cuando era joven, cuando era pequeñ|o|a, cuando éramos, cuando estaba en, cuando llegó a la cuadra,
        cuando vivía, cuando lo compré, cuando la compré, cuando lo compramos, cuando la compramos,
        recién destetad|o|a, en la antigua cuadra, en la otra cuadra, en mi antigua cuadra, en 2020, en 2021,
        en 2022, en 2023, en 2024, en 2025, de otros años, otros años, otras veces, la última vez,
        la última vez que, la primera vez, la primera vez que, la vez que, alguna vez, en una ocasión,
        en cierta ocasión, había estado, habían estado
    """,
    "weather": """
        lluvia, llueve, lloviendo, tormenta, trueno, truenos, nube, nubes, sol, niebla, viento, nieve, nieva,
        nevando, escarcha, helada, hielo, relámpago, rayo, granizo, invierno, verano, otoño, primavera, tiempo,
        cielo, brisa, luna, aire, lluvias, lluvioso, lloviznando, llovizna, chispeando, chispea, orbayando,
        diluviando, diluvia, granizando, graniza, chaparrón, chaparrones, chubasco, chubascos, aguacero,
        aguaceros, diluvio, tromba, temporal, temporales, tormentas, tormentón, tormentoso, relámpagos, rayos,
        nublado, nuboso, nubarrones, nubarrón, soleado, solazo, solete, nieblas, neblina, bruma, calima,
        vendaval, ventarrón, ventisca, ventolera, viento norte, cierzo, tramontana, levante, poniente, nieves,
        nevada, nevadas, nevó, nevará, nevar, helando, hiela, heló, heladas, heladón, hielos, escarchas,
        carámbanos, granizada, pronóstico, previsión, meteo, clima, borrasca, anticiclón, dana, aemet, amanecer,
        amanecida, atardecer, madrugada, alba, aurora, rocío, cielos, ciclón, huracán, rachas, ráfagas,
        ola de frío, ola de calor, frente frío, humedad
    """,
    "weekday": """
        lunes, martes, miércoles, jueves, viernes, sábado, domingo, sábados, domingos, finde, findes,
        fines de semana
    """,
    "guess": """
        apuesto a que, me apuesto a que, fijo que, me juego lo que quieras a que,
        no creo, no estoy segur|o|a, ni idea, dudo, puede ser, no me parece, puede que, no sabemos, no sé si,
        supongo que, creo que no, me parece que no, diría que no, no creo que, no pienso que, no me parece que,
        no diría que, no sabría, no sabría decir, no estoy seguro de, no estoy segura de,
        no estoy seguro de que, no estoy segura de que, no estoy muy segur|o|a, no estoy del todo segur|o|a,
        no tengo claro, no lo tengo claro, no tengo claro si, no tengo ni idea, no tengo idea, ni puta idea,
        ni pajolera idea, no sé muy bien, no sé yo, no sé si es, no sé si está, no sé si tiene, no sé qué,
        no sé cuál, no sé quién, no sé por qué, no recuerdo, no recuerdo si, no me acuerdo, no me acuerdo si,
        no me acuerdo de si, no sabemos si, no se sabe, no se sabe si, no está claro, no está claro si,
        no consta, dudo que, dudo si, lo dudo, tengo dudas, tengo la duda, me queda la duda, con la duda, creía,
        creía que, creíamos que, creí, creí que, pensaba que, pensé que, pensé, pensábamos que, pensaba,
        me pareció, me pareció que, me parecía, me parecía que, me daba la impresión, parecía que, juraría,
        juraría que, me daba a mí que, me dio la sensación, tenía la sensación, imaginé, imaginaba que,
        suponía que, puede ser que, puede que esté, puede que tenga, podría estar, podría tener, igual está,
        igual tiene, igual es, a lo mejor está, a lo mejor tiene, a lo mejor es, lo mismo está, lo mismo es,
        quizá esté, quizás esté, quizá tenga, tal vez esté, tal vez sea, quizá sea, quizás sea, no sé si será,
        será, por lo visto no, sin confirmar, no confirmado, alguien sabe si, sabéis si, sabes si, saben si,
        sabe alguien si, alguien sabe, alguien ha visto, alguien vio, no la he visto, no lo he visto,
        yo no la he visto, yo no lo he visto, yo no lo vi, yo no la vi, no lo vi, no la vi, no los vi,
        no he visto a, no vi a, no he podido ver, no sabría deciros, sin verl|o|a, no he ido, no he estado,
        pues no sé, yo no sé, no lo sé, no sé decir, no sé decirte, no sé deciros, no sé nada, no sé nada de,
        no sé cómo, no sé cuándo, no sé cuánto, no sé dónde, no sé eh, no sé la verdad, no sé si es que,
        la verdad no sé, la verdad es que no sé, no sé ni, soñé que, he soñado que, soñaba que
    """,
    "said": """
        a ver a, pasé a ver a, fui a ver a, he ido a ver a, vengo de ver a, pasé ahora a ver a, pasé a mirar a,
        dice, dijo, dicen, dice que, dijo que, dicen que, creo que, me parece que, creo, avisa que, cuenta que,
        me ha dicho, me dijo, veo que, veo, he visto, vi, parece que, parece, según, he visto que, me dicen que,
        acabo de ver, pienso que, me dice, me ha dicho que, noto, lo noto, la noto, ojo, urgente, socorro,
        atención, dijeron, dijeron que, dice él que, dice ella que, ha dicho, ha dicho que, han dicho,
        han dicho que, me han dicho, me han dicho que, me dijeron que, me dijeron, me comentan que, me comentan,
        me comenta que, me comenta, comenta que, comentan que, comentó que, cuentan, me cuenta que,
        me cuentan que, me avisan que, me avisan de que, avisa de que, avisan que, avisó que, me avisa que,
        me avisó que, informa que, informa de que, escribe que, pone que, asegura que, creo yo, creo yo que,
        yo creo que, yo creo, para mí que, a mi parecer, a mi entender, en mi opinión, a mí me parece que,
        me da que, me da a mí que, me da la impresión de que, me da la sensación de que,
        tengo la impresión de que, tengo la sensación de que, diría que, yo diría que, se ve que, se nota que,
        se le nota que, se nota, se le nota, se la nota, se le ve, se la ve, se les ve, se le ven, se la ve muy,
        se ve a, se aprecia, por lo visto, por lo que veo, por lo que parece, al parecer, según parece,
        según veo, según dice, según dicen, según me dicen, según me dijo, según me ha dicho, parece ser que,
        parece ser, parece como que, parece como si, parecen, da la impresión de que, da la sensación de que,
        tiene pinta de, tiene pinta de que, tiene toda la pinta de, la pinta es que, huele a que, pinta que,
        vi a, vi que, he visto a, vimos, vimos a, hemos visto, hemos visto a, lo vi, la vi, los vi, las vi,
        le vi, lo he visto, la he visto, los he visto, las he visto, le he visto, lo veo, la veo, los veo,
        las veo, le veo, veo a, veo aquí a, estoy viendo a, estoy viendo que, viendo a, acabo de ver a,
        acabo de ver que, acabo de verl|o|a, acabamos de ver, acabamos de ver a, acabo de encontrar a,
        acabo de encontrarme a, acabo de mirar a, acabo de mirarl|o|a, acabo de tocar a, acabo de tocarl|o|a,
        acabo de comprobar, acabo de comprobar que, acabo de revisar a, acabo de pasar por,
        acabo de pasar a ver a, acabo de estar con, acabo de ir a ver a, he pasado a ver a, pasé a ver a,
        he ido a ver a, fui a ver a, fui a ver, he ido a ver, he estado con, he mirado a, miré a, he revisado a,
        revisé a, he comprobado, he comprobado a, comprobé a, he comprobado que, comprobado, he tocado a,
        toqué a, tocando a, le he tocado a, le toqué a, he palpado a, palpé a, metí la mano a,
        le metí la mano a, metí mano a, le metí mano a, le he metido la mano a, he metido la mano a,
        meto la mano a, le meto la mano a, metiendo la mano a, le acabo de meter la mano a,
        le metí la mano debajo a, he metido la mano debajo de la manta de, metí la mano debajo de la manta a,
        metí la mano bajo la manta a, metí la mano por debajo a, le pasé la mano a, le he pasado la mano a,
        pasé la mano a, noto a, noté a, noté que, noto que, he notado, he notado a, he notado que, lo noté,
        la noté, lo he notado, la he notado, los noto, las noto, le noto, siento a, sentí a, siento que está,
        encuentro a, encontré a, he encontrado a, nos encontramos a, me encuentro a, me encuentro con,
        me encuentro que, me encontré a, me encontré con, me he encontrado a, me he encontrado con,
        me he encontrado que, me encontré que, nos hemos encontrado a, nos encontramos con, me topé con,
        me topo con, me la encuentro, me lo encuentro, me los encuentro, me la he encontrado,
        me lo he encontrado, me los he encontrado, me la encontré, me lo encontré, pillé a, pillo a,
        he pillado a, la pillé, lo pillé, la he pillado, lo he pillado, cacho a, caché a, descubro que,
        descubrí que, me fijo en, me he fijado en, me fijé en, me fijé que, me he fijado que, veo yo que,
        te digo que, les digo que, digo que, hay que decir que, siento decir que, ha dicho el veterinario,
        tengo a, tenemos a, aquí tengo a, aquí tenemos a, hay que ver cómo, mirad a, mira a, miren a,
        mirad cómo está, mirad, mira que, ojo que, ojo con que, cuidado que, alerta, alerta con, alarma,
        emergencia, urgente con, es urgente, sos, s.o.s., auxilio, ayuda con, aviso con, me temo que, me temo,
        temo que, sospecho que, sospecho, mucho me temo que, acabo de pasar por el box de,
        acabo de pasar por la cuadra de, pasé por el box de, he pasado por el box de,
        he pasado por delante del box de, pasé por delante del box de, he pasado por la cuadra de,
        pasé por la cuadra de, he estado en el box de, vengo del box de, vengo de ver a, vengo de estar con,
        vengo de tocar a, vengo de revisar a, vengo de mirar a, estoy con, estaba con, toy con,
        estoy en el box de, estoy en el box con, estoy aquí con, estamos con, estoy mirando a, estoy tocando a,
        fui donde, fui a mirar a, he ido a mirar a, me acerqué a ver a, me he acercado a ver a, me acerqué a,
        me he acercado a,
        se me olvidó |decir|deciros|avisar|avisaros|apuntar|poner|contar|contaros|comentar que,
        se me ha olvidado |decir|deciros|avisar|avisaros|apuntar|poner|contar|contaros|comentar que,
        se me pasó |decir|avisar|apuntar|comentar que, olvidé |decir|avisar|apuntar|comentar que,
        me olvidé de |decir|avisar|apuntar|comentar que, no os he dicho que, no les dije que, no os dije que
    """,
    "what": """
        qué, cuál, cuáles, con qué, cuál de, qué es lo que, qué cosa, cuál es la, con cuál, cuántas
    """,
    "question": """
        qué, quién, quiénes, cuál, cuáles, cómo, cuándo, dónde, por qué, cuánto, cuánta, cuántos, alguien sabe,
        alguien ha, acaso, hay alguien, alguien puede, cuántas, cuáles son, adónde, a dónde, de dónde,
        con quién, de quién, por cuánto, desde cuándo, hasta cuándo, cada cuánto, alguien tiene,
        alguien sabe si, alguien ha visto, alguien vio, alguien puede decirme, hay alguien que, sabéis, sabes,
        saben, sabe alguien, sabéis si, sabes si, saben si, sabe alguien si, sabe usted, me decís, me dices,
        me dicen, me podéis, me puedes, me pueden, me puede, podéis, puedes decirme, podéis decirme, no sabréis,
        tenéis, tienes, alguno sabe, alguno tiene, alguno ha visto, no sabrás, os parece, te parece, les parece,
        creéis que, crees que, creen que, qué os parece, qué te parece, cómo lo veis, cómo veis, no será
    """,
    "idiom": """
        comí un||o|a|os|as, comimos un||o|a|os|as, me comí, nos comimos, he comido un||o|a|os|as,
        hemos comido un||o|a|os|as, cené un||o|a|os|as, cenamos un||o|a|os|as, almorcé un||o|a|os|as,
        desayuné un||o|a|os|as, me tomé un||o|a|os|as, lona del |camión|coche|carro|remolque|tractor|auto|van,
        lona de la |troca|camioneta|furgoneta|furgo|leña|piscina, la manguera está |congelada|helada,
        la manguera amaneció |congelada|helada, manguera |congelada|helada, se |congeló|heló la manguera,
        lona del heno, lona de las pacas, lona de las alpacas, lona del techo, lona de la caja,
        que tiemblan hasta, que tiritan hasta,
        caliente con los, caliente con las, caliente de cascos, caliente para montar,
        sangre fría, agua fría, agua caliente, en celo, bien hecho, buen trabajo, de acuerdo, está bueno,
        qué bueno, en camino, en forma, mala pata, café caliente, frío fuera, seco de carnes, hace frío,
        hace calor, hace mucho frío, hace mucho calor, hace un frío, qué frío, qué calor, manos frías,
        muy listo, muy lista, es list|o|a, hace bueno, hace malo, de mal humor, de buen humor, mala cara,
        a secar, se ha escapado, se escapó, se escapan, puesta a secar, luna llena, luna nueva, media luna,
        puesta de sol, tomar el sol, tomando el sol, rayo de sol, sol y sombra, rosa mosqueta,
        canela en rama, lucero del alba, bajo la lluvia, lluvia de estrellas, pies mojados, pies fríos,
        muert|o|a de risa, frío polar, un calor de, baño caliente, ropa mojada, sal y canela,
        funda del sofá, mi abrigo, mi impermeable, mi chubasquero, cuello de la camisa, ropa de cama,
        manta del perro, manta del sofá, capa de pintura, gracias por ponerle, gracias por poner,
        gracias por quitarle, gracias por quitar, gracias por meter, gracias por meterl|o|a,
        gracias por sacar, gracias por sacarl|o|a, gracias por secar, gracias por secarle,
        gracias por secarme, gracias por tapar, gracias por taparl|o|a, gracias por cambiar,
        gracias por cambiarle, gracias por cuidar, gracias por lo de, gracias por montar,
        gracias por arreglar, gracias por arreglarme, gracias por lavar, gracias por lavarme,
        gracias por avisar de lo, gracias por esperar, te agradezco, os agradezco, se agradece,
        sangre caliente, de sangre caliente, de sangre fría, purasangre, agua helada, agua tibia,
        agua fresca, agua templada, café frío, cafelito, café calentito, caldo caliente, caldito,
        sopa caliente, sopa fría, cerveza fría, birra fría, birras frías, cerveza fresquita,
        coca cola fría, comida caliente, bocata caliente, ducha caliente, ducha fría, duchita caliente,
        manta eléctrica, bolsa de agua caliente, calentador, guantes, guante, calcetín, calcetines,
        bufanda, gorro, botas, bota, mis botas, katiuskas, chaqueta, mi chaqueta, jersey, sudadera nueva,
        mi sudadera, mi polar, plumas, plumífero, anorak, chándal, pantalón, pantalones, vaqueros, camisa,
        pijama, edredón, sábanas limpias, lencería, cortinas, alfombra, sillón, bus, autobús, tren,
        pinchazo en la rueda, tuberías, cañería, pila del agua, pista helada, pista mojada, pista empapada,
        pista embarrada, suelo mojado, suelo helado, heno mojado, heno húmedo, paja mojada, paja húmeda,
        serrín mojado, viruta mojada, cama mojada, camas mojadas, leña seca, leña mojada, tierra mojada,
        tierra seca, hierba mojada, hierba seca, pan seco, ropa seca, pelo seco mío, piel seca,
        labios secos, boca seca, garganta seca, tos seca de fumador, a secas, en seco, frenar en seco,
        parar en seco, dique seco, vino seco, ramo seco, higos secos, frutos secos, hojas secas,
        época seca, ley seca, sudor de mi frente, con el sudor de, el sudor de la frente, sudor y lágrimas,
        sangre sudor, sudar la camiseta, sudé la gota, me la suda, me suda, se la suda, nos la suda,
        se la sopla, me importa, sudo de, suda de mí, suda de todo, suda del tema, paso de, me da igual,
        tirar la toalla, mojarse, no te mojes, no se moja, mojarse el culo, mojar el churro, papel mojado,
        en remojo los garbanzos, lágrimas, se me caen los mocos, temblad, que tiemble, que tiemblen,
        ya tiembla, tiemblan los rivales, me tiembla el pulso, no le tiembla el pulso, le tiembla la mano,
        tiembla la tierra, temblor de tierra, terremoto, hacer temblar, temblando de miedo,
        tiembla de miedo, temblando de emoción, temblando de la risa, temblando de nervios,
        tiembla de nervios, temblaba de miedo, escalofríos de miedo, me da escalofríos, da escalofríos,
        pelo de punta, se me pone la piel, piel de gallina, carne de gallina, sudores fríos,
        me entran sudores, cabeza fría, mente fría, mantener la cabeza fría, guerra fría,
        jarro de agua fría, se queda frío, me quedo frío, me quedé helado, me quedé helada, me dejó helado,
        me dejó helada, nos dejó helados, de piedra, en caliente lo digo, caliente caliente,
        caliente caliente frío frío, noticia caliente, tema caliente, rollo caliente,
        está caliente el tema, estar caliente, calentarse la cabeza, calentar la cabeza,
        calienta la cabeza, comerse la cabeza, calentar motores, calentando motores, calentar en la pista,
        calentamiento global, la cuesta, cuesta abajo, a caballo, a caballo regalado, caballo de batalla,
        caballo ganador, montar un pollo, montar el belén, montó un pollo, montó en cólera,
        montaron un pollo, montar la carpa, montar el cercado, hemos montado el cercado, montaje,
        montar una fiesta, montar el árbol, hacer el burro, hacer el indio, no seas burro, qué burro,
        vaya burro, más terco que una mula, como una cabra, está como una cabra, como una chota,
        estás loca, estás loco, buena gente, mala gente, malas pulgas, mala hierba, mala leche,
        de mala leche, mala suerte, mala sombra, mala idea, mala noticia, malas noticias, mala racha,
        mal rollo, malos pelos, mala señal de móvil, mala cobertura, mala conexión, internet mal,
        va mal internet, está rota la lavadora, lavadora rota, la lavadora se ha roto,
        se ha roto la lavadora, puerta rota, valla rota, cerca rota, alambre roto, cercado roto,
        pastor eléctrico, cabezada rota, ronzal, ronzal roto, montura rota, silla rota, bridas, bocado,
        estribo, estribos, cincha de la montura, cinchuelo de la montura, sudadero, sudaderos, salvacruz,
        campanas, manguera rota, bombilla, interruptor, cerradura, portátil, móvil, móvil roto,
        pantalla rota, gafas, gafas rotas, uñas, muela, muelas, roto el corazón, hecha polvo yo,
        hecho polvo yo, estoy hecha polvo, estoy hecho polvo, estoy muert|o|a, muert|o|a de sueño,
        muert|o|a de hambre, muert|o|a de miedo, muert|o|a de cansancio, muert|o|a de envidia,
        muert|o|a de vergüenza, me parto, me meo, me troncho, me descojono, qué risas,
        perdida en el bosque, perdido en el bosque, más perdid|o|a que, andas perdid|o|a, estás perdid|o|a,
        cuánto tiempo perdido, tiempo perdido, perdí el bus, he perdido el bus, perdió el bus,
        he perdido las llaves, perdí las llaves, perdió el partido, perdimos el partido,
        ha perdido el Madrid, perdió el Madrid, hemos perdido el partido, falta un mes, faltan dos meses,
        falta una semana, faltan dos semanas, falta poco para, faltan días para, falta mucho para,
        me falta tiempo, falta de respeto, falta de sueño, me hace falta, echo en falta, echar en falta,
        echo de menos, sin falta, falta leche, falta pan, falta pienso, falta heno, falta paja,
        falta viruta, faltan pacas, falta comida, falta gente, falta personal, faltan manos, falta dinero,
        faltan cuotas, falta por pagar, faltan por pagar, quedan pacas, queda pienso, queda heno,
        queda poco pienso, queda poco heno, quedan dos semanas, queda una semana, queda un mes,
        quedan tres días, quedan plazas, queda sitio, quedamos a las, quedamos el, hemos quedado a las,
        listo el pollo, listas de espera, lista de la compra, la lista de la compra, lista de turnos,
        lista de precios, lista de espera, todo listo para la fiesta, todo listo para el concurso,
        todo listo para el sábado, todo listo para mañana, todo preparado para, listos para la foto,
        listos para salir, hechos polvo, dicho y hecho, hecho a mano, hechas a mano, bien hechas,
        pastas hechas, tortilla hecha, cena hecha, comida hecha, café hecho, compra hecha, deberes hechos,
        papeles hechos, pagado y hecho, hecho el pedido, pedido hecho, transferencia hecha,
        está hecho un lío, hecho un flan, hecha un flan, hecho un mulo, hecha una moza, hecho un chaval,
        hecho un toro, hecho una fiera, hecha una fiera, hecho un pincel, hecha un pincel, hecho una pena,
        hecha una pena, hecho un asco, hecha un asco, hecho unos zorros,
        se llevan |bien|mal|fatal|genial|fenomenal|estupendamente|regular|perfecto|raro,
        se lleva |bien|mal|fatal|genial|fenomenal|estupendamente|regular|perfecto|raro,
        se llevaban |bien|mal|fatal,
        se |porta|portó|portan|portaron|comporta|comportó |bien|mal|fatal|genial,
        se |porta|portó|portan |fenomenal|estupendamente|regular|perfecto|raro,
        se |portaron|comporta|comportó |fenomenal|estupendamente|regular|perfecto|raro,
        se ha portado |bien|mal|fatal|genial|fenomenal|estupendamente|regular|perfecto|raro,
        se han portado |bien|mal|fatal|genial|fenomenal|estupendamente|regular|perfecto|raro,
        se ha comportado |bien|mal|fatal|genial|fenomenal|estupendamente|regular|perfecto|raro,
        se portó muy |bien|mal, se ha portado muy |bien|mal,
        |salta|saltó|galopa|galopó|trota|trotó |fatal|mal|genial|fenomenal,
        |carga|cargó|huele|olía|queda|sienta |fatal|mal|genial|fenomenal,
        ha saltado |fatal|mal|genial|fenomenal|bien, ha trabajado |fatal|mal|genial|fenomenal|bien,
        trabajó |fatal|mal|genial|fenomenal|bien, me cae |bien|mal|fatal, me caen |bien|mal|fatal,
        lo pasamos |bien|mal|fatal|genial, lo pasé |bien|mal|fatal|genial, me sienta |bien|mal|fatal,
        le sienta |bien|fatal|genial, le queda |bien|mal|fatal|genial|grande|pequeña|corta|larga,
        le quedan |bien|mal|fatal|grandes, le va |grande|pequeña|corta|larga, aparcad|o|a |mal|fatal,
        me encuentro |bien|mal|fatal, me siento |bien|mal|fatal, suena |bien|mal|fatal|raro,
        sabe |bien|mal|fatal|raro, se ve |bien|mal|fatal la tele, va |mal|fatal la tele,
        va |mal|fatal internet, va |mal|fatal el wifi, voy |mal|fatal|bien de tiempo,
        vamos |mal|fatal|bien de tiempo, mal aparcado, mal hecho, mal cerrado, mal cerrada, mal atado,
        mal atada, mal puesta la, como si hubiera, como si hubiese, como si viniera, como si acabara,
        como si nada, como si tal cosa, como si llevara, como si estuviera, como si le,
        cumplió años, cumplió, cumple años, cumplen años, va a cumplir, cumpleaños
    """,
    "i": """
        mi |hija|hijo|niña|niño|madre|padre|marido|mujer|novio|novia,
        yo, ando, yo ando, andamos, andáis, andas, nosotr|o|a|os|as, tú, vosotr|o|a|os|as, usted, ustedes, mi, mis,
        tu, tus, nuestr|o|a|os|as, estoy, estamos, tengo, tenemos, voy, vamos, me, nos, te, os, soy, somos, gente,
        chic|o|a|os|as, niñ|o|a|os|as,
        veterinari|o|a, herrador, hij|o|a, jinete, dueñ|o|a, marido, mujer, padre, madre, perr|o|a, gat|o|a,
        vuestr|o|a|os|as, perro, perra, perros, gato, gata, gatos, gallina, gallinas, gallo, cabra, cabras,
        oveja, ovejas, vaca, vacas, burro del vecino, cachorro, mastín, ellos mismos, conmigo, contigo, ti,
        mías, míos, mío, mía, tuyo, tuya, tuyos, tuyas, yo mismo, yo misma, estaba yo, estuve, estábamos,
        estuvimos, estaré, estás, estáis, tuve, tenía yo, teníamos, tuvimos, tienes, tenéis, era yo, éramos,
        eres, sois, fui, fuimos, fuiste, iba yo, íbamos, vas, vais, me voy, nos vamos, me he, nos hemos, me ha,
        nos ha, me han, nos han, te has, os habéis, llevo, llevamos puesto, paso frío, paso calor, pasamos frío,
        tiemblo, tirito, sudo, sudamos, sudo yo, temblamos, tiritamos, me muero, me congelo, me hielo, me aso,
        me duele, me duelen, me siento, me encuentro, me encuentro mal, me pongo, me quito, me puse, me quité,
        chavaler|o, alumno, alumna, alumnos, alumnas, críos, crío, cría, crías, chiquillos, chiquillas,
        chiquillo, chiquilla, peques, la peque, el peque, bebé, beba, zagal, zagala, guaje, guajes, pelao,
        pelaos, abuelo, abuela, suegra, suegro, cuñado, cuñada, tío mío, primo, prima, sobrino, sobrina,
        sobrinos, hermano, hermana, hermanos, novio, novia, esposo, esposa, mamá, papá, padres, madres,
        padres y madres, mi madre, mi padre, hijos, hijas, nieto, nieta, nietos, amigo, amiga, amigos, amigas,
        vecino, vecina, vecinos, vecinas, jinetes, amazona, amazonas, dueños, dueñas, propietario, propietaria,
        propietarios, jardinero, albañil, fontanero, electricista, repartidor, cartero, panadero, cura, médico,
        doctor, doctora, enfermera, enfermero, policía, guardia civil, turista, turistas, visitantes,
        senderistas, ciclista, ciclistas, cazadores, cazador, pastor, ganadero, señora mayor, persona, personas,
        público, cliente, clientes, chófer, camionero, transportista, profe, profesor, profesora, profes,
        monitor, monitora, monitores, entrenador, entrenadora, mozos, mozo, moza, peón, capataz, encargado,
        encargada, cuadrero, caballerizo, empleado, empleados, jefazo, perras, perrito, perrita, perrete,
        cachorros, gatas, gatito, gatita, gatitos, ternero, pollo, pollos, pollitos, pájaro, pájaros, conejo,
        conejos, cerdo, cerdos, ratón, ratones, toro, toros, el coche, el tractor, la furgo
    """,
    "visitor": """
        veterinario, veterinaria, herrador, dentista, fisio, guarnicionero, osteópata, vet, el entrenador,
        podólogo, veterinarios, veterinarias, el vete, la vete, veta, la veterinaria, el veterinario,
        herradores, herradora, el herrador, dentistas, el dentista, la dentista, fisioterapeuta, la fisio,
        el fisio, la guarnicionera, guarnicionera, la costurera, costurera, osteópatas, la osteópata,
        la podóloga, podóloga, podólogos, quiropráctico, esquilador, esquiladora, el esquilador, la esquiladora,
        masajista, la entrenadora, entrenadora, entrenador, juez, jueces, inseminador, el transportista,
        don veterinario, doc, el doc, la doc
    """,
    "my": "mi, mis, nuestr|o|a|os|as",
    "some": "un, una, unos, unas, otro, otra, algún, alguna",
    "she": """
        él, ella, ellos, ellas, lo, le, les, l, a él, a ella, a ellos, a ellas, esa misma, este mismo,
        esta misma, ese mismo, dicho animal, la susodicha, el susodicho, la mencionada, la interfecta,
        la criatura, el animal, el pobre, la pobre, la pobrecita, el pobrecito, la pobrecilla, el pobrecillo,
        la pobre mía, el pobre mío, ese caballo, esa yegua, este caballo, esta yegua, ese poni, esa poni,
        este poni, ese burro, esa burra, esta burra, ese animal, ese bicho
    """,
    "her": """
        su, sus, suyo, suya, suyos, suyas, de él, de ella, el suyo propio, la suya propia
    """,
    "my horse": """
        mi caballo, mi yegua, mi poni, mi potro, mi potra, mi burro, el mío, la mía, mi jaca, mi jaco, mi rocín,
        mi penco, mi mula, mi burra, mi burrito, mi burrita, mi potrillo, mi potranca, mi caballito, mi yegüita,
        mi bicho, mi peludo, mi peluda, mi animal, mi potrito, mi potrita, al mío, a la mía, del mío, de la mía,
        mi bestia, mi tordo, mi torda, mi alazán, mi alazana, mi castaño, mi castaña, mi pony
    """,
    "it": """
        eso, esto, ello, lo, se la quité, se lo quité, se la he quitado, se lo he quitado, se la quitamos, se lo
        quitamos, la misma, el mismo, la citada, dicha manta, esa manta, esta manta, esa cobija, esta cobija, se
        la he quitado ya, se lo he quitado ya, se la puse, se lo puse, se la he puesto, se lo he puesto, se la
        hemos quitado, se lo hemos quitado, se la hemos puesto, se lo hemos puesto, se la he sacado, se la
        pusimos, se lo pusimos,
        se |la|lo|las|los |eché|metí|coloqué|mandé|planté|encajé|chanté|amarré|abroché|acomodé|agregué, se
        |la|lo|las|los dejé puest|a|o|as|os, se |la|lo|las|los
        |echamos|metimos|colocamos|mandamos|pusieron|echaron|abrochamos|acomodamos, se |la|lo|las|los he
        |echado|metido|colocado|plantado|abrochado|acomodado|enchufado, se |la|lo|las|los hemos
        |echado|metido|colocado|plantado|abrochado|enchufado, ya se la puse, ya se lo puse, ya se la eché, se
        |la|lo|las|los |saqué|arranqué|retiré|desabroché|tumbé|bajé|volé, se |la|lo|las|los
        |sacamos|arrancamos|retiramos|sacaron|arrancaron|sacó, ya se la quité, ya se lo quité, ya se la saqué,
        ya se lo saqué
    """,
    "article": """
        el, la, los, las, un, una, unos, unas, al, lo, este, esta, ese, esa, estos, estas, esos, esas, aquel,
        aquella, del, otro, otra, de la, de el, de los, de las,
        todo el, toda la, todito el, todita la
    """,
    "of": """
        de, del, para, a, al, de la, de el, de los, de las
    """,
    "and": """
        y, e, &, +, con, más, además, y también, e incluso, más el, más la, junto con, junto a, así como,
        además de, aparte de, amén de, y luego también, y encima, y además, y de paso, tambien y
    """,
    "but": """
        pero, así que, porque, aunque, sin embargo, en cambio, pues, y luego, por eso, o sea, ya que,
        por lo que, conque, entonces, y entonces, que, peroo, mas, eso sí, si bien, no obstante, aun así,
        con todo y con eso, por contra, por el contrario, mientras que, ahora bien, y sin embargo, pero bueno,
        pero claro, pero ojo, pero vamos, así que nada, así pues, de modo que, de manera que, de forma que,
        por tanto, por lo tanto, por consiguiente, y por eso, total que, o sea que, es decir, vamos que,
        puesto que, dado que, debido a que, como quiera que, ya q, pues que, y eso que, lo que pasa,
        en cuanto a, respecto a, sobre todo, y después, y ahora, después, luego ya, y de ahí, de ahí que,
        por cierto, y por cierto, aparte, aparte de eso, por otro lado, al revés, y en cambio
    """,
    "too": """
        también, igual, tampoco, lo mismo, ídem, idem, igual que, lo mismo con, lo mismo para, también lo mismo,
        lo mismito, también igual, exactamente igual, igualmente, igualito, igualita, igual de, al igual que,
        tres cuartos de lo mismo, tres cuartos, más de lo mismo, otro tanto, otra igual, otro igual, lo propio,
        asimismo, así mismo, y también, tmbién, tamién, ni tampoco, y tampoco, tampoco no, parecido,
        por el estilo, ídem de ídem, ditto, same, y lo mismo, lo mismo digo de, igual con,
        igual para, igual va, lo mismo, igual, ídem
    """,
    "helper": "",
    "is": """
        le noté, la noté, lo noté, le noto, la noto, lo noto, le he notado, la he notado, lo he notado, la encontré,
        lo encontré, le encontré, la encuentro, lo encuentro, le encuentro, la he encontrado, lo he encontrado,
        ande, anden,
        está, están, es, son, anda, andan, parece, parecen, sigue, siguen, se ve, se ven, lo veo, la veo,
        lo noto, la noto, llegó, llegan, llega, ha llegado, estando, ha venido, vino, viene, vuelve, volvió,
        ha vuelto, ha estado, han estado, quedó, se puso, se ha puesto, tiene, tienen, ha, han, va, van, estar,
        se encuentra, se queda, quedado, queda, acabó, ha acabado, se ha quedado, amaneció, ha amanecido,
        he encontrado a, encontré a, encontramos a, lleva, ya está, ya están, sta, stan, ya es, ya son,
        va a estar no, se la ve, se lo ve, se le ve, se les ve, se las ve, se los ve, se nota, parece que está,
        parecen estar, parece estar, viene siendo, anda ya, anda hoy, anda algo, se siente, se sienten,
        se mantiene, se mantienen, mantiene, continúa, continúan, permanece, resulta estar, terminó, terminaron,
        ha terminado, acabaron, han acabado, quedaron, han quedado, ha quedado, se quedaron, se han quedado,
        se quedó, se quedan, llegaron, han llegado, vinieron, han venido, vienen, volvieron, han vuelto,
        vuelven, regresó, regresaron, ha regresado, se pusieron, se han puesto, se pone, se ponen,
        se está poniendo, se están poniendo, se volvió, se ha vuelto, amanecieron, han amanecido, amanece,
        despertó, se despertó, se levantó, se ha levantado, durmió, ha dormido, pasó la noche,
        ha pasado la noche, ha pasado el día, pasó el día, hemos encontrado a, me encuentro a, me encontré a,
        me he encontrado a, me la encuentro, me lo encuentro, me la he encontrado, me lo he encontrado,
        me la encontré, me lo encontré, nos encontramos a, la encontré, lo encontré, la he encontrado,
        lo he encontrado, los encontré, los he encontrado, la noté, lo noté, le noto, le veo, les veo, los veo,
        las veo, los noto, las noto, la vi, lo vi, los vi, las vi, la he visto, lo he visto, los he visto,
        las he visto, le he visto, le vi, la tengo, lo tengo, los tengo, las tengo, tengo a, la tenemos,
        lo tenemos, tenemos a, lo dejé, la dejé, los dejé, las dejé, lo he dejado, la he dejado, los he dejado,
        las he dejado, lo dejamos, la dejamos, los dejamos, lo hemos dejado, la hemos dejado, está que,
        están que, está ya, están ya, está ahora, está hoy, sigue estando, siguen estando, sigue igual de,
        siguen igual de, va ya, va hoy, lleva ya, lleva un rato, lleva rato, lleva toda la mañana,
        lleva toda la noche, lleva todo el día, llevan toda la mañana, llevan un rato, lleva una hora,
        lleva media hora, lleva así, siendo, está siendo, resultó, está la pobre, está el pobre, está bien de,
        trae el pelo, traen el pelo, se conserva, ye, tan, taba, a venido, a llegado, a vuelto, a amanecido,
        a quedado, a estado,
        se a quedado, se a puesto, an venido, an llegado, an vuelto
    """,
    "link": """
        acabo de pasar por, pasé recién por, recién pasé por, pasé hoy por, he pasado ahora por, pasando por
        delante de,
        he pasado por, pasé por, pasamos por, pasando por, al pasar por,
        atrás del codo, atrás de los codos, atrás de la oreja, atrás de las orejas, atrás de la cruz,
        pasé por donde, pasé por lo de, pasé donde, po,
        ya, muy, también, todavía, aún, aun, otra vez, de nuevo, solo, sólo, ahora, aquí, allí, ahí, algo, a,
        de, en, con, por, para, que, se, le, les, lo, la, además, claro, sí, si que, así, bien, todo, toda,
        todos, todas, los dos, las dos, ambos, ambas, casi, hasta, vuelta, entero, completamente, visiblemente,
        realmente, totalmente, tal, mismo, misma, menos mal, por fin, por suerte, desgraciadamente, bastante,
        ay, uf, uy, esta vez, cada, el pobre, la pobre, pobre, pobrecito, pobrecita, del todo, nada, jo, venga,
        hoy, todavia, estado, igual que antes, muchísimo, un montón, un pelín, pobrecilla, pobrecillo,
        la verdad, en fin, por cierto, como siempre, entera, enteros, enteras, de arriba abajo,
        por todas partes, encima, esta noche, en general, desde luego, la pobrecita, el pobrecito, filtra,
        pasa el agua, jadea, jadeando, entonces, la verdad es que, a decir verdad, de hecho, en serio,
        en verdad, de verdad, de veras, obviamente, evidentemente, lógicamente, naturalmente, efectivamente,
        curiosamente, sinceramente, francamente, honestamente, básicamente, literalmente, prácticamente,
        claramente, seriamente, tremendamente, extrañamente, milagrosamente, inesperadamente, sorprendentemente,
        afortunadamente, por desgracia, para colmo, encima de todo, y eso que, incluso, inclusive, por lo menos,
        al menos, como mínimo, nuevamente, por enésima vez, por segunda vez, por tercera vez, por fin ya,
        a la vez, al mismo tiempo, mientras tanto, a simple vista, a ojo, al tacto, tal cual, así así,
        así como está, tal y como, más bien, algo así, para variar, otra vez más, una vez más, de repente,
        de pronto, de golpe, poco a poco, sin parar, sin duda, sin falta, enterit|o|a|os|as, tod|o|a enter|o|a,
        por completo, en su totalidad, de cabo a rabo, de arriba a abajo, por un lado, por otro lado,
        por el otro lado, por delante, por detrás, por dentro, por fuera, por ambos lados, por los lados,
        por los dos lados, por todo el cuerpo, por todo, en todo el cuerpo, en toda la zona, desde dentro,
        de lado a lado, de lado, de costado, a tope, a lo bestia, a saco, que da gusto, que da pena,
        que da miedo, que da penita, que da lástima, que lo flipas, que flipas, que no veas, de la leche,
        de la hostia, de cojones, de narices, de pelotas, de mala manera, cosa mala, cosa fina, una barbaridad,
        una pasada, un huevo, mogollón, un mogollón, mazo, cantidad, a rabiar, un cacho, un rato, un ratito,
        un ratín, ligeramente, levemente, apenas, justit|o|a, just|o|a, pobr|es, pobrecit|os|as, pobretic|o|a,
        probe, probin|o|a, angelit|o, angelic|o, animalit|o, animalic|o, bichit|o, criatura, criaturita,
        bichejo, el animal, el animalito, el bicho, la criatura, la muy, el muy, la bruta, el bruto, la viejita,
        el viejito, la pequeñaja, pobre mía, pobre mío, pobre animal, pobre bicho, pobrecill|os|as,
        el condenado, la condenada, el jodío, la jodía, el cabrón, la cabrona, el cabrito, la puñetera,
        el puñetero, el desgraciado, la desgraciada, el infeliz, la infeliz, el tontín, la tontina, menud|o,
        vaya, anda, ala, hala, uff, puff, puf, pff, jolín, jolines, jope, ostras, ostia, hostia, hostias, joder,
        coño, mierda, carajo, caray, caramba, leches, demonios, diantre, puñetas, cojones, virgen santa,
        por dios, dios mío, ay dios, dios, válgame, ave maría, ay madre, ay señor, qué horror, qué pena,
        qué penita, qué lástima, qué desastre, qué cosa, qué barbaridad, qué susto, qué raro, qué bien,
        qué gusto, qué alegría, qué alivio, qué asco, qué fuerte, menos mal que, gracias a dios, a dios gracias,
        con todo, eso sí, eso también, encima también, fijo, fijaos, fíjate, mira, mire, miren, mirad, oiga,
        oigan, escuchad, escuchen, escucha, oíd, atentos, vea, vea pues, vean, pues nada, pues eso, pues mira,
        pues sí, pues ya, pues ahora, nada que, total que, total, resulta que, resulta, pasa que,
        lo que pasa es que, es que, que sepáis que, que sepáis, que sepan, que conste, que conste que, os digo,
        os digo que, os aviso que, os aviso de que, os informo, os informo de que, les informo, les informo que,
        les aviso, les aviso que, les cuento, les cuento que, os cuento que, te cuento que, te aviso,
        te aviso que, te informo, aviso que, aviso de que, informo que, informo de que, confirmo, confirmo que,
        confirmado, comunico que, comunico, reporto, reporto que, anuncio que, para que sepáis,
        para que lo sepáis, pa que lo sepáis, para que conste, pa que conste, para vuestra información,
        para su información, por si os interesa, por si le interesa, por si interesa, que lo sepáis,
        para el registro, pal registro, apunta, apunta que, apúntate, apuntad, apuntad que, anota, anota que,
        anotad, anótalo, apúntalo, toma nota, tomad nota, toma nota de que, registra, registra que, ponlo,
        pon que, ficha, sin novedad en general, cenad|o|a|os|as, comid|os|as, con la cena puesta,
        con el heno puesto, con heno, con su heno, con el pienso puesto, con pienso, con agua, con agua y heno,
        cenados y comidos, y cenado, y cenados, y cenada, y con heno, y con agua, y con cena, y recogido,
        y recogidos, y contentos, y contento, y contenta, y felices, y feliz, y roncando, durmiendo,
        y durmiendo, y a dormir, y a casa, por igual, bajo cero, entavía, todavida, inda, aínda, encara,
        y le he dado heno, y le he dado agua, y le he dado de comer, y le di heno, y le di agua,
        le he dado heno, le he dado agua, le di heno, le he puesto heno, le puse heno, y le he puesto heno,
        y le puse heno, y le he echado heno, y le eché heno, y le he dado heno extra, con heno extra,
        y está comiendo, está comiendo, comiendo, comiendo heno, y comiendo, y come bien, come bien,
        y come como siempre, y ha cenado, ha cenado, y ha comido bien, ha comido bien, comió bien,
        tan feliz comiendo, y en su sitio, en su sitio, en sus sitios, y en su box, y en sus boxes,
        y en sus cuadras, y en casa, y en la cuadra, y metidos, y con su manta, y con su cena, y con su heno,
        y con sus mantas, y en orden, y con la puerta cerrada, y sin problema, y sin problemas, y sin novedad,
        y sin incidencias, y listos, y a otra cosa, y a cenar, y a la cama, y a casa todos, y a descansar,
        por los bordes, en los bordes, por la costura, por las costuras, en la costura,
        por la parte de |arriba|abajo|delante|atrás|dentro|fuera, en la parte de |arriba|abajo|delante|atrás,
        por debajo del todo, por la zona del, por la zona de la, en la zona del, en la zona de la,
        a la altura del, a la altura de la, en un lado, por una esquina, en una esquina, por una punta,
        de un lado, de la parte de |arriba|abajo|delante|atrás,
        por el |cuello|lomo|pecho|costado|hombro|vientre|flanco|culo,
        por la |cruz|grupa|cola|barriga|tripa|panza|espalda, por los |hombros|costados|flancos|riñones|ijares,
        en el |cuello|lomo|pecho|costado|hombro|vientre|flanco,
        en la |cruz|grupa|cola|barriga|tripa|panza|espalda, en los |hombros|costados|flancos|riñones|ijares,
        del |cuello|lomo|pecho|costado|hombro, ya come, ya está comiendo, ya ha comido, ya comió, ya bebe,
        ya ha bebido, ya anda comiendo, y ya come, y ha comido, y come,
        |para|pa que no |pase|coja|tenga|agarre|pille frío, |para|pa que no |pase|tenga|coja calor,
        |para|pa que no |sude|tiemble|tirite|roce,
        |para|pa que no se |moje|mojen|enfríe|hiele|congele|empape|asuste|ensucie|manche|rompa|roce,
        |para|pa que se |seque|caliente|revuelque|temple|airee|sequen|calienten|revuelquen,
        |para|pa que |sude|roce|pese menos,
        colgad|o|a|os|as, tendid|o|a|os|as, guindad|o|a|os|as, estirad|o|a en la cerca, colgad|o|a en la
        |cerca|reja|puerta, tendid|o|a en la |cerca|reja|puerta, colgad|o|a en el
        |alambre|cerco|tendedero|corral|galpón, tendid|o|a en el |alambre|cerco|tendedero|corral|galpón, contra
        el |alambre|cerco|alambrado, en el |alambre|alambrado|cerco,
        tirad|o|a|os|as, tirad|o|a en el |lodo|barro|suelo|piso|potrero|corral|prado, tirad|o|a en la
        |tierra|arena|paja|caballeriza, botad|o|a|os|as, botad|o|a en el |lodo|barro|suelo|piso|potrero|corral,
        ya comieron, ya cenaron, ya cenó, ya bebieron, ya tomaron agua, ya tomó agua, ya se comieron el heno,
        no |para|paran|paraba|paraban|paró|deja|dejan|dejaba|dejaban|dejó de, no ha |parado|dejado de, no han
        |parado|dejado de, a raíz de
    """,
    "time": """
        ahora, hoy, esta noche, esta mañana, esta tarde, ahora mismo, en este momento, de momento, al mediodía,
        a mediodía, toda la noche, todo el día, desde anoche, desde esta mañana, anoche, hace un rato,
        hace una hora, hace poco, hace horas, por la noche, por la mañana, por la tarde, temprano, ya, mediodía,
        h, desde ayer, a primera hora, de madrugada, en el desayuno, a la hora de comer, al llegar,
        nada más llegar, antes, hace media hora, minutos, horas, hora, hace nada, hasta nueva orden,
        con esta lluvia, con este frío, con este viento, bajo la lluvia, con el viento, con el frío,
        con la que cae, con este sol, con este calor, con esta humedad, recién, hace un momento, para la noche,
        hasta mañana, hasta la mañana, en la mañana, en la tarde, en la noche, hoy en la mañana, ronda tarde,
        ronda mañana, ronda de tarde, ronda de mañana, ronda de la tarde, ronda de la mañana, ronda de noche,
        en la ronda, al llegar a la cuadra, cuando llegué, cuando he llegado, esta madrugada, por ahora,
        ahorita, recién ahora, hoy por la mañana, hoy por la tarde, actualmente, en estos momentos,
        a estas horas, a estas alturas, en este instante, justo ahora, justo, ahora ya, ya ahora, ya mismo,
        ahoritica, ahoritita, horita, ahora por la mañana, ahora por la tarde, ahora por la noche,
        hoy al mediodía, hoy a mediodía, hoy a primera hora, hoy temprano, hoy tempranito, hoy mismo,
        hoy de madrugada, hoy ya, tempranito, bien temprano, muy temprano, bien tempranito, prontito, pronto,
        tarde, de noche, de día, de mañana, de tarde, por la madrugada, en la madrugada, a media mañana,
        a media tarde, a media noche, a medianoche, medianoche, media tarde, media mañana, al amanecer,
        al anochecer, al atardecer, al alba, al salir el sol, al despertar, al levantarme, al abrir,
        al abrir la cuadra, al abrir el box, al entrar, al entrar en la cuadra, al entrar en el box,
        al entrar en su box, al entrar al box, al entrar al establo, al llegar al establo, al llegar al prado,
        al llegar al box, al llegar al potrero, al llegar hoy, al llegar esta mañana, al llegar yo, al bajar,
        al bajar al prado, al subir, al pasar, al pasar por el prado, al pasar por su box, al pasar por delante,
        al ir a verl|o|a, al ver, al verl|o|a, al meterl|o|a, al sacarl|o|a, al recogerl|o|a, al traerl|o|a,
        al darle de comer, al dar de comer, al echar de comer, al echar el pienso, al dar el pienso,
        al poner el pienso, al desayunar, a la hora del desayuno, a la hora del pienso, a la hora de la cena,
        a la cena, a la hora de cenar, en la cena, en la comida, en el pienso, a la hora de la comida,
        antes de cenar, después de cenar, después del pienso, después de comer, después del desayuno,
        tras el desayuno, hace apenas, hace 5 minutos, hace 5 min, hace 10 minutos, hace 10 min,
        hace cinco minutos, hace diez minutos, hace un minuto, hace unos minutos, hace un cuarto de hora,
        hace un ratito, hace un ratín, hace ratito, hace rato, hace un segundo, hace dos horas, hace 2 horas,
        hace una horita, hace tiempo, hace poquito, hace muy poco, hace bien poco, hace apenas un rato,
        hace apenas nada, hace na, ahora hace un rato, hace media horita, min, mins, minuto, minutillos,
        segundos, hs, hrs, horas ya, am, pm, a.m, p.m, horitas, desde hace un rato, desde hace una hora,
        desde hace rato, desde hace media hora, desde primera hora, desde primera hora de la mañana,
        desde por la mañana, desde la mañana, desde la madrugada, desde la noche, desde temprano,
        desde que llegué, desde que he llegado, desde mediodía, desde este mediodía, desde esta tarde,
        desde esta madrugada, desde entonces, cuando llegué al prado, cuando llegué a la cuadra,
        cuando llegué esta mañana, cuando llegué hoy, cuando he llegado esta mañana,
        cuando he llegado a la cuadra, cuando he llegado al prado, cuando he entrado, cuando entré, cuando abrí,
        cuando he abierto, cuando he pasado, cuando pasé, cuando la he visto, cuando lo he visto, cuando la vi,
        cuando lo vi, cuando lo metí, cuando la metí, cuando lo saqué, cuando la saqué, cuando la he metido,
        cuando lo he metido, cuando la he sacado, cuando lo he sacado, cuando lo traje, cuando la traje,
        cuando bajé, cuando he bajado, cuando subí, cuando fui, cuando he ido, cuando fui a verl|o|a,
        cuando he ido a verl|o|a, cuando le toqué, cuando la toqué, cuando lo toqué, cuando le he tocado,
        al tocarl|o|a, al meterle la mano, al meter la mano, metiendo la mano, metiéndole la mano,
        tocando por debajo, tocándol|o|a, por la lluvia de anoche, con la lluvia de anoche,
        de la lluvia de anoche, por el calor, por el frío, por el viento, por la helada, con la helada,
        con esta nieve, con este tiempo, con este aire, con este hielo, con esta helada, con esta niebla,
        con esta ventisca, con este temporal, con este día, con este calorazo, con este solazo,
        con el sol que hace, con el sol que pega, con el frío que hace, con el calor que hace,
        con el viento que hace, con el aire que hace, con la que está cayendo, con la que ha caído,
        con la que cayó, con la que nos cayó, con lo que ha llovido, con lo que está lloviendo,
        con lo que llueve, con lo que cae, con lo que está cayendo, con el chaparrón, con el aguacero,
        con la lluvia de lado, con esta lluvia de lado, con el sol de hoy, con el frío de hoy,
        con el frío de esta noche, con el calor de hoy, con el calor de mediodía, con la rasca,
        con la rasca que hace, con esta rasca, con esta agua, bajo el agua, a pleno sol, al solecito,
        a la sombra, al aire, al viento, al fresco, al raso, a la lluvia, a pesar del frío,
        a pesar de la lluvia, a pesar de todo, a pesar de la manta, de esta mañana, de esta noche,
        de esta tarde, de hoy, de anoche, de ahora, de la mañana, de la tarde, de la noche,
        esta mañana temprano, esta mañana a primera hora, esta mañana al llegar, esta tarde al llegar,
        esta noche al llegar, esta mañana ya, en ronda, en la ronda de la mañana, en la ronda de la tarde,
        en la ronda de la noche, en la ronda de noche, en la última ronda, en la ronda de las diez, en mi ronda,
        haciendo la ronda, en la revisión, en la revisión de la tarde, en la revisión de la mañana,
        última ronda, ronda nocturna, primera ronda, segunda ronda, ronda de las 8, por el momento,
        mientras tanto, entretanto, por hoy, para hoy, pa hoy, pa la noche, para esta noche, pa esta noche,
        para la tarde, pa la tarde, para toda la noche, hasta la noche, hasta la tarde, hasta luego,
        hasta ahora, hasta que escampe, hasta que amanezca, de vuelta, todo el rato, todo el día de hoy,
        la noche entera, toda la mañana, toda la tarde, toda la madrugada, media hora, un cuarto de hora,
        una hora, una horita, dos horas, hora y media, un par de horas, un rato largo, al sol, con el sol,
        por la lluvia, con la lluvia, de la lluvia,
        al tiro, altiro, al toque, de volada, luego luego, ahí mismo, en seguida, enseguida, de inmediato, al
        instante, ahí nomás, de una vez, estaba empezando a |llover|nevar, taba empezando a |llover|nevar,
        empezó a |llover|nevar, empezaba a |llover|nevar, está empezando a |llover|nevar, se viene el agua, se
        vino el agua, ya viene el agua, viene el agua, ya venía el agua, porque se viene el agua, que se viene
        el agua, q se viene el agua, antes de que llueva, antes de que lloviera, antes que llueva, antes de la
        lluvia, por si llueve, de orita, de ahorita, de hace rato, de hace ratito, de recién, orita, oritita,
        ahoritita mismo, hace ratito nomás, tempranito hoy, en la mañanita, esta mañanita, de mañanita, en la
        tardecita, anochecito,
        media horita, tres cuartos de hora, cuarto de hora, hora y pico, una hora y pico, una horita larga, un buen
        rato, un rato, un ratito, un ratico
    """,
    "hour": """
        a las, sobre las, desde las, hacia las, desde, sobre, a eso de las, hasta las, hacia la, hacia el,
        como a las, tipo, tipo a las, eso de las, a esto de las, casi a las, pasadas las, antes de las,
        después de las, entre las, a partir de las, hasta la, cerca de las, sobre la, a cosa de las, a les,
        son las, desde la, más o menos a las, alrededor de las
    """,
    "polite": """
        solo quería deciros que, solo quería decirles que, quería deciros que, quería decirles que,
        solo quería decir que,
        haybell,
        👍,
        jaja, jajaja, jajajaja, jeje, jejeje, 😂, 🤣, jajajaj, jajajajaj, ajaja, jajajajaja, ajajaj, jaja 😂, 🤣🤣,
        😂😂, 😹, 🤪, 😜, 😝, jejej, juas, juas juas, muahaha, jajaj, jjj, jiji, jijiji, jojo, lol, xd, xdd, xddd,
        gracias, muchas gracias, hola, buenas, buenos días, buenas tardes, buenas noches, perdón, perdona,
        oye, oíd, chicos, chicas, equipo, sí, si, vale, ok, bueno, bot, haybell, ay, uf, uy, madre mía,
        aviso, atención, nota, ojo, por cierto, un saludo, saludos, saluditos, feliz, besos, pobre,
        pobrecit|o|a, el pobre, la pobre, amigos, pues, mirad, a ver, hey, ey, al final, informe,
        novedades, por favor, cariño, hola a todos, buenas a todos, hola chicos, porfa, compañeros, eso,
        bueno pues, oye pues, buenas a todas, ronda hecha, parte de la mañana, parte de la tarde,
        aviso a todos, os cuento, novedades de la ronda, mmm, ehh, eh, em, informo, ronda tarde,
        ronda mañana, ronda de tarde, ronda de mañana, ronda de la tarde, ronda de la mañana,
        ronda de noche, a todos, para todos, explícame, explicame, decidme, gracias a todos,
        gracias chicos, gracias equipo, mil gracias, muchísimas gracias, grax, grcs, gracies, de nada,
        hola a todas, hola hola, holaa, holi, holis, hola buenas, hola equipo, hola familia, hola gente,
        hola chicas, hola bot, hola haybell, ola, oli, muy buenas, buenass, buenas gente, buenas equipo,
        buen día, buenos dias a todos, buenos días chicos, buenos días equipo, buenos días familia,
        buenos días gente, buenas tardes a todos, buenas tardes equipo, buenas noches a todos,
        buenas noches equipo, wenas, wenos días, buenas noches chicos, bon día, bo día, bos días, egun on,
        bones, saludos a todos, un abrazo, abrazo, abrazos, abrazote, besitos, besote, bss, bs, bsos,
        muacks, mua, xoxo, feliz día, buen finde, feliz finde, feliz noche, que descanséis, que descansen,
        a descansar, a dormir, a cenar, a la cama, me voy a casa, me marcho, me piro, hasta mañana a todos,
        nos vemos, chao, chau, adiós, adeu, agur, bye, ciao, ta luego, taluego, taluego chicos,
        hasta luego, familia, gente, peña, banda, tropa, compas, compañer|o|a|os|as, compis, compi, colega,
        colegas, muchach|o|a|os|as, señores, señoras, señor, señora, jefe, jefa, jefes, jefaza,
        jefecit|o|a, patrón, patrona, patroncito, don, doña, hombre, tío, tía, tíos, tías, tronco, tronca,
        macho, chaval, chavales, chavala, chavalas, nen|e|a, guapis, guapa, guapas, guapo, guapos,
        guapísima, cari, cariños, corazón, corazones, bonita, bonito, cielos, mi cielo, mi amor, mi vida,
        amor, vida, reina mía, cielo mío, churri, maja, majo, majos, majas, pana, panas, parce, parcero,
        parcera, marica, mano, mana, manito, bro, brou, brother, cuate, güey, wey, we, compadre, comadre,
        pata, causa, mae, maje, mijo, mija, mijit|o|a, mi hijo, mi hija, m'hijo, m'hija, che, boludo,
        boluda, cumpa, vos, jovenazo, ve, vea, oíme, oye chicos, oye chicas, oye gente, oye bot, eh bot,
        ey bot, epa, épale, opa, ea, eah, aja, mhm, ehm, bah, buah, bua, buf, buff, uffff, ufff, pfff,
        jaja, jajaja, jajaj, jajajaj, jjj, jeje, jejeje, jiji, jijiji, jojo, lol, xd, xdd, xddd, 😅, 🙈,
        😊, 🙂, 🙏, 🙌, 💪, ❤️, ❤, 😘, 🐴, 🐎, 🥰, 😍, ☀️, 🌧️, 🌧, ❗, ‼️, ⚠️, 🚨, 🆘, 👀, 🤷,
        🤷‍♀️, 🤦, 🤦‍♀️, 😭, 😢, 😓, 😬, 😱, 😰, 😥, 😕, 😟, 🥺, 💦, 💧, 🙄, 😡, 😤, 😴, 🤔, 😎, 😉,
        😁, 😃, 😄, 😆, 👏, 🎉, 👋, 🤗, 🫶, 💨, ☔, 🌬️, 🌡️, ✌️, 🤞, perdonad, perdonen, perdone,
        disculpa, disculpad, disculpen, disculpe, sorry, sorri, lo siento, siento molestar,
        perdón por la hora, perdón por el audio, perdón por las horas, perdón la tardanza, perdón la hora,
        a buenas horas, por cierto chicos, otra cosa, una cosa, una cosita, otra cosita, dos cosas, cosita,
        por otra parte, por otro lado, aparte, aparte de eso, a todo esto, ah, ah y, aah, ahh, oh, ok pues,
        vale pues, pues vale, bueno vale, venga va, venga pues, vamos, vale vale, okis, oki, okey, okay,
        oka, de acuerdo, perfecto, perfe, entendido, recibido, oído, oído cocina, a la orden, sip, yes,
        sí señor, sí señora, claro, clarinete, dale, dale pues, listo pues, bueno pues nada, pues nada, na,
        en fin, total, resumen, resumiendo, resumen de la ronda, resumen de hoy, resumen de la mañana,
        resumen de la noche, resumen de la tarde, en resumen, informe de la mañana, informe de la tarde,
        informe de la noche, parte, parte del día, parte de hoy, parte de la noche, parte de esta mañana,
        parte de esta noche, parte meteorológico, reporte, reporte de la mañana, reporte de la tarde,
        reporte de la noche, reporte del día, novedades de la mañana, novedades de la tarde,
        novedades de la noche, novedades de hoy, noticias, noticias frescas, última hora, update,
        actualización, actualizo, actualizo estado, aviso urgente, aviso importante, aviso para todos,
        aviso para el bot, para el bot, pal bot, nota para el bot, nota para todos, nota para el grupo,
        nota mental, importante, muy importante, urgentísimo, corred, rápido, ya estoy aquí, ya he llegado,
        ya llegué, acabo de llegar, recién llego, recién llegué, estoy en la cuadra, estoy aquí,
        ya estoy en la cuadra, estoy en el prado, estoy en ello, va por partes, por partes,
        vamos por partes, vamos a ver, veamos, a ver si me explico, te cuento, te comento, os comento,
        les comento, comento, cuento, paso a contar, para informar, para avisar, solo para avisar,
        sólo avisar, solo informar, solo decir, solo decir que, solo quería decir que, quería decir que,
        quería avisar de que, quería avisar que, decir que, deciros que, decirles que, decirte que,
        avisar que, avisaros que, avisaros de que, avisarles que, comentar que, comentaros que,
        comentarles que, informar que, informaros de que, siento decir que, me alegra decir que,
        me complace informar, para quien le interese, para quien le toque, por si alguien pregunta,
        lo dicho, lo dicho pues, como os dije, como dije, como decía, según lo hablado, como quedamos,
        tal y como quedamos, tal como quedamos, como habíamos quedado, como acordamos, como pidió,
        como pediste, como dijiste, como pedisteis, como dijisteis, como pone en la lista,
        como ponía en la lista, como dice la lista, como dice el bot, como decía el bot,
        como decía el mensaje, como decía la lista, como dijo el bot, como mandó el bot, según la lista,
        según el bot, según el plan, según lista, según plan, a petición de, por orden de, una pregunta,
        una pregunta rápida, una preguntita, una duda, o qué, o no, o cómo, o qué pasa, o no lo sabes,
        o qué onda, o q, o k, verdad, cierto, no cierto, a que sí, ¿no?, no es así, eing, o no, o qué,
        fíjese que, fíjense que, fíjate que, fijate vos que, fijate vos, fíjese, fíjense, viera que, viera usted
        que, vieran que, vieras que, la mera verdad, la neta, neta, la neta que, neta que, la purita verdad, no
        manches, no inventes, no mames, órale, ándale, ándele, híjole, oiga fíjese que, oigan fíjense que, raza,
        plebes, paisa, pariente, carnal, carnales, compita, mi gente, mi raza, muchá, vos mirá, mirá, mire vos,
        loco, locos, gurises, guachos, weón, weones, cabros, cabras chicas, chiquillos míos, guys, hey guys,
        buen día gente, buen dia a todos, buenas a toda la gente,
        buenas mi gente, quihubo, qué hubo, qué onda, qué más, qué tal todos, les reporto que, les reporto,
        reportando, reportando que, paso a informar, paso a informar que, nomás aviso que, nomás les aviso que,
        nomás aviso, nomás para avisar, nomás para avisar que, nada más reporto que, nada más aviso que, nada
        más para avisar, nada más para avisar que, nada más reporto, solo reporto que, solo les aviso que, pa
        que sepan, para que estén enterados, para que estén al tanto, quedan avisados,
        como |dice|pone|manda|decía|ponía el plan, como pone la lista, como manda la lista, como ponia la lista,
        como pone el bot, como manda el bot, tal como |dice|pone|manda |el|la |plan|lista, tal cual el plan, de
        acuerdo al plan, conforme al plan, conforme a la lista
    """,
    "body": """
        orejas, oreja, lomo, cuello, hombro, hombros, pecho, barriga, tripa, ijar, ijares, flanco, flancos,
        cuerpo, cruz, piel, grupa, codos, codo, detrás de los codos, espalda, pelo, riñones, costillas,
        detrás del codo, vientre, costados, cinchera, orejitas, las orejas, costillar, costillares, ijada,
        ijadas, axila, axilas, sobaco, sobacos, codillo, codillos, detrás del codillo, entre las patas,
        entre las piernas, entrepierna, ancas, anca, nalgas, culo, cola, crin, crines, nuca, testuz, cara,
        hocico, morro, belfos, pecheras, pechera, petral, encuentro, encuentros, paleta, paletas, espaldas,
        lomos, dorso, riñón, riñonada, lomito, lomillos, cuartos, cuartos traseros, patas, patitas,
        manos de delante, cañas, corvejones, barriguita, panza, pancita, guata, tripita, cintura, verija,
        verijas, cerviz, pescuezo, tabla del cuello, base del cuello, base de las orejas, punta de las orejas,
        detrás de las orejas, detrás de la oreja, por detrás del codo, detrás de la paleta, debajo de la crin,
        bajo la crin, bajo la silla, debajo de la silla, zona de la silla, zona de la cincha, zona de la cruz,
        zona del pecho, zona de los riñones, zona del cuello, pelaje, pellejo, cuero, capa de pelo, músculos,
        extremidades, miembros, lado izquierdo, lado derecho, costado, costado izquierdo, costado derecho,
        flanco izquierdo, flanco derecho, hombro izquierdo, hombro derecho,
        todo el pelo, toda la piel, todo el cuerpo, todo el lomo, toda la espalda, todo el costado, manos, manitas
    """,
    "under": """
        abajo, por abajo,
        bajo, debajo, debajo de, con, dentro de, por debajo, por debajo de
    """,
    "ask why": """
        por qué, porqué, por que, y por qué, a qué se debe, explica, explícame, cómo es que, por qué no, xq, pq,
        explícame por qué, dime por qué, cuéntame por qué, decidme por qué, por qué motivo, por qué razón,
        y eso por qué, y por qué no, cómo así que, y cómo así, a cuento de qué, a santo de qué,
        qué sentido tiene, con qué motivo, cuál es la razón de, cuál es el motivo de, explícanos, explíqueme,
        me explicas por qué, me puedes explicar por qué, puedes explicarme por qué, puedes explicar por qué,
        podés explicar por qué, podrías explicar por qué, dígame por qué, dinos por qué, sabes por qué,
        cómo puede ser que, por qué es que, por qué le toca, por qué le has puesto, por qué le pones,
        por qué le pone, por qué pones, por qué has puesto, por qué dices, por qué mandas, por qué pide,
        por qué pides, por qué recomiendas, por qué sale, por qué tanta, por qué tanto, por qué tan poca,
        por qué tan poco, por qué solo, por qué otra vez, y por qué solo, a qué viene, a qué viene lo de,
        de dónde sale, justifica, justifícame, razona, porq, porke, xke, xqué, por q, pork, porque motivo,
        por qué hoy, por qué va tan, por qué tan
    """,
    "ask today": """
        qué le toca a cada quien, qué le pongo a cada quien, qué se pone cada quien, qué lleva cada quien, cuál
        es el plan, qué plan hay, plan, el plan, plan de hoy, plan para hoy, plan para esta noche, qué toca, qué
        hay que poner, qué se ponen, qué llevan, qué llevan hoy, qué llevan todos, qué mantas, qué mantas tocan,
        mantas hoy, mantas de hoy, qué ponemos, qué les ponemos, qué les pongo, qué se pone cada uno, qué mantas
        pongo, qué mantas ponemos, qué manta, hoy, dime el plan, qué hay para hoy, repite el plan, qué lleva
        cada uno, qué les toca, qué se pone, qué mantas hoy, qué toca hoy, qué toca esta noche, qué manta le,
        cuál manta, enseña el plan, lista de hoy, la lista, la lista de hoy, lista para hoy, lista para esta
        noche, la lista de esta noche, dame la lista, pásame la lista, muestra la lista, enséñame la lista,
        lista por favor, repite la lista, cuál es la lista, lista de mantas, quién lleva qué, qué lleva cada
        caballo, qué se pone cada uno hoy, cuál es el plan de hoy, cuál es el plan para hoy, cuál es el plan
        para esta noche, cuál es el plan de esta noche, cuál es la lista de hoy, qué plan tenemos, qué plan
        tenemos hoy, qué plan hay hoy, qué plan hay para hoy, qué plan hay para esta noche, qué plan hay esta
        noche, plan de esta noche, plan para la noche, plan de la noche, plan de la tarde, plan de la mañana,
        plan de mantas, plan de mantas para hoy, plan de mantas para esta noche, el plan de hoy, el plan para
        hoy, el plan para esta noche, el plan de mantas, el plan de esta noche, dame el plan, dame el plan de
        hoy, dame el plan para esta noche, pásame el plan, pasa el plan, pasa la lista, pasad la lista, manda el
        plan, manda la lista, mándame la lista, mándame el plan, mande la lista, envía la lista, envíame la
        lista, envía el plan, ponme la lista, pon la lista, ponme el plan, enséñame el plan, muéstrame el plan,
        muéstrame la lista, muestra el plan, a ver la lista, a ver el plan, saca la lista, repíteme la lista,
        repíteme el plan, repite la lista de hoy, otra vez la lista, la lista otra vez, la lista por favor, el
        plan por favor, lista de la noche, lista de la tarde, lista de la mañana, lista de mantas de hoy, lista
        para la noche, la lista para hoy, la lista para esta noche, la lista de la noche, la lista de mantas, me
        pasas la lista, me pasas el plan, me das la lista, me das el plan, me dices el plan, me dices la lista,
        me puedes pasar la lista, puedes pasar la lista, puedes pasarme la lista, puedes mandar la lista, puedes
        repetir la lista, puedes repetir el plan, nos pasas la lista, dónde está la lista, dónde está el plan,
        tienes la lista, tienes el plan, dime qué mantas, dime qué mantas tocan, dime qué toca, dime qué toca
        hoy, dime qué les pongo, dime qué ponemos, dime las mantas, qué manta toca, qué manta toca hoy, qué
        manta lleva cada uno, qué manta lleva cada caballo, qué manta le toca a cada uno, qué mantas tocan hoy,
        qué mantas tocan esta noche, qué mantas para hoy, qué mantas para esta noche, qué mantas esta noche, qué
        mantas hay que poner, qué mantas hay que poner hoy, qué mantas hay que poner esta noche, qué mantas van
        hoy, qué mantas van, qué mantas van esta noche, qué mantas se ponen, qué mantas se ponen hoy, qué mantas
        se ponen esta noche, qué mantas llevan, qué mantas llevan hoy, qué mantas llevan esta noche, qué mantas
        ponemos hoy, qué mantas ponemos esta noche, qué mantas pongo hoy, qué mantas pongo esta noche, qué
        mantas les ponemos, qué mantas les pongo, qué mantas uso hoy, qué cobijas ponemos, qué cobijas pongo,
        qué cobijas tocan, qué cobijas hoy, qué cobijas para hoy, qué cobijas van, qué cobijas les pongo, qué
        cobijas les ponemos, qué cobija le, qué cobija, qué ponemos hoy, qué ponemos esta noche, qué les ponemos
        hoy, qué les ponemos esta noche, qué les pongo hoy, qué les pongo esta noche, qué hay que ponerles, qué
        hay que ponerles hoy, qué hay que ponerles esta noche, qué hay que poner hoy, qué hay que poner esta
        noche, qué se les pone, qué se les pone hoy, qué se les pone esta noche, qué se ponen hoy, qué se ponen
        esta noche, qué se ponen los caballos, qué llevan los caballos, qué llevan los caballos hoy, qué llevan
        esta noche, qué llevan todos hoy, qué llevan todos esta noche, qué se le pone a cada uno, qué le pongo a
        cada uno, qué le ponemos a cada uno, qué le toca a cada uno, qué lleva cada uno hoy, qué lleva cada uno
        esta noche, qué les toca hoy, qué les toca esta noche, qué toca esta tarde, qué toca poner, qué toca
        poner hoy, qué toca poner esta noche, qué toca ponerles, qué tocaba, qué hay hoy, qué hay que hacer hoy,
        qué hay para esta noche, qué tenemos hoy, qué tenemos para hoy, qué tenemos para esta noche, qué tenemos
        esta noche, cómo los tapo, cómo los tapamos, cómo los tapamos hoy, cómo los tapamos esta noche, cómo los
        abrigamos, cómo los abrigo, cómo van hoy, cómo van esta noche, cómo van de mantas, cómo vamos de mantas,
        cómo vestimos, cómo vestimos a los caballos, cómo los visto, cómo los vestimos, quién lleva qué hoy,
        quién lleva qué esta noche, quién se pone qué, quién va con qué, quién va con qué hoy, recuérdame el
        plan, recuérdame la lista, recuérdanos el plan, hoy qué toca, hoy qué ponemos, hoy qué mantas, hoy qué
        llevan, esta noche qué toca, esta noche qué ponemos, esta noche qué mantas, y hoy qué, y hoy qué toca, y
        esta noche qué, y esta noche qué toca, ropa de hoy, ropa para hoy, ropa para esta noche, qué ropa
        llevan, qué ropa les pongo, qué ropa toca, qué ropa hoy, mantas para hoy, mantas para esta noche, mantas
        esta noche, mantas de esta noche, las mantas de hoy, muéstreme la lista, muéstreme el plan, enséñeme la
        lista, enséñeme el plan, páseme la lista, páseme el plan, deme la lista, deme el plan, mándeme la lista,
        mándeme el plan, mándenme la lista, envíeme la lista, regáleme la lista, me regala la lista, me regala
        el plan, me pasa la lista, me pasa el plan, me manda la lista, me da la lista, me muestra la lista, me
        enseña la lista, repítame la lista, repita la lista, repita el plan, dígame el plan, dígame la lista,
        dígame qué toca, dígame qué les pongo, dígame qué cobijas, pásenme la lista, pásenme el plan, la lista
        de cobijas, lista de cobijas, plan de cobijas, el plan de cobijas, bot lista, bot plan, lista porfa, la
        lista porfa, plan porfa, el plan porfa, el plan pa hoy, la lista pa hoy, plan pa hoy, plan pa esta
        noche, lista pa esta noche, qué le pongo a los caballos, qué le pongo a todos, qué les pongo a los
        caballos, qué se le pone a los caballos, qué llevan puesto hoy, qué llevan puesto todos, cómo toca hoy,
        cómo toca tapar, cómo tocan hoy, mantas que tocan, mantas que tocan hoy,
        qué les toca |ponerse|llevar|usar, qué les toca ponerse hoy, qué se van a poner, qué van a llevar, qué
        van a usar, qué le |ponemos|pongo|echamos|echo a |todos|todas|cada uno|cada quien, qué les
        |echamos|echo|metemos|meto|coloco|dejo|dejamos, qué les |echamos|echo|ponemos|pongo a |todos|todas, qué
        van a |llevar|usar|ponerse |hoy|todos, qué usan hoy, qué usan esta noche, qué usan todos, qué usa cada
        uno, qué usa cada quien, con qué van hoy, con qué van esta noche, con qué van todos, con qué los tapo,
        con qué los tapamos, con qué los |cobijo|cobijamos|visto, con qué duermen, con qué duermen hoy, con qué
        duermen esta noche, cómo los cobijo, cómo los cobijamos, cómo los dejamos, cómo los dejamos hoy, cómo
        los dejamos esta noche, qué cobija va, qué cobijas se ponen, qué mantas se usan, qué se usa hoy, qué
        abrigo va hoy, qué abrigo les pongo, qué capas van hoy, qué va hoy, qué va esta noche, qué va para hoy,
        qué va para esta noche, qué toca ponerse, qué toca para hoy, qué toca para esta noche, qué toca pa hoy,
        qué toca pa la noche, qué toca a la noche,
        con qué va, con qué anda, con qué duerme, con qué sale, con qué queda, qué le va hoy, qué le toca
        ponerse, qué le toca usar, qué le toca llevar
    """,
    "ask left": """
        quién me queda por tapar, quiénes me quedan por tapar, quién queda por tapar, cuáles me quedan por
        tapar, qué caballos faltan por cambiar, quién falta por cambiar, quiénes faltan por cambiar, cuáles
        faltan por cambiar, cuáles me quedan por hacer, cuáles me quedan, cuáles me faltan, cuáles quedan por
        hacer, qué caballos me quedan, qué caballos me faltan, a quién me falta, quiénes me faltan, quiénes me
        quedan, quién falta, quién queda, quiénes faltan, quiénes quedan, quién falta por hacer, quién queda por
        hacer, qué queda, qué falta, quiénes quedan por hacer, cuántos quedan, cuántos faltan, queda alguno,
        falta alguno, falta alguien, queda alguien, están todos, están todos listos, están todos hechos, quién
        no está hecho, quién no está listo, qué caballos quedan, qué caballos faltan, queda alguien por hacer, a
        quién le falta, cuáles faltan, cuáles quedan, ya están todos, quién está sin hacer, queda alguno por
        hacer, falta alguno por hacer, queda algún caballo, queda algún caballo por hacer, falta algún caballo,
        quedan caballos, quedan caballos por hacer, qué caballos faltan por hacer, quién no está tapado, quién
        falta todavía, quién queda todavía, quién falta aún, quiénes no están hechos, a quién no he hecho, me
        falta alguien, me falta alguno, he hecho todos, los hemos hecho todos, cuántos faltan por hacer, cuántos
        quedan por hacer, cuáles no están hechos, cuántos me faltan, quién me falta, quiénes me faltan, qué
        queda por hacer, qué falta por hacer, qué nos queda, qué nos queda por hacer, qué nos falta, qué nos
        falta por hacer, qué me queda, qué me queda por hacer, qué me falta, qué me falta por hacer, qué
        caballos quedan por hacer, qué caballos faltan por tapar, qué caballos quedan por tapar, qué caballos
        nos quedan, qué caballos nos faltan, qué caballos me quedan, qué caballos me faltan, qué caballos no
        están hechos, qué caballos no están listos, qué caballos no están tapados, qué caballos están sin hacer,
        qué caballos están sin tapar, cuál falta, cuál queda, cuál queda por hacer, cuál falta por hacer, cuáles
        faltan por hacer, cuáles quedan por hacer, cuáles nos faltan, cuáles nos quedan, cuáles me faltan,
        cuáles me quedan, cuáles están sin hacer, cuántos caballos quedan, cuántos caballos faltan, cuántos
        caballos quedan por hacer, cuántos caballos faltan por hacer, cuántos nos quedan, cuántos nos faltan,
        cuántos me quedan, cuántos me faltan por hacer, cuántos hay sin hacer, cuántos llevamos, cuántos van,
        cuántos van hechos, cuántos hay hechos, quién falta por tapar, quién falta por abrigar, quién falta por
        cambiar, quién falta por vestir, quién queda por tapar, quién queda por cambiar, quién queda por vestir,
        quién queda sin hacer, quién queda sin tapar, quién queda sin manta, quién queda pendiente, quién falta
        pendiente, quién está pendiente, quiénes están pendientes, quién está sin tapar, quién está sin cambiar,
        quién está sin manta todavía, quién sigue sin hacer, quién sigue sin tapar, quién sigue sin manta, quién
        nos falta, quién nos queda, quién me queda, quién me queda por hacer, quién me falta por hacer, quiénes
        nos faltan, quiénes nos quedan, quiénes me quedan, quiénes faltan por hacer, quiénes quedan por tapar,
        quiénes faltan por tapar, quiénes faltan todavía, quiénes faltan aún, quiénes no están listos, quiénes
        no están tapados, quiénes están sin hacer, quiénes siguen sin hacer, quién falta hoy, quién falta esta
        noche, quién falta ya, quién queda ya, quién queda aún, quién no está hecho todavía, quién no está hecho
        aún, quién no está cambiado, quién no está vestido, quién no tiene la manta, quién no tiene la manta
        puesta, quién no lleva la suya, quién no lleva lo que toca, a quién falta, a quién le falta la manta, a
        quién le falta manta, a quién nos falta, a quién me falta, a quién hay que hacer todavía, a quién hay
        que tapar todavía, a quién falta por tapar, a quién falta por poner manta, a quién falta ponerle manta,
        a quién le falta por poner, a quién no hemos hecho, a quién no se ha hecho, falta alguien por hacer,
        falta alguien por tapar, falta alguno por tapar, falta algún caballo por hacer, falta alguien todavía,
        falta alguien aún, falta alguno todavía, falta alguno más, falta alguien más, falta alguna, falta mucho,
        falta algo por hacer, faltan caballos, faltan muchos, faltan caballos por hacer, falta todavía alguien,
        queda alguien por tapar, queda alguno por tapar, queda algún caballo por tapar, queda alguno sin hacer,
        queda alguien sin hacer, queda alguien sin tapar, queda alguno sin tapar, queda alguien más, queda
        alguno más, queda alguien todavía, queda alguno todavía, queda algo por hacer, queda algo pendiente, hay
        alguien por hacer, hay alguno sin hacer, hay alguno por hacer, hay alguien sin hacer, hay algún caballo
        sin hacer, hay algún caballo sin tapar, hay alguien sin tapar, hay alguno sin tapar, hay alguno
        pendiente, hay alguien pendiente, me queda alguien, me queda alguno, nos queda alguien, nos queda
        alguno, nos falta alguien, nos falta alguno, me queda alguno por hacer, me falta alguno por hacer, nos
        falta alguno por hacer, nos queda alguno por hacer, está todo hecho, está todo listo, está ya todo
        hecho, están ya todos hechos, están ya todos listos, están ya todos tapados, están todos tapados, están
        todos vestidos, están todos cambiados, están todas hechas, se ha quedado alguien sin hacer, se ha
        quedado alguno sin hacer, se nos ha olvidado alguno, se me ha olvidado alguno, se me olvida alguien, se
        me olvida alguno, nos hemos dejado alguno, me he dejado alguno, me he dejado a alguien, lo que falta,
        qué pendientes hay, pendientes, qué hay pendiente, qué hay sin hacer, qué hay por hacer, qué está
        pendiente, qué está sin hacer, dime quién falta, dime quién queda, dime quiénes faltan, dime los que
        faltan, dime los que quedan, cómo va la ronda, cómo va la lista, cómo vamos, cómo vamos con la ronda,
        cómo llevamos la ronda, qué queda de la ronda, qué falta de la ronda, qué queda de la lista, qué falta
        de la lista, lista de pendientes, a |quién|quiénes|cuáles les |falta|faltan, a quiénes le falta, a
        cuáles le falta, a |quién|quiénes|cuáles no |cambiaron|taparon|pusieron|cambiamos, a quién no le han
        |puesto|cambiado|echado, a quiénes no les han |puesto|cambiado|echado, quién más falta, quiénes más
        faltan, quién más queda, cuántos faltan todavía, alguien sin cambiar, falta alguien por cambiar, falta
        alguien por vestir, falta alguien por abrigar, falta alguien por cobijar, falta alguno por
        |cambiar|vestir|abrigar|cobijar, queda alguien por |cambiar|vestir|abrigar|cobijar, queda alguno por
        |cambiar|vestir|abrigar|cobijar, queda alguien sin |cambiar|vestir|abrigar|cobijar, queda alguno sin
        |cambiar|vestir|abrigar|cobijar, quién quedó pendiente, quiénes quedaron pendientes, quién quedó sin
        |cambiar|tapar|hacer, quiénes quedaron sin |cambiar|tapar|hacer, qué falta por cambiar, qué queda por
        cambiar, cuál me queda, cuál me falta, cuál nos falta, cuál nos queda, a |quién|quiénes |falta|faltan
        todavía, qué caballos |faltan|quedan |todavía|aún, qué caballos |faltan|quedan |todavía|aún por
        |hacer|cambiar|tapar, qué |bichos|animales faltan,
        |quién|quiénes |queda|quedan|falta|faltan |todavía|aún por hacer, |quién|quiénes
        |queda|quedan|falta|faltan pendientes
    """,
    "ask drying": """
        qué cosas se están secando, qué cosas están |secándose|mojadas, qué cosas siguen mojadas, qué cosas hay
        |secando|secándose, qué mantas siguen mojadas, qué se está secando, qué está secándose, qué hay
        secándose, qué está mojado, qué sigue mojado, qué hay mojado, qué mantas están mojadas, qué se seca, qué
        hay en el secadero, qué está seco, hay algo secándose, qué mantas se están secando, qué hay tendido, hay
        algo mojado, qué queda mojado, qué mantas están secas, qué mantas siguen mojadas, qué falta por secar,
        qué está tendido, qué tenemos secando, qué hay secando, qué hay en la lavadora, qué está en la lavadora,
        qué mantas hay en la lavadora, qué mantas se están lavando, qué está húmedo, qué mantas están húmedas,
        qué forros están mojados, qué impermeables están mojados, qué mantas hay mojadas, hay mantas mojadas,
        alguna manta mojada, qué no está seco, qué sigue sin secar, qué mantas no están secas, qué se está
        lavando, cuáles están mojadas, qué se está secando ahora, qué tenemos secándose, qué tenemos en el
        secadero, qué tenemos tendido, qué tenemos mojado, qué hay mojado ahora, qué hay en el tendedero, qué
        hay colgado, qué mantas hay secándose, qué mantas hay secando, qué mantas hay tendidas, qué mantas hay
        en el secadero, qué mantas hay en el tendedero, qué mantas hay húmedas, qué mantas hay sucias, qué
        mantas hay lavándose, qué mantas tenemos mojadas, qué mantas tenemos secando, qué mantas tenemos
        secándose, qué mantas no puedo usar, qué mantas no se pueden usar, qué mantas están secándose, qué
        mantas están tendidas, qué mantas están en el secadero, qué mantas están en la lavadora, qué mantas
        están lavándose, qué mantas están en lavado, qué mantas están ya secas, qué mantas se han secado, qué
        mantas se han mojado, qué mantas siguen húmedas, qué mantas siguen sin secar, qué mantas siguen
        secándose, qué mantas faltan por secar, qué mantas quedan por secar, qué mantas quedan mojadas, qué
        mantas quedan húmedas, qué cobijas están mojadas, qué cobijas están secas, qué cobijas siguen mojadas,
        qué cobijas se están secando, qué cobijas hay secándose, qué cobijas están húmedas, qué ropa está
        mojada, qué ropa hay mojada, qué ropa hay secándose, qué ropa sigue mojada, qué está mojado todavía, qué
        está mojado aún, qué está húmedo todavía, qué sigue húmedo, qué sigue secándose, qué sigue en la
        lavadora, qué sigue tendido, qué queda húmedo, qué queda por secar, qué queda por secarse, qué queda
        tendido, qué queda secando, qué falta por secarse, qué no se ha secado, qué no se ha secado todavía, qué
        no está seco todavía, qué no está seco aún, qué está seco ya, qué está ya seco, qué se ha secado, qué se
        ha secado ya, qué se secó, qué tenemos seco, qué hay seco, qué hay ya seco, qué forros están secos, qué
        forros hay mojados, qué impermeables hay mojados, qué impermeables están secos, cuáles están secándose,
        cuáles siguen mojadas, cuáles están húmedas, cuáles están secas, cuáles se han secado, cuáles no están
        secas, cuál está mojada, cuál sigue mojada, cuál está seca, cuáles hay mojadas, cuáles tenemos mojadas,
        cuántas mantas hay mojadas, cuántas mantas están mojadas, cuántas hay mojadas, hay algo mojado todavía,
        hay algo secando, hay algo tendido, hay algo en el secadero, hay algo en la lavadora, hay algo húmedo,
        hay alguna manta mojada, hay alguna manta secándose, hay alguna manta húmeda, hay alguna manta en la
        lavadora, hay alguna mojada, hay mantas secándose, hay mantas secando, hay mantas húmedas, hay mantas en
        la lavadora, hay mantas tendidas, hay ropa mojada, hay ropa secándose, hay ropa tendida, queda alguna
        manta mojada, queda alguna mojada, queda algo mojado, queda algo por secar, queda algo húmedo, queda
        algo secándose, quedan mantas mojadas, quedan mantas por secar, alguna manta secándose, algo mojado,
        algo secándose, lista de mantas mojadas, lista de mojadas, mantas mojadas, mantas secándose, cómo va el
        secadero, cómo va el secado, cómo van las mantas mojadas, cómo van las que se están secando, cómo está
        el secadero,
        qué hay colgado |secando|secándose, qué hay |tendido|colgado afuera, qué tenemos colgado, qué está
        colgado, qué hay a secar, qué está a secar, qué pusieron a secar, qué se puso a secar, qué quedó mojado,
        qué quedó |tendido|colgado, qué quedó secando, qué quedó secándose, qué mantas quedaron mojadas, qué
        cobijas quedaron mojadas, qué hay mojado todavía, qué hay que secar, qué falta que se seque, qué no se
        secó, qué no ha secado, qué anda mojado, qué anda secándose, qué |cobijas|capas|mantas|cosas|frazadas
        andan |mojadas|secándose, qué |cobijas|capas|frazadas hay |colgadas|tendidas|mojadas, qué capas están
        mojadas, qué capas están secándose, qué capas están húmedas, qué capas están tendidas, qué capas están
        colgadas, qué frazadas están mojadas, qué frazadas están secándose, qué frazadas están húmedas, qué
        frazadas están tendidas, qué frazadas están colgadas, qué cosas están húmedas, qué cosas están tendidas,
        qué cosas están colgadas, qué |capas|frazadas se están secando, hay |cobijas|capas|frazadas
        |mojadas|secándose|tendidas|colgadas, hay algo colgado, hay algo mojado afuera
    """,
    "ask state": """
        cómo está, cómo están, cómo sigue, cómo va, qué tal, qué tal está, qué tal va, estado de, estado,
        cómo anda, qué tal anda, cómo se encuentra, qué sabemos de, cómo lo lleva, cómo lleva, qué tal sigue,
        info de, háblame de, qué tal están, y qué tal, cómo amaneció, cómo ha amanecido, cómo pasó la noche,
        cómo está hoy, cómo ha pasado la noche, qué hay de, novedades de, qué se sabe de, cómo le va a,
        qué pasa con, cómo se ve, noticias de, hay noticias de, cómo lo ves a, en qué estado está,
        en qué estado están, en qué estado anda, qué estado tiene, cuál es el estado de, estado actual de,
        dime el estado de, dime cómo está, dime cómo va, dime cómo sigue, dime qué tal, dígame cómo está,
        me dices cómo está, sabes cómo está, sabes algo de, sabéis cómo está, se sabe algo de, sabemos algo de,
        alguna novedad de, alguna novedad con, alguna noticia de, novedades con, novedades sobre,
        hay novedades de, hay novedades con, hay algo de, qué novedades hay de, qué noticias hay de,
        qué noticias tienes de, qué sabes de, qué sabéis de, qué me dices de, qué me cuentas de,
        qué nos cuentas de, cuéntame de, cuéntame cómo está, cómo anda hoy, cómo andan, cómo siguen, cómo van,
        cómo va hoy, cómo sigue hoy, cómo está ahora, cómo está ya, cómo está ahora mismo,
        cómo está de temperatura, cómo va de temperatura, cómo está de calor, cómo está de frío,
        cómo está lo de, cómo va lo de, cómo va con, cómo anda de, cómo ves a, cómo veis a, cómo la ves a,
        cómo habéis visto a, cómo ha pasado el día, cómo ha pasado el día hoy, cómo pasó el día, cómo ha estado,
        cómo ha estado hoy, cómo estuvo, cómo estuvo hoy, cómo estuvo la noche, cómo ha dormido, cómo durmió,
        cómo ha ido, cómo ha ido hoy, cómo ha ido la noche, cómo le ha ido a, cómo le va, cómo le fue a,
        cómo ha amanecido hoy, cómo amaneció hoy, cómo amanece, cómo se ha levantado, cómo se levantó,
        cómo se encuentra hoy, cómo se siente, cómo se siente hoy, cómo lleva la noche, cómo lleva el frío,
        cómo lo lleva hoy, cómo lo está llevando, cómo tenemos a, cómo tenemos, cómo tienes a, cómo quedó,
        cómo ha quedado, qué tal ha pasado la noche, qué tal pasó la noche, qué tal la noche de,
        qué tal el día de, qué tal hoy, qué tal anda hoy, qué tal ha amanecido, qué tal amaneció,
        qué tal va hoy, qué tal está hoy, qué tal lo lleva, qué tal se encuentra, qué tal ves a, qué tal con,
        qué hay con, qué onda con, qué onda, qué pasó con, qué ha pasado con, qué es de, y qué es de,
        y cómo está, y cómo va, y cómo sigue, y cómo anda, cómo estará, informe de, informe sobre, parte de,
        ficha de, dame info de, dame el estado de, información de, información sobre, cm está, cm sta, kmo está,
        cmo está, komo está, ktal, k tal, q tal,
        qué hubo con, qué hubo de, qué fue de, cómo va la, cómo va el, cómo anda la, cómo anda el, cómo sigue
        la, cómo sigue el, cómo está de, cómo me la ven, cómo me lo ven, cómo amaneció la, cómo amaneció el,
        cómo la ven a, cómo lo ven a, cómo la viste a, cómo lo viste a
    """,
    "ask forecast": """
        cómo viene el pronóstico, cómo viene la helada, qué tiempo da, qué tiempo da para mañana, qué tiempo
        dan, qué tiempo dan para mañana, qué tiempo hace mañana, qué tiempo nos espera, qué dan para mañana, qué
        dan de tiempo, qué tiempo hace, qué tiempo va a hacer, qué tiempo hará, previsión, la previsión,
        pronóstico, el tiempo, qué dice la previsión, cuánto frío va a hacer, qué temperatura va a hacer, qué
        temperatura hará, cuánto frío hará, cuál es la previsión, qué viene esta noche, cuál es el pronóstico,
        cuánto frío hará esta noche, qué previsión hay, qué mínima, cuánto viento, qué tiempo tenemos, qué
        tiempo nos espera, cómo viene la noche, qué mínima hay, cuánto baja la temperatura, cómo va a estar el
        tiempo, qué se espera esta noche, qué tan frío va a estar, qué tan frío, qué tan frío estará, va a estar
        frío, qué tiempo va a hacer mañana, qué tiempo hace esta noche, qué tiempo hará mañana, qué tiempo hará
        esta noche, qué tiempo va a hacer esta noche, tiempo para esta noche, tiempo esta noche, tiempo mañana,
        previsión para esta noche, previsión para mañana, pronóstico para esta noche, pronóstico para mañana,
        pronóstico de hoy, qué temperatura hará esta noche, qué temperatura va a hacer esta noche, a cuánto
        baja, a cuánto baja esta noche, a cuánto va a bajar, cuánto va a bajar, qué mínima hay esta noche,
        cuánto viento va a hacer, cómo viene el tiempo, qué frío va a hacer, cómo está el tiempo, el tiempo de
        mañana, el tiempo para mañana, qué tiempo, qué tiempo viene, qué tiempo va a hacer hoy, qué tiempo hará
        hoy, qué tiempo hace hoy, qué tiempo hace mañana, qué tiempo tenemos hoy, qué tiempo tenemos mañana, qué
        tiempo tenemos esta noche, qué tiempo nos espera hoy, qué tiempo nos espera mañana, qué tiempo nos
        espera esta noche, qué tiempo dan, qué tiempo dan hoy, qué tiempo dan mañana, qué tiempo dan esta noche,
        qué tiempo dan para hoy, qué tiempo dan para mañana, qué tiempo dan para esta noche, qué tiempo dan para
        el finde, qué tiempo hay, qué tiempo se espera, qué tiempo se espera hoy, qué tiempo se espera para
        mañana, qué clima, qué clima va a hacer, qué clima hay, qué clima viene, qué clima hará, cómo está el
        clima, cómo va a estar el clima, cómo va a estar mañana, cómo va a estar esta noche, cómo va a estar
        hoy, cómo va a estar el día, cómo viene mañana, cómo viene la semana, cómo viene de frío, cómo viene la
        noche de frío, cómo se presenta la noche, cómo se presenta el día, cómo se presenta la tarde, cómo se
        presenta mañana, cómo se presenta el tiempo, cómo pinta mañana, cómo pinta hoy, cómo pinta esta noche,
        cómo pinta la semana, cómo estará el tiempo, cómo estará el clima, cómo estará la noche, cómo estará
        mañana, cómo estará esta noche, cómo será la noche, clima, el clima, clima para hoy, clima para mañana,
        clima para esta noche, clima de hoy, clima de mañana, clima de esta noche, tiempo de mañana, tiempo para
        mañana, tiempo para hoy, tiempo de hoy, tiempo hoy, tiempo de esta noche, el tiempo de hoy, el tiempo
        para hoy, el tiempo para esta noche, el tiempo de esta noche, el tiempo esta noche, el tiempo mañana,
        previsión de hoy, previsión para hoy, previsión de esta noche, previsión de mañana, previsión del
        tiempo, previsión meteorológica, previsión noche, la previsión de hoy, la previsión para hoy, la
        previsión de esta noche, la previsión para esta noche, la previsión de mañana, la previsión para mañana,
        la previsión del tiempo, dame la previsión, dime la previsión, dime el tiempo, dame el tiempo, dame el
        pronóstico, dime el pronóstico, pásame la previsión, pronóstico para hoy, pronóstico de esta noche,
        pronóstico de mañana, pronóstico del tiempo, el pronóstico, el pronóstico para esta noche, el pronóstico
        para mañana, el pronóstico de hoy, el pronóstico de esta noche, qué dice el pronóstico, qué dice el
        tiempo, qué dice la previsión para hoy, qué dice la previsión para esta noche, qué dice la aemet, qué
        dice aemet, qué dice el parte, qué dan para hoy, qué dan para mañana, qué dan para esta noche, qué dan
        hoy, qué dan mañana, qué dan esta noche, qué da el tiempo, qué pronóstico hay, qué pronóstico tenemos,
        qué previsión tenemos, qué previsión hay para hoy, qué previsión hay para esta noche, qué previsión hay
        para mañana, qué temperatura, qué temperatura hay, qué temperatura hace, qué temperatura tenemos, qué
        temperatura va a haber, qué temperatura habrá, qué temperatura habrá esta noche, qué temperatura hará
        mañana, qué temperatura va a hacer mañana, qué temperatura dan, qué temperatura dan para esta noche, qué
        temperatura se espera, qué temperaturas, qué temperaturas dan, qué temperaturas hay, qué temperaturas
        tenemos, qué temperaturas esperamos, qué temperaturas vamos a tener, qué mínima dan, qué mínima dan esta
        noche, qué mínima dan para esta noche, qué mínima va a haber, qué mínima tenemos, qué mínima habrá, qué
        mínima hará, qué mínima se espera, qué mínimas, qué mínimas dan, qué máxima, qué máxima dan, cuál es la
        mínima, cuál es la mínima de hoy, cuál es la mínima de esta noche, cuál va a ser la mínima, mínima de
        esta noche, mínima para esta noche, mínima prevista, la mínima de esta noche, cuántos grados, cuántos
        grados hay, cuántos grados hace, cuántos grados hará, cuántos grados hará esta noche, cuántos grados va
        a hacer, cuántos grados va a hacer esta noche, cuántos grados baja, cuántos grados bajo cero, cuántos
        grados vamos a tener, cuántos grados dan, cuántos grados dan esta noche, a cuántos grados, a cuántos
        grados baja, a cuántos grados va a bajar, a cuántos grados bajamos, a cuántos grados estamos, a cuánto
        bajamos, a cuánto bajamos esta noche, a cuánto vamos a bajar, a cuánto va a bajar esta noche, a cuánto
        va a bajar la temperatura, a cuánto baja la temperatura, a cuánto baja la noche, a cuánto estamos, hasta
        cuánto baja, hasta cuánto baja esta noche, hasta cuánto va a bajar, hasta cuánto va a bajar esta noche,
        cuánto baja esta noche, cuánto baja, cuánto va a bajar esta noche, cuánto va a bajar la temperatura,
        cuánto bajará, cuánto bajará esta noche, cuánto frío, cuánto frío hace, cuánto frío viene, cuánto frío
        va a hacer esta noche, cuánto frío va a hacer mañana, cuánto frío hará mañana, cuánto frío dan, cuánto
        frío se espera, cuánta lluvia, cuánta lluvia dan, cuánta lluvia va a caer, cuánta lluvia viene, cuánto
        va a llover, cuánto va a llover esta noche, cuánto va a llover hoy, cuánto llueve, cuánto viento hace,
        cuánto viento hará, cuánto viento hará esta noche, cuánto viento va a hacer esta noche, cuánto viento
        dan, cuánto viento viene, cuánto va a helar, cuánto va a nevar, cuánta nieve, cuánta nieve dan, cuándo
        llueve, cuándo va a llover, cuándo empieza a llover, cuándo para de llover, cuándo deja de llover,
        cuándo va a parar de llover, cuándo escampa, cuándo se va el frío, cuándo llega el frío, cuándo viene el
        frío, cuándo hiela, cuándo va a helar, cuándo nieva, a qué hora llueve, a qué hora va a llover, a qué
        hora empieza a llover, a qué hora para de llover, a qué hora deja de llover, qué viene mañana, qué
        viento hará, qué viento va a hacer, qué viento dan, qué viento hay, qué frío hará, qué frío va a hacer
        esta noche, qué frío hará esta noche, qué tal el tiempo, qué tal el tiempo para esta noche, qué tal el
        tiempo mañana, qué tal va a hacer, qué tan fría va a estar la noche, qué tan frío va a hacer, qué tan
        frío va a estar esta noche, qué tan frío va a ponerse, qué tan fuerte va a llover, qué se espera hoy,
        qué se espera mañana, qué se espera para hoy, qué se espera para mañana, qué se espera para esta noche,
        qué nos espera esta noche, qué noche nos espera, qué noche viene, dan lluvia, dan lluvia para, dan agua
        para, dan nieve para, dan helada para,
        cómo |viene|pinta la |noche|tarde|mañana|madrugada, cómo |viene|pinta el |día|tiempo|clima|finde, qué
        tal |viene|pinta la |noche|tarde|madrugada, cómo se |pone|viene|ve la |noche|tarde|madrugada, cómo va a
        |estar|amanecer la |noche|mañana|madrugada, a cuánto baja hoy, cuánto va a hacer de frío, qué tanto frío
        va a hacer, qué tanto va a bajar, de cuánto es la mínima,
        qué tiempo nos va a hacer, qué tiempo nos va a hacer |hoy|mañana, qué tiempo nos va a hacer esta |noche|tarde,
        qué tiempo nos |hará|tocará|toca, qué tiempo vamos a tener, qué tiempo vamos a tener |hoy|mañana, qué tiempo
        vamos a tener esta |noche|tarde, qué tiempo tendremos, qué tiempo tendremos |hoy|mañana, qué tiempo tendremos
        esta |noche|tarde, qué frío nos va a hacer, qué noche nos va a hacer, qué tiempo nos viene
    """,
    "ask forecast marked": """
        va a llover, va a llover esta noche, va a helar, va a helar esta noche, va a nevar, lloverá,
        lloverá esta noche, helará, helará esta noche, nevará, hará mucho frío, hará frío, hará frío esta noche,
        va a hacer frío, va a hacer frío esta noche, hará viento, va a hacer viento, llueve esta noche,
        hiela esta noche, va a nevar esta noche, va a estar frío, va a llover hoy, va a llover mañana,
        va a llover mucho, va a llover mucho esta noche, va a llover hoy o no, va a llover o no,
        va a llover o qué, va a llover por la noche, va a llover esta tarde, va a seguir lloviendo,
        seguirá lloviendo, lloverá hoy, lloverá mañana, lloverá mucho, lloverá por la noche, lloverá esta tarde,
        llueve hoy, llueve mañana, llueve esta tarde, llueve por la noche, va a caer agua,
        va a caer agua esta noche, va a caer mucha agua, va a caer nieve, va a caer una helada,
        va a caer helada, caerá helada, caerá nieve, va a helar mucho, va a helar hoy, va a helar mañana,
        va a helar fuerte, helará hoy, helará mañana, hiela hoy, hiela mañana, hiela por la noche,
        nieva esta noche, nieva mañana, nieva hoy, nevará esta noche, nevará mañana, nevará hoy, va a nevar hoy,
        va a nevar mañana, va a nevar mucho, va a hacer mucho frío, va a hacer mucho frío esta noche,
        va a hacer frío hoy, va a hacer frío mañana, va a hacer más frío, va a hacer mucho viento,
        va a hacer viento esta noche, va a hacer viento mañana, va a hacer aire, va a hacer bueno,
        va a hacer bueno mañana, va a hacer malo, va a hacer calor, va a hacer calor mañana, va a hacer sol,
        va a bajar de cero, va a bajar de cero esta noche, va a bajar mucho, va a bajar mucho la temperatura,
        va a bajar la temperatura, va a bajar mucho esta noche, baja de cero, baja de cero esta noche,
        bajará de cero, bajará de cero esta noche, bajamos de cero, bajamos de cero esta noche,
        bajaremos de cero, baja mucho esta noche, baja mucho, hará mucho frío esta noche, hará frío hoy,
        hará frío mañana, hará mucho viento, hará viento esta noche, hará viento mañana, hará calor, hará bueno,
        hará sol, hace frío mañana, hace frío esta noche, hace viento mañana, hace viento esta noche,
        viene frío, viene mucho frío, viene frío esta noche, viene helada, viene lluvia, viene agua,
        viene agua esta noche, viene nieve, viene tormenta, viene viento, viene mal tiempo, viene ola de frío,
        hay helada esta noche, hay helada, hay heladas, hay lluvia esta noche, hay lluvia mañana,
        hay viento esta noche, hay nieve, hay tormenta, hay alerta, hay alerta amarilla, hay aviso,
        hay riesgo de helada, hay probabilidad de lluvia, habrá helada, habrá helada esta noche, habrá heladas,
        habrá lluvia, habrá lluvia esta noche, habrá viento, habrá viento esta noche, habrá tormenta,
        habrá nieve, va a haber helada, va a haber heladas, va a haber helada esta noche, va a haber lluvia,
        va a haber viento, va a haber viento esta noche, va a haber tormenta, va a haber tormenta esta noche,
        va a haber nieve, se espera lluvia, se espera helada, se espera nieve, se espera viento,
        se espera mucho frío, se esperan heladas, se esperan lluvias, esperan lluvia, dan lluvia,
        dan lluvia hoy, dan lluvia mañana, dan lluvia esta noche, dan agua, dan agua esta noche, dan nieve,
        dan nieve esta noche, dan helada, dan helada esta noche, dan heladas, dan viento, dan viento esta noche,
        dan tormenta, dan mucho frío, dan frío, dan frío esta noche, dan bueno mañana,
        va a estar frío esta noche, va a estar fría la noche, va a estar muy frío, va a estar helado,
        va a estar muy fría la noche, estará frío, estará frío esta noche, estará muy frío, se viene frío,
        se viene el frío, se viene agua, se viene lluvia, se viene tormenta, se viene helada, va a escampar,
        va a parar de llover, va a dejar de llover, va a parar la lluvia, escampará, para de llover
    """,
    "ask help": """
        qué te puedo preguntar, qué te puedo decir, haybell ayuda, ayuda haybell,
        qué cosas entiende el bot, qué entiende el bot, qué sabe hacer el bot, qué le puedo decir al bot,
        qué le puedo preguntar al bot, qué cosas entiendes, qué se le puede decir al bot,
        ayuda, qué puedes hacer, qué sabes hacer, cómo funcionas, cómo funciona, cómo funciona esto,
        qué entiendes, comandos, instrucciones, qué te puedo decir, qué te puedo preguntar, qué puedo decirte,
        cómo se usa, qué puedo preguntar, qué puedo escribir, qué puedo escribirte, cómo se hace, cómo te uso,
        cómo uso esto, para qué sirves, qué haces tú, cómo aviso, qué cosas entiendes, ayúdame,
        cómo funciona el bot, ayuda por favor, necesito ayuda contigo, qué más puedes hacer,
        qué más sabes hacer, qué cosas puedes hacer, qué cosas sabes hacer, qué cosas sabes,
        qué es lo que sabes hacer, qué es lo que puedes hacer, qué puedes hacer por mí, qué haces, qué eres,
        quién eres, qué eres tú, tú qué haces, tú qué sabes hacer, tú para qué sirves, para qué sirve esto,
        para qué sirve este bot, para qué sirve el bot, para qué vales, cómo se usa esto, cómo se usa el bot,
        cómo se usa este bot, cómo se utiliza, cómo se utiliza esto, cómo se usa haybell, cómo uso el bot,
        cómo uso este bot, cómo te utilizo, cómo te usamos, cómo usamos esto, cómo usar el bot, cómo usar esto,
        cómo va esto, cómo va el bot, cómo va este bot, cómo iba esto, cómo funcionaba esto, cómo funcionas tú,
        cómo funciona este bot, cómo funciona haybell, cómo funciona lo del bot, cómo te digo las cosas,
        cómo te digo algo, cómo te digo, cómo te lo digo, cómo te hablo, cómo te escribo, cómo te aviso,
        cómo te pregunto, cómo te informo, cómo te cuento las cosas, cómo te cuento, cómo hablo contigo,
        cómo hay que hablarte, cómo hay que escribirte, cómo hay que decirte las cosas,
        cómo tengo que decirte las cosas, cómo tengo que escribirte, cómo se te habla,
        cómo se te dicen las cosas, cómo se te dice, cómo se te avisa, cómo me entiendes, cómo lo digo,
        cómo lo escribo, cómo digo que, cómo escribo que, cómo informo, cómo reporto, cómo doy el parte,
        cómo lo pongo, cómo se hace esto, cómo se deshace, cómo deshago, cómo se borra, cómo borro, cómo anulo,
        qué te digo, qué te puedo escribir, qué te puedo pedir, qué puedo pedirte, qué puedo preguntarte,
        qué puedo decir, qué hay que decirte, qué hay que escribir, qué hay que escribirte,
        qué tengo que escribir, qué tengo que escribirte, qué tengo que decirte, qué tengo que poner,
        qué te tengo que decir, qué cosas te puedo decir, qué cosas te puedo preguntar,
        qué cosas puedo preguntarte, qué cosas puedo decirte, qué palabras entiendes, qué palabras sabes,
        qué frases entiendes, qué mensajes entiendes, qué órdenes entiendes, qué comandos hay,
        qué comandos tienes, qué comandos entiendes, lista de comandos, los comandos, dame los comandos,
        dime los comandos, qué opciones hay, qué opciones tienes, opciones, menú, manual, instrucciones del bot,
        instrucciones de uso, dame instrucciones, dime cómo funcionas, dime qué puedes hacer,
        dime qué sabes hacer, explica cómo funcionas, explícame cómo funcionas, explícame cómo funciona,
        explícanos cómo funcionas, explícame cómo va esto, me explicas cómo funcionas, me explicas cómo va esto,
        me ayudas, me puedes ayudar, puedes ayudarme, ayúdanos, échame una mano, help, socorro bot, ayudame bot,
        no sé cómo va esto, no sé cómo funciona esto, no sé usar esto, no sé usarte, no entiendo cómo va esto,
        no entiendo cómo funciona, qué idiomas hablas, qué sabes,
        y vos bot qué sabés hacer, y vos qué sabés hacer, y vos qué hacés, y tú qué sabes hacer, y tú bot qué sabes
        hacer, bot qué sabes hacer, vos qué sabés hacer, y usted qué sabe hacer, y este bot qué sabe hacer, qué sabe
        hacer este bot, qué sabe hacer usted, y este bot qué hace, qué sabés hacer bot, y el bot qué sabe hacer, qué
        otra cosa sabes hacer, y tú qué haces bot, qué cosas podés hacer,
        qué sabes hacer exactamente, qué puedes hacer exactamente, qué haces exactamente, exactamente qué sabes hacer,
        qué sabes hacer en realidad, qué eres capaz de hacer, de qué eres capaz, cuéntame qué sabes hacer,
        y tú qué |sabes|puedes hacer exactamente, tú qué |sabes|puedes hacer exactamente, y tú bot qué |sabes|puedes
        hacer exactamente, y tú qué haces exactamente, tú qué haces exactamente, qué haces tú exactamente
    """,
    "ask wearing": """
        hay que tapar tanto, tapar tanto, hay que abrigar tanto, abrigar tanto,
        lleva, llevan, lleva puesto, pongo, ponemos, le pongo, le ponemos, se pone, le toca, toca, va a llevar,
        tiene puesto, llevará, hay que ponerle, ponerle, debería llevar, tiene que llevar, viste, hay que poner,
        le corresponde, conjunto, ropa, se le pone, llevar, lleva encima, atuendo, equipo, capas, lleva puesta,
        lleva puestas, lleva puestos, llevan puesto, llevan puesta, lleva ahora, llevan ahora, lleva hoy,
        llevaba, va con, van con, anda con, tiene puesta, tiene puestas, tiene encima, tienen puesto, trae,
        trae puesto, trae puesta, traen, trae encima, usa, usan, va a usar, usará, debe llevar, debe usar,
        debería usar, tendría que llevar, hay que echarle, echarle, le echo, le echamos, echo, echamos, le meto,
        le metemos, meterle, le planto, le coloco, colocarle, le pongo hoy, le pongo esta noche, le ponen,
        le pones, le pone, pones, poner, le vamos a poner, vamos a ponerle, le voy a poner, se pone hoy,
        se pone esta noche, le toca hoy, le toca esta noche, le tocaba, tocaba, le va, le va mejor,
        le viene bien, le conviene, conviene, vestimenta, modelito, look, outfit, indumentaria, vestuario, tapo,
        tapamos, lo tapo, la tapo, lo tapamos, la tapamos, lo abrigo, la abrigo, lo visto, la visto, duerme con,
        dormir con, sale con, salir con, recomiendas, recomiendas para, aconsejas, aconsejas para,
        me recomiendas, sugieres, propones, dejo, le dejo, le dejo puesto, le dejamos,
        le dejamos puesto, tan abrigad|o|a, tan tapad|o|a,
        |ponerse|usar|llevar puesto, ponerles, echarles, está usando, están usando, anda usando, tan
        cobijad|o|a|os|as, tanto encima, tan arropad|o|a|os|as, tan vestid|o|a|os|as, tan forrad|o|a, tan
        abrigadit|o|a, hay que cobijar tanto,
        usa hoy, usan hoy, lleva esta noche, usa esta noche, va a usar hoy, va a llevar hoy, se va a poner,
        lleva a la noche,
        con qué va, con qué anda, con qué duerme, con qué sale, con qué queda, le toca ponerse, le toca usar, le
        toca llevar,
        cambiar, cambiarse, cambiarle, cambiarles, tapar, taparle, vestir, abrigar, cobijar, ponerse
    """,
    "ask tonight": """
        esta noche, hoy, esta tarde, esta mañana, pongo, ponemos, toca, le toca, mañana, le pongo, le ponemos,
        hay que ponerle, debería llevar, va a llevar, llevará, se pone, para, tiene que llevar, para esta noche,
        para hoy, para la noche, para mañana, mañana por la mañana, mañana por la noche, por la noche,
        a la noche, le pongo hoy, le pongo esta noche, hay que poner, ponerle, le echo, le echamos, le meto,
        le metemos, le planto, hay que echarle, echarle, poner, le vamos a poner, vamos a ponerle,
        le voy a poner, se le pone, se pone hoy, se pone esta noche, le toca hoy, le toca esta noche, le tocaba,
        le corresponde, debe llevar, debe usar, tendría que llevar, va a usar, usará, necesita, le va,
        le va mejor, le conviene, conviene, tapo, tapamos, lo tapo, la tapo, lo tapamos, la tapamos, lo abrigo,
        la abrigo, lo visto, la visto, duerme con, dormir con, sale con, recomiendas, aconsejas, me recomiendas,
        sugieres, le pones, le ponen, le pone, pones, esta madrugada, de cara a la noche, de cara a esta noche,
        le dejo, dejo, le dejamos, lleva hoy, llevan hoy, usa hoy, usan hoy, lleva esta noche, usa esta noche,
        va a usar hoy, va a llevar hoy, se va a poner, lleva a la noche
    """,
    "ask ready": """
        cuándo estará, cuándo está, ya está, cuándo, estará, cuánto falta, cuánto le falta, cuánto tarda, ya,
        cuándo estarán, cuándo están, cuándo va a estar, cuándo van a estar, cuándo estará ya, cuándo tendremos,
        cuándo tenemos, cuándo podemos usar, cuándo puedo usar, cuándo se puede usar, cuándo se podrá usar,
        cuándo podré usar, cuándo se seca, cuándo se secará, cuándo se va a secar, cuándo acaba de secarse,
        cuándo termina de secarse, cuándo terminará de secarse, para cuándo, para cuándo estará,
        para cuándo está, para cuándo va a estar, estará ya, estarán, estará para esta noche, está ya, están ya,
        ya están, ya estará, sigue, siguen, cuánto le queda, cuánto le queda a, cuánto le queda para,
        cuánto queda para, cuánto falta para, cuánto le falta a, cuánto le falta para, cuánto va a tardar,
        cuánto tardará, cuánto tarda en, cuánto tarda en secarse, cuánto tarda en secar,
        cuánto tardará en secarse, cuánto va a tardar en secarse, a qué hora estará, a qué hora está, todavía,
        aún, se seca, se secará, se habrá secado, se ha secado ya, se secó ya, va a estar, llegará a,
        se puede usar, se puede poner, se puede usar ya, puedo usar, podemos usar, puedo poner,
        cuánto le falta, cuánto falta, le falta mucho, falta mucho, para secarse, por secarse,
        secarse
    """,
    "asked": "",
    "sky": """
        vaya rasca, menuda rasca, qué rasca, vaya frío, menudo frío,
        de la lluvia, de lluvia, por la lluvia,
        tiempo, pronóstico, previsión, temperatura, temperaturas, lluvia, lloverá, llover, nieve, nevará, nevar,
        helada, helará, helar, hielo, viento, ráfagas, tormenta, frío, calor, grados, mínima, bajo cero,
        granizo, clima, lluvias, llueva, lloviendo, chubascos, chaparrón, chaparrones, aguacero, aguaceros,
        tromba, diluvio, diluviar, gotas, gota, chispear, llovizna, lloviznar, orbayu, nieves, nevada, nevadas,
        heladas, helada fuerte, escarcha, escarchar, hielos, niebla, nieblas, bruma, vientos, ventisca,
        ventarrón, vendaval, viento fuerte, mucho viento, aire, racha, rachas, brisa, sol, soleado, nubes,
        nublado, nuboso, despejado, cielo, tormentas, trueno, truenos, rayos, granizada, granizar, temporal,
        borrasca, dana, ola de frío, ola de calor, frente, frente frío, alerta, aviso, avisos, fresco, fresca,
        fría, frío frío, calorcito, mínimas, máxima, máximas, cero, bajo 0, menos, negativo, negativos, humedad,
        probabilidad, riesgo, previsto, prevista, bajar, baja, bajará, bajan, bajamos, subir, sube, subirá,
        caer, cae, caerá, hiela, nieva, llueve, escampar, escampa, parar, agua, solete, meteo, meteorología,
        meteorológico, aemet
    """,
    "ahead": """
        esta noche, mañana, luego, más tarde, esta tarde, este fin de semana, el fin de semana,
        la semana que viene, esta semana, mañana por la mañana, mañana por la noche, por la noche, hoy,
        de noche, la madrugada, los próximos días, hoy por la noche, hoy por la tarde, hoy a la noche,
        hoy a la tarde, a la noche, a la tarde, a la mañana, en la noche, en la tarde, en la mañana,
        en la madrugada, esta madrugada, de madrugada, por la mañana, por la tarde, al amanecer, al alba,
        al anochecer, al atardecer, pasado, pasado mañana, mañana temprano, mañana en la mañana,
        mañana en la noche, mañana en la tarde, mañana a primera hora, mañana por la tarde, a primera hora,
        a última hora, la noche, de la noche, de la mañana, la semana, la semana próxima, la próxima semana,
        estos días, próximos días, el lunes, el martes, el miércoles, el jueves, el viernes, el sábado,
        el finde, este finde, finde, en las próximas horas, las próximas horas, próximas horas, en un rato,
        dentro de un rato, en breve, ahora, ahorita, al rato, más adelante, para hoy, para mañana,
        para esta noche, para la noche, para el finde, para la semana, para esta tarde, para la tarde,
        toda la noche, todo el día, todo el finde, toda la semana, durante la noche, durante el día,
        esta noche otra vez, noche, mañana noche, para la madrugada, de la madrugada, para la mañana,
        pa la noche, pa mañana, pa hoy, pa esta noche, para el sábado, para el lunes, para el martes,
        para el miércoles, para el jueves, para el viernes
    """,
    "a horse": """
        hay uno, hay una, uno de ellos, una de ellas, hay un caballo, hay una yegua,
        caballo, yegua, poni, burro, burra, potro, potra, alazán, uno de los caballos, una de las yeguas,
        caballito, caballos, jaca, jaco, yegüita, yegüilla, el poni, ponis, burrito, burrita, pollino, mula,
        mulo, potrillo, potrilla, potranca, potrico, potrito, potrita, alazana, castaño, tordo, torda, tordillo,
        tordilla, bayo, baya, overo, overa, pinto, pinta, palomino, semental, capón, rocín, penco, jamelgo,
        garañón, una yegua, un caballo, un poni, algún caballo,
        alguna yegua, el abuelo de la cuadra, la abuela de la cuadra
    """,
    "subject": """
        yo, ella, nosotros, nosotras, ellos, ellas
    """,
    "own": """
        la suya, el suyo, las suyas, los suyos, la propia, el propio, suya, suyo, suyas, suyos,
        el suyo de siempre, la suya de siempre, la de siempre, el de siempre, la suya propia, el suyo propio,
        la que le toca, la que le tocaba
    """,
    "only": """
        sola, solita, nada más, y nada más, a secas,
        nomás, nomas,
        solo, solamente, únicamente, nada más, nomás, no más que, solito, solita, exclusivamente, nada más que,
        tan solo,
        puro, pura, puros, puras, puritito, puritita, purito
    """,
    "toward": """
        a, al, para, pa, p'al, pal, pa'l
    """,
    "part of day": """
        mañana, mañanas, tarde, tardes, noche, madrugada, mediodía, noches, madrugadas, al mediodía
    """,
    "not behind": "",
    "undo verb": """
        borra, bórralo, bórrame, borrar, borrad, anula, anular, anulad, ignora, ignorad, olvida,
        olvidad, olvídate de, quita, quitad, descarta, cancela, deshaz, elimina, retira,
        no hagáis caso a, no hagas caso a, no hagáis caso de, no contéis con,
        deshacé, sacá, ignoren, borren, bórreme, bórrenme, anulen, cancelen, quiten, quítame, quítale, eliminen,
        deshaga, deshagan, olviden, tacha, tachen, táchale, revertí, revierte, revierta, reviertan, revoca,
        desestima, desestimen, no tomes en cuenta, no tomen en cuenta, no hagas caso de, no hagan caso a, no
        hagan caso de, no pelen, no le hagan caso a, no le hagas caso a, échale para atrás, echa para atrás,
        volvé atrás, vuelve atrás, volvé para atrás, regresa, retiren
    """,
    "what was said": """
        lo que dije, lo que he dicho, lo que acabo de decir, lo que puse, lo que he puesto,
        lo que acabo de poner, lo que escribí, lo que he escrito, lo que mandé, lo que he mandado,
        lo último, lo último que dije, lo último que he dicho, lo último que puse,
        lo último que he puesto, lo de antes, lo de ahora, lo anterior, mi último mensaje,
        el último mensaje, mi mensaje, mi mensaje anterior, el mensaje anterior, el mío de antes,
        el último,
        lo que puse recién, lo recién, lo de recién, lo último mío, lo mío, lo mío último, lo mío de recién, lo
        que acabo de mandar, lo que acabo de escribir, lo que anoté, lo que reporté, lo que registré, lo que
        avisé, lo que te dije, lo que les dije, lo que os dije, lo que te puse, lo que te mandé, lo último que
        mandé, lo último que escribí, lo último que anoté, lo último que te dije, lo último que te puse, lo
        último que reporté, lo que dije recién, lo que dije antes, lo que puse antes, lo que escribí recién, lo
        que escribí antes, lo que mandé recién, lo que mandé antes, lo que dije hace rato, lo que puse hace
        rato, mi último reporte, mi reporte, el último reporte, mi último aviso, mi aviso, mi mensaje de recién,
        el mensaje de recién
    """,
    "afterwards": """
        hay que, hace falta, poned, pon, ponedle, ponle, ponedla, voy a, vamos a, dejad, deja, dejadla,
        déjala, no la pongáis, no lo pongáis, no usar, no usarla, habrá que, habría que, necesita,
        por favor, avisad, venid, bajad, llamad,
        alguien vaya, que alguien vaya, alguien que vaya, alguien venga, que alguien venga, alguien que venga,
        vengan, vayan, vayan a ver, vayan a verl|o|a, alguien que l|o|a vea, alguien que l|o|a revise, que
        alguien l|o|a vea, que alguien l|o|a revise, alguien revise, revisen, revísenl|o|a, alguien puede,
        pueden venir, puede alguien, llamen, llamen al, avisen, avísenle, avísale, ocupa, ocupamos, urge,
        échenle, échenle un ojo, échale un ojo, que nadie se l|o|a ponga, que nadie l|o|a use, no se l|o|a
        pongan, no l|o|a usen, no l|o|a pongan, nadie se l|o|a ponga, nadie l|o|a use
    """,
    "relative": """
        que, quien, quienes, el que, la que, el que si, la que si, los que si, el que sí, la que sí
    """,
    "that of": """
        la, el, las, los
    """,
    "that rug of": """
        la, las
    """,
    "or": """
        o, o que, o si, u, o era, o quizá, o a lo mejor, o igual, o tal vez
    """,
    "reason": """
        como
    """,
    "girth": """
        cincha, cinchas
    """,
    "either way": "",
    "felt": """
        acabo de meterl|e|es la mano, meterl|e|es la mano, metiéndol|e|es la mano,
        le meto la mano, les meto la mano, le meto mano, meto la mano debajo, le pongo la mano, le paso la mano,
        toqué a, toqué, he tocado a, he tocado, palpé a, palpé, los toqué, las toqué, la toqué, lo toqué,
        metí la mano, le metí la mano, he metido la mano, le he metido la mano, he metio la mano, le he metio la mano,
        les metí la mano, pasé la mano, le pasé la mano, les pasé la mano, he pasado la mano, le he pasado la mano,
        puse la mano, le puse la mano, le toqué debajo, metí mano, metí la mano debajo, le metí la mano debajo,
        le metí la mano por debajo, mano por debajo, mano debajo
    """,
    "my horses": """
        mis dos, mis tres, mis caballos, mis yeguas, mis dos caballos, los míos, las mías, los dos míos, las dos mías
    """,
    "ponies": """
        ponis, los ponis, todos los ponis, los dos ponis, todos los ponies, los ponies
    """,
    "not anywhere": """
        por ningún lado, por ninguna parte, por ningún sitio, en ningún lado, en ninguna parte, en ningún sitio
    """,
    "wholly": "todo, toda, to, toa",
    "company": "yeguas, castrados, potrillos, manada",
    "drying": """
        secando, secándose, se está secando, se están secando, por secar, sin secar, tendid|o|a|os|as,
        en el tendedero, en el guadarnés, en la cuerda, en el tendal, en el radiador, al lado de la estufa
    """,
    "animal": """
        perr|o|a|os|as, perrit|o|a|os|as, gat|o|a|os|as, gatit|o|a|os|as, gallina|s, oveja|s, cordero|s, cabra|s,
        vaca|s, ternero|s, cerdo|s, chancho|s, conejo|s, cachorro|s
    """,
    "thanks": """
        gracias, gracias a, muchas gracias, hola, buenos días, buenas, buenas noches, saludos a, perdón,
        feliz año a, feliz año, feliz navidad, feliz navidad a, felices fiestas, felices fiestas a, enhorabuena a
    """,
    "pony": "el poni, la poni, al poni, el poney, el pony",
    "donkey": "el burro, la burra, al burro, el burrito, la burrita",
}
