"""Reports of `screen` changed by hand, and workers that answer something else than was asked."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from concurrent.futures import Executor, Future
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from bookmaker.manifest.entries import Entry
from bookmaker.proof import prove_each
from bookmaker.proof.executors import done
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.solve.verdict import NoSolution, Several, Unique
from bookmaker.source.diagnostics import Place
from tests.cli.running import run
from tests.digits import digits_from
from tests.published import MISPRINT, SEVENTEEN


@pytest.fixture
def report(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Four lines of six."""
    monkeypatch.chdir(tmp_path)
    Path("list.txt").write_text(f"{SEVENTEEN}\n{MISPRINT}\n" * 3)
    run("screen", "list.txt", "--out", "r.jsonl")
    Path("whole.jsonl").write_bytes(Path("r.jsonl").read_bytes())
    Path("r.jsonl").write_bytes(b"".join(Path("whole.jsonl").read_bytes().splitlines(keepends=True)[:4]))
    return Path("r.jsonl")


def _twice(lines: list[bytes]) -> list[bytes]:
    return [*lines, lines[-1]]


def _swapped(lines: list[bytes]) -> list[bytes]:
    return [*lines[:2], lines[3], lines[2]]


EDITED: dict[str, Callable[[list[bytes]], list[bytes]]] = {
    "a line twice": _twice,
    "two lines swapped": _swapped,
    "a line left out": lambda lines: [lines[0], *lines[2:]],
    "no JSON": lambda lines: [*lines[:3], b"nonsense\n"],
    "a number": lambda lines: [*lines[:3], b"7\n"],
    "a list": lambda lines: [*lines[:3], b"[]\n"],
    "no text": lambda lines: [*lines[:3], b"\xff\xfe\n"],
    "deep": lambda lines: [*lines[:3], b"[" * 100_000 + b"\n"],
    "empty lines": lambda lines: [*lines, b"\n", b"\n"],
    "more lines than the lists have": lambda lines: lines * 4,
    "another source": lambda lines: [*lines[:3], lines[3].replace(b"list.txt:4", b"list.txt:9")],
    "a key that is none": lambda lines: [lines[0].replace(b'"key":"', b'"key":"zz'), *lines[1:]],
    "a source with a broken escape": lambda lines: [lines[0].replace(b"list.txt", b"list\\q.txt"), *lines[1:]],
}


@pytest.mark.parametrize("edit", EDITED.values(), ids=EDITED)
def test_an_edited_report_is_taken_up_or_refused_and_never_damaged(
    report: Path, edit: Callable[[list[bytes]], list[bytes]]
) -> None:
    """Taken up, its old lines stay as they are and the missing ones follow; refused, it stays as it is."""
    content = b"".join(edit(report.read_bytes().splitlines(keepends=True)))
    report.write_bytes(content)
    result = run("screen", "list.txt", "--out", "r.jsonl")
    assert result.exception is None or isinstance(result.exception, SystemExit), result.exception
    after = report.read_bytes()
    assert after.startswith(content)
    if after == content:
        assert result.exit_code == 1 and "r.jsonl" in result.stderr
    else:
        sources = [json.loads(line)["source"] for line in after.splitlines()[-2:]]
        assert sources == ["list.txt:5", "list.txt:6"]


class Lying(Executor):
    """Workers whose answers are changed on their way."""

    def __init__(self, change: Callable[[Any], Any]) -> None:
        self.change = change

    def submit(self, fn: Callable[..., Any], /, *args: Any, **kwargs: Any) -> Future[Any]:
        return done(self.change(fn(*args, **kwargs)))


def _entries() -> Iterator[Entry]:
    return (Entry(str(at), Puzzle(CLASSIC, digits_from(givens)), Place("list", at)) for at, givens in enumerate(
        (SEVENTEEN, MISPRINT)))  # fmt: skip


def _with(verdict: object) -> Callable[[Any], Any]:
    return lambda answer: (replace(answer[0], verdict=verdict), answer[1])


GRADED = next(prove_each(_entries()))


def _on_rung(rung: Any) -> Callable[[Any], Any]:
    """All steps on that rung, and the path not to its end, as it then is."""

    def lie(answer: Any) -> Any:
        found, seconds = answer
        if found.grade is None:
            return answer
        steps = tuple(step._replace(rung=rung) for step in found.grade.path.steps)
        path = replace(found.grade.path, steps=steps, reached=False)
        return replace(found, grade=replace(found.grade, path=path, singles_only=False)), seconds

    return lie


LIES: dict[str, Callable[[Any], Any]] = {
    "no answer": lambda answer: None,
    "text": lambda answer: "yes",
    "text in a pair": lambda answer: ("unique", 0.0),
    "another shape": lambda answer: (answer[0], answer[1], "more"),
    "a wrong solution": _with(Unique((1,) * 81, 3)),
    "80 cells": _with(Unique((1,) * 80, 3)),
    "text for digits": _with(Unique(("one",) * 81, 3)),  # type: ignore[arg-type]
    "the same solution twice": _with(Several(GRADED.solution or (), GRADED.solution or (), 3)),
    "no solution, though graded": lambda answer: _with(NoSolution(3))(answer) if answer[0].grade else answer,
    "no verdict": _with(None),
    "no hardest step": lambda answer: (replace(answer[0], hardest=None), answer[1]),
    "no grade": lambda answer: (replace(answer[0], grade=None), answer[1]),
    "a rung beyond the last": _on_rung(99),
    "half a rung": _on_rung(12.5),
    "the grade of another": lambda answer: (replace(answer[0], grade=GRADED.grade), answer[1]),
}


@pytest.mark.parametrize("lie", LIES.values(), ids=LIES)
def test_a_worker_that_answers_nonsense_is_found_out(lie: Callable[[Any], Any]) -> None:
    """Nothing that it says is told to anybody: the truth is found here."""
    honest = [replace(proof, seconds=0.0) for proof in prove_each(_entries())]
    assert [replace(proof, seconds=0.0) for proof in prove_each(_entries(), executor=Lying(lie))] == honest


def test_what_a_worker_found_and_is_sound_is_believed() -> None:
    honest = [replace(proof, seconds=0.0) for proof in prove_each(_entries())]
    executor = Lying(lambda answer: answer)
    assert [replace(proof, seconds=0.0) for proof in prove_each(_entries(), executor=executor)] == honest
