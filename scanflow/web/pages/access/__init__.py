"""The pages of who comes in."""
