"""What people say, by language: data only. `Words` is one language's lexicon.

The understanding of a typed answer (core.measures.parsing), intents and red flags read these tables; the words the
bot itself says live in the catalogues, not here.
"""
