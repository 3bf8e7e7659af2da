"""The words of the teacher's pages are marked for the standard gettext, every one of them."""

import re
from collections.abc import Iterator
from gettext import NullTranslations
from importlib.resources import files
from io import BytesIO
from pathlib import Path

import pytest
from jinja2.ext import babel_extract

from onewhole.web.http import templates

FOLDER = Path(str(files("onewhole.web").joinpath("templates")))
TEMPLATES = sorted(FOLDER.glob("*.html"))
#: What a template may hold besides words: what it computes, its tags, and what is shown as it is typed.
COMPUTED = re.compile(r"\{\{.*?\}\}|\{%.*?%\}|\{#.*?#\}", re.DOTALL)
AS_TYPED = re.compile(r"<(script|style|code|kbd)\b[^>]*>.*?</\1>", re.DOTALL)
SPOKEN = re.compile(r'\b(?:aria-label|title|placeholder|alt)="([^"]*)"')
TAG = re.compile(r"<[^>]*>")
LETTERS = re.compile(r"[A-Za-z]+")
#: The name of the program is the same in every language.
NAME = {"onewhole"}


class Marked(NullTranslations):
    """A language in which every word is in square brackets."""

    def gettext(self, message: str) -> str:
        """Return a message in brackets."""
        return f"[{message}]"

    def ngettext(self, msgid1: str, msgid2: str, n: int) -> str:
        """Return one of two messages in brackets."""
        return f"[{msgid1 if n == 1 else msgid2}]"


def unmarked(written: str) -> Iterator[str]:
    """Yield the words of a template outside a mark, in its text and in what a screen reader says."""
    plain = AS_TYPED.sub("", COMPUTED.sub("", re.sub(r"&[#\w]+;", "", written)))
    for words in (TAG.sub(" ", plain), *SPOKEN.findall(plain)):
        yield from (word for word in LETTERS.findall(words) if word not in NAME)


@pytest.mark.parametrize("template", TEMPLATES, ids=lambda path: path.stem)
def test_every_word_of_a_template_is_marked(template: Path) -> None:
    """No letter stands outside a mark."""
    assert list(unmarked(template.read_text())) == []


def test_a_word_that_is_not_marked_is_found() -> None:
    """The check can fail."""
    assert list(unmarked('<p title="Look">{{ _("Keep") }} it</p>')) == ["it", "Look"]


def test_the_words_are_extracted() -> None:
    """The standard extraction finds them with their places, one and many together."""
    found = [
        (message, template.name)
        for template in TEMPLATES
        for _, _, message, _ in babel_extract(
            BytesIO(template.read_bytes()), ("_", "gettext", "ngettext"), (), {"newstyle_gettext": "true"}
        )
    ]
    assert ("Save a backup", "keep.html") in found
    assert (("%(num)s pupil", "%(num)s pupils", None), "class.html") in found
    assert len(found) > 300


def test_a_translation_is_shown(monkeypatch: pytest.MonkeyPatch) -> None:
    """A language that is installed is what the page is written in; what is filled in stays escaped."""
    made = templates.environment(Marked())
    monkeypatch.setattr(templates, "_environment", lambda: made)
    words = {"demo": True, "csrf_token": "7", "at": lambda page, **_: f"/{page}"}
    page = templates.rendered("demo_away.html", words)
    assert {"<h1>[Put the demo away?]</h1>", '<button class="first">[Put the demo away]</button>'} <= set(
        page.splitlines()
    )
    said = made.from_string('{{ _("Name of %(code)s", code=code) }}').render(code="<b>")
    assert said == "[Name of &lt;b&gt;]"
