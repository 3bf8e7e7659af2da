"""Run it: `python -m lab.listening --cache FOLDER`, with flite, festival and espeak-ng installed."""

import sys
from argparse import ArgumentParser
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path
from random import Random
from statistics import median
from time import perf_counter

import numpy as np

from lab.listening.improvised import Uttered, improvised
from lab.listening.voices import TUNING, UNSEEN, say, trimmed
from onewhole.desk.walkthrough.film import FilmWishes, told
from onewhole.notations.sentences.listened import Listened, listened
from onewhole.presses.listening import hearing
from onewhole.presses.sound import Sound
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.listening.timed import heard_sentences
from onewhole.walkthroughs.listening.words import number_parts

#: The pages that are told: one to set rules on, others that are kept aside.
SHEETS = {
    name: Path(__file__).with_name(f"{name}.txt")
    for name in ("tuning", "held_out", "aside_1", "aside_2", "aside_3")
}
Steps = Sequence[Sequence[Sequence[Listened]]]


@dataclass(slots=True)
class Film:
    """What came of one film by one voice."""

    voice: str
    planted: int = 0
    caught: int = 0
    false: int = 0
    parts: int = 0
    followed: int = 0
    seconds: float = 0
    taken: float = 0
    starts: list[float] = field(default_factory=list)
    ends: list[float] = field(default_factory=list)
    spread: list[float] = field(default_factory=list)
    missed: list[str] = field(default_factory=list)
    wrong: list[str] = field(default_factory=list)


def main(arguments: Sequence[str] | None = None) -> int:
    """Print the table."""
    parser = ArgumentParser(prog="python -m lab.listening")
    parser.add_argument("--cache", type=Path, required=True, help="where spoken sentences are kept")
    parser.add_argument("--tuning", action="store_true", help="the voices that were tuned on")
    parser.add_argument("--voices", nargs="*", help="these voices")
    parser.add_argument("--parts", type=int, default=99, help="the first so many parts of the film only")
    parser.add_argument("--slips", type=int, default=12, help="slips in a film, at most one a part")
    parser.add_argument("--seed", type=int, default=2)
    parser.add_argument("--cores", type=int, default=2)
    parser.add_argument("--sheet", choices=SHEETS, default="aside_1", help="which page is told")
    asked = parser.parse_args(arguments)
    asked.cache.mkdir(parents=True, exist_ok=True)
    _, timeline = told(WorkedSheet(read_sheet(SHEETS[asked.sheet].read_text(encoding="utf-8"))), FilmWishes())
    scripts = [
        [[listened(sentence) for sentence in cue.cue.says] for cue in chapter.cues]
        for chapter in timeline.chapters[: asked.parts]
    ]
    films = []
    for voice in asked.voices or (TUNING if asked.tuning else UNSEEN):
        film = Film(voice)
        chance = Random(f"{voice} {asked.seed}")
        told_parts = [
            improvised(steps, chance, 1 if 0 < at <= asked.slips else 0) for at, steps in enumerate(scripts)
        ]
        with ThreadPoolExecutor(asked.cores) as pool:
            for line in pool.map(partial(one, film, cache=asked.cache), scripts, told_parts):
                print(line, file=sys.stderr, flush=True)
        films.append(film)
        print(*film.missed, *film.wrong, sep="\n", file=sys.stderr)
        print(row(film), flush=True)
    return 0


def one(film: Film, steps: Steps, told_as: Sequence[Uttered], cache: Path) -> str:
    """Speak a part, listen to it, and count."""
    chance = Random(len(told_as))
    rate = 16_000
    pieces: list[np.ndarray[tuple[int], np.dtype[np.int16]]] = []
    spans: list[tuple[Uttered, float, float]] = []
    at = 0.0
    for uttered in told_as:
        begun = bool(spans) and spans[-1][0].place is None
        quiet = np.zeros(
            int(rate * (chance.uniform(0.05, 0.2) if begun else chance.uniform(0.25, 0.8))), np.int16
        )
        sound = say(film.voice, uttered.words, cache)
        samples = np.frombuffer(hearing.at_16_000(Sound(trimmed(sound), sound.rate)), np.int16)
        pieces += [quiet, samples]
        start = at + len(quiet) / rate
        at = start + len(samples) / rate
        spans.append((uttered, start, at))
    whole = np.concatenate([*pieces, np.zeros(rate // 2, np.int16)]).astype(np.float64)
    noise = np.random.default_rng(len(whole)).normal(0, 0.01 * np.abs(whole).max() / 3, len(whole))
    sound = Sound((whole * 0.8 + noise).clip(-32768, 32767).astype(np.int16), rate)
    began = perf_counter()
    part = hearing.heard_part(sound, steps)
    film.taken += perf_counter() - began
    film.seconds += float(sound.seconds)
    film.parts += 1
    film.followed += part.followed
    left = list(part.slips)
    for uttered, start, end in spans:
        if uttered.slip is None:
            continue
        film.planted += 1
        hit = next(
            (
                slip
                for slip in left
                if start - 0.3 <= slip.at <= end and number_parts(slip.said) == number_parts(uttered.slip)
            ),
            None,
        )
        if hit:
            left.remove(hit)
            film.caught += 1
        else:
            film.missed.append(f"missed: {uttered.words!r} slip {uttered.slip}")
    film.false += len(left)
    for slip in left:
        near = next((uttered.words for uttered, start, end in spans if start - 0.3 <= slip.at <= end), "")
        film.wrong.append(f"false: said {slip.said} for {slip.board} at {float(slip.at):.1f} in {near!r}")
    truth = {uttered.place: (start, end) for uttered, start, end in spans if uttered.place}
    for heard in heard_sentences(steps, part.words) if part.followed else ():
        if (heard.step, heard.sentence) in truth:
            start, end = truth[heard.step, heard.sentence]
            film.starts.append(abs(float(heard.start) - start))
            film.ends.append(abs(float(heard.end) - end))
    return f"  {film.voice}: {float(sound.seconds):.1f} s, {'followed' if part.followed else 'NOT followed'}"


def row(film: Film) -> str:
    """Write a row of the table."""
    return (
        f"| {film.voice} | {film.seconds / 60:.1f} min | {film.caught} of {film.planted} | {film.false} | "
        f"{median(film.starts):.2f} s, {median(film.ends):.2f} s | {np.quantile(film.starts, 0.9):.2f} s | "
        f"{film.followed} of {film.parts} | {film.seconds / film.taken:.1f} |"
    )


if __name__ == "__main__":
    sys.exit(main())
