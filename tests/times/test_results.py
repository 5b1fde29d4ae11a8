"""Tables of results in every shape they are kept in, and what is said of those that can't be read."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.source.diagnostics import BookErrors
from bookmaker.times import Results, read_results
from tests.times.clubs import graded, kept

WIDE = "Solver,puzzle-1,Puzzle B,3\nAda,12:30,9,-\nBo,,> 45,8.5\n"
SAME = [
    ("Ada", 0, 12.5, True),
    ("Ada", 1, 9.0, True),
    ("Bo", 0, None, False),
    ("Bo", 1, 45.0, False),
    ("Bo", 2, 8.5, True),
]
"""What each of the tables below says: solver, puzzle, minutes, finished."""


def read(folder: Path, text: str | bytes) -> Results:
    return read_results(kept(folder, text), [proof.entry for proof in graded(12)])


def said(results: Results) -> list[tuple[str, int, float | None, bool]]:
    return sorted((results.solvers[a.solver], a.puzzle, a.minutes, a.finished) for a in results.attempts)


@pytest.mark.parametrize(
    "text",
    [
        WIDE,
        WIDE.replace(",", ";"),
        WIDE.replace(",", "\t"),
        WIDE.replace(",", ";").replace("8.5", "8,5"),
        WIDE.replace("8.5", '"8,5"'),
        WIDE.replace("\n", "\r\n"),
        "\ufeff" + WIDE,
        WIDE.encode("utf-16"),
        "sep=;\n" + WIDE.replace(",", ";"),
        WIDE.replace("\n", ",,\n") + ",,,,,\n\n",  # as spreadsheets leave it: more cells and empty rows
        "\n\n" + WIDE,
        "Puzzle,Ada,Bo\n1,12:30,\n2,9 min,over 45\n#3,–,8.5\n",
        "puzzle-1 and on,Ada,Bo\nPUZZLE-1,12:30,\npuzzle b,9,>45\nno. 3,-,8m30s\n",
        "Minutes,Name,Puzzle\n12:30,Ada,1\n9,Ada,2\n,Bo,1\n>45,Bo,2\n8.5,Bo,3\n",
        'who,no.,time\nAda,1,12:30\n"Ada",2,9\nBo,1\nBo,2,>45\nBo,"Puzzle C",8.5\n',
    ],
)
def test_tables_that_say_the_same(tmp_path: Path, text: str | bytes) -> None:
    assert said(read(tmp_path, text)) == SAME


def test_names_of_older_spreadsheet_programs(tmp_path: Path) -> None:
    assert read(tmp_path, "Solver;1\nZoë;5\n".encode("cp1252")).solvers == ("Zoë",)


def test_solvers_may_be_numbers_too(tmp_path: Path) -> None:
    """Puzzles stand across, unless the corner says otherwise."""
    assert said(read(tmp_path, "Solver,1,2\n1,10,20\n2,30,40\n"))[1] == ("1", 1, 20.0, True)
    assert said(read(tmp_path, "Puzzle,1,2\n1,10,20\n2,30,40\n"))[1] == ("1", 1, 30.0, True)


@pytest.mark.parametrize(
    ("text", "places", "words"),
    [
        ("", ["0:0"], ["the table is empty"]),
        ("Solver,puzzle-1\nAda,-\n", ["0:0"], ["there is no time in the table"]),
        ("a,b\nc,d\n", ["1:1"], ["no puzzle of the book is named in the first row, nor in the first column"]),
        (
            "Solver,puzzle-1,puzzle-x,2,\nAda,fast,3,12:99,7\nBo,1,2\n,4,5,6\n",
            ["1:17", "2:5", "2:12", "2:18", "4:1"],
            [
                "the book has no puzzle “puzzle-x”",
                "“fast” is not a time",
                "“12:99” is not a time",
                "there is no name over this cell, in the first row",
                "there is no name at the beginning of this row",
            ],
        ),
        ("Solver,1,puzzle-1\nAda,3,4\nAda,5,6\n", ["1:10", "3:1"], ["stands here a second time"] * 2),
        ("solver,puzzle,minutes\nAda,1,3\nAda,Puzzle A,4\nAda\n", ["3:14", "4:1"], ["already", "too short"]),
        ('Solver,1\n"Ada,3\n', ["2:1"], ["the quotes that begin here are not closed on this line"]),
        ("Solver\0,1\nAda,3\n", ["0:0"], ["this is not a table of text"]),
    ],
)
def test_troubles_stand_at_their_cells(tmp_path: Path, text: str, places: list[str], words: list[str]) -> None:
    with pytest.raises(BookErrors) as raised:
        read(tmp_path, text)
    found = raised.value.diagnostics
    assert [f"{t.place.line}:{t.place.column}" for t in found] == places
    for diagnostic, word in zip(found, words, strict=True):
        assert word in diagnostic.text
        assert diagnostic.place.file == str(tmp_path / "results.csv")


def test_a_misspelt_puzzle_is_answered_with_the_nearest(tmp_path: Path) -> None:
    with pytest.raises(BookErrors) as raised:
        read(tmp_path, "Solver,puzle-2,1\nAda,3,4\n")
    assert raised.value.diagnostics[0].hint == "did you mean “puzzle-2”?"
