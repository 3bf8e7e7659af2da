"""The shape of a film: wide or upright, how large it is, and how large that is on a phone."""

from enum import Enum
from fractions import Fraction

#: The least size of type on a phone, in the phone's own pixels: the size at which browsers set ordinary text.
#: A digit of Lexend is 7/10 of its size high. Common practice, no source.
LEAST = 16
DIGIT = Fraction(7, 10)


class Shape(Enum):
    """A shape of the film, named as a teacher chooses it. Both are made from one timeline."""

    WIDE = "wide"
    UPRIGHT = "upright"

    @property
    def size(self) -> tuple[int, int]:
        """Return the board's width and height; every place on it is in these units, pixels of the film.

        >>> Shape.WIDE.size, Shape.UPRIGHT.size
        ((1920, 1080), (1080, 1920))
        """
        return (1920, 1080) if self is Shape.WIDE else (1080, 1920)

    @property
    def seen(self) -> int:
        """Return how many pixels of a phone it is wide: upright, or with the phone held sideways.

        A phone of 390 by 844 pixels is meant. Common practice, no source.
        """
        return 844 if self is Shape.WIDE else 390

    def units(self, pixels: Fraction | int) -> Fraction:
        """Return how many units of the board so many pixels of a phone are.

        >>> Shape.UPRIGHT.units(13)
        Fraction(36, 1)
        """
        return Fraction(pixels) * self.size[0] / self.seen
