"""Thoughts that are the same on every problem."""

from collections.abc import Mapping
from types import MappingProxyType

from onewhole.languages.english.making import told
from onewhole.misconceptions.thoughts.rules import RuleThought
from onewhole.sentences.sentence import Sentences

#: Each thought as one or more sentences.
RULES: Mapping[RuleThought, tuple[str, ...]] = MappingProxyType(
    {
        RuleThought.SUBTRACTED_WHOLES: ("I know how to subtract whole numbers, so I did that part",),
        RuleThought.ADDED_WHOLES: ("I know how to add whole numbers, so I did that part",),
        RuleThought.SIGN_CHANGED: ("I may have changed the sign halfway without seeing it",),
        RuleThought.STILL_ADDING: ("we were adding before, so I may have gone on adding",),
        RuleThought.STILL_TAKING: ("we were taking away before, so I may have gone on taking away",),
        RuleThought.MINUS_EVERYWHERE: ("it says minus, so I do minus with every number I see",),
        RuleThought.PLUS_EVERYWHERE: ("it says plus, so I do plus with every number I see",),
        RuleThought.TIMES_EVERYWHERE: ("I do times with every number I see",),
        RuleThought.PLUS_TOP_AND_BOTTOM: ("it says plus, so I do plus on top and plus on the bottom",),
        RuleThought.MINUS_TOP_AND_BOTTOM: ("it says minus, so I do minus on top and minus on the bottom",),
        RuleThought.GAVE_AND_TOOK: (
            "when I add, I may give some from one number to the other",
            "I did the same here",
        ),
        RuleThought.RULES_MIXED: ("I know some rules for fractions and may have mixed them up",),
        RuleThought.RULE_FOR_TIMES: ("I used the rule for times",),
        RuleThought.ALL_BUT_THE_BOTTOM: ("I added all the numbers that are not on the bottom",),
        RuleThought.ONLY_THE_BOTTOMS: (
            "I changed the bottoms to be the same",
            "I may not have seen that the tops change too",
        ),
        RuleThought.UNSURE_OF_THE_BOTTOMS: (
            "the tops go with minus",
            "I may not be sure what the bottoms do",
        ),
        RuleThought.WRONG_FACTOR: (
            "I know I must multiply the top",
            "I may have taken the wrong number",
        ),
        RuleThought.BIGGER_IS_SMALLER: ("with fractions the bigger number is the smaller one",),
        RuleThought.RIGHT_UNDER_RIGHT: ("I write the numbers under one another as I always do",),
        RuleThought.TWO_NUMBERS_AND_A_SIGN: ("both are two numbers with something between them",),
        RuleThought.ZERO_TURNS_INTO_NINE: ("when I trade from a zero, it turns into a nine",),
        RuleThought.SKIPS_THE_ZERO: ("I can't take from a zero, so I take from the next digit",),
        RuleThought.NOTHING_TO_TAKE_FROM_ZERO: (
            "there is nothing to take from a zero, so nothing changes there",
        ),
        RuleThought.FORGOT_WHERE_IT_BEGAN: (
            "zeros turn into nines",
            "I may have forgotten where the trade began",
        ),
        RuleThought.ZERO_IS_TEN: (
            "the zero turned into ten",
            "I may not see that it gave one away again",
        ),
        RuleThought.NOTHING_STAYS_NOTHING: ("you can't take anything from nothing, so it stays nothing",),
        RuleThought.ZERO_GIVES_ZERO: ("with a zero the answer is zero",),
        RuleThought.ONE_IN_FRONT: (
            "I write a one in front",
            "there is a one already, so it may look like ten",
        ),
        RuleThought.ALL_USED_UP: ("they are all used up, so none are left",),
        RuleThought.STARTS_AT_THE_FRONT: ("I start at the front of the number when I need more",),
        RuleThought.CROSSED_ONE_OUT: ("I crossed one out already",),
        RuleThought.COPIES_THE_DIGIT: ("nothing is taken there, so I just copy the digit",),
        RuleThought.ONE_AWAY_EACH_TIME: ("nothing stands there, so I take one away each time",),
        RuleThought.SOMETHING_EVERYWHERE: ("there must be something to take in every column",),
        RuleThought.FINISHED_ALREADY: ("nothing is taken there, so I am finished",),
        RuleThought.ADDS_TO_THE_NEIGHBOR: ("that column needs more too, so I add to it",),
        RuleThought.ZERO_MUST_CHANGE: ("I must change the zero, and it can't go down",),
        RuleThought.TURNS_AROUND_AT_ZERO: ("I can't trade with a zero, so I turn the numbers around",),
        RuleThought.STILL_THERE: (
            "I opened one and got ten smaller ones",
            "the one I opened may still count for me",
        ),
        RuleThought.ZERO_FROM_ZERO: ("zero take away zero is zero, so I leave that column alone",),
        RuleThought.EACH_COLUMN_APART: ("each column is a little sum of its own",),
        RuleThought.WRITTEN_UNDERNEATH: ("what a column makes is written under it",),
        RuleThought.ALWAYS_A_ONE: ("in adding I always put a one at the top of the next column",),
        RuleThought.ONE_GOES_TO_THE_FRONT: ("the little one goes to the front",),
        RuleThought.FIRST_WRITTEN_SECOND_CARRIED: ("I write the first digit and carry the second",),
        RuleThought.LEFT_UNDER_LEFT: (
            "numbers start at the left, so I write them under one another from the left",
        ),
        RuleThought.ABOVE_AND_IN_MIND: ("I wrote the one above and kept it in my head too",),
        RuleThought.CARRIES_ONCE: ("I carry once in a sum, and I did",),
        RuleThought.NO_COLUMN_LEFT: ("there is no column left for it",),
        RuleThought.ALL_PUT_TOGETHER: ("adding means putting all the numbers I see together",),
        RuleThought.LEFT_TO_RIGHT: ("I read from left to right, so I add that way",),
        RuleThought.ADDED_TO_ALL_ABOVE: ("the little number is added to everything above it",),
        RuleThought.ONLY_ONE_DIGIT: ("only one digit stands there, so I copy it",),
        RuleThought.POINT_KEEPS_APART: ("the point keeps the two sides apart",),
        RuleThought.COUNTS_PLACES: ("I count the digits after the points of both numbers",),
        RuleThought.WHOLE_NUMBERS_AFTER: (
            "after the point there are whole numbers, and I add them as I always do",
        ),
        RuleThought.FIRST_FREE_DIGIT: ("I write the number under the first free digit",),
        RuleThought.POINT_NOT_ADDED: ("the point is not part of adding",),
        RuleThought.DOLLARS_AND_CENTS: ("they work like dollars and cents",),
        RuleThought.FRACTION_IS_EXTRA: ("the fraction is only a little extra",),
        RuleThought.FRACTION_DECIDES: ("that fraction is the larger one",),
        RuleThought.FRACTION_BELOW_ONE: ("a fraction is a part, so it is less than one",),
        RuleThought.SMALL_IS_BIG: ("with fractions it is the other way round", "small numbers are big"),
        RuleThought.LONGER_UNLESS_ZERO: (
            "after the point the longer number is bigger, unless it begins with a zero",
        ),
        RuleThought.ZERO_IS_NOTHING: ("zero is nothing, so I leave it out",),
        RuleThought.LIKE_MONEY: ("it is like money, and money shows two places",),
        RuleThought.POINT_UNSEEN: ("without the point that number is bigger",),
        RuleThought.DIGITS_CUT_IT: ("the digits after the point say into how many pieces it is cut",),
        RuleThought.BEGINS_BIGGER: ("it begins with the bigger digit",),
        RuleThought.SIGN_UNSURE: ("I know which is larger but not which sign says so",),
        RuleThought.PLUS_SO_ADD: ("there is a plus, so I add",),
        RuleThought.MINUS_SO_TAKE: ("there is a minus, so I take away",),
        RuleThought.UNDO_MINUS: ("to undo minus I add",),
        RuleThought.ANSWER_COMES_NEXT: ("the equals sign tells me to write the answer now",),
        RuleThought.ADDS_THEM_UP: ("I see numbers and plus signs, so I add them up",),
        RuleThought.SAME_NUMBER_AGAIN: ("the same number must stand there again",),
        RuleThought.TWO_AND_DONE: ("I worked with two numbers, and that is the answer",),
        RuleThought.ONE_TAKEN_OFF: ("I take away the number that I see, and that is left",),
        RuleThought.MULTIPLY_THEN_ADD: ("I multiply and then add, and took the wrong two first",),
        RuleThought.QUOTIENT_GOES_BELOW: ("the answer of the division goes below",),
        RuleThought.FIRST_DIGIT_IS_WHOLES: ("the first digit is the whole number",),
        RuleThought.ONE_COMES_OUT: ("one whole comes out, and the rest stays",),
        RuleThought.HOW_OFTEN_IT_GOES: ("that is how often it goes",),
        RuleThought.HALVED_BOTH: ("I halved both",),
        RuleThought.BOTTOM_MUST_SHRINK: ("the bottom must become smaller",),
        RuleThought.BOTH_AFTER_THE_POINT: ("both numbers go after the point",),
        RuleThought.BOTTOM_SAYS_WHICH: ("the number below says which decimal it is",),
        RuleThought.DIGIT_IS_BELOW: ("the digits after the point are the number below",),
        RuleThought.DECIMALS_ARE_TENTHS: ("decimals are tenths",),
        RuleThought.LARGER_UNIT_LARGER_NUMBER: ("the unit gets bigger, so the number gets bigger",),
        RuleThought.SMALLER_UNIT_SMALLER_NUMBER: ("the unit gets smaller, so the number gets smaller",),
        RuleThought.ALL_IN_TENS: ("everything goes in tens",),
        RuleThought.HUNDRED_SMALL_ONES: ("there are a hundred small ones in a big one",),
        RuleThought.CHANGED_THE_LARGE_ONES: ("I changed the big ones, so I am done",),
        RuleThought.TWO_COUNTS_ADDED: ("there are two numbers, so I add them",),
        RuleThought.ONE_COUNT_AFTER_THE_OTHER: ("I write one number after the other",),
        RuleThought.ROUNDING_CUTS_OFF: ("rounding means cutting off",),
        RuleThought.ROUNDING_IS_UP: ("rounding means going up",),
        RuleThought.ONE_PLACE_AFTER_ANOTHER: ("I round one place after another, from the right",),
        RuleThought.COUNTED_FROM_THE_WRONG_END: ("I counted the places from the wrong end",),
        RuleThought.FIRST_DIGIT_IS_KEPT: ("the first digit is the one to keep",),
        RuleThought.DIGIT_GOES_UP_ONLY: ("only the digit in the place changes",),
        RuleThought.LAST_DIGIT_DECIDES: ("the last digit decides",),
        RuleThought.REST_GOES_AWAY: ("the rest goes away",),
        RuleThought.DOWN_TAKES_ONE_OFF: ("up adds one, so down takes one off",),
    }
)


def thought_of_rules(thought: RuleThought) -> Sentences:
    """Say a thought that is the same on every problem.

    >>> thought_of_rules(RuleThought.RULE_FOR_TIMES)[0].nodes
    ('I used the rule for times',)
    """
    return tuple(sentence for words in RULES[thought] for sentence in told(words))
