"""How far a piece of work has come, said on standard error from its second second on."""

from __future__ import annotations

from dataclasses import dataclass, field
from time import monotonic

import click


@dataclass(slots=True)
class Progress:
    """Called with how much is done, of how much; says it at most once a second. `did` and `what` are “proved” and “”,
    or “read back” and “pages of book.pdf”."""

    did: str
    what: str = ""
    began: float = field(default_factory=monotonic)
    said: float = 0.0

    def __call__(self, done: int, of: int) -> None:
        now = monotonic()
        if now - max(self.said, self.began) > 1 or (done == of and self.said):
            self.said = now
            click.echo(f"{self.did} {done} of {of} {self.what}".rstrip(), err=True)
