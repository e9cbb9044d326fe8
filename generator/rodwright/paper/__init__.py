"""Paper for the bench: drawings, rods, part sheets, steps, lists, labels, and the job book of all.

Pages are set by Typst from templates and plain data; whatever a maker wrote is data and never
markup.
"""
