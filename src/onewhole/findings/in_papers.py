"""What is found when the papers of a class are read, beside what single pictures show: a closed family."""

from msgspec import Struct

from onewhole.findings.attendance import PaperWord
from onewhole.findings.in_pictures import PictureFinding


class PaperMissing(Struct, frozen=True):
    """The paper of a pupil is waited for, and no picture shows it."""

    pupil: str


class StrangeCell(Struct, frozen=True):
    """A cell of a pupil or a problem that is not of this night."""

    pupil: str
    problem: str


class UnawaitedPaper(Struct, frozen=True):
    """A paper is there of a pupil who is down as away (``away`` says how), or who did not get the page."""

    pupil: str
    away: PaperWord


PaperFinding = PictureFinding | PaperMissing | StrangeCell | UnawaitedPaper
