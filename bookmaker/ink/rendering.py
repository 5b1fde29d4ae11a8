"""A page as a picture file of the kind its name asks for.

In: a page and a file name. Out: bytes.
"""

from __future__ import annotations

from pathlib import PurePath

from bookmaker.display.items import Document, Page
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.pixels import page_pictures, png_bytes
from bookmaker.ink.svg import svg_text

KINDS = (".svg", ".png", ".pdf")


def picture_bytes(page: Page, file: PurePath, title: str, dpi: float = 300) -> bytes:
    """The page as SVG, PNG (at `dpi`) or PDF, by the end of the name. Raises ValueError for any other end."""
    match file.suffix.lower():
        case ".svg":
            return svg_text(page).encode("utf-8")
        case ".png":
            (picture,) = page_pictures(pdf_bytes(Document(title, "", "", (page,))), dpi)
            return png_bytes(picture, dpi)
        case ".pdf":
            return pdf_bytes(Document(title, "", "", (page,)))
        case other:
            raise ValueError(f"no picture can be written to a file that ends in “{other}”; known: {', '.join(KINDS)}")
