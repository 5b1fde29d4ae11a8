"""The order of a collection: rising, and no two alike side by side.

In: the cards of one part. Out: their order. Each stands within a few places of where it would stand by difficulty
alone, as few as do. Of all such orders in which no band stands after a higher one, that with the fewest alike
neighbours, and among these with the fewest steps down, is found by going through the places one by one and keeping the
best way to every state (dynamic programming), so it is the best there is.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.archive.cards import Card
from bookmaker.assemble.plan import trait

REACHES = (1, 2, 3, 4, 5, 6)

Cost = tuple[int, int, int]
"""Steps to a lower band, alike neighbours, and tenths of a band by which the order steps down."""

Way = tuple[Cost, int, "Way | None"]
"""What a way costs, its last card, and the way up to there."""


def ordered(
    cards: Sequence[Card], chosen: Sequence[int], apart: Sequence[str], rising_bands: bool = True
) -> tuple[tuple[int, ...], int]:
    """The order, and how many neighbours in it are alike all the same. Without `rising_bands` a lower band may stand
    after a higher one, if that keeps apart what is alike."""
    rising = sorted(chosen, key=lambda at: (cards[at].difficulty, cards[at].effort, cards[at].id))
    found, alike = tuple(rising), 0
    if apart and len(rising) > 1:
        for reach in REACHES:
            places, alike = _best(cards, rising, apart, reach, rising_bands)
            found = tuple(rising[at] for at in places)
            if not alike:
                break
    return found, alike


def _best(
    cards: Sequence[Card], rising: Sequence[int], apart: Sequence[str], reach: int, rising_bands: bool
) -> tuple[list[int], int]:
    traits = [[trait(cards[at], sort) for sort in apart] for at in rising]
    tenths = [int(cards[at].difficulty * 10) for at in rising]
    count = len(rising)

    def price(one: int, other: int) -> Cost:
        alike = sum(a is not None and a == b for a, b in zip(traits[one], traits[other], strict=True))
        lower = rising_bands and cards[rising[one]].band > cards[rising[other]].band
        return int(lower), alike, max(tenths[one] - tenths[other], 0)

    # A state: which of the cards around this place are taken (bit k for card place − reach + k), and the last of them.
    best: dict[tuple[int, int], Way] = {((1 << reach) - 1, -1): ((0, 0, 0), -1, None)}
    for place in range(count):
        onward: dict[tuple[int, int], Way] = {}
        for (taken, last), way in best.items():
            for k in range(2 * reach + 1) if taken & 1 else (0,):  # one that would fall out of reach comes now
                card = place - reach + k
                if not 0 <= card < count or taken >> k & 1:
                    continue
                more = price(last, card) if last >= 0 else (0, 0, 0)
                cost = way[0][0] + more[0], way[0][1] + more[1], way[0][2] + more[2]
                state = ((taken | 1 << k) >> 1, card)
                if state not in onward or cost < onward[state][0]:
                    onward[state] = (cost, card, way)
        best = onward
    end: Way | None = min(best.values(), key=lambda way: way[0])
    assert end is not None
    alike, places = end[0][1], []
    while end is not None and end[1] >= 0:
        places.append(end[1])
        end = end[2]
    return places[::-1], alike
