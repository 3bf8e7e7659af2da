"""Quantities made visible: scenes in exact coordinates, and which picture suits which working."""
