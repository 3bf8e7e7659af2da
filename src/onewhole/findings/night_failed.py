"""What is told of a night that the program failed to work through."""

from dataclasses import dataclass
from datetime import date


@dataclass(frozen=True, slots=True)
class NightFailed:
    """The program failed on the answers of a day and page; ``at`` is where, for whoever mends it.

    ``at`` names no child and nothing that was typed.
    """

    on: date
    page: str
    at: str
