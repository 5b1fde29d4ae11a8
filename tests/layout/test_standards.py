"""PDFs put to veraPDF. For screens: PDF/UA-1 (ISO 14289-1) in every layout, PDF/A-2u (ISO 19005-2) in some. For the
press: PDF/A-1b (ISO 19005-1), from which PDF/X-1a differs in nothing that these pages have.

The validator is not part of the project; where it or Java is lacking, the test is skipped.
"""

from __future__ import annotations

import shutil
import subprocess
from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import load_layout, press_sheets
from bookmaker.layout.sheets.chart import compose_chart
from tests.layout.pinned import cover, crib, pinned_document
from tests.layout.test_pages import MAKERS, document

PDFCHECK = next(
    (
        found
        for above in Path(__file__).resolve().parents
        if (found := above / "shared" / "tools" / "pdfcheck" / "pdfcheck").exists()
    ),
    None,
)


pytestmark = [
    pytest.mark.slow,
    pytest.mark.skipif(PDFCHECK is None, reason="no ../shared/tools/pdfcheck, which runs veraPDF"),
    pytest.mark.skipif(shutil.which("java") is None, reason="veraPDF needs Java"),
]


@pytest.mark.parametrize("flavour", ["ua1", "2u"])
def test_files_for_screens_keep_the_standards(flavour: str, tmp_path: Path) -> None:
    names = MAKERS if flavour == "ua1" else ("a4-large-print full", "letter-handout contest", "a4-handout key foot")
    made = {name.replace(" ", "-"): document(name) for name in names}
    made |= {"small": pinned_document(), "crib": crib(), "chart": compose_chart()}
    for name, one in made.items():
        (tmp_path / f"{name}.pdf").write_bytes(pdf_bytes(one))
    assert_complies(flavour, tmp_path)


def test_files_for_the_press_can_be_archived(tmp_path: Path) -> None:
    day = date(2026, 3, 14)
    layout = load_layout("a4-tear-out")
    (tmp_path / "pad.pdf").write_bytes(
        pdf_bytes(press_sheets(replace(document("a4-tear-out book"), created=day), layout), press=True)
    )
    (tmp_path / "cover.pdf").write_bytes(pdf_bytes(replace(cover(), created=day), press=True))
    assert_complies("1b", tmp_path)


def assert_complies(flavour: str, folder: Path) -> None:
    files = sorted(map(str, folder.glob("*.pdf")))
    done = subprocess.run([str(PDFCHECK), flavour, *files], capture_output=True, text=True, check=False)
    assert done.stdout.count(" complies, ") == len(files), done.stdout + done.stderr
