"""What a reason says, as functions by theme; one function a family.

======================  ==========================================================
:mod:`~.told`           units and amounts in sentences
:mod:`~.regrouping`     opening a larger unit, putting full groups together
:mod:`~.taking`         taking and adding, unit by unit
:mod:`~.jumping`        jumps along a number line, shifts, making a whole
:mod:`~.renaming`       the same amount in other units
:mod:`~.comparing`      which is more, and which number is missing
:mod:`~.unsuited`       why a strategy does not suit a problem
======================  ==========================================================
"""
