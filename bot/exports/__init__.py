"""Exports: readings as CSV or FHIR, slots as a calendar, and a data subject's own copy of their data.

Each module converts plain values to one format; none opens a file or decides who may have it.
(`bot.operator.commands.import_export_erase` goes through the caseload; the person themselves asks for `my_data`.)
"""
