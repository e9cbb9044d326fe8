"""The jobs of the command line, one module a verb."""
