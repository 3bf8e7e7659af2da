"""What is done with records: changed copies, and a field set while a record is made."""

from dataclasses import replace

__all__ = ["force_setattr", "replace"]


def force_setattr(record: object, name: str, value: object) -> None:
    """Set a field of a frozen record."""
    object.__setattr__(record, name, value)
