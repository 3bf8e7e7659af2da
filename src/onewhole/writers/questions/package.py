"""A page as a package of questions: its manifest, its test, an item a problem.

The manifest's elements and the kinds of its resources are those of QTI 3.0's packaging, from memory but for
the namespace; the standards stand in it as Curriculum Standards Metadata, from memory.
"""

from collections.abc import Iterator, Sequence
from html import escape

from msgspec import Struct

from onewhole.number.quantity import NotOnLadderError
from onewhole.problems.case_item import case_item
from onewhole.problems.problem import Problem
from onewhole.problems.standard_code import standard_code
from onewhole.sheets.document import Instruction, Sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.statements.line_plot import PlotQuestion
from onewhole.writers.frame import UNTITLED
from onewhole.writers.questions.item import NAMESPACE, SCHEMA, item_name, question_item

PACKAGING = "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1"
STANDARDS = "http://www.imsglobal.org/xsd/imscsmd_v1p0"
MANIFEST, TEST = "imsmanifest.xml", "test.xml"
_FIRST_LINE = '<?xml version="1.0" encoding="UTF-8"?>'


class QuestionFiles(Struct, frozen=True):
    """The files of a package by their names, and the labels of the problems that are not in it."""

    files: dict[str, str]
    left_out: tuple[str, ...]


def question_files(worked: WorkedSheet) -> QuestionFiles:
    """Return a page as the files of a package; a question about a line plot is left out."""
    items, left_out = dict[str, str](), []
    for one in worked.problems:
        try:
            if isinstance(one.statement, PlotQuestion):
                left_out.append(one.label)
            else:
                items[_place(one.problem)] = question_item(one)
        except NotOnLadderError:
            left_out.append(one.label)
    sheet = worked.sheet
    test = _test(sheet, left_out)
    return QuestionFiles({MANIFEST: _manifest(sheet, left_out), TEST: test, **items}, tuple(left_out))


def _place(problem: Problem) -> str:
    return f"items/{item_name(problem)}.xml"


def _test(sheet: Sheet, left_out: Sequence[str]) -> str:
    title = escape(sheet.header.title or UNTITLED)
    lines = [
        _FIRST_LINE,
        (
            f'<qti-assessment-test xmlns="{NAMESPACE}" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" '
            f'xsi:schemaLocation="{NAMESPACE} {SCHEMA}" identifier="page" title="{title}">'
        ),
        '<qti-outcome-declaration identifier="SCORE" cardinality="single" base-type="float"/>',
        '<qti-test-part identifier="part-1" navigation-mode="nonlinear" submission-mode="simultaneous">',
        *_sections(sheet, left_out),
        "</qti-test-part>",
        '<qti-outcome-processing><qti-set-outcome-value identifier="SCORE"><qti-sum>',
        '<qti-test-variables variable-identifier="SCORE" base-type="float"/>',
        "</qti-sum></qti-set-outcome-value></qti-outcome-processing>",
        "</qti-assessment-test>",
        "",
    ]
    return "\n".join(lines)


def _sections(sheet: Sheet, left_out: Sequence[str]) -> Iterator[str]:
    """Yield the sections of a page: one begins with each instruction, which is its title and is shown."""
    number, is_open = 0, False
    for item in sheet.items:
        if isinstance(item, Instruction) or not is_open:
            number += 1
            yield from ["</qti-assessment-section>"] * is_open
            words = item.words if isinstance(item, Instruction) else ""
            shown = f'title="{escape(words)}" visible="{"true" if words else "false"}"'
            yield f'<qti-assessment-section identifier="section-{number}" {shown}>'
            is_open = True
        if isinstance(item, Problem) and item.label not in left_out:
            yield f'<qti-assessment-item-ref identifier="{item_name(item)}" href="{_place(item)}"/>'
    yield "</qti-assessment-section>"


def _manifest(sheet: Sheet, left_out: Sequence[str]) -> str:
    problems = [one for one in sheet.problems if one.label not in left_out]
    lines = [
        _FIRST_LINE,
        f'<manifest xmlns="{PACKAGING}" identifier="onewhole-page">',
        "<metadata><schema>QTI Package</schema><schemaversion>3.0.0</schemaversion></metadata>",
        "<organizations/>",
        "<resources>",
        f'<resource identifier="page" type="imsqti_test_xmlv3p0" href="{TEST}"><file href="{TEST}"/>',
        *(f'<dependency identifierref="{item_name(one)}"/>' for one in problems),
        "</resource>",
    ]
    for one in problems:
        lines += [
            f'<resource identifier="{item_name(one)}" type="imsqti_item_xmlv3p0" href="{_place(one)}">',
            _standard(standard_code(one.statement, sheet.header.grade, story=bool(one.story))),
            f'<file href="{_place(one)}"/></resource>',
        ]
    return "\n".join([*lines, "</resources>", "</manifest>", ""])


def _standard(code: str) -> str:
    """Return a standard by its code and, where an open framework's is known, its identifier."""
    known = case_item(code)
    case = f"<GUID>{known}</GUID>" if known else ""
    return (
        f'<metadata><curriculumStandardsMetadataSet xmlns="{STANDARDS}"><curriculumStandardsMetadata>'
        f"<setOfGUIDs><labelledGUID><label>{escape(code)}</label>{case}</labelledGUID></setOfGUIDs>"
        "</curriculumStandardsMetadata></curriculumStandardsMetadataSet></metadata>"
    )
