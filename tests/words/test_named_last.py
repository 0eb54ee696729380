"""Who is named when all is said: what was told first is of that horse as well, and of each what stands before it."""

import pytest

from tests.words.saying import said, told


@pytest.mark.parametrize(
    ("name", "text", "as_if"),
    [
        ("oak", "cold but not shivering Otto", "Otto cold but not shivering"),
        ("oak", "cold but not shivering, Otto", "Otto cold but not shivering"),
        ("oak", "cold Otto but not shivering", "Otto cold but not shivering"),
        ("oak", "Cold but not shivering Otto this morning. Fig is fine", "Otto is cold. Fig is fine"),
        ("oak", "hot but not sweating Otto and Fig", "Otto and Fig are hot"),
        ("oak", "warm but not sweating Otto", "Otto is warm but not sweating"),
        ("oak", "wet but not cold Otto", "Otto is wet but not cold"),
        ("oak", "in his stall and cold, Otto", "Otto is cold in his stall"),
        ("oak", "wet and torn, Otto's sheet", "Otto's sheet is wet and torn"),
        ("oak", "damp but not torn, Willow's heavy", "Willow's heavy is damp"),
        ("encina", "mojada, rota, la impermeable de Canela", "la impermeable de Canela mojada y rota"),
        ("encina", "fría pero no tiembla Canela", "Canela fría pero no tiembla"),
        ("encina", "caliente pero sin sudar Moro", "Moro caliente pero sin sudar"),
        ("chenaie", "froide mais ne tremble pas Étoile", "Étoile froide mais ne tremble pas"),
        ("chenaie", "chaud mais pas en sueur Filou", "Filou chaud mais pas en sueur"),
    ],
)
def test_both_are_told_of_who_is_named_last(name: str, text: str, as_if: str) -> None:
    """The first of the two is what somebody must know; it was once lost, and the horse noted as comfortable."""
    assert told(said(text, name))
    assert told(said(text, name)) == told(said(as_if, name))


@pytest.mark.parametrize("text", ["cold but Otto is fine", "cold out but Otto fine", "wet here but Otto fine"])
def test_the_weather_is_not_of_the_horse(text: str) -> None:
    """Where the horse stands behind "but" with what is told of it, the first is of the day."""
    assert told(said(text)) == [("Otto", "comfortable")]


def test_who_is_left_out_is_not_told_of() -> None:
    """Not him: that he is not cold is no report, as long as nobody says who is."""
    assert said("cold but not Otto").chatter


@pytest.mark.parametrize(
    ("name", "text", "as_if"),
    [
        ("oak", "cold Otto, not cold Fig", "Otto cold, Fig not cold"),
        ("oak", "cold Otto; fine Fig", "Otto cold, Fig fine"),
        ("oak", "cold Otto shivering Fig and Tucker", "Otto cold, Fig shivering, Tucker shivering"),
        ("oak", "wet Otto but fine Fig this morning", "Otto wet, Fig fine"),
        ("encina", "fría Canela temblando Paloma", "Canela fría, Paloma temblando"),
        ("chenaie", "nue Étoile et bien Perle", "Étoile nue, Perle bien"),
    ],
)
def test_each_has_what_stands_before_the_name(name: str, text: str, as_if: str) -> None:
    """One after another, the name always last: nobody has what is said of the next one."""
    assert len(told(said(text, name))) > 1
    assert sorted(map(str, told(said(text, name)))) == sorted(map(str, told(said(as_if, name))))


def test_where_the_name_is_first_it_stays_so() -> None:
    """Whatever is behind the name is of that one."""
    assert told(said("Otto cold, Fig wet")) == [("Otto", "cold"), ("Fig", "wet")]
    assert told(said("Otto cold and wet, Fig fine")) == [("Otto", "cold"), ("Otto", "wet"), ("Fig", "comfortable")]
