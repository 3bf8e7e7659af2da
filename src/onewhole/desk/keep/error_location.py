"""An exception for the log: type and place, never its message, which may hold what a pupil wrote."""

from pathlib import Path


def error_location(fault: BaseException) -> str:
    """Return type, file and line of an exception.

    >>> try:
    ...     {}["K01 Ada"]
    ... except KeyError as fault:
    ...     error_location(fault).split(":")[0].split(" at ")[0]
    'KeyError'
    """
    at = fault.__traceback__
    while at is not None and at.tb_next is not None:
        at = at.tb_next
    where = f" at {Path(at.tb_frame.f_code.co_filename).name}:{at.tb_lineno}" if at else ""
    return f"{type(fault).__name__}{where}"
