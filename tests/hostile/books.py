"""A grammar of manifests: sound ones, nearly sound ones and hostile ones, with grids small enough to prove at once."""

from __future__ import annotations

import textwrap
from random import Random

from hypothesis import strategies as st

from bookmaker.manifest.written import givens_picture, rule_lines
from bookmaker.puzzle.grid import Grid, boxed_grid
from bookmaker.rules import kinds
from tests.manifest.test_hostile import SCRAPS
from tests.rules.harness import instances

SMALL, MIDDLE, FULL = boxed_grid(4, 2, 2), boxed_grid(6, 2, 3), boxed_grid(9, 3, 3)

TEXTS = ("Tides", "“Low–High”", "Ümläut", "日本", "x" * 200, "{a}", "- b", "'", '"', "\\n", "# no", "\U0001f9e9", "&a")

LETTERS = st.characters(exclude_categories=("Cs", "Cc"))

WORDS = st.sampled_from(TEXTS) | st.text(LETTERS, min_size=1, max_size=20).filter(lambda text: text.strip())
"""Texts that a title may hold; not only blanks."""


KINDS = sorted(kinds())


def _quoted(text: str) -> str:
    """A text in YAML's double quotes."""
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


@st.composite
def puzzles(draw: st.DrawFn, name: str) -> str:
    """An item of the list of puzzles: marks that are true on a random solution, and some of its digits given."""
    rng = Random(draw(st.integers(0, 10**6)))
    grid: Grid = draw(st.sampled_from([SMALL, SMALL, MIDDLE]))
    kind = draw(st.sampled_from(KINDS))
    laid = next(iter(instances(kind, grid, rng, 1)), None)
    lines = [f"- id: {name}", f"  title: {_quoted(draw(WORDS))}", f"  size: {grid.size}"]
    lines += [f"  setter: {_quoted(draw(WORDS))}"] if draw(st.booleans()) else []
    lines += [f"  note: {_quoted(draw(WORDS))}"] if draw(st.booleans()) else []
    if laid is None:
        lines.append(f"  givens: '{'.' * len(grid.cells)}'")
    else:
        solution, rule = laid
        share = draw(st.sampled_from([0.2, 0.4, 0.6, 1.0]))
        shown = tuple(digit if rng.random() < share else 0 for digit in solution)
        lines += ["  givens: |", textwrap.indent(givens_picture(grid, shown), "    ")]
        lines += ["  rules:", *rule_lines(rule, grid, 4)]
    return "\n".join(lines) + "\n"


@st.composite
def sound(draw: st.DrawFn) -> str:
    """A manifest without a mistake; titles may hold what no font can print."""
    count = draw(st.integers(1, 3))
    order = draw(st.sampled_from(["", "  order: difficulty\n", "  order: listed\n"]))
    head = f"book:\n  title: {_quoted(draw(WORDS))}\n  permission: given\n{order}puzzles:\n"
    return head + "".join(textwrap.indent(draw(puzzles(f"p{i}")), "  ") for i in range(count))


@st.composite
def mixed(draw: st.DrawFn) -> str:
    """A sound manifest of one puzzle with marks of several kinds, each true on a solution of its own. Most have no
    solution, some have very many, and both are hard to see."""
    rng = Random(draw(st.integers(0, 10**6)))
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
