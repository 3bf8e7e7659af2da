"""The teacher's own recording: one sound for each chapter of a film, from one file or from a folder."""

import re
from collections.abc import Iterable, Sequence
from fractions import Fraction
from pathlib import Path
from typing import Final

from msgspec import Struct

from onewhole.presses.decoder import RATE
from onewhole.presses.decoding import (
    LONGEST,
    SHORTEST,
    RecordingRefused,
    recording,
    said,
    silent,
    too_short,
)
from onewhole.presses.named_file import NoFile, TooLarge, content
from onewhole.presses.sound import Sound

#: Chapters that need no recording: they stay silent.
OPTIONAL: Final = frozenset({"opening", "closing"})
#: How the name of a recording ends.
KINDS: Final = (".wav", ".webm", ".m4a")
HEADER: Final = "problem,start"
#: The most bytes of a file of times.
MOST_TIMES: Final = 100_000
#: The most mistakes that one refusal lists.
MOST_TOLD: Final = 12

_TIME: Final = re.compile(r"(?:(\d{1,3}):)?(\d{1,5}(?:\.\d{1,6})?)", re.ASCII)


def voice_files(path: Path, labels: Iterable[str]) -> dict[str, Sound]:
    """Return the teacher's voice for each chapter, by its label, in the order of ``labels``.

    ``path`` is a folder with one recording a problem, named by its label (`1.wav`, `2.webm`, `3.m4a`), or one
    recording with a file of times beside it that has its name and ends in `.csv`:

        problem,start
        opening,0
        1,12.5
        2,1:40

    A start is in seconds, or minutes:seconds. Each problem goes on to the next start; what comes before the
    first start is not used. `opening` and `closing` may be left out. An hour is the most for all together.

    Raises RecordingRefused; its ``mistakes`` are all that is wrong, each with its file, and with line and
    column where it is in the file of times.
    """
    wanted = tuple(labels)
    return _folder(path, wanted) if path.is_dir() else _one_file(path, wanted)


def _folder(path: Path, labels: Sequence[str]) -> dict[str, Sound]:
    mistakes: list[RecordingRefused] = []
    found: dict[str, Path] = {}
    for file in sorted(path.iterdir()):
        if file.suffix.lower() not in KINDS or file.name.startswith("."):
            continue
        if file.stem not in labels:
            mistakes.append(_unknown(file.stem, labels, str(file)))
        elif file.stem in found:
            what = f"There are two recordings for {_called(file.stem)}: {found[file.stem].name} is the other"
            mistakes.append(RecordingRefused(what, file=str(file), remedy="Take one of them out."))
        else:
            found[file.stem] = file
    for label in labels:
        if label not in found and label not in OPTIONAL:
            remedy = f"Record {label}.wav, {label}.webm or {label}.m4a into this folder."
            mistakes.append(_missing(label, str(path), remedy))
    sounds: dict[str, Sound] = {}
    left = Fraction(LONGEST)
    for label in labels:
        if label in found:
            try:
                sounds[label] = recording(found[label], at_most=left)
            except RecordingRefused as refused:
                mistakes.append(refused)
            else:
                left -= sounds[label].seconds
    _check(mistakes)
    return sounds


class _Start(Struct, frozen=True):
    """A row of the file of times; ``column`` is where the time stands."""

    label: str
    time: Fraction
    line: int
    column: int


def _one_file(path: Path, labels: Sequence[str]) -> dict[str, Sound]:
    whole = recording(path)
    times = path.with_suffix(".csv")
    starts, mistakes = _starts(times, labels)
    ends = [row.time for row in starts[1:]] + [whole.seconds]
    sounds: dict[str, Sound] = {}
    for row, end in zip(starts, ends, strict=False):  # no starts, no pieces
        if row.time >= whole.seconds:
            what = f"The recording ends at {said(whole.seconds)}, before {_called(row.label)} starts"
            mistakes.append(_at(row, what, times, "Correct the time, or record to the end."))
            continue
        piece = Sound(whole.samples[int(row.time * RATE) : int(end * RATE)], RATE)
        if piece.seconds < SHORTEST:
            short = too_short(str(times), piece.seconds, SHORTEST)
            mistakes.append(_at(row, short.what, times, "Correct the time of this row or of the next."))
        elif silent(piece):
            what = f"The recording is silent for {_called(row.label)}"
            mistakes.append(_at(row, what, times, "Correct the time, or record this part again."))
        else:
            sounds[row.label] = piece
    _check(mistakes)
    return {label: sounds[label] for label in labels if label in sounds}


def _starts(times: Path, labels: Sequence[str]) -> tuple[list[_Start], list[RecordingRefused]]:
    """Read the file of times: the rows that can be used, and what is wrong."""
    name = str(times)
    try:
        lines = content(times, MOST_TIMES).decode("utf-8-sig").splitlines()
    except FileNotFoundError as error:
        remedy = (
            f"Put this file beside it, with the line {HEADER} and a line for each problem, such as 1,12.5"
        )
        raise RecordingRefused("There are no times for the recording", file=name, remedy=remedy) from error
    except (OSError, NoFile, TooLarge, UnicodeDecodeError) as error:
        remedy = "Save it again as plain text (UTF-8)."
        raise RecordingRefused("The times cannot be read", file=name, remedy=remedy) from error
    if not lines or lines[0].replace(" ", "") != HEADER:
        what = f"The first line is not {HEADER}"
        raise RecordingRefused(what, file=name, line=1, column=1, remedy=f"Write {HEADER} above the times.")
    starts: list[_Start] = []
    mistakes: list[RecordingRefused] = []
    for line, row in enumerate(lines[1:], start=2):
        if row.strip():
            try:
                starts.append(_start(row, line, starts, labels))
            except RecordingRefused as refused:
                mistakes.append(refused.placed(file=name, line=line))
    named = {row.split(",")[0].strip() for row in lines[1:]}
    missing = [label for label in labels if label not in named and label not in OPTIONAL]
    mistakes.extend(_missing(label, name, f"Add a line such as {label},12.5") for label in missing)
    return starts, mistakes


def _start(row: str, line: int, before: Sequence[_Start], labels: Sequence[str]) -> _Start:
    """Read a row. Raises RecordingRefused with the column."""
    cells = row.split(",")
    if len(cells) != 2:
        column = len(row) + 1 if len(cells) == 1 else len(",".join(cells[:2])) + 1
        what = "This row does not have a problem and a start"
        raise RecordingRefused(what, column=column, remedy="Write one comma between them: 1,12.5")
    label, column = cells[0].strip(), len(cells[0]) + 2 + len(cells[1]) - len(cells[1].lstrip())
    at = 1 + len(cells[0]) - len(cells[0].lstrip())
    if label not in labels:
        raise _unknown(label, labels, None, at)
    if label in {other.label for other in before}:
        what = f"There are two starts for {_called(label)}"
        raise RecordingRefused(what, column=at, remedy="Take one of them out.")
    time = _TIME.fullmatch(cells[1].strip())
    if time is None:
        what = f'"{cells[1].strip()}" is not a time'
        raise RecordingRefused(what, column=column, remedy="Write seconds, as in 12.5, or 1:40")
    start = int(time[1] or 0) * 60 + Fraction(time[2])
    if before and start <= before[-1].time:
        what = f"{_called(label).capitalize()} does not start after {_called(before[-1].label)}"
        raise RecordingRefused(what, column=column, remedy="Put the rows in the order they are heard.")
    return _Start(label, start, line, column)


def _at(row: _Start, what: str, times: Path, remedy: str) -> RecordingRefused:
    return RecordingRefused(what, file=str(times), line=row.line, column=row.column, remedy=remedy)


def _called(label: str) -> str:
    return f"the {label}" if label in OPTIONAL else f"problem {label}"


def _unknown(
    label: str, labels: Sequence[str], file: str | None, column: int | None = None
) -> RecordingRefused:
    remedy = f"The film has {', '.join(labels)}."
    return RecordingRefused(f'The film has no problem "{label}"', file=file, column=column, remedy=remedy)


def _missing(label: str, file: str, remedy: str) -> RecordingRefused:
    return RecordingRefused(f"There is no recording of problem {label}", file=file, remedy=remedy)


def _check(mistakes: Sequence[RecordingRefused]) -> None:
    """Raise one refusal that lists all mistakes."""
    if not mistakes:
        return
    if len(mistakes) == 1:
        (refused,) = mistakes
    else:
        told = "\n".join(f"  {mistake}" for mistake in mistakes[:MOST_TOLD])
        more = f"\n  and {len(mistakes) - MOST_TOLD} more" if len(mistakes) > MOST_TOLD else ""
        refused = RecordingRefused(
            f"{len(mistakes)} things about the recordings need a change:\n{told}{more}"
        )
    refused.mistakes = tuple(mistakes)
    raise refused
