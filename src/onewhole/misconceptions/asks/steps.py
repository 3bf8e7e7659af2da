"""Questions about problems of several steps."""

from msgspec import Struct

from onewhole.statements.expression import Expression


class WhichFirst(Struct, frozen=True):
    """Which sign of this is worked first, and why?"""

    asked: Expression


class WhatBracketsSay(Struct, frozen=True):
    """What do the brackets say to do first?"""

    asked: Expression


class WhatIsLeftToDo(Struct, frozen=True):
    """This part is worked; what of the whole is still to be done?"""

    part: Expression
    asked: Expression


#: Every question about several steps.
StepAsk = WhichFirst | WhatBracketsSay | WhatIsLeftToDo
