"""Decimals: subtracting, adding, comparing, and a fraction written as a decimal."""

from functools import partial

from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source, coded
from onewhole.misconceptions.wrong_steps.orders import by_more_digits, on_decimals_compared
from onewhole.misconceptions.wrong_steps.pointed import (
    around_the_point,
    digits_copied,
    fraction_as_decimal,
    larger_less_smaller,
    lined_up_on_the_right,
    nothing_carried_over_the_point,
    on_decimals,
    point_as_wall,
    top_after_the_point,
    whole_not_reduced,
)
from onewhole.working.strategies.regroup_first import REGROUP_FIRST
from onewhole.working.strategies.units_apart import UNITS_APART

_NOTE = "second-hand"
_LINE_UP = "What is each digit worth? Write its place beside it. Which digits belong under one another?"

_taken = partial(Pattern, topic=Topic.DECIMALS, family=Family.REGROUPING)
_written = partial(Pattern, topic=Topic.DECIMALS, family=Family.EQUIVALENCE)
_compared = partial(Pattern, topic=Topic.DECIMALS, family=Family.COMPARISON)

DECIMALS = (
    _taken(
        id="F01",
        name="the point as a wall",
        rule="The numbers before the point and the digits after it are subtracted as two separate whole "
        "numbers.",
        shows_when="the numbers of decimal places differ",
        thinking="7 less 6 is 1, and 31 less 4 is 27.",
        ask="Show what stands after the point in both numbers on one strip. Which is more?",
        source=coded("Thompson (1992), JRME", "135, 139"),
        example=Example("7.31 - 6.4", "0.91", "1.27"),
        beside=REGROUP_FIRST.key,
        attempt=on_decimals(point_as_wall, taken=True),
    ),
    _taken(
        id="F02",
        name="lines the digits up on the right",
        family=Family.PLACE_VALUE,
        rule="The digits are subtracted as whole numbers, right under right, and the point is put back.",
        shows_when="the numbers of decimal places differ",
        thinking="I write the numbers under one another as I always do.",
        ask=_LINE_UP,
        source=Source(
            "Hiebert & Wearne (1985), as cited in an item-design note", provenance="read", note=_NOTE
        ),
        example=Example("4.7 - 0.24", "4.46", "0.23"),
        beside=REGROUP_FIRST.key,
        attempt=on_decimals(lined_up_on_the_right, taken=True),
    ),
    _taken(
        id="F03",
        name="copies the digits after the point",
        rule="The wholes are subtracted, and the decimal digits of the second number are written down.",
        shows_when="the first number is a whole number",
        thinking="There is nothing above the 70, so the 70 comes down.",
        ask="You have only wholes. What must you change before you can take a part of one?",
        source=COMMON,
        example=Example("20 - 7.70", "12.30", "13.70"),
        beside=REGROUP_FIRST.key,
        attempt=on_decimals(digits_copied, taken=True),
    ),
    _taken(
        id="F04",
        name="takes the smaller digit from the larger in each column",
        rule="With zeros filled in, the smaller digit is taken from the larger in every column.",
        shows_when="a column must be regrouped",
        thinking="I can't take 5 from 0, so I take 0 from 5.",
        ask="In which place are there too few to take away? What could you trade to get some?",
        source=Source(
            "Brown & VanLehn (1980); Resnick et al. (1989), as cited in an item-design note",
            provenance="read",
            note=_NOTE,
        ),
        example=Example("3.00 - 0.45", "2.55", "3.45"),
        beside=REGROUP_FIRST.key,
        attempt=on_decimals(larger_less_smaller, taken=True),
    ),
    _taken(
        id="F05",
        name="opens a whole and still counts it",
        rule="The part after the point is right; the wholes are not made one less.",
        shows_when="a whole must be regrouped",
        thinking="I made 70 into a hundred with 30. I may forget that this used a whole.",
        ask="Where did the parts after the point come from? How many wholes are left after that?",
        source=coded("Broza & Ben-David Kolikant (2015), ZDM", "1101-1102"),
        example=Example("20 - 7.70", "12.30", "13.30"),
        beside=REGROUP_FIRST.key,
        attempt=on_decimals(whole_not_reduced, taken=True),
    ),
    _compared(
        id="F06",
        name="longer is larger",
        rule="The number with more decimal digits is called larger.",
        shows_when="the numbers of decimal places differ",
        thinking="134 is more than 2.",
        ask="Show both numbers on one number line. Which is further along?",
        source=coded(
            "Lachance & Confrey (2002), J. Mathematical Behavior; Irwin (2001), JRME", "517-518; 401-406"
        ),
        example=Example("0.134 ? 0.2", "<", ">"),
        attempt=on_decimals_compared(by_more_digits),
    ),
    _compared(
        id="F07",
        name="shorter is larger",
        rule="The number with fewer decimal digits is called larger.",
        shows_when="the numbers of decimal places differ",
        thinking="Hundredths are smaller than tenths, so the one with hundredths is smaller.",
        ask="Show both numbers on one number line. Which is further along?",
        source=coded("Resnick et al. (1989), JRME", "9, 13, 21, 25"),
        example=Example("1.35 ? 1.2", ">", "<"),
        attempt=on_decimals_compared(lambda digits: -by_more_digits(digits)),
    ),
    _written(
        id="F08",
        name="numerator and denominator around the point",
        rule="n/d is written n.d.",
        shows_when="a fraction below one whole is written as a decimal",
        thinking="Both are two numbers with something between them.",
        ask="Is the fraction more or less than one whole? And the number that you wrote?",
        source=coded("Resnick et al. (1989), JRME", "23"),
        example=Example("3/4 = ?", "0.75", "3.4"),
        attempt=fraction_as_decimal(around_the_point),
    ),
    _written(
        id="F09",
        name="numerator after the point",
        rule="n/d is written 0.n.",
        shows_when="a fraction below one whole is written as a decimal, and the pieces are not tenths "
        "(d <> 10)",
        thinking="It is less than one, so 0 point and then the number on top.",
        ask="What is the first place after the point worth? Are those the pieces of the fraction?",
        source=coded("Resnick et al. (1989), JRME", "23"),
        example=Example("3/100 = ?", "0.03", "0.3"),
        attempt=fraction_as_decimal(top_after_the_point),
    ),
    _taken(
        id="F10",
        name="no regrouping over the point",
        rule="Before and after the point the digits are added as two separate whole numbers.",
        shows_when="there are ten tenths or more in all",
        thinking="8 and 4 are 12, so it is point 12.",
        ask="How many tenths are there in all? How many tenths make one whole?",
        source=COMMON,
        example=Example("0.8 + 0.4", "1.2", "0.12"),
        beside=UNITS_APART.key,
        attempt=on_decimals(nothing_carried_over_the_point, taken=False),
    ),
    _taken(
        id="F11",
        name="lines the digits of a sum up on the right",
        family=Family.PLACE_VALUE,
        rule="The digits are added as whole numbers, right under right, and the point is put back.",
        shows_when="the numbers of decimal places differ",
        thinking="I write the numbers under one another as I always do.",
        ask=_LINE_UP,
        source=coded(
            "Wearne & Hiebert (1988), JRME",
            "378, 380",
            "seen with a whole number; that two decimals of different length go the same way is ours",
        ),
        example=Example("5 + 0.3", "5.3", "0.8"),
        beside=UNITS_APART.key,
        attempt=on_decimals(lined_up_on_the_right, taken=False),
    ),
)
