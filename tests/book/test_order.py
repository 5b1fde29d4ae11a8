from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bookmaker.book.order import in_book_order
from bookmaker.proof import Proof
from bookmaker.solve.verdict import NoSolution
from tests.layout.sample_book import sample_manifest, sample_proofs


def ids(proofs: Sequence[Proof]) -> list[str]:
    return [proof.entry.id for proof in proofs]


def test_by_effort_the_easiest_comes_first_whatever_the_order_they_arrive_in() -> None:
    manifest = replace(sample_manifest(), order="effort")
    ordered = in_book_order(manifest, reversed(sample_proofs()))
    efforts = [proof.grade.effort for proof in ordered]
    assert efforts == sorted(efforts)
    assert ids(ordered) == ids(in_book_order(manifest, sample_proofs()))


def test_as_listed() -> None:
    manifest = replace(sample_manifest(), order="listed")
    assert ids(in_book_order(manifest, reversed(sample_proofs()))) == [entry.id for entry in manifest.entries]


def test_chapters_each_by_effort() -> None:
    manifest = replace(sample_manifest(), order="chapters")
    halves = [replace(proof, entry=replace(proof.entry, chapter=at % 2)) for at, proof in enumerate(sample_proofs())]
    ordered = in_book_order(manifest, halves)
    keys = [(proof.entry.chapter, proof.grade.effort) for proof in ordered]
    assert keys == sorted(keys)


def test_puzzles_without_a_grade_come_last_in_the_order_listed() -> None:
    manifest = replace(sample_manifest(), order="effort")
    broken = [replace(proof, verdict=NoSolution(), grade=None) for proof in sample_proofs()[:2]]
    ordered = in_book_order(manifest, [broken[1], *sample_proofs()[2:], broken[0]])
    assert ids(ordered)[-2:] == [broken[0].entry.id, broken[1].entry.id]
