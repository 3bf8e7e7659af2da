"""One problem as an item (`qti-assessment-item`).

Elements, attributes and their order are those of 1EdTech's Question and Test Interoperability 3.0 (final, 1
May 2022; read). Marking a fraction by its cross product is ours: the standard has no fractions.
"""

from collections.abc import Iterator
from html import escape
from typing import assert_never

from onewhole.notations.mathml import mathml
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.statement import Question, Relation
from onewhole.writers.questions.response import (
    FractionBoxes,
    NumberBox,
    Response,
    SignChoice,
    WrittenLine,
    response_to,
)

NAMESPACE = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0"
SCHEMA = "https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd"
TEMPLATES = "https://purl.imsglobal.org/spec/qti/v3p0/rptemplates"
#: The three boxes of a fraction, and the one of anything else.
WHOLE, PIECES, SIZE, RESPONSE = "WHOLE", "NUM", "DEN", "RESPONSE"
#: Each sign as an identifier.
SIGNS = {Relation.LESS: "LESS", Relation.EQUAL: "EQUAL", Relation.GREATER: "GREATER"}


def question_item(worked: WorkedProblem) -> str:
    """Return a problem as an item: XML, in UTF-8.

    Raises NotOnLadderError for a problem without an answer.

    >>> from onewhole.statements.reading import read_statement
    >>> made = question_item(WorkedProblem(Problem("1", read_statement("52 - 27"), "52 - 27")))
    >>> made.count("<qti-text-entry-interaction"), 'alttext="52 - 27"' in made
    (1, True)
    """
    problem, response = worked.problem, response_to(worked)
    root = (
        f'<qti-assessment-item xmlns="{NAMESPACE}" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" '
        f'xsi:schemaLocation="{NAMESPACE} {SCHEMA}" identifier="{item_name(problem)}" '
        f'title="{escape(problem.typed)}" label="{escape(problem.label)}" xml:lang="en-US" adaptive="false" '
        'time-dependent="false">'
    )
    score = (
        '<qti-outcome-declaration identifier="SCORE" cardinality="single" base-type="float">'
        "<qti-default-value><qti-value>0</qti-value></qti-default-value></qti-outcome-declaration>"
    )
    parts = [root, *_declared(response), score, *_body(problem, response), *_marking(response)]
    return "\n".join(['<?xml version="1.0" encoding="UTF-8"?>', *parts, "</qti-assessment-item>", ""])


def item_name(problem: Problem) -> str:
    """Return how an item is identified in its package.

    >>> from onewhole.statements.reading import read_statement
    >>> item_name(Problem("2a", read_statement("52 - 27"), "52 - 27"))
    'problem-2a'
    """
    return f"problem-{problem.label}"


def _declared(response: Response) -> Iterator[str]:
    match response:
        case FractionBoxes(_, parts):
            for name, count in zip((WHOLE, PIECES, SIZE), parts, strict=True):
                yield _declaration(name, "integer", str(count))
        case NumberBox(written, whole):
            yield _declaration(RESPONSE, "integer" if whole else "float", written)
        case SignChoice(right):
            yield _declaration(RESPONSE, "identifier", SIGNS[right])
        case WrittenLine(right):
            entries = "".join(
                f'<qti-map-entry map-key="{escape(one)}" mapped-value="1"/>' for one in _each_once(right)
            )
            yield _declaration(
                RESPONSE, "string", right[0], f'<qti-mapping default-value="0">{entries}</qti-mapping>'
            )
        case _:
            assert_never(response)


def _each_once(right: tuple[str, ...]) -> Iterator[str]:
    """Yield the ways to write an answer; small and large letters are the same to a mapping."""
    yield from {one.casefold(): one for one in reversed(right)}.values()


def _declaration(name: str, base: str, right: str, mapping: str = "") -> str:
    return (
        f'<qti-response-declaration identifier="{name}" cardinality="single" base-type="{base}">'
        f"<qti-correct-response><qti-value>{escape(right)}</qti-value></qti-correct-response>{mapping}"
        "</qti-response-declaration>"
    )


def _body(problem: Problem, response: Response) -> Iterator[str]:
    yield "<qti-item-body>"
    if problem.story:
        yield f"<p>{escape(problem.story)}</p>"
    yield f"<p>{asked_formula(problem)}</p>"
    equals = "= " if isinstance(problem.statement, Question) else ""
    yield f"<p>{equals}{''.join(_interactions(response))}</p>"
    yield "</qti-item-body>"


def asked_formula(problem: Problem) -> str:
    """Return what a problem asks as MathML; its plain text is what was typed."""
    _, begin, rest = mathml(problem.statement).partition(' alttext="')
    _, end, inside = rest.partition('"')
    return f'<math xmlns="http://www.w3.org/1998/Math/MathML"{begin}{escape(problem.typed)}{end}{inside}'


def _interactions(response: Response) -> Iterator[str]:
    match response:
        case FractionBoxes():
            yield f"{_entry(WHOLE, 3)} {_entry(PIECES, 3)} / {_entry(SIZE, 3)}"
        case NumberBox(written):
            yield _entry(RESPONSE, len(written) + 3)
        case WrittenLine(right):
            yield _entry(RESPONSE, max(map(len, right)) + 5)
        case SignChoice():
            choices = "".join(
                f'<qti-inline-choice identifier="{name}">{escape(sign.value)}</qti-inline-choice>'
                for sign, name in SIGNS.items()
            )
            yield f'<qti-inline-choice-interaction response-identifier="{RESPONSE}" shuffle="false">{choices}'
            yield "</qti-inline-choice-interaction>"
        case _:
            assert_never(response)


def _entry(name: str, length: int) -> str:
    return f'<qti-text-entry-interaction response-identifier="{name}" expected-length="{length}"/>'


def _marking(response: Response) -> Iterator[str]:
    match response:
        case FractionBoxes(worth):
            yield "<qti-response-processing><qti-response-condition><qti-response-if>"
            yield _all(_above_zero(SIZE), _fraction_right(worth.numerator, worth.denominator))
            yield _SCORED
            yield "</qti-response-if>"
            if worth.denominator == 1:
                yield "<qti-response-else-if>"
                yield _all(*map(_missing, (PIECES, SIZE)), _equal(_variable(WHOLE), _number(int(worth))))
                yield _SCORED
                yield "</qti-response-else-if>"
            yield "</qti-response-condition></qti-response-processing>"
        case NumberBox():
            yield "<qti-response-processing><qti-response-condition><qti-response-if>"
            yield _equal(_variable(RESPONSE), f'<qti-correct identifier="{RESPONSE}"/>')
            yield _SCORED
            yield "</qti-response-if></qti-response-condition></qti-response-processing>"
        case SignChoice():
            yield f'<qti-response-processing template="{TEMPLATES}/match_correct.xml"/>'
        case WrittenLine():
            yield f'<qti-response-processing template="{TEMPLATES}/map_response.xml"/>'
        case _:
            assert_never(response)


_SCORED = (
    '<qti-set-outcome-value identifier="SCORE"><qti-base-value base-type="float">1</qti-base-value>'
    "</qti-set-outcome-value>"
)


def _fraction_right(top: int, size: int) -> str:
    """Return the cross product: (wholes x DEN + NUM) x size = top x DEN; no wholes where none are typed."""
    right = _product(_number(top), _variable(SIZE))
    wholes = _sum(_product(_variable(WHOLE), _variable(SIZE)), _variable(PIECES))
    alone = _all(_missing(WHOLE), _equal(_product(_variable(PIECES), _number(size)), right))
    return f"<qti-or>{alone}{_equal(_product(wholes, _number(size)), right)}</qti-or>"


def _above_zero(name: str) -> str:
    return f"<qti-gt>{_variable(name)}{_number(0)}</qti-gt>"


def _missing(name: str) -> str:
    return f"<qti-is-null>{_variable(name)}</qti-is-null>"


def _variable(name: str) -> str:
    return f'<qti-variable identifier="{name}"/>'


def _number(value: int) -> str:
    return f'<qti-base-value base-type="integer">{value}</qti-base-value>'


def _product(*of: str) -> str:
    return f"<qti-product>{''.join(of)}</qti-product>"


def _sum(*of: str) -> str:
    return f"<qti-sum>{''.join(of)}</qti-sum>"


def _all(*of: str) -> str:
    return f"<qti-and>{''.join(of)}</qti-and>"


def _equal(*of: str) -> str:
    return f'<qti-equal tolerance-mode="exact">{"".join(of)}</qti-equal>'
