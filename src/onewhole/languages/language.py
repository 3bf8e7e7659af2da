"""What a notation asks a language for: its tag, its words for counts and units, and lines read aloud."""

from collections.abc import Callable
from dataclasses import dataclass

from onewhole.languages.film_words import FilmWords
from onewhole.languages.page_words import PageWords
from onewhole.languages.told import HomeTold, KeyTold, StoriesTold, WorkingTold
from onewhole.number.unit import Unit
from onewhole.sentences.node import Thing
from onewhole.statements.writable import Writable


@dataclass(frozen=True, slots=True)
class Language:
    """A language: its BCP 47 tag, its own name, its ISO 639-2 code (all that an MP4 track holds), the voice
    that speaks it, a count in words, and what one or so many of a unit or thing are called.

    ``say`` reads a line aloud in words, ``equals`` an equals sign that begins or ends a line, and ``blank``
    what is missing; ``film`` are the words round a film, and ``page`` those on printed pages;
    ``working``, ``home``, ``key`` and ``stories`` say what depends on the problems.
    """

    tag: str
    name: str
    code: str
    voice: str
    count_words: Callable[[int], str]
    called: Callable[[Unit | Thing, int], str]
    say: Callable[[Writable], str]
    equals: str
    blank: str
    film: FilmWords
    page: PageWords
    working: WorkingTold
    home: HomeTold
    key: KeyTold
    stories: StoriesTold
