"""Small catalogues and briefs, drawn from seeds, and plans made of them."""

from __future__ import annotations

from pathlib import Path
from random import Random

from bookmaker.archive import Card, Catalogue
from bookmaker.assemble.brief import make_plan, open_brief
from bookmaker.assemble.plan import Plan
from bookmaker.source.diagnostics import BookErrors, Collector
from bookmaker.symmetry import Keys

SETTERS = ("Wick", "Brine", "Fennel", "")
KINDS = ("thermometer", "cage", "arrow")
TAGS = ("harbour", "storm")


def card(number: int, rng: Random) -> Card:
    """A card that could be real."""
    kinds = tuple(sorted(rng.sample(KINDS, rng.choice((0, 1, 1, 2)))))
    family = "sums" if "cage" in kinds or "arrow" in kinds else "relations" if kinds else "classic"
    band = rng.randint(1, 5)
    return Card(
        id=f"p{number}",
        file="store/all.yaml",
        line=number + 1,
        column=7,
        setter=rng.choice(SETTERS),
        shown=rng.choice(("", "2023", "2024-05", "2025-01-17")),
        tags=tuple(tag for tag in TAGS if rng.random() < 0.4),
        state=rng.choice(("granted", "own", "asked", "none")),
        kinds=kinds,
        family=family,
        difficulty=band + rng.random(),
        keys=Keys(f"key {number if rng.random() < 0.9 else 0}", "", ""),
    )


def pool(count: int, seed: int) -> Catalogue:
    rng = Random(seed)
    cards = tuple(card(number, rng) for number in range(count))
    history = {c.keys.puzzle: ("Old",) for c in cards if rng.random() < 0.2}
    return Catalogue(cards, (Path("store"),), history)


def plan_of(text: str, catalogue: Catalogue, folder: Path) -> Plan:
    """The plan of a brief; raises BookErrors where it is faulty."""
    file = folder / "brief.yaml"
    file.write_text(text, encoding="utf-8")
    collector = Collector()
    opened = open_brief(file, collector)
    plan = make_plan(opened, catalogue, lambda books: frozenset({"key 3"}), collector) if opened else None
    if plan is None:
        raise BookErrors(collector.found)
    return plan


def drawn_brief(rng: Random, puzzles: int) -> str:
    """A brief with a few demands of all sorts."""
    lines = ["brief:", "  title: Drawn", f"  puzzles: {puzzles}"]
    wanted = [
        f"  bands: {{Stroll: at least {rng.randint(0, 1)}, Climb: at most {rng.randint(0, 2)}}}",
        f"  each-setter: at most {rng.randint(1, 3)}",
        f"  kinds: {{cage: {rng.randint(0, 1)} to {rng.randint(1, 2)}, classic: at most 2}}",
        f"  tags: {{harbour: at least {rng.randint(0, 3)}}}",
        "  permission: [granted, own]",
        "  unprinted: yes",
        "  shown: before 2025",
        "  difficulty: Stroll to Climb",
        f"  must: p{rng.randint(0, 9)}",
        "  never: [p1, p2]",
        "  apart: setters",
        "  not-in: some.yaml",
        "  setters: {Wick: {at-most: 0, rather: yes}}",
        "  each-kind: {at-most: 2}",
    ]
    lines += rng.sample(wanted, rng.randint(2, 6))
    lines += [f"  curve: {rng.choice(('rising', '1.5 to 4'))}"] if rng.random() < 0.5 else []
    wishes = ["longest not shown", "tag storm", "most setters", "most kinds", "newest", "oldest"]
    lines += [f"  prefer: [{', '.join(rng.sample(wishes, rng.randint(1, 3)))}]"]
    return "\n".join(lines) + "\n"
