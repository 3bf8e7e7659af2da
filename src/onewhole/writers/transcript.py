"""A film to be read: what is said, what stands on the board, and the pictures in words."""

import re
from collections.abc import Iterator

from onewhole.languages.class_words import ClassWords
from onewhole.languages.language import Language
from onewhole.languages.table import LANGUAGES, spoken_by
from onewhole.notations.sentences.text import text_of
from onewhole.notations.text import printed
from onewhole.walkthroughs.cue import Draw, Fresh, Strike, Write
from onewhole.walkthroughs.timeline import Timed, TimedChapter, Timeline
from onewhole.writers.moments import clock

#: What Markdown would read as a sign of its own.
_SIGNS = re.compile(r"([\\`*_<>#\[\]|~])")


def transcript(timeline: Timeline, words: ClassWords) -> str:
    r"""Return the film as Markdown, ASCII where its words are.

    A heading with its time for each chapter; then cue by cue what is said, what is written on the board, what
    is struck out, and the words of the picture where they change.

    >>> from fractions import Fraction
    >>> from onewhole.walkthroughs.cue import Cue, Role
    >>> from onewhole.sentences.sentence import Sentence
    >>> said = (Sentence("en-US", ("good evening",)),)
    >>> cue = Cue(Role.OPENING, said, (Write("title", "Kites"),))
    >>> from onewhole.walkthroughs.cue import Chapter, Script
    >>> from onewhole.walkthroughs.lesson import Pace
    >>> from onewhole.walkthroughs.timing import timed
    >>> print(transcript(timed(Script("Kites", (Chapter("", "Tonight", (cue,)),)), Pace()), ClassWords()))
    # Kites
    <BLANKLINE>
    ## 0:00 Tonight
    <BLANKLINE>
    Good evening.
    <BLANKLINE>
    On the board:
    <BLANKLINE>
    - Kites
    <BLANKLINE>
    """
    blocks = [f"# {_plain(timeline.title)}"]
    for chapter in timeline.chapters:
        blocks += _chapter(chapter, words, LANGUAGES[timeline.language])
    return "\n\n".join(blocks) + "\n"


def _chapter(chapter: TimedChapter, words: ClassWords, language: Language) -> Iterator[str]:
    film = language.film
    label = f"{chapter.label}. " if chapter.label else ""
    yield f"## {clock(chapter.start)} {_plain(label + chapter.title)}"
    lines: dict[str, str] = {}
    shown = ""
    for cue in chapter.cues:
        if cue.said:
            yield _plain(text_of(sentence for sentence, _, _ in cue.said))
        done = [_plain(line) for line in _done(cue, lines, language)]
        if done:
            yield f"{film.on_the_board}\n\n" + "\n".join(f"- {line}" for line in done)
        for move in cue.moves:
            if not isinstance(move.act, Draw):
                continue
            if (now := text_of(spoken_by(words).working.picture(move.act.scene, words))) != shown:
                shown = now
                yield f"{film.picture} {_plain(now)}"


def _done(cue: Timed, lines: dict[str, str], language: Language) -> Iterator[str]:
    """Say what is done on the board, and keep what is written by its name, to say what is struck out."""
    for move in cue.moves:
        match move.act:
            case Write(name, content, label, leads):
                line = content if isinstance(content, str) else printed(content, language)
                said = (f"{label}. " if label else "") + ("= " if leads else "") + line
                lines[name] = said
                yield said
            case Strike(name):
                yield f"{language.film.struck_out} {lines[name]}"
            case Fresh() if lines:
                yield language.film.fresh_board
            case Fresh() | Draw():
                pass


def _plain(words: str) -> str:
    return _SIGNS.sub(r"\\\1", words)
