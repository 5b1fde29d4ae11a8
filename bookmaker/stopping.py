"""How a command ends that is told to stop: quietly, at every moment, with nothing left behind.

In: SIGINT (Ctrl-C) and SIGTERM. Out: while the program is being read in, an end at once, for nothing was begun; while a
command works, `Stopped` is raised in the main thread, so that all that is open is closed in order; a second signal
doesn't wait for that. The exit code is 128 and the number of the signal, as a shell expects. Processes that work for
this one end when it does.
"""

from __future__ import annotations

import os
import signal
import sys
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from types import FrameType, TracebackType
from typing import Any

SIGNALS = (signal.SIGINT, signal.SIGTERM)

AGAIN = 0.01
"""Seconds after which a `Stopped` that was lost is raised again."""


_holding = False
_waiting: list[int] = []
"""Are signals held back, and which ones have come meanwhile? One that another thread takes gets round the mask."""


class Stopped(KeyboardInterrupt):
    """The signal of that number has come."""

    def __init__(self, number: int) -> None:
        super().__init__(number)
        self.number = number


def code_of(stop: BaseException | None) -> int:
    """The exit code of a command that a signal has stopped; without a word of which, it was Ctrl-C."""
    return 128 + (stop.number if isinstance(stop, Stopped) else signal.SIGINT)


def at_once() -> None:
    """From now on, a signal ends the process."""
    _answer(_leave)


def in_order() -> None:
    """From now on, a signal raises `Stopped`, and a second one ends the process. Nothing of it shows as a traceback."""
    sys.excepthook, sys.unraisablehook = _uncaught, _lost
    _answer(_raise)


def no_more() -> None:
    """From now on, signals change nothing: the work is done, and the process ends by itself."""
    _answer(signal.SIG_IGN)


@contextmanager
def held_back() -> Iterator[None]:
    """Signals wait until the end of this, which raises `Stopped` if one has come. In processes begun meanwhile they
    wait until `serving`."""
    global _holding
    before = _masked(signal.SIG_BLOCK, SIGNALS)
    _holding, outer = True, _holding
    try:
        yield
    finally:
        _holding = outer
        _masked(signal.SIG_SETMASK, before)
    if _waiting and not outer:
        _answer(_leave)
        raise Stopped(_waiting.pop())


def serving() -> None:
    """In a process that works for another: it ends by a signal without a word, and when the other one has ended."""
    from multiprocessing import parent_process
    from multiprocessing.connection import wait
    from threading import Thread

    for number in SIGNALS:
        signal.signal(number, signal.SIG_DFL)
    _masked(signal.SIG_UNBLOCK, SIGNALS)
    if parent := parent_process():
        sentinel = parent.sentinel

        def end_with_it() -> None:
            wait([sentinel])
            os._exit(1)

        Thread(target=end_with_it, daemon=True).start()


def _answer(handler: Any) -> None:
    for number in SIGNALS:
        if signal.getsignal(number) is not signal.SIG_IGN:  # as a shell sets it for what runs in the background
            signal.signal(number, handler)


def _masked(how: int, numbers: Iterable[int]) -> set[int]:
    """Change which signals this thread takes, and so the processes that it begins; which it did not take until now."""
    return set() if sys.platform == "win32" else set(signal.pthread_sigmask(how, numbers))


def _leave(number: int, _: FrameType | None) -> None:
    os._exit(128 + number)


def _raise(number: int, _: FrameType | None) -> None:
    if _holding:
        _waiting.append(number)
        return
    _answer(_leave)
    raise Stopped(number)


def _uncaught(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
    if isinstance(error, KeyboardInterrupt):
        os._exit(code_of(error))
    sys.__excepthook__(kind, error, trace)


def _lost(met: Any) -> None:
    """Where Python can only report an exception, in a finalizer for one, `Stopped` is raised a moment later."""
    if not isinstance(met.exc_value, Stopped):
        sys.__unraisablehook__(met)
        return
    from threading import Timer

    _answer(_raise)
    again = Timer(AGAIN, _send, [met.exc_value.number])
    again.daemon = True
    again.start()


def _send(number: int) -> None:
    """Send a signal to the main thread, whatever it waits for."""
    if sys.platform == "win32":
        from _thread import interrupt_main

        interrupt_main(number)
    else:
        from threading import main_thread

        signal.pthread_kill(main_thread().ident or 0, number)
