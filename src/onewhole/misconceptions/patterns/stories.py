"""What to do in a story: the operation that is chosen is another one than the story asks for.

Rules and sources are those of a second collection of error patterns, family T. On numbers alone none of them
shows: there a sign says what to do. What a word suggests and whether two amounts are compared must be known
of a story; of words that a teacher typed they are not.
"""

from functools import partial

from onewhole.misconceptions.asks.stories import (
    IsThatAsked,
    PartOfHowMuch,
    SharedAmongHowMany,
    TellWithoutNumbers,
    WhichAreNeeded,
    WhoseIsLarger,
)
from onewhole.misconceptions.filling import filled, plain
from onewhole.misconceptions.holes.stories import answer_told, first_told, second_told
from onewhole.misconceptions.in_story import whatever_it_tells
from onewhole.misconceptions.pattern import Example, Family, Pattern, Topic
from onewhole.misconceptions.source import COMMON, Source
from onewhole.misconceptions.telling import PLAIN_STORY, Doing, ToldAs
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.misconceptions.wrong_steps.quotients import larger_by_smaller, makes_fraction
from onewhole.misconceptions.wrong_steps.stories import (
    by_a_word,
    chooses,
    everything_added,
    first_step_told,
    part_divided,
    the_wrong_way_round,
)

_chosen = partial(Pattern, topic=Topic.STORIES, family=Family.OPERATION, source=COMMON)

_COMPARED = Source(
    "Lewis & Mayer (1987); De Corte, Verschaffel & Pauwels (1990), ED 316 850; a 2025 study of 112 grade 3 "
    "children on the word “more”",
    provenance="read",
    note="abstracts of 1990 and 2025 read; 1987 through them",
)
_FISCHBEIN = Source(
    "Fischbein, Deri, Nello & Marino (1985), JRME: the divisor must be smaller, dividing makes smaller",
    note="Graeber, Tirosh & Glover, abstract on the same beliefs, read",
)
_PREDIGER = Source(
    "Prediger (2011), IEJME 6(2), 830 students; Greer (1988) after Ekenstam & Greger (1983): 83% choose x "
    "for 5 kg, 29% for 0.923 kg",
    provenance="read",
    note="abstract of Prediger and a citation of Greer read",
)

STORIES = (
    _chosen(
        id="T01",
        name="goes by a word in the story",
        rule="The operation that a word suggests is done with the two numbers.",
        shows_when="a word suggests another operation than the story asks for",
        thinking=plain(RuleThought.A_WORD_SAYS_SO),
        ask=filled(TellWithoutNumbers, first_told, second_told),
        source=_COMPARED,
        example=Example(
            "12 - 3",
            "9",
            "15",
            "Ana has 12 kites. She has 3 more than Ben. How many has Ben?",
            ToldAs(Doing.ADDING, compares=True),
        ),
        attempt=chooses(by_a_word),
    ),
    _chosen(
        id="T02",
        name="adds all the numbers of the story",
        rule="All the numbers are added, whatever the story asks.",
        shows_when="a story asks for something else than adding everything",
        thinking=plain(RuleThought.ALL_ARE_FOR_ADDING),
        ask=filled(WhichAreNeeded, answer_told),
        example=Example(
            "25 - 8",
            "17",
            "33",
            "A roll has 25 m of line. Kim cuts off 8 m. How many meters are left?",
            PLAIN_STORY,
        ),
        attempt=chooses(everything_added),
    ),
    _chosen(
        id="T03",
        name="compares the wrong way round",
        rule="The opposite operation is done: plus for minus, times for divided by, and the reverse.",
        shows_when="a story compares, and one of the two amounts is unknown",
        thinking=plain(RuleThought.SECOND_IS_LARGER),
        ask=filled(WhoseIsLarger, first_told),
        source=_COMPARED,
        example=Example(
            "24 / 4",
            "6",
            "96",
            "Mia's tail is 24 inches long. It is 4 times as long as Leo's. How long is Leo's?",
            ToldAs(Doing.MULTIPLYING, compares=True),
        ),
        attempt=chooses(the_wrong_way_round),
    ),
    _chosen(
        id="T05",
        name="divides the larger number by the smaller one in a story",
        rule="b over a.",
        shows_when="fewer things are shared than there are shares",
        thinking=plain(RuleThought.BIGGER_BY_SMALLER),
        ask=filled(SharedAmongHowMany, answer_told),
        source=_FISCHBEIN,
        example=Example(
            "3 / 4", "3/4", "4/3", "3 strips are shared by 4 children. How much does each get?", PLAIN_STORY
        ),
        attempt=whatever_it_tells(makes_fraction(larger_by_smaller)),
    ),
    _chosen(
        id="T08",
        name="stops after the first step of a story",
        rule="The first step is done, and what it comes to is written as the answer.",
        shows_when="a story takes several steps",
        thinking=plain(RuleThought.FOUND_A_NUMBER),
        ask=filled(IsThatAsked, answer_told),
        example=Example(
            "3 x 12 - 20",
            "16",
            "36",
            "Sam buys 3 rolls of 12 m and uses 20 m. How many meters are left?",
            PLAIN_STORY,
        ),
        attempt=chooses(first_step_told),
    ),
    _chosen(
        id="T09",
        name="divides to find a part of an amount",
        rule="The amount is divided by the fraction.",
        shows_when="a story asks for a part of something",
        thinking=plain(RuleThought.PART_IS_SHARING),
        ask=filled(PartOfHowMuch, first_told, second_told),
        source=_PREDIGER,
        example=Example(
            "3/4 x 8",
            "6",
            "10 2/3",
            "A tail takes 8 m for a big kite. A small kite takes 3/4 of that. How many meters?",
            PLAIN_STORY,
        ),
        attempt=chooses(part_divided),
    ),
)
