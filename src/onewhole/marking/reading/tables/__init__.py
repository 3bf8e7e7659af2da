"""Tables of answers of any make: which line is whose, which column is which problem, and what is to be asked.

====================  ==========================================================================
:mod:`~.table_cell`   a cell of a table, and what the spreadsheet says that it is
:mod:`~.cutting`      pasted text cut into rows of cells
:mod:`~.class_names`  the pupil whom a code, a number or a name means
:mod:`~.labels`       the problem that a heading means
:mod:`~.layout`       where a table has its pupils, its problems and its answers
:mod:`~.spoilt`       cells that a spreadsheet changed, and what they may have been
:mod:`~.asking`       what is asked of the teacher before anything is placed
:mod:`~.placing`      where each answer goes
====================  ==========================================================================
"""
