"""What is told of a night that the program failed to work through."""

from datetime import date

from msgspec import Struct


class NightFailed(Struct, frozen=True):
    """The program failed on the answers of a day and page; ``at`` is where, for whoever mends it.

    ``at`` names no child and nothing that was typed.
    """

    on: date
    page: str
    at: str
