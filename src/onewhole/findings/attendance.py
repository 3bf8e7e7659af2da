"""What a teacher says of a page and a paper of one night: who got the page, who was away, whose came late."""

from enum import Enum


class PageWord(Enum):
    """Whether a pupil got the page of a night.

    NAMED is one of those for whom a page was that went to a part of the class: whoever is not named did not
    get it. GIVEN is one who got it beside the others; CLASS takes back what was said before.
    """

    CLASS = "as the class"
    GIVEN = "given"
    NAMED = "named"
    NOT_GIVEN = "not given"


class PaperWord(Enum):
    """What became of a pupil's paper of a night; HERE is for whoever hands it in as usual."""

    HERE = "here"
    ABSENT = "absent"
    EXCUSED = "excused"
    LATE = "late"

    @property
    def away(self) -> bool:
        """Say whether no paper is waited for.

        >>> [word.value for word in PaperWord if word.away]
        ['absent', 'excused']
        """
        return self in {PaperWord.ABSENT, PaperWord.EXCUSED}


#: Everything that is said of one pupil and one night.
NightSaid = PageWord | PaperWord
