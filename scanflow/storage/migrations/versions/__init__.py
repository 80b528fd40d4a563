"""One module for each revision. None of them is edited once it has landed."""
