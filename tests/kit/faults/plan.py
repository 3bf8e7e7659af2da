"""Which call of the system fails, and how: shared by who asks for faults and who makes them."""

import errno
from collections.abc import Iterator
from dataclasses import dataclass
from enum import IntEnum


class Call(IntEnum):
    """A kind of call, numbered as in `shim.c`; its variants count as one."""

    OPEN = 0
    READ = 1
    WRITE = 2
    SYNC = 3
    TRUNCATE = 4
    RENAME = 5
    LINK = 6
    UNLINK = 7
    MKDIR = 8
    CHMOD = 9
    CLOSE = 10
    MMAP = 11


class How(IntEnum):
    """What becomes of the call, numbered as in `shim.c`.

    An error; an error, and so for all later ones of the kind; the process is ended before it, after it, or
    with half of it written; half is written, and then there is no room any more.
    """

    ONCE = 0
    FROM_THEN_ON = 1
    END_BEFORE = 2
    END_AFTER = 3
    END_HALF = 4
    HALF_THEN_FULL = 5


@dataclass(frozen=True, slots=True)
class FaultPlan:
    """The n-th call of a kind fails in this way, with this error number."""

    call: Call
    at: int
    how: How
    number: int = errno.EIO


def plans(call: Call, count: int) -> Iterator[FaultPlan]:
    """Yield every way in which each of so many calls of a kind can fail."""
    for at in range(1, count + 1):
        yield FaultPlan(call, at, How.ONCE)
        yield FaultPlan(call, at, How.END_BEFORE)
        yield FaultPlan(call, at, How.END_AFTER)
        match call:
            case Call.WRITE:
                yield FaultPlan(call, at, How.FROM_THEN_ON, errno.ENOSPC)
                yield FaultPlan(call, at, How.END_HALF)
                yield FaultPlan(call, at, How.HALF_THEN_FULL, errno.ENOSPC)
            case Call.SYNC | Call.TRUNCATE:
                yield FaultPlan(call, at, How.FROM_THEN_ON)
            case Call.OPEN | Call.MKDIR | Call.LINK | Call.RENAME:
                yield FaultPlan(call, at, How.FROM_THEN_ON, errno.ENOSPC)
            case Call.UNLINK | Call.CHMOD:
                yield FaultPlan(call, at, How.FROM_THEN_ON, errno.EACCES)
            case Call.READ | Call.CLOSE | Call.MMAP:
                pass
