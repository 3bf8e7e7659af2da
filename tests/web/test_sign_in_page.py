"""The page to sign in, in a real browser: by keyboard, without a broken rule, wide and narrow."""

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser

from onewhole.desk.keep.password import set_password
from tests.kit.browsers import NEEDS_CHROMIUM, broken_on_either_screen, chromium, window
from tests.kit.doors import Served, served

pytestmark = NEEDS_CHROMIUM
RIGHT = "six kites over the hill"


@pytest.fixture(scope="module")
def door(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Served]:
    """A door with a password."""
    folder = tmp_path_factory.mktemp("desk")
    set_password(folder / "room12.class", RIGHT)
    with served(folder, signs_in=True) as made:
        yield made


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    """One browser for all."""
    with chromium() as started:
        yield started


def test_one_signs_in_and_out_by_keyboard(door: Served, browser: Browser) -> None:
    """A wrong password is told, the right one opens, and afterwards nothing is open; on either screen."""
    with window(browser, door.address, forgives=("403",)) as page:
        assert not broken_on_either_screen(page)
        page.keyboard.type("seven kites")
        page.keyboard.press("Enter")
        page.get_by_role("alert").wait_for()
        assert "not the password" in page.get_by_role("alert").inner_text()
        assert not broken_on_either_screen(page)
        page.keyboard.type(RIGHT)
        page.keyboard.press("Enter")
        page.wait_for_url("**/welcome")
        assert not broken_on_either_screen(page)
        page.get_by_role("button", name="Sign out").press("Enter")
        page.wait_for_url("**/sign-in")
        page.goto(f"{door.base}/welcome")
        assert page.url == f"{door.base}/sign-in"
