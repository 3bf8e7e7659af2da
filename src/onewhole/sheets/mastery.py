"""A short page to check again: the structures of a night with new numbers."""

from collections import defaultdict
from collections.abc import Hashable, Sequence
from fractions import Fraction
from itertools import islice

from msgspec.structs import replace

from onewhole.errors import InputError
from onewhole.misconceptions.telling import ToldAs
from onewhole.problems.needs import Needs, needs
from onewhole.problems.parallel import parallel
from onewhole.problems.problem import Problem
from onewhole.problems.twins import twin_key
from onewhole.sheets.document import Sheet
from onewhole.sheets.header import LONGEST
from onewhole.sheets.labelled import labelled
from onewhole.statements.statement import Statement

#: How many problems a check has; our own. At a bar of 80 % four of five are enough.
PROBLEMS = 5
#: What is added to the title of the night.
AGAIN = ", again"


class NoParallelError(InputError):
    """The problems of a sheet have no others like them."""


def again(sheet: Sheet, *, count: int = PROBLEMS, turn: int = 0) -> Sheet:
    r"""Return a page parallel to a sheet: fewer problems, every structure of the night, new numbers.

    Each structure (what a problem needs, whatever its pieces) comes at least once where there is room, the
    others go to those with the most problems. No problem of the night is among them, and no twins; parallels
    of word problems are told as stories. ``turn`` 0, 1, 2 ... gives another page each time. The page climbs,
    and is shorter where a structure has no more problems. Raises NoParallelError when there are none and
    InputError for a count below 1.

    Source of "check again with a parallel test": Bloom (1968), Guskey (2007), as their abstracts say.

    >>> from onewhole.sheets.reading import read_sheet
    >>> night = read_sheet("title: Kites\n\n1. 9 5/8 - 4 6/8\n2. 6 7/8 - 3 2/8")
    >>> page = again(night)
    >>> page.header.title, [needs(problem.statement).regrouping for problem in page.problems]
    ('Kites, again', [False, False, True, True, True])
    """
    if count < 1:
        msg = f"a page has at least one problem, not {count}"
        raise InputError(msg, remedy=f"Give a number from 1 up; {PROBLEMS} is usual.")
    chosen = _chosen(sheet.problems, count, turn)
    if not chosen:
        msg = "no other numbers fit the problems of this sheet"
        raise NoParallelError(msg, remedy="Add a problem with larger numbers or other pieces.")
    title = f"{sheet.header.title[: LONGEST - len(AGAIN)].rstrip()}{AGAIN}" if sheet.header.title else "Again"
    header = replace(sheet.header, title=title, date="", minutes=None, recipe="")
    own, problems = labelled(header, chosen, seed=turn)
    return Sheet(problems, own)


def _chosen(problems: Sequence[Problem], count: int, turn: int) -> dict[Statement, ToldAs | None]:
    """Return parallels, and of each how it is told, None for numbers alone."""
    night = {problem.statement for problem in problems}
    taken: set[Hashable] = set()
    chosen: dict[Statement, ToldAs | None] = {}
    for group, wanted in _seats(problems, count):
        seats, passed = wanted, turn * -(-wanted // len(group))
        streams = [(islice(parallel(one.statement), passed, None), one.told) for one in group]
        while seats and streams:
            stream, tell = streams.pop(0)
            found = next((one for one in stream if one not in night and twin_key(one) not in taken), None)
            if found is not None:
                taken.add(twin_key(found))
                chosen[found] = tell
                seats -= 1
                streams.append((stream, tell))
    return chosen


def _seats(problems: Sequence[Problem], count: int) -> list[tuple[list[Problem], int]]:
    """Allot the places of a page to structures: one each, the largest first, then in proportion."""
    groups: dict[Needs, list[Problem]] = defaultdict(list)
    for problem in problems:
        groups[replace(needs(problem.statement), denominators=())].append(problem)
    order = sorted(groups.values(), key=lambda group: -len(group))
    seats = [0] * len(order)
    for _ in range(count):
        waiting = [
            Fraction(len(group), have) if have else len(problems) + 1
            for group, have in zip(order, seats, strict=True)
        ]
        seats[waiting.index(max(waiting))] += 1
    return list(zip(order, seats, strict=True))
