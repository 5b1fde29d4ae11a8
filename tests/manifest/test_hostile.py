"""Whatever is typed, the answer is a manifest or a list of diagnostics, never a traceback.

Three kinds of hostile books: sound ones with a few characters changed; rules with bodies of any shape; any text at all.
Every place that is reported must lie in the file, and what is read without diagnostic must be fit for all later rooms.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
import yaml
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bookmaker.language import catalogue
from bookmaker.manifest import load
from bookmaker.rules import houses_of, kinds, problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.drawing.frame import Frame
from bookmaker.source.diagnostic_text import shown
from bookmaker.source.diagnostics import LINE_BREAK, BookErrors
from tests.manifest.books import GIVENS, HEAD

STEADY = settings(
    deadline=None,
    derandomize=True,
    max_examples=80,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)

BOOK = """\
book:
  title: "Tides"
  order: chapters
  bands: [Calm, Breeze, Wind, Gale, Storm]
chapters:
  - title: 'Low'
    puzzles:
      - id: estuary
        shown: 2026-03-14
        note: >
          Begin low.
        givens: |
          1 2 | . .
          . . | 2 1
          ----+----
          2 1 | . .
          . . | 1 2
        size: 4
        boxes: 2x2
      - id: jig
        size: 4
        regions: |
          aaab
          acbb
          ccdb
          cddd
        givens: 1... .2.. ..3. ...4
        rules:
          thermometer: [r1c1-r1c3 r2c3]
      - include: more.yaml
"""

SCRAPS = (
    *("\t", "\n", "\r", "\x00", "\ufeff", "\u2028", "é", "–", "…", "\U0001f600", "  "),
    *(":", ": ", "- ", ", ", "|", ">", "'", '"', "[", "]", "{", "}", "&a ", "*a", "!", "%", "#", "? ", "---\n", "<<: "),
    *("\\", "\\x", "/", "..", "~", "null", "0", "9", "-1", "1e9", "99999999999", "r1c1", "r0c0", "r99c99"),
)


def try_book(folder: Path, text: str) -> None:
    """Load a book and follow it to the doors of the later rooms."""
    file = folder / "book.yaml"
    file.write_bytes(text.encode("utf-8", errors="surrogatepass"))
    try:
        book = load(file)
    except BookErrors as found:
        lines = LINE_BREAK.split(text)
        for diagnostic in found.diagnostics:
            for place in (diagnostic.place, *diagnostic.also):
                if place.file == str(file) and place.line:
                    assert 1 <= place.line <= len(lines), diagnostic
                    assert 1 <= place.column <= len(lines[place.line - 1]) + 2, diagnostic
            assert diagnostic.text and "\n" not in diagnostic.text and len(diagnostic.text) < 400
        assert shown(found.diagnostics)
        assert any(not diagnostic.warning for diagnostic in found.diagnostics)
    else:
        for entry in book.entries:
            use(entry.puzzle)


def use(puzzle: RuledPuzzle) -> None:
    assert hash(puzzle) == hash(puzzle)
    assert problem_of(puzzle).constraints
    assert houses_of(puzzle)
    for rule in puzzle.rules:
        assert rule.sentence(catalogue("en")).strip()
        assert isinstance(rule.holds(rule.laid_on(puzzle.grid), [1] * len(puzzle.grid.cells)), bool)
        list(rule.marks(Frame(rule.laid_on(puzzle.grid), 30.0)))


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "more.yaml").write_text(f"- id: more\n  givens: {GIVENS}\n")
    return tmp_path


def test_the_book_that_is_damaged_below_is_sound(folder: Path) -> None:
    (folder / "book.yaml").write_text(BOOK)
    assert [entry.id for entry in load(folder).entries] == ["estuary", "jig", "more"]


@STEADY
@given(st.data())
def test_a_book_with_a_few_slips(folder: Path, data: st.DataObject) -> None:
    text = BOOK
    for _ in range(data.draw(st.integers(1, 3))):
        at = data.draw(st.integers(0, len(text)))
        cut = data.draw(st.sampled_from([0, 0, 1, 2, 10]))
        text = text[:at] + data.draw(st.sampled_from(["", *SCRAPS])) + text[at + cut :]
    try_book(folder, text)


@pytest.mark.parametrize("kind", sorted(kinds()))
@settings(STEADY, max_examples=16)
@given(data=st.data())
def test_a_rule_with_a_few_slips(kind: str, folder: Path, data: st.DataObject) -> None:
    text = kinds()[kind].example
    for _ in range(data.draw(st.integers(0, 3))):
        at = data.draw(st.integers(0, len(text)))
        cut = data.draw(st.sampled_from([0, 1, 1, 2, 5]))
        text = text[:at] + data.draw(st.sampled_from(["", *SCRAPS])) + text[at + cut :]
    size = data.draw(st.sampled_from([4, 5, 6, 9, 9, 9, 16]))
    boxes = data.draw(st.sampled_from(["", "    boxes: none\n"]))
    body = "".join(f"      {line}\n" for line in text.splitlines())
    try_book(folder, HEAD + f"  - id: a\n    size: {size}\n{boxes}    rules:\n{body}")


def bodies(words: st.SearchStrategy[str]) -> st.SearchStrategy[Any]:
    return st.recursive(
        words,
        lambda inner: st.lists(inner, max_size=4) | st.dictionaries(words, inner, max_size=4),
        max_leaves=8,
    )


@pytest.mark.parametrize("kind", sorted(kinds()))
@settings(STEADY, max_examples=16)
@given(data=st.data())
def test_a_rule_with_a_body_of_any_shape(kind: str, folder: Path, data: st.DataObject) -> None:
    typed = kinds()[kind].example.replace(",", " ").replace(":", " ").split()
    odd = ("", "x", "0", "-3", "7", "99", "r1c1", "r1c1 r1c2", "r9c9-r1c1", "yes", "no", "both", "é" * 300)
    words = st.sampled_from([*typed, *odd])
    size = data.draw(st.sampled_from([4, 6, 9, 16]))
    body = yaml.safe_dump({kind: data.draw(bodies(words))}, default_flow_style=True, width=10_000, allow_unicode=True)
    try_book(folder, HEAD + f"  - id: a\n    size: {size}\n    rules: {body}")


PARTS = st.sampled_from((*SCRAPS, "book", "puzzles", "id", "givens", "include"))


@STEADY
@given(st.text(max_size=60) | st.lists(PARTS, max_size=30).map("".join))
def test_any_text_at_all(folder: Path, text: str) -> None:
    try_book(folder, text)


@settings(STEADY, max_examples=60)
@given(st.text(max_size=120) | st.text("0123456789.# x\n", max_size=400))
def test_any_text_as_a_plain_list(folder: Path, text: str) -> None:
    file = folder / "list.txt"
    file.write_bytes(text.encode("utf-8", errors="surrogatepass"))
    try:
        load(file)
    except BookErrors as found:
        assert shown(found.diagnostics)
