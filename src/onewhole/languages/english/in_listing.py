"""How every factor or multiple is found."""

from typing import assert_never

from onewhole.languages.english.making import Nodes, bare, listed, told
from onewhole.sentences.node import Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.listing import AllPairsFound, CountedOnBy, InListing, PairFound

#: More numbers than these are not said one by one.
NAMED = 4


def in_listing(reason: InListing) -> Sentences:
    """Say which pair makes the number, that all are found, or how it is counted on.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(in_listing(PairFound(6, 6, (5,))))
    '5 does not go into 36. 6 times 6 is 36.'
    """
    match reason:
        case PairFound(first, second, skipped):
            made = told(bare(first), "times", bare(second), "is", bare(reason.number))
            return _skipped(skipped, reason.number) + made
        case AllPairsFound(_, skipped, number):
            turned = told("all that come next are the same pairs turned round", Seam(", so"), "these are all")
            return _skipped(skipped, number) + turned
        case CountedOnBy(step, most, beyond):
            on = told("count on by", bare(step), "up to", bare(most))
            return on + told("the next one is", bare(beyond), Seam(", and"), "that is too many")
        case _:
            assert_never(reason)


def _skipped(skipped: tuple[int, ...], number: int) -> Sentences:
    if not skipped:
        return ()
    if len(skipped) > NAMED:
        return told(
            "the numbers from", bare(skipped[0]), "to", bare(skipped[-1]), "do not go into", bare(number)
        )
    named: Nodes = listed([(bare(one),) for one in skipped])
    return told(named, "do not" if len(skipped) > 1 else "does not", "go into", bare(number))
