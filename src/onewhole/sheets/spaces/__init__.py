"""The spaces of problems that pages are composed of: a file a sort of numbers, all named in the table.

==========================  ==========================================================
:mod:`~.form`               a form of problems: what stays, and what may stand where
:mod:`~.amounts`            fractions, mixed numbers and decimals to put into forms
:mod:`~.whole_numbers`      adding and taking away in columns
:mod:`~.fractions`          pieces of one size, tenths with hundredths, unlike pieces, times
:mod:`~.decimals`           adding and taking away with a point
:mod:`~.measures`           adding and taking away in two units
:mod:`~.comparing`          which is more
:mod:`~.names`              the same amount in another form
:mod:`~.ordering`           three numbers in order
:mod:`~.rounding`           to a place
:mod:`~.missing`            equations with a number missing
:mod:`~.several`            three numbers
:mod:`~.table`              which skill has which space
==========================  ==========================================================
"""
