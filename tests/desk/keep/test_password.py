"""A password's hash is kept beside the file of the class, and nothing else of it."""

from pathlib import Path

import pytest
from zxcvbn.frequency_lists import FREQUENCY_LISTS

from onewhole.desk.keep.password import LEAST, MOST, PasswordRefused, has_password, is_password, set_password
from onewhole.errors import InputError
from onewhole.presses.files import FileRefused
from tests.kit.passwords import hash_quickly

RIGHT = "six kites over the hill"


@pytest.fixture
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """Hash at the least cost; the first test has the real one."""
    hash_quickly(monkeypatch)


@pytest.mark.asvs("V11.4.2", "V13.3.1", "V13.3.2")
def test_a_password_is_kept_as_its_argon2id_hash(tmp_path: Path) -> None:
    """In a file that only its owner reads; the password itself is nowhere."""
    book = tmp_path / "room12.class"
    assert not has_password(book)
    set_password(book, RIGHT)
    (file,) = tmp_path.iterdir()
    assert has_password(book)
    assert file.stat().st_mode & 0o777 == 0o600
    assert file.read_text().startswith("$argon2id$v=19$m=65536,t=3,p=4$")
    assert RIGHT not in file.read_text()


@pytest.mark.asvs("V6.2.8")
@pytest.mark.usefixtures("quick")
def test_only_the_password_is_right(tmp_path: Path) -> None:
    """However its accents are typed; a very long one costs nothing and is wrong."""
    book = tmp_path / "room12.class"
    set_password(book, "Drachen über dem Hügel")
    assert is_password(book, "Drachen u\u0308ber dem Hu\u0308gel")
    assert not is_password(book, "drachen über dem hügel")
    assert not is_password(book, "")
    assert not is_password(book, "x" * (MOST + 1))


@pytest.mark.asvs("V6.2.2")
@pytest.mark.usefixtures("quick")
def test_a_new_password_takes_the_place_of_the_old(tmp_path: Path) -> None:
    """The file stays the owner's, also where it was open to others."""
    book = tmp_path / "room12.class"
    set_password(book, RIGHT)
    (tmp_path / "room12.class.password").chmod(0o644)
    set_password(book, "seven kites, no wind")
    assert (tmp_path / "room12.class.password").stat().st_mode & 0o777 == 0o600
    assert not is_password(book, RIGHT)
    assert is_password(book, "seven kites, no wind")


@pytest.mark.asvs("V6.2.1")
@pytest.mark.parametrize("typed", ["", "x" * (LEAST - 1), "x" * (MOST + 1)])
def test_a_password_has_a_length(tmp_path: Path, typed: str) -> None:
    """Too short and too long ones are refused, and none is set."""
    with pytest.raises(InputError, match="12 to 200"):
        set_password(tmp_path / "room12.class", typed)
    assert not has_password(tmp_path / "room12.class")


@pytest.mark.asvs("V16.5.3")
def test_a_damaged_hash_lets_nobody_in(tmp_path: Path) -> None:
    """It is said, with what to do."""
    book = tmp_path / "room12.class"
    for torn in (b"torn", b"", b"\xff\xfe", b"$argon2id$v=19$m=65536,t=3,p=4$torn"):
        (tmp_path / "room12.class.password").write_bytes(torn)
        with pytest.raises(PasswordRefused, match="--set-password"):
            is_password(book, RIGHT)


def test_a_folder_that_is_not_there_is_refused(tmp_path: Path) -> None:
    """With its name."""
    with pytest.raises(FileRefused, match="nowhere"):
        set_password(tmp_path / "nowhere" / "room12.class", RIGHT)


@pytest.mark.asvs("V6.2.5", "V6.2.9")
@pytest.mark.parametrize(
    "typed",
    [
        "зmeи над холмом",
        "凧が六つ丘の上を飛んでいく",
        "🪁 over 🏔 and 🌊 again",
        "nobody would ever think of sixty-four characters about kites here",
    ],
)
@pytest.mark.usefixtures("quick")
def test_any_signs_make_a_password(tmp_path: Path, typed: str) -> None:
    """Of one alphabet or several, with and without spaces, digits alone, and long ones."""
    book = tmp_path / "room12.class"
    set_password(book, typed)
    assert is_password(book, typed)
    assert not is_password(book, typed[:-1])


@pytest.mark.asvs("V6.2.4", "V6.2.11")
@pytest.mark.parametrize(
    "typed",
    [
        *("password1234", "123456789012", "qwertyuiop12", "iloveyouforever", "passwordpassword"),
        *("onewhole1234", "homework2026", "room12room12", "teacherteacher", "a" * 200),
    ],
)
def test_what_is_guessed_easily_is_refused(tmp_path: Path, typed: str) -> None:
    """What many take, keys in a row, and words of this trade and of this file; none is set."""
    with pytest.raises(InputError, match="guessed too easily"):
        set_password(tmp_path / "room12.class", typed)
    assert not has_password(tmp_path / "room12.class")


@pytest.mark.asvs("V6.2.4")
def test_no_common_password_of_this_length_is_taken(tmp_path: Path) -> None:
    """Of the 30,000 that the library knows, every one that is long enough is refused."""
    long = [word for word in FREQUENCY_LISTS["passwords"] if LEAST <= len(word) <= MOST]
    print(f"{len(long)} common passwords have {LEAST} characters or more")
    assert len(long) > 50
    for typed in long:
        with pytest.raises(InputError, match="guessed too easily"):
            set_password(tmp_path / "room12.class", typed)
