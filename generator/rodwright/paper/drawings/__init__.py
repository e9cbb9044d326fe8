"""The drawings that a maker or a client approves: elevations, plan, sections, details, opening."""
