"""Answers from paper: what was read off a cell of a pupil's page, and how sure that is.

======================  ====================================================================
:mod:`~.ink_reading`    what the picture of one cell alone says
:mod:`~.foreseen`       what is expected in a cell before one looks
:mod:`~.verdict`        read, unsure or empty, and why
:mod:`~.read_cell`      a cell with its verdict, and how that follows from doubt and what is allowed
:mod:`~.judging`        a cell judged; what is expected may confirm a reading and never changes it
:mod:`~.sureness`       the teacher's one setting
:mod:`~.spot_check`     a few sure answers are shown, and a wrong one has a price
:mod:`~.written_code`   a pupil's code that was written by hand
:mod:`~.calibration`    the threshold learnt from what a teacher confirmed
======================  ====================================================================

Everything here is whole numbers: a likelihood is told in parts per million.
"""
