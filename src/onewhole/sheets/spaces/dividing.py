"""Whole numbers, fractions, decimals and measures that are divided."""

from collections.abc import Iterator

from onewhole.number.ladder import measure
from onewhole.sheets.spaces.amounts import fractions, numbers_of_length
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes
from onewhole.statements.whole_groups import GroupsAsk

#: So many digits the number has where nothing is wished: 4.NBT.B.6 goes to four (CCSSM 2010).
USUAL_DIGITS = 4
#: Things in groups, so many at most that stories tell of them; with three digits every seventh number.
IN_GROUPS_DIGITS, THREE_DIGITS = 3, 100
ONE_DIGIT, SMALL_WHOLES = range(2, 10), range(2, 7)
#: Pairs of units that are shared out, the larger first.
PAIRS = (("ft", "in"), ("yd", "ft"), ("lb", "oz"), ("gal", "qt"), ("h", "min"), ("wk", "d"))


def whole_numbers(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield two to four digits by one digit, some with a zero in the quotient: 4.NBT.B.6 (CCSSM 2010)."""
    digits = min(wishes.digits or USUAL_DIGITS, USUAL_DIGITS)
    for length in range(2, digits + 1):
        yield ProblemForm("{0} / {1}", (numbers_of_length(length), ONE_DIGIT))
    zeros = [
        f"{by * quotient + left} / {by}"
        for by in ONE_DIGIT
        for quotient in (*range(101, 110), *range(110, 200, 10))
        for left in range(by)
        if len(str(by * quotient)) <= digits
    ]
    yield ProblemForm("{0}", (tuple(zeros),))


def by_two_digits(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield three and four digits by two digits: 5.NBT.B.6 (CCSSM 2010)."""
    digits = min(wishes.digits or USUAL_DIGITS, USUAL_DIGITS)
    for length in range(3, max(3, digits) + 1):
        yield ProblemForm("{0} / {1}", (numbers_of_length(length), range(11, 100)))


def groups_needed(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield things for all of which groups are needed: 4.OA.A.3 (CCSSM 2010)."""
    yield _in_groups(wishes, GroupsAsk.NEEDED)


def full_groups(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield things of which only full groups are asked for."""
    yield _in_groups(wishes, GroupsAsk.FULL)


def left_over(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield things of which those are asked for that are in no full group."""
    yield _in_groups(wishes, GroupsAsk.LEFT)


def _in_groups(wishes: Wishes, asks: GroupsAsk) -> ProblemForm:
    """Return things in groups of one digit: some are left over, and not as many as there are groups."""
    most = 10 ** min(wishes.digits or IN_GROUPS_DIGITS, IN_GROUPS_DIGITS)
    step = 7 if most > THREE_DIGITS else 1
    asked = (
        f"{number} / {by}, {asks.value}"
        for by in range(3, 10)
        for number in range(2 * by, most, step)
        if number % by and number % by != number // by
    )
    return ProblemForm("{0}", (tuple(asked),))


def unit_fractions(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield a unit fraction by a whole number, and the other way round: 5.NF.B.7 (CCSSM 2010)."""
    units = tuple(f"1/{one}" for one in wishes.denominators)
    yield ProblemForm("{0} / {1}", (units, SMALL_WHOLES))
    yield ProblemForm("{0} / {1}", (SMALL_WHOLES, units))


def to_fractions(_: Wishes) -> Iterator[ProblemForm]:
    """Yield a whole number by a larger one, a fraction of one: 5.NF.B.3 (CCSSM 2010)."""
    pairs = tuple(f"{number} / {by}" for by in range(2, 13) for number in range(1, by))
    yield ProblemForm("{0}", (pairs,))


def mixed(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield a mixed number by a whole number, of which what is left comes out even in its pieces."""
    for denominator in wishes.denominators:
        even = tuple(
            f"{parts // denominator} {parts % denominator}/{denominator} / {by}"
            for by in SMALL_WHOLES
            for parts in range(denominator, (wishes.largest + 1) * denominator)
            if parts % denominator and parts % by == 0
        )
        yield ProblemForm("{0}", (even,))
        wholes = [by * times for by in SMALL_WHOLES for times in range(1, max(2, wishes.largest // by + 1))]
        yield ProblemForm(
            "{0}",
            (
                tuple(
                    f"{number} {part} / {by}"
                    for by in SMALL_WHOLES
                    for number in sorted({one for one in wholes if one % by == 0 and one <= wishes.largest})
                    for part in fractions(denominator)
                ),
            ),
        )


def of_decimals(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield decimals of one and two places that come out even by a whole number: 5.NBT.B.7 (CCSSM 2010)."""
    for places in (1, 2):
        ten = 10**places
        even = tuple(
            f"{parts // ten}.{parts % ten:0{places}} / {by}"
            for by in ONE_DIGIT
            for parts in range(ten, (wishes.largest + 1) * ten)
            if parts % 10 and parts % by == 0
        )
        yield ProblemForm("{0}", (even,))


def of_measures(wishes: Wishes) -> Iterator[ProblemForm]:
    """Yield measures of two units that come out even by a whole number: 4.MD.A.2 (CCSSM 2010)."""
    for large, small in PAIRS:
        (ratio,) = measure(large, small).ratios
        even = tuple(
            f"{parts // ratio} {large} {parts % ratio} {small} / {by}"
            for by in SMALL_WHOLES
            for parts in range(ratio, (wishes.largest + 1) * ratio)
            if parts % ratio and parts % by == 0 and parts // ratio % by
        )
        yield ProblemForm("{0}", (even,))
