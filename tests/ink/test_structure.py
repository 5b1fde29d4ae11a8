"""The structure tree: what belongs together, in which order it is read, and that nothing painted is left out."""

from __future__ import annotations

from dataclasses import replace
from io import BytesIO

import pikepdf
import pytest

from bookmaker.display.items import Anchor, Document, Group, Item, Link, Page, Rect, Text, tagged
from bookmaker.display.tags import BODY, ENTRY, HEADING, LINK, LIST, PARAGRAPH, PART, SECTION, Role, Tag
from bookmaker.ink.pdf import pdf_bytes
from tests.marked import assert_marked
from tests.told import told


def text(words: str, y: float = 50) -> Text:
    return Text(10, y, words, "sans", 12)


def made(*pages: tuple[Item, ...], language: str = "en", folded: bool = False) -> bytes:
    drawn = tuple(
        Page(300, 200, items, str(at), (Anchor(f"page {at}", 0, 0),)) for at, items in enumerate(pages, start=1)
    )
    return pdf_bytes(Document("A title", "", "", drawn, language=language, folded=folded))


def outline(file: bytes) -> list[str]:
    assert_marked(file)
    return [*told(file).outline()]


def test_what_has_no_tag_is_an_artifact() -> None:
    assert outline(made((text("12"), tagged((PARAGRAPH,), text("Words")), Rect(0, 0, 9, 9, fill=0.5)))) == [
        "Document",
        "  P “Words”",
    ]


def test_what_has_no_tag_of_its_own_in_a_section_is_an_artifact_too() -> None:
    file = made((tagged((SECTION,), Rect(0, 0, 9, 9, fill=0.5), tagged((PARAGRAPH,), text("Words")), text("12")),))
    assert outline(file) == ["Document", "  Sect", "    P “Words”"]
    with pikepdf.open(BytesIO(file)) as pdf:
        assert len(pdf.Root.StructTreeRoot.K.K[0].K) == 1


def test_lines_of_a_paragraph_are_one_element_across_pages() -> None:
    lines = [tagged((PART, PARAGRAPH), text("One")), tagged((PART.further, PARAGRAPH.further), text("two", 70))]
    after = (
        tagged((PART.further, PARAGRAPH.further), text("three")),
        tagged((PART.further, PARAGRAPH), text("Four", 70)),
    )
    file = made(tuple(lines), after)
    assert outline(file)[-1] == "    P “Four”"
    with pikepdf.open(BytesIO(file)) as pdf:
        part = pdf.Root.StructTreeRoot.K.K[0]
        first = part.K[0]
        pages = [page.obj.objgen for page in pdf.pages]
        assert [*first.K][:2] == [0, 1] and (first.K[2].MCID, first.K[2].Pg.objgen) == (0, pages[1])
        assert first.Pg.objgen == pages[0]


def test_siblings_are_read_by_their_order_and_else_as_painted() -> None:
    late, early = replace(PARAGRAPH, order=1), replace(PARAGRAPH, order=-1)
    items = [(late, "last"), (PARAGRAPH, "second"), (early, "first"), (PARAGRAPH, "third"), (early.further, "of all")]
    drawn = tuple(tagged((tag,), text(words, 20.0 * at)) for at, (tag, words) in enumerate(items, start=1))
    assert outline(made(drawn)) == ["Document", "  P “first of all”", "  P “second”", "  P “third”", "  P “last”"]


def test_levels_of_headings_follow_from_what_is_around_them() -> None:
    tops = (
        (HEADING,),
        (PART, HEADING),
        (PART.further, SECTION, HEADING),
        (PART.further, SECTION, HEADING),
        (PART, HEADING),
    )
    file = made(tuple(tagged(tags, text(f"Heading {at}", 20.0 * at)) for at, tags in enumerate(tops, start=1)))
    assert [heading.type for heading in told(file).every("H1", "H2", "H3")] == ["H1", "H2", "H3", "H3", "H2"]


def test_a_list_ends_where_something_else_stands() -> None:
    entries = (LIST, ENTRY, BODY), (LIST, ENTRY, BODY), (PARAGRAPH,), (LIST, ENTRY, BODY)
    lines = outline(made(tuple(tagged(tags, text("x", 9)) for tags in entries)))
    assert [line.split()[0] for line in lines if "LBody" not in line] == [
        "Document", "L", "LI", "LI", "P", "L", "LI",
    ]  # fmt: skip


@pytest.mark.parametrize("tags", [(PARAGRAPH, LINK), (PARAGRAPH,), ()])
def test_links_are_elements_whether_their_tags_say_so_or_not(tags: tuple[Tag, ...]) -> None:
    parts = (text("page 1"), Link(10, 40, 40, 12, "page 1", "page 1"))
    file = made((tagged(tags, *parts),) if tags else parts)
    assert_marked(file)
    with pikepdf.open(BytesIO(file)) as pdf:
        (note,) = pdf.pages[0].obj.Annots
        assert str(note.Contents) == "page 1" and note.F == 4


def test_figures_have_words_and_a_box_where_they_stand() -> None:
    figure = Tag(Role.FIGURE, "Two (2) tides — and a quay", box=(0, 0, 20, 10))
    file = made((Group((tagged((figure,), Rect(0, 0, 20, 10, fill=0.0)),), 30, 40, scale=2.0),))
    with pikepdf.open(BytesIO(file)) as pdf:
        found = pdf.Root.StructTreeRoot.K.K[0]
        assert str(found.Alt) == "Two (2) tides — and a quay"
        assert [float(edge) for edge in found.A.BBox] == [30, 140, 70, 160]


def test_cells_without_ink_say_what_they_are_and_heads_what_they_head() -> None:
    cells = (Tag(Role.ROW_HEAD, "row 1"), Tag(Role.CELL, "empty"), Tag(Role.CELL))
    row = tagged((Tag(Role.TABLE), Tag(Role.ROW)), *(tagged((tag,)) for tag in cells[:2]), tagged(cells[2:], text("7")))
    file = made((row,))
    assert outline(file) == ["Document", "  Table", "    TR row 1 | empty | 7"]
    with pikepdf.open(BytesIO(file)) as pdf:
        head, *others = pdf.Root.StructTreeRoot.K.K[0].K[0].K
        assert head.S == "/TH" and head.A.Scope == "/Row" and not [cell for cell in others if "/A" in cell]


@pytest.mark.parametrize(("language", "said"), [("en-GB", None), ("de", "en")])
def test_another_language_is_named_where_it_is_another(language: str, said: str | None) -> None:
    with pikepdf.open(
        BytesIO(made((tagged((replace(PARAGRAPH, language="en"),), text("x")),), language=language))
    ) as pdf:
        found = pdf.Root.StructTreeRoot.K.K[0]
        assert pdf.Root.Lang == language and found.get("/Lang") == said


def test_sheets_to_fold_and_files_for_the_press_have_no_structure() -> None:
    with pikepdf.open(BytesIO(made((tagged((PARAGRAPH,), text("x")),), folded=True))) as pdf:
        assert "/StructTreeRoot" not in pdf.Root and b"BDC" not in pdf.pages[0].Contents.read_bytes()


def test_it_says_which_standards_it_keeps() -> None:
    with pikepdf.open(BytesIO(made((text("x"),)))) as pdf:
        said = pdf.open_metadata()
        assert (said["pdfuaid:part"], said["pdfaid:part"], said["pdfaid:conformance"]) == ("1", "2", "U")
        assert said["dc:title"] == "A title"


def test_a_long_document_has_many_leaves_in_its_parent_tree() -> None:
    pages = [tuple(tagged((PARAGRAPH,), text(f"{at}", 10 + at)) for at in range(3))] * 700
    file = made(*pages)
    assert_marked(file)
    with pikepdf.open(BytesIO(file)) as pdf:
        assert len(pdf.Root.StructTreeRoot.ParentTree.Kids) == 2 and len(pdf.Root.StructTreeRoot.K.K) == 2100


def test_whoever_wants_a_page_alone_unpacks_no_structure() -> None:
    """An object stream is unpacked whole for one object in it."""
    file = made(*[(tagged((PARAGRAPH,), text("Words")),)] * 3)
    with pikepdf.open(BytesIO(file)) as pdf:
        streams = [each for each in pdf.objects if isinstance(each, pikepdf.Stream)]
        bundles = [each.read_bytes() for each in streams if each.get("/Type") == "/ObjStm"]
    assert sum(b"/Type /Page " in bundle for bundle in bundles) == 1
    assert sum(b"/StructTreeRoot" in bundle and b"/S/P" in bundle for bundle in bundles) == 1
    assert not [bundle for bundle in bundles if b"/Type /Page " in bundle and b"/S/P" in bundle]
