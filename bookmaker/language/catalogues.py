"""The messages of a language, read from its Fluent files (projectfluent.org, syntax 1.0).

In: the name of a message and its arguments (`arguments`). Out: text. Raises PhraseFault where a message or an argument
is missing: a fault of ours, which the tests look for.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from copy import copy
from functools import cache, cached_property
from pathlib import Path
from typing import Literal, TypeAlias
from unicodedata import combining, normalize

from fluent.syntax.ast import BaseNode, VariableReference

from bookmaker.language.arguments import FUNCTIONS, Argument, Listed, Named, capital
from bookmaker.language.messages import Messages

LOCALES = {
    "de": "de-DE",
    "en": "en-GB",
    "en-US": "en-US",
    "es": "es-ES",
    "fr": "fr-FR",
    "it": "it-IT",
    "nl": "nl-NL",
    "pl": "pl-PL",
    "pt": "pt-BR",
    "uk": "uk-UA",
}
"""The languages there are, each with the locale whose plural rules and dates it follows. One with a country has its
folder over that of the language without it: only what differs."""

FOLDERS = [Path(__file__).parent]
"""Where the folders of languages lie; a kind of rule that lies elsewhere brings a folder for its messages."""

JOINTS = {
    "and": ("list-more", "list-and"),
    "or": ("list-more", "list-or"),
    "clauses": ("clauses-more", "clauses-and"),
    "or-clauses": ("clauses-more", "clauses-or"),
    "then": ("list-more", "list-more"),
    "ending": ("ending-more", "ending-last"),
    "alike": ("list-alike", "list-alike"),
}
"""For each way to join a list, the messages that stand between its members, and before the last. Where what stands
there depends on how the last begins, `$last` is its first word, and `START($last)` the first letter of that, bare of
accents."""

Manner: TypeAlias = Literal["printed", "heard", "short"]
"""For the eye; for the ear, cells by their rows and columns; for a braille display, these by single letters."""

KNOWN = 16_384
"""So many texts are remembered: a book names the same rows, columns and cells again and again."""

_PLAIN = {str, int}


class Catalogue:
    """The messages of one language. A message has a value and perhaps attributes: further wordings of a sentence, or
    forms of a name."""

    def __init__(self, language: str) -> None:
        self.language = language
        self.locale = LOCALES[language].replace("-", "_")
        self.manner: Manner = "printed"
        self._manners: dict[Manner, Catalogue] = {"printed": self}
        self._known: dict[tuple[object, ...], str] = {}
        self._joined: dict[tuple[str, str], tuple[str, str]] = {}
        self._variables: dict[str, frozenset[str]] = {}
        self._messages = Messages(LOCALES[language], FUNCTIONS)
        for layer in dict.fromkeys((language.partition("-")[0], language)):
            for folder in FOLDERS:
                for file in sorted((folder / layer).glob("*.ftl")):
                    self._messages.add(file.read_text(encoding="utf-8"))

    def in_manner(self, manner: Manner) -> Catalogue:
        """The same messages, said in a manner."""
        if manner not in self._manners:
            made = copy(self)
            made.manner, made._known, made._joined = manner, {}, {}
            self._manners[manner] = made
        return self._manners[manner]

    def has(self, name: str, attribute: str = "") -> bool:
        """Is there such a message, with such an attribute?"""
        if name not in self._messages:
            return False
        return not attribute or attribute in self._messages.message(name).attributes

    def names(self) -> tuple[str, ...]:
        """The names of all messages."""
        return self._messages.names

    def first(self, *names: str) -> str:
        """The first of these messages that there is; the last where there is none."""
        return next((name for name in names if self.has(name)), names[-1])

    def wordings(self, name: str) -> int:
        """How many wordings a message has."""
        return 1 + len(self._messages.message(name).attributes)

    def variables(self, name: str) -> frozenset[str]:
        """The arguments that some wording of a message prints or chooses by."""
        if name not in self._variables:
            message = self._messages.message(name)
            patterns = [pattern for pattern in (message.value, *message.attributes.values()) if pattern]
            self._variables[name] = frozenset(found for pattern in patterns for found in _variables_in(pattern))
        return self._variables[name]

    def say(self, name: str, wording: int | str = 0, /, **arguments: Argument) -> str:
        """A message filled in; `wording` is the number of one of its wordings, or the name of an attribute."""
        if not {*map(type, arguments.values())} <= _PLAIN:
            return self._filled(name, wording, arguments)
        key = (name, wording, *arguments.items())
        if (said := self._known.get(key)) is None:
            if len(self._known) >= KNOWN:
                self._known.clear()
            said = self._known[key] = self._filled(name, wording, arguments)
        return said

    def _filled(self, name: str, wording: int | str, arguments: Mapping[str, Argument]) -> str:
        message = self._messages.message(name)
        own = f"{wording}-{self.manner}" if isinstance(wording, str) else self.manner
        if own in message.attributes:
            pattern = message.attributes[own]
        elif isinstance(wording, str):
            pattern = message.attributes[wording]
        else:
            pattern = [message.value, *message.attributes.values()][wording] if wording else message.value
        return self._messages.filled(name, pattern, arguments)

    def sentence(self, name: str, wording: int | str = 0, /, **arguments: Argument) -> str:
        """The same with a capital at its start."""
        return capital(self.say(name, wording, **arguments))

    def named(self, name: str, **arguments: Argument) -> Named:
        """A name as an argument."""
        return Named(self, name, arguments)

    def number(self, count: int) -> Named:
        """“three”; figures above twelve."""
        return self.named("number", n=count)

    @cached_property
    def quotation_marks(self) -> tuple[str, str, str, str]:
        """Opening and closing, of a quotation and of one inside it."""
        opens, closes, inner_opens, inner_closes = self.say("quotation-marks").split(" ")
        return opens, closes, inner_opens, inner_closes

    def dictionary(self, name: str) -> tuple[str, str]:
        """The key that sorts names as a dictionary of the language does: by the letters of its alphabet, accents that
        make no letter of their own and capitals only between names that are otherwise the same."""
        places = self._alphabet
        letters: list[str] = []
        for letter in name.casefold():
            bare = letter if letter in places else "".join(c for c in normalize("NFKD", letter) if not combining(c))
            letters += (chr(places[one]) if one in places else one for one in bare)
        return "".join(letters), name

    @cached_property
    def _alphabet(self) -> Mapping[str, int]:
        """The letters of the alphabet, as characters in their order."""
        return {letter: ord("a") + at for at, letter in enumerate(self.say("alphabet").split())}

    def listed(self, items: Iterable[str | Named], last: str = "and", count: int | None = None) -> Listed:
        """Names as an argument, of so many things."""
        return Listed(items, self, last, count)

    def joined(self, items: Iterable[str], last: str) -> str:
        """“a”, “a and b”, “a, b and c”. `last` is “and”, “or”, “clauses” and “or-clauses” (with commas of their own),
        “then” where more follows, “ending”, or “alike” (“a with b with c”)."""
        *most, final = items
        if not most:
            return final
        more, end = self._joints(last, final.partition(" ")[0])
        return more.join(most) + end + final

    def _joints(self, last: str, word: str) -> tuple[str, str]:
        """What stands between the members of a list, and before the last, which begins with that word."""
        if (last, word) not in self._joined:
            more, end = JOINTS[last]
            self._joined[last, word] = self._between(more), self._between(end, word)
        return self._joined[last, word]

    def _between(self, name: str, word: str = "\x00") -> str:
        last = int(word) if word.isdecimal() and len(word) < 4 else word
        return self.say(name, most="\x00", next="\x00", last=last).strip("\x00").removesuffix(word)


def _variables_in(node: object) -> Iterator[str]:
    """The names of all variables in a part of a message."""
    if isinstance(node, VariableReference):
        yield node.id.name
    elif isinstance(node, BaseNode):
        for child in vars(node).values():
            yield from _variables_in(child)
    elif isinstance(node, list):
        for child in node:
            yield from _variables_in(child)


def languages() -> tuple[str, ...]:
    """The languages that bookmaker speaks, by their codes."""
    return tuple(sorted(LOCALES))


def spoken(language: str) -> str:
    """The language that bookmaker speaks in a publication of that language: itself, without its country (“de” for
    “de-AT”), or English."""
    return next((name for name in (language, language.partition("-")[0]) if name in LOCALES), "en")


def is_optional(name: str) -> bool:
    """May a language do without a message: a wording for a single kind of rule or technique, or `letters-for-digits`,
    which only some can have?"""
    return "--" in name or name == "letters-for-digits"


def completeness(language: str) -> tuple[int, int]:
    """How many of the messages that English has a language has as well, and how many these are. Wordings for single
    kinds of rules, which a language may do without, do not count."""
    needed = [name for name in catalogue("en").names() if not is_optional(name)]
    words = catalogue(language)
    return sum(map(words.has, needed)), len(needed)


@cache
def catalogue(language: str) -> Catalogue:
    """The messages of a language, read once; of English where bookmaker does not speak it."""
    known = spoken(language)
    return Catalogue(known) if known == language else catalogue(known)
