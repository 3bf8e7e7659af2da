"""The table of contents as an OpenAPI document, and values that lead somewhere in the invented class."""

import re
from collections.abc import Iterable, Sequence
from functools import cache
from importlib.resources import files

from onewhole.web.http.handling import PageRoute

Schema = dict[str, object]

_PLACE = re.compile(r"\{(\w+)(:int)?\}")
PAGE = "title: Kite tails\nwhole: strip\nwholes: strips\n1. 3 1/4 - 1 3/4\n2. 5 1/8 + 2 5/8\n"
#: Values that lead somewhere in the invented class, by the name of the place or field.
GOOD: dict[str, Sequence[str | int]] = {
    "book": ["mine", "demo"],
    "room": [1],
    "night": [3, 10],
    "sheet": [1, 3],
    "version": [1],
    "code": ["K05", "K07"],
    "label": ["1", "2", "opening"],
    "job": ["none"],
    "file": ["walkthrough.mp4", "walkthrough.vtt"],
    "step": ["printed", "shown", "marked", "regrouped"],
    "text": ["3 1/2", "15/6", "K05\t3 1/2\n", "(-)"],
    "typed": [PAGE, "1. 3 1/4 - 1 3/4\n", "3 1/2"],
    "read": ["3 1/2"],
    "said": ["here", "late", "no page"],
    "whom": ["", "K05, K07", "Larks"],
    "joined": ["2026-09-02", ""],
    "left": ["2026-12-01", ""],
    "cells": ['[["K05","1","3 1/2",""]]', '[["K05","1",3]]', "[[[["],
    "wrong": ["K05 K07", "all"],
    "pupils": ["24"],
    "more": ["2"],
    "names": ["Ada\nBo"],
    "name": ["Room 12"],
    "pupil": ["K05"],
    "sure": ["K24", "yes"],
    "saw": ["", "1", "Room 12"],
    "day": ["2026-09-02", "9999-12-31"],
    "of": ["2026-09-02", "9999-12-31", "0001-01-01"],
    "to": ["1", "2"],
    "by": ["1", "-1"],
    "kind": ["learning", "practice", "mastery", "review"],
    "number": ["6", "12"],
    "denominators": ["4, 8", "6"],
    "regrouping": ["yes", "some"],
    "minutes": ["10", "20"],
    "seed": ["1"],
    "again": ["yes"],
    "act": ["remove", "replace", "number"],
    "key": ["", "right", "alone"],
    "length": ["", "short", "long"],
    "tried": ["1"],
    "mistake": ["yes"],
    "print": ["pupil", "key"],
    "steps": ["[0, 100, 200]", "0,100,200"],
    "table": ['{"rows":[["K05","3 1/2"]],"sheet":"","others":[],"formulas":0}', '{"rows":[[["4","date"]]]}'],
    "paste": ["1", "2"],
    "strategy": ["", "regroup_first", "nonsense"],
    "picture": ["", "strips", "discs"],
}


@cache
def asked_for() -> tuple[str, ...]:
    """Return the words after the question mark that some page of ours reads."""
    pages = (file for file in files("onewhole.web").joinpath("pages").iterdir() if file.name.endswith(".py"))
    found = {
        word
        for page in pages
        for pair in re.findall(r'query(?:\.get\(|\[)"(\w+)"|request\.every\("(\w+)"', page.read_text())
        for word in pair
        if word
    }
    return tuple(sorted(found))


def document(routes: Iterable[PageRoute]) -> dict[str, object]:
    """Return the OpenAPI document of these rows."""
    paths: dict[str, dict[str, object]] = {}
    for route in routes:
        paths.setdefault(plain(route), {})[route.method.lower()] = _operation(route)
    return {"openapi": "3.0.3", "info": {"title": "The browser door", "version": "1"}, "paths": paths}


def plain(route: PageRoute) -> str:
    """Return the path of a row as OpenAPI writes it.

    >>> from onewhole.web.pages import job
    >>> plain(PageRoute("GET", "/{book}/{room:int}/week", job.look))
    '/{book}/{room}/week'
    """
    return _PLACE.sub(r"{\1}", route.path)


def _operation(route: PageRoute) -> Schema:
    made: Schema = {
        "parameters": [
            *(_parameter("path", name, bool(number)) for name, number in _PLACE.findall(route.path)),
            *(_parameter("query", name) for name in asked_for() if route.method == "GET"),
        ],
        "responses": {"default": {"description": "an answer"}},
    }
    if route.method == "POST" and (route.fields or route.files):
        fields: Schema = {name: _value() for name in route.fields}
        fields |= {name: {"type": "string", "format": "binary"} for name in route.files}
        kind = "multipart/form-data" if route.files else "application/x-www-form-urlencoded"
        schema = {
            "type": "object",
            "properties": fields,
            "required": sorted(fields),
            "additionalProperties": False,
        }
        made["requestBody"] = {"required": True, "content": {kind: {"schema": schema}}}
    return made


def _parameter(where: str, name: str, number: bool = False) -> Schema:
    return {"in": where, "name": name, "required": where == "path", "schema": _value(number)}


def _value(number: bool = False) -> Schema:
    return {"type": "integer", "minimum": 0} if number else {"type": "string", "minLength": 1}
