"""English: who a class tells its word problems of, and what they do with its wholes."""

from onewhole.errors import InputError
from onewhole.languages.class_words import OwnStory

_REMEDY = (
    "Write who, and last what they do, as in: the trail club walks."
    " Or name a setting: kitchen, garden or school hall."
)
_IRREGULAR = {"has": "have", "does": "do", "goes": "go"}
_HISSES = ("sses", "xes", "zes", "ches", "shes")


def verb_after_did(story: OwnStory) -> str:
    """Return the verb after "did it".

    >>> verbs = ("walks", "uses", "carries", "washes", "goes", "ties")
    >>> [verb_after_did(OwnStory("it", does)) for does in verbs]
    ['walk', 'use', 'carry', 'wash', 'go', 'tie']
    """
    if story.does in _IRREGULAR:
        return _IRREGULAR[story.does]
    if story.does.endswith("ies") and len(story.does) > len("ties"):
        return f"{story.does[:-3]}y"
    return story.does[:-2] if story.does.endswith(_HISSES) else story.does[:-1]


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
