from onewhole.number.impossible import Impossible


def test_it_keeps_what_was_written() -> None:
    """3 3/0 and 3/0 are two things that a child may write."""
    assert Impossible(3, 3) != Impossible(None, 3)
    assert not hasattr(Impossible(3, 3), "value")
