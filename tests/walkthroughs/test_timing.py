"""A script in time: exact, on frames, without gaps."""

from fractions import Fraction

from hypothesis import given
from hypothesis import strategies as st

from onewhole.pictures.scene import Scene
from onewhole.sentences.sentence import Sentence
from onewhole.statements.reading import read_expression
from onewhole.walkthroughs.cue import Act, Chapter, Cue, Draw, Fresh, Role, Script, Strike, Write
from onewhole.walkthroughs.lesson import Pace
from onewhole.walkthroughs.stretching import stretched
from onewhole.walkthroughs.timeline import FRAMES, Timed, Timeline
from onewhole.walkthroughs.timing import BREATH, QUIET, on_frame, timed
from tests.kit.saying import says

ACTS: st.SearchStrategy[Act] = st.one_of(
    st.builds(Write, st.just("a"), st.text("kite ", max_size=80)),
    st.just(Strike("a")),
    st.just(Draw(Scene(Fraction(9), Fraction(9), ()))),
    st.just(Fresh()),
)
SENTENCES = st.sampled_from(
    says("One strip is 6 sixths.", "7 2/6 - 3 5/6 = 3 3/6.", "So.", "Look at the kite.")
)
CUES = st.builds(
    Cue,
    st.sampled_from(Role),
    st.lists(SENTENCES, max_size=4).map(tuple),
    st.lists(ACTS, max_size=4).map(tuple),
    st.fractions(0, 5),
)
CHAPTERS = st.builds(Chapter, st.just("1"), st.just("a"), st.lists(CUES, min_size=1, max_size=4).map(tuple))
SCRIPTS = st.builds(Script, st.just("Kites"), st.lists(CHAPTERS, min_size=1, max_size=4).map(tuple))
PACES = st.builds(Pace, st.integers(60, 200), st.fractions(0, 5), st.fractions(0, 60))


def one(cue: Cue, pace: Pace = Pace(), voiced: dict[Sentence, Fraction] | None = None) -> Timed:  # noqa: B008
    """One cue in time, with another after it, so that no chapter ends with it."""
    chapters = (Chapter("1", "", (cue, Cue(Role.CLOSING, ()))),)
    return timed(Script("", chapters), pace, voiced).chapters[0].cues[0]


def times(timeline: Timeline) -> list[Fraction]:
    """Every time there is."""
    found = []
    for chapter in timeline.chapters:
        found += [chapter.start, chapter.end]
        for cue in chapter.cues:
            found += [cue.start, cue.end]
            found += [time for _, start, end in cue.said for time in (start, end)]
            found += [time for move in cue.moves for time in (move.start, move.end)]
    return found


@given(SCRIPTS, PACES, st.dictionaries(SENTENCES, st.fractions(0, 9)))
def test_every_time_is_on_a_frame(script: Script, pace: Pace, voiced: dict[Sentence, Fraction]) -> None:
    """Whatever is written, drawn, said and voiced begins and ends with a frame."""
    assert all((time * FRAMES).denominator == 1 for time in times(timed(script, pace, voiced)))


@given(SCRIPTS, PACES)
def test_no_gaps(script: Script, pace: Pace) -> None:
    """Every moment from 0 on belongs to one chapter and one cue; all that a cue does is in its time."""
    timeline = timed(script, pace)
    at = Fraction(0)
    for chapter in timeline.chapters:
        assert chapter.start == at
        for cue in chapter.cues:
            assert cue.start == at
            at = cue.end
            inside = [(start, end) for _, start, end in cue.said] + [(m.start, m.end) for m in cue.moves]
            assert all(cue.start + cue.cue.think <= start < end <= cue.end for start, end in inside)
        assert chapter.end == at
    assert timeline.length == at


@given(SCRIPTS, PACES)
def test_one_thing_at_a_time(script: Script, pace: Pace) -> None:
    """Sentences follow each other with a breath between, and so do the acts on the board, without one."""
    for chapter in timed(script, pace).chapters:
        for cue in chapter.cues:
            for (_, _, end), (_, start, _) in zip(cue.said, cue.said[1:], strict=False):
                assert start == end + BREATH
            for before, after in zip(cue.moves, cue.moves[1:], strict=False):
                assert after.start == before.end


@given(SCRIPTS, st.integers(60, 199))
def test_faster_is_never_longer(script: Script, words: int) -> None:
    """More words a minute do not make a film longer."""
    assert timed(script, Pace(words + 1)).length <= timed(script, Pace(words)).length


def test_words_are_counted_as_spoken() -> None:
    """7 2/6 is four words aloud, so 6 words take 3 seconds at 120 a minute; then a breath of 0.4."""
    cue = one(Cue(Role.LINE, says("It is 7 2/6.")))
    assert [end - start for _, start, end in cue.said] == [Fraction(3)]
    assert cue.end == Fraction(34, 10)


def test_a_word_takes_a_second_at_least() -> None:
    """Half a second of speech would be a caption that nobody can read."""
    assert [end - start for _, start, end in one(Cue(Role.LINE, says("So."))).said] == [Fraction(1)]


def test_a_voice_takes_its_own_time() -> None:
    """Seconds of a recording stand instead of the count, on the next frame."""
    cue = one(Cue(Role.LINE, says("So.", "Look.")), voiced={says("So.")[0]: Fraction(501, 100)})
    assert [end - start for _, start, end in cue.said] == [Fraction(151, 30), Fraction(1)]


def test_writing_and_thinking() -> None:
    """Thinking first; a character 0.05 s between 0.6 and 2.5; 1.2 to draw, 0.6 to strike, 0.4 to wipe."""
    acts = (
        Fresh(),
        Write("a", "7"),
        Write("b", "k" * 20),
        Write("c", "k" * 99),
        Write("d", read_expression("12 34/100 + 3 5/100")),
        Strike("a"),
        Draw(Scene(Fraction(9), Fraction(9), ())),
    )
    cue = one(Cue(Role.ANSWER, says("So."), acts, Fraction(2)))
    assert [move.end - move.start for move in cue.moves] == [
        Fraction(tenths, 10) for tenths in (4, 6, 10, 25)
    ] + [on_frame(Fraction(19, 20)), Fraction(6, 10), Fraction(12, 10)]
    assert cue.moves[0].start == cue.said[0][1] == 2
    assert cue.end == cue.moves[-1].end


def test_quiet_to_try() -> None:
    """A problem to try first has the pace's quiet after the words, nothing else has."""
    words = Cue(Role.TRY, says("Stop here and try it."))
    assert one(words).end == one(Cue(Role.LINE, words.says)).end + Pace().try_first
    turn = Cue(Role.TURN, words.says)
    assert one(turn).end == one(Cue(Role.LINE, words.says)).end + Pace().your_turn


def test_quiet_at_the_end_of_a_chapter() -> None:
    """The last cue of a chapter goes on for a second."""
    cue = Cue(Role.LINE, says("So."))
    film = timed(Script("", (Chapter("", "", (cue, cue)),)), Pace())
    first, last = film.chapters[0].cues
    assert last.end - last.start == first.end - first.start + QUIET


def test_a_film_keeps_the_language_of_its_script() -> None:
    """What is timed, laid out or stretched is in the language in which it was told."""
    told = Script("Kites", (Chapter("1", "", (Cue(Role.LINE, ()),)),), "es-US")
    timeline = timed(told, Pace())
    assert timeline.language == "es-US"
    assert stretched(timeline, {"1": Fraction(30)}).language == "es-US"
