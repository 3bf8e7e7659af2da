"""How hard each kind of problem is, as a picture: a hatched bar for right answers, and the band round it."""

from collections.abc import Sequence
from fractions import Fraction
from xml.etree.ElementTree import tostring

from onewhole.languages.english.skills import skill_called
from onewhole.marking.district.district_found import KindFound
from onewhole.notations.pencil import LINE
from onewhole.notations.svg import mm
from onewhole.writers.squared import hatched, line, squared_page, words

#: Room for the names and for the numbers, the length of a whole bar, and how high a row and a bar are.
NAMES, LONG, NUMBERS, ROW, TALL, TOP = (Fraction(one) for one in (72, 80, 34, 9, 5, 10))
_TICKS = 4


def difficulty_picture(kinds: Sequence[KindFound]) -> str:
    """Draw a bar a kind, the hardest first, with the bounds of a 95 % interval as a bracket."""
    shown = [one for one in kinds if one.right is not None]
    width, height = NAMES + LONG + NUMBERS, TOP + ROW * len(shown) + 4
    told = " ".join(f"{_called(one)}: {right_told(one)}." for one in shown)
    page = squared_page("difficulty", "Right answers by kind of problem", told, width, height, grid=False)
    for tick in range(_TICKS + 1):
        x = NAMES + LONG * tick / _TICKS
        words(page, x, TOP - 4, f"{100 * tick // _TICKS} %", "middle", size=Fraction(3))
        line(page, f"M{mm(x)} {mm(TOP - 2)}V{mm(height - 2)}", LINE / 2)
    for at, one in enumerate(shown):
        assert one.right is not None
        top = TOP + ROW * at
        middle = top + TALL / 2
        words(page, NAMES - 2, middle + 1, _called(one), "end", size=Fraction(7, 2))
        hatched(page, NAMES, top, LONG * one.right.share, TALL)
        low, high = NAMES + LONG * one.right.low, NAMES + LONG * one.right.high
        ends = "".join(f"M{mm(x)} {mm(top - 1)}V{mm(top + TALL + 1)}" for x in (low, high))
        line(page, f"M{mm(low)} {mm(middle)}H{mm(high)}{ends}", LINE * 2)
        words(page, NAMES + LONG + 2, middle + 1, right_told(one, short=True), "start", size=Fraction(3))
    return tostring(page, encoding="unicode")


def right_told(one: KindFound, *, short: bool = False) -> str:
    """Tell the share of right answers with its bounds; that it is not shown, where it is not."""
    if one.right is None:
        return "not shown: some of its numbers are small"
    share, low, high = (f"{float_free(value)}" for value in (one.right.share, one.right.low, one.right.high))
    return f"{share} % ({low} to {high})" if short else f"{share} % right, from {low} % to {high} %"


def float_free(share: Fraction) -> str:
    """Return a share in percent with one decimal.

    >>> float_free(Fraction(2, 3))
    '66.7'
    """
    tenths = round(share * 1000)
    return f"{tenths // 10}.{tenths % 10}"


def _called(one: KindFound) -> str:
    said = skill_called(one.kind)
    return said[:1].upper() + said[1:]
