"""What is shown of a puzzle, as plain data: the one place that knows how paths are told and graded.

In: a card, a proof. Out: dictionaries for JSON. `summary` is what lists choose by; `telling` is the path frame by
frame, each with what its sentence points out, as a presenter's crib has it.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

from bookmaker.archive import Card
from bookmaker.book.rating import rating_of
from bookmaker.book.rulestext import rules_text
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.book.wording import date_in_words, kinds
from bookmaker.language import catalogue
from bookmaker.phrases import Phrasebook
from bookmaker.proof import Proof
from bookmaker.proof.notes_text import editor_notes
from bookmaker.proof.remarks import remark
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.review.notes import narrow_sentence
from bookmaker.solve.verdict import Several
from bookmaker.tell import tell
from bookmaker.tell.formats import HEADINGS
from bookmaker.tell.scenes import played
from bookmaker.tell.step_groups import bottlenecks, step_groups

PROFILE_SCALE = 99
"""Efforts of a profile are whole numbers up to this, on a logarithmic scale as in print."""


def summary(card: Card, proof: Proof, band_names: Sequence[str], chapter: str = "") -> dict[str, Any]:
    """What a list shows of a puzzle, and searches, sorts and filters it by."""
    entry, graded = proof.entry, proof.grade
    rating = rating_of(entry.puzzle, graded, band_names) if graded else None
    return {
        "id": entry.id,
        "title": smart_quotes(entry.title) if entry.title else ", ".join(kinds(catalogue("en"), entry.puzzle)),
        "setter": entry.setter,
        "shown": date_in_words(catalogue("en"), entry.shown) if entry.shown else "",
        "when": str(entry.shown or ""),
        "chapter": chapter,
        "kinds": list(kinds(catalogue("en"), entry.puzzle)),
        "size": entry.puzzle.grid.size,
        "givens": entry.puzzle.given_count,
        "verdict": card.verdict,
        "disputed": card.disputed,
        "band": card.band,
        "difficulty": card.difficulty_text,
        "effort": round(card.effort),
        "hardest": card.hardest,
        "reached": card.reached,
        "steps": rating.steps if rating else 0,
        "profile": rating.profile if rating else (),
        "narrow": rating.narrow if rating else (),
        "permission": card.state,
        "printed": smart_quotes(card.printed),
        "note": smart_quotes(entry.note),
        "private": entry.private,
        "tags": list(card.tags),
        "source": card.source,
        "file": card.file,
        "line": card.line,
    }


def shape_told(grid: Grid) -> dict[str, Any]:
    """Where the cells of a grid lie that is no plain square."""
    if grid.plain:
        return {}
    return {"extent": [grid.height, grid.width], "places": [[*grid.place(cell)] for cell in grid.cells]}


def particulars(proof: Proof, with_notes: bool = False) -> dict[str, Any]:
    """What is shown of one open puzzle, but for its picture and its path."""
    entry = proof.entry
    rules = rules_text(catalogue("en"), entry.puzzle)
    verdict = proof.verdict
    pair = (verdict.first, verdict.second) if isinstance(verdict, Several) else None
    return {
        "digits": list(entry.puzzle.givens),
        **shape_told(entry.puzzle.grid),
        "rules": [rules.plain, *(mark.text for mark in rules.marks)],
        "link": entry.link,
        "consent": {
            "by": entry.consent.by,
            "on": date_in_words(catalogue("en"), entry.consent.on) if entry.consent.on else "",
            "note": entry.consent.note,
        },
        "solution": list(proof.solution) if proof.solution else None,
        "pair": [list(solution) for solution in pair] if pair else None,
        "remark": remark(proof),
        "notes": list(editor_notes(proof).sentences) if with_notes else [],
    }


def telling(proof: Proof, band_names: Sequence[str]) -> dict[str, Any]:
    """The path as a presenter tells it: passages of sentences, and a frame for each step that a sentence tells."""
    if proof.grade is None:
        return {"story": [], "frames": [], "start": [], "narrowings": []}
    story = tell(proof, band_names)
    starts, _ = step_groups(proof.grade.path)
    frames: list[dict[str, Any]] = []
    begin: list[int] = []
    before: Sequence[int] = ()
    at_moment = 0
    words = Phrasebook(proof.entry.puzzle.grid)
    for told, scene in played(proof, story):
        masks = _open(told.before)
        begin = begin or list(masks)
        at_moment = max(at_moment, sum(1 for first in starts if first <= told.index) - 1)
        frame: dict[str, Any] = {
            "step": told.number,
            "moment": at_moment,
            "technique": words.technique(told.reason),
            "look": [cell for cell in scene.look if cell != scene.goes],
            "shade": list(scene.shaded),
            "struck": [list(pair) for pair in scene.struck],
            "goes": [scene.goes, scene.digits[scene.goes]] if scene.goes is not None else None,
            "pencil": [[cell, mask] for cell, mask in enumerate(_open(scene.pencil)) if mask],
            "change": [[cell, mask] for cell, mask in enumerate(masks) if before and before[cell] != mask],
        }
        frames.append({name: value for name, value in frame.items() if value not in ([], None)})
        before = masks
    passages, at = [], 0
    for passage in story.passages:
        sentences = []
        for sentence in passage.sentences:
            begins = min(sentence.told) - 1 if sentence.told else at
            at = max(sentence.told, default=at)
            sentences.append({"text": sentence.text, "from": begins, "to": at})
        passages.append({"heading": HEADINGS.get(passage.mood, ""), "sentences": sentences})
    narrowings = [
        {
            "step": next((told.number for told in story.steps if told.index >= point.first), len(story.steps)),
            "words": narrow_sentence(words, point),
        }
        for point in bottlenecks(proof.grade.path, proof.entry.puzzle.grid)
    ]
    return {
        "story": passages,
        "frames": frames,
        "start": begin,
        "moments": len(starts),
        "narrowings": narrowings,
    }


def _open(position: Position) -> tuple[int, ...]:
    """Candidates of the cells that are still empty, 0 for the others."""
    return tuple(0 if position.placed >> cell & 1 else mask for cell, mask in enumerate(position.masks))


def look_alikes(cards: Sequence[Card]) -> Iterator[list[str]]:
    """For each card the ids of the others that are the same puzzle in disguise."""
    groups: dict[str, list[str]] = {}
    for card in cards:
        if card.keys.puzzle:
            groups.setdefault(card.keys.puzzle, []).append(card.id)
    for card in cards:
        yield [other for other in groups.get(card.keys.puzzle, ()) if other != card.id]
