"""Where a door may stand is checked before anything listens."""

import os
import re
import ssl
from pathlib import Path

import pytest

from onewhole.desk.keep.password import set_password
from onewhole.errors import InputError
from onewhole.web.access.bind_policy import check_binding
from tests.kit.certificates import NEEDS_OPENSSL, certificate

EVERYWHERE = "0.0.0.0"  # noqa: S104 - checked here, never listened on


@pytest.fixture
def book(tmp_path: Path) -> Path:
    """The file of a class for which a password was set."""
    set_password(tmp_path / "room12.class", "six kites over the hill")
    return tmp_path / "room12.class"


@pytest.mark.parametrize(
    ("address", "hosts"),
    [
        ("127.0.0.1", {"127.0.0.1:8000", "localhost:8000"}),
        ("localhost", {"127.0.0.1:8000", "localhost:8000"}),
        ("::1", {"[::1]:8000", "localhost:8000"}),
        ("127.1.2.3", {"127.1.2.3:8000", "localhost:8000"}),
    ],
)
def test_on_this_machine_nothing_more_is_wanted(tmp_path: Path, address: str, hosts: set[str]) -> None:
    """And only its own names are answered to."""
    stands = check_binding(tmp_path / "room12.class", address)
    assert stands.is_here
    assert stands.hosts(8000) == hosts


@pytest.mark.asvs("V6.3.2")
@pytest.mark.parametrize(
    "address", ["192.168.1.20", EVERYWHERE, "::", "2001:db8::7", "::ffff:127.0.0.1", "10.0.0.1"]
)
def test_elsewhere_a_password_comes_first(tmp_path: Path, address: str) -> None:
    """An address for all networks, and one that only looks like this machine's, too."""
    with pytest.raises(InputError, match="no password is set"):
        check_binding(tmp_path / "room12.class", address, ("desk.school",))


@pytest.mark.asvs("V12.2.1")
def test_elsewhere_tls_comes_next(book: Path) -> None:
    """A password alone would go over the network for all to read."""
    with pytest.raises(InputError, match="read along"):
        check_binding(book, "192.168.1.20")


@pytest.mark.asvs("V12.1.1", "V12.1.2")
@NEEDS_OPENSSL
def test_elsewhere_with_both(book: Path, tmp_path: Path) -> None:
    """It answers to its names and its address, and speaks TLS 1.2 or newer."""
    stands = check_binding(book, "192.168.1.20", ("Desk.School",), *certificate(tmp_path))
    assert not stands.is_here
    assert stands.hosts(8443) == {"desk.school:8443", "192.168.1.20:8443"}
    assert stands.hosts(443) >= {"desk.school", "192.168.1.20"}
    assert stands.base(8443) == "https://desk.school:8443"
    assert stands.tls
    assert stands.tls.minimum_version == ssl.TLSVersion.TLSv1_2
    ciphers = [one["name"] for one in stands.tls.get_ciphers()]
    assert ciphers[0].startswith("TLS_"), "TLS 1.3 first"
    assert [one for one in ciphers if not one.startswith(("TLS_", "ECDHE-", "DHE-"))] == []
    assert [one for one in ciphers if re.search("RC4|3DES|NULL|MD5|EXP|anon|CBC3", one)] == []


@NEEDS_OPENSSL
def test_all_networks_need_a_name(book: Path, tmp_path: Path) -> None:
    """Without one, no Host could be told from a foreign one."""
    files = certificate(tmp_path)
    with pytest.raises(InputError, match="--name"):
        check_binding(book, EVERYWHERE, (), *files)
    assert check_binding(book, EVERYWHERE, ("desk.school",), *files).hosts(8443) == {"desk.school:8443"}


@NEEDS_OPENSSL
def test_a_certificate_and_a_key_that_do_not_belong_together(book: Path, tmp_path: Path) -> None:
    """Two of different pairs, one twice, one that is not there, one that is no PEM file."""
    (first, key), (other, _) = certificate(tmp_path), certificate(tmp_path, "other.school")
    torn = tmp_path / "torn.pem"
    torn.write_text("torn")
    for pair in ((other, key), (key, first), (first, first), (first, tmp_path / "none.key"), (torn, key)):
        with pytest.raises(InputError, match="cannot be used"):
            check_binding(book, "192.168.1.20", (), *pair)


def test_a_certificate_is_a_file(book: Path, tmp_path: Path) -> None:
    """A pipe, into which nobody writes, is refused and not waited for."""
    os.mkfifo(tmp_path / "pipe.pem")
    with pytest.raises(InputError, match="cannot be used"):
        check_binding(book, "192.168.1.20", (), tmp_path / "pipe.pem", tmp_path / "pipe.pem")


@pytest.mark.parametrize(
    "name", ["", "desk school", "desk/school", "-desk", "desk:8000", "desk.school.", "*", "x" * 254]
)
def test_a_name_is_one_of_a_machine(book: Path, name: str) -> None:
    """It becomes a Host, and nothing else fits there."""
    with pytest.raises(InputError, match="not one of a machine"):
        check_binding(book, "127.0.0.1", (name,))
