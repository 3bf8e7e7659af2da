"""What may be asked: problems with their labels, what they need, and spaces that can be listed whole."""
