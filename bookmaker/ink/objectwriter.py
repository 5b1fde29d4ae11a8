"""The objects of a PDF file on their way to a stream (ISO 32000-1, 7.5): how they are packed, and where each lies.

In: the bodies of objects, with their numbers. Out: the file, its objects in the order in which they were put. Large
streams are packed by another thread while the next pages are drawn, since zlib does not hold Python up. Where every
object lies is written in sections while pages pass (7.5.8), each of which names the one before it, so that no list of
all objects is kept; or, in a file without object streams, as a table at its end.
"""

from __future__ import annotations

import sys
import zlib
from array import array
from collections import deque
from collections.abc import Iterable
from itertools import accumulate, chain, count, pairwise
from queue import SimpleQueue
from threading import Thread
from typing import BinaryIO
from weakref import finalize

_PLACE = 0xFFFFFFFFFF
"""The five bytes of a place in a line of the table."""

_LINE = 8
"""Bytes of a line of the table."""

_UP = b"\2"
"""PNG's filter for a line told by its difference from the one above (7.4.4.4)."""

_LEVEL = 5
"""How hard to pack: the next level takes half as long again for half a hundredth of the size."""

_LARGE = 65_536
"""Streams of so many bytes or more are packed by another thread. Smaller ones, such as most pages, are packed here: the
threads would wait for each other longer than that takes."""

_AHEAD = 16
"""Objects that wait at most for a stream before them to be packed."""


class ObjectWriter:
    """Writes objects to a stream, each once."""

    def __init__(self, stream: BinaryIO, header: bytes) -> None:
        self._stream = stream
        self._written = 0
        self._places = {0: 0}
        self._section: int | None = None
        self._packer = _Packer()
        finalize(self, self._packer.end)  # where a file is given up halfway as well
        self._waiting: deque[tuple[int, bytes, bool]] = deque()  # a body, or the entries of a stream that is packed
        self._write(header)

    @property
    def unlisted(self) -> int:
        """How many objects no section lists yet."""
        return len(self._places) + len(self._waiting)

    def put(self, number: int, body: bytes) -> None:
        """An object as it is."""
        self._waiting.append((number, body, False))
        self._catch_up(_AHEAD)

    def put_stream(self, number: int, entries: bytes, content: bytes) -> None:
        """A stream, to be packed, with these entries in its dictionary."""
        if len(content) < _LARGE:
            self.put(number, _stream(entries, zlib.compress(content, _LEVEL)))
            return
        self._packer.give(content)
        self._waiting.append((number, entries, True))
        self._catch_up(_AHEAD)

    def put_bundle(self, number: int, objects: Iterable[tuple[int, bytes]]) -> None:
        """Objects with their numbers, as an object stream (7.5.7)."""
        numbers, bodies = zip(*objects, strict=True)
        self._places.update(zip(numbers, count(2 << 56 | number << 16), strict=False))
        starts = accumulate([len(body) + 1 for body in bodies], initial=0)
        head = b"%d %d " * len(numbers) % tuple(chain.from_iterable(zip(numbers, starts, strict=False)))
        said = b"/Type /ObjStm /N %d /First %d" % (len(numbers), len(head))
        self.put_stream(number, said, head + b"\n".join(bodies))

    def put_section(self, number: int, trailer: bytes) -> None:
        """Write where the objects lie that no section has yet, as a stream (7.5.8): a line says of each its kind, its
        place and its index in a bundle."""
        self._catch_up()
        section = self._written
        self._place(number)
        placed = sorted(self._places)
        lines = array("Q", [self._places[at] for at in placed])
        self._places.clear()
        if sys.byteorder == "little":
            lines.byteswap()
        gaps = [(last, first) for last, first in pairwise(placed) if first - last > 1]
        firsts, lasts = [placed[0], *(first for _, first in gaps)], [*(last for last, _ in gaps), placed[-1]]
        runs = [(first, last - first + 1) for first, last in zip(firsts, lasts, strict=True)]
        said = b"/Size %d %s" % (number + 1, trailer)
        if runs != [(0, number + 1)]:
            said += b" /Index [%s]" % b" ".join(b"%d %d" % (first, count) for first, count in runs)
        if self._section is not None:
            said += b" /Prev %d" % self._section
        packed = zlib.compress(_apart(lines.tobytes()), _LEVEL)
        said = (
            b"<< /Type /XRef %s /W [1 5 2] /Filter /FlateDecode /DecodeParms << /Predictor 12 /Columns 8 >> "
            b"/Length %d >>" % (said, len(packed))
        )
        self._write(b"%d 0 obj\n%s\nstream\n%s\nendstream\nendobj\n" % (number, said, packed))
        self._section = section

    def end(self) -> None:
        """End the file after its last section."""
        assert self._section is not None
        self._end(self._section)

    def end_with_table(self, size: int, trailer: bytes) -> None:
        """Write where every object lies, of so many, as a table (7.5.4), and end the file."""
        self._catch_up()
        table = self._written
        self._write(b"xref\n0 %d\n0000000000 65535 f \n" % size)
        for number in range(1, size):
            self._write(b"%010d 00000 n \n" % (self._places[number] >> 16 & _PLACE))
        self._write(b"trailer\n<< /Size %d %s >>\n" % (size, trailer))
        self._end(table)

    def _catch_up(self, ahead: int = 0) -> None:
        """Write what waits, up to a stream that is still to be packed and so many objects in all."""
        while self._waiting and (len(self._waiting) > ahead or not self._waiting[0][2]):
            number, body, packing = self._waiting.popleft()
            if packing:
                body = _stream(body, self._packer.take())
            self._place(number)
            self._write(b"%d 0 obj\n%s\nendobj\n" % (number, body))

    def _end(self, table: int) -> None:
        self._packer.end()
        self._write(b"startxref\n%d\n%%%%EOF\n" % table)

    def _place(self, number: int) -> None:
        """The object of that number begins here: its line of eight bytes."""
        self._places[number] = 1 << 56 | self._written << 16

    def _write(self, content: bytes) -> None:
        self._stream.write(content)
        self._written += len(content)


class _Packer(Thread):
    """Packs streams one after the other, in less of Python's time than an executor would take."""

    def __init__(self) -> None:
        super().__init__(daemon=True)
        self._given: SimpleQueue[bytes | None] = SimpleQueue()
        self._packed: SimpleQueue[bytes | Exception] = SimpleQueue()
        self.start()

    def run(self) -> None:
        while (content := self._given.get()) is not None:
            try:
                self._packed.put(zlib.compress(content, _LEVEL))
            except Exception as error:  # for lack of memory
                self._packed.put(error)

    def give(self, content: bytes) -> None:
        """Let a stream be packed."""
        self._given.put(content)

    def take(self) -> bytes:
        """The next stream, packed. Raises what went wrong with it."""
        packed = self._packed.get()
        if isinstance(packed, Exception):
            raise packed
        return packed

    def end(self) -> None:
        """Nothing more is given."""
        self._given.put(None)


def _stream(entries: bytes, packed: bytes) -> bytes:
    return b"<< %s /Filter /FlateDecode /Length %d >>\nstream\n%s\nendstream" % (entries, len(packed), packed)


def _apart(lines: bytes) -> bytes:
    """Lines of a table, each written as its filter and what it differs by from the one above (7.4.4.4)."""
    here, above = int.from_bytes(lines, "big"), int.from_bytes(lines[:-_LINE], "big")
    high = int.from_bytes(b"\x80" * len(lines), "big")
    # the difference of all bytes at once: high bits apart, so that nothing is borrowed from the next byte
    apart = (((here | high) - (above & ~high)) ^ (~(here ^ above) & high)).to_bytes(len(lines), "big")
    count = len(lines) // _LINE
    filtered = bytearray(_UP * (count * (1 + _LINE)))
    for at in range(_LINE):
        filtered[at + 1 :: 1 + _LINE] = apart[at::_LINE]
    return bytes(filtered)
