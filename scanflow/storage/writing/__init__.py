"""Who writes next, and what it means when a write fails."""
