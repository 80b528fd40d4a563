"""A live camera of this machine, and what its looks come to."""
