"""Is every mark of a puzzle in sight? Asked of each grid before its page is made.

In: the items that a grid is drawn with, and where the rules of its puzzle stand in the manifest. Out: a diagnostic for
each mark that is hidden by another, at the rule it belongs to.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bookmaker.display.colour import grey_of
from bookmaker.display.items import Group, Item, Text
from bookmaker.geometry import text_start
from bookmaker.layout.art.gridart import HALO, Owner
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.words.wording import listed
from bookmaker.sight import Drawn, Hidden, hidden, shapes
from bookmaker.sight.shapes import letter
from bookmaker.source.diagnostics import Diagnostic, Place

_LETTER = "a letter of the check row"


def out_of_sight(
    drawn: Iterable[tuple[Item, Owner]],
    title: str,
    place: Place,
    rules: Sequence[tuple[Rule, Place]],
    over: Group | None = None,
) -> list[Diagnostic]:
    """The marks of which too little would be seen, in a grid that is `drawn` with these items. `rules` are those of its
    puzzle, each with its place; `over` is what else is drawn on the grid, from its top left corner."""
    if not rules:
        return []
    places = {id(rule): at for rule, at in rules}
    homes: dict[tuple[str, ...], Place] = {}
    seen: list[Drawn] = []
    halo = False
    for item, owner in drawn:
        if owner is not None:
            rule, mark = owner
            homes[mark.of] = places[id(rule)]
            seen += [Drawn(shape, mark.of, mark.part, mark.least) for shape in shapes((item,))]
        elif isinstance(item, Group):
            halo = True
        elif isinstance(item, Text):
            # A digit and the white around it as one.
            (x, edge) = (text_start(item), HALO * item.size if halo else 0.0)
            placed = (item.size, 0.0, 0.0, item.size, x, item.y)
            seen += map(Drawn, letter(item.text, item.font, placed, grey_of(item.colour), edge))
        else:
            seen += map(Drawn, shapes((item,)))
    seen += (Drawn(shape, (_LETTER,)) for shape in shapes((over,) if over else ()))
    return [_trouble(lost, title, homes.get(lost.of, place)) for lost in hidden(seen)]


def _trouble(lost: Hidden, title: str, place: Place) -> Diagnostic:
    part = f" (the {lost.part})" if lost.part else ""
    by = listed(lost.by) or "a digit"
    text = f"“{title}”: {listed(lost.of)}{part} would be hidden by {by}: {lost.left:.0%} of it would be seen"
    hint = "more marks meet here than there is room for: move one of them, or leave it out"
    return Diagnostic(place, "mark-hidden", text, hint)
