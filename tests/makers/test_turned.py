"""A puzzle seen another way is the same puzzle: one solution, and the same effort."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
import yaml

from bookmaker.manifest import load
from bookmaker.proof import Proof, prove_all
from tests.makers.turned import WAYS, seen, ways_of

DEMO = Path(__file__).resolve().parents[2] / "demo_book"


def entries() -> list[dict[str, Any]]:
    files = sorted(file for file in DEMO.glob("*.yaml") if file.name != "book.yaml")
    return [entry for file in files for entry in yaml.load(file.read_text(encoding="utf-8"), yaml.BaseLoader)]


def proven(folder: Path, puzzles: list[dict[str, Any]]) -> tuple[Proof, ...]:
    puzzles = [puzzle | {"id": str(number)} for number, puzzle in enumerate(puzzles)]
    (folder / "many.yaml").write_text(json.dumps(puzzles), encoding="utf-8")
    (folder / "book.yaml").write_text("book: {title: Many}\npuzzles: [include: many.yaml]\n", encoding="utf-8")
    return prove_all(load(folder).entries)


@pytest.mark.slow
def test_each_demo_puzzle_is_the_same_seen_another_way(tmp_path: Path) -> None:
    plain = entries()
    turned = [seen(entry, number % ways_of(entry)) for number, entry in enumerate(plain)]
    assert sum(before != after for before, after in zip(plain, turned, strict=True)) > 35
    for one, other in zip(proven(tmp_path, plain), proven(tmp_path, turned), strict=True):
        assert one.grade and other.grade, one.entry.title
        assert other.grade.effort == pytest.approx(one.grade.effort, rel=0.01), one.entry.title


def test_eight_ways_and_back_again() -> None:
    entry = next(entry for entry in entries() if entry["id"] == "rivets")
    assert len({json.dumps(seen(entry, way)) for way in range(WAYS)}) == WAYS
    again, plain = seen(entry, WAYS), entry | {"givens": "".join(entry["givens"].split())}
    assert again | {"givens": "".join(again["givens"].split())} == plain
