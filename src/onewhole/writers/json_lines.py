"""Workings and patterns as JSON objects: the contract of ``docs/json.md``."""

from collections.abc import Iterable
from fractions import Fraction
from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import spoken_by
from onewhole.misconceptions.slip import Slip
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import text_of
from onewhole.notations.squared import squared_mathml, squared_text
from onewhole.notations.text import text
from onewhole.number.quantity import Quantity
from onewhole.pictures.scene import Scene
from onewhole.pictures.squared import ends, stills
from onewhole.statements.expression import WithRemainder, value
from onewhole.statements.factor_question import WordAnswer
from onewhole.statements.statement import Meaning, NumberRow, Relation, RightAnswer, Statement
from onewhole.statements.whole_groups import GroupsMeaning
from onewhole.working.line import Line, kept
from onewhole.working.working import Working

Json = dict[str, object]


def working_object(working: Working, words: ClassWords) -> Json:
    """Return a working as an object with ``problem``, ``answer``, ``value``, ``strategy`` and ``lines``.

    ``value`` is an exact fraction as text, ``7/2``; for a measure it counts inches, ounces or minutes. Of a
    working in columns ``columns`` are what stands there at the end, as text, as MathML and spoken.
    """
    found: Json = {
        "problem": text(working.statement),
        "answer": text(working.answer),
        "value": value_text(working.answer),
        "strategy": working.strategy,
        "lines": [_line_object(line, words) for line in working.lines],
    }
    if last := ends(working):
        scenes = stills(working)
        found["columns"] = [
            {
                "text": list(squared_text([state])),
                "mathml": squared_mathml(state),
                "spoken": _said(scene, words),
            }
            for state, scene in zip(last, scenes, strict=True)
        ]
    return found


def _said(scene: Scene, words: ClassWords) -> str:
    return " ".join(map(spoken, spoken_by(words).working.picture(scene, words)))


def _line_object(line: Line, words: ClassWords) -> Json:
    language = spoken_by(words)
    said = [
        text_of(language.working.reason(line.because, words)) if line.because else language.page.the_problem
    ]
    said.extend(text_of(language.working.fact(fact)) for fact in line.facts)
    return {
        "text": text(line.says),
        "value": _value(kept(line.says)),
        "because": " ".join(said),
        "aside": line.aside,
    }


def _value(meant: Meaning) -> str:
    """Return an exact value as text, of numbers in order one after another, or a word."""
    if isinstance(meant, WordAnswer):
        return meant.value
    if isinstance(meant, GroupsMeaning):
        return str(meant.asked)
    return ", ".join(map(str, meant)) if isinstance(meant, tuple) else str(meant)


def patterns_object(statement: Statement, answer: RightAnswer, slips: Iterable[Slip]) -> Json:
    """Return what each pattern would write, raw, by its id."""
    return {
        "problem": text(statement),
        "answer": text(answer),
        "shows": {slip.pattern: text(slip.wrote) for slip in slips},
    }


def value_text(answer: RightAnswer) -> str:
    """Return an exact value as text."""
    match answer:
        case Quantity():
            return str(Fraction(answer.value))
        case Relation() | WordAnswer():
            return answer.value
        case NumberRow():
            return ", ".join(map(str, answer.values))
        case WithRemainder():
            return str(value(answer))
        case _:
            assert_never(answer)
