"""How a run is told: what was found, and why a wish was not met and what would widen it.

In: puzzles found, and the progress of a wish. Out: lines of text, what stood in the way most often first.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence

from bookmaker.changes.textedits import changed_text, edit_lines
from bookmaker.changes.typed import Typed
from bookmaker.draft.attempt import Drafted, Missing
from bookmaker.draft.forcing import Dress
from bookmaker.draft.run import Found, Progress
from bookmaker.draft.tuning import Tuned, Tuning
from bookmaker.grade.bands import figure
from bookmaker.grade.bottlenecks import bottlenecks_of
from bookmaker.grade.solve_path import Grade
from bookmaker.manifest.written import rule_lines
from bookmaker.phrases import Phrasebook
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.review.notes import narrow_sentence
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.wording import counted, number
from bookmaker.wishes.reading import NUMBER
from bookmaker.wishes.techniques import key_of, name_of
from bookmaker.wishes.wish import Wish

REASONS = {
    "no room": ("the marks found no room", "ask for fewer or smaller ones, or say “arrangement: none”"),
    "no grid": ("no filled grid keeps the marks", "ask for fewer or shorter ones"),
    "idle": ("some mark would be idle", "ask for fewer, or say “arrangement: none” or “idle-marks: yes”"),
    "long": ("it took too long to look into", "ask for fewer marks, or for more givens"),
    "several": ("there was more than one solution", "ask for more givens or marks"),
    "pattern": ("the pattern’s givens left several solutions", "give it more cells, or the puzzle more marks"),
    "look-alike": ("it looks like a puzzle that is there already", "another “seed” leads elsewhere"),
    "logic": ("logic does not reach the end", "ask for fewer marks or more givens"),
    "refused": ("what is refused was needed", "refuse less, ask for fewer marks, or say “idle-marks: yes”"),
    "singles": ("singles do not reach the end", "take “singles-only” out, or ask for fewer marks"),
    "wanted": ("what is wanted came another number of times", "give a span, such as “1 to 3”"),
    "givens": ("it took another number of givens", "widen “givens”"),
    "openings": ("it had another number of openings", "widen “openings”"),
    "bottlenecks": ("it had another number of bottlenecks", "widen “bottlenecks”, or take “where” out"),
    "mirrored": ("its marks do not mirror each other", "take “mirrored” out: not every kind can"),
    "band": ("it came out in another band", ""),
    "difficulty": ("its difficulty was another", "widen “difficulty”"),
}
"""For each thing that may stand in the way: how it is told, and what to do about it."""

COUNTED = ("wanted", "givens", "openings", "bottlenecks", "difficulty")
"""Of these it is told what came nearest: so far the wish must be widened at least."""

MOST_REASONS = 3


def found_line(found: Found) -> str:
    """A puzzle that was found, in a line."""
    return f"{found.id}: {graded(found.drafted.puzzle, found.drafted.grade)}"


def progress_line(progress: Progress) -> str:
    """How far a wish has come."""
    return (
        f"{_named(progress.wish)}{progress.found} of {progress.wish.puzzles}, {counted(progress.attempts, 'attempt')}"
    )


def missed_lines(progress: Progress) -> Iterator[str]:
    """Why a wish is not met yet, the reasons met most often."""
    wish, missed = progress.wish, progress.missed
    puzzles, attempts = counted(wish.puzzles, "puzzle"), counted(progress.attempts, "attempt")
    yield f"{wish.place}: {progress.found} of {puzzles} after {attempts}"
    if not missed:
        yield "    the time was up before an attempt came to its end; give it more with “--for”"
    reasons = Counter(reason for result in missed for reason in _reasons(result))
    for (what, found), times in reasons.most_common(MOST_REASONS):
        said, hint = REASONS[what]
        if what in COUNTED:
            said = f"{said} ({_nearest(what, missed)} at the nearest)"
        if what == "band":
            said, hint = f"{said}, {found}", f"widen the span: “band: {_widened(wish, found)}”"
        yield f"    {number(times)} of {counted(len(missed), 'attempt')}: {said}; {hint}"


def tuned_lines(at: int, tuned: Tuned, typed: Typed) -> Iterator[str]:
    """A change, with the lines of the file that it changes and what comes of it."""
    changes = "one change" if tuned.changes == 1 else "two changes"
    yield f"{at}. {changes}: {graded(tuned.puzzle, tuned.grade)}"
    for point in bottlenecks_of(tuned.grade.path, len(tuned.puzzle.grid.cells)):
        yield f"   {narrow_sentence(Phrasebook(tuned.puzzle.grid), point)}"
    yield from edit_lines(typed, changed_text(typed, tuned.puzzle))


def tuning_lines(tuning: Tuning, found: int) -> Iterator[str]:
    """What was tried, and what was not."""
    kept = f", the arrangement kept ({tuning.arranged.name})" if tuning.arranged.name != "none" else ""
    if not found and not tuning.untried:
        yield f"None of {tuning.tried:,} changes of one or two givens or marks reaches the wish{kept}."
    elif not found:
        yield f"None of the {tuning.tried:,} changes tried reaches the wish{kept}."
    if tuning.untried:
        yield f"No time was left for {tuning.untried:,} more. More time: --for 10m"


def dress_lines(at: int, dress: Dress) -> Iterator[str]:
    """Marks without freedom, and what they stand for."""
    grid, (rule,) = dress.puzzle.grid, dress.puzzle.rules
    yield f"{at}. {counted(len(rule.parts(grid)), rule.noun)} for {counted(len(dress.covered), 'given')}, proven equal:"
    yield from (f"     {line}" for line in rule_lines(rule, grid))


def graded(puzzle: RuledPuzzle, grade: Grade) -> str:
    """“Ramble, difficulty 2.5, 24 givens, hardest step: X-wing”."""
    hardest = max(grade.path.steps, key=lambda step: step.rung, default=None)
    said = [
        BAND_NAMES[grade.band - 1],
        f"difficulty {figure(grade.difficulty)}",
        counted(puzzle.given_count, "given"),
    ]
    if hardest:
        said.append(f"hardest step: {name_of(key_of(hardest.reason))}")
    return ", ".join(said) + ("" if grade.path.reached else ", beyond the ladder")


def _named(wish: Wish) -> str:
    name = wish.texts.get("id") or wish.texts.get("title", "")
    return f"{name.replace(NUMBER, '…')}: " if name else ""


def _reasons(result: Drafted | Missing) -> list[tuple[str, str]]:
    if isinstance(result, Missing):
        return [(result.why, "")]
    return [(one.what, one.found if one.what == "band" else "") for one in result.amiss] or [("look-alike", "")]


def _nearest(what: str, missed: Sequence[Drafted | Missing]) -> str:
    """What came nearest to this part of a wish."""
    found = (one for result in missed if isinstance(result, Drafted) for one in result.amiss if one.what == what)
    return min(found, key=lambda one: one.off).found


def _widened(wish: Wish, found: str) -> str:
    low, high = wish.bands.whole
    at = BAND_NAMES.index(found) + 1
    return f"{BAND_NAMES[min(low, at) - 1]} to {BAND_NAMES[max(high, at) - 1]}"
