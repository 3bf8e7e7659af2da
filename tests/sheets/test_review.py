import pytest

from onewhole.findings.wished_skill import LIKE, WishedSkill
from onewhole.problems.needs import needs
from onewhole.problems.twins import twin_key
from onewhole.sheets.review import halves, listed, regroups, reviewed
from onewhole.sheets.wishes import Review, Wishes
from onewhole.statements.reading import read_statement

FEW = Wishes(number=12, denominators=(3, 4, 6), largest=3, skill=WishedSkill.BOTH)


@pytest.mark.parametrize("review", Review)
def test_the_whole_space_needs_what_is_said(review: Review) -> None:
    """Every problem of an earlier skill regroups or none does, and takes the minutes of its sort."""
    found = list(listed(review, FEW))
    assert len(found) == len(set(found)) > 10
    for typed in found:
        assert needs(read_statement(typed)).regrouping == regroups(review)
    assert halves(regroups(review)) == (3 if regroups(review) else 2)


def test_fractions_are_those_of_the_skill() -> None:
    """A page that only takes away reviews taking away."""
    signs = {
        skill: {
            sign for typed in listed(Review.FRACTIONS, Wishes(skill=skill)) for sign in "+-" if sign in typed
        }
        for skill in LIKE
    }
    assert signs == {WishedSkill.SUBTRACT: {"-"}, WishedSkill.ADD: {"+"}, WishedSkill.BOTH: {"+", "-"}}


def test_review_is_no_twin_of_the_page_nor_a_problem_of_last_night() -> None:
    """2 2/3 - 2 1/3 has the differences of 2/3 - 1/3: a twin."""
    wishes = Wishes(denominators=(3,), review=(Review.FRACTIONS,))
    assert reviewed(wishes, []) == (read_statement("2/3 - 1/3"),)
    assert reviewed(wishes, [read_statement("2 2/3 - 2 1/3")]) is None
    assert reviewed(Wishes(denominators=(3,), review=(Review.FRACTIONS,), avoid=("2/3 - 1/3",)), []) is None


def test_the_seed_chooses() -> None:
    """The same seed the same problems, no two of them twins; another seed others."""
    pages = [
        reviewed(Wishes(review=(Review.TENS, Review.TENS, Review.OPENED), seed=seed), [])
        for seed in (1, 1, 2)
    ]
    assert pages[0] == pages[1] != pages[2]
    assert pages[0] is not None
    assert len({twin_key(one) for one in pages[0]}) == 3
