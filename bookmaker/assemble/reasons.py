"""Why a collection is as it is, in words: what was wanted and what came of it, and for each puzzle why it is there.

In: a plan and the choice made for it, in order. Out: a text in Markdown. The runner-up of a puzzle is the one that
could stand in its place with every demand still met, and that is next best by what the brief prefers.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bookmaker.archive.model import Card, Catalogue
from bookmaker.assemble.amounts import Amount
from bookmaker.assemble.model import Choice, Demand, Plan, Row
from bookmaker.assemble.program import newest_of, off_the_curve, scores_of, tie
from bookmaker.rules.common.wording import counted

AROUND = 200
"""Runner-ups are looked for among so many puzzles that are nearly as hard, on either side."""

SHOWN_ROWS = 4
"""Of a demand that counts many things one by one, so many are told of that come near its limit."""


def reasons(plan: Plan, choice: Choice, catalogue: Catalogue, pages: int | None, curve: str | None) -> str:
    """The whole text. `pages` is the page count as composed, `curve` the name of the picture of the curve."""
    return "\n".join(_lines(plan, choice, catalogue, pages, curve)) + "\n"


def _lines(plan: Plan, choice: Choice, catalogue: Catalogue, pages: int | None, curve: str | None) -> Iterator[str]:
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
    for demand in plan.demands:
        yield f"| {demand.words}{' (rather)' if demand.rather else ''} | {_got(choice, demand)} |"
    if plan.pages is not None:
        yield f"| pages: {plan.pages} | {pages} |"
    for preference in plan.preferences:
        yield f"| prefer: {preference.words} | {_preferred(plan, choice, preference.wish, preference.tag)} |"
    if curve:
        yield f"\n![Difficulty from the first puzzle to the last]({curve})"
    yield "\n## The puzzles\n"
    runners = _runners_up(plan, choice)
    for part, cards in zip(plan.parts, choice.parts, strict=True):
        if part.title:
            yield f"### {part.title}\n"
        for number, at in enumerate(cards, start=1):
            yield from _of_puzzle(plan, choice, catalogue, at, number, runners.get(at))
        yield ""


def _got(choice: Choice, demand: Demand) -> str:
    """What came of a demand."""
    if len(demand.rows) == 1:
        row = demand.rows[0]
        if demand.filters:
            return "kept" if choice.keeps(demand) else f"missed by {choice.count(row)}"
        return f"{choice.count(row)}{'' if choice.keeps(demand) else ', missed'}"
    counts = sorted(((choice.count(row), row.label) for row in demand.rows), key=lambda each: (-each[0], each[1]))
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
    plan: Plan, choice: Choice, catalogue: Catalogue, at: int, number: int, runner: tuple[int, str] | None
) -> Iterator[str]:
    card = plan.cards[at]
    about = [catalogue.band_name(card) + f" {card.difficulty_text}", ", ".join(card.kinds) or card.grid]
    about += [card.setter] if card.setter else []
    yield f"{number}. **{card.title or card.id}** ({card.id}): {'; '.join(about)}"
    served = [demand.words for demand in plan.demands if _serves(demand, at)]
    if served:
        yield f"   - serves {'; '.join(served)}"
    if runner:
        other = plan.cards[runner[0]]
        yield f"   - before {other.title or other.id} ({other.id}): {runner[1]}"
    else:
        yield "   - no other puzzle could stand here with every demand met"


def _serves(demand: Demand, at: int) -> bool:
    """Does a card count towards something that the brief wants, rather than only bounds?"""
    return any(at in row.cards and row.amount.least and row.label != "puzzles" for row in demand.rows)


def _runners_up(plan: Plan, choice: Choice) -> dict[int, tuple[int, str]]:
    """For each card that was chosen the next best in its place, and what it is behind in."""
    rows = [row for demand in plan.demands if not demand.rather for row in demand.rows]
    member: dict[int, set[int]] = {}
    for number, row in enumerate(rows):
        for at in row.cards:
            member.setdefault(at, set()).add(number)
    counts = [choice.count(row) for row in rows]
    part_of = {at: part for part, cards in enumerate(choice.parts) for at in cards}
    taken = {plan.cards[at].keys.puzzle for at in choice.chosen}
    by_difficulty = sorted(range(len(plan.cards)), key=lambda at: plan.cards[at].difficulty)
    where = {at: place for place, at in enumerate(by_difficulty)}
    newest = newest_of(plan)
    sizes = [len(cards) for cards in choice.parts]

    def may_stand_for(other: int, at: int) -> bool:
        one, two = member.get(at, set()), member.get(other, set())
        part = part_of[at]
        for number in one ^ two:
            row = rows[number]
            if row.part is None or row.part == part:
                count = counts[number] + (1 if number in two else -1)
                if _missed(row, count, sum(sizes) if row.part is None else sizes[part]):
                    return False
        return True

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


def _missed(row: Row, count: int, size: int) -> bool:
    return count > (size + 1) // 2 if row.halved else bool(row.amount.missed_by(count))


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
                if row.halved:
                    yield f"{demand.words}: {row.label} has {count} of them, too many to keep apart"
                elif demand.filters:
                    yield f"{demand.words}: not kept by {counted(count, 'puzzle')}"
                else:
                    each = f" ({row.label})" if len(demand.rows) > 1 else ""
                    yield f"{demand.words}{each}: {count} instead of {_nearest(row.amount, count)}"


def _nearest(amount: Amount, count: int) -> int:
    return amount.least if count < amount.least else amount.most or 0
