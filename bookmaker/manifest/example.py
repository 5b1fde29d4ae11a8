"""A rule kind's own example, read as a manifest reads it.

In: a kind. Out: the rule that its example says, on the everyday grid.
"""

from __future__ import annotations

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules.common.contract import Rule
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Table
from bookmaker.source.yamlfile import parse_yaml


def example_rule(kind: type[Rule]) -> Rule:
    """The rule of a kind's example. Raises ValueError if the example cannot be read, which is our fault."""
    collector = Collector()
    tree = parse_yaml(kind.example, kind.kind, collector)
    body = tree.get(kind.kind) if isinstance(tree, Table) else None
    rule = kind.read(body, CLASSIC, collector) if body is not None else None
    if rule is None:
        raise ValueError(
            f"the example of “{kind.kind}” cannot be read: {[diagnostic.text for diagnostic in collector.found]}"
        )
    return rule
