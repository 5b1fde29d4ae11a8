"""Wishes worked off into a file, puzzle after puzzle; a run that is stopped goes on where it was.

In: wishes, a file, and an executor. Out: the file, a list of puzzles as a manifest has it, which is written anew after
each puzzle; comments at its head say how far the attempts have come. Attempts have numbers and are taken in their order
whoever makes them, so the same wishes give the same file, however many work on them.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import Executor, Future
from dataclasses import dataclass, field, replace
from hashlib import sha256
from itertools import count
from math import inf
from pathlib import Path
from time import monotonic

from bookmaker.draft.attempt import Drafted, Missing, attempt_within
from bookmaker.files import ordinary, write_whole
from bookmaker.manifest.written import puzzle_lines
from bookmaker.proof.executors import in_order
from bookmaker.rules.common.parts import Written
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place
from bookmaker.symmetry import keys_of
from bookmaker.wishes.reading import NUMBER
from bookmaker.wishes.wish import Wish

PATIENCE = 300
"""Attempts without a new puzzle after which a wish is given up."""

SAVED_AFTER = 5.0
"""Seconds after which the count of attempts is written down, if nothing was found in between."""

_STATE = re.compile(r"# wish (\d+): (\d+) of \d+ puzzles?, (\d+) attempts?")
_HEAD = "# Drafted by bookmaker. The same command goes on from here; these lines say how far it has come."
_ITEM = re.compile(r"(?m)^(?=- )")


@dataclass(slots=True)
class Progress:
    """How far a wish has come: puzzles found, attempts made, and what came of those that were not as wished."""

    wish: Wish
    found: int = 0
    attempts: int = 0
    missed: list[Drafted | Missing] = field(default_factory=list)

    @property
    def met(self) -> bool:
        return self.found >= self.wish.puzzles


@dataclass(frozen=True, slots=True)
class Found:
    """A puzzle that was added to the file, under this id."""

    id: str
    drafted: Drafted


@dataclass(slots=True)
class Run:
    """A file that is being drafted."""

    file: Path
    progress: list[Progress]
    items: list[str]
    known: set[str]
    """The keys of puzzles of which none drafted may be a look-alike."""

    def go_on(self, executor: Executor, ahead: int, until: float | None = None) -> Iterator[Found | Progress]:
        """Work off what is left; yields each puzzle as it is found, and the progress of a wish after each attempt.

        Ends at the moment `until` (of `time.monotonic`), if one is given; what is left until then is shared out among
        the wishes that are open. Raises OSError where the file can't be written.
        """
        open_ = [(number, progress) for number, progress in enumerate(self.progress) if not progress.met]
        for left, (number, progress) in zip(range(len(open_), 0, -1), open_, strict=True):
            now = monotonic()
            share = None if until is None else now + max(until - now, 0.0) / left
            try:
                yield from self._work_off(number, progress, executor, ahead, share)
            finally:
                self.save()

    def _work_off(
        self, number: int, progress: Progress, executor: Executor, ahead: int, until: float | None
    ) -> Iterator[Found | Progress]:
        def begin(attempt_number: int) -> Future[Drafted | Missing | None]:
            left = inf if until is None else until - monotonic()
            return executor.submit(attempt_within, progress.wish, attempt_number, left)

        saved, last = monotonic(), progress.attempts
        for attempt_number, result in in_order(count(progress.attempts), begin, ahead):
            if result is None:  # the time was up, and the attempt is made again when the run goes on
                return
            progress.attempts = attempt_number + 1
            key = ""
            if isinstance(result, Drafted) and not result.amiss:
                key = keys_of(result.puzzle, result.solution).puzzle
            if isinstance(result, Drafted) and key and key not in self.known:
                self.known.add(key)
                progress.found += 1
                last = progress.attempts
                name = self._add(number, progress, result)
                self.save()
                yield Found(name, result)
            else:
                progress.missed.append(result)
                if monotonic() - saved > SAVED_AFTER:
                    self.save()
                    saved = monotonic()
            yield progress
            if progress.met or progress.attempts - last >= PATIENCE or (until is not None and monotonic() > until):
                return

    def _add(self, number: int, progress: Progress, drafted: Drafted) -> str:
        wish = progress.wish
        texts: dict[str, Written] = {
            name: text.replace(NUMBER, str(progress.found)) for name, text in wish.texts.items()
        }
        name = str(texts.get("id", "")) or self._name(number, progress, drafted)
        tags: dict[str, Written] = {"tags": list(wish.tags)} if wish.tags else {}
        lines = puzzle_lines(drafted.puzzle, {"id": name} | texts | tags)
        self.items.append("\n".join(lines) + "\n")
        return name

    def _name(self, number: int, progress: Progress, drafted: Drafted) -> str:
        """An id for a puzzle that has none: made of its title, or of its seed and attempt."""
        title = "-".join(re.findall("[a-z0-9]+", progress.wish.texts.get("title", "").replace(NUMBER, "").lower()))
        if title:
            return f"{title[:30]}-{progress.found}" if progress.wish.puzzles > 1 else title[:36]
        several = f"{number + 1}-" if len(self.progress) > 1 else ""
        return f"drafted-{several}{progress.wish.seed}-{drafted.number}"

    def save(self) -> None:
        """Write the file as it is now."""
        head = [_HEAD, f"# wishes {_mark_of([progress.wish for progress in self.progress])}"]
        for number, progress in enumerate(self.progress, start=1):
            puzzles, attempts = _figures(progress.wish.puzzles, "puzzle"), _figures(progress.attempts, "attempt")
            head.append(f"# wish {number}: {progress.found} of {puzzles}, {attempts}")
        text = "\n".join(head) + "\n\n" + "\n".join(self.items)
        write_whole({self.file: text.encode()})


def take_up(file: Path, wishes: Sequence[Wish], known: Iterable[str], keys_in: Callable[[Path], Iterable[str]]) -> Run:
    """The run of these wishes, from where the file has it if it was begun; no puzzle will have a key that is `known`.

    `keys_in` reads the keys of a file's puzzles. Raises BookErrors where the file holds something else.
    """
    progress = [Progress(wish) for wish in wishes]
    items: list[str] = []
    known = set(known)
    if file.exists():
        head, *items = _ITEM.split(ordinary(file).read_text(encoding="utf-8"))
        if f"# wishes {_mark_of(wishes)}\n" not in head:
            said = "this file was not begun from these wishes, and is left as it is"
            raise BookErrors([Diagnostic(Place(str(file)), "other-file", said, "name another one with --out")])
        for number, found, attempts in _STATE.findall(head):
            progress[int(number) - 1].found, progress[int(number) - 1].attempts = int(found), int(attempts)
        items = [item.rstrip() + "\n" for item in items]
        known |= set(keys_in(file) if items else ())
    return Run(file, progress, items, known)


def _figures(count: int, noun: str) -> str:
    """“1 puzzle”, “12 puzzles”: in figures, for `take_up` to read."""
    return f"{count} {noun}" if count == 1 else f"{count} {noun}s"


def _mark_of(wishes: Sequence[Wish]) -> str:
    """Tells other wishes from these; where they are typed does not count."""
    plain = [replace(wish, place=Place("")) for wish in wishes]
    told = [repr([sorted(v) if isinstance(v, frozenset) else v for v in vars(wish).values()]) for wish in plain]
    return sha256("\n".join(told).encode()).hexdigest()[:12]
