"""Cases for skyscrapers."""

from __future__ import annotations

MISUSES = (
    ("skyscraper: [3, 4]", "not-a-table", "["),
    ("skyscraper:\n  bottem: . 2 . . . . . . .", "unknown-key", "bottem"),
    ("skyscraper:\n  right: . 2 . . . . . . . .", "clue-count", ". 2"),
    ("skyscraper:\n  right: . 0 . . . . . . .", "out-of-range", "0"),
    ("skyscraper:\n  right: . . 10 . . . . . .", "out-of-range", "10"),
    (
        "skyscraper:\n  left: . 1 . . . . . . .\n  right: . 1 . . . . . . .\n  top: 3 . . . . . . . .",
        "clues-contradict",
        "1 . . . . . . .\n  top",
    ),
    ("skyscraper:\n  top: . 5 . . . . . . .\n  bottom: . 6 . . . . . . .", "clues-contradict", "6"),
    ("skyscraper:\n  left: . 3 . 1 . . . . 1\n  top: 3 . . . . . . . .", "clues-contradict", "1\n"),
    ("skyscraper:\n  left: . 3 . 9 . . . . 9\n  top: 3 . . . . . . . .", "clues-contradict", "9\n"),
)

SENTENCES = (
    (
        "skyscraper:\n  left: . 3 . . . . . . .",
        "The number in a house outside the grid tells how many digits of its row can be seen from that side, "
        "where a taller digit hides every shorter one behind it.",
    ),
    (
        "skyscraper:\n  left: . 3 . . . . . . .\n  bottom: 2 . 4 . . . . . .",
        "Each number in a house outside the grid tells how many digits of its row or column can be seen from that "
        "side, where a taller digit hides every shorter one behind it.",
    ),
)

DEDUCTIONS = (
    ("skyscraper:\n  left: 1 . . . . . . . .", {}, {"r1c1": "12345678"}),
    # The k-th cell holds at most 9 − 4 + k (common practice, no source).
    ("skyscraper:\n  right: 4 . . . . . . . .", {}, {"r1c9": "789", "r1c8": "89", "r1c7": "9"}),
    ("skyscraper:\n  top: 9 . . . . . . . .", {}, {"r1c1": "23456789", "r5c1": "12346789", "r9c1": "12345678"}),
    # Seen from the left are 7 and 9 only, so 8 stands behind the 9.
    (
        "skyscraper:\n  left: 2 . . . . . . . .",
        {"r1c1": "7", "r1c2": "12", "r1c3": "89", "r1c4": "12", "r1c5": "3", "r1c6-r1c8": "456", "r1c9": "89"},
        {"r1c3": "8", "r1c9": "9"},
    ),
)
