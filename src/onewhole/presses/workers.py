"""Processes that share work, and end when the process that started them does, however it ends."""

import os
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_all_start_methods, get_context, parent_process
from multiprocessing.connection import wait
from threading import Thread

#: What every one of them needs. Where a system can fork, one process reads it in, and those that work are
#: forked from that one: it has read nothing else, and no thread and no lock of ours is in it.
_READ_FIRST = ["onewhole.presses.video"]


def workers(count: int) -> ProcessPoolExecutor:
    """Return so many processes; they inherit no threads and no locks of this one."""
    how = "forkserver" if "forkserver" in get_all_start_methods() else "spawn"
    context = get_context(how)
    if how == "forkserver":
        context.set_forkserver_preload(_READ_FIRST)
    return ProcessPoolExecutor(count, mp_context=context, initializer=_end_with_parent)


def _end_with_parent() -> None:
    """From now on, end this process when its parent is there no more: a pipe between the two then ends.

    Without it a process that waits for work waits forever, since it holds both ends of the pipe for work.
    """
    parent = parent_process()
    assert parent is not None, "a process of the pool has a parent"

    def watch() -> None:
        wait([parent.sentinel])
        os._exit(1)

    Thread(target=watch, daemon=True).start()
