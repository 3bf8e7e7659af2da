"""Words with mathematics among them: Unified English Braille, and Nemeth Code between its switches.

Source of the switches: BANA, *Guidance for Transcription Using the Nemeth Code within UEB Contexts* (2018),
as APH teaches it (Nemeth tutorial, lesson 3.8): a blank between a switch and the mathematics, and a mark of
punctuation close behind the second one.
"""

from onewhole.languages.english.tongue import ENGLISH
from onewhole.languages.language import Language
from onewhole.notations.braille.cells import BLANK
from onewhole.notations.braille.chunks import Chunk, closed_up
from onewhole.notations.braille.literary import literary
from onewhole.notations.braille.nemeth import LONG_DASH, nemeth_parts
from onewhole.notations.sentences.runs import runs
from onewhole.sentences.sentence import Sentences
from onewhole.statements.writable import Writable

#: Here mathematics begins, and here it ends.
OPENS, ENDS = "⠸⠩", "⠸⠱"
_EQUALS = "⠨⠅"


def words(text: str) -> tuple[Chunk, ...]:
    """Return a text as words in braille."""
    return tuple(Chunk(cells) for cells in literary(text).split(BLANK) if cells)


def formula(
    thing: Writable, language: Language = ENGLISH, *, asks: bool = False, leads: bool = False
) -> tuple[Chunk, ...]:
    """Return a line between its switches, the words on it outside them.

    ``leads`` begins it with an equals sign; ``asks`` ends it with one and a line to write on.

    >>> from onewhole.notations.braille.chunks import one_line
    >>> from onewhole.statements.reading import read_expression
    >>> one_line(formula(read_expression("7 - 3"), asks=True))
    '⠸⠩⠀⠼⠶⠤⠒⠀⠨⠅⠀⠤⠤⠤⠤⠀⠸⠱'
    """
    found: list[Chunk] = []
    parts = nemeth_parts(thing, language)
    for at, part in enumerate(parts):
        if isinstance(part, str):
            found += words(part)
            continue
        blank = (Chunk(f"{_EQUALS}{BLANK}{LONG_DASH}"),) if asks and at == len(parts) - 1 else ()
        begins = f"{OPENS}{BLANK}{_EQUALS}{BLANK}" if leads and not at else f"{OPENS}{BLANK}"
        found += closed_up((*_at_start(part), *blank), begins, f"{BLANK}{ENDS}")
    return tuple(found)


def _at_start(chunks: tuple[Chunk, ...]) -> tuple[Chunk, ...]:
    """Return chunks of which the first stands behind a blank, as at the beginning of a line."""
    first, *others = chunks
    return (Chunk(first.at_start), *others)


def running(sentences: Sentences, language: Language = ENGLISH) -> tuple[Chunk, ...]:
    """Return sentences as words and mathematics in turn; a number that is only digits stays among the words.

    >>> from onewhole.notations.braille.chunks import one_line
    >>> from onewhole.sentences.typed import typed_sentences
    >>> one_line(running(typed_sentences("Cut 1/2, twice.", "en-US")))
    '⠠⠉⠥⠞⠀⠸⠩⠀⠹⠂⠌⠆⠼⠀⠸⠱⠂⠀⠞⠺⠊⠉⠑⠲'
    """
    found: list[Chunk] = []
    close = False
    for run in runs(sentences):
        added = words(run) if isinstance(run, str) else formula(run, language)
        if isinstance(run, str):
            close = close and not run[:1].isspace()
        if close and found and added:
            found[-1], added = found[-1].between("", added[0].cells), added[1:]
        found += added
        close = not (isinstance(run, str) and run[-1:].isspace())
    return tuple(found)
