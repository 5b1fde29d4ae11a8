"""Look-alikes among many puzzles: which are the same but for a move, and which are near to each other.

In: archives, books and lists, and perhaps others to compare them with. Out: `Same` groups, each proven by the moves
that carry its first puzzle to the others; `Near` pairs. The keys of a file are kept as long as it stays as it is, so
that one new puzzle is compared with a hundred thousand old ones in no time.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass, replace
from functools import lru_cache
from hashlib import sha256
from pathlib import Path
from typing import Any, Literal, TypeAlias

from bookmaker.archive.cards import NO_KEYS
from bookmaker.archive.likeness import ROOMS, likeness_each
from bookmaker.archive.reading import Watch, entries_of, text_of
from bookmaker.manifest import load
from bookmaker.manifest.archives import YAML, archive_files, list_name
from bookmaker.manifest.classics import read_lines
from bookmaker.manifest.entries import Entry
from bookmaker.proof.cache import Store, code_version, hash_of
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import counted
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from bookmaker.source.diagnostics import LINE_BREAK, Collector, Place
from bookmaker.symmetry import Keys, Move, different_givens, mapping
from bookmaker.symmetry.moves import words_of

ALSO_ROOMS = (*ROOMS, "manifest", "archive", "source/placed.py", "source/diagnostics.py")


@dataclass(frozen=True, slots=True)
class Member:
    """A puzzle among those compared, with its keys; `old` if it is one of those that others are compared with."""

    id: str
    title: str
    place: Place
    keys: Keys
    old: bool = False

    def __str__(self) -> str:
        return f"“{self.id}” ({self.place})"


@dataclass(frozen=True, slots=True)
class Same:
    """Look-alikes, with the move that carries the first to each of the others."""

    members: tuple[Member, ...]
    moves: tuple[Move, ...]


Nearness: TypeAlias = Literal["givens", "solution", "marks"]


@dataclass(frozen=True, slots=True)
class Near:
    """Two puzzles with one solution grid (“givens” if but one given tells them apart), or with the same marks.

    `apart` is the number of cells in which only one of the two has a given, where the solution grids are the same.
    """

    one: Member
    other: Member
    how: Nearness
    apart: int = 0

    def words(self) -> str:
        """What the two have in common."""
        if self.how == "marks":
            return f"{self.one} and {self.other} have the same marks and other givens"
        cells = counted(self.apart, "cell")
        with_one = "a given more or less" if self.apart == 1 else f"givens that differ in {cells}"
        return f"{self.one} and {self.other} have the same solution grid, and {with_one}"


class UnprovenMove(Exception):
    """Two puzzles share a key, and no move was found: a fault of ours."""


@dataclass(frozen=True, slots=True)
class Gathered:
    """Puzzles with their keys; how many were `read` in all, and how many had not exactly one solution."""

    members: tuple[Member, ...]
    read: int
    unproven: int


def members_of(
    paths: Sequence[Path],
    store: Store,
    executor: Executor | None,
    collector: Collector,
    beside: Iterable[Member] | None = None,
    watch: Watch = lambda done: None,
) -> Gathered:
    """The puzzles of archives (folders), books and lists that have exactly one solution.

    Of those to be compared with others, `beside`, only the ones that share a key with them are gathered, as old ones.
    Raises BookErrors where a book cannot be read.
    """
    wanted = None if beside is None else {key for m in beside for key in (m.keys.puzzle, m.keys.solution, m.keys.marks)}
    found: list[Member] = []
    read = unproven = 0
    files: list[Path] = []
    for path in paths:
        if path.is_dir():
            files += archive_files(path, collector)
        else:
            files.append(path)
    for path in dict.fromkeys(files):
        lists = path.suffix not in YAML
        if not lists and path in paths:
            entries = load(path).entries
            made = zip(entries, likeness_each(((e.puzzle, None) for e in entries), store, executor), strict=True)
            rows = [_row(entry, keys) for entry, keys in made]
        else:
            rows = _rows_of(path, store, executor, collector)
        for name, title, file, line, column, puzzle, solution, marks in rows:
            read += 1
            if not puzzle:
                unproven += 1
            elif wanted is None or puzzle in wanted or (solution and solution in wanted) or (marks and marks in wanted):
                place = Place(file or str(path), line, column)
                found.append(Member(name, title, place, Keys(puzzle, solution, marks), wanted is not None))
        watch(read)
    return Gathered(tuple(found), read, unproven)


Row: TypeAlias = list[Any]
"""A puzzle's id, title, file ("" where that is the one it was read from), line, column and three keys, as JSON."""


def _row(entry: Entry, keys: Keys | None, file: str | None = None) -> Row:
    found = keys or NO_KEYS
    place = entry.place
    shown = place.file if file is None else file
    return [entry.id, entry.title, shown, place.line, place.column, found.puzzle, found.solution, found.marks]


def _rows_of(path: Path, store: Store, executor: Executor | None, collector: Collector) -> list[Row]:
    """The rows of one file, kept from the last time if it is the same."""
    text = text_of(path, collector)
    if text is None:
        return []
    seal = sha256(text.encode()).hexdigest()
    key = hash_of("likenesses", code_version(*ALSO_ROOMS), path.suffix, path.stem, seal)
    kept = store.get(key)
    if kept is not None:
        return list(json.loads(kept))
    before = len(collector.found)
    entries = _entries(path, text, collector)
    rows = [
        _row(entry, keys, "")
        for entry, keys in zip(
            entries, likeness_each(((e.puzzle, None) for e in entries), store, executor), strict=True
        )
    ]
    if len(collector.found) == before:
        store.put([(key, json.dumps(rows, ensure_ascii=False))])
    return rows


def _entries(path: Path, text: str, collector: Collector) -> Sequence[Entry]:
    if path.suffix in YAML:
        return entries_of(path, text, collector)[0]
    name, lines = list_name(path), read_lines(LINE_BREAK.split(text), str(path), collector)
    return [replace(entry, id=f"{name}-{entry.id}") for _, _, entry in lines if entry is not None]


def same_among(members: Iterable[Member], mixed: bool = False) -> Iterator[Same]:
    """Groups of look-alikes; `mixed` ones only have a new one and an old one in them.

    Raises UnprovenMove where a move cannot be found, which is a fault of ours.
    """
    for group in _shared(list(members), lambda keys: keys.puzzle, mixed):
        first, *others = group
        yield Same(tuple(group), tuple(move_between(first, other) for other in others))


def near_among(members: Iterable[Member], mixed: bool = False) -> Iterator[Near]:
    """Pairs that are near, each but the first of its group with that; look-alikes are left out."""
    members = list(members)
    told: set[tuple[Place, Place]] = set()
    for group in _shared(members, lambda keys: keys.solution, mixed):
        for one, other in _from_the_first(group):
            puzzles = solved(one), solved(other)
            apart = different_givens(*puzzles[0], *puzzles[1])
            if apart is not None and (apart or puzzles[0][0].rules == puzzles[1][0].rules):
                told.add((one.place, other.place))
                yield Near(one, other, "givens" if apart == 1 else "solution", apart)
    for group in _shared(members, lambda keys: keys.marks, mixed):
        for one, other in _from_the_first(group):
            if (one.place, other.place) not in told:
                yield Near(one, other, "marks")


def _from_the_first(group: Sequence[Member]) -> Iterator[tuple[Member, Member]]:
    """The first of a group with each that is no look-alike of it, nor of one before."""
    seen = {group[0].keys.puzzle}
    for other in group[1:]:
        if other.keys.puzzle not in seen:
            seen.add(other.keys.puzzle)
            yield group[0], other


def _shared(members: Sequence[Member], key: Callable[[Keys], str], mixed: bool) -> Iterator[list[Member]]:
    """Groups of members with one key, in the order of their first, old ones before new ones."""
    groups: dict[str, list[Member]] = {}
    for member in members:
        if name := key(member.keys):
            groups.setdefault(name, []).append(member)
    for group in groups.values():
        if len(group) > 1 and (not mixed or len({member.old for member in group}) == 2):
            yield sorted(group, key=lambda member: not member.old)


def move_between(one: Member, other: Member) -> Move:
    """The move that carries one look-alike to another."""
    move = mapping(*solved(one), *solved(other))
    if move is None:
        raise UnprovenMove(f"{one} and {other} share a key, and no move carries one to the other; please report them")
    return move


def solved(member: Member) -> tuple[RuledPuzzle, Solution]:
    """The puzzle itself, read again from its file, with its solution."""
    file, line = member.place.file, member.place.line
    if Path(file).suffix in YAML:
        puzzle = _puzzles_in(file)[line, member.place.column]
    else:
        ((_, _, entry),) = read_lines([_lines_in(file)[line - 1]], file, Collector())
        assert entry is not None, "it had a key"
        puzzle = entry.puzzle
    verdict = prove(problem_of(puzzle))
    assert isinstance(verdict, Unique), "it had a key, so it has one solution"
    return puzzle, verdict.solution


@lru_cache(maxsize=64)
def _puzzles_in(file: str) -> dict[tuple[int, int], RuledPuzzle]:
    path = Path(file)
    text = text_of(path, Collector())
    entries = _entries(path, text, Collector()) if text is not None else ()
    return {(entry.place.line, entry.place.column): entry.puzzle for entry in entries}


@lru_cache(maxsize=4)
def _lines_in(file: str) -> list[str]:
    return LINE_BREAK.split(text_of(Path(file), Collector()) or "")


def move_words(move: Move) -> str:
    """The move in one line."""
    return "; ".join(words_of(move))
