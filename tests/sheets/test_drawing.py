"""Problems drawn by the seed."""

from msgspec.structs import replace

from onewhole.findings.wished_skill import WishedSkill
from onewhole.misconceptions.catalogue import shows
from onewhole.problems.difficulty import difficulty
from onewhole.problems.needs import needs
from onewhole.problems.twins import twin_key
from onewhole.sheets.drawing import draw
from onewhole.sheets.drawn_space import drawn_space
from onewhole.sheets.learning import doubts, settles
from onewhole.sheets.wishes import Wishes
from onewhole.working.questions import unsuited
from onewhole.working.strategies.count_up import COUNT_UP

MEASURES = Wishes(skill=WishedSkill.SUBTRACT_MEASURES, number=12)


def test_the_draw_is_the_same_for_the_same_wishes() -> None:
    """Another seed draws others; what belongs to the page alone changes nothing."""
    found = draw(MEASURES)
    assert draw(replace(MEASURES, number=20, minutes=30)) is found
    assert found.drawn
    assert {one.typed for one in draw(replace(MEASURES, seed=2)).problems} != {
        one.typed for one in found.problems
    }


def test_what_is_drawn_can_be_asked() -> None:
    """No twins, no number twice, none of what does not come again, both with and without regrouping."""
    gone = draw(MEASURES).problems[0].typed
    found = draw(replace(MEASURES, avoid=(gone,))).problems
    assert gone not in {one.typed for one in found}
    assert len({twin_key(one.statement) for one in found}) == len(found)
    assert all(len(set(one.numbers)) == 2 for one in found)
    assert {one.sort.regroups for one in found} == {True, False}
    assert {one.sort.taken for one in found} == {True}


def test_doubles_are_drawn_only_when_they_are_wished_for() -> None:
    """5 lb 3 oz + 5 lb 3 oz."""
    plain = Wishes(skill=WishedSkill.FRACTIONS, denominators=(4,))
    twice = [
        one for one in draw(replace(plain, doubles=True)).problems if len(set(one.numbers)) < len(one.numbers)
    ]
    assert twice
    assert all(len(set(one.numbers)) == len(one.numbers) for one in draw(plain).problems)


def test_a_small_space_is_listed_whole() -> None:
    """Thirds below one: 2/3 - 1/3 and one of two sums, which are twins."""
    found = draw(Wishes(skill=WishedSkill.FRACTIONS, denominators=(3,)))
    assert not found.drawn
    typed = {one.typed for one in found.problems}
    assert typed in ({"2/3 - 1/3", "1/3 + 2/3"}, {"2/3 - 1/3", "2/3 + 1/3"})


def test_a_strategy_that_is_wished_for_suits() -> None:
    """Every difference of measures can be counted up."""
    for one in draw(replace(MEASURES, strategy=COUNT_UP)).problems[:5]:
        assert unsuited(one.statement, COUNT_UP) is None  # type: ignore[arg-type] # a question


def test_the_model_sees_what_the_catalogue_sees() -> None:
    """Two roads: the classes of the drawn problems, and each problem looked at by itself."""
    wishes = Wishes(skill=WishedSkill.COMPARE_DECIMALS)
    open_doubts = doubts(wishes)
    every = drawn_space(wishes, open_doubts)
    assert every.listed == len(draw(wishes).problems)
    for kind in every.kinds:
        members = every.members(kind)
        assert kind.twins == len(members)
        for one in members[:3]:
            assert kind.tells == settles(one.statement, open_doubts)
            assert kind.sort.regroups == needs(one.statement).regrouping
            assert kind.level <= difficulty(one.statement).score
            assert all(one.numbers[place] == number for place, number in kind.always)
    shown = {slip.pattern for one in draw(wishes).problems for slip in shows(one.statement)}
    assert set(draw(wishes).watched) <= shown
