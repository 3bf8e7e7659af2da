"""Marking by the rules of QTI 3.0, for the tests: the operators that our items use, NULL among them.

Written after the standard's own words (1EdTech QTI 3.0, response processing; read), apart from what writes
the items. A template is what the standard says of it: `match_correct` and `map_response`.
"""

from fractions import Fraction
from math import prod
from xml.etree.ElementTree import Element

from defusedxml.ElementTree import fromstring

QTI = "{http://www.imsglobal.org/xsd/imsqtiasi_v3p0}"
Value = Fraction | bool | str | None


def scored(item: str, **typed: str) -> Fraction:
    """Return the SCORE of an item for what was typed into its boxes; an empty one is NULL."""
    root = fromstring(item, forbid_dtd=True)
    declared = {one.get("identifier"): one for one in root.iter(f"{QTI}qti-response-declaration")}
    values: dict[str, Value] = {}
    for name, one in declared.items():
        text = typed.get(str(name), "")
        values[str(name)] = _typed(text, str(one.get("base-type")))
    processing = root.find(f"{QTI}qti-response-processing")
    assert processing is not None
    template = processing.get("template", "")
    if template.endswith("match_correct.xml"):
        return Fraction(values["RESPONSE"] == _correct(declared["RESPONSE"]))
    if template.endswith("map_response.xml"):
        said = str(values["RESPONSE"] or "").casefold()
        entries = declared["RESPONSE"].iter(f"{QTI}qti-map-entry")
        return sum(
            (
                Fraction(str(one.get("mapped-value")))
                for one in entries
                if str(one.get("map-key")).casefold() == said
            ),
            Fraction(0),
        )
    for branch in processing.findall(f"{QTI}qti-response-condition/*"):
        test, *acts = branch
        if _value(test, values, declared) is True:
            (score,) = acts
            return Fraction(str(score[0].text))
    return Fraction(0)


def _typed(text: str, base: str) -> Value:
    if not text:
        return None
    return Fraction(text) if base in {"integer", "float"} else text


def _correct(declaration: Element) -> Value:
    value = declaration.find(f"{QTI}qti-correct-response/{QTI}qti-value")
    assert value is not None
    return _typed(str(value.text), str(declaration.get("base-type")))


def _value(one: Element, values: dict[str, Value], declared: dict[str | None, Element]) -> Value:
    name = one.tag.removeprefix(f"{QTI}qti-")
    inside = [_value(each, values, declared) for each in one]
    match name:
        case "variable":
            return values[str(one.get("identifier"))]
        case "correct":
            return _correct(declared[one.get("identifier")])
        case "base-value":
            return Fraction(str(one.text))
        case "is-null":
            return inside[0] is None
        case "and":
            return False if False in inside else None if None in inside else True
        case "or":
            return True if True in inside else None if None in inside else False
        case _ if None in inside:
            return None
        case "product":
            return prod((Fraction(str(each)) for each in inside), start=Fraction(1))
        case "sum":
            return sum((Fraction(str(each)) for each in inside), Fraction(0))
        case "equal":
            assert one.get("tolerance-mode") == "exact"
            return inside[0] == inside[1]
        case "gt":
            return Fraction(str(inside[0])) > Fraction(str(inside[1]))
        case _:
            raise NotImplementedError(name)
