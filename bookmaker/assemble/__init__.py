"""Collections chosen from an archive, exactly and with reasons.

In: a brief and a catalogue. Out: an `Assembled` collection, ready to be written as a book; or a `Clash`: the demands
that cannot be met together.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from bookmaker.assemble.choose import Clash, choose, clash_of
from bookmaker.assemble.order import ordered
from bookmaker.assemble.plan import Choice, Plan
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place

__all__ = ["Assembled", "Clash", "NoFurther", "assemble"]

TRIES = 8
"""Collections tried where the best one cannot be put in an order that keeps what is alike apart."""

CountPages = Callable[[Choice], int]
"""Composes the book of a collection and counts its pages."""


@dataclass(frozen=True)
class Assembled:
    """A collection in order; `pages` is its true page count where the brief bounds it."""

    plan: Plan
    choice: Choice
    pages: int | None = None


class NoFurther(Exception):
    """There is no other collection that the brief allows."""


def assemble(plan: Plan, count_pages: CountPages, another: int = 0) -> Assembled | Clash:
    """The best collection, or with `another` the next best but so many.

    Raises NoFurther where there are not so many; BookErrors where no good collection can be ordered as the brief
    asks, or is short enough for its pages.
    """
    refused: list[Choice] = []
    while True:
        found = _ordered_choice(plan, refused, count_pages)
        if found is None and not refused:
            return clash_of(plan)
        if found is None:
            raise NoFurther
        if len(refused) == another:
            return found
        refused.append(found.choice)


def _ordered_choice(plan: Plan, refused: list[Choice], count_pages: CountPages) -> Assembled | None:
    """The best collection that is not refused, in order."""
    if all(demand.rather for demand in plan.demands if demand.quoted.startswith("apart")):
        found = _short_enough(plan, refused, count_pages)
        return found and _in_order(plan, found, rising_bands=True, apart=False)
    tried = list(refused)
    first: Assembled | None = None
    for _ in range(TRIES):
        found = _short_enough(plan, tried, count_pages)
        if found is None:
            break
        first = first or found
        if (in_order := _in_order(plan, found, rising_bands=True)) is not None:
            return in_order
        tried.append(found.choice)
    if first is None:
        return None
    if (in_order := _in_order(plan, first, rising_bands=False)) is not None:
        return in_order
    place = next(demand.place for demand in plan.demands if demand.quoted.startswith("apart"))
    said = "in none of the best collections can all that is alike be kept apart while difficulty rises"
    hint = "allow fewer alike, such as “each-setter: at most 3”, or take “apart” out"
    raise BookErrors([Diagnostic(place, "not-apart", said, hint)])


def _in_order(plan: Plan, found: Assembled, rising_bands: bool, apart: bool = True) -> Assembled | None:
    """The collection in order, None where nothing keeps apart what is alike, if that is demanded."""
    orders = [ordered(plan.cards, part, plan.apart, rising_bands) for part in found.choice.parts]
    if apart and any(alike for _, alike in orders):
        return None
    return replace(found, choice=replace(found.choice, parts=tuple(order for order, _ in orders)))


def _short_enough(plan: Plan, refused: list[Choice], count_pages: CountPages) -> Assembled | None:
    """The best collection whose book has no more pages than it may: estimated by the pages that others had, then held
    to the count as composed."""
    choice = choose(plan, refused)
    if choice is None or plan.pages is None or plan.pages.most is None:
        return Assembled(plan, choice) if choice else None
    most = plan.pages.most
    pages = count_pages(choice)
    too_many, fits = len(choice.chosen) + 1, None
    while pages > most or (fits and len(fits[0].chosen) + 1 < too_many):
        if pages > most:
            too_many = len(choice.chosen)
            estimate = max(too_many * most // pages, 1)
            limit = min(max(estimate, len(fits[0].chosen) + 1 if fits else 1), too_many - 1)
        else:
            limit = len(choice.chosen) + 1
        fewer = choose(plan, refused, limit)
        if fewer is None or len(fewer.chosen) == (len(fits[0].chosen) if fits else 0):
            break
        choice, pages = fewer, count_pages(fewer)
        if pages <= most:
            fits = choice, pages
    if pages <= most and fits is None:
        fits = choice, pages
    if fits is None:
        said = f"the book has {pages} pages as composed, with {len(choice.chosen)} puzzles; it may have {plan.pages}"
        hint = "ask for fewer puzzles, more pages, or a layout with more puzzles a page"
        raise BookErrors([Diagnostic(plan.pages_place or Place("pages"), "too-long", said, hint)])
    return Assembled(plan, *fits)
