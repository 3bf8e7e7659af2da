"""The ways to divide, in the order in which they are offered."""

from onewhole.working.quotients.as_fraction import AS_FRACTION
from onewhole.working.quotients.known_quotient import KNOWN_QUOTIENT
from onewhole.working.quotients.long_division import LONG_DIVISION
from onewhole.working.quotients.measure_out import MEASURE_OUT
from onewhole.working.quotients.partial_quotients import PARTIAL_QUOTIENTS
from onewhole.working.quotients.share_units import SHARE_UNITS

#: Those that a class is taught first stand first.
QUOTIENT_WAYS = (KNOWN_QUOTIENT, SHARE_UNITS, MEASURE_OUT, PARTIAL_QUOTIENTS, AS_FRACTION, LONG_DIVISION)
