"""Reading answers back: what was written, whether it is right, what it may show, and who works with whom.

=========================  =======================================================
:mod:`~.answer`            one cell as written, and what it is read as
:mod:`~.answers_table`     the answers of a class, from CSV text
:mod:`~.writing`           when two answers are written alike
:mod:`~.expected`          what the answers to one problem are compared with
:mod:`~.mark`              one answer marked, with the patterns that it fits
:mod:`~.finding`           what the answers of one pupil may show
:mod:`~.placing`           where one pupil belongs tomorrow, and why
:mod:`~.group`             tomorrow's groups
:mod:`~.first`             whom to see first
:mod:`~.missed`            what a group got wrong
:mod:`~.items`             how the class did on each problem
:mod:`~.checking`          chains of equalities: true, or the first false equals sign
:mod:`~.mending`           what would make a false equals sign true
=========================  =======================================================
"""
