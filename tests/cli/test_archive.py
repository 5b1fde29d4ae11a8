"""The commands for archives, as typed: what they print, what they write, and how they end."""

from __future__ import annotations

import json
from pathlib import Path
from shutil import copytree

import pytest

from bookmaker.grade.bands import VERSION
from bookmaker.manifest import load
from tests.archive.test_catalogue import COPY, EASY, FILES
from tests.cli.running import run
from tests.manifest.books import GIVENS, write

SOLUTION = "534678912672195348198342567859761423426853791713924856961537284287419635345286179"
DEMO = Path(__file__).resolve().parents[2] / "demo_book"


@pytest.fixture
def club(tmp_path: Path) -> Path:
    write(tmp_path, FILES)
    return tmp_path


def test_the_list_and_its_files(club: Path) -> None:
    result = run("archive", club / "store", "--unprinted", "--csv", club / "t.csv", "--json", club / "t.json")
    assert result.exit_code == 0, result.output
    assert [line.split()[0] for line in result.stdout.splitlines()] == ["id", "two", "broken", "marked"]
    assert "one setter or several? “Old Heron”, “Old Herron”" in result.stderr
    assert (club / "t.csv").read_bytes().startswith(b"\xef\xbb\xbfid,title,setter")
    assert run("archive", club / "store", "--tag", "harbor").exit_code == 1
    assert run("archive", club / "nowhere").exit_code == 2


def test_a_faulty_archive_ends_with_one_and_lists_the_rest(club: Path) -> None:
    write(club, {"store/z.yaml": "- id: bad\n  givens: 12\n"})
    result = run("archive", club / "store")
    assert (result.exit_code, "one" in result.stdout, "z.yaml:2:11" in result.stderr) == (1, True, True)


def test_intake_writes_good_rows_and_tells_of_bad_ones(club: Path) -> None:
    write(club, {"t.csv": f"id;setter;givens\nnew;Wick;{EASY}\nbad;Wick;12\n"})
    result = run("intake", club / "t.csv", "--out", club / "store")
    assert result.exit_code == 1
    assert "row 3, “givens”" in result.stderr
    assert "semicolons" in result.stderr
    assert (club / "store" / "t.yaml").read_text().startswith("- id: new\n  setter: Wick\n  givens: |\n    5 3 .")
    again = run("intake", club / "t.csv", "--out", club / "store")
    assert "one row passed over" in again.stdout
    assert not (club / "store" / "t-2.yaml").exists()


def test_twins_print_the_move(club: Path) -> None:
    result = run("twins", club / "store", "--against", club / "printed.yaml", "--json", club / "twins.json")
    assert result.exit_code == 1
    assert "becomes “one”" in result.stdout
    assert "digits 1 → " in result.stdout
    assert run("twins", club / "store").exit_code == 0


@pytest.mark.parametrize(("edition", "code"), [("screen", 0), ("press", 1)])
def test_typeset_tells_of_disguises_and_the_press_takes_none(edition: str, code: int, tmp_path: Path) -> None:
    puzzles = f"- id: a\n  givens: {EASY}\n- id: b\n  givens: {COPY}\n"
    write(tmp_path, {"book.yaml": f"book: {{title: T, permission: p, hints: no}}\npuzzles:\n{puzzles}"})
    result = run("typeset", tmp_path, "--out", tmp_path / "out", "--edition", edition, "--date", "2026-03-14")
    assert (result.exit_code, "the same puzzle as “a”: " in result.stderr) == (code, True)
    assert "look_alike" in run("proof", tmp_path, "--notes", "--json", "-").stdout


def test_what_must_not_be_printed(tmp_path: Path) -> None:
    puzzles = (
        f"- id: no\n  permission: {{state: refused, by: Wick}}\n  givens: {EASY}\n"
        f"- id: asked\n  permission: {{state: asked}}\n  givens: {GIVENS}\n"
    )
    write(tmp_path, {"book.yaml": f"book: {{title: T, permission: p, hints: no}}\npuzzles:\n{puzzles}"})
    for command in (["typeset", tmp_path], ["handout", tmp_path, "--pick", "no"]):
        result = run(*command, "--out", tmp_path / "out.pdf")
        assert (result.exit_code, "refused by Wick" in result.stderr) == (1, True)
    assert run("handout", tmp_path, "--pick", "asked", "--out", tmp_path / "sheet.pdf").exit_code == 0
    assert run("proof", tmp_path).exit_code == 0


def test_another_solution_than_the_setters_is_told_at_its_cells(tmp_path: Path) -> None:
    """A puzzle that is unique may still be another than the one that was sent: the setter's solution shows it."""
    claimed = SOLUTION[:2] + "8" + SOLUTION[3:]
    puzzle = f"- id: a\n  solution: {claimed}\n  givens: {EASY}\n"
    write(tmp_path, {"book.yaml": f"book: {{title: T, permission: p}}\npuzzles:\n{puzzle}"})
    result = run("proof", tmp_path)
    assert result.exit_code == 1
    assert "they differ in r1c3" in result.stderr
    assert ":4:15:" in result.stderr
    assert run("typeset", tmp_path, "--out", tmp_path / "out").exit_code == 1
    assert not (tmp_path / "out").exists()


BRIEF = """\
archive: store
brief:
  title: Two of them
  puzzles: 2
  bands: {Climb: none}
"""


@pytest.fixture
def stocked(club: Path) -> Path:
    """The same archive with two more puzzles that may be printed, one of them hard, and a brief."""
    more = EASY[:2] + SOLUTION[2:6] + EASY[6:]
    write(
        club,
        {"store/more.yaml": f"- id: more\n  givens: {more}\n- id: hard\n  givens: {GIVENS}\n", "brief.yaml": BRIEF},
    )
    return club


def test_assemble_writes_a_book_that_is_proved_as_it_is(stocked: Path) -> None:
    club = stocked
    result = run("assemble", club / "brief.yaml", "--out", club / "mine")
    assert result.exit_code == 0, result.output
    assert {file.name for file in (club / "mine").iterdir()} == {"book.yaml", "reasons.md", "curve.svg"}
    assert run("proof", club / "mine").exit_code == 0
    first = {file.name: file.read_bytes() for file in (club / "mine").iterdir()}
    assert run("assemble", club / "brief.yaml", "--out", club / "mine").exit_code == 1
    assert run("assemble", club / "brief.yaml", "--out", club / "mine", "--replace").exit_code == 0
    assert {file.name: file.read_bytes() for file in (club / "mine").iterdir()} == first
    other = run("assemble", club / "brief.yaml", "--out", club / "other", "--another")
    assert other.exit_code == 1
    assert "not 2 different collections" in other.stderr


def test_a_brief_that_cannot_be_met_says_why_and_writes_nothing(stocked: Path) -> None:
    club = stocked
    write(club, {"brief.yaml": BRIEF.replace("puzzles: 2", "puzzles: 3")})
    result = run("assemble", club / "brief.yaml", "--out", club / "mine")
    assert result.exit_code == 1
    assert not (club / "mine").exists()
    for said in ("these demands clash", "brief.yaml:4:12: puzzles: 3", "bands: Climb: none", "the nearest collection"):
        assert said in result.stderr


def test_a_collection_goes_by_the_clubs_own_times(stocked: Path) -> None:
    """With a calibration by which the hard puzzle is no Climb, a brief without Climbs takes it, and puts it first."""
    club = stocked
    write(club, {"brief.yaml": BRIEF.replace("puzzles: 2", "puzzles: 3")})
    (hard,) = (entry for entry in load(club / "store" / "more.yaml").entries if entry.id == "hard")
    timed = f"grades: {VERSION}\npuzzles:\n- {{puzzle: {hard.fingerprint}, difficulty: 1.2}}\n"
    write(club, {"calibration.yaml": timed})
    option = ("--calibration", club / "calibration.yaml")
    assert run("assemble", club / "brief.yaml", "--out", club / "mine", *option).exit_code == 0
    told = json.loads(run("proof", club / "mine", "--json", "-", *option).stdout)["puzzles"]
    assert (told[0]["id"], told[0]["difficulty"]) == ("hard", 1.2)
    assert len(told) == 3
    listed = run("archive", club / "store", "--band", "Stroll", *option)
    assert "hard" in [line.split()[0] for line in listed.stdout.splitlines()]


def test_pages_are_held_to_the_true_count(stocked: Path) -> None:
    """With one puzzle there are twelve pages as composed, with two there are more: so one is chosen."""
    club = stocked
    write(
        club,
        {"brief.yaml": BRIEF.replace("puzzles: 2", "puzzles: 1 to 2\n  prefer: [tag harbour]\n  pages: at most 12")},
    )
    result = run("assemble", club / "brief.yaml", "--out", club / "mine")
    assert result.exit_code == 0, result.output
    assert "| pages: at most 12 | 12 |" in (club / "mine" / "reasons.md").read_text()
    write(club, {"brief.yaml": BRIEF.replace("puzzles: 2", "puzzles: 2\n  pages: at most 2")})
    result = run("assemble", club / "brief.yaml", "--out", club / "short")
    assert (result.exit_code, "pages as composed" in result.stderr) == (1, True)


def test_a_layout_beside_the_brief_is_found_from_the_new_book(stocked: Path) -> None:
    club = stocked
    brief = BRIEF.replace("puzzles: 2", "puzzles: 2\n  pages: at most 40") + "book: {layout: mine.yaml}\n"
    write(club, {"brief.yaml": brief, "mine.yaml": "based-on: a5-book\n"})
    result = run("assemble", club / "brief.yaml", "--out", club / "new" / "mine")
    assert result.exit_code == 0, result.output
    assert "layout: ../../mine.yaml" in (club / "new" / "mine" / "book.yaml").read_text()
    assert run("proof", club / "new" / "mine").exit_code == 0


def test_the_demo_archive_and_its_briefs(tmp_path: Path) -> None:
    copytree(DEMO, tmp_path / "demo", ignore=lambda folder, names: [name for name in names if name.endswith(".pdf")])
    for brief in ("second-tide", "season", "contest"):
        result = run("assemble", tmp_path / "demo" / "briefs" / f"{brief}.yaml", "--out", tmp_path / brief)
        assert result.exit_code == 0, result.output
        assert "proven best" in result.stdout
    against = run("twins", tmp_path / "second-tide" / "book.yaml", "--against", DEMO / "book.yaml", "--exact")
    assert against.exit_code == 0
    listed = run("archive", tmp_path / "demo" / "archive")
    assert listed.stderr.endswith("150 puzzles\n")
    copies = run("twins", tmp_path / "demo" / "archive", "--exact")
    assert (copies.exit_code, copies.stdout.count("the same: ")) == (1, 1)
