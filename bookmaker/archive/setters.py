"""Setters whose names are spelled in two ways.

In: names. Out: groups of spellings that are likely one person: the same but for capitals, accents, spaces and stops, or
one letter apart.
"""

from __future__ import annotations

from collections.abc import Iterable
from unicodedata import combining, normalize

SHORTEST = 5
"""Letters from which names that differ in one are taken for one; “Ann” and “Jan” may well be two."""


def spelled_twice(names: Iterable[str]) -> tuple[tuple[str, ...], ...]:
    """Groups of spellings, each in the order of the alphabet."""
    plain: dict[str, set[str]] = {}
    for name in names:
        if name:
            plain.setdefault(_plain(name), set()).add(name)
    leader = {each: each for each in plain}

    def first(each: str) -> str:
        while leader[each] != each:
            each = leader[each]
        return each

    without: dict[str, str] = {}
    for each in sorted(plain):
        if len(each) < SHORTEST:
            continue
        for shorter in {each, *(each[:i] + each[i + 1 :] for i in range(len(each)))}:
            other = without.setdefault(shorter, each)
            if other != each and _one_apart(each, other):
                leader[first(each)] = first(other)
    groups: dict[str, set[str]] = {}
    for each, spellings in plain.items():
        groups.setdefault(first(each), set()).update(spellings)
    return tuple(sorted(tuple(sorted(group)) for group in groups.values() if len(group) > 1))


def _plain(name: str) -> str:
    letters = normalize("NFKD", name).casefold()
    return "".join(char for char in letters if char.isalnum() and not combining(char))


def _one_apart(one: str, other: str) -> bool:
    """Does one letter more, one less, or another one in its place make the one of the other?"""
    short, long = sorted((one, other), key=len)
    if len(short) == len(long):
        return sum(a != b for a, b in zip(one, other, strict=True)) == 1
    return len(long) == len(short) + 1 and any(long[:i] + long[i + 1 :] == short for i in range(len(long)))
