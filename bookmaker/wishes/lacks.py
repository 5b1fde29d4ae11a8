"""What an archive lacks for a brief, as wishes.

In: a plan whose catalogue was filled up with puzzles that are yet to be drafted. Out: the fewest of these that a
collection needs, as `Lack`s; and wishes for just that. The optimiser that chooses collections says which they are: it
may take what there is not, but only where nothing else is left.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import product

from bookmaker.archive import Card, Catalogue
from bookmaker.archive.cards import CLASSIC, LATIN
from bookmaker.assemble.amounts import Amount
from bookmaker.assemble.choose import choose
from bookmaker.assemble.plan import Demand, Plan, Row
from bookmaker.grade.bands import family_of
from bookmaker.manifest.example import example_rule
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import CLASSIC as EVERYDAY
from bookmaker.puzzle.grid import USUAL_BOXES, Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.parts import Form, node_of
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.wishes.rulewishes import by_chance
from bookmaker.wishes.span import Span
from bookmaker.wishes.wish import Wish

FILE = "(yet to be drafted)"
"""Stands for the file of a puzzle that there is not."""

SUMMIT = 5
"""Up to this band puzzles are drafted that need no what-if."""

COPIES = 2
"""Puzzles of a kind, band and size that may be thought of, if no line of the brief asks for more."""


@dataclass(frozen=True, slots=True)
class Lack:
    """Puzzles of a kind (a rule's, or “classic”), in a band, on a grid of a size, with tags, that were not there."""

    kind: str
    band: int
    size: int
    tags: tuple[str, ...]
    puzzles: int

    def words(self, band_names: Sequence[str]) -> str:
        """“two thermometer puzzles, Climb, tagged harbour”."""
        said = [counted(self.puzzles, f"{self.kind} puzzle"), band_names[self.band - 1]]
        said += [f"{self.size}×{self.size}"] if self.size != 9 else []
        said += [f"tagged {' and '.join(self.tags)}"] if self.tags else []
        return ", ".join(said)


def filled_up(catalogue: Catalogue, plan: Plan) -> Catalogue:
    """The catalogue with puzzles of all kinds and bands, and of the sizes and tags that a plan names, as if they were
    there."""
    wanted = {sort: _wanted(plan, sort) for sort in ("kinds", "sizes", "tags")}
    sizes = [9, *(int(size) for size in wanted["sizes"] if int(size) in USUAL_BOXES and size != "9")]
    tags = dict.fromkeys([(), tuple(wanted["tags"])])
    cards: list[Card] = []
    named = (LATIN,) if wanted["kinds"][LATIN] else ()
    for kind, size in product((CLASSIC, *named, *kinds()), sizes):
        if not _fits(kind, boxed_grid(size, *USUAL_BOXES[size])):
            continue
        family = _family(kind)
        copies = range(max(COPIES, wanted["kinds"][kind]))
        for band, tagged, _ in product(range(1, len(BAND_NAMES) + 1), tags, copies):
            cards.append(
                Card(
                    id=f"yet-to-be-drafted-{len(cards)}",
                    file=FILE,
                    line=len(cards) + 1,
                    column=1,
                    tags=tagged,
                    state="own",
                    kinds=() if kind in (CLASSIC, LATIN) else (kind,),
                    family=family,
                    grid=_called(kind, size),
                    size=size,
                    difficulty=band + 0.5,
                )
            )
    return replace(catalogue, cards=(*catalogue.cards, *cards))


def lacks_of(plan: Plan) -> tuple[Lack, ...] | None:
    """The fewest puzzles that are not there and that a collection of this plan, for a catalogue filled up, needs.

    None where even with all of them no collection can be made.
    """
    unreal = frozenset(number for number, card in enumerate(plan.cards) if card.file == FILE)
    sparing = Demand("", Place(FILE), (Row("", Amount(0, 0), unreal),), rather=True)
    demands = (_of_real(demand, unreal) for demand in plan.demands if not demand.rather)
    choice = choose(replace(plan, demands=(*demands, sparing), preferences=()))
    if choice is None:
        return None
    needed = [plan.cards[at] for at in choice.chosen if at in unreal]
    counts = Counter((card.sorts[0], card.band, card.size, card.tags) for card in needed)
    return tuple(Lack(*what, puzzles) for what, puzzles in sorted(counts.items()))


def wishes_for(lacks: Sequence[Lack], seed: int = 1) -> tuple[Wish, ...]:
    """A wish for each lack. Raises KeyError for a kind that there is not."""
    return tuple(
        Wish(
            grid=(grid := _ground(lack.kind, lack.size)),
            rules=() if lack.kind in (CLASSIC, LATIN) else (by_chance(kinds()[lack.kind], grid),),
            puzzles=lack.puzzles,
            bands=Span(lack.band, lack.band),
            refused=frozenset({"what-if"}) if lack.band < SUMMIT else frozenset(),
            texts={"id": f"drafted-{lack.kind}-{number}-{{number}}"},
            tags=lack.tags,
            seed=seed,
            place=Place("lack", number),
        )
        for number, lack in enumerate(lacks, start=1)
    )


def _wanted(plan: Plan, sort: str) -> Counter[str]:
    """How many at least are asked for of each kind, size or tag that a plan names, in all its chapters together."""
    found: Counter[str] = Counter()
    for demand in plan.demands:
        if demand.quoted.startswith(f"{sort}:"):
            found.update({row.label: row.amount.least for row in demand.rows if row.amount.least})
    return found


def _of_real(demand: Demand, unreal: frozenset[int]) -> Demand:
    """“each-kind: at least 1” without the kinds of which there is no puzzle: it asks for none of these."""
    if not demand.quoted.startswith("each-"):
        return demand
    rows = (row if row.cards - unreal else replace(row, amount=Amount(0, row.amount.most)) for row in demand.rows)
    return replace(demand, rows=tuple(rows))


def _ground(kind: str, size: int) -> Grid:
    """The grid that a puzzle of a kind is drafted on."""
    return Grid(size, ()) if kind == LATIN else boxed_grid(size, *USUAL_BOXES[size])


def _called(kind: str, size: int) -> str:
    if kind == LATIN:
        return _ground(kind, size).called
    return CLASSIC if size == 9 else f"{size}×{size}"


def _family(kind: str) -> str:
    """The family of a kind, by its example."""
    rules = () if kind in (CLASSIC, LATIN) else (example_rule(kinds()[kind]),)
    puzzle: RuledPuzzle = Puzzle(EVERYDAY, (0,) * len(EVERYDAY.cells), rules)
    return family_of(puzzle)


def _fits(kind: str, grid: Grid) -> bool:
    """Can a kind be asked for on a grid? Some need regions, and some that hold in the whole grid need square boxes."""
    if kind in (CLASSIC, LATIN):
        return True
    if not kinds()[kind].stands_on(grid):
        return False
    if kinds()[kind].form is not Form.WHOLE:
        return True
    body = node_of(example_rule(kinds()[kind]).written(EVERYDAY), Place(FILE))
    return kinds()[kind].read(body, grid, Collector()) is not None
