"""Nemeth braille: what speech-rule-engine makes of MathML, and the same read back to a typed line.

Source of the signs: The Nemeth Braille Code for Mathematics and Science Notation, 1972 revision (from
memory), as the engine writes them.
"""

import json
import re
import shutil
from subprocess import run

import pytest

from tests.kit.sessions import ROOT

_ENGINE = ROOT / "node_modules" / "speech-rule-engine"
#: Reads a list of formulas as JSON, and writes the list of what they are in braille.
_ASKED = """
import sre from "speech-rule-engine";
import { readFileSync } from "node:fs";
await sre.setupEngine({ modality: "braille", locale: "nemeth" });
const braille = JSON.parse(readFileSync(0, "utf8")).map((formula) => sre.toSpeech(formula));
process.stdout.write(JSON.stringify(braille));
"""
_DIGITS = dict(zip("⠴⠂⠆⠒⠲⠢⠖⠶⠦⠔", "0123456789", strict=True))
#: The signs that are longer or stand for more come first.
_SIGNS = {
    "⠸⠹": " ",
    "⠸⠼": "",
    "⠀⠨⠅⠀": " = ",
    "⠀⠐⠅⠀": " < ",
    "⠀⠨⠂⠀": " > ",
    "⠫⠲": "?",
    "⠫⠉": "?",
    "⠿": "?",
    "⠈⠡": " x ",
    "⠬": " + ",
    "⠤": " - ",
    "⠌": "/",
    "⠷": "(",
    "⠾": ")",
    "⠨": ".",
    "⠠": "",
    "⠹": "",
    "⠼": "",
    "⠀": " ",
} | _DIGITS
_SIGN = re.compile("|".join(_SIGNS))


def brailled(formulas: list[str]) -> list[str]:
    """What an engine of screen readers writes in Nemeth braille, formula by formula, in one process."""
    node = shutil.which("node")
    if node is None or not _ENGINE.exists():
        pytest.skip("needs Node and the packages of package.json: npm ci")
    asked = run(
        [node, "--input-type=module", "--eval", _ASKED],
        input=json.dumps(formulas),
        capture_output=True,
        text=True,
        check=True,
        cwd=ROOT,
    )
    found: list[str] = json.loads(asked.stdout)
    return found


def typed_from_nemeth(braille: str) -> str:
    """Return a line as it is typed, read from its braille. Raises ValueError for a sign that is none here.

    >>> typed_from_nemeth("⠼⠶⠸⠹⠆⠌⠖⠸⠼⠤⠒")
    '7 2/6 - 3'
    """
    if rest := _SIGN.sub("", braille):
        msg = f"{braille}: what is {rest}?"
        raise ValueError(msg)
    return " ".join(_SIGN.sub(lambda sign: _SIGNS[sign[0]], braille).split())
