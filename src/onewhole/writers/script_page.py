"""The script: what to write and what to say, cue by cue, for a teacher who records at the kitchen table."""

from typing import assert_never

from onewhole.languages.class_words import ClassWords
from onewhole.languages.table import spoken_by
from onewhole.notations.sentences.text import sentence_text, text_of
from onewhole.sheets.header import Header
from onewhole.walkthroughs.cue import Act, Draw, Fresh, Role, Strike, Write
from onewhole.walkthroughs.timeline import Timed, TimedChapter, Timeline
from onewhole.writers.formula import formula
from onewhole.writers.frame import frame, named
from onewhole.writers.moments import clock
from onewhole.writers.printed import Json, Printed

FOOTER = "For the teacher"
TRY = "Wait here: the family tries it first."
TURN = "Wait here: the family writes the answer."

_WAITS = {Role.TRY: TRY, Role.TURN: TURN}


def script_page(header: Header, timeline: Timeline, *, level: str = "") -> Printed:
    """Return the script of a film; ``level`` is a sentence about how hard its words are."""
    data = frame(header, title="What to write and what to say", small=named(header))
    told = f"The whole film takes {clock(timeline.length)} minutes. Speak calmly; the times are a guide."
    note = f"{told} {level}".strip()
    chapters = [_chapter(chapter, header.words) for chapter in timeline.chapters]
    return Printed("script", data | {"footer": FOOTER, "note": note, "chapters": chapters})


def _chapter(chapter: TimedChapter, words: ClassWords) -> Json:
    title = f"{chapter.label}. {chapter.title}" if chapter.label else chapter.title
    return {"title": title, "time": clock(chapter.start), "cues": [_cue(cue, words) for cue in chapter.cues]}


def _cue(timed: Timed, words: ClassWords) -> Json:
    does = [found for act in timed.cue.acts if (found := _act(act, words)) is not None]
    if timed.cue.role in _WAITS:
        does.append(_WAITS[timed.cue.role])
    return {
        "time": clock(timed.start),
        "says": [sentence_text(said) for said, _, _ in timed.said],
        "does": does,
    }


def _act(act: Act, words: ClassWords) -> str | Json | None:
    match act:
        case Write():
            thing = act.content
            return (
                thing
                if isinstance(thing, str)
                else dict(formula(thing, leads=act.leads, language=spoken_by(words)))
            )
        case Strike():
            return "Strike it out."
        case Draw(scene):
            return f"Picture. {text_of(spoken_by(words).working.picture(scene, words))}"
        case Fresh():
            return None
        case _:
            assert_never(act)
