"""A working as plain lines for the terminal and for text files."""

from collections.abc import Iterator
from itertools import groupby
from operator import attrgetter
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.language import Language
from onewhole.languages.table import SPOKEN, spoken_by
from onewhole.notations.sentences.text import text_of
from onewhole.notations.squared import squared_text
from onewhole.notations.text import printed
from onewhole.pictures.squared import squared_states
from onewhole.statements.expression import Expression
from onewhole.statements.statement import MissingNumber
from onewhole.working.checks import Agreed, Check, Estimate, Undone
from onewhole.working.line import Line, leads
from onewhole.working.working import Working

WIDEST = 44
BLANK = "____________"


def working_lines(
    working: Working, words: ClassWords, *, brief: bool = False, blank: int = 0
) -> tuple[str, ...]:
    """Return a working line by line: an aside in brackets, its reason beside it, the checks below.

    ``brief`` keeps the pupil's lines only, without reasons; ``blank`` leaves the last of them open. Of a
    working in columns a pupil writes the columns, of which the last digits to be written are left open.
    """
    columns = _columns(working, blank)
    if (brief or blank) and columns:
        return columns
    if brief or blank:
        written, shown = working.brief(), working.faded(blank)
        return tuple(
            _plain(line, words, led=leads(written, at))
            if line
            else f"{'= ' if leads(written, at) else ''}{BLANK}"
            for at, line in enumerate(shown)
        )
    every = working.lines
    rows = [(_plain(line, words, led=leads(every, at)), line) for at, line in enumerate(every)]
    width = min(WIDEST, max(len(said) for said, _ in rows) + 2)
    found = [spoken_by(words).working.way(working, words)]
    for said, line in rows:
        marked = f"({said})" if line.aside else f" {said} "
        found.append(f"  {marked:{width}}  {_because(line, words)}".rstrip())
        found.extend(f"  {'':{width}}  {text_of(spoken_by(words).working.fact(fact))}" for fact in line.facts)
    found.extend(f"   {said}" for said in columns)
    if isinstance(working.statement, MissingNumber):
        found.append(f"  {text_of(spoken_by(words).key.missing(working.answer))}")
    found.extend(f"  {said}" for said in check_lines(working, words))
    return tuple(found)


def _columns(working: Working, blank: int = 0) -> tuple[str, ...]:
    """Return what stands in the columns of a working at the end, each time that they begin anew.

    The last ``blank`` digits of the last of them are left open.
    """
    blocks = [tuple(run) for _, run in groupby(squared_states(working), key=attrgetter("block"))]
    left = [0] * (len(blocks) - 1) + [blank]
    return tuple(
        said for block, open_now in zip(blocks, left, strict=False) for said in squared_text(block, open_now)
    )


def check_lines(working: Working, words: ClassWords) -> Iterator[str]:
    """Give each check of a working as one plain line."""
    for check in working.checks:
        yield _check(check, working, words)


def _plain(line: Line, words: ClassWords, *, led: bool) -> str:
    said = printed(line.says, spoken_by(words))
    return f"= {said}" if led else said


def _because(line: Line, words: ClassWords) -> str:
    return text_of(spoken_by(words).working.reason(line.because, words)) if line.because else ""


def _check(check: Check, working: Working, words: ClassWords) -> str:
    language = spoken_by(words)
    match check:
        case Estimate():
            return text_of(language.key.range(check))
        case Undone(links):
            return f"{language.page.check} {chain_text(links, language)}"
        case Agreed(strategy, answer):
            name = language.working.way(working, words, strategy)
            return f"{language.page.another_way.format(name=name)} {printed(answer, language)}"
        case _:
            assert_never(check)


def chain_text(links: tuple[Expression, ...], language: Language = SPOKEN) -> str:
    """Write a chain of equal expressions."""
    return " = ".join(printed(link, language) for link in links)
