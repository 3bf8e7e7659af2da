"""Who comes in and what is refused is logged: when, from where, what; nothing that was typed."""

import logging
import re
from collections.abc import Iterator

import pytest

from onewhole.web.access.security_log import log_refusal, log_sign_in, log_to_stderr
from tests.kit.doors import Opened


@pytest.fixture
def cleared() -> Iterator[None]:
    """Afterwards the log is as it was."""
    log = logging.getLogger("onewhole.web")
    before, level = set(log.handlers), log.level
    yield
    for handler in set(log.handlers) - before:
        log.removeHandler(handler)
    log.setLevel(level)


@pytest.mark.asvs("V16.2.1", "V16.2.2")
@pytest.mark.usefixtures("cleared")
def test_a_line_says_when_where_and_what(capsys: pytest.CaptureFixture[str]) -> None:
    """Its time is in UTC, to the second; one line each."""
    log_to_stderr()
    log_sign_in("wrong", "192.0.2.7")
    log_sign_in("right", "2001:db8::7")
    log_refusal(421, "GET", "192.0.2.8\n1999 INFO sign-in right")
    lines = capsys.readouterr().err.splitlines()
    time = r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ"
    assert len(lines) == 3
    assert re.fullmatch(f"{time} WARNING sign-in wrong from 192.0.2.7", lines[0])
    assert re.fullmatch(f"{time} INFO sign-in right from 2001:db8::7", lines[1])
    assert re.fullmatch(rf"{time} INFO refused 421 GET from 192.0.2.8\?1999\?INFO\?sign-in\?right", lines[2])


@pytest.mark.asvs("V16.3.2", "V16.3.3", "V16.4.1")
def test_what_is_refused_is_logged_without_its_words(door: Opened, caplog: pytest.LogCaptureFixture) -> None:
    """A foreign host, a foreign form, a method that nobody knows, no session: each by its code."""
    with caplog.at_level(logging.INFO, logger="onewhole"):
        door.client.get("/Zanzibarkite", headers={"Host": "kites.example"})
        door.client.post("/Zanzibarkite", headers={"Origin": "http://kites.example"})
        door.client.request("ZANZIBAR", "/")
        door.client.cookies.clear()
        door.client.get("/mine/1/pupil/Zanzibarkite")
    refused = [one.getMessage() for one in caplog.records if one.getMessage().startswith("refused")]
    assert refused == [
        "refused 421 GET from testclient",
        "refused 403 POST from testclient",
        "refused 405 other from testclient",
        "refused 401 GET from testclient",
    ]
    assert "anzibar" not in caplog.text.lower()
