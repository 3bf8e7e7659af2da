"""The languages there are, by tag. A new language is one package and one line here."""

from collections.abc import Mapping
from types import MappingProxyType

from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.english.words import ClassWords
from onewhole.languages.language import Language

LANGUAGES: Mapping[str, Language] = MappingProxyType({ENGLISH.tag: ENGLISH})

#: What a class speaks that has not said what it speaks.
SPOKEN = ENGLISH


def spoken_by(words: ClassWords) -> Language:
    """Return the language of a class's words.

    >>> spoken_by(ClassWords("strip", "strips")).tag
    'en-US'
    """
    return LANGUAGES[words.language]
