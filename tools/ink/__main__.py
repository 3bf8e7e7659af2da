"""Make the reading network again, step by step: `python -m tools.ink STEP FOLDER`.

=========  ====================================================================================
fonts      fetch the handwriting fonts with npm, and draw their glyphs into FOLDER/fonts.npz
answers    write answers as a class gives them into FOLDER (seed 14)
train      train on every GPU, or on the processor, and tell what the network says of test cells
more       train on from the weights that are shipped, on one device, and tell the same
export     write FOLDER/ink.onnx from FOLDER/out/ink.pt
sheet      write the sheet of test cells, cells.png and cells.json
measure    let FOLDER/out/ink.pt read new cells (seed 77), for `figures`
figures    print the tables of docs/reading-model.md
=========  ====================================================================================

FOLDER also holds the four files of the MNIST set. `train` and `export` need torch and onnx, which the project
does not install.
"""

import argparse
import importlib
from collections.abc import Callable
from pathlib import Path
from typing import Any, Final

#: What evens out the likelihoods of digits, minus, unit, kind and struck; set on the cells that tune.
HEATS: Final = (1.0, 0.95, 0.95, 1.0, 1.0)
_SEED: Final = 14
#: Of cells that nothing was chosen on.
_NEW_SEED: Final = 77
_CELLS: Final = 16384


def _fonts(folder: Path) -> None:
    material = importlib.import_module("tools.ink.material")
    material.fetch_fonts(folder / "fonts")
    material.gather(folder / "fonts", folder / "fonts.npz")


def _answers(folder: Path) -> None:
    importlib.import_module("tools.ink.class_mix").keep(_SEED, _CELLS, folder)


def _train(folder: Path) -> None:
    importlib.import_module("tools.ink.course").whole_course(folder)


def _more(folder: Path) -> None:
    shipped = Path(importlib.import_module("onewhole.presses.paper").__path__[0]) / "ink.onnx"
    importlib.import_module("tools.ink.course").go_on(shipped, folder)


def _export(folder: Path) -> None:
    exporting = importlib.import_module("tools.ink.exporting")
    exporting.export_kept(folder / "out" / "ink.pt", HEATS, folder / "ink.onnx")


def _sheet(folder: Path) -> None:
    training, sheet = (importlib.import_module(f"tools.ink.{name}") for name in ("training", "sheet"))
    sheet.sheet(training.Stock.load(folder, "cpu"), "cpu", 5, folder)


def _measure(folder: Path) -> None:
    importlib.import_module("tools.ink.course").measure(folder / "out" / "ink.pt", folder, _NEW_SEED)


def _figures(folder: Path) -> None:
    for row in importlib.import_module("tools.ink.figures").rows(folder / "out", folder, HEATS, _CELLS):
        print(row, flush=True)


_STEPS: Final[dict[str, Callable[[Path], Any]]] = {
    "fonts": _fonts,
    "answers": _answers,
    "train": _train,
    "more": _more,
    "export": _export,
    "sheet": _sheet,
    "measure": _measure,
    "figures": _figures,
}

if __name__ == "__main__":
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("step", choices=_STEPS)
    asked.add_argument("folder", type=Path)
    named = asked.parse_args()
    _STEPS[named.step](named.folder)
