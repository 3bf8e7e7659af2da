"""A password may be tried a few times, then after a wait that grows."""

import pytest

from onewhole.web.access.rate_limit import (
    FORGOTTEN,
    FREE,
    FREE_ALL,
    LONGEST,
    LONGEST_ALL,
    MAX_ADDRESSES,
    RateLimit,
)
from tests.kit.doors import Ticks


@pytest.mark.asvs("V2.4.1", "V6.3.1")
def test_the_wait_grows_and_has_an_end() -> None:
    """Five tries at once, then after 1, 2, 4 ... seconds, never more than a quarter of an hour."""
    ticks = Ticks()
    tries = RateLimit(ticks)
    assert [tries.wait("192.0.2.7") for _ in range(FREE)] == [0] * FREE
    waits = []
    for _ in range(14):
        waits.append(tries.wait("192.0.2.7"))
        ticks.now += waits[-1]
        assert tries.wait("192.0.2.7") == 0
    assert waits[:10] == [1, 2, 4, 8, 16, 32, 64, 128, 256, 512]
    assert waits[10:] == [LONGEST] * 4


def test_asking_while_one_waits_costs_nothing_more() -> None:
    """The wait runs on from the last try."""
    ticks = Ticks()
    tries = RateLimit(ticks)
    for _ in range(FREE + 1):
        tries.wait("192.0.2.7")
    ticks.now = 0.75
    assert [tries.wait("192.0.2.7") for _ in range(9)] == [0.25] * 9


@pytest.mark.asvs("V6.3.1")
def test_another_address_is_not_made_to_wait() -> None:
    """Not before very many were wrong together."""
    tries = RateLimit(lambda: 0)
    while not tries.wait("192.0.2.7"):
        pass
    assert tries.wait("192.0.2.8") == 0


def test_all_together_are_slowed_too() -> None:
    """Tries from ever new addresses: after thirty there is a wait for all, a minute at the longest."""
    ticks = Ticks()
    tries = RateLimit(ticks)
    assert all(tries.wait(f"192.0.2.{n}") == 0 for n in range(FREE_ALL))
    assert tries.wait("198.51.100.1") == 1
    made = 0
    for second in range(3600):
        ticks.now = second
        made += tries.wait(f"203.0.113.{second}") == 0
    assert made < 3600 / LONGEST_ALL + 10


def test_the_right_password_clears_the_address() -> None:
    """A teacher who mistyped begins anew."""
    tries = RateLimit(lambda: 0)
    for _ in range(FREE):
        tries.wait("192.0.2.7")
    tries.right("192.0.2.7")
    assert [tries.wait("192.0.2.7") for _ in range(FREE)] == [0] * FREE


def test_many_right_ones_are_no_attack() -> None:
    """A class of teachers who sign in rightly is never slowed."""
    tries = RateLimit(lambda: 0)
    for n in range(10 * FREE_ALL):
        assert tries.wait(f"192.0.2.{n}") == 0
        tries.right(f"192.0.2.{n}")


def test_wrong_tries_are_forgotten_after_an_hour() -> None:
    """When none came since."""
    ticks = Ticks()
    tries = RateLimit(ticks)
    while not tries.wait("192.0.2.7"):
        pass
    ticks.now = FORGOTTEN + 1
    assert [tries.wait("192.0.2.7") for _ in range(FREE)] == [0] * FREE


@pytest.mark.asvs("V6.3.1")
def test_the_many_addresses_of_one_machine_are_one() -> None:
    """In the sixth version a machine has a whole network of addresses."""
    tries = RateLimit(lambda: 0)
    assert [tries.wait(f"2001:db8::{n:x}") for n in range(FREE + 1)] == [*[0] * FREE, 1]


def test_what_is_remembered_has_an_end() -> None:
    """Very many addresses do not fill the memory, and the count of all is not pushed out."""
    ticks = Ticks()
    tries = RateLimit(ticks)
    for n in range(2 * MAX_ADDRESSES):
        ticks.now += LONGEST_ALL
        tries.wait(f"address {n}")
    assert len(tries._wrong) == MAX_ADDRESSES
    assert tries._wrong["all"].count == 2 * MAX_ADDRESSES
