"""Files of other programs in the browser: taken in, given out, refused beside the form."""

import json
from io import BytesIO
from zipfile import ZipFile

from httpx2 import Response

from tests.kit.doors import Opened
from tests.kit.rosters import roster

QUESTIONS = "/mine/1/exchange/page"


def handed(door: Opened, address: str, content: bytes, name: str = "file", **fields: str) -> Response:
    """What came of a form with a file."""
    data = {"csrf_token": door.csrf_token, **fields}
    return door.client.post(address, data=data, files={name: ("q.zip", content)}, headers=door.origin)


def test_a_page_goes_out_and_comes_back(door: Opened) -> None:
    """As questions, onto the Page desk; nothing is kept."""
    door.post("/welcome", name="Room 12", pupils="3", names="")
    saved = door.post("/mine/1/page/saved", typed="title: Kites\n\n1. 52 - 27\n", sheet="", recipe="", saw="")
    sheet = json.loads(saved.text)["sheet"]
    made = door.get(f"/mine/1/page/{sheet}/questions.zip")
    assert "imsmanifest.xml" in ZipFile(BytesIO(made.content)).namelist()
    assert f"/mine/1/page/{sheet}/questions.zip" in door.get("/mine/1/exchange").text
    back = handed(door, QUESTIONS, made.content)
    assert back.status_code == 200
    assert "title: Kites\n\n1. 52 - 27" in back.text


def test_a_wrong_package_is_told_beside_the_form(door: Opened) -> None:
    """With what to do; so is no file at all."""
    door.post("/welcome", name="Room 12", pupils="3", names="")
    told = handed(door, QUESTIONS, b"PK")
    assert (told.status_code, "damaged, locked, or no package" in told.text) == (422, True)
    assert "Nothing was taken in." in told.text
    assert "No file was chosen" in door.post(QUESTIONS).text


def test_a_class_list_comes_in_and_results_go_out(door: Opened) -> None:
    """Its classes with their pupils; the results by the identifiers of the list, with a caution beside."""
    door.post("/welcome", name="Mine", pupils="1", names="")
    told = handed(door, "/mine/1/exchange/classes", b"PK", "list")
    assert (told.status_code, "Nothing was taken in." in told.text) == (422, True)
    came = handed(door, "/mine/1/exchange/classes", roster(), "list", called="Room 12")
    assert came.status_code in {200, 303}
    assert "Lovelace" in door.get("/mine/2/class").text
    assert "see what your school allows" in door.get("/mine/2/exchange").text
    refused = handed(door, "/mine/2/exchange/results", roster(), "list")
    assert (refused.status_code, "No page was set in these days" in refused.text) == (422, True)
