"""What a pupil was asked in a talk, weighed as the page's answers are; and the teacher's word on the talk."""

from collections.abc import Mapping, Sequence
from enum import Enum

from msgspec import Struct
from msgspec.structs import replace

from onewhole.marking.diagnosis.chances import chances
from onewhole.marking.diagnosis.evidence import Beside, evidence
from onewhole.marking.diagnosis.hypothesis import Hypothesis
from onewhole.marking.diagnosis.tables import Replies, Tables, all_likelihoods, looks_of, replies
from onewhole.marking.diagnosis.weighing import acting
from onewhole.marking.reading.mark import ClassMarks, PupilMarks
from onewhole.marking.reading.talk_word import TalkSaid, TalkWord


class Holds(Enum):
    """What a hypothesis says of the idea that a talk was about: the pupil holds it, another one, or none."""

    THIS = "this"
    OTHER = "other"
    NONE = "none"


#: How often, per million, a teacher says each after a talk with a child who holds this idea, another steady
#: one, or none; a row adds up to a million. A child may guess what is wanted and a teacher may hear what was
#: expected, so about 3 words in 10 are taken for mistaken: a word alone never makes certain. Our own
#: assumption; no published count was found.
WORDS: Mapping[Holds, Mapping[TalkSaid, int]] = {
    Holds.THIS: {TalkSaid.THIS: 700_000, TalkSaid.OTHER: 150_000, TalkSaid.SLIP: 150_000},
    Holds.OTHER: {TalkSaid.THIS: 150_000, TalkSaid.OTHER: 700_000, TalkSaid.SLIP: 150_000},
    Holds.NONE: {TalkSaid.THIS: 150_000, TalkSaid.OTHER: 150_000, TalkSaid.SLIP: 700_000},
}


def word_chances(hypotheses: Sequence[Hypothesis], word: TalkWord) -> tuple[int, ...]:
    """Return how often, per million, the word would be said under each hypothesis.

    >>> from onewhole.marking.diagnosis.hypothesis import NO_PATTERN, Reliability
    >>> held = [*NO_PATTERN[:1], *(Hypothesis(Reliability.SOUND, (key,)) for key in ("A01", "A02"))]
    >>> word_chances(held, TalkWord(TalkSaid.THIS, ("A01",)))
    (150000, 700000, 150000)
    """
    return tuple(WORDS[_holds(one, word)][word.said] for one in hypotheses)


def _holds(hypothesis: Hypothesis, word: TalkWord) -> Holds:
    if not hypothesis.steady:
        return Holds.NONE
    return Holds.OTHER if set(word.about).isdisjoint(hypothesis.patterns) else Holds.THIS


class TalkPage(Struct, frozen=True):
    """The talk with one pupil, as a page of its own with the hypotheses of the night's page."""

    marks: ClassMarks
    pupil: PupilMarks
    page: Tables
    given: Replies

    def joined(self, page: Tables) -> Tables:
        """Return the tables of the night's page and of the talk as those of one page."""
        looks = tuple(mine + asked for mine, asked in zip(page.looks, self.page.looks, strict=True))
        return replace(
            page,
            chances=page.chances + self.page.chances,
            meaning=page.meaning + self.page.meaning,
            looks=looks,
        )

    def likelihoods(self, page: Tables, given: Replies) -> tuple[int, ...]:
        """Return how likely the page's replies, the talk's and the word are under every hypothesis."""
        [row] = all_likelihoods(self.joined(page), [given + self.given])
        if self.pupil.word is None:
            return row
        said = word_chances(page.hypotheses, self.pupil.word)
        return tuple(likely * chance for likely, chance in zip(row, said, strict=True))

    def evidence(self, sets: Sequence[Hypothesis]) -> tuple[Beside, ...]:
        """Compare sets of patterns with what was said in the talk."""
        return evidence(self.marks, self.page, self.pupil, self.given, sets)


def talk(page: Tables, pupil: PupilMarks) -> TalkPage | None:
    """Return the talk with a pupil; None where there was none."""
    if not pupil.asked and pupil.word is None:
        return None
    expected = tuple(one.expected for one in pupil.asked)
    as_page = replace(pupil, marks=tuple(one.mark for one in pupil.asked), asked=())
    marks = ClassMarks(expected, (as_page,))
    rows = tuple(map(chances, expected))
    meaning = tuple(acting(page.hypotheses, table) for table in rows)
    columns = [looks_of(table, meant, lines=True) for table, meant in zip(rows, meaning, strict=True)]
    looks = tuple(zip(*columns, strict=True)) if columns else ((),) * len(page.hypotheses)
    own = Tables(page.hypotheses, rows, meaning, looks)
    return TalkPage(marks, as_page, own, replies(marks, as_page))
