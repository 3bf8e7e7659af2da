"""A picture: a scene for each line of a working, so that a change of the line is a change of the scene."""

from enum import Enum

from msgspec import Struct

from onewhole.pictures.scene import Look, Scene


class PictureKind(Enum):
    """The pictures that can be drawn, by the name a teacher chooses them with."""

    STRIPS = "strips"
    DISCS = "discs"
    RECTANGLES = "rectangles"
    GRID = "hundred grid"
    LINE = "number line"
    RULER = "ruler"
    SPLIT = "split and join"
    BLOCKS = "tens and ones"
    BAR = "part-whole bar"
    SHARES = "shares"
    AREA = "area"
    COLUMNS = "columns"
    PLOT = "line plot"


class Picture(Struct, frozen=True):
    """``scenes[i]`` shows ``working.lines[i]``; neighbours may be the same scene. All are of one size.

    ``still`` is the scene for a still picture where none of these is it; it may be of another size.
    """

    kind: PictureKind
    scenes: tuple[Scene, ...]
    still: Scene | None = None

    def __post_init__(self) -> None:
        """Refuse scenes of different sizes, and none at all."""
        if len({(scene.width, scene.height) for scene in self.scenes}) != 1:
            msg = "a picture has one scene at least, and all have one size"
            raise ValueError(msg)

    @property
    def telling(self) -> Scene:
        """Return the scene for a still picture.

        It is the one with most pieces crossed out, or the one with the blank still open, or else the last;
        of columns and a line plot it is the last, where all is written.
        """
        if self.still is not None:
            return self.still
        if self.kind in {PictureKind.COLUMNS, PictureKind.PLOT}:
            return self.scenes[-1]
        if self.kind is PictureKind.BAR:
            return self.scenes[0]
        most = max(self.scenes, key=_struck)
        return most if _struck(most) else self.scenes[-1]


def _struck(scene: Scene) -> int:
    return sum(piece.look is Look.STRUCK for piece in scene.pieces)
