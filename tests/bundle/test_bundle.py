"""The folder to unpack: started by a double-click where there is no Python, a night and a film by hand."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

import av
import pytest
from playwright.sync_api import Page, expect

from tests.kit.browsers import NEEDS_CHROMIUM, chromium, window
from tests.kit.how_much import sample
from tests.kit.round_by_keys import (
    go,
    mark_the_papers,
    print_it,
    regroup,
    set_the_page,
    show_it,
    start_the_class,
)
from tests.kit.unpacked import FOLDER, IS_NAMED, bare, ended, rooted, started
from tests.kit.waiting import GIVE_UP, until

# What a page is expected to show, it may show late on a busy machine.
expect.set_options(timeout=GIVE_UP * 1000)

pytestmark = [
    *NEEDS_CHROMIUM,
    pytest.mark.skipif(not IS_NAMED, reason="`make bundle-check` builds the folder and tries it"),
]

PROGRAM = FOLDER / "onewhole"
ROOM12 = Path(__file__).parents[2] / "examples" / "room12"
#: A browser on a screen: it writes down what it was told to open, and which libraries it was to load first.
BROWSER = '#!/bin/sh\nprintf \'%s\' "$*" > "$0.told"\nprintf \'%s\' "$LD_LIBRARY_PATH" > "$0.libraries"\n'
CAN_ROOT = sys.platform == "linux" and os.geteuid() == 0 and shutil.which("unshare") is not None


def _typed(home: Path, *words: str | Path) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [PROGRAM, *words], env=bare(home), cwd=home, capture_output=True, text=True, check=False
    )


def test_a_night_and_a_film_by_hand_in_a_root_with_nothing_else(tmp_path: Path) -> None:
    """No Python, no shell, no library but C's own and zlib: class, page, film, marks, groups, paper, Stop."""
    if not CAN_ROOT:
        pytest.skip("only an administrator may give a program a root of its own")
    command = rooted(tmp_path / "root")
    assert not list((tmp_path / "root").rglob("python3.1?"))[1:], "the folder's own and no other"
    with (
        started([*command, "serve"], {"HOME": "/home", "PATH": os.environ["PATH"]}) as program,
        chromium() as browser,
        window(browser, program.address) as page,
    ):
        start_the_class(page)
        set_the_page(page)
        print_it(page)
        show_it(page)
        _film(page)
        mark_the_papers(page)
        regroup(page)
        _stop(page)
        assert ended(program.process) == 0
    kept = tmp_path / "root" / "home" / ".local" / "share" / "onewhole"
    assert (kept / "my.class").stat().st_size > 0
    (film,) = kept.rglob("walkthrough.mp4")
    with av.open(str(film)) as made:
        assert sum(1 for _ in made.decode(video=0)) > 100


def _film(page: Page) -> None:
    go(page, "Week")
    go(page, "Walkthrough")
    page.get_by_role("button", name="Make the film", exact=True).click()
    page.get_by_role("link", name="Look at it").click(timeout=GIVE_UP * 1000)
    expect(page.get_by_role("heading", name="Chapters")).to_be_visible()
    assert until(lambda: page.evaluate("document.querySelector('video').readyState >= 1"))


def _stop(page: Page) -> None:
    page.get_by_role("link", name="Stop").click()
    page.get_by_role("button", name="Stop").click()
    expect(page.get_by_role("heading", name="onewhole has stopped")).to_be_visible()


def test_a_double_click_opens_the_browser_and_a_second_one_opens_it_again(tmp_path: Path) -> None:
    """Into the same program; the browser loads its own libraries; data is in the person's data folder."""
    browser = tmp_path / "browser"
    browser.write_text(BROWSER)
    browser.chmod(0o700)
    environment = bare(tmp_path, DISPLAY=":none", BROWSER=f"{browser} %s")
    told = tmp_path / "browser.told"
    with started([PROGRAM], environment) as program:
        assert "A window opens in your browser." in program.said
        until(told.exists)
        first = told.read_text()
        told.unlink()
        second = subprocess.run(
            [PROGRAM], env=environment, capture_output=True, text=True, check=True, cwd=tmp_path
        )
        assert f"served already (process {program.process.pid})" in second.stdout
        until(told.exists)
        assert told.read_text() == first
        assert first.startswith(f"file://{tmp_path}/.local/share/onewhole/open/")
        assert (tmp_path / "browser.libraries").read_text() == ""


def test_what_is_typed_is_done_too(tmp_path: Path) -> None:
    """A night of the kite club and its film, spoken: processes of its own, letters, voice, solver."""
    sheet = tmp_path / "sheet.txt"
    lines = (ROOM12 / "sheet.txt").read_text().splitlines()
    sheet.write_text("\n".join(lines[: sample(13, 13, 30)]) + "\n")
    made = _typed(tmp_path, "night", ROOM12, "--to", "out")
    assert made.returncode == 0, made.stderr
    assert {"pupil.pdf", "key.pdf", "morning.pdf"} <= {path.name for path in (tmp_path / "out").iterdir()}
    filmed = _typed(tmp_path, "film", sheet, "--to", "film", "--voice", "synthetic")
    assert filmed.returncode == 0, filmed.stderr
    with av.open(str(tmp_path / "film" / "walkthrough.mp4")) as film:
        assert [one.type for one in film.streams][:2] == ["video", "audio"]


def test_the_licences_lie_in_the_folder() -> None:
    """The terms of the whole, a bill of all that is in it, and the texts."""
    assert "GNU General Public License" in (FOLDER / "LICENCE.txt").read_text()
    notice = (FOLDER / "NOTICE.txt").read_text()
    for name in ("x264", "x265", "espeak-ng", "FFmpeg", "num2words"):
        assert name in notice
    bill = json.loads((FOLDER / "sbom.cdx.json").read_text())
    names = {one["name"] for one in bill["components"]}
    assert {"av", "typst", "Python", "libcrypto", "PyInstaller"} <= names
    assert all(one["licenses"] for one in bill["components"])
    assert "THIRD-PARTY-NOTICES.md" in {path.name for path in FOLDER.iterdir()}
