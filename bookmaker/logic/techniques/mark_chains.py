"""Chains through marks: as alternating chains, but what is true also rules out what a mark then leaves no room for."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from bookmaker.logic.links import Strong, strong_links
from bookmaker.logic.mark_links import Ends, chain_through_marks, ruled_out_by_both, shortest_through_marks
from bookmaker.logic.state import State
from bookmaker.logic.technique import Finding, Technique
from bookmaker.logic.techniques.chains import house_of_link
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.throughmarks import MarkChain, MarkLink


class MarkChainTechnique(Technique):
    """The shortest first, as with other chains."""

    name = "mark-chain"
    rung = Rung.CHAIN

    def find(self, state: State) -> Iterator[Finding]:
        if state.ground.readers:
            yield from self._shortest(state, None)

    def find_for(self, state: State, removed: tuple[Candidate, ...]) -> Iterator[Finding]:
        """The shortest chain to each candidate, however long."""
        if state.ground.readers:
            for target in removed:
                yield from self._shortest(state, target)

    def _shortest(self, state: State, wanted: Candidate | None) -> Iterator[Finding]:
        strong = strong_links(state)
        links, fallen = shortest_through_marks(state, strong, wanted)
        for target, ends in sorted(fallen.items()):
            cells = tuple(dict.fromkeys(cell for cell, _ in ends))
            reason = partial(_reason, self.name, state.copy(), strong, ends, target)
            again = partial(_again, chain_through_marks(state, strong, ends), target)
            yield Finding(self.rung, cells, (target,), reason, reach=links - 1, again=again)


def _reason(name: str, state: State, strong: Strong, ends: Ends, target: Candidate) -> Reason:
    chain, follows = chain_through_marks(state, strong, ends), state.consequences()
    links = []
    for at in range(0, len(chain), 2):
        false, true = chain[at], chain[at + 1]
        by = next(follows.between(chain[at - 1], false)) if at else None
        links.append(MarkLink(false, true, house_of_link(state, false, true), by))
    marks, seen = follows.marks_between((end, target) for end in dict.fromkeys(ends))
    return Reason(name, None, MarkChain(tuple(links), marks, seen))


def _again(chain: list[Candidate], target: Candidate, other: State) -> bool:
    """Has another state all links of the chain, and do both ends rule out the target there?"""
    strong, follows = strong_links(other), other.consequences()
    if not all(true in strong.get(false, ()) for false, true in zip(chain[::2], chain[1::2], strict=True)):
        return False
    weak = zip(chain[1:-1:2], chain[2::2], strict=True)
    if not all(follows.of((cell, digit)).gone[no] >> at & 1 for (cell, digit), (at, no) in weak):
        return False
    return target in ruled_out_by_both(other, chain[0], chain[-1])
