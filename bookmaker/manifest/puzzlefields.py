"""One puzzle as listed: from its lines in the manifest to an `Entry`.

In: the table of a puzzle. Out: the entry, or None with all that is wrong in the collector.
"""

from __future__ import annotations

from collections.abc import Mapping

from bookmaker.manifest.dates import read_when
from bookmaker.manifest.entries import Entry
from bookmaker.manifest.givens import check_clashes, read_givens
from bookmaker.manifest.gridfields import GRID_KEYS, read_grid
from bookmaker.manifest.misplaced_keys import parted
from bookmaker.manifest.permission import read_permission
from bookmaker.manifest.provenance import read_solution, read_tags, read_word
from bookmaker.manifest.publication import read_link
from bookmaker.manifest.rulefields import read_rules, rule_places
from bookmaker.manifest.texts import read_id, read_line, read_note
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import houses_of, kinds
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Table, Word, read_fields

PUZZLE_KEYS = (
    "id",
    "title",
    "setter",
    "shown",
    "permission",
    "note",
    "link",
    *GRID_KEYS,
    "givens",
    "rules",
    "solution",
    "word",
    "tags",
    "source",
    "private",
)  # fmt: skip


def read_entry(node: Node, permission: str, chapter: int, ids: dict[str, Place], collector: Collector) -> Entry | None:
    """The entry of one puzzle. `permission` is the book's own line, for puzzles that have none; `ids` are those taken
    by earlier puzzles, in small letters, and this one's is added."""
    before = len(collector.found)
    node = _with_rules_inside(node, collector)
    fields = read_fields(node, "the puzzle", collector, PUZZLE_KEYS, ("id",))
    if not isinstance(node, Table):
        return None
    fields = parted(fields, collector)
    name = _claimed_id(fields["id"], ids, collector) if "id" in fields else None
    title, setter = read_line(fields, "title", collector), read_line(fields, "setter", collector)
    shown = read_when(fields["shown"], "shown", collector) if "shown" in fields else None
    consent = read_permission(fields, collector)
    note, link = read_note(fields, "note", collector), read_link(fields, collector)
    tags, source = read_tags(fields, collector), read_line(fields, "source", collector)
    private = read_note(fields, "private", collector)
    puzzle = read_puzzle(fields, node, collector)
    solution = read_solution(fields, puzzle, puzzle.grid, collector) if puzzle else None
    word = read_word(fields["word"], puzzle.grid, collector) if puzzle and "word" in fields else None
    if name is None or puzzle is None or any(not diagnostic.warning for diagnostic in collector.found[before:]):
        return None
    return Entry(
        id=name,
        puzzle=puzzle,
        place=fields["id"].place,
        title=title,
        setter=setter,
        shown=shown,
        permission=consent.printed or permission,
        note=note,
        chapter=chapter,
        link=link,
        tags=tags,
        source=source,
        private=private,
        consent=consent,
        solution=solution,
        word=word,
        places={field: node.place for field, node in fields.items()},
        rule_places=rule_places(fields.get("rules"), puzzle.grid),
    )


def _with_rules_inside(node: Node, collector: Collector) -> Node:
    """The puzzle with the kinds of rules that stand beside “rules” moved under it, which is said once."""
    if not isinstance(node, Table):
        return node
    astray = [entry for entry in node.entries if entry[0].value in kinds()]
    if not astray:
        return node
    first, *more = (word for word, _ in astray)
    said = f"“{first.value}” is a kind of rule and belongs under “rules”"
    hint = "write “rules:” and indent the kinds of rules below it"
    collector.error(first.place, "lost-rule", said, hint, tuple(word.place for word in more))
    rules = node.get("rules")
    others = [entry for entry in node.entries if entry not in astray and entry[1] is not rules]
    if isinstance(rules, Table):
        astray = [*rules.entries, *astray]
    return Table(node.place, (*others, (Word(first.place, "rules"), Table(first.place, tuple(astray)))))


def _claimed_id(node: Node, ids: dict[str, Place], collector: Collector) -> str | None:
    name = read_id(node, collector)
    if name is None:
        return None
    first = ids.setdefault(name.lower(), node.place)
    if first is node.place:
        return name
    where = f"on line {first.line}" if first.file == node.place.file else f"at {first}"
    said = f"two puzzles have the id “{name}”; the first is {where}"
    collector.error(node.place, "same-id", said, "give one of them another id", (first,))
    return None


def read_puzzle(fields: Mapping[str, Node], node: Table, collector: Collector) -> RuledPuzzle | None:
    """The puzzle itself from its fields; None where there is nothing to make one of. What clashes is reported, but the
    puzzle returned, so that it can be looked into."""
    grid = read_grid(fields, node.place, collector)
    if grid is None:
        return None
    before = len(collector.found)
    rules = read_rules(fields["rules"], grid, collector) if "rules" in fields else ()
    if "givens" not in fields:
        if not rules and len(collector.found) == before:  # and not where rules have mistakes of their own
            collector.error(
                node.place, "missing-key", "the puzzle needs “givens”", "only a puzzle with rules may have none"
            )
        return Puzzle(grid, (0,) * len(grid.cells), rules)
    givens = read_givens(fields["givens"], grid, collector)
    if givens is None:
        return None
    puzzle = Puzzle(grid, givens.digits, rules)
    check_clashes(givens, houses_of(puzzle), grid, collector)
    return puzzle
