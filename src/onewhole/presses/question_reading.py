"""A package of questions (QTI 3.0) that was handed in: its parts, within limits, by the standard's rules.

XML with a document type is refused. Nothing is unpacked onto the disk, and a name that leads out of the
package is refused all the same. Rules are those of QTI 3.0 (1EdTech, final, 1 May 2022; read): they are
checked here one by one, and the consortium's own schemas are not run.
"""

import re
from collections.abc import Iterator
from typing import Final
from xml.etree.ElementTree import Element, ParseError

from defusedxml.common import DefusedXmlException
from defusedxml.ElementTree import fromstring
from msgspec import Struct

from onewhole.errors import InputError
from onewhole.presses.handed_zip import handed_files

LARGEST: Final = 5_000_000
_LARGEST_PART, _LARGEST_TOGETHER = 1_000_000, 10_000_000
_QTI = "{http://www.imsglobal.org/xsd/imsqtiasi_v3p0}"
_PACKAGING = "{http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1}"
_MATH = "{http://www.w3.org/1998/Math/MathML}"
_MANIFEST = "imsmanifest.xml"
#: The children of an item that matter here, in the order of the standard.
_ORDER = (
    "qti-context-declaration",
    "qti-response-declaration",
    "qti-outcome-declaration",
    "qti-template-declaration",
    "qti-template-processing",
    "qti-assessment-stimulus-ref",
    "qti-companion-materials-info",
    "qti-stylesheet",
    "qti-item-body",
    "qti-catalog-info",
    "qti-response-processing",
    "qti-modal-feedback",
)
_CARDINALITIES = {"single", "multiple", "ordered", "record"}
_BASE_TYPES = set(
    "boolean directedPair duration file float identifier integer pair point string uri".split()  # noqa: SIM905
)
_NUMBERS = {"integer": re.compile(r"[+-]?\d+"), "float": re.compile(r"[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d+)?")}
_AGAIN = "Ask for the package anew where it comes from, or type the problems."


class QuestionRead(Struct, frozen=True):
    """An item: its file, label and title, the words and the line of mathematics, the right responses by name.

    ``choices`` says what the identifiers of a choice show.
    """

    file: str
    label: str
    title: str
    words: str
    asked: str
    right: dict[str, tuple[str, ...]]
    choices: dict[str, str]


class QuestionsRead(Struct, frozen=True):
    """A package: the title of its test, and its items in order, each with the title of its section."""

    title: str
    items: tuple[tuple[str, QuestionRead], ...]


def questions_in(content: bytes, name: str) -> QuestionsRead:
    """Return what is in a package; ``name`` is what refusals call it.

    Raises InputError for what is no such package, for one that is too large, and for what breaks a rule of
    the standard, with its file in the package.
    """
    parts = handed_files(
        content,
        name,
        largest=LARGEST,
        largest_part=_LARGEST_PART,
        together=_LARGEST_TOGETHER,
        remedy=_AGAIN,
    )
    if _MANIFEST not in parts:
        raise InputError(f"There is no {_MANIFEST} in it, so it is no package", file=name, remedy=_AGAIN)
    package = _Package(name, parts)
    manifest = package.root(_MANIFEST, f"{_PACKAGING}manifest")
    resources = list(manifest.iter(f"{_PACKAGING}resource"))
    tests = [one.get("href", "") for one in resources if one.get("type") == "imsqti_test_xmlv3p0"]
    if len(tests) > 1:
        package.refuse(_MANIFEST, f"There are {len(tests)} tests in it", "Hand in one at a time.")
    if not tests:
        items = [one.get("href", "") for one in resources if one.get("type") == "imsqti_item_xmlv3p0"]
        return QuestionsRead("", tuple(("", package.item(one)) for one in items))
    test = package.root(tests[0], f"{_QTI}qti-assessment-test")
    package.needs(tests[0], test, "identifier", "title")
    return QuestionsRead(_one_line(test.get("title", "")), tuple(package.sections(tests[0], test)))


class _Package(Struct, frozen=True):
    """The files of a package; what is refused names its file."""

    name: str
    parts: dict[str, bytes]

    def refuse(self, file: str, what: str, remedy: str = _AGAIN) -> None:
        raise InputError(what, file=f"{self.name}: {file}", remedy=remedy)

    def root(self, file: str, tag: str) -> Element:
        """Return the root of a file, which is an element of this name."""
        if file not in self.parts:
            self.refuse(file, "The package names this file and does not have it")
        try:
            found: Element = fromstring(self.parts[file], forbid_dtd=True)
        except ParseError as error:
            line, column = error.position
            raise InputError(
                "This is no XML", file=f"{self.name}: {file}", line=line, column=column + 1, remedy=_AGAIN
            ) from error
        except (DefusedXmlException, ValueError, LookupError, RecursionError) as error:
            raise InputError(
                "This XML has a document type, entities or an unknown encoding",
                file=f"{self.name}: {file}",
                remedy=_AGAIN,
            ) from error
        if found.tag != tag:
            self.refuse(file, f"It begins with {_short(found.tag)}, not with {_short(tag)} of QTI 3.0")
        return found

    def needs(self, file: str, element: Element, *names: str) -> None:
        """Refuse an element that lacks what it must say."""
        for name in names:
            if not element.get(name):
                self.refuse(file, f"{_short(element.tag)} lacks its {name}")

    def sections(self, file: str, test: Element) -> Iterator[tuple[str, QuestionRead]]:
        """Yield the items of a test in order, each with the title of its section where that is shown."""
        folder = file.rpartition("/")[0]
        parts = list(test.iter(f"{_QTI}qti-test-part"))
        if not parts:
            self.refuse(file, "A test has at least one part, and this one has none")
        for part in parts:
            self.needs(file, part, "identifier", "navigation-mode", "submission-mode")
        for section in test.iter(f"{_QTI}qti-assessment-section"):
            self.needs(file, section, "identifier")
            if section.get("title") is None or section.get("visible") not in {"true", "false"}:
                self.refuse(
                    file, f"Section {section.get('identifier')} lacks its title or whether it is visible"
                )
            shown = section.get("title", "") if section.get("visible") == "true" else ""
            for one in section.findall(f"{_QTI}qti-assessment-item-ref"):
                self.needs(file, one, "identifier", "href")
                place = f"{folder}/{one.get('href')}" if folder else str(one.get("href"))
                yield _one_line(shown), self.item(place)

    def item(self, file: str) -> QuestionRead:
        """Return an item whose rules are kept."""
        root = self.root(file, f"{_QTI}qti-assessment-item")
        self.needs(file, root, "identifier", "title", "time-dependent")
        order = [_short(one.tag) for one in root]
        if unknown := [one for one in order if one not in _ORDER]:
            self.refuse(file, f"An item has no {unknown[0]}")
        if order != sorted(order, key=_ORDER.index):
            self.refuse(
                file, f"The parts of an item stand in the order of the standard, not {', '.join(order)}"
            )
        body = root.find(f"{_QTI}qti-item-body")
        if body is None:
            self.refuse(file, "An item has a qti-item-body")
            raise AssertionError
        right = dict(self._declared(file, root))
        choices = dict(self._interactions(file, body, set(right)))
        words, asked = _read_body(body)
        label, title = root.get("label", ""), _one_line(root.get("title", ""))
        return QuestionRead(file, label, title, words, asked, right, choices)

    def _declared(self, file: str, root: Element) -> Iterator[tuple[str, tuple[str, ...]]]:
        """Yield the responses with what is right, by a value or by a mapping."""
        seen: set[str] = set()
        for one in root.findall(f"{_QTI}qti-response-declaration"):
            self.needs(file, one, "identifier", "cardinality")
            name, base = one.get("identifier", ""), one.get("base-type", "")
            if name in seen:
                self.refuse(file, f"There are two responses called {name}")
            seen.add(name)
            if one.get("cardinality") not in _CARDINALITIES or (base not in _BASE_TYPES):
                self.refuse(file, f"Response {name} has no cardinality or base-type of the standard")
            values = [
                _one_line(value.text or "")
                for value in one.iterfind(f"{_QTI}qti-correct-response/{_QTI}qti-value")
            ]
            if base in _NUMBERS and not all(_NUMBERS[base].fullmatch(value) for value in values):
                self.refuse(file, f"Response {name} is a {base}, and {', '.join(values)} is none")
            mapped = one.findall(f"{_QTI}qti-mapping/{_QTI}qti-map-entry")
            if mapped and base == "float":
                self.refuse(file, f"Response {name} is a float, and floats are not mapped")
            for entry in mapped:
                self.needs(file, entry, "map-key", "mapped-value")
            keys = [entry.get("map-key", "") for entry in mapped if _worth(entry) > 0]
            yield name, tuple(dict.fromkeys((*values, *keys)))

    def _interactions(self, file: str, body: Element, declared: set[str]) -> Iterator[tuple[str, str]]:
        """Yield the choices of an item; refuse ways to answer that a page on paper does not have."""
        found = [one for one in body.iter() if _short(one.tag).endswith("-interaction")]
        if not found:
            self.refuse(file, "Nothing is asked in this item")
        for one in found:
            if one.get("response-identifier") not in declared:
                self.refuse(file, f"{_short(one.tag)} has no response that is declared")
            if _short(one.tag) not in {"qti-text-entry-interaction", "qti-inline-choice-interaction"}:
                what = f"A page cannot ask this way: {_short(one.tag)}"
                self.refuse(file, what, "Take the item out of the package, and type its problem.")
        for choice in body.iter(f"{_QTI}qti-inline-choice"):
            yield choice.get("identifier", ""), _one_line("".join(choice.itertext()))


def _worth(entry: Element) -> float:
    try:
        return float(entry.get("mapped-value", "0"))
    except ValueError:
        return 0


def _short(tag: object) -> str:
    return str(tag).rpartition("}")[2][:80]


def _one_line(text: str) -> str:
    return " ".join("".join(sign if sign.isprintable() else " " for sign in text).split())


def _read_body(body: Element) -> tuple[str, str]:
    """Return the words of an item, and the last line of mathematics; where there is none, the words."""
    # Signs between the boxes of an answer are no words.
    words = _one_line("".join(_words(body))).rstrip(" =/")
    lines = list(body.iter(f"{_MATH}math"))
    if lines:
        return words, _one_line(lines[-1].get("alttext", "")) or _one_line(math_text(lines[-1]))
    return "", words


def _words(of: Element) -> Iterator[str]:
    if of.tag == f"{_MATH}math" or _short(of.tag).endswith("-interaction"):
        return
    yield of.text or ""
    for one in of:
        yield from _words(one)
        yield one.tail or ""
    yield " "


def math_text(of: Element) -> str:
    """Return MathML as a line is typed: a fraction with a stroke, a mixed number with a blank."""
    match _short(of.tag):
        case "mfrac":
            above, below = (math_text(one).strip() for one in [*of, of, of][:2])
            return f" {above}/{below} "
        case "mo":
            sign = (of.text or "").strip()
            return {"\u2062": " x ", "\u2064": " ", "\u2212": " - "}.get(sign, f" {sign} ")
        case _:
            return (of.text or "").strip() + "".join(math_text(one) for one in of)
