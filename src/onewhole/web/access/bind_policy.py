"""Which address the server may bind to, and when a password and TLS are required."""

import re
import ssl
from ipaddress import IPv4Address, IPv6Address, ip_address
from pathlib import Path

from msgspec import Struct

from onewhole.desk.keep.password import has_password
from onewhole.errors import InputError

HERE = "127.0.0.1"
_NAME = re.compile(r"[a-z0-9]([a-z0-9-]*[a-z0-9])?(\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)*")


class Binding(Struct, frozen=True):
    """An address to listen on, the names it is called by, and TLS where it speaks that."""

    address: IPv4Address | IPv6Address
    names: tuple[str, ...]
    tls: ssl.SSLContext | None

    @property
    def is_here(self) -> bool:
        """Say whether only this machine reaches it."""
        return self.address.is_loopback

    def hosts(self, port: int) -> frozenset[str]:
        """Return the hosts as a browser writes them: without the port where it is the usual one."""
        usual = port == (443 if self.tls else 80)
        return frozenset(f"{name}:{port}" for name in self.names) | frozenset(self.names if usual else ())

    def base(self, port: int) -> str:
        """Return the address to print."""
        return f"{'https' if self.tls else 'http'}://{self.names[0]}:{port}"


def check_binding(
    path: Path,
    address: str = HERE,
    names: tuple[str, ...] = (),
    certificate: Path | None = None,
    key: Path | None = None,
) -> Binding:
    """Check an address to serve the file of a class at, before anything listens. Raises InputError.

    ``names`` are how other machines call this one; an address for all networks needs one.
    """
    try:
        read = ip_address(HERE if address == "localhost" else address)
    except ValueError:
        raise InputError(
            f"The address {address!r} is not one of numbers", remedy="Give one like 192.168.1.20."
        ) from None
    for name in names:
        if len(name) > 253 or not _NAME.fullmatch(name.lower()):
            raise InputError(
                f"The name {name!r} is not one of a machine", remedy="Give one like desk.school."
            )
    called = tuple(name.lower() for name in names)
    tls = _tls(certificate, key)
    if read.is_loopback:
        return Binding(read, (_written(read), "localhost", *called), tls)
    if not has_password(path):
        raise InputError(
            "Other machines could open the class at this address, and no password is set",
            where=address,
            remedy="Set one with --set-password; or leave --address out, and only this machine opens it.",
        )
    if tls is None:
        raise InputError(
            "Other machines could read along at this address",
            where=address,
            remedy="Give --certificate and --key; or leave --address out, and only this machine opens it.",
        )
    if read.is_unspecified and not called:
        raise InputError(
            "An address for all networks needs the name that other machines call this one by",
            where=address,
            remedy="Give it with --name.",
        )
    return Binding(read, called if read.is_unspecified else (*called, _written(read)), tls)


def _written(address: IPv4Address | IPv6Address) -> str:
    return f"[{address}]" if isinstance(address, IPv6Address) else str(address)


def _tls(certificate: Path | None, key: Path | None) -> ssl.SSLContext | None:
    """Return what speaks TLS 1.2 or newer with these files; None without any."""
    if certificate is None and key is None:
        return None
    if certificate is None or key is None:
        raise InputError("A certificate and its key go together", remedy="Give --certificate and --key.")
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.minimum_version = ssl.TLSVersion.TLSv1_2
    try:
        if not all(file.is_file() for file in (certificate, key)):
            raise FileNotFoundError  # a pipe would be waited for
        context.load_cert_chain(certificate, key, password=lambda: b"")
    except (OSError, ValueError) as error:
        raise InputError(
            "The certificate and the key cannot be used",
            where=f"{certificate}, {key}",
            remedy="Give two PEM files that belong together, the key without a password.",
        ) from error
    return context
