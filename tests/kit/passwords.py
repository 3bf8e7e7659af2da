"""Passwords hashed quickly, for tests that are not about what a hash costs."""

import pytest
from argon2 import PasswordHasher

from onewhole.desk.keep import password


def hash_quickly(patched: pytest.MonkeyPatch) -> None:
    """Hash a password that is set at the least cost that Argon2id takes.

    A hash itself says its cost, so that the check is as quick.
    """
    patched.setattr(password, "_HASHER", PasswordHasher(time_cost=1, memory_cost=8, parallelism=1))
