"""What a sentence about things in groups claims, checked by dividing with divmod."""

from msgspec.structs import replace

from onewhole.statements.whole_groups import GroupsAsk, WholeGroups
from onewhole.working.whole_groups import divided_in_groups
from tests.kit.heard import Heard, Reads


def _asked(heard: Heard) -> WholeGroups:
    asked = heard.item.statement
    assert isinstance(asked, WholeGroups)
    return asked


def _given(heard: Heard) -> tuple[int, int]:
    asked = _asked(heard)
    return asked.number.parts, asked.by.parts


def _divided(heard: Heard) -> tuple[int, int]:
    number, by = _given(heard)
    return divmod(number, by)


def _all(heard: Heard, groups: tuple[str, ...]) -> list[int]:
    return [int(heard.amount(one)) for one in groups]


def _full(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _all(heard, groups) == [_divided(heard)[0]]


def _left(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _all(heard, groups) == [_divided(heard)[1]] != [0]


def _needed(heard: Heard, groups: tuple[str, ...]) -> bool:
    number, by = _given(heard)
    return _asked(heard).asks is GroupsAsk.NEEDED and _all(heard, groups) == [-(-number // by)]


def _one_more(heard: Heard, groups: tuple[str, ...]) -> bool:
    number, by = _given(heard)
    return _all(heard, groups) == [number // by, number // by + 1] and _needed(heard, groups[1:])


def _left_asked(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _asked(heard).asks is GroupsAsk.LEFT and _all(heard, groups) == [_divided(heard)[1]]


def _number_by(heard: Heard, groups: tuple[str, ...]) -> bool:
    return tuple(_all(heard, groups)) == _given(heard)


def _by_number(heard: Heard, groups: tuple[str, ...]) -> bool:
    return _number_by(heard, groups[::-1])


def division_of(heard: Heard) -> Heard | None:
    """What a listener knows of the division inside; None where nothing is put in groups."""
    asked, working = heard.item.statement, heard.item.working
    if not isinstance(asked, WholeGroups) or working is None:
        return None
    inside = divided_in_groups(working)
    item = replace(heard.item, statement=inside.statement, answer=inside.answer, working=inside)
    return Heard(item, heard.words, heard.labels)


_SO = r"(?:so |in number [a-z ]+?, )?"
GROUP_CLAIMS: dict[str, Reads] = {
    r"(?:that is|now it is|so now we have) (.+) remainder (.+)": lambda heard, groups: (
        tuple(_all(heard, groups)) == _divided(heard)
    ),
    r"divide to find how many groups of (.+) are in (.+)": _by_number,
    r"how many groups of (.+) are needed for (.+)": _by_number,
    r"how many full groups of (.+) are in (.+)": _by_number,
    r"how many of (.+) are left over in groups of (.+)": _number_by,
    r"(.+) (?:is|are) left": _left,
    r"the (.+) left over needs? a group too": _left,
    r"one more than (.+) is (.+)": _one_more,
    r"the (.+) left over do(?:es)? not fill a group": _left,
    r"(.+) (?:is|are) in no full group": _left,
    rf"{_SO}(.+) groups? (?:is|are) full": _full,
    rf"{_SO}(.+) groups? (?:is|are) needed": _needed,
    rf"{_SO}(.+) (?:is|are) left over": _left_asked,
}
#: What can be claimed of a number that answers.
_OF_ANSWER = (r"the answer to number (.+) is (.+)", r"the answer is (.+)", r"so number (.+) comes to (.+)")


def of_groups(claims: dict[str, Reads]) -> dict[str, Reads]:
    """Return what may be claimed of groups, and those of any claims that name the answer."""
    return GROUP_CLAIMS | {pattern: claims[pattern] for pattern in _OF_ANSWER}
