"""Steps above the singles in sentences: what goes, and why.

In: told strikes. Out: sentences. A mark that names itself needs no name before it; a pattern is named when it is first
met, and then not every time.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Candidate
from bookmaker.rules.common.wording import cells_listed, digits_listed, listed, number, symbol
from bookmaker.tell.context import Context
from bookmaker.tell.model import Sentence
from bookmaker.tell.trail import Told
from bookmaker.tell.voice import Voice, called, plural, sentence, struck

_CELL = re.compile(r"r\d+c\d+")
_MARK = re.compile(r"the [a-z' -]+ (?:from|at|between) r\d+c\d+(?: (?:to|and) r\d+c\d+)?")
"""“the bounded line from r1c8 to r5c7”."""


def strikes(grid: Grid, steps: Sequence[Told], voice: Voice, context: Context, named: bool = False) -> list[Sentence]:
    """A sentence for each strike, or for what-ifs of one moment that end alike. `named`: the technique of the first was
    just named and need not be named again."""
    sentences = []
    before: Told | None = None
    for group in _ending_alike(grid, steps, context):
        told = group[0]
        if before and context.twins.get(before.index) == told.index:
            words = f"its twin: {struck(grid, told.removed)}"
        else:
            alike = before if before and before.step.technique == told.step.technique else None
            words = _clause(grid, group, alike, voice, context, named)
        sentences.append(Sentence(sentence(words), tuple(told.index for told in group)))
        before, named = told, False
    return sentences


def _ending_alike(grid: Grid, steps: Sequence[Told], context: Context) -> list[list[Told]]:
    """What-ifs of one round that end in the same contradiction together, every other step for itself."""
    groups: dict[object, list[Told]] = {}
    for told in steps:
        end = "" if told.index in context.twins else _leads_to(grid, told)
        key = (context.rounds[told.index], end) if end and told.index in context.rounds else id(told)
        groups.setdefault(key, []).append(told)
    return list(groups.values())


def _leads_to(grid: Grid, told: Told) -> str:
    """What a what-if ends in, as a clause; nothing for other steps."""
    (cell, digit), *more = told.removed
    tried, because = f"with {symbol(digit)} in {grid.name(cell)}, ", told.step.because
    return because.removeprefix(tried) if because.startswith(tried) and not more else ""


def _clause(grid: Grid, group: Sequence[Told], alike: Told | None, voice: Voice, context: Context, named: bool) -> str:
    told, step = group[0], group[0].step
    if alike and (mark := _same_holds(alike.step.because, step.because)):
        return f"the same holds for {mark}, so {struck(grid, told.removed)}"
    reason = step.because
    if end := _leads_to(grid, told):
        tried = [each.removed[0] for each in group]
        gone = f"{symbol(tried[0][1])} is out" if len(tried) == 1 else f"{'both' if len(tried) == 2 else 'all'} are out"
        reason = f"with {_either(grid, tried)}, {end}, so {gone}"
    elif not _says_it(grid, told):
        link = "; " if ", so " in reason and ";" not in reason else ", so "
        reason += link + struck(grid, told.removed)
    if alike and not reason.startswith("no way"):
        reason = voice.pick("again", "likewise, ", "", "in the same way, ") + reason
    elif not alike and step.technique not in context.nouns:
        name = step.technique
        naming = voice.pick(name, f"{name}: {reason}", f"{name} again: {reason}", reason)
        reason = reason if named else naming
    return f"note that {reason}" if _CELL.match(reason) else reason


def _either(grid: Grid, pairs: Sequence[Candidate]) -> str:
    """“3 or 6 in r2c4”, “6 in r6c1 or r6c3”, “6 in r6c1, 5 in r6c3 or 2 in r6c5”."""
    cells, digits = (sorted({pair[part] for pair in pairs}) for part in (0, 1))
    if len(cells) == 1 or len(digits) == 1:
        return f"{digits_listed(digits, 'or')} in {cells_listed(grid, cells, 'or')}"
    return listed([f"{symbol(digit)} in {grid.name(cell)}" for cell, digit in pairs], "or")


def _same_holds(before: str, reason: str) -> str:
    """The mark of which the same is said in the same words as of the mark before it; nothing if it is not."""
    one, other = _MARK.search(before), _MARK.search(reason)
    if not one or not other or _around(one) != _around(other):
        return ""
    return other[0]


def _around(mark: re.Match[str]) -> tuple[str, str]:
    return mark.string[: mark.start()], mark.string[mark.end() :]


def mark_named(reason: str) -> str:
    """The mark that a reason speaks of, where it is told by its cells: “the thermometer from r1c1 to r4c1”; else “”."""
    mark = _MARK.search(reason)
    return mark[0] if mark else ""


def payoff(grid: Grid, told: Told, voice: Voice) -> Sentence:
    """A sentence for the placement that the strikes just told have opened."""
    cell, digit = grid.name(told.cell), symbol(told.digit)
    if told.area is None:
        words = voice.pick("bare", f"that leaves {digit} alone in {cell}", f"now {cell} can only be {digit}")
    else:
        house = told.area.name
        words = voice.pick(
            "opened",
            f"that leaves {cell} as the only place for {digit} in {house}",
            f"now {house} has one place left for {digit}, {cell}",
            f"with that, the {digit} of {house} goes to {cell}",
            f"so {house} has its {digit} in {cell}",
        )
    return Sentence(sentence(words), (told.index,))


def twin_opened(grid: Grid, steps: Sequence[Told], told: Told, voice: Voice) -> Sentence:
    """A sentence for strikes and the placement that they open, right after those that they mirror."""
    gone = tuple(dict.fromkeys(pair for step in steps for pair in step.removed))
    lead = voice.pick("twin", "its twin goes the same way", "likewise its twin")
    words = f"{lead}: {struck(grid, gone)}, and {grid.name(told.cell)} takes {symbol(told.digit)}"
    return Sentence(sentence(words), (*(step.index for step in steps), told.index))


def steps_counted(techniques: Sequence[str], nouns: Sequence[str]) -> str:
    """“a hidden pair, a swordfish and two what-ifs”, “the cages and a naked pair”: what a stretch takes, in order."""
    counts: dict[str, int] = {}
    for name in techniques:
        counts[name] = counts.get(name, 0) + 1
    return listed(_counted(name, count, nouns) for name, count in counts.items())


def _counted(name: str, count: int, nouns: Sequence[str]) -> str:
    if name in nouns:
        return called(name, nouns) if name.endswith((" rule", " move")) else f"the {plural(name)}"
    if count == 1 or name.endswith("candidates"):
        return called(name, nouns)
    return f"{number(count)} {plural(name)}"


def _says_it(grid: Grid, told: Told) -> bool:
    """Does the reason itself rule out every digit that goes, with its cell? (“… rules out 5 and 7 in r2c3 …”)"""
    because = told.step.because
    if "rules out" not in because and not because.startswith("no way"):
        return False
    by_cell: dict[int, list[int]] = {}
    for cell, digit in told.step.removed:
        by_cell.setdefault(cell, []).append(digit)
    return all(
        any(f"{digits_listed(digits, word)} in {grid.name(cell)}" in because for word in ("and", "or"))
        for cell, digits in by_cell.items()
    )
