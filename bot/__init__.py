"""Penline: the bot. What a nurse reads on a chest-drain canister goes in, the volume to chart comes back."""
