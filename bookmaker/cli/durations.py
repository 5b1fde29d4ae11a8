"""Lengths of time, as options take them: 30s, 10m, 2h."""

from __future__ import annotations

import re
from typing import Any

import click

_FORM = re.compile(r"(\d{1,6})\s*(s|m|h)")
_UNITS = {"s": 1, "m": 60, "h": 3600}


class _Seconds(click.ParamType[int]):
    name = "time"

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> int:
        if isinstance(value, int):
            return value
        seconds = seconds_in(str(value))
        if not seconds:
            self.fail(f"“{value}” is no time: write 30s, 10m or 2h", param, ctx)
        return seconds

    def get_metavar(self, param: click.Parameter, ctx: click.Context | None = None) -> str:
        return "TIME"


def seconds_in(text: str) -> int:
    """How many seconds a text says; 0 where it is no length of time."""
    found = _FORM.fullmatch(text)
    return int(found[1]) * _UNITS[found[2]] if found else 0


SECONDS = _Seconds()
