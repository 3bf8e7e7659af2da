import pytest

from onewhole.notations.reasons.told import Told, amount, single
from onewhole.notations.words import ClassWords
from onewhole.number.ladder import decimal, measure, mixed
from onewhole.number.quantity import Quantity, whole
from onewhole.number.unit import ONE
from onewhole.working.reason import Reason, because

STRIPS = ClassWords.for_whole("strip of kite paper")
TOLD = Told(because("a_key", count=1, some=whole(3), small=mixed(6).units[1], unit=ONE), STRIPS)


def test_details_by_kind() -> None:
    """A detail is given in the form a sentence asks for."""
    assert TOLD.count("count") == 1
    assert TOLD.number("some") == "3"
    assert TOLD.unit("unit") == ONE
    assert TOLD.some_small("count") == "1 sixth"
    assert TOLD.some_large("count") == "1 strip of kite paper"
    assert (TOLD.small(), TOLD.large()) == ("sixths", "strips of kite paper")


def test_a_wrong_kind_of_detail_is_refused() -> None:
    """A sentence that asks for another kind of detail says which and where."""
    with pytest.raises(TypeError, match="count of the reason a_key is not a unit"):
        TOLD.unit("count")
    with pytest.raises(TypeError, match="not a count"):
        TOLD.count("some")
    with pytest.raises(TypeError, match="not a written number"):
        TOLD.quantity("unit")
    with pytest.raises(KeyError):
        TOLD.count("nothing")


@pytest.mark.parametrize(
    ("quantity", "named", "one_thing"),
    [
        (Quantity(mixed(6), (3, 3)), "3 strips of kite paper and 3 sixths", False),
        (Quantity(mixed(6), (None, 1)), "1 sixth", True),
        (Quantity(mixed(6), (1, 1)), "1 strip of kite paper and 1 sixth", False),
        (Quantity(measure("yd", "ft", "in"), (1, 2, 7)), "1 yard, 2 feet and 7 inches", False),
        (Quantity(measure("ft"), (1,)), "1 foot", True),
        (whole(25), "25", True),
        (Quantity(decimal(1, 1), (2, 5)), "2.5", True),
    ],
)
def test_amounts(quantity: Quantity, named: str, one_thing: bool) -> None:
    """Amounts are counted by their units; whole numbers and decimals keep their digits."""
    assert amount(quantity, STRIPS) == named
    assert single(quantity) is one_thing


def test_units_in_their_order() -> None:
    """Every unit of a reason is given, the largest first; other details are passed over."""
    told = Told(Reason("a_key", (("unit", ONE), ("count", 3), ("unit", mixed(6).units[1]))), STRIPS)
    assert told.units() == mixed(6).units
