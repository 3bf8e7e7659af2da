"""Listening: what may be said at a part of the film, and what was said there."""
