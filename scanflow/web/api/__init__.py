"""The JSON API, one blueprint per noun."""
