"""The walkthrough page: whole, by itself, safe, and with every line and sentence of the film."""

import re
from base64 import b64encode
from collections.abc import Sequence
from hashlib import sha256
from html.parser import HTMLParser

import pytest

from onewhole.languages.english.pictured import pictured
from onewhole.languages.english.words import words_for
from onewhole.notations.mathml import mathml
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import text_of
from onewhole.walkthroughs.cue import Draw, Write
from onewhole.walkthroughs.timeline import Timeline
from onewhole.writers.walkthrough_html import walkthrough_html
from tests.kit.films import STRIPS, film, worked
from tests.kit.saying import written as written_out

VOID = {"meta", "input", "br", "hr"}
PROBLEMS = ("7 2/6 - 3 5/6", "5 1/8 - 2 5/8")
NAMESPACES = {"http://www.w3.org/1998/Math/MathML", "http://www.w3.org/2000/svg"}


class Page(HTMLParser):
    """A page taken apart: its tags with attributes, what stands in each, and whether every tag is closed."""

    def __init__(self, written: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.tags: list[tuple[str, dict[str, str]]] = []
        self.inside: dict[str, list[str]] = {}
        self.feed(written)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: Sequence[tuple[str, str | None]]) -> None:
        """Note a tag, and that it is open."""
        self.tags.append((tag, {name: value or "" for name, value in attrs}))
        self.inside.setdefault(tag, []).append("")
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag: str, attrs: Sequence[tuple[str, str | None]]) -> None:
        """Note a tag that closes itself."""
        self.tags.append((tag, {name: value or "" for name, value in attrs}))

    def handle_endtag(self, tag: str) -> None:
        """Close the tag that was opened last, and no other."""
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        """Keep what stands in the innermost tag."""
        if self.open:
            self.inside[self.open[-1]][-1] += data

    def named(self, tag: str) -> list[dict[str, str]]:
        """The attributes of every tag of a name."""
        return [attributes for name, attributes in self.tags if name == tag]


@pytest.fixture(scope="module")
def shown() -> Timeline:
    """The film of both problems."""
    return film(*PROBLEMS)


@pytest.fixture(scope="module")
def written(shown: Timeline) -> str:
    """Its page."""
    return walkthrough_html(shown, STRIPS, voice_note="The voice is your browser's.")


def test_the_page_is_whole(written: str) -> None:
    """Every tag is closed in its order, no id stands twice, and every reference inside the page is met."""
    page = Page(written)
    ids = [attributes["id"] for _, attributes in page.tags if "id" in attributes]
    assert len(set(ids)) == len(ids)
    for name in ("aria-labelledby", "aria-controls"):
        assert {attributes[name] for _, attributes in page.tags if name in attributes} <= set(ids)
    assert {attributes["href"] for attributes in page.named("a")} <= {f"#{name}" for name in ids}


def test_the_page_says_what_it_is(written: str, shown: Timeline) -> None:
    """It has a language, the film's title, landmarks and the note about the voice."""
    page = Page(written)
    assert page.named("html") == [{"lang": "en-US"}]
    assert page.inside["title"][0] == page.inside["h1"][0] == shown.title
    for landmark in ("header", "main", "nav", "footer"):
        assert len(page.named(landmark)) == 1
    assert "The voice is your browser's." in page.inside["p"]


def test_nothing_is_fetched(written: str) -> None:
    """The only addresses in the page are the names of MathML and SVG; nothing is loaded from anywhere."""
    assert set(re.findall(r"https?://[^\"'\s<)]+", written)) == NAMESPACES
    page = Page(written)
    assert not [tag for tag, attributes in page.tags if "src" in attributes or "srcset" in attributes]
    assert not {"link", "img", "iframe", "object", "base", "form"} & {tag for tag, _ in page.tags}
    assert not re.search(r"url\((?!\"data:font/ttf;base64,)|@import|import\(|fetch\(|XMLHttpRequest", written)


def test_the_policy_lets_its_own_script_and_style_run_and_nothing_else(written: str) -> None:
    """The hashes of the policy are those of the one script and the one style; no attribute needs more."""
    page = Page(written)
    (policy,) = [tag["content"] for tag in page.named("meta") if "http-equiv" in tag]
    rules = dict(rule.strip().split(" ", 1) for rule in policy.split(";"))
    for rule, tag in (("script-src", "script"), ("style-src", "style")):
        (content,) = page.inside[tag]
        assert len(content) > 1000
        assert rules.pop(rule) == f"'sha256-{b64encode(sha256(content.encode()).digest()).decode()}'"
    assert rules.pop("font-src") == "data:"
    assert rules == dict.fromkeys(("default-src", "base-uri", "form-action"), "'none'")
    names = {name for _, attributes in page.tags for name in attributes}
    assert not [name for name in names if name == "style" or name.startswith("on")]


def test_every_name_is_escaped() -> None:
    """A title, a club, a word for the whole and a note cannot become tags."""
    bad = '<script>alert("1 & 2")</script>'
    words = words_for("<em>strip</em>")
    page = Page(walkthrough_html(film(title=bad, words=words, name=f"{bad}'s club"), words, voice_note=bad))
    assert len(page.named("script")) == 1
    assert page.named("em") == []
    assert page.inside["title"][0] == page.inside["h1"][0] == bad
    assert bad in page.inside["p"]
    assert any(bad in said for said in page.inside["span"])


@pytest.mark.parametrize("typed", PROBLEMS)
def test_every_line_of_a_working_is_there(written: str, typed: str) -> None:
    """Each line stands in the page as MathML."""
    for line in worked(typed).lines:
        assert mathml(line.says).split(">", 1)[1] in written


def test_a_line_that_follows_begins_with_its_equals_sign(written: str) -> None:
    """It is seen, and read by what reads MathML."""
    lines = [tag for tag in Page(written).named("math") if tag["alttext"].startswith("= ")]
    assert {"= 3 3/6", "= 2 4/8"} <= {tag["alttext"] for tag in lines}
    assert not any("aria-label" in tag for tag in Page(written).named("math"))
    assert written.count("<mo>=</mo>") == len(lines)


def test_every_cue_is_a_step(written: str, shown: Timeline) -> None:
    """Steps come in order with sentences, words to be spoken, time, picture and what is written."""
    cues = [cue for chapter in shown.chapters for cue in chapter.cues]
    steps = written.split('<li class="step"')[1:]
    assert len(steps) == len(cues)
    for timed, step in zip(cues, steps, strict=True):
        page = Page(f"<li{step}".rsplit("</li>", 1)[0] + "</li>")
        heard = [tag["data-aloud"] for tag in page.named("span") if "data-aloud" in tag]
        assert heard == [spoken(said) for said in timed.cue.says]
        assert page.inside["span"][-len(heard) :] == written_out(timed.cue.says)
        assert page.named("li")[0]["data-lasts"] == str((timed.end - timed.start) * 1000)
        drawn = [text_of(pictured(act.scene, STRIPS)) for act in timed.cue.acts if isinstance(act, Draw)]
        assert [tag["aria-label"] for tag in page.named("svg")] == drawn
        named = [act.name for act in timed.cue.acts if isinstance(act, Write)]
        assert [tag["data-name"] for tag in page.named("p") if "data-name" in tag] == named


def test_only_a_step_to_try_stops(written: str) -> None:
    """One problem of the film is to be tried first, so one step stops the play."""
    assert ["data-try" in tag for tag in Page(written).named("li") if "data-lasts" in tag].count(True) == 1


def test_what_was_struck_out_is_told(written: str) -> None:
    """The transcript repeats what a stroke crosses out."""
    assert "Struck out: " in Page(written).inside["p"]
    assert 'data-of="wrong">Struck out: <span>4 3/6 ?</span>' in written
