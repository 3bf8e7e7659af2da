"""A page as a package of questions and back without loss; hostile and wrong packages are refused by file."""

import zipfile
from collections.abc import Callable
from io import BytesIO

import pytest

from onewhole.desk.exchange.question_package import page_of_questions, questions_of_page
from onewhole.errors import InputError
from onewhole.presses.question_reading import LARGEST
from onewhole.sheets.reading import read_sheet

PAGE = """title: Kites & <tails>

# Show your "steps".
1. 7 2/6 - 3 5/6
2a. 9 5/8-4 6/8
b. 3/4 ? 2/3
# Then these.
4. 4 1/4 - 1 3/4 | Maya hiked 4 1/4 miles & Lin <1 3/4> miles.
5. 52 - 27
6. 5.2 - 2.7
7. 5 ft 2 in - 2 ft 7 in
8. 7 2/6 = 6 ?/6
9. order: 1/2, 3/4, 2/3
10. 12/18 in simplest form
11. round 3,749 to hundreds
12. 17 ÷ 5
13. $3.25 - $1.50
14. factors of 12
15. ? - 5.7 = 4.3
"""
MADE = questions_of_page(read_sheet(PAGE))[0]
ITEM = "items/problem-1.xml"


def test_a_page_comes_back_as_it_was() -> None:
    """Title, instructions, labels, problems as they were typed, and stories."""
    assert questions_of_page(read_sheet(PAGE))[1] == ()
    assert page_of_questions(MADE, "q.zip") == PAGE
    assert questions_of_page(read_sheet(PAGE))[0] == MADE
    untitled = questions_of_page(read_sheet("1. 52 - 27"))[0]
    assert page_of_questions(untitled, "q.zip") == "1. 52 - 27\n"


def _changed(change: Callable[[dict[str, str]], object]) -> bytes:
    with zipfile.ZipFile(BytesIO(MADE)) as old:
        parts = {name: old.read(name).decode() for name in old.namelist()}
    change(parts)
    held = BytesIO()
    with zipfile.ZipFile(held, "w", zipfile.ZIP_DEFLATED) as made:
        for name, text in parts.items():
            made.writestr(name, text)
    return held.getvalue()


def _replaced(file: str, old: str, new: str) -> bytes:
    def change(parts: dict[str, str]) -> None:
        assert old in parts[file]
        parts[file] = parts[file].replace(old, new)

    return _changed(change)


def _with(name: str, text: str) -> bytes:
    return _changed(lambda parts: parts.update({name: text}))


ENTITIES = '<!DOCTYPE a [<!ENTITY b "k"><!ENTITY c "&b;&b;">]><a>&c;</a>'


@pytest.mark.asvs("V1.5.1", "V5.2.1", "V5.2.3")
@pytest.mark.parametrize(
    ("content", "why"),
    [
        (b"", "damaged, locked, or no package"),
        (MADE[: len(MADE) // 2], "damaged, locked, or no package"),
        (bytes(LARGEST + 1), "too large"),
        (_with("items/bomb.xml", " " * 1_000_001), "too large"),
        (_with("../outside.xml", "a"), "outside of it"),
        (_with("/etc/passwd", "a"), "outside of it"),
        (_with("imsmanifest.xml", ENTITIES), "document type"),
        (_with(ITEM, ENTITIES), r"document type.*problem-1"),
        (_with(ITEM, '<?xml version="1.0" encoding="klingon"?><a/>'), "unknown encoding|no XML"),
        (_with(ITEM, "<qti-assessment-item>"), r"no XML \(q.zip: items/problem-1.xml, line 1"),
        (_with(ITEM, "<qti-assessment-item/>"), "begins with qti-assessment-item, not with"),
        (_replaced(ITEM, ' time-dependent="false"', ""), "lacks its time-dependent"),
        (_replaced(ITEM, 'identifier="NUM"', 'identifier="WHOLE"'), "two responses called WHOLE"),
        (
            _replaced(ITEM, 'cardinality="single" base-type="integer"', 'base-type="integer"'),
            "lacks its cardinal",
        ),
        (
            _replaced(ITEM, 'base-type="integer"><qti-correct', 'base-type="rational"><qti-correct'),
            "no cardinality",
        ),
        (
            _replaced(ITEM, "<qti-value>6</qti-value>", "<qti-value>six</qti-value>"),
            "is a integer, and six is none",
        ),
        (_replaced(ITEM, "qti-text-entry-interaction", "qti-drawing-interaction"), "cannot ask this way"),
        (_replaced(ITEM, "qti-item-body", "qti-body"), "has no qti-body"),
        (
            _replaced(ITEM, "<qti-value>6</qti-value>", "<qti-value>8</qti-value>"),
            "3 3/8 is right, and it is not",
        ),
        (
            _replaced(ITEM, 'alttext="7 2/6 - 3 5/6"', 'alttext="7 kites"'),
            r"7 kites \(q.zip: items/problem-1.xml\)",
        ),
        (_replaced("test.xml", 'href="items/problem-1.xml"', 'href="items/none.xml"'), "does not have it"),
        (_replaced("test.xml", ' navigation-mode="nonlinear"', ""), "lacks its navigation-mode"),
        (_replaced("imsmanifest.xml", "imscp_v1p1", "imscp_v1p2"), "begins with manifest, not with manifest"),
        (_changed(lambda parts: parts.pop("imsmanifest.xml")), "no imsmanifest.xml"),
    ],
)
def test_a_wrong_package_is_refused(content: bytes, why: str) -> None:
    """With the file that is wrong and what to do; nothing of it is taken."""
    with pytest.raises(InputError, match=why) as told:
        page_of_questions(content, "q.zip")
    assert told.value.remedy


def test_a_package_of_another_make_is_read() -> None:
    """Mathematics without plain text, words beside it, an item without a label, and no test."""
    item = (
        '<qti-assessment-item xmlns="http://www.imsglobal.org/xsd/imsqtiasi_v3p0" identifier="i" title="a" '
        'time-dependent="false">'
        '<qti-response-declaration identifier="R" cardinality="single" base-type="string">'
        "<qti-correct-response><qti-value>2 4/8</qti-value></qti-correct-response>"
        "</qti-response-declaration>"
        "<qti-item-body><div><p>Find the difference."
        '<math xmlns="http://www.w3.org/1998/Math/MathML"><mn>5</mn><mfrac><mn>1</mn><mn>8</mn></mfrac>'
        "<mo>\u2212</mo><mrow><mn>2</mn><mo>\u2064</mo><mfrac><mn>5</mn><mn>8</mn></mfrac></mrow></math> = "
        '<qti-text-entry-interaction response-identifier="R"/></p></div></qti-item-body>'
        "</qti-assessment-item>"
    )
    manifest = (
        '<manifest xmlns="http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1" identifier="m"><resources>'
        '<resource identifier="i" type="imsqti_item_xmlv3p0" href="i.xml"/></resources></manifest>'
    )
    held = BytesIO()
    with zipfile.ZipFile(held, "w") as made:
        made.writestr("imsmanifest.xml", manifest)
        made.writestr("i.xml", item)
    assert page_of_questions(held.getvalue(), "q.zip") == "1. 5 1/8 - 2 5/8 | Find the difference.\n"


def test_a_page_of_line_plots_is_not_asked() -> None:
    """A question about a line plot is left out and named; where nothing is left, that is refused."""
    plot = "1. plot 1/4, 1/2, 1/4 in; count above 1/4"
    assert questions_of_page(read_sheet(f"{plot}\n2. 52 - 27"))[1] == ("1",)
    with pytest.raises(InputError, match="without its picture"):
        questions_of_page(read_sheet(plot))
