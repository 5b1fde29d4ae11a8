"""The display items: everything a page can hold, as frozen values in points."""
