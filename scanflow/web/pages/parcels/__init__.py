"""The pages of the packing table and of what leaves it."""
