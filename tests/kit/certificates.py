"""A certificate of a machine's own, made for one test."""

import shutil
import subprocess
from pathlib import Path

import pytest

OPENSSL = shutil.which("openssl")
NEEDS_OPENSSL = pytest.mark.skipif(
    OPENSSL is None, reason="no openssl on this machine: no certificate is made"
)


def certificate(folder: Path, name: str = "desk.school") -> tuple[Path, Path]:
    """Return a certificate and its key as two PEM files."""
    assert OPENSSL
    made, key = folder / f"{name}.pem", folder / f"{name}.key"
    asked = [
        "req",
        "-x509",
        "-newkey",
        "ec",
        "-pkeyopt",
        "ec_paramgen_curve:prime256v1",
        "-nodes",
        "-days",
        "2",
    ]
    more = ["-subj", f"/CN={name}", "-addext", f"subjectAltName=DNS:{name},IP:127.0.0.1"]
    command = [OPENSSL, *asked, *more, "-out", str(made), "-keyout", str(key)]
    subprocess.run(command, check=True, capture_output=True)
    return made, key
