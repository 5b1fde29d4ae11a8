"""The language of a PDF content stream (ISO 32000-1, 7.2 and 7.8): operands, then an operator.

In: the bytes of a content stream. Out: (operator, operands), one at a time. Numbers come as float, names as str
with their slash, strings as bytes, arrays as list, dictionaries as dict. Two stretches that make up most of a page come
as one operation each: the segments of a path, and text objects that each show one string.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

PATH = "path"
"""Stands for segments of a path; the one operand is their bytes, for `path_operations`."""

LINES = "lines"
"""Stands for one or more “BT x y Td /font size Tf <codes> Tj ET”, Tf left out or not, or with “[<codes> gap …] TJ”;
their bytes are for `lines`."""

_LINE = re.compile(
    rb"""BT\s++([-+]?[\d.]++)\s++([-+]?[\d.]++)\s++Td\s++
    (?:/([^\s\x00()<>\[\]{}/%\#]++)\s++([\d.]++)\s++Tf\s++)?+
    (?:(<(?:[0-9A-Fa-f]{2})*+>)\s++Tj|\[((?:<(?:[0-9A-Fa-f]{2})*+>|[-+]?[\d.]++|\s++)*+)\]\s++TJ)\s++ET(?=\s)""",
    re.VERBOSE,
)
_PIECE = re.compile(
    rb"""[\s\x00]*+(?:
    (?P<path>(?:(?:[-+]?[\d.]++[\s\x00]++)*+(?:re|[mlcvyh])[\s\x00]++)++)
    |(?P<lines>(?:"""
    + re.sub(rb"\((?!\?)", b"(?:", _LINE.pattern)
    + rb"""\s++)++)
    |(?P<call>(?:[-+]?[\d.]++[\s\x00]++)*+)(?P<operator>[A-Za-z'"][A-Za-z0-9*]*+)
    |(?P<number>[-+]?[\d.]++)
    |/(?P<name>[^\s\x00()<>\[\]{}/%]*+)
    |(?P<open><<|\[)
    |(?P<close>>>|\])
    |<(?P<hex>[0-9A-Fa-f\s\x00]*+)>
    |(?P<text>\()
    |%[^\r\n]*+
    |(?P<other>.)
    )""",
    re.VERBOSE | re.DOTALL,
)
_SEGMENT = re.compile(rb"((?:[-+]?[\d.]++[\s\x00]++)*+)(re|[mlcvyh])[\s\x00]++")
_PART = re.compile(rb"<([0-9A-Fa-f]*+)>|([-+]?[\d.]++)")
_SEGMENTS = {b"re", b"m", b"l", b"c", b"v", b"y", b"h"}
_CONSTANTS: dict[bytes, bool | None] = {b"true": True, b"false": False, b"null": None}
_ESCAPES = {b"n": b"\n", b"r": b"\r", b"t": b"\t", b"b": b"\b", b"f": b"\f"}
_IMAGE_END = re.compile(rb"\sEI(?=[\s\x00]|$)")


def operations(stream: bytes) -> Iterator[tuple[str, list[Any]]]:
    """All operations in order. Bytes that are no PDF are skipped; an inline image is one `BI` without its data."""
    stack: list[list[Any]] = [[]]
    at = 0
    while piece := _PIECE.match(stream, at):
        at = piece.end()
        match piece.lastgroup:
            case "path":
                yield PATH, [_written(stack[-1]) + piece["path"]]
                stack = [[]]
            case "lines":
                yield LINES, [piece["lines"]]
                stack = [[]]
            case "operator":
                word = piece["operator"]
                if word in _SEGMENTS:  # the last of a path, with no space after it
                    yield PATH, [_written(stack[-1]) + piece["call"] + word + b" "]
                    stack = [[]]
                    continue
                if call := piece["call"]:
                    stack[-1] += map(_number, call.split())
                if word in _CONSTANTS:
                    stack[-1].append(_CONSTANTS[word])
                    continue
                if word == b"ID":
                    end = _IMAGE_END.search(stream, at)
                    at = end.end() if end else len(stream)
                    word = b"BI"
                elif word == b"BI":
                    continue
                yield word.decode("ascii"), stack[-1]
                stack = [[]]
            case "number":
                stack[-1].append(_number(piece["number"]))
            case "name":
                stack[-1].append("/" + _NAME_CODE.sub(_character, piece["name"]).decode("utf-8", "replace"))
            case "open":
                stack.append([])
            case "close":
                if len(stack) > 1:
                    inner = stack.pop()
                    stack[-1].append(inner if piece["close"] == b"]" else _dictionary(inner))
            case "hex":
                stack[-1].append(_from_hex(piece["hex"]))
            case "text":
                text, at = _string(stream, at)
                stack[-1].append(text)


def _written(operands: list[Any]) -> bytes:
    """Numbers that a remark parts from their operator, as bytes again."""
    return b"".join([b"%f " % operand for operand in operands if isinstance(operand, float)])


def path_operations(path: bytes) -> Iterator[tuple[str, tuple[float, ...]]]:
    """The segments of a path, one at a time."""
    for segment in _SEGMENT.finditer(path):
        yield segment[2].decode("ascii"), tuple(map(_number, segment[1].split()))


def lines(stretch: bytes) -> list[tuple[float, float, str, float, bytes]]:
    """The lines of text of a stretch: x, y, font and size (“” and 0 where they stay as they were), and what is shown,
    as bytes for `line_parts`."""
    return [
        (
            _number(x),
            _number(y),
            "/" + font.decode("utf-8", "replace") if font else "",
            _number(size) if font else 0.0,
            string or parts,
        )
        for x, y, font, size, string, parts in _LINE.findall(stretch)
    ]


def line_parts(shown: bytes) -> tuple[bytes | float, ...]:
    """The strings of a line and the gaps between them."""
    return tuple(
        _number(number) if number else bytes.fromhex(codes.decode("ascii")) for codes, number in _PART.findall(shown)
    )


_NAME_CODE = re.compile(rb"#([0-9A-Fa-f]{2})")


def _character(code: re.Match[bytes]) -> bytes:
    return bytes([int(code[1], 16)])


def _number(figures: bytes) -> float:
    try:
        return float(figures)
    except ValueError:
        return 0.0


def _dictionary(parts: list[Any]) -> dict[str, Any]:
    return {key: value for key, value in zip(parts[::2], parts[1::2], strict=False) if isinstance(key, str)}


def _from_hex(digits: bytes) -> bytes:
    plain = b"".join(digits.replace(b"\x00", b"").split())
    return bytes.fromhex((plain + b"0" * (len(plain) % 2)).decode("ascii"))


_TURN = re.compile(rb"[()]|\\(?:([0-7]{1,3})|(\r\n|[\s\S]))")


def _string(stream: bytes, at: int) -> tuple[bytes, int]:
    """A string in parentheses from just after the first one, and where it ends."""
    parts, depth, begin = [], 1, at
    for turn in _TURN.finditer(stream, at):
        parts.append(stream[begin : turn.start()])
        begin = turn.end()
        if turn[1]:
            parts.append(bytes([int(turn[1], 8) & 255]))
        elif turn[2]:
            parts.append(b"" if turn[2] in (b"\n", b"\r", b"\r\n") else _ESCAPES.get(turn[2], turn[2]))
        else:
            depth += 1 if turn[0] == b"(" else -1
            if not depth:
                return b"".join(parts), begin
            parts.append(turn[0])
    return b"".join(parts), len(stream)
