"""A small book for pages in the browser: sound puzzles, hostile words, one puzzle with two solutions, one with none."""

from __future__ import annotations

HOSTILE = "</script><script>window.struck=1</script><img src=x onerror=window.struck=1>"

BOOK = f"""\
book:
  title: 'Neap & <b>Spring</b>'
  subtitle: "{HOSTILE}"
  order: listed
puzzles:
  - id: paper-boat
    title: Paper Boat
    setter: Sandpiper
    shown: 2026-03-14
    permission: {{state: granted, by: Wick, on: 2026-03, printed: With thanks.}}
    tags: harbour, easter
    givens: |
      . 7 6 | . 5 1 | . . 3
      9 . 8 | . 7 . | 2 . .
      4 . . | . . . | . . 7
      ------+-------+------
      . . . | . . 4 | 1 3 .
      . . . | . . . | . . .
      . 8 7 | 9 . . | . . .
      ------+-------+------
      7 . . | . . . | . . 9
      . . 3 | . 9 . | 6 . 1
      5 . . | 3 1 . | 8 4 .
  - id: kite-string
    title: Kite String
    setter: Wick
    size: 6
    givens: |
      . . .  6 . .
      5 . .  . . .
      . . 2  . . .
      . . .  4 . .
      . . .  . . 6
      . . 4  . . .
    rules:
      thermometer:
        - r6c1-r4c1 r3c2
        - r1c6-r3c6 r4c5
  - id: hostile
    title: "{HOSTILE}"
    setter: "{HOSTILE}"
    note: "{HOSTILE}"
    size: 4
    givens: |
      1 2 3 .
      3 . 1 2
      2 . 4 3
      4 . 2 1
  - id: two-ways
    title: Two Ways
    size: 4
    givens: |
      1 2 3 4
      3 4 1 2
      2 . 4 .
      4 . 2 .
  - id: no-way
    title: No Way
    setter: Wick
    size: 4
    givens: |
      1 . . .
      . . 1 .
      . . . .
      . . . 2
    rules:
      diagonals: both
      inequality:
        - r1c1 > r1c2
"""
