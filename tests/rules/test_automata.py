"""Machines made from a step function: they do what the function says, and are as small as they can be."""

from __future__ import annotations

from functools import partial
from itertools import pairwise, product

from bookmaker.rules.common.deducing.automata import Machine, machine, met
from bookmaker.solve.problem import Automaton


def accepts(made: Machine, digits: tuple[int, ...]) -> bool:
    state = 0
    for digit in digits:
        state = made.steps[state][digit]
        if state < 0:
            return False
    return state in made.accept


def test_a_machine_accepts_what_its_step_function_accepts() -> None:
    """Never more than 6 in sum, and no 2 right after a 3; every word of up to five digits is tried."""

    def step(state: tuple[int, int], digit: int) -> tuple[int, int] | None:
        last, total = state
        return None if (last, digit) == (3, 2) or total + digit > 6 else (digit, total + digit)

    made = machine(range(1, 4), (0, 0), step, lambda state: state[1] >= 4)
    for length in range(6):
        for word in product(range(1, 4), repeat=length):
            told = 4 <= sum(word) <= 6 and (3, 2) not in pairwise(word)
            assert accepts(made, word) is told, word


def _added(modulus: int, total: int, digit: int) -> int:
    return (total + digit) % modulus


def _multiple(of: int, total: int) -> bool:
    return total % of == 0


def test_a_machine_has_no_state_to_spare() -> None:
    """Words whose digits add up to a multiple of k need exactly k states: the residues, all told apart."""
    for k in (2, 3, 5):
        made = machine(range(1, 10), 0, partial(_added, 4 * k), partial(_multiple, k))
        assert len(made.steps) == k


def test_what_cannot_end_well_is_refused_at_once() -> None:
    """After a 2 no word is accepted, so that 2 is refused, and the state after it is gone."""
    made = machine(range(1, 3), "", lambda state, digit: state + str(digit) if len(state) < 2 else None, "11".__eq__)
    assert [row[2] for row in made.steps] == [-1] * len(made.steps)
    assert len(made.steps) == 3


def test_nothing_is_left_of_a_machine_that_accepts_nothing() -> None:
    made = machine(range(1, 3), 0, lambda state, digit: state, lambda state: False)
    assert made == Machine(((-1, -1, -1),), frozenset())


def test_a_machine_reads_any_line() -> None:
    made = machine(range(1, 3), 0, lambda state, digit: state, lambda state: True)
    assert made.over((4, 2)) == Automaton((4, 2), made.steps, made.accept)


def test_digits_met_are_remembered_on_grids_up_to_nine() -> None:
    assert met(0b101, 2, 9) == 0b111
    assert met(0b101, 3, 9) is None
    assert met(0, 3, 16) == 0
