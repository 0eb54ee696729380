"""What messages of other hands are understood as: the measures the barn was promised, for people nobody listened to."""

import pytest

from tests.words.others import MENDED, SETS, by_language, messages, table


@pytest.mark.parametrize("language", ["en", "es", "fr"])
def test_what_others_write_is_understood(language: str) -> None:
    """95 of 100 reports exactly right, and nothing recorded of a wrong horse or garment, ever."""
    tally = by_language(SETS)[language]

    assert tally["reports right"] >= 0.95 * tally["reports"]
    assert tally["wrong subject"] == 0


def test_what_others_say_among_themselves_is_left_alone() -> None:
    """99 of 100 messages that are not for the bot are met with silence."""
    tallies = by_language(SETS).values()

    assert sum(t["chatter right"] for t in tallies) >= 0.99 * sum(t["chatter"] for t in tallies)


@pytest.mark.parametrize("language", ["en", "es", "fr"])
def test_what_was_mended_stays_so(language: str) -> None:
    """98 of 100 reports of the sets that were mended from, and small talk left alone; twelve still act wrongly.

    Of these, "The navy's got a rip" behind a word of Hector is taken for his navy, where one would be asked; a groom
    who writes by ear has his "couverte de Bali" taken for a covered Bali; who asks for a sheet that is "not on her
    door" is heard to say that it is missing; and "barone" is nearer to Baronne than to Baron, by a letter doubled. The
    others are small talk: homework that quotes, T-shirts told by colour, a racehorse with a longer name, muffins of
    Nutmeg's spice, a groom called as a horse is, thanks for a good week, a joke, and irony, which nothing here
    understands.
    """
    tally = by_language(MENDED)[language]

    assert tally["reports right"] >= 0.98 * tally["reports"]
    assert tally["chatter"] - tally["chatter right"] == {"en": 6, "es": 10, "fr": 8}[language]
    assert tally["wrong subject"] == {"en": 4, "es": 4, "fr": 4}[language]


@pytest.mark.parametrize("name", SETS + MENDED)
def test_a_set_is_a_hundred_messages_about_a_barn(name: str) -> None:
    """Reports and small talk, as a group has them."""
    told = list(messages(name))

    assert len(told) == 100
    assert 30 <= sum(message.chatter for message in told) <= 50


def test_the_table_can_be_printed(capsys: pytest.CaptureFixture[str]) -> None:
    """One command prints what README shows."""
    print(table())

    assert len(capsys.readouterr().out.splitlines()) == 5
