"""English: who a class tells its word problems of, and what they do with its wholes."""

from dataclasses import dataclass

from onewhole.errors import InputError

_REMEDY = "Write who, and last what they do, as in: the trail club walks."
_IRREGULAR = {"has": "have", "does": "do", "goes": "go"}
_HISSES = ("sses", "xes", "zes", "ches", "shes")


@dataclass(frozen=True, slots=True)
class OwnStory:
    """Who a class's stories are about, and the verb that says what they do: the trail club, walks.

    The verb stands in the third person: one club, one class, one team does it.
    """

    who: str
    does: str

    @property
    def do(self) -> str:
        """Return the verb after "did it".

        >>> [OwnStory("it", does).do for does in ("walks", "uses", "carries", "washes", "goes", "ties")]
        ['walk', 'use', 'carry', 'wash', 'go', 'tie']
        """
        if self.does in _IRREGULAR:
            return _IRREGULAR[self.does]
        if self.does.endswith("ies") and len(self.does) > len("ties"):
            return f"{self.does[:-3]}y"
        return self.does[:-2] if self.does.endswith(_HISSES) else self.does[:-1]

    @property
    def typed(self) -> str:
        """Return it as it is typed."""
        return f"{self.who} {self.does}"


#: A class that has named its wholes and no more.
OUR_CLASS = OwnStory("the class", "uses")


def read_own_story(typed: str) -> OwnStory:
    """Read who and what they do: all words but the last, and the last.

    Raises InputError where there is no verb in the third person, and for a digit, which a reader could take
    for a number of the problem.

    >>> read_own_story("the trail club walks")
    OwnStory(who='the trail club', does='walks')
    """
    *who, does = typed.split() or [""]
    if any(sign.isdigit() for sign in typed):
        msg = f"“{typed[:40]}” has a number, which could be taken for one of the problem"
        raise InputError(msg, remedy=_REMEDY)
    if not who or not does.isalpha() or not does.islower() or not does.endswith("s") or does.endswith("ss"):
        msg = f"“{typed[:40]}” does not say who does what"
        raise InputError(msg, remedy=_REMEDY)
    return OwnStory(" ".join(who), does)
