"""A story's sentences: which message says an utterance, and what it is filled in with.

In: utterances in the order in which they are told. Out: sentences. Between wordings of the same message the voice takes
the next each time, and from the first again, so that nothing is left to chance: one story is always told in one way.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby
from typing import TypeAlias, assert_never

from bookmaker.language import Argument
from bookmaker.phrases.claims import Message, reason_message
from bookmaker.phrases.phrasebook import Phrasebook, gathered
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason
from bookmaker.reasons.claims import name_of
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.singles import NakedSingle
from bookmaker.reasons.telling import (
    Aim,
    BySymmetry,
    Eliminates,
    FallsIntoPlace,
    Few,
    Fills,
    Fixes,
    Introduction,
    Leaves,
    MoreAlike,
    Names,
    Opens,
    Places,
    RuleSaid,
    Run,
    RunWithImages,
    SameHolds,
    Seen,
    SeenInCell,
    SeenInHouse,
    StartsHere,
    Stuck,
    Symmetry,
    Table,
    TakenFromProof,
    Utterance,
    WhatIfsFollow,
    WithImage,
)
from bookmaker.reasons.whatif import Refuted

LONG = 4
"""With fewer eliminations at a time the singles never run out for long."""

OF_WHAT_GOES = frozenset({"gone", "gone-digits", "gone-cells"})
"""Arguments that say what goes."""


class Voice:
    """Says utterances, one after the other."""

    def __init__(self, words: Phrasebook) -> None:
        self.words = words
        self._used: dict[str, int] = {}

    def say(self, utterance: Utterance) -> str:
        """The sentence, in the next of its wordings."""
        if isinstance(utterance, RuleSaid):
            return utterance.text
        message = _message(self.words, utterance)
        used = self._used.get(message.name, 0)
        self._used[message.name] = used + 1
        wording = used % self.words.catalogue.wordings(message.name)
        return self.words.sentence(message.name, wording, **message.arguments)


Told: TypeAlias = tuple[Reason, Sequence[Candidate]]
"""A reason, and what goes by it."""


def says_the_same(words: Phrasebook, one: Told, other: Told) -> bool:
    """Is the same said of two marks of a kind, but for the marks themselves and what goes?"""
    (reason, _), (second, _) = one, other
    return reason.mark != second.mark and _alike(words, one, other, OF_WHAT_GOES | {"mark"})


def told_as_one(words: Phrasebook, one: Told, other: Told) -> bool:
    """Can one sentence tell both, since they differ only in what goes?"""
    (reason, _), (second, _) = one, other
    if isinstance(reason.claim, Refuted) and isinstance(second.claim, Refuted):
        return (reason.claim.links, reason.claim.end) == (second.claim.links, second.claim.end)
    return _alike(words, one, other, OF_WHAT_GOES | ({"mark"} if reason.mark == second.mark else set()))


def _alike(words: Phrasebook, one: Told, other: Told, but_for: frozenset[str]) -> bool:
    """Does one message say both, and are those members of the claims equal that it prints?"""
    (reason, removed), (second, also) = one, other
    name = reason_message(words, reason, removed).name
    if name != reason_message(words, second, also).name or reason.kind != second.kind:
        return False
    nothing = object()
    return all(
        getattr(reason.claim, member, nothing) == getattr(second.claim, member, None)
        for member in words.catalogue.variables(name) - but_for
    )


def _message(words: Phrasebook, utterance: Utterance) -> Message:
    match utterance:
        case Table(size, givens, regions, grids):
            told: dict[str, Argument] = {"size": str(size), "givens": givens, "number": words.number(givens)}
            if grids > 1:
                told["grids"] = words.number(grids)
            return _said(f"table-{regions}", **told)
        case Symmetry(turn, cycles):
            cycled = _cycles(words, cycles)
            return _said("symmetry-relabelled" if cycles else "symmetry", turn=words.say(f"turn-{turn}"), cycles=cycled)
        case Introduction():
            return _introduction(words, utterance)
        case Places(single, last_of_digit, first):
            kind = "last-of-digit" if last_of_digit and not isinstance(single, NakedSingle) else name_of(single)
            return Message(f"{'places' if first else 'then'}-{kind}", _single(words, single))
        case Leaves(single):
            return Message(f"leaves-{name_of(single)}", _single(words, single))
        case Opens(single):
            return Message(f"opens-{name_of(single)}", _single(words, single))
        case Run():
            return _run(words, utterance)
        case Fills(house, placed):
            return _said("fills", house=words.house(house), placed=_placed(words, placed, "and"))
        case WithImage(single, (cell, digit)):
            image = {"image": words.cell(cell), "other": words.digit(digit)}
            return Message(f"with-image-{name_of(single)}", _single(words, single) | image)
        case RunWithImages(digit, cells, other, images):
            more = {"cells": words.cells(cells), "images": words.cells(images), "count": words.number(len(cells))}
            name = "run-with-images-alike" if digit == other else "run-with-images"
            return _said(name, digit=words.digit(digit), other=words.digit(other), **more)
        case SeenInHouse():
            return _seen_in_house(words, utterance)
        case SeenInCell(single, _, _):
            return Message("seen-in-cell", _single(words, single) | {"held": _held(words, utterance)})
        case StartsHere():
            return _said("starts-here")
        case Fixes(kind, marks, placed):
            called = words.marks(kind) if marks > 1 else words.say("mark-whole", noun=words.noun(kind))
            many, number = "yes" if marks > 1 else "no", words.number(len(placed))
            named = _placed(words, placed, "and")
            return _said("fixes", marks=called, many=many, count=len(placed), number=number, placed=named)
        case TakenFromProof(placed):
            return _said("taken-from-proof", placed=_placed(words, placed, "and"))
        case FallsIntoPlace(placed, short):
            named = _placed(words, placed, "and" if short else "ending")
            return _said("remains" if short else "falls-into-place", placed=named)
        case Few(filled, singles, naked, crux):
            kind = ("lone-naked" if singles == 1 else "naked") if naked else ""
            name = "-".join(part for part in ("crux" if crux else "few", kind or ("few" if crux else "")) if part)
            return _said(name, filled=str(filled), singles=singles, number=words.number(singles))
        case Stuck(filled, at_start, crux, needs):
            name = ("crux" if crux else "stuck-long" if needs else "stuck") + "-at-start" * at_start
            return _said(name, filled=str(filled), steps=words.steps(needs) if needs else "")
        case Aim(single, rivals):
            rival_cells, rival_digits = (sorted({pair[part] for pair in rivals}) for part in (0, 1))
            gone = {"rival-cells": words.cells(rival_cells), "rival-digits": words.digits(rival_digits)}
            return Message(f"aim-{name_of(single)}", _single(words, single) | gone)
        case Names(reason):
            return _said("names", technique=words.say(f"technique-{reason.technique}", "one"))
        case Eliminates(reason, removed):
            return _eliminates(words, reason, removed)
        case SameHolds(reason, removed):
            assert reason.mark
            return _said("same-holds", mark=words.mark(reason.mark), gone=words.gone(removed))
        case BySymmetry(removed, opens):
            said: dict[str, Argument] = {"gone": words.gone(removed)} if removed else {}
            if opens:
                said |= {"cell": words.cell(opens[0]), "digit": words.digit(opens[1])}
            name = "by-symmetry" if not opens else "by-symmetry-opens" if removed else "by-symmetry-places"
            return Message(name, said)
        case WhatIfsFollow():
            return _follow(words, utterance)
        case MoreAlike(count, removed):
            return _said("more-alike", count=count, number=words.number(count), gone=words.gone(removed))
        case RuleSaid():
            raise ValueError("a rule has its own sentence")
        case _ as never:
            assert_never(never)


def _said(name: str, **arguments: Argument) -> Message:
    return Message(name, arguments)


def _single(words: Phrasebook, single: Seen) -> dict[str, Argument]:
    said: dict[str, Argument] = {"cell": words.cell(single.cell), "digit": words.digit(single.digit)}
    if not isinstance(single, NakedSingle):
        said["house"] = words.house(single.house)
    return said


def _placed(words: Phrasebook, placed: Sequence[Candidate], last: str) -> str:
    """“7 in r1c2 and r5c4, 3 in r2c2 and 5 in r9c9”: a digit that is repeated is named once."""
    said = []
    for digit, run in groupby(placed, key=lambda pair: pair[1]):
        cells = words.cells(cell for cell, _ in run)
        said.append(words.say("placed", digits=words.digit(digit), cells=cells))
    return words.catalogue.joined(said, last)


def _cycles(words: Phrasebook, cycles: Sequence[Sequence[int]]) -> str:
    """“1 and 9, 2 and 8 exchanged”, “1, 2 and 3 going round”."""
    swaps = [words.catalogue.joined(tuple(map(words.digit, cycle)), "and") for cycle in cycles if len(cycle) == 2]
    said = [words.say("cycle-swapped", digits=words.catalogue.joined(swaps, "then"))] if swaps else []
    for cycle in cycles:
        if len(cycle) > 2:
            digits = words.catalogue.joined(tuple(map(words.digit, cycle)), "and")
            said.append(words.say("cycle-round", digits=digits))
    return words.clauses(said) if said else ""


def _introduction(words: Phrasebook, said: Introduction) -> Message:
    name = "introduction-stuck" if said.stuck else "introduction-singles"
    if said.crux_at is not None:
        name += "-crux" + "-at-start" * said.at_start
    elif said.stuck:
        name += "-briefly" * (said.longest < LONG)
    elif said.bottlenecks:
        name += "-bottlenecks"
    elif said.choice:
        name += "-choice"
    times = words.say("times", n=said.stuck, number=words.number(said.stuck))
    choice = words.number(said.choice)
    return _said(name, band=said.band, times=times, filled=str(said.crux_at), choice=choice)


def _run(words: Phrasebook, run: Run) -> Message:
    said: dict[str, Argument] = {"digit": words.digit(run.digit), "cells": words.cells(run.cells)}
    said["count"] = words.number(len(run.cells))
    if run.starts:
        return Message("run-starts", said)
    if run.completes:
        return Message("run-completes", said)
    if run.chained:
        return Message("run-chained", said)
    if run.band:
        return Message("run-band", said | {"band": words.say(f"band-{run.band}")})
    return Message("run", said)


def _seen_in_house(words: Phrasebook, seen: SeenInHouse) -> Message:
    said = _single(words, seen.single)
    if name_of(seen.single) == "last-cell":
        return Message("seen-last-cell", said)
    parts = ("lookers" * bool(seen.lookers), "struck" * seen.struck, "marked" * seen.marked)
    name = "-".join(["seen", *filter(None, parts)])
    if seen.lookers:
        said["lookers"] = words.cells(seen.lookers)
    if seen.starts and name == "seen-lookers":
        name = "starts-in-house"
    return Message(name if name != "seen" else "seen-struck", said)


def _held(words: Phrasebook, seen: SeenInCell) -> str:
    """What the houses of a cell hold, and what was eliminated from it, until one digit is left."""
    said: list[str] = []
    for house, digits in seen.holders:
        name = ("held-next" if said else "held-first") + "-others" * (house is None)
        where = {"house": words.house(house)} if house else {}
        said.append(words.say(name, digits=words.digits(digits), **where))
    for reason, digits in seen.strikers:
        if reason is None:
            said.append(words.say("held-marked", digits=words.digits(digits)))
        else:
            steps = words.mark(reason.mark) if reason.technique == MARK and reason.mark else words.steps([reason])
            said.append(words.say("held-struck", digits=words.digits(digits), steps=steps))
    return words.clauses(said)


def _eliminates(words: Phrasebook, reason: Reason, removed: Sequence[Candidate]) -> Message:
    message = reason_message(words, reason, removed)
    if isinstance(reason.claim, Refuted):
        tried = [
            words.say("tried", digits=words.digits(digits), cells=words.cells(cells))
            for digits, cells in gathered(removed)
        ]
        message.arguments["tried"] = words.catalogue.joined(tried, "or")
    return message


def _follow(words: Phrasebook, said: WhatIfsFollow) -> Message:
    number = words.number(said.count)
    if said.house and said.digit:
        return _said("follow-end", number=number, house=words.house(said.house), digit=words.digit(said.digit))
    if said.mark:
        return _said("follow-mark", number=number, mark=words.mark(said.mark))
    if said.tried_digit:
        return _said("follow-tried-digit", number=number, **{"tried-digit": words.digit(said.tried_digit)})
    if said.tried_cell is not None:
        return _said("follow-tried-cell", number=number, **{"tried-cell": words.cell(said.tried_cell)})
    if said.tried_house:
        return _said("follow-tried-house", number=number, **{"tried-house": words.house(said.tried_house)})
    if said.kind:
        return _said("follow-kind", number=number, marks=words.marks(said.kind))
    return _said("follow", number=number)
