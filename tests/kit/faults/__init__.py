"""Acts that keep a class's work, done while a call of the system fails, and what is found afterwards."""
