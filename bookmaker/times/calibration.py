"""A calibration: what a club's times change about grades, in a file that other commands take with `--calibration`.

In: an assessment. Out: the text of the file; from such a file a `Calibration`; from it and proofs the same proofs with
other difficulties. A puzzle that was timed gets the difficulty that its grade and its times say together; every other
one is shifted as far as its family. Puzzles are known by what they are, not by their ids: a changed puzzle is no longer
the one that was timed.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from pathlib import Path

from bookmaker.archive import Catalogue
from bookmaker.grade.bands import FAMILIES, VERSION, bounded, family_of, figure, level
from bookmaker.proof.findings import Proof
from bookmaker.source.diagnostics import Collector, Diagnostic, Place, quoted
from bookmaker.source.placed import Node, Word, read_fields, read_items, read_text, read_whole
from bookmaker.source.textfile import read_file
from bookmaker.source.yamlfile import parse_yaml
from bookmaker.times.assessment import Assessment

MOST_BANDS = 4.0
"""No family is shifted farther."""

_BANDS = re.compile(r"[+-]?[0-9](?:\.[0-9]{1,4})?")
_DIFFICULTY = re.compile(r"[1-5]\.[0-9]{1,6}|[1-5]")


@dataclass(frozen=True, slots=True)
class Calibration:
    """Shifts in bands by family, and difficulties by puzzles' fingerprints. `warnings` are worth a look."""

    families: Mapping[str, float]
    puzzles: Mapping[str, float]
    warnings: tuple[Diagnostic, ...] = ()

    def difficulty(self, graded: float, fingerprint: str, family: str) -> float:
        """What the times make of a difficulty that was graded."""
        if fingerprint in self.puzzles:
            return self.puzzles[fingerprint]
        shift = self.families.get(family, 0.0)
        return bounded(level(graded) + shift) if shift and graded > 1 else graded


def calibrated(proofs: Iterable[Proof], calibration: Calibration) -> tuple[Proof, ...]:
    """The proofs with the difficulties that the calibration gives their puzzles; those without a grade as they are."""
    return tuple(calibrated_proof(proof, calibration) for proof in proofs)


def calibrated_catalogue(catalogue: Catalogue, calibration: Calibration) -> Catalogue:
    """The same for an archive's cards."""
    return replace(
        catalogue,
        cards=tuple(
            replace(card, difficulty=calibration.difficulty(card.difficulty, card.fingerprint, card.family))
            if card.band
            else card
            for card in catalogue.cards
        ),
    )


def calibrated_proof(proof: Proof, calibration: Calibration) -> Proof:
    """One proof with the difficulty that the calibration gives its puzzle."""
    entry, grade = proof.entry, proof.grade
    if grade is None:
        return proof
    difficulty = calibration.difficulty(grade.difficulty, entry.fingerprint, family_of(entry.puzzle))
    return replace(proof, grade=replace(grade, difficulty=difficulty))


def calibration_text(found: Assessment, source: str) -> str:
    """The file, for people to read and for `read_calibration`; `source` names the table of results."""
    lines = [
        f"# Written by “bookmaker times” from {source}: {found.solvers} solvers, {len(found.puzzles)} puzzles.",
        "# Other commands use it with --calibration. Families are harder than graded by this many bands (easier with a",
        "# minus); a puzzle's difficulty is what its grade and its times suggest together.",
        f"grades: {VERSION}",
        "families:",
        *(f"  {family}: {shift.bands:+.2f}" for family, shift in found.families.items()),
        "puzzles:",
    ]
    for measured in found.puzzles:
        entry = measured.proof.entry
        lines += [
            f"  - puzzle: {entry.fingerprint}    # {entry.id}",
            f"    difficulty: {figure(bounded(measured.both), 3)}",
        ]
    return "\n".join(lines) + "\n"


def read_calibration(path: Path) -> Calibration:
    """The calibration in a file. Raises BookErrors with every mistake in it."""
    collector, file = Collector(), str(path)
    text = read_file(path, file, Place(file), collector)
    root = parse_yaml(text, file, collector) if text is not None else None
    collector.raise_errors()
    assert root is not None
    fields = read_fields(root, "a calibration", collector, ("grades", "families", "puzzles"), ("grades",))
    version = read_whole(fields["grades"], "“grades”", collector, 0, 10**6) if "grades" in fields else None
    families = _families(fields["families"], collector) if "families" in fields else {}
    puzzles = dict(_puzzles(fields["puzzles"], collector)) if "puzzles" in fields else {}
    if version is not None and version != VERSION:
        said = "this calibration was made for the grades of another version: its shifts of families are ignored"
        collector.warn(fields["grades"].place, "other-grades", said, "make a new one with “bookmaker times”")
        families = {}
    collector.raise_errors()
    return Calibration(families, puzzles, tuple(collector.found))


def _families(node: Node, collector: Collector) -> dict[str, float]:
    shifts = {}
    for family, word in read_fields(node, "“families”", collector, FAMILIES).items():
        text = read_text(word, f"“{family}”", collector)
        if text is not None and not (_BANDS.fullmatch(text) and abs(float(text)) <= MOST_BANDS):
            said, hint = f"{quoted(text)} is no number of bands", "write a number such as +0.40 or -0.25, at most 4"
            collector.error(word.place, "bad-shift", said, hint)
        elif text is not None:
            shifts[family] = float(text)
    return shifts


def _puzzles(node: Node, collector: Collector) -> Iterable[tuple[str, float]]:
    for item in read_items(node, "“puzzles”", collector):
        fields = read_fields(item, "a puzzle", collector, ("puzzle", "difficulty"), ("puzzle", "difficulty"))
        mark, difficulty = fields.get("puzzle"), fields.get("difficulty")
        if not isinstance(mark, Word) or difficulty is None:
            continue
        text = read_text(difficulty, "“difficulty”", collector)
        if text is not None and not _DIFFICULTY.fullmatch(text):
            said = f"{quoted(text)} is no difficulty"
            collector.error(
                difficulty.place, "bad-difficulty", said, "write a number from 1 to just under 6, such as 3.4"
            )
        elif text is not None:
            yield mark.value, float(text)
