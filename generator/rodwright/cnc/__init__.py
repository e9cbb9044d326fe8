"""Files for a CNC shop: drawings of parts that a machine reads, sheets as nested, and the pack."""
