"""Answers from paper: what was read off a cell of a pupil's page, and how sure that is.

:mod:`~.ink_reading`   what the picture of one cell alone says

Everything here is whole numbers: a likelihood is told in parts per million.
"""
