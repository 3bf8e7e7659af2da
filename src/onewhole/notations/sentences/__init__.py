"""A sentence tree rendered: capital, full stop, blanks, and every number as the notation writes it.

===========================  =====================================================
:mod:`~.layout`              what every notation of a sentence has in common
:mod:`~.text`                plain text, numbers in digits
:mod:`~.speech`              the words to be spoken
:mod:`~.runs`                words and formulas in turn, for a page that sets math
===========================  =====================================================
"""
