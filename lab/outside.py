"""Steady ways to work wrongly that no pattern of the catalogue describes: for pupils outside it.

Each is a rule over the two numbers of a sum or a difference, w1 n1/d1 and w2 n2/d2, and says what is
written, or None where the rule has nothing to say and the pupil works rightly. They are made up, and taken
from no study: what matters is that the marking does not know them. `tests/lab/test_outside.py` holds that no
pattern writes a whole page as any of them does.

The shares of the marking were set by every other one of :data:`RULES`, and by others that are not kept here;
nothing was set by :data:`HELD_OUT`, most of which lie close beside a pattern.
"""

from collections.abc import Callable, Mapping

from onewhole.number.ladder import mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.problems.two_numbers import TwoNumbers, two_numbers
from onewhole.statements.statement import Statement

Wrote = tuple[int, int, int]
Rule = Callable[[TwoNumbers], Wrote | None]


def _too_few(t: TwoNumbers) -> bool:
    """Say whether there are fewer pieces than are taken away, all of one size."""
    return t.taken and t.d1 == t.d2 and t.n1 < t.n2


def _both(t: TwoNumbers) -> int:
    return t.w1 - t.w2 if t.taken else t.w1 + t.w2


def _adds_pieces_where_too_few(t: TwoNumbers) -> Wrote | None:
    return (t.w1 - t.w2, t.n1 + t.n2, t.d1) if _too_few(t) else None


def _doubles(t: TwoNumbers) -> Wrote | None:
    """Write the first number twice."""
    return 2 * t.w1, 2 * t.n1, t.d1


def _larger_number(t: TwoNumbers) -> Wrote | None:
    """Write the larger of the two numbers, as it stands."""
    first, second = t.w1 * t.d2 * t.d1 + t.n1 * t.d2, t.w2 * t.d1 * t.d2 + t.n2 * t.d1
    return (t.w1, t.n1, t.d1) if first >= second else (t.w2, t.n2, t.d2)


def _keeps_first_pieces(t: TwoNumbers) -> Wrote | None:
    """Take the wholes away and leave the pieces of the first number."""
    return (t.w1 - t.w2, t.n1, t.d1) if t.taken and t.n2 else None


def _larger_pieces(t: TwoNumbers) -> Wrote | None:
    """Work the wholes and write the larger number of pieces."""
    return _both(t), max(t.n1, t.n2), t.d1


def _opens_and_keeps_first(t: TwoNumbers) -> Wrote | None:
    """Where there are too few pieces, count one whole fewer and leave the pieces of the first number."""
    return (t.w1 - t.w2 - 1, t.n1, t.d1) if _too_few(t) else None


def _multiplies_pieces(t: TwoNumbers) -> Wrote | None:
    """Take the wholes away and multiply the numbers of pieces."""
    return (t.w1 - t.w2, t.n1 * t.n2, t.d1) if t.taken and t.n1 and t.n2 else None


def _adds_wholes_where_too_few(t: TwoNumbers) -> Wrote | None:
    """Where there are too few pieces, add the wholes, and take the smaller number from the larger."""
    return (t.w1 + t.w2, t.n2 - t.n1, t.d1) if _too_few(t) else None


def _pieces_missing(t: TwoNumbers) -> Wrote | None:
    """Write how many pieces each fraction lacks to a whole, both together."""
    return _both(t), (t.d1 - t.n1) + (t.d2 - t.n2), t.d1


def _whole_less_difference(t: TwoNumbers) -> Wrote | None:
    """Where there are too few pieces, take the whole number off too much twice: for the whole and again."""
    return (t.w1 - t.w2 - 2, t.n2, t.d1) if _too_few(t) else None


def _second_number(t: TwoNumbers) -> Wrote | None:
    """Write the second number."""
    return t.w2, t.n2, t.d2


def _bottom_with_tops(t: TwoNumbers) -> Wrote | None:
    """Work the wholes, and write the size of the pieces as how many there are."""
    return _both(t), t.d1, t.n1 + t.n2


def _keeps_second_whole(t: TwoNumbers) -> Wrote | None:
    """Take the pieces, the smaller number from the larger, and write the second whole number before them."""
    return (t.w2, abs(t.n1 - t.n2), t.d1) if t.taken and t.w2 and t.n1 and t.n2 else None


def _takes_top_from_bottom(t: TwoNumbers) -> Wrote | None:
    """Where a whole number comes first, bring the pieces down over the whole number itself."""
    return (t.w1 - t.w2, t.n2, t.w1) if t.taken and not t.n1 and t.n2 and t.w1 > 1 else None


RULES: Mapping[str, Rule] = {
    "adds the pieces only where there are too few": _adds_pieces_where_too_few,
    "doubles the first number": _doubles,
    "writes the larger number": _larger_number,
    "takes the wholes and keeps the first pieces": _keeps_first_pieces,
    "works the wholes and writes the larger number of pieces": _larger_pieces,
    "counts a whole off and keeps the first pieces": _opens_and_keeps_first,
    "takes the wholes and multiplies the pieces": _multiplies_pieces,
    "adds the wholes only where there are too few pieces": _adds_wholes_where_too_few,
    "writes the pieces that are missing": _pieces_missing,
    "counts two wholes off and keeps the second pieces": _whole_less_difference,
    "writes the second number": _second_number,
    "writes the size of the pieces as their number": _bottom_with_tops,
    "takes the pieces and keeps the second whole number": _keeps_second_whole,
    "writes the pieces over the whole number": _takes_top_from_bottom,
}


def _larger(t: TwoNumbers) -> int:
    return max(t.d1, t.d2)


def _apart_and_one_whole(t: TwoNumbers) -> Wrote | None:
    """Take the smaller number of pieces from the larger, and write one whole too many."""
    return (t.w1 - t.w2 + 1, abs(t.n1 - t.n2), _larger(t)) if t.taken else None


def _apart_and_one_piece(t: TwoNumbers) -> Wrote | None:
    return (t.w1 - t.w2, t.n2 - t.n1 + 1, t.d1) if _too_few(t) else None


def _apart_and_two_wholes_off(t: TwoNumbers) -> Wrote | None:
    return (t.w1 - t.w2 - 2, t.n2 - t.n1, t.d1) if _too_few(t) else None


def _second_pieces(t: TwoNumbers) -> Wrote | None:
    return (t.w1 - t.w2, t.n2, t.d1) if _too_few(t) else None


def _first_whole(t: TwoNumbers) -> Wrote | None:
    """Where there are too few pieces, leave the wholes as they are, and take the smaller from the larger."""
    return (t.w1, t.n2 - t.n1, t.d1) if _too_few(t) else None


def _ten_pieces(t: TwoNumbers) -> Wrote | None:
    """Where there are too few pieces, add ten of them, and no whole is one fewer."""
    return (t.w1 - t.w2, t.n1 + 10 - t.n2, t.d1) if _too_few(t) else None


def _second_pieces_less_one(t: TwoNumbers) -> Wrote | None:
    opened = t.taken and t.n1 < t.n2
    return (t.w1 - t.w2 - 1, max(1, t.n2 - 1), _larger(t)) if opened else None


def _one_piece_too_many(t: TwoNumbers) -> Wrote | None:
    """Work rightly, and count one piece too many."""
    if t.taken and t.n1 < t.n2:
        return t.w1 - t.w2 - 1, t.n1 + _larger(t) - t.n2 + 1, _larger(t)
    return _both(t), (t.n1 - t.n2 if t.taken else t.n1 + t.n2) + 1, _larger(t)


def _size_one_larger(t: TwoNumbers) -> Wrote | None:
    """Where nothing has to be opened, write the size of the pieces one larger."""
    return None if _too_few(t) else (_both(t), abs(t.n1 - t.n2) if t.taken else t.n1 + t.n2, _larger(t) + 1)


HELD_OUT: Mapping[str, Rule] = {
    "takes pieces apart and writes one whole too many": _apart_and_one_whole,
    "takes pieces apart and writes one piece too many where there are too few": _apart_and_one_piece,
    "takes pieces apart and two wholes off where there are too few": _apart_and_two_wholes_off,
    "keeps the second pieces where there are too few": _second_pieces,
    "keeps the first whole number where there are too few pieces": _first_whole,
    "adds ten pieces and takes no whole off": _ten_pieces,
    "counts a whole off and writes the second pieces less one": _second_pieces_less_one,
    "writes one piece too many": _one_piece_too_many,
    "writes the size of the pieces one larger": _size_one_larger,
}
_EVERY = {**RULES, **HELD_OUT}


def written(rule: str, statement: Statement) -> Quantity | None:
    """Return what a pupil with a rule writes, or None where the rule has nothing to say.

    >>> from onewhole.notations.text import text
    >>> from onewhole.statements.reading import read_statement
    >>> found = written("adds the pieces only where there are too few", read_statement("9 5/8 - 4 6/8"))
    >>> text(found) if found else ""
    '5 11/8'
    """
    asked = two_numbers(statement)
    found = _EVERY[rule](asked) if asked else None
    if found is None or min(found) < 0 or not found[2]:
        return None
    wholes, top, bottom = found
    if top == 0 or bottom == 1:
        return whole(wholes + (top if bottom == 1 else 0))
    return Quantity(mixed(bottom), (wholes, top))
