"""How much a finding about a pupil says."""

from enum import Enum


class Status(Enum):
    """How much a finding says. The value is the key that is kept and told to programs, and never shown."""

    NONE = "none"
    POSSIBLE = "possible"
    LIKELY = "likely"
    UNSTEADY = "no steady pattern"
