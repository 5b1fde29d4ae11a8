"""A font as it stands in a PDF: is it embedded, and what do its codes spell.

In: a font dictionary as pikepdf reads it. Out: name, embedding, and characters with their widths per em.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from struct import unpack_from
from typing import Any

import pikepdf

_SUBSET = re.compile(r"[A-Z]{6}\+")
_CHARS = re.compile(rb"beginbfchar(.*?)endbfchar", re.DOTALL)
_RANGES = re.compile(rb"beginbfrange(.*?)endbfrange", re.DOTALL)
_HEX = rb"<([0-9A-Fa-f\s]+)>"
_PAIR = re.compile(_HEX + rb"\s*" + _HEX)
_RANGE = re.compile(_HEX + rb"\s*" + _HEX + rb"\s*(?:" + _HEX + rb"|\[(.*?)\])", re.DOTALL)


LAST = 0xFFFF
"""The last code that two bytes can hold: a damaged file may name a range that ends far beyond it."""


@dataclass(frozen=True, slots=True)
class PdfFont:
    """`damaged` fonts have a program that cannot be read. `wide` ones have two bytes a code. `spelling` and `widths`
    are by code; unknown codes are half an em wide."""

    name: str
    embedded: bool
    damaged: bool
    subset: bool
    wide: bool
    spelling: dict[int, str]
    widths: dict[int, float]

    def shown(self, codes: bytes) -> list[tuple[int, str, float]]:
        """The glyphs of a string: code, character (“\ufffd” if the file does not say), width per em."""
        step = 2 if self.wide else 1
        found = []
        for at in range(0, len(codes) - step + 1, step):
            code = int.from_bytes(codes[at : at + step], "big")
            found.append((code, self.spelling.get(code, "\ufffd"), self.widths.get(code, 0.5)))
        return found


def read_font(font: Any) -> PdfFont:
    """A font from its dictionary, simple or composite. Parts that are missing or odd are taken as unknown."""
    wide = font.get("/Subtype") == "/Type0"
    holder = font["/DescendantFonts"][0] if wide else font
    descriptor = holder.get("/FontDescriptor", {})
    name = str(font.get("/BaseFont", "/unnamed"))[1:]
    embedded = font.get("/Subtype") == "/Type3" or any(f"/FontFile{kind}" in descriptor for kind in ("", "2", "3"))
    spelling = _spelling(font, wide)
    widths = _composite_widths(holder) if wide else _simple_widths(font)
    return PdfFont(
        _SUBSET.sub("", name), embedded, _is_damaged(descriptor), bool(_SUBSET.match(name)), wide, spelling, widths
    )


def _is_damaged(descriptor: Any) -> bool:
    """Is there a TrueType program whose tables are not where its directory says (OpenType 1.9, “Table directory”)?"""
    program = descriptor.get("/FontFile2")
    if not isinstance(program, pikepdf.Stream):
        return False
    data = program.read_bytes()
    if len(data) < 12:
        return True
    (tables,) = unpack_from(">H", data, 4)
    if not tables or 12 + 16 * tables > len(data):
        return True
    places = (unpack_from(">II", data, 12 + 16 * table + 8) for table in range(tables))
    return any(start + length > len(data) for start, length in places)


def _spelling(font: Any, wide: bool) -> dict[int, str]:
    stream = font.get("/ToUnicode")
    if not isinstance(stream, pikepdf.Stream):
        return {} if wide else {code: bytes([code]).decode("cp1252", "replace") for code in range(256)}
    table: dict[int, str] = {}
    data = stream.read_bytes()
    for block in _CHARS.findall(data):
        for code, text in _PAIR.findall(block):
            table[int(code, 16)] = _text(text)
    for block in _RANGES.findall(data):
        for first, last, start, listed in _RANGE.findall(block):
            codes = range(int(first, 16), min(int(last, 16), LAST) + 1)
            if start:
                begin = _text(start)
                table.update({code: begin[:-1] + chr(ord(begin[-1]) + code - codes[0]) for code in codes})
            else:
                table.update(zip(codes, map(_text, re.findall(_HEX, listed)), strict=False))
    return table


def _text(digits: bytes) -> str:
    return bytes.fromhex(b"".join(digits.split()).decode("ascii")).decode("utf-16-be", "replace") or "\ufffd"


def _simple_widths(font: Any) -> dict[int, float]:
    first = int(font.get("/FirstChar", 0))
    return {first + at: float(width) / 1000 for at, width in enumerate(font.get("/Widths", ()))}


def _composite_widths(holder: Any) -> dict[int, float]:
    """`/W` lists either “first [width width …]” or “first last width”."""
    widths: dict[int, float] = {}
    parts = [*holder.get("/W", ())]
    while len(parts) > 1:
        if isinstance(parts[1], pikepdf.Array):
            widths.update({int(parts[0]) + at: float(width) / 1000 for at, width in enumerate(parts[1])})
            del parts[:2]
        elif len(parts) > 2:
            widths.update(
                dict.fromkeys(range(max(int(parts[0]), 0), min(int(parts[1]), LAST) + 1), float(parts[2]) / 1000)
            )
            del parts[:3]
        else:
            break
    return widths
