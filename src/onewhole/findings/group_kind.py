"""Why pupils work together tomorrow."""

from enum import Enum


class GroupKind(Enum):
    """Why pupils work together, in the order of the rule. The value is the key kept, and is never shown."""

    ABSENT = "absent or nothing written"
    EXTENSION = "all right, ready to go further"
    FAMILY = "answers that fit patterns of one family"
    SLIPS = "slips only"
    INTERVIEW = "no steady pattern, a talk first"
