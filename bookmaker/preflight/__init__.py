"""The room `preflight`."""
