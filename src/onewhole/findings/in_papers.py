"""What is found when the papers of a class are read, beside what single pictures show: a closed family."""

from dataclasses import dataclass

from onewhole.findings.attendance import PaperWord
from onewhole.findings.in_pictures import PictureFinding


@dataclass(frozen=True, slots=True)
class PaperMissing:
    """The paper of a pupil is waited for, and no picture shows it."""

    pupil: str


@dataclass(frozen=True, slots=True)
class StrangeCell:
    """A cell of a pupil or a problem that is not of this night."""

    pupil: str
    problem: str


@dataclass(frozen=True, slots=True)
class UnawaitedPaper:
    """A paper is there of a pupil who is down as away (``away`` says how), or who did not get the page."""

    pupil: str
    away: PaperWord


PaperFinding = PictureFinding | PaperMissing | StrangeCell | UnawaitedPaper
