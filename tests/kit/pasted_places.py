"""Blocks as teachers paste them: other things beside the answers, turned ones, bare ones, signs and dates."""

from onewhole.marking.reading.tables.table_cell import CellMade
from tests.kit.pasted_block import HALF, LABELS, ROWS, WHOLE, PastedBlock, coded, table_text, turned_text

WHERE = (
    # ---- what stands beside the answers ----
    PastedBlock(
        "empty rows and columns",
        table_text(
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
        table_text(
            ("Name", "1", "Total"), ("K01", "3 3/6", "1"), ("K02", "4 3/6", "0"), ("Average", "", "0.5")
        ),
        "K01 1=3 3/6; K02 1=4 3/6",
    ),
    PastedBlock(
        "a problem that the page does not have",
        table_text(("Name", "1", "5"), ("K01", "3 3/6", "4"), ("K02", "4 3/6", "5")),
        "K01 1=3 3/6; K02 1=4 3/6",
        {"column:2": "skip"},
    ),
    PastedBlock(
        "a problem twice",
        table_text(("Name", "1", "1"), ("K01", "3 3/6", "4 7/8"), ("K02", "4 3/6", "5 1/8")),
        HALF,
        {"column:1": "1", "column:2": "2"},
    ),
    PastedBlock(
        "headings that say no problem",
        table_text(("Name", "warm-up", "exit"), ("K01", "3 3/6", "4 7/8"), ("K02", "4 3/6", "5 1/8")),
        HALF,
        {"column:1": "1", "column:2": "2"},
    ),
    PastedBlock(
        "codes, no heading, fewer columns than problems",
        table_text(("K01", "4 7/8", ">"), ("K02", "5 1/8", "<")),
        "K01 2=4 7/8 3=>; K02 2=5 1/8 3=<",
        {"problem-order": "here"},
    ),
    PastedBlock(
        "codes, no heading, more columns than problems",
        table_text(
            ("K01", "3 3/6", "4 7/8", ">", "2 2/4", "3"), ("K02", "4 3/6", "5 1/8", "<", "3 2/4", "1")
        ),
        WHOLE[: WHOLE.rindex(";")],
        {"problem-order": "each", **{f"column:{at}": str(at) for at in range(1, 5)}, "column:5": "skip"},
    ),
    # ---- turned ----
    PastedBlock("problems down, codes across", turned_text(coded(("pupil", *LABELS))), WHOLE),
    PastedBlock(
        "problems down, names across",
        turned_text(coded(("", *LABELS), ("Maya Rivera", "Ben Okafor", "Lin"))),
        WHOLE,
    ),
    PastedBlock(
        "problems down, one unknown across",
        turned_text(coded(("", *LABELS), ("K01", "K99", "K03"))),
        WHOLE.replace("K02", "K06"),
        {"row:2": "K06"},
    ),
    # ---- bare blocks ----
    PastedBlock(
        "answers only: from the cell one was in",
        table_text(("5 1/8", "<"), ("4 6/8", "=")),
        "K02 2=5 1/8 3=<; K03 2=4 6/8 3==",
        {"order": "here"},
    ),
    PastedBlock("answers only: from the first on", table_text(*ROWS), WHOLE, {"order": "first"}),
    PastedBlock(
        "answers only: turned", table_text(*zip(*ROWS, strict=True)), WHOLE, {"order": "first-turned"}
    ),
    PastedBlock(
        "labels and no codes", table_text(LABELS, *ROWS), WHOLE, {"first-line": "labels", "order": "first"}
    ),
    PastedBlock(
        "labels with dots and no codes",
        table_text(("1.", "2.", "3.", "4."), *ROWS),
        WHOLE,
        {"order": "first"},
    ),
    PastedBlock(
        "whole numbers that may be labels",
        table_text(("3", "4"), ("2", "1")),
        "K02 2=3 3=4; K03 2=2 3=1",
        {"first-line": "answers", "order": "here"},
    ),
    # ---- signs, quotes, dates ----
    PastedBlock(
        "commas and quotation marks", '"Name","1","2"\n"K01","3 3/6","4 7/8"\n"K02","4 3/6","5 1/8"\n', HALF
    ),
    PastedBlock("semicolons", "Name;1;2\nK01;3 3/6;4 7/8\nK02;4 3/6;5 1/8\n", HALF),
    PastedBlock("line ends of Windows", coded(("pupil", *LABELS)).replace("\n", "\r\n"), WHOLE),
    PastedBlock(
        "hard blanks, a byte-order mark, a direction mark",
        "\ufeff\xa0pupil\t1\xa0\t2\n\u200eK01\xa0\t3\xa03/6\t4\u202f7/8\nK02\t4 3/6\xa0\t5 1/8\n",
        HALF,
    ),
    PastedBlock(
        "fractions in one sign",
        table_text(("", "1", "4"), ("K01", "3½", "2 ½"), ("K02", "4½ ", "3¾")),
        "K01 1=3½ 4=2 ½; K02 1=4½ 4=3¾",
    ),
    PastedBlock(
        "a unit that the story says",
        table_text(("", "4"), ("K01", "2 2/4 miles"), ("K02", "3 1/2 mi.")),
        "K01 4=2 2/4 miles; K02 4=3 1/2 mi.",
    ),
    PastedBlock(
        "dates: all read by month and day",
        table_text(("", "1", "2"), ("K01", "8-Mar", "4 7/8"), ("K02", "4 3/6", "3/8/2026")),
        "K01 1=8-Mar>3/8 2=4 7/8; K02 1=4 3/6 2=3/8/2026>3/8",
        {"dates": "likeliest"},
    ),
    PastedBlock(
        "dates: each by itself",
        table_text(("", "1", "2"), ("K01", "8-Mar", "4 7/8"), ("K02", "4 3/6", "45359")),
        "K01 1=8-Mar>8/3 2=4 7/8; K02 1=4 3/6 2=45359",
        {"dates": "each", "cell:1:1": "8/3", "cell:2:2": "typed"},
    ),
    PastedBlock(
        "words and smudges stay as typed",
        table_text(("", "1", "2"), ("K01", "absent", "4 7/8"), ("K02", "4 3/6", "smudge")),
        "K01 1=absent 2=4 7/8; K02 1=4 3/6 2=smudge",
    ),
    PastedBlock(
        "a working in a cell, over two lines",
        'Name\t1\nK01\t"7 2/6 - 3 5/6\n= 6 8/6 - 3 5/6 = 3 3/6"\nK02\t4 3/6\n',
        "K01 1=7 2/6 - 3 5/6 \x01 6 8/6 - 3 5/6 \x01 3 3/6; K02 1=4 3/6",
    ),
    PastedBlock(
        "XLSX: fractions with six pieces are as they were typed",
        table_text(("Name", "1"), ("K01", "3 3/6"), ("K02", "4 3/6")),
        "K01 1=3 3/6; K02 1=4 3/6",
    ),
    PastedBlock(
        "XLSX: fractions that the sheet reduced, as it shows them",
        table_text(("Name", "1"), ("K01", "3 1/2"), ("K02", "4 1/2")),
        "K01 1=3 1/2; K02 1=4 1/2",
        {"reduced": "likeliest"},
        {"3 1/2": CellMade.FRACTION, "4 1/2": CellMade.FRACTION},
    ),
    PastedBlock(
        "XLSX: fractions that the sheet reduced, in the problem's pieces",
        table_text(("Name", "1"), ("K01", "3 1/2"), ("K02", "4 1/2")),
        "K01 1=3 3/6; K02 1=4 3/6",
        {"reduced": "other"},
        {"3 1/2": CellMade.FRACTION, "4 1/2": CellMade.FRACTION},
    ),
    PastedBlock(
        "XLSX: a date that no fraction could be",
        table_text(("Name", "1", "2"), ("K01", "3/8/2026", "4 7/8"), ("K02", "4 3/6", "Mar-32")),
        "K01 2=4 7/8; K02 1=4 3/6 2=Mar-32>3/32",
        {"dates": "each", "cell:1:1": "skip", "cell:2:2": "3/32"},
        {"3/8/2026": CellMade.DATE, "Mar-32": CellMade.DATE},
    ),
)
