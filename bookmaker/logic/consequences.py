"""What goes at once with a candidate: what it sees, and what any one mark then rules out.

In: a board as it stands. Out: for each candidate the candidates that cannot be true with it, and the mark that says so.
Each mark is read for itself, as a whole, with the candidate written and struck from what it sees; nothing is followed
any further. Remembered, since chains come to the same candidates again and again.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from bookmaker.logic.readers import Reader
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import MarkRef


@dataclass(frozen=True, slots=True)
class AtOnce:
    """What goes with one candidate. `gone` are boards by digit, `seen` those of them that need no mark, `said` what
    each mark adds; `broken` is a mark that nothing fits any more."""

    gone: tuple[int, ...]
    seen: tuple[int, ...]
    said: tuple[tuple[MarkRef, tuple[int, ...]], ...]
    broken: MarkRef | None = None


class Consequences:
    """Those of all candidates of one board; `boards` have the written digits, `filled` is where these are."""

    def __init__(self, boards: Sequence[int], filled: int, peers: Sequence[int], readers: Sequence[Reader]) -> None:
        self.boards = tuple(boards)
        self._filled, self._peers, self._readers = filled, peers, readers
        self._known: dict[Candidate, AtOnce] = {}

    def of(self, candidate: Candidate) -> AtOnce:
        """What goes with a candidate."""
        found = self._known.get(candidate)
        if found is None:
            found = self._known[candidate] = self._work_out(*candidate)
        return found

    def _work_out(self, cell: int, digit: int) -> AtOnce:
        boards, bit = self.boards, 1 << cell
        left = [board & ~bit for board in boards]
        left[digit] = boards[digit] & ~self._peers[cell]
        seen = tuple([board & ~stays for board, stays in zip(boards, left, strict=True)])
        touched = bit
        for board in seen:
            touched |= board
        gone, said = list(seen), []
        for reader in self._readers:
            if not reader.mark.board & touched:
                continue
            struck = reader.struck(left, self._filled | bit)
            if struck is None:
                return AtOnce(seen, seen, (), reader.ref)
            if struck:
                said.append((reader.ref, struck))
                gone = [one | other for one, other in zip(gone, struck, strict=True)]
        return AtOnce(tuple(gone), seen, tuple(said))

    def between(self, one: Candidate, other: Candidate) -> Iterator[MarkRef | None]:
        """Why two candidates cannot both be true: None where they see each other, else each mark that says so when one
        of them is written."""
        cell, digit = other
        if self.of(one).seen[digit] >> cell & 1:
            yield None
            return
        for (cell, digit), at_once in ((other, self.of(one)), (one, self.of(other))):
            for ref, struck in at_once.said:
                if struck[digit] >> cell & 1:
                    yield ref

    def marks_between(self, pairs: Iterable[tuple[Candidate, Candidate]]) -> tuple[tuple[MarkRef, ...], bool]:
        """Few marks that part all of these pairs of candidates, and whether some of them see each other plainly."""
        open_pairs, seen = [], False
        for one, other in pairs:
            why = list(dict.fromkeys(self.between(one, other)))
            seen |= why == [None]
            if why != [None]:
                open_pairs.append(why)
        chosen: list[MarkRef] = []
        while open_pairs:
            count: dict[MarkRef, int] = {}
            for why in open_pairs:
                for ref in why:
                    if ref is not None:
                        count[ref] = count.get(ref, 0) + 1
            best = max(count, key=count.__getitem__)
            chosen.append(best)
            open_pairs = [why for why in open_pairs if best not in why]
        return tuple(chosen), seen
