"""What a line contains: expressions, the statements made of them, and reading them from typed text.

==========================  ======================================================
:mod:`~.expression`         sums, differences, products and fractions being worked
:mod:`~.gap`                a number with one part missing: 6 ?/6
:mod:`~.statement`          question, comparison, ordering, missing number, another name
:mod:`~.sides`              the expressions that make up a statement
:mod:`~.ordering_reading`   reading numbers to be put in order, and numbers in a row
:mod:`~.rounding`           a number to be rounded, its neighbors and what is halfway
:mod:`~.wording`            words that belong to a line, by their meaning
:mod:`~.chain`              equalities written one after another
:mod:`~.tokens`             typed text cut into pieces, each with its place
:mod:`~.numerals`           reading one quantity as typed
:mod:`~.form_words`         the words for the form in which a number is wanted
:mod:`~.reading`            reading whole statements, answers and chains
:mod:`~.table_rows`         a typed table cut into rows of cells
==========================  ======================================================
"""
