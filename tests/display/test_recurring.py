"""What is made of values that come again: made once for each object, and never another's."""

from __future__ import annotations

from bookmaker.display.recurring import Recurring


def test_the_same_object_is_not_made_again() -> None:
    listed: Recurring[tuple[int, ...], list[int]] = Recurring(list, most=10)
    one = (1, 2)
    assert listed(one) == [1, 2] and listed(one) is listed(one)
    assert listed((*one, 3)) == [1, 2, 3]


def test_many_are_made_as_if_one_by_one() -> None:
    made = list[tuple[int, ...]]()

    def make(value: tuple[int, ...]) -> list[int]:
        made.append(value)
        return [*value]

    listed = Recurring(make, most=3)
    values = [(number % 5,) for number in range(20)]
    again = [values[0], *values, values[0]]
    assert listed.all(again) == [[*value] for value in again]
    assert listed.all(()) == []
    kept = len(made)
    assert listed.all(values[-1:]) == [[4]] and len(made) == kept


def test_no_value_gets_what_was_made_of_another() -> None:
    """Values that are gone at once, so that their places in memory are used again; and more than are kept."""
    listed: Recurring[tuple[int, ...], list[int]] = Recurring(list, most=3)
    assert all(listed((number,)) == [number] for number in range(1000))
