"""Why a collection is as it is, in words: what was wanted and what came of it, and for each puzzle why it is there.

In: a plan and the choice made for it, in order. Out: a text in Markdown. The runner-up of a puzzle is the one that
could stand in its place with every demand still met, and that is next best by what the brief prefers.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from bookmaker.archive.cards import Card, Catalogue
from bookmaker.assemble.amounts import Amount
from bookmaker.assemble.plan import Choice, Demand, Plan
from bookmaker.assemble.program import newest_of, off_the_curve, scores_of, tie
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import Place

AROUND = 200
"""Runner-ups are looked for among so many puzzles that are nearly as hard, on either side."""

HANDOUT = 12
"""Puzzles of a part up to which the line is given that prints them as a handout."""

SHOWN_ROWS = 4
"""Of a demand that counts many things one by one, so many are told of that come near its limit."""


def reasons(plan: Plan, choice: Choice, catalogue: Catalogue, pages: int | None, curve: str, folder: str) -> str:
    """The whole text. `pages` is the page count as composed, `curve` the name of the picture of the curve, `folder`
    where the book lies."""
    return "\n".join(_lines(plan, choice, catalogue, pages, curve, folder)) + "\n"


def _lines(
    plan: Plan, choice: Choice, catalogue: Catalogue, pages: int | None, curve: str, folder: str
) -> Iterator[str]:
    yield f"# {plan.title}: why these puzzles\n"
    best = "No other collection is better by what the brief prefers, in that order: this is proven."
    if choice.slack:
        best = f"The search ended before this was proven best; a better one could gain {choice.slack:.0f} at most."
    chosen = counted(len(choice.chosen), "puzzle")
    yield f"{chosen[:1].upper()}{chosen[1:]} of {len(plan.cards)}. {best}"
    for why, count in plan.left_out.items():
        yield f"Not considered: {counted(count, 'puzzle')} {why}."
    yield "\n## What was wanted, and what came of it\n"
    yield "| the brief | got |"
    yield "| --- | --- |"
    groups: dict[tuple[Place, str], list[Demand]] = {}
    for demand in plan.demands:
        groups.setdefault((demand.place, demand.quoted), []).append(demand)
    for group in groups.values():
        first, parts = group[0], f", in each of {len(group)} chapters" if len(group) > 1 else group[0].where
        yield f"| {first.quoted}{parts}{' (rather)' if first.rather else ''} | {_got_in_all(choice, group)} |"
    if plan.pages is not None:
        yield f"| pages: {plan.pages} | {pages} |"
    for preference in plan.preferences:
        yield f"| prefer: {preference.words} | {_preferred(plan, choice, preference.wish, preference.tag)} |"
    yield f"\n![Difficulty from the first puzzle to the last]({curve})"
    yield "\n## The puzzles\n"
    runners = _runners_up(plan, choice)
    for of, (part, cards) in enumerate(zip(plan.parts, choice.parts, strict=True)):
        if part.title:
            yield f"### {part.title}\n"
        if len(cards) <= HANDOUT:
            picks = ",".join(plan.cards[at].id for at in cards)
            line = f"bookmaker handout {folder} --pick {picks} --out {_file_name(part.title)}"
            yield f"On paper for the table: `{line}`\n"
        for number, at in enumerate(cards, start=1):
            yield from _of_puzzle(plan, catalogue, at, of, number, runners.get(at))
        yield ""


def _file_name(title: str) -> str:
    return ("-".join(re.findall(r"\w+", title.casefold())) or "handout") + ".pdf"


def _got_in_all(choice: Choice, demands: Sequence[Demand]) -> str:
    """What came of a demand that chapters share."""
    if len(demands) == 1:
        return _got(choice, demands[0])
    missed = sum(not choice.keeps(demand) for demand in demands)
    told = f", missed in {missed}" if missed else ""
    if any(len(demand.rows) > 1 or demand.filters for demand in demands):
        return "kept" if not missed else told.removeprefix(", ")
    counts = [choice.count(demand.rows[0]) for demand in demands]
    return (f"{min(counts)} to {max(counts)}" if min(counts) < max(counts) else f"{counts[0]}") + told


def _got(choice: Choice, demand: Demand) -> str:
    """What came of a demand."""
    if len(demand.rows) == 1:
        row = demand.rows[0]
        if demand.filters:
            return "kept" if choice.keeps(demand) else f"missed by {choice.count(row)}"
        return f"{choice.count(row)}{'' if choice.keeps(demand) else ', missed'}"
    most: dict[str, int] = {}
    for row in demand.rows:
        most[row.label] = max(most.get(row.label, 0), choice.count(row))
    counts = sorted(((count, label) for label, count in most.items()), key=lambda each: (-each[0], each[1]))
    said = ", ".join(f"{label} {count}" for count, label in counts[:SHOWN_ROWS] if count)
    more = sum(1 for count, _ in counts[SHOWN_ROWS:] if count)
    said += f" and {more} more" if more else ""
    return said + ("" if choice.keeps(demand) else "; missed")


def _preferred(plan: Plan, choice: Choice, wish: str, tag: str) -> str:
    cards = [plan.cards[at] for at in choice.chosen]
    match wish:
        case "unshown":
            never = sum(not card.shown for card in cards)
            latest = max((card.shown for card in cards if card.shown), default="")
            return f"{never} never shown" + (f", the others last in {latest}" if latest else "")
        case "tag":
            return f"{sum(tag in card.tags for card in cards)} with {tag}"
        case "setters":
            return f"{len({card.setter for card in cards if card.setter})} setters"
        case "kinds":
            return f"{len({card.kinds for card in cards})} combinations of rules"
        case "curve":
            return "difficulty " + ", ".join(card.difficulty_text for card in cards)
        case _:
            shown = sorted(card.shown for card in cards if card.shown)
            return f"{shown[0]} to {shown[-1]}" if shown else "never shown"


def _of_puzzle(
    plan: Plan, catalogue: Catalogue, at: int, part: int, number: int, runner: tuple[int, str] | None
) -> Iterator[str]:
    card = plan.cards[at]
    about = [catalogue.band_name(card) + f" {card.difficulty_text}", ", ".join(card.kinds) or card.grid]
    about += [card.setter] if card.setter else []
    yield f"{number}. **{card.title or card.id}** ({card.id}): {'; '.join(about)}"
    served = [demand.quoted for demand in plan.demands if _serves(demand, at, part)]
    if served:
        yield f"   - serves {'; '.join(served)}"
    if runner:
        other = plan.cards[runner[0]]
        yield f"   - before {other.title or other.id} ({other.id}): {runner[1]}"
    else:
        yield "   - no other puzzle could stand here with every demand met"


def _serves(demand: Demand, at: int, part: int) -> bool:
    """Does a card of a part count towards something that the brief wants, rather than only bounds?"""
    rows = (row for row in demand.rows if row.part in (None, part))
    return any(at in row.cards and row.amount.least and row.label != "puzzles" for row in rows)


def _runners_up(plan: Plan, choice: Choice) -> dict[int, tuple[int, str]]:
    """For each card that was chosen the next best in its place, and what it is behind in."""
    rows = [row for demand in plan.demands if not demand.rather for row in demand.rows]
    member: dict[int, set[int]] = {}
    for number, row in enumerate(rows):
        for at in row.cards:
            member.setdefault(at, set()).add(number)
    counts = [choice.count(row) for row in rows]
    halves = [row for row in rows if row.among is not None]
    part_of = {at: part for part, cards in enumerate(choice.parts) for at in cards}
    taken = {plan.cards[at].keys.puzzle for at in choice.chosen}
    by_difficulty = sorted(range(len(plan.cards)), key=lambda at: plan.cards[at].difficulty)
    where = {at: place for place, at in enumerate(by_difficulty)}
    newest = newest_of(plan)

    def may_stand_for(other: int, at: int) -> bool:
        """Would every demand still be met, if only one card were changed for the other?"""
        one, two = member.get(at, set()), member.get(other, set())
        part = part_of[at]
        for number in one ^ two:
            row = rows[number]
            if row.part is None or row.part == part:
                count = counts[number] + (1 if number in two else -1)
                if row.among is None and row.amount.missed_by(count):
                    return False
        swapped = Choice(tuple(tuple(other if card == at else card for card in part) for part in choice.parts))
        return not any(swapped.missed(row) for row in halves if at in (row.among or ()) or other in (row.among or ()))

    def worth(at: int, instead: int) -> tuple[int, ...]:
        """What a card is worth in the place of one that was chosen, by each preference; less is better."""
        curve = plan.parts[part_of[instead]].curve
        here = [plan.cards[at if each == instead else each].difficulty for each in choice.parts[part_of[instead]]]
        off = off_the_curve(curve, here) if curve else 0
        scores = zip(plan.preferences, scores_of(plan, plan.cards[at], newest), strict=True)
        return (*(off if each.wish == "curve" else score for each, score in scores), tie(plan.cards[at]))

    found: dict[int, tuple[int, str]] = {}
    for at in choice.chosen:
        near = by_difficulty[max(where[at] - AROUND, 0) : where[at] + AROUND + 1]
        others = [
            other
            for other in near
            if other not in part_of
            and (plan.cards[other].keys.puzzle not in taken or plan.cards[other].keys == plan.cards[at].keys)
            and may_stand_for(other, at)
        ]
        if others:
            runner = min(others, key=lambda other: worth(other, at))
            found[at] = runner, _behind(plan, plan.cards[at], plan.cards[runner], worth(at, at), worth(runner, at))
    return found


def _behind(plan: Plan, card: Card, other: Card, mine_by: Sequence[int], theirs_by: Sequence[int]) -> str:
    """In what the one that was chosen is better."""
    for preference, mine, theirs in zip(plan.preferences, mine_by, theirs_by, strict=False):
        if mine < theirs:
            match preference.wish:
                case "curve":
                    here, there = card.difficulty_text, other.difficulty_text
                    return f"with {here} the whole lies closer to the curve than with {there}"
                case "unshown" | "newest" | "oldest":
                    return f"{_shown(card)}, the other {_shown(other)}"
                case _:
                    return f"it has what is preferred: {preference.words}"
        if mine > theirs:
            return "together with the others it makes the better collection"
    return "the two are as good; the lot decided"


def _shown(card: Card) -> str:
    return f"shown {card.shown}" if card.shown else "never shown"


def misses(plan: Plan, choice: Choice, demands: Sequence[Demand]) -> Iterator[str]:
    """What a collection gives up, a line for each row that it misses."""
    for demand in demands:
        for row in demand.rows:
            if choice.missed(row):
                count = choice.count(row)
                if row.among is not None:
                    yield f"{demand.words}: {row.label} has {count} of them, too many to keep apart"
                elif demand.filters:
                    yield f"{demand.words}: not kept by {counted(count, 'puzzle')}"
                else:
                    each = f" ({row.label})" if len(demand.rows) > 1 else ""
                    yield f"{demand.words}{each}: {count} instead of {_nearest(row.amount, count)}"


def _nearest(amount: Amount, count: int) -> int:
    return amount.least if count < amount.least else amount.most or 0
