"""A single `/` between two whole numbers would make a float, and no reading of the code can see every one."""

from collections.abc import Iterator
from dataclasses import dataclass, fields, is_dataclass
from fractions import Fraction
from itertools import islice

import pytest
from msgspec import Struct

from onewhole.working.questions import suiting
from onewhole.working.work import work
from tests.kit.statements import every_question


def floats_in(thing: object, at: str = "") -> Iterator[str]:
    """Where a float stands in a record, however deep: `working.lines[2].says`."""
    match thing:
        case float() | complex():
            yield f"{at} = {thing}"
        case tuple() | list() | set() | frozenset():
            for place, part in enumerate(thing):
                yield from floats_in(part, f"{at}[{place}]")
        case dict():
            for key, part in thing.items():
                yield from floats_in(part, f"{at}[{key!r}]")
        case Struct():
            for name in thing.__struct_fields__:
                yield from floats_in(getattr(thing, name), f"{at}.{name}")
        case _ if is_dataclass(thing):
            for field in fields(thing):
                yield from floats_in(getattr(thing, field.name), f"{at}.{field.name}")
        case _:
            return


def test_no_working_holds_a_float() -> None:
    """Every part of every strategy's working of a question is exact, to the last field."""
    looked_at = 0
    for question in islice(every_question(denominator=6, wholes=3), 0, None, 3):
        for strategy in suiting(question):
            assert list(floats_in(work(question, strategy), "working")) == []
            looked_at += 1
    assert looked_at > 100


@dataclass
class Strip:
    """A strip of kite paper, cut into parts."""

    parts: tuple[object, ...]
    share: object = Fraction(1, 6)


@pytest.mark.parametrize(
    ("thing", "found"),
    [
        (Strip((1, 2)), []),
        (Strip((1, [0.5])), ["strip.parts[1][0] = 0.5"]),
        (Strip((), {"red": 1 / 6}), [f"strip.share['red'] = {1 / 6}"]),
    ],
)
def test_a_float_is_found(thing: Strip, found: list[str]) -> None:
    """The law above can fail: a float is found at any depth."""
    assert list(floats_in(thing, "strip")) == found
