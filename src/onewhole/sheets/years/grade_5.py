"""Grade 5, week by week. Source of the weeks: as for grade 4 (:mod:`~.grade_4`)."""

from onewhole.findings.wished_skill import WishedSkill as Skill
from onewhole.sheets.years.topic import TopicPage as Page
from onewhole.sheets.years.topic import YearTopic as Topic

#: Denominators of fractions that are no decimals.
_PARTS = (2, 3, 4, 5, 6, 8, 12)

GRADE_5_WEEKS: tuple[Topic, ...] = (
    Topic(
        1,
        "grade 4 again: whole numbers, fractions",
        ("4.NBT.B.4", "4.NBT.B.5", "4.NF.B.3"),
        (Page(Skill.WHOLE), Page(Skill.TIMES_WHOLE, 3), Page(Skill.BOTH, denominators=_PARTS)),
    ),
    Topic(2, "place value both ways, powers of ten", ("5.NBT.A.1", "5.NBT.A.2")),
    Topic(3, "thousandths: comparing", ("5.NBT.A.3",), (Page(Skill.ORDER_DECIMALS),)),
    Topic(4, "rounding decimals", ("5.NBT.A.4",), (Page(Skill.ROUND_DECIMALS),)),
    Topic(
        5,
        "decimals: adding and taking away",
        ("5.NBT.B.7",),
        (Page(Skill.ADD_DECIMALS), Page(Skill.SUBTRACT_DECIMALS), Page(Skill.DECIMALS)),
    ),
    Topic(6, "multiplying two and three digits by two", ("5.NBT.B.5",), (Page(Skill.TIMES_LONG),)),
    Topic(7, "multiplying larger numbers; estimates", ("5.NBT.B.5",), (Page(Skill.TIMES_LONG, 4),)),
    Topic(8, "brackets; writing expressions", ("5.OA.A.1", "5.OA.A.2"), (Page(Skill.STEPS),)),
    Topic(9, "dividing by tens and by two digits", ("5.NBT.B.6",), (Page(Skill.DIVIDE_LONG, 3),)),
    Topic(10, "three and four digits divided by two", ("5.NBT.B.6",), (Page(Skill.DIVIDE_LONG, 4),)),
    Topic(11, "what a remainder says; word problems", ("5.NBT.B.6", "5.NF.B.3")),
    Topic(12, "a decimal times a number", ("5.NBT.B.7",)),
    Topic(13, "a decimal divided by a number", ("5.NBT.B.7",), (Page(Skill.DIVIDE_DECIMALS),)),
    Topic(14, "metric units both ways", ("5.MD.A.1",), (Page(Skill.CONVERT),)),
    Topic(
        15, "unlike fractions: adding", ("5.NF.A.1",), (Page(Skill.ADD_UNLIKE, denominators=(2, 3, 4, 6, 8)),)
    ),
    Topic(
        16,
        "unlike fractions: adding and taking away",
        ("5.NF.A.1",),
        (Page(Skill.UNLIKE, denominators=_PARTS),),
    ),
    Topic(17, "unlike mixed numbers: adding", ("5.NF.A.1",), (Page(Skill.ADD_UNLIKE, denominators=_PARTS),)),
    Topic(
        18,
        "unlike mixed numbers: taking away",
        ("5.NF.A.1",),
        (Page(Skill.SUBTRACT_UNLIKE, denominators=_PARTS),),
    ),
    Topic(
        19,
        "unlike fractions: word problems",
        ("5.NF.A.2",),
        (Page(Skill.UNLIKE, denominators=_PARTS),),
        stories=True,
    ),
    Topic(20, "a fraction as division", ("5.NF.B.3",)),
    Topic(21, "a fraction of a whole number", ("5.NF.B.4",), (Page(Skill.TIMES, denominators=_PARTS),)),
    Topic(
        22, "a fraction times a fraction", ("5.NF.B.4",), (Page(Skill.TIMES_FRACTIONS, denominators=_PARTS),)
    ),
    Topic(
        23,
        "times a mixed number; scaling",
        ("5.NF.B.5", "5.NF.B.6"),
        (Page(Skill.TIMES, denominators=_PARTS),),
    ),
    Topic(24, "unit fractions and whole numbers divided", ("5.NF.B.7",), (Page(Skill.DIVIDE_FRACTIONS),)),
    Topic(
        25,
        "word problems: times, divided",
        ("5.NF.B.6", "5.NF.B.7"),
        (Page(Skill.TIMES, denominators=_PARTS),),
        stories=True,
    ),
    Topic(26, "line plots, sharing equally", ("5.MD.B.2",), (Page(Skill.SHARE_PLOTS),)),
    Topic(
        27,
        "feet, pounds, hours: both ways",
        ("5.MD.A.1",),
        (Page(Skill.CONVERT), Page(Skill.MEASURES)),
    ),
    Topic(28, "volume", ("5.MD.C.3", "5.MD.C.4", "5.MD.C.5")),
    Topic(29, "volume of boxes put together", ("5.MD.C.5",)),
    Topic(30, "two patterns, ordered pairs", ("5.OA.B.3", "5.G.A.1")),
    Topic(31, "coordinate plane", ("5.G.A.1", "5.G.A.2")),
    Topic(32, "review by what was found", ()),
    Topic(33, "figures in families", ("5.G.B.3", "5.G.B.4")),
    Topic(34, "fluency: multiplying", ("5.NBT.B.5",), (Page(Skill.TIMES_LONG),)),
    Topic(
        35,
        "fluency: fractions of all kinds",
        ("5.NF.A.1", "5.NF.B.4"),
        (Page(Skill.UNLIKE, denominators=_PARTS), Page(Skill.TIMES_FRACTIONS, denominators=_PARTS)),
    ),
    Topic(36, "a look at grade 6, not owed", ("6.NS.A.1",)),
)
