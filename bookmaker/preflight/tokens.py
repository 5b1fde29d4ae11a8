"""The language of a PDF content stream (ISO 32000-1, 7.8): operands, then an operator.

In: a page, or a form on one. Out: (operator, operands), one at a time; one of `DAMAGED` is raised where it cannot be
read. Numbers come as float, names as str with their slash, strings as bytes, arrays as list, dictionaries as dict. Two
stretches that make up most of a page come as one operation each: the segments of a path, and text objects that each
show one string.

Content is gone through as it is written where each operation has a line of its own and takes no parser, as on our own
pages; any other is read by qpdf, through pikepdf, and gone through as qpdf writes it back. To turn operands into Python
objects one by one would take most of the time.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from decimal import Decimal
from functools import lru_cache
from typing import Any, NamedTuple, TypeAlias

import pikepdf

PATH = "path"
"""Stands for segments of a path; the one operand is their bytes, for `path_operations`."""

LINES = "lines"
"""Stands for any number of “BT x y Td /font size Tf <codes> Tj ET”, Tf left out or not, or with “[<codes> gap …] TJ”,
each by itself or as the content of an element, between elements that are empty; the one operand is a list of `Line`."""

MOST = 1_000_000
"""Operations on one page, its forms included: more would take minutes and gigabytes."""

DAMAGED = (
    pikepdf.PikepdfError, RuntimeError, LookupError, ValueError, TypeError, AttributeError, ArithmeticError,
    MemoryError,
)  # fmt: skip
"""What pikepdf raises, here and there, on a file that is damaged."""

_STREAM = re.compile(r"^stream <[^>]*>(: )?")

LARGEST = 8_000_000
"""Bytes of the content of a page or of a form when unpacked."""

LZW = 40
"""What is packed in this way counts as so many times as large: qpdf sets no limit to it."""

pikepdf.settings.set_qpdf_limits(flate_max_memory=LARGEST, run_length_max_memory=LARGEST, dct_max_memory=LARGEST)

# No group is possessive: Python 3.11.2, which Debian has, goes on behind a part of one that did not match as a whole
# (CPython's issue 106052, from memory). Instead each has a bound, since ways back take memory; and within numbers and
# names nothing is given back, so that there is one way only to take apart what does not match.
_NUMBER = rb"[-+]?(?:\d++\.?+\d*+|\.\d++)"
_NAME, _STRING = rb"/[\w.+-]++", rb"(?:<[0-9A-Fa-f]*+>|\([^()\\\r\n]*+\))"
_ARRAY = rb"\[(?:%s|%s| ){0,2000}\]" % (_NUMBER, _STRING)
_SIMPLE = rb"(?:%s|%s|%s)" % (_NUMBER, _NAME, _STRING)
_OPERAND = rb"(?:%s|%s|<<(?: %s %s){0,20} >>)" % (_SIMPLE, _ARRAY, _NAME, _SIMPLE)
_OPERATOR = rb"(?!(?:BI|ID|EI|true|false|null)\n)(?:[A-Za-z]++[01*]?|['\"])\n"

_ELEMENT = rb"(/\w+) << /MCID (\d+) >> BDC\n"
_TEXT = rb"BT\n(%s) (%s) Td\n(?:/([^ \n#]+) (%s) Tf\n)?((?:%s|%s) T[jJ])\nET\n" % (
    _NUMBER, _NUMBER, _NUMBER, _STRING, _ARRAY,
)  # fmt: skip
_SEGMENT = re.compile(rb"((?:%s ){0,6})(re|[mlcvyh])\n" % _NUMBER)
_LINE, _MARKED = re.compile(_TEXT), re.compile(_ELEMENT)
_PART = re.compile(rb"<([0-9A-Fa-f]*)>|(%s)" % _NUMBER)


def _uncounted(pattern: bytes) -> bytes:
    """The pattern with groups that keep nothing."""
    return re.sub(rb"(?<!\\)\((?!\?)", b"(?:", pattern)


_BEGIN = _uncounted(_ELEMENT)
_PIECE = re.compile(
    rb"(?P<path>(?:%s){1,1000})" % _uncounted(_SEGMENT.pattern)
    + rb"|(?P<lines>(?:%s|%s(?:%s)?EMC\n){1,1000})" % (_uncounted(_TEXT), _BEGIN, _uncounted(_TEXT))
    + rb"|(?P<element>%s)" % _BEGIN
    + rb"|(?P<operator>(?:%s ){0,40}%s)" % (_NUMBER, _OPERATOR)
    + rb"|(?P<plain>(?:%s ){0,40}%s)" % (_OPERAND, _OPERATOR)
    + rb"|(?P<other>[^\n]*+\n)"
)
"""Operations each on a line, a space between any two parts. What is none of the first few takes a parser: inline
images, escapes, remarks, names and operands of the rarer kinds."""

Line: TypeAlias = tuple[bytes, bytes, bytes, bytes, bytes]
"""x, y, font and size (empty where they stay as they were), and what is shown; all as written."""


def reason_of(error: Exception) -> str:
    """What one of `DAMAGED` says, without what Python calls the stream that was read. A file without a trailer, as most
    are that are no PDF at all, is told in plain words."""
    said = _STREAM.sub("", str(error))
    return "it is no PDF, or its end is missing" if "trailer" in said else said


def shown(written: bytes) -> tuple[bytes | float, ...]:
    """The strings of a line of text and the gaps between them, from what is written: strings, or an array, and the
    operator."""
    if b"(" not in written:
        return tuple(float(gap) if gap else _bytes(codes) for codes, gap in _PART.findall(written))
    value, *_ = _operands(written[:-3])
    parts = value if isinstance(value, list) else [value]
    return tuple(part for part in parts if isinstance(part, bytes | float))


def _bytes(codes: bytes) -> bytes:
    """A string from its hexadecimal figures; one that lacks at the end is 0 (7.3.4.3)."""
    return bytes.fromhex(codes.decode("ascii") + "0" * (len(codes) % 2))


Piece: TypeAlias = re.Match[bytes] | dict[str, Any]
"""A piece of what is written; an inline image stands by itself, as what is said of it."""


class Content(NamedTuple):
    """What is written, in pieces, and how many operations it has."""

    pieces: Sequence[Piece]
    length: int


def content(holder: Any) -> Content:
    """The content of a page or a form. Raises ValueError where it is too large to be gone through, and one of
    `DAMAGED` where it cannot be taken apart."""
    written, left = b"", LARGEST
    for stream in _streams(holder):
        left -= _packed_apart(stream)
        unpacked = stream.read_bytes() if left >= 0 else b""
        left -= len(unpacked)
        if left < 0:
            raise ValueError(f"a page of more than {LARGEST // 1_000_000} million bytes")
        written += unpacked if unpacked.endswith(b"\n") else unpacked + b"\n"
    pieces = [*_PIECE.finditer(written)]
    if "other" not in {piece.lastgroup for piece in pieces}:
        return Content(pieces, written.count(b"\n"))
    read = pikepdf.parse_content_stream(holder)
    return Content([*_read(read)], len(read))


def _read(read: Sequence[Any]) -> Iterator[Piece]:
    """What qpdf has read, as it writes it back. What is no PDF is skipped."""
    written = pikepdf.unparse_content_stream(read) + b"\n"
    if written.count(b"\n") == len(read):
        yield from _PIECE.finditer(written)
        return
    start = 0  # inline images take several lines each
    for at, one in enumerate(read):
        if isinstance(one, pikepdf.ContentStreamInlineImage):
            yield from _PIECE.finditer(pikepdf.unparse_content_stream(read[start:at]) + b"\n")
            yield _value(one.iimage.obj)
            start = at + 1
    yield from _PIECE.finditer(pikepdf.unparse_content_stream(read[start:]) + b"\n")


def operations(content: Content) -> Iterator[tuple[str, Sequence[Any]]]:
    """All operations in order; an inline image is one `BI` with what is said of it."""
    for piece in content.pieces:
        if isinstance(piece, dict):
            yield "BI", [piece]
            continue
        match piece.lastgroup:  # the most frequent first
            case "operator":
                yield _simple(piece[0])
            case "path":
                yield PATH, [piece[0]]
            case "lines":
                yield LINES, [_LINE.findall(piece[0])]
            case "element":
                role, number = _MARKED.findall(piece[0])[0]
                yield "BDC", [role.decode("ascii"), {"/MCID": float(number)}]
            case "plain" | "other" if piece[0] != b"\n":
                operands, _, operator = piece[0][:-1].rpartition(b" ")
                yield operator.decode("ascii", "replace"), _operands(operands)


@lru_cache(maxsize=4096)
def _simple(written: bytes) -> tuple[str, tuple[float, ...]]:
    """Numbers and an operator; on the pages of a file, the same come again and again."""
    *numbers, operator = written.split()
    return operator.decode("ascii"), tuple(map(float, numbers))


def _operands(written: bytes) -> list[Any]:
    """Operands, from how they are written."""
    return [*_parsed(written)]


@lru_cache(maxsize=1024)  # those that take a parser are mostly names of groups and fonts, which come again
def _parsed(written: bytes) -> list[Any]:
    found: list[Any] = _value(pikepdf.Object.parse(b"[%s]" % written))
    return found


def path_operations(path: bytes) -> Iterator[tuple[str, tuple[float, ...]]]:
    """The segments of a path, one at a time."""
    for segment in _SEGMENT.finditer(path):
        yield segment[2].decode("ascii"), tuple(map(float, segment[1].split()))


def _value(value: Any) -> Any:
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
            return [_value(part) for part in value]
        case pikepdf.Dictionary():
            return {key: _value(part) for key, part in value.items()}
    return None


_NAME_CODE = re.compile(rb"#([0-9A-Fa-f]{2})")


def _character(code: re.Match[bytes]) -> bytes:
    return bytes([int(code[1], 16)])


def _streams(holder: Any) -> Iterator[pikepdf.Stream]:
    """The streams that make up the content of a page or a form."""
    if isinstance(holder, pikepdf.Page):
        holder = holder.obj.get("/Contents", pikepdf.Array())
    for stream in holder if isinstance(holder, pikepdf.Array) else (holder,):
        if isinstance(stream, pikepdf.Stream):
            yield stream


def _packed_apart(stream: pikepdf.Stream) -> int:
    """As how many bytes a stream counts before it is unpacked."""
    packing = stream.get("/Filter", pikepdf.Array())
    packed = "/LZWDecode" in map(str, packing if isinstance(packing, pikepdf.Array) else [packing])
    return LZW * len(stream.read_raw_bytes()) if packed else 0
