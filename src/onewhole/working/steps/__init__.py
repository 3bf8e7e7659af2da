"""Several steps: brackets, then products and quotients, then sums and differences, from the left."""
