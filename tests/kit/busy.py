"""Works that have their hands full, so that the next work waits for as long as a test wants it to."""

from collections.abc import Iterator
from contextlib import contextmanager
from threading import Event

from onewhole.web.jobs import MAX_RUNNING, Jobs, Outcome, Progress


@contextmanager
def busy(works: Jobs) -> Iterator[None]:
    """Let as much work as goes on at once be under way until the block is left."""
    over = Event()

    def run(_progress: Progress) -> Outcome:
        over.wait(60)
        return Outcome("/")

    for number in range(MAX_RUNNING):
        works.start(f"Kite {number}", "/", run)
    try:
        yield
    finally:
        over.set()
