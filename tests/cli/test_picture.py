"""`bookmaker picture` and the contact sheet of `typeset`."""

from __future__ import annotations

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
    # pages of 119 points, four pairs of them across, 14 between the pairs: at 150 dots an inch
    assert Raster.open(tmp_path / "contact.png").width == pytest.approx((8 * 119.06 + 5 * 14) / 72 * 150, abs=1)
    assert not (folder / "printed" / "contact.png").exists()
