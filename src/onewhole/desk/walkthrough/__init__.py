"""A page worked aloud: the board, its film, what was chosen and what was recorded."""
