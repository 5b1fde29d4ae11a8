"""A book typed in several languages: which of its texts are printed.

In: the tree of a manifest, in which a text may stand in several languages, `title: {en: Low Tide, de: Ebbe}`. Out: the
tree of one edition, with the text of its language; where there is none, that of the same language elsewhere, English,
or the first.
"""

from __future__ import annotations

from bookmaker.hyphenation import languages
from bookmaker.language.catalogues import languages as spoken_languages
from bookmaker.source.diagnostics import Collector, nearest, quoted
from bookmaker.source.placed import Node, Sequence, Table, Word

TEXTS = frozenset(
    ("title", "subtitle", "editor", "publisher", "edition", "rights", "note", "foreword", "blurb", "price", "category")
) | {"setter", "permission", "printed", "bands"}
"""The fields that may stand in several languages."""


def language_of(tree: Node) -> str:
    """The language that a manifest names; “en” where it names none."""
    book = tree.get("book") if isinstance(tree, Table) else None
    named = book.get("language") if isinstance(book, Table) else None
    return named.value if isinstance(named, Word) else "en"


def in_language(node: Node, language: str, collector: Collector, renamed: bool = False) -> Node:
    """The tree as it is printed in a language; a code that no language has is told of. With `renamed`, its own
    `language:` says so too, where it names one or has a table `book:` for it."""
    match node:
        case Word():
            return node
        case Sequence():
            made = tuple(in_language(value, language, collector) for value in node.values)
            return node if made == node.values else Sequence(node.place, made)
        case Table():
            fields = (_field(key, value, language, collector, renamed) for key, value in node.entries)
            return Table(node.place, tuple(fields))


def _field(key: Word, value: Node, language: str, collector: Collector, renamed: bool) -> tuple[Word, Node]:
    if key.value in TEXTS and isinstance(value, Table) and _in_several(value):
        for word, _ in value.entries:
            if word.value not in languages():
                text = f"no language is known by the code {quoted(word.value)}"
                collector.error(word.place, "unknown-language", text, nearest(word.value, spoken_languages()))
        return key, _chosen(value, language)
    value = in_language(value, language, collector)
    if renamed and key.value == "book" and isinstance(value, Table):
        others = tuple(entry for entry in value.entries if entry[0].value != "language")
        said = Word(value.place, "language"), Word(value.place, language)
        value = Table(value.place, (*others, said))
    return key, value


def _in_several(value: Table) -> bool:
    return any(word.value in languages() for word, _ in value.entries)


def _chosen(value: Table, language: str) -> Node:
    """The text in that language, or what comes nearest."""
    base = language.partition("-")[0]
    said = {word.value: text for word, text in value.entries}
    kin = (name for name in said if name.partition("-")[0] == base)
    return said[next((name for name in (language, base, *kin, "en") if name in said), next(iter(said)))]
