"""A recording is listened to, in a process of its own, on this machine: words and their times come out."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from fractions import Fraction
from importlib.util import find_spec
from subprocess import Popen
from tempfile import TemporaryDirectory
from typing import Final

import msgspec
from msgspec import Struct

from onewhole.errors import OnewholeError
from onewhole.notations.sentences.listened import Listened
from onewhole.presses.limited import limited
from onewhole.presses.listening.listener import Graph, Wordings, listen_for_parent
from onewhole.presses.listening.scores import FRAMES, RATE
from onewhole.presses.resampling import resampled
from onewhole.presses.sound import Sound
from onewhole.walkthroughs.listening.grammar import grammar
from onewhole.walkthroughs.listening.slips import (
    HeardOtherwise,
    NumberAsked,
    followed,
    questions,
    slips,
)
from onewhole.walkthroughs.listening.words import HeardWord

#: The most seconds of one part that are listened to.
LONGEST: Final = 1200
#: Bytes that listening may take, and seconds of the processor: so many, and so many for each second of sound.
MEMORY: Final = 4 * 1024**3
SECONDS, FOR_A_SECOND = 60, 4
#: A little of the sound to either side of a number is listened to with it, in frames.
BESIDE: Final = 5


class NotHeard(OnewholeError, RuntimeError):
    """A part could not be listened to: why, and what to do next."""


class HeardPart(Struct, frozen=True):
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
    arcs = tuple((arc.start, arc.end, arc.chance, arc.word, arc.item) for arc in graph.arcs)
    with _listener(sound) as listener:
        found = msgspec.json.decode(
            _ask(listener, Graph(arcs, graph.last)), type=list[tuple[str, int, int, int]]
        )
        words = tuple(
            HeardWord(word, item, Fraction(start, FRAMES), Fraction(end, FRAMES))
            for word, item, start, end in found
        )
        whole = followed(steps, words)
        asked = questions(steps, words, whole=whole)
        fits = [_fits(listener, one) for one in asked]
    return HeardPart(words, followed=whole, slips=slips(steps, words, asked, fits))


def _fits(listener: "Popen[bytes]", asked: NumberAsked) -> list[int]:
    """Return how well each wording of a number fits."""
    start, end = max(0, int(asked.start * FRAMES) - BESIDE), int(asked.end * FRAMES) + BESIDE
    return msgspec.json.decode(_ask(listener, Wordings(asked.wordings, start, end)), type=list[int])


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
    with (
        TemporaryDirectory(prefix="onewhole-") as folder,
        limited(listen_for_parent, folder, memory=MEMORY, seconds=seconds) as process,
    ):
        _send(process, at_16_000(sound))
        yield process


def at_16_000(sound: Sound) -> bytes:
    """Return the samples of a sound, 16,000 a second."""
    return resampled(sound, RATE).samples.tobytes()


def _send(process: "Popen[bytes]", message: bytes) -> None:
    assert process.stdin is not None
    process.stdin.write(len(message).to_bytes(4, "little") + message)
    process.stdin.flush()


def _ask(process: "Popen[bytes]", asked: Graph | Wordings) -> bytes:
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
