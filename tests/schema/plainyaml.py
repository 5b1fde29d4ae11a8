"""YAML as editors read it: by the core schema of YAML 1.2 (https://yaml.org/spec/1.2.2, section 10.3.2)."""

from __future__ import annotations

import re
from typing import Any

import yaml


class _Core(yaml.SafeLoader):
    yaml_implicit_resolvers: dict[str, Any] = {}  # noqa: RUF012


for _kind, _pattern, _first in (
    ("null", r"~|null|Null|NULL|", ["~", "n", "N", ""]),
    ("bool", r"true|True|TRUE|false|False|FALSE", list("tTfF")),
    ("int", r"[-+]?[0-9]+", list("-+0123456789")),
    ("float", r"[-+]?(?:\.[0-9]+|[0-9]+(?:\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?", list("-+.0123456789")),
):
    _Core.add_implicit_resolver(f"tag:yaml.org,2002:{_kind}", re.compile(f"(?:{_pattern})$"), _first)


def _whole(loader: yaml.SafeLoader, node: yaml.ScalarNode) -> float:
    text = loader.construct_scalar(node)
    return int(text) if len(text) < 1000 else float("inf")  # as in editors, whose numbers end somewhere


_Core.add_constructor("tag:yaml.org,2002:int", _whole)


def _table(loader: yaml.SafeLoader, node: yaml.MappingNode) -> dict[Any, Any]:
    """Names are unique (section 3.2.1.3)."""
    keys = [loader.construct_object(key) for key, _ in node.value]
    if len(set(keys)) < len(keys):
        raise yaml.YAMLError(f"a name stands twice at {node.start_mark}")
    return loader.construct_mapping(node, deep=True)


_Core.add_constructor("tag:yaml.org,2002:map", _table)


def _as_json(value: Any) -> Any:
    """JSON has names that are text only."""
    if isinstance(value, dict):
        return {str(name): _as_json(inner) for name, inner in value.items()}
    return [_as_json(inner) for inner in value] if isinstance(value, list) else value


def read(text: str) -> Any:
    """The document. Raises yaml.YAMLError where it is no YAML."""
    return _as_json(yaml.load(text, Loader=_Core))
