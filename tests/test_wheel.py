"""The wheel: what an installed bookmaker finds outside a checkout."""

from __future__ import annotations

import os
import re
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent

ASK = """
from bookmaker.display.items import Document, Page, Text
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.resources import shipped
from bookmaker.typeface import font_files
import bookmaker, sys
print(bookmaker.__file__)
print(shipped("layouts"))
print(shipped("fonts"))
assert all(file.is_file() for file in font_files().values())
assert pdf_bytes(Document("t", "", "", (Page(99, 99, (Text(9, 9, "7", "sans", 9),), "1"),))).startswith(b"%PDF-")
"""


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("wheel")
    build = [sys.executable, "-m", "build", "--wheel", "--no-isolation", "--outdir", str(folder), str(ROOT)]
    run = subprocess.run(build, capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stdout + run.stderr
    (wheel,) = folder.glob("*.whl")
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(folder / "site")
    return folder / "site"


@pytest.mark.parametrize("folder", ["fonts", "layouts"])
def test_layouts_and_fonts_are_inside(unpacked: Path, folder: str) -> None:
    here = {path.relative_to(ROOT).as_posix() for path in (ROOT / folder).rglob("*") if path.is_file()}
    assert here
    shipped = unpacked / "bookmaker" / "_shipped"
    assert {path.relative_to(shipped).as_posix() for path in (shipped / folder).rglob("*") if path.is_file()} == here


def test_the_licence_of_the_fonts_goes_with_them(unpacked: Path) -> None:
    assert "ParaType" in (unpacked / "bookmaker/_shipped/fonts/LICENCE.txt").read_text(encoding="utf-8")


def test_what_comes_with_a_package(unpacked: Path) -> None:
    """The licence in the package and beside its metadata, and the mark of a typed one (PEP 561, PEP 639)."""
    assert (unpacked / "bookmaker/LICENCE.txt").read_text(encoding="utf-8").startswith("MIT License\n")
    assert (unpacked / "bookmaker/py.typed").is_file()
    (metadata,) = unpacked.glob("bookmaker-*.dist-info/METADATA")
    said = metadata.read_text(encoding="utf-8")
    for line in ("License-Expression: MIT", "License-File: bookmaker/LICENCE.txt", "License-File: fonts/LICENCE.txt"):
        assert f"\n{line}\n" in said
    assert re.search(r"^Author: \S", said, re.MULTILINE) and re.search(r"^Keywords: \S", said, re.MULTILINE)
    assert (metadata.parent / "licenses/bookmaker/LICENCE.txt").is_file()


def test_it_runs_as_a_module(unpacked: Path, tmp_path: Path) -> None:
    environment = {**os.environ, "PYTHONPATH": str(unpacked)}
    command = [sys.executable, "-m", "bookmaker", "layouts"]
    run = subprocess.run(command, cwd=tmp_path, env=environment, capture_output=True, text=True, check=False)
    assert run.returncode == 0 and "a4-book" in run.stdout, run.stderr


def test_they_are_found_outside_the_checkout(unpacked: Path, tmp_path: Path) -> None:
    environment = {**os.environ, "PYTHONPATH": str(unpacked)}
    run = subprocess.run(
        [sys.executable, "-c", ASK], cwd=tmp_path, env=environment, capture_output=True, text=True, check=False
    )
    assert run.returncode == 0, run.stderr
    assert all(Path(line).is_relative_to(unpacked) for line in run.stdout.splitlines())
    assert len(run.stdout.splitlines()) == 3


def test_tests_and_tools_stay_at_home(unpacked: Path) -> None:
    assert {path.name.split("-")[0] for path in unpacked.iterdir()} == {"bookmaker"}
