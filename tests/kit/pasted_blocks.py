"""Blocks as teachers paste them: headings and pupils of any make, and all blocks together."""

from tests.kit.pasted_block import HALF, LABELS, WHOLE, PastedBlock, coded, table_text
from tests.kit.pasted_places import WHERE

WHOSE = (
    # ---- headings of any make ----
    PastedBlock("pupil and labels", coded(("pupil", *LABELS)), WHOLE),
    PastedBlock("heading Name over codes", coded(("Name", *LABELS)), WHOLE),
    PastedBlock("heading Code", coded(("Code", *LABELS)), WHOLE),
    PastedBlock("heading Student ID", coded(("Student ID", *LABELS)), WHOLE),
    PastedBlock("a heading in another language", coded(("Schüler", *LABELS)), WHOLE),
    PastedBlock("an empty corner", coded(("", *LABELS)), WHOLE),
    PastedBlock("labels with dots", coded(("Pupil", "1.", "2.", "3.", "4.")), WHOLE),
    PastedBlock("labels with brackets", coded(("Pupil", "1)", "(2)", "3)", "4)")), WHOLE),
    PastedBlock(
        "Problem 1, Question 2, #3, Q4", coded(("who", "Problem 1", "Question 2", "#3", "Q4")), WHOLE
    ),
    PastedBlock(
        "labels with their problems", coded(("Name", "1. 7 2/6 - 3 5/6", "9 5/8 − 4 6/8", "3", "4")), WHOLE
    ),
    PastedBlock("no heading", coded(()), WHOLE),
    PastedBlock("a title above", "Homework 12, Room 7\n\n" + coded(("Name", *LABELS)), WHOLE),
    PastedBlock("two titles above, no labels", "Trail miles\nTuesday\n" + coded(()), WHOLE),
    # ---- whom a row means ----
    PastedBlock("small letters and no zero", coded(("", *LABELS), ("k1", "k 2", "K3")), WHOLE),
    PastedBlock("names", coded(("Name", *LABELS), ("Maya Rivera", "Ben Okafor", "Lin")), WHOLE),
    PastedBlock("names, no heading", coded((), ("Maya Rivera", "Ben Okafor", "Lin")), WHOLE),
    PastedBlock("last name first", coded(("", *LABELS), ("Rivera, Maya", "OKAFOR Ben", "lin")), WHOLE),
    PastedBlock(
        "first names: a part of each is asked once",
        table_text(("", "1", "2"), ("Maya", "3 3/6", "4 7/8"), ("Jose", "4 3/6", "5 1/8")),
        "K01 1=3 3/6 2=4 7/8; K04 1=4 3/6 2=5 1/8",
        {"partly": "all"},
    ),
    PastedBlock(
        "a first name that two have",
        table_text(("", "1", "2"), ("K01", "3 3/6", "4 7/8"), ("Ben", "4 3/6", "5 1/8")),
        "K01 1=3 3/6 2=4 7/8; K06 1=4 3/6 2=5 1/8",
        {"row:2": "K06"},
    ),
    PastedBlock(
        "an accent that the table lacks",
        table_text(("", "1"), ("Jose Nunez", "3 3/6"), ("Lin", "4 3/6")),
        "K04 1=3 3/6; K03 1=4 3/6",
    ),
    PastedBlock(
        "code and name in one cell",
        coded(("", *LABELS), ("K01 Maya Rivera", "K02 Ben Okafor", "Lin (K03)")),
        WHOLE,
    ),
    PastedBlock(
        "code and name in two columns",
        table_text(
            ("Code", "Name", "1", "2"), ("K01", "Maya", "3 3/6", "4 7/8"), ("K02", "Ben", "4 3/6", "5 1/8")
        ),
        HALF,
    ),
    PastedBlock(
        "first and last name in two columns",
        table_text(
            ("First", "Last", "1", "2"),
            ("Maya", "Rivera", "3 3/6", "4 7/8"),
            ("Ben", "Okafor", "4 3/6", "5 1/8"),
        ),
        HALF,
    ),
    PastedBlock(
        "a code beside the name of somebody else",
        table_text(("Code", "Name", "1"), ("K01", "Maya Rivera", "3 3/6"), ("K03", "Ben Ruiz", "4 3/6")),
        "K01 1=3 3/6; K06 1=4 3/6",
        {"row:2": "K06"},
    ),
    PastedBlock(
        "pupils by numbers",
        table_text(("No.", "1", "2"), ("1", "3 3/6", "4 7/8"), ("2", "4 3/6", "5 1/8")),
        HALF,
        {"numbers": "all"},
    ),
    PastedBlock(
        "numbers beside names",
        table_text(
            ("#", "Name", "1", "2"),
            ("1", "Ben Okafor", "4 3/6", "5 1/8"),
            ("2", "Maya Rivera", "3 3/6", "4 7/8"),
        ),
        HALF,
    ),
    # ---- a subset, another order, strangers ----
    PastedBlock(
        "a subset of pupils",
        table_text(("", "1"), ("K05", "3 3/6"), ("K02", "4 3/6")),
        "K05 1=3 3/6; K02 1=4 3/6",
    ),
    PastedBlock(
        "a subset of problems",
        table_text(("Name", "4", "2"), ("K03", "2 1/2", "4 6/8")),
        "K03 4=2 1/2 2=4 6/8",
    ),
    PastedBlock(
        "swapped columns",
        table_text(("Name", "4", "3", "2", "1"), ("K01", "2 2/4", ">", "4 7/8", "3 3/6")),
        WHOLE.partition(";")[0],
    ),
    PastedBlock(
        "swapped columns under an empty corner",
        table_text(("", "4", "3", "2", "1"), ("K01", "2 2/4", ">", "4 7/8", "3 3/6")),
        WHOLE.partition(";")[0],
        {"first-line": "labels"},
    ),
    PastedBlock(
        "one unknown code, skipped",
        coded(("pupil", *LABELS), ("K01", "K99", "K03")),
        "; ".join(WHOLE.split("; ")[::2]),
        {"row:2": "skip"},
    ),
    PastedBlock(
        "one unknown code, placed",
        coded(("pupil", *LABELS), ("K01", "K99", "K03")),
        WHOLE.replace("K02", "K05"),
        {"row:2": "K05"},
    ),
    PastedBlock(
        "one unknown code, no heading",
        coded((), ("K99", "K02", "K03")),
        WHOLE.replace("K01", "K04"),
        {"row:0": "K04"},
    ),
    PastedBlock(
        "a new pupil, added",
        table_text(("Name", "1"), ("Lin", "3 1/2"), ("Zoe Park", "4")),
        "K03 1=3 1/2; +2 1=4",
        {"row:2": "add"},
    ),
    PastedBlock(
        "another class's codes only",
        table_text(("ID", "1"), ("P1", "3 3/6"), ("P2", "4 3/6")),
        "K05 1=3 3/6; K06 1=4 3/6",
        {"pupil-order": "each", "row:1": "K05", "row:2": "K06"},
    ),
    PastedBlock(
        "names that the class does not list, in its order",
        table_text(("Name", "1"), ("Ada", "3 3/6"), ("Bo", "4 3/6"), ("Cy", "3 1/2")),
        "K01 1=3 3/6; K02 1=4 3/6; K03 1=3 1/2",
        {"pupil-order": "first"},
    ),
    PastedBlock(
        "one pupil twice",
        table_text(("", "1"), ("K01", "3 3/6"), ("K02", "4 3/6"), ("K01", "3 1/2")),
        "K01 1=3 3/6; K02 1=4 3/6",
        {"row:1": "K01", "row:3": "skip"},
    ),
    PastedBlock(
        "a row without a pupil",
        table_text(("", "1", "2"), ("K01", "3 3/6", "4 7/8"), ("", "4 3/6", "5 1/8")),
        HALF,
        {"row:2": "K02"},
    ),
)

BLOCKS = (*WHOSE, *WHERE)
