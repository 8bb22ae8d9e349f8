"""Where everything stands, and what is laid, lifted or left between parts."""
