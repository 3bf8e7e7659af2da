"""The table of contents: every pattern by its id, and what a problem can show."""

from collections.abc import Iterable, Mapping
from functools import lru_cache
from itertools import groupby
from types import MappingProxyType

from onewhole.errors import InputError
from onewhole.misconceptions.pattern import Luck, Pattern
from onewhole.misconceptions.patterns.adding import ADDING
from onewhole.misconceptions.patterns.column_answers import COLUMN_ANSWERS
from onewhole.misconceptions.patterns.column_payments import COLUMN_PAYMENTS
from onewhole.misconceptions.patterns.comparing import COMPARING
from onewhole.misconceptions.patterns.comparing_more import COMPARING_MORE
from onewhole.misconceptions.patterns.conversions import CONVERSIONS
from onewhole.misconceptions.patterns.decimal_sums import DECIMAL_SUMS
from onewhole.misconceptions.patterns.decimals import DECIMALS
from onewhole.misconceptions.patterns.equal_fractions import EQUAL_FRACTIONS
from onewhole.misconceptions.patterns.fraction_products import FRACTION_PRODUCTS
from onewhole.misconceptions.patterns.fraction_quotients import FRACTION_QUOTIENTS
from onewhole.misconceptions.patterns.line_plots import LINE_PLOTS
from onewhole.misconceptions.patterns.listing import LISTING
from onewhole.misconceptions.patterns.measure_sums import MEASURE_SUMS
from onewhole.misconceptions.patterns.measures import MEASURES
from onewhole.misconceptions.patterns.missing_numbers import MISSING_NUMBERS
from onewhole.misconceptions.patterns.multiplying import MULTIPLYING
from onewhole.misconceptions.patterns.one_fraction import ONE_FRACTION
from onewhole.misconceptions.patterns.opening_a_whole import OPENING_A_WHOLE
from onewhole.misconceptions.patterns.other_names import OTHER_NAMES
from onewhole.misconceptions.patterns.our_own import OUR_OWN
from onewhole.misconceptions.patterns.parts_apart import PARTS_APART
from onewhole.misconceptions.patterns.products import PRODUCTS
from onewhole.misconceptions.patterns.quotients import QUOTIENTS
from onewhole.misconceptions.patterns.rounding import ROUNDING
from onewhole.misconceptions.patterns.several_numbers import SEVERAL_NUMBERS
from onewhole.misconceptions.patterns.several_steps import SEVERAL_STEPS
from onewhole.misconceptions.patterns.shifts_and_slips import SHIFTS_AND_SLIPS
from onewhole.misconceptions.patterns.stories import STORIES
from onewhole.misconceptions.patterns.sum_columns import SUM_COLUMNS
from onewhole.misconceptions.patterns.unlike_denominators import UNLIKE_DENOMINATORS
from onewhole.misconceptions.patterns.whole_groups import WHOLE_GROUPS
from onewhole.misconceptions.patterns.whole_on_top import WHOLE_ON_TOP
from onewhole.misconceptions.slip import Slip
from onewhole.misconceptions.telling import ToldAs
from onewhole.statements.statement import Statement

GROUPS = (
    OPENING_A_WHOLE,
    PARTS_APART,
    WHOLE_ON_TOP,
    ONE_FRACTION,
    SHIFTS_AND_SLIPS,
    ADDING,
    UNLIKE_DENOMINATORS,
    EQUAL_FRACTIONS,
    COMPARING,
    MULTIPLYING,
    COLUMN_ANSWERS,
    COLUMN_PAYMENTS,
    SUM_COLUMNS,
    DECIMALS,
    DECIMAL_SUMS,
    MEASURES,
    MEASURE_SUMS,
    CONVERSIONS,
    COMPARING_MORE,
    OTHER_NAMES,
    MISSING_NUMBERS,
    ROUNDING,
    SEVERAL_NUMBERS,
    SEVERAL_STEPS,
    LISTING,
    LINE_PLOTS,
    PRODUCTS,
    FRACTION_PRODUCTS,
    QUOTIENTS,
    FRACTION_QUOTIENTS,
    OUR_OWN,
    STORIES,
    WHOLE_GROUPS,
)

#: The first letter of an id tells the topic; patterns are listed in this order.
TOPIC_LETTERS = "APBCDEFGHIJKLMNOQRSTUVWX"


class UnknownPatternError(InputError, KeyError):
    """There is no pattern of that id."""

    __str__ = InputError.__str__


def indexed(groups: Iterable[Iterable[Pattern]]) -> Mapping[str, Pattern]:
    """Return the patterns by id, in the order of their ids; ValueError when two have one id."""
    found: dict[str, Pattern] = {}
    for pattern in (pattern for group in groups for pattern in group):
        if pattern.id in found:
            msg = f"two patterns are called {pattern.id}"
            raise ValueError(msg)
        found[pattern.id] = pattern
    order = sorted(found, key=lambda key: (TOPIC_LETTERS.index(key[0]), key))
    return MappingProxyType({key: found[key] for key in order})


def _runs(ids: Iterable[str]) -> list[list[str]]:
    return [list(run) for _, run in groupby(ids, key=lambda key: key[0])]


_BY_ID = indexed(GROUPS)
_RANGES = ", ".join(f"{one[0]} to {one[-1]}" for one in _runs(_BY_ID))


def patterns() -> tuple[Pattern, ...]:
    """Return every pattern, in the order of their ids."""
    return tuple(_BY_ID.values())


def by_id(key: str) -> Pattern:
    """Return a pattern by its id, such as A02; UnknownPatternError when there is none.

    >>> by_id("A02").name
    'opens a whole and still counts it'
    """
    try:
        return _BY_ID[key.strip().upper()]
    except KeyError:
        msg = f"there is no pattern called “{key}”"
        raise UnknownPatternError(msg, remedy=f"Ids run {_RANGES}.") from None


@lru_cache(maxsize=256)
def met(statement: Statement, telling: ToldAs | None) -> tuple[tuple[str, Slip | Luck], ...]:
    """Return what this problem shows of each pattern that applies, or that it is right by luck.

    ``telling`` is how a story tells it, None for numbers alone.
    In the order of the ids. What was asked for last is kept: the problems of a page are asked for again and
    again.
    """
    return tuple((pattern.id, one) for pattern in patterns() if (one := pattern.meets(statement, telling)))


def shows(statement: Statement, telling: ToldAs | None = None) -> tuple[Slip, ...]:
    """Return what each pattern that this problem can show would write, in the order of the ids.

    ``telling`` is how a story tells it, None for numbers alone.

    >>> from onewhole.statements.reading import read_statement
    >>> [slip.pattern for slip in shows(read_statement("3/8 + 2/8"))]
    ['P01', 'P06', 'P07', 'P08', 'P09', 'B12', 'B13']
    """
    return tuple(one for _, one in met(statement, telling) if isinstance(one, Slip))
