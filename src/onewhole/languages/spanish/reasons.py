"""Why a line follows, in short Spanish sentences that a nine-year-old follows, in the class's own words."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.comparing import comparing
from onewhole.languages.spanish.dividing import dividing
from onewhole.languages.spanish.in_columns import in_columns
from onewhole.languages.spanish.in_listing import in_listing
from onewhole.languages.spanish.in_ordering import in_ordering
from onewhole.languages.spanish.in_plot import in_plot
from onewhole.languages.spanish.in_rounding import in_rounding
from onewhole.languages.spanish.jumping import jumping
from onewhole.languages.spanish.multiplying import multiplying
from onewhole.languages.spanish.regrouping import regrouping
from onewhole.languages.spanish.renaming import renaming
from onewhole.languages.spanish.stepping import stepping
from onewhole.languages.spanish.taking import taking
from onewhole.sentences.sentence import Sentences
from onewhole.working.reason import Reason
from onewhole.working.reasons.columns import InColumns
from onewhole.working.reasons.comparing import Comparing
from onewhole.working.reasons.dividing import Dividing
from onewhole.working.reasons.jumping import Jumping
from onewhole.working.reasons.listing import InListing
from onewhole.working.reasons.multiplying import Multiplying
from onewhole.working.reasons.ordering import InOrdering
from onewhole.working.reasons.plotting import InPlot
from onewhole.working.reasons.regrouping import Regrouping
from onewhole.working.reasons.renaming import Renaming
from onewhole.working.reasons.rounding import InRounding
from onewhole.working.reasons.stepping import StepBegins, Stepping
from onewhole.working.reasons.taking import Taking


def reason_told(reason: Reason, words: ClassWords) -> Sentences:
    """Say why a line follows.

    >>> from onewhole.number.ladder import mixed
    >>> from onewhole.working.reasons.regrouping import OneIsWorth
    >>> wholes, sixths = mixed(6).units
    >>> [node.count for node in reason_told(OneIsWorth(wholes, sixths, 6), ClassWords())[0].numbers()]
    [1, 6]
    """
    if isinstance(reason, Regrouping):
        return regrouping(reason, words)
    if isinstance(reason, Taking):
        return taking(reason, words)
    if isinstance(reason, Jumping):
        return jumping(reason, words)
    if isinstance(reason, Renaming):
        return renaming(reason, words)
    if isinstance(reason, Comparing):
        return comparing(reason, words)
    if isinstance(reason, InColumns):
        return in_columns(reason, words)
    if isinstance(reason, InRounding):
        return in_rounding(reason, words)
    if isinstance(reason, InOrdering):
        return in_ordering(reason, words)
    if isinstance(reason, Multiplying):
        return multiplying(reason, words)
    if isinstance(reason, Dividing):
        return dividing(reason, words)
    if isinstance(reason, InListing):
        return in_listing(reason)
    if isinstance(reason, InPlot):
        return in_plot(reason)
    if isinstance(reason, StepBegins):
        return stepping(reason) + reason_told(reason.because, words)
    if isinstance(reason, Stepping):
        return stepping(reason)
    assert_never(reason)
