"""Plans for boards and bought lengths: what is ripped and cut to length."""
