"""The command line: parse, call, print. One file a command; no logic lives here."""

from bookmaker.cli import explain, handout, layouts, picture, preflight, proof, rules, start, typeset
from bookmaker.cli.group import main

__all__ = ["explain", "handout", "layouts", "main", "picture", "preflight", "proof", "rules", "start", "typeset"]
