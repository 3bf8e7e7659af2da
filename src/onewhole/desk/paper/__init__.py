"""Papers that come back as pictures: read, looked at where the program is not sure, and kept as answers."""
