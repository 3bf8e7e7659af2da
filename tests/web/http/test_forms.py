"""A form is read within its limits: bytes, time, fields, files, kinds, signs."""

import json
from collections.abc import Iterator, Sequence
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from starlette.testclient import TestClient

from onewhole.web.asgi import asgi_app
from onewhole.web.http import handling
from onewhole.web.http.forms import MAX_FIELDS
from onewhole.web.http.handling import PageRoute
from onewhole.web.http.request import PageRequest
from onewhole.web.http.response import Json, PageResponse
from tests.kit.doors import Opened, opened
from tests.kit.raw_asks import Came, ask_raw

MOST = 1024
PLAIN = "application/x-www-form-urlencoded"
PARTS = "multipart/form-data; boundary=kite"


def _look(request: PageRequest) -> PageResponse:
    return Json(
        {
            "fields": list(request.form_items),
            "files": {name: len(one.content) for name, one in request.files.items()},
        }
    )


def _take(request: PageRequest) -> PageResponse:
    return _look(request)


def _hold(request: PageRequest) -> PageResponse:
    return _look(request)


ROWS = (
    PageRoute("POST", "/form", _look, fields=("kite",), max_bytes=MOST),
    PageRoute("POST", "/file", _take, fields=("kite",), files=("page",), max_bytes=MOST),
    PageRoute("POST", "/large", _hold, max_bytes=200_000),
)


class Asking:
    """Sends a form as bytes, to rows made for these tests."""

    def __init__(self, door: Opened) -> None:
        self.app = asgi_app(door.door, door.access, ROWS)
        self.client = TestClient(self.app, base_url="http://127.0.0.1:8000", cookies=door.client.cookies)
        cookie = door.client.cookies[door.access.cookie]
        self.heads = [
            ("host", "127.0.0.1:8000"),
            ("cookie", f"{door.access.cookie}={cookie}"),
            ("x-csrf-token", door.csrf_token),
            ("accept", "application/json"),
        ]

    def __call__(
        self, path: str, body: Sequence[bytes], *heads: tuple[str, str], kind: str = PLAIN, ends: bool = True
    ) -> Came:
        """Send these bytes; with no heads given, their true length is told."""
        more = list(heads) or [("content-length", str(sum(map(len, body))))]
        return ask_raw(self.app, "POST", path, [*self.heads, ("content-type", kind), *more], body, ends=ends)


@pytest.fixture
def send(tmp_path: Path) -> Iterator[Asking]:
    """Sends a form to the rows."""
    with opened(tmp_path) as door:
        yield Asking(door)


def test_a_form_within_its_limits_is_read(send: Asking) -> None:
    """Fields in their order, repeated ones too."""
    came = send("/form", [b"kite=red&kite=blue", b"&tail=%E2%85%94"])
    assert came.status == 200
    assert json.loads(came.text)["fields"] == [["kite", "red"], ["kite", "blue"], ["tail", "⅔"]]


@pytest.mark.asvs("V2.3.2")
def test_a_form_is_not_longer_than_it_may_be(send: Asking) -> None:
    """Told before it is read; one byte less is taken."""
    assert send("/form", [b"kite=" + b"x" * (MOST - 5)]).status == 200
    came = send("/form", [b"kite=" + b"x" * (MOST - 4)])
    assert (came.status, "At most 1 KiB" in came.text) == (413, True)


@pytest.mark.asvs("V4.2.1")
@pytest.mark.parametrize("length", ["5", "0", "1024"])
def test_a_length_that_lies_is_not_believed(send: Asking, length: str) -> None:
    """The bytes are counted as they come."""
    assert send("/form", [b"kite=", *[b"x" * 200] * 10], ("content-length", length)).status == 413


@pytest.mark.parametrize("length", ["-1", "+5", "1e3", "٣", "", "9" * 5000, "5, 5"])
def test_a_length_that_is_none_is_refused(send: Asking, length: str) -> None:
    """Also one of so many digits that it would be slow to read."""
    head = ("content-length", length.encode().decode("latin-1"))
    assert send("/form", [b"kite=red"], head).status in {411, 413}


@pytest.mark.asvs("V4.2.1")
def test_a_form_without_a_length_is_refused(send: Asking) -> None:
    """In chunks, or in chunks with a length beside it."""
    chunked = ("transfer-encoding", "chunked")
    refused = [
        send("/form", [b"kite=red"], *more) for more in ((chunked,), (chunked, ("content-length", "8")))
    ]
    assert [one.status for one in refused] == [411, 400]
    assert all(one.headers["connection"] == "close" for one in refused)


@pytest.mark.asvs("V2.4.1")
@pytest.mark.parametrize(("path", "limit"), [("/form", "FORM_SECONDS"), ("/file", "FILE_SECONDS")])
def test_a_slow_form_is_not_waited_for(
    send: Asking, path: str, limit: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """One that never ends is refused after its time; a file may take longer than a form."""
    monkeypatch.setattr(handling, limit, 0.02)
    came = send(path, [b"kite="], ("content-length", "100"), ends=False)
    assert (came.status, "too slowly" in came.text) == (408, True)
    assert handling.FORM_SECONDS < handling.FILE_SECONDS or limit == "FILE_SECONDS"


@pytest.mark.asvs("V3.5.2")
@pytest.mark.parametrize(
    "kind", ["application/json", "text/plain", "", "application/xml", "multipart/mixed; boundary=kite"]
)
def test_only_forms_are_read(send: Asking, kind: str) -> None:
    """Text is what another page could send without asking first."""
    assert send("/form", [b'{"kite":"red"}'], kind=kind).status == 415


@pytest.mark.parametrize("charset", ["utf-7", "utf-16", "idna", "base64", "unicode_escape", "nonsense"])
def test_a_form_is_written_in_one_way_only(send: Asking, charset: str) -> None:
    """UTF-8: another one could smuggle signs past the reader."""
    body = [b'--kite\r\nContent-Disposition: form-data; name="kite"\r\n\r\n+2AA-\r\n--kite--\r\n']
    assert send("/form", body, kind=f"{PARTS}; charset={charset}").status == 415
    assert send("/form", body, kind=f"{PARTS}; charset=UTF-8").status == 200


@pytest.mark.asvs("V2.3.2")
def test_fields_are_counted(send: Asking) -> None:
    """As many as a grid of sixty pupils by thirty problems; not one more than the limit."""
    assert send("/large", [b"&".join([b"a=1"] * MAX_FIELDS)]).status == 200
    assert send("/large", [b"&".join([b"a=1"] * (MAX_FIELDS + 1))]).status == 400


def test_a_sign_that_cannot_be_written_is_refused(send: Asking) -> None:
    """NUL and escapes, in a name of a field too; bytes that are no text become a sign that says so.

    Blanks and the ends of lines of any program, and what Word puts between lines, are none of these.
    """
    for sign in ("%00", "%1b", "%07", "%7f", "%c2%9b"):
        assert send("/form", [f"kite=a{sign}b".encode()]).status == 422
    assert send("/form", [b"kite=%09%0a%0b%0c%0d%c2%85"]).status == 200
    assert send("/form", [b"ki%00te=a"]).status == 422
    assert "\\ufffd" in send("/form", [b"kite=%ed%a0%80"]).text


@pytest.mark.parametrize("more", ["", "; boundary=", "; boundary=other", f"; boundary={'x' * 500}"])
def test_a_torn_form_is_refused(send: Asking, more: str) -> None:
    """Without its boundary, with another one, cut in the middle."""
    body = b'--kite\r\nContent-Disposition: form-data; name="kite"\r\n\r\nred\r\n--kite--\r\n'
    assert send("/form", [body], kind=f"multipart/form-data{more}").status == 400


def _part(name: str, content: bytes, file: str | None = None) -> bytes:
    named = "" if file is None else f'; filename="{file}"'
    head = f'--kite\r\nContent-Disposition: form-data; name="{name}"{named}\r\n\r\n'
    return head.encode() + content + b"\r\n"


@pytest.mark.asvs("V15.3.3")
def test_a_file_is_taken_where_one_is_asked_for(send: Asking) -> None:
    """Under its field's name, and only there; one, not two; not longer than may be."""
    end = b"--kite--\r\n"
    assert send("/file", [_part("page", b"six kites", "a.txt"), end], kind=PARTS).text.endswith('{"page":9}}')
    assert send("/file", [_part("other", b"six kites", "a.txt"), end], kind=PARTS).status == 422
    assert send("/form", [_part("page", b"six kites", "a.txt"), end], kind=PARTS).status == 400
    two = [_part("page", b"1", "a"), _part("page", b"2", "b"), end]
    assert send("/file", two, kind=PARTS).status == 400
    assert send("/file", [_part("page", b"x" * MOST, "a.txt"), end], kind=PARTS).status == 413
    assert send("/file", [_part("page", b"a", "a\0b"), end], kind=PARTS).status in {400, 422}


_HEAD = st.text(st.characters(max_codepoint=255, exclude_characters="\r\n"), max_size=40)
_PIECES = (
    b"--kite", b"--kite--", b"\r\n", b"\n", b'Content-Disposition: form-data; name="page"', b'; filename="a"',
    b"; filename*=utf-8''%ff", b"Content-Type: text/html; charset=idna", b"name*=utf-7''+2AA-", b"a=1&b",
    b"Content-Transfer-Encoding: base64", b"%", b"\0", b"\xff",
)  # fmt: skip


@settings(
    max_examples=5 * settings().max_examples, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(
    kind=st.sampled_from(
        [PLAIN, PARTS, "multipart/form-data; boundary*=utf-8''kite", 'multipart/form-data; boundary="ki"']
    )
    | _HEAD.map(lambda text: f"multipart/form-data; {text}")
    | _HEAD,
    pieces=st.lists(st.sampled_from(_PIECES) | st.binary(max_size=8), max_size=12),
    cookie=st.just("kite=red") | _HEAD,
    with_token=st.booleans(),
)
def test_whatever_bytes_come_are_no_fault(
    send: Asking, kind: str, pieces: list[bytes], cookie: str, with_token: bool
) -> None:
    """Torn forms, heads of any signs: refused, or read as far as they are a form."""
    body = b"".join(pieces)
    heads = [head for head in send.heads if with_token or head[0] != "x-csrf-token"]
    heads += [
        ("content-type", kind),
        ("content-length", str(len(body))),
        ("cookie", cookie),
        ("range", cookie),
    ]
    for path in ("/form", "/file"):
        assert ask_raw(send.app, "POST", path, heads, [body]).status < 500
