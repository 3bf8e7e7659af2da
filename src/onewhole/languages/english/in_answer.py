"""What can be said about an answer, a finding and a pass mark, in a few words for the teacher's eyes."""

from typing import assert_never

from onewhole.findings.in_answer import Remark, Tier
from onewhole.findings.reach import Reach
from onewhole.findings.status import Status
from onewhole.languages.english.making import told
from onewhole.sentences.node import Said
from onewhole.sentences.sentence import End, Sentences
from onewhole.statements.statement import Relation

_SIGNS = tuple(map(Said, (Relation.LESS, Relation.EQUAL, Relation.GREATER)))


def remark_told(remark: Remark) -> Sentences:
    """Say something about an answer beside its verdict.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(remark_told(Remark.SIGN_ASKED))
    'a number where one of < = > is asked for'
    """
    match remark:
        case Remark.ONE_FRACTION:
            nodes: tuple[str | Said, ...] = ("left as one fraction of one or more",)
        case Remark.OVERFULL:
            nodes = ("fraction part, or smaller unit, of one or more left",)
        case Remark.MAY_BE_RENAMED:
            nodes = ("may be written in another form, not demanded",)
        case Remark.MAY_BE_SLIP:
            nodes = ("one unit more or fewer than right",)
        case Remark.UNIT_MISSING:
            nodes = ("a plain number where a measure is asked for",)
        case Remark.LAST_UNIT_MISSING:
            nodes = ("the last unit is missing",)
        case Remark.OTHER_UNIT:
            nodes = ("another unit than the one that is asked for",)
        case Remark.SIGN_ASKED:
            nodes = ("a number where one of", *_SIGNS, "is asked for")
        case Remark.OTHER_END:
            nodes = ("in order, but from the other end",)
        case Remark.OTHER_NUMBERS:
            nodes = ("not just the numbers that are to be put in order",)
        case Remark.SOME_MISSING:
            nodes = ("some numbers are missing",)
        case Remark.SOME_TOO_MANY:
            nodes = ("some numbers do not belong there",)
        case Remark.SIGNS_DO_NOT_FIT:
            nodes = ("in order, but the signs between the numbers do not fit",)
        case Remark.NUMBER_ASKED:
            nodes = ("one of", *_SIGNS, "where a number is asked for")
        case _:
            assert_never(remark)
    return told(nodes, end=End.TYPED)


def tier_told(tier: Tier) -> Sentences | None:
    """Say how closely an answer fits the patterns named beside it; None where it is just what they write."""
    match tier:
        case Tier.LINE:
            return told("its first false line is one of theirs", end=End.TYPED)
        case Tier.EXACT:
            return None
        case Tier.AMOUNT:
            return told("the same amount, written in another way", end=End.TYPED)
        case Tier.WITH_SLIP:
            return told("one piece or one whole beside it, perhaps a slip", end=End.TYPED)
        case _:
            assert_never(tier)


def status_called(status: Status) -> str:
    """Say in a word how much a finding says; nothing for none.

    >>> status_called(Status.UNSTEADY)
    'no steady pattern'
    """
    match status:
        case Status.NONE:
            return ""
        case Status.POSSIBLE:
            return "possible"
        case Status.LIKELY:
            return "likely"
        case Status.UNSTEADY:
            return "no steady pattern"
        case Status.UNLISTED:
            return "steady, and not one of ours"
        case _:
            assert_never(status)


def reach_called(reach: Reach) -> str:
    """Say in a word whether a pupil reached the pass mark.

    >>> reach_called(Reach.LOOK)
    'look at the paper'
    """
    match reach:
        case Reach.REACHED:
            return "reached"
        case Reach.NOT_YET:
            return "not yet"
        case Reach.LOOK:
            return "look at the paper"
        case Reach.ABSENT:
            return "nothing written"
        case _:
            assert_never(reach)
