"""A page ready for the press."""

import json

from onewhole.writers.printed import Printed


def test_source_and_content_are_what_the_press_takes() -> None:
    """The source names the page kind; the content is the data as UTF-8 JSON, the same for the same data."""
    page = Printed("key", {"title": "Kites ½", "answers": []})
    assert page.source == '#import "/look.typ": key\n#key(json(bytes(sys.inputs.data)))'
    assert json.loads(page.content.decode("utf-8")) == page.data
    assert page.content == Printed("key", {"answers": [], "title": "Kites ½"}).content
