"""Writes another archive like `demo_book/archive/` in its place: `python -m tests.makers.demo_archive`.

An archive as a club might have one: 150 puzzles of all kinds, with setters, tags, dates, permissions and a list of
classics. The puzzles are drafted from seeds, so that every band has its share. Setters, titles and occasions are made
up.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from random import Random

from bookmaker.draft.attempt import Drafted, attempt
from bookmaker.manifest.written import puzzle_lines
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import CLASSIC, Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle, digits_text
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from bookmaker.wishes.rulewishes import by_chance
from bookmaker.wishes.span import Span
from bookmaker.wishes.wish import Wish
from tests.grade.turns import turned

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

ATTEMPTS = 12
PER_KIND = 4
PLAIN = 14
SIX = 5
LISTED = 12


def drawn(kind: str, number: int, grid: Grid) -> tuple[RuledPuzzle, Solution] | None:
    """A puzzle of a kind (“” for a classic) that can be solved by logic, of the band of its turn if one comes soon."""
    band = BANDS[(number + sum(map(ord, kind))) % len(BANDS)]
    wish = Wish(
        grid=grid,
        rules=(by_chance(kinds()[kind], grid),) if kind else (),
        bands=Span(band, band),
        refused=frozenset({"what-if"}) if band < len(BAND_NAMES) else frozenset(),
        seed=number,
    )
    made = (attempt(wish, each) for each in range(ATTEMPTS))
    found = next((each for each in made if isinstance(each, Drafted) and not each.amiss), None)
    return (found.puzzle, found.solution) if found else None


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
    body = puzzle_lines(puzzle, {"id": "-"})[1:]
    lines += [f"  solution: {digits_text(solution)}"] if rng.random() < 0.25 else []
    return "\n".join(lines + body) + "\n"


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
