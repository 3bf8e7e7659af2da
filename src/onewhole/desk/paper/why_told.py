"""Why a cell of a paper is shown, or stands as it was read, in a few words for the teacher."""

from typing import assert_never

from onewhole.marking.paper.verdict import PaperWhy

#: What reading from pictures cannot promise; it stands wherever it is used.
UNSEEN_HANDS = "No child's handwriting was seen in making this: look at what was read before you rely on it."


def why_told(why: PaperWhy) -> str:
    """Return the reason in a few words, without a full stop.

    >>> why_told(PaperWhy.STRUCK)
    'a digit is crossed out or written over'
    """
    match why:
        case PaperWhy.ALONE:
            return "clear by itself"
        case PaperWhy.CONFIRMED:
            return "clear, and an answer that is expected"
        case PaperWhy.NOTHING:
            return "nothing is written"
        case PaperWhy.DOUBTFUL:
            return "not clear enough"
        case PaperWhy.NO_ANSWER:
            return "crossed out, scribbled, or more than one answer"
        case PaperWhy.NO_NUMBER:
            return "no number that can be read"
        case PaperWhy.STRUCK:
            return "a digit is crossed out or written over"
        case PaperWhy.DECIMAL:
            return "decimals are always shown"
        case PaperWhy.UNIT:
            return "answers with units are always shown"
        case PaperWhy.SIGN:
            return "signs are always shown"
        case PaperWhy.DECIDES:
            return "this answer alone would decide on a group"
        case PaperWhy.SPOT_CHECK:
            return "found wrong in the spot check"
        case PaperWhy.TYPED:
            return "another answer is typed"
        case PaperWhy.TWICE:
            return "two pictures say different things"
        case _:
            assert_never(why)
