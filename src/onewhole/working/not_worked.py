"""What is not worked line by line."""

from onewhole.errors import InputError


class NotWorkedError(InputError):
    """The statement is not one that is worked line by line."""
