"""Papers that come back: invented pupils write on our pages, and simulated pictures of them are read."""
