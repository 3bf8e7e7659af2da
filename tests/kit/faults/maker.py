"""Does an act once for each fault that is asked for, each time in a process of its own; judges what is there.

Started with the shim loaded before the C library. It reads orders from standard input, a JSON line each, and
answers each with a line: the name of an act, answered by how often each call is made without a fault; or a
fault in that act, answered by what was told and what is found. All is imported once: a fault costs a fork.
"""

import ctypes
import json
import os
import shutil
import sys
import traceback
from pathlib import Path
from typing import NoReturn

from onewhole.errors import OnewholeError
from tests.kit.faults.act import DONE, ENDED, Act, Found
from tests.kit.faults.class_acts import (
    BackUp,
    BackUpDaily,
    Erase,
    KeepAnswer,
    KeepPapers,
    OpenOlder,
    Restore,
    RestoreDamaged,
    RestoreNew,
)
from tests.kit.faults.page_acts import PutFirstNight, PutNight, PutNightInTwoSteps, WriteFile
from tests.kit.faults.plan import Call

ACTS: dict[str, type[Act]] = {
    act.name: act
    for act in (
        *(KeepAnswer, KeepPapers, BackUp, BackUpDaily, Restore, RestoreNew, RestoreDamaged, Erase, OpenOlder),
        *(PutNight, PutNightInTwoSteps, PutFirstNight, WriteFile),
    )
}
#: How a process ends that the shim ends.
ENDED_BY_THE_SHIM = 9

Fault = tuple[int, int, int, int]
NONE: Fault = (-1, 0, 0, 0)


class Maker:
    """An act in a folder that is made ready once and copied for each fault."""

    def __init__(self, act: type[Act], folder: Path) -> None:
        """Make the folder ready."""
        self.ready, self.work = folder / "ready", folder / "work"
        self.shim = ctypes.CDLL(None)
        self.shim.faults_arm.argtypes = (ctypes.c_int, ctypes.c_long, ctypes.c_int, ctypes.c_int)
        self.shim.faults_count.restype = ctypes.c_long
        self.shim.faults_watch(os.fsencode(self.work))
        shutil.rmtree(self.ready, ignore_errors=True)
        self.work.mkdir()
        self.act = act(self.work)
        self.act.prepare()
        self.work.rename(self.ready)

    def counted(self) -> dict[str, int]:
        """Do the act without a fault, and return how often each call is made."""
        said, counts = self._done(NONE)
        assert said.startswith(DONE), said
        self.act.said = said
        self.act.learn()
        found, why = self.act.judge()
        assert found is Found.NEW, (found, why)
        shutil.rmtree(self.work)
        return counts

    def failed(self, fault: Fault) -> dict[str, str]:
        """Do the act with a fault; return what it told and what is there."""
        self.act.said, _ = self._done(fault)
        try:
            found, why = self.act.judge()
        except Exception as error:  # noqa: BLE001 - what cannot be judged is neither old nor new
            found, why = Found.MIXTURE, _where(error)
        shutil.rmtree(self.work)
        return {"said": self.act.said, "found": found.value, "why": why}

    def _done(self, fault: Fault) -> tuple[str, dict[str, int]]:
        shutil.copytree(self.ready, self.work)
        ours, theirs = os.pipe()
        child = os.fork()
        if child == 0:
            os.close(ours)
            self._do(theirs, fault)
        os.close(theirs)
        with os.fdopen(ours) as answer:
            told = answer.read()
        code = os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])
        if code == ENDED_BY_THE_SHIM:
            return ENDED, {}
        assert code == 0, (code, told)
        said, counts = json.loads(told)
        return said, counts

    def _do(self, theirs: int, fault: Fault) -> NoReturn:
        """Do the act in this process, tell how it went, and end."""
        code = 1
        try:
            self.act.open()
            self.shim.faults_arm(*fault)
            said = self._said()
            counts = {call.name: self.shim.faults_count(call) for call in Call}
            self.shim.faults_arm(*NONE)
            os.write(theirs, json.dumps([said, counts]).encode())
            code = 0
        finally:
            os._exit(code)

    def _said(self) -> str:
        try:
            return f"{DONE} {self.act.do()}"
        except OnewholeError as refused:
            return f"refused: {refused}" if refused.remedy else f"uncaught: without a remedy: {refused}"
        except Exception as error:  # noqa: BLE001 - whatever it is, it is told
            return f"uncaught: {_where(error)}"


def _where(error: Exception) -> str:
    last = reversed(traceback.extract_tb(error.__traceback__)[-4:])
    return f"{error!r} at {' < '.join(f'{Path(one.filename).name}:{one.lineno}' for one in last)}"


def main() -> None:
    """Answer orders until there are no more."""
    maker: Maker | None = None
    for line in sys.stdin:
        order = json.loads(line)
        if isinstance(order, str):
            maker = Maker(ACTS[order], Path(sys.argv[1]))
            print(json.dumps(maker.counted()), flush=True)
        else:
            assert maker is not None
            print(json.dumps(maker.failed(order)), flush=True)


if __name__ == "__main__":
    main()
