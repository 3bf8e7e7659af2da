"""Several steps: what a question may name of them."""

from onewhole.misconceptions.case import Case
from onewhole.misconceptions.wrong_steps.steps import asked_in_steps
from onewhole.statements.expression import Expression
from onewhole.working.steps.next_step import next_step


def asked(case: Case) -> Expression:
    """Return what is asked. Raises LookupError where it has no several steps."""
    found = asked_in_steps(case.statement)
    if found is None:
        msg = "this problem has no several steps"
        raise LookupError(msg)
    return found


def first_part(case: Case) -> Expression:
    """Return the part that is worked first. Raises LookupError where there is none."""
    step = next_step(asked(case))
    if step is None:
        msg = "this problem has no several steps"
        raise LookupError(msg)
    return step.part
