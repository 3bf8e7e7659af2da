"""Sharing out, measuring out in groups, and what is left over."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.making import (
    amount,
    bare,
    listed,
    one_of,
    single,
    some,
    told,
    units,
)
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Said, Seam, Thing
from onewhole.sentences.sentence import Sentences
from onewhole.statements.whole_groups import GroupsAsk
from onewhole.working.reasons.dividing import (
    DigitsRunOn,
    DividedIsFraction,
    Dividing,
    EachWholeCut,
    GroupsAnswered,
    GroupsOf,
    GroupsOfUnits,
    GroupsTaken,
    InOneUnit,
    KnownQuotient,
    LeftOver,
    LeftRegrouped,
    LeftSharedToo,
    PiecesCut,
    SharedOut,
)

#: How often a number is taken out, and what something is cut into.
GROUP, EQUAL_PART = Thing("group", "groups"), Thing("equal part", "equal parts")


def dividing(reason: Dividing, words: ClassWords) -> Sentences:
    """Say what is shared out, what is left, and what becomes of it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import places
    >>> text_of(dividing(SharedOut(places(2).units[0], 5, 4, 1, 1, named=False), ClassWords()))
    'Share 5 tens among 4. Each gets 1 ten. 1 ten is left.'
    """
    match reason:
        case SharedOut():
            return _shared(reason, words)
        case LeftRegrouped(large, small, count, made, now, few, named):
            called = words if named else None
            worth = told(some(count, large, called), _are(count), some(made, small))
            if now > made:
                worth += told("with the", some(now - made, small), "that is", some(now, small))
            if few is None:
                return worth
            short = (some(count, large, called), _are(count), "not enough to share among", bare(few))
            return told(short) + worth
        case PiecesCut(unit, finer, count, into):
            cut = told("cut each", one_of(unit), "into", Counted(into, EQUAL_PART))
            return cut + told(some(count, unit), _are(count), some(count * into, finer))
        case LeftOver(left, by):
            over = (amount(left, words), "is" if single(left) else "are", "left over", Seam(", and"))
            alike = (left.kind, left.ladder.mark) == (by.kind, by.ladder.mark)
            return told(
                *over, "that is less than" if alike else "that is not enough to share among", Said(by)
            )
        case LeftSharedToo(left, by):
            cut = told("cut each of the", bare(left), "that are left into", Counted(by, EQUAL_PART))
            return cut + told("each share gets", some(left, Unit(ONE.size / by)), "more")
        case GroupsTaken(groups, by, taken, left):
            out = told(Counted(groups, GROUP), "of", bare(by), _are(groups), bare(taken))
            return out + (told(bare(left), "is left") if left else ())
        case KnownQuotient(by, quotient):
            product = by * quotient
            fact = (bare(by), "times", bare(quotient), "is", bare(product))
            return told(fact, Seam(", so", "so"), bare(product), "divided by", bare(by), "is", bare(quotient))
        case EachWholeCut(wholes, by):
            cut = told("cut", some(wholes, ONE, words), "into", Counted(by, EQUAL_PART), "each")
            return cut + told("one part of each makes", some(wholes, Unit(ONE.size / by)))
        case InOneUnit(counted, unit):
            same = [(Said(old), "is", some(count, unit)) for old, count in counted]
            return told("count in", units(unit)) + told(listed(same))
        case GroupsOfUnits(have, group, unit):
            return told("measure groups of", some(group, unit), "out of", some(have, unit))
        case DividedIsFraction(number, by):
            return told(bare(number), "divided by", bare(by), "is", some(number, Unit(ONE.size / by)))
        case DigitsRunOn(number, written):
            return told(
                "the digits would never end", Seam(", so", "so"), "write", Said(number), "as", Said(written)
            )
        case GroupsOf(number, by):
            return told("divide to find how many groups of", bare(by), "are in", bare(number))
        case GroupsAnswered():
            return _in_groups(reason)
        case _:
            assert_never(reason)


def _in_groups(reason: GroupsAnswered) -> Sentences:
    """Say what is asked, seen from the full groups and what is left over."""
    full = told(Counted(reason.full, GROUP), _are(reason.full), "full")
    if not reason.left:
        return told("nothing is left over") + full
    match reason.asks:
        case GroupsAsk.NEEDED:
            needs = "needs" if reason.left == 1 else "need"
            more = told("the", bare(reason.left), "left over", needs, "a group too")
            return more + told("one more than", bare(reason.full), "is", bare(reason.full + 1))
        case GroupsAsk.FULL:
            does = "does" if reason.left == 1 else "do"
            return told("the", bare(reason.left), "left over", does, "not fill a group") + full
        case GroupsAsk.LEFT:
            return full + told(bare(reason.left), _are(reason.left), "in no full group")
        case _:
            assert_never(reason.asks)


def _shared(reason: SharedOut, words: ClassWords) -> Sentences:
    """Say what each share gets of a unit, and what is left of it."""
    named = words if reason.named else None
    have, each = some(reason.have, reason.unit, named), some(reason.each, reason.unit, named)
    shared = told("share", have, "among", bare(reason.by)) + told("each gets", each)
    if not reason.left:
        return shared
    return shared + told(some(reason.left, reason.unit, named), _are(reason.left), "left")


def _are(count: int) -> str:
    return "is" if count == 1 else "are"
