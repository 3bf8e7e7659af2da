"""A page as a tree: reading and writing it, the paper that it needs, and what an audit finds in it.

======================  ==========================================================
:mod:`~.header`         the settings of a page
:mod:`~.settings`       their names, how each is read and written
:mod:`~.document`       the page: header, instructions, problems
:mod:`~.reading`        from typed text, with every mistake told
:mod:`~.writing`        to text that reads back to the same page
:mod:`~.handwriting`    how much paper a line takes when a child writes it
:mod:`~.room`           the room that each problem needs
:mod:`~.standards`      what the standards expect, as notes
:mod:`~.worked`         a sheet worked once, for whoever needs it
:mod:`~.page`           a whole page as an audit sees it
:mod:`~.audit`          what is found, and what may be done about it
:mod:`~.practice`       a page of problems parallel to those missed
:mod:`~.wishes`         what a teacher wishes for when a page is composed
:mod:`~.candidates`     the problems it may be composed of, by kind
:mod:`~.learning`       what a page would teach about a class
:mod:`~.page_program`   the page as an integer program
:mod:`~.numbers_for`    from kinds to problems, no two of them twins
:mod:`~.review`         problems of earlier skills
:mod:`~.faded_example`  a worked example with its last line left out
:mod:`~.arranging`      the order of a page
:mod:`~.composed`       a composed page and what it tells apart
:mod:`~.clash`          wishes that cannot be met together
:mod:`~.recipe`         all that a page was made of, on one line
======================  ==========================================================
"""
