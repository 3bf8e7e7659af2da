"""The script of a night: what is said and what happens on the board, before it has times."""

from onewhole.languages.table import spoken_by
from onewhole.walkthroughs.cue import Script
from onewhole.walkthroughs.lesson import Lesson
from onewhole.walkthroughs.manner import MOST_MERGED, manner_of
from onewhole.walkthroughs.memory import Memory
from onewhole.walkthroughs.opening import closing_chapter, opening_chapter
from onewhole.walkthroughs.telling import problem_chapter


def script(lesson: Lesson, *, merge: int = 0) -> Script:
    """Write the script of a lesson: an opening, a chapter a problem, a closing.

    The first problem of a kind is told with every reason, the next two point back to it, the others go
    straight through. ``merge`` (0 to 3) makes the later problems of a kind shorter, to fit into a time; a
    reason is never left out the first time it occurs. No sentence is longer than 20 spoken words, and none
    but short ones is said more than four times. The same lesson gives the same script. Raises ValueError for
    another ``merge``, and for a lesson without problems.

    >>> from onewhole.languages.class_words import ClassWords
    >>> from onewhole.problems.answer import answer
    >>> from onewhole.statements.reading import read_statement
    >>> from onewhole.walkthroughs.lesson import Item
    >>> asked = read_statement("3 x 2/5")
    >>> night = Lesson("Tails", "", "", ClassWords(), (Item("1", asked, answer(asked)),))
    >>> [chapter.title for chapter in script(night).chapters]
    ['Tonight', '3 x 2/5', 'The end']
    """
    if not 0 <= merge <= MOST_MERGED:
        msg = f"a script is merged by 0 to {MOST_MERGED}, not {merge}"
        raise ValueError(msg)
    if not lesson.items:
        msg = "a script needs one problem at least"
        raise ValueError(msg)
    memory = Memory()
    chapters = [opening_chapter(lesson, memory, merge)]
    words = spoken_by(lesson.words).short(lesson.words)
    for at, item in enumerate(lesson.items):
        chapters.append(problem_chapter(item, manner_of(item, at, words, memory, merge), memory))
    return Script(lesson.title, (*chapters, closing_chapter(memory, spoken_by(words))), words.language, merge)
