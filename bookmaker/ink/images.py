"""The images of one PDF file, each stored once however often it is printed.

In: image items. Out: the numbers of their objects (ISO 32000-1, 8.9.5), in greys, or in the colours of a screen or of a
press.
"""

from __future__ import annotations

from bookmaker.display.items import Image
from bookmaker.ink.conditions import Condition
from bookmaker.ink.pdffile import PdfFile
from bookmaker.ink.pictures import grey_picture, press_picture, screen_picture


class Images:
    """With a `condition`, colours are those of that press."""

    def __init__(self, file: PdfFile, condition: Condition | None) -> None:
        self._file, self._condition = file, condition
        self._stored: dict[tuple[bytes, bool], int] = {}

    def stored(self, image: Image) -> int:
        """The number of the image; it is written if it is new. Raises OSError if it is neither PNG nor JPEG."""
        key = image.source, image.coloured
        if key not in self._stored:
            if not image.coloured:
                space, picture = b"DeviceGray", grey_picture(image.source)
            elif self._condition:
                space, picture = b"DeviceCMYK", press_picture(image.source, self._condition.profile)
            else:
                space, picture = b"DeviceRGB", screen_picture(image.source)
            said = b"/Type /XObject /Subtype /Image /Width %d /Height %d /ColorSpace /%s /BitsPerComponent 8"
            self._stored[key] = self._file.put_stream(said % (*picture.size, space), picture.tobytes())
        return self._stored[key]
