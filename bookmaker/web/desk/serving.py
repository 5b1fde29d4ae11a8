"""The desk served: the page, a stream of what changes, and the buttons.

In: the path of a book, a socket on the loopback address. Out: nothing, until a signal ends it. Starlette answers,
uvicorn listens, watchfiles says when a file was saved.
"""

from __future__ import annotations

import asyncio
import json
import secrets
import signal
import socket
from collections.abc import AsyncIterator, Callable, Coroutine, Mapping, Sequence
from concurrent.futures import ProcessPoolExecutor
from concurrent.futures.process import BrokenProcessPool
from contextlib import aclosing, asynccontextmanager, contextmanager, nullcontext
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import uvicorn
from starlette.applications import Starlette
from starlette.requests import Request
from starlette.responses import FileResponse, HTMLResponse, JSONResponse, Response, StreamingResponse
from starlette.routing import Route
from watchfiles import Change, awatch

from bookmaker.manifest.entries import Entry
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.web import assets
from bookmaker.web.desk.guard import Guard
from bookmaker.web.desk.making import KINDS, OF_PUZZLES, ONE_PUZZLE, Made, make
from bookmaker.web.desk.proving import at_hand, examine, examiners
from bookmaker.web.desk.reading import Reading, changed
from bookmaker.web.page import templates
from bookmaker.web.pictures import measures

STATIC = {
    "dom.js": "text/javascript",
    "shape.js": "text/javascript",
    "board.js": "text/javascript",
    "cells.js": "text/javascript",
    "desk.js": "text/javascript",
    "paper.css": "text/css",
    "desk.css": "text/css",
}
"""The files that the page is made of: no others are handed out."""

LETTERS = "".join(map(chr, (*range(0xA0, 0x180), *range(0x400, 0x460))))
"""What may stand in a book that is still being typed: letters of Latin and Cyrillic alphabets (Unicode blocks)."""

WATCHED = (".yaml", ".yml", ".txt", ".png", ".jpg", ".jpeg")

GROUPED, QUIET = 200, 20
"""Milliseconds for which changes of files are gathered at most, and after which without another they are taken up."""

Event = Mapping[str, Any]


class Desk:
    """The book that is shown, who looks at it, and what is under way."""

    def __init__(self, reading: Reading, folder: Path) -> None:
        self.reading = reading
        self.folder = folder
        self.listeners: set[asyncio.Queue[Event | None]] = set()
        self.sent: dict[str, dict[str, Any]] = {}
        self.diagnostics: list[dict[str, Any]] = []
        self.outlines = 0
        self.told = False
        """Has the book been read and shown at all?"""
        self.tasks: set[asyncio.Task[None]] = set()
        self.jobs: dict[str, Made] = {}
        self.under_way: set[RuledPuzzle] = set()
        self.closing = asyncio.Event()
        self.news = asyncio.Event()
        self.busy = asyncio.Lock()
        """Held while the book is read, and while it is told what has changed."""
        self.pool: ProcessPoolExecutor | None = None

    # -- the book

    async def run(self) -> None:
        """Read the book, and again whenever a file of it is saved."""
        self.pool = examiners()
        self.pool.submit(at_hand)
        self.begin(self.tell())
        await self.read_again()
        while not self.closing.is_set():
            folders = self.reading.folders()
            seen = awatch(*folders, watch_filter=_of_the_book, debounce=GROUPED, step=QUIET, stop_event=self.closing)
            async with aclosing(seen):
                async for _ in seen:
                    await self.read_again()
                    if self.reading.folders() != folders:
                        break

    async def read_again(self) -> None:
        """Read the files, show what is new, and have it proven."""
        async with self.busy:
            await asyncio.to_thread(self.reading.read)
        self.news.set()
        for entry in self.reading.unknown():
            if entry.puzzle not in self.under_way:
                self.under_way.add(entry.puzzle)
                self.begin(self.prove(entry))

    async def prove(self, entry: Entry) -> None:
        """Have a puzzle examined."""
        pool = self.pool
        try:
            found = await asyncio.get_running_loop().run_in_executor(pool, examine, entry)
            self.reading.known[entry.puzzle] = found
        except BrokenProcessPool:
            if self.pool is pool and not self.closing.is_set():
                self.pool = examiners()  # for what is saved next
            raise
        finally:
            self.under_way.discard(entry.puzzle)
            self.news.set()

    async def tell(self) -> None:
        """Say what has changed, whenever there is news; what comes meanwhile is said together."""
        while True:
            await self.news.wait()
            self.news.clear()
            async with self.busy:
                now, self.diagnostics = await asyncio.to_thread(self.shown)
                drawn = self.reading.drawing.shared
                event = self.state(now, changed(self.sent, now), drawn[self.outlines :])
                self.sent, self.outlines, self.told = now, len(drawn), True
            self.say(event)

    def shown(self) -> tuple[dict[str, dict[str, Any]], list[dict[str, Any]]]:
        return self.reading.puzzles(), self.reading.diagnostics()

    def state(self, now: Mapping[str, Any], news: Sequence[Any], outlines: Sequence[str]) -> Event:
        return {
            "type": "book",
            "title": self.reading.manifest.title if self.reading.manifest else "",
            "order": list(now),
            "puzzles": news,
            "outlines": "".join(outlines),
            "troubles": self.diagnostics,
            "good": not self.reading.mistakes,
            "waiting": len(self.reading.unknown()),
        }

    def whole(self) -> Event:
        """Everything, for whoever has just come."""
        return self.state(self.sent, list(self.sent.values()), self.reading.drawing.shared[: self.outlines])

    # -- who looks at it

    def say(self, event: Event) -> None:
        for listener in self.listeners:
            listener.put_nowait(event)

    async def events(self) -> AsyncIterator[str]:
        queue: asyncio.Queue[Event | None] = asyncio.Queue()
        if self.told:
            queue.put_nowait(self.whole())
        self.listeners.add(queue)
        try:
            while (event := await queue.get()) is not None:
                yield f"data: {json.dumps(event, ensure_ascii=False)}\n\n"
        finally:
            self.listeners.discard(queue)

    def begin(self, work: Coroutine[Any, Any, None]) -> None:
        """Have something done beside all else; what goes wrong with it is said on the page."""
        task = asyncio.get_running_loop().create_task(work)
        self.tasks.add(task)
        task.add_done_callback(self.done)

    def done(self, task: asyncio.Task[None]) -> None:
        self.tasks.discard(task)
        fault = None if task.cancelled() else task.exception()
        if fault is not None and not self.closing.is_set():
            self.say({"type": "fault", "text": str(fault) or type(fault).__name__})

    async def close(self) -> None:
        self.closing.set()
        for listener in self.listeners:
            listener.put_nowait(None)
        for task in list(self.tasks):
            task.cancel()
        await asyncio.gather(*self.tasks, return_exceptions=True)
        if self.pool is not None:
            processes = list((self.pool._processes or {}).values())
            self.pool.shutdown(wait=False, cancel_futures=True)
            for process in processes:
                process.terminate()

    # -- the buttons

    async def make(self, job: str, kind: str, ids: list[str]) -> None:
        folder = self.folder / job
        folder.mkdir()

        def say(doing: str, done: int, of: int) -> None:
            self.say({"type": "job", "job": job, "doing": doing, "done": done, "of": of})

        made = await make(kind, self.reading.path, self.reading.archives, ids, folder, say)
        self.jobs[job] = made
        files = [path.name for path in made.files]
        self.say({"type": "made", "job": job, "files": files, "wrong": made.wrong})


def application(desk: Desk) -> Starlette:
    """The answers."""

    async def page(request: Request) -> Response:
        return HTMLResponse(templates().get_template("desk.html").render(measures=json.dumps(measures())))

    async def static(request: Request) -> Response:
        name = request.path_params["name"]
        if name == "fonts.css":
            return Response(await asyncio.to_thread(assets.font_faces, LETTERS), media_type="text/css")
        if name not in STATIC:
            return Response(status_code=404)
        return Response(assets.static(name), media_type=STATIC[name])

    async def events(request: Request) -> Response:
        return StreamingResponse(desk.events(), media_type="text/event-stream")

    async def begin(request: Request) -> Response:
        try:
            asked = json.loads(await request.body())
            kind, ids = str(asked["make"]), [str(id) for id in asked.get("ids", [])]
        except (ValueError, KeyError, TypeError):
            return Response(status_code=400)
        known = set(desk.sent)
        if kind not in KINDS or not set(ids) <= known or (kind in OF_PUZZLES) != bool(ids):
            return Response(status_code=400)
        if kind in ONE_PUZZLE and len(ids) != 1:
            return Response(status_code=400)
        job = secrets.token_hex(8)
        desk.begin(desk.make(job, kind, ids))
        return JSONResponse({"job": job})

    async def made(request: Request) -> Response:
        job = desk.jobs.get(request.path_params["job"])
        name = request.path_params["name"]
        file = next((path for path in job.files if path.name == name), None) if job else None
        return FileResponse(file, filename=name) if file else Response(status_code=404)

    @asynccontextmanager
    async def lifespan(app: Starlette) -> AsyncIterator[None]:
        desk.begin(desk.run())
        yield
        await desk.close()

    routes = [
        Route("/", page),
        Route("/static/{name}", static),
        Route("/events", events),
        Route("/make", begin, methods=["POST"]),
        Route("/made/{job}/{name}", made),
    ]
    return Starlette(routes=routes, lifespan=lifespan)


def listening(port: int) -> socket.socket:
    """A socket on the loopback address; 0 is any port that is free. Raises OSError where the port is taken."""
    listener = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    try:
        listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listener.bind(("127.0.0.1", port))
        listener.listen(128)
    except OSError:
        listener.close()
        raise
    return listener


class _Server(uvicorn.Server):
    """A server that leaves signals to us."""

    def capture_signals(self) -> Any:
        return nullcontext()


def serve(book: Path, archives: tuple[Path, ...], listener: socket.socket, ready: Callable[[str], None]) -> None:
    """Serve a book until SIGINT or SIGTERM; `ready` is told the address."""
    token, port = secrets.token_urlsafe(16), listener.getsockname()[1]

    async def run(folder: Path) -> None:
        desk = Desk(Reading(book, archives), folder)
        app = Guard(application(desk), token, port)
        config = uvicorn.Config(
            app, log_config=None, access_log=False, timeout_graceful_shutdown=1, lifespan="on", server_header=False
        )
        server = _Server(config)

        def stop() -> None:
            desk.closing.set()
            for queue in desk.listeners:
                queue.put_nowait(None)
            server.should_exit = True

        with _stopped_by_signals(stop):
            ready(f"http://127.0.0.1:{port}/{token}/")
            await server.serve(sockets=[listener])

    with TemporaryDirectory(prefix="bookmaker-desk-") as name:
        asyncio.run(run(Path(name)))


@contextmanager
def _stopped_by_signals(stop: Callable[[], None]) -> Any:
    loop = asyncio.get_running_loop()
    both = (signal.SIGINT, signal.SIGTERM)
    before = {sign: signal.signal(sign, lambda *_: loop.call_soon_threadsafe(stop)) for sign in both}
    try:
        yield
    finally:
        for sign, handler in before.items():
            signal.signal(sign, handler)


def _of_the_book(change: Change, path: str) -> bool:
    name = Path(path).name
    return name.endswith(WATCHED) and not name.startswith(".")
