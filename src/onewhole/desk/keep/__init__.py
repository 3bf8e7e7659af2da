"""The file of a class: backed up, restored, erased, and the password before it."""
