"""What an archive says of itself in `archive.yaml`: the books that it has been printed in, and the bands' names.

In: the archive's folder. Out: its `Settings`, empty where there is no such file.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from bookmaker.manifest.archives import SETTINGS
from bookmaker.manifest.bookfields import read_bands
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Word, read_fields, read_items, read_text
from bookmaker.source.textfile import read_file
from bookmaker.source.yamlfile import parse_yaml

SETTINGS_KEYS = ("printed-in", "bands")


@dataclass(frozen=True, slots=True)
class Settings:
    """`printed_in` are books, each with the place that names it."""

    printed_in: tuple[tuple[Path, Place], ...] = ()
    band_names: tuple[str, ...] = BAND_NAMES


def read_settings(root: Path, collector: Collector) -> Settings:
    """The settings of the archive in a folder."""
    file = root / SETTINGS
    if not file.exists():
        return Settings()
    text = read_file(file, str(file), Place(str(file)), collector)
    tree = parse_yaml(text, str(file), collector) if text is not None else None
    if tree is None:
        return Settings()
    fields = read_fields(tree, "the archive", collector, SETTINGS_KEYS)
    books = []
    for node in read_items(fields["printed-in"], "“printed-in”", collector) if "printed-in" in fields else ():
        name = read_text(node, "a book", collector)
        if name and isinstance(node, Word):
            books.append((root / name, node.place))
    bands = read_bands(fields["bands"], collector) if "bands" in fields else BAND_NAMES
    return Settings(tuple(books), bands)
