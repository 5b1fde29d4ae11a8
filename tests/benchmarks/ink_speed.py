"""How long a page takes: drawing it in each ink, and reading it back in preflight.

    python tests/benchmarks/ink_speed.py [COPIES]

The demo book is composed once; its pages, COPIES times over (default 10), are drawn as PDF and inspected. SVG and PNG
are drawn once a page. Processor time.
"""

from __future__ import annotations

import resource
import sys
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from time import process_time
from typing import TypeVar

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.book import make_book
from bookmaker.display.items import Document, Group, Item, Link
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.png import png_bytes
from bookmaker.ink.svg import svg_text
from bookmaker.layout import compose, load_layout
from bookmaker.manifest import load
from bookmaker.preflight import inspect
from bookmaker.proof import prove_all

T = TypeVar("T")


def timed(what: str, pages: int, work: Callable[[], T]) -> T:
    """Do the work and print its time a page."""
    began = process_time()
    made = work()
    print(f"{what:<12} {(process_time() - began) / pages * 1000:8.2f} ms a page")
    return made


def without_links(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """Copies of a page have no anchors, so nothing may lead to them."""
    kept = [item for item in items if not isinstance(item, Link)]
    return tuple(replace(item, items=without_links(item.items)) if isinstance(item, Group) else item for item in kept)


def main(copies: int) -> None:
    proofs = prove_all((manifest := load(ROOT / "demo_book")).entries)
    book = compose(make_book(manifest, proofs), load_layout("a4-book"))
    pdf_bytes(book)  # fonts are read once
    pages = tuple(replace(page, items=without_links(page.items), anchors=()) for page in book.pages) * copies
    print(f"{len(book.pages)} pages, {copies} times over")
    file = timed("PDF", len(pages), lambda: pdf_bytes(Document("t", "", "", pages)))
    timed("preflight", len(pages), lambda: inspect(file, "book.pdf", proofs))
    timed("SVG", len(book.pages), lambda: [svg_text(page) for page in book.pages])
    for dpi in (40, 150):
        timed(f"PNG {dpi} dpi", len(book.pages), lambda: [png_bytes(page, dpi) for page in book.pages])  # noqa: B023
    once = len(pdf_bytes(book)) / 1000
    print(f"file size    {len(file) / len(pages) / 1000:8.2f} kB a page, {once:.0f} kB for the book once")
    print(f"peak memory  {resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1000:8.0f} MB")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 10)
