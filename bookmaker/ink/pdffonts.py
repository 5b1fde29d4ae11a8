"""Fonts in a PDF: which glyph codes show a text.

In: a text and a font's name. Out: for each embedded subset font that the text needs, its resource name and the
operator that shows the glyphs, kerned. reportlab subsets the TrueType files and embeds what was used.
"""

from __future__ import annotations

from functools import cache
from typing import Any

from reportlab.pdfbase.ttfonts import TTFont

from bookmaker.ink.pdffile import PdfFile
from bookmaker.typeface import font_files, typeface

_KEPT = 2000
"""Texts whose operators are kept: digits, rules and labels come again and again."""


@cache
def embeddable(name: str) -> Any:
    """The font as reportlab wants it; only the characters that are used get into a file."""
    return TTFont(f"bookmaker {name}", str(font_files()[name]), asciiReadable=False, shapable=False)


class GlyphCodes:
    """The codes of one file's fonts.

    reportlab gives each character one code in one of the subsets, 256 to a subset, spaces always code 32.
    """

    def __init__(self, file: PdfFile) -> None:
        self._document = file
        self._kept: dict[tuple[str, str], list[tuple[str, str]]] = {}

    def shown(self, text: str, name: str) -> list[tuple[str, str]]:
        """The runs of a text in one subset font each: (resource name, “[<codes> kern <codes> …] TJ”)."""
        kept = self._kept.get((text, name))
        if kept is None:
            if len(self._kept) > _KEPT:
                self._kept.clear()
            kept = self._kept[text, name] = self._runs(text, name)
        return kept

    def _runs(self, text: str, name: str) -> list[tuple[str, str]]:
        font, kerns = embeddable(name), typeface(name).kerns
        runs = []
        left = ""
        characters = iter(text)
        for subset, codes in font.splitString(text, self._document):
            shown = []
            stretch = bytearray()
            for code, character in zip(codes, characters, strict=False):
                if left and (kern := kerns[left, character]):
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
