"""Who may ask the desk for anything: only the page whose address holds the token, on this machine.

In: a request as ASGI hands it over. Out: it is passed on, or refused: by its Host (so that no other name can be made to
lead here), by its Origin (so that no other page can ask through this browser), by its path.
"""

from __future__ import annotations

from collections.abc import Awaitable, Callable, MutableMapping
from dataclasses import dataclass
from hmac import compare_digest
from typing import Any

Scope = MutableMapping[str, Any]
Receive = Callable[[], Awaitable[MutableMapping[str, Any]]]
Send = Callable[[MutableMapping[str, Any]], Awaitable[None]]
App = Callable[[Scope, Receive, Send], Awaitable[None]]

HEADERS = {
    "content-security-policy": "default-src 'none'; script-src 'self'; style-src 'self'; font-src data:; "
    "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
    "referrer-policy": "no-referrer",
    "x-content-type-options": "nosniff",
    "cross-origin-opener-policy": "same-origin",
    "cross-origin-resource-policy": "same-origin",
    "cache-control": "no-store",
}
"""With every answer."""


@dataclass(frozen=True, slots=True)
class Guard:
    """Passes on what comes from the desk's own page, without the token in its path."""

    app: App
    token: str
    port: int

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "lifespan":
            await self.app(scope, receive, send)
            return
        if scope["type"] != "http":
            return
        if refused := self._refusal(scope):
            await _refuse(refused, send)
            return

        async def sealed(message: MutableMapping[str, Any]) -> None:
            if message["type"] == "http.response.start":
                own = [(name.encode(), value.encode()) for name, value in HEADERS.items()]
                message = {**message, "headers": [*message.get("headers", ()), *own]}
            await send(message)

        path = scope["path"].removeprefix(f"/{self.token}")
        await self.app({**scope, "path": path, "raw_path": path.encode()}, receive, sealed)

    def _refusal(self, scope: Scope) -> int:
        """The status of a refusal; 0 where there is nothing against the request."""
        headers = {name.decode("latin-1").lower(): value.decode("latin-1") for name, value in scope["headers"]}
        homes = [f"{name}:{self.port}" for name in ("127.0.0.1", "localhost")]
        if headers.get("host") not in homes:
            return 421
        origin = headers.get("origin")
        if origin is not None and origin != f"http://{headers['host']}":
            return 403
        if headers.get("sec-fetch-site", "none") not in ("same-origin", "none"):
            return 403
        if scope["method"] == "POST" and origin is None:
            return 403
        first, _, _ = scope["path"].removeprefix("/").partition("/")
        return 0 if compare_digest(first.encode(), self.token.encode()) else 404


async def _refuse(status: int, send: Send) -> None:
    await send({"type": "http.response.start", "status": status, "headers": [(b"content-type", b"text/plain")]})
    await send({"type": "http.response.body", "body": b"This is not for you.\n"})
