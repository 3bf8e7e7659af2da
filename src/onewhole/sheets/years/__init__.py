"""A school year: what is usually taught in which week, what a teacher says of it, and the nights it has.

=====================  ==============================================================
:mod:`~.topic`         the topic of a week, and what its pages are composed of
:mod:`~.grade_4`       grade 4, week by week
:mod:`~.grade_5`       grade 5, week by week
:mod:`~.year_wishes`   a year as a teacher types it
:mod:`~.nights`        the nights of the weeks, each with its topic
=====================  ==============================================================

Which night brings an earlier topic back is planned in :mod:`onewhole.desk.classes.year_plan`.
"""
