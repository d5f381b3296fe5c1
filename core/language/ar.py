"""Arabic, standard and as people type it in chat. "And" is written with its word; the article may be too."""

from __future__ import annotations

from decimal import Decimal

from core.language.ar_amiss import AMISS
from core.language.ar_everyday import EVERYDAY
from core.language.ar_questions import QUESTIONS
from core.language.ar_requests import JOINTS, REQUESTS
from core.language.ar_signs import ANSWERS, CONCEPTS
from core.language.ar_talk import CALENDAR, DESTROYS, NO_INTENTS, SEXES, WISHES
from core.language.lexicon import Lexicon, UnitPart, WordRole, split
from core.language.literal_words import LITERAL_WORDS
from core.language.weak_words import WEAK_WORDS
from core.quantity import Unit

OPENERS = split("ما هو;ما هي;ما معنى;ماذا;من هو;من انت;متى;اين;وين;لماذا;ليش;ليه;كيف;كم;هل;شو;ايه;ممكن ان;هل يمكن")
NO_OPENERS = split("كيف حالك")

D = Decimal

_ONES: dict[int, tuple[str, ...]] = {
    1: split("واحد;واحدة;وحدة;أحد;إحدى"),
    2: split("اثنان;اثنين;اثنتان;اثنتين;إثنان;إثنين;تنين;اتنين;ثنين;تنتين;ثنتين;جوج;زوج"),
    3: split("ثلاثة;تلاتة;ثلاث;تلات"),
    4: split("أربعة;أربع"),
    5: split("خمسة;خمس"),
    6: split("ستة;ست"),
    7: split("سبعة;سبع"),
    8: split("ثمانية;تمانية;ثماني;ثمان;تمن;تمنية;ثمنية"),
    9: split("تسعة;تسع;تسعود"),
}
_TEENS: dict[int, tuple[str, ...]] = {
    10: split("عشرة;عشر"),
    11: split("أحد عشر;إحدى عشرة;حداشر;احداشر;حداش;حداعش;احدعش;حدعش"),
    12: split("اثنا عشر;اثني عشر;اثنتا عشرة;اثنتي عشرة;اتناشر;اطنعش;اطناشر;تناشر;طناش;طنعش;اثنعش;اثناعش;ثنعش"),
    13: split("ثلاثة عشر;ثلاث عشرة;تلتاشر;تلاتاشر;تلطاشر;تلطعش;تلتعش;تلطاش;ثلطعش;ثلاثطعش;ثلتعش"),
    14: split("أربعة عشر;أربع عشرة;اربعتاشر;أربعطاشر;اربعتعش;اربعطعش;اربعطاش"),
    15: split("خمسة عشر;خمس عشرة;خمستاشر;خمسطاشر;خمستعش;خمسطعش;خمسطاش"),
    16: split("ستة عشر;ست عشرة;ستاشر;سطاشر;ستعش;سطعش;سطاش"),
    17: split("سبعة عشر;سبع عشرة;سبعتاشر;سبعطاشر;سبعتعش;سبعطعش;سبعطاش"),
    18: split("ثمانية عشر;ثماني عشرة;تمنتاشر;تمنطاشر;تمنتعش;تمنطعش;ثمنتعش;ثمنطعش;تمنطاش"),
    19: split("تسعة عشر;تسع عشرة;تسعتاشر;تسعطاشر;تسعتعش;تسعطعش;تسعطاش"),
}
_TENS: dict[int, tuple[str, ...]] = {
    20: split("عشرون;عشرين"),
    30: split("ثلاثون;ثلاثين;تلاتين"),
    40: split("أربعون;أربعين"),
    50: split("خمسون;خمسين"),
    60: split("ستون;ستين"),
    70: split("سبعون;سبعين"),
    80: split("ثمانون;ثمانين;تمانين"),
    90: split("تسعون;تسعين"),
}
_HUNDREDS: dict[int, tuple[str, ...]] = {
    100: split("مئة;مائة;مية;ميه"),
    200: split("مئتان;مئتين;مائتان;مائتين;ميتين"),
    300: split("ثلاثمئة;ثلاثمائة;تلتمية;تلاتمية"),
    400: split("أربعمئة;أربعمائة;ربعمية"),
    500: split("خمسمئة;خمسمائة;خمسمية"),
    600: split("ستمئة;ستمائة;ستمية"),
    700: split("سبعمئة;سبعمائة;سبعمية"),
}


def _numbers() -> dict[str, Decimal]:
    """0 to 799; the unit stands before the ten, "and" is written with its word or apart.

    Compounds use only the commonest spellings; more would slow down startup.
    """
    small: dict[str, int] = {}
    for table in (_ONES, _TEENS, _TENS):
        small |= {word: n for n, words in table.items() for word in words}
    common = {word: n for table in (_ONES, _TEENS, _TENS) for n, words in table.items() for word in words[:2]}
    for ten, tens in _TENS.items():
        for one, ones in _ONES.items():
            for word in ones[:4] if one > 2 else ones:
                for t in tens:
                    small[f"{word} و{t}"] = small[f"{word} و {t}"] = ten + one
            for word in ones[:2]:
                common |= {f"{word} و{t}": ten + one for t in tens[:2]}
    found = {**small, "صفر": 0, "مرتين": 2, "مرتان": 2}
    for hundred, words in _HUNDREDS.items():
        for h in words if hundred == 100 else words[:2]:
            found[h] = hundred
            found |= {f"{h} و{word}": hundred + n for word, n in common.items()}
    return {word: D(n) for word, n in found.items()}


ARABIC = Lexicon(
    code="ar",
    own_name="العربية",
    right_to_left=True,
    decimal=".",
    numbers=_numbers(),
    weak=("واحد", "واحدة", "أحد", "إحدى"),
    prefixes=("و", "وال", "ال", "بال", "ب", "لل", "ل", "ف", "وب", "ول"),
    units={
        Unit.KILOGRAM: split("كجم;كغ;كغم;كلغ;كيلو;كيلوغرام;كيلوجرام;كيلوغرامات;كيلوجرامات;كيلوات;ك;كج"),
        Unit.POUND: split("باوند;باوندات;باوندا;ليبرة"),
        Unit.STONE: split("ستون;ستونز"),
        Unit.CENTIMETRE: split("سم;سنتيمتر;سنتمتر;سنتي;سنتيمترات;سانتي;سنتيمترا"),
        Unit.METRE: split("م;متر;أمتار;مترا"),
        Unit.INCH: split("بوصة;بوصات;إنش;انشات"),
        Unit.FOOT: split("قدم;أقدام;قدما"),
        Unit.BEATS_PER_MINUTE: split(
            "نبضة;نبضات;دقة;دقات;نبضة في الدقيقة;نبضات في الدقيقة;نبضة بالدقيقة;في الدقيقة;بالدقيقة;ضربة;"
            "ضربات;ضربة في الدقيقة;دقة في الدقيقة;ن في الدقيقة"
        ),
        Unit.MILLIMETRE_OF_MERCURY: split("ملم زئبق;مم زئبق;مليمتر زئبق;ملليمتر زئبق"),
        Unit.SECOND: split("ث;ثانية;ثواني;ثوان;ثانيه"),
        Unit.MINUTE: split("د;دقيقة;دقائق;دقايق;دقيقه"),
        Unit.METRE_PER_SECOND: split("متر في الثانية"),
        Unit.REPETITION: split("تكرار;تكرارات;وقفة;وقفات;عدة;عدات"),
        Unit.STEP: split("خطوة;خطوات"),
        Unit.POINT: split("نقاط;درجات;درجة"),
        Unit.DAY: split("يوم;أيام;يوما"),
        Unit.SESSION: split("جلسة;جلسات;حصة;حصص;تمرين;تمارين;تمرينات"),
    },
    parts={
        UnitPart.GRAM: split("غ;غرام;جرام;غم;جم;غراما"),
        UnitPart.MILLIMETRE: split("ملم;مم;مليمتر"),
        UnitPart.HOUR: split("ساعة;ساعات;س;ساعه"),
    },
    local_pound={"رطل": D("0.45359237"), "أرطال": D("0.45359237"), "رطلا": D("0.45359237")},
    amounts={
        "ساعة": ("1", UnitPart.HOUR),
        "ساعتين": ("2", UnitPart.HOUR),
        "ساعتان": ("2", UnitPart.HOUR),
        "دقيقتين": ("2", Unit.MINUTE),
        "دقيقتان": ("2", Unit.MINUTE),
        "ثانيتين": ("2", Unit.SECOND),
        "يومين": ("2", Unit.DAY),
        "يومان": ("2", Unit.DAY),
        "جلستين": ("2", Unit.SESSION),
        "حصتين": ("2", Unit.SESSION),
    },
    roles={
        WordRole.LEAD: split(
            "يزن;وزنه;وزنها;عنده;عندها;عندو;توني وزنت نفسي;وزنت نفسي;وزنت حالي;وزنت روحي;لسه وازن نفسي;"
            "لسا وزنت حالي;توي وزنت نفسي;وزني صار;"
            "صار وزني;وصل وزني;قدرت اعمل;قدرت اسوي;قدرت;عديت;عديتها;يعني;"
            "الميزان;طلع;طلعت;يقول;عندي;سويت;عملت;درت;قست;قستها;طلعلي;لقيت;هالمرة;بس;فقط;مشيت;العالي;الواطي;فوق;تحت;"
            "الساعة كاتبة;ساعتي;كاتبة;كاتبه;الجهاز;جهاز الضغط;القياس;المتر;الشريط;عطاني;أعطاني;يعطيني;طلع معي;"
            "معي;بقول;أقول;قمت;وطلع;وطلعت;مش بطال;الحين;دلوقتي;هلق;توا;ع الريق;على الريق;وقت الراحة;في الراحة;"
            "الكبير;الصغير;قست الضغط;تقريبا معي;جبت لكم"
        ),
        WordRole.AND: split("و;&;ثم"),
        WordRole.POINT: split("فاصلة;فاصله;نقطة;فاصل"),
        WordRole.HALF: split("نصف;ونصف;ونص;نص;والنصف;و نصف;و نص"),
        WordRole.QUARTER: split("ربع;وربع;والربع;و ربع"),
        WordRole.THREE_QUARTERS: split("ثلاثة أرباع;وثلاثة أرباع;تلات ارباع;و ثلاثة أرباع"),
        WordRole.THIRD: split("ثلث;وثلث;تلت;وتلت"),
        WordRole.LESS_A_QUARTER: split("إلا ربع;الا ربع;إلا ربعا"),
        WordRole.LESS_A_THIRD: split("إلا ثلث;الا ثلث;إلا تلت;الا تلت;إلا ثلثا"),
        WordRole.WITHIN: split("في;خلال;كل;ب;بـ;لمدة;في خلال;طوال"),
        WordRole.OVER: split("على;/;فوق"),
        WordRole.TIMES: split("في;x;ضرب;مرات;مرة;*;مرتين;مرتان;مرات مشي;كل مرة;مرات كل مرة"),
        WordRole.OUT_OF: split("من;على;/;من أصل"),
        WordRole.RANGE: split("إلى;أو;-;حتى;الى;لغاية;~;أو ربما"),
        WordRole.HEDGE: split(
            "حوالي;تقريبا;نحو;قرابة;ما يقارب;يمكن;ربما;أظن;أعتقد;في حدود;حدود;بحدود;~;حوالى;أظنها;"
            "تقريباً;يعني حوالي;زهاء"
        ),
        WordRole.AND_SOME: split("وشي;وشوي;وكسور;ونيف;وحاجة;وحاجه;وشوية"),
        WordRole.AFTER: split("بعد;بعد ما;بعدما;وانا;لما;لمن;فاش;من بعد;اثناء;خلال"),
        WordRole.STIRRING: split("قهوة;القهوة;القهوه;قهوه;سيجارة;سيجاره;تدخين;التدخين;شاي;الشاي"),
        WordRole.BOUND: split(
            "أكثر من;أقل من;فوق ال;تحت ال;على الأقل;بحد أقصى;بين;ما بين;اكتر من;>;<;لا يقل عن;لا يزيد عن"
        ),
        WordRole.CHANGE: split("نزلت;خسرت;زدت;زاد;نقص;أكثر;أقل;أحسن;أسوأ;زيادة;نقصت;نزل;فقدت;+;ازددت;نزلت من وزني"),
        WordRole.NOT: split("ليس;مش;لا;مو;ما;ليست;بدون;وليس;ليسوا"),
        WordRole.NOTHING: split(
            "لا شيء;لا شي;ولا شي;ولا شيء;ولا مرة;صفر;ما سويت;ولا واحدة;أبدا;لا;ما في;ولا حاجة;لم أفعل;"
            "ولا دقيقة;ولا يوم;لم أتمرن;ما تمرنت;ولا جلسة"
        ),
        WordRole.CLOCK: split("الساعة;صباحا;مساء;منذ;ص;ليلا;عند الساعة;على الساعة"),
        WordRole.LABEL: split("المحاولة;رقم;سؤال;محاولة;الأسبوع;المرة"),
        WordRole.EACH_DAY: split("في اليوم;يوميا;كل يوم;باليوم;لكل يوم;في كل مرة;لكل جلسة"),
        WordRole.EVERY_DAY: split("كل يوم;يوميا;طول الأسبوع;كل الأيام;طوال الأسبوع;كل ايام الاسبوع"),
        WordRole.DAYS: split("أيام;يوم;مرات;مرة;جلسات;مشيات;حصص;تمارين"),
        WordRole.FOREIGN: split(
            "بالمئة;في المئة;بالمية;سنة;سنوات;أسبوع;أسابيع;شهر;أشهر;كم;كيلومتر;سعرة;سعرات;لتر;عاما;عام;ميل;"
            "سؤال;سؤالين;أسئلة;اصحاب;أصدقاء;أولاد;اولاد;أحفاد;كراتين;كرتونة;أكياس;كيسين;بطاريات;جداد;كراسي;ناس;"
            "أشخاص;دينار;جنيه;ريال;درهم"
        ),
        WordRole.ARMS: split(
            "بذراعي;باستخدام ذراعي;استخدمت ذراعي;استخدمت يدي;باستخدام يدي;بمساعدة يدي;استعملت يدي;"
            "مع الذراعين;استعنت بيدي;باليدين;باستخدام اليدين;استخدمت اليدين;استندت على يدي;"
            "بمساعدة اليدين;استعنت بذراعي;باستخدام الذراعين;اتكأت على يدي"
        ),
        WordRole.HALF_WAY: split("أكثر من النصف;أكثر من نصف;وكدت أقف;وأكثر من نصف;أكثر من نص;وتقريبا واحدة أخرى"),
        WordRole.STOPPED: split(
            "توقفت;لم أكمل;ما كملت;لم أستطع;ما قدرت;لا أستطيع;استسلمت;لم أتمكن;ثم توقفت;وقفت قبل النهاية;"
            "ما خلصت;لم أنته;لم أقدر;مش قادر;مش قادرة;ما اقدر"
        ),
        WordRole.VIGOROUS: split("شديد;مجهد;قوي;عنيف;مكثف;شديدة;مكثفة;جري;تمرين قوي;متعب;صعب"),
        WordRole.FILLER: split(
            "هالأسبوع;هالاسبوع;الاسبوع ده;هذا الاسبوع;هاد الاسبوع;"
            "هذا الأسبوع;اليوم;للأسف;هذا;هو;هي;كان;كانت;وزني;آسف;عفوا;خطأ;يعني;=;:;القيمة;الرقم;غلط;بل;إنه;وإنما;انه;"
            "لحظة واحدة;مرة ثانية;مرة أخرى;كمان مرة;سؤال واحد;شي واحد;شوية;شوي;واحد من;واحدة من;"
            "دقيقة واحدة من فضلك;ثانية واحدة"
        ),
        WordRole.FAREWELL: split("أشوفك;أشوفك يوم;نلتقي;نلتقي يوم;إلى اللقاء;موعدنا"),
        WordRole.SORRY: split("لا;آسف;آسفة;عفوا;لحظة;خطأ;أخطأت;غلط;معذرة;*;غلطت;لا آسف;عذرا;أوه;لا لا;كتبت خطأ;سوري"),
        WordRole.MEANT: split(
            "قصدت;أقصد;كنت أقصد;يجب أن يكون;تصحيح;الصحيح;بدلا من ذلك;المفروض;قصدي;أعني;صححها إلى;"
            "غيرها إلى;والصحيح;أردت أن أكتب;كان قصدي;الصح;التصحيح"
        ),
        WordRole.PLEASE: split(
            "من فضلك;لو سمحت;لو سمحتي;رجاء;هل يمكنني;هل يمكن;أريد;أود;ممكن;الآن;شكرا;مرحبا;حسنا;أرني;"
            "أعطني;أحتاج;أرجوك;هل تستطيع;بدي;عايز;عايزة;أبغى;لو تكرمت;أريد أن;هل يمكنك;حابب;حابة;ياريت;"
            "أن;إلى"
        ),
    },
    balance_stages=(
        ("جنبًا إلى جنب", "القدمان معًا"),
        ("نصف ترادف", "شبه ترادف"),
        ("ترادف", "الكعب عند الأصابع"),
        ("ساق واحدة", "على ساق واحدة", "قدم واحدة"),
    ),
    names={
        "weight": split("وزن;وزني;الوزن;الميزان"),
        "height": split("طول;طولي;الطول"),
        "waist": split("خصر;خصري;الخصر;محيط الخصر;محيط خصري;محيط البطن;البطن"),
        "hip": split("ورك;وركي;الورك;أرداف;الأرداف;محيط الورك;الوركين;محيط الأرداف;حوض;الحوض"),
        "resting_heart_rate": split("نبض;نبضي;النبض;ضربات القلب;معدل النبض;معدل ضربات القلب;نبض القلب;دقات القلب"),
        "blood_pressure": split("ضغط;ضغطي;الضغط;ضغط الدم;ضغط دمي"),
        "energy": split("طاقة;طاقتي;الطاقة;مستوى الطاقة;مستوى طاقتي"),
        "chair_stand_30s": split("الوقوف من الكرسي;اختبار الكرسي"),
        "activity_minutes": split("نشاط;النشاط;حركة;الحركة;رياضة;الرياضة;نشاطي"),
        "strength_days": split("قوة;القوة;تمارين القوة;أيام القوة"),
        "sessions_done": split("جلسات الخطة;الجلسات المنجزة"),
        "session_effort": split("مجهود;المجهود;جهد;الجهد"),
        "six_minute_walk": split("اختبار المشي;مشي ست دقائق"),
        "one_leg_stance": split("توازن;التوازن;رجل واحدة"),
        "two_minute_step": split("اختبار الخطوات"),
        "walk_mile": split("ميل"),
    },
    calendar=CALENDAR,
    intents=WISHES,
    concepts=CONCEPTS | AMISS | EVERYDAY | WEAK_WORDS["ar"],
    literal_words=LITERAL_WORDS["ar"],
    answers=ANSWERS,
    no_intents=NO_INTENTS,
    destroys=DESTROYS,
    questions=QUESTIONS,
    requests=REQUESTS,
    joints=JOINTS,
    sexes=SEXES,
    openers=OPENERS,
    no_openers=NO_OPENERS,
)
