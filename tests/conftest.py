"""What every test gets: the Hypothesis profiles, the switch that accepts new output; a run's last line."""

import gc
import os
import shutil
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

# What fails in a helper says what it found, as a test does.
pytest.register_assert_rewrite("tests.kit")

from tests.kit import once  # noqa: E402 - after the line above
from tests.kit.few_cases import left_out  # noqa: E402 - the same
from tests.kit.how_much import EXAMPLES, MORE, MORE_EXAMPLES  # noqa: E402 - the same
from tests.kit.untried import untried  # noqa: E402 - the same

# `usual` and `ci` try the same examples each time, so that a red run is red on every machine. To look for new
# ones, as `make walk` does: pytest --hypothesis-profile=explore
settings.register_profile("usual", derandomize=True, max_examples=EXAMPLES, deadline=None)
settings.register_profile("ci", derandomize=True, max_examples=MORE_EXAMPLES, deadline=None)
settings.register_profile("explore", max_examples=2000, deadline=None)
settings.load_profile("ci" if MORE else "usual")


@pytest.fixture
def accept() -> bool:
    """True when ONEWHOLE_ACCEPT=1: a test that compares with a kept file writes the file anew instead."""
    return os.environ.get("ONEWHOLE_ACCEPT") == "1"


@pytest.fixture(scope="session", autouse=True)
def _files_at_once() -> Iterator[None]:
    """Make new class files without going through each step of their history: `tests/kit/new_files.py`.

    Where no test knows the store, it is not loaded for that.
    """
    with pytest.MonkeyPatch.context() as patched:
        if "onewhole.store.opening" in sys.modules:
            from tests.kit.new_files import make_files_at_once  # noqa: PLC0415 - the store, only where it is loaded

            make_files_at_once(patched)
        yield


def pytest_configure(config: pytest.Config) -> None:
    """Make the folder where the processes of a run leave for each other what takes long to make."""
    if folder := once.begin():
        config.add_cleanup(lambda: shutil.rmtree(folder, ignore_errors=True))


def pytest_collection() -> None:
    """Let the collector of garbage rest while thousands of tests are collected, which all stay."""
    gc.disable()


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Leave out what is left to CI; begin with the tests that take long: none is left for the end.

    Apart from that the order is one of chance, folder by folder, so that what a folder's tests share (a
    browser, the syntax trees of the source) is made once. Processes that share the tests take what is short
    from each other until all of it is done. A test whose file makes something costly once for all its tests
    is better not marked: it would be made twice.
    """
    if not MORE:
        # Whoever names one file wants all of it.
        many = len({item.path for item in items}) > 1
        few = set(left_out(sorted(item.nodeid for item in items))) if many else set()
        left = [item for item in items if item.get_closest_marker("more") or item.nodeid in few]
        config.hook.pytest_deselected(items=left)
        items[:] = [item for item in items if not (item.get_closest_marker("more") or item.nodeid in few)]
    folders: dict[Path, int] = {}
    for item in items:
        folders.setdefault(item.path.parent, len(folders))
    items.sort(key=lambda item: (item.get_closest_marker("slow") is None, folders[item.path.parent]))


def pytest_collection_finish() -> None:
    """Let it pass over what was there when the first test began, and come seldom."""
    gc.freeze()
    gc.set_threshold(50_000, 20, 100)
    gc.enable()


def pytest_unconfigure(config: pytest.Config) -> None:
    """Say in the very last line of a run what was not tried."""
    reporter = config.pluginmanager.get_plugin("terminalreporter")
    if reporter is None:
        return
    if told := untried(str(report.longrepr) for report in reporter.stats.get("skipped", [])):
        reporter.write_line(told)
