"""One printing in another language than the book's own, and what can be printed at all."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from pypdf import PdfReader

from bookmaker.language import catalogue
from bookmaker.language.catalogues import LOCALES
from tests.cli.running import run

OTHERS = sorted(language for language in LOCALES if language.partition("-")[0] != "en")


def words(file: Path) -> str:
    return re.sub(r"\s+", " ", " ".join(page.extract_text() for page in PdfReader(file).pages))


def test_every_language_is_listed_and_complete() -> None:
    said = run("languages").stdout.splitlines()
    assert [line.split()[0] for line in said] == sorted(LOCALES)
    assert all(line.endswith(": complete") for line in said)


@pytest.mark.parametrize("language", OTHERS)
def test_a_handout_in_each_language(folder: Path, tmp_path: Path, language: str) -> None:
    file, said = tmp_path / "sheet.pdf", catalogue(language)
    result = run("handout", folder, "--pick", "worked", "--out", file, "--hints", "--language", language)
    assert result.exit_code == 0, result.output
    printed = words(file)
    for name in ("heading-answer-key", "name"):
        assert said.say(name).replace("\u00a0", " ") in printed
    assert PdfReader(file).trailer["/Root"]["/Lang"].partition("-")[0] == language
    assert catalogue("en").say("heading-answer-key") not in printed


def test_a_story_is_told_in_the_language_asked_for(folder: Path) -> None:
    for language in OTHERS:
        told = run("explain", folder, "worked", "--language", language)
        assert told.exit_code == 0, told.output
        assert told.stdout != run("explain", folder, "worked").stdout


def test_a_language_that_is_not_spoken_is_refused(folder: Path, tmp_path: Path) -> None:
    result = run("handout", folder, "--pick", "worked", "--out", tmp_path / "x.pdf", "--language", "tlh")
    assert result.exit_code == 2 and "tlh" in result.stderr
