"""Sharing out, measuring out in groups, and what is left over, in Spanish."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.making import (
    SO,
    amount,
    bare,
    listed,
    some,
    the,
    told,
    units,
    verb,
)
from onewhole.number.unit import ONE, Unit
from onewhole.sentences.node import Counted, Naming, Said, Seam, Thing
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
GROUP, EQUAL_PART = Thing("grupo", "grupos"), Thing("parte igual", "partes iguales", feminine=True)


def dividing(reason: Dividing, words: ClassWords) -> Sentences:
    """Say what is shared out, what is left, and what becomes of it.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.number.ladder import places
    >>> text_of(dividing(SharedOut(places(2).units[0], 5, 4, 1, 1, named=False), ClassWords()))
    'Repartimos 5 decenas entre 4. A cada uno le toca 1 decena. Sobra 1 decena.'
    """
    match reason:
        case SharedOut():
            return _shared(reason, words)
        case LeftRegrouped(large, small, count, made, now, few, named):
            called = words if named else None
            worth = told(some(count, large, called), _are(made), some(made, small))
            if now > made:
                worth += told("con", the(small), "que ya hay", _are(now), some(now, small))
            if few is None:
                return worth
            lacking = "no alcanza" if count == 1 else "no alcanzan"
            return told(some(count, large, called), lacking, "para repartir entre", bare(few)) + worth
        case PiecesCut(unit, finer, count, into):
            cut = told("cortamos cada", Naming(unit, many=False), "en", Counted(into, EQUAL_PART))
            return cut + told(some(count, unit), _are(count * into), some(count * into, finer))
        case LeftOver(left, by):
            over = (verb("sobra", "sobran", left), amount(left, words), Seam(", y"))
            alike = (left.kind, left.ladder.mark) == (by.kind, by.ladder.mark)
            return told(*over, "es menos que" if alike else "no alcanza para repartir entre", Said(by))
        case LeftSharedToo(left, by):
            part = some(left, Unit(ONE.size / by))
            cut = told("cortamos cada entero de", bare(left), "que sobran en", Counted(by, EQUAL_PART))
            return cut + told("a cada uno le", verb_of(left), part, "más")
        case GroupsTaken(groups, by, taken, left):
            out = told(Counted(groups, GROUP), "de", bare(by), _are(taken), bare(taken))
            return out + (told("sobra" if left == 1 else "sobran", bare(left)) if left else ())
        case KnownQuotient(by, quotient):
            product = by * quotient
            fact = (bare(by), "por", bare(quotient), "es", bare(product))
            return told(fact, SO, bare(product), "entre", bare(by), "es", bare(quotient))
        case EachWholeCut(wholes, by):
            cut = told("cortamos", some(wholes, ONE, words), "en", Counted(by, EQUAL_PART), "cada vez")
            part = some(wholes, Unit(ONE.size / by))
            return cut + told("una parte de cada vez", "da", part)
        case InOneUnit(counted, unit):
            same = [(Said(old), "son" if count > 1 else "es", some(count, unit)) for old, count in counted]
            return told("contamos en", units(unit)) + told(listed(same))
        case GroupsOfUnits(have, group, unit):
            return told("medimos grupos de", some(group, unit), "en", some(have, unit))
        case DividedIsFraction(number, by):
            return told(bare(number), "entre", bare(by), "es", some(number, Unit(ONE.size / by)))
        case DigitsRunOn(number, written):
            return told(
                "las cifras no terminarían nunca", SO, "escribimos", Said(number), "como", Said(written)
            )
        case GroupsOf(number, by):
            return told("dividimos para saber cuántos grupos de", bare(by), "hay en", bare(number))
        case GroupsAnswered():
            return _in_groups(reason)
        case _:
            assert_never(reason)


def _in_groups(reason: GroupsAnswered) -> Sentences:
    """Say what is asked, seen from the full groups and what is left over."""
    is_full = "está completo" if reason.full == 1 else "están completos"
    full = told(Counted(reason.full, GROUP), is_full)
    if not reason.left:
        return told("no sobra nada") + full
    over = told("sobra" if reason.left == 1 else "sobran", bare(reason.left))
    match reason.asks:
        case GroupsAsk.NEEDED:
            more = told("para eso hace falta un grupo más")
            return over + more + told("uno más que", bare(reason.full), "es", bare(reason.full + 1))
        case GroupsAsk.FULL:
            return over + told("con eso no se completa un grupo") + full
        case GroupsAsk.LEFT:
            return full + over
        case _:
            assert_never(reason.asks)


def _shared(reason: SharedOut, words: ClassWords) -> Sentences:
    """Say what each share gets of a unit, and what is left of it."""
    named = words if reason.named else None
    have, each = some(reason.have, reason.unit, named), some(reason.each, reason.unit, named)
    shared = told("repartimos", have, "entre", bare(reason.by))
    shared += told("a cada uno le", verb_of(reason.each), each)
    if not reason.left:
        return shared
    return shared + told("sobra" if reason.left == 1 else "sobran", some(reason.left, reason.unit, named))


def verb_of(count: int) -> str:
    """Choose the verb that agrees with what each share gets: le toca 1, le tocan 3."""
    return "toca" if count == 1 else "tocan"


def _are(count: int) -> str:
    return "es" if count == 1 else "son"
