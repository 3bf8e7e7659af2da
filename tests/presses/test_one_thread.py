import pytest

from onewhole.presses.one_thread import _threads, one_thread


def test_one_thread_within_and_as_many_as_before_after() -> None:
    """Each library works on one thread within, and as before after it, also where something fails."""
    asked = [ask for ask, _ in _threads()]
    before = [ask() for ask in asked]
    with one_thread():
        assert [ask() for ask in asked] == [1] * len(asked)
        with one_thread():
            assert [ask() for ask in asked] == [1] * len(asked)
        assert [ask() for ask in asked] == [1] * len(asked)
    assert [ask() for ask in asked] == before
    with pytest.raises(ValueError, match="kite"), one_thread():
        raise ValueError("kite")
    assert [ask() for ask in asked] == before
