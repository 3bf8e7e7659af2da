"""What the morning page rests on."""

from collections.abc import Sequence

from onewhole.languages.english.making import bare, listed, told
from onewhole.sentences.node import Counted, Label, Thing, Typed
from onewhole.sentences.sentence import End, Sentences

_PAPER, _PROBLEM = Thing("paper", "papers", None), Thing("problem", "problems", None)
_ANSWER = Thing("answer", "answers", None)
_GROUP, _IDEA = Thing("group", "groups", None), Thing("idea", "ideas", None)


def evidence_told(papers: int, problems: int, right: int, tried: int, look: Sequence[str]) -> Sentences:
    """Say how many papers and answers were read; ``look`` are the problems whose key may be wrong.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(evidence_told(24, 1, 20, 23, ["1"]))
    '24 papers, 1 problem: 20 of 23 answers are right. Look at the key of 1.'
    """
    read = (Counted(papers, _PAPER), ",", Counted(problems, _PROBLEM), ":")
    are = "is right" if tried == 1 else "are right"
    found = told(read, bare(right), "of", Counted(tried, _ANSWER), are)
    return found + told("look at the key of", listed([(Label(one),) for one in look])) if look else found


def meetings_told(met: int, meets: int) -> Sentences:
    """Say how many of the teacher's meetings the groups use; the others are not met.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(meetings_told(3, 4))
    'You meet 3 groups of the 4 you can. Slips are a word at the desk, talks are one by one.'
    """
    counted = ("you meet", Counted(met, _GROUP), "of the", bare(meets), "you can")
    return told(counted) + told("slips are a word at the desk, talks are one by one")


def split_told(ideas: int) -> Sentences:
    """Say that a group holds several ideas, each with its pupils below.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(split_told(3))
    '3 ideas: split the minutes of this group'
    """
    return told(Counted(ideas, _IDEA), ": split the minutes of this group", end=End.TYPED)


def ask_of_group(asked: str) -> Sentences:
    """Say what to ask, from the words of a pattern's question.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(ask_of_group("on 2: How many are left?"))
    'Ask, on 2: How many are left?'
    """
    return told(Typed(f"Ask, {asked}"), end=End.TYPED)
