"""The ways to work several steps, in the order in which they are offered."""

from onewhole.working.way import NamedWay

STEP_BY_STEP = NamedWay("step_by_step", "Step by step, in the usual order")
TIMES_EACH_PART = NamedWay("times_each_part", "Times each part of the sum")

STEP_WAYS = (STEP_BY_STEP, TIMES_EACH_PART)
