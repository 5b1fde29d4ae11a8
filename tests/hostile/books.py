"""A grammar of manifests: sound ones, nearly sound ones and hostile ones, with grids small enough to prove at once."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from dataclasses import replace
from random import Random

from hypothesis import strategies as st

from bookmaker.language.catalogues import LOCALES
from bookmaker.manifest.written import givens_picture, puzzle_lines, rule_lines
from bookmaker.puzzle.grid import LETTERS as ALPHABET
from bookmaker.puzzle.grid import USUAL_BOXES, Grid, boxed_grid, irregular_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.visible import HIDDEN
from tests.hostile import other_shapes, shaped
from tests.hostile.slips import slipped
from tests.manifest.test_hostile import SCRAPS
from tests.rules.grids import Solution
from tests.rules.harness import cases_of, from_zero, instances, lay

MIDDLE, FULL = boxed_grid(6, 2, 3), boxed_grid(9, 3, 3)

TEXTS = ("Tides", "“Low–High”", "Ümläut", "日本", "x" * 200, "{a}", "- b", "'", '"', "\\n", "# no", "\U0001f9e9", "&a")

LETTERS = st.characters(exclude_categories=("Cs", "Cc"))

WORDS = st.sampled_from(TEXTS) | st.text(LETTERS, min_size=1, max_size=20).filter(
    lambda text: text.strip() and not HIDDEN.search(text)
)
"""Texts that a title may hold; not only blanks, and nothing that cannot be seen."""


KINDS = sorted(kinds())


def _quoted(text: str) -> str:
    """A text in YAML's double quotes."""
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


SIZES = (4,) * 30 + (6,) * 30 + (5,) * 10 + (7, 8) * 4 + (9,) * 12 + (10,) * 2 + (12,)
"""Sizes of grids as often as they are drawn: small ones mostly, which are read, proven and printed at once."""

OTHER_SHAPES = 0.25
"""How often a grid is not a square without holes."""

LARGE = (12, 15, 16, 16, 18, 20, 21, 24, 25)

IRREGULAR = {
    4: "abbc abcc abdc addd",
    5: "aaabb aabbb cddde ccdde cceee",
    6: "aaaaab caddbb ccddbb ceedfb ceedff ceefff",
    7: "aaabbbc aabbbcc addbccc addddce fdggeee fffgeee fffgggg",
}
"""Regions that are no boxes; a solution is found at once."""


def grid_of(rng: Random, sizes: Sequence[int]) -> Grid:
    """A grid of one of the sizes: with boxes, with regions of any shape or with none, its digits from 1."""
    size = rng.choice(sizes)
    odd = rng.random()
    if odd < 0.15 and size in IRREGULAR:
        return irregular_grid(size, IRREGULAR[size].replace(" ", ""))
    if odd < 0.3 or size not in USUAL_BOXES:
        return Grid(size, ())
    down, across = USUAL_BOXES[size]
    return boxed_grid(size, *rng.choice([(down, across), (down, across), (across, down)]))


RARE = {"barred-sums", "disjoint-groups", "king", "no-doubles", "non-consecutive"}
"""Kinds that few solutions keep to: to find one on a large or an irregular grid takes seconds."""


ON_BORDERS = {"border-values", "consecutive-bars", "dots", "inequality", "sum-marks"}
"""Kinds that have room for so many marks on the largest grids that to lay them takes seconds."""


def laid_on(kind: str, plain: Grid, rng: Random) -> tuple[Grid, Solution, Rule] | None:
    """A solution with true marks of a kind on a grid, on which digits may begin with 0 or be letters where the kind
    says that it goes with them; None where there is none."""
    its, signs = kinds()[kind], rng.random()
    if plain.size > 9:
        return _laid_on_large(kind, plain, rng)
    if kind in RARE and (plain.size > 6 or plain.box is None):
        plain = boxed_grid(6, 2, 3)
    if kind == "diagonals" and plain.box is None:
        plain = FULL  # on some Latin squares a search for a solution takes minutes
    if kind == "equal-part-line" and not plain.regions:
        return None
    if signs < 0.2 and its.from_zero:
        return next(from_zero(kind, plain, rng, 1), None)
    laid = next(iter(instances(kind, plain, rng, 1)), None)
    if laid and signs > 0.8 and its.lettered:
        return replace(plain, symbols="".join(rng.sample(ALPHABET, plain.size)), first=None), *laid
    return (plain, *laid) if laid else None


def _laid_on_large(kind: str, plain: Grid, rng: Random) -> tuple[Grid, Solution, Rule] | None:
    """The same where a solution is not searched for: rows are the first one moved along, digits then exchanged."""
    if kind in RARE or hasattr(cases_of(kind), "grow") or (kind == "equal-part-line" and not plain.regions):
        return None
    if kind in ON_BORDERS and plain.size > 16:
        return None
    down, across = plain.box or (1, plain.size)
    digits = rng.sample(plain.digits, plain.size)
    moved = [across * (row % down) + row // down for row in range(plain.size)]
    solution = tuple(digits[(moved[plain.row(cell)] + plain.column(cell)) % plain.size] for cell in plain.cells)
    its, signs = kinds()[kind], rng.random()
    grid = replace(plain, symbols="", first=0) if signs < 0.2 and its.from_zero else plain
    rule = lay(kind, grid, solution, rng)
    if rule is None or not rule.suits(grid):
        return None
    if grid is not plain:
        return grid, solution, rule
    if signs > 0.8 and its.lettered:
        return replace(plain, symbols="".join(rng.sample(ALPHABET, plain.size)), first=None), solution, rule
    return plain, solution, rule


LANGUAGES = (*LOCALES, "en-GB", "xx", "de-CH", "zh", "uk")


def titled(draw: st.DrawFn) -> str:
    """A title, now and then in several languages."""
    if draw(st.integers(0, 9)):
        return _quoted(draw(WORDS))
    few = draw(st.lists(st.sampled_from(sorted(LOCALES)), min_size=1, max_size=3, unique=True))
    return "{" + ", ".join(f"{code}: {_quoted(draw(WORDS))}" for code in few) + "}"


@st.composite
def puzzles(draw: st.DrawFn, name: str, sizes: Sequence[int] = SIZES) -> str:
    """An item of the list of puzzles: marks that are true on a random solution, and some of its digits given."""
    rng = Random(draw(st.integers(0, 2**40)))
    if rng.random() < OTHER_SHAPES:
        return draw(on_other_shapes(name, sizes is LARGE))
    plain = grid_of(rng, sizes)
    kind = draw(st.sampled_from(KINDS))
    grid, solution, *rules = laid_on(kind, plain, rng) or (plain, (0,) * len(plain.cells))
    share = rng.choice([0.2, 0.4, 0.6, 1.0] if grid.size < 8 else [0.6, 0.7, 0.8, 1.0])
    shown = tuple(digit if rng.random() < share else 0 for digit in solution)
    return _item(draw, name, Puzzle(grid, shown, tuple(rules)))


@st.composite
def on_other_shapes(draw: st.DrawFn, name: str, large: bool = False) -> str:
    """The same on grids that overlap or have holes, with one kind or two."""
    rng = Random(draw(st.integers(0, 2**40)))
    few = draw(st.lists(st.sampled_from(KINDS), max_size=2, unique=True))
    grid, solution, rules = other_shapes.laid(rng, few, large) or (FULL, (0,) * 81, ())
    share = rng.choice([0.2, 0.4, 0.6, 1.0] if len(solution) < 64 else [0.6, 0.7, 0.8, 1.0])
    shown = tuple(digit if rng.random() < share else 0 for digit in solution)
    return _item(draw, name, Puzzle(grid, shown, rules))


def _item(draw: st.DrawFn, name: str, puzzle: Puzzle[Rule]) -> str:
    """The puzzle as an item of a list, with a title and more."""
    lines = puzzle_lines(puzzle, {"id": name})
    said = [f"  title: {titled(draw)}"]
    said += [f"  setter: {_quoted(draw(WORDS))}"] if draw(st.booleans()) else []
    said += [f"  note: {_quoted(draw(WORDS))}"] if draw(st.booleans()) else []
    return "\n".join([lines[0], *said, *lines[1:]]) + "\n"


def _whole(draw: st.DrawFn, items: Sequence[str]) -> str:
    """A list of puzzles under a head."""
    order = draw(st.sampled_from(["", "  order: difficulty\n", "  order: listed\n"]))
    spoken = f"  language: {draw(st.sampled_from(sorted(LOCALES)))}\n" if not draw(st.integers(0, 3)) else ""
    head = f"book:\n  title: {titled(draw)}\n  permission: given\n{order}{spoken}puzzles:\n"
    return head + "".join(textwrap.indent(item, "  ") for item in items)


@st.composite
def sound(draw: st.DrawFn, sizes: Sequence[int] = SIZES, most: int = 3) -> str:
    """A manifest without a mistake; titles may hold what no font can print."""
    return _whole(draw, [draw(puzzles(f"p{i}", sizes)) for i in range(draw(st.integers(1, most)))])


@st.composite
def of_other_shapes(draw: st.DrawFn) -> str:
    """A manifest without a mistake of one puzzle, on grids that overlap or on one with holes."""
    return _whole(draw, [draw(on_other_shapes("p0"))])


@st.composite
def headed(draw: st.DrawFn) -> str:
    """A sound list of puzzles under whatever may be said of a book, and nearly that."""
    rng = Random(draw(st.integers(0, 2**40)))
    whole = shaped.schema("manifest")
    head = shaped.Shaped(whole, rng, rng.choice([0.0, 0.0, 0.02])).value(whole["$defs"]["book"])
    if isinstance(head, dict) and rng.random() < 0.8:
        head = {"title": "Tides", "permission": "given", **head}
    return shaped.typed({"book": head}) + "puzzles:\n" + textwrap.indent(draw(puzzles("p0")), "  ")


@st.composite
def mixed(draw: st.DrawFn) -> str:
    """A sound manifest of one puzzle with marks of several kinds, each true on a solution of its own. Most have no
    solution, some have very many, and both are hard to see."""
    rng = Random(draw(st.integers(0, 2**40)))
    grid: Grid = draw(st.sampled_from([MIDDLE, FULL, FULL]))
    few: list[str] = draw(st.lists(st.sampled_from(KINDS), min_size=1, max_size=4, unique=True))
    laid = [one for kind in few if (one := next(iter(instances(kind, grid, rng, 1)), None))]
    share = draw(st.sampled_from([0.0, 0.0, 0.05, 0.15]))
    solution = laid[0][0] if laid else (0,) * len(grid.cells)
    shown = tuple(digit if rng.random() < share else 0 for digit in solution)
    lines = ["- id: p0", f"  title: {_quoted(draw(WORDS))}", f"  size: {grid.size}", "  givens: |"]
    lines.append(textwrap.indent(givens_picture(grid, shown), "    "))
    if laid:
        lines += ["  rules:", *(line for _, rule in laid for line in rule_lines(rule, grid, 4))]
    puzzle = textwrap.indent("\n".join(lines) + "\n", "  ")
    return f"book:\n  title: {_quoted(draw(WORDS))}\n  permission: given\npuzzles:\n{puzzle}"


@st.composite
def fit_for_print(draw: st.DrawFn) -> str:
    """A manifest of one puzzle, on grids that overlap or on one with holes, with one solution and plain words, so that
    every command does with it what it is there for."""
    rng = Random(draw(st.integers(0, 2**40)))
    few = draw(st.lists(st.sampled_from(KINDS), min_size=1, max_size=2, unique=True))
    grid, solution, rules = other_shapes.laid(rng, few, False) or (FULL, (0,) * 81, ())
    puzzle = other_shapes.with_one_solution(Puzzle(grid, (0,) * len(solution), rules), solution, rng)
    lines = puzzle_lines(puzzle, {"id": "p0", "title": "Low Tide"})
    item = textwrap.indent("\n".join(lines) + "\n", "  ")
    language = draw(st.sampled_from(["en", "en", *sorted(LOCALES)]))
    return f"book:\n  title: Tides\n  permission: given\n  language: {language}\npuzzles:\n{item}"


@st.composite
def clashing_shapes(draw: st.DrawFn) -> str:
    """One puzzle on grids that overlap or on one with holes, some of its givens or figures wrong."""
    text = draw(of_other_shapes())
    for _ in range(draw(st.integers(1, 2))):
        digits = [at for at, sign in enumerate(text) if sign.isdigit() and at > text.index("givens:")]
        if digits:
            at = draw(st.sampled_from(digits))
            text = text[:at] + draw(st.sampled_from("1234.")) + text[at + 1 :]
    return text


SLIPPED = slipped(of_other_shapes())
"""Books with slips that are made with such grids."""


@st.composite
def nearly_sound(draw: st.DrawFn) -> str:
    """A sound manifest with one to three slips."""
    text = draw(sound())
    for _ in range(draw(st.integers(1, 3))):
        at = draw(st.integers(0, len(text)))
        cut = draw(st.sampled_from([0, 0, 1, 2, 10]))
        text = text[:at] + draw(st.sampled_from(["", *SCRAPS])) + text[at + cut :]
    return text


@st.composite
def torn(draw: st.DrawFn) -> str:
    """Lines of sound manifests in any order and at any indent, between scraps."""
    lines = (draw(sound()) + draw(sound())).splitlines()
    taken = draw(st.lists(st.sampled_from(lines) | st.sampled_from(SCRAPS), max_size=25))
    return "".join(" " * draw(st.sampled_from([0, 0, 1, 2, 4, 40])) + line + "\n" for line in taken)


HOSTILE = torn() | st.text(max_size=200) | st.lists(st.sampled_from(SCRAPS), max_size=60).map("".join)
