"""Chains: of two candidates at the ends one is true, since each that is false makes the next true, and so on.

From *false* to *true* lead strong links: two places of a digit in a house, two digits of a cell. From *true* to *false*
lead weak links: what a candidate sees. Whatever sees both ends falls. The shortest chains are found first.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from bookmaker.grade.links import Strong, chain_between, shortest, strong_links
from bookmaker.grade.state import Ground, State
from bookmaker.grade.technique import Finding, Technique
from bookmaker.puzzle.position import Candidate


class SingleDigitChain(Technique):
    """Along the places of one digit (two links are known as skyscraper or kite; colouring follows the same links)."""

    name = "single-digit chain"
    rung = 10

    def find(self, state: State) -> Iterator[Finding]:
        yield from _findings(self, state, strong_links(state, cells=False), single=True)


class AlternatingChain(Technique):
    """Along strong links of all digits and of cells with two candidates."""

    name = "alternating chain"
    rung = 10

    def find(self, state: State) -> Iterator[Finding]:
        yield from _findings(self, state, strong_links(state), single=False)


def _findings(technique: Technique, state: State, strong: Strong, single: bool) -> Iterator[Finding]:
    links, fallen = shortest(state, strong, single)
    for target, ends in sorted(fallen.items()):
        words = partial(_words, state, strong, single, ends)
        again = partial(_again, state, strong, single, ends)
        cells = tuple(dict.fromkeys(cell for cell, _ in ends))
        yield Finding(technique.name, technique.rung, cells, (target,), words, reach=links - 1, again=again)


def _again(state: State, strong: Strong, single: bool, ends: tuple[Candidate, Candidate], other: State) -> bool:
    """Has another state all strong links of the chain? The weak ones are there in any state."""
    chain, there = chain_between(state, strong, single, ends), strong_links(other, cells=not single)
    return all(true in there.get(false, ()) for false, true in zip(chain[::2], chain[1::2], strict=True))


def _words(state: State, strong: Strong, single: bool, ends: tuple[Candidate, Candidate]) -> str:
    ground = state.ground
    chain = chain_between(state, strong, single, ends)
    told = ", so ".join(
        f"{_said(ground, *true)}" if i else f"if {_said(ground, *false, no=True)}, {_said(ground, *true)}"
        for i, (false, true) in enumerate(zip(chain[::2], chain[1::2], strict=True))
    )
    return f"{told}; one of the ends holds either way"


def _said(ground: Ground, cell: int, digit: int, no: bool = False) -> str:
    return f"{ground.grid.name(cell)} is {'not ' if no else ''}{ground.symbol(digit)}"
