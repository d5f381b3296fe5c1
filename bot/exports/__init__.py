"""What leaves: readings as a spreadsheet or as FHIR resources, slots as a calendar, and all we hold of a person.

Each module makes one form out of plain values; none opens a file or decides who may have it (that is for
`bot.operator.commands.import_export_erase`
comes through the caseload, `my_data` is asked for by the person themselves).
"""
