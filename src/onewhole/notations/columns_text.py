"""Columns in plain text: digits under each other, what is written small above them over the first number."""

from collections.abc import Sequence

from onewhole.pictures.columns_state import ColumnsState

#: Stands for a digit that is left for a pupil to write.
OPEN = "_"


def columns_text(state: ColumnsState, blank: int = 0) -> tuple[str, ...]:
    r"""Write what stands in columns, line by line: what is above now, the numbers, a rule and the answer.

    The last ``blank`` digits to be written below, those on the left, are left open.
    Where a number above stands for a digit that is struck out, the digit is still written.

    >>> from onewhole.pictures.columns_state import columns_states
    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.working.strategies.columns import COLUMNS
    >>> from onewhole.working.work import work
    >>> print("\n".join(columns_text(columns_states(work(read_statement("304 - 128"), COLUMNS))[-1])))
       2  9 14
       3  0  4
    -  1  2  8
    ----------
       1  7  6
    """
    above = [column.above[-1] if column.above else None for column in state.columns]
    rows = [[column.digits[row] for column in state.columns] for row in range(len(state.numbers))]
    below: list[int | str | None] = [column.below for column in state.columns]
    written_at = [at for at, count in enumerate(below) if count is not None]
    for at in written_at[:blank]:
        below[at] = OPEN
    width = max(len(str(count)) for count in (*above, 0) if count is not None)
    pointed = any(column.unit.size < 1 for column in state.columns)

    def line(sign: str, counts: Sequence[int | str | None], *, point: bool = pointed) -> str:
        written = sign
        for column, count in zip(state.columns, counts, strict=True):
            written += f" {'' if count is None else count:>{width}}"
            if pointed and column.unit.size == 1:
                written += "." if point else " "
        return written.rstrip()

    sign = "-" if state.taken else "+"
    signs = [" "] * (len(rows) - 1) + [sign]
    numbers = [line(before, row) for before, row in zip(signs, rows, strict=True)]
    answer = line(" ", below, point=pointed and any(count is not None for count in below))
    rule = "-" * max(map(len, (*numbers, answer)))
    first = [line(" ", above, point=False)] if any(count is not None for count in above) else []
    return (*first, *numbers, rule, *([answer] if answer else []))
