"""How many groups a teacher meets tomorrow, and how many pupils sit together."""

from msgspec import Struct

from onewhole.errors import InputError

#: How many groups a teacher can meet in one morning, unless the teacher says another number.
MEETS = 4


class Sizes(Struct, frozen=True):
    """How many pupils sit together, if it can be. Raises InputError for sizes that no group can have."""

    smallest: int = 3
    largest: int = 6

    def __post_init__(self) -> None:
        """Refuse sizes below one, and a smallest above the largest."""
        if not 1 <= self.smallest <= self.largest:
            msg = f"a group of {self.smallest} to {self.largest} pupils cannot be"
            raise InputError(msg, remedy="Give the smaller number first, from 1 up; 3 to 6 is usual.")


SIZES = Sizes()


class GroupSettings(Struct, frozen=True):
    """What a teacher sets: how many groups are met, and their sizes. InputError below one meeting."""

    meets: int = MEETS
    sizes: Sizes = SIZES

    def __post_init__(self) -> None:
        """Refuse to meet nobody."""
        if self.meets < 1:
            msg = f"a teacher meets at least one group, not {self.meets}"
            raise InputError(msg, remedy="Give a number from 1 up; 4 is usual.")


USUAL = GroupSettings()
