"""What orders ask for, and which stay each of their lines gets."""
