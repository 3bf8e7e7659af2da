"""An act that is done while a call of the system fails, and what is found afterwards."""

from abc import ABC, abstractmethod
from enum import Enum
from pathlib import Path
from typing import ClassVar

#: What is told of an act: done, or that its process was ended before it told anything.
DONE, ENDED = "done", "ended"


class Found(Enum):
    """What stands after an act: the old; the new; nothing, but the old whole beside it; or a mixture."""

    OLD = "old"
    NEW = "new"
    ASIDE = "aside"
    MIXTURE = "mixture"


Judged = tuple[Found, str]


class Act(ABC):
    """An act in a folder of its own: made ready once, done once for each fault, judged by what is there.

    ``said`` is what it told: done (with what :meth:`do` returned), ended, or why it was refused.
    """

    name: ClassVar[str]
    #: So many faults of each kind of call are tried where not all are.
    sample: ClassVar[int] = 3

    def __init__(self, folder: Path) -> None:
        """Do it in a folder."""
        self.folder = folder
        self.said = ""

    @abstractmethod
    def prepare(self) -> None:
        """Make what is there before."""

    @abstractmethod
    def do(self) -> str:
        """Do it; return what more is told, where there is more."""

    @abstractmethod
    def judge(self) -> Judged:
        """Say what is there, and of a mixture what is wrong with it."""

    def open(self) -> None:  # noqa: B027 - most acts open nothing
        """Open what is open before the act begins."""

    def learn(self) -> None:  # noqa: B027 - most acts know what they make
        """Look at what stands after the act was done without a fault."""
