"""Store: a class is kept in one file on the teacher's own disk; what is told as kept is kept."""
