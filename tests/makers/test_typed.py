"""What the makers write into a manifest reads back as the rule it was."""

from __future__ import annotations

import importlib
from dataclasses import fields
from random import Random

import pytest

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from tests.makers.draw import rules_from
from tests.makers.typed import WRITERS, typed_rule
from tests.rules.grids import random_solution


@pytest.mark.parametrize("kind", WRITERS)
def test_a_written_rule_reads_back(kind: str) -> None:
    cases = importlib.import_module(f"tests.rules.cases.{kinds()[kind].__module__.rpartition('.')[2]}")
    rng = Random(f"typed {kind}")
    read = 0
    for _ in range(12):
        rule = cases.lay(CLASSIC, random_solution(CLASSIC, rng), rng)
        if rule is not None:
            (again,) = rules_from(typed_rule(rule, CLASSIC), CLASSIC)
            assert _unordered(again) == _unordered(rule)
            read += 1
    assert read >= 3


def _unordered(rule: Rule) -> dict[str, object]:
    """The rule's fields, lists of marks without their order."""
    values = {field.name: getattr(rule, field.name) for field in fields(rule)}  # type: ignore[arg-type]
    return {name: frozenset(value) if isinstance(value, tuple) else value for name, value in values.items()}
