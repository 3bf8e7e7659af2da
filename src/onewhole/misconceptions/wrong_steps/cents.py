"""Cents that come to a dollar or more, written with a point and the cent sign."""

from onewhole.misconceptions.attempt import Attempt
from onewhole.misconceptions.pair import pair_of
from onewhole.misconceptions.wrong_steps.pointed import pointed
from onewhole.number.quantity import with_mark
from onewhole.number.unit import CENT
from onewhole.statements.statement import Statement
from onewhole.working.line import Line

DOLLAR_IN_CENTS = 100


def point_kept_as_cents(statement: Statement) -> Attempt | None:
    """75¢ + 50¢ is said to be 1.25¢."""
    pair = pair_of(statement)
    if pair is None or any(one.ladder.mark != CENT for one in (pair.first, pair.second)):
        return None
    second = pair.second.parts
    dollars, cents = divmod(pair.first.parts + (-second if pair.taken else second), DOLLAR_IN_CENTS)
    if dollars < 1:
        return None
    wrote = with_mark(pointed(dollars, f"{cents:02}"), CENT)
    return Attempt((Line(pair.asked), Line(wrote)), wrote)
