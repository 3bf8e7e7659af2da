"""The walkthrough as one HTML file that plays the board step by step; without its script, a transcript."""

from base64 import b64encode
from collections.abc import Iterable, Iterator
from fractions import Fraction
from functools import cache
from hashlib import sha256
from html import escape
from importlib.resources import files
from string import Template
from typing import assert_never

from msgspec.structs import asdict

from onewhole.languages.class_words import ClassWords
from onewhole.languages.language import Language
from onewhole.languages.table import LANGUAGES
from onewhole.notations.mathml import mathml
from onewhole.notations.sentences.speech import spoken
from onewhole.notations.sentences.text import sentence_text
from onewhole.notations.svg import svg
from onewhole.statements.writable import Writable
from onewhole.walkthroughs.cue import Act, Draw, Fresh, Role, Strike, Write
from onewhole.walkthroughs.timeline import Timed, TimedChapter, Timeline
from onewhole.working.line import WholeLine

#: The letters of the page: the packages and files that they stand in.
_LETTERS = {
    "lexend": ("fontpkg_lexend", "Lexend[wght].ttf"),
    "hyperlegible": ("fontpkg_atkinson_hyperlegible", "AtkinsonHyperlegible-Regular.ttf"),
}


def walkthrough_html(timeline: Timeline, words: ClassWords, *, voice_note: str = "", back: str = "") -> str:
    """Write a film as one HTML page that needs nothing else: no network, no other file.

    Every cue is a step. The page holds all steps in reading order, each with what is written (MathML), drawn
    (SVG) and said; its own small script shows them on a board one by one, played, or at the family's own
    pace. ``voice_note`` is printed at the foot and tells whose voice is heard; ``back`` is an address that a
    link at the head leads back to. Names and sentences are escaped, and the page's policy lets nothing run
    but its own script and style; its letters are in it.
    """
    style, script = _style(), _file("player.js")
    film = LANGUAGES[timeline.language].film
    written = Template(_file("page.html")).substitute(
        {name: escape(said) for name, said in asdict(film).items() if name != "leave"},
        language=timeline.language,
        title=escape(timeline.title),
        policy=policy(),
        style=style,
        script=script,
        problems=_lines(_link(at, chapter) for at, chapter in enumerate(timeline.chapters)),
        parts=_parts(timeline, words, LANGUAGES[timeline.language]),
        leave=f'<p class="leave"><a href="{escape(back)}">{escape(film.leave)}</a></p>' if back else "",
        note=f"<p>{escape(voice_note)}</p>" if voice_note else "",
    )
    return written.rstrip() + "\n"


def policy() -> str:
    """Return the policy of such a page: nothing runs or loads but its own script, style and letters."""
    style, script = _hash(_style()), _hash(_file("player.js"))
    return (
        f"default-src 'none'; script-src '{script}'; style-src '{style}'; font-src data:; base-uri 'none'; "
        "form-action 'none'"
    )


@cache
def _style() -> str:
    """Return the one style of a page, with its letters in it."""
    letters = {
        name: b64encode(files(package).joinpath("files", file).read_bytes()).decode()
        for name, (package, file) in _LETTERS.items()
    }
    return Template(_file("letters.css")).substitute(letters) + _file("player.css")


def _file(name: str) -> str:
    return files("onewhole.writers").joinpath("walkthrough", name).read_text(encoding="utf-8")


def _hash(content: str) -> str:
    """Return a source expression of the Content Security Policy: the hash of what stands between the tags."""
    return f"sha256-{b64encode(sha256(content.encode()).digest()).decode()}"


def _lines(found: Iterable[str]) -> str:
    return "\n".join(found)


def _name(chapter: TimedChapter) -> str:
    return f"{chapter.label}. {chapter.title}" if chapter.label else chapter.title


def _link(at: int, chapter: TimedChapter) -> str:
    return f'<li><a href="#part-{at}">{escape(_name(chapter))}</a></li>'


def _parts(timeline: Timeline, words: ClassWords, language: Language) -> str:
    """Write every chapter."""
    return _lines(_lines(_part(at, chapter, words, language)) for at, chapter in enumerate(timeline.chapters))


def _part(at: int, chapter: TimedChapter, words: ClassWords, language: Language) -> Iterator[str]:
    yield f'<section class="part" id="part-{at}" aria-labelledby="name-{at}">'
    yield f'<h3 id="name-{at}">{escape(_name(chapter))}</h3>'
    yield "<ol>"
    written: dict[str, str] = {}
    for cue in chapter.cues:
        yield _lines(_step(cue, words, language, written))
    yield "</ol>"
    yield "</section>"


def _step(timed: Timed, words: ClassWords, language: Language, written: dict[str, str]) -> Iterator[str]:
    cue = timed.cue
    tried = ' data-try=""' if cue.role in {Role.TRY, Role.TURN} else ""
    lasts, think = _milliseconds(timed.end - timed.start), _milliseconds(cue.think)
    yield f'<li class="step" data-lasts="{lasts}" data-think="{think}"{tried}>'
    for act in cue.acts:
        yield _act(act, words, language, written)
    said = (
        f'<span data-aloud="{escape(spoken(one))}">{escape(sentence_text(one))}</span>' for one in cue.says
    )
    yield f'<p class="says">{" ".join(said)}</p>'
    yield "</li>"


def _milliseconds(seconds: Fraction) -> int:
    return round(seconds * 1000)


def _act(act: Act, words: ClassWords, language: Language, written: dict[str, str]) -> str:
    film = language.film
    match act:
        case Write(name=name, label=label):
            content = _content(act, language)
            written[name] = content
            looks = ("write", *(look for look in ("aside", "heading") if getattr(act, look)))
            number = f'<b class="label">{escape(label)}.</b> ' if label else ""
            return f'<p class="{" ".join(looks)}" data-name="{escape(name)}">{number}{content}</p>'
        case Strike(name):
            struck = f"{escape(film.struck_out)} {written.get(name, '')}"
            return f'<p class="strike" data-of="{escape(name)}">{struck}</p>'
        case Draw(scene):
            return f'<figure class="picture">{svg(scene, words, grid=False)}</figure>'
        case Fresh():
            written.clear()
            return f'<p class="fresh" hidden>{escape(film.fresh_board)}</p>'
        case _:
            assert_never(act)


def _content(write: Write, language: Language) -> str:
    if isinstance(write.content, str):
        return f"<span>{escape(write.content)}</span>"
    return _formula(write.content, leads=write.leads, language=language)


def _formula(line: Writable, *, leads: bool, language: Language) -> str:
    """Write a line as MathML; one that follows from the line before begins with its equals sign."""
    return mathml(line, leads=leads and not isinstance(line, WholeLine), language=language)
