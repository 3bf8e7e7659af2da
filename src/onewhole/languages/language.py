"""What a notation asks a language for: its tag, its words for counts and units, and lines read aloud."""

from collections.abc import Callable, Mapping
from typing import Protocol

from msgspec import Struct

from onewhole.languages.class_words import ClassWords, OwnStory
from onewhole.languages.film_told import AfterTold, LinesTold, MistakeTold, OpeningTold
from onewhole.languages.film_words import FilmWords
from onewhole.languages.line_words import LineWords
from onewhole.languages.page_words import PageWords
from onewhole.languages.told import HomeTold, KeyTold, StoriesTold, WorkingTold
from onewhole.number.unit import Unit
from onewhole.sentences.node import Thing
from onewhole.statements.writable import Writable


class CountWords(Protocol):
    """Say a count in words, as it stands before what is counted: one strip is una tira in Spanish."""

    def __call__(self, count: int, of: Unit | Thing | None = None) -> str:
        """Say it; nothing is counted where ``of`` is left out."""
        ...


class Language(Struct, frozen=True):
    """A language: its BCP 47 tag, its own name, its ISO 639-2 code (all that an MP4 track holds), the voice
    that speaks it, a count in words, and what one or so many of a unit or thing are called.

    ``usual`` are the words of a class that has not said its own. ``say`` reads a line aloud in words, and
    ``say_before`` a number as it stands before the rest of a typed text: its words, and how many letters
    of the rest they take in. ``short`` leaves out what a whole is made of; ``read_whole`` and ``read_story``
    read what a class calls its wholes, and of whom its stories tell; ``known`` finds such words for what an
    English class says. ``equals`` is an equals sign that begins
    or ends a line, and ``blank`` what is missing; ``line`` are the words that are written on it. ``asks``
    opens a question, where the language writes a mark there. ``film`` are the words round a film, and
    ``page`` those on printed pages; ``working``, ``home``, ``key`` and ``stories`` say what depends on the
    problems, ``class_settings`` are settings of stories that a class chooses by a name,
    and ``opening``, ``lines``, ``after`` and ``mistake`` what a film says beside them.
    """

    tag: str
    name: str
    code: str
    voice: str
    usual: ClassWords
    count_words: CountWords
    called: Callable[[Unit | Thing, int], str]
    say: Callable[[Writable], str]
    say_before: Callable[[Writable, str], tuple[str, int]]
    short: Callable[[ClassWords], ClassWords]
    known: Callable[[str], str | None]
    read_whole: Callable[[str, ClassWords], ClassWords]
    read_story: Callable[[str], OwnStory]
    equals: str
    blank: str
    asks: str
    line: LineWords
    film: FilmWords
    page: PageWords
    working: WorkingTold
    home: HomeTold
    key: KeyTold
    stories: StoriesTold
    opening: OpeningTold
    lines: LinesTold
    after: AfterTold
    mistake: MistakeTold
    class_settings: Mapping[str, ClassWords]
