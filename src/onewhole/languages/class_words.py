"""The words a class uses, in any language: what one whole is called, how one is opened, whose stories."""

from msgspec import Struct

from onewhole.errors import InputError

#: The BCP 47 tag of American English: what a class speaks that has not said what it speaks.
FIRST_TAG = "en-US"


class OwnStory(Struct, frozen=True):
    """Who a class's stories are about, and the verb that says what they do: the trail club, walks.

    The verb stands in the third person: one club, one class, one team does it.
    """

    who: str
    does: str

    @property
    def typed(self) -> str:
        """Return it as it is typed."""
        return f"{self.who} {self.does}"


class ClassWords(Struct, frozen=True):
    """The words a class uses: what one whole is called, and what is done to open one.

    ``whole`` and ``wholes`` name the whole of a mixed number, and ``regroup`` is the verb before it: open,
    regroup, rename or trade one whole. ``language`` is the BCP 47 tag of the words. ``story`` says of whom
    word problems tell, where the class has said so. ``feminine`` is the gender of the whole's word, in a
    language that has one: una tira, un entero. Raises InputError for a word that is empty or runs over
    a line.

    >>> ClassWords("tira", "tiras", language="es-US", feminine=True).wholes
    'tiras'
    """

    whole: str = "whole"
    wholes: str = "wholes"
    regroup: str = "regroup"
    language: str = FIRST_TAG
    story: OwnStory | None = None
    feminine: bool = False

    def __post_init__(self) -> None:
        """Refuse words that cannot stand in a sentence."""
        for word in (self.whole, self.wholes, self.regroup):
            if not word.strip() or not word.isprintable():
                msg = f"“{word}” cannot stand in a sentence"
                raise InputError(msg, remedy="Use a word such as whole, strip of paper or regroup.")
