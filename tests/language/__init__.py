"""Languages: complete, whole sentences, nothing left in English."""
