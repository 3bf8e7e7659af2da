"""How much a finding about a pupil says."""

from enum import Enum


class Status(Enum):
    """How much a finding says. The value is the key that is kept and told to programs, and never shown.

    ``UNLISTED`` is a steady idea that no pattern describes: what the answers have in common is not one of
    ours, and only the child can show it.
    """

    NONE = "none"
    POSSIBLE = "possible"
    LIKELY = "likely"
    UNSTEADY = "no steady pattern"
    UNLISTED = "steady, not listed"
