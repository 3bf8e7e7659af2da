"""The film press: a timeline becomes an MP4 file a shape; chapters that stay are not drawn again."""

import hashlib
import secrets
from collections.abc import Callable, Sequence
from concurrent.futures import Future, as_completed
from concurrent.futures.process import BrokenProcessPool
from contextlib import suppress
from functools import partial
from pathlib import Path
from re import compile as pattern

import av
import numpy as np
from msgspec import Struct
from numpy.typing import NDArray

from onewhole.languages.class_words import ClassWords
from onewhole.presses.encoding import encode_part, encode_sound
from onewhole.presses.files import FileRefused
from onewhole.presses.frames import numbers, parts
from onewhole.presses.joining import join
from onewhole.presses.own_code import code_digest
from onewhole.presses.workers import workers
from onewhole.walkthroughs.timeline import Timeline

#: Chapters are drawn by so many processes.
WORKERS = 2
#: The rooms whose code decides what a frame looks like, and the libraries that do.
_ROOMS = ("number", "statements", "pictures", "notations", "walkthroughs", "writers", "presses")
_KEPT = pattern(r"[0-9a-f]{64}\.mp4")

Sound = tuple[NDArray[np.int16], int]


class Filmed(Struct, frozen=True):
    """What making a film took: its seconds, the frames drawn now, parts made and kept, bytes of its files."""

    seconds: float
    frames_drawn: int
    parts_rendered: int
    parts_kept: int
    bytes: int


def film(
    takes: Sequence[tuple[Timeline, Path]],
    words: ClassWords,
    *,
    sound: Sound | None,
    note: str,
    cache: Path,
    progress: Callable[[int, int], None],
    beside: Sequence[Timeline] = (),
) -> Filmed:
    """Write a film: H.264, AAC where there is sound, captions as a text track, a chapter a problem.

    ``takes`` are one film on boards of one shape or several, each with its file. ``sound`` are samples of one
    channel and how many there are a second; ``note`` goes into a file's comment. ``beside``
    are the film told in other languages, for further tracks of text. ``cache`` is a folder in
    which the parts stay for the next film; ``progress`` is told how many frames are there of how many.
    Whatever goes wrong, a file holds the old film whole or the new one.

    Raises FileRefused.
    """
    shots = [part for timeline, _ in takes for part in parts(timeline)]
    path = takes[0][1]
    counts = [len(numbers(part)) for part in shots]
    kept = [cache / f"{_key(part, words)}.mp4" for part in shots]
    wanted = {place: at for at, place in enumerate(kept) if not place.exists()}
    jobs: dict[Path, Callable[[Path], object]] = {}
    track = None
    if sound is not None:
        track = cache / f"{_key(sound[1], hashlib.sha256(sound[0].tobytes()).hexdigest())}.mp4"
        if not track.exists():
            jobs[track] = partial(encode_sound, *sound)
    jobs |= {place: partial(encode_part, shots[at], words) for place, at in wanted.items()}
    done = sum(count for count, place in zip(counts, kept, strict=True) if place not in wanted)
    progress(done, sum(counts))

    def made(place: Path) -> None:
        nonlocal done
        if place in wanted:
            done += sum(count for count, same in zip(counts, kept, strict=True) if same == place)
            progress(done, sum(counts))

    try:
        _work(jobs, made)
        rest = iter(kept)
        for timeline, path in takes:
            chapters = [next(rest) for _ in timeline.chapters]
            _beside(path, partial(join, timeline, chapters, track, note, beside=beside))
    except (OSError, av.FFmpegError) as error:
        raise FileRefused(
            f"The film cannot be written: {error.strerror or error}",
            where=str(path),
            remedy=f"See that the disk has room, take away the folder {cache.name} and film again.",
        ) from error
    except BrokenProcessPool as error:
        raise FileRefused(
            "The film cannot be drawn: a process that drew it was ended",
            where=str(path),
            remedy="Close other programs, so that there is memory, and film again.",
        ) from error
    for old in cache.iterdir():
        if _KEPT.fullmatch(old.name) and old not in {*kept, track}:
            old.unlink(missing_ok=True)
    drawn = sum(counts[at] for at in wanted.values())
    rendered = len(wanted)
    size = sum(each.stat().st_size for _, each in takes)
    return Filmed(float(takes[0][0].length), drawn, rendered, len(set(kept)) - rendered, size)


def _work(jobs: dict[Path, Callable[[Path], object]], made: Callable[[Path], None]) -> None:
    """Make each file by its job: one alone in this process, more in two processes."""
    if len(jobs) < WORKERS:
        for place, job in jobs.items():
            _beside(place, job)
            made(place)
        return
    with workers(WORKERS) as pool:
        waiting: dict[Future[None], Path] = {
            pool.submit(_beside, place, job): place for place, job in jobs.items()
        }
        try:
            for ready in as_completed(waiting):
                ready.result()
                made(waiting[ready])
        except BaseException:
            pool.shutdown(wait=False, cancel_futures=True)
            raise


def _beside(path: Path, make: Callable[[Path], object]) -> None:
    """Write a temporary file in the same folder, then rename it; delete it when that fails."""
    beside = path.with_name(f".{path.name[:40]}.{secrets.token_hex(6)}")
    try:
        make(beside)
        beside.replace(path)
    except BaseException:
        with suppress(OSError):
            beside.unlink()
        raise


def _key(*shown: object) -> str:
    """Return a cache key: a hash of what is shown and of the code that draws."""
    return hashlib.sha256(repr((code_digest(_ROOMS), *shown)).encode()).hexdigest()
