"""What the page asks the pure floors: a problem worked, answers to it marked. It runs in the browser."""

import json

from onewhole.errors import OnewholeError
from onewhole.findings.in_answer import Remark
from onewhole.languages.english.in_answer import remark_told, tier_told
from onewhole.languages.english.words import words_for
from onewhole.languages.table import spoken_by
from onewhole.marking.reading.answer import Unreadable, read_written
from onewhole.marking.reading.expected import Expected, expect_worked
from onewhole.marking.reading.mark import Mark, Verdict, mark
from onewhole.misconceptions.catalogue import by_id
from onewhole.notations.mathml import mathml
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed
from onewhole.problems.problem import Problem
from onewhole.problems.worked import WorkedProblem
from onewhole.statements.reading import read_statement

#: Sign and word of each verdict, as in the program: tests/tools/test_trying.py holds the two together.
SIGNS = {
    Verdict.RIGHT: ("✓", "right"),
    Verdict.FORM: ("~", "right amount, another form is wanted"),
    Verdict.WRONG: ("✗", "not right"),
    Verdict.BLANK: ("·", "nothing written"),
    Verdict.UNREADABLE: ("?", "cannot be read"),
}
#: A page shows so many answers at most, and so long a problem.
MOST, LONGEST = 60, 300

Told = dict[str, object]


def tried(problem: str, answers: str) -> str:
    """Work a typed problem and mark answers, one on a line; return JSON for the page.

    What cannot be read is told under ``refused`` with what to do, and where: a column, or 0.
    """
    try:
        return json.dumps(_tried(problem[:LONGEST], answers))
    except OnewholeError as no:
        at = getattr(no, "column", 0) or 0
        return json.dumps({"refused": no.what, "remedy": no.remedy or "", "column": at})


def _tried(typed: str, answers: str) -> Told:
    asked = Problem("1", read_statement(typed), typed)
    worked = WorkedProblem(asked)
    expected = expect_worked(worked)
    written = [line for line in answers.splitlines() if line.strip()][:MOST]
    return {
        "problem": mathml(asked.statement),
        "answer": mathml(worked.answer),
        "lines": _lines(worked),
        "answers": [_marked(expected, asked, text) for text in written],
    }


def _lines(worked: WorkedProblem) -> list[Told]:
    if worked.working is None:
        return []
    words = words_for("whole")
    language = spoken_by(words).working
    return [
        {
            "says": mathml(line.says, leads=True),
            "why": text_of(language.reason(line.because, words)) if line.because else "",
            "aside": line.aside,
        }
        for line in worked.working.lines[1:]
    ]


def _marked(expected: Expected, asked: Problem, text: str) -> Told:
    marked = mark(expected, read_written(text, asked))
    sign, word = SIGNS[marked.verdict]
    wrong = marked.patterns if marked.verdict is Verdict.WRONG else ()
    return {
        "text": text.strip(),
        "sign": sign,
        "word": word,
        "fits": [by_id(key).name for key in wrong],
        "remarks": _remarks(marked),
    }


def _remarks(marked: Mark) -> list[str]:
    told = [marked.written.read.why] if isinstance(marked.written.read, Unreadable) else []
    if marked.tier is not None and (close := tier_told(marked.tier)):
        told.append(text_of(close))
    for remark in marked.remarks:
        if remark is not Remark.MAY_BE_RENAMED:
            told.append(text_of(remark_told(remark)))
        else:
            told.append(f"{' or '.join(map(printed, marked.renamed))} is the same amount")
    return told
