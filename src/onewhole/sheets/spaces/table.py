"""Which skill has which space: a skill is a row here, and a space beside."""

from collections.abc import Callable, Iterator, Mapping
from types import MappingProxyType

from onewhole.findings.wished_skill import WishedSkill
from onewhole.sheets.spaces import (
    comparing,
    decimals,
    dividing,
    fractions,
    listing,
    measures,
    missing,
    names,
    ordering,
    plots,
    rounding,
    several,
    steps,
)
from onewhole.sheets.spaces import whole_numbers as whole
from onewhole.sheets.spaces.form import ProblemForm
from onewhole.sheets.wishes import Wishes

Space = Callable[[Wishes], Iterator[ProblemForm]]

#: The spaces of each skill but those of mixed numbers with like denominators.
SPACES: Mapping[WishedSkill, tuple[Space, ...]] = MappingProxyType(
    {
        WishedSkill.FRACTIONS: (fractions.below_one,),
        WishedSkill.TENTHS: (fractions.tenths_and_hundredths,),
        WishedSkill.UNLIKE: (fractions.unlike_taken, fractions.unlike_added),
        WishedSkill.SUBTRACT_UNLIKE: (fractions.unlike_taken,),
        WishedSkill.ADD_UNLIKE: (fractions.unlike_added,),
        WishedSkill.WHOLE: (whole.taken, whole.added),
        WishedSkill.SUBTRACT_WHOLE: (whole.taken,),
        WishedSkill.ADD_WHOLE: (whole.added,),
        WishedSkill.DECIMALS: (decimals.taken, decimals.added),
        WishedSkill.SUBTRACT_DECIMALS: (decimals.taken,),
        WishedSkill.ADD_DECIMALS: (decimals.added,),
        WishedSkill.MEASURES: (measures.taken, measures.added),
        WishedSkill.SUBTRACT_MEASURES: (measures.taken,),
        WishedSkill.ADD_MEASURES: (measures.added,),
        WishedSkill.COMPARE: (
            comparing.whole_numbers,
            comparing.of_fractions,
            comparing.mixed,
            comparing.of_decimals,
        ),
        WishedSkill.COMPARE_WHOLE: (comparing.whole_numbers,),
        WishedSkill.COMPARE_FRACTIONS: (comparing.of_fractions, comparing.mixed),
        WishedSkill.COMPARE_DECIMALS: (comparing.of_decimals,),
        WishedSkill.COMPARE_MEASURES: (comparing.of_measures,),
        WishedSkill.EQUAL_FRACTIONS: (names.equal_fractions,),
        WishedSkill.OTHER_NAMES: (names.other_names,),
        WishedSkill.MISSING: (missing.missing,),
        WishedSkill.TIMES: (fractions.times,),
        WishedSkill.TIMES_FRACTIONS: (fractions.times_fractions,),
        WishedSkill.PART_OF_MEASURE: (measures.parts_of_measures, measures.parts_of_money),
        WishedSkill.TIMES_WHOLE: (whole.multiplied,),
        WishedSkill.DIVIDE_WHOLE: (dividing.whole_numbers,),
        WishedSkill.DIVIDE_LONG: (dividing.by_two_digits,),
        WishedSkill.REMAINDERS: (dividing.groups_needed, dividing.full_groups, dividing.left_over),
        WishedSkill.DIVIDE_FRACTIONS: (dividing.unit_fractions, dividing.to_fractions),
        WishedSkill.DIVIDE_MIXED: (dividing.mixed,),
        WishedSkill.DIVIDE_DECIMALS: (dividing.of_decimals,),
        WishedSkill.DIVIDE_MEASURES: (dividing.of_measures,),
        WishedSkill.SEVERAL: (several.three_numbers,),
        WishedSkill.STEPS: (steps.several_steps,),
        WishedSkill.FACTORS: (listing.factors_and_multiples,),
        WishedSkill.PRIMES: (listing.primes, listing.multiples_or_not),
        WishedSkill.LINE_PLOTS: (plots.line_plots,),
        WishedSkill.SHARE_PLOTS: (plots.shared_plots,),
        WishedSkill.TIMES_LONG: (whole.multiplied_by_two_digits,),
        WishedSkill.ROUND: (rounding.rounding,),
        WishedSkill.ROUND_WHOLE: (rounding.of_whole_numbers,),
        WishedSkill.ROUND_DECIMALS: (rounding.of_decimals,),
        WishedSkill.ORDER: (ordering.ordering,),
        WishedSkill.ORDER_FRACTIONS: (ordering.of_fractions, ordering.of_mixed),
        WishedSkill.ORDER_DECIMALS: (ordering.of_decimals,),
        WishedSkill.DECIMAL_NAMES: (names.of_decimals,),
        WishedSkill.CONVERT: (measures.conversions,),
        WishedSkill.CLOCK: (measures.clock_times,),
        WishedSkill.MONEY: (measures.money,),
    }
)


def forms_of(wishes: Wishes) -> tuple[tuple[ProblemForm, ...], ...]:
    """Return the forms of problems that meet the wishes, a row for each space of the skill."""
    return tuple(tuple(space(wishes)) for space in SPACES[wishes.skill])
