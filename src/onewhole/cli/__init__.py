"""The terminal door: one verb per act of the desk."""
