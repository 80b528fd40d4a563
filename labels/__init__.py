"""What is printed: codes, cards, sheets. It knows nothing of scanflow."""
