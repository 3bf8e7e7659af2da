"""Whom to see first tomorrow, and who works with whom.

========================  =========================================================
:mod:`~.placement`        where one pupil belongs, and why
:mod:`~.idea`             which one idea a pupil's answers are taken to fit
:mod:`~.block`            pupils of one idea, whom no group parts
:mod:`~.group_settings`   how many groups are met, and their sizes
:mod:`~.group_program`    the groups as an integer program
:mod:`~.seating`          groups of a solution, with their reasons
:mod:`~.group`            a group: its pupils and their ideas
:mod:`~.identity`         which group of an earlier night it is, and its name
:mod:`~.keeping`          groups that are kept, and what answers would change
:mod:`~.class_ideas`      the ideas of the class, that of most pupils first
:mod:`~.see_first`        whom to see first
:mod:`~.missed`           what a group got wrong
:mod:`~.night_of`         what a night adds to the notebook
========================  =========================================================
"""
