"""Checked chains as JSON objects: the contract of ``docs/json.md``."""

from collections.abc import Sequence

from onewhole.marking.reading.checking import RUN_ON, Checked, FalseSign
from onewhole.notations.text import text

Json = dict[str, object]


def checked_object(checked: Sequence[Checked]) -> Json:
    """Return whether all is true, and each chain with its false equals signs."""
    return {
        "true": all(chain.true for chain in checked),
        "chains": [
            {
                "text": " = ".join(text(link.says) for link in one.chain.links),
                "true": one.true,
                "false": [_false(sign) for sign in one.false],
                "separate": [" = ".join(map(text, act)) for act in one.separate],
            }
            for one in checked
        ],
    }


def _false(sign: FalseSign) -> Json:
    found: Json = {
        "line": sign.line,
        "column": sign.column,
        "left": text(sign.left),
        "right": text(sign.right),
        "would_be": text(sign.would_be) if sign.would_be is not None else None,
        "runs_on": sign.runs_on,
        "patterns": list(sign.patterns),
    }
    if sign.runs_on:
        found["told"] = RUN_ON
    return found
