"""Where the unpacked program begins."""

import multiprocessing
import os
import sys
from pathlib import Path

if __name__ == "__main__":
    # A film is drawn by processes that are this program once more: they go their own way here.
    multiprocessing.freeze_support()

    from onewhole.cli.unpacked import begin

    sys.exit(begin(sys.argv[1:], os.environ, Path.home()))
