"""What the answers of one pupil may show, and how sure that is.

========================  ==============================================================
:mod:`~.hypothesis`       the hypotheses about a pupil's answers
:mod:`~.reply`            which kind of reply an answer is
:mod:`~.chances`          how likely each kind of reply is
:mod:`~.weighing`         hypotheses weighed against the answers: exact odds
:mod:`~.prior`            the prior of a class, before its answers are read
:mod:`~.history`          what earlier nights showed of one pupil, and what stays from night to night
:mod:`~.tables`           what is worked out once for a page and a class
:mod:`~.likeliest_sets`   the sets of patterns that fit best
:mod:`~.evidence`         the evidence problem by problem
:mod:`~.diagnosis`        the odds of one pupil, with what speaks for and against
:mod:`~.finding`          what is told of it: likely, possible, unsteady or nothing
:mod:`~.course`           since which night an idea fits, or is gone
:mod:`~.one_night`        one night read, with what earlier nights showed
:mod:`~.interval`         the confidence interval of a share of right answers
:mod:`~.information`      how much information an answer is expected to give
:mod:`~.ask_next`         which problems to ask next
:mod:`~.notebook`         what earlier nights showed, until it expires
:mod:`~.notebook_text`    the notebook as a kept text
:mod:`~.report`           all that is to be told about one pupil
========================  ==============================================================
"""
