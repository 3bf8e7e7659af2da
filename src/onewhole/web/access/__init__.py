"""Access: who may open the pages, from where, and how one signs in."""
