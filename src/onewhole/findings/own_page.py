"""In what form one pupil reads pages, where it is not the print that everybody has."""

from enum import Enum


class OwnPage(Enum):
    """The form of a pupil's own pages. The values are typed, and kept in the class's file."""

    BRAILLE = "braille"
    LARGE = "large print"
