"""What the rules of a puzzle ask, each said once.

In: a puzzle. Out: its rules with their sentences. Where grids overlap, rules that say the same in several of them have
one sentence, which names these grids unless it holds in all, or stands across them.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bookmaker.language import Catalogue
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.words.letters import in_letters


@dataclass(frozen=True)
class RuleSentence:
    """A rule as it stands in each of the `squares` that it is said of (once, where there is one grid), its sentence."""

    squares: tuple[Rule, ...]
    sentence: str

    @property
    def rule(self) -> Rule:
        """Any of them: they differ in their grid alone."""
        return self.squares[0]


def rules_said(words: Catalogue, puzzle: RuledPuzzle) -> Iterator[RuleSentence]:
    """The rules in their order."""
    alike: dict[Rule, list[Rule]] = {}
    for rule in puzzle.rules:
        alike.setdefault(replace(rule, square=""), []).append(rule)
    for first, rules in alike.items():
        sentence = in_letters(words, first.sentences(words, puzzle.grid), puzzle.grid)
        letters = [rule.square for rule in rules if rule.square]
        if letters and len(letters) < len(puzzle.grid.squares):
            sentence = words.say("rule-in-grids", n=len(letters), grids=words.listed(letters), sentence=sentence)
        yield RuleSentence(tuple(rules), sentence)
