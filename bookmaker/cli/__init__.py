"""The command line: parse, call, print. One file a command, found by looking into this folder; no logic lives here."""

import importlib
import pkgutil

from bookmaker.cli.group import main

__all__ = ["main"]

for _found in pkgutil.iter_modules(__path__):
    importlib.import_module(f"{__name__}.{_found.name}")
