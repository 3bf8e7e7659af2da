"""A page as a tree: reading and writing it, what it needs on paper, and what can be told about it.

======================  ==========================================================
:mod:`~.header`         the settings of a page
:mod:`~.settings`       their names, how each is read and written
:mod:`~.document`       the page: header, instructions, problems
:mod:`~.reading`        from typed text, with every mistake told
:mod:`~.writing`        to text that reads back to the same page
:mod:`~.handwriting`    how much paper a line takes when a child writes it
:mod:`~.room`           the room that each problem needs
:mod:`~.key`            answers, equal forms and workings
:mod:`~.standards`      what the standards expect, as notes
:mod:`~.seen`           one problem as an audit sees it
:mod:`~.page`           a whole page as an audit sees it
:mod:`~.audit`          what is found, and what may be done about it
:mod:`~.practice`       a page of problems parallel to those missed
======================  ==========================================================
"""
