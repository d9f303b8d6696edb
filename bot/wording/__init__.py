"""Every sentence that a nurse sees or hears, and how long it is as a text message.

Pure: the moment, the unit's zone and the engine's values are arguments. Called by dialogue, interchange,
notices and the command line.
"""
