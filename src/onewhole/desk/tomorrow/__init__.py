"""Tomorrow morning: whom to see first, who works with whom, talks and practice."""
