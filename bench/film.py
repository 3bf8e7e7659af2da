"""The film of Room 12's night, and one scene of ten seconds beside a general-purpose animation library.

Run: `python bench/film.py`. The film has 12 problems, is drawn and encoded from nothing, then again after one
problem was changed, and once more with nothing changed; it has a silent track, so that sound is encoded too.
The scene is strips of which parts move from one to another and back, where the film's board has its picture:
by our frames and encoder, and by matplotlib's FuncAnimation (patches that are moved, 30 frames a second),
both in one process through PyAV, at 1920 x 1080 with the same settings; matplotlib has as many threads of the
encoder as it likes. CPU s is what both cores worked: on a busy machine it says more than the clock. Goal: a
film at 20 times real time or better on two cores.
"""

import logging
import os
import tempfile
from collections.abc import Callable
from fractions import Fraction
from pathlib import Path
from time import perf_counter

import av
import numpy as np
from matplotlib import pyplot as plt
from matplotlib.animation import AbstractMovieWriter, FuncAnimation
from matplotlib.patches import Rectangle

from onewhole.desk.walkthrough.lesson import lesson
from onewhole.pictures.scene import Box, Look, Piece, Scene
from onewhole.pictures.tween import tween
from onewhole.presses.encoding import RATE, SETTINGS, encode_part
from onewhole.presses.footer import Footer
from onewhole.presses.frames import FramePart, numbers
from onewhole.presses.video import Filmed, film
from onewhole.sheets.document import Sheet
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.cue import Draw
from onewhole.walkthroughs.layout import picture_place
from onewhole.walkthroughs.lesson import Pace
from onewhole.walkthroughs.on_board import on_board
from onewhole.walkthroughs.rooms import shared
from onewhole.walkthroughs.script import script
from onewhole.walkthroughs.shape import Shape
from onewhole.walkthroughs.timeline import FRAMES, Move, Timeline
from onewhole.walkthroughs.timing import timed

SHEET = Path(__file__).parents[1] / "examples" / "room12" / "sheet.txt"
#: The scene: changes of so many seconds, one after another with a rest between.
CHANGE, REST, SECONDS = Fraction(6, 5), Fraction(4, 5), 10


def main() -> None:
    text = SHEET.read_text(encoding="utf-8")
    with tempfile.TemporaryDirectory() as folder:
        night(text, Path(folder))
        scene(Path(folder))


def night(text: str, folder: Path) -> None:
    """Print what filming the night takes: from nothing, after a change, and with nothing changed."""
    heads = (
        ("length s", 9),
        ("taken s", 9),
        ("times", 7),
        ("CPU s", 7),
        ("drawn", 6),
        ("parts", 6),
        ("MB", 5),
    )
    print(f"{'the film of a night':22}", *(f"{head:>{width}}" for head, width in heads))
    both = tuple(Shape)
    runs = {
        **{f"{shape.value} alone": (text, (shape,)) for shape in Shape},
        "both, from nothing": (text, both),
        "one problem changed": (changed(text), both),
        "nothing changed": (changed(text), both),
    }
    for name, (typed, shapes) in runs.items():
        began, worked = perf_counter(), processors()
        cache = folder / ("both" if shapes == both else shapes[0].value)
        cache.mkdir(exist_ok=True)
        made = filmed(read_sheet(typed), folder, cache, shapes)
        taken, worked = perf_counter() - began, processors() - worked
        times = made.seconds / taken
        megabytes = made.bytes / 1e6
        print(
            f"{name:22} {made.seconds:9.1f} {taken:9.2f} {times:7.1f} {worked:7.2f} {made.frames_drawn:6} "
            f"{made.parts_rendered:6} {megabytes:5.1f}"
        )


def changed(text: str) -> str:
    """Return the sheet with another problem as number 7."""
    return text.replace("9 5/8 - 4 6/8", "9 3/8 - 4 6/8")


def filmed(sheet: Sheet, folder: Path, cache: Path, shapes: tuple[Shape, ...]) -> Filmed:
    timeline: Timeline = timed(script(lesson(WorkedSheet(sheet))), Pace())
    sound = np.zeros(int(timeline.length * RATE), dtype=np.int16)
    return film(
        [(on_board(timeline, shape), folder / f"{shape.value}.mp4") for shape in shapes],
        sheet.header.words,
        sound=(sound, RATE),
        note="bench",
        cache=cache,
        progress=lambda _done, _of: None,
    )


def scene(folder: Path) -> None:
    """Print what ten seconds of moving strips take, by our frames and by matplotlib's."""
    part = moving()
    ours = seconds(lambda: encode_part(part, read_sheet("1. 1 - 1/2").header.words, folder / "ours.mp4"))
    theirs = seconds(lambda: by_matplotlib(folder / "theirs.mp4"))
    print(f"\n{'ten seconds of strips':22} {'taken s':>9} {'drawn':>6} {'ms each':>9} {'ratio':>6}")
    for name, taken, drawn in (
        ("our frames", ours, len(numbers(part))),
        ("matplotlib", theirs, SECONDS * FRAMES),
    ):
        print(f"{name:22} {taken:9.2f} {drawn:6} {1000 * taken / drawn:9.1f} {taken / ours:6.1f}")


def strips(moved: int) -> Scene:
    """Return two strips of eight eighths; so many eighths of the upper one have moved to the lower one."""
    width, height = Fraction(20), Fraction(24)
    room = [
        Piece(
            f"room {at}", Box(10 + width * (at % 8), 10 + 34 * Fraction(at // 8), width, height), Look.DOTTED
        )
        for at in range(16)
    ]
    parts = [
        Piece(
            f"part {at}",
            Box(10 + width * at, Fraction(44 if at < moved else 10), width, height),
            Look.FILLED,
        )
        for at in range(8)
    ]
    return Scene(Fraction(180), Fraction(80), (*room, *parts))


#: How many eighths have moved after each change.
MOVED = (0, 5, 2, 8, 3, 0)


def moving() -> FramePart:
    place = picture_place(strips(0), shared(Shape.WIDE)[-1].picture)
    moves = [Move(Draw(strips(MOVED[0]), place), Fraction(0), Fraction(0))]
    for at, moved in enumerate(MOVED[1:]):
        start = at * (CHANGE + REST)
        moves.append(Move(Draw(strips(moved), place), start, start + CHANGE))
    return FramePart(Footer("Kites", 1, 1, now=True), tuple(moves), SECONDS * FRAMES)


class ByPyAV(AbstractMovieWriter):
    """Writes matplotlib's frames with the encoder and the settings of the film."""

    def setup(self, fig: plt.Figure, outfile: str, dpi: float | None = None) -> None:
        """Open the file."""
        super().setup(fig, outfile, dpi)
        self.container = av.open(str(outfile), "w", format="mp4")
        self.stream = self.container.add_stream("libx264", rate=FRAMES)
        self.stream.width, self.stream.height = Shape.WIDE.size
        self.stream.pix_fmt = "yuv420p"
        self.stream.codec_context.options = dict(SETTINGS)

    def grab_frame(self, **_kept: object) -> None:
        """Draw a frame and encode it."""
        self.fig.canvas.draw()
        pixels = np.asarray(self.fig.canvas.buffer_rgba())
        self.container.mux(self.stream.encode(av.VideoFrame.from_ndarray(pixels, format="rgba")))

    def finish(self) -> None:
        """Close the file."""
        self.container.mux(self.stream.encode(None))
        self.container.close()


def by_matplotlib(path: Path) -> None:
    plt.switch_backend("agg")
    logging.getLogger("matplotlib").setLevel(logging.ERROR)
    figure = plt.figure(figsize=(Shape.WIDE.size[0] / 100, Shape.WIDE.size[1] / 100), dpi=100)
    place, (wide, high) = picture_place(strips(0), shared(Shape.WIDE)[-1].picture), Shape.WIDE.size
    left, bottom = place.x / wide, 1 - (place.y + place.height) / high
    axes = figure.add_axes((left, bottom, place.width / wide, place.height / high))
    axes.set(xlim=(0, float(strips(0).width)), ylim=(float(strips(0).height), 0))
    axes.axis("off")
    patches: dict[str, Rectangle] = {}
    for piece in strips(0).pieces:
        filled = piece.look is Look.FILLED
        look = {"fill": True, "fc": "white", "hatch": "//"} if filled else {"fill": False, "ls": "--"}
        patches[piece.name] = axes.add_patch(Rectangle((0, 0), 1, 1, ec="black", lw=2, **look))

    def drawn(frame: int) -> list[Rectangle]:
        at, into = divmod(Fraction(frame, FRAMES), CHANGE + REST)
        share = min(into / CHANGE, Fraction(1))
        for piece in tween(strips(MOVED[at]), strips(MOVED[at + 1]), share).pieces:
            box = piece.shape
            assert isinstance(box, Box)
            patches[piece.name].set_bounds(float(box.x), float(box.y), float(box.width), float(box.height))
        return list(patches.values())

    FuncAnimation(figure, drawn, frames=SECONDS * FRAMES, blit=False).save(
        path, writer=ByPyAV(fps=FRAMES), dpi=100
    )
    plt.close(figure)


def processors() -> float:
    """Return the seconds that processors have worked for this process and those it started and that ended."""
    spent = os.times()
    return spent.user + spent.system + spent.children_user + spent.children_system


def seconds(act: Callable[[], object]) -> float:
    began = perf_counter()
    act()
    return perf_counter() - began


if __name__ == "__main__":
    main()
