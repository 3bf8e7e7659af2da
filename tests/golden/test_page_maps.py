"""Where answers stand on paper: papers that are printed already are read by it."""

import json
from pathlib import Path

import msgspec

from onewhole.sheets.page_marks import LAYOUT
from tests.kit.papers import mapped, texts

KEPT = Path(__file__).parent / "page_maps.json"


def test_answers_stand_where_they_stood(accept: bool) -> None:
    """Or they are another version on paper: whoever moves them raises LAYOUT; ONEWHOLE_ACCEPT=1 writes anew.

    A paper that was printed before would else be taken for one printed now, and its answers cut out in the
    wrong places.
    """
    stands = {name: msgspec.to_builtins(mapped(text).pages) for name, text in texts().items()}
    found = json.loads(json.dumps({"layout": LAYOUT, "pages": stands}))
    if accept:
        KEPT.write_text(json.dumps(found, indent=None, separators=(",", ":")) + "\n", encoding="utf-8")
    kept = json.loads(KEPT.read_text(encoding="utf-8"))
    assert kept["layout"] == LAYOUT, "write it anew: ONEWHOLE_ACCEPT=1"
    assert kept["pages"] == found["pages"], "answers have moved: raise LAYOUT in sheets/page_marks.py"
