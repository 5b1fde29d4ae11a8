"""The solve profile: the effort of a path, moment by moment, as the outline of a walk.

In: efforts, the narrow points among them, a width and a height in points. Out: one group that stands on the line y = 0
and reaches up from there. Heights go with the logarithm of the effort, so that the ups and downs of an easy path can
be seen on the scale of a hard one.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from math import log1p

from bookmaker.book.contents import Rating
from bookmaker.display.items import Group, Item, Point, Stroke
from bookmaker.display.shapes import polyline
from bookmaker.language import Catalogue

OUTLINE = Stroke(0.5, join="round")
GROUND = 0.85
"""Grey of the area under the outline."""


def profile_said(words: Catalogue, rating: Rating) -> str:
    """The profile in words: how many moments it has, and where it is narrow."""
    return _said(words, len(rating.profile), rating.narrow)


@lru_cache(maxsize=500)
def _said(words: Catalogue, moments: int, narrow: tuple[int, ...]) -> str:
    at = words.listed(str(at + 1) for at in narrow)
    name = "profile-narrow" if narrow else "profile-of"
    return words.say(name, n=moments, number=words.number(moments), at=at)


def profile(efforts: Sequence[float], narrow: Sequence[int], wide: float, high: float, ceiling: float) -> Group:
    """The profile, `ceiling` being the effort that reaches the full height less the room for the marks."""
    step = wide / len(efforts)
    mark = 0.16 * high
    room = high - 1.5 * mark
    tops = [-room * log1p(effort) / log1p(ceiling) for effort in efforts]
    edge: list[Point] = [(0.0, 0.0), (0.0, tops[0])]
    for at, (top, following) in enumerate(zip(tops, [*tops[1:], 0.0], strict=True), start=1):
        if top != following:
            edge += [(at * step, top), (at * step, following)]
    items: list[Item] = [polyline(edge, OUTLINE, GROUND, closed=True)]
    for at in narrow:
        x, y = min(max((at + 0.5) * step, mark / 2), wide - mark / 2), tops[at] - 0.4 * mark
        items.append(polyline([(x, y), (x - mark / 2, y - mark), (x + mark / 2, y - mark)], None, 0.0, closed=True))
    return Group(tuple(items), name="profile")
