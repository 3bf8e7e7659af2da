"""Pictures of the browser's pages with the demo's invented class: `python -m tools.screens [FOLDER]`.

Without a folder the wide ones go into docs/pictures, 960 pixels wide and in few colours. With one, every page
goes there as it is, wide and as on a phone, to be looked at.
"""

import sys
import tempfile
from io import BytesIO
from pathlib import Path

from PIL import Image
from playwright.sync_api import Page

from onewhole.desk.classes.class_records import night_pages, open_book
from onewhole.desk.classes.demo import fill_demo
from onewhole.desk.classes.marked_nights import mark_missing
from tests.kit.browsers import PHONE, WIDE, chromium, window
from tests.kit.doors import Clock, Served, served

PICTURES = Path(__file__).parents[1] / "docs" / "pictures"
SHOWN = ("week", "page-desk", "walkthrough", "marking", "tomorrow", "pupil")
COLOURS = 200
#: So many steps into the walkthrough a whole is opened.
STEPS = 13
#: The window for the docs: a laptop's width, tall enough to see what the page is about.
TALL = (1280, 1000)


def main() -> None:
    """Write the pictures."""
    to = Path(sys.argv[1]) if len(sys.argv) > 1 else None
    with tempfile.TemporaryDirectory() as folder, served(Path(folder), Clock()) as door:
        fill_demo(door.door.books.put_in("demo", open_book), door.door.now())
        mark_missing(door.door.books["demo"], 1, lambda _done, _of: None)
        with chromium() as browser:
            for size in (WIDE, PHONE) if to else (TALL,):
                opened = door.access.sessions.new_key()
                with window(browser, f"{door.base}/open?key={opened}", size) as page:
                    for name, address in addresses(door).items():
                        take(page, door.base + address, name, size, to)


def addresses(door: Served) -> dict[str, str]:
    """Return the pages of the last night that was marked, by name."""
    nights = night_pages(door.door.books["demo"], 1)
    marked, tonight = nights[-2], nights[-1]
    night = f"/demo/1/night/{marked.night.number}"
    return {
        "welcome": "/welcome",
        "week": "/demo/1/week",
        "page-desk": f"/demo/1/page/{tonight.kept.number}",
        "walkthrough": f"{night}/walkthrough",
        "marking": f"{night}/marking",
        "tomorrow": f"{night}/tomorrow",
        "pupil": "/demo/1/pupil/K02",
        "class": "/demo/1/class",
        "keep": "/demo/keep",
    }


def take(page: Page, address: str, name: str, size: tuple[int, int], to: Path | None) -> None:
    """Take one picture: all of the page to be looked at, the first screen of it for the docs."""
    page.goto(address)
    page.wait_for_load_state("networkidle")
    if name == "walkthrough":
        for _ in range(STEPS):
            page.frame_locator("#board").get_by_role("button", name="Next step").click()
    if to is not None:
        to.mkdir(parents=True, exist_ok=True)
        page.screenshot(path=to / f"{name}-{size[0]}.png", full_page=True)
        return
    if name in SHOWN:
        drawn = Image.open(BytesIO(page.screenshot())).convert("RGB")
        small = drawn.resize((960, 960 * drawn.height // drawn.width), Image.Resampling.LANCZOS)
        path = PICTURES / f"screen-{name}.png"
        small.quantize(COLOURS, Image.Quantize.MEDIANCUT).save(path, optimize=True)
        print(f"docs/pictures/{path.name}")


if __name__ == "__main__":
    main()
