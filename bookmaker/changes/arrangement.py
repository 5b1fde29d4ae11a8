"""How givens and marks are arranged on a grid: which turns and mirrors map them to each other.

In: a name from `ARRANGEMENTS`, or a puzzle. Out: the images of cells and marks under an arrangement, orbits of cells
(those that come or go together), and the arrangements that a puzzle keeps, or nearly keeps.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from functools import cache

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.parts import Form, Part
from bookmaker.symmetry.moves import TURNS, Turn, turned_onto_itself

Cells = tuple[int, ...]

_HALF, _ACROSS, _DOWN, _FALLING, _RISING, _QUARTER = TURNS.values()

ARRANGEMENTS: dict[str, tuple[Turn, ...]] = {
    "none": (),
    "half-turn": (_HALF,),
    "left-right": (_ACROSS,),
    "top-bottom": (_DOWN,),
    "diagonal": (_FALLING,),
    "other-diagonal": (_RISING,),
    "quarter-turn": (_QUARTER,),
    "both-mirrors": (_ACROSS, _DOWN),
    "both-diagonals": (_FALLING, _RISING),
}
"""The arrangements by name, each with the turns that make it; from the one that asks nothing on."""


@dataclass(frozen=True, slots=True)
class Arrangement:
    """`moves` are all its maps of cells, the one that leaves them where they are first."""

    name: str
    moves: tuple[Cells, ...]

    def images(self, cells: Iterable[int]) -> tuple[Cells, ...]:
        """Some cells and their images, each once as they are told."""
        cells = tuple(cells)
        return tuple(dict.fromkeys(tuple(move[cell] for cell in cells) for move in self.moves))

    def orbit(self, cell: int) -> Cells:
        """A cell and its images."""
        return tuple(dict.fromkeys(move[cell] for move in self.moves))

    @property
    def orbits(self) -> tuple[Cells, ...]:
        """All cells in groups that come or go together."""
        return tuple(dict.fromkeys(tuple(sorted(self.orbit(cell))) for cell in range(len(self.moves[0]))))

    def images_of(self, part: Part, rule: Rule) -> tuple[Part, ...]:
        """A mark and its images, those that would be the same mark once. Figures are as at the mark itself."""
        found: dict[object, Part] = {}
        for move in self.moves:
            image = replace(part, cells=tuple(move[cell] for cell in part.cells))
            found.setdefault(same_mark(image, rule), image)
        return tuple(found.values())


def same_mark(part: Part, rule: Rule) -> object:
    """Equal for two ways to tell the place of one mark: from either end, or in another order."""
    match rule.form:
        case Form.CHAIN if not rule.directed:
            return min(part.cells, part.cells[::-1])
        case Form.AREA | Form.BORDER | Form.CORNER if not rule.directed:
            return tuple(sorted(part.cells))
        case Form.TWINS:
            size = len(part.cells) // part.value[0]
            return frozenset(frozenset(part.cells[at : at + size]) for at in range(0, len(part.cells), size))
    return part.cells


@cache
def arrangement(name: str, grid: Grid) -> Arrangement:
    """The arrangement of a name on a grid. Raises KeyError for an unknown name, and for one of a turn that does not lay
    grids that overlap on themselves."""
    turns = [turned_onto_itself(turn, grid) for turn in ARRANGEMENTS[name]]
    if None in turns:
        raise KeyError(name)
    moves = [tuple(grid.cells)]
    for move in moves:  # grows until no turn adds another
        moves += [new for turn in turns if turn and (new := tuple(turn[cell] for cell in move)) not in moves]
    return Arrangement(name, tuple(moves))


@cache
def arrangements_of(grid: Grid) -> tuple[Arrangement, ...]:
    """All that there are on a grid, from the one that asks nothing on."""
    there = (name for name, turns in ARRANGEMENTS.items() if all(turned_onto_itself(turn, grid) for turn in turns))
    return tuple(arrangement(name, grid) for name in there)


def arranged_as(cells: Iterable[int], grid: Grid) -> Arrangement:
    """The arrangement with most images among those that map a set of cells to itself."""
    kept = set(cells)
    fitting = (made for made in arrangements_of(grid) if all(kept >= set(made.orbit(c)) for c in kept))
    return max(fitting, key=lambda found: len(found.moves))


def nearly_arranged_as(cells: Sequence[int], grid: Grid, astray: int = 1) -> tuple[Arrangement, ...]:
    """The arrangements that a set of cells would keep but for `astray` of them at most, those kept best first.

    A cell is astray if it would have to go, or be joined by others; it is told by the fewer of its orbit.
    """
    kept = set(cells)
    found = []
    for made in arrangements_of(grid):
        halves = [(len(kept & set(orbit)), len(orbit)) for orbit in made.orbits]
        broken = sum(min(inside, all_ - inside) for inside, all_ in halves)
        if made.name != "none" and broken <= astray:
            found.append((broken, -len(made.moves), made))
    return tuple(made for _, _, made in sorted(found, key=lambda item: item[:2]))
