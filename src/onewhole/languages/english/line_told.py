"""What stands on a line, and what is done at it where its reason was given before."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.english.jumping import JUMP
from onewhole.languages.english.making import Nodes, a_single, listed, some, told, units
from onewhole.languages.english.problem_told import groups_told
from onewhole.languages.english.rows_told import row_told
from onewhole.number.quantity import Quantity
from onewhole.number.unit import Unit
from onewhole.sentences.node import Counted, Label, Node, Said, Seam, Typed
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
    'That is 6 8/6 - 3 5/6.'
    """
    line = Said(says)
    match says:
        case MissingNumber():
            return (told("now", "it says", line), told("now", "we have", line))
        case Comparison(left, right, None):
            return (
                told("now", "compare", Said(left), "with", Said(right)),
                told("so", "look at", Said(left), "and at", Said(right)),
            )
        case Rounding(gives=None, between=None):
            return (told("now", line),)
        case Rounding(gives=None):
            return ()
        case NumberRow(signs=()):
            row = row_told(says)
            return (told("now", "it says", row), told("now", "we have", row))
        case NumberRow():
            return (told("so", "the order is", row_told(says)),)
        case Comparison() | Rounding() | FactorQuestion(gives=WordAnswer()):
            return (told("so", line),)
        case WholeGroups(gives=Quantity() as gives):
            return (told("so", groups_told(says, gives)),)
        case Ordering() | AskedInWords():
            return ()
        case _:
            return (told("that", "is", line), told("now", "it is", line), told("so", "now we have", line))


def parts_stand_told(parts: tuple[Expression, ...]) -> tuple[Sentences, ...]:
    """Say what stands on a line that is worked in parts: first one, then the other."""
    listed: list[Node] = [Said(parts[0])]
    for part in parts[1:]:
        listed += [", then", Said(part)]
    return (told("first", tuple(listed)), told("that", "is", tuple(listed)))


def deed_told(reason: Reason | None, words: ClassWords) -> Nodes | None:
    """Say what is done at a line, as a part of a sentence; None where only its reason tells it.

    It is said when a problem points back to one like it: no reason, which was given before.
    """
    if reason is None or isinstance(reason, Comparing | InRounding | InOrdering | InListing | InPlot):
        return None
    match reason:
        case OpensOne(large=large):
            return (Typed(words.regroup), a_single(large, words))
        case OpenedToTake(opened=opened):
            return (Typed(words.regroup), a_single(opened.ladder.units[-2], words))
        case TakenUnitByUnit(taken):
            return ("take the", *_names(taken, words)) if taken else None
        case AddedUnitByUnit(added):
            return ("add the", *_names(added, words)) if added else None
        case PiecesTaken(small, _, count):
            return ("take", some(count, small))
        case PiecesAdded(small, _, count):
            return ("add", some(count, small))
        case LargerUnitFirst(unit):
            return ("take the", units(unit, words), "first")
        case FullGroups(small=small):
            return ("put full groups of", units(small), "together")
        case SetAside(pieces=pieces):
            return ("set", Said(pieces), "aside")
        case CountedUp(start, end):
            return ("count up from", Said(start), "to", Said(end))
        case JumpedWholes(start, wholes):
            return ("start at", Said(start), "and jump on by", Said(wholes))
        case JumpedToWhole(by=by):
            return ("jump on by", Said(by))
        case GivenToMakeOne(first, by):
            return ("give", Said(by), "to", Said(first))
        case SameToBoth(by):
            return ("add", Said(by), "to both numbers")
        case WholesInPieces(small=small):
            return ("count everything in", units(small))
        case PiecesJoined(small, large):
            return ("put the", units(small), "together into", units(large))
        case PointPlaces() | LastPlaceNames() | SimplestAlready() | NothingOf() | EachIsWhole():
            return None
        case CutAgain(small):
            return ("cut the pieces again into", units(small))
        case DigitsLaid() | DigitMultiplied() | ZerosWritten() | ProductPoint():
            return ("multiply digit by digit", Seam(","), "from right to left")
        case QuotientDigit() | DigitBroughtDown() | DivisionEnds():
            return ("divide digit by digit", Seam(","), "from left to right")
        case ColumnOpened() | ColumnTaken() | ColumnAdded():
            return ("work in columns", Seam(","), "from right to left")
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
            return ("split", *listed([(Said(number),) for number, _ in splits]))
        case EachUnitTimes(_, taken):
            return ("take the", *_names(taken, words), "so many times")
        case TopsAndBottoms():
            return ("multiply numerators and denominators",)
        case OneFractionEach():
            return ("write fractions",)
        case EqualParts(times):
            return ("go in", Counted(times, JUMP))
        case (
            TurnedRound()
            | UnitTimes()
            | UnitsTimes()
            | PartsMultiplied()
            | KnownProduct()
            | PlacesMultiplied()
            | SharesTaken()
        ):
            return None
        case SharedOut(unit):
            return ("share the", units(unit, words if reason.named else None), "out")
        case LeftRegrouped(large):
            return (
                Typed(words.regroup),
                "the",
                units(large, words if reason.named else None),
                "that are left",
            )
        case PiecesCut(unit):
            return ("cut the", units(unit))
        case GroupsTaken():
            return ("take groups out",)
        case InOneUnit(_, unit):
            return ("count in", units(unit))
        case LeftSharedToo():
            return ("share what is left too",)
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
        told("as in number", Label(label), ",", deed),
        told("do it as in number", Label(label), Seam(":"), deed),
    )


def done_told(deed: Nodes) -> Sentences:
    """Say what is done, as a sentence of its own."""
    return told(deed)


def then_done(deed: Nodes) -> Sentences:
    """Say what is done next, after something else was done."""
    return told("then", deed)


def _names(named: tuple[Unit, ...], words: ClassWords) -> Nodes:
    """Name units one after another; the largest of several may be the class's wholes."""
    nodes: list[Node] = [units(named[0], words if len(named) > 1 else None)]
    for unit in named[1:]:
        nodes += [", then the", units(unit)]
    return tuple(nodes)
