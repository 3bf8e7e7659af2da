"""Every control of every page can be met by a click, at four widths: nothing lies over it.

CI tries every page on the narrowest and a usual one, `make walk` on all four.
"""

from datetime import UTC, datetime
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page, expect

from tests.kit.browsers import NEEDS_CHROMIUM, PHONE, runs_off, window
from tests.kit.doors import Clock, served
from tests.kit.how_much import WHOLE
from tests.kit.invented import lay_invented_class

pytestmark = NEEDS_CHROMIUM

WEDNESDAY = datetime(2026, 11, 25, 16, tzinfo=UTC)
WIDTHS = (PHONE, (768, 1024), (1280, 800), (1920, 1080)) if WHOLE else (PHONE, (1280, 800))
NIGHT = "/mine/1/night/9"
PAGES = (
    "/mine/1/page/9",
    "/mine/1/week",
    "/mine/1/class",
    "/mine/1/pupil/K05",
    "/mine/keep",
    f"{NIGHT}/marking",
    f"{NIGHT}/tomorrow",
    f"{NIGHT}/walkthrough",
    "/mine/1/page",
    "/mine/1/page/9/change",
    "/mine/1/class/days",
    "/mine/1/class/forms",
    "/mine/1/class/share",
    "/mine/1/exchange",
    "/mine/1/scores",
    "/mine/1/year",
    "/mine/1/printing",
    "/mine/1/class/change",
    "/mine/keep/check",
    "/mine/1/pupil/K05/held",
    "/mine/1/pupil/K05/erase",
    f"{NIGHT}/marking/paste",
    f"{NIGHT}/marking/photos",
    f"{NIGHT}/papers",
    "/mine/1/help",
    f"{NIGHT}/change",
    "/welcome",
)
#: Fold everything out, bring every control into sight in three ways, and name each whose middle is not met.
#: What floats over the page when it is folded out is opened by itself, as a teacher does.
COVERED = """() => {
  const floats = (one) => [...one.children].some((part) => getComputedStyle(part).position === "absolute");
  const seen = (one) =>
    one.checkVisibility({ visibilityProperty: true }) && !one.disabled && !one.matches(".skip");
  const controls = (within) => [...within.querySelectorAll(
    "a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex='0'], iframe, video"
  )].filter(seen);
  const middle = (from, to, most) => (Math.max(from, 0) + Math.min(to, most)) / 2;
  const met = (one) => {
    const { left, right, top, bottom } = one.getClientRects()[0];
    const [x, y] = [middle(left, right, innerWidth), middle(top, bottom, innerHeight)];
    const there = document.elementFromPoint(x, y);
    return one.contains(there) || [...(one.labels ?? [])].some((label) => label.contains(there));
  };
  const covered = (one) => ["nearest", "center", "start"].some((block) => {
    one.scrollIntoView({ block, inline: "nearest" });
    return !met(one);
  });
  const folds = [...document.querySelectorAll("details")];
  for (const one of folds) one.open = true;
  const floating = folds.filter(floats);
  for (const one of floating) one.open = false;
  let tried = controls(document);
  const found = tried.filter(covered);
  for (const one of floating) {
    one.open = true;
    const inside = controls(one);
    tried = tried.concat(inside);
    found.push(...inside.filter(covered));
    one.open = false;
  }
  return [tried.length, found.map((one) => one.outerHTML.slice(0, 160))];
}"""


@pytest.mark.more("browser/test_page_desk.py", "browser/test_marking.py")
@pytest.mark.slow
def test_nothing_lies_over_a_control(browser: Browser, tmp_path: Path) -> None:
    """On the pages of a class, with all that folds folded out, on a phone and on screens."""
    lay_invented_class(tmp_path, WEDNESDAY, read=True)
    with served(tmp_path, Clock(WEDNESDAY)) as door, window(browser, door.address, blank=True) as page:
        found = {address: blocked for address in PAGES if (blocked := covered(page, door.base + address))}
    assert found == {}


def covered(page: Page, address: str) -> list[str]:
    """Return the controls of a page that something lies over, each with the width of the window.

    A page that one would have to scroll sideways is told too.
    """
    page.goto(address)
    found: list[str] = []
    if page.locator("#pages").count() and "1. " in page.locator("#typed").input_value():
        expect(page.locator("#pages img").first).to_be_visible()
    for width, height in WIDTHS:
        page.set_viewport_size({"width": width, "height": height})
        if runs_off(page):
            found.append(f"{width}: the page itself runs off")
        many, blocked = page.evaluate(COVERED)
        assert many > 3
        found += [f"{width}: {one}" for one in blocked]
    return found
