"""Questions about problems of several steps."""

from typing import assert_never

from onewhole.languages.english.making import asked, told
from onewhole.misconceptions.asks.steps import StepAsk, WhatBracketsSay, WhatIsLeftToDo, WhichFirst
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import Sentences


def ask_of_steps(ask: StepAsk) -> Sentences:
    """Ask about the order of several steps.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_expression
    >>> text_of(ask_of_steps(WhichFirst(read_expression("4 + 3 x 7"))))
    'Look at 4 + 3 x 7. Which sign do you work first, and why?'
    """
    match ask:
        case WhichFirst(whole):
            return told("look at", Said(whole)) + asked("which sign do you work first, and why")
        case WhatBracketsSay(whole):
            return told("look at the brackets in", Said(whole)) + asked("what do they tell you to do")
        case WhatIsLeftToDo(part, whole):
            return told("you worked", Said(part)) + asked("what of", Said(whole), "is still to be done")
        case _:
            assert_never(ask)
