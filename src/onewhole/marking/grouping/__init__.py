"""Whom to see first tomorrow, and who works with whom.

========================  =========================================================
:mod:`~.placement`        where one pupil belongs, and why
:mod:`~.conversation`     what pupils may talk about together
:mod:`~.group_program`    the groups as an integer program
:mod:`~.group`            tomorrow's groups
:mod:`~.see_first`        whom to see first
:mod:`~.missed`           what a group got wrong
:mod:`~.night_of`         what a night adds to the notebook
========================  =========================================================
"""
