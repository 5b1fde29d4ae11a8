"""What the shell offers when the tab key is pressed: ids of the book that is named, layouts, kinds of rules.

In: what is typed so far. Out: words to go on with. A book that can't be read offers nothing, and says nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from contextlib import suppress
from pathlib import Path

import click
from click.shell_completion import CompletionItem

from bookmaker.layout import Layout, layout_names, load_layout, load_theme, theme_names
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
    puzzles = [*_puzzles(ctx), ("all", "all puzzles of the book")]
    offered = _offered(((name, title) for name, title in puzzles if name not in named), last)
    return [CompletionItem(before + comma + item.value, help=item.help) for item in offered]


def rule_kinds(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
    """The kinds of rules, with their titles."""
    return _offered(((word, rule.title) for word, rule in kinds().items()), typed)


def layouts_for(use: Use) -> Completer:
    """The layouts for books, or those for handouts, with what they are about; also from files of the user's own."""

    def complete(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
        named = ((name, load_layout(name)) for name in layout_names())
        layouts = (*named, *_own_layouts(typed))
        return _offered(((name, layout.about) for name, layout in layouts if layout.use == use), typed)

    return complete


def themes(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
    """The themes, with what they are about."""
    return _offered(((name, load_theme(name).about) for name in theme_names()), typed)


def any_layout(ctx: click.Context, param: click.Parameter, typed: str) -> list[CompletionItem]:
    """All layouts, whatever they are for."""
    return [*layouts_for("book")(ctx, param, typed), *layouts_for("handout")(ctx, param, typed)]


def _own_layouts(typed: str) -> Iterable[tuple[str, Layout]]:
    """The layouts among the files of the folder that is typed, or of this one."""
    folder = Path(typed.rpartition("/")[0] or ("/" if typed.startswith("/") else ""))
    for path in sorted(folder.glob("*.y*ml")):
        with suppress(BookErrors, OSError):
            yield str(path), load_layout(str(path))


def _puzzles(ctx: click.Context) -> Iterable[tuple[str, str]]:
    book = ctx.params.get("book") or next(iter(ctx.args), None)  # no params yet where an option lacks its value
    try:
        return [(entry.id, entry.title) for entry in load(Path(book)).entries] if book else []
    except (BookErrors, OSError):
        return []


def _offered(words: Iterable[tuple[str, str]], typed: str) -> list[CompletionItem]:
    return [CompletionItem(word, help=about or None) for word, about in words if word.startswith(typed)]
