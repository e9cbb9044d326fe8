"""Reading a spec file: text to data to models, and what is wrong in a maker's words."""
