"""Two windows on papers from photos: the second is told what the first changed."""

from onewhole.desk.paper.keep_papers import keep_seen_papers
from onewhole.desk.paper.paper_wishes import paper_wishes
from onewhole.marking.paper.sureness import Sureness
from onewhole.store.answers import answers_of
from tests.kit.doors import Answer, Opened
from tests.kit.forms import form_to
from tests.kit.kept import NOW
from tests.kit.seen_papers import seen, unsure

PHOTOS = "/mine/1/night/9/marking/photos"
CODE, LABEL = "K05", "1"


def _checked(door: Opened, what: str, text: str, saw: str) -> Answer:
    return door.post(f"{PHOTOS}/{what}", code=CODE, label=LABEL, text=text, saw=saw)


def _two_windows(door: Opened, what: str) -> None:
    book = door.door.books["mine"]
    keep_seen_papers(book, 1, 9, seen({CODE: {LABEL: unsure("8 1/9", "8 2/9")}}), now=NOW)
    stood = {(one.code, one.problem): one.text for one in answers_of(book, 9)}.get((CODE, LABEL), "")
    assert _checked(door, what, "8 1/9", stood).status < 400
    assert _checked(door, what, "8 2/9", stood).status == 409
    assert {(one.code, one.problem): one.text for one in answers_of(book, 9)}[CODE, LABEL] == "8 1/9"
    assert _checked(door, what, "8 2/9", "8 1/9").status < 400


def checked_by_form(door: Opened) -> None:
    """An answer on paper that another window checked is not written over in silence."""
    _two_windows(door, "check")


def checked_by_script(door: Opened) -> None:
    """Nor by the keys."""
    _two_windows(door, "checked")


def paper_wishes_kept(door: Opened) -> None:
    """How sure the program must be is not changed over another window's word."""
    fields = dict(form_to(door.get(PHOTOS).text, f"{PHOTOS}/wish").fields)
    assert door.post(f"{PHOTOS}/wish", **{**fields, "sureness": "most"}).status == 303
    assert door.post(f"{PHOTOS}/wish", **{**fields, "sureness": "few"}).status == 409
    assert paper_wishes(door.door.books["mine"], 1).sureness is Sureness.MOST
