"""Many classes together: what one class gives, and what a district finds."""
