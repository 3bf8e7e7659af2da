"""The film follows what was heard: sentences at their times, cues with them, all on frames and in order."""

from fractions import Fraction

from onewhole.desk.walkthrough.film import FilmWishes, told
from onewhole.notations.sentences.listened import listened
from onewhole.sheets.reading import read_sheet
from onewhole.sheets.worked import WorkedSheet
from onewhole.walkthroughs.listening.timed import HeardSentence, HeardTimes, heard_sentences, in_speech
from onewhole.walkthroughs.listening.words import HeardWord
from onewhole.walkthroughs.stepping import Stepped
from onewhole.walkthroughs.timeline import FRAMES, TimedChapter, Timeline


def film() -> Timeline:
    """A film of two problems."""
    return told(WorkedSheet(read_sheet("1. 4/5 - 1/5\n2. 5 1/6 - 2 5/6\n")), FilmWishes())[1]


def part(timeline: Timeline, label: str) -> TimedChapter:
    """Part."""
    return next(chapter for chapter in timeline.chapters if chapter.label == label)


def test_each_sentence_has_the_time_at_which_it_was_said() -> None:
    """Each sentence has the time at which it was said."""
    timeline = film()
    cues = part(timeline, "2").cues
    places = [(step, at) for step, cue in enumerate(cues) for at in range(len(cue.said))]
    sentences = tuple(
        HeardSentence(step, at, Fraction(4 * count + 1), Fraction(4 * count + 3))
        for count, (step, at) in enumerate(places)
    )
    made = in_speech(timeline, {"2": HeardTimes(Fraction(4 * len(places) + 2), sentences)})
    chapter = part(made, "2")
    times = [
        (first - chapter.start, last - chapter.start) for cue in chapter.cues for _, first, last in cue.said
    ]
    assert [first for first, _ in times] == [4 * count + 1 for count in range(len(places))]
    assert all(0 <= last - (first + 2) <= Fraction(1, FRAMES) for first, last in times)
    starts = [cue.start for cue in chapter.cues]
    for step, cue in enumerate(chapter.cues[1:], start=1):
        assert cue.said[0][1] - starts[step] <= Fraction(1, 5) + Fraction(1, FRAMES)


def test_times_stay_in_order_within_their_cue_whatever_was_heard() -> None:
    """Times stay in order within their cue whatever was heard."""
    timeline = film()
    wild = (
        HeardSentence(0, 0, Fraction(9), Fraction(40)),
        HeardSentence(1, 0, Fraction(2), Fraction(3)),
        HeardSentence(3, 0, Fraction(39), Fraction(40)),
    )
    made = in_speech(timeline, {"2": HeardTimes(Fraction(20), wild)})
    at = Fraction(0)
    for chapter in made.chapters:
        assert chapter.start == at
        for cue in chapter.cues:
            assert cue.start == at
            for _, first, last in cue.said:
                assert at <= first < last <= cue.end
                assert (first * FRAMES).denominator == (last * FRAMES).denominator == 1
                at = last
            at = cue.end


def test_the_key_that_stepped_the_board_counts_more() -> None:
    """The key that stepped the board counts more."""
    timeline = film()
    count = len(part(timeline, "1").cues)
    steps = tuple(Fraction(5 * at) for at in range(1, count))
    said = (HeardSentence(0, 0, Fraction(1), Fraction(2)),)
    made = in_speech(
        timeline, {"1": HeardTimes(Fraction(5 * count), said, Stepped(steps, Fraction(5 * count)))}
    )
    chapter = part(made, "1")
    assert [cue.start - chapter.start for cue in chapter.cues] == [5 * at for at in range(count)]


def test_a_sentence_of_which_little_was_heard_has_no_time() -> None:
    """A sentence of which little was heard has no time."""
    steps = [[listened(sentence) for sentence in cue.cue.says] for cue in part(film(), "1").cues]
    whole = [HeardWord("x", at, Fraction(at), Fraction(at + 1)) for at in range(len(steps[0][0]))]
    (found,) = heard_sentences(steps, whole)
    assert (found.step, found.sentence) == (0, 0)
    assert found.start == 0
    assert found.end == len(whole)
    assert heard_sentences(steps, whole[:1]) == ()
