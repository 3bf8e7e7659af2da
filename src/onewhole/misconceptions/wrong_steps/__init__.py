"""The wrong steps, in the language of rungs, so that one step goes wrong alike on every ladder.

=======================  =========================================================
:mod:`~.regrouping`      one unit is opened, and something is lost or invented
:mod:`~.apart`           the units are worked apart, and not all of them rightly
:mod:`~.cutting`         the denominator is worked on as if it were a count
:mod:`~.converting`      both numbers are turned into one fraction, wrongly
:mod:`~.shifting`        equal shift and adding back, done on one side or twice
:mod:`~.writing`         the answer is found and written in another way
:mod:`~.bent`            a strategy with steps replaced, run on a problem
=======================  =========================================================
"""
