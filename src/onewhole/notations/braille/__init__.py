"""Braille: lines in Nemeth Code, words in uncontracted Unified English Braille, both as Unicode cells.

:mod:`~.cells`       a cell, and the same as ASCII braille
:mod:`~.chunks`      cells that are not broken over a line, one after another
:mod:`~.literary`    words
:mod:`~.nemeth`      one line of mathematics
:mod:`~.running`     words with mathematics among them
:mod:`~.spatial`     numbers under each other
"""
