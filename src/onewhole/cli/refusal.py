"""A refusal as the terminal shows it."""

from onewhole.cli.screen import plain, plain_line
from onewhole.errors import OnewholeError


def told(refused: OnewholeError) -> str:
    """What is wrong, where, and what to do next: a line each, the last two only where they are known.

    >>> from onewhole.errors import InputError
    >>> print(told(InputError("the denominator is 0", line=3, column=6, remedy="Write 1 or more.")))
    The denominator is 0
      where: line 3, column 6
      next:  Write 1 or more.
    """
    what = plain(refused.what)
    lines = [what[:1].upper() + what[1:]]
    if refused.where is not None:
        lines.append(f"  where: {plain_line(refused.where)}")
    if refused.remedy is not None:
        lines.append(f"  next:  {plain(refused.remedy)}")
    return "\n".join(lines)
