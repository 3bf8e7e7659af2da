"""What fills the holes of a question or a thought, found in the problem and in what a pattern writes.

===========================  =====================================================
:mod:`~.parts`               two numbers of wholes and pieces, or of two units
:mod:`~.fractions`           fractions renamed, compared, multiplied
:mod:`~.places`              columns, and places after the point
:mod:`~.sums`                columns that are added
:mod:`~.gaps`                equations with a number missing
===========================  =====================================================
"""
