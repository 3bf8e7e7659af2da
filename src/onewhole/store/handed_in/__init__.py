"""A file handed in: read by a limited process, parsed into typed records, written into a fresh file."""
