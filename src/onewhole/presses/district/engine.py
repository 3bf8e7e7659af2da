"""Who works: this process, or the workers of a Dask cluster; the same functions, the same parts, in order."""

import os
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager, suppress
from typing import Any, Protocol, TypeVar

from onewhole.errors import InputError

One = TypeVar("One")
Other = TypeVar("Other")

#: How often a part is begun again when the worker that had it is lost.
AGAIN = 5
#: How long a worker may take to answer on a busy machine.
SLOW = "60s"
#: How often it is looked whether anybody works; after how long without the rest is begun again; seconds.
LOOKED, IDLE = 5, 30
#: Lost workers are no news for a teacher, and no reason to give up.
QUIET = {
    "distributed.scheduler.allowed-failures": AGAIN,
    "distributed.logging.distributed": "error",
    "distributed.worker.memory.terminate": False,
    "distributed.comm.timeouts.connect": SLOW,
    "distributed.comm.timeouts.tcp": SLOW,
}
#: How long a scheduler that was named is waited for, in seconds.
PATIENCE = 20


class Engine(Protocol):
    """Whoever works parts out."""

    def of_all(self, act: Callable[[One], Other], parts: Iterable[One]) -> list[Other]:
        """Return what an act makes of each part, in their order; parts are worked out beside each other."""


class Here:
    """This process: a thread for each processor. NumPy and Polars let other threads work meanwhile."""

    def of_all(self, act: Callable[[One], Other], parts: Iterable[One]) -> list[Other]:
        """Return what an act makes of each part, in their order."""
        with ThreadPoolExecutor(os.cpu_count() or 1) as threads:
            return list(threads.map(act, parts))


class Cluster:
    """The workers of a Dask cluster; a part whose worker is lost is given to another."""

    def __init__(self, client: Any, wait: Callable[..., object]) -> None:  # noqa: ANN401 - Dask has no types
        self._client = client
        self._wait = wait

    def of_all(self, act: Callable[[One], Other], parts: Iterable[One]) -> list[Other]:
        """Return what an act makes of each part, in their order.

        What an act raises is raised at once, and not tried again. Where nobody works although parts are left,
        as after a worker that was lost and never came back, those are begun again; after some times of it the
        cluster is given up. Raises InputError then: nobody waits for ever.
        """
        left = list(parts)
        futures = list(self._client.map(act, left, pure=False))
        for _ in range(AGAIN):
            if self._done(futures):
                return list(self._client.gather(futures))
            futures = [
                one if one.status == "finished" else self._client.submit(act, part, pure=False)
                for one, part in zip(futures, left, strict=True)
            ]
        raise InputError("No worker is left", remedy="Look at the workers, and start it again.")

    def _done(self, futures: list[Any]) -> bool:
        """Wait until all parts are done or one cannot be; False where nobody works any more."""
        idle = 0
        while idle < IDLE:
            with suppress(TimeoutError):
                self._wait(futures, timeout=LOOKED)
                return True
            if any(one.status == "error" for one in futures):
                return True
            idle = 0 if self._client.call_stack() else idle + LOOKED
        return False


@contextmanager
def engine(workers: int, scheduler: str) -> Iterator[Engine]:
    """Give this process; or so many worker processes of this machine; or the cluster of a scheduler.

    The workers of a cluster see the same folders under the same names. Raises InputError where no scheduler
    answers.
    """
    if not workers and not scheduler:
        yield Here()
        return
    import dask  # noqa: PLC0415
    import distributed  # noqa: PLC0415

    dask_has_no_types: Any = distributed
    with dask.config.set(QUIET):
        if scheduler:
            try:
                client = dask_has_no_types.Client(scheduler, timeout=PATIENCE)
            except (OSError, ValueError) as refused:
                raise InputError(
                    "No scheduler answers", where=scheduler, remedy="Start one with: dask scheduler"
                ) from refused
            with client:
                yield Cluster(client, dask_has_no_types.wait)
            return
        os.environ.setdefault("POLARS_MAX_THREADS", "1")  # for the workers: a process each
        cluster = dask_has_no_types.LocalCluster(
            n_workers=workers, threads_per_worker=1, host="127.0.0.1", dashboard_address=None
        )
        client = dask_has_no_types.Client(cluster)
        try:
            yield Cluster(client, dask_has_no_types.wait)
        finally:
            for one in (client, cluster):
                with suppress(TimeoutError):
                    one.close(timeout=PATIENCE)
