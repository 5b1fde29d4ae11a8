"""Is all that a PDF paints either part of an element or an artifact (ISO 14289-1, 7.1), and does the tree know of it?

In: a file. Out: nothing, or an assertion that fails at the first page where something is amiss. Read by pikepdf.
"""

from __future__ import annotations

from io import BytesIO
from typing import Any

import pikepdf

PAINTS = {"S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "sh", "Do", "Tj", "TJ", "'", '"', "BI", "EI", "INLINE IMAGE"}


def assert_marked(file: bytes) -> None:
    with pikepdf.open(BytesIO(file)) as pdf:
        root = pdf.Root.StructTreeRoot
        parents = dict(numbers(root.ParentTree))
        assert pdf.Root.MarkInfo.Marked and pdf.Root.ViewerPreferences.DisplayDocTitle
        for number, page in enumerate(pdf.pages, start=1):
            assert page.obj.Tabs == "/S", number
            holders = parents[int(page.obj.StructParents)]
            contents = _contents(page)
            assert contents == [*range(len(holders))], number
            for at, element in enumerate(holders):
                assert at in _held(element, page), (number, at)
            for note in page.obj.get("/Annots", ()):
                holder = parents[int(note.StructParent)]
                assert str(note.Contents if holder.S == "/Link" else note.TU), number
                assert holder.S in ("/Link", "/Form") and any(_is_object(kid, note) for kid in _kids(holder)), number
        _walk(root.K, root)


def _contents(page: pikepdf.Page) -> list[int]:
    """The numbers of marked content in order; whatever is painted stands in one, or in an artifact."""
    around: list[int | str] = []
    met = []
    for one in pikepdf.parse_content_stream(page):
        operands = one.operands
        match str(one.operator):
            case "BMC":
                around.append(str(operands[0]))
            case "BDC":
                number = operands[1].get("/MCID") if isinstance(operands[1], pikepdf.Dictionary) else None
                around.append(str(operands[0]) if number is None else int(number))
                if number is not None:
                    met.append(int(number))
            case "EMC":
                around.pop()
            case painted if painted in PAINTS:
                held = [one for one in around if isinstance(one, int) or one == "/Artifact"]
                assert len(held) == 1, (painted, around)
    assert not around
    return met


def numbers(tree: Any) -> Any:
    for kid in tree.get("/Kids", ()):
        yield from numbers(kid)
    listed = [*tree.get("/Nums", ())]
    yield from zip(map(int, listed[::2]), listed[1::2], strict=True)


def _kids(element: Any) -> list[Any]:
    kids = element.get("/K", [])
    return [*kids] if isinstance(kids, pikepdf.Array | list) else [kids]


def _held(element: Any, page: pikepdf.Page) -> set[int]:
    """The numbers of marked content on a page that an element says it holds."""
    held = set()
    for kid in _kids(element):
        if isinstance(kid, int) and element.Pg.objgen == page.obj.objgen:
            held.add(int(kid))
        elif isinstance(kid, pikepdf.Dictionary) and "/MCID" in kid and kid.get("/Pg", element.Pg) == page.obj:
            held.add(int(kid.MCID))
    return held


def _is_object(kid: Any, note: Any) -> bool:
    return isinstance(kid, pikepdf.Dictionary) and "/Obj" in kid and kid.Obj.objgen == note.objgen


def _walk(element: Any, parent: Any) -> None:
    """Kids know their parents, and figures have words."""
    assert element.P.objgen == parent.objgen
    assert element.S != "/Figure" or str(element.Alt)
    for kid in _kids(element):
        if isinstance(kid, pikepdf.Dictionary) and "/S" in kid:
            _walk(kid, element)
