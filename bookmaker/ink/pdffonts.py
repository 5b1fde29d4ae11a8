"""Fonts in a PDF: which glyph codes show a text.

In: a text and a font's name. Out: for each embedded subset font that the text needs, its resource name and the
operator that shows the glyphs, kerned. reportlab subsets the TrueType files and embeds what was used.
"""

from __future__ import annotations

from functools import cache
from typing import Any

from reportlab.pdfbase.pdfmetrics import registerFont
from reportlab.pdfbase.ttfonts import TTFont

from bookmaker.typeface import font_files, typeface


@cache
def embeddable(name: str) -> Any:
    """The font as reportlab wants it; only the characters that are used get into a file."""
    font = TTFont(f"bookmaker {name}", str(font_files()[name]), asciiReadable=False, shapable=False)
    registerFont(font)
    return font


def glyph_codes(canvas: Any, text: str, name: str) -> list[tuple[str, str]]:
    """The runs of a text in one subset font each: (resource name, “[<codes> kern <codes> …] TJ”).

    reportlab gives each character one code in one of the subsets, 256 to a subset, spaces always code 32.
    """
    font, face, document = embeddable(name), typeface(name), canvas._doc
    runs = []
    left = ""
    characters = iter(text)
    for subset, codes in font.splitString(text, document):
        shown = []
        stretch = bytearray()
        for code, character in zip(codes, characters, strict=False):
            kern = face.kern(left, character) if left else 0.0
            if kern:
                if stretch:
                    shown.append(f"<{stretch.hex()}>")
                    stretch.clear()
                shown.append(f"{-1000 * kern:.0f}")
            stretch.append(code)
            left = character
        shown.append(f"<{stretch.hex()}>")
        operator = f"[{''.join(shown)}] TJ" if len(shown) > 1 else f"{shown[0]} Tj"
        runs.append((font.getSubsetInternalName(subset, document), operator))
    return runs
