"""A problem read out in Spanish, and its answer said once more, in more than one wording."""

from typing import assert_never

from msgspec.structs import replace

from onewhole.languages.spanish.dividing import GROUP
from onewhole.languages.spanish.making import Nodes, told
from onewhole.languages.spanish.rows_told import row_told
from onewhole.languages.spanish.speech import say
from onewhole.languages.spanish.words import TAG
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
from onewhole.statements.writable import Writable

RELATIONS = {
    Relation.LESS: "es menor que",
    Relation.EQUAL: "es la misma cantidad que",
    Relation.GREATER: "es mayor que",
}


def asked_told(label: str, statement: Statement, story: str, at: int) -> Sentences:
    """Say a problem's label, its story and what it asks for; ``at`` chooses the wording.

    >>> from onewhole.notations.sentences.text import text_of
    >>> from onewhole.statements.reading import read_statement
    >>> text_of(asked_told("3b", read_statement("5/6 ? 8/9"), "", 0))
    'Problema 3b. ¿Cuál es mayor, 5/6 u 8/9?'
    """
    number: Nodes = ("problema", Label(label))
    if isinstance(statement, Question) and not story:
        before: Nodes = (*number, Seam(":")) if at % 2 else ("el", *number, Seam("es"))
        return told(before, Said(statement))
    begun = told(number) + typed_sentences(story, TAG)
    match statement:
        case Question():
            return begun + told("calculamos", Said(statement))
        case Comparison(left, right):
            which = ("cuál es mayor", ",", Said(left), or_before(right), Said(right))
            return begun + told(which, end=End.ASKS)
        case Ordering(parts, falling):
            ends = "de mayor a menor" if falling else "de menor a mayor"
            row = row_told(NumberRow(parts))
            return begun + told("ponemos estos en orden", Seam(","), ends, Seam(":"), row)
        case MissingNumber():
            return begun + told("buscamos el número del espacio en blanco", Seam(":"), Said(statement))
        case AnotherName(wanted=NumberForm()):
            return begun + told("escribimos", Said(statement))
        case AnotherName():
            return begun + told("lo escribimos en otras unidades", Seam(":"), Said(statement))
        case Listing():
            return begun + told("escribe los", Said(statement))
        case FactorQuestion():
            one, *of = statement.numbers
            called = "factor de" if statement.of_factor else "múltiplo de"
            asks: Nodes = (called, Said(of[0])) if of else ("primo o compuesto",)
            return begun + told("es", Said(one), asks, end=End.ASKS)
        case PlotQuestion():
            return begun + told("miramos el diagrama de puntos") + told(Said(statement))
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
            return told("cuántos grupos de", by, "hacen falta para", number, end=End.ASKS)
        case GroupsAsk.FULL:
            return told("cuántos grupos completos de", by, "hay en", number, end=End.ASKS)
        case GroupsAsk.LEFT:
            return told("cuántos de", number, "sobran en grupos de", by, end=End.ASKS)
        case _:
            assert_never(asks.asks)


def groups_told(asks: WholeGroups, found: Quantity) -> Nodes:
    """Say what is asked of things in groups with a number that answers, as a part of a sentence."""
    one = found.parts == 1
    match asks.asks:
        case GroupsAsk.NEEDED:
            return ("hace falta" if one else "hacen falta", Counted(found.parts, GROUP))
        case GroupsAsk.FULL:
            return (Counted(found.parts, GROUP), "está completo" if one else "están completos")
        case GroupsAsk.LEFT:
            return ("sobra" if one else "sobran", Said(found))
        case _:
            assert_never(asks.asks)


def or_before(thing: Writable) -> str:
    """Return the word for or, as it stands before something that is said: u before ocho and once.

    >>> from onewhole.statements.reading import read_quantity
    >>> or_before(read_quantity("8/9")), or_before(read_quantity("7/8"))
    ('u', 'o')
    """
    return "u" if say(thing).startswith("o") else "o"


def outcome_told(statement: Statement, answer: RightAnswer) -> Nodes:
    """Say a problem with its answer: a true statement, as a part of a sentence."""
    match statement, answer:
        case AnotherName(number), Quantity() as found if number == found:
            return (Said(found), "se queda como está")
        case Question(asked) | AnotherName(asked), (Quantity() | WithRemainder()) as found:
            return (Said(Comparison(asked, found, Relation.EQUAL)),)
        case Ordering(), NumberRow() as row:
            return ("el orden es", *row_told(row))
        case Comparison(left, right), Relation() as sign:
            return (Said(left), RELATIONS[sign], Said(right))
        case Listing(), NumberRow() as row:
            return ("son", *row_told(row))
        case Rounding(), Quantity() as found:
            return (Said(replace(statement, gives=found)),)
        case FactorQuestion(), WordAnswer() as word:
            return (Said(statement.answered(word)),)
        case WholeGroups(), Quantity() as found:
            return groups_told(statement, found)
        case PlotQuestion(), Quantity() as found:
            return ("la respuesta es", Said(found))
        case _, Quantity() as found:
            return ("el número que falta es", Said(found))
        case _:
            msg = "only a comparison is answered by a sign"
            raise ValueError(msg)


def answers_told(label: str, statement: Statement, answer: RightAnswer) -> tuple[Sentences, ...]:
    """Say the answer once more, in more than one wording."""
    whole = outcome_told(statement, answer)
    if not isinstance(answer, Quantity) or isinstance(statement, MissingNumber | PlotQuestion | Rounding):
        return (told("por eso", whole), told("en el problema", Label(label), ",", whole))
    return (
        told("por eso", whole),
        told("la respuesta del problema", Label(label), "es", Said(answer)),
        told("por eso", "el problema", Label(label), "da", Said(answer)),
    )
