"""A formula as a page takes it: what is set, and what is said."""

from onewhole.notations.row import Writable
from onewhole.notations.speech import say
from onewhole.notations.typst_math import typst_math

Formula = dict[str, str]


def formula(thing: Writable, *, leads: bool = False, asks: bool = False) -> Formula:
    """Return a formula with its spoken words; ``leads`` begins and ``asks`` ends it with an equals sign.

    >>> from onewhole.statements.reading import read_expression
    >>> formula(read_expression("7 - 3"), asks=True)["alt"]
    'seven minus three equals blank'
    """
    math, alt = typst_math(thing), say(thing)
    if leads:
        math, alt = f"= {math}", f"equals {alt}"
    if asks:
        math, alt = f"{math} =", f"{alt} equals blank"
    return {"math": math, "alt": alt}


def chain(things: tuple[Writable, ...]) -> Formula:
    """Return a chain of equal things as one formula."""
    return {"math": " = ".join(map(typst_math, things)), "alt": " equals ".join(map(say, things))}
