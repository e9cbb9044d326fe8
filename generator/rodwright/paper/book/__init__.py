"""The job book: cover, cautions, what to buy, cutting plan, strength; all sections as one PDF."""
