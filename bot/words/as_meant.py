"""The words of a message as they are meant: whom each names, which piece they describe, and what was put right."""

from functools import partial

from bot.words.clothing.clothes import find
from bot.words.clothing.hung_there import without_where_it_hung
from bot.words.clothing.in_rows import in_rows
from bot.words.clothing.that_of import told_by_owner
from bot.words.clothing.worn_by import worn_by
from bot.words.lookup.items import Said
from bot.words.lookup.lexicon import Lexicon
from bot.words.lookup.tokens import Token
from bot.words.mending.bracketed import out_of_brackets
from bot.words.mending.cleft import this_one
from bot.words.mending.earlier import earlier_on
from bot.words.mending.lists_of_pieces import pieces_told_at_once
from bot.words.mending.meant_instead import meant_instead
from bot.words.mending.mended import mended
from bot.words.mending.named_last import named_first
from bot.words.mending.none_but import none_but
from bot.words.mending.own_plans import without_own_plans
from bot.words.mending.run_on import paused_where_another_begins
from bot.words.mending.said_otherwise import said_otherwise
from bot.words.mending.set_off import without_what_is_set_off
from bot.words.mending.si_for_yes import yes_or_if
from bot.words.mending.simple_present import sweats_now
from bot.words.mending.strung import strung_apart
from bot.words.mending.warm_but_dry import hot_if_only_dry
from bot.words.named.borne import borne
from bot.words.named.clipped_so import clipped_so
from bot.words.named.doubtful import without_doubtful
from bot.words.named.et_est import et_or_est
from bot.words.named.he_or_the_sky import he_or_the_sky
from bot.words.named.in_passing import without_passing
from bot.words.named.my_things import my_things, without_my_things
from bot.words.named.namesakes import without_namesakes
from bot.words.named.others_called_so import without_others_called_so
from bot.words.named.quotations import without_quotations
from bot.words.named.relatives import of_whom, without_me
from bot.words.named.settle import settle
from bot.words.named.their_horse import both_called_so, by_owner_or_kind, who_is_the_horse, with_their_horses
from bot.words.named.wished_around import wished_around
from bot.words.thoughts.asides import without_greeting
from bot.words.thoughts.elsewhere import without_strange_horses
from bot.words.thoughts.hers import in_hers
from bot.words.thoughts.him_too import listed_again
from bot.words.thoughts.under_heading import under_heading
from bot.words.thoughts.years import with_years
from bot.words.told.telling import Telling
from bot.words.typed.scan import scan

AS_WRITTEN = (out_of_brackets, who_is_the_horse, without_quotations, with_years, borne, et_or_est, he_or_the_sky)
# each in turn: what is told of none of ours, or only tells which is meant; and what stands otherwise than it is meant
WHOSE = (without_where_it_hung, without_my_things, without_me, of_whom, without_passing, in_hers)
PUT_RIGHT = (
    earlier_on, without_what_is_set_off, pieces_told_at_once, told_by_owner, yes_or_if, worn_by, none_but, this_one,
    mended, meant_instead, said_otherwise, under_heading, listed_again, sweats_now, named_first, hot_if_only_dry,
    strung_apart, paused_where_another_begins,
)  # fmt: skip


def as_named(tokens: list[Token], lexicon: Lexicon, telling: Telling) -> Said:
    """What the words stand for, the names among them settled."""
    names, mine = telling.roster, telling.mine
    return Said(scan(tokens, lexicon, names)).through((
        *AS_WRITTEN,
        partial(without_others_called_so, mine=mine),
        partial(my_things, of_pieces=names.words),
        partial(without_strange_horses, barn=telling.barn, owned=names.keepers),
        partial(by_owner_or_kind, mine=mine, barn=telling.barn),
        without_greeting, partial(with_their_horses, owned=names.keepers), partial(both_called_so, parts=names.parts),
        partial(in_rows, roster=names), settle, partial(without_namesakes, language=lexicon.language), without_doubtful,
        partial(clipped_so, lexicon=lexicon), partial(wished_around, lexicon=lexicon),
    ))  # fmt: skip


def as_meant(settled: Said, lexicon: Lexicon, telling: Telling) -> Said:
    """The same with the pieces of clothing found, and what was mended while speaking put right."""
    dressed = partial(find, roster=telling.roster, mine=telling.mine)
    return settled.through((dressed, *WHOSE, partial(without_own_plans, lexicon=lexicon), *PUT_RIGHT))
