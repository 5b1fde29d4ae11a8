"""Every reason and every sentence has its words, in all wordings; every mark has a name that tells it from others."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from random import Random
from typing import Any, get_args

import pytest
from fluent.syntax import FluentParser
from fluent.syntax.ast import Message

from bookmaker.language.catalogues import Catalogue, catalogue
from bookmaker.language.messages import PhraseFault
from bookmaker.logic.technique import ladder
from bookmaker.phrases import Phrasebook
from bookmaker.phrases.claims import reason_said
from bookmaker.phrases.hints import around_said, cells_said, lines_said, what_said, where_said
from bookmaker.phrases.story import Voice
from bookmaker.puzzle.grid import CLASSIC, Grid, HouseRef, boxed_grid
from bookmaker.puzzle.overlapping import overlapping_grids
from bookmaker.puzzle.position import Position
from bookmaker.reasons import Reason
from bookmaker.reasons.claims import Claim
from bookmaker.reasons.marks import Whole
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.telling import Utterance
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Deduction, Rule
from tests.language.parsed import HOME
from tests.phrases.samples import TECHNIQUES, reasons, utterances
from tests.rules.grids import MIDDLE
from tests.rules.harness import cases_of, digits_as_mask, instances, sound_entry
from tests.rules.test_kinds import cells_of
from tests.tell.stories import faults

WORDS = Phrasebook(CLASSIC)


def deductions_in_cases(kind: str) -> Iterator[tuple[Rule, Position, Deduction]]:
    """What a kind finds in the positions of its known cases."""
    for entry, candidates, _ in cases_of(kind).DEDUCTIONS:
        masks = [CLASSIC.all_digits for _ in CLASSIC.cells]
        for cells, digits in candidates.items():
            for cell in cells_of(cells):
                masks[cell] = digits_as_mask(digits)
        boards = tuple(
            sum(1 << cell for cell in CLASSIC.cells if digit and masks[cell] >> (digit - 1) & 1) for digit in range(10)
        )
        rule, position = sound_entry(entry), Position(CLASSIC, boards)
        yield from ((rule, position, made) for made in rule.deductions(position))


def test_the_samples_have_every_type() -> None:
    assert {type(reason.claim) for reason, _ in reasons()} == set(get_args(Claim))
    assert {type(said) for said in utterances()} == set(get_args(Utterance))


@pytest.mark.parametrize("kind", kinds())
def test_what_a_kind_deduces_is_a_sentence(kind: str) -> None:
    """In its known cases and on boards at random: a sentence that names the cells that something goes from."""
    found = [(CLASSIC, made) for _, _, made in deductions_in_cases(kind)]
    rng = Random(f"say {kind}")
    for grid in (MIDDLE, CLASSIC):
        for solution, rule in instances(kind, grid, rng, 3):
            for share in (0.1, 0.3, 0.6):
                boards = [
                    sum(1 << cell for cell in grid.cells if solution[cell] == digit or rng.random() < share)
                    for digit in grid.digits
                ]
                found += [(grid, made) for made in rule.deductions(Position(grid, (0, *boards)))]
    assert found
    for grid, made in found:
        said = reason_said(Phrasebook(grid), Reason(MARK, made.mark, made.claim), made.removed)
        assert not faults(said), said
        assert all(grid.name(cell) in said for cell, _ in made.removed), said


@pytest.mark.parametrize("kind", kinds())
def test_every_mark_has_a_name_of_its_own(kind: str) -> None:
    """By what is printed and where; so have the houses that a rule adds."""
    rng = Random(f"name {kind}")
    for grid in (MIDDLE, CLASSIC):
        words = Phrasebook(grid)
        for _, rule in instances(kind, grid, rng, 3):
            marks = rule.references(grid)
            assert all(mark.kind == kind for mark in marks)
            names = [str(words.mark(mark)) for mark in marks]
            assert len(set(names)) == len(set(marks)), names
            for mark, name in zip(marks, names, strict=True):
                assert (
                    isinstance(mark.anchor, Whole)
                    or any(grid.name(cell) in name for cell in mark.cells)
                    or any(word.isdigit() or (len(word) == 1 and word.isupper()) for word in name.split())
                ), name
            houses = [str(words.house(house.ref)) for house in rule.houses(grid)]
            assert len(set(houses)) == len(houses)


@pytest.mark.parametrize("grid", [CLASSIC, boxed_grid(4, 2, 2), boxed_grid(6, 2, 3), boxed_grid(16, 4, 4)])
def test_every_house_has_a_name_of_its_own(grid: Grid) -> None:
    words = Phrasebook(grid)
    names = [str(words.house(house.ref)) for house in grid.houses]
    assert len(set(names)) == len(names)


def test_every_technique_has_a_name_and_a_hint() -> None:
    techniques = [technique for rung in ladder() for technique in rung]
    names = {name for technique in techniques for name in technique.step_names or (technique.name,)}
    assert names - {MARK} <= {name for named in TECHNIQUES.values() for name in named}
    for name in names - {MARK}:
        forms = [
            WORDS.technique(Reason(name, None, next(reasons())[0].claim)),
            WORDS.say(f"technique-{name}", "one"),
            WORDS.say(f"technique-{name}", "many", count="two"),
        ]
        assert all(forms) and len(set(forms[::2])) == 2


STEPPED = overlapping_grids(9, (3, 3), [(0, 0), (6, 6)])


def hints() -> Iterator[str]:
    yield where_said(WORDS, "row 1", 30)
    yield where_said(WORDS, WORDS.say("whole-grid"), None)
    yield from (where_said(WORDS, cells_said(WORDS, cells), None) for cells in ((0,), (0, 10)))
    yield where_said(WORDS, around_said(WORDS, 0), None)
    for houses in (CLASSIC.rows, CLASSIC.columns, STEPPED.squares[1].rows):
        yield where_said(WORDS, lines_said(WORDS, [house.ref for house in houses[:2]]), None)
    yield from (what_said(WORDS, reason) for reason, _ in reasons())


def test_every_message_is_used_and_all_its_wordings_can_be_filled_in(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nothing in the language's files is dead; a sentence begins with a capital and ends in a full stop."""
    asked: dict[str, list[Mapping[str, Any]]] = {}
    say = Catalogue.say

    def noting(self: Catalogue, name: str, wording: int | str = 0, /, **arguments: Any) -> str:
        asked.setdefault(name, []).append(arguments)
        return say(self, name, wording, **arguments)

    monkeypatch.setattr(Catalogue, "say", noting)
    monkeypatch.setattr(WORDS, "catalogue", Catalogue("en"))
    said = [reason_said(WORDS, reason, removed) for reason, removed in reasons()]
    said += [Voice(WORDS).say(utterance) for utterance in utterances()]
    said += hints()
    for kind in kinds():
        said += [
            reason_said(WORDS, Reason(MARK, made.mark, made.claim), made.removed)
            for _, _, made in deductions_in_cases(kind)
        ]
        said += [f"To begin with: {WORDS.mark(made.mark)}." for _, _, made in deductions_in_cases(kind)]
        WORDS.marks(kind)
        for _, rule in instances(kind, CLASSIC, Random(kind), 8):
            said += [f"To begin with: {WORDS.house(house.ref)}." for house in rule.houses(CLASSIC)]
            said += [f"To begin with: {WORDS.mark(mark)}." for mark in rule.references(CLASSIC)]
    said += [f"To begin with: {WORDS.house(house.ref)}." for house in CLASSIC.houses]
    assert not [text for text in said if faults(text)]
    for name, calls in asked.items():
        forms = name.startswith(("technique-", "kind-"))  # singular and plural, no further wordings
        wordings = 1 if forms else WORDS.catalogue.wordings(name)
        for arguments in calls[:3]:
            for wording in range(wordings):
                text = say(WORDS.catalogue, name, wording, **arguments)
                assert text == " ".join(text.split()), text
    unused = {name for file in STEPS for name in _messages(file)} - set(asked)
    assert unused <= ELSEWHERE, unused - ELSEWHERE


ELSEWHERE = {
    "house-any",  # a part of other messages
    "house-region",  # irregular grids
    "house-disjoint-groups",  # boxes of other sizes
    "note-lone-naked-single",  # an editor's notes, tests/grade/test_notes.py
    "note-narrow",
    "turn-quarter-left",  # how a look-alike is laid, tests/symmetry
    "turn-quarter-right",
    "alphabet",  # sorting and quoting, tests/language
    "quotation-marks",
    "list-alike",  # clones, tests/rules
}


STEPS = ("claims", "hints", "names", "notes", "story")
"""The files that say steps."""


def _messages(file: str) -> Iterator[str]:
    text = (HOME / "en" / f"{file}.ftl").read_text(encoding="utf-8")
    return (entry.id.name for entry in FluentParser().parse(text).body if isinstance(entry, Message))


def test_a_missing_message_or_argument_is_a_fault() -> None:
    with pytest.raises(PhraseFault, match="no-such-thing"):
        WORDS.say("no-such-thing")
    with pytest.raises(PhraseFault, match="candidate"):
        catalogue("en").say("candidate", digit="4")


@pytest.mark.parametrize(
    ("items", "last", "joined"),
    [
        (["a"], "and", "a"),
        (["a", "b"], "and", "a and b"),
        (["a", "b", "c"], "and", "a, b and c"),
        (["a", "b", "c"], "or", "a, b or c"),
        (["a", "b"], "clauses", "a, and b"),
        (["a", "b"], "then", "a, b"),
        (["a", "b", "c"], "ending", "a, b, and at last c"),
    ],
)
def test_lists_are_joined(items: list[str], last: str, joined: str) -> None:
    assert catalogue("en").joined(items, last) == joined


def test_many_digits_in_a_row_are_said_by_the_first_and_the_last() -> None:
    assert str(WORDS.digits((1, 2, 3)).format(None)) == "1, 2 and 3"
    assert str(WORDS.digits((1, 2, 3, 4, 8)).format(None)) == "1 to 4 and 8"


def test_boxes_are_named_by_where_they_are_and_regions_by_letters() -> None:
    assert str(WORDS.house(CLASSIC.region_houses[4].ref)) == "the centre box"
    assert str(Phrasebook(boxed_grid(16, 4, 4)).house(HouseRef("box", 2, 4))) == "the box at r1c5"
    assert str(WORDS.house(HouseRef("region", 4, 0))) == "region D"
