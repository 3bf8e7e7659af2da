"""Killed at chance moments while papers are read and checked: what was told is kept, nothing is half-kept.

The process below loads the desk once and forks a writer a turn, so that many kills take seconds.
"""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from onewhole.desk.paper.night_papers import night_papers
from onewhole.store.opening import open_store
from tests.house.plan import ROOT
from tests.kit.seen_papers import paper_class

TURNS = 12

#: Forks a writer that reads and checks papers, and kills it; looks at the file after each kill. Prints how
#: many writers were killed, and how many acts they had told.
HELPER = """
import json, os, random, signal, sys, time
from datetime import UTC, datetime
from pathlib import Path
from onewhole.desk.paper.checking_papers import check_cell
from onewhole.desk.paper.keep_papers import keep_seen_papers
from onewhole.desk.paper.night_papers import night_papers
from onewhole.marking.paper.verdict import PaperVerdict
from onewhole.store.opening import open_store
from onewhole.store.paper_cells import ReadBy
from tests.kit.seen_papers import seen, sure, unsure

path, turns = Path(sys.argv[1]), int(sys.argv[2])
chance, told, acts, reading = random.Random(7), {}, 0, 0

def write(theirs, turn):
    store, now = open_store(path), datetime.now(UTC)
    for at in range(10**6):
        whole = f"{turn + 1} {at % 7 + 1}/8"
        cells = {code: {"1": sure(whole), "2": unsure(whole, "9")} for code in ("K01", "K02", "K03")}
        kept = keep_seen_papers(store, 1, 1, seen(cells, crop=whole.encode()), now=now)
        os.write(theirs, f"{kept.reading}|read\\n".encode())
        check_cell(store, 1, 1, ("K03", "2"), f"{turn} {at}", now=now)
        os.write(theirs, f"{kept.reading}|{turn} {at}\\n".encode())

for turn in range(turns):
    ours, theirs = os.pipe()
    writer = os.fork()
    if writer == 0:
        write(theirs, turn)
    os.close(theirs)
    lines, new = os.fdopen(ours), []
    if turn % 2:
        new += [lines.readline() for _ in range(chance.randrange(1, 5))]
    time.sleep(chance.random() / 20)
    os.kill(writer, signal.SIGKILL)
    os.waitpid(writer, 0)
    new += list(lines)
    lines.close()
    for line in new:
        if line.endswith("\\n"):
            number, said = line.rstrip("\\n").split("|")
            reading, acts = max(reading, int(number)), acts + 1
            told.update({} if said == "read" else {"checked": said})
    store = open_store(path)
    papers = night_papers(store, 1, 1)
    store.close()
    assert max((one.reading for one in papers.cells.values()), default=0) >= reading, turn
    if "checked" in told:
        stands, said = (text.split() for text in (papers.text(("K03", "2")), told["checked"]))
        assert [*map(int, stands)] >= [*map(int, said)], (turn, "what was checked last is kept")
        assert papers.cells["K03", "2"].by is ReadBy.PERSON, turn
    mine = [one for one in papers.cells.values() if one.code != "K03"]
    assert len({one.reading for one in mine}) <= 1, "papers of two readings are mixed"
    for one in papers.cells.values():
        if one.by is ReadBy.PROGRAM:
            text = one.cell.text if one.cell.verdict is PaperVerdict.READ else ""
            assert papers.text(one.key) == text, (turn, one.key)
print(json.dumps({"kills": turn + 1, "acts": acts}))
"""


@pytest.mark.more("store/test_kills.py")
def test_what_was_told_of_papers_is_kept(tmp_path: Path) -> None:
    """After every kill: cells and answers agree, and no reading is there in part."""
    path = tmp_path / "room12.class"
    paper_class(path).close()
    done = subprocess.run(
        [sys.executable, "-c", HELPER, str(path), str(TURNS)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr[-2000:]
    counts = json.loads(done.stdout)
    assert counts["kills"] == TURNS
    assert counts["acts"] >= TURNS // 2
    store = open_store(path)
    assert night_papers(store, 1, 1).cells
    store.close()
