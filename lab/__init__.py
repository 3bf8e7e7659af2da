"""The laboratory: invented classes whose truth is known, and how well the marking finds it.

============================  ==================================================================
:mod:`~.rates`                how often things happen in a class, and where those figures are from
:mod:`~.pupils`               pupils and classes, drawn from a seed
:mod:`~.steps`                how one pupil works one problem, slips and all
:mod:`~.pages`                the pages that are compared
:mod:`~.trials`               a class writes a page and is diagnosed; what was true beside what was said
:mod:`~.measures`             shares and calibration of many trials
:mod:`~.curves`               how many problems a page needs
:mod:`~.right_wrong`          a diagnosis that sees right and wrong only
:mod:`~.observed`             pupils' own answers of a published study
:mod:`~.term`                 a term of forty nights: pupils who learn, pages that change
:mod:`~.term_table`           what a term shows
:mod:`~.table`                all of it as one table
============================  ==================================================================

Nothing here is used by the program. Nothing here reads the marking's tables of chances: a pupil works a
problem step by step, and slips happen inside a step.
"""
