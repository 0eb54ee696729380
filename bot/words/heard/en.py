"""English, as barns speak it."""

PHRASES = {
    "sign sweating": """
        sweaty, sweating, sweating up, sweated up, sweated, sweat marks, sweat patches, sweat, a
        sweat, in a sweat, dripping with sweat, dripping in sweat, dripping sweat, soaked in sweat,
        soaked with sweat, drenched in sweat, wet with sweat, wet from sweat, damp with sweat, damp
        from sweat, sweaty wet, lathered, lathered up, in a lather, broken out in a sweat, broke out
        in a sweat, sweating buckets, sweaty mess, sweat dripping, sweat running, sweat pouring, sweat
        on, perspiring, perspired, sweat on her neck, sweat on his neck, damp with perspiration, sweat
        under the rug, sweat under her rug, sweat under his rug, bit of a sweat, in a muck sweat, a
        bit of a sweat on, dry sweat marks, dried sweat marks, dried sweat, dry sweat,
        sweated through, sweating through, sweated right through, wringing wet with sweat,
        wringing with sweat, soaking with sweat, soaked through with sweat, dripping wet with sweat,
        sopping with sweat, a sweat on, got a sweat on, sweaty saddle patch, sweating like,
        sweating like a, sweating like an,
        sweating like the, sweating like mad, sweating like crazy, sweating like anything,
        sweating like a pig, sweating like a good un, sweating like a racehorse,
        sweating like billy o, sweating his, sweating her, sweating their, sweaty as,
        sweaty as hell, sweaty as anything, sweaty as a pig, as sweaty as, sweatier than earlier,
        sweatier than this morning, sweatier than yesterday, sweaty patches, sweat patch,
        patches of sweat, patchy sweat, sweat stains, sweat all over, covered in sweat,
        coated in sweat, caked in sweat, crusted with sweat, crusty with sweat, pouring with sweat,
        pouring sweat, running with sweat, running in sweat, rolling with sweat, rolling in sweat,
        swimming in sweat, bathed in sweat, black with sweat, white with sweat, dark with sweat,
        foaming with sweat, foamy with sweat, foamy sweat, lathering, lathering up,
        lathered in sweat, lathered with sweat, all of a lather, in a muck lather, in a right lather,
        in a right sweat, in a proper sweat, in a cold sweat, a cold sweat, cold sweat, muck sweat,
        a right sweat on, right sweat on, a proper sweat on, a bit of sweat, bit of sweat,
        a little sweat, tiny bit of sweat, slight sweat, light sweat, heavy sweat, damp sweat,
        a light sweat, a slight sweat, in a light sweat, worked up a sweat, working up a sweat,
        raised a sweat, up in a sweat, gone sweaty, sweat on his chest, sweat on her chest,
        sweat on chest, sweat behind the elbows, sweat behind his elbows, sweat behind her elbows,
        sweat behind his ears, sweat behind her ears, sweat behind ears, sweat between his legs,
        sweat between her legs, sweat between his back legs, sweat between her back legs,
        sweat on the neck, sweat on his flanks, sweat on her flanks, sweat on his back,
        sweat on her back, sweat on his shoulders, sweat on her shoulders, sweat down his,
        sweat down her, sweat beads, beads of sweat, beading sweat, sweated up badly,
        sweated up a treat, sweated up something rotten, sweated up a bit, got herself in a sweat,
        got himself in a sweat, worked herself into a sweat, worked himself into a sweat,
        worked herself into a lather, worked himself into a lather, sweated out, sweated her,
        sweating cobs, sweating bullets, sweating up a storm,
        sweating up something awful, sweating heavily, sweating profusely, wet through with sweat,
        wet through from sweat,
        soaked from sweat, soaked through from sweat, soaking from sweat, clammy with sweat,
        clammy and sweaty, sticky with sweat, sticky and sweaty,
        hot and sweaty, warm and sweaty, sweaty and hot, will not stop sweating, can not stop sweating,
        would not stop sweating, has not stopped sweating, is sweat, have sweat, has sweat,
        was sweat, full of sweat, all sweat,
        sweat a lot, sweating a lot, sweats now, is sweats, in sweat, salt marks, sweat salt,
        salty sweat marks, sweats a lot today, sweaty neck, sweaty chest, sweaty flanks,
        sweaty shoulders, sweaty back, sweaty armpits, sweaty elbows, sweaty under there,
        sweating under there, sweaty as they come, sweaty as you like, wet with the sweat,
        soaked with the sweat
    """,
    "sign hot": """
        overheated, overheating, too hot, too warm, hot under the rug, hot under her rug, hot under
        his rug, hot under the blanket, hot under her blanket, hot under his blanket, hot to the
        touch, burning up, melting, far too hot, way too hot, much too hot, overdressed, over rugged,
        overrugged, boiling hot, roasting hot, cooking under there, cooking under her rug, cooking
        under his rug, baking under there, roasting under there, boiling under there, uncomfortably
        hot, uncomfortably warm, hot under there, hot and bothered, hot to touch, cooked,
        cooking in that, boiling in that, roasting in that, hot as anything, overheated badly,
        over heating, over heated, to hot to touch, too hot to touch, hot as hell, hot as an oven,
        hot as a furnace, hot as fire, hot as blazes, as hot as, hot  like an oven,
        like an oven under there, like a furnace under there,
        like a sauna under there, on the warm side, bit on the warm side, a bit on the warm side,
        on the hot side, bit on the hot side, a bit on the hot side, feeling the heat, boiling under,
        roasting under, cooking under, baking under, steaming under, sweltering in that,
        sweltering under, melting in that, mafting, overblanketed,
        over blanketed, too many rugs on, too many layers on, too many blankets on, too much rug on,
        too much blanket on, one rug too many, one layer too many, one too many layers,
        too warmly dressed, too warm in that, too warm in there, too warm under there,
        too hot under there, too hot in there, much too warm, far too warm, way too warm,
        a bit too warm, bit too warm, a little too warm, a bit too hot, bit too hot,
        a touch too warm, slightly too warm, slightly too hot, tad too warm, tad warm, a tad warm,
        uncomfortably toasty, too toasty, overly warm, overly hot, warmer than i would like,
        warmer than she should be, warmer than he should be, warmer than ideal, radiating heat,
        giving off heat, chucking out heat, throwing off heat, heat coming off, puffing with heat,
        panting with the heat, panting with heat, blowing with heat, hot ears, ears are hot,
        ears hot, hot under the collar rug, hot under the covers, hot hot hot, boilin,
        roastin, red hot, piping hot, scorching hot, scorching, baking hot, steaming hot,
        hot with the rug, hot with her rug, hot with his rug, hot in her rug, hot in his rug,
        hot in the rug, hot in that rug, hot in this rug, hot in her blanket, hot in his blanket,
        hot in the blanket, much hot, too much hot, too much heat,
        has too much heat
    """,
    "sign shivering": """
        shivering, shivery, shivers, shiver, the shivers, shivered, trembling, quivering, shaking with
        cold, shaking from cold, shaking from the cold, shaking with the cold, shaking like a leaf,
        shaking all over, shaking in the cold, quaking, teeth chattering, shakes with cold, shaking,
        shaking badly, shaking so badly, shakey, shaky, having the shakes, got the shakes,
        the shakes, vibrating with cold, quivering with cold, shuddering, juddering,
        shaking with fever, teeth are chattering, teeth are about chattering,
        teeth are practically chattering, tremble, tremble with cold, begun to tremble,
        begun to shiver, started to shiver, started to tremble, shivvering, shivring,
        shaking like jelly, shaking like a jelly, shaking like a, shaking like, shivering like a,
        shivering like, trembling like a leaf, trembling like a, trembling all over,
        shivering all over, shivering her socks off, shivering his socks off, shivering her butt off,
        shivering his butt off, shivering her arse off, shivering his arse off, shivering away,
        shaking away,
        shaking wi t'cold, shivering with cold, shivering with the cold,
        shivering from cold, shivering from the cold, trembling with the cold, trembling wi cold,
        chittering, chittering with cold, dithering with cold, dithering with the cold, diddering,
        teeth chattering away,
        teeth going, all of a shiver, all of a tremble, all a tremble, a shiver on, got a shiver on,
        got a shiver, having a shiver, bit of a shiver, a bit of a shiver, a wee shiver,
        slight shiver, a slight shiver, little shivers, small shivers, muscle tremors, tremors,
        having tremors, muscles twitching with cold, twitching with cold, jittering with cold,
        rattling with cold, shuddering with cold, shuddering with the cold, will not stop shivering,
        can not stop shivering,
        would not stop shivering,
        could not stop shivering, will not stop shaking,
        can not stop shaking, will not stop trembling, cannot stop trembling, has not stopped shivering,
        have not stopped shivering, shivers a lot, shivers now, is shiver, is shivers, he shiver,
        she shiver, have shivers, has shivers, shake a lot, is shake, is shaking a lot,
        shake from cold, shake from the cold, shake with cold, she shake, he shake, shaking of cold,
        shivering of cold, trembling of cold, tremble of cold, she tremble, he tremble,
        getting the shivers, has the shivers, proper shivers, brrr shivering, quaking with cold,
        a quivering wreck, quivering all over, shivered all night, been shivering
    """,
    "sign cold": """
        cold to the touch, tucked up and cold, chilled to the bone, cold behind the elbow, too cold,
        cold under the rug, cold under her rug, cold under his rug, cold under the blanket, cold under
        her blanket, cool behind the elbow, cool to the touch, cold underneath, under rugged,
        underdressed, cold ears, ears are cold, ears are freezing, freezing ears, cold at the girth,
        cold behind the ears, cold behind her elbow, cold behind his elbow, frozen stiff, frozen
        solid, nithered, perished, feeling the cold, feeling cold, on the cool side,
        on the cold side, bit on the cool side, cold as ice, as cold as ice, cold as stone,
        cold as hell, cold as the grave, cold  like ice, like icicles, like ice blocks,
        like ice cubes, like blocks of ice, like an ice cube, like an ice block, icy ears,
        ears like ice, ice cold ears, ears icy, ears icy cold, ears freezing, ears frozen, ears cold,
        ears stone cold, ears freezing cold, stone cold ears, frozen ears, cold under there,
        freezing under there, cold underneath his rug, cold underneath her rug,
        cold underneath the rug, cold under her blankets, cold under his blanket, cold to touch,
        freezing to touch, freezing to the touch, icy to the touch, cool to touch, chilled through,
        chilled right through, frozen through, frozen to the core, frozen to the bone,
        cold to the bone, cold right through, cold to the core, chilled to the marrow,
        starved  starved wi cold, starving with cold, nithered to death,
        perished with cold, perished with the cold, blue with cold,
        stiff with cold, hunched up with cold, hunched with cold, tucked up with cold,
        tucked up with the cold, huddled up cold, miserable with cold, miserable with the cold,
        not warm enough, not very warm, not as warm as, no longer warm, under blanketed,
        underblanketed, under dressed, not enough rug on, not enough rugs on,
        not enough layers on, needs another layer she is cold, a bit too cool, too cool, too chilly,
        far too cold, way too cold, much too cold, a bit too cold, bit too cold, a little too cold,
        slightly too cold, a tad cold, tad cold, tad chilly, a tad chilly, on the chilly side,
        bit on the cold side, a bit on the cold side, a bit on the cool side,
        a bit on the chilly side, feeling the chill, feels the chill now, cauld, frozzen,
        cold behind elbow, cold behind the elbows, cold behind her elbows, cold behind his elbows,
        cold behind her ears, cold behind his ears, cold at the shoulder, cold at the withers,
        cold at base of ears, cold at the base of her ears, cold at the base of his ears,
        cold on the shoulder, cold on the chest, is with cold, with cold,
        has a lot of cold, have much cold, has much cold, too much cold, suffering with the cold,
        suffering from the cold, freezin, freezin cold, freezing her bits off,
        freezing his bits off, freezing her butt off, freezing his butt off, freezing his nuts off,
        freezing her arse off, freezing his arse off, fluffed up and cold, coat standing on end,
        coat is standing on end, hair standing on end, coat fluffed up cold,
        colder than she should be, colder than he should be, colder than i would like, gone cold,
        has gone cold, gone a bit cold
    """,
    "sign comfortable": """
        comfortable, comfy, snug, cosy, cozy, toasty, warm and dry, dry and warm, nice and warm,
        lovely and warm, nice and dry, warm enough, just right, nice and toasty, warm and comfortable,
        warm and cosy, toasty warm, good temperature, perfect temperature, right temperature, good
        temp, perfect temp, warm and happy, happy and warm, dry and comfortable, dry and happy, snug
        as a bug, warm as toast, toasty and dry, nice and cosy, nice and comfy, warm but not sweaty,
        neither hot nor cold, not too hot not too cold, not too hot and not too cold, not too hot or
        cold, temperature is good, temp is good, good temperature under the rug, warmed up nicely,
        warmed up now, warmed up again, has warmed up, have warmed up, is warming up, cooled down now,
        has cooled down, have cooled down, cooled off, no sweat on, no sweat under, no sign of sweat,
        no signs of sweat, not a drop of sweat, no sweat at all on, warmed through, lovely
        temperature, warm and snug, a good temperature, a nice temperature, all well with, all fine
        with, all good with, no problems with, no problem with, no issues with, nothing wrong with,
        nothing to report on, all ok with, all okay with, warm underneath, warm under the rug,
        warm under her rug, warm under his rug, nice temp, temp good, temp fine, temp is fine,
        temp spot on, happy as larry, happy as a clam, happy as can be, warm and well, no sweat,
        happier, much happier, a lot happier, loads happier, more comfortable, much more comfortable,
        comfy as, comfy cosy, comfy and warm, comfy and dry, toasty n warm, warm n comfy, snug and warm,
        snug and dry, snug as anything, snug as a bug in a rug, snug as bugs, cosy as anything,
        cosy and dry, cosy and warm, cozy and warm, cozy and dry, toasty as toast, as warm as toast,
        as snug as a bug, as snug as, like toast, warm and toasty, warm and fine, dry and cosy,
        dry and comfy, dry and fine, dry and snug, dry and toasty, nice temperature,
        correct temperature, ideal temperature, normal temperature under, lovely temp, grand temp,
        the right temperature, just the right temperature, spot on temperature, temperature spot on,
        temperature perfect, temperature good, temperature fine, temp perfect, temp is perfect,
        temp is spot on, temp just right, temps good, temps fine, warm as a bun, warm as a pie,
        warm not hot, warm but not hot, warm but not sweating, warm but not too warm,
        warm without being hot, warm without sweating, warm no sweat, warm and no sweat,
        warm and not sweaty, warm not sweaty, not hot not cold, not cold not hot,
        neither too hot nor too cold, neither hot or cold, neither cold nor hot,
        neither warm nor cold, no heat no cold, not too warm not too cold,
        neither sweating nor shivering, no sweating no shivering, cwtched up, cwtched up warm,
        nice and snug, lovely and snug, lovely and dry, lovely and toasty, lovely and cosy,
        lovely and comfy, good and warm, plenty warm, plenty warm enough,
        perfectly warm, quite warm enough, happy and dry, happy and comfortable, happy and comfy,
        content and warm, settled and warm, warm and settled,
        warm and content, warm inside, warm behind the elbow, warm behind the elbows,
        warm behind her elbow, warm behind his elbow, warm ears, ears warm, ears are warm,
        ears nice and warm, ears lovely and warm, ears toasty, ears toasty warm, warm to the touch,
        warm to touch, warm under there, warm under her blanket, warm under his blanket,
        warm under the blanket, nice under her rug, nice under his rug, nice under the rug,
        lovely under there, lovely under her rug, lovely under his rug,
        lovely under the rug, fine under there, fine under her rug, fine under his rug,
        fine under the rug, good under her rug, good under his rug,
        ok under her rug, ok under his rug, ok under the rug, happy under her rug,
        happy under his rug, perfect under there, perfect under the rug, perfect under her rug,
        perfect under his rug, has stopped shivering, has stopped sweating, has stopped shaking,
        stopped shivering, stopped sweating, stopped shaking, stopped trembling, quit shivering,
        quit sweating, quit shaking, done shivering, no longer shivering, no longer sweating,
        no longer sweaty, no longer cold, no longer hot, no more shivering, no more sweating,
        shivering has stopped, shivers have stopped, sweating has stopped, shivering is gone,
        shivers are gone, shivers have gone, shivering gone, shiverings stopped, shivers gone,
        dried off nicely, dried off now, has dried off, has dried out nicely, dried off a treat,
        all dried off, no sweat marks, no sweat whatsoever, no sweat anywhere, no trace of sweat,
        zero sweat, not a bead of sweat, not sweating or shivering, not hot or cold, not a shiver,
        not a shiver in sight,
        no shivers, no shivering, no complaints from, no concerns with, no worries with,
        no dramas with, no issues at all with, no problems at all with, no problems whatsoever with,
        nothing to report with, nowt wrong with, nowt up with, nothing up with,
        nothing the matter with, happy as a pig in muck, happy as a pig in mud,
        happy as a sandboy, bright as a button,
        warmed back up, warmed up a treat, warmed up fine, warmed up lovely, warming up nicely,
        warming up now, warming through, warming back up, thawed out, has thawed out,
        cooled down nicely, cooled off nicely, cooled right down, cooled back down, cool and dry,
        cool and comfortable, cooled down fine, settled down nicely, dried and comfy, is  ok now,
        perked up, over his colic, over her colic, colic has passed
    """,
    "sign rubbed": """
        rubbed, rubs, a rub, rub, rub marks, rub mark, rubbed raw, rubbing, rubbed bald, rug rub, rug
        rubs, blanket rub, blanket rubs, chafed, chafing, galled, rubbed sore, raw shoulder, raw
        shoulders, raw withers, sore withers, bald patch on the shoulder, hair rubbed off, bald patch,
        bald patches, bald spot, bald spots, hair loss, losing hair, lost hair, rug sore, rug sores,
        blanket sore, blanket sores, sore shoulder, sore shoulders, sore from the rug, sore from her
        rug, sore from his rug, raw patch, raw patches, raw spot, raw spots, sore patch, sore spot, a
        sore on, sores on, hair worn off, hair is worn, hair rubbed, rubbed bare, rubs her raw, rubs
        him raw, pressure sore, pressure sores, rug burn, chafe, chafe marks, a raw shoulder,
        sore wither, raw wither, rubbed wither, sore on the wither, sore on her wither,
        sore on his wither, sore point of shoulder, sore from the big, are sore from, is sore from,
        rubbed his shoulders, rubbed her shoulders, rubbed chest,
        rubbed withers, rubbed raw patch, rubbed her chest, rubbed his chest, rubbed her withers,
        rubbed his withers, chafed raw, chafed shoulder, chafed shoulders, chaffed, chaffing, galls,
        gall mark, gall marks, rug marks, rug mark, blanket mark, blanket marks, rug burns,
        blanket burn, hair missing on shoulder, hair missing on the shoulder,
        hair missing on his shoulder, hair missing on her shoulder, hair missing on her chest,
        hair missing on his chest, hair rubbed off her, hair rubbed off his, hair rubbed away,
        hair is rubbed, hair is coming off, hair coming out on, hair gone from, bald bit, bald bits,
        bald shoulder, bald shoulders, baldy patch, baldy patches, baldy bit, baldy bits, baldy spot,
        going bald, rubbing bald, rubbing raw, rubbing her raw, rubbing him raw, rubbing him,
        rubbing his shoulder, rubbing his shoulders, rubbing her shoulder, rubbing her shoulders,
        rubbing his withers, rubbing her withers, rubbing his chest, rubbing her chest,
        rubbing on the shoulder, rubbing on the shoulders, rubbing at the shoulder,
        rubbing at the shoulders, rubbing at the withers, rubbing on the withers,
        rubbing on the chest, rub on the, rub on her, rub on his, a nasty rub, a bad rub, a big rub,
        a wee rub, a little rub, bit of a rub, a bit of a rub, small rub, slight rub, another rub,
        fresh rub, shoulder rub, shoulder rubs, wither rub, withers rub, chest rub, hip rub,
        mane rub, mane rubbed, mane rubbed out, mane is rubbed, sore from the blanket,
        sore from her blanket, sore from his blanket, sore from rug, sore where the rug,
        sore where her rug, sore where his rug, sore under the rug, sore chest, sore from the strap,
        sore from the straps, sore from the buckle, raw from the rug, raw from her rug,
        raw from his rug, raw from the blanket, raw skin, raw chest, raw bit, raw bits,
        raw on the shoulder, raw on his shoulder, raw on her shoulder, raw on the withers,
        raw at the withers, skinned from the rug, scabby from the rug, scabs from the rug,
        scab from the rug, pinching him, pinching at the shoulder, digging in to his,
        digging in to her, digging into his withers, digging into her withers,
        digging into his shoulder, digging into her shoulder, cutting into his, cutting into her
    """,
    "sign unwell": """
        unwell, colic, colicking, colicky, colicing, poorly, ill, sick, coughing, cough, off feed, off
        food, off her feed, off his feed, off their feed, off her food, off his food, off her hay, off
        his hay, not eating, will not eat, has not eaten, did not eat, not eaten, refusing feed,
        refusing food, refusing her feed, refusing his feed, not herself, not himself, not right, not
        quite right, not feeling well, not well, not very well, not looking well, not doing well,
        lethargic, listless, under the weather, feverish, fever, a temperature, running a temperature,
        diarrhea, diarrhoea, snotty nose, off colour, off color, wheezing, in pain, looks off, looking
        off, seems off, a bit off, dull and quiet, left her feed, left his feed, left her breakfast,
        left his breakfast, colicked, left his dinner, left her dinner, left his hay, left her hay,
        has not touched, did not touch, not feeling great, looking dull, depressed, not
        interested in food, not interested in her food, not interested in his food, won t eat, not
        eating her hay, not drinking, did not finish his breakfast, did not finish her breakfast, did
        not finish his dinner, did not finish her dinner, did not finish his feed, did not finish her
        feed, did not finish breakfast, did not finish dinner, something is wrong with, will not eat
        his, will not eat her, lying down a lot, pawing, pawing and rolling, keeps lying down, can not
        get up, will not get up, down and will not get up, breathing heavily, breathing
        hard, laboured breathing, labored breathing, heavy breathing, not himself at all, not herself
        at all, looks ill, looks poorly, looks unwell, out of sorts, runny nose, snotty, snotty nosed,
        nasal discharge, running a fever, has a fever, a fever, has a temp, running a temp, high
        temperature, high temp, off his hay and dull, off his grub, off her grub, no appetite, lost
        his appetite, lost her appetite, lost appetite, has not touched his, has not touched her, has
        not touched the, did not touch his, did not touch her, scouring, loose droppings, not pooed,
        no droppings, gut sounds, kicking at his belly, kicking at her belly, looking at his belly,
        looking at her belly, looking at her flanks, looking at his flanks, laminitis, tying up, tied
        up badly, weak, wobbly, swaying, staggering, very quiet, really quiet, bit off, off this
        morning, off today, off tonight, not touched her, not touched his, not touched her hay,
        not touched his hay, not touched the hay, not touched her feed, not touched his feed,
        not touched breakfast, not touched dinner, coliky, colic symptoms, signs of colic,
        showing signs of colic, mild colic, gassy colic, spasmodic colic, a bit colicky, impaction,
        got colic, has colic, with colic, looks like colic, looks colicky, looking colicky,
        acting colicky, acting like colic, rolling and pawing, pawing at the ground,
        pawing the ground, pawing his belly, rolling and sweating, rolling and
        rolling about in pain, rolling in pain, thrashing about in pain, thrashing in pain, groaning,
        grunting in pain, belly ache, bellyache, tummy ache, sore belly, sore tummy,
        biting at his sides, biting at her sides, biting his sides, biting her sides,
        biting his flanks, biting her flanks, biting at his flank, biting at her flank,
        biting at his belly, biting at her belly, kicking his belly, kicking her belly,
        kicking at her tummy, kicking at his tummy, looking round at his belly,
        looking round at her belly, looking round at his sides, looking round at her sides,
        looking at her side, looking at his side, lip curling, up and down all night,
        up and down like a yo yo, lying down and getting up, getting up and down, keeps going down,
        keeps rolling, down and cannot get up, lying flat out groaning, coughs, has a cough, a cough,
        got a cough, bit of a cough,
        a bit of a cough, nasty cough, a nasty cough, dry cough, chesty cough, hacking cough,
        cough again, snots, full of snot, snot running, snot everywhere, snot pouring, green snot,
        yellow snot, snotty nostril, snotty nostrils, runny nostrils, nose running, nose is running,
        mucky nose, mucky nostrils, gunky nose, gunk from his nose, gunk from her nose, nose pouring,
        discharge from his nose, discharge from her nose, discharge from the nose, swollen glands,
        glands are up, glands up, breathing funny, breathing fast, breathing really fast,
        breathing quickly, breathing rapidly, breathing badly, fast breathing, rapid breathing,
        struggling to breathe, struggling for breath, wheezy, heavey,
        not eat, no eat, no eating, not want eat, not want to eat, no want eat, no want to eat,
        don t want eat, did not eat his,
        did not eat her, has not eaten his,
        has not eaten her, has not eaten a thing, not eaten a thing, not eaten anything,
        not eaten owt, not eaten much, has not eaten much, not ate, not touching his,
        not touching her, not touching food, not touched food,
        not touched a thing, barely touched his, barely touched her, hardly touched his,
        hardly touched her, will not touch his, will not touch her, refuses to eat, refusing to eat,
        refuses food,
        refused his feed, refused her feed, refused his breakfast, refused her breakfast,
        refused his dinner, refused her dinner, refused his tea, refused her tea, refused feed,
        refused breakfast, refused dinner, turned his nose up at, turned her nose up at,
        turning his nose up at, turning her nose up at, picking at his feed, picking at her feed,
        picking at his hay, picking at her hay, picking at food, left most of his, left most of her,
        left half his feed, left half her feed, left all his hay, left all her hay, left his tea,
        left her tea, left all his feed, left all her feed,
        did not clean up his, did not clean up her, did not clean up, didnt finish his,
        didnt finish her, not finished his, not finished her,
        not finishing his, not finishing her, not interested in his feed, not interested in her feed,
        not interested in feed, not interested in hay, not interested in his hay,
        not interested in her hay, not interested in breakfast, no interest in food,
        no interest in his feed, no interest in her feed, no interest in his hay,
        no interest in her hay, no interest in feed, no interest in hay, off his tucker,
        off her tucker, off his oats, off her oats, off his tea, off her tea,
        off his dinner, off her dinner, off his breakfast, off her breakfast, off hay, off grub,
        off his nuts and hay, off feed and water, gone off his feed, gone off her feed,
        gone off his food, gone off her food, gone off feed, went off his feed, went off her feed,
        went off feed, not drunk, has not drunk, not drank, has not drank,
        not drinking his water, not drinking her water, not touched water, not touched his water,
        not touched her water, not pooping, no poo, no poos, no poop, no manure, no poo overnight,
        has not pooed, has not pooped, not passed droppings,
        not passed any droppings, hard droppings, dry droppings, runny droppings, runny poo,
        runny poos, loose poo, loose poos, cow pat poos, cowpat poos, squits, the squits,
        the scours, got the scours, scours, skitters, the skitters, got the squits, sloppy droppings,
        watery droppings, pipe stream diarrhoea, do not look right, does not look right,
        did not look right, not looking right,
        not acting right, not seeming right, do not seem right, does not seem right,
        does not seem himself, does not seem herself, not hisself, not acting himself,
        not acting herself,
        not looking himself, not looking herself, not quite himself, not quite herself,
        not really himself, not really herself, not his usual self, not her usual self,
        not her normal self, not his normal self, not themselves, not his self, not her self,
        not herself today, not himself today, int right, int himself, int herself, something not right with,
        something is not right with, something up with, something is up with, something wrong with,
        summat up with, summat wrong with, summat not right with, summat is up with,
        somethings wrong with, somethings up with, not too clever, not looking too clever,
        not so clever, not looking clever, not looking so clever, not looking too good,
        not looking good, not looking great, not looking so good,
        not doing great, not doing so good, not doing too well, not too well, not so well,
        not looking so well, not looking too well, not feeling good, not feeling so good,
        not feeling too good, not feeling himself, not feeling herself, does not feel well,
        does not look well, do not look well,
        dont look so good, does not look good, dont look good,
        does not look so good, not weel, no weel, no well, feeling rough, feeling crap,
        feeling rotten, looking rough, looks rough,
        looking peaky, peaky, looking sorry for himself, looking sorry for herself,
        looks sorry for himself, looks sorry for herself, feeling sorry for himself,
        feeling sorry for herself, looking sad and dull, under par, below par, off form, peely wally,
        gone crook, right poorly, proper poorly, really poorly, poorly sick, sick as a dog,
        sick as a pig, ill again, took ill, taken ill, took sick, taken sick, gone down with,
        come down with, came down with, has a virus, got a virus, a virus, has the flu, azoturia,
        tied up, tying up again, has lami, got lami, laminitic,
        pottery, footsore with laminitis, grass sickness, choking, choking on his feed,
        choking on her feed, choking on feed, has choke, got choke, pyrexia, spiked a temp,
        spiking a temp, spiked a fever, spiking a fever, raised temperature,
        raised temp, elevated temp, elevated temperature, temp is up, temperature is up, temps up,
        temp up, has temp, got a temp, got a temperature, has a temperature, high fever, slight temp,
        a slight temp, slight fever, bit of a temp, bit of a temperature, a bit of a temperature,
        have fever, has fever, got fever, got a fever, a bit of a fever, with fever,
        temp of 39||.1|.2|.3|.4|.5|.6|.7|.8|.9, temp 39||.1|.2|.3|.4|.5|.6|.7|.8|.9,
        temp is 39||.1|.2|.3|.4|.5|.6|.7|.8|.9, temp of 40||.1|.2|.3|.4|.5, temp 40||.1|.2|.3|.4|.5,
        temp of 102||.5|.8, temp of 103||.5, temp of 104||.5, temp 102.5, temp 103||.5, temp 104||.5,
        temperature of 39||.5, temperature of 40||.5, dull and listless, dull and lethargic, dull as,
        drooping, mopey, moping,
        head hanging, head hanging low, head hung low, standing with his head down,
        standing with her head down, head in the corner, hunched up, no energy, has no energy,
        not got any energy,
        weak as a kitten, wobbling, wobbly on his feet, wobbly on her feet, unsteady on his feet,
        unsteady on her feet, unsteady on its feet, ataxic, collapsed, pale gums, gums are pale,
        gums pale, gums look pale,
        gums are white, purple gums, dehydrated, bloated, hives, hivey, covered in hives,
        come out in hives, broken out in hives, broke out in hives, in a lot of pain,
        in serious pain, in agony, sickly, has sick, is ill, looks very ill,
        looking ill, looking poorly, looking unwell, looking sick, seems ill, seems poorly,
        seems unwell, seems sick, seems dull, seems flat, seems quiet, bit quiet, a bit quiet,
        awful quiet, right quiet, proper quiet, subdued, a bit subdued, lacklustre, 🤒, 🤢, 🤧,
        is crook, looking crook, looks crook, bit crook, a bit crook, feeling crook, crook today,
        has strangles, got strangles, has the runs, got the runs
    """,
    "everyday hot": """
        hot, boiling, roasting, steaming, sweltering, cooking, baking, very warm, 🥵, hottish, warmish,
        sizzling, boiling over, hot as, like an oven, like a furnace, like a sauna, like a radiator,
        roasty, roasty toasty hot, toasting, sweltered, hot hot, stifling, hotter, bit warm, broiling
    """,
    "everyday cold": """
        cold, chilly, chilled, freezing, freezing cold, ice cold, icy, stone cold, 🥶, frozen, nippy,
        cool, coldish, a little cool, shivery cold, parky, baltic, colder, cold as, like ice, bitter,
        bitterly cold, arctic, chill, nithering, icy cold, bloody freezing, bloody cold,
        brass monkeys, starved, chillier, chillin
    """,
    "everyday good": """
        good, all good, looking good, great, lovely, looking great, looking lovely, brilliant, fab,
        fabulous, amazing, lush, tidy, champion, belting, cracking, smashing, braw,
        gradely, awesome, excellent, wonderful, fantastic, good again, good now, doing good,
        doing great, doing grand, doing brilliantly, looking fab, feeling good, feeling great, gud,
        gd, all great
    """,
    "everyday comfortable": """
        fine, ok, okay, okey, happy, content, alright, all right, k, better, much better, a lot
        better, loads better, looking better, feeling better, doing better, doing fine, doing well,
        all well, no problems, no problem, no issues, spot on, perfect, a ok, okey dokey, okey doke,
        comfortable again, all ok, all fine, fine again, happy enough, ok enough, well enough, grand,
        fine and dandy, tip top, ticketyboo, alrighty, happy camper, happy bunny, happy as anything,
        happy as, as happy as, as happy as can be, right as rain, right as ninepence,
        as right as rain, fine now, ok now, better now, could not be happier,
        could not be better, could not be comfier, happy as you like,
        brighter now, fully recovered, recovered now, nice under there, back to himself,
        back to herself, back to her old self, back to his old self, back to his usual self,
        back to her usual self, 10/10, a okay, a1, tickety boo, hunky dory,
        peachy, just peachy, dandy, fine as ever, fine as usual, fine as can be,
        sound as a pound, sweet as, all grand, all grand with, no bother, no bother at all,
        no bother on, all tidy, no dramas, no drama, nae bother, nae problem, nae problems,
        no complaints, no concerns, nothing to report, all shipshape, shipshape,
        gravy, all gravy, cushty, chilled out, unbothered, not bothered, not a bother on,
        not a bother on him, not a bother on her, not a care in the world, in fine fettle,
        in good fettle, fine fettle, good fettle, fair to  middling, not bad, not too bad,
        not so bad, not bad at all, as expected, fine and well, alive and well, well and happy,
        happy and well, alls well, alls good, all is well, all is good,
        all is fine, allgood, oki, okie dokie, okie doke, okie, okk, okayy, oke, alrite, alreet,
        alreight, awright, aw right, all right as rain, well in herself, well in himself,
        well in themselves, bright and alert, bright and happy, happy and bright, fine in herself,
        fine in himself, happy in herself, happy in himself, good in herself, good in himself,
        very happy, quite happy, very content, more than happy, happy out, happiest,
        happy enough now, better again, much better now, lots better, so much better, way better,
        far better, miles better, tons better, a million times better, a bit better, bit better,
        little better, a little better, slightly better, improving, on the mend, better than earlier,
        better than this morning, better than last night, better than she was, better than he was,
        better than before, better than yesterday, better than they were, happier than earlier,
        happier than she was, happier than he was, calmer, relaxed, chilled and happy, settled
    """,
    "everyday warm": """
        warm, warmed, on the warmer side
    """,
    "dry": """
        dry, dried, dried out, dried off, bone dry, dry again, dry now, all dry, aired, dry at last,
        dry enough, completely dry, fully dry, dry as a bone, dried off now, aired out,
        dry as anything, dry as, as dry as, as dry as a bone, dry as bone, dry as dust,
        dry as can be, dry to the touch, dry to touch, dry inside and out, dry all over,
        dry all through, dry all the way through, dry right through, dry through,
        dry through and through, dry underneath, dried through, dried right out, dried up,
        dried up now, dried nicely, dried overnight, drying nicely, dry as toast, crisp dry,
        crispy dry, nice n dry, lovely n dry, good and dry, proper dry, totally dry,
        perfectly dry, 100% dry, more or less dry, dryed, drye, dri, bonedry,
        all dried out, all dried off, all aired, aired off, dry and ready, dry and ready to use,
        ready and dry, dry ready to go, dry and usable, no longer wet, no longer damp,
        not wet any more, not damp any more, not wet anymore, not damp anymore, not wet now,
        not damp now, touch dry, line dry, dry still, drier than a bone,
        washed and dried, washed and dry
    """,
    "damp": """
        damp, dampish, moist, wettish, clammy, still not dry, not dry yet, not quite dry, nearly dry,
        almost dry, a  slightly wet, dampy, damp still, still  moist still, clammy still, tacky,
        still not quite dry, not fully dry, not fully dry yet, not completely dry,
        not completely dry yet, not entirely dry, not properly dry, not totally dry, not dry enough,
        not dry still, not bone dry, has not dried, has not dried yet,
        has not dried out, not dried, not dried yet, not dried out,
        not dried out yet, not dried off, not dried off yet, did not dry,
        has not fully dried, not fully dried, almost dried, nearly dried,
        half dry, half dried, halfway dry, nearly there but damp, bit wet, faintly damp,
        wet in places, wet in patches, wet in spots,
        damp in places, damp in patches, wet round the edges, wet around the edges, on the damp side, soft wet
    """,
    "wet": """
        wet, rained on, got rained on, wet again, rained in, wet inside, wet underneath, rain got in,
        wet as, as wet as, weet, been rained on,
        has been rained on, wetter, wet wet, wet all over, wet on top, wet on the outside,
        wet outside of, wet on the inside, wet on the lining, wet on the shoulders,
        wet across the back, wet down the back, wet along the back, wet in the lining,
        lining wet, lining is wet, lining is all wet, not waterproof any more,
        not waterproof anymore, water got in, rain got under, water got under, rain ran down,
        rain running down, rained through, rain came through, water came through, water come through,
        rain has got in, rain has come through, soggyish, wet from the rain, wet from rain,
        wet with rain, wet with the rain, wet from the storm, wet from the snow, wet from snow,
        wet from last night, wet from overnight, rain wet, snow wet, snowed on, got snowed on,
        wet through the top layer, damp to wet, wet and muddy, muddy and wet, wet and mucky,
        mucky and wet, wet and dirty, dirty and wet
    """,
    "soaked": """
        soaked, soaking, soaking wet, drenched, sopping, sopping wet, dripping, dripping wet, wet
        through, soaked through, sodden, soggy, saturated, waterlogged, wringing wet, soaked to the
        skin, wet to the skin, drenched through, absolutely soaked, wringing, soaked right through,
        wet right through, soaked inside and out, soaken, sopping wet through, drookit, droukit, drooket,
        drenched to the skin, drenched to the bone, soaked to the bone, wet to the bone,
        soaked all the way through, soaked the whole way through, wet all the way through,
        wet the whole way through, soaked clean through, wet clean through, soaked plumb through,
        soaked slap through,
        wringing wet through, piss wet through, piss wet, pissed wet through, pish wet,
        absolutely drenched, absolutely sodden, absolutely sopping, absolutely wringing,
        like a drowned rat, drowned rat, like drowned rats, a drowned rat, looks like a drowned rat,
        drowned, half drowned, wetter than an otters pocket, wetter than an otter's pocket,
        wet as an otters pocket, wet as an otter's pocket, otters pocket, wetter than a, wetter than,
        like a wet sponge, like a sponge, like a soaked sponge, like a wet dishcloth,
        like a dishcloth, like a wet rag, sopped, sopped through, squelching, squelchy, sodden wet,
        sodden through, soddened, sogging, soggy wet, soggy through, saturated through,
        fully saturated, completely saturated, water logged, awash, swimming, pouring water,
        pouring with water, running with water, streaming with water, streaming wet,
        dripping all over, dripping water, dripping everywhere, dripping with rain,
        dripping from the rain, wringing with rain, soaked with rain, soaked from the rain,
        soaked in the rain, soaked by the rain, soaked by rain, soaked from rain,
        soaked to the lining, soaked into the lining, wet to the lining, soaked up the rain,
        could wring it out, you could wring it out, could wring it, can wring it out, wring it out,
        ringing wet, wring wet, drenched wet, soaked and dripping,
        soaked and heavy, weighs a ton wet, super soaked, drownded, saturated with rain,
        very very wet, much wet, too much wet, extremely wet, so so wet
    """,
    "state washing": """
        in the wash, in the washing machine, being washed, at the laundry, at the cleaners, in the
        laundry, to the wash, to the laundry, to the cleaners, washing, in the machine, gone to be
        washed, sent to be washed, sent for washing, getting washed, at the wash, to be washed, in
        laundry, at laundry, into the wash, in with the washing, put in the wash, going in the wash,
        gone in the wash, gone to the wash, off to the wash, off to be washed, off to the laundry, off
        to the cleaners, taken to be washed, taken to wash, taken home to wash, took it home to wash,
        in the machine now, at the rug wash, at the rug cleaners, to the rug wash, gone to the
        cleaners, gone to the laundry, needs washing so in the machine, being cleaned, at the
        launderette, at the laundrette, home to wash, home to be washed, home for a wash,
        in for a wash, gone for a wash, in the washer, to be cleaned, sent to be cleaned,
        gone to be cleaned, off to be cleaned, in my washing machine, in my machine, in my wash,
        in our machine, in our washing machine, in the laundry room, at my house to wash,
        home in the wash, in th wash, int wash, in t wash, int washer, in the washer now,
        in the big washer, in the industrial washer, washed, getting a wash, having a wash,
        having a clean, getting cleaned, getting laundered, being laundered, laundered,
        gone for washing, gone off for washing, gone off to be washed, gone off to the wash,
        gone off to be cleaned, gone off for cleaning, gone for cleaning, gone to the rug wash,
        gone to rug wash, gone to the rug lady, gone to the rug man, gone to the rug cleaner,
        gone to the rug cleaners, gone to the blanket lady, gone to the blanket wash,
        gone to the laundrette, gone to the launderette, gone to the dry cleaners,
        gone to be laundered, gone home to be washed, gone home for a wash,
        gone home with me to wash, with the rug lady, with the rug washer, with the rug wash lady,
        with the rug cleaner, with the rug cleaners, with the cleaners, with the laundry,
        with the blanket lady, at the rug lady, at the rug cleaner, at rug wash, at the rug washers,
        at the blanket wash, at the blanket cleaners, at the dry cleaners, at cleaners,
        at the wash now, away to be washed, away for a wash, away for washing, away at the wash,
        away getting washed, away to the wash, away to the cleaners, away to the laundry,
        away being washed, away being cleaned, out for a wash, out for washing, out for cleaning,
        out to be washed, out to be cleaned, out at the laundry, off for a wash, off for washing,
        off for cleaning, off to wash, off to rug wash, off to the rug wash, off to the rug lady,
        off to the rug cleaners, off to the launderette, off to the laundrette,
        off to the dry cleaners, to the rug lady, to the rug man, to the rug cleaners,
        to the rug cleaner, to the launderette, to the laundrette, to the dry cleaners,
        to the dry cleaner, to be laundered, to rug wash, to the blanket wash, to the blanket lady,
        down as washing, down as washing please, down as in the wash, down for washing, down to wash,
        down for a wash, taken for washing, taken for a wash, taken home for washing,
        taken home for a wash, took home to wash, took to wash, dropped at the laundry,
        dropped at the cleaners,
        dropped off at the laundry, dropped off at the cleaners, dropped off at the rug wash,
        dropped off for washing, dropped at the rug wash, dropped off to be washed,
        sent off to be washed, sent off for washing, sent off to the wash, sent off to the cleaners,
        sent off to the laundry, sent to the wash, sent to the cleaners, sent to the laundry,
        sent to wash, sent out to be washed, sent out for washing, sent away to be washed,
        sent away for washing, sent for cleaning, sent for a wash, sent home to wash,
        put in for a wash, put in for washing, put in the washer, put in the washing machine,
        put in the machine, put in to wash, put to wash,
        popped in the wash, popped in the washer, popped in the machine, chucked in the wash,
        chucked in the washer,
        chucked in the machine, bunged in the wash,
        bunged in the machine, slung in the wash, stuck in the wash, stuck in the washer,
        threw in the wash,
        thrown in the wash, thrown in the washer, shoved in the wash, whacked in the wash,
        flung in the wash, tossed in the wash, lobbed in the wash, into the washer,
        into the washing machine, into the machine, into the laundry, going in the washer,
        going in the machine, going in the washing machine, going to the wash, going to the laundry,
        going to the cleaners, going for a wash, going home for a wash, going off to be washed,
        going off to the wash, going to be washed, goes in the wash, goes to the wash,
        goes to the laundry, goes in the machine, in the machine it goes,
        needs a wash so in the machine it goes, needs a wash so in the wash,
        needs a wash so its in the wash, needed a wash so its in the wash,
        needed a wash so in the wash, is in wash, in wash, in washing, in the washing,
        in with the wash, in the laundry pile, in the laundry bag, in the laundry basket,
        in the wash pile, on the wash pile, on the washing pile, in the washing pile,
        in the dirty pile, for the wash, for washing, for cleaning, bagged for washing,
        bagged up for the wash, bagged up for washing, bagged up to be washed,
        bagged for the laundry, bagged for the wash, soaking in a bucket, soaking in the bath,
        soaking in the tub, in the bath with soap, being scrubbed, being hosed off and washed,
        being hosed, in my washer, in our washer, in our wash, in the yard washer,
        in the yard machine, in the yard washing machine, on a wash, on a cycle, in on a cycle,
        on a cold wash, on a wool wash, washing now, being wash, is wash, to washing, i wash,
        i am washing
    """,
    "state torn": """
        torn, ripped, tore, tear, a tear, rip, a rip, hole, a hole, holes, shredded, in shreds, split,
        torn up, ripped up, in tatters, destroyed, wrecked, ruined, trashed, rip in, tear in, massive
        rip, big rip, big tear, big hole, a massive rip, a big rip, a big tear, a big hole, a huge
        hole, a huge rip, ripped to shreds, ripped to bits, torn to shreds, torn to bits, torn open,
        shredding, a gash, slashed, put a foot through, put his foot through, put her foot through,
        put a hole in, seam gone, seam split, seam has gone, split at the seam, burst a seam,
        ripping, put a leg through, put his leg through, put her leg through, a right mess,
        hanging in bits, tore up, tore through, tore clean,
        torn clean, torn through, torn right through, torn right down, torn down the, ripped clean,
        ripped clean through, ripped right through, ripped through, ripped down, ripped right down,
        ripped open, ripped all, ripped along, ripped at the, ripped on the, ripped across,
        ripped apart, ripped in two, ripped in half, torn in two, torn in half, torn apart, torn all,
        torn along, torn at the, torn across, torn on the fence, torn on, tore on, ripped again,
        torn again, ripped to ribbons, torn to ribbons, cut to ribbons, in ribbons, ripped to pieces,
        torn to pieces, in bits, in pieces, in rags, in strips, hanging off in strips,
        hanging in strips, hanging off her, hanging off him, hanging in tatters, tattered,
        shredded to bits, shredded on, half shredded, slit, a slit, slit in, big slit, gaping hole,
        a gaping hole, gaping, flapping open, flapping in the wind, flapping in the breeze,
        hanging open, burst, burst at the seams, burst at the seam, bursting at the seams,
        burst open, split open, split up the back, split down the back, split down the middle,
        split along the seam, split down the seam, split on the seam, seams gone, seams have gone,
        seams split, seams have split, seams coming apart, seam coming apart, seam is going,
        seam is coming apart, seam has come apart, seam came apart, coming apart,
        coming apart at the seams, come apart, come apart at the seam, came apart,
        came apart at the seam, fallen apart, fell apart, falling apart, falling to bits,
        fallen to bits, gone to bits, stuffing coming out, stuffing hanging out,
        stuffing is coming out, stuffing is hanging out, stuffing out, stuffing everywhere,
        with the stuffing coming out, filling coming out, filling hanging out, filling everywhere,
        filling is coming out, filling falling out, fill coming out, fluff coming out,
        wadding coming out, wadding hanging out, guts hanging out, holey, full of holes,
        more holes than, holes all over, holes in it, hole in it, hole in, a hole in, big hole in,
        massive hole in, a massive hole, massive hole, huge hole, huge hole in, small hole,
        a small hole, small hole in, little hole, a little hole, a wee hole, wee hole,
        hole the size of, a hole the size of, rip the size of, a rip the size of, tear the size of,
        a tear the size of, foot long rip, a foot long rip, foot long tear, a foot long tear,
        a rip down, a rip in, a tear in, a tear down, a tear along, a rip along, a massive tear,
        massive tear, a huge tear, huge tear, huge rip, a small tear, small tear, small rip,
        a small rip, a little tear, little tear, little rip, a little rip, a wee tear, a wee rip,
        wee rip, wee tear, another rip, another tear, another hole, a nasty rip, a nasty tear,
        nasty tear, nasty rip, a good rip, an l shaped tear, l shaped tear, l shaped rip,
        a right rip, a right tear, a great big hole, a great big rip, a great big tear,
        great big rip, great big tear, great big hole, right old rip, put a rip in, put a tear in,
        put a massive rip in, put a big rip in, put a big hole in, put a hole through,
        put a hoof through, put his hoof through, put her hoof through, put a leg clean through,
        put his foot clean through, put her foot clean through, put a foot clean through,
        put his head through, stuck a foot through, stuck his foot through, stuck her foot through,
        stood on and ripped, trod on and ripped, stood on it and ripped it, trod on it and ripped it,
        chewed, chewed up, chewed to bits, chewed a hole in, chewed through, chewed holes in,
        eaten a hole in, bitten through, bit a hole in, bitten a hole in, ate a hole in,
        nibbled a hole in, cut on the fence, cut on the wire, caught on the fence and ripped,
        caught on the fence and torn, caught on the wire and ripped, caught on the wire and torn,
        got caught and ripped, snagged, snagged on, snagged and torn, snagged and ripped, murdered,
        massacred, annihilated, demolished, written off, a write off, write off, beyond repair,
        past saving, past mending, to be mended, to be repaired, to be sewn,
        to be fixed, for mending, for repair, for repairs, for the menders, for the mender,
        gone for repair, gone for repairs, gone for mending, gone to be mended, gone to be repaired,
        gone to be fixed, gone to be sewn, gone to the menders, gone to the mender,
        gone to the rug menders, gone to the repairers, at the menders, at the mender,
        at the rug menders, at the repairers, at the rug repairers, at the repair shop, at repair,
        at the seamstress, at the saddlers for repair, being mended, being repaired, being fixed,
        being sewn, being patched, getting mended, getting repaired, getting fixed, getting sewn,
        away for repair, away for repairs, away for mending, away being mended, away being repaired,
        away getting mended, away to be mended, away to be repaired, off to the menders,
        off to be mended, off to be repaired, off for repair, off for repairs, off for mending,
        out for repair, out for repairs, out for mending, sent for repair, sent for repairs,
        sent for mending, sent to be mended, sent to be repaired, sent to the menders,
        sent off for repair, sent off for repairs, sent off to be mended, taken to the menders,
        taken to be mended, taken for repair, to the menders, to the rug menders, rip his, rip her, tear his,
        tear her
    """,
    "state missing": """
        missing, lost, gone missing, went missing, can not find, could not find,
        vanished, disappeared, nowhere to be found, nobody can find, no one can find, has gone
        walkabout, gone walkabout, gone awol, awol, not there, not on the rack, can t find, has
        vanished, no sign of, can not see, can not locate, misplaced, mislaid, nicked,
        stolen, walked off, no one knows where, is nowhere, nowhere, nowhere to be seen,
        not where it should be, gone a miss, gone amiss, gone walkies, gone for a walk, gone walking,
        done a runner, done a disappearing act, done a houdini, done a bunk, done a vanishing act,
        couldn t find, can not find any sign of,
        can not find hide nor hair of, hide nor hair of, unable to find, unable to locate,
        could not locate, have not found, not been able to find,
        unaccounted for, not accounted for, anyone seen it has vanished, vanished into thin air,
        disappeared into thin air, disappeared off the face, dropped off the face, been nicked,
        been stolen, been  been  been taken, been half inched, pinched, swiped,
        half inched, grown legs, grew legs, sprouted legs, wandered off,
        walked off somewhere, got lost, lost somewhere, is lost, nowhere about,
        nowhere around, nowhere in sight, nowhere at all, no where, no where to be found,
        no where to be seen, not anywhere, is not anywhere,
        not on his peg, not on her peg, not on its peg, not on the peg, not on his hook,
        not on her hook, not on its hook, not on the hook, not on the hooks, not on his door,
        not on her door, not on the door, not on his rail, not on her rail, not on the rail,
        not on the rails, not on her rack, not on his rack, not in the rug room,
        not in the tack room, not in the drying room, not in the boiler room, not in the feed room,
        not in the barn, not in his stable, not in her stable, not in his box, not in her box,
        not in his trunk, not in her trunk, not in the trunk, not in the pile,
        not over the door, not where i left, not where we left, not where i hung, not where it lives,
        not where it was, not where its meant to be, not where it is meant to be,
        not where it belongs, nobodys seen, nobody has seen, nobody seen, no one has seen,
        no ones seen, no one seen, none of us can find, none of us have seen, not seen since,
        has not been seen, not been seen since, not been seen, i no find, no find,
        not find, i not find, i do not find, i can not see, is not there, not there any more,
        not there anymore, no longer there, m i a, mia, whereabouts unknown, whereabouts of,
        still missing, mislay, i lose, i have lost, we have lost, we lost, i lost, has been lost,
        gone walkabouts, gone off somewhere,
        gone somewhere, blown away, blown off somewhere, has blown away, blew away,
        blew off somewhere
    """,
    "state found": """
        found, turned up, here after all, been found, has been found, was found, has turned up, found
        it, reappeared, has reappeared, showed up, is back from wherever, come to light,
        came to light, has come to light, resurfaced, has resurfaced, surfaced, has been located,
        located, has been recovered, fished out of, dug out of,
        has  has  come back, come home,
        back where it belongs, back where it should be, back from the dead,
        back on its hook, back on its peg, back on his hook, back on her hook, back on his peg,
        back on her peg, back on the hook, back on the peg, tracked down, hunted down,
        no longer missing, not missing any more, not missing anymore, not missing after all,
        is not missing, not lost after all, was there all along, there all along,
        was here all along, i find, i have found, we found,
        found under, found behind, found in, found on, found at, found hanging, found stuffed,
        turn up, turnt up, has shown up, shown up, popped up, has popped up, discovered, unearthed,
        rediscovered
    """,
    "state in service": """
        in service, back in service, fixed, mended, repaired, back from repair, back from the repair,
        back from repairs, back from the mender, back from the menders, patched, sewn, sewn up,
        stitched, stitched up, back from the wash, back from the laundry, back from the cleaners, back
        from being washed, good as new, usable again, strap replaced, new strap, back in use, sewed,
        sewn back, patched up, back from mending, back from the seamstress, back from the rug menders,
        stitched it, sewed up, repair done, back on the rack, ready to use, ready for use, ok to use
        again, back from washing, clean and back, strap fixed, strap mended, new buckle, fixed up,
        darned, back in action, back in business, back in play, back in circulation,
        back in rotation, back in use now, back in the game, back on the go, back up and running,
        up and running, back and mended, back and fixed, back and clean, back and repaired,
        back all mended, mended and back, fixed and back, repaired and back, washed and back, cleaned and dry,
        clean and ready to go, clean and ready to use, all clean, all  clean again, back clean, came back clean,
        come back clean, come home clean, back nice and clean, back from the launderette,
        back from the laundrette, back from laundry, back from wash, back from the rug wash,
        back from rug wash, back from the rug lady, back from the rug man,
        back from the rug cleaners, back from the rug cleaner, back from the dry cleaners,
        back from being cleaned, back from being mended, back from being repaired,
        back from being fixed, back from being sewn, back from being stitched, back from cleaning,
        back from the washing, back from the blanket lady,
        back from the blanket wash, back from the cleaner, back from repairs now,
        back from the repair shop, back from the repairers, back from the repairer,
        back from the rug repairers, back from the saddlers, back from the stitcher,
        back from the sewing lady, back from the tailor, back out of the wash, out of the wash,
        out of the washer, out of the washing machine, out of the machine, out of the laundry,
        out the wash, out the washer, out the machine, collected from the menders,
        collected from the wash, collected from the laundry, picked up from the menders,
        picked up from the wash, picked up from the laundry, picked up from the cleaners,
        collected from the cleaners, got back from the menders, got back from the wash,
        got back from the cleaners, home from the wash, home from the laundry, home from the menders,
        home from the cleaners, home from repair, ok to use, okay to use, okay to use again,
        fine to use, fine to use again, fit for use, fit to use, fit for use again, fit to wear,
        good to use, good to use again, safe to use, safe to use again, can be used,
        can be used again, can be worn again, can go back in use,
        can go back into use, usable, useable, useable again, wearable, wearable again, serviceable,
        available again, available for use, ready to wear, ready to go again,
        ready to rock, all set to use, all mended, all fixed, all fixed up,
        all repaired, all stitched up, all sewn up, all patched up, all sorted and ready,
        good as new again, good as new now, as good as new, as new, like new, like new again,
        like brand new, fettled, mended now, mended good as new, sewn back on,
        sewn back up, sewn back together, sewed back on, stitched back, stitched back on,
        stitched back up, stitched back together, has been fixed, has been mended, has been repaired,
        has been sewn, has been stitched, has been patched, been fixed, been mended, been repaired,
        been sewn, been sewn up, been stitched, been stitched up, been patched, been patched up,
        got fixed, got mended, got repaired, got sewn up, i fix, i have fixed, i mended,
        i fixed, i repaired, i sewed, i stitched, i patched, i repair, i have repaired, is repaired,
        is fixed, is mended, duct taped, duct tape fixed, gorilla taped, fixed with duct tape,
        patched with, patched with duct tape, glued, re sewn, resewn, restitched, re stitched,
        reproofed, re proofed, reproofed and ready, strap back on, straps replaced,
        strap sewn back on, strap has been sewn back on, strap stitched back on, strap is back on,
        strap repaired, straps fixed, straps mended, straps repaired, strap is fixed,
        strap is mended, strap has been fixed, strap has been mended, strap has been replaced,
        new straps, new straps on, new strap on, new strap fitted, new straps fitted,
        got a new strap, got new straps, new clip on, new clip fitted, new buckle on,
        new buckle fitted, new buckles, got a new buckle, buckle replaced, buckle fixed,
        buckle mended, new surcingle, new leg strap, new leg straps, new chest strap, new tail strap,
        new belly strap, replaced the strap, replaced the buckle, replaced the clip,
        replaced its strap, replaced the straps, replaced the leg strap, replaced the surcingle,
        replaced the chest strap
    """,
    "strap": """
        strap, straps, leg strap, leg straps, surcingle, surcingles, buckle, buckles, belly strap,
        chest strap, tail strap, front strap, fillet string, tail flap, hind strap, cross surcingle,
        clasp, front buckle, chest buckle, back strap, rear strap, belly buckle, leg buckle, clip,
        fastener, fasteners, fastening, fastenings, d ring, toggle, girth strap, cross surcingles,
        hook, velcro, strapping, strapp, strop, front straps, chest straps, back straps, rear straps,
        hind straps, belly straps, tail straps, tail cord, tail string, filet string, filet strap,
        fillet strap, fillet cord, bum string, bum strap, bum straps, leg cord, leg clip, leg clips,
        front clip, front clips, chest clip, chest clips, clips, clip strap, front clip strap,
        t hook, t hooks, t bar, surcingle strap, surcingle straps, surcingle buckle, surcingle clip,
        surcingle hook, belly surcingle, belly surcingles, cross over strap, cross over straps,
        crossover strap, crossover straps, cross straps, cross strap, bellyband, belly band,
        belly wrap, girth straps, hook and loop, velcro strap, velcro fastening, velcro front,
        snap hook, trigger clip, trigger hook, quick clip, quick release, swivel clip,
        swivel hook, dee ring, d rings, elastic strap, elastic straps,
        webbing, webbing strap, bungee, bungee strap, harness strap, harness straps, shoulder strap,
        breast strap, breast straps, neck strap, neck straps, leg loop, leg loops, strap thing,
        strap thingy, strap thingie, buckle thing, buckle thingy, string thingy,
        fillet string thingy, front closure, near hind strap, off hind strap,
        left leg strap, right leg strap, left strap, right strap, near side strap, off side strap,
        rear leg strap, rear leg straps, back leg strap, back leg straps, hind leg strap,
        hind leg straps, front buckles, chest buckles, front fastening, front fastenings,
        front fastener, chest fastening, chest fastener
    """,
    "broken": """
        broken, broke, snapped, busted, bust, came off, gone, hanging off, ripped off, torn off, off,
        broken off, missing, has gone, is gone, given up, has given up, has snapped, perished, ripped
        out, come off, has come off, came away, come away, coming off, pulled off, pulled out, worn
        through, undone and broken, busted off, busted up, bust off, busted clean off, bust again,
        broken clean off, broken clean through, broken in two, broken in half, broken again,
        is broke, broked, done broke, done broken, done bust, done snapped, gone and snapped,
        gone and broken, gone and broke, gone snap, gone ping, gone twang, gone pop, gone kaput,
        gone bang, pinged off, pinged, pinging off, popped off, popped, snapped off, snapped clean,
        snapped clean off, snapped in two, snapped in half, snapped clean through, snapped right off,
        snapped again, snap, snappit, sheared off, sheared, ripped clean off, ripped right off,
        ripped away, ripped off again, torn clean off, torn right off, torn away, torn out, tore off,
        tore clean off, tore right off, pulled clean off, pulled right off, pulled away,
        pulled apart, yanked off, yanked out, wrenched off, came apart, come apart,
        came undone for good, come unstitched, came unstitched, unstitched, come unsewn, unravelled,
        unraveled, frayed, frayed through, fraying, frayed to nothing, worn out, worn away,
        worn right through, worn thin, wore through, wore out, rusted, rusted through, rusted solid,
        seized, jammed, bent, bent out of shape, bent open, cracked, cracked in two, cracked in half,
        shattered, split, perished through, rotted, rotted through, rotten, chewed off,
        chewed through, chewed right through, bitten off, bitten through, eaten, cut off,
        cut through, knackered, buggered, kaput, shot, had it, has had it, had its day, past it,
        stuffed, munted, cactus, rooted, jiggered, banjaxed, bolloxed, borked, fubar, fecked, fooked,
        fucked, wrecked, done for, goosed, ruined, damaged, defective, faulty, duff, dodgy, useless,
        no good, not working, not work, does not work, does not do up,
        will not do up, cant do up, will not fasten, does not fasten, does not close,
        does not clip, will not clip, will not close, does not buckle,
        will not buckle, does not stay done up, will not stay done up, does not hold, will not hold,
        hanging by a thread,
        hanging on by a thread, holding on by a thread, hanging loose, hanging down, hanging,
        dangling, dangling off, trailing, flapping, loose and broken, detached, has come away,
        has come apart, has come off again, has come loose, has broken, has broke, has bust,
        has busted, has pinged off, has pulled out, has ripped off, has torn off, has perished,
        has frayed, gave way, given way, has given way, given out, gave out, gave up,
        given up the ghost, gave up the ghost, has given up the ghost, packed in, packed up,
        has packed in, bit the dust, died, died a death, lost, missing a, somebody broke,
        someone broke, he broke, she broke, he break, she break, broke on, broke off, broke in two,
        broke in half, broke again, he snapped, she snapped, break, breaks, is break, breaked, brake
    """,
    "kind sheet": """
        sheet, sheets, rain sheet, rainsheet, turnout sheet, rain rug, rain sheets, raincoat, no fill, zero
        fill, mac, macs, rain mac, rain coat, rain coats, rain cover, rain macs, rain mack,
        waterproof sheet, waterproof sheets, no fill turnout, zero fill turnout, zero fill rug,
        no fill rug, unfilled rug, unfilled turnout, shell, shower proof, showerproof, shower sheet,
        wind sheet, turnout sheets, turn out sheet, summer sheet, spring sheet, mud sheet,
        field sheet, paddock sheet, pac a mac, pacamac, rain jacket, rainrug, rain rugs, field rug,
        field rugs, outdoor rug, outdoor rugs, outdoor blanket, outdoor blankets, outside rug,
        outside rugs, outside blanket, paddock rug, paddock rugs, paddock blanket, waterproof rug,
        waterproof rugs, waterproof blanket
    """,
    "kind turnout": """
        turnout, turnouts, turnout rug, turnout rugs, turnout blanket, turn out rug, winter turnout,
        turn out, turn outs, turn out rugs, turn out blanket, turn out blankets, turnout blankets,
        winter rug, winter blanket, winter turnouts, tournout, new zealand, new zealand rug, nz rug,
        field rug, field rugs, outdoor rug, outdoor rugs, outdoor blanket, outdoor blankets,
        outside rug, outside rugs, outside blanket, paddock rug, paddock rugs, paddock blanket,
        waterproof rug, waterproof rugs, waterproof blanket
    """,
    "kind liner": """
        liner, liners, under rug, underrug, under blanket, blanket liner, rug liner, inner,
        inner liner, inner rug, inner layer, innerliner, inside liner, under layer, underlayer,
        base layer, under quilt, underquilt, under rugs, under blankets, under rugging, liner rug,
        liner rugs, blanket liners, rug liners, quilted layer, linner, linners, liner blanket,
        liner layer
    """,
    "kind stable": """
        stable rug, stable blanket, stable rugs, stable blankets, stall blanket, stall rug, night rug, indoor
        rug, indoor blanket, stable sheet, stable quilt, stable quilts, stall blankets, stall rugs,
        night rugs, night blanket, night blankets, night time rug, nighttime rug, bed rug,
        bedtime rug, inside rug, inside rugs, inside blanket, inside blankets, indoor rugs,
        indoor blankets, barn blanket, barn blankets, barn rug, stable sheets, jammies, jamas,
        pyjamas, pajamas, pjs, jim jams, jimjams, box rug, box rugs, in rug, indoor quilt,
        stable duvet, stabling rug
    """,
    "kind cooler": """
        cooler, coolers, fleece, fleece rug, sweat rug, sweat sheet, wicking rug, cooler rug, fleece cooler,
        anti sweat rug, sweat cooler, fleeces, fleece rugs, fleece cooler rug, fleece coolers,
        fleece blanket, fleece sheet, fleecy, fleecy rug, sweat rugs, sweat sheets, sweat blanket,
        anti sweat, anti sweat sheet, anti sweat rugs, antisweat rug, antisweat, sweat scrim, scrim,
        cooling rug, cooling sheet, cooling blanket, cool rug, drying rug, drying rugs, drying sheet,
        drying blanket, dry rug, towelling rug, toweling rug, towelling robe, wicking sheet,
        wicking blanket, wicking cooler, wicker rug, string vest, string rug, string sheet,
        mesh cooler, wool cooler, thermal rug, thermal cooler, thermal sheet, walking cooler,
        walker rug, cooler sheet, cooler blanket, wicking fleece
    """,
    "kind neck": """
        neck cover, hood, neck rug, neckpiece, neck piece, neck covers, hoods, neck rugs,
        neck pieces, neckcover, neckcovers, neckrug, neck bit, neck thing, neck thingy, neck part,
        neck attachment, neck section, neck warmer, neck cover thing, detachable neck, separate neck,
        snood, neck hood, full neck cover, half neck cover
    """,
    "rug": """
        rug, rugs, blanket, blankets, blankie, rugz, rug set, rugg, ruggs, blankies, blanky, blankey,
        blanket set, horse rug, horse blanket, horse coat, horse jacket
    """,
    "weight heavy": """
        heavy, heavyweight, heavy weight, heavies, thick, thickest, hw, heavywieght, heavy wt,
        heavywt, heavyweights, heavy one, thick one, thicker, thicko, heaviest, really thick,
        super heavy, extra heavy, heavyweight one, heavey weight, chunky, heavier, heavy duty winter
    """,
    "weight medium": """
        medium, mediumweight, medium weight, middleweight, mid weight, midweight, mediums, med,
        meduim, medium wt, mediumwt, medium weights, mid weights, mid wt, mw, mid, midi, medium one,
        middle weight, middling weight, mediumweight one, med weight, medweight, medi
    """,
    "weight light": """
        light, lightweight, light weight, thin, lite, lw, lightwieght, light wt, lightwt,
        lightweights, lightie, lighty, lite weight, liteweight, light one, thin one, thinner,
        thinnest, lighter, lightest, thinnish, super light, ultra light, flimsy
    """,
    "gram": """
        g, gr, gm, gms, gram, grams, gsm, grammes, fill, gs, gsms, grammers, weight, grm, grms
    """,
    "spare": """
        spare, spares, loaner, yard spare, barn spare, spare one, loaner rug, yard's spare
    """,
    "one": "one, ones",
    "colour": """
        blue, red, green, grey, gray, black, white, brown, purple, pink, navy, orange, yellow, teal,
        turquoise, burgundy, maroon, camo, gold, silver, plaid, checked, striped, tartan, stripy, dark blue,
        light blue, beige, cream, khaki, lilac, lime, lime green, aqua, charcoal, magenta, crimson,
        scarlet, fuchsia, fuschia, mustard, royal blue, navy blue, sky blue, baby blue, pale blue,
        bright blue, electric blue, powder blue, bright pink, hot pink, pale pink, baby pink,
        neon pink, neon, bright green, bottle green, forest green, hunter green, dark green,
        light green, pale green, olive green, dark grey, light grey, pale grey, dark red, bright red,
        brick red, dark purple, bright orange, bright yellow, multi coloured, multicoloured,
        multi colored, multicolored, patterned, spotty, spotted, spots, polka dot, polka dots, dotty,
        floral, flowery, flowered, zebra, zebra print, leopard, leopard print, leopardskin,
        animal print, unicorn, unicorns, checkered, chequered, checky, gingham, paisley, star print,
        heart print, hearts, tie dye, tweed, tweedy, stripey, stripes, argyle, houndstooth,
        camouflage, hi viz, hi vis, high vis, reflective, fluorescent, fluoro, wine,
        emerald, lavender, mauve, cerise, chocolate, off white, whitish, blueish, bluey, greenish,
        reddish, pinky, purply, turquoise blue, rainbow, bicolour, two tone
    """,
    "any adjective": """
        new, old, big, little, nice, good, own, winter, outer, outside, thick winter, lovely, stupid, bloody,
        poor, far, front, side, middle, near, lower, upper, smelly, stinky, stinking, mucky, filthy,
        manky, minging, grubby, dirty, clean, fresh, trusty, usual, normal, regular, fave,
        favourite, favorite, posh, fancy, actual, fluffy, snuggly, fleecy, shiny,
        full neck, half neck, high neck, standard neck, weatherproof, hefty, huge, giant, massive,
        ginormous, enormous,
        wee, tiny, teeny, bargain, ancient, knackered old, raggedy, ratty, tatty, scruffy, expensive,
        cheap, spendy, ugly, hideous, daft, flipping, bleeding, blooming, ruddy,
        effing, fecking, fucking, goddamn, goddam, damn, damned, darn, dang, matching, borrowed,
        hand me down, charity shop, second hand,
        secondhand, quilted, padded, puffy, insulated, waterproof
    """,
    "put on": """
        put, putting, put on, puts, added, popped, chucked, threw, stuck, slapped, popped on, layered,
        threw on, flung, whacked, bunged, tossed, layered up, slung, have put, just put, re rugged
        with, shoved, buttoned, bundled, zipped, wrapped, squeezed, bundled up, buttoned up,
        stuck on, bunged on, chucked on, whacked on, lobbed on, flung on, slung on, slapped on,
        tossed on, shoved on, slipped on, slid on, thrown on, lashed on, hoyed on, fired on,
        clapped on, hoofed on, plonked on, plopped on, wrestled on, got on, whipped on, plonked,
        plopped, lobbed, lashed, hoyed, fired, clapped, draped, heaped, piled on, piled, loaded,
        strapped, strapped on, buckled, buckled up, buckled on, done up, did up, done her up in,
        done him up in, did him up in, did her up in, kitted, kitted out, doubled up,
        doubled up with, donned, given, gave, i give, we give, i put, i put on, we put, we put on,
        i add, i have added, ive put, ive stuck, has put, had put, had to put, had to stick,
        had to throw, had to chuck, had to add, had to pop, ended up putting, ended up with putting,
        decided to put, decided to stick, decided to pop, decided to add, decided on, managed to put,
        managed to get on, went and put, went ahead and put, gone and put, been and put,
        after putting, i am putting, im putting, am putting, we are putting, did put, did put on,
        already put, put back, put back on, back into, stuck back on, chucked back on,
        popped back on, threw back on, sticking, sticking on, popping, popping on, chucking,
        chucking on, throwing, throwing on, adding, slapping on, bunging on, putting on, reapplied,
        re applied, reinstated, rugged up in, rugged her up in, rugged him up in, blanketed with,
        blanketed her in, blanketed him in, covered with, covered in, topped with, topped off with,
        swaddled, cocooned, tucked, layered on, layering, doubled, upgraded
    """,
    "took off": """
        removed, stripped, pulled off, pulled, pulling, took off, whipped off, undressed, peeled off,
        peeled, taken off, removing, stripping, de rugged, derugged, stripped down, stripped off,
        undone and removed, have removed, just removed, have taken off, took out, taken out, pulled
        out, slipped out, slid out, whisked off, ripped off her, dragged off, lifted off, lifted,
        unbuckled and removed, slipped off, slid off, ditched, ditching, hoiked off, hoicked off,
        yanked off, hauled off, wheeched off, tugged off, shed her, shrugged off, wrestled off,
        unrugged, rugged down, unblanketed, deblanketed, de blanketed, stripped her of,
        stripped him of, stripped her out of, stripped him out of, relieved of, relieved her of,
        relieved him of, liberated from, freed from, i take off, we take off, i have take off,
        i took off, i remove, i have removed, we remove, ive taken off, have took off,
        had to take off, had to remove, had to whip off, had to strip off, had to peel off,
        had to pull off, had to get off, ended up taking off, decided to take off, decided to remove,
        decided to ditch, decided to pull, managed to take off, managed to get off,
        managed to remove, went and took off, went ahead and took off, gone and took off,
        after taking off, am taking off, im taking off, did take off, did remove, already took off,
        already taken off, taking off, whipping off, pulling off, peeling off, peeling, slipping off,
        have had off, had off, took away, taken away, take out, took it away, came off, come off,
        has come off, slipped out of, dropped a layer, down a layer, undressed of, unclothed,
        discarded, cast off, binned off, flung off, threw off, thrown off, chucked off, rugs off
    """,
    "stripped": """
        stripped, undressed, stripped off, de rugged, derugged, stripped down, untacked, unrugged,
        unblanketed, deblanketed, de blanketed, stripped her off, stripped him off, stripped naked,
        stripped to nothing, stripped bare, stripped her down, stripped him down, stripped right off,
        stripped right down, undressed fully, stripped completely, stripped totally,
        stripped of everything, stripped of all his rugs, stripped of all her rugs,
        stripped out of everything
    """,
    "took": """
        took, taken, taking, whipped, slipped, had, dragged, hauled, yanked, hoiked, hoicked, lifted,
        tugged, wrestled, eased, whisked, i take, we take, i have take, have took, had to take,
        had to get, had to pull, had to whip, had to slip, had to peel, had to drag, had to haul,
        ended up taking, ended up pulling, decided to take, decided to pull, decided to whip,
        managed to take, managed to get, went and took, went ahead and took, gone and took,
        after taking, am taking, im taking, did take, already took, whipping, slipping, sliding,
        dragging, got, get, getting, came, come, coming, popped
    """,
    "wears": """
        wearing, wears, dressed in, rugged in, rugged up in, blanketed in, changed into, switched
        into, changed to, switched to, moved into, tucked up in, put in, rugged up with, rugged with,
        back in, now in, wearing just, rugged up, put into, dressed, just in, only in, changed over
        to, went into, gone into, has on, down to, up to, gone down to, went down to, went up to, gone
        up to, back into, over to, switched over to, still in, clothed in, rocking, sporting,
        modelling, modeling, layered in, layered up in, layered up with, is in, has got on,
        dolled up in, snuggled in, snuggled up in, snuggled into, cocooned in, bundled in,
        bundled up in, bundled into, wrapped in, wrapped up in, swaddled in, popped into, popped in,
        stuck into, chucked into, shoved into, squeezed into, buttoned into, zipped into,
        zipped up in, buckled into, strapped into, decked out in, decked in, kitted out in,
        kitted out with, standing in, stood in, living in, still wearing, now wearing, currently in,
        currently wearing, presently in, swapped to, swapped into, swapped over to,
        swapped over into, swapped back to, swapped back into, switched over into, switched back to,
        switched back into, changed over into, changed back into, changed back to, changed her to,
        changed him to, changed her into, changed him into, upgraded to, upped to, bumped up to,
        bumped to, bumped down to, downgraded to, dropped to, dropped down to, dropped back to,
        dropped into, dropped her to, dropped him to, moved up to, moved down to, moved on to,
        stepped up to, stepped down to, went with, gone with, going with, went for, gone for,
        opted for, settled on, reverted to, gone back to, gone back into, went back to,
        went back into, sticking with, stuck with, stayed with, staying in her, staying in his,
        stayed in her, stayed in his, remains in, remains in her, still has on, just has on,
        only has on, only got on, just got on, only wearing, just wearing, wears only, wears just,
        nowt but, got on just, cosy in, comfy in, snug in, tucked up with, all dressed in, all in,
        re rugged in, rerugged in, reblanketed in, re dressed in, redressed in, covered by, clad in,
        sitting in, put back in, put back into, back wearing, use, uses, using, has only
    """,
    "in": """
        in, into, intae, within
    """,
    "on": """
        on, onto, back on, oan, on her, on him, atop
    """,
    "off": """
        off, aff, off of, offa
    """,
    "has": "has, got, have, with, had",
    "swapped": """
        swapped, changed, switched, replaced, exchanged, swopped, traded, swap, subbed, swapped over,
        i change, i changed, i have changed, we change, we changed, ive changed, ive swapped,
        have changed, have swapped, just swapped, just changed, just switched, changing, swapping,
        switching, swapping over, i swap, i switch, we swap, swop, swopping, swapt, swoped, chopped,
        flipped, flipped over, had to change, had to swap, had to switch, decided to change,
        decided to swap, decided to switch, ended up changing, ended up swapping, ended up switching,
        went ahead and changed, went and changed, went and swapped, gone and swapped, after changing,
        after swapping, am changing, im changing, did change, did swap, did a swap, did a switch,
        did a quick swap, quick swap, already changed, already swapped, traded out, traded in,
        switched out, swapped out, subbed out, subbed in, changed out, replaced with, substituted,
        exchanging, trading, upgraded, downgraded, rotated
    """,
    "instead of": """
        instead of, rather than, in place of, insted of, in lieu of, rather then, in preference to,
        no more, as opposed to
    """,
    "for another": """
        for, to, with, into, onto, in for, in exchange for, over to, out for, up to, down to,
        back to, back into, over into, with the, for the, to the, into the
    """,
    "over": """
        over, over the top, on top, on top of, under, underneath, over top, as well,
        as another layer, on the top, over top of, overtop, overtop of, ontop, ontop of, on top over,
        over it, under it, on top too, on top as well, as an extra layer, as extra layer,
        as a second layer, as a base layer, as a top layer, as the top layer, underneath it, below,
        beneath, in addition, additionally, plus, doubled up, layered, layered over, layered under,
        layered with, together with, along with, as well as, extra
    """,
    "bare": """
        bare, naked, nekkid, rugless, unrugged, no rug, no rugs, no blanket, no blankets, without a
        rug, without rug, without rugs, without a blanket, nothing on, wearing nothing, nude,
        unblanketed, not wearing anything, no clothes, unclothed, no rug on, no rugs on, no blanket
        on, not rugged, birthday suit, in the nude, starkers, in the buff, in her birthday suit, in
        his birthday suit, rug free, nothing at all on, got nothing on, has nothing on, left bare, no
        clothes on, without anything on, nakey, au naturel, in just her coat, in just his coat, out of
        her rug, out of his rug, out of her rugs, out of his rugs, nekked, nakid, starkers again,
        bare as a badger, bare as the day, bare as a babys bum, in the nuddy, nuddy, in the nip,
        in the scud, in the raw, stark naked, butt naked, buck naked, buck nekkid, commando,
        going commando, au natural, au naturale, in nothing but, in his own coat, in her own coat,
        in its own coat, in own coat, just her own coat, just his own coat, in his fur, in her fur,
        in just his fur, in just her fur, in nothing but fur, blanketless, blanket free,
        with nowt on, nowt on, with nothing on, wearing nowt, not got a rug on, not got rug on,
        not got any rugs on, not got a blanket on, no rug on at all, no rugs at all, not a stitch on,
        without a stitch on, without a stitch, not a thing on, no thing on,
        does not have anything on, has not got anything on, has not anything on, not got anything on,
        not got owt on, has not got a rug on, has not got a blanket on, has no rug on,
        has no rugs on, has no blanket on, have no rug on, have no blanket on, got no rug on,
        got no rugs on, got no blanket on, got no rug, sans rug, sans rugs, sans blanket,
        sans blankets, no jacket on, no coat on, is not wearing a rug, is not wearing anything,
        is not wearing nothing, is not got nothing on, is not got anything on, not wearing a thing,
        not wearing a rug, not wearing a blanket, not wearing rug, not wearing nothing,
        not wearing any rug, not wearing any rugs, wears nothing, wear nothing, is without rug,
        is without blanket, without his rug on, without her rug on, without any rug,
        without any rugs, without any blanket, without any blankets, without rugs on, without rug on,
        without a rug on, without a blanket on, without blanket, without blankets, no blankie,
        no blankies, no layers, no layers on, zero rugs, zero blankets, zero layers, uncovered,
        no cover, undraped, unclad, unrugged again, bare now, bare again, no anything on,
        nothing on at all, nothing on his back, nothing on her back, got nowt on, has nowt on,
        had nowt on, wearing his own coat, wearing her own coat, wearing own coat, birthday suits,
        in birthday suit, in birthday suits, as nature intended, as god made him, as god made her,
        as god intended, in the all together, in the altogether, altogether
    """,
    "nothing": """
        nothing, anything, everything, nowt, owt, naught, nuthin, nothin, anythin, evrything,
        everythin, diddly squat, zilch, zip, sweet fa, nada, the lot
    """,
    "without": """
        without, no, w o, wo, sans, minus, lacking, wi out, withoot, out of, out of his, out of her
    """,
    "clipped": "clipped, clip, a clip, been clipped, was clipped, got clipped, clipped out, clipping, clips",
    "style none": "unclipped, grown out, coat is grown, clip has grown out, clip grown out, coat back",
    "style bib": "bib, bib clip, bib clipped, apron",
    "style trace": "trace, trace clip, trace clipped, high trace, low trace, chaser",
    "style blanket": "blanket clip, blanket clipped",
    "style hunter": "hunter, hunter clip, hunter clipped",
    "style full": """
        full, full clip, fully, fully clipped, body clip, body clipped, full clipped, full body, full body
        clip
    """,
    "place stall": """
        stall, stalls, box, barn, indoors, inside, stable, loose box, loosebox, under cover, stables, in box
        rest, stall rest, box rest
    """,
    "place field": """
        field, pasture, paddock, outside, outdoors, grass, meadow, dry lot, drylot, fields, in turnout, on
        turnout, out in turnout, out on turnout, sand paddock, bottom field, top field, back field, lower
        field, upper field, big field, back pasture, small paddock, round pen, turnout field
    """,
    "inwards": "in, inside, indoors, back in, in now, in early",
    "outwards": "out, outside, outdoors, back out, out now",
    "brought": """
        had to bring, had to take, had to move, had to fetch, had to get,
        brought, came, moved, put, led, turned, kept, walked, bringing, turning, moving, back,
        leading, putting, keeping, popped, let, left, fetched, chucked, shoved, stuck, got, took, have
        put, have brought, shifted
    """,
    "stays": """
        stays, staying, stayed, is staying, will stay, will be staying, stay, spending the night, sleeping,
        spends the night
    """,
    "brought in": """
        stabled, stalled, boxed up, brought in, came in, come in, brought inside, fetched in, has come
        in, have come in, has been brought in, stabled for the night, stalled for the night, put to
        bed, in for the night, tucked up for the night, tucked in for the night, came inside, walked
        in, in bed, tucked up in, tucked in, settled in
    """,
    "turned out": """
        turned out, turned back out, let out, put out, chucked out, kicked out, went out, has gone
        out, have gone out, gone out, has been turned out, have turned out, let loose, back out in the
        field
    """,
    "keep": "keep, keeping, leave, want, kept, wants, prefer, like, stay, stays, to stay",
    "please": "please, from now on",
    "do not rug": """
        do not rug, do not put a rug on, do not put rugs on, do not put a blanket on, never
        rug, no rugs for, no rug for, no blankets for, no blanket for, not to be rugged, not to be blanketed,
        is not to be rugged, should not be rugged, should be bare, is to be bare, to be kept bare,
        please dont rug, please dont blanket, no blanketing, stop blanketing,
        stop rugging, do not blanket, quit blanketing
    """,
    "rug again": """
        can be rugged again, can be blanketed again, can wear rugs again, can wear a rug again, may be rugged,
        may be rugged again, may be blanketed again, may wear rugs again, may wear a rug again, ok to rug,
        okay to rug, ok to blanket, okay to blanket, fine to rug, fine to blanket, can have rugs again, can
        have a rug again, can have her rug again, can have his rug again, can be rugged, can be blanketed, can
        wear a rug, can wear rugs, can wear blankets again, can wear a blanket again, can have blankets again,
        can have a blanket again, no longer needs to be bare, does not have to be bare, does not need to be
        bare, no need to keep, does not have to stay bare, does not need to stay bare, back to normal rugging,
        rug as normal, rug as usual, blanket as normal, blanket as usual, can go back to being rugged, allowed
        rugs again, can rug, can blanket, may wear clothes again, can wear clothes again, can wear clothes,
        can have clothes again, may be blanketed, may be covered again, no longer has to stay bare,
        no longer has to be bare, no longer needs to stay bare, can stop being bare, bare no longer,
        does not need to be kept bare, no need to be bare, may be rugged again now
    """,
    "worked": """
        ridden, rode, ride done, had a lesson, had her lesson, had his lesson, had their lesson, did a
        lesson, did her lesson, did his lesson, lunged, longed, schooled, hacked, hacked out,
        exercised, had a ride, had a schooling session, went for a hack, went for a ride, been ridden,
        been worked, was worked, got worked, worked, finished her lesson, finished his lesson,
        finished the lesson, finished a lesson, back from a hack, back from a ride, back from her
        lesson, back from his lesson, back from the lesson, back from a lesson, back from hacking,
        back from our ride, back from our hack, had a jump lesson, had a jumping lesson, had a flat
        lesson, had a hack, took a lesson on, took a lesson, for a hack, for a ride, done a lesson,
        done her lesson, done his lesson, worked hard, had a workout, ridden out, was ridden, lunge
        done, lunging done, has been ridden, has been worked, has been lunged, has had a lesson, long
        reined, long lined, jumped, galloped, cantered round, driven, hacked round, hacked for,
        flatworked, did flatwork, did some flatwork, had a flatwork lesson, had a dressage lesson, had
        a jump school, had some schooling, schooled for, been hacked, been lunged, been schooled, been
        out hacking, been for a hack, been for a ride, been on a hack, went on a hack, came back from
        a hack, free schooled, loose schooled, back from riding, back from schooling, in from a hack
    """,
    "had": "had, did, finished, has had, have had, just did, done, did some, did a, gave",
    "after": """
        after, from, following, post, because of, since, due to, thanks to, straight after, just
        after, fresh from, fresh off, back from, in from, came out of, come out of, came back from,
        came in from, coming out of
    """,
    "work": """
        lesson, ride, riding, hack, hacking, work, working, training, lunging, longeing, schooling,
        jumping, exercise, gallop, galloping, being ridden, being worked, school, jump lesson,
        flatwork, lunge, workout, being lunged, jump, flatwork lesson, school session, dressage,
        dressage lesson, competing, competition, show, cantering, lunge session, trail ride, gallops,
        cross country, the school, arena, the arena, xc
    """,
    "done": """
        done, finished, sorted, changed, all set, all sorted, done now, complete, ✓, ✔, ✅, ☑, all done
        and dusted, rugs done, blankets done, done and dusted, taken care of, rugged as planned, as
        planned, dressed as planned, rugged, blanketed, rugs changed, all rugged, rugged and done,
        dealt with, ticked off, tick, ticked, changed over, finished with, done with, i have done, we
        have done, have done, seen to, put right, sorted out, rugged up as listed,
        rugged as listed, dressed as listed, changed as listed, rugged as per the list,
        rugged as per list, rugged up as per the list, as per the list, as per list, as listed,
        per the list, as on the list, rugged up as planned
    """,
    "everyone": """
        all but, everyone, everybody, all, everything, every one, the lot, whole barn, all of them,
        all of em, the lot of them, every single one, all the neddies, all the gang, the gang, all
        nags
    """,
    "the rest": """
        the rest, everyone else, everybody else, the others, others, all the others, the rest of them,
        all the rest, every other horse, all other horses, remaining horses, the remaining ones
    """,
    "all horses": """
        all horses, all the horses, every horse, all of the horses, all ponies, all the ponies, the
        horses, the whole herd, horses, all of the neds, all the neds, neddies, every single horse,
        every pony, all nags, all the nags, whole string, the whole string, entire barn, the entire
        barn
    """,
    "both": "both, both of them, the two of them, all three, both horses",
    "all": "all, all of, both, all the, both of, each of, every",
    "except": """
        except, except for, but, apart from, bar, other than, all but, minus, save for, besides, aside
        from, leaving out, not counting, excluding, with the exception of
    """,
    "all done": """
        all done, everyone done, everybody done, everyone is done, everybody is done, all horses done,
        all finished, all the horses are done, all horses are done, everyone sorted, everyone is
        sorted, all rugs done, all rugged, round done, round is done, everyone changed, everyone is
        changed, everyone is rugged, all rugs changed, everyone finished, whole barn done, whole barn
        is done, all the horses done, all the rugs are done, everything is done, everyone has been
        done, all have been done, finished everyone, finished all, done everyone, done all, done them
        all, everyone ✓, all ✓, everyone ✅, all ✅, done with everyone, everyone is finished, done the
        lot, the lot done, finished the lot, all of them done, that is everyone, that is everyone
        done, that is all of them done, that is them all done, that is the lot, everyone is sorted
        out, round finished, rounds done, rounds finished, all rounds done, morning round done,
        evening round done, night round done, morning round finished, evening round finished, finished
        the round, finished my round, finished my rounds, finished all the horses, did them all, did
        everyone, did all of them, done all of them, done everybody, everyone rugged, everybody
        rugged, everybody is rugged, all changed, all are done, all the rugs are on, all rugs on, all
        rugs are on, all rugs sorted, all sorted, everybody sorted, everybody is sorted, all ten done,
        all eight done, all nine done, all twelve done, all seven done, all six done, all eleven done,
        got everyone done, got them all done, everyone ticked off, everyone dealt with, all horses
        rugged, all horses changed, list done, evening list done, morning list done, whole list done,
        the list is done, list is done, list finished, all on the list done, that is me done everyone
        rugged, evening is done, morning is done, evening done, morning done, evenings done,
        mornings done, evening stables done, morning stables done, all of the horses done,
        all horses rugged as per the list, whole yard done, whole yard is done,
        the whole yard is done, yard done, whole yard finished, whole place done
    """,
    "undo": """
        undo, undo that, undo it, undo last, scratch that, take that back, ignore that, ignore my
        last, ignore my last message, my mistake, wrong horse, delete that, cancel that, strike that,
        disregard, disregard that, disregard my last, that was a mistake, undo please, please undo,
        revert that, scrap that, undo that last one, undo the last one, undo my last, my bad, undo my
        last message, forget my last, forget my last message, forget my last
        one, ignore the last one, ignore the last message, ignore last, ignore last message, delete my
        last, delete my last message, delete last, delete the last one, remove that, remove my last,
        wrong one undo, sorry undo, take it back, take back my last, take back the last one, retract
        that, rewind, cancel my last, cancel last, cancel the last one, oops wrong horse, oops wrong
        one, that was wrong, that was wrong undo, strike my last, reverse that, scrap my last one,
        scrap my last, scrap the last one, scrap it, bin that, bin my last one, bin my last,
        undo my last one, undo my last report, take back my last one, delete my last one,
        ignore that last one, ignore that one, forget that, forget that one, forget that last one,
        scrap that one, scratch that last one, scratch that last, scratch my last, was wrong,
        it was wrong, i was wrong, pressed the wrong thing, i pressed the wrong thing, wrong button,
        hit the wrong button, wrong one, typed the wrong one, that was the wrong one,
        that was the wrong horse, undo what i said, take that one back, scrap that last one,
        scrap that last, ignore what i just said, ignore what i said, forget what i said,
        forget what i just said, cancel what i said
    """,
    "no": "no, nope, wrong, sorry, oops, correction, nah, not",
    "i mean": "i meant, i mean, meant, rather, actually, make that",
    "yes": "yes, yep, yeah, yup, correct, right, exactly, that one",
    "neither": """
        neither, none, none of them, nobody, no one, cancel, never mind, nevermind, neither of them, forget it
    """,
    "first": "first, the first, first one, 1st, one, number one",
    "second": "second, the second, second one, 2nd, two, number two",
    "third": "third, the third, third one, 3rd, three, number three",
    "not": """
        not, no, never, do not, does not, did not, no longer, nor, neither, none, isnt, arent, wasnt,
        without any, isn, no more, nothing like, hardly, by no means
    """,
    "stopped": """
        stopped, quit, no longer, not any more, no more, ceased, stop, stopping
    """,
    "not any more": "anymore, any more, any longer, now",
    "nearly": "nearly, almost, mostly, not quite, halfway, half, not fully, not completely, not yet, barely",
    "a little": """
        a bit, a little, a little bit, bit, slightly, a touch, a tad, little, somewhat, a wee bit, kind of,
        kinda, sort of
    """,
    "very": """
        very, really, so, super, quite, pretty, totally, completely, absolutely, extremely, properly,
        well, rather, all, thoroughly, fairly, dead, seriously, proper, awfully, v, vv, super duper,
        mega, crazy, ridiculously, incredibly, terribly, horribly, really really, very very, way, far,
        ever so, awful, perfectly, nicely, lovely and, bloody, flipping, freaking, really quite
    """,
    "if": "if, unless, in case, whether, as long as, as soon as, provided, otherwise, even if, or else, so that",
    "when": """
        when, while, by the time, until, till, before, where, whenever, although, though, despite,
        in spite of, even with, even in
    """,
    "was": "was, were, had, been, has been, had been, have been",
    "plan": """
        will, going to, gonna, tomorrow, tmw, next week, next time, next month, later,
        should, shall, would, could, can, may, might, must, need, needs, need to, needs to, want,
        wants, let us, lets, please, remember, do not forget, make sure, hope,
        forgot to put, forgot to take, forgot to change, forgot to swap, forgot to rug, forgot to bring,
        forgot to turn, forgotten to put, forgotten to take, forgotten to change, meant to put, meant to take,
        meant to change, tried to put, tried to take, nearly put, nearly took, almost put, almost took,
        hoping, hopefully, plan, plans, planning, maybe, perhaps, probably, wonder, wondering, about
        to, due, ought, have to, has to, supposed to, expecting, getting ready to, shall we, unlikely,
        likely, ready to, i will, want to, wants to, asking, ask, asked, remind, reminder, booked,
        appointment, scheduled, gets his, gets her, watch out, keep an eye, worried, afraid, scared,
        wish, wishes, would be, will be, won t, do not let, how about, what about, this weekend, at
        the weekend, looking for, imagine, pretend, try, trying, tries, thinking of, thinking about,
        considering, better to, used to be, soon, do not want, trying to, think we should, be careful,
        beware, next, in spring, in the spring, in summer, nobody, no one, somebody, anybody, for
        sale, selling, sold, buy, bought, buying, order, ordered, ordering, ready for, take, bring,
        pull, remove, swap, strip, throw, watch, check, look at, tell me, text me, let me know, in
        case, if needed, if need be, just in case, on saturday, on sunday evening, on monday, on
        tuesday, on wednesday, on thursday, on friday, being clipped, to be clipped, wanna, might
        need, due a, due for, booked in, postponed, cancelled, canceled
    """,
    "habit": """
        always, usually, often, sometimes, every time, hates, hate, loves, love, tends, prone, used
        to, gets, generally, normally, every day, every night, every morning, every winter, easily,
        rarely, likes, enjoys, prefers, famous, typical, known to, doesn t, does, do, did, never,
        ever, anything like, like a, as a, than, reminds, story, joke, haha, hahaha,
        dream, dreamed, dreamt, poor people, movie, song, book, photo, picture, pic, video, on
        facebook, on instagram, on tiktok, on tv, on the telly, in that photo, in the photo, in this
        photo, in the picture, in the pic, on whatsapp, feels the heat, feels the cold, gets cold,
        gets hot, never sweats, always sweats, tends to, prone to, used to sweat, for a laugh, lol, lmao
    """,
    "bare weather": """
        misty, sunny, frosty, snowy, windy, foggy, cloudy, stormy, breezy, rainy, dusty, muddy, storm, cloud,
        breeze, sun, wind, thunder
    """,
    "brings weather": "there is, there was, some, heavy, more, such",
    "mass": "rain, snow, ice, hail, frost, fog, sleet, drizzle, summer, winter, spring, autumn, fall",
    "yesterday": "yesterday, yesterday morning, yesterday evening",
    "long ago": """
        last week, last month, last year, last winter, last summer, last time, the other day, weeks ago, days
        ago, months ago, years ago, a week ago, a month ago, a year ago, back then, once upon, last season,
        last spring, last autumn, last fall, when she was, when he was, as a foal, as a baby
    """,
    "weekday": """
        monday, tuesday, wednesday, thursday, friday, saturday, sunday, mondays, tuesdays, wednesdays,
        thursdays, fridays, saturdays, sundays, mon, tue, tues, wed, thu, thur, thurs, fri, weekend
    """,
    "weather": """
        rain, storm, sun, sunny, misty, frost, frosty, snow, snowy, wind, windy, fog, foggy, cloud, cloudy,
        stormy, winter, summer, spring, autumn, fall, hail, breeze, breezy, thunder, sleet, drizzle, raining,
        snowing, rainy, ice, dusty, muddy
    """,
    "guess": """
        do not think, not sure, no idea, doubt, unsure, do not know, not certain, no
        clue, can not tell, could be, may be, must be, might be
    """,
    "said": """
        says, said, reports, thinks, think, told me, reckons, noticed, saw, reckon, tells me, reported, heard,
        apparently, texted, just told me, looks like, guess, i guess, see, seen, spotted, checked, just
        checked, just saw, guys, heads up, fyi, update, news, help, urgent
    """,
    "what": "what, which, whats",
    "question": """
        is, are, was, were, does, do, did, has, have, who, whose, what, which, where, why, how, anyone, can,
        could, should, will, would, shall, am, any, has anyone, did anyone, is anyone, does anyone, whats,
        wheres, whos, hows
    """,
    "idiom": """
        sick of, sick and tired of, sick to death of, hot on his heels, hot on her heels, hot on the heels,
        is so cool, off with me, off with everyone, cold comfort, hot property,
        wet behind the ears, hot to trot, cold feet, cold shoulder, do not sweat, hot mess,
        cold backed, in season, in heat, in foal, in charge, in love, in trouble, in a mood, in a bad
        mood, in good form, out of hay, out of work, in work, in training, good girl, good boy, good
        to go, good as gold, in the way, in a way, hot shot, out of the way, out of control, on fire,
        cold snap, hot water, cold water, rub down, rubbing post, hot tea, hot chocolate, hot drink,
        cold drink, cold beer, hot stuff, no worries, no problem, well done, nicely done, great job,
        good job, nice job, good work, done deal, over and done, chicken out, working out, in good
        hands, wet wipes, in fine form, dry sense, dry humour, dry humor, hot topic, get dry, out
        cold, out of sorts, hot shoeing, cold hosing, cold hosed, a cold, wet suit, hay is done, cold
        one, cold ones, clean bill, out again, got out, broke out, got loose, to dry, hung out to dry,
        up to dry, drying out, feet done, teeth done, hot in the lesson, work done, all done for today
        in the ring, all over, done in, sweat shop, soaked hay, soaked beet, frozen solid pipes, hot
        date, hot gossip, cool as a cucumber, cold calling, cold tea, cold coffee, cold brew, cold
        spell, cold front, wet weather, wet week, wet room, dry january, dry feed, dry shampoo, dry
        land, stone dead, sick note, sick day, off sick, call in sick, star of the show, star job,
        gold star, you are a star, dead on my feet, cool box, bin liner, bin liners, bed sheet, bed
        sheets, dust sheet, dust sheets, baking sheet, spread sheet, sign up sheet, hood of the car,
        cooler bag, cooler box, drinks cooler, water cooler, wine cooler, liner of the bin, boot
        liner, freezer bag, picnic rug, picnic blanket, dog blanket, dog bed, cat bed, rug in the
        office, shaking her head, shaking his head, shaking hands, shaking out, shaking off,
        jumped out, jumped the fence, jumped the gate, barn cat, yard cat, stable cat, the cat,
        the dog, yard dog, barn dog, my dog, my cat, the puppy, the kitten, the goat, the chickens,
        the hens, barn group, group chat, yard group, barn chat, not a happy bunny,
        not a happy camper, rubbed shoulders with, gave him a rub, gave her a rub, give him a rub,
        give her a rub, a good rub, a rub down, a neck rub, neck rub, a shoulder rub,
        a good rub down, rubdown, rubbing his tail, rubbing her tail, rubbing his mane on,
        rubbing her mane on, rubbing his bum, rubbing her bum, rubbing his head on,
        rubbing her head on, rubbing his face on, rubbing her face on, rubbing against,
        rubbed his head on, rubbed her head on, rubbed his face, rubbed her face, rubbing his eye,
        rubbing her eye, rubbing on the fence, rubbing on the tree, rub of the green, rub salt,
        rubbing it in, rub it in, rubbing off on, rubbed off on, rubbed me up,
        rubbed up the wrong way, rubs me up, sweating over, sweating the small stuff,
        sweat the small stuff, sweat equity, sweat pants, sweatpants, sweatshirt, sweat shirt,
        sweat band, sweatband, sweat lodge, sweating it out, no sweat mate, no sweat hun, no sweat i,
        blood sweat and tears, break a sweat, without breaking a sweat, sweat of my brow,
        shiver me timbers, sent shivers, send shivers, gives me the shivers, shivers down my spine,
        shiver down my spine, shaking my head, shaking in my boots, shaking the bucket,
        shaking a bucket, shaking it off, shake it off, shaking things up, shaking up,
        shaking like a leaf on, hands are shaking, shaking his mane, shaking her mane,
        protein shake, milkshake, shaking with laughter, shaking with rage, shaking with anger,
        shaking laughing, shaking with fright, hot off the press, hot cross buns, hot dog, hot dogs,
        hot flush, hot flushes, hot flash, hot flashes, hot ticket, hot favourite, hot favorite,
        hot spot, hotspot, hot tub, hot bath, hot shower, hot mash, hot bran mash, hot toddy,
        hot wine, hot food, hot meal, hot soup, hot pot, hot chips, hot brew, hot coffee, hot fudge,
        hot air, hot seat, hot potato, hot blooded, hot blood, hot bloods, hot head, hot headed,
        hot horse, hot ride, hot to ride, hot under saddle, hot in the school, hot in the arena,
        hot in the jump off, hot on the buckle, hot in the contact, hot this week for jumping,
        hot walk, hot walker, hot walked, hot wire, hot wired, hot and cold taps, hot tap, hot tip,
        hot take, hot rod, hot fuzz, so hot right now, smoking hot, red hot favourite,
        like hot cakes, hot cakes, selling like hot cakes, in the hot seat, hot one today,
        boiling kettle, boiling the kettle, boiling water, boiling point,
        roast dinner, roasting a, roasting tin, baking a, baking cakes, baking a cake, been baking,
        cooking dinner, cooking tea, cooking lunch, cooking supper, cooking for, what is cooking,
        cooking on gas, cooking tonight, steaming hay, steaming the hay, steamed hay, hay steamer,
        steaming ahead, full steam, melting pot, cold nose,
        cold caller, cold callers, cold sore, cold sores, common cold, head cold, stinking cold,
        man flu, cold turkey, cold pizza, cold chips, cold laser, cold compress, cold pack, ice pack,
        cold hose, cold hosing her, cold hosing his, hosing, cold weather, cold air, cold wind,
        cold day, cold days, cold night, cold nights, cold morning, cold mornings, cold outside,
        cold out, cold out there, cold out here, cold in here, cold enough for, cold enough to,
        cold house, cold car, cold office, cold tap, cold bit, cold bath, cold shower, cold start,
        cold store, cold water tap, cold back, cold backed again, cold light of day, cold blooded,
        cold bloods, cold fish, cold steel, cold case, left me cold, leaves me cold,
        left out in the cold, catch a cold, catch my death, caught a cold, caught cold, got a cold,
        has a cold, full of cold, full of a cold, a bad cold, a chest cold, freezing cold tap,
        freezing cold wind, frozen pipes, frozen pipe, pipes are frozen, pipes have frozen,
        pipes frozen, tap is frozen, taps are frozen, tap frozen, taps frozen, water is frozen,
        water frozen, trough is frozen, trough frozen, troughs frozen, troughs are frozen,
        buckets frozen, ground is frozen, ground frozen, frozen ground, frozen solid out,
        frozen hay nets, frozen taps, frozen water, frozen peas, frozen pizza, frozen yoghurt,
        the movie frozen, frozen two, frozen 2, cool it, cool story, cool off period,
        cool guy, cool name, cool dude, cool kid, cool kids, cool about it, cool with that,
        cool with it, cool beans, so cool, how cool, way cool, too cool for school, cool photo,
        cool pic, cool pics, cool pictures, cool video, cool idea, keep cool, keep calm, chill pill,
        chill out, chilling out, netflix and chill, chilled wine, chilly bin,
        chilling by the fire, wet blanket person, a wet blanket, such a wet blanket,
        being a wet blanket, wet lettuce, wet weekend, wet week ahead, wet nose, wet shavings,
        wet straw, wet bed, wet beds, wet patch, wet patches in, wet hay, wet feed, wet feet,
        wet socks, wet boots, wet ground, wet field, wet fields, wet day, wet days, wet night,
        wet morning, wet stuff, wet out, wet outside, wet out there, wet paint, wet dog, wet play,
        wet spring, wet summer, wet winter, wet autumn, wet wipe, wetsuit, dry run, dry cleaners,
        dry cleaning, dry clean, dry matter, dry hay, dry straw, dry bed, dry beds, dry shavings,
        dry ground, dry day, dry days, dry weather, dry spell, dry night, dry socks, dry boots,
        dry clothes, dry gloves, dry coughs, dry white, dry wine, dry stone wall, dry stone,
        dry wall, drywall, dry docks, dry skin, dry lips, dry mouth, dry nuts, dry food,
        dry tea, dry out there, dry outside, high and dry, home and dry, bled dry, run dry, ran dry,
        wells dry, well is dry, trough is dry, water trough dry, damp squib, damp hay, damp the hay,
        damp course, dampen, dampened feed, damp feed, soaked hay nets, soaked nuts, soaked his hay,
        soaked her hay, soaked the hay, soaked his feed, soaked her feed, soaked his beet,
        soaking hay, soaking the hay, soaking her hay, soaking his hay, soaking beet,
        soaking his feed, soaking her feed, soaking sugar beet, soak hay, hay soaking, beet soaking,
        soaking his foot, soaking her foot, soaking his hoof, soaking her hoof, soaking up,
        soaked up the atmosphere, poulticed, drenching, drench gun, worm drench, dripping tap,
        dripping in gold, dripping in diamonds, torn between, torn ligament, torn tendon,
        torn muscle, torn a muscle, tore a muscle, torn meniscus, torn acl, torn hamstring,
        torn cartilage, tear in my eye, tear in the eye, tear jerker, tears in my eyes, in tears,
        burst into tears, tearing round, tearing around, tearing about, tore around, tore round,
        tore off across, tore down the field, tore across, ripping up and down, ripping around,
        rip roaring, rip off, ripped off by, ripped me off, rip off merchants, let rip, let it rip,
        rip to, r i p, rest in peace, split the cost, split the bill, split cost, split the hay,
        split payment, split lip, split ends, split shift, split hoof, split up with,
        split in half the, splitting hairs, splitting headache, lickety split, hole in one,
        hole in the fence, hole in the hedge, hole in the roof, hole in the wall, hole in my,
        hole in the field, hole in his foot, hole in her foot, hole in the hay, holes in the field,
        holes in my, holes in the fence, rabbit hole, rabbit holes, pot holes, potholes, pothole,
        pot hole, hole poked, watering hole, hidey hole, cake hole, key hole, button hole,
        missing a shoe, missing shoe, missing his shoe, missing her shoe, missing one shoe,
        missing you, missing out, missing him, missing her, missing his mate, missing his friend,
        missing her friend, missing her mate, missing her mum, missing dog, missing cat,
        missing person, lost a shoe, lost his shoe, lost her shoe, lost shoe, lost one shoe,
        lost both shoes, lost a front shoe, lost a hind shoe, lost near fore, lost the plot,
        lost his marbles, lost her marbles, lost it with, lost his rag, lost her rag, lost my rag,
        lost weight, lost condition, lost a stirrup, lost her stirrup, lost my stirrups,
        lost my phone, lost my keys, lost my glove, lost my gloves, lost his boot, lost her boot,
        lost an overreach boot, lost overreach boot, lost a boot, lost a tooth, lost his mind,
        lost her mind, lost my mind, lost my voice, lost for words, lost count, lost cause,
        lost a mate, lost our, lost track, stolen goods, stolen my heart, stolen tack,
        nicked her leg, nicked his leg, nicked the, destroyed me, wrecked my, ruined my,
        ruined the mood, trashed the stable, trashed the fence, trashed his box, trashed his stall,
        trashed her stall, trashed her box, wrecked his box, wrecked her stable, wrecked her stall,
        wrecked the fence, trashed the school
    """,
    "i": """
        i, we, you, someone, somebody, anyone, anybody, me, us, my, our, your, mine, im, ive, weve, youre,
        y'all, myself, ourselves, yourself, man, men, girl, girls, guy, boy, boys, kid, kids, lady, mum, mom,
        dad, husband, wife, daughter, son, vet, farrier, dentist, my  my hand, my
        my  my  my nose, my face, my arms, my knees, my bones, my bum, my gloves, my boots,
        my socks, my coat, my jacket, my hat, my hair, my phone, my car, my van, my truck, my house,
        my tea, my coffee, my brew, my breakfast, my lunch, my dinner, my wellies, my jeans, my jods,
        my jodhpurs, my pants, hubby, hubs, partner, boyfriend, girlfriend, bf, gf, nan, gran,
        granny, grandma, grandad, grandpa, mam, mammy, mummy, daddy, sis, sister, brother, missus,
        the missus, fella, the fella, our kid, lass, lasses, bairn, bairns, wean, weans, kiddos,
        toddler, toddlers, niece, nephew, aunt, auntie, uncle, cousin, boss, client, clients,
        student, students, working pupil, liveries, neighbour, neighbours, neighbor, neighbors,
        landlord, plumber, electrician, postman, postie, delivery driver, delivery man, hay man,
        feed man, instructor, coach, jockey, parents, parent, teacher, doctor, nurse, builder,
        builders, roofer, mother in law, in laws, volunteers, volunteer, helpers, yous, ye, thee,
        thou, ya, yourselves, somebody has, somebody left, somebody put, somebody took,
        somebody else, someone else, the wife, the husband, the kids, the boys, the girls, the lads,
        other half, my other half, bank manager, insurance, hands, fingers, toes, feet
    """,
    "visitor": """
        vet, vets, farrier, farriers, dentist, physio, chiro, blacksmith, trainer, equine dentist, osteopath,
        saddler, massage
    """,
    "my": "my, our, mine",
    "some": "a, an, some, another, any",
    "she": "she, he, they, him, shes, hes, theyre, them, her, herself, himself, s he, who",
    "her": "her, his, their, its, hers",
    "my horse": "my horse, my pony, my mare, my gelding, my boy, my girl, my donkey, my lad, my old boy, my old girl",
    "it": "it, that, this, those, these, one",
    "article": "the, a, an, this, that, both, some, another, those, these, all, yer, ye, da",
    "of": "of, for, from, belonging to",
    "and": "and, &, +, plus, then, with",
    "but": """
        but, so, because, cause, also, however, whereas, while, and then, then, though, cus
    """,
    "too": "too, also, as well, same, ditto, same with, same for, so is, likewise, so does, and so is, the same",
    "helper": "",
    "is": """
        is, are, was, were, be, been, being, 's, has, have, had, got, gotten, getting, looks, looked, look,
        looking, seems, seemed, seem, feels, felt, feel, feeling, appears, acting, acted, standing, stood,
        came, come, comes, coming, arrived, stands, went, turned, gone, am, stays, stayed, keeps, kept, found,
        became, remains, started, starting, starts, started to, has a, has got, shows, showing, showed, in
        from, got caught in the rain and is, got caught in the rain and got,
        caught in the rain and is, got rained on and is
    """,
    "link": """
        just, doing, getting on, feeling, faring, really, also, still, again, already, now, here,
        there, up, back, down, to, even, right, only, quite, well, both, all, together, of, some,
        signs of, sign of, to be, definitely, clearly, certainly, obviously, indeed, actually, yes,
        yep, yeah, yup, too, as well, like, over, out, in, at, with, this, that, each, either,
        suddenly, properly, completely, fully, finally, currently, apparently, sadly, unfortunately,
        luckily, especially, particularly, patches of, lots of, loads of, off, full of, the whole,
        whole, entire, has been, had been, more, most, at all, much, anything, sure, btw, o, tho,
        though, visibly, under there, thankfully, once, once again, absolutely, clean, instead, no
        better, not better, no worse, better off, worse, at last, once more, bit, a wee, wee, umm,
        erm, em, four, five, six, seven, eight, nine, ten, eleven, twelve, nonetheless, anyway, as
        usual, nicely, overall, generally speaking, for sure, touch, to me, all over, unders, there
        is, there are, poor lad, poor girl, poor boy, poor mare, poor sod, bless her, bless him,
        underneath everything, leaking, leaks, is leaking, leaked, panting, puffing, blowing a bit,
        all about, hung up, hanging up, hung, hanging, needs help, need help, needs looking at, needs
        seeing to, needs the vet, need the vet, needs a vet, needs some help, needs you, here please,
        miserable, sorry for herself, sorry for himself, tucked up, really bad, really badly,
        so bad, so hard, 😂, 🤣, leaking like a sieve, leaks like a sieve, leaking badly, has leaked,
        letting water in, let water in, let the rain in, letting rain in, wants the vet,
        wants seeing to, wants looking at
    """,
    "time": """
        now, today, tonight, this morning, this afternoon, this evening, at the moment, right now,
        just now, at lunch, at lunchtime, since last night, last night, overnight, all night, all day,
        since this morning, since yesterday, at midday, at noon, earlier, a minute ago, an hour ago,
        minutes ago, hours ago, early, again, already, at night check, at breakfast, at dinner, for
        hours, for an hour, am, pm, oclock, o clock, so far, morning, evening, at feeding time, since
        lunch, since noon, at dawn, first thing, this am, this pm, mins ago, min ago, lunch, at night,
        at evening feed, at morning feed, for now, as of now, as of this morning, at feed, at the late
        check, late check, night check, ago, in this weather, in this rain, in this wind, in this
        cold, in the rain, in the wind, in the cold, in the sun, in the snow, in the storm, in the
        night, during the night, because of the rain, from the rain, from the snow, after the rain, by
        the rain, for the night, for the day, till morning, until morning, until tomorrow, this
        minute, for a week, for the week, for a few days, for two days, this week, yet, morning round,
        evening round, night round, late round, at evening stables, at morning stables, at night
        checks, on my round, on the round, on rounds, atm, this eve, this aft, tis
        morning, at half six, when i got there, when i got here, when i arrived, when i checked, on
        arrival, first thing this morning, for the time being, just then, mid morning, mid afternoon,
        at tea time, round done, from yesterday, from last night, from this morning, from earlier,
        since the weekend, from the weekend, caught in the rain, got caught in the rain,
        caught out in the rain, got caught out in the rain, caught in the storm,
        got caught in the storm, after the storm, in that storm, in this storm
    """,
    "hour": "at, around, about, by, since, before, after, until, from, til, till",
    "polite": """
        thanks, thank you, thx, ty, cheers, hi, hello, hey, morning, good morning, good evening,
        evening, all, hi all, hey all, morning all, guys, folks, everyone, sorry, btw, fyi, ok, okay,
        right, well, yes, yep, yeah, oh, oh no, ugh, omg, um, uh, hm, hmm, haybell, bot, oops, quick
        update, update, quick one, just checked, just checked on, been to check, checked, heads up,
        note, poor, poor old, poor thing, dear, old, little, big, sweet, lovely, team, so, looks like,
        bye, night, good night, x, xx, xxx, gosh, argh, brr, brrr, wow, damn, news, report, for the
        record, to report, reporting, quick note, fwiw, umm, erm, er, em, yo, evening all, morning
        everyone, hi team, hi folks, hi everyone, hey team, just to say, just to let you know, just so
        you know, quick question, ok so, right so, so yeah, guess what, fyi all, hiya, heya, howdy,
        please note, note to all, for info, just a heads up, ta, hi there, hello all, hello
        everyone, hope all well, from the yard, yard update, barn update, update from the yard, update
        from the barn, hello team, remind me, quick reminder of, can you remind me, can you tell me,
        could you tell me, tell me again, had a look at, took a look at, had a quick look at,
        went to see, been to see, been out to see, popped out to see, just been to see,
        just had a look at, went to check on, been to check on, may i ask, can i ask, could i ask,
        i was wondering, i wonder, i am afraid, can confirm, i can confirm, confirming,
        obvs, obviously, of course, ofc, hey siri, rundown, quick rundown, for you guys, dear old,
        just been down to check, been down to check, been down, just been down, popped down to check,
        went to check, went down to check, just been to check, been out to check, alright all, ey up,
        ay up, aye, aye aye, och, och aye, och no, hiya all,
        hiya guys, hey yall, howdy yall, hi yall, evening yall, morning yall, gday, g day, oi, oi oi,
        right then, righto, righty, righty ho, rightyo, okey, alrighty then, peeps, peoples, gang,
        ladies, chaps, gents, crew, mate, mates, luv, hun, hon, babe, my lovely, my lover, me duck,
        me ducks, pal, darlings, bless em, bless them, god love him, god love her, god bless, god,
        oh god, oh my god, oh my, oh dear, oh dear oh dear, oh lord, jeez, jesus, christ,
        jesus christ, for gods sake, for god's sake, for goodness sake, for fucks sake,
        for fuck's sake, ffs, bloody hell, flipping heck, flipping eck,
        blimey, crikey, strewth, struth, heck, what the heck, what the hell, hell, shit, oh shit,
        holy shit, holy cow, holy moly, crap, oh crap, oh crikey, damnit, dammit, dang, dang it,
        darn, darn it, bugger, bugger it, sod it, fuck, fuck sake, fk, wtf, lord, good lord, lordy,
        lord have mercy, mercy, goodness, goodness me, gracious, my goodness, wowzers, eek, yikes,
        uh oh, uhoh, oops a daisy, anyhoo, anyhow, anyways, any road, anyroad, anyway, basically,
        literally, honestly, honest to god, honest, swear to god, i swear, no joke, no word of a lie,
        i kid you not, not gonna lie, not going to lie, im not gonna lie, tbh, tbf, to be honest,
        to be fair, in fairness, imo, imho, ngl, innit, init, ya know, you know, yknow,
        you see, ye see, see here, mind you, mind, so there, so there you go, there you go,
        there we go, here we go, here goes, psa, nb, ps, p s, edit, attn, attention, attention all,
        quick heads up, little update, wee update, small update, another update, last update,
        final update, short update, latest, latest from the yard, status update, status report,
        from the barn, reporting in, checking in, signing off, over and out, 10 4, roger, copy,
        copy that, noted, voila, ta da, ta dah, tada, happy days, nice one, ta very much, ta muchly,
        much appreciated, appreciate it, appreciated, thankyou, thank you all, thanks all,
        thanks everyone, thanks guys, thanks team, thx all, tks, tyvm, many thanks, thanks a lot,
        thanks so much, thanks in advance, cheers all, cheers guys, sorry all, sorry guys,
        sorry everyone, sorry everybody, apologies, apologies all, my apologies, soz, sry,
        sorry for the late message, sorry its late, sorry for the delay, sorry for the late update,
        sorry for late update, sorry late, sorry to bother, sorry to bother you,
        sorry to bother you all, sorry to bother everyone, sorry to be a pain,
        sorry to be that person, sorry for typos, sorry for my english, sorry my english,
        excuse my english, excuse typos, excuse spelling, dont shoot the messenger, no rush,
        no panic, do not panic, do not worry, not to worry,
        nowt to worry about, nothing to worry about, not urgent, non urgent, xoxo, xxxx, xxxxx, xo,
        kind regards, regards, have a good night, have a good evening, have a good day,
        have a good one, have a great day, have a great night, have a lovely day,
        have a lovely evening, have a nice day, have a nice evening, have a good weekend,
        have a great weekend, yall have a good night, yall have a good evening, yall have a good one,
        you have a good night, nighty night, night all, night night, nos da, bore da,
        good morning all, good evening all, good afternoon, good afternoon all, afternoon,
        afternoon all, good day, good day all, top of the morning, happy friday, happy monday,
        happy sunday, happy saturday, merry christmas, happy christmas, happy new year, welcome back,
        see you later, see you all later, see ya later, see ya, see yous, catch you later,
        catch ya later, laters, ttyl, ta ra, tara, cheerio, toodle pip, tatty bye, hasta la vista,
        speak soon, speak later, home now, off home, off home now, off to bed, off to work,
        off to work now, heading home, heading home now, i am off, im away home, signing out,
        thats me off, that is me off, thats me done for, panic over,
        crisis over, crisis averted, drama over, all quiet here, end of report, end of update,
        end of message, full stop, exclamation mark, new line, question from me,
        just so you all know, just so everyone knows, just so yous know, just so ye know,
        just so yall know, so you know, so you all know, so everyone knows, so we all know,
        just letting you know, just letting you all know, just letting everyone know,
        letting you know, letting you all know, letting everyone know, letting yall know,
        just wanted to let you know, just wanted to say, wanted to let you know, wanted to say,
        want to let you know, just wanted to report, just wanted to update, just want to say,
        i want to say, i want to tell, i want tell you, i tell you, i must tell you,
        i have to tell you, gotta tell you, got to tell you, need to tell you, need to report,
        i need to report, have to report, i have to report, must report, pleased to report,
        happy to report, glad to report, sorry to report, sad to report, delighted to report,
        can report, i can report, i can tell you, i can say, can say, i would like to report,
        would like to report, i d like to report, like to report, wish to report, i wish to report,
        to let you know, to let you all know, to let everyone know, thought you should know,
        thought i should say, thought id say, thought i would say, thought i d say,
        thought id mention, thought i would mention, thought i d mention, thought i should mention,
        thought id better say, thought i better say, thought i had better say,
        thought you would want to know, thought you d want to know, thought youd want to know,
        thought you might want to know, thought i would let you know, thought id let you know,
        thought i d let you know, thought i should let you know, you should know,
        you should all know, you might want to know, you may want to know, you might like to know,
        you will be pleased to know, you ll be pleased to know, you will be glad to know,
        you ll be glad to know, you will be happy to know, worth knowing, worth a mention,
        worth mentioning, worth noting, should be noted, should mention, i should mention,
        i should say, should say, must say, i must say, have to say, i have to say, gotta say,
        got to say, forgot to say, forgot to mention, i forgot to say, i forgot to mention,
        meant to say, forgot to report, almost forgot, nearly forgot, before i forget, oh and,
        oh also, also, by the way, bytheway, incidentally, one more thing, last thing,
        one last thing, another thing, one other thing, other news, in other news, first off,
        first of all, firstly, secondly, thirdly, lastly, to start with, for starters,
        in case anyone is wondering, in case anyone was wondering, in case anyone wonders,
        in case anyone asks, in case you are wondering, in case you were wondering,
        in case anyone cares, incase anyone is wondering,
        if anyone is wondering, if anyones wondering, if anyone asks, if anyone cares,
        if anyone is interested, if anyones interested, if anyone wants to know,
        if you are wondering, if you want to know, if you must know,
        if you ask me, if that helps, if that makes sense, if it helps, for anyone wondering,
        for anyone interested, for anyone asking, before you ask, before anyone asks,
        before anyone says anything, before anyone panics, as requested, as you asked, as asked,
        as instructed, as ordered, as discussed, as agreed, as promised, as mentioned, as said,
        as i said, as i say, as you said, as you know, as we know, as we speak, as i type,
        like you said, like you asked, like i said, like we said, like she asked, like he asked,
        per your request, per request, per instructions, per the board, as per the board,
        according to the board, to confirm, just confirming, just to confirm, confirmed, i confirm,
        we confirm, note that, please be aware, be aware, please see, see pic,
        see photo, see picture, see attached, see below, see above, pic attached, photo attached,
        pics attached, photos attached, pic below, photo below, pic to follow, photo to follow,
        pics to follow, photos to follow, pic for proof, photo for proof, photo evidence,
        sending pic, sending photo, sent pic, sent photo, sent a pic, sent a photo, sent you a pic,
        sent you a photo, did the rounds, did a round, did my round, did my rounds, did my checks,
        did the checks, did checks, did a check, did a quick check, did the check, did night check,
        did the night check, did late check, did the late check, did late checks,
        did the late checks, did the morning check, did morning check, did morning checks,
        did the evening check, did evening check, did evening checks, did the lunch check,
        did lunch check, did lunchtime check, did the lunchtime check,
        did the 5|6|7|8|9|10|11|12 am|pm check, did the am|pm check,
        did the 5|6|7|8|9|10|11|12 oclock check, did a hand check, did hand check, did hand checks,
        hand check done, did the hand check, did a walk round, did a walk through, walked round,
        walked through, had a walk round, had a wander round, been round, been round everyone,
        been round them all, been round the lot, been round all, been around, been around everyone,
        gone round, gone round everyone, went round, went round everyone, went round them all,
        doing my rounds, doing the rounds, doing rounds, doing checks, doing my checks,
        doing night check, doing late check, doing late checks, doing morning check, on my rounds,
        on the rounds, checked on, checked in on, checked over, checked everyone, checked everybody,
        checked them all, have checked, ive checked, just checking in, been checking on, checking on,
        just looked in on, looked in on, just looked at, looked at, had a peek at, had a peep at,
        had a feel, had a feel of, had a feel under, had a hand under, had my hand under,
        put my hand under, put a hand under, popped my hand under, popped a hand under,
        stuck my hand under, stuck a hand under, shoved my hand under, shoved a hand under,
        slid my hand under, slid a hand under, i put hand under, put hand under,
        just had my hand under, just felt under, felt under, felt, just felt, just felt him,
        just felt her, just feel, i feel under, i touch under, i touched under, touched under,
        hand under, hand under the rug, hand under her rug, hand under his rug, hand inside,
        hand in under, hand in, gave him the once over, gave her the once over, gave him a once over,
        gave her a once over, just seen to, just been to, just seen, just been with,
        just been up to see, been up to see, been up to check, just been up, just been in to see,
        been in to see, been in with, just been in with, been in to check, just been in to check,
        popped in to see, popped in on, popped in to check, nipped in to see, nipped down to see,
        nipped up to see, nipped in to check, nipped down, nipped out to check, nipped out,
        went in to see, went in to check, went out to see, went out to check, went up to see,
        went up to check, called in to see, called in on, stopped in to see, stopped by, swung by,
        just swung by, just stopped by, walked past, just walked past, just passed,
        driving past, drove past, just drove past, riding past, rode past, peeked in on, peeked at,
        had a nosy at, had a nosey at, had a gander at, had a butchers at, took a gander at,
        took a peek at, have had a look at, have looked at, have been to see, ive been to see,
        have been to check, can you all note, everyone note, all note, please all note, kindly note,
        kindly, make a note, make note, take note, jotting down, for the log, for the book,
        for your info, for your information, for the handover, for handover, handover, voice note,
        voice message, voice text, voice texting, texting this by voice, dictating, dictated,
        hey google, ok google, ok siri, hey bot, hi bot, ok bot, dear bot, dear haybell, hello bot,
        hello haybell, hi haybell, hey haybell, ok haybell, message for haybell, message for the bot,
        message to barn, send to barn, send to barn group, send message to barn, send to group,
        send message, text the barn, text barn group, text the group, tell the group, tell the barn,
        tell the bot, tell haybell, attention haybell, for haybell, for the bot, note for the bot,
        note for haybell, note to bot, note to haybell
    """,
    "body": """
        ears, ear, back, neck, shoulder, shoulders, chest, belly, flank, flanks, body, withers, coat,
        skin, loins, quarters, hindquarters, behind the elbow, behind the elbows, elbow, elbows,
        armpits, sides, base of the ears, hair, behind the ears, hip, hips, barrel, croup, tummy, fur,
        bum, backside, rump, back end, behind, legs, tail, girth, behind the girth, behind her elbow,
        behind his elbow, behind her ears, behind his ears, under the girth, chest area, poll, mane,
        topline, underneath, neck and shoulders
    """,
    "under": "under, underneath, beneath, below, through, in, inside",
    "ask why": """
        why, how come, what is the reason, what for, why not, why does, why is, why did, explain,
        reason for, whys, what is the reason for, reason behind, what is with, why is it, what made
        you pick, how come you put, what's the reason for, the reason for
    """,
    "ask today": """
        what is the plan, what are the plans, plan for today, plan for tonight, whats the plan, today
        plan, plan please, show the plan, what is on today, show me the plan, what should everyone
        wear, what does everyone wear, rugs tonight, what is everyone wearing, what is everyone in,
        what are they wearing, what rugs, which rugs, what goes on, rugs today, what do they wear,
        what is everybody wearing, what is everybody in, todays plan, tonights plan, today, the plan,
        post the plan again, plan again, what to put on, what do i put on, what should i put on, what
        do we put on, what should we put on, what blankets, which blankets, which blanket, list, the
        list, todays list, today list, today's list, list please, list for today, list for tonight,
        tonights list, show me the list, show list, rug list, rugs list, send the list, send me the
        list, what is the list, tell me the list, tell me the list again, list again, whats everyone
        in, what are they all in, what are they all wearing, what is everyone wearing tonight, what
        does everyone need, what do they need, what is on for, whats on for, what is the plan tonight,
        what is the plan for tonight, what is the plan today, remind me of the plan, what needs to go
        on, what goes on who, who wears what, who is in what, who gets what, give me the list,
        give us the list, can i have the list, could i have the list, post the list,
        post the list again, send the list again, list one more time, give me the plan,
        what rugs are we on, what is everyone on, what are we rugging, rugs for tonight,
        rugs for today, plan for, the plan for, what is the plan for, list for, tonight's rugs,
        todays rugs, today's rugs, tonights rugs, rugs for the night, the rugs for tonight,
        tonight's outfits, tonight's list, tonight's plan, tomorrow's plan
    """,
    "ask left": """
        who is left, what is left, who is not done, who is still to do, who still needs, who is
        missing, anyone left, who else, who is still not done, who has not been done, who needs doing,
        who needs changing, who still has to be done, whos left, whos not done, who do i still have,
        which horses are left, who remains, is everyone done, is everybody done, are all done, are all
        horses done, how many left, how many are left, still to do, who is to do, who is still left,
        what is still to do, what is still left to do, who have we not done, who have we left, anybody
        left, who is remaining, who is next, who is outstanding, who else is left, who is still
        undone, which ones are left, who has not been changed, who have we not done yet, who have not
        we done, who haven we not done, any left, anyone left to do, any more to do, any still to do,
        who is left to do, who still needs rugging, who needs rugging, who is not rugged, who is not
        rugged yet, who is not done yet, which ones are not done, which horses are not done, which
        horses still need doing, how many more, how many are still to do, how many still to do, what
        is left to do, who do we still need to do, who have i missed, who did i miss, have we done
        everyone, are we done, have i done everyone, did we do everyone, anybody still to do, anyone
        still to do, anyone not done, who has not been done yet, who else needs doing, who is still
        outstanding, who remains to be done, left to do, who have we got left, who have i got left,
        which ones left, which are left, which horses left, which horses have not been done,
        which horses have not been done yet, which have not been done, which have not been done yet,
        which ones have not been done, which ones have not been done yet, what horses are left,
        is anyone left to do, is anyone left, is anybody left, is there anyone left,
        is there anyone left to do, anyone else to do, who else is to do, got to do, still got to do,
        have to do, still have to do, left to go, to go, still undone, still not rugged,
        still not changed, anyone still not done, anybody still not done, anyone not done yet,
        who is left on the list, who is still on the list, who is left to blanket,
        who still needs blanketing
    """,
    "ask drying": """
        what is drying, whats drying, what is wet, what is still wet, what is still drying, anything
        drying, which rugs are wet, what rugs are wet, what is hanging, which rugs are drying, what
        rugs are drying, anything still wet, anything wet, what is on the rack, which blankets are
        wet, which blankets are drying, what is in the tack room, what is dry, drying list, anything
        still drying, whats wet, what is not dry, what is not dry yet, what do we have drying, what
        have we got drying, which rugs are dry, what rugs are dry, what is in the wash, whats in the
        wash, what rugs are in the wash, which rugs are in the wash, what is in the drying room,
        anything in the drying room, which liners are wet, what liners are wet, which liners are dry,
        which liners are drying, which sheets are wet, which turnouts are wet, which turnouts are dry,
        which blankets are dry, what blankets are wet, which rugs are still wet, what rugs are still
        wet, what is not usable, what is hanging up, what is hung up, any rugs wet, any wet rugs, any
        rugs drying, any rugs still wet, is anything still drying, is anything still wet, is anything
        wet, is anything drying, what have we got wet, what is still in the wash, which rugs are out
        of action, what is out of service, what is wet at the moment, what is dry and ready, what is
        still to dry, what needs drying, what needs to dry, what has not dried, what is left to dry,
        what else is wet, what is hanging up to dry, what is hanging to dry, what is hung up to dry,
        what is up to dry, what is out to dry, what is on the airer, are drying, are still drying,
        are still wet, are hanging up, are out of action, are not dry, are not dry yet,
        are in the wash, which blankets are still drying, what blankets are still drying,
        which rugs are still drying, which sheets are still wet, which blankets are still wet,
        which ones are still wet, which ones are still drying
    """,
    "ask state": """
        how is, how are, how is it going with, status of, status, state of, what is up with, how
        is he doing, what do we know about, tell me about, show me, show, info on, what is the state
        of, how goes, how about, how s, whats up with, what is the status of, status on, any news on,
        news on, update on, any update on, any news of, how did, how is everything with
    """,
    "ask forecast": """
        forecast, what is the forecast, what is the weather, whats the weather, whats the forecast,
        weather tonight, weather today, weather forecast, will it rain, will it rain today, will it
        rain tonight, how cold will it get, how cold will it be, how cold is it going to get, how cold
        does it get, how cold is it tonight, how cold tonight, what is coming tonight, what is coming,
        is rain coming, is it going to rain, is it going to rain tonight, will it snow, will it snow
        tonight, will it freeze, will it freeze tonight, how windy, how low does it go, what is the
        weather doing, what is the weather like, how much rain, is it going to freeze, is it going to
        snow, how cold is tonight, whats coming tonight, what is the low tonight, what temperature
        tonight, how windy will it get, when does the rain start, what is the temp tonight, what is
        the temperature tonight, what is the forecast tonight, how cold is it going to be, how cold is
        it going to be tonight, how cold will it be tonight, how cold overnight, how cold is it
        tomorrow, will it be cold tonight, will it be cold, is it going to be cold, is it going to be
        cold tonight, is it going below zero, is it going below zero tonight, is it going below
        freezing, is it going below freezing tonight, what is the temp overnight, whats the temp
        overnight, whats the temp tonight, what is the temperature overnight, what is the overnight
        low, whats the overnight low, overnight temp, overnight low, temperature tonight, temp
        tonight, what is the wind doing, how windy is it going to be, how windy tonight, how wet will
        it be, weather please, weather for tonight, whats the weather tonight, what is the weather
        tonight, what is the weather doing tomorrow, what is the weather tomorrow, whats the weather
        tomorrow, weather tomorrow, is it going to rain tomorrow, will it rain tomorrow, what is
        coming tomorrow, what weather is coming, any rain coming, any rain tonight, any snow coming,
        any frost tonight, is there frost tonight, will there be frost, will there be a frost, frost
        tonight, what does the forecast say, what is forecast, how is the weather tonight, is it going
        to be windy, will it be windy, will it be windy tonight, when is the rain coming, what time
        does the rain start, how low is it going, how low is it going to go, how low will it go,
        how cold is it going, how cold is it going tonight, how low tonight,
        what is tonight looking like, how does tonight look, what is the weather looking like,
        what is it doing tonight, tonight's weather, tonight's forecast, tomorrow's weather,
        tomorrow's forecast, today's weather, is it going to be wet, is it going to be wet tomorrow,
        is it going to be wet tonight, will it be wet, will it be wet tonight, will it be dry,
        will it be dry tonight, is it going to be dry, will it be icy, is it going to be icy,
        will it be stormy, is it going to be warm, will it be warm tonight,
        what will tonight be like, what is tomorrow looking like, when will it rain,
        when will the rain stop, when does the rain stop, when does the wind drop,
        how strong is the wind, how much wind, is it raining later, is it raining tonight,
        rain later, any rain later, is it raining tomorrow, is it snowing tonight,
        is it freezing tonight, any frost coming, any ice coming, any wind coming, any storms coming,
        is there any rain coming, is there rain coming, will there be rain,
        will there be rain tonight, will there be snow, will there be wind,
        is there going to be rain, is there going to be frost
    """,
    "ask forecast marked": "rain tonight, frost tonight, snow tonight, cold tonight, windy tonight, rain tomorrow",
    "ask help": """
        help, what can you do, how do you work, what do you understand, how does this work, commands,
        what can i say, how do i use you, what can i tell you, instructions, how does it work, what
        can i ask, what can i write, what should i write, what do i write, how do i tell you, how do i
        use this, how does the bot work, how do you use this, what can i say to you, what can i send
        you, what can i ask you, how do i report, how do i undo, what are the commands, list commands,
        what do i say, help please what can i write, what may i say, what may i say to you,
        what may i ask, what may i write, how does one use this, what are you able to do,
        what can this bot do, what can this bot even do, what does this bot do, what is this bot for
    """,
    "ask wearing": """
        what is wearing, wearing what, wear, wearing, what is in, what does wear, what should wear,
        in, put on, have on, goes on, has on, got on, outfit, outfits, clothes, clothing, kit, gear,
        layers, attire, supposed to wear, meant to wear, supposed to be in, meant to be in, rugged,
        blanketed, dressed, go out in, goes out in, going out in, go in, to go without, need, needs,
        supposed to have on, meant to have on
    """,
    "ask tonight": """
        tonight, today, this evening, this morning, for the night, this afternoon, should, does, for,
        tomorrow, overnight, do, to wear, going to, need, next, goes, supposed, supposed to, meant,
        meant to, supposed to wear, meant to wear, supposed to be in, meant to be in,
        supposed to have on, meant to have on
    """,
    "ask ready": "when will, ready, when is, when does, when can, how long until, dry by, how long till",
    "sky": """
        weather, forecast, temperature, temperatures, temp, temps, rain, raining, rainy, snow, snowing, frost,
        frosty, freeze, freezing, ice, icy, wind, windy, gusts, gusty, storm, storms, stormy, cold,
        colder, warm,
        warmer, mild, wet, dry, sleet, hail, drizzle, degrees, minus, below zero, low, lows, chilly, hot, hotter
    """,
    "ahead": """
        tonight, tomorrow, later, later on, overnight, this evening, this afternoon, this weekend,
        at the weekend,
        over the weekend, the weekend, next week, this week, in the morning, by morning, tomorrow morning,
        tomorrow night, the next few days, the rest of the day, today, coming
    """,
    "a horse": "horse, mare, gelding, pony, donkey, colt, filly, foal, bay, chestnut, one of the horses",
    "subject": "he, she, they, hes, shes, theyre, i, we, ive, weve, im",
    "own": "hers, his, theirs, his own, her own, their own",
    "only": "only, just, nowt but, nothing but",
    "toward": "for, to, onto",
    "part of day": "morning, afternoon, evening, night, lunch, lunchtime, tea, dinner, breakfast",
    "not behind": "",
    "ears": "ears, ear, lugs",
    "undo verb": """
        ignore, scrap, forget, delete, disregard, cancel, take back, undo, strike, bin, retract, erase,
        wipe, drop, remove, never mind
    """,
    "what was said": """
        what i said, what i just said, what i put, what i just put, what i wrote, what i just wrote,
        what i sent, what i told you, my last, my last message, my last text, my last one,
        the last message, the last one, last message, last one, last bit, the last bit, that last one,
        that last bit, that last message, my previous message, my message, what i said before,
        what i said earlier, that message, that one i just sent, that one i sent, what i reported
    """,
    "afterwards": """
        will, going to, gonna, can, please, need, needs, want taking, wants, let us, do not, don't use,
        leave, best, may need, might need, should
    """,
}
