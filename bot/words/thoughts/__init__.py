"""Sentences cut into thoughts, one each, and which thoughts are no report.

years              a year that is over
elsewhere          horses of other people and other places, told by their kind
came_for           whom somebody came for, passed, or went with: told nothing of
hers               what is a horse's, and not the horse: "Maple's halter", "Maple's new saddle fitter"
of_now             what stands over a list: whether what is below is worn now
strange_rows       rows of what is none of ours
under_heading      a list under a heading: each line tells what the heading says
leads_up           a tale told in one breath: what only leads up to the report
sentences          where each ends, and whether it is marked as a question
asides             what only tells which horse is meant
but_these          all but these, said as what they are not yet
clauses, cutting, whole   one thought each
parting            the words in a sentence that begin another
she_begins         what a pronoun begins
begins             what a pause or an "and" begins
him_too            a pronoun in a list of names
listed             names in a list, and where it ends
asking             what is a question
topics             what is asked beyond the plan, in a phrase that is the whole message
around             what the words beside a sign say of it
holes              a hole, how big, and in what
named_at_last      horses named at the end of what is told of them
to_come            what is said as if done, of an hour still to come
no_report, supposed   a plan, a condition, a habit, what is still to come, what is long over
relayed            what others tell of how it was
now_otherwise      where "now" begins a thought behind what was
one_each           whether another horse gets a piece of its own
"""
