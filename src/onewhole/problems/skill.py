"""The skill that a problem practises, named from what it needs, in a teacher's words."""

from onewhole.findings.skill import Skill
from onewhole.number.ladder import Style
from onewhole.number.unit import Kind
from onewhole.problems.needs import Needs, Operation, needs
from onewhole.problems.numbers import numbers_of
from onewhole.statements.factor_question import FactorQuestion
from onewhole.statements.line_plot import PlotQuestion
from onewhole.statements.listing import Listing
from onewhole.statements.statement import Question, Statement
from onewhole.working.steps.work_steps import has_steps


def skill(statement: Statement) -> Skill:
    """Return the skill that a problem practises.

    >>> from onewhole.statements.reading import read_statement
    >>> [skill(read_statement(typed)).name for typed in ("7 2/6 - 3 5/6", "4 - 1 3/8", "304 - 128")]
    ['TAKE_REGROUPED', 'TAKE_FROM_WHOLES', 'WHOLE_NUMBERS_REGROUPED']
    """
    asked = needs(statement)
    if isinstance(statement, Question) and has_steps(statement.asked):
        return Skill.STEPS
    if isinstance(statement, PlotQuestion):
        return Skill.LINE_PLOTS
    if isinstance(statement, Listing | FactorQuestion):
        return Skill.FACTORS
    if Operation.ROUND in asked.operations:
        return Skill.ROUND
    if asked.kind is not Kind.NUMBER:
        return Skill.MEASURES
    for operation, named in (
        (Operation.FIND, Skill.FIND),
        (Operation.RENAME, Skill.OTHER_NAMES),
        (Operation.COMPARE, Skill.COMPARE),
        (Operation.ORDER, Skill.ORDER),
        (Operation.DIVIDE, Skill.DIVIDE),
        (Operation.MULTIPLY, Skill.TIMES),
    ):
        if operation in asked.operations:
            return named
    if any(number.ladder.style is Style.DECIMAL for number in numbers_of(statement)):
        return Skill.DECIMALS
    return _joined_or_taken(asked)


def _joined_or_taken(asked: Needs) -> Skill:
    if not asked.denominators:
        return Skill.WHOLE_NUMBERS_REGROUPED if asked.regrouping else Skill.WHOLE_NUMBERS
    if asked.renaming:
        return Skill.UNLIKE
    if Operation.SUBTRACT not in asked.operations:
        return Skill.ADD_REGROUPED if asked.regrouping else Skill.ADD
    if asked.whole_first:
        return Skill.TAKE_FROM_WHOLES
    return Skill.TAKE_REGROUPED if asked.regrouping else Skill.TAKE
