"""Makes `demo_book/archive/` anew: `python -m tests.makers.demo_archive`.

An archive as a club might have one: 150 puzzles of all kinds, with setters, tags, dates, permissions and a list of
classics. All of it is drawn from seeds: marks are read off random solutions, givens taken away while the puzzle stays
unique, and some are left in so that every band has its share. Setters, titles and occasions are made up.
"""

from __future__ import annotations

import textwrap
from collections.abc import Iterator
from pathlib import Path
from random import Random
from typing import Any

from bookmaker.grade import grade
from bookmaker.grade.model import SolvePath
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle, digits_text
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from tests.grade.turns import turned
from tests.makers.draw import removals, without
from tests.makers.grow import empty_grid, random_solution
from tests.makers.shapes import as_runs
from tests.makers.typed import WRITERS
from tests.rules.harness import instances

HOME = Path(__file__).resolve().parents[2] / "demo_book" / "archive"

SETTERS = ("Sandpiper", "Mudlark", "The Pilot", "Old Heron", "Brine", "Eelgrass", "Wick", "Fennel")
TAGS = ("harbour", "storm", "beginners", "easter", "lighthouse", "ferry")
FIRST = (
    "Grey", "Low", "Rising", "Quiet", "Salt", "Slow", "Distant", "Narrow", "Rusty", "Painted", "Winter", "Drifting",
    "Silver", "Half",
)  # fmt: skip
SECOND = ("Gull", "Water", "Bell", "Ladder", "Anchor", "Ferry", "Net", "Lamp", "Rope", "Harbour", "Buoy", "Sail")

FILES = ("2023-club-nights", "2024-spring", "2024-autumn", "2025-easter-contest", "2025-notebook")
BANDS = (2, 3, 1, 4, 3, 2, 4, 1, 5, 3, 4)
"""The bands wished for, in turn."""

PER_KIND = 4
PLAIN = 14
SIX = 5
LISTED = 12


def drawn(kind: str, number: int, grid: Grid) -> tuple[RuledPuzzle, Solution] | None:
    """A puzzle of a kind (“” for a classic) that can be solved by logic, as near to the band of its turn as it goes."""
    rng = Random(f"archive {kind} {number}")
    if kind:
        found = next(instances(kind, grid, rng, 1), None)
        if found is None:
            return None
        solution, rule = found
        rules: tuple[Rule, ...] = (_fewer(rule, rng),)
    else:
        solution, rules = random_solution(empty_grid(grid), rng), ()
    full: RuledPuzzle = Puzzle(grid, solution, rules)
    band = BANDS[(number + sum(map(ord, kind))) % len(BANDS)]
    taken = list(removals(full, 0, True, rng))
    few, many = 0, len(taken)
    while few < many:
        middle = (few + many + 1) // 2
        if grade(without(full, taken[:middle]), solution).band <= band:
            few = middle
        else:
            many = middle - 1
    while few:
        puzzle = without(full, taken[:few])
        graded = grade(puzzle, solution)
        if graded.band <= band and graded.path.reached and (band == 5 or not _tries(graded.path)):
            return puzzle, solution
        few -= 1
    return None


def _tries(path: SolvePath) -> bool:
    return any(step.reason.technique == "what-if" for step in path.steps)


def _fewer(rule: Rule, rng: Random) -> Rule:
    """At most nine of the marks, so that the puzzle is not all marks."""
    from dataclasses import fields, replace

    for field in fields(rule):  # type: ignore[arg-type]
        marks = getattr(rule, field.name)
        whole = getattr(rule, "all_marked", False) or rule.kind == "consecutive-bars"
        if isinstance(marks, tuple) and len(marks) > 9 and not whole and field.name != "letters":
            rule = replace(rule, **{field.name: tuple(sorted(rng.sample(marks, 9), key=repr))})  # type: ignore[type-var]
    return rule


def typed(rule: Rule, grid: Grid) -> str:
    """The manifest entry of a rule."""
    if rule.kind in WRITERS:
        return WRITERS[rule.kind](rule, grid)
    made: Any = rule
    if hasattr(made, "chains"):
        lines = "".join(f"  - {as_runs(grid, chain)}\n" for chain in made.chains)
        options = {"least": 5, "step": 0}
        for name, usual in options.items():
            if getattr(made, name, usual) != usual:
                return f"{rule.kind}:\n  {name}: {getattr(made, name)}\n  lines:\n" + textwrap.indent(lines, "  ")
        return f"{rule.kind}:\n{lines}"
    if hasattr(made, "arrows"):
        lines = ""
        for arrow in made.arrows:
            shafts = ", ".join(as_runs(grid, shaft) for shaft in arrow.shafts)
            lines += f"  - {{circle: {as_runs(grid, arrow.circle)}, shafts: [{shafts}]}}\n"
        return f"{rule.kind}:\n{lines}"
    if hasattr(made, "groups"):
        lines = "".join(
            f"  {letter}: [{', '.join(as_runs(grid, area) for area in group)}]\n"
            for letter, group in zip(made.letters, made.groups, strict=True)
        )
        return f"{rule.kind}:\n{lines}"
    if hasattr(made, "regions"):
        return f"{rule.kind}:\n" + "".join(f"  - {as_runs(grid, region)}\n" for region in made.regions)
    if hasattr(made, "falling"):
        return f"{rule.kind}: {'both' if made.falling and made.rising else 'falling' if made.falling else 'rising'}\n"
    return f"{rule.kind}: yes\n"


def every_puzzle() -> Iterator[tuple[str, Grid, RuledPuzzle, Solution]]:
    """The puzzles, with their grid, in no order of note."""
    six = boxed_grid(6, 2, 3)
    wanted = [(kind, CLASSIC, PER_KIND) for kind in kinds()]
    wanted = [(kind, grid, count - (index >= 20)) for index, (kind, grid, count) in enumerate(wanted)]
    for kind, grid, count in [*wanted, ("", CLASSIC, PLAIN), ("", six, SIX)]:
        made = number = 0
        while made < count and number < 40:
            found = drawn(kind, number, grid)
            number += 1
            if found is not None:
                made += 1
                print(kind or "classic", made, flush=True)
                yield kind, grid, *found


def item(name: str, puzzle: RuledPuzzle, solution: Solution, file: str, rng: Random) -> str:
    """A puzzle with all that a club would note of it."""
    setter = rng.choices(SETTERS, (9, 7, 6, 6, 5, 4, 3, 2))[0]
    lines = [f"- id: {name.lower().replace(' ', '-')}", f"  title: {name}", f"  setter: {setter}"]
    year = int(file[:4])
    shown = rng.choice(("", f"{year}", f"{year}-{rng.randint(1, 12):02}", f"{year}-{rng.randint(1, 12):02}-17"))
    lines += [f"  shown: {shown}"] if shown else []
    tags = [tag for tag in TAGS if rng.random() < 0.22]
    lines += [f"  tags: {', '.join(tags)}"] if tags else []
    lines += _permission(setter, year, rng)
    lines += [f"  private: {setter} brought it on paper."] if rng.random() < 0.08 else []
    grid = puzzle.grid
    lines += [f"  size: {grid.size}"] if grid.size != 9 else []
    lines += [f"  givens: {puzzle.givens_text}"]
    lines += [f"  solution: {digits_text(solution)}"] if rng.random() < 0.25 else []
    if puzzle.rules:
        lines += ["  rules:", textwrap.indent("".join(typed(rule, grid) for rule in puzzle.rules).rstrip(), "    ")]
    return "\n".join(lines) + "\n"


def _permission(setter: str, year: int, rng: Random) -> list[str]:
    state = rng.choices(("line", "granted", "own", "asked", "refused", ""), (5, 6, 3, 2, 1, 2))[0]
    match state:
        case "line":
            return ["  permission: Printed by kind permission of the setter."]
        case "granted":
            said = "printed: Printed by kind permission of the setter."
            return [f"  permission: {{state: granted, by: {setter}, on: {year}-{rng.randint(1, 12):02}, {said}}}"]
        case "own" | "asked" | "refused":
            return [f"  permission: {{state: {state}, by: {setter}, on: {year}}}"]
        case _:
            return []


def main() -> None:
    """Write all files anew."""
    HOME.mkdir(parents=True, exist_ok=True)
    rng = Random("demo archive")
    names = [f"{one} {other}" for one in FIRST for other in SECOND]
    rng.shuffle(names)
    puzzles = [(puzzle, solution) for _, _, puzzle, solution in every_puzzle()]
    rng.shuffle(puzzles)
    files: dict[str, list[str]] = {file: [] for file in FILES}
    for number, (puzzle, solution) in enumerate(puzzles):
        file = FILES[number * len(FILES) // len(puzzles)]
        files[file].append(item(names[number], puzzle, solution, file, rng))
    for file, items in files.items():
        (HOME / f"{file}.yaml").write_text("\n".join(items), encoding="utf-8")
    listed = ["# Classics from the notice board, one a week."]
    for number in range(100, 100 + LISTED):
        found = drawn("", number, CLASSIC)
        if found is not None and len(listed) < LISTED:
            listed.append(f"{found[0].givens_text} Notice board {len(listed)}")
    plain = next(puzzle for puzzle, _ in puzzles if not puzzle.rules and puzzle.grid == CLASSIC)
    copy: RuledPuzzle = Puzzle(CLASSIC, turned(plain.givens, rng))
    assert isinstance(prove(problem_of(copy)), Unique)
    listed.append(f"{copy.givens_text} Notice board {len(listed)}")
    (HOME / "notice-board.txt").write_text("\n".join(listed) + "\n", encoding="utf-8")
    print(sum(map(len, files.values())), "and", len(listed) - 1)


if __name__ == "__main__":
    main()
