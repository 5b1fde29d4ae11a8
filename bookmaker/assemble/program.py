"""A plan as a program of whole numbers, as in automated test assembly (W. van der Linden, “Linear Models for Optimal
Test Design”, Springer 2005): for each card and part a variable that is 1 if the card stands in that part.

In: a plan, which demands to keep and how. Out: the `Program`, and its optimum read back as a `Choice`. Cards that no
demand and no preference tells apart are one class: of each only as many as a collection can hold are asked about, those
that are preferred, which leaves the optimum as it is.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, field
from hashlib import sha256
from math import inf

from bookmaker.archive.cards import Card
from bookmaker.assemble.amounts import MOST
from bookmaker.assemble.optimiser import Optimum, Program
from bookmaker.assemble.plan import Choice, Curve, Demand, Plan, Row
from bookmaker.manifest.dates import When

STEP = 10
"""Points of a band at which a collection is compared with its curve."""

FINE = 100
"""Shares of a curve are whole hundredths."""

NEVER_SHOWN = 1200
"""Months that a puzzle which was never shown counts as not shown."""


@dataclass
class Model:
    """A program with what its variables stand for. `slacks` has for each demand the variables that say how far it is
    missed."""

    program: Program
    places: list[tuple[int, int]]
    """Card and part of each of the first variables."""
    slacks: dict[int, list[int]] = field(default_factory=dict)

    def choice(self, optimum: Optimum, parts: int) -> Choice:
        chosen: list[list[int]] = [[] for _ in range(parts)]
        for value, (card, part) in zip(optimum.values, self.places, strict=False):
            if value:
                chosen[part].append(card)
        return Choice(tuple(map(tuple, chosen)), optimum.slack)


def model_of(
    plan: Plan,
    kept: Collection[int] | None = None,
    yielding: bool = False,
    refused: Sequence[Choice] = (),
    most: int | None = None,
) -> Model:
    """The program for the demands `kept` (by their number; all if None). `yielding` lets all of them be missed, as
    little as can be; `refused` are collections that must not come out again; `most` bounds the number of puzzles."""
    demands = [demand for at, demand in enumerate(plan.demands) if kept is None or at in kept]
    numbers = [at for at in range(len(plan.demands)) if kept is None or at in kept]
    limit = min(_largest(plan, demands, yielding), most if most is not None else MOST)
    cards = _asked_about(plan, demands, limit + len(refused), yielding, refused)
    parts = range(len(plan.parts))
    program = Program()
    places = [(card, part) for card in cards for part in parts]
    for _ in places:
        program.variable()
    model = Model(program, places)
    columns: dict[int, dict[int, int]] = {}
    for at, (card, part) in enumerate(places):
        columns.setdefault(card, {})[part] = at
    if len(parts) > 1:
        for of_card in columns.values():
            program.row(dict.fromkeys(of_card.values(), 1), most=1)
    every = dict.fromkeys(range(len(places)), 1)
    program.row(every, least=1, most=limit)
    for number, demand in zip(numbers, demands, strict=True):
        soft = yielding or demand.rather
        model.slacks[number] = [s for row in demand.rows for s in _demanded(program, row, columns, soft)]
    for group in plan.alike:
        program.row({at: 1 for card in group for at in columns.get(card, {}).values()}, most=1)
    for choice in refused:
        factors = {at: 1 for card in choice.chosen for at in columns[card].values()}
        program.row({at: factors.get(at, -1) for at in every}, most=len(choice.chosen) - 1)
    hard = {at: 1 for n, demand in zip(numbers, demands, strict=True) if not demand.rather for at in model.slacks[n]}
    rather = {at: 1 for n, demand in zip(numbers, demands, strict=True) if demand.rather for at in model.slacks[n]}
    program.objectives += [missed for missed in (hard, rather) if missed]
    if kept is None:
        for preference in plan.preferences:
            program.objectives.append(_preferred(plan, preference.wish, preference.tag, program, places, columns))
        program.objectives.append({at: tie(plan.cards[card]) for at, (card, _) in enumerate(places)})
    return model


def _largest(plan: Plan, demands: Sequence[Demand], yielding: bool) -> int:
    """The most puzzles that a collection can have."""
    rows = [row for demand in demands for row in demand.rows if row.label == "puzzles" and not demand.rather]
    whole = [row.amount.most for row in rows if row.part is None and row.amount.most is not None]
    each = [row.amount.most for row in rows if row.part is not None and row.amount.most is not None]
    bounds = [*whole, *([sum(each)] if len(each) == len(plan.parts) else [])]
    return min((2 * bound if yielding else bound for bound in bounds), default=MOST)


def _asked_about(
    plan: Plan, demands: Sequence[Demand], limit: int, yielding: bool, refused: Sequence[Choice]
) -> list[int]:
    """The cards that matter: none that a filter rules out of everything, and of each class only the best."""
    out = set[int]()
    classes: dict[int, list[int]] = {}
    for demand in demands:
        for row in demand.rows:
            if demand.filters and not yielding and not demand.rather and row.part is None:
                out |= row.cards
            for card in row.cards:
                classes.setdefault(card, []).append(id(row))
            for card in row.among or ():
                classes.setdefault(card, []).append(-id(row.among))
    for group in plan.alike:
        for card in group:
            classes.setdefault(card, []).append(id(group))
    wishes = {preference.wish for preference in plan.preferences}
    signatures: dict[object, list[int]] = {}
    for at, each in enumerate(plan.cards):
        if at in out:
            continue
        more: list[object] = [tuple(classes.get(at, ()))]
        more += [_bin(each)] if "curve" in wishes else []
        more += [each.setter] if "setters" in wishes else []
        more += [each.kinds] if "kinds" in wishes else []
        signatures.setdefault(tuple(more), []).append(at)
    wanted = {card for choice in refused for card in choice.chosen}
    newest = newest_of(plan)
    kept: list[int] = []
    for members in signatures.values():
        members.sort(key=lambda at: (scores_of(plan, plan.cards[at], newest), tie(plan.cards[at])))
        kept += members[:limit]
        kept += [at for at in members[limit:] if at in wanted]
    return sorted(kept)


def newest_of(plan: Plan) -> int:
    """The month, counted from the year 0, in which a card of the plan was last shown for the first time."""
    return max((_months(card.when) for card in plan.cards if card.shown), default=0)


def scores_of(plan: Plan, card: Card, newest: int) -> tuple[int, ...]:
    """What a card adds to each preference that counts cards one by one; less is better."""
    return tuple(_score(card, each.wish, each.tag, newest) for each in plan.preferences)


def _score(card: Card, wish: str, tag: str, newest: int) -> int:
    match wish:
        case "unshown":
            return -min(newest - _months(card.when), NEVER_SHOWN) if card.shown else -NEVER_SHOWN
        case "tag":
            return -int(tag in card.tags)
        case "newest":
            return -_months(card.when) if card.when else 0
        case "oldest":
            return _months(card.when) - 12 * 3000 if card.when else 0
        case _:
            return 0


def _months(when: When | None) -> int:
    return 12 * when.year + max(when.month, 1) - 1 if when else 0


def tie(card: Card) -> int:
    """A number that decides between collections which are equally good, the same on every machine."""
    return int.from_bytes(sha256(f"{card.id}\n{card.keys.puzzle}".encode()).digest()[:2], "big") % 997 + 1


def _bin(card: Card) -> int:
    return int(card.difficulty * STEP + 1e-9)


def _demanded(program: Program, row: Row, columns: dict[int, dict[int, int]], soft: bool) -> list[int]:
    """Adds a row; with `soft` it returns the variables that say how far it is missed."""
    factors: dict[int, int] = {}
    if row.among is not None:  # 2 · alike − all ≤ 1
        for card in sorted(row.among):
            for part, at in columns.get(card, {}).items():
                if row.part is None or part == row.part:
                    factors[at] = 1 if card in row.cards else -1
        bounds: tuple[float, float] = (-inf, 1.0)
    else:
        for card in sorted(row.cards):
            for part, at in columns.get(card, {}).items():
                if row.part is None or part == row.part:
                    factors[at] = 1
        bounds = (row.amount.least, inf if row.amount.most is None else row.amount.most)
    if bounds == (0, inf) or (bounds[0] <= 0 and bounds[1] >= len(factors) and row.among is None):
        return []
    slacks = []
    if soft:
        if bounds[0] > 0:
            slacks.append(program.variable(MOST))
            factors[slacks[-1]] = 1
        if bounds[1] < inf:
            slacks.append(program.variable(MOST))
            factors[slacks[-1]] = -1 if row.among is None else -2
    program.row(factors, *bounds)
    return slacks


def _preferred(
    plan: Plan,
    wish: str,
    tag: str,
    program: Program,
    places: Sequence[tuple[int, int]],
    columns: dict[int, dict[int, int]],
) -> dict[int, int]:
    """What is to be small for a preference."""
    match wish:
        case "curve":
            return _off_the_curve(plan, program, places)
        case "setters" | "kinds":
            groups: dict[object, list[int]] = {}
            for card, of_card in columns.items():
                key = plan.cards[card].setter if wish == "setters" else plan.cards[card].kinds
                if key or wish == "kinds":
                    groups.setdefault(key, []).extend(of_card.values())
            objective = {}
            for variables in groups.values():
                met = program.variable(whole=False)
                program.row({**dict.fromkeys(variables, 1), met: -1}, least=0)
                objective[met] = -1
            return objective
        case _:
            newest = newest_of(plan)
            scores = {at: _score(plan.cards[card], wish, tag, newest) for at, (card, _) in enumerate(places)}
            return {at: score for at, score in scores.items() if score}


def _fixed_size(plan: Plan, part: int) -> int | None:
    """How many puzzles a part has, if the brief leaves no choice."""
    for demand in plan.demands:
        for row in demand.rows:
            counted = row.part == part or (row.part is None and len(plan.parts) == 1)
            if row.label == "puzzles" and counted and row.amount.least == row.amount.most:
                return row.amount.least
    return None


def off_the_curve(curve: Curve, difficulties: Sequence[float]) -> int:
    """What `_off_the_curve` makes small, of puzzles that are given."""
    bins = sorted(int(each * STEP + 1e-9) for each in difficulties)
    total = below = 0
    for step in range(STEP, 6 * STEP):
        while below < len(bins) and bins[below] <= step:
            below += 1
        total += abs(FINE * below - round(FINE * curve.share_below((step + 1) / STEP)) * len(bins))
    return total


def _off_the_curve(plan: Plan, program: Program, places: Sequence[tuple[int, int]]) -> dict[int, int]:
    """The area between the curve and the collection: at each tenth of a band, how many puzzles more or fewer are no
    harder than they should be (the distance of two distributions, L. Wasserstein 1969), in hundredths of a puzzle."""
    objective: dict[int, int] = {}
    for part, wanted in enumerate(plan.parts):
        if wanted.curve is None:
            continue
        size = _fixed_size(plan, part)
        here = [(at, _bin(plan.cards[card])) for at, (card, of) in enumerate(places) if of == part]
        count = program.variable(MOST)
        program.row({**{at: 1 for at, _ in here}, count: -1}, 0, 0)
        below: int | None = None
        for step in range(STEP, 6 * STEP):
            total = program.variable(MOST)
            factors = {at: 1 for at, place in here if place == step}
            if below is not None:
                factors[below] = 1
            program.row({**factors, total: -1}, 0, 0)
            below = total
            share = round(FINE * wanted.curve.share_below((step + 1) / STEP))
            off = program.variable(FINE * MOST)
            program.row({off: 1, total: -FINE, count: share}, least=0)
            program.row({off: 1, total: FINE, count: -share}, least=0)
            if size is not None:  # between two whole numbers nothing lies closer: it helps the optimiser to know
                here_below, left = divmod(share * size, FINE)
                program.row({off: 1, total: 2 * left - FINE}, least=left - here_below * (FINE - 2 * left))
            objective[off] = 1
    return objective
