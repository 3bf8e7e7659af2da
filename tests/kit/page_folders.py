"""Nights of invented files put into a folder, and what is found there."""

import os
from collections.abc import Mapping
from pathlib import Path

from onewhole.presses.manifest import MANIFEST, Manifest, ManifestFile, content_digest
from onewhole.presses.page_folder import put_whole


def put_night(
    folder: Path, sheet: str, files: Mapping[str, bytes], *, pupils: bool = True, own: bool = False
) -> None:
    """Put the files of a night into a folder, all of one part."""
    listed = tuple(
        ManifestFile(
            name, name.partition(".")[0], "pages", "2026-09-01", pupils, *content_digest(files[name])
        )
        for name in files
    )
    put_whole(folder, Manifest(sheet, sheet, "", listed), files, {"pages"}, own=own)


def found_in(folder: Path) -> dict[str, bytes]:
    """Return every file that is found in a folder and below it by its name, the list left out."""
    paths = [Path(under) / name for under, _, names in os.walk(folder, followlinks=True) for name in names]
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(paths)
        if path.is_file() and path.name != MANIFEST
    }


def hidden_beside(folder: Path) -> list[str]:
    """Return the names of what lies hidden beside a folder."""
    return sorted(path.name for path in folder.parent.iterdir() if path.name.startswith("."))
