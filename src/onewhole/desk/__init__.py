"""The teacher's acts, as functions that every door calls: one act a file, in a folder by what is looked for.

======================  ==========================================================================
:mod:`~.page`           a typed page: worked, looked over, composed, kept, printed, checked again
:mod:`~.walkthrough`    a page worked aloud: the board, its film, what was chosen and recorded
:mod:`~.marking`        the answers of a night: typed in, read, judged
:mod:`~.paper`          papers that come back as pictures: read, looked at, kept as answers
:mod:`~.tomorrow`       tomorrow morning: whom to see first, groups, talks, practice
:mod:`~.pupil`          one pupil: the story of the nights, the report, what is held for the family
:mod:`~.classes`        the classes and their nights: records, the week, what each night showed
:mod:`~.keep`           the file of a class: backed up, restored, erased, and its password
======================  ==========================================================================
"""
