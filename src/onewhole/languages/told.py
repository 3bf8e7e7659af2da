"""What a language says on pages for pupils and families: one function a meaning."""

from collections.abc import Callable, Collection, Sequence
from typing import Protocol

from msgspec import Struct

from onewhole.languages.class_words import ClassWords
from onewhole.number.quantity import Quantity
from onewhole.pictures.scene import Scene
from onewhole.problems.about import About
from onewhole.problems.needs import Needs, Operation
from onewhole.problems.story_frame import StoryFrame
from onewhole.problems.story_question import StoryQuestion
from onewhole.sentences.sentence import Sentences
from onewhole.statements.expression import Expression
from onewhole.statements.writable import Writable
from onewhole.working.checks import Estimate
from onewhole.working.fact import Fact
from onewhole.working.reason import Reason
from onewhole.working.working import Working


class WordingTold(Protocol):
    """Say what regrouping is called in class; ``taken`` and ``added`` say what it is used for tonight."""

    def __call__(self, words: ClassWords, *, taken: bool, added: bool) -> Sentences:
        """Say it."""
        ...


class HomeTold(Struct, frozen=True):
    """What the page for home says and asks."""

    tonight: Callable[[Collection[Operation]], Sentences]
    opening: Callable[[int, ClassWords], Sequence[Sentences]]
    wording: WordingTold
    closing: Callable[[], Sentences]
    operation_asked: Callable[[About, ClassWords], Sentences]
    unit_asked: Callable[[About, ClassWords], Sentences]
    guess_asked: Callable[[], Sentences]


class KeyTold(Struct, frozen=True):
    """What a key says beside an answer, and how a working is checked."""

    needs: Callable[[Needs], Sentences]
    estimate: Callable[[Estimate], Sentences]
    range: Callable[[Estimate], Sentences]
    missing: Callable[[Writable], Sentences]
    slip: Callable[[int, int, tuple[Expression, Expression], Writable], Sentences]


class StoriesTold(Struct, frozen=True):
    """The word problems of a language: every frame that suits a class, how one is filled, what is counted.

    ``amount`` is a measure or a time of day as it stands in one.
    """

    frames: Callable[[ClassWords | None], tuple[StoryFrame, ...]]
    filled: Callable[[StoryFrame, StoryQuestion, ClassWords], Sentences]
    whole: Callable[[ClassWords | None], ClassWords]
    amount: Callable[[Quantity], Sentences]


class WayTold(Protocol):
    """Name the way of a working, or another way by its key on the same numbers."""

    def __call__(self, working: Working, words: ClassWords, key: str | None = None) -> str:
        """Name it."""
        ...


class WorkingTold(Struct, frozen=True):
    """What is said of a working: why a line follows, how a hard fact is found, what a picture shows.

    ``way`` names the way of a working, or another way by its key on the same numbers.
    """

    reason: Callable[[Reason, ClassWords], Sentences]
    fact: Callable[[Fact], Sentences]
    picture: Callable[[Scene, ClassWords], Sentences]
    scene_words: Callable[[Scene, ClassWords], ClassWords]
    way: WayTold


#: So many things that are done on a page have a sentence each; of more, so many share one.
FEW_ACTS, ACTS_TOGETHER = 2, 2


def acts_told(acts: Sequence[str]) -> tuple[tuple[tuple[str], ...], ...]:
    """Return what else is done on a page, sentence by sentence: two in one where there are many.

    >>> acts_told(["add", "compare"]), len(acts_told(["add", "compare", "order", "round"]))
    (((('add',),), (('compare',),)), 2)
    """
    size = 1 if len(acts) <= FEW_ACTS else ACTS_TOGETHER
    return tuple(tuple((act,) for act in acts[at : at + size]) for at in range(0, len(acts), size))
