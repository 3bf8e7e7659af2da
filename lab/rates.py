"""How often things happen in an invented class; each figure with its source, or "our assumption"."""

from dataclasses import dataclass, replace

from lab.outside import RULES

#: From and to: each pupil draws an own rate between the two, evenly.
Span = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Rates:
    """Shares of a class (they add up to at most 1, the rest is sound) and rates of each pupil.

    ``subtracting``, ``adding``: pupils with one steady idea in subtracting, in adding. 13 % of 744 children
    in grades 2 to 6 had a systematic error in subtracting and 5 to 6 % in adding: Cox (1974), ED 092 407
    (abstract), for whole-number columns; that it holds for mixed numbers is our assumption.
    ``come_and_go``: share of those whose idea comes and goes (the pupil works rightly in between). That many
    do not stay: VanLehn (1982), ED 245 880 (abstract); how many is our assumption.
    ``paired``: pupils with one steady idea in subtracting and one beside it in adding, or where nothing
    need be opened; our assumption. ``in_turn``: pupils who take one of two ideas on the same problems, now
    this one and now that (VanLehn's bug migration, from memory); ``partly``: pupils who use one steady idea
    on some sort of problem only; ``outside``: pupils with a steady rule that no pattern describes
    (:mod:`lab.outside`), one of ``rules``; none of these in the usual class. ``shaky``, ``scattered``: pupils
    who slip often, and pupils who try an idea and drop it (Tatsuoka, ed., 1984, ED 257 665, abstract: many
    rules are used once and never again); the shares are our assumption.
    """

    subtracting: float = 0.13
    adding: float = 0.055
    come_and_go: float = 0.4
    paired: float = 0.02
    in_turn: float = 0.0
    partly: float = 0.0
    outside: float = 0.0
    rules: tuple[str, ...] = tuple(RULES)
    shaky: float = 0.18
    scattered: float = 0.13
    #: A steady pupil's turns back to the right way, and those of one whose idea comes and goes; our
    #: assumption.
    back: Span = (0.0, 0.05)
    back_often: Span = (0.15, 0.5)
    #: Slips in each written line: of a sound pupil, a steady one, a shaky one; our assumption. (Of the errors
    #: of 80 pupils aged about 14, three in ten were careless in adding fractions and one in ten in
    #: subtracting them: Idris & Narayanan 2011, abstract.)
    slip: Span = (0.0, 0.04)
    slip_steady: Span = (0.0, 0.06)
    slip_shaky: Span = (0.06, 0.18)
    #: An idea used once and dropped, in each problem: of a shaky pupil, of a scattered one; our assumption.
    once_shaky: Span = (0.0, 0.15)
    once_scattered: Span = (0.4, 0.9)
    #: A number out of the air where a scattered pupil has an idea; our assumption.
    out_of_the_air: float = 0.25
    #: A digit copied wrongly, nothing written, another form of the same amount; our assumption.
    copied: float = 0.008
    blank: float = 0.02
    blank_scattered: float = 0.08
    other_form: float = 0.12
    #: Two digits of an answer written in each other's place; none in the usual class.
    transposed: float = 0.0


#: How often some ideas are met beside all others, which count 1 each. Smaller from larger, no decrement and
#: across zero were met in 9, 8 and 7 % of pupils without difficulties: Raghubar et al. (2009), grades 3 and
#: 4, n = 291, whole-number columns (through a research note that had the article open). That their likes in
#: mixed numbers are as frequent is our assumption; so is that 9 beside the others' 1.
FREQUENT = {"A01": 9, "A02": 8, "A20": 4, "A21": 3, "E01": 9, "E02": 8, "E04": 7}

USUAL = Rates()

#: What if the class is not as supposed? Each is diagnosed by the same marking, which knows nothing of it.
OTHERWISE = {
    "30 % with a steady idea": replace(USUAL, subtracting=0.2, adding=0.06, paired=0.04),
    "5 % with a steady idea": replace(USUAL, subtracting=0.035, adding=0.01, paired=0.005),
    "slips doubled": replace(
        USUAL, slip=(0.0, 0.08), slip_steady=(0.0, 0.12), slip_shaky=(0.12, 0.36), copied=0.016
    ),
    "every idea comes and goes": replace(USUAL, come_and_go=1.0),
    "scattered pupils doubled": replace(USUAL, scattered=0.26),
    "10 % take two ideas in turn": replace(USUAL, in_turn=0.1),
    "10 % use an idea on some problems only": replace(USUAL, partly=0.1),
    "10 % outside the catalogue": replace(USUAL, outside=0.1),
    "no steady idea at all": replace(USUAL, subtracting=0.0, adding=0.0, paired=0.0),
    "60 % with a steady idea": replace(
        USUAL, subtracting=0.45, adding=0.1, paired=0.05, shaky=0.12, scattered=0.08
    ),
    "10 % of answers with two digits in each other's place": replace(USUAL, transposed=0.1),
    "15 % blanks": replace(USUAL, blank=0.15),
    "other forms in 40 %": replace(USUAL, other_form=0.4),
}
