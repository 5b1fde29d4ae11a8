"""What a club's times say, in sentences and in a table.

In: an `Assessment` and the names of the bands. Out: lines to print, and plain data for JSON.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import exp
from typing import Any

from bookmaker.grade.bands import PER_BAND, bounded, figure
from bookmaker.manifest.entries import Entry
from bookmaker.rules.common.words.wording import counted, listed, sentence_case
from bookmaker.times.assessment import Assessment, Measured

FIRM, LOOSE = 0.6, 0.3
"""From the first on an agreement is good, below the second weak."""

RELIABLE = 0.5
"""With a smaller share of real differences the times hardly tell puzzles apart."""

LEVELS = (2, 3, 4, 5)
"""The difficulties for which the club's minutes are told."""

FAMILY_WORDS = {
    "classic": "puzzles whose rules only say which cells differ",
    "relations": "puzzles whose rules compare neighbours",
    "sums": "puzzles whose rules add up or count",
}


def sentences(found: Assessment, band_names: Sequence[str]) -> Iterator[str]:
    """What there is to say, a paragraph each."""
    unfinished = found.attempts - found.finished
    lasting = f", {unfinished} not finished" if unfinished else ""
    yield (
        f"{sentence_case(counted(found.solvers, 'solver'))} and {counted(len(found.puzzles), 'puzzle')}: "
        f"{found.finished} times{lasting}."
    )
    yield _agreement(found)
    took = [f"{_minutes(found.minutes(level))} for difficulty {level}.0" for level in LEVELS]
    yield f"The average solver of the table takes {listed(took)}."
    for family, shift in found.families.items():
        if shift.puzzles and abs(shift.bands) >= 2 * shift.error:
            way = "harder" if shift.bands > 0 else "easier"
            yield (
                f"On the whole, {FAMILY_WORDS[family]} are {abs(shift.bands):.1f} bands {way} than graded "
                f"({counted(shift.puzzles, 'puzzle')}, standard error {shift.error:.1f})."
            )
    yield from _misjudged(found, band_names)
    if found.unsolved:
        names = listed(_name(proof.entry) for proof in found.unsolved)
        yield f"Nobody finished {names}: no difficulty can be told."
    if found.apart:
        names = listed(_name(proof.entry) for proof in found.apart)
        yield f"No solver links {names} with the other puzzles, so they can't be compared."


def _agreement(found: Assessment) -> str:
    figures = f"rank correlation {found.agreement:.2f}, 95 % interval {found.low:.2f} to {found.high:.2f}"
    if found.reliability < RELIABLE:
        return (
            f"The times hardly tell these puzzles apart: {100 * found.reliability:.0f} % of the differences between "
            f"them is more than chance. They can't say how good the grades are ({figures})."
        )
    if found.low <= 0:
        return f"The times can't tell whether the grades are right ({figures}): more puzzles would."
    strength = "closely" if found.agreement >= FIRM else "only loosely" if found.agreement < LOOSE else "fairly well"
    return f"The grades agree with the times {strength}: {figures}."


def _misjudged(found: Assessment, band_names: Sequence[str]) -> Iterator[str]:
    wrong = [measured for measured in found.puzzles if measured.misjudged]
    if not wrong:
        yield "No puzzle is surely misjudged by a band or more."
        return
    yield f"Misjudged by a band or more, which is {exp(PER_BAND):.1f} times the minutes:"
    for measured in sorted(wrong, key=lambda m: -abs(m.times - m.expected)):
        off = measured.times - measured.graded
        graded, times = (_difficulty(level, band_names) for level in (measured.graded, measured.times))
        way = "took {:.1f} times as long" if off > 0 else "went {:.1f} times as fast"
        took = way.format(exp(PER_BAND * abs(off)))
        yield f"  {_name(measured.proof.entry)} {took} as its grade suggests: graded {graded}, solved like {times}"


def table(found: Assessment) -> list[tuple[str, ...]]:
    """A row for each puzzle under a row of headings, in the order of the book."""
    rows: list[tuple[str, ...]] = [("no.", "title", "graded", "times", "±", "both", "tried", "finished")]
    for m in found.puzzles:
        graded, times, both = (figure(bounded(level)) for level in (m.graded, m.times, m.both))
        name = m.proof.entry.title or m.proof.entry.id
        rows.append((str(m.number), name, graded, times, f"{m.error:.1f}", both, str(m.attempts), str(m.finished)))
    return rows


def data(found: Assessment) -> dict[str, Any]:
    """Everything for other programs; difficulties are cut off at 0.001, errors are in bands."""
    return {
        "solvers": found.solvers,
        "attempts": found.attempts,
        "finished": found.finished,
        "agreement": {
            "rank_correlation": round(found.agreement, 4),
            "low": round(found.low, 4),
            "high": round(found.high, 4),
            "reliability": round(found.reliability, 4),
        },
        "minutes": {f"{level}.0": round(found.minutes(level), 2) for level in LEVELS},
        "families": {
            family: {"bands": round(shift.bands, 3), "error": round(shift.error, 3), "puzzles": shift.puzzles}
            for family, shift in found.families.items()
        },
        "puzzles": [_puzzle(measured) for measured in found.puzzles],
        "unsolved": [proof.entry.id for proof in found.unsolved],
        "not_linked": [proof.entry.id for proof in found.apart],
    }


def _puzzle(measured: Measured) -> dict[str, Any]:
    return {
        "id": measured.proof.entry.id,
        "attempts": measured.attempts,
        "finished": measured.finished,
        **{
            name: float(figure(bounded(level), 3))
            for name, level in (("graded", measured.graded), ("times", measured.times), ("both", measured.both))
        },
        "error": round(measured.error, 3),
        "misjudged": measured.misjudged,
    }


def _name(entry: Entry) -> str:
    return f"“{entry.title or entry.id}”"


def _difficulty(level: float, band_names: Sequence[str]) -> str:
    difficulty = bounded(level)
    return f"{band_names[int(difficulty) - 1]} {figure(difficulty)}"


def _minutes(minutes: float) -> str:
    return f"{minutes:.0f} minutes" if minutes >= 2 else f"{60 * minutes:.0f} seconds"
