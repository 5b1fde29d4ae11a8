"""Preflight: a finished PDF looked at by fresh eyes before it goes to press.

In: a PDF file; with proofs, also the book that should stand in it. Out: troubles.
"""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from pathlib import Path
from typing import Any

from pypdf import PdfReader
from pypdf.errors import PyPdfError

from bookmaker.preflight.against import compare
from bookmaker.preflight.checks import Inspection
from bookmaker.preflight.grids import PrintedGrid, grids_on
from bookmaker.preflight.painting import painted
from bookmaker.preflight.pdffont import PdfFont
from bookmaker.proof.model import Proof
from bookmaker.trouble import Place, Trouble

__all__ = ["PrintedGrid", "grids_in", "inspect", "preflight"]


def preflight(path: Path, proofs: Sequence[Proof] | None = None) -> tuple[Trouble, ...]:
    """Inspect a file. Raises OSError if it cannot be read."""
    return inspect(path.read_bytes(), str(path), proofs)


def inspect(content: bytes, file: str, proofs: Sequence[Proof] | None = None) -> tuple[Trouble, ...]:
    """What is wrong with a PDF that is, or will be, the file of that name; with `proofs`, read its grids back too."""
    try:
        reader = PdfReader(BytesIO(content))
        inspection = Inspection(reader, file)
        fonts: dict[Any, PdfFont] = {}
        printed: list[PrintedGrid] = []
        for number, page in enumerate(reader.pages, start=1):
            items = list(painted(page, fonts))
            inspection.page(number, page, items)
            printed += grids_on(number, items)
    except (PyPdfError, KeyError, ValueError, TypeError, AttributeError, IndexError, RecursionError) as reason:
        hint = "print it again, or open it in a viewer and see whether it is damaged"
        return (Trouble(Place(file), "unreadable", f"this is no PDF that can be read ({reason})", hint),)
    found = inspection.troubles()
    return found if proofs is None else (*found, *compare(printed, proofs, file))


def grids_in(content: bytes) -> tuple[PrintedGrid, ...]:
    """All grids and keys that are printed in a PDF, in order."""
    fonts: dict[Any, PdfFont] = {}
    pages = enumerate(PdfReader(BytesIO(content)).pages, start=1)
    return tuple(grid for number, page in pages for grid in grids_on(number, painted(page, fonts)))
