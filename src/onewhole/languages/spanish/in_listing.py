"""How factors and multiples are found, and what is prime, in Spanish."""

from typing import assert_never

from onewhole.languages.spanish.making import Nodes, bare, listed, told
from onewhole.sentences.node import Seam
from onewhole.sentences.sentence import Sentences
from onewhole.working.reasons.listing import (
    AllPairsFound,
    CountedOnBy,
    CountingMeets,
    FactorTried,
    InListing,
    NoOtherFactor,
    OneFactorOnly,
    OtherFactor,
    PairFound,
)

#: More numbers than these are not said one by one.
NAMED = 4
#: The first number that is tried as a factor.
SMALLEST = 2


def in_listing(reason: InListing) -> Sentences:
    """Say which pair makes the number, how it is counted on, or what goes into it.

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
        case FactorTried():
            return _tried(reason)
        case OtherFactor(number, by):
            return told(bare(by), "es factor de", bare(number), "además de", bare(1), "y del mismo número")
        case NoOtherFactor(number, beyond):
            square = told(bare(beyond), "por", bare(beyond), "es más que", bare(number))
            larger = told("un factor mayor va con un factor menor", Seam(", y"), "esos ya los probamos")
            larger = larger if beyond > SMALLEST else ()
            return square + larger + told("los únicos factores son", bare(1), "y", bare(number))
        case OneFactorOnly():
            return told("el único factor de", bare(1), "es", bare(1)) + told("un primo tiene dos factores")
        case CountingMeets(number, step):
            goes = "pasamos de" if reason.left else "llegamos a"
            return told("si contamos de", bare(step), "en", bare(step), Seam(","), goes, bare(number))
        case _:
            assert_never(reason)


def _tried(reason: FactorTried) -> Sentences:
    passed: Sentences = ()
    if reason.skipped:
        named = listed([(bare(one),) for one in reason.skipped])
        passed = told("saltamos", named, Seam(":"), "ya probamos factores menores")
    made: Nodes = (bare(reason.by), "por", bare(reason.times), "es", bare(reason.by * reason.times))
    left = ("sobra" if reason.left == 1 else "sobran", bare(reason.left))
    return passed + (told(made, Seam(", y"), left) if reason.left else told(made))


def _skipped(skipped: tuple[int, ...], number: int) -> Sentences:
    if not skipped:
        return ()
    if len(skipped) > NAMED:
        ends = ("los números de", bare(skipped[0]), "a", bare(skipped[-1]))
        return told(ends, "no caben justo en", bare(number))
    named: Nodes = listed([(bare(one),) for one in skipped])
    return told(named, "no caben" if len(skipped) > 1 else "no cabe", "justo en", bare(number))
