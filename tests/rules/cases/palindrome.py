"""Cases for palindromes."""

from __future__ import annotations

SENTENCES = (
    ("palindrome: r3c3-r5c5", "The digits along the palindrome read the same from both ends."),
    ("palindrome: [r3c3-r5c5, r3c7-r5c5]", "The digits along each palindrome read the same from both ends."),
)

MISUSES = (
    ("palindrome: r1c1-r1c4", "palindrome-clash", "r1c1"),
    ("palindrome: r3c3-r5c5 r5c6 r4c6", "palindrome-clash", "r3c3"),
    ("palindrome: r5c5", "chain-short", "r5c5"),
    ("palindrome: r1c1 r3c3", "chain-jumps", "r1c1"),
    ("palindrome: [r3c3-r5c5, r5c5-r3c3]", "chain-twice", "r5c5-r3c3"),
)

DEDUCTIONS = (
    ("palindrome: r3c2 r3c3 r4c4 r5c4", {"r3c2": "123", "r4c4": "45"}, {"r5c4": "456789", "r3c3": "1236789"}),
)

CELLS = (2, 7)
