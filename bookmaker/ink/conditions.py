"""How a press prints in four colours: printing conditions that are in a registry, and a printer's own profile.

A registered condition need not be described in the file: its name is enough for PDF/X-1a (ISO 15930-4). The names are
those of the ICC's Characterization Data Registry (from memory), the limits those that go with them in the trade (common
practice, no source).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

REGISTRY = "http://www.color.org"


@dataclass(frozen=True, slots=True)
class Condition:
    """A printing condition: its name, what it is in words, and its ICC profile where the file is to carry one.

    One that is not `registered` needs the profile.
    """

    name: str
    about: str
    registered: bool = True
    profile: bytes = field(default=b"", repr=False)


CONDITIONS: Mapping[str, Condition] = {
    name: Condition(name, about)
    for name, about in {
        "FOGRA39": "Offset on coated paper, ISO 12647-2:2004",
        "FOGRA47": "Offset on uncoated white paper, ISO 12647-2:2004",
        "FOGRA51": "Offset on coated paper, ISO 12647-2:2013",
        "FOGRA52": "Offset on uncoated white paper, ISO 12647-2:2013",
        "CGATS TR 006": "Commercial offset on coated paper, North America",
        "CGATS21-2-CRPC6": "Premium coated printing, CGATS 21-2 reference 6",
        "JC200103": "Offset on coated paper, Japan, ISO 12647-2:2004",
    }.items()
}

USUAL = CONDITIONS["FOGRA39"]
"""If nothing is said."""
