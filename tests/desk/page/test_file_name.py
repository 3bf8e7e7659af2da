"""A name made of a title is one that Windows takes too, whatever was typed."""

from pathlib import PureWindowsPath

from hypothesis import example, given
from hypothesis import strategies as st

from onewhole.desk.page.file_name import file_name

#: What people type, and what is a trap on another system.
TITLES = (
    "CON",
    "nul.",
    "com1.txt",
    "LPT9 ",
    "Aux",
    "a:b",
    "x" * 300,
    "🪁" * 200,
    "...",
    "\0",
    "..\\..\\up",
    "aux .kite",
)


@given(st.text() | st.sampled_from(TITLES))
@example("prn")
def test_every_system_takes_it(title: str) -> None:
    """One name, no folder, no device, no blank or full stop at its end, and not too long for a disk."""
    name = file_name(title, "pdf")
    there = PureWindowsPath(name)
    assert there.parts == (name,)
    assert not there.drive
    assert not there.root
    assert not there.is_reserved()
    assert not set(name) & set('<>:"/\\|?*')
    assert name.endswith(".pdf")
    assert not there.stem.endswith((" ", "."))
    assert len(name.encode(errors="surrogatepass")) <= 255


def test_a_usual_title_stays_as_it_is() -> None:
    """With its signs and letters."""
    assert file_name("Colas de cometa, noche 1 – clave", "pdf") == "Colas de cometa, noche 1 – clave.pdf"
