"""Two fractions or mixed numbers that are multiplied.

Rules and sources are those of a second collection of error patterns (see :mod:`~.sum_columns`).
"""

from functools import partial

from onewhole.misconceptions.asks.comparing import BetweenWholes
from onewhole.misconceptions.asks.products import PartOfPart, TakenTimes
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.parts import wrote
from onewhole.misconceptions.holes.products import (
    above_one,
    amount_taken,
    amount_taken_of,
    below_one,
    fraction_factor,
    fraction_taken,
    whole_times,
    wholes_of_first,
)
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.fraction_products import (
    crosswise,
    fractions_only,
    keeps_the_bottom,
    multiplies_parts,
    over_the_common_bottom,
    parts_apart,
    wholes_as_factors,
)
from onewhole.misconceptions.wrong_steps.part_of_amount import one_share, takes, times_the_top, wholes_only

_SIEGLER = Source(
    "Siegler & Pyke (2013), Developmental Psychology 49; Braithwaite, Pyke & Siegler (2017), Psychological "
    "Review 124, 603-625: wrong fraction operation",
    note="abstract of 2017 read; the example is from memory",
)
_WIDODO = Source(
    "Widodo & Ikhwanudin (2019), chapter on learners with mathematics learning disabilities; Ikhwanudin et "
    "al. (2019), IJLTER 18(3), 75-95",
    provenance="read",
    note="abstracts read: a common-denominator method carried into multiplying",
)
_SLIDES = Source(
    "a teacher's public slides on why an answer is wrong (fractions)",
    provenance="read",
    note="the wrong answer itself was read (2/3 x 4/7 = 12/14; 1 1/2 x 2 3/5 = 2 3/10); the rule is our "
    "reading of it; not a study",
)
_PAGE = Source(
    "a public teacher's page (2008): 5 1/3 x 1/2 worked as 5 x 1/3 x 1/2",
    provenance="read",
    note="one page, not a study",
)
_FIRST, _SECOND = fraction_factor(0), fraction_factor(1)

_multiplied = partial(Pattern, topic=Topic.PRODUCTS, source=COMMON)

FRACTION_PRODUCTS = (
    _multiplied(
        id="M01",
        name="keeps the common denominator in multiplying",
        family=Family.DENOMINATOR,
        rule="n1 x n2 over d.",
        shows_when="two fractions with the same denominator",
        thinking=plain(RuleThought.SAME_SIZE_SAME_BOTTOM),
        ask=filled(PartOfPart, _FIRST, _SECOND),
        source=_SIEGLER,
        example=Example("2/5 x 3/5", "6/25", "6/5"),
        attempt=multiplies_parts(keeps_the_bottom),
    ),
    _multiplied(
        id="M02",
        name="makes a common denominator and keeps it",
        family=Family.DENOMINATOR,
        rule="Both are renamed; the numerators are multiplied, over the common denominator.",
        shows_when="two fractions with different denominators",
        thinking=plain(RuleThought.SAME_BOTTOM_FIRST),
        ask=filled(PartOfPart, _FIRST, _SECOND),
        source=_WIDODO,
        example=Example("2/3 x 3/4", "6/12", "72/12"),
        attempt=multiplies_parts(over_the_common_bottom),
    ),
    _multiplied(
        id="M03",
        name="multiplies wholes and pieces apart",
        family=Family.WHOLES,
        rule="w1 x w2 wholes and n1 x n2 over d1 x d2.",
        shows_when="two mixed numbers",
        thinking=plain(RuleThought.PIECES_WITH_PIECES),
        ask=filled(TakenTimes, wholes_of_first, _SECOND, wrote),
        source=_SLIDES,
        example=Example("2 1/2 x 3 1/4", "8 1/8", "6 1/8"),
        attempt=multiplies_parts(parts_apart),
    ),
    _multiplied(
        id="M04",
        name="multiplies crosswise",
        family=Family.OPERATION,
        rule="d1 x n2 over n1 x d2.",
        shows_when="two fractions",
        thinking=plain(RuleThought.ALONG_THE_CROSS),
        ask=filled(PartOfPart, _FIRST, _SECOND),
        source=_SLIDES,
        example=Example("2/3 x 4/7", "8/21", "12/14"),
        attempt=multiplies_parts(crosswise),
    ),
    _multiplied(
        id="M06",
        name="reads a mixed number as a product",
        family=Family.CONVERSION,
        rule="Each mixed number is read as its whole times its fraction.",
        shows_when="two mixed numbers",
        thinking=plain(RuleThought.BESIDE_MEANS_TIMES),
        ask=filled(BetweenWholes, _FIRST, _SECOND),
        source=_PAGE,
        example=Example("2 1/2 x 3 1/4", "8 1/8", "6/8"),
        attempt=multiplies_parts(wholes_as_factors, grouped=True),
    ),
    _multiplied(
        id="M08",
        name="multiplies the fractions and keeps the whole",
        family=Family.WHOLES,
        rule="The whole is kept, n1 x n2 over d1 x d2.",
        shows_when="a fraction times a mixed number",
        thinking=plain(RuleThought.ONLY_THE_FRACTIONS),
        ask=filled(PartOfPart, below_one, above_one),
        example=Example("1/2 x 3 1/4", "1 5/8", "3 1/8"),
        attempt=multiplies_parts(fractions_only),
    ),
    _multiplied(
        id="V11",
        name="multiplies by the numerator only",
        family=Family.DENOMINATOR,
        rule="n x the amount; nothing is shared.",
        shows_when="more than one part of a measure or of a price is taken (n > 1)",
        thinking=plain(RuleThought.TOP_TELLS_TIMES),
        ask=filled(PartOfPart, fraction_taken, amount_taken_of),
        example=Example("3/4 x 2 ft", "1 ft 6 in", "6 ft"),
        attempt=takes(times_the_top),
    ),
    _multiplied(
        id="V12",
        name="takes one share only",
        family=Family.NUMERATOR,
        rule="The amount by d; one share is the answer.",
        shows_when="more than one part of a measure or of a price is taken (n > 1)",
        thinking=plain(RuleThought.BOTTOM_TELLS_SHARES),
        ask=filled(PartOfPart, fraction_taken, amount_taken_of),
        example=Example("3/4 x 2 ft", "1 ft 6 in", "6 in"),
        attempt=takes(one_share),
    ),
    _multiplied(
        id="V16",
        name="takes it whole times only",
        family=Family.WHOLES,
        rule="w x the amount; the part of a time is left out.",
        shows_when="a measure or a price is taken w times and a part of a time (w > 0)",
        thinking=plain(RuleThought.WHOLES_TELL_TIMES),
        ask=filled(TakenTimes, whole_times, amount_taken, wrote),
        example=Example("1 1/2 x 2 ft", "3 ft", "2 ft"),
        attempt=wholes_only,
    ),
)
