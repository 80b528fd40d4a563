"""What a count does: looks, findings, the report."""
