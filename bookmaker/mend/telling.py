"""What was found out about a puzzle with a slip, in lines of text.

In: the puzzle as it is typed, and what was found. Out: lines: cures with the old and the new lines of the file, what
cannot stand together, what to add.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bookmaker.changes.elements import Besides, Element, Given, MarkOf, elements_of, named
from bookmaker.changes.slips import SLIPS
from bookmaker.changes.textedits import changed_text, edit_lines
from bookmaker.changes.typed import Typed
from bookmaker.grade.bands import figure
from bookmaker.grade.solve_path import Grade
from bookmaker.mend.conflicts import Conflicts
from bookmaker.mend.cures import Cure, Search
from bookmaker.mend.settling import MOST, Settled, Settling
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import listed, number
from bookmaker.solve.verdict import NoSolution, Several, Solution, Undecided, Unique, Verdict

READABLE = 8
"""Up to so many statements that clash are told one by one."""

NAMED = 4
"""Up to so many statements are named of what goes and of what comes."""

CHOICES = 5
"""So many ways to settle a puzzle are told of each sort."""


def verdict_line(name: str, verdict: Verdict, wanted: Solution | None) -> str:
    """What is wrong with the puzzle."""
    match verdict:
        case NoSolution():
            return f"“{name}” has no solution."
        case Several():
            return f"“{name}” has several solutions."
        case Undecided(budget, _):
            return f"“{name}” is undecided: the search ended after {budget:,} guesses."
        case Unique(solution) if wanted is not None and solution != wanted:
            return f"“{name}” has one solution, and it is not its setter’s."
    return f"“{name}” has one solution: there is nothing to mend."


def cure_lines(at: int, cure: Cure, typed: Typed) -> Iterator[str]:
    """A cure with the lines of the file that it changes."""
    yield f"{at}. {SLIPS[cure.slip.sort]}: {change_said(typed.puzzle, cure.puzzle)}"
    yield f"   {cured_said(cure.grade)}"
    yield from edit_lines(typed, changed_text(typed, cure.puzzle))


def search_lines(found: Search) -> Iterator[str]:
    """What was tried, and what was not."""
    yield f"{found.tried:,} changes tried{', pairs of digits among them' if found.pairs else ''}, each exactly."
    if found.untried:
        said = listed(f"{count} × {SLIPS.get(sort, sort)}" for sort, count in found.untried.most_common())
        yield f"No time was left for: {said}. More time: --for 60s"
    if found.undecided:
        yield f"{found.undecided} of them took too long to decide, and count as no cure."


def conflict_lines(found: Conflicts, grid: Grid) -> Iterator[str]:
    """What cannot stand together, and what would have to go."""
    if found.clashing:
        few = [some for some in found.clashing if len(some) <= READABLE]
        proven = "the smallest clashes there are" if found.smallest else "the smallest found"
        yield f"These cannot stand together ({proven}):"
        for some in few:
            yield f"  {listed(named(one, grid) for one in some)}"
        if not few:
            spared = ", none of which can be spared" if found.tight else ""
            yield f"  {len(found.clashing[0])} givens and marks{spared}"
    if found.too_much:
        count = number(len(found.too_much[0]))
        least = "no fewer will do" if found.least else "fewer may do"
        yield f"Taking {count} away leaves a solution ({least}):"
        for some in found.too_much:
            yield f"  {listed(named(one, grid) for one in some)}"


def settling_lines(found: Settling, grid: Grid) -> Iterator[str]:
    """What to add."""
    if found.fewest:
        count = len(found.fewest[0].added)
        proven = "proven: no fewer will do" if found.proven else "fewer may do"
        yield f"Fewest givens to add: {number(count)} ({proven}):"
        yield from _choices(found.fewest, grid)
    if found.arranged:
        yield f"Givens that keep the arrangement ({found.arrangement}):"
        yield from _choices(found.arranged, grid)
    if found.marks:
        yield "Marks of its own kinds that do it alone:"
        yield from _choices(found.marks, grid)


def _choices(found: Sequence[Settled], grid: Grid) -> Iterator[str]:
    for one in found[:CHOICES]:
        instead = f" in place of {named(one.instead, grid)}" if one.instead else ""
        yield f"  {listed(named(added, grid) for added in one.added)}{instead}"
    if len(found) > CHOICES:
        least = "at least " if len(found) == MOST else ""
        yield f"  and {least}{number(len(found) - CHOICES)} more"


def change_said(old: RuledPuzzle, new: RuledPuzzle) -> str:
    """The change in words: what goes, and what comes in its place."""
    before, after = elements_of(old), elements_of(new)
    gone, come = _without_rest([e for e in before if e not in after], [e for e in after if e not in before])
    match gone, come:
        case [Given(cell, was)], [Given(there, now)] if cell == there:
            return f"{new.grid.symbol(now)}, not {new.grid.symbol(was)}, in {new.grid.name(cell)}"
    if all(isinstance(element, Given) for element in (*gone, *come)) and len(gone) + len(come) > 4:
        return f"{number(len(gone))} givens elsewhere"
    kinds = [dict.fromkeys(e.rule.kind for e in some if not isinstance(e, Given)) for some in (gone, come)]
    if len(gone) > 2 and kinds[0] and kinds[1] and kinds[0] != kinds[1]:
        return f"“{listed(kinds[1])}” in place of “{listed(kinds[0])}”"
    said = _names(gone, new.grid), _names(come, new.grid)
    if not said[0] or not said[1]:
        return f"{said[1] or said[0]} {'added' if said[1] else 'taken away'}"
    return f"{said[1]} in place of {said[0]}"


def _without_rest(gone: list[Element], come: list[Element]) -> tuple[list[Element], list[Element]]:
    """Both without what a kind says besides its marks, where marks of it change: it follows from these."""
    marked = {element.rule.kind for element in (*gone, *come) if isinstance(element, MarkOf)}
    first, second = (
        [element for element in some if not isinstance(element, Besides) or element.rule.kind not in marked]
        for some in (gone, come)
    )
    return first, second


def _names(elements: Sequence[Element], grid: Grid) -> str:
    said = list(dict.fromkeys(named(element, grid) for element in elements))
    if len(said) > NAMED:
        said[NAMED - 1 :] = [f"{number(len(said) - NAMED + 1)} more"]
    return listed(said)


def cured_said(grade: Grade | None) -> str:
    """What the puzzle is after a cure."""
    if grade is None:
        return "then one solution; no time was left to grade it"
    reached = "" if grade.path.reached else ", beyond the ladder"
    return f"then one solution: {BAND_NAMES[grade.band - 1]}, difficulty {figure(grade.difficulty)}{reached}"
