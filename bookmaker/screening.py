"""Long lists proofed as a stream: a line of JSON for each puzzle, in the order of the lists.

In: paths of lists and manifests, and the report that an earlier run may have begun. Out: lines added to the report. A
run that is stopped at any moment is taken up where it ended: no line is lost, none is written twice. Plain lists are
read line by line, and only a few puzzles are under way at a time, so memory stays flat.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator
from concurrent.futures import Executor, Future
from contextlib import suppress
from dataclasses import dataclass
from itertools import islice
from pathlib import Path
from typing import Any, BinaryIO

from bookmaker.alone import claim
from bookmaker.files import naming, ordinary
from bookmaker.manifest import load
from bookmaker.manifest.classics import read_lines
from bookmaker.manifest.entries import Entry
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.proof import prove_entry
from bookmaker.proof.executors import ahead_of, done, in_order
from bookmaker.proof.report import puzzle_report
from bookmaker.source.diagnostics import BookErrors, Collector, Diagnostic, Place
from bookmaker.symmetry import keys_of


@dataclass(frozen=True)
class Item:
    """A puzzle to screen, or a line that is none: then `diagnostics` say why."""

    source: str
    entry: Entry | None
    diagnostics: tuple[str, ...]
    band_names: tuple[str, ...] = BAND_NAMES


def screen(lists: Iterable[Path], report: Path, executor: Executor) -> Iterator[dict[str, Any]]:
    """Screen what the report does not hold yet, adding a line for each; yields each line's data.

    Raises BookErrors where a manifest can't be read, or where the report was started from other lists; OSError, with
    the report's name, where it can't be written or another process is at work on it.
    """
    if report.exists() and not report.is_file():
        raise BookErrors([Diagnostic(Place(str(report)), "no-file", "a report is a file", "name another one for it")])
    items = _items(lists)
    with naming(report):
        report.parent.mkdir(parents=True, exist_ok=True)
    with naming(report), report.open("a+b") as stream:
        claim(stream.fileno(), report)
        first = _skip_done(items, report, stream)

        def begin(item: Item) -> Future[dict[str, Any]]:
            return executor.submit(_line, item) if item.entry else done(_line(item))

        for _, found in in_order(items, begin, ahead_of(executor)):
            data = _compared(found, first)
            stream.write(json.dumps(data, ensure_ascii=False, separators=(",", ":")).encode() + b"\n")
            stream.flush()
            yield data


def _line(item: Item) -> dict[str, Any]:
    """The line of one item; done by a worker."""
    if item.entry is None:
        return {"source": item.source, "troubles": list(item.diagnostics)}
    proof = prove_entry(item.entry)
    key = keys_of(item.entry.puzzle, proof.solution).puzzle if proof.solution is not None else None
    return {"source": item.source, **puzzle_report(item.band_names, proof), "key": key}


def _skip_done(items: Iterator[Item], report: Path, stream: BinaryIO) -> dict[str, str]:
    """Cut off a line that was not finished, and pass over as many items as the report holds. The sources of the puzzles
    that are in it, by their keys."""
    stream.seek(0)
    count, length, last = 0, 0, b""
    first: dict[str, str] = {}
    for line in stream:
        if not line.endswith(b"\n"):
            break
        count, length, last = count + 1, length + len(line), line
        if (key := _KEY.search(line, max(len(line) - 200, 0))) and (source := _SOURCE.match(line)):
            with suppress(ValueError):  # a line that was changed by hand
                first.setdefault(key[1].decode(), json.loads(source[1]))
    stream.truncate(length)
    stream.seek(0, 2)
    if count:
        met = next(islice(items, count - 1, None), None)
        if met is None or _source(last) != met.source:
            said = "this report was started from other lists"
            raise BookErrors([Diagnostic(Place(str(report), count), "other-report", said, "name another file for it")])
    return first


def _compared(data: dict[str, Any], first: dict[str, str]) -> dict[str, Any]:
    """The data of a line, with the source of the first puzzle that is the same but for a move."""
    key = data.get("key")
    if isinstance(key, str):
        before = first.setdefault(key, str(data.get("source")))
        data["look_alike_of"] = None if before == data.get("source") else before
    return data


_SOURCE = re.compile(rb'\{"source":("(?:[^"\\]|\\.)*")')
_KEY = re.compile(rb'"key":"([0-9a-f]+)"')
"""Where a line says what it is of, and which puzzles it is like: lines are long, and only this is read again."""


def _source(line: bytes) -> str | None:
    try:
        source = json.loads(line)["source"]
    except (ValueError, KeyError, TypeError, RecursionError):
        return None
    return str(source)


def _items(lists: Iterable[Path]) -> Iterator[Item]:
    for path in lists:
        if path.is_dir() or path.suffix in (".yaml", ".yml"):
            manifest = load(path)
            yield from (Item(f"{e.place.file}:{e.id}", e, (), manifest.band_names) for e in manifest.entries)
            continue
        collector = Collector()
        with ordinary(path).open(encoding="utf-8-sig", errors="replace") as lines:
            for _, place, entry in read_lines(lines, str(path), collector):
                said = tuple(diagnostic.text for diagnostic in collector.errors())
                yield Item(f"{place.file}:{place.line}", None if said else entry, said)
                collector.found.clear()
