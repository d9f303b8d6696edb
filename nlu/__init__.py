"""Read what a nurse typed or a recogniser wrote: `parse` and its result types are the whole public face."""
