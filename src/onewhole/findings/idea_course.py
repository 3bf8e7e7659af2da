"""How an idea went over the nights of one pupil: a closed family, for the teacher's eyes."""

from datetime import date

from msgspec import Struct


class HeldSince(Struct, frozen=True):
    """Answers fit since a night, and on ``shown`` of the last ``of`` nights that could show it."""

    on: date
    shown: int
    of: int


class GoneSince(Struct, frozen=True):
    """It was found, and the answers of this night withdrew it."""

    on: date


IdeaCourse = HeldSince | GoneSince
