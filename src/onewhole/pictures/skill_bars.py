"""How many pupils have each skill: a bar a skill; hatched is there, dotted not known, empty not there."""

from collections.abc import Iterator, Sequence
from fractions import Fraction

from msgspec import Struct

from onewhole.number.quantity import whole
from onewhole.pictures.description import Shown
from onewhole.pictures.scene import Box, Look, Piece, Scene, Words

LONG, TALL, ROW, MARGIN = Fraction(110), Fraction(7), Fraction(10), Fraction(2)
#: A part narrower than this has no number in it.
NUMBERED = Fraction(9)
DIGITS = Fraction(4)


class SkillCounts(Struct, frozen=True):
    """Of a class, how many pupils have a skill, of how many it is not known, and how many have it not."""

    there: int
    not_known: int
    not_there: int

    def __post_init__(self) -> None:
        """Refuse a class of nobody."""
        if min(self.there, self.not_known, self.not_there) < 0 or not self.pupils:
            raise ValueError("counts of pupils are not below 0, and there is a pupil")

    @property
    def pupils(self) -> int:
        """How many pupils there are."""
        return self.there + self.not_known + self.not_there


def skill_bars(skills: Sequence[SkillCounts]) -> Scene:
    """Draw a bar a skill, one under the other: as long for every skill, its parts as long as their shares.

    >>> scene = skill_bars([SkillCounts(3, 1, 0)])
    >>> [(piece.name, piece.look.value) for piece in scene.pieces if isinstance(piece.shape, Box)]
    [('1/there', 'filled'), ('1/not-known', 'dotted')]
    >>> scene.pieces[0].shape.width / scene.pieces[2].shape.width
    Fraction(3, 1)
    """
    pieces = [piece for at, counts in enumerate(skills, start=1) for piece in _bar(at, counts)]
    shown = tuple(
        Shown((whole(counts.there), whole(counts.not_known), whole(counts.not_there))) for counts in skills
    )
    return Scene(LONG + 2 * MARGIN, ROW * len(skills) + MARGIN, tuple(pieces), shown)


def _bar(number: int, counts: SkillCounts) -> Iterator[Piece]:
    parts = (
        ("there", counts.there, Look.FILLED),
        ("not-known", counts.not_known, Look.DOTTED),
        ("not-there", counts.not_there, Look.PLAIN),
    )
    left, top = MARGIN, MARGIN + ROW * (number - 1)
    for name, count, look in parts:
        if not count:
            continue
        width = LONG * count / counts.pupils
        yield Piece(f"{number}/{name}", Box(left, top, width, TALL), look)
        if width >= NUMBERED:
            middle = Words(left + width / 2, top + TALL / 2, whole(count), DIGITS)
            yield Piece(f"{number}/{name}/number", middle)
        left += width
