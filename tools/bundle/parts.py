"""What goes into the folder and what stays out, by the locks: nothing that only tests or tools need."""

from importlib.metadata import packages_distributions

from packaging.utils import canonicalize_name

from tools.locked import RUNTIME, pinned

#: Packages whose files are read by name, as data: letters, a voice, words of a language.
WITH_DATA = ("espeakng_loader", "fontpkg_lexend", "fontpkg_atkinson_hyperlegible")
#: Packages that are asked for their version or for what they offer, which stands in their metadata.
METADATA = ("onewhole", "av", "numpy", "pillow", "typst")
#: Modules of Python that no page of ours needs, and whose libraries would come along.
NEVER = ("tkinter", "readline", "curses", "_curses", "idlelib", "lib2to3", "ensurepip", "test")
#: Libraries that are parts of the system's C library: another system's do not go with its own.
OF_THE_SYSTEM = ("libmvec.so", "libc.so", "libm.so", "libpthread.so", "libdl.so", "librt.so", "libutil.so")


def kept() -> frozenset[str]:
    """Return the packages that belong into the folder: those that an installed onewhole runs with."""
    return frozenset({"onewhole", *(one.name for one in pinned(RUNTIME))})


def of_module() -> dict[str, frozenset[str]]:
    """Return of every module that is installed, the packages that hold a part of it."""
    return {
        module: frozenset(canonicalize_name(one) for one in packages)
        for module, packages in packages_distributions().items()
    }


def foreign() -> tuple[str, ...]:
    """Return the installed modules of which no part belongs into the folder."""
    there = kept()
    return tuple(
        sorted(name for name, of in of_module().items() if name.isidentifier() and of.isdisjoint(there))
    )
