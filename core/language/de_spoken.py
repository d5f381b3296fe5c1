"""German as it is spoken and texted: Bavarian, Austrian and Swiss everyday words, small words, how questions open."""

from __future__ import annotations

from core.language.lexicon import split

DIALECT = {
    "wos": "was",
    "wo's": "was",
    "is": "ist",
    "isch": "ist",
    "des": "das",
    "dös": "das",
    "i": "ich",
    "ned": "nicht",
    "net": "nicht",
    "nit": "nicht",
    "nöd": "nicht",
    "nich": "nicht",
    "nimmer": "nicht mehr",
    "hob": "habe",
    "hab": "habe",
    "ha": "habe",
    "hast'n": "hast",
    "heit": "heute",
    "heut": "heute",
    "hüt": "heute",
    "guat": "gut",
    "guet": "gut",
    "ma": "mir",
    "mia": "mir",
    "koa": "kein",
    "koan": "keinen",
    "koane": "keine",
    "konn": "kann",
    "kannst'n": "kannst",
    "chan": "kann",
    "derf": "darf",
    "muas": "muss",
    "mues": "muss",
    "muaß": "muss",
    "söll": "soll",
    "dahoam": "daheim",
    "scho": "schon",
    "bissl": "bisschen",
    "bissel": "bisschen",
    "bisserl": "bisschen",
    "wia": "wie",
    "wea": "wer",
    "wieda": "wieder",
    "spoda": "später",
    "spoter": "später",
    "mog": "mag",
    "mecht": "möchte",
    "wui": "will",
    "geht's": "geht es",
    "gehts": "geht es",
    "gibt's": "gibt es",
    "gibts": "gibt es",
    "war's": "war es",
    "wars": "war es",
    "ist's": "ist es",
    "hab's": "habe es",
    "mach's": "mache es",
    "nix": "nichts",
    "grad": "gerade",
    "grade": "gerade",
    "ok": "okay",
    "vllt": "vielleicht",
    "wg": "wegen",
}
FILLERS = split(
    "und;aber;also;ach;oh;hm;hmm;äh;ähm;du;denn;eigentlich;mal;halt;eh;eben;bitte;überhaupt;doch;wohl;etwa;bloß;gell;"
    "nun;einfach;tja;hey;servus;hallo"
)
LEADS = split("ja;na;naja;nein;ok;okay;gut;moment;so")
OPENERS = split(
    "wer;wen;wem;was;wie;wann;wo;woher;wohin;warum;wieso;weshalb;wozu;wofür;weswegen;welche;welcher;welches;welchen;"
    "kann ich;kann man;kannst;können sie;können wir;könnte ich;könntest;könnten sie;darf ich;darf man;muss ich;"
    "muss man;soll ich;sollte ich;ist das;ist es;ist da;sind das;hast;haben sie;bist;sind sie;gibt es;weißt;wissen sie;"
    "zählt das;geht das;geht es auch;reicht das;reicht es;stimmt das;war das;war es das;bekomme ich;kriege ich;"
    "bei wem;mit wem;für wen;ab wann;bis wann;seit wann"
)
NO_OPENERS = split(
    "was für;was solls;was soll es;was gut;was mich;was schön;was ich;was nicht;was mir;wie immer;wie gehabt;"
    "wie gesagt;"
    "wie üblich;wie gestern;wie heute;wie letzte;wie letztes;wie letzten;wie beim;wie bei;wie vorher;wie sonst;"
    "wie schon;wie schön;wie schade;wie blöd;wie doof;wie toll;wie nett;wie lieb;wie ich;wie du;wie sie;"
    "wie geschrieben;"
    "wie besprochen;wie gewohnt;wie die;wie das;wie der;wo ich;wer weiß;was weiß ich;wann immer;war das ein;"
    "war das eine;war das schön;war das anstrengend;ist das schön;ist das toll"
)
STATEMENTS = split("das ist;das war;es ist;ist mir;mir ist")
