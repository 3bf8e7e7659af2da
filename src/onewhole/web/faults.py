"""A fault is told by its kind and its place in the code; its own words may hold what a pupil wrote."""

from pathlib import Path


def place(fault: BaseException) -> str:
    """Return kind, file and line of a fault.

    >>> try:
    ...     {}["K01 Ada"]
    ... except KeyError as fault:
    ...     place(fault).split(":")[0].split(" at ")[0]
    'KeyError'
    """
    at = fault.__traceback__
    while at is not None and at.tb_next is not None:
        at = at.tb_next
    where = f" at {Path(at.tb_frame.f_code.co_filename).name}:{at.tb_lineno}" if at else ""
    return f"{type(fault).__name__}{where}"
