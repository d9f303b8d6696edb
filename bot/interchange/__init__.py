"""Ledgers as other systems read them: JSON lines (lossless), CSV (a spreadsheet), FHIR R4.

Pure functions over entries and ledgers. Nothing is sent anywhere here; the command line writes files.
"""
