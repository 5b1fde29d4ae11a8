"""`bookmaker times`, and the calibration that other commands take."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.cli.running import run
from tests.times.clubs import sheet

DEMO = Path(__file__).resolve().parents[2] / "demo_book"
CLASSICS = DEMO / "net-loft.yaml"


@pytest.fixture(scope="module")
def book(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The classics of the demo book and six of its pens, bound by themselves."""
    folder = tmp_path_factory.mktemp("club")
    for name in ("net-loft.yaml", "harbour.yaml"):
        (folder / name).write_text((DEMO / name).read_text(encoding="utf-8"), encoding="utf-8")
    includes = "puzzles:\n  - include: net-loft.yaml\n  - include: harbour.yaml\n"
    (folder / "book.yaml").write_text(f"book: {{title: Club, permission: ours}}\n{includes}", encoding="utf-8")
    return folder


def proven(book: Path, *options: object) -> dict[str, float]:
    report = json.loads(run("proof", book, "--json", "-", *options).stdout)
    return {puzzle["id"]: puzzle["difficulty"] for puzzle in report["puzzles"]}


def test_times_from_a_table_to_a_calibrated_book(book: Path, tmp_path: Path) -> None:
    graded = proven(book)
    ids = list(graded)
    wrong = ids[1]
    results = tmp_path / "results.csv"
    results.write_text(sheet([graded[id] for id in ids], ids, 12, 1, {1: 2.5}), encoding="utf-8")
    calibration = tmp_path / "calibration.yaml"
    told = run("times", book, results, "--out", calibration, "--limit", 90)
    assert told.exit_code == 0, told.output
    assert "rank correlation" in told.stdout
    assert "Misjudged by a band or more" in told.stdout
    after = proven(book, "--calibration", calibration)
    assert after[wrong] > graded[wrong] + 1
    assert list(after.values()) == sorted(after.values())
    assert list(after) != list(graded)
    printed = run("typeset", book, "--out", tmp_path / "out", "--text", "--calibration", calibration)
    assert printed.exit_code == 0, printed.output
    text = (tmp_path / "out" / "book.txt").read_text(encoding="utf-8")
    assert f"difficulty {str(after[wrong])[:3]}" in text


def test_times_as_json(book: Path, tmp_path: Path) -> None:
    graded = proven(book)
    results = tmp_path / "results.csv"
    results.write_text(sheet(list(graded.values()), list(graded), 9, 2), encoding="utf-8")
    told = json.loads(run("times", book, results, "--json", "-").stdout)
    assert told["solvers"] == 9
    assert {puzzle["id"]: puzzle["graded"] for puzzle in told["puzzles"]} == pytest.approx(graded, abs=2e-3)


def test_a_table_with_mistakes_ends_with_1_and_names_them(book: Path, tmp_path: Path) -> None:
    results = tmp_path / "results.csv"
    results.write_text("Solver;first-light;firstlight\nAda;soon;3\n", encoding="utf-8")
    told = run("times", book, results)
    assert told.exit_code == 1
    assert f"{results}:1:20: the book has no puzzle “firstlight”" in told.stderr
    assert f"{results}:2:5: “soon” is not a time" in told.stderr
