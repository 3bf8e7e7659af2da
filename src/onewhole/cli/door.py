"""From a verb's name and what was typed after it to an exit code."""

import os
import signal
import sys
import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager, redirect_stderr, redirect_stdout
from functools import wraps
from importlib import import_module
from io import TextIOWrapper

import typer

from onewhole.cli.refusal import told
from onewhole.cli.screen import Screen
from onewhole.errors import Fault, OnewholeError

FAULT = 3
#: What a shell says of a command that Ctrl-C ended: 128 and the number of the signal (from memory).
STOPPED = 130


def enter(verb: str, sentence: str, arguments: list[str]) -> int:
    """Load `onewhole.cli.verbs.<verb>`, call its `run` with the arguments, and return the exit code.

    `sentence` is its help. A refusal of ours is printed to standard error and gives 2, as arguments that do
    not fit do. Anything else that is raised is a fault of the program: its whole trace is printed and
    it gives 3, so that no script takes it for an answer about mathematics. Whatever is printed passes a
    `Screen`, so that no text from a file or its name can steer a terminal.
    """
    if isinstance(sys.stdout, TextIOWrapper):
        sys.stdout.reconfigure(errors="replace")  # a terminal without ⅔ shows a ?, it does not stop the night
    with redirect_stdout(Screen(sys.stdout)), redirect_stderr(Screen(sys.stderr)):
        return _entered(verb, sentence, arguments)


def _entered(verb: str, sentence: str, arguments: list[str]) -> int:
    try:
        return call(import_module(f"onewhole.cli.verbs.{verb}").run, f"onewhole {verb}", sentence, arguments)
    except Fault as fault:
        print(told(fault), file=sys.stderr)
        return FAULT
    except OnewholeError as refused:
        print(told(refused), file=sys.stderr)
        return 2
    except Exception:  # noqa: BLE001 - shown whole, and given an exit code of its own
        traceback.print_exc()
        print("\nThis is a fault in onewhole and not in what you typed.", file=sys.stderr)
        return FAULT


def call(run: Callable[..., int], name: str, sentence: str, arguments: list[str]) -> int:
    """Let Typer read `arguments` for `run` and return what `run` returned; 2 when they do not fit.

    A reader that closes the pipe early (`head`) has what it wants: nothing is said, and 0 is returned. Ctrl-C
    gives 130.
    """

    @wraps(run)
    def command(*args: object, **options: object) -> None:
        try:
            with _stopped_by_exception():
                code = run(*args, **options)
                sys.stdout.flush()
        except BrokenPipeError:
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            code = 0
        except KeyboardInterrupt:
            print("Stopped.", file=sys.stderr)
            code = STOPPED
        raise typer.Exit(code)

    app = typer.Typer(add_completion=False, pretty_exceptions_enable=False, rich_markup_mode=None)
    app.command(help=sentence)(command)
    try:
        app(args=arguments, prog_name=name)
    except SystemExit as end:
        return end.code if isinstance(end.code, int) else 0
    return 0


@contextmanager
def _stopped_by_exception() -> Iterator[None]:
    """Let Ctrl-C raise KeyboardInterrupt within, where it would end the process at once (see `main`)."""
    ends_at_once = signal.getsignal(signal.SIGINT) is signal.SIG_DFL
    if ends_at_once:
        signal.signal(signal.SIGINT, signal.default_int_handler)
    try:
        yield
    finally:
        if ends_at_once:
            signal.signal(signal.SIGINT, signal.SIG_DFL)
