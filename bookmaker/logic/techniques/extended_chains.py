"""Extended chains: as alternating chains, but of groups of cells, and through marks.

What leads on from true to false is what a candidate sees and what any one mark then leaves no room for; from false to
true also places that lie together, and cells with one digit more than they are. Classics are left to the other chains,
on which their grade was calibrated.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from functools import partial
from itertools import product
from typing import TypeAlias

from bookmaker.logic.extended_links import Group, Network
from bookmaker.logic.state import State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.puzzle.bits import board_of, cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import MarkRef, Reason, Rung
from bookmaker.reasons.throughmarks import ExtendedChain, ExtendedLink

Chain: TypeAlias = tuple[Group, ...]
"""False, true, false, true …"""


class ExtendedChainTechnique(Technique):
    """The shortest first, as with other chains."""

    name = "extended-chain"
    rung = Rung.CHAIN

    def __init__(self) -> None:
        self._last: Network | None = None

    def find(self, state: State) -> Iterator[Finding]:
        if state.ground.rules:
            yield from self._shortest(self._network(state), None)

    def find_for(self, state: State, removed: tuple[Candidate, ...]) -> Iterator[Finding]:
        """The shortest chain to each candidate, however long."""
        if state.ground.rules:
            for target in removed:
                yield from self._shortest(self._network(state), target)

    def _network(self, state: State) -> Network:
        """That of a state; kept, since a telling asks for one candidate after the other."""
        if self._last is None or self._last.follows is not state.consequences():
            self._last = Network(state)
        return self._last

    def _shortest(self, network: Network, wanted: Candidate | None) -> Iterator[Finding]:
        links, fallen = network.shortest(wanted)
        told: set[Candidate] = set()
        for target, chain in sorted(fallen.items()):
            if target in told:
                continue
            removed = _with_others(network, chain, target)
            told.update(removed)
            cells = tuple(dict.fromkeys(cell for board, _ in (chain[0], chain[-1]) for cell in cells_on(board)))
            reason = partial(_reason, self.name, network, chain, removed)
            again = partial(_again, network, chain, removed)
            yield Finding(self.rung, cells, removed, reason, reach=links - 1, again=again)


def _with_others(network: Network, chain: Chain, target: Candidate) -> tuple[Candidate, ...]:
    """A candidate that goes, and what else both ends rule out by the same marks."""
    by, seen = _ruled_out(network, chain, (target,))
    others = []
    for other in network.ruled_out_by_both(chain[0], chain[-1]):
        marks, plainly = _ruled_out(network, chain, (other,))
        if other != target and {*marks} <= {*by} and plainly <= seen:
            others.append(other)
    return target, *others


def _ruled_out(network: Network, chain: Chain, removed: Iterable[Candidate]) -> tuple[tuple[MarkRef, ...], bool]:
    """The marks by which both ends rule candidates out, and whether some fall in plain sight."""
    ends = dict.fromkeys((chain[0], chain[-1]))
    return network.follows.marks_between(
        pair for cell, digit in removed for end in ends for pair in _pairs(end, (1 << cell, digit))
    )


def _reason(name: str, network: Network, chain: Chain, removed: tuple[Candidate, ...]) -> Reason:
    links = []
    for at in range(0, len(chain), 2):
        false, true = chain[at], chain[at + 1]
        why = network.strong[false][true]
        within = board_of(why.among)
        by, seen = network.follows.marks_between(_pairs(chain[at - 1], false)) if at else ((), False)
        links.append(
            ExtendedLink(
                false=tuple(cells_on(false[0])),
                false_digit=false[1],
                true=tuple(cells_on(true[0])),
                true_digit=true[1],
                house=why.house,
                among=why.among,
                digits=tuple(no for no, board in enumerate(network.boards) if board & within and no != false[1]),
                by=by,
                seen=seen,
            )
        )
    return Reason(name, None, ExtendedChain(tuple(links), *_ruled_out(network, chain, removed)))


def _pairs(one: Group, other: Group) -> Iterable[tuple[Candidate, Candidate]]:
    """All candidates of one group with all of another."""
    return (((cell, one[1]), (cell2, other[1])) for cell, cell2 in product(cells_on(one[0]), tuple(cells_on(other[0]))))


def _again(network: Network, chain: Chain, removed: tuple[Candidate, ...], other: State) -> bool:
    """Has another state all links of the chain, and do both ends rule the same out there?"""
    for false, true in zip(chain[::2], chain[1::2], strict=True):
        if not network.strong[false][true].joins(other, false, true):
            return False
    weak = [*zip(chain[1:-1:2], chain[2::2], strict=True)]
    weak += [(end, (1 << cell, digit)) for cell, digit in removed for end in (chain[0], chain[-1])]
    follows = other.consequences()
    return all(any(True for _ in follows.between(*pair)) for one, two in weak for pair in _pairs(one, two))
