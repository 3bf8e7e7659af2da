"""How every factor or multiple is found, in Spanish."""

from typing import assert_never

from onewhole.languages.spanish.making import Nodes, bare, listed, told
from onewhole.sentences.node import Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.listing import AllPairsFound, CountedOnBy, InListing, PairFound

#: More numbers than these are not said one by one.
NAMED = 4


def in_listing(reason: InListing) -> Sentences:
    """Say which pair makes the number, that all are found, or how it is counted on.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(in_listing(PairFound(6, 6, (5,))))
    '5 no cabe justo en 36. 6 por 6 es 36.'
    """
    match reason:
        case PairFound(first, second, skipped):
            made = told(bare(first), "por", bare(second), "es", bare(reason.number))
            return _skipped(skipped, reason.number) + made
        case AllPairsFound(_, skipped, number):
            turned = told("las parejas que siguen son las mismas al revés", Seam(", así que"), "son todas")
            return _skipped(skipped, number) + turned
        case CountedOnBy(step, most, beyond):
            on = told("contamos de", bare(step), "en", bare(step), "hasta", bare(most))
            return on + told("el siguiente es", bare(beyond), Seam(", y"), "ya se pasa")
        case _:
            assert_never(reason)


def _skipped(skipped: tuple[int, ...], number: int) -> Sentences:
    if not skipped:
        return ()
    if len(skipped) > NAMED:
        ends = ("los números de", bare(skipped[0]), "a", bare(skipped[-1]))
        return told(ends, "no caben justo en", bare(number))
    named: Nodes = listed([(bare(one),) for one in skipped])
    return told(named, "no caben" if len(skipped) > 1 else "no cabe", "justo en", bare(number))
