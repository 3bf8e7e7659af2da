"""What was written, whether it is right, and which patterns a wrong answer fits.

========================  =====================================================
:mod:`~.answer`           one cell as written, and what it is read as
:mod:`~.answers_table`    the answers of a class, from CSV text
:mod:`~.writing`          when two answers are written alike
:mod:`~.expected`         what the answers to one problem are compared with
:mod:`~.lines`            the lines that a pupil wrote, typed into a cell
:mod:`~.mark`             one answer marked, with the patterns that it fits
:mod:`~.asked`            what pupils were asked in a talk, and said
:mod:`~.asked_table`      the same, from CSV text
:mod:`~.talk_word`        the teacher's word after a talk
:mod:`~.pass_mark`        who reached the share of right answers that is enough
:mod:`~.problem_stats`    how the class did on each problem
:mod:`~.checking`         chains of equalities: true, or the first false one
:mod:`~.mending`          what would make a false equals sign true
========================  =====================================================
"""
