"""Reasons, line by line: how a problem is worked the way a class was taught.

=======================  =========================================================
:mod:`~.reason`          why a line follows: a closed family of reasons
:mod:`~.fact`            a hard fact inside a line, worked beside it
:mod:`~.line`            one line: what it says and why
:mod:`~.pair_state`      a pair of numbers while it is being worked
:mod:`~.strategy`        named steps, and when they do not suit
:mod:`~.checks`          estimate, undoing, a second strategy
:mod:`~.working`         the whole working, in three lengths
:mod:`~.strategies`      the strategies themselves
:mod:`~.work`            working a statement by a strategy
=======================  =========================================================
"""
