"""Chains: of two candidates at the ends one is true, since each that is false makes the next true, and so on.

From *false* to *true* lead strong links: two places of a digit in a house, two digits of a cell. From *true* to *false*
lead weak links: what a candidate sees. Whatever sees both ends falls. The shortest chains are found first.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from typing import ClassVar

from bookmaker.logic.links import Strong, chain_between, shortest, shortest_to, strong_links
from bookmaker.logic.state import State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.grid import HouseRef
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import Chain, ChainLink


class ChainTechnique(Technique):
    """Along strong links; `single` keeps to one digit."""

    rung = Rung.CHAIN
    single: ClassVar[bool]

    def find(self, state: State) -> Iterator[Finding]:
        strong = strong_links(state, cells=not self.single)
        links, fallen = shortest(state, strong, self.single)
        for target, ends in sorted(fallen.items()):
            yield self._finding(state, strong, target, ends, links)

    def find_for(self, state: State, removed: tuple[Candidate, ...]) -> Iterator[Finding]:
        """The shortest chain to each candidate, however long."""
        strong = strong_links(state, cells=not self.single)
        for target in removed:
            if found := shortest_to(state, strong, self.single, target):
                links, ends = found
                yield self._finding(state, strong, target, ends, links)

    def _finding(
        self, state: State, strong: Strong, target: Candidate, ends: tuple[Candidate, Candidate], links: int
    ) -> Finding:
        reason = partial(_reason, self.name, state, strong, self.single, ends)
        again = partial(_again, state, strong, self.single, ends)
        cells = tuple(dict.fromkeys(cell for cell, _ in ends))
        return Finding(self.rung, cells, (target,), reason, reach=links - 1, again=again)


class SingleDigitChain(ChainTechnique):
    """Along the places of one digit (two links are known as skyscraper or kite; colouring follows the same links)."""

    name = "single-digit-chain"
    single = True


class AlternatingChain(ChainTechnique):
    """Along strong links of all digits and of cells with two candidates."""

    name = "alternating-chain"
    single = False


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
