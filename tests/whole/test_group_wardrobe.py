"""The question about clothes in a real group: seen at once, answered under the question."""

import json

from tests.whole.living import INES, THEO, Living, in_group, to


async def test_who_asks_what_to_buy_is_seen_and_answered_where_they_asked(group: Living) -> None:
    """On the first morning there is nothing to go by, and that is what it says."""
    said = await group.says("7:10", THEO, "what should we buy?")
    (told,) = in_group(said)
    assert "I need 21" in told
    reactions = [fields["reaction"] for method, fields in group.api.calls if method == "setMessageReaction"]
    assert [one["emoji"] for reaction in reactions for one in json.loads(reaction)] == ["👀"]
    asked = await group.says("7:12", INES, "¿qué compramos?", chat=INES)
    assert in_group(asked) == []
    assert "hacen falta 21" in "".join(to(INES, asked))
