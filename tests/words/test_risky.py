"""Names that will be misheard are warned of before anybody is."""

from bot.barn import Barn
from bot.words import warnings
from tests.words.corpus import barn


def warned(where: Barn, *names: str) -> bool:
    """Whether one warning names all of these."""
    return any(all(name in line for name in names) for line in warnings(where))


def test_a_hard_barn_is_warned_of_its_names() -> None:
    """Words, short names, names a letter apart, names inside names, a nickname of two garments."""
    hard = barn("hard")

    assert warned(hard, "Misty", "everyday word")
    assert warned(hard, "Bo", "short")
    assert warned(hard, "Bella", "Belle", "one letter apart")
    assert warned(hard, "red rug", "max-sheet", "patch-sheet")


def test_names_inside_names_are_warned_of() -> None:
    """Lady is not Lady Grey."""
    oak = barn("oak")
    two = oak.model_copy(update={"horses": (*oak.horses, oak.horses[0].model_copy(update={"name": "Lady"}))})

    assert warned(two, "Lady", "Lady Grey", "whole")


def test_clear_names_are_not_warned_of() -> None:
    """A barn of plain names hears nothing."""
    assert not warned(barn("oak"), "Bramble", "short")
    assert not warned(barn("oak"), "Lady Grey")
