"""A changed puzzle in its file: as few characters changed as will do.

In: a puzzle as it is typed, and as it is to be. Out: the text of the file with the puzzle changed. Ways to edit it are
tried from the smallest on; each is read again, and the first that says the changed puzzle is taken. Where none does,
its item is written afresh.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from difflib import SequenceMatcher

from bookmaker.changes.listedits import Edit, leaf_edits, offsets
from bookmaker.changes.typed import BEARABLE, Typed, indent_of
from bookmaker.manifest.archives import holding_of
from bookmaker.manifest.givens import read_givens
from bookmaker.manifest.gridfields import GRID_KEYS
from bookmaker.manifest.puzzlefields import read_puzzle
from bookmaker.manifest.written import entry_lines, puzzle_lines, rule_lines
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.rules.common.area import LETTERS, is_picture, read_letters
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part, Written
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Table, Word
from bookmaker.source.textgrid import NO_CELL, drawn_in


def changed_text(typed: Typed, meant: RuledPuzzle) -> str:
    """The file's text with the puzzle changed; nothing else changes, and comments stay where that can be."""
    for edits in _ways(typed, meant):
        text = _edited(typed.text, edits)
        if _reads_as(typed, text, meant):
            return text
    return _written_afresh(typed, meant)


def changed_lines(typed: Typed, text: str) -> Iterator[tuple[int, str, str]]:
    """The lines that differ: number in the old file (from 1), old and new, either "" where there is none."""
    old, new = typed.text.split("\n"), text.split("\n")
    for what, a, b, c, d in SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        if what != "equal":
            for at in range(max(b - a, d - c)):
                yield a + at + 1, old[a + at] if a + at < b else "", new[c + at] if c + at < d else ""


def edit_lines(typed: Typed, text: str) -> Iterator[str]:
    """The lines that differ, to read and to paste: each old one with its place, and the new one below it."""
    for line, old, new in changed_lines(typed, text):
        yield f"   {typed.file}:{line}"
        if old:
            yield f"     - {old.strip()}"
        if new:
            yield f"     + {new.strip()}"


def own_text(typed: Typed, text: str) -> str:
    """The changed puzzle alone, as a file of its own: a list with one item, comments kept; or a line of a list."""
    old, new = typed.text.split("\n"), text.split("\n")
    lines = new[typed.first : typed.after + len(new) - len(old)]
    indent = min((indent_of(line) for line in lines if line.strip()), default=0)
    return "\n".join(line[indent:] for line in lines) + "\n"


def _edited(text: str, edits: Iterable[Edit]) -> str:
    for start, end, new in sorted(edits, reverse=True):
        text = text[:start] + new + text[end:]
    return text


def _reads_as(typed: Typed, text: str, meant: RuledPuzzle) -> bool:
    """Is the text that of the changed puzzle?"""
    collector = Collector()
    if typed.node is None:
        line = text.split("\n")[typed.place.line - 1][typed.place.column - 1 :]
        givens = read_givens(Word(typed.place, line[:81]), meant.grid, collector)
        return givens is not None and givens.digits == meant.givens
    for node in holding_of(typed.file, text, collector).puzzles:
        word = node.get("id")
        if isinstance(word, Word) and word.value == typed.id:
            puzzle = read_puzzle({key.value: value for key, value in node.entries}, node, collector)
            errors = [diagnostic for diagnostic in collector.errors() if diagnostic.code not in BEARABLE]
            return puzzle is not None and not errors and _alike(puzzle, meant)
    return False


def _alike(one: RuledPuzzle, other: RuledPuzzle) -> bool:
    """The same puzzle, in whatever order marks are told."""

    def told(puzzle: RuledPuzzle) -> object:
        grid = puzzle.grid
        return [
            puzzle.givens,
            {
                (rule.kind, rule.square, frozenset(rule.parts(rule.laid_on(grid))), repr(rule.said_options()))
                for rule in puzzle.rules
            },
        ]

    return one.grid == other.grid and told(one) == told(other)


def _ways(typed: Typed, meant: RuledPuzzle) -> Iterator[list[Edit]]:
    """Ways to edit the text, the smallest first: figures in place; else the entries of the rules that changed."""
    givens = _given_edits(typed, meant)
    if givens is None:
        return
    if typed.puzzle.rules == meant.rules or typed.node is None:
        yield givens
        return
    if meant.grid.overlaps:  # their rules are typed in several places: to be changed by hand
        return
    for rules_edits in (_small_edits, _whole_entries):
        edits = rules_edits(typed, meant)
        if edits is not None:
            yield givens + edits


def _given_edits(typed: Typed, meant: RuledPuzzle) -> list[Edit] | None:
    """One character for each given that changes."""
    changed = [cell for cell in meant.grid.cells if meant.givens[cell] != typed.puzzle.givens[cell]]
    if typed.givens is None:
        return None if changed else []
    signs = digits_text(meant.givens, meant.grid.symbols)
    offset = offsets(typed.text)
    return [(at := offset(typed.givens.place(cell)), at + 1, signs[cell]) for cell in changed]


def _entries_of(typed: Typed) -> list[tuple[Word, Node]]:
    rules = typed.node.get("rules") if typed.node else None
    return list(rules.entries) if isinstance(rules, Table) else []


def _matched(typed: Typed, meant: RuledPuzzle) -> Iterator[tuple[Rule | None, Rule | None, tuple[Word, Node] | None]]:
    """Each rule that changed: as it was, as it is to be, and where it is typed."""
    entries = {word.value: (word, body) for word, body in _entries_of(typed)}
    old, new = ({rule.kind: rule for rule in puzzle.rules} for puzzle in (typed.puzzle, meant))
    for kind in dict.fromkeys([*old, *new]):
        if old.get(kind) != new.get(kind):
            yield old.get(kind), new.get(kind), entries.get(kind)


def _small_edits(typed: Typed, meant: RuledPuzzle) -> list[Edit] | None:
    """The single words that change, where the body is typed as it would be written."""
    edits: list[Edit] = []
    gone = [(old, new, entry) for old, new, entry in _matched(typed, meant)]
    renamed = [item for item in gone if item[0] is None or item[1] is None]
    grid = meant.grid
    if len(gone) == 2 == len(renamed):  # one kind's word for another's
        (old, _, entry), (_, new, _) = sorted(gone, key=lambda item: item[0] is None)
        if old is None or new is None or entry is None or old.written(grid) != new.written(grid):
            return None
        at = offsets(typed.text)(entry[0].place)
        return [(at, at + len(old.kind), new.kind)]
    for old, new, entry in gone:
        if old is None or new is None or entry is None:
            return None
        found = _drawn_edits(typed.text, entry[1], old, new, grid)
        if found is None:
            found = leaf_edits(typed.text, entry[1], old.written(grid), new.written(grid))
        if found is None:
            return None
        edits += found
    return edits


def _drawn_edits(text: str, body: Node, old: Rule, new: Rule, grid: Grid) -> list[Edit] | None:
    """The signs that change in areas drawn as a picture, and their totals; None where they are not drawn."""
    drawn = body.get("picture") if isinstance(body, Table) else body
    if old.form is not Form.AREA or not isinstance(drawn, Word) or not is_picture(drawn, grid):
        return None
    areas = read_letters(drawn, "", grid, Collector())
    if areas is None:
        return None
    left, before = {area.letter: set(area.cells) for area in areas}, dict.fromkeys(grid.cells, ".")
    before |= {cell: letter for letter, cells in left.items() for cell in cells}
    called: dict[str, Part] = {}
    # An area that stays keeps its letter; one that changed takes that of the one which most of its cells were in.
    for part in sorted(new.parts(grid), key=lambda part: set(part.cells) not in left.values()):
        near = max(left, key=lambda letter: len(left[letter] & set(part.cells)), default="")
        if not near or not left[near] & set(part.cells):
            near = next(letter for letter in LETTERS if letter not in called and letter not in before.values())
        left.pop(near, None)
        called[near] = part
    after = dict.fromkeys(grid.cells, ".") | {cell: letter for letter, part in called.items() for cell in part.cells}
    offset, lines = offsets(text), drawn.value.splitlines()
    signs = [found for line in range(len(lines)) for found in drawn_in(lines[line], line)]
    places = [offset(drawn.at(line, column)) for sign, line, column in signs if sign != NO_CELL]
    edits = [(at, at + 1, after[cell]) for cell, at in enumerate(places) if before[cell] != after[cell]]
    figures = {letter: new.figure(part, grid) for letter, part in sorted(called.items())}
    totals: dict[str, Written] = {letter: figure for letter, figure in figures.items() if figure}
    return edits + _totals_edits(text, body, totals)


def _totals_edits(text: str, body: Node, totals: dict[str, Written]) -> list[Edit]:
    """The table of totals under a picture, where a letter comes or goes; else the figures that change in it."""
    entries = body.entries if isinstance(body, Table) else ()
    word, typed = next(((word, node) for word, node in entries if isinstance(node, Table)), (None, None))
    if not isinstance(typed, Table) or word is None:
        return []
    old: dict[str, Written] = {key.value: node.value for key, node in typed.entries if isinstance(node, Word)}
    if set(old) == set(totals):
        return leaf_edits(text, typed, old, {key: totals[key] for key in old}) or []
    lines, offset = text.split("\n"), offsets(text)
    start, end = offset(Place("", word.place.line, 1)), offset(Place("", _entry_end(lines, word) + 1, 1))
    return [(start, end, "".join(f"{line}\n" for line in entry_lines(word.value, totals, word.place.column - 1)))]


def _whole_entries(typed: Typed, meant: RuledPuzzle) -> list[Edit] | None:
    """The entries of the rules that changed, written afresh; comment lines in them are kept above."""
    edits: list[Edit] = []
    entries = _entries_of(typed)
    lines = typed.text.split("\n")
    offset = offsets(typed.text)
    for _, new, entry in _matched(typed, meant):
        if entry is None:
            if new is None or not entries:
                return None
            column = entries[-1][0].place.column - 1
            end = offset(Place("", _entry_end(lines, entries[-1][0]) + 1, 1))
            edits.append((end, end, "\n".join(rule_lines(new, meant.grid, column)) + "\n"))
            continue
        word = entry[0]
        first, after = word.place.line - 1, _entry_end(lines, word)
        comments = [line for line in lines[first + 1 : after] if line.strip().startswith("#")]
        written = rule_lines(new, meant.grid, word.place.column - 1) if new else []
        start, end = offset(Place("", first + 1, 1)), offset(Place("", after + 1, 1))
        edits.append((start, min(end, len(typed.text)), "".join(f"{line}\n" for line in (*comments, *written))))
    return edits


def _entry_end(lines: list[str], word: Word) -> int:
    """The number of the line after an entry, from 0."""
    after = word.place.line
    while after < len(lines) and (not lines[after].strip() or indent_of(lines[after]) > word.place.column - 1):
        after += 1
    while after > word.place.line and not lines[after - 1].strip():
        after -= 1
    return after


def _written_afresh(typed: Typed, meant: RuledPuzzle) -> str:
    """The puzzle's whole item written again, its other fields as they were typed."""
    texts: dict[str, Written] = {"id": typed.id}
    for word, value in typed.node.entries if typed.node else ():
        if isinstance(value, Word) and word.value not in ("givens", "rules", *GRID_KEYS):
            texts[word.value] = value.value.strip()
    lines = typed.text.split("\n")
    indent = " " * indent_of(lines[typed.first])
    fresh = [indent + line if line else line for line in puzzle_lines(meant, texts)]
    return "\n".join([*lines[: typed.first], *fresh, *lines[typed.after :]])
