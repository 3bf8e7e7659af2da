"""What stands in the memory of the tests."""

import gc


def every_object() -> list[object]:
    """Return every object that the collector of garbage knows, those too that it passes over during a run."""
    gc.unfreeze()
    gc.collect()
    found = gc.get_objects()
    gc.freeze()
    return found
