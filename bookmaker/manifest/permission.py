"""Whether a puzzle may be printed: the line that is printed, and the record of who was asked when.

In: the node under `permission:`, which is the printed line or a record {state, by, on, printed, note}. Out: a
`Permission`; and for a book the troubles that stand in the way of printing it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal, TypeAlias, get_args

from bookmaker.manifest.dates import When, read_when
from bookmaker.manifest.texts import read_line, read_note
from bookmaker.placed import Node, Table, read_choice, read_fields
from bookmaker.trouble import BookTroubles, Desk, Place, Trouble

if TYPE_CHECKING:
    from bookmaker.manifest.model import Entry

State: TypeAlias = Literal["asked", "granted", "refused", "own"]

STATES: tuple[State, ...] = get_args(State)

RECORD_KEYS = ("state", "by", "on", "printed", "note")


@dataclass(frozen=True, slots=True)
class Permission:
    """`state` is None where nothing is recorded; a printed line alone says that permission was granted.

    `by` gave it or refused it, `on` that day; `note` is for the editor and never printed.
    """

    state: State | None = None
    printed: str = ""
    by: str = ""
    on: When | None = None
    note: str = ""
    place: Place | None = None


UNRECORDED = Permission()
"""Of a puzzle that says nothing of it."""


def read_permission(fields: Mapping[str, Node], desk: Desk) -> Permission:
    """What stands under `permission:`; faulty parts are left empty."""
    node = fields.get("permission")
    if not isinstance(node, Table):
        line = read_line(fields, "permission", desk)
        return Permission("granted" if line else None, line, place=node.place if node else None)
    record = read_fields(node, "the permission", desk, RECORD_KEYS, ("state",))
    state = read_choice(record["state"], "“state”", desk, STATES) if "state" in record else None
    return Permission(
        state if state in STATES else None,
        read_line(record, "printed", desk),
        read_line(record, "by", desk),
        read_when(record["on"], "on", desk) if "on" in record else None,
        read_note(record, "note", desk),
        node.place,
    )


def unprintable(entries: Iterable[Entry], press: bool) -> Iterator[Trouble]:
    """What stands in the way of printing: permission refused, or for the press, not yet given."""
    for entry in entries:
        record = entry.consent
        who = f" by {record.by}" if record.by else ""
        place = record.place or entry.place
        if record.state == "refused":
            said = f"permission to print “{entry.id}” was refused{who}"
            yield Trouble(place, "refused", said, "take the puzzle out of the book")
        elif record.state == "asked" and press:
            said = f"permission to print “{entry.id}” has been asked for and not yet given{who}"
            yield Trouble(place, "not-granted", said, "wait for the answer, and then write “state: granted”")


def demand_permission(entries: Iterable[Entry], press: bool = False) -> None:
    """Raises BookTroubles where a puzzle must not be printed."""
    if troubles := tuple(unprintable(entries, press)):
        raise BookTroubles(troubles)
