"""The wrong steps, in the language of rungs, so that one step goes wrong alike on every ladder.

=======================  =========================================================
:mod:`~.regrouping`      one unit is opened, and something is lost or invented
:mod:`~.apart`           the units are worked apart, and not all of them rightly
:mod:`~.cutting`         the denominator is worked on as if it were a count
:mod:`~.converting`      both numbers are turned into one fraction, wrongly
:mod:`~.shifting`        equal shift and adding back, done on one side or twice
:mod:`~.writing`         the answer is found and written in another way
:mod:`~.unlike`          pieces of two sizes, never made the same size
:mod:`~.columns`         column by column, as on paper
:mod:`~.column_answers`  who answers a column wrongly, and who pays
:mod:`~.pointed`         decimals: the point is a wall, or is put anywhere
:mod:`~.multiplying`     a whole number times the wrong parts
:mod:`~.renaming`        fractions said to be equal by a wrong rule
:mod:`~.orders`          comparisons decided by something else
:mod:`~.when`            when a pattern applies, as named conditions
:mod:`~.bent`            a strategy with steps replaced, run on a problem
=======================  =========================================================
"""
