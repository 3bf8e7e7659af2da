"""A recording is listened to, in a process of its own, on this machine: words and their times come out."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from fractions import Fraction
from importlib.util import find_spec
from subprocess import Popen
from typing import Final

import msgspec

from onewhole.errors import OnewholeError
from onewhole.notations.sentences.listened import Listened
from onewhole.presses.limited import limited
from onewhole.presses.listening.listener import FRAMES, RATE, Comparing, Graph, listen_for_parent
from onewhole.presses.resampling import resampled
from onewhole.presses.sound import Sound
from onewhole.walkthroughs.listening.grammar import grammar
from onewhole.walkthroughs.listening.slips import HeardOtherwise, doubts, followed
from onewhole.walkthroughs.listening.words import HeardWord

#: The most seconds of one part that are listened to.
LONGEST: Final = 1200
#: Bytes that listening may take, and seconds of the processor: so many, and so many for each second of sound.
MEMORY: Final = 2 * 1024**3
SECONDS, FOR_A_SECOND = 60, 4
#: By how much what was said must fit better than what is written to be told, in natural logarithms. Set on
#: three tuning voices only: of 17 slips told there all but one had 91 to 311; numbers that were only heard
#: otherwise had 47 and less, or were cut at other places than words were.
MARGIN: Final = 60
#: A little of the sound to either side of a number is listened to with it, in frames.
BESIDE: Final = 5


class NotHeard(OnewholeError, RuntimeError):
    """A part could not be listened to: why, and what to do next."""


@dataclass(frozen=True, slots=True)
class HeardPart:
    """What was heard of a part: its words, whether they follow its script, and its slips of the tongue."""

    words: tuple[HeardWord, ...]
    followed: bool
    slips: tuple[HeardOtherwise, ...]


def can_listen() -> bool:
    """Say whether there is a recognizer on this machine."""
    return find_spec("pocketsphinx") is not None


def heard_part(sound: Sound, steps: Sequence[Sequence[Sequence[Listened]]]) -> HeardPart:
    """Listen to a part of a film. Raises NotHeard."""
    graph = grammar(steps)
    asked = Graph(
        tuple((arc.start, arc.end, arc.chance, arc.word, arc.item) for arc in graph.arcs), graph.last
    )
    with _listener(sound) as listener:
        found = msgspec.json.decode(_ask(listener, asked), type=list[tuple[str, int, int, int]])
        words = tuple(
            HeardWord(word, item, Fraction(start, FRAMES), Fraction(end, FRAMES))
            for word, item, start, end in found
        )
        whole = followed(steps, words)
        slips = tuple(one for one in doubts(steps, words, whole=whole) if _sure(listener, one))
    return HeardPart(words, followed=whole, slips=slips)


def _sure(listener: "Popen[bytes]", doubt: HeardOtherwise) -> bool:
    """Say whether what was heard fits clearly better than what is written, each in its best wording."""
    base = doubt.heard[0]
    said = [0, *(_better(listener, doubt, base, other) for other in doubt.heard[1:])]
    written = [_better(listener, doubt, base, other) for other in doubt.written]
    known = [score for score in written if score is not None]
    return bool(known) and min(known) - min(score for score in said if score is not None) >= MARGIN


def _better(
    listener: "Popen[bytes]", doubt: HeardOtherwise, first: tuple[str, ...], second: tuple[str, ...]
) -> int | None:
    """Return how much better the first wording fits than the second; None where one does not fit at all."""
    start, end = max(0, int(doubt.start * FRAMES) - BESIDE), int(doubt.end * FRAMES) + BESIDE
    pair = Comparing(first, second, start, end)
    return msgspec.json.decode(_ask(listener, pair), type=int | None)


@contextmanager
def _listener(sound: Sound) -> Iterator["Popen[bytes]"]:
    if not can_listen():
        raise NotHeard(
            "The recording cannot be listened to: pocketsphinx is not installed",
            remedy="Install it, or go on without: captions are then spread in proportion.",
        )
    if sound.seconds > LONGEST:
        raise NotHeard(
            f"A part is longer than {LONGEST // 60} minutes and is not listened to",
            remedy="Record it in shorter parts.",
        )
    seconds = SECONDS + FOR_A_SECOND * int(sound.seconds)
    with limited(listen_for_parent, memory=MEMORY, seconds=seconds) as process:
        _send(process, at_16_000(sound))
        yield process


def at_16_000(sound: Sound) -> bytes:
    """Return the samples of a sound, 16,000 a second."""
    return resampled(sound, RATE).samples.tobytes()


def _send(process: "Popen[bytes]", message: bytes) -> None:
    assert process.stdin is not None
    process.stdin.write(len(message).to_bytes(4, "little") + message)
    process.stdin.flush()


def _ask(process: "Popen[bytes]", asked: Graph | Comparing) -> bytes:
    """Send a question and return the answer. Raises NotHeard where the process ended."""
    assert process.stdout is not None
    try:
        _send(process, msgspec.json.encode(asked))
        length = process.stdout.read(4)
        answer = process.stdout.read(int.from_bytes(length, "little"))
    except BrokenPipeError:
        answer = b""
    if not answer:
        raise NotHeard(
            "A part could not be listened to: it took too much memory or time",
            remedy="Record it again, shorter, or go on without.",
        )
    return answer
