"""What a window saw when it was loaded: a change of something else than that is told, and asked about."""

from onewhole.errors import InputError


class ChangedMeanwhile(InputError):
    """Another window changed what this one saw: nothing was kept, and `stands` is what is kept now."""

    stands: str

    def __init__(self, what: str, *, stands: str, remedy: str) -> None:
        super().__init__(what, remedy=remedy)
        self.stands = stands


def is_to_be_written(
    what: str, typed: str, saw: str | None, stands: str, *, shown: str | None = None
) -> bool:
    """Say whether a window that saw one text and sends another changes the text that stands.

    It does not where it sends what it saw (it changed nothing, whoever else did), or what stands already.
    ``saw`` is None for whoever did not look. Raises ChangedMeanwhile where another window was faster with
    another text; ``shown`` is how that is told, where not as it stands.

    >>> is_to_be_written("The name", "Ada", "", ""), is_to_be_written("The name", "", "", "Bo")
    (True, False)
    >>> is_to_be_written("The name", "Ada", "", "Bo")
    Traceback (most recent call last):
    ...
    onewhole.desk.classes.seen.ChangedMeanwhile: The name is “Bo” since another window changed it.
    Nothing was kept yet. Send yours again to put it in that place, or leave what stands there.
    """
    if typed in {stands, saw}:
        return False
    if saw is None or saw == stands:
        return True
    now = f"“{stands if shown is None else shown}”" if stands else "empty"
    raise ChangedMeanwhile(
        f"{what} is {now} since another window changed it",
        stands=stands,
        remedy="Nothing was kept yet. Send yours again to put it in that place, or leave what stands there.",
    )
