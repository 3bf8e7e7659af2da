"""Practice and forgetting, measured on invented terms of another make than the models that are compared.

:mod:`~.terms`     terms of a class, drawn from a seed: traces that fade by a power of time; having and losing
:mod:`~.rivals`    ways to foretell a night: shares, fixed days, performance factors, knowledge tracing
:mod:`~.scores`    the log score and the Brier score on nights that are still to come, and how bands hold
:mod:`~.sitting`   what the open data can decide: one sitting, no time

`python -m lab.practice` prints the tables; the decision record on coming back has them.
"""
