"""A script given time: words at a set rate, writing, thinking and quiet, every time on a frame."""

import math
from collections.abc import Callable, Iterable, Mapping
from fractions import Fraction
from types import MappingProxyType

from onewhole.notations.sentences.speech import spoken
from onewhole.notations.text import text
from onewhole.sentences.sentence import Sentence
from onewhole.walkthroughs.cue import Act, Cue, Draw, Fresh, Role, Script, Strike, Write
from onewhole.walkthroughs.lesson import Pace
from onewhole.walkthroughs.timeline import FRAMES, Move, Timed, TimedChapter, Timeline

#: Seconds that a sentence takes at least, that follow it, and that end a chapter in quiet.
LEAST, BREATH, QUIET = Fraction(1), Fraction(2, 5), Fraction(1)
#: Seconds to write a character, and to write a line at least and at most.
CHARACTER, WRITE_LEAST, WRITE_MOST = Fraction(1, 20), Fraction(3, 5), Fraction(5, 2)
#: Seconds to change the picture, to strike a line out, and to wipe the board.
DRAW, STRIKE, FRESH = Fraction(6, 5), Fraction(3, 5), Fraction(2, 5)

_NO_VOICE: Mapping[Sentence, Fraction] = MappingProxyType({})


def timed(
    script: Script,
    pace: Pace,
    voiced: Mapping[Sentence, Fraction] | None = None,
    *,
    speak: Callable[[Sentence], str] = spoken,
) -> Timeline:
    """Return the film in time, in exact seconds that are whole frames.

    A sentence takes ``voiced[sentence]`` seconds where that is given, else its words as spoken (by ``speak``)
    at the pace, and at least 1 second; a breath follows. After a cue's time to think, words and acts start
    together, the acts one after the other. A cue of Role.TRY or Role.TURN has the pace's
    quiet after it. The last cue of a
    chapter has 1 second of quiet at its end, so cues and chapters follow each other without a gap.

    >>> from onewhole.walkthroughs.cue import Chapter
    >>> cue = Cue(Role.OPENING, (Sentence("en-US", ("tonight we cut strips of kite paper",)),))
    >>> timed(Script("", (Chapter("", "", (cue,)),)), Pace()).length  # 7 words, breath, quiet
    Fraction(49, 10)
    """
    chapters: list[TimedChapter] = []
    at = Fraction(0)
    for chapter in script.chapters:
        cues: list[Timed] = []
        start = at
        for number, cue in enumerate(chapter.cues, start=1):
            after = QUIET if number == len(chapter.cues) else Fraction(0)
            says = [
                (sentence, _speaking(sentence, pace, voiced or _NO_VOICE, speak)) for sentence in cue.says
            ]
            quiet = _waited(cue.role, pace) + after
            cues.append(_cue(cue, at, says, on_frame(quiet)))
            at = cues[-1].end
        chapters.append(TimedChapter(chapter.label, chapter.title, start, at, tuple(cues)))
    return Timeline(script.title, tuple(chapters), script.language)


def _waited(role: Role, pace: Pace) -> Fraction:
    """Return how long the family has to work by itself after a cue."""
    match role:
        case Role.TRY:
            return pace.try_first
        case Role.TURN:
            return pace.your_turn
        case _:
            return Fraction(0)


def on_frame(seconds: Fraction) -> Fraction:
    """Return the first frame's time that is not earlier.

    >>> on_frame(Fraction(1, 100)), on_frame(Fraction(2))
    (Fraction(1, 30), Fraction(2, 1))
    """
    return Fraction(math.ceil(seconds * FRAMES), FRAMES)


def _cue(cue: Cue, start: Fraction, says: Iterable[tuple[Sentence, Fraction]], quiet: Fraction) -> Timed:
    begin = start + on_frame(cue.think)
    said: list[tuple[Sentence, Fraction, Fraction]] = []
    at = begin
    for sentence, seconds in says:
        end = at + on_frame(seconds)
        said.append((sentence, at, end))
        at = end + BREATH
    moves: list[Move] = []
    done = begin
    for act in cue.acts:
        moves.append(Move(act, done, done + on_frame(_acting(act))))
        done = moves[-1].end
    return Timed(cue, start, max(at, done) + quiet, tuple(said), tuple(moves))


def _speaking(
    sentence: Sentence, pace: Pace, voiced: Mapping[Sentence, Fraction], speak: Callable[[Sentence], str]
) -> Fraction:
    if sentence in voiced:
        return max(LEAST, voiced[sentence])
    return max(LEAST, Fraction(60 * len(speak(sentence).split()), pace.words_a_minute))


def _acting(act: Act) -> Fraction:
    match act:
        case Write(content=content):
            written = content if isinstance(content, str) else text(content)
            return min(WRITE_MOST, max(WRITE_LEAST, CHARACTER * len(written)))
        case Draw():
            return DRAW
        case Strike():
            return STRIKE
        case Fresh():
            return FRESH
