"""What kinds of rules are called, as a heading and in a sentence.

In: a kind of rule. Out: its name in a language: in English what the kind says of itself, so that the program's own
messages agree with the page; in others the message `kind-…`, whose value is the noun for one mark.
"""

from __future__ import annotations

from bookmaker.language import Argument, Catalogue
from bookmaker.rules.common.contract import Rule


def title_of(words: Catalogue, kind: type[Rule]) -> str:
    """The heading: “Thermometers”."""
    name = f"kind-{kind.kind}"
    return words.say(name, "title") if words.has(name, "title") else kind.title


def noun_of(words: Catalogue, kind: type[Rule]) -> Argument:
    """What one mark is called: “thermometer”."""
    name = f"kind-{kind.kind}"
    return words.named(name) if words.has(name) else kind.noun


def nouns_of(words: Catalogue, kind: type[Rule]) -> str:
    """What several are called: “thermometers”."""
    name = f"kind-{kind.kind}"
    if words.has(name, "many"):
        return words.say(name, "many")
    return kind.title[:1].lower() + kind.title[1:]
