"""A working given time: what is said, what is written on the board, and when."""
