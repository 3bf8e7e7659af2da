"""Skills over weeks: what practice gives, what days take, and when a skill is due to come back.

:mod:`~.halving`   what is left after some days of something that halves, in whole numbers
:mod:`~.course`    the courses that a skill may take in a pupil, and how one night is weighed
:mod:`~.trace`     a pupil's nights with one skill, read into what is still there
:mod:`~.pooling`   how a class's courses are shared out: one pupil's few nights lean on all the others
:mod:`~.due`       when a skill is due, and how sure that is
"""
