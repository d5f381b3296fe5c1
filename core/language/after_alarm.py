"""What somebody says of an alarm afterwards: over, better, the same, worse, not meant.

Read only while an alarm stands, and only in short messages. A longer phrase hides a shorter one in it, so "no better"
is not "better". Where two are said, the graver one counts: what is better may still be there.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum
from functools import cache

from core.language import ENGLISH, LANGUAGES, Lexicon, plain
from core.language.cache import memoized
from core.language.concepts import Answer, Concept
from core.language.danger_signs import heard_of_alarm
from core.language.days import weekday_and_time
from core.language.phrases import Table, compiled, cut, read
from core.language.text import bare_words


class Later(StrEnum):
    OVER = "over"
    BETTER = "better"
    SAME = "same"
    WORSE = "worse"
    NOT_MEANT = "not_meant"


BRIEF = 9  # words; a longer message tells of something else
TERSE = 4  # words; a shorter message is about the alarm, whatever it says
RATHER_NOT = {  # a no that begins with the word for "better"
    "es": "mejor no",
    "de": "besser nicht",
    "fr": "mieux vaut pas",
    "pl": "lepiej nie",
    "ar": "احسن لا",
}
_GRAVEST_FIRST = (Later.WORSE, Later.SAME, Later.NOT_MEANT, Later.BETTER, Later.OVER)

THINGS = {  # what may be the same without a word about how somebody is: "same chair as always"
    "en": "chair scales scale clothes shoes tape cuff monitor time place floor seat stick",
    "es": "silla bascula ropa zapatos cinta brazalete hora sitio lugar suelo baston",
    "de": "stuhl waage kleidung schuhe massband manschette gerat uhrzeit ort platz boden stock",
    "fr": "chaise balance vetements chaussures ruban brassard tensiometre heure endroit sol canne",
    "pl": "krzeslo krzesle waga ubranie buty tasma mankiet godzina miejsce podloga laska",
    "ar": "كرسي الكرسي ميزان الميزان ملابس الملابس حذاء الحذاء شريط الشريط وقت الوقت مكان المكان",
}

SAID: Mapping[str, Mapping[Later, str]] = {  # phrases as in `core.language.signs`
    "en": {
        Later.BETTER: (
            "better, much better, feeling better, im fine, i am fine, im ok, i am ok, im okay, ok now, okay now, "
            "fine now, all good now, all right now, alright now, eased, settled down"
        ),
        Later.OVER: "recovered, back to normal",
        Later.SAME: (
            "same, no better, not better, not any better, not much better, not really better, no change, unchanged, "
            "not worse, no worse, still there, still here, still hurts, still hurting, still have it, still got it, "
            "still bad, not fine, not ok, not okay, im not fine, im not ok, no joke, not a joke, not joking, "
            "not kidding"
        ),
        Later.WORSE: "worse, worsening, getting bad, really bad now, even stronger",
        Later.NOT_MEANT: (
            "joke, joking, kidding, false alarm, not serious, wasnt serious, was not serious, didnt mean it, "
            "did not mean it, by mistake, my mistake, messing around, prank, just testing, only testing, was a test"
        ),
    },
    "es": {
        Later.BETTER: (
            "mejor, mucho mejor, estoy bien, ya estoy bien, ya me encuentro bien, me siento bien, "
            "todo bien ya, ya todo bien"
        ),
        Later.OVER: "recuperad*, ya se me paso",
        Later.SAME: (
            "igual, lo mismo, sigo igual, sin cambios, no mejor, nada mejor, no estoy mejor, no mejora, "
            "no ha mejorado, no estoy bien, no me siento bien, no peor, no ha empeorado, sigue ahi, todavia me duele, "
            "aun me duele, me sigue doliendo, sigo mal, no es broma, no era broma, no bromeo"
        ),
        Later.WORSE: "peor, va a peor, empeor*, cada vez peor",
        Later.NOT_MEANT: (
            "broma, de broma, bromeaba, era coña, no iba en serio, no lo decia en serio, falsa alarma, sin querer, "
            "me equivoque, por error, fue un error, solo probaba, era una prueba"
        ),
    },
    "de": {
        Later.BETTER: (
            "besser, viel besser, es geht wieder, geht wieder, mir gehts gut, mir geht es gut, mir gehts wieder gut, "
            "wieder gut, alles gut jetzt, jetzt alles gut"
        ),
        Later.OVER: "wieder fit, erholt",
        Later.SAME: (
            "gleich, unverandert, immer noch gleich, noch gleich, wie gestern, dasselbe, nicht besser, "
            "auch nicht besser, kein bisschen besser, kaum besser, nicht wirklich besser, nicht gut, "
            "nicht schlechter, nicht schlimmer, tut noch weh, tut immer noch weh, ist noch da, immer noch da, "
            "kein witz, kein scherz, kein spass"
        ),
        Later.WORSE: "schlechter, schlimmer, verschlimmert, verschlechtert, schlechter geworden",
        Later.NOT_MEANT: (
            "witz, scherz, spass, war nur spass, nur ein witz, blodsinn, quatsch, nicht ernst gemeint, "
            "nicht ernst, fehlalarm, falscher alarm, aus versehen, versehen, vertippt, nur ein test"
        ),
    },
    "fr": {
        Later.BETTER: ("mieux, ca va mieux, beaucoup mieux, je vais bien, ca va bien, ca va maintenant, tout va bien"),
        Later.OVER: "c'est passe, retabli*",
        Later.SAME: (
            "pareil, toujours pareil, la meme chose, inchange*, pas mieux, ca va pas mieux, ne va pas mieux, "
            "ne vais pas mieux, vais pas mieux, guere mieux, pas vraiment mieux, pas de changement, pas pire, "
            "je vais pas bien, je ne vais pas bien, ca va pas, toujours mal, encore mal, toujours la, "
            "pas une blague, ne blague pas, rigole pas, pas pour rire"
        ),
        Later.WORSE: "pire, empire, aggrav*, de pire en pire, plus mal qu'hier, pis",
        Later.NOT_MEANT: (
            "blague, blaguais, pour rire, rigolais, plaisantais, plaisanterie, pas serieux, fausse alerte, "
            "par erreur, une erreur, pas expres, juste un test"
        ),
    },
    "pl": {
        Later.BETTER: ("lepiej, duzo lepiej, juz dobrze, juz w porzadku, czuje sie dobrze, wszystko dobrze, juz ok"),
        Later.OVER: "przeszlo mi, minelo mi, wyzdrowial*",
        Later.SAME: (
            "tak samo, bez zmian, to samo, nadal tak samo, nie lepiej, wcale nie lepiej, nie jest lepiej, "
            "niewiele lepiej, nie najlepiej, nie gorzej, nie jest gorzej, nadal boli, dalej boli, ciagle boli, "
            "nie czuje sie dobrze, to nie zart, nie zart, nie zartuje"
        ),
        Later.WORSE: "gorzej, pogorszyl*, coraz gorzej, pogarsza",
        Later.NOT_MEANT: (
            "zart, zartem, zartowal*, dla zartu, jaja, nie na serio, nie na powaznie, falszywy alarm, przez pomylke, "
            "pomylka, pomylil*, tylko test"
        ),
    },
    "ar": {
        Later.BETTER: (
            "احسن, افضل, تحسنت, تحسن, انا بخير, انا كويس, انا كويسه, انا منيح, انا منيحه, انا زين, انا زينه, "
            "صرت بخير, بقيت كويس, بقيت كويسه, راني مليح, راني لاباس, لاباس"
        ),
        Later.OVER: "تعافيت",
        Later.SAME: (
            "نفس الشيء, نفس الشي, زي ما هو, زي ما انا, متل ما هو, مثل ما هو, كما هو, بدون تغيير, ما تغير, "
            "مش احسن, مو احسن, مش افضل, ليس افضل, ليست افضل, لست افضل, ما تحسنت, ما تحسن, لم اتحسن, لم تتحسن, "
            "لسه بيوجع, لسه تعبان, لسه تعبانه, لا يزال, ما زال, باقي يوجعني, مش كويس, مش كويسه, لست بخير, "
            "مش بهزر, لا امزح, ما بمزح, مو مزح, ليست مزحه"
        ),
        Later.WORSE: "اسوا, اسوء, ساءت, اتدهور, تدهورت, زاد الالم, ازداد سوءا, العن",
        Later.NOT_MEANT: (
            "مزح, مزحه, امزح, بمزح, كنت امزح, بهزر, كنت بهزر, هزار, نكته, كنضحك, مش جد, مو جد, انذار كاذب, "
            "بالغلط, بالخطا, غلطت, مجرد تجربه"
        ),
    },
}


@cache
def _table(words: Lexicon) -> Table[Later | Concept]:
    table: dict[Later | Concept, str] = {meaning: said for meaning, said in SAID[words.code].items()}  # noqa: C416
    table[Concept.FILLER] = words.concepts.get(Concept.FILLER, "")
    return compiled(table, words, Concept.FILLER)


@memoized
def said_of_alarm(text: str, words: Lexicon) -> Later | None:
    """What a message says of the alarm that stands; None if it says nothing of it.

    >>> said_of_alarm("no better yet", ENGLISH), said_of_alarm("it was only a joke", ENGLISH)
    (<Later.SAME: 'same'>, <Later.NOT_MEANT: 'not_meant'>)
    """
    folded = plain(text)
    if "?" in folded or any(c.isdecimal() for c in folded) or len(folded.split()) > BRIEF:
        return None
    rather_not = RATHER_NOT.get(words.code)
    if rather_not and " ".join(bare_words(folded)).endswith(rather_not):
        return None
    best, score = None, 0
    for lexicon in dict.fromkeys((words, ENGLISH, *LANGUAGES.values())):
        found, covered = _heard(folded, lexicon, lexicon in (words, ENGLISH))
        if covered > score:
            best, score = found, covered
    if best is Later.SAME and _of_a_thing(folded, words):
        return None
    if best is Later.BETTER and weekday_and_time(text, words) != (None, None):
        return None  # "better on Thursday", "mejor a las nueve"
    if best is not None:
        return best
    answer, covered = heard_of_alarm(text, words)
    if len(folded.split()) > TERSE and 2 * covered < len(
        folded.split()
    ):  # "forgot to say I had my hip done last week" is about something else
        return None
    match answer:
        case Answer.OVER:
            return Later.OVER
        case Answer.NOT_A_SIGN:
            return Later.NOT_MEANT
        case _:
            return None


def _of_a_thing(folded: str, words: Lexicon) -> bool:
    things = {plain(thing) for code in {words.code, ENGLISH.code} for thing in THINGS[code].split()}
    return not things.isdisjoint(bare_words(folded))


def _heard(folded: str, words: Lexicon, forgiving: bool) -> tuple[Later | None, int]:
    """What one language hears, and how many words speak for it."""
    said = read(cut(folded, words.elision), _table(words), forgiving)
    every = [(k, s) for i in range(len(said.words)) for k, s in said.spans(i).items() if isinstance(k, Later)]
    spans = [
        (key, a)
        for key, a in every
        if not any(b[0] <= a[0] and a[1] <= b[1] and b[1] - b[0] > a[1] - a[0] for _, b in every)
    ]
    keys = {key for key, _ in spans}
    covered = len({i for _, (a, b) in spans for i in range(a, b)})
    return next((key for key in _GRAVEST_FIRST if key in keys), None), covered
