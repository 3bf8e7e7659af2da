"""Skills over weeks: what practice gives, what days take, and when a skill is due to come back.

:mod:`~.halving`   what is left after some days of something that halves, in whole numbers
:mod:`~.course`    the courses that a skill may take in a pupil, and what a night's answers tell of each
:mod:`~.due`       when a skill is due, and between what bounds a share lies
:mod:`~.trace`     what a pupil's nights with one skill left, and what that says of a later day

The nights of a whole class are read by :mod:`onewhole.presses.traces_at_once`.
"""
