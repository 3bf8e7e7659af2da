"""The checks of a page against the standards, by code, and the numbers that they speak of.

Source of the numbers: *Common Core State Standards for Mathematics* (2010), "CCSSM", as named at each.
"""

from enum import Enum

#: Source: footnotes to the fractions domain of grades 4 and 3, CCSSM (read).
GRADE_4 = frozenset({2, 3, 4, 5, 6, 8, 10, 12, 100})
GRADE_3 = frozenset({2, 3, 4, 6, 8})
#: Source: footnote to grade 4 base ten, CCSSM (read).
LARGEST_WHOLE = 1_000_000
#: Source: 3.NBT.A.2, CCSSM (read).
LARGEST_IN_GRADE_3 = 1_000


class StandardCode(Enum):
    """A check; its value is the code under which it is told. The numbers are our own."""

    GRADE_4_DENOMINATORS = "K1"
    GRADE_3_DENOMINATORS = "K2"
    LIKE_DENOMINATORS = "K3"
    NOT_BELOW_ZERO = "K4"
    ANY_FORM = "K5"
    STORY_WITH_PICTURE = "K6"
    ONE_WHOLE = "K7"
    LARGEST_NUMBER = "K8"
    UNLIKE_IS_GRADE_5 = "K9"
    TIMES_IS_GRADE_5 = "K10"
    BOTH_KINDS = "K11"
    ODD_DENOMINATORS = "K12"
    STRIP_OF_HUNDREDTHS = "K13"
    LARGEST_SUM_OF_GRADE_3 = "K14"
    ZEROS_TO_CROSS = "K16"
    UNEQUAL_LENGTHS = "K17"
    TIMES_IN_GRADE_3 = "K18"
    TIMES_IN_GRADE_4 = "K19"
    ROUNDING_PLACES = "K27"
    EXACTLY_HALFWAY = "K28"
    TWO_ARE_COMPARED = "K30"
    SMALLER_UNITS_ONLY = "K36"
    DECIMALS_ARE_GRADE_4 = "K51"
