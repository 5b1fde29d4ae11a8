"""Is every mark of a puzzle in sight? Asked of each grid before its page is made.

In: a puzzle, the size of its cells, and where its rules stand in the manifest. Out: a trouble for each mark that is
hidden by another, at the rule it belongs to.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from bookmaker.display.items import Item
from bookmaker.layout.art.gridart import painted
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.wording import listed
from bookmaker.sight import Drawn, hidden, shapes
from bookmaker.trouble import Place, Trouble

_LETTER = "a letter of the check row"


def out_of_sight(
    puzzle: RuledPuzzle, cell: float, title: str, place: Place, rule_places: Sequence[Place], over: Iterable[Item] = ()
) -> Iterator[Trouble]:
    """The marks of which too little would be seen. `over` is what else is drawn on the grid, from its top left corner;
    `place` stands for a rule without a place of its own."""
    if not puzzle.rules:
        return
    drawn: list[Drawn] = []
    places: dict[tuple[str, ...], Place] = {}
    homes = dict(zip(map(id, puzzle.rules), rule_places, strict=False))
    for item, owned in painted(puzzle, cell):
        if owned is None:
            drawn += map(Drawn, shapes((item,)))
        else:
            rule, mark = owned
            places[mark.of] = homes.get(id(rule), place)
            drawn += (Drawn(shape, mark.of, mark.part, mark.least) for shape in shapes((item,)))
    drawn += (Drawn(shape, (_LETTER,)) for shape in shapes(over))
    for lost in hidden(drawn):
        part = f" (the {lost.part})" if lost.part else ""
        by = listed(lost.by) or "a digit"
        text = f"“{title}”: {listed(lost.of)}{part} would be hidden by {by}: {lost.left:.0%} of it would be seen"
        hint = "more marks meet here than there is room for: move one of them, or leave it out"
        yield Trouble(places.get(lost.of, place), "mark-hidden", text, hint)
