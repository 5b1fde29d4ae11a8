"""What is painted where, beside pdfplumber's reading of the same pages."""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from itertools import pairwise

import pdfplumber
import pikepdf
import pytest
from pypdf import PageObject, PdfReader, PdfWriter, Transformation

from bookmaker.display.items import Document, Group, Item, Line, Page, Rect, Stroke, Text
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.preflight.painted import Painted, Picture, Run, moved
from bookmaker.preflight.painted import Stroke as Stroked
from bookmaker.preflight.painting import painted
from tests.ink.specimen import document


def printed(*items: Item) -> bytes:
    return pdf_bytes(Document("t", "", "", (Page(300, 200, items, "1"),)))


def seen(file: bytes) -> list[Painted]:
    with pikepdf.open(BytesIO(file)) as pdf:
        return list(painted(pdf.pages[0]))


def painted_by(content: bytes, **forms: bytes) -> list[Painted]:
    """What a page with this content paints; “/F1” is Helvetica, and it may draw the forms by their names."""
    with pikepdf.new() as pdf:
        page = pdf.add_blank_page(page_size=(100, 100))
        helvetica = pikepdf.Dictionary(
            Type=pikepdf.Name.Font, Subtype=pikepdf.Name.Type1, BaseFont=pikepdf.Name.Helvetica
        )
        drawn = {
            f"/{name}": pdf.make_stream(form, Type=pikepdf.Name.XObject, Subtype=pikepdf.Name.Form, BBox=[0, 0, 9, 9])
            for name, form in forms.items()
        }
        page.Resources = pikepdf.Dictionary(Font={"/F1": helvetica}, XObject=drawn)
        page.Contents = pdf.make_stream(content)
        return list(painted(page))


def runs(items: Sequence[Painted]) -> list[Run]:
    return [item for item in items if isinstance(item, Run)]


def test_letters_stand_where_pdfplumber_sees_them() -> None:
    file = pdf_bytes(document())
    theirs = [char for char in pdfplumber.open(BytesIO(file)).pages[0].chars if char["text"] != " "]
    level = [run for run in runs(seen(file)) if abs(run.matrix[1]) < 0.1 and run.matrix[0] > 0]
    ours = [(letter, run) for run in level for letter in run.setting.letters if letter[0] != " "]
    expected = [char for char in theirs if abs(char["matrix"][1]) < 0.1 and char["matrix"][0] > 0]
    assert len(ours) == len(expected) > 40
    for ((character, start, width), run), char in zip(ours, expected, strict=True):
        assert character == char["text"]
        assert moved(run.matrix, (start, run.rise)) == pytest.approx(char["matrix"][4:], abs=0.01)
        assert run.matrix[0] * width == pytest.approx(char["adv"], abs=0.01)
        assert run.em == pytest.approx(char["size"], abs=0.01)
        assert run.font.name == char["fontname"].partition("+")[2]
        assert run.font.embedded and run.font.subset


def test_boxes_and_middles() -> None:
    """A box is as high as figures are, 0.7 of the type size; a quarter turn clockwise lays it on its side."""
    (run,) = runs(seen(printed(Text(50, 100, " 77 ", "sans", 20))))
    left, bottom, right, top = run.box() or (0, 0, 0, 0)
    assert (bottom, top) == pytest.approx((100, 114))
    middles = list(run.middles())
    assert [character for character, _ in middles] == ["7", "7"]
    (first, height), (second, _) = (point for _, point in middles)
    assert height == pytest.approx(107)
    assert (first + second) / 2 == pytest.approx((left + right) / 2)
    assert right - left == pytest.approx(2 * (second - first))
    (turned,) = runs(seen(printed(Group((Text(0, 0, "77", "sans", 20),), 150, 100, turn=90))))
    assert turned.box() == pytest.approx((150, 100 - (right - left), 164, 100))
    (blank,) = runs(seen(printed(Text(50, 100, "  ", "sans", 20))))
    assert blank.box() is None and not list(blank.middles())


def test_lines_and_rectangles() -> None:
    items = seen(printed(Line((10, 20), (110, 60), Stroke(2)), Rect(50, 70, 30, 20, Stroke(0.5), 0.8)))
    line, rect = (item for item in items if isinstance(item, Stroked))
    assert (line.width, line.ways) == (2, (((10, 180), (110, 140)),))
    assert rect.ways == (((50, 110), (80, 110), (80, 130), (50, 130), (50, 110)),)


def test_a_group_scales_its_pen_and_names_what_it_holds() -> None:
    inner = Group((Line((0, 0), (10, 0), Stroke(1)), Text(0, 10, "7", "sans", 10)), 20, 30, 0.5, 90, name="inner")
    items = seen(printed(Group((inner,), 100, 100, name="outer é"), Line((0, 0), (1, 1), Stroke(1))))
    turned, plain = (item for item in items if isinstance(item, Stroked))
    assert turned.group == ("outer é", "inner") and plain.group == ()
    assert turned.width == pytest.approx(0.5)
    # 200 − (100 + 30) is the height of the start; a quarter turn leads down
    assert turned.ways[0] == (pytest.approx((120, 70)), pytest.approx((120, 65)))
    (run,) = runs(items)
    assert run.em == pytest.approx(5) and run.group == ("outer é", "inner")


def test_pages_placed_on_a_sheet_are_followed() -> None:
    """As imposition does it: the page becomes a form, or its content is merged, turned and scaled."""
    source = PdfReader(BytesIO(printed(Group((Text(100, 50, "7", "sans", 20),), name="grid x")))).pages[0]
    writer = PdfWriter()
    sheet = PageObject.create_blank_page(writer, 600, 400)
    sheet.merge_transformed_page(source, Transformation().scale(0.5).rotate(90).translate(300, 100))
    writer.add_page(sheet)
    file = BytesIO()
    writer.write(file)
    (run,) = runs(seen(file.getvalue()))
    ((character, start, _),) = run.setting.letters
    # (100, 150) on the page; half of it turned left is (−75, 50)
    assert (character, moved(run.matrix, (start, 0))) == ("7", pytest.approx((225, 150)))
    assert run.em == pytest.approx(10) and run.group == ("grid x",)


def test_pictures() -> None:
    pictures = [item for item in seen(pdf_bytes(document())) if isinstance(item, Picture)]
    assert [picture.pixels for picture in pictures] == [(40, 20), (40, 20)]
    assert pictures[0].printed == (60, 30) and pictures[1].printed == pytest.approx((40, 20), abs=0.001)
    assert {picture.space for picture in pictures} == {"/DeviceGray"}


def test_a_line_read_in_one_piece_ends_where_it_would_in_pieces() -> None:
    """Text that a damaged file shows without BT goes on from there, as in viewers; a remark keeps pieces apart."""
    for line in (b"BT 10 20 Td /F1 10 Tf <41> Tj ET\n", b"BT 10 20 Td /F1 10 Tf [<41>-3 <42>] TJ ET\n"):
        places = []
        for written in (line, line.replace(b"ET", b"% \nET")):
            content = written + b"5 6 Td <41> Tj <41> Tj"
            places.append([run.matrix for run in runs(painted_by(content))])
        assert len(places[0]) == 3 and places[0] == places[1]
        assert places[0][1][4:] == (15, 26)


def test_forms_are_followed_but_not_for_ever() -> None:
    line = b"1 1 m 2 2 l S "
    assert len(painted_by(b"/A Do /A Do", A=line + b"/B Do", B=line)) == 4
    with pytest.raises(ValueError, match="too much"):
        painted_by(b"/A Do", A=b"/A Do")
    tenfold = {name: b"/%s Do " % following.encode() * 10 for name, following in pairwise("ABCDEFGH")}
    with pytest.raises(ValueError, match="too much"):
        painted_by(b"/A Do", **tenfold, H=line)
