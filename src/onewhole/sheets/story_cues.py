"""What the words of a typed word problem tell: what is asked, and where its numbers are spelt out."""

import re
from enum import Enum, auto

from msgspec import Struct

from onewhole.languages.english.words import count_words, piece_name
from onewhole.statements.whole_groups import GroupsAsk

#: Words at which a question asks what is left, or how far two amounts are apart.
_APART = re.compile(
    r"\b(?:subtract|take away|minus|left|remain\w*|difference|to go|needs? to"
    r"|still (?:has|have|needs?|must|to)"
    r"|(?:more|less|fewer|longer|shorter|taller|higher|deeper|wider|heavier|lighter|farther|further|bigger|larger"
    r"|smaller|greater|older|younger|faster|closer)\b.{0,60}\b(?:than|needs?|needed))\b"
)
#: Words at which a question asks for all together.
_TOGETHER = re.compile(
    r"\b(?:al+ ?together|in all|in total|total|totals|add|plus|combined|together|sum|both)\b"
)
#: Words at which a question asks which of two amounts is the larger one.
_WHICH = re.compile(
    r"\b(?:who|which|whose)\b.{0,60}\b(?:more|most|less|least|fewer|fewest|larger|largest|smaller|smallest|\w+er|\w+est)\b"
)
#: A question about what was there before, or what there is now: the story before it says which way.
_BEFORE = re.compile(
    r"\b(?:at first|at the start|to start|start(?:ed)? with|to begin|begin with|in the beginning|before)\b"
)
_TAKES = re.compile(
    r"\b(?:gave|gives?|uses?|used|cuts?|eats?|ate|drinks?|drank|spends?|spent|sells?|sold|loses?|lost|pours?|poured"
    r"|spill(?:s|ed)?|removed?|removes|takes?|took|trims?|trimmed|burn(?:s|ed|t)?)\b"
)
_GETS = re.compile(
    r"\b(?:finds?|found|buys?|bought|gets?|got|adds?|added|picks?|picked|collects?|collected|another|receives?|received"
    r"|makes?|made|joins?|joined|more)\b"
)
#: Words of equal shares or of times as much, and of comparing in the story itself: nothing is sure then.
_UNSURE = re.compile(
    r"\b(?:each|every|times|per|apiece|twice|double|triple|halfway|share[sd]?|equally|equal|split"
    r"|divided?|multiplied|half of|thirds? of|fourths? of|quarters? of|than"
    r"|as (?:much|many|long|far|tall|heavy) as)\b|[0-9]/[0-9]+ of\b"
)
_EQUAL_SHARES = re.compile(r"\b(?:each|every|times|per|apiece)\b")

#: What a question asks of things in groups of one size; which of the three a word tells is our own rule.
_OF_GROUPS = (
    (re.compile(r"\bleft over\b|\bleftover"), GroupsAsk.LEFT),
    (re.compile(r"\bfull\b"), GroupsAsk.FULL),
    (re.compile(r"\bneed(?:s|ed)?\b"), GroupsAsk.NEEDED),
)

_ONES = {count_words(count): count for count in range(21)}
_PARTS = {piece_name(parts, count): parts for parts in (2, 3, 4, 5, 6, 8, 10, 12) for count in (1, 2)} | {
    "quarter": 4,
    "quarters": 4,
}
_COUNT = "|".join(sorted(_ONES, key=len, reverse=True))
_SPELT = re.compile(
    rf"\b(?:(?P<wholes>{_COUNT}|[0-9]+)\s+and\s+)?(?:(?P<top>a|an|{_COUNT})[\s-]+)?(?P<part>{'|'.join(_PARTS)})\b"
)
_COUNTED = re.compile(rf"\b(?P<count>{_COUNT})\b")
#: What a number after it is the name of: Room 12, page 3.
_NAMES = re.compile(
    r"\b(?:room|grade|page|class|problem|question|lesson|unit|chapter|day|week|bus|table|team|group|number|no\.?)\s$"
)


class StoryAsks(Enum):
    """What the words of a story ask for, as far as one or two words can tell."""

    APART = auto()
    TOGETHER = auto()
    WHICH = auto()


class StoryCues(Struct, frozen=True):
    """What the words tell: what is asked (None: not said), how surely, and whether shares are equal.

    ``groups`` is what may be asked of things in groups, where shares are equal.
    """

    told: StoryAsks | None
    sure: bool
    equal_shares: bool
    groups: GroupsAsk | None = None


class SpeltNumber(Struct, frozen=True):
    """A number that is spelt out: where it stands, and in digits."""

    start: int
    end: int
    digits: str


def cues(story: str) -> StoryCues:
    """Return what the words of a story tell about its question. They never settle it: a teacher does.

    Key words mislead where a story compares (Ana has 2 more than Ben), so a word counts only in the question,
    and a story that compares or shares is told as unsure.
    Source: that key words mislead is taught by many texts on word problems (from memory); the words and the
    rule are our own, common practice, no source.

    >>> cues("Maya has 4 1/4 yards of ribbon. She uses 1 3/4 yards. How much is left?")
    StoryCues(told=<StoryAsks.APART: 1>, sure=True, equal_shares=False, groups=None)
    """
    *before, question = _sentences(story.lower())
    body = " ".join(before)
    found = [
        told
        for told, words in (
            (StoryAsks.APART, _APART),
            (StoryAsks.TOGETHER, _TOGETHER),
            (StoryAsks.WHICH, _WHICH),
        )
        if words.search(question)
    ]
    if (
        StoryAsks.APART in found
        and StoryAsks.WHICH in found
        and re.search(r"\bhow (?:much|many|far)\b", question)
    ):
        found.remove(StoryAsks.WHICH)
    sure = len(found) == 1 and _UNSURE.search(body) is None and _EQUAL_SHARES.search(question) is None
    told = found[0] if found else _by_the_story(body, question)
    equal = _EQUAL_SHARES.search(story.lower()) is not None
    groups = next((asks for words, asks in _OF_GROUPS if equal and words.search(question)), None)
    return StoryCues(told, sure, equal, groups)


def spelt_numbers(story: str) -> tuple[SpeltNumber, ...]:
    """Return fractions and mixed numbers that are spelt out.

    >>> [one.digits for one in spelt_numbers("He ate two and a half pies and three fourths of a cake.")]
    ['2 1/2', '3/4']
    """
    found = []
    for one in _SPELT.finditer(story.lower()):
        wholes, top, part = one["wholes"], one["top"], one["part"]
        count = _ONES.get(top or "a", 1)
        if not top and not part.startswith(("half", "quarter")):
            continue
        before = f"{_ONES.get(wholes, wholes)} " if wholes else ""
        found.append(SpeltNumber(one.start(), one.end(), f"{before}{count}/{_PARTS[part]}"))
    return tuple(found)


def spelt_counts(story: str) -> tuple[SpeltNumber, ...]:
    """Return whole numbers that are spelt out, one to twenty.

    >>> [one.digits for one in spelt_counts("Sam had six cups and drank two.")]
    ['6', '2']
    """
    return tuple(
        SpeltNumber(one.start(), one.end(), str(_ONES[one["count"]]))
        for one in _COUNTED.finditer(story.lower())
    )


def names_a_thing(before: str) -> bool:
    """Say whether the words before a number make a name of it: Room 12.

    >>> names_a_thing("The pupils of Room "), names_a_thing("Maya has ")
    (True, False)
    """
    return _NAMES.search(before.lower()) is not None


def _by_the_story(body: str, question: str) -> StoryAsks | None:
    """Return what the story tells where its question has no word for it."""
    takes, gets = _TAKES.search(body + question), _GETS.search(body)
    if bool(takes) == bool(gets):
        return None
    if _BEFORE.search(question):
        return StoryAsks.TOGETHER if takes else StoryAsks.APART
    return StoryAsks.APART if takes else StoryAsks.TOGETHER


def _sentences(story: str) -> list[str]:
    return [one for one in re.split(r"(?<=[.?!])\s+", story.strip()) if one] or [""]
