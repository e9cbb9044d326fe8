"""What a unit costs and what is asked for it: counted, priced, told to client and maker."""
