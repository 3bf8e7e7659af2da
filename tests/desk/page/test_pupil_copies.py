"""Codes typed at the terminal for copies of the pupils' page."""

import pytest

from onewhole.desk.page.print_choice import MOST_COPIES
from onewhole.desk.page.pupil_copies import codes_listed
from onewhole.errors import InputError


@pytest.mark.parametrize(
    ("typed", "codes"),
    [
        ("K01, K03", ["K01", "K03"]),
        ("K08-K11", ["K08", "K09", "K10", "K11"]),
        ("k1 - 3,K2", ["k1", "k2", "k3"]),
        ("7", ["7"]),
        ("Ada, Bo2,", ["Ada", "Bo2"]),
    ],
)
def test_codes_are_read(typed: str, codes: list[str]) -> None:
    """One by one, or from the first to the last with as many digits; each has one copy."""
    assert list(codes_listed(typed)) == codes


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        ("", "no code for a copy"),
        (" , ", "no code for a copy"),
        ("Ada Lovelace", "is no code for a copy"),
        ("K0000000001", "is no code for a copy"),
        ("K03-K01", "is no run of codes"),
        ("K01-L05", "is no run of codes"),
        ("K1-K99999999999999", "is no run of codes"),
        (f"K1-K{MOST_COPIES + 1}", "These are 61 codes"),
    ],
)
def test_what_is_no_code_is_refused(typed: str, why: str) -> None:
    """In words, and nothing is printed."""
    with pytest.raises(InputError, match=why):
        codes_listed(typed)
