"""What the standards expect of a page, and what may be done where it does not."""

from collections.abc import Iterable
from typing import assert_never

from onewhole.findings.standard import GRADE_3, GRADE_4, LARGEST_IN_GRADE_3, LARGEST_WHOLE, StandardCode
from onewhole.languages.english.making import Nodes, bare, listed, told
from onewhole.number.quantity import whole
from onewhole.sentences.node import Spot, Typed
from onewhole.sentences.sentence import Sentences


def rule(code: StandardCode) -> Sentences:
    """Say what a standard expects, in our words.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(rule(StandardCode.GRADE_3_DENOMINATORS))
    'Grade 3 meets the denominators 2, 3, 4, 6 and 8.'
    """
    match code:
        case StandardCode.GRADE_4_DENOMINATORS:
            return told("grade", bare(4), "meets the denominators", _numbers(GRADE_4))
        case StandardCode.GRADE_3_DENOMINATORS:
            return told("grade", bare(3), "meets the denominators", _numbers(GRADE_3))
        case StandardCode.LIKE_DENOMINATORS:
            adds = "adds and subtracts with like denominators, besides tenths with hundredths"
            return told("grade", bare(4), adds)
        case StandardCode.NOT_BELOW_ZERO:
            return told("no result is below zero before grade", bare(6))
        case StandardCode.ANY_FORM:
            asked = "the standards ask for no mixed or simplest form"
            return told("any equal form of an answer is right:", asked)
        case StandardCode.STORY_WITH_PICTURE:
            return told("fraction word problems come with a picture and an equation")
        case StandardCode.ONE_WHOLE:
            return told("all the fractions of a word problem are parts of one and the same whole")
        case StandardCode.LARGEST_NUMBER:
            return told("whole numbers of grade", bare(4), "stay at or below", _LARGEST)
        case StandardCode.UNLIKE_IS_GRADE_5:
            return told("unlike denominators are grade", bare(5), ":", Typed("5.NF.A.1"))
        case StandardCode.TIMES_IS_GRADE_5:
            return told("a fraction times a fraction is grade", bare(5), ":", Typed("5.NF.B.4"))
        case StandardCode.BOTH_KINDS:
            return told("a page on regrouping holds problems with it and problems without it")
        case StandardCode.ODD_DENOMINATORS:
            met = ("no part of what grade", bare(4), "is expected to meet")
            return told("sevenths, ninths and elevenths are", met)
        case StandardCode.STRIP_OF_HUNDREDTHS:
            return told("a strip of", bare(100), "parts cannot be drawn so that it can be read")
        case StandardCode.LARGEST_SUM_OF_GRADE_3:
            return told("grade", bare(3), "adds and subtracts within", _with_commas(LARGEST_IN_GRADE_3))
        case StandardCode.ZEROS_TO_CROSS:
            return told("a page on regrouping crosses zeros in some of its problems, and not in all")
        case StandardCode.UNEQUAL_LENGTHS:
            return told("whether digits are lined up shows only where one number is longer than the other")
        case StandardCode.TIMES_IN_GRADE_3:
            tens = "and a digit times tens"
            return told("grade", bare(3), "multiplies two digits", tens, ":", Typed("3.OA.C.7, 3.NBT.A.3"))
        case StandardCode.TIMES_IN_GRADE_4:
            four = ("four digits by one and two digits by two:", Typed("4.NBT.B.5"))
            return told("grade", bare(4), "multiplies at most", four)
        case StandardCode.ROUNDING_PLACES:
            third = ("grade", bare(3), "rounds to tens and hundreds")
            fourth = ("grade", bare(4), "to every place of a whole number")
            return told(third, ",", fourth, ",", "grade", bare(5), "rounds decimals too")
        case StandardCode.EXACTLY_HALFWAY:
            none = "the standards have no rule for a number exactly halfway"
            return told(none, ", so either neighbor is marked right")
        case StandardCode.TWO_ARE_COMPARED:
            return told("the standards compare two numbers: to order more is common practice, and fine")
        case StandardCode.SMALLER_UNITS_ONLY:
            return told("grade", bare(4), "writes larger units in smaller ones:", Typed("4.MD.A.1"))
        case StandardCode.DECIMALS_ARE_GRADE_4:
            return told("decimals are grade", bare(4), ":", Typed("4.NF.C.6"))
        case _:
            assert_never(code)


def standard_met(code: StandardCode) -> Sentences:
    """Say what a teacher may do.

    >>> from onewhole.notations.sentences.text import text_of
    >>> text_of(standard_met(StandardCode.NOT_BELOW_ZERO))
    'Put the larger number first.'
    """
    match code:
        case StandardCode.GRADE_4_DENOMINATORS | StandardCode.GRADE_3_DENOMINATORS:
            return told("keep it if you mean it, or choose one of those denominators")
        case StandardCode.LIKE_DENOMINATORS:
            return told("keep it if your class is ready, or use one denominator")
        case StandardCode.NOT_BELOW_ZERO:
            return told("put the larger number first")
        case StandardCode.ANY_FORM:
            return told("leave the setting out unless the form is what you teach tonight")
        case StandardCode.STORY_WITH_PICTURE:
            return told("set", Typed("picture: strip"), "or", Typed("picture: number line"))
        case StandardCode.ONE_WHOLE:
            return told("name the whole in the story, with the word the class uses")
        case StandardCode.LARGEST_NUMBER:
            return told("use smaller numbers")
        case StandardCode.UNLIKE_IS_GRADE_5:
            return told("keep it as a look ahead, or use one denominator")
        case StandardCode.TIMES_IS_GRADE_5:
            return told("multiply by a whole number, or keep it as a look ahead")
        case StandardCode.BOTH_KINDS:
            return told("mix both kinds, so that looking at the pieces first is worth while")
        case StandardCode.ODD_DENOMINATORS:
            return told("keep it if you mean it: the arithmetic is the same")
        case StandardCode.STRIP_OF_HUNDREDTHS:
            grid = ("use a", bare(10), "by", bare(10), "grid for hundredths")
            return told(grid, ", or another picture")
        case StandardCode.LARGEST_SUM_OF_GRADE_3 | StandardCode.TIMES_IN_GRADE_3:
            return told("use smaller numbers, or keep it as a look ahead")
        case StandardCode.ZEROS_TO_CROSS:
            return told("mix numbers with and without a zero on top")
        case StandardCode.UNEQUAL_LENGTHS:
            return told("use a shorter number beside a longer one in some of them")
        case StandardCode.TIMES_IN_GRADE_4:
            return told("use shorter numbers, or keep it as a look ahead to grade", bare(5))
        case StandardCode.ROUNDING_PLACES:
            return told("keep it as a look ahead, or round to a place of your grade")
        case StandardCode.EXACTLY_HALFWAY:
            return told("keep it, and say in class what you agree on")
        case StandardCode.TWO_ARE_COMPARED:
            return told("keep it")
        case StandardCode.SMALLER_UNITS_ONLY:
            return told("keep it as a look ahead to grade", bare(5), ", or ask for the smaller unit")
        case StandardCode.DECIMALS_ARE_GRADE_4:
            return told("keep it as a look ahead, or use fractions")
        case _:
            assert_never(code)


def _with_commas(number: int) -> Typed:
    """Write a number with its commas, as the standard does."""
    said = f"{number:,}"
    return Typed(said, (Spot(0, len(said), whole(number)),))


_LARGEST = _with_commas(LARGEST_WHOLE)


def _numbers(numbers: Iterable[int]) -> Nodes:
    return listed([(bare(number),) for number in sorted(numbers)])
