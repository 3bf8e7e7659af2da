"""A problem read out, and its answer said once more, in more than one wording."""

from typing import assert_never

from msgspec.structs import replace

from onewhole.languages.english.dividing import GROUP
from onewhole.languages.english.making import Nodes, told
from onewhole.languages.english.rows_told import row_told
from onewhole.languages.english.words import TAG
from onewhole.number.name_wanted import NumberForm
from onewhole.number.quantity import Quantity
from onewhole.sentences.node import Counted, Label, Said, Seam
from onewhole.sentences.sentence import End, Sentences
from onewhole.sentences.typed import typed_sentences
from onewhole.statements.expression import WithRemainder
from onewhole.statements.factor_question import FactorQuestion, WordAnswer
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.rounding import Rounding
from onewhole.statements.statement import (
    AnotherName,
    Comparison,
    MissingNumber,
    NumberRow,
    Ordering,
    Question,
    Relation,
    RightAnswer,
    Statement,
)
from onewhole.statements.whole_groups import GroupsAsk, WholeGroups

RELATIONS = {
    Relation.LESS: "is less than",
    Relation.EQUAL: "is the same amount as",
    Relation.GREATER: "is greater than",
}


def asked_told(label: str, statement: Statement, story: str, at: int) -> Sentences:
    """Say a problem's label, its story and what it asks for; ``at`` chooses the wording.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_statement
    >>> text_of(asked_told("3b", read_statement("5/6 ? 7/8"), "", 0))
    'Number 3b. Which is more, 5/6 or 7/8?'
    """
    number: Nodes = ("number", Label(label))
    if isinstance(statement, Question) and not story:
        return told(number, Seam(":") if at % 2 else Seam("is"), Said(statement))
    begun = told(number) + typed_sentences(story, TAG)
    match statement:
        case Question():
            return begun + told("we work out", Said(statement))
        case Comparison(left, right):
            return begun + told("which is more", ",", Said(left), "or", Said(right), end=End.ASKS)
        case Ordering(parts, falling):
            ends = "from greatest to least" if falling else "from least to greatest"
            return begun + told("put these in order", Seam(","), ends, Seam(":"), row_told(NumberRow(parts)))
        case MissingNumber():
            return begun + told("find the number for the blank", Seam(":"), Said(statement))
        case AnotherName(wanted=NumberForm()):
            return begun + told("write", Said(statement))
        case AnotherName():
            return begun + told("write it in other units", Seam(":"), Said(statement))
        case Listing():
            return begun + told("list the", Said(statement))
        case FactorQuestion():
            one, *of = statement.numbers
            called = "a factor of" if statement.of_factor else "a multiple of"
            asks: Nodes = (called, Said(of[0])) if of else ("prime or composite",)
            return begun + told("is", Said(one), asks, end=End.ASKS)
        case PlotQuestion():
            return begun + told("look at the line plot") + told(Said(statement))
        case WholeGroups():
            return begun + _groups_asked(statement)
        case Rounding():
            return begun + told(Said(statement))
        case _:
            assert_never(statement)


def _groups_asked(asks: WholeGroups) -> Sentences:
    """Ask what is asked of things in groups."""
    number, by = Said(asks.number), Said(asks.by)
    match asks.asks:
        case GroupsAsk.NEEDED:
            return told("how many groups of", by, "are needed for", number, end=End.ASKS)
        case GroupsAsk.FULL:
            return told("how many full groups of", by, "are in", number, end=End.ASKS)
        case GroupsAsk.LEFT:
            return told("how many of", number, "are left over in groups of", by, end=End.ASKS)
        case _:
            assert_never(asks.asks)


def groups_told(asks: WholeGroups, found: Quantity) -> Nodes:
    """Say what is asked of things in groups with a number that answers, as a part of a sentence."""
    are = "is" if found.parts == 1 else "are"
    match asks.asks:
        case GroupsAsk.NEEDED:
            return (Counted(found.parts, GROUP), are, "needed")
        case GroupsAsk.FULL:
            return (Counted(found.parts, GROUP), are, "full")
        case GroupsAsk.LEFT:
            return (Said(found), are, "left over")
        case _:
            assert_never(asks.asks)


def outcome_told(statement: Statement, answer: RightAnswer) -> Nodes:
    """Say a problem with its answer: a true statement, as a part of a sentence."""
    match statement, answer:
        case AnotherName(number), Quantity() as found if number == found:
            return (Said(found), "stays as it is")
        case Question(asked) | AnotherName(asked), (Quantity() | WithRemainder()) as found:
            return (Said(Comparison(asked, found, Relation.EQUAL)),)
        case Ordering(), NumberRow() as row:
            return ("the order is", *row_told(row))
        case Comparison(left, right), Relation() as sign:
            return (Said(left), RELATIONS[sign], Said(right))
        case Listing(), NumberRow() as row:
            return ("they are", *row_told(row))
        case Rounding(), Quantity() as found:
            return (Said(replace(statement, gives=found)),)
        case FactorQuestion(), WordAnswer() as word:
            return (Said(statement.answered(word)),)
        case WholeGroups(), Quantity() as found:
            return groups_told(statement, found)
        case PlotQuestion(), Quantity() as found:
            return ("the answer is", Said(found))
        case _, Quantity() as found:
            return ("the missing number is", Said(found))
        case _:
            msg = "only a comparison is answered by a sign"
            raise ValueError(msg)


def answers_told(label: str, statement: Statement, answer: RightAnswer) -> tuple[Sentences, ...]:
    """Say the answer once more, in more than one wording."""
    whole = outcome_told(statement, answer)
    if not isinstance(answer, Quantity) or isinstance(statement, MissingNumber | PlotQuestion | Rounding):
        return (told("so", whole), told("in number", Label(label), ",", whole))
    return (
        told("so", whole),
        told("the answer to number", Label(label), "is", Said(answer)),
        told("so", "number", Label(label), "comes to", Said(answer)),
    )
