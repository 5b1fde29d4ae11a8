"""ICC profiles that files carry, made here so that nobody else's has to be: of a black-only press, and of a screen.

Out: the bytes of profiles (ICC.1:2001-04, version 2.1): a monochrome output profile (clause 6.3.3.1) of black ink on
uncoated paper, and a three-component display profile (6.3.2.2) of sRGB, as IEC 61966-2-1 defines it. The curve of the
ink is worked out, not measured: printed dots grow by the usual parabola (`GROWTH` at a half tone), and the paper
between them reflects as Murray and Davies found (J. Franklin Inst. 221 (1936) 721–744). Growth and the reflectance of
solid ink are common practice of the trade, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from struct import pack

CONDITION = "Black ink on uncoated paper, 20 % tone value increase at 50 %"
"""What the first profile describes, in words."""

SCREEN = "sRGB, IEC 61966-2-1"
"""And the second."""

GROWTH = 0.20
"""By how much a tone of one half grows in print, as a share of the area."""

SOLID = 0.06
"""What solid black ink reflects, as a share of what the paper does."""

_D50 = (0.9642, 1.0, 0.8249)
_STEPS = 256

_PRIMARIES = ((0.4360747, 0.2225045, 0.0139322), (0.3850649, 0.7168786, 0.0971045), (0.1430804, 0.0606169, 0.7141733))
"""X, Y and Z of red, green and blue of sRGB, adapted to D50 as Bradford's matrix does (B. Lindbloom's tables)."""

_FINE = 1024


@cache
def grey_profile() -> bytes:
    """The profile. A device value of 0 is black, 1 is paper, as in DeviceGray."""
    curve = _curve([reflectance(at / (_STEPS - 1)) for at in range(_STEPS)])
    return _profile(b"prtr", b"GRAY", CONDITION, {b"kTRC": curve})


@cache
def screen_profile() -> bytes:
    """The profile of sRGB."""
    curve = _curve([_decoded(at / (_FINE - 1)) for at in range(_FINE)])
    tags = {b"%cXYZ" % name: b"XYZ \0\0\0\0" + _fixed(seen) for name, seen in zip(b"rgb", _PRIMARIES, strict=True)}
    return _profile(b"mntr", b"RGB ", SCREEN, tags | {b"%cTRC" % name: curve for name in b"rgb"})


def _decoded(value: float) -> float:
    """IEC 61966-2-1: from what a screen takes to what it shines."""
    return value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4


def _profile(device: bytes, space: bytes, said: str, tags: dict[bytes, bytes]) -> bytes:
    """A profile with what all have: its name, its white and that it is free."""
    tags = {
        b"desc": _description(said),
        b"cprt": b"text\0\0\0\0" + b"No rights reserved\0",
        b"wtpt": b"XYZ \0\0\0\0" + _fixed(_D50),
        **tags,
    }
    table, data = pack(">I", len(tags)), b""
    begin = 128 + 4 + 12 * len(tags)
    for name, content in tags.items():
        table += name + pack(">II", begin + len(data), len(content))
        data += content + bytes(-len(content) % 4)
    return _header(begin + len(data), device, space) + table + data


def reflectance(grey: float) -> float:
    """What a tone reflects in print, as a share of what the paper does; 0 is black ink, 1 is paper."""
    ink = 1 - grey
    printed = ink + 4 * GROWTH * ink * (1 - ink)
    return 1 - printed * (1 - SOLID)


def _curve(values: Sequence[float]) -> bytes:
    """Values from 0 to 1 at even steps."""
    return pack(f">4s4xI{len(values)}H", b"curv", len(values), *(round(65535 * value) for value in values))


def _header(size: int, device: bytes, space: bytes) -> bytes:
    """Size, version, class, device and connection space, date; sixteen bytes of flags and makers left at nought; matte
    paper; media-relative colorimetric; the white that connection spaces share."""
    made = pack(">6H", 2000, 1, 1, 0, 0, 0)
    kind = pack(">I4xI4s4s4s", size, 0x02100000, device, space, b"XYZ ") + made + b"acsp"
    return (kind + pack(">16xQI", 2, 1) + _fixed(_D50)).ljust(128, b"\0")


def _fixed(values: tuple[float, ...]) -> bytes:
    """Numbers with sixteen bits before and after the point."""
    return pack(f">{len(values)}i", *(round(value * 65536) for value in values))


def _description(text: str) -> bytes:
    """A text description with no translations: Unicode and ScriptCode stay empty."""
    said = text.encode("ascii") + b"\0"
    return b"desc\0\0\0\0" + pack(">I", len(said)) + said + bytes(8 + 3 + 67)
