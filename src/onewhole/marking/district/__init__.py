"""Papers of very many classes, without names: what is told of them, and what must not be.

========================  ==============================================================
:mod:`~.shared_paper`     one pupil's paper of a night as a district gets it
:mod:`~.page_asked`       a page as a district gets it, with what an answer to it may show
:mod:`~.small_counts`     which numbers of a table are not shown, so that none under 10 is told
:mod:`~.district_found`   what a district finds, ready to be told
:mod:`~.district_prior`   what a district's papers say before a class's answers are read
========================  ==============================================================
"""
