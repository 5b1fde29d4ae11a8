"""The language of a PDF content stream (ISO 32000-1, 7.8): operands, then an operator; qpdf reads it, through pikepdf.

In: a page, or a form on one. Out: (operator, operands), one at a time; one of `DAMAGED` is raised where it cannot be
read. Numbers come as float, names as str with their slash, strings as bytes, arrays as list, dictionaries as dict. Two
stretches that make up most of a page come as one operation each: the segments of a path, and text objects that each
show one string. To turn operands into Python objects one by one would take most of the time, so numbers are taken from
the content as qpdf writes it back.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from decimal import Decimal
from typing import Any, NamedTuple, TypeAlias

import pikepdf

PATH = "path"
"""Stands for segments of a path; the one operand is their bytes, for `path_operations`."""

LINES = "lines"
"""Stands for one or more “BT x y Td /font size Tf <codes> Tj ET”, Tf left out or not, or with “[<codes> gap …] TJ”,
each by itself or as the content of an element; the one operand is a list of `Line`."""

MOST = 1_000_000
"""Operations on one page, its forms included: more would take minutes and gigabytes."""

DAMAGED = (
    pikepdf.PikepdfError, RuntimeError, LookupError, ValueError, TypeError, AttributeError, ArithmeticError,
    MemoryError,
)  # fmt: skip
"""What pikepdf raises, here and there, on a file that is damaged."""

LARGEST = 8_000_000
"""Bytes of the content of a page or of a form when unpacked."""

LZW = 40
"""What is packed in this way counts as so many times as large: qpdf sets no limit to it."""

pikepdf.settings.set_qpdf_limits(flate_max_memory=LARGEST, run_length_max_memory=LARGEST, dct_max_memory=LARGEST)

_NUMBER = rb"[-+]?[\d.]+"
_ELEMENT = rb"/\w+ << /MCID \d+ >> BDC\n"
_TEXT = rb"BT\n(%s) (%s) Td\n(?:/([^ \n#]+) (%s) Tf\n)?([^\n]* T[jJ])\nET\n" % (_NUMBER, _NUMBER, _NUMBER)
_LINE = re.compile(rb"(%s)?%s" % (_ELEMENT, _TEXT))
_SEGMENT = re.compile(rb"((?:%s )*+)(re|[mlcvyh])\n" % _NUMBER)
_LINES = rb"(?:(?:%s)|(?:%s%s)EMC\n)++" % (_TEXT, _ELEMENT, _TEXT)
_PIECE = re.compile(
    rb"(?P<path>(?:%s)++)" % re.sub(rb"\((?!\?)", b"(?:", _SEGMENT.pattern)
    + rb"|(?P<lines>%s)" % re.sub(rb"\((?!\?)", b"(?:", _LINES)
    + rb"|(?P<nothing>(?:%sEMC\n)++)" % _ELEMENT
    + rb"|(?P<numbers>(?:%s )*+)(?P<operator>[A-Za-z*'\"]++)\n" % _NUMBER
    + rb"|(?P<other>[^\n]*+)\n"
)
"""Operations as qpdf writes them: one a line, a space between any two parts."""


class Shown(NamedTuple):
    """The strings of a line of text and the gaps between them: `written` tells them from others, `parts` has them."""

    written: bytes
    instruction: Any

    @property
    def parts(self) -> tuple[bytes | float, ...]:
        shown = _plain(self.instruction.operands[0])
        parts = shown if isinstance(shown, list) else [shown]
        return tuple(part for part in parts if isinstance(part, bytes | float))


Line: TypeAlias = tuple[float, float, str, float, Shown]
"""x, y, font and size (“” and 0 where they stay as they were), and what is shown."""


def instructions(holder: Any) -> Sequence[Any]:
    """The content of a page or a form, taken apart. Raises ValueError where it is too large to be gone through."""
    if sum(map(_unpacked, _streams(holder))) > LARGEST:
        raise ValueError(f"a page of more than {LARGEST // 1_000_000} million bytes")
    return pikepdf.parse_content_stream(holder)


def operations(read: Sequence[Any]) -> Iterator[tuple[str, list[Any]]]:
    """All operations in order. What is no PDF is skipped; an inline image is one `BI` with what is said of it."""
    written = pikepdf.unparse_content_stream(read) + b"\n"
    if written.count(b"\n") == len(read):
        yield from _in_lines(read, written)
        return
    start = 0  # inline images take several lines each
    for at, one in enumerate(read):
        if isinstance(one, pikepdf.ContentStreamInlineImage):
            yield from _in_lines(read[start:at], pikepdf.unparse_content_stream(read[start:at]) + b"\n")
            yield "BI", [_plain(one.iimage.obj)]
            start = at + 1
    yield from _in_lines(read[start:], pikepdf.unparse_content_stream(read[start:]) + b"\n")


def _in_lines(read: Sequence[Any], written: bytes) -> Iterator[tuple[str, list[Any]]]:
    """The operations of instructions that are written one a line."""
    at = place = 0
    while at < len(read) and (piece := _PIECE.match(written, place)):
        place = piece.end()
        match piece.lastgroup:
            case "path":
                yield PATH, [piece["path"]]
                at += piece["path"].count(b"\n")
            case "lines":
                lines, at = _lines(piece["lines"], read, at)
                yield LINES, [lines]
            case "nothing":
                at += piece["nothing"].count(b"\n")
            case "operator":
                yield piece["operator"].decode("ascii"), [*map(float, piece["numbers"].split())]
                at += 1
            case _:
                operator = piece["other"].rpartition(b" ")[2]
                yield operator.decode("ascii", "replace"), [_plain(operand) for operand in read[at].operands]
                at += 1


def _lines(stretch: bytes, read: Sequence[Any], at: int) -> tuple[list[Line], int]:
    """The lines of a stretch that begins with the instruction `at`, and which instruction follows it."""
    lines = []
    for element, x, y, font, size, shown in _LINE.findall(stretch):
        at += (5 if font else 4) + bool(element)
        name = "/" + font.decode("ascii") if font else ""
        lines.append((float(x), float(y), name, float(size or 0), Shown(shown, read[at - 2])))
        at += bool(element)
    return lines, at


def path_operations(path: bytes) -> Iterator[tuple[str, tuple[float, ...]]]:
    """The segments of a path, one at a time."""
    for segment in _SEGMENT.finditer(path):
        yield segment[2].decode("ascii"), tuple(map(float, segment[1].split()))


def _plain(value: Any) -> Any:
    """A value of pikepdf as Python's own."""
    match value:
        case bool() | None:
            return value
        case int() | Decimal():
            return float(value)
        case pikepdf.Name():
            return _NAME_CODE.sub(_character, value.unparse()).decode("utf-8", "replace")
        case pikepdf.String():
            return bytes(value)
        case pikepdf.Array():
            return [_plain(part) for part in value]
        case pikepdf.Dictionary():
            return {key: _plain(part) for key, part in value.items()}
    return None


_NAME_CODE = re.compile(rb"#([0-9A-Fa-f]{2})")


def _character(code: re.Match[bytes]) -> bytes:
    return bytes([int(code[1], 16)])


def _streams(holder: Any) -> list[Any]:
    """The streams that make up the content of a page or a form."""
    if isinstance(holder, pikepdf.Page):
        holder = holder.obj.get("/Contents", pikepdf.Array())
    return [*holder] if isinstance(holder, pikepdf.Array) else [holder]


def _unpacked(stream: Any) -> int:
    """The size of a stream in bytes."""
    if not isinstance(stream, pikepdf.Stream):
        return 0
    packing = stream.get("/Filter", pikepdf.Array())
    if "/LZWDecode" in map(str, packing if isinstance(packing, pikepdf.Array) else [packing]):
        return LZW * len(stream.read_raw_bytes())
    return len(stream.read_bytes())
