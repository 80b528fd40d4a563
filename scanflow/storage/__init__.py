"""The one door to the database."""
