"""What is found in the pictures of papers, beside the answers themselves: a closed family.

``picture`` is what the teacher calls a picture: the name of its file, and the page where it has several.
Nothing found in one picture is in the way of another.
"""

from enum import Enum

from msgspec import Struct


class Unread(Enum):
    """Why nothing could be taken from a file."""

    NO_PICTURE = "no picture"
    CUT = "cut"
    DAMAGED = "damaged"
    LOCKED = "locked"
    EMPTY = "empty"
    #: More bytes than a file of pictures has; ``most`` is in millions of bytes.
    BYTES = "bytes"
    #: More picture elements; ``most`` is in millions.
    PIXELS = "pixels"
    #: It would take too much memory or time.
    EFFORT = "effort"


class PictureUnread(Struct, frozen=True):
    """Nothing was taken from this picture; ``most`` is the limit that it goes over, or 0."""

    picture: str
    why: Unread
    most: int = 0


class PagesLeft(Struct, frozen=True):
    """A file has ``there`` pages, and only the first ``read`` were looked at."""

    picture: str
    read: int
    there: int


class PicturesLeft(Struct, frozen=True):
    """Only the first ``read`` files were looked at."""

    read: int


PictureRefused = PictureUnread | PagesLeft | PicturesLeft


class NoPage(Struct, frozen=True):
    """No mark of a page is in this picture."""

    picture: str


class HalfPage(Struct, frozen=True):
    """Part of a page: so many of its four marks are in the picture."""

    picture: str
    marks: int


class NotFlat(Struct, frozen=True):
    """All marks are there and do not fit a page that lies flat."""

    picture: str


class OtherPage(Struct, frozen=True):
    """A page with marks of another printed version: the key that its marks say, and which page of it."""

    picture: str
    key: int
    page: int


class Nobody(Struct, frozen=True):
    """It could not be told whose page this is; ``stranger``: its marks are of no pupil of this class."""

    picture: str
    page: int
    stranger: bool


class SameTwice(Struct, frozen=True):
    """One page of one pupil is there twice: the sharper one was taken."""

    pupil: str
    page: int
    taken: str
    left: str


class PageMissing(Struct, frozen=True):
    """Of a pupil some pages are there, and these are not."""

    pupil: str
    pages: tuple[int, ...]


PictureFinding = PictureRefused | NoPage | HalfPage | NotFlat | OtherPage | Nobody | SameTwice | PageMissing
