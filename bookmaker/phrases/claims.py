"""Which message says a claim, and what it is filled in with.

In: a reason and what goes by it. Out: the name of a message with its arguments, or the sentence. Every member of a
claim is an argument of the same name. A kind of rule, or a technique, may have a wording of its own for a claim, in a
message whose name ends in “--” and its word.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any, assert_never

from bookmaker.language import Argument
from bookmaker.phrases.phrasebook import Phrasebook, gathered
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import MarkRef, Reason
from bookmaker.reasons.bymark import (
    Apart,
    Beside,
    BesideAll,
    Bounds,
    CommonSum,
    CountsTo,
    Enclosed,
    FirstDigits,
    HeldByRest,
    LeftOver,
    LimitsMeet,
    Needed,
    NoCombination,
    NoFilling,
    NoPartner,
    NoRun,
    OneCombination,
    OnlyDigits,
    OnlyIn,
    Reached,
    SameDigit,
    Steps,
    TooNear,
)
from bookmaker.reasons.claims import Claim, members, name_of
from bookmaker.reasons.marks import Joined
from bookmaker.reasons.patterns import (
    Chain,
    Fish,
    HiddenSubset,
    LinkedWing,
    Locked,
    NakedSubset,
    PivotWing,
    SeenByAll,
)
from bookmaker.reasons.roles import Span
from bookmaker.reasons.singles import Fixed, FromProof, HiddenSingle, LastCell, NakedSingle
from bookmaker.reasons.throughmarks import EitherWay, ExtendedChain, ExtendedLink
from bookmaker.reasons.whatif import End, Link, NoDigit, NoPlace, NothingFits, Refuted, ThenGone, ThenPlaced

FEW_SUMS = 4
"""So many sums in a row, or more, are said as a range."""


@dataclass(frozen=True)
class Message:
    """A message by its name, with what it is filled in with."""

    name: str
    arguments: dict[str, Argument]


def reason_said(words: Phrasebook, reason: Reason, removed: Sequence[Candidate] = (), wording: int = 0) -> str:
    """The sentence that says a reason and what goes by it."""
    message = reason_message(words, reason, removed)
    return words.sentence(message.name, wording, **message.arguments)


def reason_message(words: Phrasebook, reason: Reason, removed: Sequence[Candidate] = ()) -> Message:
    """The message that says a reason, in the wording of its kind or technique where there is one."""
    said = _arguments(words, reason.claim)
    name, more = _message(words, reason.claim, removed)
    said |= more
    names = [f"{name}--{reason.kind}", f"{name}--{reason.technique}", name]
    if mark := reason.mark:
        many = isinstance(mark.anchor, Joined)
        names[2:2] = [f"{name}-joined"] * many
        said |= {"mark": words.mark(mark), "value": mark.value}
        said |= {"noun": words.noun(mark.kind), "nouns": words.nouns(mark.kind)}
        said["many"] = "yes" if many else "no"
    if removed:
        cells, digits = (sorted({pair[part] for pair in removed}) for part in (0, 1))
        said |= {"gone": words.gone(removed), "gone-digits": words.digits(digits), "gone-cells": words.cells(cells)}
    return Message(words.first(*names), said)


def _arguments(words: Phrasebook, part: Any) -> dict[str, Argument]:
    """The members of a claim, or of a part of it, as its messages print them."""
    said: dict[str, Argument] = {}
    for name, role in members(part.__class__):
        value = getattr(part, name)
        match role:
            case _ if value is None:
                continue
            case "Cell":
                said[name] = words.cell(value)
            case "Cells":
                said[name] = words.cells(value)
            case "Digit":
                said[name] = words.digit(value)
            case "Digits":
                said[name] = words.digits(value)
            case "Candidate":
                said[name] = words.candidate(value)
            case "HouseRef" | "HouseRef | None":
                said[name] = words.house(value)
            case "Houses":
                said[name] = words.houses(value)
            case "MarkRef" | "MarkRef | None":
                said[name] = words.mark(value)
            case "int":
                said[name] = str(value)
            case "tuple[int, ...]":
                said[name] = words.numbers(value)
    return said


def _message(words: Phrasebook, claim: Claim, removed: Sequence[Candidate]) -> tuple[str, dict[str, Argument]]:
    """The name of the message that says a claim, and arguments that are not its members."""
    name, more = f"claim-{name_of(claim)}", dict[str, Argument]()
    match claim:
        case NakedSubset(house=None) | SeenByAll(house=None):
            name += "-in-mark"
        case Fish(fins=(_, *_)):
            name += "-finned"
        case LimitsMeet(from_above=True):
            name += "-from-above"
        case HeldByRest(settled=True):
            name += "-settled"
        case Enclosed(ends, _):
            name += "-ends" * (bool(removed) and {cell for cell, _ in removed} <= {*ends})
        case Chain():
            start, end = claim.ends
            name += "-to-itself" * (start == end)
            trues = words.catalogue.joined([_true(words, link.true) for link in claim.links], "and")
            more = {"start-cell": words.cell(start[0]), "start-digit": words.digit(start[1]), "trues": trues}
            more |= {"start": _true(words, start), "end": _true(words, end)}
        case ExtendedChain(chained, by, seen):
            first, last = claim.ends
            name += "-to-itself" * (first == last) + "-seen" * (not by)
            followed = words.catalogue.joined([_extended_link(words, link) for link in chained], "clauses")
            more = {"unless": _group(words, "unless", *first), "trues": followed}
            more |= {"start": _group(words, "true", *first), "end": _group(words, "true", *last)}
            more |= {"by": _by(words, by, seen), "taken": _taken(words, removed)}
        case EitherWay(options, house, by, seen):
            name += "-in-cell" * (house is None)
            (cell, digit), *_ = options
            more = {"cell": words.cell(cell), "digit": words.digit(digit), "n": len(options)}
            more |= {"places": words.cells(at for at, _ in options), "digits": words.digits(no for _, no in options)}
            more |= {"by": _by(words, by, seen), "taken": _taken(words, removed)}
        case Refuted(_, rounds, ending, links):
            name += "-linked" if links else "-later" if rounds else ""
            more = {"n": rounds, "rounds": words.number(rounds)}
            more |= _links(words, links, ending)
        case Bounds(spans):
            more = {"bounds": _bounds(words, spans, removed)}
        case NoFilling():
            more = {"impossible": _impossible(words, removed)}
        case CommonSum(sums):
            more = {"sums": _sums(words, sums)}
        case LeftOver(houses, total, within, beyond, _):
            name += "-beyond" * beyond
            more = {"rest": str(abs(total - within)), "n": len(houses)}
        case Apart(counts, fillings):
            name += "-filled" * bool(fillings)
            more = _apart(words, counts, fillings)
        case (
            Beside()
            | BesideAll()
            | CountsTo()
            | FirstDigits()
            | Fish()
            | Fixed()
            | FromProof()
            | HeldByRest()
            | HiddenSingle()
            | HiddenSubset()
            | LastCell()
            | LimitsMeet()
            | LinkedWing()
            | Locked()
            | NakedSingle()
            | NakedSubset()
            | Needed()
            | NoCombination()
            | NoPartner()
            | NoRun()
            | OneCombination()
            | OnlyDigits()
            | OnlyIn()
            | PivotWing()
            | Reached()
            | SameDigit()
            | SeenByAll()
            | Steps()
            | TooNear()
        ):
            pass
        case _ as never:
            assert_never(never)
    return name, more


def _true(words: Phrasebook, candidate: Candidate) -> str:
    return words.say("true", cell=words.cell(candidate[0]), digit=words.digit(candidate[1]))


def _extended_link(words: Phrasebook, link: ExtendedLink) -> str:
    """“r2c6 is 3”, “the cage of 12 rules out 3 in r2c4, so r2c6 is 3”, “r1c1 and r1c2 hold 2 and 3, so r1c2 is 3”."""
    said: dict[str, Argument] = {"true": _group(words, "true", link.true, link.true_digit)}
    name = "true" + "-among" * (len(link.among) > 1) + "-by-mark" * bool(link.by)
    if name == "true":
        return str(said["true"])
    said |= {"among": words.cells(link.among), "digits": words.digits(link.digits)}
    said |= {"by": _by(words, link.by, link.seen), "taken": _taken(words, [(c, link.false_digit) for c in link.false])}
    return words.say(name, **said)


def _group(words: Phrasebook, name: str, cells: Sequence[int], digit: int) -> str:
    """“r2c6 is 3”, “3 is in r2c6 or r2c7”."""
    if len(cells) == 1:
        return words.say(name, cell=words.cell(cells[0]), digit=words.digit(digit))
    return words.say(f"{name}-in-group", cells=words.cells(cells), digit=words.digit(digit))


def _by(words: Phrasebook, marks: Sequence[MarkRef], seen: bool) -> str:
    """“the cage of 12 or the digit itself”."""
    said = [str(words.mark(mark)) for mark in marks] + [words.say("in-plain-sight")] * seen
    return words.catalogue.joined(said, "or") if said else ""


def _taken(words: Phrasebook, gone: Sequence[Candidate]) -> str:
    """“3 and 5 in r2c4 and 7 in r2c5”."""
    taken = [
        words.say("taken", digits=words.digits(digits), cells=words.cells(cells)) for digits, cells in gathered(gone)
    ]
    return words.catalogue.joined(taken, "and") if taken else ""


def _links(words: Phrasebook, links: Sequence[Link], end: End) -> dict[str, Argument]:
    """What follows, and the end; a mark that was named last is not named once more."""
    said, before = [], None
    for part in (*links, end):
        mark = getattr(part, "mark", None)
        again = words.say("mark-again", noun=words.noun(mark.kind)) if mark and mark == before else ""
        said.append(_link(words, part, again) if isinstance(part, ThenPlaced | ThenGone) else _end(words, part, again))
        before = mark or before
    joined = words.catalogue.joined(said[:-1], "then") if links else ""
    return {"links": joined, "end": said[-1]}


def _end(words: Phrasebook, end: End, again: str) -> str:
    """How a what-if ends, as a clause; `again` is how a mark is called that was named just before."""
    match end:
        case NoPlace():
            name = "end-no-place"
        case NoDigit(_, mark, marked):
            name = "end-no-digit-by-mark" if mark else "end-no-digit-by-marks" if marked else "end-no-digit"
        case NothingFits():
            name = "end-nothing-fits"
        case _ as never:
            assert_never(never)
    said = _arguments(words, end)
    return words.say(name, **(said | {"mark": again} if again else said))


def _link(words: Phrasebook, link: Link, again: str) -> str:
    """What follows in a what-if, as a clause."""
    said = _arguments(words, link)
    if again:
        said["mark"] = again
    match link:
        case ThenPlaced(_, _, house, mark):
            name = "then-in-house" if house else "then-by-mark" if mark else "then-last"
        case ThenGone(_, gone):
            name = "then-gone"
            said["taken"] = _taken(words, gone)
        case _ as never:
            assert_never(never)
    return words.say(name, **said)


def _bounds(words: Phrasebook, spans: Sequence[Span], removed: Sequence[Candidate]) -> str:
    """What the cells that something goes from can hold, as far as it matters for what goes."""
    said = []
    for cell, low, high in spans:
        gone = [digit for other, digit in removed if other == cell]
        if not gone:
            continue
        below, above = min(gone) < low, max(gone) > high
        name = "only" if low == high else "both" if below and above else "least" if below else "most"
        said.append(words.say(f"bounds-{name}", cell=words.cell(cell), low=words.digit(low), high=words.digit(high)))
    return words.catalogue.joined(said, "and") if said else ""


def _impossible(words: Phrasebook, removed: Sequence[Candidate]) -> str:
    """“with 4 in r8c2, or with 2 or 5 in r7c3”."""
    said = [
        words.say("impossible", digits=words.digits(digits), cells=words.cells(cells))
        for digits, cells in gathered(removed)
    ]
    return words.catalogue.joined(said, "or-clauses") if said else ""


def _sums(words: Phrasebook, sums: Sequence[int]) -> str:
    if len(sums) >= FEW_SUMS and sums[-1] - sums[0] == len(sums) - 1:
        return words.say("sums-range", least=str(sums[0]), most=str(sums[-1]))
    return words.catalogue.joined(tuple(map(str, sums)), "or")


def _apart(words: Phrasebook, counts: Sequence[int], fillings: Sequence[Sequence[int]]) -> dict[str, Argument]:
    number = words.catalogue.joined([str(words.number(count)) for count in counts], "or")
    said: dict[str, Argument] = {"counts": words.say("apart-cells", number=number, n=counts[-1])}
    if fillings:
        sets = [words.catalogue.joined(tuple(map(words.digit, digits)), "and") for digits in fillings]
        said["fillings"] = words.catalogue.joined(sets, "or")
    return said
