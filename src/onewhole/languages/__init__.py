"""Languages: the only room that chooses words. A meaning goes in, a sentence tree comes out.

===========================  =====================================================
:mod:`~.table`               the languages there are
:mod:`~.english`             American English, as a fourth-grade class speaks
===========================  =====================================================
"""
