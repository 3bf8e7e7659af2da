"""Two windows on one table: what the second is told."""

import json

from tests.kit.doors import Answer, Opened
from tests.kit.forms import Form, form_to

_NIGHT = "/mine/1/night/9"


def _send(door: Opened, form: Form, **said: str) -> Answer:
    fields = {key.replace("_", "-"): value for key, value in said.items()}
    return door.post(form.action, **dict(form.filled(**fields)))


def pasted(door: Opened) -> None:
    """A table that was looked at is shown once more where another window wrote in the grid meanwhile."""
    shown = door.post(f"{_NIGHT}/marking/paste", text="Name\t1\nK05\t77 7/9\n").text
    old = form_to(shown, f"{_NIGHT}/marking/paste/{'keep' if 'paste/keep' in shown else ''}".rstrip("/"))
    if "paste/keep" not in shown:
        shown = _send(door, old, say_over="replace").text
        old = form_to(shown, f"{_NIGHT}/marking/paste/keep")
    sent = json.dumps([["K06", "1", "1 1/9", None]]).replace("null", json.dumps(_text(door, "K06")))
    assert json.loads(door.post(f"{_NIGHT}/marking/keep", cells=sent).text)["kept"]
    told = _send(door, old)
    assert (told.status, "another window wrote" in told.text) == (200, True)
    assert _text(door, "K05") != "77 7/9"
    assert _send(door, form_to(told.text, f"{_NIGHT}/marking/paste/keep")).status == 303
    assert _text(door, "K05") == "77 7/9"


def _text(door: Opened, code: str) -> str:
    cells = json.loads(door.get(f"{_NIGHT}/marking/now").text)["cells"]
    return str(next(one["text"] for one in cells if (one["code"], one["label"]) == (code, "1")))
