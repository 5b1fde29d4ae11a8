"""Makes `demo_book/` again: `python -m tests.makers.demo [ID …]` draws each recipe and keeps the best.

The best draw is reached by logic, close to the middle of the band wished for, and spare with givens. Draws are seeded,
so the same code makes the same book; a change of the grade's cut points may choose other draws.
"""

from __future__ import annotations

import re
import sys
from pathlib import Path

from bookmaker.grade.bands import CUTS, family_of
from tests.makers.demo_recipes import CHAPTERS
from tests.makers.draw import Drawn, Recipe, draw
from tests.makers.typed import typed_puzzle

DEMO = Path(__file__).resolve().parents[2] / "demo_book"


def best(recipe: Recipe) -> Drawn:
    """The draw to keep. Raises ValueError where none came out."""
    drawn = [d for seed in range(recipe.draws) if (d := draw(recipe, seed)) is not None]
    if not drawn:
        raise ValueError(f"no draw of “{recipe.id}” came out")
    return min(drawn, key=lambda d: _distance(recipe, d))


def _distance(recipe: Recipe, drawn: Drawn) -> tuple[float, ...]:
    """How far a draw is from what was wished for: first by logic at all, then the band, then givens and effort."""
    effort, band = drawn.grade.effort, drawn.grade.band
    wished = middle_of_band(family_of(drawn.puzzle), recipe.band)
    return not drawn.grade.path.reached, abs(band - recipe.band), max(effort, wished) / min(effort, wished)


def middle_of_band(family: str, band: int) -> float:
    """An effort well inside a band of the family."""
    cuts = CUTS[family]
    low = cuts[band - 2] if band > 1 else cuts[0] / 2
    high = cuts[band - 1] if band < 5 else cuts[-1] * 1.6
    return (low * high) ** 0.5


def main(ids: list[str]) -> None:
    """Draw the recipes named, or all, and write each chapter's file; puzzles not named stay as they are."""
    unknown = set(ids) - {recipe.id for chapter in CHAPTERS for recipe in chapter.recipes}
    if unknown:
        sys.exit(f"no recipe: {', '.join(sorted(unknown))}")
    for chapter in CHAPTERS:
        file = DEMO / chapter.file
        kept = _items(file.read_text(encoding="utf-8")) if file.exists() else {}
        for recipe in chapter.recipes:
            if recipe.id in ids or not ids:
                drawn = best(recipe)
                print(_line(drawn), flush=True)
                kept[recipe.id] = typed_puzzle(drawn)
        items = [kept[recipe.id] for recipe in chapter.recipes if recipe.id in kept]
        file.write_text("\n".join(items), encoding="utf-8")


def _items(text: str) -> dict[str, str]:
    """The items of a chapter's file by id."""
    parts = re.split(r"(?m)^(?=- id: )", text)[1:]
    return {part.split(maxsplit=3)[2]: part.rstrip() + "\n" for part in parts}


def _line(drawn: Drawn) -> str:
    recipe, hardest = drawn.recipe, max(drawn.grade.path.steps, key=lambda step: step.rung)
    rules = ", ".join(rule.kind for rule in drawn.puzzle.rules) or "classic"
    return (
        f"{recipe.id:18} {rules:26} wished {recipe.band} got {drawn.grade.band} effort {drawn.grade.effort:6.0f} "
        f"givens {sum(map(bool, drawn.puzzle.givens)):2} hardest {hardest.reason.technique} {hardest.reason.kind}"
        f"{'' if drawn.grade.path.reached else ' (not reached)'}"
    )


if __name__ == "__main__":
    main(sys.argv[1:])
