"""The wrong steps. They use rungs and ratios only, so that one step serves every ladder of units.

=======================  =========================================================
:mod:`~.regrouping`      one unit is opened, and something is lost or invented
:mod:`~.apart`           the units are worked apart, and not all of them rightly
:mod:`~.cutting`         the denominator is worked on as if it were a count
:mod:`~.across`          tops and bottoms by themselves, and more done to them
:mod:`~.converting`      both numbers are turned into one fraction, wrongly
:mod:`~.shifting`        equal shift and adding back, done on one side or twice
:mod:`~.writing`         the answer is found and written in another way
:mod:`~.unlike`          pieces of two sizes, never made the same size
:mod:`~.columns`         column by column, as on paper
:mod:`~.sums`            column by column, added
:mod:`~.column_answers`  a column answered wrongly, or the wrong digit reduced
:mod:`~.pointed`         decimals: worked in two parts, or the point misplaced
:mod:`~.pointed_sums`    decimals added: the carry lost, the point misplaced
:mod:`~.multiplying`     a whole number times the wrong parts
:mod:`~.renaming`        fractions said to be equal by a wrong rule
:mod:`~.orders`          comparisons decided by something else
:mod:`~.other_names`     one number written another way
:mod:`~.gaps`            the numbers around a gap, worked without it
:mod:`~.looked_at`       comparisons decided by a part of the numbers
:mod:`~.when`            when a pattern applies, as named conditions
:mod:`~.bent`            a strategy with steps replaced, run on a problem
=======================  =========================================================
"""
