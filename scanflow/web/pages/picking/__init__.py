"""The pages of a round and of what is put back."""
