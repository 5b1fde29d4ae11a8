"""What the demo book should hold: an invented club by a harbour, its pen names, and a recipe for each puzzle.

Quill Harbour, its puzzle table and everybody who sets for it are made up. The marks that are shapes are drawn here by
hand; marks with values (totals, dots, clues) are read off the solution that a seed gives.
"""

from __future__ import annotations

from dataclasses import dataclass

from tests.makers.draw import Recipe
from tests.makers.shapes import entry, sides, wheel


@dataclass(frozen=True)
class Chapter:
    """A chapter with the file its puzzles are written to."""

    file: str
    title: str
    note: str
    recipes: tuple[Recipe, ...]


SAILS = """
aaaabbccc
adabbcccc
adabbbbcc
ddabeefff
ddeeeeeff
dddeehiff
gghhhhifi
gggghhifi
ggghhiiii
"""

NET_LOFT = (
    Recipe("first-light", "First Light", "Sandpiper", 1, size=6, note="For whoever arrives before the kettle boils."),
    Recipe("mooring-line", "Mooring Line", "Sandpiper", 1),
    Recipe("ebb", "Ebb", "Mudlark", 2),
    Recipe("chart-table", "Chart Table", "The Pilot", 2),
    Recipe("harbour-wall", "Harbour Wall", "Old Heron", 3),
    Recipe("spring-tide", "Spring Tide", "Old Heron", 4),
    Recipe("lowest-water", "Lowest Water", "Brine", 5, draws=16),
    Recipe("patchwork", "Patchwork", "Wick", 2, regions=SAILS, note="Nine regions cut from one old sail."),
)

CHANNEL = (
    Recipe("four-buoys", "Four Buoys", "Eelgrass", 1, entry("thermometer", wheel("r1c2-r1c4 r2c5", "r4c2-r2c2"))),
    Recipe(
        "two-tides",
        "Two Tides",
        "Brine",
        3,
        entry("thermometer", ("r1c2-r1c4 r2c5", "r8c5 r9c6-r9c8", "r2c2-r4c2 r5c3", "r5c7 r6c8-r8c8")),
        mirrored=True,
        note="What rises on one side falls on the other; deductions come in pairs.",
    ),
    Recipe(
        "delta",
        "Delta",
        "Mudlark",
        3,
        entry("thermometer", wheel("r5c5-r4c5 r3c4 r2c3 r1c3", "r5c5-r4c5 r3c6 r2c7 r1c7", arms=2)),
    ),
    Recipe("mudflats", "Mudflats", "Eelgrass", 2, entry("resting-thermometer", wheel("r2c1 r1c2-r1c3 r2c4 r3c5"))),
    Recipe(
        "there-and-back",
        "There and Back",
        "Wick",
        2,
        entry("palindrome", wheel("r1c2 r2c1-r3c1 r4c2 r5c3")),
    ),
    Recipe("choppy", "Choppy", "Brine", 4, entry("difference-line", wheel("r1c3-r3c1 r4c2", "r3c4 r4c5 r3c6"))),
    Recipe(
        "string-of-floats",
        "String of Floats",
        "Sandpiper",
        2,
        entry("consecutive-line", wheel("r1c2-r1c5", "r3c3-r3c5")),
    ),
    Recipe(
        "two-lights",
        "Between Two Lights",
        "Old Heron",
        3,
        entry("bounded-line", (*sides("r1c2-r4c2 r5c3"), "r9c3 r8c4 r7c5 r8c6 r9c7", "r3c5-r6c5", *sides("r6c1-r9c1"))),
    ),
    Recipe(
        "equal-catch",
        "Equal Catch",
        "The Pilot",
        3,
        entry("equal-part-line", wheel("r2c2-r2c5 r3c6")),
    ),
    Recipe(
        "oilskin",
        "Oilskin",
        "Wick",
        4,
        entry("hinge-line", (*wheel("r1c2-r1c6", arms=2), *sides("r3c1 r4c2-r6c2 r7c1"), "r3c4 r4c5 r5c5 r6c5 r7c6")),
    ),
    Recipe(
        "paces", "Paces", "Mudlark", 2, entry("even-step-line", (*sides("r1c1-r3c3"), *sides("r6c4-r8c2"), "r4c5-r6c5"))
    ),
    Recipe(
        "weather-vane",
        "Weather Vane",
        "Eelgrass",
        3,
        """
arrow:
  - circle: r5c5
    shafts: [r4c5-r3c5, r6c5-r7c5]
  - circle: r2c2
    shafts: [r1c3 r1c4]
  - circle: r2c8
    shafts: [r3c9 r4c9]
  - circle: r8c8
    shafts: [r9c7 r9c6]
  - circle: r8c2
    shafts: [r7c1 r6c1]
  - circle: r5c2
    shafts: [r4c3 r3c4]
  - circle: r5c8
    shafts: [r6c7 r7c6]
""",
    ),
    Recipe(
        "soundings",
        "Soundings",
        "Brine",
        5,
        """
arrow:
  - circle: r1c1 r1c2
    shafts: [r2c2-r4c2]
  - circle: r9c8 r9c9
    shafts: [r8c8-r6c8]
  - circle: r4c4
    shafts: [r3c4 r2c5]
  - circle: r6c6
    shafts: [r7c6 r8c5]
  - circle: r1c8
    shafts: [r2c8 r3c7]
  - circle: r9c2
    shafts: [r8c2 r7c3]
""",
        note="The ovals hold two-digit numbers.",
    ),
)

PENS = (
    Recipe("lobster-pots", "Lobster Pots", "Mudlark", 2, lay=("cage",)),
    Recipe("full-hold", "Full Hold", "Old Heron", 5, lay=("cage",), draws=8, note="Bring a rubber."),
    Recipe(
        "sandbank",
        "Sandbank",
        "Eelgrass",
        1,
        """
extra-region:
  - r2c2-r2c5 r3c5 r3c4 r4c4 r4c3 r3c3
  - r8c8-r8c5 r7c5 r7c6 r6c6 r6c7 r7c7
""",
    ),
    Recipe(
        "sister-ships",
        "Sister Ships",
        "Wick",
        4,
        """
clone:
  A:
    - r1c2 r2c1-r2c3 r3c2
    - r5c4 r6c3-r6c5 r7c4
  B:
    - r3c7 r4c7 r4c8
    - r7c8 r8c8 r8c9
""",
        note="Two pairs, each from one yard.",
    ),
    Recipe("portholes", "Portholes", "The Pilot", 2, "windows: yes"),
    Recipe(
        "tight-moorings",
        "Tight Moorings",
        "The Pilot",
        1,
        """
cage:
  - {cells: r1c2 r2c1-r2c2, total: 6}
  - {cells: r1c6-r1c7, total: 3}
  - {cells: r3c7-r3c8, total: 4}
  - {cells: r4c2-r5c2, total: 17}
  - {cells: r4c7-r4c8, total: 16}
  - {cells: r5c8-r6c8, total: 3}
  - {cells: r6c2-r6c3, total: 4}
  - {cells: r7c2-r7c3, total: 16}
  - {cells: r8c8-r8c9 r9c8, total: 24}
  - {cells: r9c3-r9c4, total: 17}
inequality:
  - r4c4 < r4c5 < r4c6 < r5c6 < r5c5 < r5c4 < r6c4 < r6c5 < r6c6
""",
        draws=2,
        note="Cages and signs are forced; once they are filled, a classic is left.",
    ),
    Recipe("crab-market", "Crab Market", "Brine", 3, "diagonals: both", lay=("cage",)),
)

QUAY = (
    Recipe("pearls", "Pearls", "Sandpiper", 2, lay=("dots",)),
    Recipe(
        "toll-marks",
        "Toll Marks",
        "Mudlark",
        2,
        lay=("sum-marks",),
        note="Late on, the only way forward is a lone naked single on a crowded board.",
    ),
    Recipe("tide-race", "Tide Race", "Eelgrass", 2, lay=("inequality",)),
    Recipe(
        "planks",
        "Planks",
        "Wick",
        3,
        lay=("consecutive-bars",),
        note="All bars are drawn, so a missing bar is a clue.",
    ),
    Recipe("rivets", "Rivets", "Old Heron", 4, lay=("quadruple",), pairs=6, draws=16),
    Recipe("port-starboard", "Port and Starboard", "Sandpiper", 1, lay=("parity",)),
    Recipe("crests", "Crests and Troughs", "Brine", 3, lay=("peaks",)),
    Recipe("load-lines", "Load Lines", "The Pilot", 2, lay=("limits",), pairs=8),
)

SHORE = (
    Recipe("slanting-light", "Slanting Light", "Old Heron", 3, lay=("diagonal-sum",), pairs=6, draws=2),
    Recipe(
        "sandwich-board",
        "Sandwich Board",
        "Mudlark",
        4,
        lay=("sandwich",),
        pairs=4,
        note="First ask how far apart the crusts are.",
    ),
    Recipe("waterfront", "Waterfront", "The Pilot", 4, lay=("skyscraper",), pairs=5),
    Recipe("cross-bearings", "Cross Bearings", "Brine", 5, lay=("x-sum",), pairs=5),
    Recipe("lookout", "Lookout", "Sandpiper", 1, lay=("first-seen",), pairs=6),
    Recipe("berth-numbers", "Berth Numbers", "Wick", 3, lay=("numbered-room",), pairs=6),
)

HARBOUR = (
    Recipe("rigging", "Rigging", "Sandpiper", 2, "diagonals: both"),
    Recipe("knights-at-anchor", "Knights at Anchor", "Old Heron", 4, "knight: yes"),
    Recipe("kings-at-anchor", "Kings at Anchor", "Old Heron", 3, "king: yes"),
    Recipe(
        "no-two-waves",
        "No Two Waves",
        "Brine",
        3,
        "non-consecutive: yes",
        note="Nothing is drawn, and every border counts.",
    ),
    Recipe("crews", "Crews", "Eelgrass", 2, "disjoint-groups: yes"),
    Recipe(
        "regatta",
        "Regatta",
        "The Pilot",
        5,
        "king: yes\n" + entry("thermometer", wheel("r1c1 r2c2 r3c3", "r2c5 r3c5 r4c5")),
        note="The heats set off from the corners and from the four sides.",
    ),
)

CHAPTERS = (
    Chapter("net-loft.yaml", "In the Net Loft", "Nothing but the rows, the columns and the regions.", NET_LOFT),
    Chapter("channel.yaml", "Along the Channel", "Lines through the grid, each with its own law.", CHANNEL),
    Chapter("pens.yaml", "Pots and Pens", "Areas fenced off, as cages, clones and extra regions.", PENS),
    Chapter("quay.yaml", "Neighbours on the Quay", "Signs between cells, at their corners and inside them.", QUAY),
    Chapter("shore.yaml", "From the Shore", "Clues that stand outside and look in.", SHORE),
    Chapter("harbour.yaml", "The Whole Harbour", "One rule for every cell at once.", HARBOUR),
)
