"""Content streams, beside examples of ISO 32000-1 and beside pypdf's reader."""

from __future__ import annotations

import re
from contextlib import suppress
from io import BytesIO
from typing import Any

import pikepdf
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from pypdf import PdfReader
from pypdf.generic import ByteStringObject, ContentStream, FloatObject, NumberObject, TextStringObject

from bookmaker.ink.pdf import pdf_bytes
from bookmaker.preflight import tokens
from bookmaker.preflight.tokens import DAMAGED, LARGEST, LINES, PATH, content, operations, path_operations, shown
from tests.ink.specimen import document


def with_content(*streams: bytes) -> pikepdf.Pdf:
    """A file of one page with this content."""
    pdf = pikepdf.new()
    page = pdf.add_blank_page(page_size=(100, 100))
    page.Contents = pikepdf.Array([pdf.make_stream(stream) for stream in streams])
    return pdf


def spelled(stream: bytes) -> list[tuple[str, list[Any]]]:
    with with_content(stream) as pdf:
        return written_out(pdf.pages[0])


def written_out(page: pikepdf.Page) -> list[tuple[str, list[Any]]]:
    """All operations, those that come as one written out."""
    found: list[tuple[str, list[Any]]] = []
    for operator, operands in operations(content(page)):
        if operator == PATH:
            found += [(segment, list(numbers)) for segment, numbers in path_operations(operands[0])]
        elif operator == LINES:
            for x, y, font, size, written in operands[0]:
                named = [("Tf", ["/" + font.decode("ascii"), float(size)])] if font else []
                parts = list(shown(written))
                text = ("TJ", [parts]) if written.endswith(b"TJ") else ("Tj", parts)
                found += [("BT", []), ("Td", [float(x), float(y)]), *named, text, ("ET", [])]
        else:
            found.append((operator, list(operands)))
    return found


def one(stream: bytes) -> list[Any]:
    """The operands of the only operation."""
    ((operator, operands),) = spelled(stream + b" Tj")
    assert operator == "Tj"
    return operands


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        # ISO 32000-1, 7.3.3: numbers
        (b"123 43445 +17 -98 0", [123, 43445, 17, -98, 0]),
        (b"34.5 -3.62 +123.6 4. -.002 0.0", [34.5, -3.62, 123.6, 4, -0.002, 0]),
        # 7.3.4.2: literal strings
        (b"(This is a string)", [b"This is a string"]),
        (
            b"(Strings may contain balanced parentheses ( ) and\nspecial characters ( * ! & } ^ % and so on).)",
            [b"Strings may contain balanced parentheses ( ) and\nspecial characters ( * ! & } ^ % and so on)."],
        ),
        (b"()", [b""]),
        (b"(These \\\ntwo strings \\\nare the same.)", [b"These two strings are the same."]),
        (b"(This string contains \\245two octal characters\\307.)", [b"This string contains \xa5two octal characters\xc7."]),  # noqa: E501
        (b"(\\0053)", [b"\x053"]),
        (b"(\\053)(\\53)", [b"+", b"+"]),
        (b"(\\(\\)\\\\\\n)", [b"()\\\n"]),
        # 7.3.4.3: hexadecimal strings
        (b"<4E6F762073686D6F7A206B6120706F702E>", [b"Nov shmoz ka pop."]),
        (b"<901FA3>", [b"\x90\x1f\xa3"]),
        (b"<901FA>", [b"\x90\x1f\xa0"]),
        # 7.3.5: names
        (b"/Name1 /A;Name_With-Various***Characters?", ["/Name1", "/A;Name_With-Various***Characters?"]),
        (b"/1.2 /.notdef", ["/1.2", "/.notdef"]),
        (b"/Lime#20Green /paired#28#29parentheses", ["/Lime Green", "/paired()parentheses"]),
        # 7.3.6, 7.3.7: arrays and dictionaries
        (b"[549 3.14 false (Ralph) /SomeName]", [[549, 3.14, False, b"Ralph", "/SomeName"]]),
        (b"<</A<</B[1 2]>>/C null>>", [{"/A": {"/B": [1, 2]}}]),  # null is as good as no entry
        (b"% a remark (with\n 7 % another", [7]),
    ],
)  # fmt: skip
def test_examples_of_the_standard(written: bytes, meant: list[Any]) -> None:
    assert one(written + b"\n") == meant


def test_operators() -> None:
    stream = b"q 1 0 0 1 5 5 cm\n0.5 w 1 2 m 3 4 l S W* n T* (a)' 1 2(b)\" Q"
    assert [operator for operator, _ in spelled(stream)] == "q cm w m l S W* n T* ' \" Q".split()  # noqa: SIM905
    assert spelled(stream)[-2] == ('"', [1, 2, b"b"])


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        (b"1 2 m 3 4 l\nh S", "m 1 2, l 3 4, h, S"),
        (b"1 2 3 4 re", "re 1 2 3 4"),
        (b"1 % a remark\n2 m 3 4 l% another\nf", "m 1 2, l 3 4, f"),
        (b"0 0 m 1 0 0 1 5 5 cm 1 2 l/A gs", "m 0 0, cm 1 0 0 1 5 5, l 1 2, gs /A"),
        (b"BT 1 2 Td <0A> Tj ET\n", "BT, Td 1 2, Tj b'\\n', ET"),
        (b"BT 1 2 Td /F1 9 Tf <0A> Tj ET\n", "BT, Td 1 2, Tf /F1 9, Tj b'\\n', ET"),
        (b"BT 1 2 Td <41> Tj ET\nBT 3 4 Td <> Tj ET Q", "BT, Td 1 2, Tj b'A', ET, BT, Td 3 4, Tj b'', ET, Q"),
        (b"BT 1 2 Td [<41>-3 <>4.5] TJ ET\n", "BT, Td 1 2, TJ [b'A', -3.0, b'', 4.5], ET"),
        (b"BT 1 2 Td [ ] TJ ET\n", "BT, Td 1 2, TJ [], ET"),
        (b"BT 1 2 Td [<41> (B)] TJ ET\n", "BT, Td 1 2, TJ [b'A', b'B'], ET"),
        (b"BT 1 2 Td <0> Tj <41> Tj ET\n", "BT, Td 1 2, Tj b'\\x00', Tj b'A', ET"),
    ],
)
def test_paths_and_lines_of_text_come_in_one_piece(written: bytes, meant: str) -> None:
    said = []
    for operator, operands in spelled(written):
        said.append(" ".join([operator, *(f"{part:g}" if isinstance(part, float) else str(part) for part in operands)]))
    assert ", ".join(said) == meant


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        (b"(a line\n1 2 m\nof text) Tj\n", "Tj b'a line\\n1 2 m\\nof text'"),
        (b"(\\\n1 2 m\n) Tj\n", "Tj b'1 2 m\\n'"),
        (b"% a remark\n1 w\n", "w 1"),
        (b"1 w\n%1 2 m\n2 w\n", "w 1, w 2"),
        (b"<41\n42> Tj\n", "Tj b'AB'"),
        (b"[<41>\n1 2] TJ\nq\n", "TJ [b'A', 1.0, 2.0], q"),
        (b"null\nsh\n", "sh None"),
        (b"true\nsh\n", "sh True"),
        (b"/A#42 gs\n", "gs /AB"),
        (b"BT\n1 2 Td\n(a) b) Tj\nET\n", None),
    ],
)
def test_what_only_looks_like_lines_is_left_to_a_parser(written: bytes, meant: str | None) -> None:
    if meant is None:
        assert spelled(written) == spelled(b" " + written)
    else:
        said = [" ".join([one, *(f"{part:g}" if type(part) is float else str(part) for part in some)])
                for one, some in spelled(written)]  # fmt: skip
        assert ", ".join(said) == meant


FRAGMENTS = (
    rb"1 2 m|-3 .5 l|h S|h|f*|1 2 3 4 re|q|0.5 w|1 0 0 1 2 3 cm|/P gs|/A#42 gs|BT|1 2 Td|/F1+0 9 Tf|<41> Tj|(a b) Tj|"
    rb"[<41>-3 (b)] TJ|ET|(a|b) Tj|<4|1> Tj|/TD << /MCID 3 >> BDC|/Bookmaker << /Name <41> >> BDC|EMC|<< /A|>> sh|"
    rb"BI|ID|EI|null|true|%|(|)|\|[|]|<|>||+|1.2.3|'"
).split(b"|")


@settings(derandomize=True, deadline=None, max_examples=500)
@given(st.lists(st.tuples(st.sampled_from(FRAGMENTS), st.sampled_from([b"\n", b"\n", b"\n", b" ", b""])), max_size=12))
def test_lines_are_read_as_a_parser_reads_them(fragments: list[tuple[bytes, bytes]]) -> None:
    """A remark before it takes content to the parser; it says nothing itself."""
    written = b"".join(part for fragment in fragments for part in fragment)

    def outcome(stream: bytes) -> object:
        try:
            return spelled(stream)
        except DAMAGED:
            return "damaged"

    assert outcome(written) == outcome(b"%\n" + written)


def test_inline_images_are_passed_over() -> None:
    stream = b"q BI /W 2 /H 2 /CS /G /BPC 8 ID \x01(EI\x02 EI Q"
    said = {"/Width": 2, "/Height": 2, "/ColorSpace": "/DeviceGray", "/BitsPerComponent": 8}
    assert spelled(stream) == [("q", []), ("BI", [said]), ("Q", [])]
    assert spelled(b"1 w " + stream[2:] + b" 2 w") == [("w", [1]), ("BI", [said]), ("Q", []), ("w", [2])]


@settings(derandomize=True, deadline=None, max_examples=200)
@given(st.binary(max_size=60))
def test_any_bytes_are_read_or_refused(noise: bytes) -> None:
    with suppress(*DAMAGED):
        spelled(noise)


@settings(derandomize=True, deadline=None, max_examples=100)
@given(st.binary(max_size=40))
def test_any_string_survives(content: bytes) -> None:
    escaped = b"".join(b"\\" + bytes([byte]) if byte in b"()\\\r" else bytes([byte]) for byte in content)
    joined = content.replace(b"\r\n", b"").replace(b"\r", b"")  # a backslash joins lines (ISO 32000-1, 7.3.4.2)
    assert one(b"(" + escaped + b")") == [joined]
    assert one(b"<" + content.hex().encode() + b">") == [content]


def plain(value: Any) -> Any:
    """A value of pypdf as ours."""
    match value:
        case FloatObject() | NumberObject():
            return float(value)
        case ByteStringObject() | TextStringObject():
            return value.original_bytes
        case list():
            return [plain(part) for part in value]
        case dict():
            return {str(key): plain(part) for key, part in value.items()}
    return value


def test_as_pypdf_reads_them() -> None:
    file = pdf_bytes(document())
    with pikepdf.open(BytesIO(file)) as pdf:
        for page, again in zip(pdf.pages, PdfReader(BytesIO(file)).pages, strict=True):
            theirs = [
                (operator.decode(), plain(list(operands)))
                for operands, operator in ContentStream(again.get_contents(), None).operations
            ]
            assert written_out(page) == theirs


@pytest.mark.parametrize("parts", [1, 3])
def test_a_page_of_too_many_bytes_is_refused(parts: int) -> None:
    streams = [b"0 w " * (LARGEST // 4 // parts + 1)] * parts
    with with_content(*streams) as pdf, pytest.raises(ValueError, match="million bytes"):
        content(pdf.pages[0])


def test_what_cannot_be_taken_apart_is_refused() -> None:
    """Found by fuzzing: an inline image without its data, an operator in a dictionary."""
    for stream in (b"BI EI", b"BI 1 EI", b"<< . >> w"):
        with pytest.raises(DAMAGED):
            spelled(stream)


def test_an_element_that_holds_more_than_one_text_is_left_whole() -> None:
    """Between others that are read at once; Python 3.11.2 lost its beginning while groups were possessive."""
    text, cell = b"BT\n1 2 Td\n<01> Tj\nET\n", b"/TD << /MCID 1 >> BDC\n"
    operators = [name for name, _ in spelled(cell + text + b"EMC\n" + cell + b"EMC\n" + cell + text + text + b"EMC\n")]
    shown = ["BT", "Td", "Tj", "ET"]
    assert operators == [*shown, "BDC", *shown, *shown, "EMC"]


def test_no_group_is_possessive() -> None:
    for pattern in (tokens._PIECE, tokens._LINE, tokens._SEGMENT, tokens._PART):
        assert not re.search(rb"\)(?:[*+?]|\{[\d,]+\})\+|\(\?>", pattern.pattern)
