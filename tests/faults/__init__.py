"""The bot killed, cut off and lied to, again and again; afterwards it is counted whether anything was lost.

process.py     forks bots that kill themselves at a chosen point, and says how each ended
morning.py     a Monday morning: clients who are all asked at once, and type their answers
findings.py    what must hold afterwards, and what may have been said twice, with its cause
python -m tests.faults --minutes 30     a longer run; prints its table
"""
