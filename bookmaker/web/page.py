"""The review page: one file with every puzzle in it.

In: a collection and the store of proofs. Out: HTML. What a list needs is there as JSON; what an open puzzle needs is
packed, puzzle by puzzle, and unpacked when it is looked at, so that a page of thousands opens at once.
"""

from __future__ import annotations

import json
import zlib
from base64 import b64encode
from collections.abc import Callable, Iterable
from concurrent.futures import Executor
from typing import Any

import jinja2
from markupsafe import Markup

from bookmaker.proof.cache import Store
from bookmaker.source.diagnostic_text import shown
from bookmaker.web import assets
from bookmaker.web.collection import Collection
from bookmaker.web.facts import look_alikes, particulars, summary
from bookmaker.web.kept import with_tellings
from bookmaker.web.pictures import Pictures, measures, ridges
from bookmaker.web.proposals import PUZZLES, proposals

SCRIPTS = ("dom.js", "shape.js", "board.js", "walk.js", "shelf.js", "spread.js", "list.js", "sheet.js", "review.js")
STYLES = ("paper.css", "review.css")

Watch = Callable[[int, int], None]


def review_page(
    collection: Collection,
    store: Store,
    executor: Executor | None = None,
    notes: bool = False,
    watch: Watch = lambda done, of: None,
) -> str:
    """The page. With `notes`, what an editor wants to know of each puzzle is found out too: a few proofs' time each."""
    pictures = Pictures()
    rows: list[dict[str, Any]] = []
    packed: list[str] = []
    letters: set[str] = set()
    broken = 0
    alike = list(look_alikes(collection.cards))
    proofs = collection.proofs(store, executor)
    for at, (proof, told) in enumerate(with_tellings(proofs, collection.band_names, store, executor)):
        entry, card = proof.entry, collection.cards[at]
        chapter = collection.chapters[entry.chapter] if collection.chapters else ""
        ground = pictures.ground(entry.puzzle)
        row = summary(card, proof, collection.band_names, chapter)
        printed = collection.printed[at]
        row["file"] = collection.nearby(card.file)
        rows.append(row | {"rank": collection.ranks[at], "alike": alike[at], "books": list(printed)})
        broken += card.verdict != "unique"
        cures = proposals(proof) if broken <= PUZZLES else ()
        detail = told | particulars(proof, notes) | ground | {"proposals": cures}
        letters.update(_plain(rows[-1]), _plain(detail))
        packed.append(_packed(detail))
        watch(at + 1, len(collection.entries))
    index = {
        "title": collection.title,
        "bands": list(collection.band_names),
        "puzzles": rows,
        "measures": measures(),
        "ridges": ridges(),
    }
    return render(
        "review.html",
        collection,
        letters,
        index=_json(index),
        grounds=_packed(list(pictures.grounds)),
        packed=packed,
        outlines=Markup(pictures.outlines),
        diagnostics=[collection.nearby(shown([diagnostic])) for diagnostic in collection.diagnostics],
    )


def render(template: str, collection: Collection, letters: Iterable[str], **values: Any) -> str:
    """A template filled in, with its styles, its scripts and its fonts (with these letters) inside, and a policy that
    allows nothing else."""
    said = collection.title + collection.subtitle + collection.editor
    style = assets.font_faces("".join(sorted({*letters, *said}))) + "".join(map(assets.static, STYLES))
    script = assets.bundle(SCRIPTS)
    return (
        templates()
        .get_template(template)
        .render(
            collection=collection,
            style=Markup(style),
            script=Markup(script),
            policy=assets.policy([script], [style]),
            **values,
        )
    )


def templates() -> jinja2.Environment:
    """The templates; whatever they are given is escaped, unless it is marked as ours."""
    return jinja2.Environment(
        loader=jinja2.PackageLoader("bookmaker.web"),
        autoescape=True,
        undefined=jinja2.StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )


def _json(data: Any) -> Markup:
    """JSON for a data block: no “<” in it, which could end the block."""
    return Markup(_plain(data).replace("<", "\\u003c"))


def _packed(data: Any) -> str:
    """JSON, deflated (RFC 1951) and in letters."""
    packer = zlib.compressobj(9, zlib.DEFLATED, -15)
    return b64encode(packer.compress(_plain(data).encode()) + packer.flush()).decode("ascii")


def _plain(data: Any) -> str:
    return json.dumps(data, ensure_ascii=False, separators=(",", ":"))
