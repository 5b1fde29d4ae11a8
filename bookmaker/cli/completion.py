"""What the shell offers when the tab key is pressed: ids of the book that is named, layouts, kinds of rules.

In: what is typed so far. Out: words to go on with. A book that can't be read offers nothing, and says nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path

import click
from click.shell_completion import CompletionItem

from bookmaker.layout import layout_names, load_layout, load_theme, theme_names
from bookmaker.layout.specfile import Use
from bookmaker.manifest import load
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import BookErrors

Completer = Callable[[click.Context, click.Parameter, str], list[CompletionItem]]


def ids(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
    """The ids of the book's puzzles, with their titles."""
    return _offered(_puzzles(ctx), typed)


def ids_listed(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
    """The same after the last comma, without those that are named already."""
    before, comma, last = typed.rpartition(",")
    named = set(before.split(","))
    offered = _offered(((name, title) for name, title in _puzzles(ctx) if name not in named), last)
    return [CompletionItem(before + comma + item.value, help=item.help) for item in offered]


def rule_kinds(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
    """The kinds of rules, with their titles."""
    return _offered(((word, rule.title) for word, rule in kinds().items()), typed)


def layouts_for(use: Use) -> Completer:
    """The layouts for books, or those for handouts, with what they are about."""

    def complete(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
        layouts = map(load_layout, layout_names())
        return _offered(((layout.name, layout.about) for layout in layouts if layout.use == use), typed)

    return complete


def themes(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
    """The themes, with what they are about."""
    return _offered(((name, load_theme(name).about) for name in theme_names()), typed)


def _puzzles(ctx: click.Context) -> Iterable[tuple[str, str]]:
    book = ctx.params.get("book") or next(iter(ctx.args), None)  # no params yet where an option lacks its value
    try:
        return [(entry.id, entry.title) for entry in load(Path(book)).entries] if book else []
    except (BookErrors, OSError):
        return []


def _offered(words: Iterable[tuple[str, str]], typed: str) -> list[CompletionItem]:
    return [CompletionItem(word, help=about or None) for word, about in words if word.startswith(typed)]
