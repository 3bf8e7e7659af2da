"""Blocks as teachers paste them, each with whose answers are in it and what the teacher says when asked."""

from collections.abc import Mapping
from dataclasses import dataclass, field

from onewhole.marking.reading.tables.answer_grid import AnswerGrid
from onewhole.marking.reading.tables.class_names import ListedPupil
from onewhole.marking.reading.tables.cutting import cut_table
from onewhole.marking.reading.tables.table_cell import CellMade, Table, TableCell
from onewhole.sheets.reading import read_sheet

PUPILS = (
    ListedPupil("K01", "Maya Rivera"),
    ListedPupil("K02", "Ben Okafor"),
    ListedPupil("K03", "Lin"),
    ListedPupil("K04", "José Núñez"),
    ListedPupil("K05"),
    ListedPupil("K06", "Ben Ruiz"),
)
SHEET = (
    "title: Trail miles\n\n1. 7 2/6 - 3 5/6\n2. 9 5/8 - 4 6/8\n3. 3/4 ? 2/3\n"
    "4. 4 1/4 - 1 3/4 | Maya hiked 4 1/4 miles and Lin hiked 1 3/4 miles. How many miles more is that?\n"
)
PROBLEMS = read_sheet(SHEET).problems
#: The teacher is in the cell of K02 and problem 2 when the block is pasted.
GRID = AnswerGrid(PUPILS, PROBLEMS, "K02", "2")
#: The whole answers of three pupils, which many of the blocks hold.
WHOLE = "K01 1=3 3/6 2=4 7/8 3=> 4=2 2/4; K02 1=4 3/6 2=5 1/8 3=< 4=3 2/4; K03 1=3 1/2 2=4 6/8 3== 4=2 1/2"
ROWS = (("3 3/6", "4 7/8", ">", "2 2/4"), ("4 3/6", "5 1/8", "<", "3 2/4"), ("3 1/2", "4 6/8", "=", "2 1/2"))


@dataclass(frozen=True, slots=True)
class PastedBlock:
    """A block: its name, its text, whose answers it has, and what the teacher says to each question."""

    name: str
    text: str
    truth: str
    said: Mapping[str, str] = field(default_factory=dict)
    made: Mapping[str, CellMade] = field(default_factory=dict)

    @property
    def table(self) -> Table:
        """Return the block as a table; ``made`` has the texts of cells of which a file tells something."""
        rows = cut_table(self.text)
        return tuple(
            tuple(TableCell(cell.text, self.made.get(cell.text, CellMade.TYPED)) for cell in row)
            for row in rows
        )

    @property
    def cells(self) -> dict[tuple[str, str], str]:
        """Return the answers by code and label; what is read otherwise than it stands is after an arrow."""
        found = {}
        for row in filter(None, map(str.strip, self.truth.split(";"))):
            code, _, rest = row.partition(" ")
            parts = rest.replace("==", "=\0").split(" ")
            label = ""
            for part in parts:
                if "=" in part:
                    label, _, text = part.partition("=")
                    found[code, label] = text.replace("\0", "=")
                else:
                    found[code, label] += f" {part}"
        return found


def _table(*rows: tuple[str, ...], sign: str = "\t") -> str:
    return "\n".join(sign.join(row) for row in rows) + "\n"


def _coded(first: tuple[str, ...], names: tuple[str, ...] = ("K01", "K02", "K03"), sign: str = "\t") -> str:
    rows = tuple((name, *row) for name, row in zip(names, ROWS, strict=True))
    return _table(*((first,) if first else ()), *rows, sign=sign)


def _turned(text: str) -> str:
    rows = [line.split("\t") for line in text.splitlines()]
    return _table(*zip(*rows, strict=True))


LABELS = ("1", "2", "3", "4")
HALF = "K01 1=3 3/6 2=4 7/8; K02 1=4 3/6 2=5 1/8"

BLOCKS = (
    # ---- headings of any make ----
    PastedBlock("pupil and labels", _coded(("pupil", *LABELS)), WHOLE),
    PastedBlock("heading Name over codes", _coded(("Name", *LABELS)), WHOLE),
    PastedBlock("heading Code", _coded(("Code", *LABELS)), WHOLE),
    PastedBlock("heading Student ID", _coded(("Student ID", *LABELS)), WHOLE),
    PastedBlock("a heading in another language", _coded(("Schüler", *LABELS)), WHOLE),
    PastedBlock("an empty corner", _coded(("", *LABELS)), WHOLE),
    PastedBlock("labels with dots", _coded(("Pupil", "1.", "2.", "3.", "4.")), WHOLE),
    PastedBlock("labels with brackets", _coded(("Pupil", "1)", "(2)", "3)", "4)")), WHOLE),
    PastedBlock(
        "Problem 1, Question 2, #3, Q4", _coded(("who", "Problem 1", "Question 2", "#3", "Q4")), WHOLE
    ),
    PastedBlock(
        "labels with their problems", _coded(("Name", "1. 7 2/6 - 3 5/6", "9 5/8 − 4 6/8", "3", "4")), WHOLE
    ),
    PastedBlock("no heading", _coded(()), WHOLE),
    PastedBlock("a title above", "Homework 12, Room 7\n\n" + _coded(("Name", *LABELS)), WHOLE),
    PastedBlock("two titles above, no labels", "Trail miles\nTuesday\n" + _coded(()), WHOLE),
    # ---- whom a row means ----
    PastedBlock("small letters and no zero", _coded(("", *LABELS), ("k1", "k 2", "K3")), WHOLE),
    PastedBlock("names", _coded(("Name", *LABELS), ("Maya Rivera", "Ben Okafor", "Lin")), WHOLE),
    PastedBlock("names, no heading", _coded((), ("Maya Rivera", "Ben Okafor", "Lin")), WHOLE),
    PastedBlock("last name first", _coded(("", *LABELS), ("Rivera, Maya", "OKAFOR Ben", "lin")), WHOLE),
    PastedBlock(
        "first names: a part of each is asked once",
        _table(("", "1", "2"), ("Maya", "3 3/6", "4 7/8"), ("Jose", "4 3/6", "5 1/8")),
        "K01 1=3 3/6 2=4 7/8; K04 1=4 3/6 2=5 1/8",
        {"partly": "all"},
    ),
    PastedBlock(
        "a first name that two have",
        _table(("", "1", "2"), ("K01", "3 3/6", "4 7/8"), ("Ben", "4 3/6", "5 1/8")),
        "K01 1=3 3/6 2=4 7/8; K06 1=4 3/6 2=5 1/8",
        {"row:2": "K06"},
    ),
    PastedBlock(
        "an accent that the table lacks",
        _table(("", "1"), ("Jose Nunez", "3 3/6"), ("Lin", "4 3/6")),
        "K04 1=3 3/6; K03 1=4 3/6",
    ),
    PastedBlock(
        "code and name in one cell",
        _coded(("", *LABELS), ("K01 Maya Rivera", "K02 Ben Okafor", "Lin (K03)")),
        WHOLE,
    ),
    PastedBlock(
        "code and name in two columns",
        _table(
            ("Code", "Name", "1", "2"), ("K01", "Maya", "3 3/6", "4 7/8"), ("K02", "Ben", "4 3/6", "5 1/8")
        ),
        HALF,
    ),
    PastedBlock(
        "first and last name in two columns",
        _table(
            ("First", "Last", "1", "2"),
            ("Maya", "Rivera", "3 3/6", "4 7/8"),
            ("Ben", "Okafor", "4 3/6", "5 1/8"),
        ),
        HALF,
    ),
    PastedBlock(
        "a code beside the name of somebody else",
        _table(("Code", "Name", "1"), ("K01", "Maya Rivera", "3 3/6"), ("K03", "Ben Ruiz", "4 3/6")),
        "K01 1=3 3/6; K06 1=4 3/6",
        {"row:2": "K06"},
    ),
    PastedBlock(
        "pupils by numbers",
        _table(("No.", "1", "2"), ("1", "3 3/6", "4 7/8"), ("2", "4 3/6", "5 1/8")),
        HALF,
        {"numbers": "all"},
    ),
    PastedBlock(
        "numbers beside names",
        _table(
            ("#", "Name", "1", "2"),
            ("1", "Ben Okafor", "4 3/6", "5 1/8"),
            ("2", "Maya Rivera", "3 3/6", "4 7/8"),
        ),
        HALF,
    ),
    # ---- a subset, another order, strangers ----
    PastedBlock(
        "a subset of pupils",
        _table(("", "1"), ("K05", "3 3/6"), ("K02", "4 3/6")),
        "K05 1=3 3/6; K02 1=4 3/6",
    ),
    PastedBlock(
        "a subset of problems", _table(("Name", "4", "2"), ("K03", "2 1/2", "4 6/8")), "K03 4=2 1/2 2=4 6/8"
    ),
    PastedBlock(
        "swapped columns",
        _table(("Name", "4", "3", "2", "1"), ("K01", "2 2/4", ">", "4 7/8", "3 3/6")),
        WHOLE.partition(";")[0],
    ),
    PastedBlock(
        "swapped columns under an empty corner",
        _table(("", "4", "3", "2", "1"), ("K01", "2 2/4", ">", "4 7/8", "3 3/6")),
        WHOLE.partition(";")[0],
        {"first-line": "labels"},
    ),
    PastedBlock(
        "one unknown code, skipped",
        _coded(("pupil", *LABELS), ("K01", "K99", "K03")),
        "; ".join(WHOLE.split("; ")[::2]),
        {"row:2": "skip"},
    ),
    PastedBlock(
        "one unknown code, placed",
        _coded(("pupil", *LABELS), ("K01", "K99", "K03")),
        WHOLE.replace("K02", "K05"),
        {"row:2": "K05"},
    ),
    PastedBlock(
        "one unknown code, no heading",
        _coded((), ("K99", "K02", "K03")),
        WHOLE.replace("K01", "K04"),
        {"row:0": "K04"},
    ),
    PastedBlock(
        "a new pupil, added",
        _table(("Name", "1"), ("Lin", "3 1/2"), ("Zoe Park", "4")),
        "K03 1=3 1/2; +2 1=4",
        {"row:2": "add"},
    ),
    PastedBlock(
        "another class's codes only",
        _table(("ID", "1"), ("P1", "3 3/6"), ("P2", "4 3/6")),
        "K05 1=3 3/6; K06 1=4 3/6",
        {"pupil-order": "each", "row:1": "K05", "row:2": "K06"},
    ),
    PastedBlock(
        "names that the class does not list, in its order",
        _table(("Name", "1"), ("Ada", "3 3/6"), ("Bo", "4 3/6"), ("Cy", "3 1/2")),
        "K01 1=3 3/6; K02 1=4 3/6; K03 1=3 1/2",
        {"pupil-order": "first"},
    ),
    PastedBlock(
        "one pupil twice",
        _table(("", "1"), ("K01", "3 3/6"), ("K02", "4 3/6"), ("K01", "3 1/2")),
        "K01 1=3 3/6; K02 1=4 3/6",
        {"row:1": "K01", "row:3": "skip"},
    ),
    PastedBlock(
        "a row without a pupil",
        _table(("", "1", "2"), ("K01", "3 3/6", "4 7/8"), ("", "4 3/6", "5 1/8")),
        HALF,
        {"row:2": "K02"},
    ),
    # ---- what stands beside the answers ----
    PastedBlock(
        "empty rows and columns",
        _table(
            ("", "", ""),
            ("", "pupil", "1", "", "2"),
            ("", "", ""),
            ("", "K01", "3 3/6", "", "4 7/8"),
            ("", ""),
            ("", "K02", "4 3/6", "", "5 1/8"),
        ),
        HALF,
    ),
    PastedBlock(
        "a total beside and an average below",
        _table(("Name", "1", "Total"), ("K01", "3 3/6", "1"), ("K02", "4 3/6", "0"), ("Average", "", "0.5")),
        "K01 1=3 3/6; K02 1=4 3/6",
    ),
    PastedBlock(
        "a problem that the page does not have",
        _table(("Name", "1", "5"), ("K01", "3 3/6", "4"), ("K02", "4 3/6", "5")),
        "K01 1=3 3/6; K02 1=4 3/6",
        {"column:2": "skip"},
    ),
    PastedBlock(
        "a problem twice",
        _table(("Name", "1", "1"), ("K01", "3 3/6", "4 7/8"), ("K02", "4 3/6", "5 1/8")),
        HALF,
        {"column:1": "1", "column:2": "2"},
    ),
    PastedBlock(
        "headings that say no problem",
        _table(("Name", "warm-up", "exit"), ("K01", "3 3/6", "4 7/8"), ("K02", "4 3/6", "5 1/8")),
        HALF,
        {"column:1": "1", "column:2": "2"},
    ),
    PastedBlock(
        "codes, no heading, fewer columns than problems",
        _table(("K01", "4 7/8", ">"), ("K02", "5 1/8", "<")),
        "K01 2=4 7/8 3=>; K02 2=5 1/8 3=<",
        {"problem-order": "here"},
    ),
    PastedBlock(
        "codes, no heading, more columns than problems",
        _table(("K01", "3 3/6", "4 7/8", ">", "2 2/4", "3"), ("K02", "4 3/6", "5 1/8", "<", "3 2/4", "1")),
        WHOLE[: WHOLE.rindex(";")],
        {"problem-order": "each", **{f"column:{at}": str(at) for at in range(1, 5)}, "column:5": "skip"},
    ),
    # ---- turned ----
    PastedBlock("problems down, codes across", _turned(_coded(("pupil", *LABELS))), WHOLE),
    PastedBlock(
        "problems down, names across",
        _turned(_coded(("", *LABELS), ("Maya Rivera", "Ben Okafor", "Lin"))),
        WHOLE,
    ),
    PastedBlock(
        "problems down, one unknown across",
        _turned(_coded(("", *LABELS), ("K01", "K99", "K03"))),
        WHOLE.replace("K02", "K06"),
        {"row:2": "K06"},
    ),
    # ---- bare blocks ----
    PastedBlock(
        "answers only: from the cell one was in",
        _table(("5 1/8", "<"), ("4 6/8", "=")),
        "K02 2=5 1/8 3=<; K03 2=4 6/8 3==",
        {"order": "here"},
    ),
    PastedBlock("answers only: from the first on", _table(*ROWS), WHOLE, {"order": "first"}),
    PastedBlock("answers only: turned", _table(*zip(*ROWS, strict=True)), WHOLE, {"order": "first-turned"}),
    PastedBlock(
        "labels and no codes", _table(LABELS, *ROWS), WHOLE, {"first-line": "labels", "order": "first"}
    ),
    PastedBlock(
        "labels with dots and no codes", _table(("1.", "2.", "3.", "4."), *ROWS), WHOLE, {"order": "first"}
    ),
    PastedBlock(
        "whole numbers that may be labels",
        _table(("3", "4"), ("2", "1")),
        "K02 2=3 3=4; K03 2=2 3=1",
        {"first-line": "answers", "order": "here"},
    ),
    # ---- signs, quotes, dates ----
    PastedBlock(
        "commas and quotation marks", '"Name","1","2"\n"K01","3 3/6","4 7/8"\n"K02","4 3/6","5 1/8"\n', HALF
    ),
    PastedBlock("semicolons", "Name;1;2\nK01;3 3/6;4 7/8\nK02;4 3/6;5 1/8\n", HALF),
    PastedBlock("line ends of Windows", _coded(("pupil", *LABELS)).replace("\n", "\r\n"), WHOLE),
    PastedBlock(
        "hard blanks, a byte-order mark, a direction mark",
        "\ufeff\xa0pupil\t1\xa0\t2\n\u200eK01\xa0\t3\xa03/6\t4\u202f7/8\nK02\t4 3/6\xa0\t5 1/8\n",
        HALF,
    ),
    PastedBlock(
        "fractions in one sign",
        _table(("", "1", "4"), ("K01", "3½", "2 ½"), ("K02", "4½ ", "3¾")),
        "K01 1=3½ 4=2 ½; K02 1=4½ 4=3¾",
    ),
    PastedBlock(
        "a unit that the story says",
        _table(("", "4"), ("K01", "2 2/4 miles"), ("K02", "3 1/2 mi.")),
        "K01 4=2 2/4 miles; K02 4=3 1/2 mi.",
    ),
    PastedBlock(
        "dates: all read by month and day",
        _table(("", "1", "2"), ("K01", "8-Mar", "4 7/8"), ("K02", "4 3/6", "3/8/2026")),
        "K01 1=8-Mar>3/8 2=4 7/8; K02 1=4 3/6 2=3/8/2026>3/8",
        {"dates": "likeliest"},
    ),
    PastedBlock(
        "dates: each by itself",
        _table(("", "1", "2"), ("K01", "8-Mar", "4 7/8"), ("K02", "4 3/6", "45359")),
        "K01 1=8-Mar>8/3 2=4 7/8; K02 1=4 3/6 2=45359",
        {"dates": "each", "cell:1:1": "8/3", "cell:2:2": "typed"},
    ),
    PastedBlock(
        "words and smudges stay as typed",
        _table(("", "1", "2"), ("K01", "absent", "4 7/8"), ("K02", "4 3/6", "smudge")),
        "K01 1=absent 2=4 7/8; K02 1=4 3/6 2=smudge",
    ),
    PastedBlock(
        "a working in a cell, over two lines",
        'Name\t1\nK01\t"7 2/6 - 3 5/6\n= 6 8/6 - 3 5/6 = 3 3/6"\nK02\t4 3/6\n',
        "K01 1=7 2/6 - 3 5/6 \x01 6 8/6 - 3 5/6 \x01 3 3/6; K02 1=4 3/6",
    ),
    PastedBlock(
        "XLSX: fractions with six pieces are as they were typed",
        _table(("Name", "1"), ("K01", "3 3/6"), ("K02", "4 3/6")),
        "K01 1=3 3/6; K02 1=4 3/6",
    ),
    PastedBlock(
        "XLSX: fractions that the sheet reduced, as it shows them",
        _table(("Name", "1"), ("K01", "3 1/2"), ("K02", "4 1/2")),
        "K01 1=3 1/2; K02 1=4 1/2",
        {"reduced": "likeliest"},
        {"3 1/2": CellMade.FRACTION, "4 1/2": CellMade.FRACTION},
    ),
    PastedBlock(
        "XLSX: fractions that the sheet reduced, in the problem's pieces",
        _table(("Name", "1"), ("K01", "3 1/2"), ("K02", "4 1/2")),
        "K01 1=3 3/6; K02 1=4 3/6",
        {"reduced": "other"},
        {"3 1/2": CellMade.FRACTION, "4 1/2": CellMade.FRACTION},
    ),
    PastedBlock(
        "XLSX: a date that no fraction could be",
        _table(("Name", "1", "2"), ("K01", "3/8/2026", "4 7/8"), ("K02", "4 3/6", "Mar-32")),
        "K01 2=4 7/8; K02 1=4 3/6 2=Mar-32>3/32",
        {"dates": "each", "cell:1:1": "skip", "cell:2:2": "3/32"},
        {"3/8/2026": CellMade.DATE, "Mar-32": CellMade.DATE},
    ),
)
