"""The teacher's acts, as functions that every door calls: one act a file."""
