"""Data only: the words of the ward, by what they say."""
