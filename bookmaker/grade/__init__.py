"""The room `grade`."""
