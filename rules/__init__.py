"""Arithmetic of a dressed horse: values in, decisions out; no clock, file, network or time zone.

Lowest floor first:

parameters  every thermal number once: value, range, unit, source, standing
reason      what a decision says of itself, without words
exchange    what a surface gives to the air: convection, radiation, evaporation
sun         where it stands over the site, and what it gives where a forecast is silent
weather     a forecast as arrays; wind, rain, sun and sky at horse height; scenarios
horse       surface, heat production and tissue insulation of one animal
coat        hair depth by date, clip and regrowth; flattened, blown and erect hair
acclimatised  what the air of the last weeks did to a horse, beyond its season
garment     kinds of clothing; insulation of one and of layers, what it covers
question    everything a plan depends on: horses, stays, pieces, wishes, costs
wetness     water into hair and cloth and out again; when a garment on the rail is dry
dressed     one horse in one outfit is a case; all cases as arrays
paths       the ways heat takes out: tissue, hair, cloth, air, by zones of the skin
heat        the balance: cold and heat margin, needed fill; axes (case, scenario, hour)
settled     the account of an hour: where the heat went, to the last watt
outfit      which pieces go together on this horse now, and the reason where not
offset      one horse's offset from all its signs: bounded, fading, explained
shared      how the model errs on most horses of a barn: wind, fill, cold borne, stalls, coats growing back
site        what a barn learns of itself: how long things dry
lived       what horses went through in what they wore, water carried on from round to round
chart       what a plain temperature chart on the wall says: the measure
day         cost of an outfit over a window; best sequence with a price for each change
sharing     spares across the barn, exactly: no piece on two horses
drying      when each wet garment is dry on the rail where it hangs
outlook     what the weather of one window brings, in a few numbers
wish        what an owner asked for: which outfits keep it, what breaking it costs
stand       every case of one window summed up
edges       what it costs to go from one outfit to the next and stand the window in it
pricing     every outfit of every horse in every window: the heavy part, all cases at once
decision    one horse, one window and what was chosen, with the numbers around it
why         the one to three reasons behind a decision
caution     what is unsafe or needs hands, as reasons with numbers
missing     what no outfit reaches, and the one garment that would
explain     the hours behind a decision; margins in what was really worn
plan        the one door: price(question), then choose(prices, question)
tipping     what would change the advice for one horse: reports, another offset, other weather
moved       two plans compared: whom a new forecast or report moves, and by how much
"""
