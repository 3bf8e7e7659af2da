"""What a reason says, as functions by theme; :mod:`onewhole.notations.sentences` holds the table of keys.

======================  ==========================================================
:mod:`~.told`           a reason's numbers, with the names of their units
:mod:`~.regrouping`     opening a larger unit, putting full groups together
:mod:`~.taking`         taking and adding, unit by unit
:mod:`~.jumping`        jumps along a number line, shifts, making a whole
:mod:`~.renaming`       the same amount in other units
:mod:`~.comparing`      which is more, and which number is missing
:mod:`~.unsuited`       why a strategy does not suit a problem
======================  ==========================================================
"""
