"""Fault injection: the bot is killed, disconnected and misinformed repeatedly; afterwards losses are counted.

process.py     forks bots that kill themselves at a chosen point, and reports how each ended
morning.py     a Monday morning: clients are all asked at once, and type their answers
findings.py    invariants afterwards, and permitted repeats with their causes
python -m tests.faults --minutes 30     a longer run; prints its table
"""
