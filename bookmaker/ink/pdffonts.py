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

_SHORT = 3
"""Texts up to this length (digits, totals) come again and again; their operators are kept."""


@cache
def embeddable(name: str) -> Any:
    """The font as reportlab wants it; only the characters that are used get into a file."""
    font = TTFont(f"bookmaker {name}", str(font_files()[name]), asciiReadable=False, shapable=False)
    registerFont(font)
    return font


class GlyphCodes:
    """The codes of one file's fonts.

    reportlab gives each character one code in one of the subsets, 256 to a subset, spaces always code 32.
    """

    def __init__(self, canvas: Any) -> None:
        self._document = canvas._doc
        self._kept: dict[tuple[str, str], list[tuple[str, str]]] = {}

    def shown(self, text: str, name: str) -> list[tuple[str, str]]:
        """The runs of a text in one subset font each: (resource name, “[<codes> kern <codes> …] TJ”)."""
        if len(text) > _SHORT:
            return self._runs(text, name)
        key = text, name
        if key not in self._kept:
            self._kept[key] = self._runs(text, name)
        return self._kept[key]

    def _runs(self, text: str, name: str) -> list[tuple[str, str]]:
        font, face = embeddable(name), typeface(name)
        runs = []
        left = ""
        characters = iter(text)
        for subset, codes in font.splitString(text, self._document):
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
            runs.append((font.getSubsetInternalName(subset, self._document), operator))
        return runs
