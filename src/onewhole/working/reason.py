"""Why a line follows from the one before: a closed family of reasons with their numbers, never a sentence.

Read a reason with ``match`` and end with ``assert_never``: a new reason then turns every unfinished reader
red. Sentences, plurals and the class's own words belong to the rooms that know language.

>>> from onewhole.number.ladder import mixed
>>> from onewhole.working.reasons.regrouping import OneIsWorth
>>> wholes, sixths = mixed(6).units
>>> OneIsWorth(wholes, sixths, 6).ratio
6
"""

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
from onewhole.working.reasons.stepping import Stepping
from onewhole.working.reasons.taking import Taking

#: Every reason for a line of a working.
Reason = (
    Regrouping
    | Taking
    | Jumping
    | Renaming
    | Comparing
    | InColumns
    | InRounding
    | InOrdering
    | Multiplying
    | Dividing
    | Stepping
    | InListing
    | InPlot
)
