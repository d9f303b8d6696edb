"""What a query's reply says, one module a topic. Pure; called by the dialogue's queries.

Each reply's first line answers the question. Volumes name their real ends, averages are named as
averages, and nothing tells the nurse what to do.
"""
