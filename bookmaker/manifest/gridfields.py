"""The grid of a puzzle from its fields (`GRID_KEYS`).

In: the puzzle's fields. Out: a `Grid`. After a diagnostic with boxes or regions the grid is returned without any, so
that givens and rules can still be checked; a bad size, and signs that are not known, leave nothing to check.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

from bookmaker.manifest.holefields import read_holes
from bookmaker.manifest.overlapfields import read_overlap
from bookmaker.puzzle.grid import LARGEST, LETTERS, SMALLEST, USUAL_BOXES, Grid, boxed_grid, irregular_grid
from bookmaker.source.diagnostics import Collector, Place, quoted
from bookmaker.source.placed import Node, Word, read_text, read_whole
from bookmaker.source.textgrid import read_picture

Letters = dict[str, list[int]]
"""The cells of each letter of a picture."""

GRID_KEYS = ("size", "boxes", "regions", "grids", "holes", "digits", "letters")
"""The fields that say what a grid is."""

FROM_ZERO = "from-zero"
"""How it is said that the first digit is 0."""

WORD = re.compile("[A-Za-z]+")
"""Letters in place of digits, as they are typed."""

BOXES = re.compile(r"([0-9]{1,2})\s*[x×X]\s*([0-9]{1,2})")


def read_grid(fields: Mapping[str, Node], place: Place, collector: Collector) -> Grid | None:
    """The grid; `place` is where to say that something is missing."""
    grid = _ground(fields, place, collector)
    if grid is None or not fields.keys() & {"digits", "letters"}:
        return grid
    return _signs(fields, grid, collector)


def _signs(fields: Mapping[str, Node], grid: Grid, collector: Collector) -> Grid | None:
    """The grid with digits from 0, or with letters in their place; None after a diagnostic."""
    if "digits" in fields and "letters" in fields:
        said = "the grid has either digits or letters, not both"
        collector.error(fields["letters"].place, "digits-and-letters", said, "keep one of the two")
        return None
    if "digits" in fields:
        text = read_text(fields["digits"], "“digits”", collector)
        if text == FROM_ZERO:
            return replace(grid, symbols="", first=0)
        if text is not None:
            hint = f"write “digits: {FROM_ZERO}”, or leave the line out for digits from 1"
            collector.error(fields["digits"].place, "bad-digits", f"{quoted(text)} does not say which digits", hint)
        return None
    text = read_text(fields["letters"], "“letters”", collector)
    if text is None:
        return None
    typed = text.upper()
    if not WORD.fullmatch(typed):
        said = "letters should be A to Z, without spaces"
    elif twice := next((letter for letter in typed if typed.count(letter) > 1), ""):
        said = f"the letter {twice} stands there twice"
    elif len(typed) != grid.size:
        said = f"a {grid.size}×{grid.size} grid takes {grid.size} letters, not {len(typed)}"
    else:
        return replace(grid, symbols="".join(sorted(typed)), first=None)
    collector.error(fields["letters"].place, "bad-letters", said, f"such as “letters: {LETTERS[: grid.size]}”")
    return None


def _ground(fields: Mapping[str, Node], place: Place, collector: Collector) -> Grid | None:
    """What is said of size, regions and grids that overlap."""
    size: int | None = 9
    if "size" in fields:
        size = read_whole(fields["size"], "“size”", collector, SMALLEST, LARGEST)
    if size is None:
        return None
    plain = Grid(size, ())
    if "holes" in fields:
        return _with_holes(fields, size, collector)
    if "grids" in fields and "regions" not in fields:
        ground = _boxed(fields, size, place, collector)
        return read_overlap(fields["grids"], size, ground.box, collector) if ground else None
    if "grids" in fields:
        said = "grids that overlap share boxes, and these have regions of their own"
        collector.error(fields["grids"].place, "grids-regions", said, "keep one of the two")
        return plain
    if "boxes" in fields and "regions" in fields:
        said = "the grid has either boxes or regions, not both"
        collector.error(fields["boxes"].place, "boxes-and-regions", said, "keep one of the two")
        return plain
    if "regions" in fields:
        return _regions(fields["regions"], plain, collector) or plain
    return _boxed(fields, size, place, collector) or plain


def _with_holes(fields: Mapping[str, Node], size: int, collector: Collector) -> Grid | None:
    """A grid with black cells, with regions if they are drawn."""
    for name in ("grids", "boxes"):
        if name in fields and not (isinstance(node := fields[name], Word) and node.value == "none"):
            said = f"a grid with holes has no “{name}”"
            collector.error(fields[name].place, "holes-alone", said, "leave out one of the two, or draw “regions: |”")
            return None
    holed = read_holes(fields["holes"], size, collector)
    if holed is None or "regions" not in fields:
        return holed
    return _regions(fields["regions"], holed, collector) or holed


def _boxed(fields: Mapping[str, Node], size: int, place: Place, collector: Collector) -> Grid | None:
    """A grid with boxes, or with neither boxes nor regions; None after a diagnostic."""
    if "boxes" in fields:
        return _boxes(fields["boxes"], size, collector)
    if size in USUAL_BOXES:
        return boxed_grid(size, *USUAL_BOXES[size])
    said = f"no box fits a {size}×{size} grid"
    collector.error(
        fields["size"].place if "size" in fields else place,
        "no-boxes",
        said,
        "write “boxes: none” or draw “regions: |”",
    )
    return None


def _boxes(node: Node, size: int, collector: Collector) -> Grid | None:
    text = read_text(node, "“boxes”", collector)
    if text is None:
        return None
    if text == "none":
        return Grid(size, ())
    fitting = [f"{h}x{size // h}" for h in range(2, size // 2 + 1) if size % h == 0]
    hint = f"boxes of a {size}×{size} grid: " + ", ".join([*fitting, "none"])
    shape = BOXES.fullmatch(text)
    if shape is None:
        said = f"{quoted(text)} is not a shape of box" if text else "“boxes” is left empty"
        collector.error(node.place, "bad-boxes", said, f"write height x width; {hint}")
        return None
    height, width = int(shape[1]), int(shape[2])
    if f"{height}x{width}" not in fitting:
        collector.error(node.place, "bad-boxes", f"{height}×{width} boxes do not fill a {size}×{size} grid", hint)
        return None
    return boxed_grid(size, height, width)


def _regions(node: Node, plain: Grid, collector: Collector) -> Grid | None:
    """The same grid divided as in a picture of letters."""
    if not isinstance(node, Word):
        collector.error(node.place, "not-a-picture", "“regions” should be a picture of letters", _draw("regions"))
        return None
    picture = read_picture(node, plain, "the regions", collector, "a letter for each cell")
    if picture is None:
        return None
    if open_cells := [node.at(line, column) for char, line, column in picture if char == "."]:
        said = "every cell belongs to a region, and this one shows a dot"
        collector.error(open_cells[0], "region-open", said, "give it the letter of its region", tuple(open_cells[1:]))
        return None
    members: Letters = {}
    for cell, (char, _, _) in enumerate(picture):
        members.setdefault(char, []).append(cell)
    places = [node.at(line, column) for _, line, column in picture]
    if not (_right_sizes(members, places, plain, collector) and _connected(members, places, plain, collector)):
        return None
    if plain.plain:
        return irregular_grid(plain.size, [char for char, _, _ in picture])
    return replace(plain, regions=tuple(map(tuple, members.values())))


def _right_sizes(members: Letters, places: list[Place], plain: Grid, collector: Collector) -> bool:
    size = plain.size
    wrong = {letter: cells for letter, cells in members.items() if len(cells) != size}
    if _one_slip(wrong, places, plain, collector):
        return False
    for letter, cells in wrong.items():
        first, *rest = (places[cell] for cell in cells)
        said = f"region {letter} has {_counted(cells)} and should have {size}"
        hint = f"the picture needs {plain.height} letters, {size} cells each"
        collector.error(first, "region-size", said, hint, tuple(rest) if len(cells) < 2 * size else ())
    return not wrong


def _one_slip(wrong: Letters, places: list[Place], grid: Grid, collector: Collector) -> bool:
    """A cell with the letter of another region, or of none, makes two letters wrong: one diagnostic, at the cells that
    would mend both. False where no cell would."""
    size = grid.size
    if len(wrong) != 2:
        return False
    (few, short), (many, long) = sorted(wrong.items(), key=lambda item: len(item[1]) != size - 1)
    if len(short) != size - 1 or len(long) not in (1, size + 1):
        return False

    def mends(cell: int) -> bool:
        left = [other for other in long if other != cell]
        return len(grid.pieces(left)) <= 1 and len(grid.pieces([*short, cell])) == 1

    slips = [cell for cell in long if mends(cell)]
    if not slips:
        return False
    said = f"region {many} has {_counted(long)} and region {few} has {len(short)}; each region should have {size}"
    which = f"{grid.name(slips[0])} is" if len(slips) == 1 else "one of the cells marked is"
    first, *rest = (places[cell] for cell in slips)
    collector.error(first, "region-size", said, f"{which} likely a slip for {few}", tuple(rest))
    return True


def _counted(cells: list[int]) -> str:
    return f"{len(cells)} cell" + ("s" if len(cells) > 1 else "")


def _connected(members: Letters, places: list[Place], plain: Grid, collector: Collector) -> bool:
    """Solvers find a region by its outline, so its cells must hang together by their sides."""
    sound = True
    for letter, cells in members.items():
        pieces = plain.pieces(cells)
        if len(pieces) > 1:
            most = max(pieces, key=len)
            apart = [cell for piece in pieces if piece is not most for cell in piece]
            first, *rest = sorted(apart)
            names = ", ".join(plain.name(cell) for cell in (first, *rest))
            verb = "does" if len(apart) == 1 else "do"
            said = f"region {letter} is in pieces: {names} {verb} not touch the rest of it"
            hint = "the cells of a region must be joined along their sides"
            collector.error(places[first], "region-apart", said, hint, tuple(places[cell] for cell in rest))
            sound = False
    return sound


def _draw(name: str) -> str:
    return f"begin with “{name}: |” and draw the grid on the lines below, indented further"
