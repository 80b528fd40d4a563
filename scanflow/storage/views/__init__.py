"""Rows for lists and pages: read-only, without domain objects."""
