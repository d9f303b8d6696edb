"""Ledgers as FHIR R4 (4.0.1): a Bundle of Device, Observation and DetectedIssue. No invented codes."""
