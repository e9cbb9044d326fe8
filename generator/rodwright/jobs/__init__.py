"""The jobs of the command line, one module a verb.

``check``, ``parts`` and ``schema`` are one call of what lies below, and have none.
"""
