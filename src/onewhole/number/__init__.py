"""Counting by units: what a whole number, a mixed number, a decimal and a measure have in common.

======================  ==========================================================
:mod:`~.unit`           one unit: its size and what it measures
:mod:`~.ladder`         units in order, each worth a whole number of the next
:mod:`~.quantity`       counts on a ladder: an amount as it is written
:mod:`~.impossible`     what can be written but is no number, such as 3 3/0
:mod:`~.clock`          times of day: 9:45, 2:15 p.m.
:mod:`~.with_minus`     a number written with a minus sign, such as -1/2
:mod:`~.factors`        common denominators
:mod:`~.another_name`   another name for a number that stands alone
:mod:`~.name_wanted`    the name that is asked for: simplest form, a decimal, other units
:mod:`~.program`        an integer linear program, checked exactly
======================  ==========================================================
"""
