"""Technical drawings: views, dimensions that find room for themselves, sheets and title blocks."""
