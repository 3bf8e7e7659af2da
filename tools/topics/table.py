"""The topics that can be typed: one line a topic, with an example as a teacher types it.

The page `docs/topics.md` runs every example through every door. A new topic is a line more. The codes are
those of *Common Core State Standards for Mathematics* (2010).
"""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Topic:
    """A topic: what it is called, the code of its standard, and a problem of it as typed."""

    name: str
    standard: str
    typed: str


TOPICS = (
    Topic("whole numbers: take away", "4.NBT.B.4", "304 - 128"),
    Topic("whole numbers: take away across zeros", "4.NBT.B.4", "6000 - 2369"),
    Topic("whole numbers: add", "4.NBT.B.4", "4567 + 3789"),
    Topic("whole numbers: compare", "4.NBT.A.2", "345 ? 354"),
    Topic("whole numbers: multiply", "4.NBT.B.5", "24 x 36"),
    Topic("equal fractions, finer", "4.NF.A.1", "3/4 = ?/8"),
    Topic("equal fractions, joined", "4.NF.A.1", "6/8 = ?/4"),
    Topic("simplest form", "4.NF.A.1", "12/18 = ?"),
    Topic("simplest form, asked for", "4.NF.A.1", "12/18 simplest"),
    Topic("fraction to mixed number", "4.NF.B.3.b", "11/4 = ?"),
    Topic("fraction to mixed number, asked for", "4.NF.B.3.b", "11/4 as a mixed number"),
    Topic("mixed number to fraction", "4.NF.B.3.b", "2 3/4 = ?"),
    Topic("mixed number to fraction, asked for", "4.NF.B.3.b", "2 3/4 as a fraction"),
    Topic("whole number as a fraction", "3.NF.A.3.c", "3 as a fraction"),
    Topic("another name with a whole opened", "4.NF.B.3.b", "7 2/6 = 6 ?/6"),
    Topic("decimal to fraction", "4.NF.C.6", "0.75 = ?"),
    Topic("decimal to fraction, asked for", "4.NF.C.6", "0.75 as a fraction"),
    Topic("fraction to decimal", "4.NF.C.6", "3/4 as a decimal"),
    Topic("fractions: compare", "4.NF.A.2", "5/6 ? 7/8"),
    Topic("mixed numbers: compare", "4.NF.A.2", "2 3/4 ? 2 5/8"),
    Topic("decimals: compare", "4.NF.C.7", "0.45 ? 0.6"),
    Topic("fractions: put in order", "4.NF.A.2", "order 2/3, 1/2, 3/4"),
    Topic("mixed numbers: put in order", "4.NF.A.2", "order 2 3/4, 2 5/8, 1 7/8"),
    Topic("decimals: put in order", "5.NBT.A.3.b", "order 0.5, 0.45, 0.405"),
    Topic("whole numbers: put in order", "4.NBT.A.2", "order 345, 354, 1205"),
    Topic("measures: put in order", "4.MD.A.1", "order 2 ft, 1 ft 8 in, 22 in"),
    Topic("measures: compare", "4.MD.A.1", "2 ft ? 20 in"),
    Topic("like fractions: take away", "4.NF.B.3.a", "7/8 - 3/8"),
    Topic("like fractions: add", "4.NF.B.3.a", "5/8 + 2/8"),
    Topic("mixed numbers: take away", "4.NF.B.3.c", "7 2/6 - 3 5/6"),
    Topic("mixed numbers: add", "4.NF.B.3.c", "2 4/5 + 1 3/5"),
    Topic("tenths and hundredths: add", "4.NF.C.5", "3/10 + 4/100"),
    Topic("decimals: take away", "5.NBT.B.7", "5.2 - 2.75"),
    Topic("decimals: add", "5.NBT.B.7", "12.5 + 3.75"),
    Topic("unlike fractions: take away", "5.NF.A.1", "5 1/3 - 2 3/4"),
    Topic("unlike fractions: add", "5.NF.A.1", "1/2 + 1/3"),
    Topic("whole number times fraction", "4.NF.B.4.b", "4 x 2/3"),
    Topic("whole number times mixed number", "5.NF.B.6", "3 x 1 2/5"),
    Topic("fraction times fraction", "5.NF.B.4.a", "1/2 x 3/4"),
    Topic("feet and inches: take away", "4.MD.A.2", "5 ft 2 in - 2 ft 7 in"),
    Topic("pounds and ounces: add", "4.MD.A.2", "3 lb 9 oz + 2 lb 10 oz"),
    Topic("hours and minutes: take away", "4.MD.A.2", "3 h 20 min - 1 h 45 min"),
    Topic("yards, feet and inches: take away", "4.MD.A.2", "2 yd 1 ft 3 in - 1 yd 2 ft 8 in"),
    Topic("gallons and quarts: take away", "4.MD.A.2", "5 gal - 2 gal 3 qt"),
    Topic("kilometers and meters: take away", "4.MD.A.2", "3 km 250 m - 1 km 800 m"),
    Topic("kilograms and grams: add", "4.MD.A.2", "2 kg 800 g + 700 g"),
    Topic("liters and milliliters: take away", "4.MD.A.2", "5 L 200 mL - 2 L 900 mL"),
    Topic("weeks and days: take away", "4.MD.A.2", "3 wk 2 d - 1 wk 5 d"),
    Topic("minutes and seconds: take away", "4.MD.A.2", "2 min 15 s - 48 s"),
    Topic("inches with fractions: take away", "4.MD.A.2", "5 5/8 in - 2 7/8 in"),
    Topic("cups with fractions: add", "4.MD.A.2", "4 5/8 c + 1 7/8 c"),
    Topic("kilometers as decimals: take away", "4.MD.A.2", "5.2 km - 2.75 km"),
    Topic("money: add", "4.MD.A.2", "$3.25 + $1.80"),
    Topic("money: change from whole dollars", "4.MD.A.2", "$5 - $2.35"),
    Topic("money: cents", "2.MD.C.8", "75¢ + 50¢"),
    Topic("money: compare", "4.MD.A.2", "$3.25 ? $3.05"),
    Topic("clock times: how long", "4.MD.A.2", "9:45 to 11:20"),
    Topic("clock times: how long over noon", "4.MD.A.2", "9:50 a.m. to 2:15 p.m."),
    Topic("clock times: later", "4.MD.A.2", "9:45 + 1 h 35 min"),
    Topic("clock times: earlier", "4.MD.A.2", "11:20 - 45 min"),
    Topic("measure by another name", "4.MD.A.1", "26 in = ?"),
    Topic("measure in a smaller unit", "4.MD.A.1", "3 ft = ? in"),
    Topic("measure in two units", "4.MD.A.1", "26 in = ? ft ? in"),
    Topic("round whole numbers", "4.NBT.A.3", "round 4567 to the nearest hundred"),
    Topic("round decimals", "5.NBT.A.4", "round 3.46 to the nearest tenth"),
    Topic("round mixed numbers", "5.NF.A.2", "round 2 5/8 to the nearest whole number"),
    Topic("round money", "4.MD.A.2", "round $3.46 to the nearest dollar"),
    Topic("round measures", "4.MD.A.2", "round 5 ft 8 in to the nearest foot"),
    Topic("missing number: take away", "4.NF.B.3.c", "9 - ? = 3 1/2"),
    Topic("missing number: add", "4.NBT.B.4", "? + 128 = 304"),
    Topic("missing number: decimals", "5.NBT.B.7", "? + 1.75 = 4.2"),
    Topic("missing number: measures", "4.MD.A.2", "5 ft 2 in - ? = 2 ft 7 in"),
    Topic("missing number: unlike fractions", "5.NF.A.1", "1/2 + ? = 5/6"),
    Topic("missing number: one of three addends", "4.NBT.B.4", "2 + ? + 3 = 9"),
    Topic("three addends", "4.NF.B.3.c", "2 1/4 + 1 3/4 + 3/4"),
    Topic("three addends: whole numbers", "4.NBT.B.4", "345 + 128 + 67"),
    Topic("three addends: decimals", "5.NBT.B.7", "4.5 + 2.75 + 0.8"),
    Topic("three addends: unlike fractions", "5.NF.A.1", "1/2 + 1/3 + 1/4"),
    Topic("three addends: measures", "4.MD.A.2", "3 ft 7 in + 2 ft 8 in + 1 ft 11 in"),
    Topic("add and take away", "4.NF.B.3.c", "5 1/6 + 2 3/6 - 1 5/6"),
)
