"""Fields to write in (ISO 32000-1, 12.7): one form a file, its fields in groups that share all but name and place.

In: fields of pages, in order. Out: their annotations, and the form in the catalogue. Nothing in it runs code. What is
written in a field is set by the viewer, in its own Helvetica, as large as the field allows.
"""

from __future__ import annotations

from bookmaker.display.items import Field
from bookmaker.ink.pdffile import PdfFile, text_string

_APPEARANCE = b"/DA (/Helv 0 Tf 0 g) /Q 1"
"""Size 0 lets the viewer choose one; in the middle of the field."""


class Form:
    """The form of one file; it takes no part in a file without fields."""

    def __init__(self, file: PdfFile) -> None:
        self._file = file
        self._groups: dict[str, tuple[int, int, list[int]]] = {}
        self._blank = 0

    def put(self, field: Field, corners: bytes, note: int, key: int) -> None:
        """Write the annotation `note` of a field: its place on the page, its key in the parent tree."""
        if not self._blank:
            self._blank = self._file.put_stream(b"/Type /XObject /Subtype /Form /BBox [0 0 1 1]", b"")
        group, _, kids = self._groups.setdefault(field.group, (self._file.reserve(), field.most, []))
        kids.append(note)
        self._file.put_way(
            b"<< /Type /Annot /Subtype /Widget /Parent %d 0 R /T %s /TU %s /F 4 /Rect [%s] /AP << /N %d 0 R >> "
            b"/StructParent %d >>"
            % (group, text_string(field.name), text_string(field.said), corners, self._blank, key),
            note,
        )

    def finish(self) -> None:
        """Write the groups, and say in the catalogue that there is a form."""
        if not self._groups:
            return
        for name, (group, most, kids) in self._groups.items():
            listed = b" ".join([b"%d 0 R" % kid for kid in kids])
            said = b"<< /FT /Tx /T %s /MaxLen %d %s /Kids [%s] >>"
            self._file.put_way(said % (text_string(name), most, _APPEARANCE, listed), group)
        font = b"<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Encoding /WinAnsiEncoding >>"
        fields = b" ".join([b"%d 0 R" % group for group, _, _ in self._groups.values()])
        form = b"<< /Fields [%s] /DR << /Font << /Helv %d 0 R >> >> %s >>"
        number = self._file.put(form % (fields, self._file.put(font), _APPEARANCE))
        self._file.catalogue("AcroForm", f"{number} 0 R")
