"""A jump along a number line, and a plan of jumps with what is marked from the first line on."""

from msgspec import Struct

from onewhole.number.ladder import Ladder


class Jump(Struct, frozen=True):
    """A jump from one point to another, in the ladder's smallest unit; ``term`` is the number it jumps by."""

    start: int
    end: int
    term: int = 1


class JumpPlan(Struct, frozen=True):
    """Points marked from the first line on, and jumps; ``drawn[i]`` of them are drawn at line i.

    All points count the ladder's smallest unit. ``answer`` is where the answer is marked on the last line
    (None where it is the sum of the jumps and no point). ``measured`` is how many of them have their length
    written on them: all where it is None, and one of many equal ones. ``landings`` says that each place
    where a jump ends is named, also where only one jump has its length.
    """

    ladder: Ladder
    given: tuple[int, ...]
    jumps: tuple[Jump, ...]
    drawn: tuple[int, ...]
    answer: int | None
    measured: int | None = None
    landings: bool = False

    @property
    def furthest(self) -> int:
        """Return the point that is furthest from 0."""
        return max([*self.given, *(point for jump in self.jumps for point in (jump.start, jump.end))])
