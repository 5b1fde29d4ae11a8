"""What is made of values that come again: made once for each object, and never another's."""

from __future__ import annotations

from bookmaker.display.recurring import Recurring


def test_the_same_object_is_not_made_again() -> None:
    listed: Recurring[tuple[int, ...], list[int]] = Recurring(list, most=10)
    one = (1, 2)
    assert listed(one) == [1, 2] and listed(one) is listed(one)
    assert listed((*one, 3)) == [1, 2, 3]


def test_no_value_gets_what_was_made_of_another() -> None:
    """Values that are gone at once, so that their places in memory are used again; and more than are kept."""
    listed: Recurring[tuple[int, ...], list[int]] = Recurring(list, most=3)
    assert all(listed((number,)) == [number] for number in range(1000))
