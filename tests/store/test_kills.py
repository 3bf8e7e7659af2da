"""Killed at chance moments while answers stream in, and while a file is made: nothing told as kept is lost.

Each helper process below loads the store once and forks a writer a turn. ONEWHOLE_WHOLE_WALK=1 kills 200 of
them (`make walk`).
"""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from onewhole.store.answers import answers_of
from onewhole.store.opening import open_store
from tests.kit.how_much import sample
from tests.kit.kept import first_round, write

HELPERS, FILES = 4, 2
TURNS = sample(6, 12, 50)

#: Forks a writer and kills it: every other time at a chance moment from its start on, else at one after it
#: told some answers as kept. Opens the file, looks for every answer ever told as kept; prints how many
#: writers were killed, how many of them had told any, how many answers were told.
HELPER = """
import json, os, random, signal, sys, time
from datetime import UTC, datetime
from pathlib import Path
from onewhole.store.answers import KeptAnswer, answers_of, keep_answers
from onewhole.store.opening import open_store

path, night, code, turns = Path(sys.argv[1]), int(sys.argv[2]), sys.argv[3], int(sys.argv[4])
chance, told, busy = random.Random(code + path.name), set(), 0
for turn in range(turns):
    ours, theirs = os.pipe()
    writer = os.fork()
    if writer == 0:
        store = open_store(path)
        for number in range(10**9):
            problem = f"{turn}-{number}"
            text = f"{number} {turn + 1}/8" * 8
            keep_answers(store, (KeptAnswer(night, code, problem, text, datetime.now(UTC), "t"),))
            os.write(theirs, f"{problem}={text}\\n".encode())
    os.close(theirs)
    lines, new = os.fdopen(ours), []
    if turn % 2:
        new += [lines.readline() for _ in range(chance.randrange(1, 9))]
        time.sleep(chance.random() / 200)
    else:
        time.sleep(chance.random() / 12)
    os.kill(writer, signal.SIGKILL)
    _, status = os.waitpid(writer, 0)
    assert os.WTERMSIG(status) == signal.SIGKILL, status
    new = {tuple(line.rstrip("\\n").split("=")) for line in (*new, *lines) if line.endswith("\\n")}
    lines.close()
    busy += bool(new)
    told |= new
    store = open_store(path)
    kept = {(one.problem, one.text) for one in answers_of(store, night) if one.code == code}
    store.close()
    assert told <= kept, (turn, sorted(told - kept)[:3])
print(json.dumps({"kills": turn + 1, "busy": busy, "told": len(told)}))
"""


#: Forks a maker of a file a turn, which is killed at its statement number 0, 4, 8 and so on, or at its end;
#: prints how many were killed.
MAKERS = """
import os, signal, sys
from pathlib import Path
from sqlalchemy import Engine, event
from onewhole.store.opening import open_store

folder, killed = Path(sys.argv[1]), 0
for turn in range(int(sys.argv[2])):
    maker = os.fork()
    if maker == 0:
        left = turn * 4

        @event.listens_for(Engine, "before_cursor_execute")
        def count(*_):
            global left
            if left == 0:
                os.kill(os.getpid(), signal.SIGKILL)
            left -= 1

        open_store(folder / f"{turn}.class")
        os.kill(os.getpid(), signal.SIGKILL)
    _, status = os.waitpid(maker, 0)
    killed += os.WTERMSIG(status) == signal.SIGKILL
print(killed)
"""


@pytest.mark.slow
def test_a_kill_while_a_file_is_made_leaves_none_or_a_whole_one(tmp_path: Path) -> None:
    """Killed at ten places inside the making: opening the same name afterwards works."""
    command = [sys.executable, "-c", MAKERS, str(tmp_path), "10"]
    assert subprocess.run(command, check=True, capture_output=True, text=True).stdout == "10\n"
    for turn in range(10):
        store = open_store(tmp_path / f"{turn}.class")
        write(store, first_round(store).night, "2 4/8")
        store.close()


@pytest.mark.slow
def test_kills_lose_nothing(tmp_path: Path) -> None:
    """Two files, two writers in each at once: after every kill the file opens, and every answer that was told
    as kept, in this turn or an earlier one, is there as it was written.
    """
    helpers = []
    for number in range(HELPERS):
        path = tmp_path / f"{number % FILES}.class"
        if not path.exists():
            store = open_store(path)
            first_round(store)
            store.close()
        command = [sys.executable, "-c", HELPER, str(path), "1", f"K0{number // FILES + 1}", str(TURNS)]
        helpers.append(subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True))
    said = [helper.communicate() for helper in helpers]
    assert [errors for _, errors in said] == [""] * HELPERS
    counts = [json.loads(out) for out, _ in said]
    total = {key: sum(count[key] for count in counts) for key in ("kills", "busy", "told")}
    print(total)
    assert total["kills"] == TURNS * HELPERS
    assert total["busy"] >= TURNS * HELPERS // 2, "every other kill falls while answers are written"
    kept = 0
    for number in range(FILES):
        store = open_store(tmp_path / f"{number}.class")
        kept += len(answers_of(store, 1))
        store.close()
    assert kept >= total["told"] >= TURNS * HELPERS * 3 // 2
