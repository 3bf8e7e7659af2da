"""The command `onewhole`: answers for itself, or loads the one verb that was asked for.

This file imports next to nothing, so that the command answers quickly (`bench/` measures it). Typer and the
rooms are loaded with the verb.

The command ends with 0: fine; 1: the maths says no; 2: the input cannot be used; 3: a fault in onewhole
itself, told with its whole trace; 130: Ctrl-C.
"""

import os
import signal
import sys

from onewhole import __version__

#: The verbs, in the order of a teacher's evening, each with the sentence its help shows.
#: A verb's code is `onewhole.cli.verbs.<verb>`; `tests/cli/test_main.py` holds the two together.
VERBS: dict[str, str] = {
    "work": "Work a problem line by line, every line with its reason.",
    "check": "Check every equals sign of a working.",
    "patterns": "Show what each error pattern would write on a problem.",
    "tell": "Tell a problem as a word problem of the kite club.",
    "compose": "Compose a page that tells mistakes apart.",
    "audit": "Look a sheet over before it is printed.",
    "print": "Print pupil page, answer key, workings and a page for home.",
    "film": "Film a sheet worked aloud, with pictures, words and captions.",
    "read": "Read answers from photos or scans of papers.",
    "mark": "Mark the answers of a class and see what they may show.",
    "skills": "See which skills may stand behind right and wrong.",
    "plan": "Print the morning page and practice for every group.",
    "again": "Print a short page like a sheet, with new numbers, to check again.",
    "reached": "See who reached the bar on a page.",
    "year": "Plan a school year week by week, and compose its nights.",
    "papers": "Say who got a page, who was away, and whose paper is late.",
    "scores": "Show right of tried by pupil and night, for a grade book too.",
    "exchange": "Write and read files of other programs: grade books, questions, class lists.",
    "keep": "Back up and restore the file of a class; give out or erase a child.",
    "share": "Write a class's answers for the district, without names.",
    "district": "Put the answers of many classes together, without names.",
    "serve": "Open the whole round in the browser, on this machine.",
    "night": "Do all of it for one folder.",
}


def main(arguments: list[str] | None = None) -> int:
    """Run the command and return its exit code; `arguments` are those of the process when None.

    Ctrl-C ends the process at once and without a word, except while a verb is at work: then what was begun
    is cleared away first.

    >>> main(["--version"])
    onewhole 0.1.0
    0
    """
    if arguments is not None:
        return _answered(arguments)
    if signal.getsignal(signal.SIGINT) is signal.default_int_handler:
        signal.signal(signal.SIGINT, signal.SIG_DFL)
    return _answered(sys.argv[1:])


def _answered(arguments: list[str]) -> int:
    verb, *rest = arguments or ["--help"]
    match verb:
        case "--version":
            print(f"onewhole {__version__}")
            return 0
        case "--help" | "-h":
            _print_help()
            return 0
        case _ if verb in VERBS:
            from onewhole.cli.door import enter

            return enter(verb, VERBS[verb], rest)
        case _:
            print(f"There is no verb {verb!r}.\n\n{_help()}", file=sys.stderr)
            return 2


def _print_help() -> None:
    """Print the help; a reader that closes the pipe early (`head`) has what it wants."""
    try:
        print(_help(), flush=True)
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _help() -> str:
    width = max(map(len, VERBS), default=0)
    lines = [f"  {verb:{width}}  {sentence}" for verb, sentence in VERBS.items()]
    return "\n".join(
        [
            "onewhole VERB ...",
            "A typed page becomes exact workings, printed pages, marks and tomorrow's groups.",
            "",
            *lines,
            "",
            "onewhole VERB --help tells more; onewhole --version tells the version.",
        ]
    )
