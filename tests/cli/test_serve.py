"""`onewhole serve`: where the class is kept, the password typed twice, a tidy end, a damaged file."""

import http.client
import os
import re
import signal
import ssl
import subprocess
import sys
from collections.abc import Iterator, Mapping
from contextlib import closing, contextmanager
from dataclasses import dataclass
from pathlib import Path

import pytest

from onewhole.cli.browser import Serve, browser_door
from onewhole.cli.verbs import serve as verb
from onewhole.desk.classes.class_records import open_book
from onewhole.desk.keep.password import is_password, set_password
from onewhole.errors import InputError
from onewhole.web.serving import listening, serve
from tests.kit.certificates import NEEDS_OPENSSL, certificate
from tests.kit.terminal import Terminal
from tests.kit.waiting import until

COMMAND = Path(sys.executable).with_name("onewhole")


#: A browser on a screen: it writes down what it was told to open.
BROWSER = '#!/bin/sh\nprintf \'%s\' "$*" > "$0.told"\n'


def _environment(data: Path) -> dict[str, str]:
    """What the command runs in: folders of the test's own, and no screen."""
    without = {"DISPLAY", "WAYLAND_DISPLAY", "XDG_RUNTIME_DIR", "BROWSER"}
    return {
        **{name: value for name, value in os.environ.items() if name not in without},
        "XDG_DATA_HOME": str(data),
    }


@contextmanager
def running(*arguments: object, data: Path) -> Iterator[tuple[subprocess.Popen[str], str]]:
    """Run the command until it told its address; it is stopped at the end whatever happens."""
    with subprocess.Popen(
        [str(COMMAND), "serve", *map(str, arguments)],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        env=_environment(data),
    ) as process:
        try:
            assert process.stdout
            told = next(found for line in process.stdout if (found := re.search(r"https?://\S+", line)))
            yield process, told[0]
        finally:
            process.kill()


@dataclass(frozen=True, slots=True)
class Came:
    """What came back."""

    status: int
    headers: Mapping[str, str]
    text: str

    @property
    def cookie(self) -> str:
        """The cookie to send from now on."""
        return self.headers.get("set-cookie", "").partition(";")[0]


def asked(address: str, cookie: str = "") -> Came:
    """Load an address of the door."""
    host, _, path = address.removeprefix("http://").partition("/")
    with closing(http.client.HTTPConnection(host, timeout=20)) as connection:
        connection.request("GET", f"/{path}", headers={"Cookie": cookie} if cookie else {})
        answer = connection.getresponse()
        headers = {name.lower(): value for name, value in answer.getheaders()}
        return Came(answer.status, headers, answer.read().decode())


def test_the_door_is_what_the_verb_expects() -> None:
    """Types hold the browser door to the protocol; the installed package names it."""
    expected: Serve = serve
    assert browser_door() is expected


def test_a_package_without_the_door_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    """With what to do next."""
    monkeypatch.setattr("onewhole.cli.browser.entry_points", lambda **_: ())
    with pytest.raises(InputError, match="Install onewhole again"):
        browser_door()


@pytest.mark.asvs("V6.3.4", "V13.3.2")
@pytest.mark.enable_socket
@pytest.mark.parametrize("end", [signal.SIGINT, signal.SIGTERM])
def test_the_door_opens_in_a_private_folder_and_stops_tidily(tmp_path: Path, end: signal.Signals) -> None:
    """What is made is read by its owner only; the address opens once; the end is 0 without a trace."""
    with running(data=tmp_path) as (process, address):
        assert address.startswith("http://127.0.0.1:")
        opened = asked(address)
        assert (opened.status, asked(address).status) == (303, 403)
        first = asked(address.partition("/open")[0] + "/", opened.cookie)
        assert (first.status, first.headers["location"]) == (303, "/welcome")
        assert "server" not in first.headers
        process.send_signal(end)
        out, err = process.communicate(timeout=20)
        assert (process.returncode, out.strip().splitlines()[-1], err) == (
            0,
            "Stopped. What was kept is kept.",
            "",
        )
    folder = tmp_path / "onewhole"
    assert folder.stat().st_mode & 0o777 == 0o700
    assert {file.stat().st_mode & 0o077 for file in folder.rglob("*")} == {0}


@pytest.mark.more("web/test_sign_in_page.py")
@pytest.mark.slow
@pytest.mark.enable_socket
def test_a_second_start_opens_a_window_into_the_first(
    tmp_path: Path, onewhole: Terminal, monkeypatch: pytest.MonkeyPatch
) -> None:
    """In the browser where there is a screen, by an address that is good once where there is none.

    Starts that end at once are made in this process, which is another one than that of the first.
    """
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "XDG_RUNTIME_DIR", "BROWSER"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    browser = tmp_path / "browser"
    browser.write_text(BROWSER)
    browser.chmod(0o700)
    screen = {**_environment(tmp_path), "DISPLAY": ":none", "BROWSER": f"{browser} %s"}
    command = [str(COMMAND), "serve", str(tmp_path / "room12.class")]
    with running(tmp_path / "room12.class", data=tmp_path) as (process, address):
        base = address.partition("/open")[0]
        opened: list[str] = []
        for _ in range(2):
            shown = onewhole("serve", tmp_path / "room12.class")
            assert shown.code == 0
            assert f"is served already (process {process.pid}). Open this address" in shown.out
            found = re.search(r"http\S+", shown.out)
            assert found
            assert asked(found[0]).status == 303
            opened.append(found[0])
        assert len({address, *opened}) == 3
        assert all(one.startswith(base) for one in opened)
        ran = subprocess.run(command, capture_output=True, text=True, check=True, env=screen)
        assert "A window into it opens." in ran.stdout
        assert "key=" not in ran.stdout
        (page,) = (tmp_path / "onewhole" / "open").glob("*.html")
        told = tmp_path / "browser.told"
        until(lambda: told.exists() and told.read_text() != "", "the browser")
        assert told.read_text() == page.as_uri()
        assert base in page.read_text()
        monkeypatch.setenv("DISPLAY", ":none")
        quiet = onewhole("serve", tmp_path / "room12.class", "--no-browser")
        assert "Open this address" in quiet.out, quiet.err
        process.send_signal(signal.SIGINT)
        process.wait(timeout=20)
    assert list((tmp_path / "onewhole" / "open").iterdir()) == []


@pytest.mark.more("desk/keep/test_backups.py")
@pytest.mark.enable_socket
def test_a_day_begins_with_a_backup(tmp_path: Path) -> None:
    """Of a file that is there."""
    open_book(tmp_path / "room12.class").close()
    with running(tmp_path / "room12.class", data=tmp_path) as (process, _):
        process.send_signal(signal.SIGINT)
        process.wait(timeout=20)
    assert len(list((tmp_path / "backups").glob("room12.class.*.backup"))) == 1


@pytest.mark.more("desk/keep/test_way_back.py")
@pytest.mark.enable_socket
def test_a_damaged_file_does_not_keep_the_door_shut(tmp_path: Path) -> None:
    """It is told in the terminal, every page says it, and the way to the backups is there."""
    file = tmp_path / "room12.class"
    file.write_bytes(b"torn kite" * 1000)
    with running(file, data=tmp_path) as (process, address):
        page = asked(address.partition("/open")[0] + "/", asked(address).cookie)
        assert page.status == 503
        assert 'href="/mine/keep"' in page.text
        process.send_signal(signal.SIGINT)
        _, err = process.communicate(timeout=20)
    assert err.startswith("No backup was made today.")
    assert file.read_bytes() == b"torn kite" * 1000


@pytest.mark.enable_socket
def test_a_port_that_is_taken_is_refused(tmp_path: Path, onewhole: Terminal) -> None:
    """With what to do next."""
    with closing(listening("127.0.0.1", 0)) as taken:
        port = taken.getsockname()[1]
        shown = onewhole("serve", tmp_path / "a.class", "--port", port)
    assert shown.code == 2
    assert f"Port {port} cannot be used" in shown.err
    assert "--port" in shown.err


@pytest.mark.more("web/test_sign_in_page.py")
@pytest.mark.asvs("V4.1.2", "V12.2.1")
@pytest.mark.enable_socket
@NEEDS_OPENSSL
def test_a_shared_machine_is_signed_in_to_over_tls(tmp_path: Path) -> None:
    """Every network may knock: with the right name and the password one is in, over TLS only."""
    file = tmp_path / "room12.class"
    set_password(file, "six kites over the hill")
    pem, key = certificate(tmp_path)
    everywhere = ("--address", "0.0.0.0", "--name", "desk.school", "--certificate", pem, "--key", key)  # noqa: S104
    with running(file, *everywhere, data=tmp_path) as (process, address):
        port = int(address.rsplit(":", 1)[1].partition("/")[0])
        assert address == f"https://desk.school:{port}/sign-in"
        trusting = ssl.create_default_context(cafile=str(pem))
        host = f"desk.school:{port}"
        with closing(http.client.HTTPSConnection("127.0.0.1", port, context=trusting, timeout=20)) as line:
            line.request("GET", "/", headers={"Host": host})
            answer = line.getresponse()
            assert (answer.status, answer.getheader("location"), answer.read()) == (
                303,
                "/sign-in",
                b"Sign in first.",
            )
            body = "password=six+kites+over+the+hill"
            kind = "application/x-www-form-urlencoded"
            origin = f"https://{host}"
            line.request("POST", "/sign-in", body, {"Host": host, "Origin": origin, "Content-Type": kind})
            answer = line.getresponse()
            assert answer.status == 303
            assert (answer.getheader("set-cookie") or "").startswith(f"__Host-onewhole-{port}=")
            assert answer.read() == b""
            line.request("GET", "/", headers={"Host": f"127.0.0.1:{port}"})
            assert line.getresponse().status == 421
        with closing(http.client.HTTPConnection("127.0.0.1", port, timeout=20)) as plain:
            plain.request("GET", "/", headers={"Host": host})
            with pytest.raises(OSError, match=r"reset|closed|Remote"):
                plain.getresponse()
        process.send_signal(signal.SIGINT)
        process.wait(timeout=20)


def _typing(monkeypatch: pytest.MonkeyPatch, *typed: str) -> None:
    left = list(typed)
    monkeypatch.setattr(verb, "getpass", lambda _prompt: left.pop(0))


@pytest.mark.asvs("V6.2.6")
def test_a_password_is_typed_twice(
    tmp_path: Path, onewhole: Terminal, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Nothing of it is shown."""
    file = tmp_path / "room12.class"
    _typing(monkeypatch, "six kites over the hill", "six kites over the hill")
    shown = onewhole("serve", file, "--set-password")
    assert shown.code == 0
    assert "six kites" not in shown.out + shown.err
    assert is_password(file, "six kites over the hill")


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (("six kites over the hill", "six kites over the bill"), "not the same"),
        (("short", "short"), "12 to 200"),
    ],
)
def test_a_password_that_is_none_is_not_set(
    typed: tuple[str, str], said: str, tmp_path: Path, onewhole: Terminal, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is said why, and no file is left."""
    _typing(monkeypatch, *typed)
    shown = onewhole("serve", tmp_path / "room12.class", "--set-password")
    assert (shown.code, said in shown.err, list(tmp_path.iterdir())) == (2, True, [])


def test_a_folder_that_cannot_be_made_is_refused(
    tmp_path: Path, onewhole: Terminal, monkeypatch: pytest.MonkeyPatch
) -> None:
    """With the way round it."""
    (tmp_path / "data").write_text("a file stands where the folder should")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    shown = onewhole("serve")
    assert (shown.code, "onewhole serve FILE" in shown.err) == (2, True)
