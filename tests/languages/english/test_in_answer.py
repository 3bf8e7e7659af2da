"""What can be said about an answer, in a few words."""

from onewhole.findings.in_answer import Remark, Tier
from onewhole.findings.reach import Reach
from onewhole.findings.skill import Skill
from onewhole.findings.status import Status
from onewhole.languages.english.in_answer import reach_called, remark_told, status_called, tier_told
from onewhole.languages.english.skills import skill_called
from onewhole.notations.sentences.text import text_of


def test_every_value_has_words_of_its_own() -> None:
    """No two are told alike, and none is told by its key's name."""
    for said in (
        [text_of(remark_told(one)) for one in Remark],
        [text_of(told) for one in Tier if (told := tier_told(one))],
        [status_called(one) for one in Status if one is not Status.NONE],
        [reach_called(one) for one in Reach],
        [skill_called(one) for one in Skill],
    ):
        assert len(set(said)) == len(said)
        assert all(said)
        assert not any("_" in one for one in said)


def test_nothing_is_said_where_there_is_nothing_to_say() -> None:
    """An exact fit needs no word beside the pattern, and no finding has no word."""
    assert tier_told(Tier.EXACT) is None
    assert status_called(Status.NONE) == ""


def test_signs_stand_among_the_words() -> None:
    """They are written as on a line, and spoken by a voice."""
    assert text_of(remark_told(Remark.NUMBER_ASKED)) == "one of < = > where a number is asked for"
