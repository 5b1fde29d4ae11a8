"""Rules carried along with a move, mark by mark, as a setter would draw them: what look-alikes are tried on.

In: a rule, and a move that is a turn or reflection of the grid with a renaming of the digits that the rule allows. Out:
the rule with its marks turned round, typed in another order and, where a mark has no direction, from its other end.
"""

from __future__ import annotations

from dataclasses import fields, replace
from random import Random
from typing import Any, get_args

from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.arithmetic_cage import Result
from bookmaker.rules.common.clue import Clue, Side
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.counting_area import Tally
from bookmaker.rules.diagonal_sum import WAYS, Diagonal
from bookmaker.symmetry.moves import Move, unmoved_digits


def moved(rule: Rule, grid: Grid, move: Move, rng: Random) -> Rule:
    """The same rule after the move."""
    names = {field.name for field in fields(rule)}
    (which,) = [turn for known, turn in _TURNS if known <= names] or [lambda rule, *_: rule]
    return which(rule, grid, move, rng)


def _shuffled(marks: Any, rng: Random) -> tuple[Any, ...]:
    return tuple(rng.sample(list(marks), len(marks)))


def _reversed(move: Move) -> bool:
    return move.digits != unmoved_digits(move.size)


def _cells(cells: Any, move: Move) -> tuple[int, ...]:
    return tuple(sorted(move.cells[cell] for cell in cells))


def _chains(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    chains = [tuple(move.cells[cell] for cell in chain) for chain in rule.chains]
    if rule.kind.endswith("thermometer"):
        chains = [chain[::-1] if _reversed(move) else chain for chain in chains]
    else:
        chains = [chain[:: rng.choice((1, -1))] for chain in chains]
    return replace(rule, chains=_shuffled(chains, rng))


def _cages(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    def there(cells: Any, value: Any) -> Any:
        whole = len(cells) * (grid.size + 1)
        match value:
            case Tally():
                return replace(value, digits=tuple(sorted(move.digits[digit] for digit in value.digits)))
            case _ if not _reversed(move):
                return value
            case int():
                return whole - value if value else 0
            case Result(number, "+"):
                return Result(whole - number, "+")
            case "even" | "odd" if whole % 2:
                return "odd" if value == "even" else "even"
        return value

    return replace(
        rule, cages=_shuffled([(_cells(cells, move), there(cells, value)) for cells, value in rule.cages], rng)
    )


def _groups(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    """Cells at one index are twins, so areas move as they are and their cells are put in the grid's order alike."""
    groups = []
    for group in rule.groups:
        there = [move.cells[cell] for cell in group[0]]
        order = sorted(range(len(there)), key=there.__getitem__)
        groups.append(_shuffled([tuple(move.cells[area[i]] for i in order) for area in group], rng))
    return replace(rule, groups=tuple(groups))


def _pairs(*names: str) -> Any:
    """Pairs of neighbours without a direction, in the grid's order."""

    def turn(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
        return replace(
            rule, **{name: _shuffled([_cells(pair, move) for pair in getattr(rule, name)], rng) for name in names}
        )

    return turn


def _values(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    """Numbers on borders: counted from the other end, sums are others and differences the same."""

    def there(worth: Any) -> Any:
        turned = _reversed(move) and worth.sort == "sum"
        return worth._replace(number=2 * (grid.size + 1) - worth.number) if turned else worth

    values = [(_cells(pair, move), there(worth)) for pair, worth in rule.values]
    return replace(rule, values=_shuffled(values, rng))


def _signs(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    pairs = [(move.cells[one], move.cells[other]) for one, other in rule.pairs]
    return replace(rule, pairs=_shuffled([pair[::-1] if _reversed(move) else pair for pair in pairs], rng))


def _two_sorts(one: str, other: str, turned: Any) -> Any:
    """Two sorts of marked cells, which change places where digits are counted from the other end."""

    def turn(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
        pair = tuple(_cells(getattr(rule, name), move) for name in (one, other))
        pair = pair[::-1] if _reversed(move) and turned(grid) else pair
        return replace(rule, **dict(zip((one, other), pair, strict=True)))

    return turn


def _pointing(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    """An arrow is found again by the cell next to it in its direction."""
    steps = {"left": (0, -1), "right": (0, 1), "up": (-1, 0), "down": (1, 0)}
    found: dict[str, list[int]] = {way: [] for way in steps}
    for way, (down, across) in steps.items():
        for cell in getattr(rule, way):
            there = move.cells[cell]
            ahead = move.cells[grid.cell(grid.row(cell) + down, grid.column(cell) + across)]
            step = grid.row(ahead) - grid.row(there), grid.column(ahead) - grid.column(there)
            found[next(way for way, known in steps.items() if known == step)].append(there)
    return replace(rule, **{way: _shuffled(cells, rng) for way, cells in found.items()})


def _shaded(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    return replace(rule, cells=_cells(rule.cells, move))


def _limits(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    def there(limit: Any) -> Any:
        digits = mask_of(move.digits[d] for d in digits_in(limit.digits))
        return replace(limit, cell=move.cells[limit.cell], digits=digits)

    return replace(rule, limits=_shuffled([there(limit) for limit in rule.limits], rng))


def _rings(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    def there(ring: Any) -> Any:
        return replace(ring, cells=_cells(ring.cells, move), digits=tuple(sorted(move.digits[d] for d in ring.digits)))

    return replace(rule, rings=_shuffled([there(ring) for ring in rule.rings], rng))


def _regions(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    return replace(rule, regions=_shuffled([_cells(region, move) for region in rule.regions], rng))


def _two_diagonals(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    on_falling = grid.row(move.cells[0]) == grid.column(move.cells[0])
    return rule if on_falling else replace(rule, falling=rule.rising, rising=rule.falling)


def _arrows(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    """An oval is read from left to right or from the top down, so only a single circle can be turned any way."""

    def there(arrow: Any) -> Any:
        shafts = [tuple(move.cells[cell] for cell in shaft) for shaft in arrow.shafts]
        return replace(arrow, circle=tuple(move.cells[c] for c in arrow.circle), shafts=_shuffled(shafts, rng))

    return replace(rule, arrows=_shuffled([there(arrow) for arrow in rule.arrows if len(arrow.circle) == 1], rng))


def _clues(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    """A clue is found again by the line of cells that it looks along."""
    lines = {Clue(side, line, 0).cells(grid): (side, line) for side in get_args(Side) for line in range(grid.size)}

    def there(clue: Clue) -> Clue:
        side, line = lines[tuple(move.cells[cell] for cell in clue.cells(grid))]
        return Clue(side, line, value(clue) if _reversed(move) else clue.value)

    def value(clue: Clue) -> int:
        """Counted from the other end: of a sum, each digit is; what rose falls; runs are as long."""
        if rule.kind == "parity-run":
            return clue.value
        if rule.kind == "rise-or-fall":
            return 1 - clue.value
        return rule.seen(clue) * (grid.size + 1) - clue.value if rule.kind == "frame-sum" else move.digits[clue.value]

    return replace(rule, clues=_shuffled([there(clue) for clue in rule.clues], rng))


def _diagonals(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    """A sum is found again by its cells; it may as well be written at the other end of them."""

    def there(diagonal: Diagonal) -> Diagonal:
        cells = diagonal.cells(grid)
        total = len(cells) * (grid.size + 1) - diagonal.total if _reversed(move) else diagonal.total
        wanted = sorted(move.cells[cell] for cell in cells)
        ends = (Diagonal(total, start, way) for start in wanted for way in WAYS)
        return rng.choice([end for end in ends if sorted(end.cells(grid)) == wanted])

    return replace(rule, diagonals=_shuffled([there(diagonal) for diagonal in rule.diagonals], rng))


def _sums(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    turned = frozenset(2 * (grid.size + 1) - total for total in rule.sums)
    return replace(rule, sums=turned) if _reversed(move) else rule


def _blocks(rule: Any, grid: Grid, move: Move, rng: Random) -> Rule:
    on_end = grid.column(move.cells[1]) == grid.column(move.cells[0])  # rows have become columns
    other = {"rows": "columns", "columns": "rows", "magic": "magic"}
    blocks = [(_cells(cells, move), other[sort] if on_end else sort) for cells, sort in rule.blocks]
    return replace(rule, blocks=_shuffled(blocks, rng))


_TURNS = (
    ({"blocks"}, _blocks),
    ({"sums"}, _sums),
    ({"chains"}, _chains),
    ({"cages"}, _cages),
    ({"groups"}, _groups),
    ({"bars"}, _pairs("bars")),
    ({"values"}, _values),
    ({"white", "black"}, _pairs("white", "black")),
    ({"five", "ten"}, _pairs("five", "ten")),
    ({"pairs"}, _signs),
    ({"even", "odd"}, _two_sorts("even", "odd", lambda grid: grid.size % 2 == 0)),
    ({"greater", "smaller"}, _two_sorts("greater", "smaller", lambda grid: True)),
    ({"up", "down"}, _pointing),
    ({"cells"}, _shaded),
    ({"limits"}, _limits),
    ({"rings"}, _rings),
    ({"regions"}, _regions),
    ({"falling", "rising"}, _two_diagonals),
    ({"arrows"}, _arrows),
    ({"clues"}, _clues),
    ({"diagonals"}, _diagonals),
)
