"""Paper: pictures of written pages, taken apart into the places for answers and read."""
