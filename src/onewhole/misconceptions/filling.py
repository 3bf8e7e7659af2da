"""A question or a thought with holes: how it is made of a problem and what a pattern writes on it."""

from collections.abc import Callable
from typing import TypeVar, overload

from onewhole.misconceptions.case import Case

_Made = TypeVar("_Made")
_A = TypeVar("_A")
_B = TypeVar("_B")
_C = TypeVar("_C")
_D = TypeVar("_D")


@overload
def filled(make: Callable[[_A], _Made], a: Callable[[Case], _A], /) -> Callable[[Case], _Made]: ...
@overload
def filled(
    make: Callable[[_A, _B], _Made], a: Callable[[Case], _A], b: Callable[[Case], _B], /
) -> Callable[[Case], _Made]: ...
@overload
def filled(
    make: Callable[[_A, _B, _C], _Made],
    a: Callable[[Case], _A],
    b: Callable[[Case], _B],
    c: Callable[[Case], _C],
    /,
) -> Callable[[Case], _Made]: ...
@overload
def filled(
    make: Callable[[_A, _B, _C, _D], _Made],
    a: Callable[[Case], _A],
    b: Callable[[Case], _B],
    c: Callable[[Case], _C],
    d: Callable[[Case], _D],
    /,
) -> Callable[[Case], _Made]: ...
def filled(make: Callable[..., _Made], /, *holes: Callable[[Case], object]) -> Callable[[Case], _Made]:
    """Return what makes a value of a case: each hole is filled from the case, in the order of the fields.

    >>> from onewhole.misconceptions.catalogue import by_id
    >>> from onewhole.statements.reading import read_statement
    >>> case = by_id("A06").case(read_statement("7 2/6 - 3 5/6"))
    >>> filled(lambda wrote: wrote.counts, lambda case: case.wrote)(case)
    (3, 1)
    """

    def of(case: Case) -> _Made:
        return make(*[hole(case) for hole in holes])

    return of


def plain(meaning: _Made) -> Callable[[Case], _Made]:
    """Return what is the same on every problem: nothing in it is to be filled."""

    def of(_: Case) -> _Made:
        return meaning

    return of
