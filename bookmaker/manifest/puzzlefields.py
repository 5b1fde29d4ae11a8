"""One puzzle as listed: from its lines in the manifest to an `Entry`.

In: the table of a puzzle. Out: the entry, or None with all that is wrong on the desk.
"""

from __future__ import annotations

from collections.abc import Mapping

from bookmaker.manifest.givens import check_clashes, read_givens
from bookmaker.manifest.gridfields import read_grid
from bookmaker.manifest.model import Entry
from bookmaker.manifest.publication import read_link
from bookmaker.manifest.swallowed import parted
from bookmaker.manifest.texts import read_date, read_id, read_line, read_note
from bookmaker.manifest.typedmarks import typed_marks
from bookmaker.placed import Node, Table, Word, read_fields
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import houses_of, kinds
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.trouble import Desk, Place, nearest, quoted

PUZZLE_KEYS = (
    "id",
    "title",
    "setter",
    "shown",
    "permission",
    "note",
    "link",
    "size",
    "boxes",
    "regions",
    "givens",
    "rules",
)  # fmt: skip


def read_entry(node: Node, permission: str, chapter: int, ids: dict[str, Place], desk: Desk) -> Entry | None:
    """The entry of one puzzle. `permission` is the book's own line, for puzzles that have none; `ids` are those taken
    by earlier puzzles, in small letters, and this one's is added."""
    before = len(desk.found)
    node = _with_rules_inside(node, desk)
    fields = read_fields(node, "the puzzle", desk, PUZZLE_KEYS, ("id",))
    if not isinstance(node, Table):
        return None
    fields = parted(fields, desk)
    name = _claimed_id(fields["id"], ids, desk) if "id" in fields else None
    title, setter = read_line(fields, "title", desk), read_line(fields, "setter", desk)
    shown = read_date(fields["shown"], "shown", desk) if "shown" in fields else None
    own_permission = read_line(fields, "permission", desk)
    note, link = read_note(fields, "note", desk), read_link(fields, desk)
    puzzle = read_puzzle(fields, node, desk)
    if name is None or puzzle is None or any(not trouble.warning for trouble in desk.found[before:]):
        return None
    place = fields["id"].place
    if not own_permission and not permission:
        hint = "add “permission:” to the puzzle, or once under “book:” where one line holds for all"
        desk.warn(place, "no-permission", f"“{name}” has no permission line", hint)
    marks = _typed_marks(fields.get("rules"))
    return Entry(name, puzzle, place, title, setter, shown, own_permission or permission, note, chapter, link, marks)


def _with_rules_inside(node: Node, desk: Desk) -> Node:
    """The puzzle with the kinds of rules that stand beside “rules” moved under it, which is said once."""
    if not isinstance(node, Table):
        return node
    astray = [entry for entry in node.entries if entry[0].value in kinds()]
    if not astray:
        return node
    first, *more = (word for word, _ in astray)
    said = f"“{first.value}” is a kind of rule and does not stand under “rules”"
    hint = "begin with “rules:” and set the kinds of rules below it in further"
    desk.error(first.place, "lost-rule", said, hint, tuple(word.place for word in more))
    rules = node.get("rules")
    others = [entry for entry in node.entries if entry not in astray and entry[1] is not rules]
    if isinstance(rules, Table):
        astray = [*rules.entries, *astray]
    return Table(node.place, (*others, (Word(first.place, "rules"), Table(first.place, tuple(astray)))))


def _typed_marks(rules: Node | None) -> tuple[tuple[str, ...], ...]:
    return tuple(typed_marks(body) for _, body in rules.entries) if isinstance(rules, Table) else ()


def _claimed_id(node: Node, ids: dict[str, Place], desk: Desk) -> str | None:
    name = read_id(node, desk)
    if name is None:
        return None
    first = ids.setdefault(name.lower(), node.place)
    if first is node.place:
        return name
    where = f"on line {first.line}" if first.file == node.place.file else f"at {first}"
    said = f"two puzzles have the id “{name}”; the first is {where}"
    desk.error(node.place, "same-id", said, "give one of them another id", (first,))
    return None


def read_puzzle(fields: Mapping[str, Node], node: Table, desk: Desk) -> RuledPuzzle | None:
    """The puzzle itself from its fields; None where there is nothing to make one of. What clashes is reported, but the
    puzzle returned, so that it can be looked into."""
    grid = read_grid(fields, node.place, desk)
    if grid is None:
        return None
    rules = _rules(fields["rules"], grid, desk) if "rules" in fields else ()
    if "givens" not in fields:
        if not rules:
            desk.error(node.place, "missing-key", "the puzzle needs “givens”", "only a puzzle with rules may have none")
        return Puzzle(grid, (0,) * len(grid.cells), rules)
    givens = read_givens(fields["givens"], grid, desk)
    if givens is None:
        return None
    puzzle = Puzzle(grid, givens.digits, rules)
    check_clashes(givens, houses_of(puzzle), grid, desk)
    return puzzle


def _rules(node: Node, grid: Grid, desk: Desk) -> tuple[Rule, ...]:
    if isinstance(node, Word) and not node.value:
        return ()
    if not isinstance(node, Table):
        hint = "a line for each kind, such as “diagonals: both”; “bookmaker rules” lists the kinds"
        desk.error(node.place, "not-a-table", "“rules” should be lines of “kind: what is marked”", hint)
        return ()
    read = []
    for word, body in node.entries:
        kind = kinds().get(word.value)
        if kind is None:
            said = f"there is no rule kind {quoted(word.value)}"
            desk.error(word.place, "unknown-rule", said, nearest(word.value, kinds()))
        else:
            read.append(kind.read(body, grid, desk))
    return tuple(rule for rule in read if rule is not None)
