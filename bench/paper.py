"""25 papers of 12 answers that come back: from a phone's photos and from a scanner, to what each cell says.

Run: `python bench/paper.py`. The photos are simulated ones of 12 megapixels, as JPEG; the scan is one PDF of
25 pages in grey at 300 dpi. `found and cut` decodes every picture in a process of its own, finds the page and
cuts its places for answers out; `cells read` is the network alone. Beside them, in the same run: the same
photos decoded by Pillow and nothing else. CPU s is what all processes worked together: on a busy machine it
says more than the clock. Memory is that of a new process that finds, cuts and reads the photos, and of the
largest that decodes one. Goal: under 20 seconds on two cores for everything. What must be installed for it
comes last.
"""

import os
import resource
import sys
from collections.abc import Callable
from importlib.metadata import distribution
from io import BytesIO
from pathlib import Path
from tempfile import TemporaryDirectory
from time import perf_counter

from measuring import process_megabytes
from msgspec.structs import replace
from PIL import Image

import onewhole.presses.paper
from onewhole.presses.paper.ink import read_ink
from onewhole.presses.paper.reading_pages import KnownPaper, PagesRead, read_pages

sys.path.insert(0, str(Path(__file__).parents[1]))

from tests.kit.papers import texts
from tests.kit.photos import EASY, jpeg, photographed, scanned
from tests.kit.written_papers import FINE, dotted, known, paper

CODES = [f"K{number:02d}" for number in range(1, 26)]
SHEET = texts()["windows"]
PACKAGES = ("opencv-python-headless", "pillow-heif", "pypdfium2")
MEGA = 1_000_000


def main() -> None:
    if sys.argv[1:]:
        alone(Path(sys.argv[1]))
        return
    papers = [paper(SHEET, 1, code, dotted) for code in CODES]
    shot = replace(EASY, longest=4000)
    photos = [
        (f"{code}.jpg", jpeg(photographed(one, FINE, shot, at)))
        for at, (code, one) in enumerate(zip(CODES, papers, strict=True))
    ]
    scan = [("scan.pdf", scanned(papers))]
    by = known(SHEET)
    print(f"{os.cpu_count()} cores; {sum(len(one) for _, one in photos) / MEGA:.0f} MB of photos")
    print(f"{'25 papers of 12':34} {'s':>6} {'CPU s':>6} {'pages':>6} {'cells':>6}")
    plain = taken("decoded by Pillow, nothing else", lambda: decoded(photos))
    cut = taken("photos: found and cut", lambda: read(photos, by))
    taken("a scan of 25 pages: found and cut", lambda: read(scan, by))
    places = [cell for page in read(photos, by).pages for cell in page.cells]
    crops, finer = [cell.crop for cell in places], [cell.finer for cell in places]
    ink = taken("cells read", lambda: read_ink(crops, finer), len(crops))
    with TemporaryDirectory() as folder:
        for name, content in photos:
            (Path(folder) / name).write_bytes(content)
        print(f"memory: {process_megabytes([sys.executable, __file__, folder]):.0f} MB a process at most")
    print(f"everything is {(cut + ink) / plain:.1f} times decoding, by the processor's time")
    for name in PACKAGES:
        files = distribution(name).files or ()
        print(
            f"{name}: {sum(Path(str(one.locate())).stat().st_size for one in files) / MEGA:.0f} MB installed"
        )
    weights = Path(onewhole.presses.paper.__path__[0]) / "ink.onnx"
    print(f"weights of the network: {weights.stat().st_size / MEGA:.1f} MB")


def alone(folder: Path) -> None:
    """Read the photos of a folder, as a process that has nothing else in its memory."""
    files = ((path.name, path.read_bytes()) for path in sorted(folder.iterdir()))
    found = read_pages(files, [known(SHEET)], CODES)
    cut = [cell for page in found.pages for cell in page.cells]
    read_ink([cell.crop for cell in cut], [cell.finer for cell in cut])


def decoded(photos: list[tuple[str, bytes]]) -> None:
    for _, content in photos:
        with Image.open(BytesIO(content)) as picture:
            picture.convert("L").load()


def read(files: list[tuple[str, bytes]], by: KnownPaper) -> PagesRead:
    found = read_pages(files, [by], CODES)
    assert [page.pupil for page in found.pages] == CODES, found.found
    return found


def taken(name: str, act: Callable[[], object], cells: int = 0) -> float:
    """Print what an act takes, and return the seconds that processors worked at it."""
    before, began = worked(), perf_counter()
    found = act()
    clock, cpu = perf_counter() - began, worked() - before
    pages = found.pages if isinstance(found, PagesRead) else ()
    many = cells or sum(len(page.cells) for page in pages)
    print(f"{name:34} {clock:6.1f} {cpu:6.1f} {len(pages) or '':>6} {many or '':>6}")
    return cpu


def worked() -> float:
    kinds = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    return sum(used.ru_utime + used.ru_stime for used in map(resource.getrusage, kinds))


if __name__ == "__main__":
    main()
