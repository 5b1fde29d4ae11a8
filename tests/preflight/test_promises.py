"""Each promise of PDF/X broken on purpose, by pikepdf, in a file that keeps them all."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from io import BytesIO
from typing import Any

import pikepdf
import pytest

from bookmaker.display.items import Document, Page, Text
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.preflight import inspect

PAGE = Page(200, 200, (Text(50, 60, "Sound", "serif", 12),), "1")
SOUND = pdf_bytes(Document("A title", "", "", (PAGE,), created=date(2026, 3, 14)), press=True)


def changed(change: Callable[[pikepdf.Pdf], object], sound: bytes = SOUND) -> bytes:
    file = BytesIO()
    with pikepdf.open(BytesIO(sound)) as pdf:
        change(pdf)
        pdf.save(file)
    return file.getvalue()


def breaches(file: bytes) -> list[str]:
    return [diagnostic.text for diagnostic in inspect(file, "book.pdf").diagnostics if diagnostic.code == "pdfx"]


def link(x: float) -> Callable[[pikepdf.Pdf], None]:
    def add(pdf: pikepdf.Pdf) -> None:
        area = pikepdf.Array([x, 10, x + 20, 30])
        note = pikepdf.Dictionary(Type=pikepdf.Name.Annot, Subtype=pikepdf.Name.Link, Rect=area)
        pdf.pages[0].Annots = pikepdf.Array([note])

    return add


def state(**entries: Any) -> Callable[[pikepdf.Pdf], None]:
    def add(pdf: pikepdf.Pdf) -> None:
        pdf.pages[0].Resources.ExtGState = pikepdf.Dictionary(G0=pikepdf.Dictionary(**entries))

    return add


def test_a_sound_file() -> None:
    assert inspect(SOUND, "book.pdf").diagnostics == ()


@pytest.mark.parametrize(
    ("change", "said"),
    [
        (lambda pdf: pdf.Root.__delattr__("OutputIntents"), "output intent"),
        (lambda pdf: pdf.Root.OutputIntents.append(pdf.Root.OutputIntents[0]), "one printing condition"),
        (lambda pdf: pdf.Root.OutputIntents[0].__delattr__("OutputConditionIdentifier"), "no condition identifier"),
        (lambda pdf: pdf.Root.OutputIntents[0].__delattr__("DestOutputProfile"), "no profile describes it"),
        (lambda pdf: pdf.docinfo.__delitem__("/Title"), "no Title"),
        (lambda pdf: pdf.docinfo.__delitem__("/CreationDate"), "no CreationDate"),
        (lambda pdf: pdf.docinfo.__delitem__("/ModDate"), "no ModDate"),
        (lambda pdf: pdf.docinfo.__setitem__("/Trapped", pikepdf.Name.Unknown), "trapped"),
        (lambda pdf: pdf.Root.__setattr__("OpenAction", pikepdf.Dictionary(S=pikepdf.Name.Print)), "actions"),
        (lambda pdf: pdf.pages[0].__delitem__("/TrimBox"), "TrimBox or an ArtBox"),
        (lambda pdf: pdf.pages[0].__setitem__("/ArtBox", pikepdf.Array([0, 0, 9, 9])), "TrimBox or an ArtBox"),
        (link(50), "a link lies on the page"),
        (state(ca=0.5), "transparent"),
        (state(BM=pikepdf.Name.Multiply), "transparent"),
        (state(SMask=pikepdf.Dictionary(S=pikepdf.Name.Alpha)), "transparent"),
    ],
)
def test_breaches(change: Callable[[pikepdf.Pdf], object], said: str) -> None:
    (text,) = breaches(changed(change))
    assert said in text and "the file says it is PDF/X-1a:2003" in text


def test_what_is_allowed() -> None:
    assert breaches(changed(link(500))) == []  # beyond the bleed
    assert breaches(changed(state(ca=1, BM=pikepdf.Name.Normal, SMask=pikepdf.Name("/None")))) == []


def test_layered_versions_allow_what_is_see_through() -> None:
    def renamed(pdf: pikepdf.Pdf) -> None:
        pdf.docinfo["/GTS_PDFXVersion"] = pikepdf.String("PDF/X-4")
        state(ca=0.5)(pdf)

    assert breaches(changed(renamed)) == []


def test_a_promise_in_xmp_alone_counts() -> None:
    def moved(pdf: pikepdf.Pdf) -> None:
        del pdf.docinfo["/GTS_PDFXVersion"]
        del pdf.docinfo["/Trapped"]

    (text,) = breaches(changed(moved))
    assert "PDF/X-1a:2003" in text and "trapped" in text


def test_other_files_promise_nothing() -> None:
    screen = pdf_bytes(Document("A title", "", "", (PAGE,)))
    assert breaches(changed(link(50), screen)) == []
