"""The tables as the code of today sees them; `migrations` brings every file to this shape.

Findings and groups are computed from answers; `reckonings` and `mornings` are caches of them and never their
truth.
"""

from sqlalchemy import (
    Column,
    ForeignKey,
    ForeignKeyConstraint,
    Index,
    MetaData,
    Table,
    UniqueConstraint,
)

from onewhole.findings.attendance import PageWord, PaperWord
from onewhole.findings.own_page import OwnPage
from onewhole.marking.paper.verdict import PaperVerdict, PaperWhy
from onewhole.marking.reading.talk_word import TalkSaid
from onewhole.store.column_types import (
    Cues,
    Day,
    Digest,
    ExactText,
    Moment,
    Number,
    OneOf,
    PictureBytes,
    PupilCode,
    SoundBytes,
)
from onewhole.store.correction_rows import CorrectionKind

#: The steps of a night, as :mod:`onewhole.store.steps` names them, and the media types of recordings.
STEPS = ("printed", "shown", "marked", "regrouped")
SOUND_KINDS = ("audio/webm", "audio/mp4", "audio/wav")
#: Who has read a cell of a paper, as :mod:`onewhole.store.paper_cells` names them.
READERS = ("program", "person")

METADATA = MetaData()


def _digest() -> Column[int]:
    """The digest of a row's other values (:mod:`onewhole.store.digests`). No function that writes sets it."""
    return Column("digest", Digest)


classes = Table(
    "classes",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("name", ExactText, nullable=False),
    Column("codes_given", Number, nullable=False),
    Column("made", Moment, nullable=False),
    _digest(),
)

pupils = Table(
    "pupils",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("class_number", Number, ForeignKey("classes.number"), nullable=False),
    Column("code", PupilCode, nullable=False),
    Column("name", ExactText),
    _digest(),
    UniqueConstraint("class_number", "code"),
    sqlite_autoincrement=True,
)

sheets = Table(
    "sheets",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("name", ExactText, nullable=False),
    _digest(),
)

sheet_versions = Table(
    "sheet_versions",
    METADATA,
    Column("sheet_number", Number, ForeignKey("sheets.number"), primary_key=True),
    Column("version", Number, primary_key=True),
    Column("typed", ExactText, nullable=False),
    Column("recipe", ExactText),
    Column("written", Moment, nullable=False),
    _digest(),
)

nights = Table(
    "nights",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("class_number", Number, ForeignKey("classes.number"), nullable=False),
    Column("sheet_number", Number, nullable=False),
    Column("version", Number, nullable=False),
    Column("day", Day, nullable=False),
    _digest(),
    ForeignKeyConstraint(
        ["sheet_number", "version"], ["sheet_versions.sheet_number", "sheet_versions.version"]
    ),
    Index("nights_of_a_class", "class_number", "day"),
)

#: What a night is called, where its teacher calls it otherwise than its page.
night_names = Table(
    "night_names",
    METADATA,
    Column("night_number", Number, ForeignKey("nights.number"), primary_key=True),
    Column("name", ExactText, nullable=False),
    _digest(),
)

#: The year of a class as its teacher typed it.
years = Table(
    "years",
    METADATA,
    Column("class_number", Number, ForeignKey("classes.number"), primary_key=True),
    Column("typed", ExactText, nullable=False),
    Column("written", Moment, nullable=False),
    _digest(),
)

#: The highest number ever given in a table whose rows are deleted: no number is given twice.
numbers_given = Table(
    "numbers_given",
    METADATA,
    Column("name", ExactText, primary_key=True),
    Column("last", Number, nullable=False),
    _digest(),
)

#: Every writing of an answer is a row; the last one of a cell is the answer, the earlier ones its history.
answers = Table(
    "answers",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("night_number", Number, ForeignKey("nights.number"), nullable=False),
    Column("pupil_number", Number, ForeignKey("pupils.number"), nullable=False),
    Column("problem", ExactText, nullable=False),
    Column("text", ExactText, nullable=False),
    Column("written", Moment, nullable=False),
    Column("by", ExactText, nullable=False),
    _digest(),
    Index("answers_of_a_night", "night_number", "pupil_number", "problem", "number"),
    Index("answers_by_night", "night_number", "number"),
    Index("answers_of_a_pupil", "pupil_number"),
    sqlite_autoincrement=True,
)

corrections = Table(
    "corrections",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("night_number", Number, ForeignKey("nights.number"), nullable=False),
    Column("pupil_number", Number, ForeignKey("pupils.number"), nullable=False),
    Column("problem", ExactText, nullable=False),
    Column("of", OneOf(*(kind.value for kind in CorrectionKind)), nullable=False),
    Column("text", ExactText, nullable=False),
    Column("written", Moment, nullable=False),
    Column("by", ExactText, nullable=False),
    _digest(),
    Index("corrections_of_a_night", "night_number"),
    Index("corrections_of_a_pupil", "pupil_number"),
    sqlite_autoincrement=True,
)

#: What pupils were asked in talks: a row is added and never changed; one takes another back by its number.
asked_answers = Table(
    "asked_answers",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("night_number", Number, ForeignKey("nights.number"), nullable=False),
    Column("pupil_number", Number, ForeignKey("pupils.number"), nullable=False),
    Column("asked", ExactText, nullable=False),
    Column("wrote", ExactText, nullable=False),
    Column("said", OneOf("", *(said.value for said in TalkSaid)), nullable=False),
    Column("about", ExactText, nullable=False),
    Column("takes_back", Number, nullable=False),
    Column("written", Moment, nullable=False),
    Column("by", ExactText, nullable=False),
    _digest(),
    Index("asked_answers_of_a_night", "night_number"),
    Index("asked_answers_of_a_pupil", "pupil_number"),
    sqlite_autoincrement=True,
)

#: The days on which a pupil joined and left the class: none of those who were there all along.
pupil_days = Table(
    "pupil_days",
    METADATA,
    Column("pupil_number", Number, ForeignKey("pupils.number"), primary_key=True),
    Column("joined", Day),
    Column("left", Day),
    _digest(),
)

#: In what form a pupil reads pages: none of those who have the print of the class.
own_pages = Table(
    "own_pages",
    METADATA,
    Column("pupil_number", Number, ForeignKey("pupils.number"), primary_key=True),
    Column("form", OneOf(*(form.value for form in OwnPage)), nullable=False),
    _digest(),
)

#: Who got the page of a night, who was away, whose paper is late: every saying is a row, the last one of its
#: sort counts.
night_words = Table(
    "night_words",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("night_number", Number, ForeignKey("nights.number"), nullable=False),
    Column("pupil_number", Number, ForeignKey("pupils.number"), nullable=False),
    Column("said", OneOf(*(word.value for word in (*PageWord, *PaperWord))), nullable=False),
    Column("written", Moment, nullable=False),
    Column("by", ExactText, nullable=False),
    _digest(),
    Index("night_words_of_a_night", "night_number"),
    Index("night_words_of_a_pupil", "pupil_number"),
    sqlite_autoincrement=True,
)

#: The cells of a night's papers that were read from pictures, until the teacher has checked them. `text` is
#: what the program read, `choices` the likeliest readings as JSON; what counts as the answer is in
#: `answers`.
paper_cells = Table(
    "paper_cells",
    METADATA,
    Column("night_number", Number, ForeignKey("nights.number"), primary_key=True),
    Column("pupil_number", Number, ForeignKey("pupils.number"), primary_key=True),
    Column("problem", ExactText, primary_key=True),
    Column("reading", Number, nullable=False),
    Column("verdict", OneOf(*(verdict.value for verdict in PaperVerdict)), nullable=False),
    Column("text", ExactText, nullable=False),
    Column("choices", ExactText, nullable=False),
    Column("doubt", Number, nullable=False),
    Column("alone", Number, nullable=False),
    Column("why", OneOf(*(why.value for why in PaperWhy)), nullable=False),
    Column("by", OneOf(*READERS), nullable=False),
    Column("written", Moment, nullable=False),
    Column("crop", PictureBytes, nullable=False),
    _digest(),
    Index("paper_cells_of_a_pupil", "pupil_number"),
)

steps = Table(
    "steps",
    METADATA,
    Column("night_number", Number, ForeignKey("nights.number"), primary_key=True),
    Column("step", OneOf(*STEPS), primary_key=True),
    Column("written", Moment, nullable=False),
    _digest(),
)

recordings = Table(
    "recordings",
    METADATA,
    Column("night_number", Number, ForeignKey("nights.number"), primary_key=True),
    Column("label", ExactText, primary_key=True),
    Column("kind", OneOf(*SOUND_KINDS), nullable=False),
    Column("cues", Cues, nullable=False),
    Column("written", Moment, nullable=False),
    Column("sound", SoundBytes, nullable=False),
    _digest(),
)

#: A cache of what was computed of a night: it may be emptied at any moment.
night_cache = Table(
    "reckonings",
    METADATA,
    Column("night_number", Number, ForeignKey("nights.number"), primary_key=True),
    Column("stamp", ExactText, nullable=False),
    Column("text", ExactText, nullable=False),
    _digest(),
)

#: A cache of the pages for the morning, for the nights that are looked at most: it may be emptied too.
morning_cache = Table(
    "mornings",
    METADATA,
    Column("night_number", Number, ForeignKey("nights.number"), primary_key=True),
    Column("stamp", ExactText, nullable=False),
    Column("text", ExactText, nullable=False),
    _digest(),
)

#: The tables of what can be computed again, by night.
CACHES = (night_cache, morning_cache)

#: What was given out on a pupil, to whom and when. A record of disclosures is kept as long as the pupil's own
#: (FERPA, 34 CFR 99.32(a)(2), from memory): it goes with the pupil.
given_out = Table(
    "given_out",
    METADATA,
    Column("number", Number, primary_key=True),
    Column("pupil_number", Number, ForeignKey("pupils.number"), nullable=False),
    Column("what", ExactText, nullable=False),
    Column("to", ExactText, nullable=False),
    Column("why", ExactText, nullable=False),
    Column("day", Day, nullable=False),
    Column("written", Moment, nullable=False),
    Column("by", ExactText, nullable=False),
    _digest(),
    Index("given_out_of_a_pupil", "pupil_number"),
    sqlite_autoincrement=True,
)

settings = Table(
    "settings",
    METADATA,
    Column("name", ExactText, primary_key=True),
    Column("text", ExactText, nullable=False),
    _digest(),
)

#: What each of the other tables holds: how many rows, the exclusive or of their digests, the highest number
#: ever given in it (0 where SQLite does not remember that), and the digest of these.
table_heads = Table(
    "table_heads",
    METADATA,
    Column("name", ExactText, primary_key=True),
    Column("rows", Number, nullable=False),
    Column("mark", Digest, nullable=False),
    Column("last", Number, nullable=False),
    _digest(),
)
