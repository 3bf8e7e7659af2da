"""What the morning page rests on."""

from collections.abc import Sequence

from onewhole.languages.english.making import bare, listed, told
from onewhole.sentences.node import Counted, Label, Thing
from onewhole.sentences.sentence import Sentences

_PAPER, _PROBLEM = Thing("paper", "papers", None), Thing("problem", "problems", None)
_ANSWER = Thing("answer", "answers", None)


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
