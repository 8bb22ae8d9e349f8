"""How loosely a sentence may be written: everyday phrasings, each declared once."""
