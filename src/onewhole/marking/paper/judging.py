"""A cell judged: what its picture says, confirmed where it was to be expected, and never turned into that."""

from onewhole.marking.paper.foreseen import EMPTY, NO_ANSWER, OTHER, Foreseen
from onewhole.marking.paper.ink_reading import SURE, InkReading
from onewhole.marking.paper.read_cell import MOST_CHOICES, ReadCell, by_limit
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy

#: What is expected confirms a reading that the picture alone holds to be likelier than all others together.
CONFIRMED_FROM = SURE // 2
#: From this likelihood on a digit may be struck or written over, and the cell is shown: that costs a look at
#: two plain cells in a hundred, and finds 97 and more in a hundred of the others (docs/reading-model.md).
STRUCK_FROM = 100_000


def judged(ink: InkReading, foreseen: Foreseen, limit: int) -> ReadCell:
    """Judge a cell from its picture and what was to be expected there; ``limit`` is the doubt allowed.

    The text is always the picture's own likeliest reading. What is expected can only lower the doubt about
    it, and only where the picture alone holds it to be more likely than everything else together: so no digit
    is ever changed into an answer that was expected. A cell that is crossed out, scribbled in or holds two
    answers is never read. Nor is one that a sign belongs in, not even as empty: the program has learnt no
    signs, and the three of them are offered.

    >>> from onewhole.marking.reading.expected import expect
    >>> from onewhole.problems.problem import Problem
    >>> from onewhole.statements.reading import read_statement
    >>> asked = Foreseen(expect(Problem("1", read_statement("7 2/6 - 3 5/6"), "7 2/6 - 3 5/6")))
    >>> wrote = [InkReading(((text, 980_000),), 0, 0) for text in ("3 3/6", "9 9/9")]
    >>> [judged(ink, asked, 10_000).verdict.value for ink in wrote]
    ['read', 'unsure']
    """
    if foreseen.signs:
        return ReadCell(PaperVerdict.UNSURE, "", foreseen.signs, SURE, SURE, PaperWhy.SIGN)
    choices = tuple(text for text, _ in ink.readings[:MOST_CHOICES])
    alone = SURE - ink.likelihood
    if ink.empty > max(ink.likelihood, ink.not_an_answer):
        doubt = SURE - ink.empty
        return by_limit(ReadCell(PaperVerdict.EMPTY, "", choices, doubt, doubt, PaperWhy.NOTHING), limit)
    if not ink.readings or ink.not_an_answer >= ink.likelihood:
        return ReadCell(PaperVerdict.UNSURE, ink.text, choices, alone, alone, PaperWhy.NO_ANSWER)
    if (why := _shown(ink, foreseen)) is not None:
        return ReadCell(PaperVerdict.UNSURE, ink.text, choices, alone, alone, why)
    doubt = min(alone, _confirmed(ink, foreseen)) if ink.likelihood > CONFIRMED_FROM else alone
    return by_limit(ReadCell(PaperVerdict.READ, ink.text, choices, doubt, alone, PaperWhy.ALONE), limit)


def _shown(ink: InkReading, foreseen: Foreseen) -> PaperWhy | None:
    if ink.struck >= STRUCK_FROM:
        return PaperWhy.STRUCK
    if ink.decimal:
        return PaperWhy.DECIMAL
    if ink.unit:
        return PaperWhy.UNIT
    return foreseen.why_shown(ink.text)


def _confirmed(ink: InkReading, foreseen: Foreseen) -> int:
    """Return the doubt about the best reading by Bayes' rule, where it is expected; else no lower one.

    Each other reading weighs what it is expected to be; what the picture spreads over further texts weighs as
    any other answer.
    """
    (text, parts), *others = ink.readings
    weight = foreseen.weight(text)
    if weight == OTHER:
        return SURE
    rest = SURE - sum(part for _, part in ink.readings) - ink.empty - ink.not_an_answer
    against = sum(part * foreseen.weight(other) for other, part in others)
    against += rest * OTHER + ink.empty * EMPTY + ink.not_an_answer * NO_ANSWER
    return -(-against * SURE // (parts * weight + against))
