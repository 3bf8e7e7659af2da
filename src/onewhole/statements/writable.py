"""Everything that can be written as a line, or as a part of one."""

from onewhole.number.impossible import Impossible
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Expression
from onewhole.statements.factor_question import WordAnswer
from onewhole.statements.gap import Gap
from onewhole.statements.statement import NumberRow, Relation, Statement

#: A statement, an expression, a number with a part missing, one that cannot be or that has a minus sign, a
#: sign of comparison, or a word that answers.
Writable = Statement | Expression | Gap | Impossible | WithMinus | Relation | NumberRow | WordAnswer
