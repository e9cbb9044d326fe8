"""Typer commands."""

import os

# Read when numpy and pydantic are first loaded.  Our matrices are small: starting threads for
# them takes longer than they save; and we use no plug-ins, so none need be looked for.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "__all__")
