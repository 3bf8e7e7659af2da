"""How factors and multiples are found, and what is prime."""

from typing import assert_never

from onewhole.languages.english.making import Nodes, bare, listed, told
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
        case FactorTried():
            return _tried(reason)
        case OtherFactor(number, by):
            return told(bare(by), "is a factor of", bare(number), "besides", bare(1), "and the number itself")
        case NoOtherFactor(number, beyond):
            square = told(bare(beyond), "times", bare(beyond), "is more than", bare(number))
            larger = told("a larger factor would go with a smaller factor", Seam(", and"), "those are tried")
            larger = larger if beyond > SMALLEST else ()
            return square + larger + told("so the only factors are", bare(1), "and", bare(number))
        case OneFactorOnly():
            return told("the only factor of", bare(1), "is", bare(1)) + told("a prime number has two factors")
        case CountingMeets(number, step):
            goes = "jumps over" if reason.left else "comes to"
            return told("counting by", bare(step), goes, bare(number))
        case _:
            assert_never(reason)


def _tried(reason: FactorTried) -> Sentences:
    passed: Sentences = ()
    if reason.skipped:
        named = listed([(bare(one),) for one in reason.skipped])
        passed = told("skip", named, Seam(":"), "smaller factors are tried")
    made: Nodes = (bare(reason.by), "times", bare(reason.times), "is", bare(reason.by * reason.times))
    return passed + (told(made, Seam(", and"), bare(reason.left), "is left") if reason.left else told(made))


def _skipped(skipped: tuple[int, ...], number: int) -> Sentences:
    if not skipped:
        return ()
    if len(skipped) > NAMED:
        return told(
            "the numbers from", bare(skipped[0]), "to", bare(skipped[-1]), "do not go into", bare(number)
        )
    named: Nodes = listed([(bare(one),) for one in skipped])
    return told(named, "do not" if len(skipped) > 1 else "does not", "go into", bare(number))
