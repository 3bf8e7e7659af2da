"""Every terminal session in the pages of this folder shows what it shows; one page a verb."""

from pathlib import Path
from shlex import quote

import pytest

from onewhole.cli.main import VERBS
from tests.kit.sessions import BLOCK, Typed, page_as_it_runs, run, typed_in, verb_of

PAGES = sorted(Path(__file__).parent.glob("*.md"))


def test_every_verb_has_a_page() -> None:
    """One page a verb, and one for the command itself."""
    assert {page.stem for page in PAGES} == {"onewhole", *VERBS}


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_a_page_shows_what_it_shows(page: Path, tmp_path: Path, accept: bool) -> None:
    """Typed again, every command shows the same; ONEWHOLE_ACCEPT=1 writes the page anew."""
    now = page_as_it_runs(page.read_text(), tmp_path)
    if accept:
        page.write_text(now.text)
    assert not now.excerpts
    assert accept or not now.wrong


@pytest.mark.parametrize("page", PAGES, ids=lambda page: page.stem)
def test_a_page_has_sessions(page: Path) -> None:
    """A page that runs nothing proves nothing."""
    typed = [typed for block in BLOCK.findall(page.read_text()) for typed in typed_in(block)]
    assert len(typed) > 1
    assert sum("onewhole" in one.command for one in typed) > 1


@pytest.mark.parametrize(
    ("wanted", "found", "right"),
    [
        (["a", "b"], ["a", "b"], True),
        (["a"], ["a", "b"], False),
        (["a", "..."], ["a", "b", "c"], True),
        (["a", "..."], ["a"], True),
        (["a", "...", "c"], ["a", "b", "c"], True),
        (["a", "...", "c"], ["a", "c"], True),
        (["a", "...", "c"], ["a", "b"], False),
        (["...", "c"], ["b", "c"], True),
        (["..."], [], True),
        ([], ["a"], False),
        (["1.5"], ["1x5"], False),
    ],
)
def test_three_dots_stand_for_any_lines(wanted: list[str], found: list[str], right: bool) -> None:
    """They stand for none, one or more whole lines, and nothing else does."""
    assert Typed("x", tuple(wanted)).matches(tuple(found)) == right


def test_a_command_may_go_on() -> None:
    """Lines that begin with > belong to the command, as the terminal shows them."""
    block = "$ cat <<END\n> 7 2/6\n> END\n7 2/6\n$ true\n"
    assert list(typed_in(block)) == [Typed("cat <<END\n7 2/6\nEND", ("7 2/6",)), Typed("true", ())]
    assert "\n".join([*(typed.page for typed in typed_in(block)), ""]) == block


@pytest.mark.parametrize(
    "command",
    ['onewhole work "7 2/6 - 3 5/6"', 'onewhole work "7 2/"', "onewhole check '7 2/6 = 6 8/6' --jso"],
)
def test_a_verb_run_here_shows_what_the_command_shows(command: str, tmp_path: Path) -> None:
    """The same lines and the same exit code as the installed command in a process of its own."""
    assert verb_of(command) is not None
    assert verb_of(f"{command} | cat") is None
    assert run(command, tmp_path) == run(f"sh -c {quote(command)}", tmp_path)
