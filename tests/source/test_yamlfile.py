"""Text → tree: every word where it was typed, and a plain word for every slip."""

from __future__ import annotations

import tracemalloc
from collections.abc import Iterator

import pytest

from bookmaker.source.diagnostics import Collector
from bookmaker.source.file_limits import NESTING
from bookmaker.source.placed import Node, Sequence, Table, Word
from bookmaker.source.yamlfile import parse_yaml

PAGE = """\
# a comment
book:
  title: "The \\"Old\\" tide
    goes on"
  note: >
    folded text
    and more

    another part
puzzles:
  - id: 'it''s good'
    plain: several words
       over two lines
    no: 012
    givens: |
      5 . .  . 1
       . 2

      3 x
    deeper: |2
        set in
  - {a: 1, b: [x, "y"]}
  - ä: ö é
"""


def words(node: Node) -> Iterator[Word]:
    if isinstance(node, Word):
        yield node
    elif isinstance(node, Sequence):
        for value in node.values:
            yield from words(value)
    else:
        for key, value in node.entries:
            yield key
            yield from words(value)


def parse(text: str) -> Node:
    collector = Collector()
    tree = parse_yaml(text, "book.yaml", collector)
    assert tree is not None and not collector.found, collector.found
    return tree


@pytest.mark.parametrize("line_end", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("mark", ["", "\ufeff"])
def test_each_letter_is_found_where_it_was_typed(line_end: str, mark: str) -> None:
    source = PAGE.splitlines()
    checked = 0
    for word in words(parse(mark + PAGE.replace("\n", line_end))):
        for offset, letter in enumerate(word.value):
            if not letter.isspace():
                place = word.at_offset(offset)
                stands = source[place.line - 1][place.column - 1]
                assert stands == letter or (stands == "\\" and letter == '"')
                checked += 1
    assert checked > 100


def test_lines_and_columns_of_a_block() -> None:
    tree = parse(PAGE)
    givens = next(word for word in words(tree) if word.value.startswith("5"))
    assert givens.value == "5 . .  . 1\n . 2\n\n3 x\n"
    assert [(p.line, p.column) for p in (givens.at(0, 0), givens.at(0, 9), givens.at(1, 3), givens.at(3, 2))] == [
        (16, 7),
        (16, 16),
        (17, 10),
        (19, 9),
    ]


def test_words_stay_text() -> None:
    tree = parse("a: [no, 012, 2026-03-14, 1e3, ~, null, 0x1F, 12:30]")
    assert isinstance(tree, Table)
    items = tree.get("a")
    assert isinstance(items, Sequence)
    typed = [word.value for word in words(items)]
    assert typed == ["no", "012", "2026-03-14", "1e3", "~", "null", "0x1F", "12:30"]


# What is typed, the code of its diagnostic, its line and column.
SLIPS = [
    ("", "empty-file", 0, 0),
    ("\n  # only a comment\n", "empty-file", 0, 0),
    ("\ufeff\ufeff", "empty-file", 0, 0),
    ("a:\n\tb: 1", "tab", 2, 1),
    ("a:\n  b: 1\n \tc: 2", "tab", 3, 2),
    ("a: |\n\tx", "tab", 2, 1),
    ("a:\tb", "tab", 1, 3),
    ("a: b: c", "colon", 1, 5),
    ("a: 1\n  b: 2", "indent", 2, 3),
    ("givens: |\n5 . .\n. . 1", "no-colon", 2, 1),
    ("a: 'it's", "after-quote", 1, 8),
    ("a: [b]]", "after-quote", 1, 7),
    ('a: "b" c', "after-quote", 1, 8),
    ("a: [b] c", "after-quote", 1, 8),
    ("a: {b: 1 c: 2}", "comma", 1, 10),
    ("a: [b, 'c' 'd']", "comma", 1, 12),
    ("a: {b: 1]", "open-bracket", 1, 9),
    ("a: {b:1, c: 2}", "no-space", 1, 7),
    ("a: 1\nb:c\nd: 2", "no-space", 2, 3),
    ("- id: a\n  b: 1\n-id: c", "dash", 3, 1),
    ("a:\n  -r1c1 r2c2\n  - r3c3\n", "dash", 2, 3),
    ("- id: a\n  b: 1\n\u00a0\u00a0c: 2", "odd-space", 3, 1),
    ("a: ]", "odd-start", 1, 4),
    ("a: ?", "odd-start", 1, 4),
    ("{", "open-bracket", 1, 2),
    ("a: 1\nfoo\nb: 2", "no-colon", 2, 1),
    ('a: "x\n', "open-quote", 1, 4),
    ("a: 'x\nb: 2\n", "open-quote", 1, 4),
    ("a: [1, 2\nb: 3", "open-bracket", 1, 4),
    ("a: {x: 1\nb: 2", "open-bracket", 1, 4),
    ("a:\n  - x\n - y", "indent", 3, 2),
    ("a:\n  b: 1\n c: 2", "indent", 3, 2),
    (" a: 1\nb: 2", "indent", 2, 1),
    ("a: - b", "dash", 1, 4),
    ("a: 'x' y", "after-quote", 1, 8),
    ('a: "\\q"', "escape", 1, 5),
    ("a: @x", "odd-start", 1, 4),
    ("a: | x\n  y", "block", 1, 6),
    ("a: \x07", "stray-character", 1, 4),
    ("? [a]\n: b", "odd-key", 1, 3),
    ("a: 1\n---\nb: 2", "second-document", 2, 1),
    ("a: !thing b", "tag", 1, 4),
    ("a: !!python/object/apply:os.system [ls]", "tag", 1, 4),
    ("a: *b", "alias", 1, 4),
    ("a: &b c", "alias", 1, 4),
    ("a: **", "alias", 1, 4),
    ('"\\U99999999": 1', "escape", 1, 2),
    ("a: 1\n%x", "directive", 2, 1),
    ("a: 1\na: 2", "repeated-key", 2, 1),
    ("- id: a\n  b: 1\n  id: c\n  b: 2\n", "repeated-key", 3, 3),  # said once
    ("- id: a\n  b: 1\nid: c\n", "indent", 3, 1),
    ("[" * (NESTING + 5), "too-deep", 1, NESTING + 2),
]


@pytest.mark.parametrize(("text", "code", "line", "column"), SLIPS, ids=[repr(slip[0])[:30] for slip in SLIPS])
def test_slips(text: str, code: str, line: int, column: int) -> None:
    collector = Collector()
    parse_yaml(text, "book.yaml", collector)
    assert [(t.code, t.place.line, t.place.column) for t in collector.found] == [(code, line, column)]
    said = collector.found[0].text + collector.found[0].hint
    for jargon in ("scalar", "token", "mapping", "block end", "node", "parser", "anchor"):
        assert jargon not in said


@pytest.mark.parametrize(
    ("text", "hint"),
    [
        ("- id: a\n  b: 1\n  id: c\n", "put a dash before it: “- id: …”"),
        ("- id: a\n  b: 1\nid: c\n", "put a dash before it: “- id: …”"),
        ("- id: a\n  b: 1\nc: 2\n", "lines of one list or table start in the same column"),
        ("- id: a\n  b: 1\n  b: 2\n", "keep one of the two"),
        ('a: "b" c', "put single quotes around the whole"),
        ("a: 'it's'", "typed twice: 'it''s'"),
        ("a: [b] c", "begins with a bracket goes in quotes"),
        ("a: {b: 1]", "a “{” is closed with “}”"),
        ("a: {b: 1\nc: 2", "close it with “}”"),
        ("a: {b:1}", "write “b: 1”"),
    ],
)
def test_how_to_mend_it(text: str, hint: str) -> None:
    collector = Collector()
    parse_yaml(text, "book.yaml", collector)
    (diagnostic,) = collector.found
    assert hint in diagnostic.hint


def test_a_number_that_is_taken_for_a_comment_is_pointed_out() -> None:
    collector = Collector()
    tree = parse_yaml("title: Tides #2\norder: effort  # the easiest first\nnote: 'Tides #2'\n", "book.yaml", collector)
    assert isinstance(tree, Table)
    assert [word.value for word in words(tree)][1::2] == ["Tides", "effort", "Tides #2"]
    assert [(t.code, t.place.line, t.place.column, t.warning) for t in collector.found] == [
        ("lost-number", 1, 14, True)
    ]


@pytest.mark.parametrize(("line", "column"), [("title: # 1", 8), ("title: #1", 8), ("title:   #tides", 10)])
def test_so_is_a_whole_text_that_is_taken_for_a_comment(line: str, column: int) -> None:
    collector = Collector()
    parse_yaml(f"{line}\nsetter:  # who made it\nnote:  # 4 to 16\n  five\n", "book.yaml", collector)
    assert [(t.code, t.place.line, t.place.column, t.warning) for t in collector.found] == [
        ("lost-number", 1, column, True)
    ]
    assert "will not be printed" in collector.found[0].text and "in quotes" in collector.found[0].hint


def test_a_swelling_file_is_refused_at_its_first_shorthand() -> None:
    """Written out, it would be sixteen million words."""
    lines = ["a: &a [lol, lol, lol, lol, lol, lol, lol, lol]"]
    lines += [
        f"{b}: &{b} [*{a}, *{a}, *{a}, *{a}, *{a}, *{a}, *{a}, *{a}]"
        for a, b in zip("abcdefgh", "bcdefghi", strict=True)
    ]
    collector = Collector()
    tracemalloc.start()
    try:
        assert parse_yaml("\n".join(lines), "book.yaml", collector) is None
        _, most = tracemalloc.get_traced_memory()
    finally:
        tracemalloc.stop()
    assert [(t.code, t.place.line) for t in collector.found] == [("alias", 1)]
    assert most < 1_000_000
