"""A pattern's question and thought in words, filled from a problem of the page that shows it."""

from collections.abc import Collection, Sequence

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.asks import ask_told
from onewhole.languages.english.thoughts import thought_told
from onewhole.misconceptions.case import Case
from onewhole.misconceptions.pattern import Pattern
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed
from onewhole.problems.problem import Problem

ANYWHERE: tuple[str, ...] = ()


def question(
    pattern: Pattern, problems: Sequence[Problem], words: ClassWords, fits: Collection[str] = ANYWHERE
) -> str:
    r"""Return what to ask the child, and on which problem.

    It is one of the problems whose labels are in ``fits``, or else the first that shows the pattern. Where
    none does, it is the pattern's own example.

    >>> from onewhole.misconceptions.catalogue import by_id
    >>> from onewhole.sheets.reading import read_sheet
    >>> problems = read_sheet("1. 5 4/6 - 2 1/6\n2. 7 2/6 - 3 5/6").problems
    >>> question(by_id("A06"), problems, ClassWords("strip", "strips"))
    'on 2: Before you cut one strip you had 2 sixths. Where are they now?'
    """
    where, case = asked_on(pattern, problems, fits)
    return f"on {where}: {question_on(pattern, case, words)}"


def thought(
    pattern: Pattern, problems: Sequence[Problem], words: ClassWords, fits: Collection[str] = ANYWHERE
) -> str:
    """Return what the child may be thinking, and on which problem, chosen as in ``question``."""
    where, case = asked_on(pattern, problems, fits)
    return f"on {where}: “{thought_on(pattern, case, words)}”"


def asked_on(
    pattern: Pattern, problems: Sequence[Problem], fits: Collection[str] = ANYWHERE
) -> tuple[str, Case]:
    """Return where a pattern is asked about, and the case: a problem's label, or its example written out.

    It is chosen as :func:`question` says. An example that is told is written as its story.
    """
    for problem in sorted(problems, key=lambda one: one.label not in fits):
        if (case := pattern.case(problem.statement, problem.told)) is not None:
            return problem.label, case
    case, story = pattern.example_case, pattern.example.story
    return f"“{story}”" if story else printed(case.statement), case


def question_on(pattern: Pattern, case: Case, words: ClassWords) -> str:
    """Return what to ask the child about one case."""
    return text_of(ask_told(pattern.ask(case), words))


def thought_on(pattern: Pattern, case: Case, words: ClassWords) -> str:
    """Return what the child may be thinking in one case."""
    return text_of(thought_told(pattern.thinking(case), words))
