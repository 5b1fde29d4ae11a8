"""Eliminations as a presenter tells them: those that say the same as one, what-ifs introduced by what they share.

In: told eliminations in order, all before one placement. Out: what is said of them. A pattern is named when it is first
met in a story.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from bookmaker.phrases import Phrasebook
from bookmaker.phrases.story import says_the_same, told_as_one
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.telling import BySymmetry, Candidates, Eliminates, MoreAlike, Names, SameHolds, WhatIfsFollow
from bookmaker.reasons.whatif import NoPlace, Refuted
from bookmaker.tell.passages import Said
from bookmaker.trace import Traced

FEW = 3
"""More what-ifs in a row than this are introduced by what they share, and may be folded after so many."""


class Eliminations:
    """Tells eliminations; remembers which techniques a story has named. `full` folds nothing."""

    def __init__(self, words: Phrasebook, full: bool) -> None:
        self.words = words
        self.full = full
        self.named: set[str] = {MARK}

    def told(self, steps: Sequence[Traced]) -> Iterator[Said]:
        """What is said of eliminations before one placement."""
        for what_if, run in groupby(
            steps, key=lambda told: isinstance(told.reason.claim, Refuted) and not told.mirrors
        ):
            mine = list(run)
            if what_if:
                yield from self._what_ifs(mine)
            else:
                yield from self._others(mine)

    def _others(self, steps: Sequence[Traced]) -> Iterator[Said]:
        before: Traced | None = None
        for mirrored, run in groupby(steps, key=lambda told: bool(told.mirrors)):
            if mirrored:
                images = list(run)
                yield Said(BySymmetry(_removed(images), None), _numbers(images))
                before = None
                continue
            for group in self._groups(list(run)):
                first, removed = group[0], _removed(group)
                if before and says_the_same(self.words, (before.reason, before.removed), (first.reason, removed)):
                    yield Said(SameHolds(first.reason, removed), _numbers(group))
                else:
                    yield from self._name(first)
                    yield Said(Eliminates(first.reason, removed), _numbers(group))
                before = first

    def _groups(self, steps: Sequence[Traced]) -> Iterator[list[Traced]]:
        """Neighbours that one sentence can tell."""
        group: list[Traced] = []
        for told in steps:
            if group and not told_as_one(self.words, (group[0].reason, _removed(group)), (told.reason, told.removed)):
                yield group
                group = []
            group.append(told)
        if group:
            yield group

    def _name(self, told: Traced) -> Iterator[Said]:
        if told.reason.technique not in self.named:
            self.named.add(told.reason.technique)
            yield Said(Names(told.reason))

    def _what_ifs(self, steps: Sequence[Traced]) -> Iterator[Said]:
        groups = list(self._groups(steps))
        if len(steps) > FEW and len(groups) > 1:
            self.named.add(steps[0].reason.technique)
            yield Said(_shared(self.words, steps))
        else:
            yield from self._name(steps[0])
        shown = groups if self.full or len(steps) <= FEW + 1 else groups[:FEW]
        for group in shown:
            yield Said(Eliminates(group[0].reason, _removed(group)), _numbers(group))
        if folded := [told for group in groups[len(shown) :] for told in group]:
            yield Said(MoreAlike(len(folded), _removed(folded)), _numbers(folded))


def _removed(steps: Sequence[Traced]) -> Candidates:
    return tuple(dict.fromkeys(pair for told in steps for pair in told.removed))


def _numbers(steps: Sequence[Traced]) -> tuple[int, ...]:
    return tuple(told.number for told in steps)


def _shared(words: Phrasebook, steps: Sequence[Traced]) -> WhatIfsFollow:
    """What some what-ifs have in common, the most telling first."""
    count = len(steps)
    ends = {told.reason.claim.end for told in steps if isinstance(told.reason.claim, Refuted)}
    first, *others = ends
    if isinstance(first, NoPlace) and not others:
        return WhatIfsFollow(count, house=first.house, digit=first.digit)
    marks = {None if isinstance(end, NoPlace) else end.mark for end in ends}
    cells, digits = ({pair[part] for told in steps for pair in told.removed} for part in (0, 1))
    mark, *more = marks
    if mark and not more:
        return WhatIfsFollow(count, mark=mark)
    if len(cells) == 1:
        return WhatIfsFollow(count, tried_cell=cells.pop())
    if len(digits) == 1:
        return WhatIfsFollow(count, tried_digit=digits.pop())
    if house := next((house.ref for house in words.grid.houses if cells <= {*house.cells}), None):
        return WhatIfsFollow(count, tried_house=house)
    kinds = {mark.kind if mark else "" for mark in marks}
    return WhatIfsFollow(count, kind=kinds.pop() if len(kinds) == 1 else "")
