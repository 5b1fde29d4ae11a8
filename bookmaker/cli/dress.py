"""How a book is dressed: its theme, and the press that its cover is mixed for."""

from __future__ import annotations

from dataclasses import replace

from bookmaker.ink.conditions import CONDITIONS, USUAL, Condition
from bookmaker.layout import Layout, Theme, load_theme
from bookmaker.manifest.entries import Manifest
from bookmaker.source.diagnostics import BookErrors, Diagnostic, nearest


def theme_of(manifest: Manifest, asked: str | None = None, layout: Layout | None = None) -> Theme:
    """The theme asked for on the command line, else the book's own, else the one of its layout. Raises BookErrors if
    there is no such one."""
    if asked:
        return load_theme(asked)
    if named := manifest.publication.theme:
        return load_theme(named, manifest.places.get("theme"))
    return load_theme(layout.wears) if layout and layout.wears else load_theme()


def dressed(layout: Layout, theme: Theme, press: bool) -> Layout:
    """The layout in a theme; pages for a press are black."""
    return replace(layout, theme=theme.in_black if press else theme)


def condition_of(manifest: Manifest) -> Condition:
    """What the cover is printed on: the condition that the manifest names, with the printer's own profile if it names
    one. Raises BookErrors for a condition that is in no registry we know, unless a profile describes it."""
    cover = manifest.publication.cover
    if cover is None or not (cover.condition or cover.profile):
        return USUAL
    known = CONDITIONS.get(cover.condition)
    if cover.profile:
        found = known or Condition("Custom", cover.condition or "As described by the profile", registered=False)
        return replace(found, profile=cover.profile)
    if known is None:
        text = f"there is no printing condition “{cover.condition}” in the registry"
        hint = nearest(cover.condition, CONDITIONS) or f"known: {', '.join(CONDITIONS)}; for others, add “profile:”"
        raise BookErrors([Diagnostic(cover.places["condition"], "unknown-condition", text, hint)])
    return known


def check_dress(manifest: Manifest) -> None:
    """Raises BookErrors for all that is wrong in what a manifest says of its theme and cover."""
    found: list[Diagnostic] = []
    for ask in (theme_of, condition_of):
        try:
            ask(manifest)
        except BookErrors as caught:
            found += caught.diagnostics
    cover = manifest.publication.cover
    ids = [entry.id for entry in manifest.entries]
    if cover and cover.sample and cover.sample not in ids:
        text = f"there is no puzzle “{cover.sample}” to stand on the back"
        found.append(Diagnostic(cover.places["sample"], "unknown-puzzle", text, nearest(cover.sample, ids)))
    if found:
        raise BookErrors(found)
