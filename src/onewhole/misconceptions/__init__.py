"""Error patterns: strategies with a step left out or done wrongly, each predicting the very answer written.

====================  ============================================================
:mod:`~.source`       where a pattern was described, and whether that was read
:mod:`~.attempt`      a problem worked with a wrong step, not yet judged
:mod:`~.slip`         a working that is false in exactly one place
:mod:`~.pattern`      one pattern: rule, words for the teacher, how it answers
:mod:`~.pair`         the two numbers that a problem asks about
:mod:`~.telling`      how a story tells a problem: what a word in it suggests
:mod:`~.in_story`     an idea about what to do in a story
:mod:`~.wrong_steps`  the wrong steps, on any ladder of units
:mod:`~.patterns`     the patterns, one file a group
:mod:`~.catalogue`    the table of contents: by id, and what a problem can show
====================  ============================================================
"""
