"""Filling in a sheet as a person does in a viewer: PDFium is clicked into each field and typed at."""

from __future__ import annotations

import ctypes
from collections.abc import Mapping
from io import BytesIO

import pypdfium2
import pypdfium2.raw as pdfium


def filled(file: bytes, answers: Mapping[str, str]) -> bytes:
    """The file as it is saved after the answers have been typed into the fields of these full names."""
    document = pypdfium2.PdfDocument(file)
    document.init_forms()
    form = document.formenv.raw
    left = dict(answers)
    for page in document:
        for at in range(pdfium.FPDFPage_GetAnnotCount(page.raw)):
            note = pdfium.FPDFPage_GetAnnot(page.raw, at)
            if pdfium.FPDFAnnot_GetSubtype(note) == pdfium.FPDF_ANNOT_WIDGET:
                corners = pdfium.FS_RECTF()
                pdfium.FPDFAnnot_GetRect(note, corners)
                middle = (corners.left + corners.right) / 2, (corners.top + corners.bottom) / 2
                pdfium.FORM_OnLButtonDown(form, page.raw, 0, *middle)
                pdfium.FORM_OnLButtonUp(form, page.raw, 0, *middle)
                for character in left.pop(_name(form, note), ""):
                    pdfium.FORM_OnChar(form, page.raw, ord(character), 0)
                pdfium.FORM_ForceToKillFocus(form)
            pdfium.FPDFPage_CloseAnnot(note)
    assert not left
    saved = BytesIO()
    document.save(saved)
    return saved.getvalue()


def _name(form: object, note: object) -> str:
    length = pdfium.FPDFAnnot_GetFormFieldName(form, note, None, 0)
    held = ctypes.create_string_buffer(length)
    pdfium.FPDFAnnot_GetFormFieldName(form, note, ctypes.cast(held, ctypes.POINTER(pdfium.FPDF_WCHAR)), length)
    return held.raw.decode("utf-16-le").rstrip("\0")
