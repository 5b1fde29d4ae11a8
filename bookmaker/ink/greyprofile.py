"""The printing condition of a black-only press as an ICC profile, made here so that nobody else's has to be carried.

Out: the bytes of a monochrome output profile (ICC.1:2001-04, version 2.1, clause 6.3.3.1): black ink on uncoated paper.
The curve is worked out, not measured: printed dots grow by the usual parabola (`GROWTH` at a half tone), and the paper
between them reflects as Murray and Davies found (J. Franklin Inst. 221 (1936) 721–744). Growth and the reflectance of
solid ink are common practice of the trade, no source.
"""

from __future__ import annotations

from functools import cache
from struct import pack

CONDITION = "Black ink on uncoated paper, 20 % tone value increase at 50 %"
"""The printing condition in words."""

GROWTH = 0.20
"""By how much a tone of one half grows in print, as a share of the area."""

SOLID = 0.06
"""What solid black ink reflects, as a share of what the paper does."""

_D50 = (0.9642, 1.0, 0.8249)
_STEPS = 256


@cache
def grey_profile() -> bytes:
    """The profile. A device value of 0 is black, 1 is paper, as in DeviceGray."""
    tags = {
        b"desc": _description(CONDITION),
        b"cprt": b"text\0\0\0\0" + b"No rights reserved\0",
        b"wtpt": b"XYZ \0\0\0\0" + _fixed(_D50),
        b"kTRC": pack(f">4s4xI{_STEPS}H", b"curv", _STEPS, *_curve()),
    }
    table, data = pack(">I", len(tags)), b""
    begin = 128 + 4 + 12 * len(tags)
    for name, content in tags.items():
        table += name + pack(">II", begin + len(data), len(content))
        data += content + bytes(-len(content) % 4)
    return _header(begin + len(data)) + table + data


def reflectance(grey: float) -> float:
    """What a tone reflects in print, as a share of what the paper does; 0 is black ink, 1 is paper."""
    ink = 1 - grey
    printed = ink + 4 * GROWTH * ink * (1 - ink)
    return 1 - printed * (1 - SOLID)


def _curve() -> list[int]:
    return [round(65535 * reflectance(step / (_STEPS - 1))) for step in range(_STEPS)]


def _header(size: int) -> bytes:
    """Size, version, class, device and connection space, date; sixteen bytes of flags and makers left at nought; matte
    paper; media-relative colorimetric; the white that connection spaces share."""
    made = pack(">6H", 2000, 1, 1, 0, 0, 0)
    kind = pack(">I4xI4s4s4s", size, 0x02100000, b"prtr", b"GRAY", b"XYZ ") + made + b"acsp"
    return (kind + pack(">16xQI", 2, 1) + _fixed(_D50)).ljust(128, b"\0")


def _fixed(values: tuple[float, ...]) -> bytes:
    """Numbers with sixteen bits before and after the point."""
    return pack(f">{len(values)}i", *(round(value * 65536) for value in values))


def _description(text: str) -> bytes:
    """A text description with no translations: Unicode and ScriptCode stay empty."""
    said = text.encode("ascii") + b"\0"
    return b"desc\0\0\0\0" + pack(">I", len(said)) + said + bytes(8 + 3 + 67)
