"""Everything that can be written as a line, or as a part of one."""

from onewhole.number.impossible import Impossible
from onewhole.number.with_minus import WithMinus
from onewhole.statements.expression import Expression
from onewhole.statements.gap import Gap
from onewhole.statements.statement import NumberRow, Relation, Statement

#: A statement, an expression, a number with a part missing, one that cannot be or that has a minus sign, or a
#: sign of comparison.
Writable = Statement | Expression | Gap | Impossible | WithMinus | Relation | NumberRow
