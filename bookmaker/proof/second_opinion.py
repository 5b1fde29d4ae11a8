"""Second opinions on proofs: where another prover, told the rules in other words, says something else.

In: proofs. Out: a diagnostic for each puzzle on which the two provers disagree, which is a fault of ours and must stop
the book, and a warning for each on which the second one gave up.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from concurrent.futures import Executor, Future

from bookmaker.crosscheck import HOW_TO_INSTALL, auditor, second_opinion
from bookmaker.proof.executors import InProcess, ahead_of, in_order
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.solve.verdict import NoSolution, Several, Undecided, Unique, Verdict
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place


def demand_auditor() -> None:
    """Raises BookErrors, with the way to install it, where there is no second prover."""
    if not auditor():
        hint = f"install it with: {HOW_TO_INSTALL}"
        said = "the second prover, OR-Tools, is not installed here"
        raise BookErrors([Diagnostic(Place("--second-opinion"), "no-auditor", said, hint)])


def doubts(proofs: Sequence[Proof], executor: Executor | None = None) -> Iterator[Diagnostic]:
    """What second opinions bring up, in the order of the proofs; found by `executor` if there is one, else here."""
    workers = executor or InProcess()

    def begin(proof: Proof) -> Future[Verdict | None]:
        return workers.submit(second_opinion, proof.entry.puzzle)

    for proof, opinion in in_order(iter(proofs), begin, ahead_of(workers)):
        entry = proof.entry
        name = f"“{entry.title or entry.id}”"
        if opinion is None:
            said = f"{name}: the second prover gave up without an answer"
            yield Diagnostic(entry.place, "no-second-opinion", said, warning=True)
        elif not _agree(proof.verdict, opinion):
            symbols = entry.puzzle.grid.symbols
            said = (
                f"{name}: the provers disagree: first {_words(proof.verdict, symbols)}, then {_words(opinion, symbols)}"
            )
            hint = "one of them is wrong, so don't print this puzzle; please report it"
            yield Diagnostic(entry.place, "provers-disagree", said, hint)


def _agree(verdict: Verdict, opinion: Verdict) -> bool:
    match verdict, opinion:
        case Unique(ours), Unique(theirs):
            return ours == theirs
        case (Several(), Several()) | (NoSolution(), NoSolution()) | (Undecided(), _):
            return True
        case _:
            return False


def _words(verdict: Verdict, symbols: str) -> str:
    match verdict:
        case Unique(solution):
            return f"one solution ({digits_text(solution, symbols)})"
        case NoSolution():
            return "no solution"
        case Several():
            return "more than one solution"
        case Undecided():
            return "no answer"
