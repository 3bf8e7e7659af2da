"""A pupil's code that was written into boxes, a letter or digit a box, and which of the class's it is."""

from collections.abc import Collection, Sequence
from fractions import Fraction

from onewhole.marking.paper.ink_reading import SURE, InkReading

#: A code counts from this likelihood on, all of its digits together; our own.
CODE_FROM = Fraction(97, 100)


def written_code(boxes: Sequence[InkReading], codes: Collection[str]) -> str | None:
    """Return the one code of a class that the boxes hold for sure; None where there is no such one.

    Only the digits are read: letters are the same in most classes. Whose page it is must not be guessed, so
    the digits must be sure together, and no other code may have the same digits in the same boxes.

    >>> k, zero, three = (InkReading(((text, 995_000),), 0, 0) for text in ("4", "0", "3"))
    >>> written_code((k, zero, three), ["K01", "K03", "K13"])
    'K03'
    >>> written_code((k, zero, three), ["K03", "L03"])
    """
    sure = [code for code in codes if _likely(boxes, code) >= CODE_FROM]
    return sure[0] if len(sure) == 1 else None


def _likely(boxes: Sequence[InkReading], code: str) -> Fraction:
    """Return how likely the boxes hold the digits of a code, from the first on, and nothing behind them."""
    digits = [(at, sign) for at, sign in enumerate(code) if sign in "0123456789"]
    if not digits or len(code) > len(boxes):
        return Fraction(0)
    likely = Fraction(1)
    for at, sign in digits:
        likely *= Fraction(dict(boxes[at].readings).get(sign, 0), SURE)
    for box in boxes[len(code) :]:
        likely *= Fraction(box.empty, SURE)
    return likely
