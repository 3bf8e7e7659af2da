"""Debian's Chromium for the tests: windows of two widths, the rules of axe, what runs off the page."""

import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from http import HTTPStatus
from importlib.util import find_spec
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, Playwright, sync_playwright

from tests.kit.how_much import MORE, WHOLE
from tests.kit.untried import NO_CHROMIUM
from tests.kit.waiting import until as waited_until

#: The shell is the same engine without the windows of a desktop: a page costs it two thirds of the time.
CHROMIUM = shutil.which("chromium-headless-shell") or shutil.which("chromium")
#: Parts of Chromium that no page of ours can notice. The suggestions below its address bar are three pages of
#: their own, begun anew for every window although none is seen: half of what a window costs. A process for a
#: site to come is begun after each. Chromium takes the last list it is given, so that of Playwright is
#: repeated here.
LEFT_OUT = (
    "WebUIOmniboxPopup WebUIOmniboxAimPopup WebUIOmniboxFullPopup "
    "AvoidUnnecessaryBeforeUnloadCheckSync DestroyProfileOnBrowserClose HttpsUpgrades "
    "HttpsFirstBalancedModeAutoEnable LensOverlay MediaRouter PaintHolding ThirdPartyStoragePartitioning "
    "AvoidCorsURLLoaderRestartOnRedirect OptimizationHints NetworkTimeServiceQuerying AimEnabled "
    "PreconnectToSearch SpareRendererForSitePerProcess"
)
FLAGS = (
    "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking "
    "--disable-component-update --disable-sync "
    # No script of a test runs long enough to earn back what these compilers cost.
    "--js-flags=--no-turbofan,--no-maglev "
    f"--disable-features={','.join(LEFT_OUT.split())}"
)
WIDE, PHONE = (1280, 800), (390, 844)

#: Put this on a file of tests that opens a browser: `pytestmark = NEEDS_CHROMIUM`.
NEEDS_CHROMIUM = [
    pytest.mark.enable_socket,
    pytest.mark.skipif(CHROMIUM is None, reason=NO_CHROMIUM),
]


#: What drives browsers, once for each browser that it has started: a process can have one of it.
_RUNNING: list[Playwright] = []


@contextmanager
def _driver() -> Iterator[Playwright]:
    """Give what drives browsers; it ends with the last browser, whichever was started first."""
    _RUNNING.append(_RUNNING[0] if _RUNNING else sync_playwright().start())
    try:
        yield _RUNNING[0]
    finally:
        driver = _RUNNING.pop()
        if not _RUNNING:
            driver.stop()


@contextmanager
def chromium(*more: str) -> Iterator[Browser]:
    """Start a browser of its own, with a fresh profile; ``more`` are flags."""
    with _driver() as playwright:
        started = playwright.chromium.launch(executable_path=CHROMIUM, args=[*FLAGS.split(), *more])
        yield started
        started.close()


@contextmanager
def window(
    browser: Browser,
    address: str,
    size: tuple[int, int] = WIDE,
    *,
    forgives: tuple[str, ...] = (),
    blank: bool = False,
) -> Iterator[Page]:
    """Open a window; whatever goes wrong in its scripts, and whatever asks another machine, fails the test.

    A message of the console that holds a text of ``forgives`` is let pass: a browser also tells there of
    every answer that refuses. A ``blank`` window has the session of the address and shows no page yet.
    """
    width, height = size
    context = browser.new_context(viewport={"width": width, "height": height}, reduced_motion="reduce")
    page = context.new_page()
    wrong: list[str] = []
    base = address.split("/open", 1)[0].split("/sign-in", 1)[0]
    page.on("pageerror", lambda error: wrong.append(str(error)))
    page.on("console", lambda told: wrong.append(told.text) if told.type in {"error", "warning"} else None)
    page.on(
        "request",
        lambda asked: None if asked.url.startswith((base, "data:", "blob:")) else wrong.append(asked.url),
    )
    if blank:
        assert context.request.get(address, max_redirects=0).status == HTTPStatus.SEE_OTHER
    else:
        page.goto(address)
    yield page
    context.close()
    assert [one for one in wrong if not any(text in one for text in forgives)] == []


def until(page: Page, holds: str) -> None:
    """Wait until something holds on the page; the page's policy lets no test wait inside of it."""
    waited_until(lambda: bool(page.evaluate(holds)), holds)


def settled(page: Page) -> None:
    """Wait until the page is laid out: its style sheets are there, and the fonts that they name."""
    page.wait_for_load_state("load")
    page.evaluate("document.body.offsetWidth; document.fonts.ready.then(() => null)")


#: Run every rule; bring back how many hold, and what breaks the others. Of those that hold, axe need not list
#: each place: that is most of its work. By itself it leaves out the one rule of WCAG 2.2 AA
#: that it knows: how large a target is.
_AXE = """(contrast) => axe.run({
  resultTypes: ["violations"],
  rules: { "target-size": { enabled: true }, "color-contrast": { enabled: contrast } },
}).then(({ passes, violations }) => [
  passes.length,
  violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`)),
])"""


@cache
def _axe_source() -> str:
    spec = find_spec("axe_playwright_python")
    assert spec is not None
    assert spec.origin is not None
    return Path(spec.origin).with_name("axe.min.js").read_text(encoding="utf-8")


def broken_rules(page: Page, *, contrast: bool = MORE) -> list[str]:
    """Return what axe finds against its rules on the settled page, each with its place.

    The colours of all pages stand in a few rules of style and are most of axe's work: `make test` looks at
    them where a page is seen on either screen.
    """
    settled(page)
    page.evaluate(_axe_source())
    held, broken = page.evaluate(_AXE, contrast)
    assert held > 10
    return [str(one) for one in broken]


def broken_on_either_screen(page: Page) -> list[str]:
    """Return what breaks a rule or runs off on a wide screen and on a phone, each time on the settled page.

    Most rules hold on both or on neither, and axe is most of the work: `make test` asks it on the wide screen
    alone, CI for the phone too, without the colours, and `make walk` for everything on both.
    """
    found: list[str] = []
    for size in (WIDE, PHONE):
        page.set_viewport_size({"width": size[0], "height": size[1]})
        if MORE or size == WIDE:
            found += broken_rules(page, contrast=WHOLE or size == WIDE)
        if runs_off(page):
            found.append(f"it runs off at {size[0]}")
    return found


def runs_off(page: Page) -> bool:
    """Say whether one would have to scroll sideways on the settled page."""
    settled(page)
    return bool(page.evaluate("document.documentElement.scrollWidth > document.documentElement.clientWidth"))
