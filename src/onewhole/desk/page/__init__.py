"""A typed page: worked, looked over, composed, kept, printed, checked again."""
