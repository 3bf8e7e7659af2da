"""Whom a text of a table means."""

import pytest

from onewhole.marking.reading.tables.class_names import ListedPupil, MatchedBy, match_pupil

LISTED = (
    ListedPupil("K01", "Maya Rivera"),
    ListedPupil("K02", "Ben Okafor"),
    ListedPupil("K03", "Lin"),
    ListedPupil("K04", "José D'Souza-Lee"),
    ListedPupil("K05"),
    ListedPupil("K06", "Ben Ruiz"),
    ListedPupil("K07", "Lin"),
    ListedPupil("K108"),
)


@pytest.mark.parametrize(
    ("text", "by", "codes"),
    [
        ("K01", MatchedBy.CODE, ("K01",)),
        ("k 1", MatchedBy.CODE, ("K01",)),
        ("K108", MatchedBy.CODE, ("K108",)),
        ("K99", MatchedBy.NOTHING, ()),
        ("K1O", MatchedBy.NOTHING, ()),
        ("5", MatchedBy.NUMBER, ("K05",)),
        ("99", MatchedBy.NOTHING, ()),
        ("maya RIVERA", MatchedBy.NAME, ("K01",)),
        ("Rivera,Maya", MatchedBy.NAME, ("K01",)),
        ("Lee, Jose D Souza", MatchedBy.NAME, ("K04",)),
        ("Lin", MatchedBy.NAME, ("K03", "K07")),
        ("Maya R.", MatchedBy.PART, ("K01",)),
        ("M. Rivera", MatchedBy.PART, ("K01",)),
        ("Ben", MatchedBy.PART, ("K02", "K06")),
        ("Lin Park", MatchedBy.PART, ("K03", "K07")),
        ("Maya Chen", MatchedBy.NOTHING, ()),
        ("B. O.", MatchedBy.NOTHING, ()),
        ("M", MatchedBy.NOTHING, ()),
        ("", MatchedBy.NOTHING, ()),
        ("3 3/6", MatchedBy.NOTHING, ()),
    ],
)
def test_a_code_a_number_or_a_name(text: str, by: MatchedBy, codes: tuple[str, ...]) -> None:
    """Of one pupil, of several, or of none."""
    found = match_pupil(text, LISTED)
    assert (found.by, found.codes, found.doubted) == (by, codes, False)


@pytest.mark.parametrize(
    ("text", "codes", "doubted"),
    [
        ("K01 Maya Rivera", ("K01",), False),
        ("K01: Maya", ("K01",), False),
        ("Maya (K01)", ("K01",), False),
        ("K03 Lin", ("K03",), False),
        ("K05 Zoe", ("K05",), False),
        ("K05 Maya Rivera", ("K05", "K01"), True),
        ("K01 Zoe", ("K01",), True),
        ("K99 Maya Rivera", ("K01",), True),
        ("K99 Zoe", (), True),
    ],
)
def test_a_code_beside_a_name(text: str, codes: tuple[str, ...], doubted: bool) -> None:
    """Where the two are of two pupils it is doubted, and both are offered."""
    found = match_pupil(text, LISTED)
    assert (found.codes, found.doubted) == (codes, doubted)
