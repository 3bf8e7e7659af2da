"""Help: examples of what may be typed, each to copy or to begin a page with."""

from onewhole.desk.page.examples import EXAMPLES, STORY, setting_examples, story_buttons
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import HtmlPage


def look(_request: PageRequest) -> HtmlPage:
    """Show the help where there is no class yet."""
    return _shown()


def of_class(_request: PageRequest) -> HtmlPage:
    """Show the help beside the other pages of a class."""
    return _shown()


def _shown() -> HtmlPage:
    words = {
        "examples": EXAMPLES,
        "story": STORY,
        "buttons": story_buttons(),
        "settings": setting_examples(),
    }
    return HtmlPage("help_page.html", words)
