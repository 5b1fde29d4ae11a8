"""PDFs that are made to hang, to burst or to mislead whoever reads them: each is named as damaged, or read, at once."""

from __future__ import annotations

import zlib
from collections.abc import Callable

import pikepdf
import pytest

from bookmaker.preflight import inspect
from tests.hostile.doors import pdfs, proofs


def _file(*objects: bytes, root: bytes = b"1 0 R") -> bytes:
    """A PDF of these objects, numbered from 1 on; its list of places is left for the reader to rebuild."""
    body = b"".join(b"%d 0 obj\n%s\nendobj\n" % (number, each) for number, each in enumerate(objects, start=1))
    return b"%PDF-1.7\n" + body + b"trailer\n<</Root %s>>\n" % root


def _page(contents: bytes, more: bytes = b"", box: bytes = b"[0 0 99 99]") -> bytes:
    """One page with that content."""
    return _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox%s/Contents 4 0 R/Resources<<%s>>>>" % (box, more),
        b"<</Length %d>>stream\n%s\nendstream" % (len(contents), contents),
    )


def _packed(content: bytes, times: int = 1) -> bytes:
    for _ in range(times):
        content = zlib.compress(content, 9)
    filters = b"/FlateDecode " * times
    return b"<</Length %d/Filter[%s]>>stream\n%s\nendstream" % (len(content), filters, content)


def _of_pages(pages: bytes, *more: bytes) -> bytes:
    return _file(b"<</Type/Catalog/Pages 2 0 R>>", pages, *more)


FORM = (
    b"<</Type/XObject/Subtype/Form/BBox[0 0 9 9]/Resources<</XObject<</A %d 0 R>>>>/Length 5>>stream\n/A Do\nendstream"
)

HOSTILE: dict[str, bytes] = {
    "nothing": b"",
    "a head alone": b"%PDF-1.7\n",
    "no root": b"%PDF-1.7\ntrailer\n<<>>\n",
    "a root that is itself": _file(b"1 0 R"),
    "pages in a ring": _of_pages(b"<</Type/Pages/Kids[2 0 R]/Count 1>>"),
    "pages that are each other's": _of_pages(b"<</Type/Pages/Kids[3 0 R]/Count 1>>", b"<</Type/Pages/Kids[2 0 R]>>"),
    "a count without pages": _of_pages(b"<</Type/Pages/Kids[]/Count 2147483647>>"),
    "a count below nothing": _of_pages(b"<</Type/Pages/Kids[]/Count -1>>"),
    "one page a thousand times": _of_pages(
        b"<</Type/Pages/Kids[%s]/Count 1000>>" % (b"3 0 R " * 1000),
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]>>",
    ),
    "a form that draws itself": _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R/Resources<</XObject<</A 5 0 R>>>>>>",
        b"<</Length 5>>stream\n/A Do\nendstream",
        FORM % 5,
    ),
    "forms that draw each other": _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R/Resources<</XObject<</A 5 0 R>>>>>>",
        b"<</Length 5>>stream\n/A Do\nendstream",
        FORM % 6,
        FORM % 5,
    ),
    "a form in a form, thirty deep, each drawn twice": _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R/Resources<</XObject<</A 5 0 R>>>>>>",
        b"<</Length 5>>stream\n/A Do\nendstream",
        *(
            b"<</Type/XObject/Subtype/Form/BBox[0 0 9 9]/Resources<</XObject<</A %d 0 R>>>>/Length 11>>stream\n"
            b"/A Do /A Do\nendstream" % (number + 1)
            for number in range(5, 35)
        ),
        b"<</Type/XObject/Subtype/Form/BBox[0 0 9 9]/Length 9>>stream\n0 0 1 1 re\nendstream",
    ),
    "a page packed a hundred times": _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R>>",
        _packed(b"0 0 1 1 re f\n" * 1000, 100),
    ),
    "a page packed twice that bursts": _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R>>",
        _packed(b" " * 300_000_000, 2),
    ),
    "ten thousand states kept": _page(b"q " * 10_000 + b"0 0 1 1 re f"),
    "states taken back that were not kept": _page(b"Q " * 10_000 + b"0 0 1 1 re f"),
    "deep lists": _page(b"[" * 50_000 + b"]" * 50_000 + b" TJ"),
    "deep dictionaries": _page(b"/A " + b"<</A" * 50_000 + b">>" * 50_000 + b" BDC"),
    "a deep object": _file(b"<</Type/Catalog/Pages 2 0 R/A %s%s>>" % (b"[" * 5_000, b"]" * 5_000)),
    "no numbers": _page(b"NaN Inf -Inf nan m 1e999 -1e999 l S 0 0 NaN NaN re f"),
    "giant numbers": _page(b"%s 0 m 0 %s l S %s w" % (b"9" * 400, b"-" + b"9" * 400, b"9" * 4000)),
    "giant scales": _page(b"1e38 0 0 1e38 0 0 cm " * 100 + b"0 0 99999999 99999999 re f"),
    "scales of nothing": _page(b"0 0 0 0 0 0 cm 0 0 9 9 re f BT /F 0 Tf (a) Tj ET"),
    "a giant sheet": _page(b"", box=b"[0 0 %s %s]" % (b"9" * 300, b"9" * 300)),
    "a sheet of no numbers": _page(b"", box=b"[(a) /B null NaN]"),
    "a sheet of less than nothing": _page(b"", box=b"[99 99 0 0]"),
    "a sheet that is a ring": _page(b"", box=b" 3 0 R"),
    "text without a font": _page(b"BT (abc) Tj ET"),
    "a font that is a ring": _page(b"BT /F 9 Tf (abc) Tj ET", b"/Font<</F 4 0 R>>"),
    "a length that lies": _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R>>",
        b"<</Length 999999999999>>stream\n0 0 1 1 re f\nendstream",
    ),
    "a length that is itself": _file(
        b"<</Type/Catalog/Pages 2 0 R>>",
        b"<</Type/Pages/Kids[3 0 R]/Count 1>>",
        b"<</Type/Page/Parent 2 0 R/MediaBox[0 0 99 99]/Contents 4 0 R>>",
        b"<</Length 4 0 R>>stream\n0 0 1 1 re f\nendstream",
    ),
}


@pytest.mark.parametrize("content", HOSTILE.values(), ids=HOSTILE)
def test_a_hostile_file_is_read_or_refused(content: bytes) -> None:
    report = inspect(content, "hostile.pdf", proofs())
    assert report.diagnostics
    assert not report.sound, "none of these is the book"


def _changed(change: Callable[[pikepdf.Pdf], None]) -> bytes:
    """The small book that the fuzzer damages, with something set by hand."""
    from io import BytesIO

    stream = BytesIO()
    with pikepdf.open(BytesIO(pdfs()[0])) as pdf:
        change(pdf)
        pdf.save(stream)
    return stream.getvalue()


def _fonts(pdf: pikepdf.Pdf) -> list[pikepdf.Object]:
    return [each for each in pdf.objects if isinstance(each, pikepdf.Dictionary) and each.get("/Type") == "/Font"]


def _without_widths(pdf: pikepdf.Pdf) -> None:
    for font in _fonts(pdf):
        for name in ("/Widths", "/W", "/FirstChar", "/ToUnicode"):
            if name in font:
                font[name] = pikepdf.Array([pikepdf.Name.A, pikepdf.String("x"), -(10**9)])


def _endless(pdf: pikepdf.Pdf) -> None:
    """Ranges of codes that would fill all memory."""
    for font in _fonts(pdf):
        if "/W" in font:
            font["/W"] = pikepdf.Array([0, 2_000_000_000, 500])
        if "/ToUnicode" in font:
            font["/ToUnicode"] = pdf.make_stream(b"1 beginbfrange\n<00000000> <FFFFFFFF> <0041>\nendbfrange")


def _programs(content: bytes) -> Callable[[pikepdf.Pdf], None]:
    def change(pdf: pikepdf.Pdf) -> None:
        for each in pdf.objects:
            if isinstance(each, pikepdf.Dictionary) and "/FontFile2" in each:
                each["/FontFile2"] = pdf.make_stream(content)

    return change


def _profile(content: bytes) -> Callable[[pikepdf.Pdf], None]:
    """An output intent for the press (PDF/X) with that profile."""

    def change(pdf: pikepdf.Pdf) -> None:
        profile = pdf.make_stream(content)
        intent = {"/S": pikepdf.Name.GTS_PDFX, "/OutputConditionIdentifier": "", "/DestOutputProfile": profile}
        pdf.Root["/OutputIntents"] = pikepdf.Array([pikepdf.Dictionary(intent)])
        pdf.docinfo["/GTS_PDFXVersion"] = "PDF/X-1a:2003"

    return change


@pytest.mark.parametrize(
    "change",
    [
        _without_widths,
        _endless,
        _programs(b""),
        _programs(b"\0\1\0\0" + b"\xff" * 400),
        _profile(b""),
        _profile(b"\xff" * 200),
    ],
    ids=["widths", "endless ranges", "no font program", "a damaged font program", "no profile", "a damaged profile"],
)
def test_damaged_fonts_and_profiles_are_named(change: Callable[[pikepdf.Pdf], None]) -> None:
    report = inspect(_changed(change), "hostile.pdf", proofs())
    assert not report.sound
    assert all(diagnostic.text for diagnostic in report.diagnostics)
