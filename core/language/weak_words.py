"""Words that make a sign weaker in every language: what follows them is behind somebody, or is a sigh.

BYGONE stands right before the name of a condition and says that it is history ("after my stroke", "in hospital with a
stroke"): asked about, at enrolment an old illness, never "call now". RESIGNED says of nothing in particular that it is
not worth while ("why bother"): by itself it is asked about kindly; beside a wish to die or a plan it is what it says.
Data a clinician can read and correct, spelled as `core.language.concepts` describes.
"""

from __future__ import annotations

from core.language.concepts import Concept as C

WEAK_WORDS: dict[str, dict[C, str]] = {
    "en": {
        C.BYGONE: (
            "in hospital with, in hospital for, in hospital after, hospital because of, hospitalised with, "
            "hospitalised for, hospitalised after, hospitalized with, hospitalized for, hospitalized after, "
            "admitted with, admitted for, admitted after, treated for, discharged after, rehab after, rehab for, "
            "recovering from, recovered from, recovery from, survived, after my, after a, after the, after having, "
            "after, after that, after those, after his, since my, since the, since having, since i had, since i had "
            "my, ever since my, following my, following a, due to my, because of my, got over my, got over a, on "
            "account of my, from my, from the, before my, when i had my, when i had the, time of my, my first, my "
            "last, my old, my previous, anniversary of my, post"
        ),
        C.RESIGNED: (
            "why bother, why do i bother, why do i even bother, why even bother, why did i bother, whats the use, "
            "what is the use, what is the point"
        ),
    },
    "es": {
        C.BYGONE: (
            "en el hospital por, en el hospital con, hospital por, hospital con, hospitalizado por, hospitalizada "
            "por, ingresado por, ingresada por, ingresado con, ingresada con, internado por, internada por, tratado "
            "por, tratada por, operado de, operada de, recuperado de, recuperada de, recuperándome de, "
            "recuperándome del, recuperado del, recuperada del, después de mi, después de un, después del, después "
            "de tener un, tras mi, tras un, tras el, luego de mi, luego de un, a raíz de mi, a raíz del, a raíz de "
            "un, desde mi, desde el, desde que tuve el, desde que tuve un, desde que me dio el, desde que me dio "
            "un, por culpa de mi, sobreviví a un, superé un, salí de un, salí del, cuando tuve el, cuando tuve un, "
            "cuando me dio el, cuando me dio un, secuelas de un, secuelas del, secuela de un, mi primer, mi último"
        ),
        C.RESIGNED: (
            "para qué molestarse, para qué me molesto, para qué esforzarse, para qué me esfuerzo, total para qué, "
            "ya para qué, para qué tanto"
        ),
    },
    "de": {
        C.BYGONE: (
            "im krankenhaus wegen, im krankenhaus mit, im spital wegen, im spital mit, in der klinik wegen, in der "
            "klinik mit, war wegen, war mit, lag wegen, lag mit, lag nach, reha wegen, reha nach, kur nach, kur "
            "wegen, behandelt wegen, eingeliefert wegen, eingeliefert mit, entlassen nach, erholt von, erholung "
            "von, erholung nach, überlebt, nach meinem, nach meiner, nach dem, nach der, nach einem, nach einer, "
            "nach, seit meinem, seit meiner, seit dem, seit der, seit einem, seit, infolge, aufgrund meines, wegen "
            "meinem, wegen meines, durch meinen, durch den, von meinem, vom, beim letzten, beim ersten, vor meinem, "
            "vor dem, folgen vom, folgen von, folge von, mein erster, mein letzter, mein alter, mein damaliger, "
            "post"
        ),
        C.RESIGNED: ("wozu das alles, wofür das alles, bringt doch nichts, bringts eh nicht, bringt eh nix"),
    },
    "fr": {
        C.BYGONE: (
            "à l'hôpital pour, à l'hôpital avec, à l'hôpital après, à l'hôpital à cause de, hospitalisé pour, "
            "hospitalisée pour, hospitalisé après, hospitalisée après, hospitalisé suite à, hospitalisée suite à, "
            "hospitalisé à cause d'un, hospitalisée à cause d'un, opéré après, opérée après, soigné pour, soignée "
            "pour, traité pour, traitée pour, remis de, remise de, remis d'un, remise d'un, rééducation après, "
            "rééducation pour, rééducation suite à, après mon, après un, après l', après ma, après une, après la, "
            "après le, après les, après avoir eu, suite à mon, suite à un, suite à l', suite à ma, suite à une, à "
            "la suite d'un, à la suite de mon, depuis mon, depuis l', depuis ma, depuis un, depuis que j'ai eu, "
            "depuis que j'ai fait, à cause de mon, survécu à un, survécu à, séquelles de mon, séquelles d'un, "
            "séquelle d'un, séquelles de l', lors de mon, avant mon, mon premier, mon dernier, mon ancien, post, "
            "quand j'ai eu mon, quand j'ai fait mon"
        ),
        C.RESIGNED: ("à quoi bon, a quoi bon, à quoi ça sert, ça ne sert à rien"),
    },
    "pl": {
        C.BYGONE: (
            "w szpitalu z, w szpitalu po, w szpitalu przez, w szpitalu z powodu, leżałem z, leżałam z, leżałem po, "
            "leżałam po, hospitalizowany z powodu, hospitalizowana z powodu, leczony po, leczona po, leczyłem się "
            "po, leczyłam się po, rehabilitacja po, rehabilitacji po, w sanatorium po, przeżyłem, przeżyłam, "
            "przebyty, przebyłem, przebyłam, przeszedłem, przeszłam, po moim, po, od mojego, od czasu, od, przez "
            "mój, kiedy miałem, kiedy miałam, gdy miałem, gdy miałam, mój pierwszy, mój ostatni, skutki, w wyniku"
        ),
        C.RESIGNED: ("po co się starać, po co próbować, po co się męczyć"),
    },
    "ar": {
        C.BYGONE: (
            "في المستشفى بسبب, بالمستشفى بسبب, في المستشفى بعد, بالمستشفى بعد, في المشفى بسبب, بالمشفى بسبب, كنت في "
            "المستشفى, كنت بالمستشفى, دخلت المستشفى, بعد, من بعد, عقب, منذ, من وقت, من يوم, من ساعة, شفيت من, "
            "تعافيت من, بتعافى من, اتعافيت من, نجوت من, على اثر, إثر, تعالجت من, اتعالجت من"
        ),
        C.RESIGNED: (
            "شو الفايدة, شنو الفايدة, ايه الفايدة, ايش الفايدة, وش الفايدة, ليش اتعب حالي, ليه اتعب نفسي, ليش أتعب نفسي"
        ),
    },
}
