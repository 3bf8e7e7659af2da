"""Why pupils work together tomorrow."""

from enum import Enum


class GroupKind(Enum):
    """Why pupils work together, in the order of the rule. The value is the key kept, and is never shown."""

    ABSENT = "absent or nothing written"
    EXTENSION = "all right, ready to go further"
    FAMILY = "answers that fit patterns of one family"
    SLIPS = "slips only"
    INTERVIEW = "no steady pattern, a talk first"
    OWN_IDEA = "steady, not listed"

    @property
    def meets(self) -> bool:
        """Say whether the teacher sits down with all of them together.

        Slips are a word at the desk, and talks are held one by one: both use up no meeting.

        >>> [kind.name for kind in GroupKind if kind.meets]
        ['FAMILY']
        """
        return self is GroupKind.FAMILY
