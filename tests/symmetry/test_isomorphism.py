"""Keys against a general check for isomorphic coloured graphs (networkx, VF2), told of puzzles in its own way."""

from __future__ import annotations

from itertools import combinations, pairwise
from random import Random

import networkx as nx
from networkx.algorithms.isomorphism import DiGraphMatcher, categorical_node_match

from bookmaker.puzzle.grid import boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.palindrome import Palindrome
from bookmaker.rules.thermometer import Thermometer
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from bookmaker.symmetry import Move, keys_of, mapping, relabelling_of
from bookmaker.symmetry.moves import EIGHT, reversed_digits, turned_cells, unmoved_digits
from tests.makers.grow import empty_grid, needed_givens, random_solution, rising_chains
from tests.symmetry.moving import moved

FOUR = boxed_grid(4, 2, 2)
PAIRS = 200


def graph_of(puzzle: RuledPuzzle) -> nx.DiGraph:
    """Cells, rows, columns, boxes, digits and marks as coloured nodes; rows and columns have one colour.

    Nodes of digits are joined from each to the next greater one if a rule compares digits; that graph has no symmetry
    but the one that turns digits and marks round together, so it is drawn from the greater to the less as well.
    """
    graph = nx.DiGraph()
    grid = puzzle.grid
    for digit in grid.digits:
        graph.add_node(("digit", digit), colour="digit")
    for cell in grid.cells:
        graph.add_node(cell, colour="cell")
    for colour, houses in (("line", grid.rows + grid.columns), ("box", grid.region_houses)):
        for house in houses:
            graph.add_node(house.name, colour=colour)
            graph.add_edges_from((house.name, cell) for cell in house.cells)
    graph.add_edges_from((cell, ("digit", digit)) for cell, digit in enumerate(puzzle.givens) if digit)
    for rule in puzzle.rules:
        match rule:
            case Thermometer(chains):
                # Whether digits rise along a thermometer or fall is one and the same, if it is so along all.
                graph.add_edges_from((("digit", d), ("digit", e)) for d, e in combinations(grid.digits, 2))
                graph.add_edges_from(pair for chain in chains for pair in pairwise(chain))
            case Palindrome(chains):
                for chain in chains:
                    for i in range(len(chain) // 2):
                        graph.add_edges_from([(chain[i], chain[-1 - i]), (chain[-1 - i], chain[i])])
    return graph


def same(one: RuledPuzzle, other: RuledPuzzle) -> bool:
    if {rule.kind for rule in one.rules} != {rule.kind for rule in other.rules}:
        return False
    colours = categorical_node_match("colour", "")
    there = graph_of(other)
    if DiGraphMatcher(graph_of(one), there, colours).is_isomorphic():
        return True
    return any(rule.kind == "thermometer" for rule in one.rules) and bool(
        DiGraphMatcher(graph_of(one), _turned_round(there), colours).is_isomorphic()
    )


def _turned_round(graph: nx.DiGraph) -> nx.DiGraph:
    """The graph with marks and the order of digits turned round."""
    turned = graph.copy()
    colour = nx.get_node_attributes(graph, "colour")
    along = [edge for edge in graph.edges if colour[edge[0]] == colour[edge[1]]]
    turned.remove_edges_from(along)
    turned.add_edges_from(edge[::-1] for edge in along)
    return turned


def drawn(rng: Random) -> RuledPuzzle:
    """A small puzzle: plain, with a thermometer or two, or with a palindrome of two cells that are not neighbours."""
    problem = empty_grid(FOUR)
    solution = random_solution(problem, rng)
    what = rng.choice(("plain", "rising", "same"))
    rules: tuple[Thermometer, ...] | tuple[Palindrome, ...] = ()
    if what == "rising":
        rules = (Thermometer(tuple(rising_chains(FOUR, solution, rng, rng.randint(1, 2), 3))),)
    if what == "same":
        far = [(0, 6), (0, 9), (1, 11), (4, 15), (2, 13), (5, 12)]
        pairs = [pair for pair in far if solution[pair[0]] == solution[pair[1]]]
        rules = (Palindrome(tuple(pairs[:1])),) if pairs else ()
    if rules and not rules[0].chains:
        rules = ()
    bare: RuledPuzzle = Puzzle(FOUR, (0,) * 16, rules)
    return Puzzle(FOUR, needed_givens(problem_of(bare), solution, rng), rules)


def turned(puzzle: RuledPuzzle, rng: Random) -> RuledPuzzle:
    """The puzzle seen another way, with digits renamed as far as it allows."""
    digits = {
        "any": (0, *rng.sample(FOUR.digits, 4)),
        "reversed": rng.choice((unmoved_digits(4), reversed_digits(4))),
        "none": unmoved_digits(4),
    }
    move = Move(turned_cells(rng.choice(list(EIGHT.values())), 4), digits[relabelling_of(puzzle)])
    return Puzzle(FOUR, move.apply(puzzle.givens), tuple(moved(rule, FOUR, move, rng) for rule in puzzle.rules))


def test_keys_agree_with_graphs() -> None:
    rng = Random(11)
    puzzles = [drawn(rng) for _ in range(90)]
    puzzles += [turned(puzzle, rng) for puzzle in puzzles[:30]]
    solved = []
    for puzzle in puzzles:
        verdict = prove(problem_of(puzzle))
        assert isinstance(verdict, Unique)
        solved.append((puzzle, verdict.solution, keys_of(puzzle, verdict.solution).puzzle))
    alike = [(one, other) for one, other in combinations(solved, 2) if one[2] == other[2]]
    apart = [
        (one, other)
        for one, other in combinations(solved, 2)
        if one[2] != other[2] and one[0].given_count == other[0].given_count
    ]
    assert len(alike) > 20
    for one, other in [*alike, *rng.sample(apart, PAIRS)]:
        expected = one[2] == other[2]
        assert same(one[0], other[0]) is expected
        assert (mapping(one[0], one[1], other[0], other[1]) is not None) is expected
