"""A what-if worked out: the chain of placements and eliminations that leads from a candidate to a contradiction.

In: a `State` and a candidate. Out: a `Refuted` claim with its links, each of which follows from the board, the
candidate and the links before it; or None where singles and marks lead to no contradiction. Followed in rounds, so that
few links lead there; then every link that can be spared is dropped.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from bookmaker.logic.readers import Reader
from bookmaker.logic.state import Area, State
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import MarkRef
from bookmaker.reasons.whatif import End, Link, NoDigit, NoPlace, NothingFits, Refuted, ThenGone, ThenPlaced

TRIED = -1
"""The number of the link that is the candidate itself."""


def refutation(state: State, tried: Candidate, readers: Sequence[Reader]) -> Refuted | None:
    """The chain for a candidate that still stands; `readers` are the puzzle's marks."""
    search = _Search(state, tried, readers)
    while not (ends := list(search.ends())):
        if not search.advance():
            return None
    chains = (search.behind(causes) for _, causes in ends)
    shortest = min(zip(ends, chains, strict=True), key=lambda pair: len(pair[1]))
    (end, _), links = shortest
    chain = _Chain(state, tried, readers)
    links, end = chain.without_spare(links, end)
    return Refuted(tried, search.rounds, end, tuple(links))


def refuted_alike(state: State, tried: Candidate, claim: Refuted, readers: Sequence[Reader]) -> bool:
    """Do the links of one candidate's chain lead another to the same contradiction?"""
    return _Chain(state, tried, readers).holds(claim.links, claim.end)


class _Board:
    """Candidates as they stand while a what-if is followed, written digits included."""

    def __init__(self, state: State) -> None:
        self.ground = state.ground
        self.boards = state.with_written()
        self.filled = state.ground.everywhere & ~state.empty

    def place(self, cell: int, digit: int) -> list[Candidate]:
        """Write a digit; the candidates that go by that."""
        bit = 1 << cell
        gone = [(cell, other) for other in self.may(cell) if other != digit]
        gone += [(peer, digit) for peer in cells_on(self.boards[digit] & self.ground.peers[cell])]
        self.remove(gone)
        self.filled |= bit
        return gone

    def remove(self, gone: Iterable[Candidate]) -> None:
        for cell, digit in gone:
            self.boards[digit] &= ~(1 << cell)

    def may(self, cell: int) -> list[int]:
        """The digits that a cell can still hold."""
        return [digit for digit in range(1, len(self.boards)) if self.boards[digit] >> cell & 1]


class _Search(_Board):
    """A candidate followed in rounds, each link with the links that it rests on."""

    def __init__(self, state: State, tried: Candidate, readers: Sequence[Reader]) -> None:
        super().__init__(state)
        self.readers = readers
        self.before = self.boards[:]
        self.cause: dict[Candidate, int] = {}
        """For each candidate that is gone the number of the link that took it."""
        self.links: list[tuple[Link, frozenset[int]]] = []
        """What followed, each with the numbers of what it rests on."""
        self.rounds = 0
        self._gone(TRIED, self.place(*tried))

    def _gone(self, by: int, gone: Iterable[Candidate]) -> None:
        for candidate in gone:
            self.cause.setdefault(candidate, by)

    def _causes(self, candidates: Iterable[Candidate]) -> frozenset[int]:
        return frozenset(self.cause[candidate] for candidate in candidates if candidate in self.cause)

    def ends(self) -> Iterator[tuple[End, frozenset[int]]]:
        """The contradictions that there are now, each with what it rests on."""
        digits = range(1, len(self.boards))
        for area in self.ground.areas:
            for digit in digits:
                if not self.boards[digit] & area.board:
                    yield NoPlace(area.ref, digit), self._causes((cell, digit) for cell in area.cells)
        for cell in self.ground.grid.cells:
            if not self.may(cell) and not self.filled >> cell & 1:
                yield NoDigit(cell), self._causes((cell, digit) for digit in digits)
        for reader in self.readers:
            if reader.gone(self.boards, self.filled) is None:
                yield NothingFits(reader.ref), self._behind_mark(reader, None)

    def advance(self) -> bool:
        """One round: all singles, and all that the marks say, of the board at its start. False where there is
        nothing."""
        self.rounds += 1
        found = [*self._singles(), *self._by_marks()]
        moved = False
        for link, causes in found:
            match link:
                case ThenPlaced(cell, digit, _, _):
                    if self.filled >> cell & 1 or not self.boards[digit] >> cell & 1:
                        continue
                    gone = self.place(cell, digit)
                case ThenGone(_, taken):
                    gone = [(c, d) for c, d in taken if self.boards[d] & ~self.filled & 1 << c]
                    self.remove(gone)
                    if not gone:
                        continue
                    link = replace(link, gone=tuple(gone))  # without what others took in the same round
            self._gone(len(self.links), gone)
            self.links.append((link, causes))
            moved = True
        return moved

    def _singles(self) -> Iterator[tuple[Link, frozenset[int]]]:
        """Each cell that can be filled, by the derivation that rests on the fewest links."""
        ways: dict[Candidate, list[tuple[Link, frozenset[int]]]] = {}
        digits = range(1, len(self.boards))
        for cell in cells_on(self.ground.everywhere & ~self.filled):
            if len(left := self.may(cell)) == 1:
                causes = self._causes((cell, digit) for digit in digits)
                ways.setdefault((cell, left[0]), []).append((ThenPlaced(cell, left[0]), causes))
        for area in self.ground.areas:
            for digit in digits:
                x = self.boards[digit] & area.board
                if x and not x & (x - 1) and not x & self.filled:
                    cell = x.bit_length() - 1
                    causes = self._causes((other, digit) for other in area.cells)
                    ways.setdefault((cell, digit), []).append((ThenPlaced(cell, digit, area.ref), causes))
        for links in ways.values():
            yield min(links, key=lambda way: len(self.behind(way[1])))

    def _by_marks(self) -> Iterator[tuple[Link, frozenset[int]]]:
        for reader in self.readers:
            gone = reader.gone(self.boards, self.filled)
            if gone:
                yield ThenGone(reader.ref, tuple(gone)), self._behind_mark(reader, gone)

    def _behind_mark(self, reader: Reader, gone: Sequence[Candidate] | None) -> frozenset[int]:
        """Few links without which a mark would not say that these go (None: that nothing fits it)."""
        inside = [pair for pair in self.cause if reader.mark.board >> pair[0] & 1]
        needed = set(self._causes(inside))
        for spare in sorted(needed, reverse=True):
            boards, filled = self.boards[:], self.filled
            for cell, digit in inside:
                if self.cause[cell, digit] not in needed - {spare}:
                    boards[digit] |= 1 << cell
                    filled &= ~(1 << cell)
            said = reader.gone(boards, filled)
            if said is None if gone is None else said is None or set(gone) <= {*said}:
                needed.discard(spare)
        return frozenset(needed)

    def behind(self, causes: Iterable[int]) -> list[Link]:
        """All links that some rest on, through however many others, and these themselves, in order."""
        found: set[int] = set()
        todo = set(causes)
        while todo:
            number = todo.pop()
            if number != TRIED and number not in found:
                found.add(number)
                todo |= self.links[number][1]
        return [self.links[number][0] for number in sorted(found)]


class _Chain:
    """Links checked one by one, and those dropped that can be spared."""

    def __init__(self, state: State, tried: Candidate, readers: Sequence[Reader]) -> None:
        self.state, self.tried = state, tried
        self.readers: dict[MarkRef, list[Reader]] = {}
        for reader in readers:
            self.readers.setdefault(reader.ref, []).append(reader)
        self.areas: dict[object, Area] = {area.ref: area for area in state.ground.areas}

    def without_spare(self, links: list[Link], end: End) -> tuple[list[Link], End]:
        """The chain without what it can spare: whole links, candidates that need not go; and told as few facts: what a
        mark takes from one cell and the digit that it leaves there are one."""
        links, end = self._folded(links, end)
        for at in reversed(range(len(links))):
            fewer = links[:at] + links[at + 1 :]
            if self.holds(fewer, end):
                links = fewer
        for at, link in enumerate(links):
            if isinstance(link, ThenGone):
                gone = link.gone
                for candidate in link.gone:
                    less = tuple(pair for pair in gone if pair != candidate)
                    if less and self.holds([*links[:at], replace(link, gone=less), *links[at + 1 :]], end):
                        gone = less
                links[at] = replace(link, gone=gone)
        return self._folded(links, end)

    def _folded(self, links: list[Link], end: End) -> tuple[list[Link], End]:
        for link in [link for link in links if isinstance(link, ThenGone)]:
            others = [other for other in links if other is not link]
            if self.holds(others, end):
                links = others
                continue
            for at, other in enumerate(others):
                if isinstance(other, ThenPlaced) and not other.house and not other.mark:
                    told = [*others[:at], replace(other, mark=link.mark), *others[at + 1 :]]
                    if self.holds(told, end):
                        links = told
                        break
            else:
                if isinstance(end, NoDigit) and not end.mark:
                    by_mark = NoDigit(end.cell, link.mark, marked=True)
                    if self.holds(others, by_mark):
                        links, end = others, by_mark
        return links, end

    def holds(self, links: Sequence[Link], end: End) -> bool:
        """Does each link follow from those before it, and the end from all?"""
        board = _Board(self.state)
        board.place(*self.tried)
        for link in links:
            match link:
                case ThenPlaced(cell, digit, house, mark):
                    if not board.boards[digit] & ~board.filled & 1 << cell:
                        return False
                    if house:
                        if board.boards[digit] & self.areas[house].board & ~(1 << cell):
                            return False
                    elif self._left(board, cell, mark) != [digit]:
                        return False
                    board.place(cell, digit)
                case ThenGone(mark, gone):
                    if any(board.filled >> cell & 1 for cell, _ in gone) or not set(gone) <= self._taken(board, mark):
                        return False
                    board.remove(gone)
        match end:
            case NoPlace(house, digit):
                return not board.boards[digit] & self.areas[house].board
            case NoDigit(cell, mark, _):
                return not board.filled >> cell & 1 and not self._left(board, cell, mark)
            case NothingFits(mark):
                return any(reader.gone(board.boards, board.filled) is None for reader in self.readers[mark])

    def _taken(self, board: _Board, mark: MarkRef) -> set[Candidate]:
        return {pair for reader in self.readers[mark] for pair in reader.gone(board.boards, board.filled) or ()}

    def _left(self, board: _Board, cell: int, mark: MarkRef | None) -> list[int]:
        """What a cell can hold, without what a mark takes from it."""
        taken = self._taken(board, mark) if mark else set()
        return [digit for digit in board.may(cell) if (cell, digit) not in taken]
