"""Sums as clauses: of each partial sum it is said how great it is at least.

In: the cells of a sum, in parts of cells that differ from each other. Out: clauses over further variables, one for “at
least v” for every value v of a partial sum but the least. Such an order encoding (N. Tamura, A. Taga, S. Kitagawa and
M. Banbara, “Compiling finite linear CSP into SAT”, Constraints 14, 2009) learns about ranges of values at once, where a
variable for each value learns about one at a time. Terms are added in pairs and these in pairs again (O. Bailleux and
Y. Boufkhad, “Efficient CNF encoding of Boolean cardinality constraints”, CP 2003), part by part. Values that the other
terms cannot make up for are left out, from the whole sum down. How many literals hold is such a sum too.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Callable, Mapping, Sequence, Set
from dataclasses import dataclass
from itertools import pairwise

from bookmaker.solve.candidates import each_bit, places_in
from bookmaker.solve.sum_support import sum_support

Say = Callable[[Sequence[int]], object]
"""Takes a clause: literals of which one must hold, the number of a variable, negative for its negation."""

SURE = 0
"""In place of a literal that holds always."""


@dataclass(frozen=True, slots=True)
class Number:
    """A number that takes one of some values, which rise; `reached` has a literal for each: is it at least that?"""

    values: Sequence[int]
    reached: Sequence[int]


@dataclass(frozen=True, slots=True)
class _Term:
    """A cell and its factor, two terms to be added, or a `literal` that counts 1; `values` are all that it may come to
    by itself."""

    values: Set[int]
    cells: tuple[int, ...]
    factor: int
    halves: tuple[_Term, _Term] | None = None
    literal: int = 0


class SumClauses:
    """Says sums over cells in clauses, with variables that `new` gives.

    `literals` and `masks` are those of `Clauses`: of each cell the variables of its candidates, and its candidates.
    """

    def __init__(
        self,
        say: Say,
        new: Callable[[], int],
        literals: Sequence[Sequence[int] | None],
        masks: Sequence[int],
        digits: int,
    ) -> None:
        self._say = say
        self._new = new
        self._literals = literals
        self._masks = masks
        self._digits = digits
        self._numbers: dict[int, Number] = {}

    def within(self, parts: Sequence[Sequence[int]], factors: Mapping[int, int], least: int, most: int) -> None:
        """Factor × digit over undecided cells adds up to `least`..`most`. The cells of a part differ."""
        self._limited([self._part(cells, factors[cells[0]]) for cells in parts], least, most)

    def counted(self, literals: Sequence[int], least: int, most: int) -> None:
        """From `least` to `most` of the literals hold."""
        if literals:
            self._limited([_Term({0, 1}, (), 0, literal=literal) for literal in literals], least, most)

    def _limited(self, terms: Sequence[_Term], least: int, most: int) -> None:
        whole = self._added(terms)
        allowed = {value for value in whole.values if least <= value <= most}
        if allowed != whole.values:
            self._said(whole, allowed)

    def _part(self, cells: Sequence[int], factor: int) -> _Term:
        single = [_Term({factor * (p + 1) for p in places_in(self._masks[cell])}, (cell,), factor) for cell in cells]
        return self._added(single, factor)

    def _added(self, terms: Sequence[_Term], factor: int = 0) -> _Term:
        """The sum of some terms; with a factor, that of cells that differ."""
        while len(terms) > 1:
            pairs = zip(terms[::2], terms[1::2], strict=False)
            terms = [*(self._sum(one, other, factor) for one, other in pairs), *terms[len(terms) & ~1 :]]
        return terms[0]

    def _sum(self, one: _Term, other: _Term, factor: int) -> _Term:
        cells = one.cells + other.cells
        if factor:
            sums = sum_support(self._digits, len(cells), 1).sums_of([self._masks[cell] for cell in cells])
            floor = len(cells) * (len(cells) + 1) // 2
            values = {factor * (floor + at) for at in each_bit(sums)}
        else:
            values = {a + b for a in one.values for b in other.values}
        return _Term(values, cells, factor, (one, other))

    def _said(self, term: _Term, allowed: Set[int]) -> Number:
        """The clauses for a term that comes to one of the `allowed` values."""
        if not allowed:
            self._say(())
            return Number((0,), (SURE,))
        if term.halves is None:
            return self._within(self._single(term), allowed)
        one, other = term.halves
        a = self._said(one, {x for x in one.values if any(x + y in allowed for y in other.values)})
        b = self._said(other, {y for y in other.values if any(x + y in allowed for x in one.values)})
        number = self._number(sorted(allowed))
        differ = len(term.cells) == 2 and term.factor
        self._at_least(a, b, number, abs(term.factor) if differ else 0)
        self._at_most(a, b, number, abs(term.factor) if differ else 0)
        return number

    def _number(self, values: Sequence[int]) -> Number:
        reached = [SURE, *(self._new() for _ in values[1:])]
        for less, more in pairwise(reached[1:]):
            self._say((-more, less))
        return Number(values, reached)

    def _single(self, term: _Term) -> Number:
        if term.literal:
            return Number((0, 1), (SURE, term.literal))
        (cell,), factor = term.cells, term.factor
        digit = self._digit(cell)
        return digit if factor == 1 else _times(digit, factor)

    def _within(self, number: Number, allowed: Set[int]) -> Number:
        least, most = min(allowed), max(allowed)
        for value, reached in zip(number.values, number.reached, strict=True):
            if value == least and reached:
                self._say((reached,))
            if value > most:
                self._say((-reached,) if reached else ())
                break
        return number

    def _digit(self, cell: int) -> Number:
        """The digit of a cell as a number; its literals are tied to those of the candidates once."""
        known = self._numbers.get(cell)
        if known:
            return known
        row = self._literals[cell]
        assert row is not None
        places = places_in(self._masks[cell])
        values = [place + 1 for place in places]
        if len(places) == 2:
            number = Number(values, (SURE, row[places[1]]))
        else:
            number = self._number(values)
            for place, here, beyond in zip(places, number.reached, (*number.reached[1:], None), strict=True):
                if here:
                    self._say((-row[place], here))
                if beyond:
                    self._say((-row[place], -beyond))
                ends = *((-here,) if here else ()), *((beyond,) if beyond else ())
                self._say((*ends, row[place]))
        self._numbers[cell] = number
        return number

    def _at_least(self, a: Number, b: Number, total: Number, more: int) -> None:
        """If a ≥ x and b ≥ y, then their sum is at least x + y, and `more` where x = y is not for both."""
        say, values, most = self._say, total.values, total.values[-1]
        for x, from_x in zip(a.values, a.reached, strict=True):
            unless = (-from_x,) if from_x else ()
            for y, from_y in zip(b.values, b.reached, strict=True):
                least = x + y + (more if x == y else 0)
                if least > values[0]:
                    before = (*unless, -from_y) if from_y else unless
                    if least > most:
                        say(before)
                        break
                    say((*before, total.reached[bisect_left(values, least)]))

    def _at_most(self, a: Number, b: Number, total: Number, less: int) -> None:
        """If a ≤ x and b ≤ y, then their sum is at most x + y, and `less` where x = y is not for both."""
        say, values, least = self._say, total.values, total.values[0]
        for x, above_x in zip(reversed(a.values), (SURE, *a.reached[:0:-1]), strict=True):
            unless = (above_x,) if above_x else ()
            for y, above_y in zip(reversed(b.values), (SURE, *b.reached[:0:-1]), strict=True):
                most = x + y - (less if x == y else 0)
                if most < values[-1]:
                    before = (*unless, above_y) if above_y else unless
                    if most < least:
                        say(before)
                        break
                    say((*before, -total.reached[bisect_right(values, most)]))


def _times(number: Number, factor: int) -> Number:
    """The number times a factor other than 0: below 0, it is at least −v if the number is not above v."""
    if factor > 0:
        return Number([factor * value for value in number.values], number.reached)
    return Number(
        [factor * value for value in reversed(number.values)], (SURE, *(-above for above in number.reached[:0:-1]))
    )
