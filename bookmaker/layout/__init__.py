"""The room `layout`."""
