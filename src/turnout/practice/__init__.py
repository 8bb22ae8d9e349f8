"""The language: ground, people, rule forms, steps; reading with line numbers, printing, the when/then table."""
