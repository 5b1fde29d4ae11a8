"""Chains: of two candidates at the ends one is true, since each that is false makes the next true, and so on.

From *false* to *true* lead strong links: two places of a digit in a house, two digits of a cell. From *true* to *false*
lead weak links: what a candidate sees. Whatever sees both ends falls. The shortest chains are found first.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from bookmaker.grade.links import Strong, chain_between, shortest, strong_links
from bookmaker.grade.state import State
from bookmaker.grade.technique import Finding, Technique
from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import Chain, ChainLink


class SingleDigitChain(Technique):
    """Along the places of one digit (two links are known as skyscraper or kite; colouring follows the same links)."""

    name = "single-digit-chain"
    rung = Rung.CHAIN

    def find(self, state: State) -> Iterator[Finding]:
        yield from _findings(self, state, strong_links(state, cells=False), single=True)


class AlternatingChain(Technique):
    """Along strong links of all digits and of cells with two candidates."""

    name = "alternating-chain"
    rung = Rung.CHAIN

    def find(self, state: State) -> Iterator[Finding]:
        yield from _findings(self, state, strong_links(state), single=False)


def _findings(technique: Technique, state: State, strong: Strong, single: bool) -> Iterator[Finding]:
    links, fallen = shortest(state, strong, single)
    for target, ends in sorted(fallen.items()):
        reason = partial(_reason, technique.name, state, strong, single, ends)
        again = partial(_again, state, strong, single, ends)
        cells = tuple(dict.fromkeys(cell for cell, _ in ends))
        yield Finding(technique.rung, cells, (target,), reason, reach=links - 1, again=again)


def _again(state: State, strong: Strong, single: bool, ends: tuple[Candidate, Candidate], other: State) -> bool:
    """Has another state all strong links of the chain? The weak ones are there in any state."""
    chain, there = chain_between(state, strong, single, ends), strong_links(other, cells=not single)
    return all(true in there.get(false, ()) for false, true in zip(chain[::2], chain[1::2], strict=True))


def _reason(name: str, state: State, strong: Strong, single: bool, ends: tuple[Candidate, Candidate]) -> Reason:
    chain = chain_between(state, strong, single, ends)
    links = zip(chain[::2], chain[1::2], strict=True)
    return Reason(name, None, Chain(tuple(ChainLink(*link, _house(state, *link)) for link in links)))


def _house(state: State, false: Candidate, true: Candidate) -> HouseRef | None:
    """The house in which the two are the digit's only places; None for the two digits of a cell."""
    if false[0] == true[0]:
        return None
    both = 1 << false[0] | 1 << true[0]
    board = state.boards[true[1]]
    return next(area.ref for area in state.ground.areas if area.board & board == both)
