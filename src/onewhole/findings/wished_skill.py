"""What a composed page may practise, as it is typed."""

from enum import StrEnum


class WishedSkill(StrEnum):
    """What a page practises. The first three are mixed numbers with like denominators."""

    SUBTRACT = "subtract"
    ADD = "add"
    BOTH = "both"
    FRACTIONS = "fractions"
    TENTHS = "tenths and hundredths"
    UNLIKE = "unlike"
    SUBTRACT_UNLIKE = "subtract unlike"
    ADD_UNLIKE = "add unlike"
    WHOLE = "whole numbers"
    SUBTRACT_WHOLE = "subtract whole numbers"
    ADD_WHOLE = "add whole numbers"
    DECIMALS = "decimals"
    SUBTRACT_DECIMALS = "subtract decimals"
    ADD_DECIMALS = "add decimals"
    MEASURES = "measures"
    SUBTRACT_MEASURES = "subtract measures"
    ADD_MEASURES = "add measures"
    COMPARE = "compare"
    COMPARE_WHOLE = "compare whole numbers"
    COMPARE_FRACTIONS = "compare fractions"
    COMPARE_DECIMALS = "compare decimals"
    COMPARE_MEASURES = "compare measures"
    EQUAL_FRACTIONS = "equal fractions"
    OTHER_NAMES = "other names"
    MISSING = "missing numbers"
    TIMES = "times"
    TIMES_FRACTIONS = "fraction times fraction"
    PART_OF_MEASURE = "fraction of a measure"
    TIMES_WHOLE = "times whole numbers"
    DIVIDE_WHOLE = "divide whole numbers"
    DIVIDE_LONG = "divide by two digits"
    REMAINDERS = "what a remainder means"
    DIVIDE_FRACTIONS = "divide fractions"
    DIVIDE_MIXED = "divide mixed numbers"
    DIVIDE_DECIMALS = "divide decimals"
    DIVIDE_MEASURES = "divide measures"
    SEVERAL = "three numbers"
    STEPS = "several steps"
    FACTORS = "factors and multiples"
    PRIMES = "prime numbers"
    LINE_PLOTS = "line plots"
    SHARE_PLOTS = "share on line plots"
    ROUND = "rounding"
    ROUND_WHOLE = "round whole numbers"
    ROUND_DECIMALS = "round decimals"
    ORDER = "ordering"
    ORDER_FRACTIONS = "order fractions"
    ORDER_DECIMALS = "order decimals"
    DECIMAL_NAMES = "decimals and fractions"
    TIMES_LONG = "times two digits"
    CONVERT = "conversions"
    CLOCK = "clock times"
    MONEY = "money"


#: Mixed numbers with like denominators: every problem of the grade is listed, all at once.
LIKE = frozenset({WishedSkill.SUBTRACT, WishedSkill.ADD, WishedSkill.BOTH})
#: Skills in which nothing is regrouped, so that a share of regrouping says nothing.
WITHOUT_REGROUPING = frozenset(
    {
        WishedSkill.TENTHS,
        WishedSkill.COMPARE,
        WishedSkill.COMPARE_WHOLE,
        WishedSkill.COMPARE_FRACTIONS,
        WishedSkill.COMPARE_DECIMALS,
        WishedSkill.COMPARE_MEASURES,
        WishedSkill.EQUAL_FRACTIONS,
        WishedSkill.OTHER_NAMES,
        WishedSkill.TIMES,
        WishedSkill.TIMES_FRACTIONS,
        WishedSkill.PART_OF_MEASURE,
        WishedSkill.TIMES_WHOLE,
        WishedSkill.STEPS,
        WishedSkill.FACTORS,
        WishedSkill.PRIMES,
        WishedSkill.REMAINDERS,
        WishedSkill.LINE_PLOTS,
        WishedSkill.SHARE_PLOTS,
        WishedSkill.TIMES_LONG,
        WishedSkill.DECIMAL_NAMES,
        WishedSkill.DIVIDE_WHOLE,
        WishedSkill.DIVIDE_LONG,
        WishedSkill.DIVIDE_FRACTIONS,
        WishedSkill.DIVIDE_MIXED,
        WishedSkill.DIVIDE_DECIMALS,
        WishedSkill.DIVIDE_MEASURES,
        WishedSkill.ROUND,
        WishedSkill.ROUND_WHOLE,
        WishedSkill.ROUND_DECIMALS,
        WishedSkill.ORDER,
        WishedSkill.ORDER_FRACTIONS,
        WishedSkill.ORDER_DECIMALS,
        WishedSkill.CONVERT,
        WishedSkill.CLOCK,
    }
)
