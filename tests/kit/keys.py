"""Keyboard alone: from one thing on a page to another by the tab key."""

from playwright.sync_api import Page

#: What has the focus, as it is called: its label, its own words, or its name.
_CALLED = """() => {
  const on = document.activeElement;
  if (!on || on === document.body) return "";
  const label = on.getAttribute("aria-label") ?? on.labels?.[0]?.textContent ?? on.textContent;
  return label.replace(/\\s+/g, " ").trim();
}"""
#: No page of ours has so many stops.
MOST = 400


def go_to(page: Page, name: str, *, times: int = 0) -> None:
    """Press Tab until what is called so has the focus; ``times`` passes over so many of that name first.

    AssertionError with the names on the way where it cannot be reached.
    """
    passed: list[str] = []
    for _ in range(MOST):
        page.keyboard.press("Tab")
        passed.append(str(page.evaluate(_CALLED)))
        if passed[-1] == name:
            if not times:
                return
            times -= 1
    raise AssertionError(f"no {name!r} by Tab; passed {list(dict.fromkeys(passed))}")


def enter(page: Page) -> None:
    """Press Enter on what has the focus and wait for the page it leads to."""
    with page.expect_navigation():
        page.keyboard.press("Enter")
