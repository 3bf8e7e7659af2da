"""The problem that a heading of a table means."""

import re
from collections.abc import Sequence

from onewhole.problems.problem import Problem

_WORD = r"(?:problem|prob|question|quest|item|exercise|task|answer|ans|no|nr|num|number|[qp#])"
_HEADED = re.compile(rf"{_WORD}[ .:#]*([a-z]?[0-9]{{1,3}}[a-z]?|[a-z])", re.IGNORECASE)
_CLOSED = re.compile(r"\(?([A-Za-z0-9]{1,4})\s*[.):]+")
_NUMBERED = re.compile(r"\(?([A-Za-z0-9]{1,4})\s*[.):]+\s*(.+)")


def match_label(text: str, problems: Sequence[Problem]) -> str | None:
    """Return the label that a heading means; None for none or more than one.

    A label stands alone, with its dot or bracket, behind a word such as Problem or Q, before the problem as
    it was typed; or the problem stands alone.

    >>> from onewhole.statements.reading import read_statement
    >>> page = [
    ...     Problem(label, read_statement(typed), typed) for label, typed in (("1", "5 - 2"), ("2a", "3 + 4"))
    ... ]
    >>> [match_label(text, page) for text in ("1", "2A)", "Problem 1", "q2a", "1. 5 − 2", "3+4", "9")]
    ['1', '2a', '1', '2a', '1', '2a', None]
    """
    plain = text.strip()
    if not plain:
        return None
    for found in (plain, *_inside(plain)):
        same = [one.label for one in problems if _same(found, one.label)]
        if len(same) == 1:
            return same[0]
    if numbered := _NUMBERED.fullmatch(plain):
        label = match_label(numbered[1], problems)
        typed = next((one.typed for one in problems if one.label == label), None)
        if typed is not None and _signs(typed) == _signs(numbered[2]):
            return label
    asked = [one.label for one in problems if _signs(one.typed) == _signs(plain)]
    return asked[0] if len(asked) == 1 else None


def is_surely_label(text: str) -> bool:
    """Say whether a heading is written as no answer is: with a word before it, or a dot or bracket behind.

    >>> is_surely_label("Q1"), is_surely_label("1."), is_surely_label("1")
    (True, True, False)
    """
    plain = text.strip()
    return bool(_HEADED.fullmatch(plain) or _CLOSED.fullmatch(plain) or _NUMBERED.fullmatch(plain))


def _inside(plain: str) -> tuple[str, ...]:
    found = (_CLOSED.fullmatch(plain), _HEADED.fullmatch(plain), _HEADED.fullmatch(plain.rstrip(".):")))
    return tuple(one[1] for one in found if one)


def _same(text: str, label: str) -> bool:
    def plain(one: str) -> str:
        return one.casefold().lstrip("0") or one

    return plain(text) == plain(label)


def _signs(text: str) -> str:
    """Return a problem without blanks, its minus signs all alike, its equals sign at the end taken off."""
    alike = text.translate({ord(dash): "-" for dash in "\N{MINUS SIGN}\N{EN DASH}\N{HYPHEN}"})
    return "".join(alike.split()).rstrip("=?_").casefold()
