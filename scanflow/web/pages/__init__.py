"""Pages for a person at a phone or a desktop, one blueprint per noun."""
