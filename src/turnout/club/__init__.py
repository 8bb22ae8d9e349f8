"""Squad, tonight, kit and spaces: private data. Names stop here, ids and labels go on."""
