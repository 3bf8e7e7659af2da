"""Reading answers back: what was written, whether it is right, what it may show, and who works with whom.

====================  =============================================================================
:mod:`~.reading`      what was written, whether it is right, and which patterns a wrong answer fits
:mod:`~.diagnosis`    what the answers of one pupil may show, and how sure that is
:mod:`~.grouping`     whom to see first tomorrow, and who works with whom
====================  =============================================================================

Grouping stands on diagnosis, and diagnosis on reading; an import contract holds that.
"""
