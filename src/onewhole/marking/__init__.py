"""Reading answers back: what was written, whether it is right, what it may show, and who works with whom.

====================  =============================================================================
:mod:`~.practice`     skills over weeks: what practice left of each, and when it is due to come back
:mod:`~.reading`      what was written, whether it is right, and which patterns a wrong answer fits
:mod:`~.paper`        what was read off a cell of a pupil's page, and how sure that is
:mod:`~.diagnosis`    what the answers of one pupil may show, and how sure that is
:mod:`~.grouping`     whom to see first tomorrow, and who works with whom
====================  =============================================================================

Grouping stands on diagnosis; diagnosis and paper, strangers to each other, stand on reading, to which
practice is a stranger; an import contract holds that.
"""
