"""Spanish: who a class tells its word problems of, and what they do with its wholes."""

from onewhole.errors import InputError
from onewhole.languages.class_words import OwnStory

_REMEDY = (
    "Write who, and last what they do, in Spanish, as in: el club usa."
    " Or name a setting: cocina, huerto or salón de actos."
)

#: A class that has named its wholes and no more.
OUR_CLASS = OwnStory("la clase", "usa")


def read_own_story(typed: str) -> OwnStory:
    """Read who and what they do: all words but the last, and the last.

    Raises InputError where there is no verb in the third person, and for a digit, which a reader could take
    for a number of the problem.

    >>> read_own_story("el club de caminatas recorre")
    OwnStory(who='el club de caminatas', does='recorre')
    """
    *who, does = typed.split() or [""]
    if any(sign.isdigit() for sign in typed):
        msg = f"“{typed[:40]}” has a number, which could be taken for one of the problem"
        raise InputError(msg, remedy=_REMEDY)
    if not who or not does.isalpha() or not does.islower() or not does.endswith(("a", "e")):
        msg = f"“{typed[:40]}” does not say who does what"
        raise InputError(msg, remedy=_REMEDY)
    return OwnStory(" ".join(who), does)
