"""The answers of a night: typed in, read, judged."""
