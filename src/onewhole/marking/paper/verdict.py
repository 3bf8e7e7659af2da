"""The verdict on a cell of a paper, and why: both are closed families."""

from enum import Enum
from typing import assert_never


class PaperVerdict(Enum):
    """What became of a cell: it is read, it is to be looked at, or nothing is written there."""

    READ = "read"
    UNSURE = "unsure"
    EMPTY = "empty"


class PaperWhy(Enum):
    """Why a cell has its verdict.

    The picture alone was sure enough; it was once its reading was found among the answers that are expected;
    nothing is written; the picture is not sure enough. Everything else is always shown, however sure the
    picture is: what is no answer, or none that the program can read; a digit that was struck or written over;
    decimals, units and signs, which are not read well enough yet; an answer without which the pupil would be
    in no group; what was found wrong in a spot check; what another answer is typed for, or another paper of
    the same pupil says.
    """

    ALONE = "the picture alone"
    CONFIRMED = "confirmed by what is expected"
    NOTHING = "nothing written"
    DOUBTFUL = "not sure enough"
    NO_ANSWER = "no answer"
    NO_NUMBER = "no number"
    STRUCK = "struck inside"
    DECIMAL = "decimal"
    UNIT = "unit"
    SIGN = "sign"
    DECIDES = "decides a group"
    SPOT_CHECK = "spot check"
    TYPED = "typed otherwise"
    TWICE = "two papers"

    @property
    def always_shown(self) -> bool:
        """Say whether a cell is to be looked at for this reason, however sure its picture is.

        >>> PaperWhy.STRUCK.always_shown, PaperWhy.DOUBTFUL.always_shown
        (True, False)
        """
        match self:
            case PaperWhy.ALONE | PaperWhy.CONFIRMED | PaperWhy.NOTHING | PaperWhy.DOUBTFUL:
                return False
            case (
                PaperWhy.NO_ANSWER
                | PaperWhy.NO_NUMBER
                | PaperWhy.STRUCK
                | PaperWhy.DECIMAL
                | PaperWhy.UNIT
                | PaperWhy.SIGN
                | PaperWhy.DECIDES
                | PaperWhy.SPOT_CHECK
                | PaperWhy.TYPED
                | PaperWhy.TWICE
            ):
                return True
            case _:
                assert_never(self)
