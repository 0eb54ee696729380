"""A whole season: what was worn through it, how it went, and what a barn can learn from that.

living     windows through a season, one after the other, by any way of choosing clothes
airport    hourly airport tables as a record
then       today's barn in the years of a record
choosing   the ways: Haybell's plan, the chart on the wall, always bare, one heavy rug
judging    the margins of every horse and hour in what it wore, the same physics for every way
tally      hours too cold and too warm, wet skin, changes, garments in use
report     a season as table, JSON and picture
picture    the season as an image
hindsight  every outfit that might have been worn, and the best way through a season
wardrobe   which garment would have helped most, which was missed, which were never needed
past       the barn's own past, from ledger and sheets, as a season
closet     what that past says of the clothes; closet_told: in words
mirror     what the model expected against what people saw
history    one horse's days: what it wore, what was seen, the bill
pages      a month as a calendar, notes for the veterinarian, the mirror as a picture
"""
