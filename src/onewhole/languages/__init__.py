"""Languages: the only room that chooses words. A meaning goes in, a sentence tree comes out.

===========================  ===================================================================
:mod:`~.table`               the languages there are
:mod:`~.english`             American English, as a fourth-grade class speaks
:mod:`~.spanish`             Spanish, as families of schools in the United States read and hear it
:mod:`~.portuguese`          Portuguese of Brazil, in part: a language of one file
:mod:`~.by_messages`         what languages of one file say alike
===========================  ===================================================================
"""
