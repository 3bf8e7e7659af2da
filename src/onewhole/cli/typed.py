"""What is typed into the terminal, or piped into it."""

import sys

from onewhole.errors import InputError


def standard_input() -> str:
    """Return all that comes in, as UTF-8 text; InputError with the line for bytes that are none."""
    content = sys.stdin.buffer.read()
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise InputError(
            "what comes in is not plain text in UTF-8",
            where="standard input",
            line=content[: error.start].count(b"\n") + 1,
            remedy="Save it as plain text (UTF-8) and send it again.",
        ) from error
