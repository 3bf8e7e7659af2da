"""What may be asked: problems with their labels, what they need, and what they may hide.

======================  ============================================================
:mod:`~.problem`        a labelled statement, and the words of a word problem
:mod:`~.numbers`        the numbers of a statement, taken out and put back
:mod:`~.answer`         the right answer, written the usual way
:mod:`~.taught`         a problem worked the way a class was taught
:mod:`~.about`          what a problem is about: its operation and its units
:mod:`~.worked`         a problem and all that follows from it, each once
:mod:`~.needs`          regrouping, renaming, and the forms of the numbers given
:mod:`~.standard_code`  the code of the standard that a problem belongs to
:mod:`~.difficulty`     how hard, as a sum of parts that each say why
:mod:`~.points`         what each of those parts is worth, and what that was fitted to
:mod:`~.zeros`          zeros on top that are in the way of a subtraction
:mod:`~.traps`          answers that patterns share, and answers right by luck
:mod:`~.twins`          two problems that ask one thing
:mod:`~.parallel`       the same structure with new numbers
======================  ============================================================
"""
