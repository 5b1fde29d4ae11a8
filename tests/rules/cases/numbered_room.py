"""Cases for numbered rooms."""

from __future__ import annotations

MISUSES = (
    ("numbered-room: left", "not-a-table", "left"),
    ("numbered-room:\n  north: . 5 . . . . . . .", "unknown-key", "north"),
    ("numbered-room:\n  left: . 5 . .", "clue-count", ". 5"),
    ("numbered-room:\n  left: . 5 . A . . . . .", "not-a-digit", "A"),
    ("numbered-room:\n  left: . 5 . 0 . . . . .", "not-a-digit", "0"),
    ("numbered-room:\n  left: . 5 . 12 . . . . .", "not-a-digit", "12"),
    ("numbered-room:\n  left: . . . . . . . . .", "no-clues", "left"),
)

SENTENCES = (
    (
        "numbered-room:\n  bottom: . . . 4 . . . . .",
        "The digit in a door outside the grid goes in the nth cell of its column from that side, n being the "
        "first digit there.",
    ),
    (
        "numbered-room:\n  left: . . . 4 . . . . .\n  top: . 8 . . . . . . .",
        "Each digit in a door outside the grid goes in the nth cell of its row or column from that side, n being "
        "the first digit there.",
    ),
)

DEDUCTIONS = (
    # The first cell counts neither to itself nor to the place that its own digit would take.
    ("numbered-room:\n  left: 5 . . . . . . . .", {}, {"r1c1": "15"}),
    ("numbered-room:\n  left: 5 . . . . . . . .", {"r1c1": "24"}, {"r1c3 r1c5-r1c9": "5"}),
    (
        "numbered-room:\n  bottom: 1 . . . . . . . .",
        {"r9c1": "2345", "r5c1-r7c1": "23"},
        {"r9c1": "345", "r1c1-r4c1": "1"},
    ),
)

FROM_ZERO = (
    # The first digit counts from 1 to 8, and neither to itself nor with the digit of the door.
    ("numbered-room:\n  left: 4 . . . . . . . .", {}, {"r1c1": "014", "r1c9": "4"}),
    ("numbered-room:\n  left: 1 . . . . . . . .", {"r1c1": "01"}, {"r1c1": "0"}),
)
