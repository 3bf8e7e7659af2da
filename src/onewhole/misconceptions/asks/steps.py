"""Questions about problems of several steps."""

from dataclasses import dataclass

from onewhole.statements.expression import Expression


@dataclass(frozen=True, slots=True)
class WhichFirst:
    """Which sign of this is worked first, and why?"""

    asked: Expression


@dataclass(frozen=True, slots=True)
class WhatBracketsSay:
    """What do the brackets say to do first?"""

    asked: Expression


@dataclass(frozen=True, slots=True)
class WhatIsLeftToDo:
    """This part is worked; what of the whole is still to be done?"""

    part: Expression
    asked: Expression


#: Every question about several steps.
StepAsk = WhichFirst | WhatBracketsSay | WhatIsLeftToDo
