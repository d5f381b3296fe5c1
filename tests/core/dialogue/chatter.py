"""Small talk with words or figures that look like an answer and are none, invented, in six languages."""

CHATTER: dict[str, str] = {
    "en": """
        I lifted 60 kg at the gym
        bought 5 kg of potatoes
        weighed my husband, 90
        my granddaughter turned 8
        I have one question
        I want to lose 5 kilos
        bus 42 was late
        one of these days
        give me one second
        a couple of things came up
        my sister was two hours late
        meeting at half past seven
        the doctor said 80 would be good
        my flat is on floor 12
        see you on the 14th
        the dog is 12 kg now
        we drove 200 km on Sunday
        dinner for 6 tonight
        half the street was there
        half of my friends came at 7 sharp
        oh forget it
        oh well never mind
        oh
        """,
    "es": """
        compré 5 kg de patatas
        mi nieta cumplió 8
        tengo una pregunta
        espera un rato
        un poco cansada
        quiero perder 5 kilos
        llegó el autobús 42 tarde
        he levantado 60 kg en el gimnasio
        pesé a mi marido, 90
        una de estas semanas
        un momento por favor
        quedamos a las siete y media
        el médico dijo que 80 estaría bien
        vivo en el piso 12
        nos vemos el 14
        el perro pesa 12 kg
        hicimos 200 km el domingo
        somos 6 a cenar
        un par de cosas
        de vez en cuando una copa
        """,
    "de": """
        ich habe 5 kg Kartoffeln gekauft
        meine Enkelin wurde 8
        ich habe eine Frage
        ein bisschen müde
        ein paar Sachen
        ich will 5 Kilo abnehmen
        der Bus 42 kam zu spät
        ich habe 60 kg gestemmt
        hab meinen Mann gewogen, 90
        einen Moment bitte
        eine Weile warten
        wir treffen uns um halb acht
        der Arzt meinte 80 wäre gut
        ich wohne im 12. Stock
        bis zum 14.
        der Hund wiegt 12 kg
        wir sind 200 km gefahren
        wir sind 6 zum Essen
        auf einmal war es dunkel
        noch einmal danke
        """,
    "fr": """
        j'ai acheté 5 kg de pommes de terre
        ma petite-fille a eu 8 ans
        j'ai une question
        un coup de fatigue
        un peu fatiguée
        je veux perdre 5 kilos
        le bus 42 était en retard
        j'ai soulevé 60 kg
        j'ai pesé mon mari, 90
        un instant s'il te plaît
        d'un coup il a plu
        on se voit à sept heures et demie
        le médecin a dit que 80 serait bien
        j'habite au 12e étage
        à bientôt le 14
        le chien pèse 12 kg
        on a fait 200 km dimanche
        on sera 6 à table
        une fois de plus merci
        boire un coup avec des amis
        """,
    "pl": """
        kupiłam 5 kg ziemniaków
        wnuczka skończyła 8 lat
        mam jedno pytanie
        jedną chwilę
        parę spraw
        chcę schudnąć 5 kilo
        autobus 42 się spóźnił
        podniosłem 60 kg na siłowni
        zważyłam męża, 90
        raz na jakiś czas
        jeszcze raz dziękuję
        spotkanie o wpół do ósmej
        lekarz mówił że 80 byłoby dobrze
        mieszkam na 12 piętrze
        do zobaczenia 14
        pies waży 12 kg
        przejechaliśmy 200 km w niedzielę
        będzie nas 6 na kolacji
        jedno z drugim
        pół ulicy przyszło
        """,
    "ar": """
        اشتريت 5 كيلو بطاطا
        حفيدتي صار عمرها 8
        عندي سؤال واحد
        لحظة واحدة
        شوي تعبانة
        أريد أن أخسر 5 كيلو
        الباص 42 تأخر
        رفعت 60 كيلو في النادي
        وزنت زوجي 90
        مرة ثانية شكرا
        واحد من هالأيام
        موعدنا الساعة سبعة ونص
        الدكتور قال 80 كويس
        ساكن في الطابق 12
        أشوفك يوم 14
        الكلب وزنه 12 كيلو
        مشينا بالسيارة 200 كيلومتر
        احنا 6 على العشا
        نص الحارة كانت هناك
        كم شغلة صارت
        """,
}


def said_in(language: str) -> list[str]:
    return [line.strip() for line in CHATTER[language].strip().splitlines()]
