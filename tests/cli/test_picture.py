"""`bookmaker picture` and the contact sheet of `typeset`."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from PIL import Image as Raster

from bookmaker.preflight import inspect
from tests.cli.running import run
from tests.published import PULP_SOLVED

SOLUTION = PULP_SOLVED


def labels(file: Path) -> list[str]:
    """The digits of an SVG picture."""
    return re.findall(r'aria-label="(.)"', file.read_text(encoding="utf-8"))


def test_givens_and_solution_read_back_from_pdf(folder: Path, tmp_path: Path) -> None:
    plain, solved = tmp_path / "plain.pdf", tmp_path / "solved.pdf"
    assert run("picture", folder, "worked", "--out", plain).exit_code == 0
    assert run("picture", folder, "worked", "--out", solved, "--solved").exit_code == 0
    (grid,) = inspect(plain.read_bytes(), "plain.pdf").printed
    (key,) = inspect(solved.read_bytes(), "solved.pdf").printed
    assert (grid.kind, key.kind) == ("grid", "key")
    assert len("".join(grid.symbols)) == 30
    assert "".join(key.symbols) == SOLUTION


def test_a_step_shows_what_is_written_and_pencilled(folder: Path, tmp_path: Path) -> None:
    first, last = tmp_path / "first.svg", tmp_path / "last.svg"
    assert run("picture", folder, "worked", "--out", first, "--at", 0).exit_code == 0
    assert run("picture", folder, "worked", "--out", last, "--at", 51).exit_code == 0
    assert len(labels(first)) > 30 + 51  # each of 51 empty cells has at least one pencil mark
    assert "".join(labels(last)) == SOLUTION
    shade = 'fill="#e0e0e0"'
    assert first.read_text().count(shade) == 1 and shade not in last.read_text()


def test_png_says_how_fine_it_is(folder: Path, tmp_path: Path) -> None:
    file = tmp_path / "worked.PNG"
    assert run("picture", folder, "worked", "--out", file, "--dpi", 50).exit_code == 0
    picture = Raster.open(file)
    # 9 cells of 12 mm and 6 pt around them
    assert picture.width == picture.height == round((108 / 25.4 + 12 / 72) * 50)
    assert picture.info["dpi"] == pytest.approx((50, 50), abs=0.1)


@pytest.mark.parametrize(
    ("arguments", "code", "said"),
    [
        (("worked", "--out", "a.gif"), 2, ".svg, .png, .pdf"),
        (("worked", "--out", "a.svg", "--at", 52), 2, "“worked” is solved in 51 steps"),
        (("worked", "--out", "a.svg", "--at", 3, "--solved"), 2, "choose one"),
        (("worked",), 2, "--out"),
        (("wroked", "--out", "a.svg"), 1, "did you mean “worked”?"),
    ],
)
def test_wrong_usage(folder: Path, arguments: tuple[object, ...], code: int, said: str) -> None:
    result = run("picture", folder, *arguments)
    assert (result.exit_code, said in result.stderr) == (code, True)


def test_an_unproven_puzzle_has_no_steps(tmp_path: Path) -> None:
    (tmp_path / "book.yaml").write_text("book: {title: t}\npuzzles: [{id: bare, size: 4, givens: ................}]\n")
    result = run("picture", tmp_path, "bare", "--out", tmp_path / "a.svg", "--at", 0)
    assert result.exit_code == 1 and "more than one solution" in result.stderr
    assert run("picture", tmp_path, "bare", "--out", tmp_path / "a.svg").exit_code == 0


def test_contact_sheet(folder: Path, tmp_path: Path) -> None:
    result = run("typeset", folder, "--out", tmp_path, "--contact")
    assert result.exit_code == 0, result.output
    assert sorted(path.name for path in tmp_path.iterdir()) == ["book.pdf", "contact.png", "key.pdf"]
    # pages of A4 at 30 pixels an inch, four pairs of them across, 29 pixels between the pairs
    assert Raster.open(tmp_path / "contact.png").width == 8 * 249 + 5 * 29
    assert not (folder / "printed" / "contact.png").exists()


def test_key_moments_are_written_as_a_crib_shows_them(tmp_path: Path) -> None:
    """The start, every lettered moment by the number of its step, and the solution, in their order."""
    demo = Path(__file__).parents[2] / "demo_book"
    result = run("picture", demo, "delta", "--moments", "--out", tmp_path / "delta")
    assert result.exit_code == 0, result.output
    files = sorted(path.name for path in (tmp_path / "delta").iterdir())
    assert files[0] == "00-start.svg" and files[-1].endswith("-solution.svg")
    letters = [name.split("-")[1] for name in files[1:-1]]
    assert letters == [chr(ord("A") + at) for at in range(len(letters))] and len(letters) > 3
    told = json.loads(run("explain", demo, "delta", "--format", "json").stdout)
    numbers = {sentence["steps"][0] for p in told["passages"] for sentence in p["sentences"] if sentence["steps"]}
    assert {int(re.findall(r"step-(\d+)", name)[0]) for name in files[1:-1]} <= numbers
    result = run("picture", demo, "delta", "--moments", "--format", "png", "--dpi", 40, "--out", tmp_path / "png")
    assert {path.suffix for path in (tmp_path / "png").iterdir()} == {".png"}, result.output


def test_coordinates_are_drawn_on_request(folder: Path, tmp_path: Path) -> None:
    plain, numbered = tmp_path / "plain.svg", tmp_path / "numbered.svg"
    assert run("picture", folder, "worked", "--out", plain).exit_code == 0
    assert run("picture", folder, "worked", "--out", numbered, "--coordinates").exit_code == 0
    assert len(labels(numbered)) == len(labels(plain)) + 18
