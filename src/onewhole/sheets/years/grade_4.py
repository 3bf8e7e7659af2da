"""Grade 4, week by week.

Source of the weeks: common practice, no source; they fit public plans of New York State and of districts in
Georgia and Kentucky (2012 to 2016), which were read in part. The standards set no order inside a year, and
districts differ by up to half a year: a teacher moves what is taught at another time. Which skill a page of
the week is composed of is our own reading of the codes.
"""

from onewhole.findings.wished_skill import WishedSkill as Skill
from onewhole.sheets.years.topic import TopicPage as Page
from onewhole.sheets.years.topic import YearTopic as Topic

#: Denominators of fractions that are no decimals.
_PARTS = (2, 3, 4, 5, 6, 8, 12)
_MILLION = 6

GRADE_4_WEEKS: tuple[Topic, ...] = (
    Topic(1, "facts; adding and taking away to 1,000", ("3.OA.C.7", "3.NBT.A.2"), (Page(Skill.WHOLE, 3),)),
    Topic(2, "place value to 1,000,000", ("4.NBT.A.1", "4.NBT.A.2"), (Page(Skill.COMPARE_WHOLE, _MILLION),)),
    Topic(
        3,
        "comparing and rounding whole numbers",
        ("4.NBT.A.2", "4.NBT.A.3"),
        (Page(Skill.ROUND_WHOLE, _MILLION), Page(Skill.COMPARE_WHOLE, 5)),
    ),
    Topic(4, "adding in columns", ("4.NBT.B.4",), (Page(Skill.ADD_WHOLE), Page(Skill.ADD_WHOLE, _MILLION))),
    Topic(
        5,
        "taking away in columns, zeros",
        ("4.NBT.B.4",),
        (Page(Skill.SUBTRACT_WHOLE), Page(Skill.SUBTRACT_WHOLE, 5)),
    ),
    Topic(6, "word problems, adding and taking away", ("4.OA.A.3",), (Page(Skill.WHOLE),), stories=True),
    Topic(
        7,
        "metric length, mass and capacity",
        ("4.MD.A.1", "4.MD.A.2"),
        (Page(Skill.CONVERT), Page(Skill.MEASURES)),
    ),
    Topic(8, "times as much, against more", ("4.OA.A.1", "4.OA.A.2")),
    Topic(9, "times 10, 100; two digits by one", ("4.NBT.B.5",), (Page(Skill.TIMES_WHOLE, 2),)),
    Topic(10, "three and four digits by one", ("4.NBT.B.5",), (Page(Skill.TIMES_WHOLE, 4),)),
    Topic(11, "area and perimeter", ("4.MD.A.3", "4.OA.A.3")),
    Topic(12, "factors, multiples, primes", ("4.OA.B.4",), (Page(Skill.FACTORS),)),
    Topic(13, "dividing with a remainder", ("4.NBT.B.6",), (Page(Skill.DIVIDE_WHOLE, 2),)),
    Topic(14, "three and four digits divided by one", ("4.NBT.B.6",), (Page(Skill.DIVIDE_WHOLE, 4),)),
    Topic(15, "what a remainder says", ("4.OA.A.3",), (Page(Skill.REMAINDERS),)),
    Topic(16, "two digits by two, area model", ("4.NBT.B.5",), (Page(Skill.TIMES_WHOLE, 2),)),
    Topic(17, "patterns; half-year check", ("4.OA.C.5",)),
    Topic(18, "equal fractions", ("4.NF.A.1",), (Page(Skill.EQUAL_FRACTIONS, denominators=_PARTS),)),
    Topic(19, "comparing fractions", ("4.NF.A.2",), (Page(Skill.COMPARE_FRACTIONS, denominators=_PARTS),)),
    Topic(
        20,
        "fractions above 1 and mixed numbers",
        ("4.NF.B.3.a", "4.NF.B.3.b"),
        (Page(Skill.OTHER_NAMES, denominators=_PARTS),),
    ),
    Topic(
        21,
        "like fractions: adding and taking away",
        ("4.NF.B.3.a", "4.NF.B.3.d"),
        (Page(Skill.FRACTIONS, denominators=_PARTS),),
        stories=True,
    ),
    Topic(
        22,
        "mixed numbers: adding and taking away",
        ("4.NF.B.3.c",),
        (Page(Skill.ADD, denominators=_PARTS), Page(Skill.BOTH, denominators=_PARTS)),
    ),
    Topic(
        23,
        "mixed numbers: taking away, regrouping",
        ("4.NF.B.3.b", "4.NF.B.3.c"),
        (Page(Skill.SUBTRACT, denominators=_PARTS),),
    ),
    Topic(
        24,
        "mixed from whole numbers; word problems",
        ("4.NF.B.3.c", "4.NF.B.3.d"),
        (Page(Skill.SUBTRACT, denominators=_PARTS), Page(Skill.BOTH, denominators=_PARTS)),
        stories=True,
    ),
    Topic(
        25,
        "a whole number times a fraction",
        ("4.NF.B.4",),
        (Page(Skill.TIMES, denominators=_PARTS),),
        stories=True,
    ),
    Topic(26, "line plots", ("4.MD.B.4",), (Page(Skill.LINE_PLOTS),)),
    Topic(
        27, "tenths and hundredths", ("4.NF.C.5", "4.NF.C.6"), (Page(Skill.TENTHS), Page(Skill.DECIMAL_NAMES))
    ),
    Topic(
        28,
        "decimals: comparing",
        ("4.NF.C.6", "4.NF.C.7"),
        (Page(Skill.COMPARE_DECIMALS), Page(Skill.DECIMAL_NAMES)),
    ),
    Topic(29, "money and measures with decimals", ("4.MD.A.2",), (Page(Skill.MONEY),)),
    Topic(
        30,
        "feet, pounds, gallons: other units",
        ("4.MD.A.1",),
        (Page(Skill.CONVERT), Page(Skill.COMPARE_MEASURES)),
    ),
    Topic(31, "time and mixed units", ("4.MD.A.1", "4.MD.A.2"), (Page(Skill.CLOCK), Page(Skill.MEASURES))),
    Topic(32, "review by what was found", ()),
    Topic(33, "angles", ("4.MD.C.5", "4.MD.C.6", "4.MD.C.7")),
    Topic(34, "lines, symmetry, figures", ("4.G.A.1", "4.G.A.2", "4.G.A.3")),
    Topic(
        35,
        "fluency: adding, taking away, facts",
        ("4.NBT.B.4", "3.OA.C.7"),
        (Page(Skill.WHOLE, _MILLION),),
    ),
    Topic(
        36,
        "a look at grade 5, not owed",
        ("5.NF.A.1",),
        (Page(Skill.UNLIKE, denominators=(2, 3, 4, 6, 8)),),
    ),
)
