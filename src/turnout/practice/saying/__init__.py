"""How loosely a sentence may be written: everyday phrasings, each declared once, read into the forms of the language."""
