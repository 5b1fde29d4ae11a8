"""What messages are filled in with, where it is more than text, and the functions that messages call.

In: names and lists, each with its catalogue. Out: text in the form that a message asks for. Of a list,
`{ $cells }` is joined by “and”, `{ OR($cells) }` by “or”, and `COUNT($cells)` counts, as `COUNT($number)` does of a
number in words. Of a name, `{ CASE($house, "dative") }` is its attribute of that name, or its value where it has none,
and `GENDER($house)` its attribute “gender”; `{ AFTER("in", $house) }` puts a preposition before it, joined with it
where the language does that. `START($word)` is a first letter, bare of accents.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from typing import TYPE_CHECKING, Any, TypeAlias
from unicodedata import normalize

from fluent.runtime.types import FluentType

if TYPE_CHECKING:
    from bookmaker.language.catalogues import Catalogue

Argument: TypeAlias = str | int | FluentType


class Listed(FluentType):
    """Several names, joined when they are printed; of so many things, where a name may stand for several."""

    def __init__(
        self, items: Iterable[str | Named], catalogue: Catalogue, last: str = "and", count: int | None = None
    ) -> None:
        self.items = tuple(items)
        self.count = len(self.items) if count is None else count
        self.catalogue = catalogue
        self.last = last

    def format(self, locale: object) -> str:
        return str(self)

    def __str__(self) -> str:
        return self.catalogue.joined([str(item) for item in self.items], self.last)

    def after(self, preposition: str) -> str:
        """The list after a preposition."""
        first, *others = self.items
        return self.catalogue.joined([_after(preposition, first), *map(str, others)], self.last)

    def form(self, word: str) -> Listed:
        """The list with its names in a case."""
        items = (item.form(word) if isinstance(item, Named) else item for item in self.items)
        return Listed(items, self.catalogue, self.last, self.count)


class Named(FluentType):
    """What has a message for its name, printed in the case that a sentence asks for."""

    def __init__(self, catalogue: Catalogue, name: str, arguments: Mapping[str, Argument]) -> None:
        self.catalogue = catalogue
        self.name = name
        self.arguments = arguments

    def format(self, locale: object) -> str:
        return str(self)

    def __str__(self) -> str:
        return self.catalogue.say(self.name, **self.arguments)

    def form(self, word: str) -> str:
        """The attribute of that name, or the value where there is none."""
        return self.catalogue.say(self.name, word if self.catalogue.has(self.name, word) else 0, **self.arguments)

    def after(self, preposition: str) -> str:
        """The name after a preposition, as one where the language joins them."""
        joined = preposition.casefold()
        if not self.catalogue.has(self.name, joined):
            return f"{preposition} {self}"
        return self.form(joined) if preposition == joined else capital(self.form(joined))

    @property
    def count(self) -> int:
        """How many, of a number in words."""
        many = self.arguments["n"]
        assert isinstance(many, int)
        return many

    @property
    def gender(self) -> str:
        """The attribute “gender”; that of the noun, where a mark is called by its kind."""
        noun = self.arguments.get("noun")
        if isinstance(noun, Named) and not self.catalogue.has(self.name, "gender"):
            return noun.gender
        return self.form("gender")


def capital(text: str) -> str:
    """The text with a capital at its start, the rest as it is."""
    return text[:1].upper() + text[1:]


def _after(preposition: str, named: Argument) -> str:
    """A preposition and a name, or the first of several."""
    return named.after(str(preposition)) if isinstance(named, Named | Listed) else f"{preposition} {named}"


def _either(listed: Listed) -> Listed:
    return Listed(listed.items, listed.catalogue, "or", listed.count)


FUNCTIONS: Mapping[str, Callable[..., Any]] = {
    "OR": _either,
    "COUNT": lambda listed: listed.count,
    "CASE": lambda named, word: named.form(word) if isinstance(named, Named | Listed) else named,
    "AFTER": _after,
    "START": lambda text: normalize("NFKD", str(text))[:1].casefold(),
    "GENDER": lambda named: named.gender if isinstance(named, Named) else "none",
}
"""By the names that messages call them by."""
