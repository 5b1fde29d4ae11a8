"""A file of wishes as somebody typed it → `Wish`es; all of its diagnostics at once.

In: a file with `wish:`, or with a list under `wishes:`. Out: the wishes in their order, or `BookErrors`.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from pathlib import Path
from typing import cast, get_args

from bookmaker.changes.arrangement import arrangements_of
from bookmaker.manifest.dates import read_when
from bookmaker.manifest.givens import check_clashes, read_givens
from bookmaker.manifest.gridfields import GRID_KEYS, read_grid
from bookmaker.manifest.provenance import read_tags
from bookmaker.manifest.publication import read_link
from bookmaker.manifest.texts import read_id, read_line, read_note
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule
from bookmaker.source.diagnostics import Collector, Place, nearest, quoted
from bookmaker.source.placed import Node, Table, Word, read_choice, read_fields, read_items, read_switch, read_whole
from bookmaker.source.textfile import read_file
from bookmaker.source.textgrid import read_picture
from bookmaker.source.yamlfile import parse_yaml
from bookmaker.wishes.bands import read_bands
from bookmaker.wishes.rulewishes import read_rule_wishes
from bookmaker.wishes.span import Span, read_span
from bookmaker.wishes.techniques import SINGLES, name_of, nameable
from bookmaker.wishes.wish import ANY_BAND, RuleWish, Where, Wish

TEXTS = ("id", "title", "setter", "shown", "permission", "note", "link")
"""Lines that are copied into the puzzles drafted."""

WISH_KEYS = (
    "puzzles",
    *GRID_KEYS,
    "rules",
    "arrangement",
    "pattern",
    "givens",
    "fixed",
    "band",
    "difficulty",
    "want",
    "refuse",
    "singles-only",
    "bottlenecks",
    "openings",
    "mirrored",
    "idle-marks",
    "seed",
    "tags",
    *TEXTS,
)

MOST_PUZZLES = 1000

NUMBER = "{number}"
"""Stands in a title or id where the puzzles are counted."""


def load_wishes(path: Path) -> tuple[Wish, ...]:
    """Read a file of wishes. Raises `BookErrors` with everything that is wrong, in file order."""
    collector = Collector()
    text = read_file(path, str(path), Place(str(path)), collector)
    tree = parse_yaml(text, str(path), collector) if text is not None else None
    wishes = wishes_in(tree, collector) if tree is not None else ()
    collector.raise_errors()
    return wishes


def read_goal(
    band: str, difficulty: str, refused: Sequence[str], rules: Sequence[Rule], place: Place, collector: Collector
) -> Wish:
    """A wish for a puzzle that is there already, from words such as a command's options; empty ones ask for nothing."""
    span = (
        read_span(Word(place, difficulty), "the difficulty", collector, Span(1, 6), whole=False) if difficulty else None
    )
    groups = [
        names
        for word in refused
        for names in _techniques(Word(place, word), "what is refused", tuple(map(RuleWish, rules)), collector)
    ]
    return Wish(
        bands=read_bands(Word(place, band), collector) if band else ANY_BAND,
        difficulty=span,
        refused=frozenset(name for names in groups for name in names),
    )


def wishes_in(tree: Node, collector: Collector) -> tuple[Wish, ...]:
    """The wishes of a file's tree; faulty ones are reported and left out."""
    fields = read_fields(tree, "a file of wishes", collector, ("wish", "wishes"))
    nodes = (
        [fields["wish"]]
        if "wish" in fields
        else list(read_items(fields["wishes"], "“wishes”", collector))
        if fields
        else []
    )
    if not nodes and not collector.found:
        collector.error(
            tree.place, "no-wish", "no wish stands here", "begin with “wish:” and set what you wish in below it"
        )
    wishes = [wish for node in nodes if (wish := _read_wish(node, collector)) is not None]
    names: dict[str, Place] = {}
    for wish in wishes:
        first = names.setdefault(wish.texts.get("id", str(wish.place)), wish.place)
        if first is not wish.place:
            collector.error(wish.place, "same-id", f"two wishes have the id “{wish.texts['id']}”", "", (first,))
    return tuple(wishes)


def _read_wish(node: Node, collector: Collector) -> Wish | None:
    before = sum(1 for _ in collector.errors())
    fields = read_fields(node, "a wish", collector, WISH_KEYS)
    grid = read_grid(fields, node.place, collector)
    if grid is None:
        return None
    rules = read_rule_wishes(fields["rules"], grid, collector) if "rules" in fields else ()
    bottlenecks, where = _bottlenecks(fields, collector)
    wish = Wish(
        grid=grid,
        rules=rules,
        puzzles=_whole(fields, "puzzles", 1, Span(1, MOST_PUZZLES), collector),
        arrangement=_arrangement(fields, grid, collector),
        pattern=_pattern(fields, grid, collector),
        fixed=_fixed(fields, grid, collector),
        givens=_span(fields, "givens", Span(0, len(grid.cells)), collector),
        bands=read_bands(fields["band"], collector) if "band" in fields else ANY_BAND,
        difficulty=_span(fields, "difficulty", Span(1, 6), collector, whole=False),
        want=_wanted(fields, rules, collector),
        refused=_refused(fields, rules, collector),
        singles_only=_switch(fields, "singles-only", collector),
        bottlenecks=bottlenecks,
        where=where,
        openings=_span(fields, "openings", Span(0, len(grid.cells)), collector),
        mirrored=_switch(fields, "mirrored", collector),
        idle_marks=_switch(fields, "idle-marks", collector),
        texts=_texts(fields, collector),
        tags=read_tags(fields, collector),
        seed=_whole(fields, "seed", 1, Span(0, 999_999_999), collector),
        place=fields["id"].place if "id" in fields else node.place,
    )
    _check(wish, fields, collector)
    return wish if sum(1 for _ in collector.errors()) == before else None


def _check(wish: Wish, fields: Mapping[str, Node], collector: Collector) -> None:
    """Wishes that contradict each other."""
    if wish.pattern and wish.givens and len(wish.pattern) not in wish.givens:
        said = f"the pattern has {len(wish.pattern)} cells, and {wish.givens} givens are wished"
        collector.error(fields["givens"].place, "wish-clash", said, "keep one of the two")
    if wish.pattern and "arrangement" in fields:
        collector.error(
            fields["arrangement"].place, "wish-clash", "a pattern leaves no choice of arrangement", "keep one"
        )
    if wish.mirrored and wish.arrangement != "half-turn":
        said = "digits can mirror each other about the centre only"
        place = fields["arrangement"].place if "arrangement" in fields else fields["mirrored"].place
        collector.error(place, "wish-clash", said, "say “arrangement: half-turn”")
    if wish.puzzles > 1 and "id" in fields and NUMBER not in wish.texts.get("id", ""):
        hint = f"put {NUMBER} where it counts them, such as tide-{NUMBER}"
        collector.error(fields["id"].place, "same-id", f"{wish.puzzles} puzzles can't have one id", hint)
    overlap = sorted(name for names in wish.want for name in names if wish.refused.issuperset(names))
    if overlap:
        collector.error(
            fields["refuse"].place, "wish-clash", f"“{name_of(overlap[0])}” is both wanted and refused", "keep one"
        )
    plain = {*SINGLES, *(each.rule.kind for each in wish.rules)}
    beyond = sorted(
        name_of(names[0]) for names, times in wish.want.items() if times.least and not plain.intersection(names)
    )
    if wish.singles_only and beyond:
        said = f"“{beyond[0]}” is wanted, and nothing but singles"
        collector.error(fields["singles-only"].place, "wish-clash", said, "keep one of the two")


def _span(fields: Mapping[str, Node], name: str, within: Span, collector: Collector, whole: bool = True) -> Span | None:
    return read_span(fields[name], f"“{name}”", collector, within, whole) if name in fields else None


def _whole(fields: Mapping[str, Node], name: str, usual: int, within: Span, collector: Collector) -> int:
    if name not in fields:
        return usual
    read = read_whole(fields[name], f"“{name}”", collector, int(within.least), int(within.most))
    return usual if read is None else read


def _switch(fields: Mapping[str, Node], name: str, collector: Collector) -> bool:
    return bool(read_switch(fields[name], f"“{name}”", collector)) if name in fields else False


def _arrangement(fields: Mapping[str, Node], grid: Grid, collector: Collector) -> str:
    names = [made.name for made in arrangements_of(grid)]
    if "arrangement" not in fields:
        usual = next((name for name in names if name == "half-turn"), "none")
        return "none" if "pattern" in fields else usual
    return read_choice(fields["arrangement"], "“arrangement”", collector, tuple(names)) or "none"


def _pattern(fields: Mapping[str, Node], grid: Grid, collector: Collector) -> tuple[int, ...]:
    node = fields.get("pattern")
    if node is None:
        return ()
    drawn = read_picture(node, grid, "the pattern", collector) if isinstance(node, Word) else None
    if drawn is None:
        if not isinstance(node, Word):
            collector.error(
                node.place, "not-a-picture", "“pattern” should be a picture of the grid", "begin with “pattern: |”"
            )
        return ()
    cells = tuple(cell for cell, (sign, _, _) in enumerate(drawn) if sign not in ".0")
    if not cells:
        collector.error(
            node.place, "pattern-empty", "the pattern shows no given", "draw an x for each, a dot elsewhere"
        )
    return cells


def _fixed(fields: Mapping[str, Node], grid: Grid, collector: Collector) -> tuple[int, ...]:
    if "fixed" not in fields:
        return ()
    givens = read_givens(fields["fixed"], grid, collector)
    if givens is None:
        return ()
    check_clashes(givens, grid.houses, grid, collector)
    return givens.digits if any(givens.digits) else ()


def _bottlenecks(fields: Mapping[str, Node], collector: Collector) -> tuple[Span | None, Where]:
    node = fields.get("bottlenecks")
    if not isinstance(node, Table):
        return _span(fields, "bottlenecks", Span(0, 9), collector), ""
    inner = read_fields(node, "“bottlenecks”", collector, ("how-many", "where"))
    choices = tuple(word for word in get_args(Where) if word)
    where = read_choice(inner["where"], "“where”", collector, choices) if "where" in inner else ""
    return _span(inner, "how-many", Span(0, 9), collector) or Span(1, 9), cast(Where, where or "")


def _wanted(
    fields: Mapping[str, Node], rules: tuple[RuleWish, ...], collector: Collector
) -> dict[tuple[str, ...], Span]:
    node = fields.get("want")
    if node is None:
        return {}
    if not isinstance(node, Table):
        return dict.fromkeys(_techniques(node, "“want”", rules, collector), Span(1, 999))
    wanted: dict[tuple[str, ...], Span] = {}
    for word, value in node.entries:
        span = read_span(value, f"“{word.value}”", collector, Span(0, 999))
        if span is not None:
            wanted |= dict.fromkeys(_techniques(word, "“want”", rules, collector), span)
    return wanted


def _refused(fields: Mapping[str, Node], rules: tuple[RuleWish, ...], collector: Collector) -> frozenset[str]:
    groups = _techniques(fields["refuse"], "“refuse”", rules, collector) if "refuse" in fields else []
    return frozenset(name for names in groups for name in names)


def _techniques(node: Node, what: str, rules: tuple[RuleWish, ...], collector: Collector) -> list[tuple[str, ...]]:
    """The keys of each technique that is named."""
    known = nameable(wanted.rule.kind for wanted in rules)
    found = []
    for item in read_items(node, what, collector):
        if not isinstance(item, Word):
            collector.error(item.place, "not-text", f"{what} should be names of techniques", ", ".join(known))
            continue
        same = [names for name, names in known.items() if name.lower() == item.value.lower()]
        if same:
            found.append(same[0])
        else:
            collector.error(
                item.place,
                "unknown-technique",
                f"there is no technique {quoted(item.value)}",
                nearest(item.value, known),
            )
    return found


def _texts(fields: Mapping[str, Node], collector: Collector) -> dict[str, str]:
    """The lines as typed, which are what a manifest can hold under these names."""
    before = len(collector.found)
    texts = {
        name: read_note(fields, name, collector) if name == "note" else read_line(fields, name, collector)
        for name in TEXTS
        if name in fields
    }
    if len(collector.found) > before:
        return texts
    if "id" in texts:
        read_id(Word(fields["id"].place, texts["id"].replace(NUMBER, "1")), collector)
    if "shown" in texts:
        read_when(fields["shown"], "shown", collector)
    read_link(fields, collector)
    return texts
