"""What stands on a line, in Spanish, and what is done at it where its reason was given before."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.spanish.jumping import JUMP
from onewhole.languages.spanish.making import Nodes, a_single, listed, regroups, some, the, told, units
from onewhole.languages.spanish.problem_told import groups_told
from onewhole.languages.spanish.rows_told import row_told
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Label, Node, Said, Seam
from onewhole.sentences.sentence import Sentences
from onewhole.statements.asked_in_words import AskedInWords
from onewhole.statements.expression import Expression
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import Comparison, MissingNumber, NumberRow, Ordering
from onewhole.statements.whole_groups import WholeGroups
from onewhole.working.line import LineContent
from onewhole.working.reason import Reason
from onewhole.working.reasons.columns import (
    ColumnAdded,
    ColumnOpened,
    ColumnTaken,
    DigitBroughtDown,
    DigitMultiplied,
    DigitsLaid,
    DivisionEnds,
    ProductPoint,
    QuotientDigit,
    ZerosWritten,
)
from onewhole.working.reasons.comparing import Comparing
from onewhole.working.reasons.dividing import (
    DigitsRunOn,
    DividedIsFraction,
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
from onewhole.working.reasons.jumping import (
    CountedUp,
    EasierToTake,
    GivenToMakeOne,
    JumpedTo,
    JumpedToWhole,
    JumpedWholes,
    JumpLengths,
    SameToBoth,
    WholeAndRest,
)
from onewhole.working.reasons.listing import InListing
from onewhole.working.reasons.multiplying import (
    EachUnitTimes,
    EqualParts,
    KnownProduct,
    OneFractionEach,
    PartsMultiplied,
    PlacesMultiplied,
    SharesTaken,
    SplitToMultiply,
    TopsAndBottoms,
    TurnedRound,
    UnitsTimes,
    UnitTimes,
)
from onewhole.working.reasons.ordering import InOrdering
from onewhole.working.reasons.plotting import InPlot
from onewhole.working.reasons.regrouping import (
    AreWorth,
    FullGroups,
    MakesLarger,
    OneIsWorth,
    OpensOne,
    OpensToMatch,
    PutTogether,
    WrittenTogether,
)
from onewhole.working.reasons.renaming import (
    AllInPieces,
    CutAgain,
    EachIsWhole,
    FewestPieces,
    LastPlaceNames,
    NothingOf,
    OverOne,
    PiecesJoined,
    PointPlaces,
    RenamedSameAmount,
    SamePlaces,
    SameSizePieces,
    SimplestAlready,
    WholesInPieces,
)
from onewhole.working.reasons.rounding import InRounding
from onewhole.working.reasons.stepping import BarDivides, StepBegins, StepDone, TimesEachPart
from onewhole.working.reasons.taking import (
    AddedUnitByUnit,
    InAll,
    LargerUnitFirst,
    Left,
    OpenedToTake,
    PiecesAdded,
    PiecesTaken,
    SetAside,
    SoFar,
    TakenFromWhole,
    TakenUnitByUnit,
    UnitsTaken,
)


def stands_told(says: LineContent) -> tuple[Sentences, ...]:
    """Say what stands on a line, in more than one wording.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_expression
    >>> text_of(stands_told(read_expression("6 8/6 - 3 5/6"))[0])
    'Eso es 6 8/6 - 3 5/6.'
    """
    line = Said(says)
    match says:
        case MissingNumber():
            return (told("ahora", "dice", line), told("ahora", "tenemos", line))
        case Comparison(left, right, None):
            return (
                told("ahora", "comparamos", Said(left), "con", Said(right)),
                told("por eso", "miramos", Said(left), "y también", Said(right)),
            )
        case Rounding(gives=None, between=None):
            return (told("ahora", line),)
        case Rounding(gives=None):
            return ()
        case NumberRow(signs=()):
            row = row_told(says)
            return (told("ahora", "dice", row), told("ahora", "tenemos", row))
        case NumberRow():
            return (told("por eso", "el orden es", row_told(says)),)
        case Comparison() | Rounding() | FactorQuestion(gives=WordAnswer()):
            return (told("por eso", line),)
        case WholeGroups(gives=Quantity() as gives):
            return (told("por eso", groups_told(says, gives)),)
        case Ordering() | AskedInWords():
            return ()
        case _:
            return (
                told("eso", "es", line),
                told("ahora", "es", line),
                told("por eso", "ahora tenemos", line),
            )


def parts_stand_told(parts: tuple[Expression, ...]) -> tuple[Sentences, ...]:
    """Say what stands on a line that is worked in parts: first one, then the other."""
    told_parts: list[Node] = [Said(parts[0])]
    for part in parts[1:]:
        told_parts += [", luego", Said(part)]
    return (told("primero", tuple(told_parts)), told("eso", "es", tuple(told_parts)))


def deed_told(reason: Reason | None, words: ClassWords) -> Nodes | None:
    """Say what is done at a line, as a part of a sentence; None where only its reason tells it.

    It is said when a problem points back to one like it: no reason, which was given before.
    """
    if reason is None or isinstance(reason, Comparing | InRounding | InOrdering | InListing | InPlot):
        return None
    match reason:
        case OpensOne(large=large):
            return regroups(words, a_single(large, words))
        case OpenedToTake(opened=opened):
            return regroups(words, a_single(opened.ladder.units[-2], words))
        case TakenUnitByUnit(taken):
            return ("quitamos", *_names(taken, words)) if taken else None
        case AddedUnitByUnit(added):
            return ("sumamos", *_names(added, words)) if added else None
        case PiecesTaken(small, _, count):
            return ("quitamos", some(count, small))
        case PiecesAdded(small, _, count):
            return ("sumamos", some(count, small))
        case LargerUnitFirst(unit):
            return ("primero quitamos", *the(unit, words))
        case FullGroups(small=small):
            return ("juntamos grupos completos de", units(small))
        case SetAside(pieces=pieces):
            return ("apartamos", Said(pieces))
        case CountedUp(start, end):
            return ("contamos desde", Said(start), "hasta", Said(end))
        case JumpedWholes(start, wholes):
            return ("empezamos en", Said(start), "y saltamos", Said(wholes))
        case JumpedToWhole(by=by):
            return ("saltamos", Said(by))
        case GivenToMakeOne(first, by):
            return ("le damos", Said(by), "a", Said(first))
        case SameToBoth(by):
            return ("sumamos", Said(by), "a los dos números")
        case WholesInPieces(small=small):
            return ("contamos todo en", units(small))
        case PiecesJoined(small, large):
            return ("juntamos", *the(small), "en", units(large))
        case PointPlaces() | LastPlaceNames() | SimplestAlready() | NothingOf() | EachIsWhole():
            return None
        case CutAgain(small):
            return ("cortamos las partes otra vez en", units(small))
        case DigitsLaid() | DigitMultiplied() | ZerosWritten() | ProductPoint():
            return ("multiplicamos cifra por cifra", Seam(","), "de derecha a izquierda")
        case QuotientDigit() | DigitBroughtDown() | DivisionEnds():
            return ("dividimos cifra por cifra", Seam(","), "de izquierda a derecha")
        case ColumnOpened() | ColumnTaken() | ColumnAdded():
            return ("trabajamos en columnas", Seam(","), "de derecha a izquierda")
        case OpensToMatch() | OneIsWorth() | AreWorth() | PutTogether() | MakesLarger() | WrittenTogether():
            return None
        case UnitsTaken() | Left() | InAll() | SoFar() | TakenFromWhole():
            return None
        case JumpLengths() | JumpedTo() | WholeAndRest() | EasierToTake():
            return None
        case (
            AllInPieces() | SameSizePieces() | SamePlaces() | RenamedSameAmount() | FewestPieces() | OverOne()
        ):
            return None
        case SplitToMultiply(splits):
            return ("separamos", *listed([(Said(number),) for number, _ in splits]))
        case EachUnitTimes(_, taken):
            return ("multiplicamos", *_names(taken, words))
        case TopsAndBottoms():
            return ("multiplicamos numeradores y denominadores",)
        case OneFractionEach():
            return ("escribimos fracciones",)
        case EqualParts(times):
            return ("damos", Counted(times, JUMP))
        case TurnedRound() | KnownProduct() | PlacesMultiplied() | SharesTaken():
            return None
        case UnitTimes() | UnitsTimes() | PartsMultiplied():
            return None
        case SharedOut(unit):
            return ("repartimos", *the(unit, words if reason.named else None))
        case LeftRegrouped(large):
            return regroups(words, (*the(large, words if reason.named else None), "que sobran"))
        case PiecesCut(unit):
            return ("cortamos", *the(unit))
        case GroupsTaken():
            return ("sacamos grupos",)
        case InOneUnit(_, unit):
            return ("contamos en", units(unit))
        case LeftSharedToo():
            return ("repartimos también lo que sobra",)
        case LeftOver() | KnownQuotient() | EachWholeCut() | GroupsOfUnits():
            return None
        case DividedIsFraction() | DigitsRunOn() | GroupsOf() | GroupsAnswered():
            return None
        case StepDone() | StepBegins() | BarDivides() | TimesEachPart():
            return None
        case _:
            assert_never(reason)


def done_as_before(deed: Nodes, label: str) -> tuple[Sentences, ...]:
    """Point back to the problem in which the same was done and explained."""
    return (
        told("como en el problema", Label(label), ",", deed),
        told("igual que en el problema", Label(label), Seam(":"), deed),
    )


def done_told(deed: Nodes) -> Sentences:
    """Say what is done, as a sentence of its own."""
    return told(deed)


def then_done(deed: Nodes) -> Sentences:
    """Say what is done next, after something else was done."""
    return told("luego", deed)


def _names(named: tuple[Unit, ...], words: ClassWords) -> Nodes:
    """Name units one after another; the largest of several may be the class's wholes."""
    return listed(
        [the(unit, words if not at and len(named) > 1 else None) for at, unit in enumerate(named)], "y luego"
    )
