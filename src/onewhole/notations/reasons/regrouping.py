"""Opening a larger unit, and putting full groups together again."""

from onewhole.notations.reasons.told import Told


def open_one(told: Told) -> str:
    """There are not enough sixths to take 5 sixths, so open one whole."""
    act = f"{told.words.regroup} one {told.large(1)}"
    if told.count("have") >= told.count("need"):
        return f"There are no {told.small()} to open, so {act} first."
    return f"There are not enough {told.small()} to take {told.some_small('need')}, so {act}."


def open_to_match(told: Told) -> str:
    """Open one whole to get more sixths."""
    times = told.count("times")
    some = f"one {told.large(1)}" if times == 1 else told.some_large("times")
    return f"{told.words.regroup.capitalize()} {some} to get more {told.small()}."


def one_is_worth(told: Told) -> str:
    """One whole is 6 sixths."""
    return f"One {told.large(1)} is {told.some_small('ratio')}."


def are_worth(told: Told) -> str:
    """2 wholes are 12 sixths."""
    if told.count("times") == 1:
        return f"One {told.large(1)} is {told.some_small('had')}."
    return f"{told.some_large('times')} are {told.some_small('had')}."


def put_together(told: Told) -> str:
    """6 sixths and 2 sixths make 8 sixths."""
    if not told.count("had"):
        return f"Now there are {told.some_small('now')}."
    return f"{told.some_small('opened')} and {told.some_small('had')} make {told.some_small('now')}."


def full_groups(told: Told) -> str:
    """6 sixths make one whole, and there are 3 full groups."""
    times = told.count("times")
    there = "there is 1 full group" if times == 1 else f"there are {times} full groups"
    return f"{told.some_small('ratio')} make one {told.large(1)}, and {there}."


def make_one(told: Told) -> str:
    """18 sixths make 3 wholes."""
    return f"{told.some_small('had')} make {told.some_large('times')}."


def write_together(told: Told) -> str:
    """Written the usual way, this is 2 2/3."""
    return f"Written the usual way, this is {told.number('result')}."
