"""The .epub file: a ZIP archive that begins with its media type.

In: names and bytes in order. Out: the bytes of the archive, without a date, so that they are the same every time (EPUB
Open Container Format 3.3).
"""

from __future__ import annotations

from collections.abc import Mapping
from io import BytesIO
from zipfile import ZIP_DEFLATED, ZIP_STORED, ZipFile, ZipInfo

from bookmaker.hypertext.elements import element, xml

MEDIA_TYPE = "application/epub+zip"
PACKAGE = "EPUB/package.opf"


def container(files: Mapping[str, bytes]) -> bytes:
    """The archive of files that lie beside the package document, and of that."""
    rootfile = element("rootfile", full_path=PACKAGE)
    rootfile.set("media-type", "application/oebps-package+xml")
    root = element("container", element("rootfiles", rootfile), version="1.0")
    root.set("xmlns", "urn:oasis:names:tc:opendocument:xmlns:container")
    stream = BytesIO()
    with ZipFile(stream, "w") as archive:
        archive.writestr(_undated("mimetype"), MEDIA_TYPE, ZIP_STORED)
        archive.writestr(_undated("META-INF/container.xml"), xml(root), ZIP_DEFLATED, 9)
        for name, content in files.items():
            archive.writestr(_undated(f"EPUB/{name}"), content, ZIP_DEFLATED, 9)
    return stream.getvalue()


def _undated(name: str) -> ZipInfo:
    """An entry with the earliest date that an archive can hold, as any system writes it."""
    entry = ZipInfo(name, (1980, 1, 1, 0, 0, 0))
    entry.create_system = 3
    entry.external_attr = 0o644 << 16
    return entry
