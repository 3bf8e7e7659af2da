"""How one line is written and said.

===========================  =====================================================
:mod:`~.row`                 a line as numbers, signs and brackets
:mod:`~.text`                plain text, as typed
:mod:`~.speech`              spoken English
:mod:`~.columns_text`        columns in plain text
:mod:`~.columns_mathml`      columns as MathML
:mod:`~.squared`             all that stands on squared paper, in text and as MathML
:mod:`~.mathml`              MathML Core with plain text and spoken words
:mod:`~.typst_math`          Typst math with spoken words
:mod:`~.braille`             Nemeth braille for lines, uncontracted UEB for words
:mod:`~.sentences`           a sentence tree as text, as speech, as words and formulas
===========================  =====================================================
"""
