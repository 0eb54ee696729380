"""English, as barns speak it."""

PHRASES = {
    "sign sweating": """
        sweaty, sweating, sweating up, sweated up, sweated, sweat marks, sweat patches, sweat, a sweat, in a
        sweat, dripping with sweat, dripping in sweat, dripping sweat, soaked in sweat, soaked with sweat,
        drenched in sweat, wet with sweat, wet from sweat, damp with sweat, damp from sweat, sweaty wet,
        lathered, lathered up, in a lather, broken out in a sweat, broke out in a sweat, sweating buckets,
        sweaty mess, sweat dripping, sweat running, sweat pouring, sweat on
    """,
    "sign hot": """
        overheated, overheating, too hot, too warm, hot under the rug, hot under her rug, hot under his rug,
        hot under the blanket, hot under her blanket, hot under his blanket, hot to the touch, burning up
    """,
    "sign shivering": """
        shivering, shivery, shivers, shiver, the shivers, shivered, trembling, quivering, shaking with cold,
        shaking from cold, shaking from the cold, shaking with the cold, shaking like a leaf, shaking all over
    """,
    "sign cold": """
        cold to the touch, tucked up and cold, chilled to the bone, cold behind the elbow, too cold, cold
        under the rug, cold under her rug, cold under his rug, cold under the blanket, cold under her blanket
    """,
    "sign comfortable": """
        comfortable, comfy, snug, cosy, cozy, toasty, warm and dry, dry and warm, nice and warm, lovely and
        warm, nice and dry, warm enough, just right, nice and toasty, warm and comfortable, warm and cosy,
        toasty warm, good temperature, perfect temperature, right temperature, good temp, perfect temp, warm
        and happy, happy and warm, dry and comfortable, dry and happy
    """,
    "sign rubbed": """
        rubbed, rubs, a rub, rub, rub marks, rub mark, rubbed raw, rubbing, rubbed bald, rug rub, rug rubs,
        blanket rub, blanket rubs, chafed, chafing, galled, rubbed sore, raw shoulder, raw shoulders, raw
        withers, sore withers, bald patch on the shoulder, hair rubbed off
    """,
    "sign unwell": """
        unwell, colic, colicking, colicky, colicing, poorly, ill, sick, coughing, cough, off feed, off food,
        off her feed, off his feed, off their feed, off her food, off his food, off her hay, off his hay, not
        eating, will not eat, has not eaten, did not eat, not eaten, refusing feed, refusing food, refusing
        her feed, refusing his feed, not herself, not himself, not right, not quite right, not feeling well,
        not well, not very well, not looking well, not doing well, lethargic, listless, under the weather,
        feverish, fever, a temperature, running a temperature, diarrhea, diarrhoea, snotty nose, off colour,
        off color, wheezing, in pain, looks off, looking off, seems off, a bit off, dull and quiet, left her
        feed, left his feed, left her breakfast, left his breakfast, colicked, left his dinner, left her
        dinner, left his hay, left her hay, has not touched, did not touch, dull, not feeling great, looking
        dull, depressed, not interested in food, not interested in her food, not interested in his food, won t
        eat, not eating her hay, not drinking, did not finish his breakfast, did not finish her breakfast, did
        not finish his dinner, did not finish her dinner, did not finish his feed, did not finish her feed,
        did not finish breakfast, did not finish dinner, something is wrong with
    """,
    "everyday hot": "hot, boiling, roasting, steaming, sweltering, cooking, baking, very warm, 🥵",
    "everyday cold": "cold, chilly, chilled, freezing, freezing cold, ice cold, icy, stone cold, 🥶",
    "everyday good": "good, all good, looking good",
    "everyday comfortable": "fine, ok, okay, okey, happy, content, alright, all right, k",
    "everyday warm": "warm",
    "dry": "dry, dried, dried out, dried off, bone dry, dry again, dry now, all dry, aired",
    "damp": "damp, dampish, moist, wettish, clammy",
    "wet": "wet, rained on, got rained on, wet again",
    "soaked": """
        soaked, soaking, soaking wet, drenched, sopping, sopping wet, dripping, dripping wet, wet through,
        soaked through, sodden, soggy, saturated, waterlogged, wringing wet, soaked to the skin, wet to the
        skin
    """,
    "state washing": """
        in the wash, in the washing machine, being washed, at the laundry, at the cleaners, in the laundry, to
        the wash, to the laundry, to the cleaners, washing, in the machine, gone to be washed, sent to be
        washed, sent for washing, getting washed, at the wash, to be washed
    """,
    "state torn": """
        torn, ripped, tore, tear, a tear, rip, a rip, hole, a hole, holes, shredded, in shreds, split, torn
        up, ripped up, in tatters, destroyed, wrecked, ruined, trashed
    """,
    "state missing": """
        missing, lost, gone missing, went missing, can not find, cannot find, could not find, vanished,
        disappeared, nowhere to be found, nobody can find, no one can find, has gone walkabout
    """,
    "state found": "found, turned up, here after all",
    "state in service": """
        in service, back in service, fixed, mended, repaired, back from repair, back from the repair, back
        from repairs, back from the mender, back from the menders, patched, sewn, sewn up, stitched, stitched
        up, back from the wash, back from the laundry, back from the cleaners, back from being washed, good as
        new, usable again, strap replaced, new strap, back in use, sewed, sewn back, patched up
    """,
    "strap": """
        strap, straps, leg strap, leg straps, surcingle, surcingles, buckle, buckles, belly strap, chest
        strap, tail strap, front strap, fillet string, tail flap, hind strap, cross surcingle, clasp, front
        buckle, chest buckle, back strap, rear strap, belly buckle, leg buckle
    """,
    "broken": """
        broken, broke, snapped, busted, bust, came off, gone, hanging off, ripped off, torn off, off, broken
        off, missing
    """,
    "kind sheet": """
        sheet, sheets, rain sheet, rainsheet, turnout sheet, rain rug, rain sheets, raincoat, no fill, zero
        fill
    """,
    "kind turnout": "turnout, turnouts, turnout rug, turnout rugs, turnout blanket, turn out rug, winter turnout",
    "kind liner": "liner, liners, under rug, underrug, under blanket, blanket liner, rug liner",
    "kind stable": """
        stable rug, stable blanket, stable rugs, stable blankets, stall blanket, stall rug, night rug, indoor
        rug, indoor blanket, stable sheet
    """,
    "kind cooler": """
        cooler, coolers, fleece, fleece rug, sweat rug, sweat sheet, wicking rug, cooler rug, fleece cooler,
        anti sweat rug, sweat cooler
    """,
    "kind neck": "neck cover, hood, neck rug, neckpiece, neck piece, neck covers",
    "rug": "rug, rugs, blanket, blankets, blankie, rugz, rug set",
    "weight heavy": "heavy, heavyweight, heavy weight, heavies, thick, thickest",
    "weight medium": "medium, mediumweight, medium weight, middleweight, mid weight, midweight, mediums",
    "weight light": "light, lightweight, light weight, thin",
    "gram": "g, gr, gm, gms, gram, grams, gsm, grammes, fill",
    "spare": "spare, spares, loaner",
    "one": "one, ones",
    "colour": """
        blue, red, green, grey, gray, black, white, brown, purple, pink, navy, orange, yellow, teal,
        turquoise, burgundy, maroon, camo, gold, silver, plaid, checked, striped, tartan, stripy, dark blue,
        light blue
    """,
    "any adjective": """
        new, old, big, little, nice, good, own, winter, outer, outside, thick winter, lovely, stupid, bloody,
        poor, far, front, side, middle, near, lower, upper
    """,
    "put on": """
        put, putting, put on, puts, added, popped, chucked, threw, stuck, slapped, popped on, layered, threw
        on
    """,
    "took off": """
        removed, stripped, pulled off, pulled, pulling, took off, whipped off, undressed, peeled off, peeled,
        taken off, removing, stripping
    """,
    "stripped": "stripped, undressed, stripped off",
    "took": "took, taken, taking, whipped, slipped, had",
    "wears": """
        wearing, wears, dressed in, rugged in, rugged up in, blanketed in, changed into, switched into,
        changed to, switched to, moved into, tucked up in, put in, rugged up with, rugged with, back in, now
        in, wearing just, rugged up, put into, dressed
    """,
    "in": "in, into",
    "on": "on, onto, back on",
    "off": "off",
    "has": "has, got, have, with, had",
    "swapped": "swapped, changed, switched, replaced, exchanged, swopped, traded",
    "instead of": "instead of, rather than, in place of",
    "for another": "for, to, with, into",
    "over": "over, over the top, on top, on top of, under, underneath, over top, as well, as another layer",
    "bare": """
        bare, naked, nekkid, rugless, unrugged, no rug, no rugs, no blanket, no blankets, without a rug,
        without rug, without rugs, without a blanket, nothing on, wearing nothing, nude, unblanketed, not
        wearing anything, no clothes, unclothed, no rug on, no rugs on, no blanket on, not rugged, birthday
        suit
    """,
    "nothing": "nothing, anything, everything",
    "without": "without, no",
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
        brought, came, moved, put, led, turned, kept, walked, bringing, turning, moving, back, leading,
        putting, keeping, popped, let, left
    """,
    "stays": """
        stays, staying, stayed, is staying, will stay, will be staying, stay, spending the night, sleeping,
        spends the night
    """,
    "brought in": "stabled, stalled, boxed up, brought in, came in, come in, brought inside",
    "turned out": "turned out, turned back out, let out, put out",
    "keep": "keep, keeping, leave, want, kept, wants, prefer, like, stay, stays, to stay",
    "please": "please, pls, plz, from now on",
    "do not rug": """
        do not rug, do not blanket, do not put a rug on, do not put rugs on, do not put a blanket on, never
        rug, no rugs for, no rug for, no blankets for, no blanket for, not to be rugged, not to be blanketed,
        is not to be rugged, should not be rugged, should be bare, is to be bare, to be kept bare
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
        can have clothes again, may be blanketed, may be covered again
    """,
    "worked": """
        ridden, rode, ride done, had a lesson, had her lesson, had his lesson, had their lesson, did a lesson,
        did her lesson, did his lesson, lunged, longed, schooled, hacked, hacked out, exercised, had a ride,
        had a schooling session, went for a hack, went for a ride, been ridden, been worked, was worked, got
        worked, worked, finished her lesson, finished his lesson, finished the lesson, finished a lesson, back
        from a hack, back from a ride, back from her lesson, back from his lesson, back from the lesson, back
        from a lesson, back from hacking, back from our ride, back from our hack, had a jump lesson, had a
        jumping lesson, had a flat lesson, had a hack, took a lesson on, took a lesson, for a hack, for a
        ride, done a lesson, done her lesson, done his lesson, worked hard, had a workout
    """,
    "had": "had, did, finished, has had, have had, just did, done",
    "after": "after, from, following, post, because of, since, due to, thanks to",
    "work": """
        lesson, ride, riding, hack, hacking, work, working, training, lunging, longeing, schooling, jumping,
        exercise, gallop, galloping, being ridden, being worked, school, jump lesson, flatwork, lunge,
        workout, being lunged
    """,
    "done": """
        done, finished, sorted, changed, all set, all sorted, done now, complete, ✓, ✔, ✅, ☑, all done and
        dusted, rugs done, blankets done, done and dusted, taken care of, rugged as planned, as planned,
        dressed as planned
    """,
    "everyone": "all but, everyone, everybody, all, everything, every one, the lot, whole barn",
    "the rest": """
        the rest, everyone else, everybody else, the others, others, all the others, the rest of them, all the
        rest
    """,
    "all horses": """
        all horses, all the horses, every horse, all of the horses, all ponies, all the ponies, the horses,
        the whole herd, horses
    """,
    "both": "both, both of them, the two of them, all three, both horses",
    "all": "all, all of, both, all the, both of, each of, every",
    "except": "except, except for, but, apart from, bar, other than, all but, minus, save for, besides",
    "all done": """
        all done, everyone done, everybody done, everyone is done, everybody is done, all horses done, all
        finished, all the horses are done, all horses are done, everyone sorted, everyone is sorted, all rugs
        done, all rugged, round done, round is done, everyone changed, everyone is changed, everyone is
        rugged, all rugs changed, everyone finished, whole barn done, whole barn is done, all the horses done,
        all the rugs are done, everything is done, everyone has been done, all have been done, finished
        everyone, finished all, done everyone, done all, done them all, everyone ✓, all ✓, everyone ✅, all ✅,
        done with everyone, everyone is finished
    """,
    "undo": """
        undo, undo that, undo it, undo last, scratch that, take that back, ignore that, ignore my last, ignore
        my last message, my mistake, wrong horse, delete that, cancel that, strike that, disregard, disregard
        that, disregard my last, that was a mistake, undo please, please undo, revert that, scrap that, undo
        that last one, undo the last one, undo my last, my bad, undo my last message
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
        not, no, never, do not, does not, did not, no longer, nor, neither, none, isnt, arent, wasnt, aint,
        doesnt, without any
    """,
    "stopped": "stopped, quit, no longer, not any more, no more, ceased",
    "not any more": "anymore, any more, any longer, now",
    "nearly": "nearly, almost, mostly, not quite, halfway, half, not fully, not completely, not yet, barely",
    "a little": """
        a bit, a little, a little bit, bit, slightly, a touch, a tad, little, somewhat, a wee bit, kind of,
        kinda, sort of
    """,
    "very": """
        very, really, so, super, quite, pretty, totally, completely, absolutely, extremely, properly, well,
        rather, all, thoroughly, fairly, dead, seriously, proper, awfully
    """,
    "if": "if, unless, in case, whether, as long as, as soon as, provided, otherwise, even if, or else, so that",
    "when": "when, while, by the time, until, till, before, where, whenever, although, though",
    "was": "was, were, had, been, has been, had been, have been",
    "plan": """
        will, going to, gonna, tomorrow, tmrw, tmr, tmw, next week, next time, next month, later, should,
        shall, would, could, can, may, might, must, need, needs, need to, needs to, want, wants, let us, lets,
        please, pls, plz, remember, do not forget, dont forget, make sure, hope, hoping, hopefully, plan,
        plans, planning, maybe, perhaps, probably, wonder, wondering, about to, due, ought, have to, has to,
        supposed to, expecting, getting ready to, shall we, unlikely, likely, ready to, i will, want to, wants
        to, asking, ask, asked, remind, reminder, booked, appointment, scheduled, gets his, gets her, watch
        out, keep an eye, worried, afraid, scared, wish, wishes, would be, will be, won t, do not let, how
        about, what about, this weekend, at the weekend, looking for, imagine, pretend, try, trying, tries,
        thinking of, thinking about, considering, better to, used to be, soon, do not want, trying to, think
        we should, be careful, beware, next, in spring, in the spring, in summer, nobody, no one, somebody,
        anybody, for sale, selling, sold, buy, bought, buying, order, ordered, ordering, ready for, take,
        bring, pull, remove, swap, strip, throw, watch, check, look at, tell me, text me, let me know
    """,
    "habit": """
        always, usually, often, sometimes, every time, hates, hate, loves, love, tends, prone, used to, gets,
        generally, normally, every day, every night, every morning, every winter, easily, rarely, likes,
        enjoys, prefers, famous, typical, known to, doesn t, does, do, did, never, ever, anything like, like
        a, as a, than, reminds, story, joke, lol, lmao, haha, hahaha, 😂, 🤣, dream, dreamed, dreamt, poor
        people, movie, song, book, photo, picture, pic, video
    """,
    "bare weather": """
        misty, sunny, frosty, snowy, windy, foggy, cloudy, stormy, breezy, rainy, dusty, muddy, storm, cloud,
        breeze, sun, wind, thunder
    """,
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
        do not think, not sure, no idea, dont think, doubt, unsure, do not know, dont know, not certain, no
        clue, cannot tell, can not tell, could be, may be, must be, might be
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
        wet behind the ears, hot to trot, cold feet, cold shoulder, no sweat, do not sweat, hot mess, cold
        backed, in season, in heat, in foal, in charge, in love, in trouble, in a mood, in a bad mood, in good
        form, out of hay, out of work, in work, in training, good girl, good boy, good to go, good as gold, in
        the way, in a way, hot shot, out of the way, out of control, on fire, cold snap, hot water, cold
        water, rub down, rubbing post, hot tea, hot chocolate, hot drink, cold drink, cold beer, hot stuff, no
        worries, no problem, well done, nicely done, great job, good job, nice job, good work, done deal, over
        and done, chicken out, working out, in good hands, wet wipes, in fine form, dry sense, dry humour, dry
        humor, hot topic, get dry, out cold, out of sorts, hot shoeing, cold hosing, cold hosed, a cold, wet
        suit, hay is done, cold one, cold ones, clean bill, out again, got out, broke out, got loose, to dry,
        hung out to dry, up to dry, drying out, feet done, teeth done, hot in the lesson, work done, all done
        for today in the ring, all over
    """,
    "i": """
        i, we, you, someone, somebody, anyone, anybody, me, us, my, our, your, mine, im, ive, weve, youre,
        y'all, myself, ourselves, yourself, man, men, girl, girls, guy, boy, boys, kid, kids, lady, mum, mom,
        dad, husband, wife, daughter, son, vet, farrier, dentist
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
    "and": "and, &, +, n, plus, then, with",
    "but": "but, so, because, cause, cos, coz, also, however, whereas, while, and then, then, though",
    "too": "too, also, as well, same, ditto, same with, same for, so is, likewise, so does, and so is, the same",
    "helper": "",
    "is": """
        is, are, was, were, be, been, being, 's, has, have, had, got, gotten, getting, looks, looked, look,
        looking, seems, seemed, seem, feels, felt, feel, feeling, appears, acting, acted, standing, stood,
        came, come, comes, coming, arrived, stands, went, turned, gone, am, stays, stayed, keeps, kept, found,
        became, remains, started, starting, starts, started to, has a, has got, shows, showing, showed, in
        from
    """,
    "link": """
        just, doing, getting on, feeling, faring, really, also, still, again, already, now, here, there, up,
        back, down, to, even, right, only, quite, well, both, all, together, of, some, signs of, sign of, to
        be, definitely, clearly, certainly, obviously, indeed, actually, yes, yep, yeah, yup, too, as well,
        like, over, out, in, at, with, this, that, each, either, suddenly, properly, completely, fully,
        finally, currently, apparently, sadly, unfortunately, luckily, especially, particularly, patches of,
        lots of, loads of, off, full of, the whole, whole, entire, has been, had been, more, most, at all,
        much, anything, sure, btw, o, tho, though, visibly, under there, thankfully, once, once again,
        absolutely, clean, instead
    """,
    "time": """
        now, today, tonight, this morning, this afternoon, this evening, at the moment, right now, just now,
        at lunch, at lunchtime, since last night, last night, overnight, all night, all day, since this
        morning, since yesterday, at midday, at noon, earlier, a minute ago, an hour ago, minutes ago, hours
        ago, early, again, already, at night check, at breakfast, at dinner, for hours, for an hour, am, pm,
        oclock, o clock, so far, morning, evening, at feeding time, since lunch, since noon, at dawn, first
        thing, this am, this pm, mins ago, min ago, lunch, at night, at evening feed, at morning feed, for
        now, as of now, as of this morning, at feed, at the late check, late check, night check, ago, in this
        weather, in this rain, in this wind, in this cold, in the rain, in the wind, in the cold, in the sun,
        in the snow, in the storm, in the night, during the night, because of the rain, from the rain, from
        the snow, after the rain, by the rain, for the night, for the day, till morning, until morning, until
        tomorrow, this minute, for a week, for the week, for a few days, for two days, this week, yet
    """,
    "hour": "at, around, about, by, since, before, after, until, from, til, till",
    "polite": """
        thanks, thank you, thx, ty, cheers, hi, hello, hey, morning, good morning, good evening, evening, all,
        hi all, hey all, morning all, guys, folks, everyone, sorry, btw, fyi, ok, okay, right, well, yes, yep,
        yeah, oh, oh no, ugh, omg, um, uh, hm, hmm, haybell, bot, oops, quick update, update, quick one, just
        checked, just checked on, been to check, checked, heads up, note, poor, poor old, poor thing, dear,
        old, little, big, sweet, lovely, team, so, looks like, bye, night, good night, x, xx, xxx, gosh, argh,
        brr, brrr, wow, damn, news, report, for the record, to report, reporting, quick note, fwiw
    """,
    "body": """
        ears, ear, back, neck, shoulder, shoulders, chest, belly, flank, flanks, body, withers, coat, skin,
        loins, quarters, hindquarters, behind the elbow, behind the elbows, elbow, elbows, armpits, sides,
        base of the ears, hair, behind the ears, hip, hips, barrel, croup, tummy, fur
    """,
    "under": "under, underneath, beneath, below, through, in, inside",
    "ask why": """
        why, how come, what is the reason, what for, why not, why does, why is, why did, explain, reason for,
        whys
    """,
    "ask today": """
        what is the plan, what are the plans, plan for today, plan for tonight, whats the plan, today plan,
        plan please, show the plan, what is on today, show me the plan, what should everyone wear, what does
        everyone wear, rugs tonight, what is everyone wearing, what is everyone in, what are they wearing,
        what rugs, which rugs, what goes on, rugs today, what do they wear, what is everybody wearing, what is
        everybody in, todays plan, tonights plan, today, the plan, post the plan again, plan again, what to
        put on, what do i put on, what should i put on, what do we put on, what should we put on, what
        blankets, which blankets, which blanket
    """,
    "ask left": """
        who is left, what is left, who is not done, who is still to do, who still needs, who is missing,
        anyone left, who else, who is still not done, who has not been done, who needs doing, who needs
        changing, who still has to be done, whos left, whos not done, who do i still have, which horses are
        left, who remains, is everyone done, is everybody done, are all done, are all horses done, how many
        left, how many are left, still to do, who is to do, who is still left, what is still to do, what is
        still left to do, who have we not done, who have we left, anybody left, who is remaining, who is next,
        who is outstanding, who else is left, who is still undone, which ones are left, who has not been
        changed
    """,
    "ask drying": """
        what is drying, whats drying, what is wet, what is still wet, what is still drying, anything drying,
        which rugs are wet, what rugs are wet, what is hanging, which rugs are drying, what rugs are drying,
        anything still wet, anything wet, what is on the rack, which blankets are wet, which blankets are
        drying, what is in the tack room, what is dry, drying list, anything still drying, whats wet, what is
        not dry, what is not dry yet, what do we have drying, what have we got drying, which rugs are dry,
        what rugs are dry
    """,
    "ask state": """
        how is, how are, how is it going with, status of, status, hows, state of, what is up with, how is he
        doing, what do we know about, tell me about, show me, show, info on, what is the state of
    """,
    "ask forecast": """
        forecast, what is the forecast, what is the weather, whats the weather, whats the forecast, weather
        tonight, weather today, weather forecast, will it rain, will it rain today, will it rain tonight, how
        cold will it get, how cold will it be, how cold is it going to get, how cold does it get, how cold is
        it tonight, how cold tonight, what is coming tonight, what is coming, is rain coming, is it going to
        rain, is it going to rain tonight, will it snow, will it snow tonight, will it freeze, will it freeze
        tonight, how windy, how low does it go, what is the weather doing, what is the weather like, how much
        rain, is it going to freeze, is it going to snow, how cold is tonight, whats coming tonight, what is
        the low tonight, what temperature tonight, how windy will it get, when does the rain start, what is
        the temp tonight, what is the temperature tonight, what is the forecast tonight
    """,
    "ask help": """
        help, what can you do, how do you work, what do you understand, how does this work, commands, what can
        i say, how do i use you, what can i tell you, instructions, how does it work, what can i ask
    """,
    "ask wearing": """
        what is wearing, wearing what, wear, wearing, what is in, what does wear, what should wear, in, put
        on, have on, goes on, has on, got on
    """,
    "ask tonight": """
        tonight, today, this evening, this morning, for the night, this afternoon, should, does, for,
        tomorrow, overnight, do, to wear, going to, need, next, goes
    """,
    "ask ready": "when will, ready, when is, when does, when can, how long until, dry by, how long till",
}
