"""What the skills are called that a page may be composed of, as they stand in a list to choose from."""

from collections.abc import Mapping
from types import MappingProxyType

from onewhole.findings.wished_skill import WishedSkill as Wished

#: The skills under the head that they stand below, in the order in which they are offered.
_HEADS: Mapping[str, Mapping[Wished, str]] = MappingProxyType(
    {
        "mixed numbers, like denominators": {
            Wished.SUBTRACT: "taking away",
            Wished.ADD: "adding",
            Wished.BOTH: "adding and taking away",
        },
        "whole numbers": {
            Wished.SUBTRACT_WHOLE: "whole numbers: taking away",
            Wished.ADD_WHOLE: "whole numbers: adding",
            Wished.WHOLE: "whole numbers: adding and taking away",
            Wished.FACTORS: "factors and multiples",
            Wished.PRIMES: "prime or composite, a multiple or not",
            Wished.LINE_PLOTS: "line plots",
            Wished.SHARE_PLOTS: "sharing the total of a line plot",
            Wished.TIMES_WHOLE: "whole numbers: multiplying",
            Wished.TIMES_LONG: "whole numbers: multiplying by two digits",
            Wished.DIVIDE_WHOLE: "whole numbers: dividing by one digit",
            Wished.REMAINDERS: "what a remainder means: groups needed, full groups, left over",
            Wished.DIVIDE_LONG: "whole numbers: dividing by two digits",
            Wished.COMPARE_WHOLE: "whole numbers: which is more",
            Wished.ROUND_WHOLE: "whole numbers: rounding",
        },
        "fractions": {
            Wished.FRACTIONS: "fractions, like denominators",
            Wished.TENTHS: "tenths and hundredths",
            Wished.EQUAL_FRACTIONS: "equal fractions",
            Wished.OTHER_NAMES: "mixed numbers, fractions and decimals: another name",
            Wished.COMPARE_FRACTIONS: "fractions and mixed numbers: which is more",
            Wished.ORDER_FRACTIONS: "fractions and mixed numbers in order",
            Wished.TIMES: "a whole number times a fraction",
            Wished.TIMES_FRACTIONS: "a fraction times a fraction",
            Wished.PART_OF_MEASURE: "a fraction of a measure or of money",
            Wished.DIVIDE_FRACTIONS: "dividing by and into unit fractions",
            Wished.DIVIDE_MIXED: "a mixed number divided by a whole number",
            Wished.SUBTRACT_UNLIKE: "unlike denominators: taking away",
            Wished.ADD_UNLIKE: "unlike denominators: adding",
            Wished.UNLIKE: "unlike denominators: adding and taking away",
        },
        "decimals": {
            Wished.SUBTRACT_DECIMALS: "decimals: taking away",
            Wished.ADD_DECIMALS: "decimals: adding",
            Wished.DECIMALS: "decimals: adding and taking away",
            Wished.DIVIDE_DECIMALS: "decimals: dividing by a whole number",
            Wished.COMPARE_DECIMALS: "decimals: which is more",
            Wished.ORDER_DECIMALS: "decimals in order",
            Wished.ROUND_DECIMALS: "decimals: rounding",
            Wished.DECIMAL_NAMES: "decimals and fractions: another name",
        },
        "measures": {
            Wished.SUBTRACT_MEASURES: "measures: taking away",
            Wished.ADD_MEASURES: "measures: adding",
            Wished.MEASURES: "measures: adding and taking away",
            Wished.DIVIDE_MEASURES: "measures: sharing out",
            Wished.COMPARE_MEASURES: "measures: which is more",
            Wished.CONVERT: "measures in other units",
            Wished.CLOCK: "clock times and how long",
            Wished.MONEY: "money: adding and taking away",
        },
        "of several kinds": {
            Wished.COMPARE: "which is more, all kinds of numbers",
            Wished.ORDER: "numbers in order",
            Wished.ROUND: "rounding",
            Wished.MISSING: "missing numbers",
            Wished.SEVERAL: "three numbers",
            Wished.STEPS: "several steps, and brackets",
        },
    }
)


def wished_heads() -> tuple[tuple[str, tuple[tuple[Wished, str], ...]], ...]:
    """Return the heads of the list with the skills below each and what they are called.

    >>> wished_heads()[0][1][0][1]
    'taking away'
    """
    return tuple((head, tuple(names.items())) for head, names in _HEADS.items())
