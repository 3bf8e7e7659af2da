"""Builds the folder to unpack: `python -m tools.bundle [--archive]`."""

import sys
import tarfile
from pathlib import Path
from time import perf_counter, process_time

from onewhole import __version__
from tools.bundle.build import BUILT, build
from tools.bundle.contents import contents
from tools.bundle.licences import write_papers

MEGA = 1_000_000


def main(typed: list[str]) -> int:
    """Build, see whose every part is, write the papers; 1 where a part is nobody's."""
    began, used = perf_counter(), process_time()
    folder = build()
    found = contents(folder)
    if found.unknown:
        print("Nobody has said under which licence these are: tools/third_party.toml", file=sys.stderr)
        print("\n".join(f"  {one}" for one in found.unknown), file=sys.stderr)
        return 1
    write_papers(folder, found)
    print(
        f"{folder}: {found.bytes / MEGA:.0f} MB, {found.files} files, {len(found.packages)} packages; "
        f"{perf_counter() - began:.0f} s, of them {process_time() - used:.0f} s of processor"
    )
    if "--archive" in typed:
        packed = _packed(folder)
        print(f"{packed}: {packed.stat().st_size / MEGA:.0f} MB")
    return 0


def _packed(folder: Path) -> Path:
    """Pack the folder into one file; its links stay links."""
    goal = BUILT / f"onewhole-{__version__}-{sys.platform}.tar.xz"
    with tarfile.open(goal, "w:xz", preset=3) as archive:
        archive.add(folder, arcname="onewhole")
    return goal


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
