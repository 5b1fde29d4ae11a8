"""The command group, and how every command ends: 0 all good, 1 troubles in the content, 2 wrong usage, 130
stopped with Ctrl-C, 143 by SIGTERM."""

from __future__ import annotations

import errno
import importlib
import pkgutil
import sys
from concurrent.futures import BrokenExecutor
from io import TextIOWrapper
from typing import Any, TextIO, cast

import click

from bookmaker.cli import commands
from bookmaker.files import Unwritten, undone, written
from bookmaker.proof import EngineFault
from bookmaker.source.diagnostic_text import shown
from bookmaker.source.diagnostics import BookErrors, Diagnostic, nearest
from bookmaker.stopping import code_of
from bookmaker.visible import VisibleStream

KEPT = "bookmaker.kept"
"""Under this word of a context's `meta` a command says what is kept if it is stopped, and how to go on."""

NOTHING = "nothing was written"
"""How such a text begins where it holds until the first file is written."""

_ELSEWHERE = "name a folder where you may write, or close the program that has the file open"

HINTS = {
    errno.EWOULDBLOCK: "wait until it has ended, or name another file",
    errno.ENOSPC: "free some room there, or name a folder on another disk",
    errno.EDQUOT: "free some room there, or name a folder on another disk",
    errno.EROFS: "that disk can only be read: name a folder on another one",
    errno.EACCES: _ELSEWHERE,
    errno.EPERM: _ELSEWHERE,
    errno.ENAMETOOLONG: "give it a shorter name",
    errno.ENOTDIR: "a part of that path is a file, not a folder: name another one",
}
"""What to do where a file can't be read or written."""


class ReportingGroup(click.Group):
    """Shows troubles as text and turns them into exit code 1; a traceback is never the user's to read.

    A command's file is read when the command is asked for. Reading them all would make every start half as long again.
    """

    def list_commands(self, ctx: click.Context) -> list[str]:
        return sorted(file.name for file in pkgutil.iter_modules(commands.__path__))

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        if cmd_name not in self.commands and cmd_name in self.list_commands(ctx):
            importlib.import_module(f"{commands.__name__}.{cmd_name}")  # where it adds itself
        return super().get_command(ctx, cmd_name)

    def main(self, *args: Any, **kwargs: Any) -> Any:
        _speak_utf8()
        sys.stdout, sys.stderr = _visibly(sys.stdout), _visibly(sys.stderr)
        if not kwargs.pop("standalone_mode", True):
            return super().main(*args, **{**kwargs, "standalone_mode": False})
        try:
            code = super().main(*args, **{**kwargs, "standalone_mode": False})
        except click.Abort as end:
            code = code_of(end.__cause__) if isinstance(end.__cause__, KeyboardInterrupt) else 1
        except click.ClickException as wrong:
            wrong.show()
            code = wrong.exit_code
        sys.exit(code or 0)

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        """The command that is typed; of one that there is not, the nearest is named."""
        name = args[0]
        if not name.startswith("-") and self.get_command(ctx, name) is None and not ctx.resilient_parsing:
            hint = nearest(name, self.list_commands(ctx))
            raise click.UsageError(f"there is no command “{name}”: {hint}", ctx)
        return super().resolve_command(ctx, args)

    def format_commands(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """Every command with the whole of its first sentence; click would cut it short."""
        listed = ((name, self.get_command(ctx, name)) for name in self.list_commands(ctx))
        with formatter.section("Commands"):
            formatter.write_dl([(name, each.get_short_help_str(limit=1000)) for name, each in listed if each])

    def invoke(self, ctx: click.Context) -> Any:
        before = len(written)
        try:
            return super().invoke(ctx)
        except KeyboardInterrupt as stop:
            kept = ctx.meta.get(KEPT, NOTHING)
            if kept.startswith(NOTHING) and len(written) > before:
                kept = "all was written"
            click.echo(f"\nstopped: {kept}", err=True)
            ctx.exit(code_of(stop))
        except BookErrors as errors:
            print_diagnostics(errors.diagnostics)
            ctx.exit(1)
        except EngineFault as fault:
            click.echo(f"{fault}", err=True)
            ctx.exit(1)
        except BrokenExecutor:
            click.echo("a worker ended before its work was done, perhaps for lack of memory", err=True)
            click.echo("    try again with fewer workers", err=True)
            ctx.exit(1)
        except BrokenPipeError:
            raise  # click ends quietly with 1, also where something is left to be written
        except OSError as error:
            where = f"{error.filename}: " if error.filename else ""
            click.echo(f"{where}{error.strerror or error}", err=True)
            if hint := HINTS.get(error.errno or 0):
                click.echo(f"    {hint}", err=True)
            if isinstance(error, Unwritten):
                click.echo("    nothing was changed; files already there are as they were", err=True)
            ctx.exit(1)
        finally:
            if undone:
                _tell_undone()


def _tell_undone() -> None:
    """Say what an earlier run that was killed has left half new, and what became of it."""
    names = ", ".join(map(str, dict.fromkeys(undone)))
    click.echo(f"an earlier run was killed while it put new files in place, so these were put back: {names}", err=True)
    undone.clear()


def _speak_utf8() -> None:
    """What goes to a file or another program is UTF-8 on every machine; a terminal shows what it can."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, TextIOWrapper):
            stream.reconfigure(encoding=None if stream.isatty() else "utf-8", errors="replace")


def _visibly(stream: TextIO) -> TextIO:
    """The stream, cleaned of all that a terminal would obey; whatever a command or click says goes through it."""
    return stream if stream is None or isinstance(stream, VisibleStream) else cast(TextIO, VisibleStream(stream))


def print_diagnostics(diagnostics: tuple[Diagnostic, ...]) -> None:
    """Print troubles and warnings on standard error, with the lines they stand on."""
    if diagnostics:
        click.echo(shown(diagnostics), err=True)


@click.group(
    cls=ReportingGroup,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 100},
    epilog="New here? “bookmaker start mybook” makes a small book that you can print at once and then change.",
)
@click.version_option(package_name="bookmaker", message="bookmaker %(version)s")
def main() -> None:
    """Turn a list of number-placement puzzles into a printed book with keys that are never wrong.

    BOOK is a folder with a book.yaml in it, a manifest file, or a plain list of classics (81 characters a line).
    """
