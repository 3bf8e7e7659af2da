"""How an idea went over the nights of one pupil: a closed family, for the teacher's eyes."""

from dataclasses import dataclass
from datetime import date


@dataclass(frozen=True, slots=True)
class HeldSince:
    """Answers fit since a night, and on ``shown`` of the last ``of`` nights that could show it."""

    on: date
    shown: int
    of: int


@dataclass(frozen=True, slots=True)
class GoneSince:
    """It was found, and the answers of this night withdrew it."""

    on: date


IdeaCourse = HeldSince | GoneSince
